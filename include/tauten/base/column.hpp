// A formula over columns: each input a column of numbers or one number for all rows.
#pragma once

#include <cstddef>
#include <span>

#include "tauten/base/formula.hpp"

// Clang compares the addresses at run time instead: told to vectorise, it would warn of every formula with a sine.
#if defined(__GNUC__) && !defined(__clang__)
#define TAUTEN_ROWS_ARE_INDEPENDENT _Pragma("GCC ivdep")
#else
#define TAUTEN_ROWS_ARE_INDEPENDENT
#endif

namespace tauten::TAUTEN_ABI {

/// A column whose numbers do not stand side by side: one member of many structs, a column of a matrix stored by rows, a
/// column read backwards.
template <class Real>
struct StridedColumn {
  const Real* first;
  std::ptrdiff_t step;  ///< bytes from row to row; negative for backwards
  std::size_t rows;

  constexpr std::size_t size() const noexcept { return rows; }
  /// \return `count` rows from row `start` on
  StridedColumn part(std::size_t start, std::size_t count) const noexcept { return {at(start), step, count}; }
  const Real* at(std::size_t row) const noexcept {
    return reinterpret_cast<const Real*>(reinterpret_cast<const char*>(first) +
                                         static_cast<std::ptrdiff_t>(row) * step);
  }
};

/// One member of every struct as a column: `column_of(std::span<const Joint>(joints), &Joint::torque)`.
template <class Struct, class Real>
StridedColumn<Real> column_of(std::span<const Struct> structs, Real Struct::* member) noexcept {
  return {structs.empty() ? nullptr : &(structs.data()->*member), static_cast<std::ptrdiff_t>(sizeof(Struct)),
          structs.size()};
}

namespace detail {

// What a loop over rows reads: the row of a column, or the same number at each row.
template <class Real>
struct Rows {
  const Real* first;
  constexpr Real operator[](std::size_t i) const noexcept { return first[i]; }
};
template <class Real>
struct StridedRows {
  StridedColumn<Real> column;
  Real operator[](std::size_t i) const noexcept { return *column.at(i); }
};
template <class Real>
struct SameInAllRows {
  Real value;
  constexpr Real operator[](std::size_t) const noexcept { return value; }
};

/// Whether an input is a column: a span, a vector, an array; or one with a stride.
template <class Real, class Input>
inline constexpr bool is_packed = std::is_constructible_v<std::span<const Real>, const Input&>;
template <class Real, class Input>
inline constexpr bool is_column = is_packed<Real, Input> || std::is_same_v<Input, StridedColumn<Real>>;

template <class Real, class Input>
constexpr auto rows_of(const Input& input) noexcept {
  if constexpr (is_packed<Real, Input>)
    return Rows<Real>{std::span<const Real>(input).data()};
  else if constexpr (is_column<Real, Input>)
    return StridedRows<Real>{input};
  else
    return SameInAllRows<Real>{static_cast<Real>(input)};
}

/// Whether an input has a number for each of `rows` rows.
template <class Real, class Input>
constexpr bool fits_rows(const Input& input, std::size_t rows) noexcept {
  if constexpr (is_packed<Real, Input>)
    return std::span<const Real>(input).size() == rows;
  else if constexpr (is_column<Real, Input>)
    return input.size() == rows;
  else
    return true;
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
/// \param in   per input a column (`std::span<const Real>` or `StridedColumn<Real>`) with as many rows as `out`, or one
///             number for all rows
/// \return false, with nothing computed, if a column has another number of rows than `out`
template <class F, class Real, class... In>
bool evaluate(Formula<F> formula, std::span<Real> out, const In&... in) noexcept {
  static_assert(sizeof...(In) == Formula<F>::arity, "tauten: wrong number of arguments for this formula");
  static_assert(((detail::is_column<Real, In> || std::is_arithmetic_v<In>) && ...),
                "tauten: each input of a column call is one number or a column of the same numbers as the output");
  if (!(detail::fits_rows<Real>(in, out.size()) && ...)) return false;
  detail::each_row(formula, out.data(), out.size(), detail::rows_of<Real>(in)...);
  return true;
}

}  // namespace tauten::TAUTEN_ABI
