// A formula over columns: each input a column of numbers or one number for all rows.
#pragma once

#include <span>

#include "tauten/base/formula.hpp"

// Clang compares the addresses at run time instead: told to vectorise, it would warn of every formula with a sine.
#if defined(__GNUC__) && !defined(__clang__)
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

/// Whether an input is a column: a span, a vector, an array.
template <class Real, class Input>
inline constexpr bool is_column = std::is_constructible_v<std::span<const Real>, const Input&>;

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
  static_assert(((detail::is_column<Real, In> || std::is_arithmetic_v<In>) && ...),
                "tauten: each input of a column call is one number or a column of the same numbers as the output");
  const auto fits = [&]<class Input>(const Input& input) {
    if constexpr (detail::is_column<Real, Input>)
      return std::span<const Real>(input).size() == out.size();
    else
      return true;
  };
  if (!(fits(in) && ...)) return false;
  const auto rows = []<class Input>(const Input& input) {
    if constexpr (detail::is_column<Real, Input>)
      return detail::rows_of(std::span<const Real>(input));
    else
      return detail::rows_of(static_cast<Real>(input));
  };
  detail::each_row(formula, out.data(), out.size(), rows(in)...);
  return true;
}

}  // namespace tauten
