// Philox 4x32-10: random numbers by counting. The numbers of trial i depend on i and the key alone, so a simulation
// gives the same answer on any number of threads.
// Source: Salmon, Moraes, Dror, Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC 2011 (from memory; checked
// against the published known answers and against the value that the C++26 standard demands).
#pragma once

#include <cstddef>
#include <cstdint>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// Four random words.
struct Philox4 {
  std::uint32_t word[4];
};

namespace detail {

/// One of the ten rounds, on the four words of a counter; `key` is that of the round.
constexpr void philox_round(std::uint32_t& c0, std::uint32_t& c1, std::uint32_t& c2, std::uint32_t& c3,
                            std::uint32_t k0, std::uint32_t k1) noexcept {
  const std::uint64_t a = std::uint64_t{0xD2511F53u} * c0;
  const std::uint64_t b = std::uint64_t{0xCD9E8D57u} * c2;
  c0 = static_cast<std::uint32_t>(b >> 32) ^ c1 ^ k0;
  c1 = static_cast<std::uint32_t>(b);
  c2 = static_cast<std::uint32_t>(a >> 32) ^ c3 ^ k1;
  c3 = static_cast<std::uint32_t>(a);
}

/// Calls a function with the key of each round.
template <class Round>
constexpr void philox_rounds(std::uint64_t key, const Round& round) {
  auto k0 = static_cast<std::uint32_t>(key);
  auto k1 = static_cast<std::uint32_t>(key >> 32);
  for (int i = 0; i < 10; ++i, k0 += 0x9E3779B9u, k1 += 0xBB67AE85u) round(k0, k1);
}

}  // namespace detail

/// \param counter  four words that name the draw, for example trial number, block and stream
/// \param key      two words: the seed
/// \return four independent, evenly distributed words
constexpr Philox4 philox4x32(Philox4 counter, std::uint64_t key) noexcept {
  auto& c = counter.word;
  detail::philox_rounds(
      key, [&](std::uint32_t k0, std::uint32_t k1) { detail::philox_round(c[0], c[1], c[2], c[3], k0, k1); });
  return counter;
}

/// The same for columns of counters, round by round, which makes loops of packed instructions.
/// \param words  four columns of `count` words: the counters, and then what is drawn
inline void philox4x32(std::uint32_t* const (&words)[4], std::size_t count, std::uint64_t key) noexcept {
  detail::philox_rounds(key, [&](std::uint32_t k0, std::uint32_t k1) {
    for (std::size_t i = 0; i < count; ++i)
      detail::philox_round(words[0][i], words[1][i], words[2][i], words[3][i], k0, k1);
  });
}

}  // namespace tauten::TAUTEN_ABI
