// Loops over rows with the packed instructions that the machine has.
//
// A source file that defines TAUTEN_WIDE_ROWS before it includes this (x86 with g++ or clang) holds such a loop three times,
// for AVX-512, AVX2 and neither. The numbers are the same.
#pragma once

#include "tauten/base/version.hpp"

#if defined(TAUTEN_WIDE_ROWS)
// Of AVX-512 the instructions, not the width: columns begin anywhere, and loads of 64 bytes across two lines of the cache
// cost what the width gains. Clang chooses by itself.
#if defined(__clang__)
#define TAUTEN_AVX512 "avx512f,avx512dq,avx512bw,avx512vl"
#else
#define TAUTEN_AVX512 "avx512f,avx512dq,avx512bw,avx512vl,prefer-vector-width=256"
#endif
#endif

namespace tauten::TAUTEN_ABI {

namespace detail {

#if defined(TAUTEN_WIDE_ROWS)
inline bool machine_has_avx512() noexcept {
  return __builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512bw") && __builtin_cpu_supports("avx512vl");
}
inline bool machine_has_avx2() noexcept { return __builtin_cpu_supports("avx2"); }

template <class Loop>
[[gnu::target("avx2"), gnu::flatten]] void with_avx2(const Loop& loop) {
  loop();
}
template <class Loop>
[[gnu::target(TAUTEN_AVX512), gnu::flatten]] void with_avx512(const Loop& loop) {
  loop();
}

/// Runs a loop over some hundred rows, more than the choice costs.
template <class Loop>
void in_wide_rows(const Loop& loop) {
  machine_has_avx512() ? with_avx512(loop) : machine_has_avx2() ? with_avx2(loop) : loop();
}
#else
template <class Loop>
void in_wide_rows(const Loop& loop) {
  loop();
}
#endif

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
