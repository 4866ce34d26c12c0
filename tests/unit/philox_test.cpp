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

TEST_CASE("philox: columns of counters give what each counter gives") {
  std::uint32_t columns[4][37];
  for (std::uint32_t i = 0; i < 37; ++i)
    for (std::uint32_t j = 0; j < 4; ++j) columns[j][i] = 0x9E3779B9u * (i + 41 * j);
  std::uint32_t drawn[4][37];
  for (int j = 0; j < 4; ++j)
    for (int i = 0; i < 37; ++i) drawn[j][i] = columns[j][i];
  philox4x32({drawn[0], drawn[1], drawn[2], drawn[3]}, 37, 20111115);
  for (int i = 0; i < 37; ++i) {
    const tauten::Philox4 one = philox4x32({{columns[0][i], columns[1][i], columns[2][i], columns[3][i]}}, 20111115);
    for (int j = 0; j < 4; ++j) CHECK(drawn[j][i] == one.word[j]);
  }
}

}  // namespace philox_test
