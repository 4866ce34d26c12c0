#include "tauten/base/chance_text.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace chance_text_test {

using tauten::chance_text;

TEST_CASE("chances are printed as people say them") {
  CHECK(chance_text(0.2) == "1 in 5");
  CHECK(chance_text(1.0 / 14) == "1 in 14");
  CHECK(chance_text(0.0105) == "1 in 95");
  CHECK(chance_text(0.01) == "1 in 100");
  CHECK(chance_text(0.5) == "1 in 2");
  CHECK(chance_text(0.7) == "7 in 10");
  CHECK(chance_text(0.93) == "9 in 10");
  CHECK(chance_text(0.97) == "97 in 100");
}

TEST_CASE("nothing rarer than 1 in 100 is printed as a number, and nothing is certain") {
  for (const double rare : {0.0, 1e-9, 0.0099}) CHECK(chance_text(rare) == "below 1 in 100");
  CHECK(chance_text(1) == "above 99 in 100");
  CHECK(chance_text(std::nan("")) == "unknown");
}

}  // namespace chance_text_test
