// Philox 4x32-10: random numbers by counting. The numbers of trial i depend on i and the key alone, so a simulation
// gives the same answer on any number of threads.
// Source: Salmon, Moraes, Dror, Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC 2011 (from memory; checked
// against the published known answers and against the value that the C++26 standard demands).
#pragma once

#include <cstdint>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// Four random words.
struct Philox4 {
  std::uint32_t word[4];
};

/// \param counter  four words that name the draw, for example trial number, block and stream
/// \param key      two words: the seed
/// \return four independent, evenly distributed words
constexpr Philox4 philox4x32(Philox4 counter, std::uint64_t key) noexcept {
  std::uint32_t c0 = counter.word[0], c1 = counter.word[1], c2 = counter.word[2], c3 = counter.word[3];
  auto k0 = static_cast<std::uint32_t>(key);
  auto k1 = static_cast<std::uint32_t>(key >> 32);
  for (int round = 0; round < 10; ++round) {
    const std::uint64_t a = std::uint64_t{0xD2511F53u} * c0;
    const std::uint64_t b = std::uint64_t{0xCD9E8D57u} * c2;
    c0 = static_cast<std::uint32_t>(b >> 32) ^ c1 ^ k0;
    c1 = static_cast<std::uint32_t>(b);
    c2 = static_cast<std::uint32_t>(a >> 32) ^ c3 ^ k1;
    c3 = static_cast<std::uint32_t>(a);
    k0 += 0x9E3779B9u;
    k1 += 0xBB67AE85u;
  }
  return {{c0, c1, c2, c3}};
}

}  // namespace tauten::TAUTEN_ABI
