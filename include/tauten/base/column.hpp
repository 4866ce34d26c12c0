// A formula over columns: each input a column of numbers or one number for all rows.
#pragma once

#include <span>

#include "tauten/base/formula.hpp"

#if defined(__clang__)
#define TAUTEN_ROWS_ARE_INDEPENDENT _Pragma("clang loop vectorize(assume_safety)")
#elif defined(__GNUC__)
#define TAUTEN_ROWS_ARE_INDEPENDENT _Pragma("GCC ivdep")
#else
#define TAUTEN_ROWS_ARE_INDEPENDENT
#endif

namespace tauten {

namespace detail {

// What a loop over rows reads: the row of a column, or the same number at each row.
template <class Real>
struct Rows {
  const Real* first;
  constexpr Real operator[](std::size_t i) const noexcept { return first[i]; }
};
template <class Real>
struct SameInAllRows {
  Real value;
  constexpr Real operator[](std::size_t) const noexcept { return value; }
};

template <class Real>
constexpr Rows<Real> rows_of(std::span<const Real> column) noexcept {
  return {column.data()};
}
template <class Real>
constexpr SameInAllRows<Real> rows_of(Real number) noexcept {
  return {number};
}

template <class F, class Real, class... In>
void each_row(Formula<F>, Real* out, std::size_t rows, In... in) noexcept {
  TAUTEN_ROWS_ARE_INDEPENDENT
  for (std::size_t i = 0; i < rows; ++i) out[i] = Formula<F>::si(in[i]...);
}

}  // namespace detail

/// Evaluates `formula` row by row, SI in and SI out, NaN where a row lies outside the domain. Compilers turn the loop
/// into packed instructions (g++ from -O3 on).
/// \param out  one number per row; may be the very same memory as an input column, but not shifted against it
/// \param in   per input a column (`std::span<const Real>`) with as many rows as `out`, or one number
/// \return false, with nothing computed, if a column has another number of rows than `out`
template <class F, class Real, class... In>
bool evaluate(Formula<F> formula, std::span<Real> out, const In&... in) noexcept {
  static_assert(sizeof...(In) == Formula<F>::arity, "tauten: wrong number of arguments for this formula");
  const auto fits = [&](const auto& column) {
    if constexpr (requires { column.size(); })
      return column.size() == out.size();
    else
      return true;
  };
  if (!(fits(in) && ...)) return false;
  const auto rows = [](const auto& column) {
    if constexpr (requires { column.data(); })
      return detail::rows_of(std::span<const Real>(column));
    else
      return detail::rows_of(static_cast<Real>(column));
  };
  detail::each_row(formula, out.data(), out.size(), rows(in)...);
  return true;
}

}  // namespace tauten
