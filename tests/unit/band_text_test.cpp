#include "tauten/base/band_text.hpp"

#include <doctest/doctest.h>

#include <array>
#include <string>

namespace band_text_test {

using namespace tauten;

using Texts = std::array<std::string, 3>;

TEST_CASE("the three figures of a band end at one place, four digits of the greatest") {
  CHECK(band_text(63.71, 81.234, 102.04) == Texts{"63.7", "81.2", "102.0"});
  CHECK(band_text(47.83, 58.95, 76.6) == Texts{"47.83", "58.95", "76.60"});
  CHECK(band_text(0.08, 0.12, 0.16) == Texts{"0.08", "0.12", "0.16"});
  CHECK(band_text(8, 9, 10) == Texts{"8", "9", "10"});
  CHECK(band_text(100, 200, 300) == Texts{"100", "200", "300"});
  CHECK(band_text(10742, 13252, 17203) == Texts{"10740", "13250", "17200"});
  CHECK(band_text(-20, -1e-9, 30.5) == Texts{"-20.0", "0.0", "30.5"});
  CHECK(band_text(0, 0.5, 1) == Texts{"0.0", "0.5", "1.0"});
}

TEST_CASE("a wide band keeps the digits of its lower end, and great and small ones are read as they are") {
  CHECK(band_text(0.01234, 1, 123.4) == Texts{"0.01234", "1", "123.4"});
  CHECK(band_text(1e-5, 2e-5, 3e-5) == Texts{"1e-05", "2e-05", "3e-05"});
  CHECK(band_text(1e8, 2e8, 3e8) == Texts{"1e+08", "2e+08", "3e+08"});
}

}  // namespace band_text_test
