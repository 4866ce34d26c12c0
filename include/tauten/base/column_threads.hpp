// A formula over long columns, on several threads. Apart from column.hpp, as kernels know of no threads.
#pragma once

#include "tauten/base/column.hpp"
#include "tauten/base/share_out.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

template <class Real, class Input>
constexpr auto part_of(const Input& input, std::size_t start, std::size_t count) noexcept {
  if constexpr (is_packed<Real, Input>)
    return std::span<const Real>(input).subspan(start, count);
  else if constexpr (is_column<Real, Input>)
    return input.part(start, count);
  else
    return static_cast<Real>(input);
}

}  // namespace detail

/// As `evaluate`, with the rows shared among threads; every number is the same. Pays where a formula has a sine or the
/// like, or where the columns lie in the cache: plain arithmetic on long columns waits for the memory on one thread already.
/// \param threads  at most so many; with 1 none is started
template <class F, class Real, class... In>
bool evaluate_on(int threads, Formula<F> formula, std::span<Real> out, const In&... in) {
  constexpr std::size_t rows_per_share = 16'384;
  if (!(detail::fits_rows<Real>(in, out.size()) && ...)) return false;
  detail::share_out((out.size() + rows_per_share - 1) / rows_per_share, threads, [&](std::uint64_t share) {
    const std::size_t start = static_cast<std::size_t>(share) * rows_per_share;
    const std::size_t count = std::min(rows_per_share, out.size() - start);
    evaluate(formula, out.subspan(start, count), detail::part_of<Real>(in, start, count)...);
  });
  return true;
}

}  // namespace tauten::TAUTEN_ABI
