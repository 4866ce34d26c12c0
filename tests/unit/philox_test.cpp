#include "tauten/base/philox.hpp"

#include <doctest/doctest.h>

namespace philox_test {

using tauten::philox4x32;

TEST_CASE("philox: the known answers published with the generator") {
  // Random123, file kat_vectors, rows philox4x32 10 (from memory).
  const auto is = [](tauten::Philox4 got, std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    return got.word[0] == a && got.word[1] == b && got.word[2] == c && got.word[3] == d;
  };
  CHECK(is(philox4x32({{0, 0, 0, 0}}, 0), 0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8));
  CHECK(is(philox4x32({{~0u, ~0u, ~0u, ~0u}}, ~0ull), 0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd));
  CHECK(is(philox4x32({{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}}, 0x299f31d0a4093822ull), 0xd16cfe09,
           0x94fdcceb, 0x5001e420, 0x24126ea1));
}

TEST_CASE("philox: the value that the C++26 standard demands") {
  // [rand.predef]: the 10000th number of philox4x32, seed 20111115, is 1955073260.
  CHECK(philox4x32({{2499, 0, 0, 0}}, 20111115).word[3] == 1955073260u);
}

}  // namespace philox_test
