// The description of a formula at run time: for look-up by name, bindings, explanations and pages.
// With TAUTEN_WIDE_ROWS its loops over rows take the packed instructions that the machine has: see wide_rows.hpp.
#pragma once

#include <cstddef>
#include <span>
#if defined(__x86_64__) && defined(__GNUC__)
#include <emmintrin.h>
#endif

#include "tauten/base/column.hpp"
#include "tauten/base/symbolic.hpp"
#include "tauten/base/wide_rows.hpp"

namespace tauten::TAUTEN_ABI {

/// A formula without its type. All numbers are SI; `x` points at `arity()` numbers in the order of `inputs`.
struct Entry {
  const char* name;
  const char* summary;
  std::span<const Arg> inputs;
  Arg output;
  std::span<const Source> sources;

  double (*value)(const double* x) noexcept;                     ///< NaN outside the domain
  Check (*check)(const double* x) noexcept;                      ///< what is wrong with the inputs
  double (*gradient)(const double* x, double* slopes) noexcept;  ///< value; partial derivatives into `slopes`
  Symbolic (*expression)();                                      ///< the formula itself
  /// Rows of strided columns: pointers to the first row of each input and of the output, and the bytes from row to row.
  /// \return whether every row has a value, and that from inputs in their ranges of validity; if not, `check` tells more
  bool (*rows_double)(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) noexcept;
  bool (*rows_float)(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) noexcept;

  int arity() const noexcept { return static_cast<int>(inputs.size()); }
};

namespace detail {

/// Rows are worked in blocks: a column that is not packed is copied into a packed block first, so that one loop of
/// packed instructions serves every stride. One copy of this code serves all formulas.
inline constexpr std::size_t rows_per_block = 256;
inline constexpr int most_inputs = 12;

#if defined(__x86_64__) && defined(__GNUC__)
/// A result of so many bytes is written past the cache, which has no room for it: to be written the ordinary way, memory is
/// read first. That saves a tenth of the time or so.
inline constexpr std::size_t bytes_past_cache = std::size_t{4} << 20;

template <class Real>
void copy_past_cache(const Real* from, Real* to, std::size_t rows) noexcept {
  for (std::size_t row = 0; row < rows; ++row)
    if constexpr (sizeof(Real) == sizeof(long long))
      _mm_stream_si64(reinterpret_cast<long long*>(to + row), __builtin_bit_cast(long long, from[row]));
    else
      _mm_stream_si32(reinterpret_cast<int*>(to + row), __builtin_bit_cast(int, from[row]));
}
inline void end_past_cache() noexcept { _mm_sfence(); }
#else
inline constexpr std::size_t bytes_past_cache = ~std::size_t{0};
template <class Real>
void copy_past_cache(const Real*, Real*, std::size_t) noexcept {}
inline void end_past_cache() noexcept {}
#endif

/// Nearly always all rows are in order. So that is tried first, and costs no more than the domain alone would; the rows
/// of a block where it does not hold are worked out again, one by one.
/// \param packed  rows of packed columns; returns whether all of them are in order
/// \param value   one row; NaN outside the domain
/// \return whether all rows are in order
template <class Real>
bool strided_rows(int arity, bool (*packed)(const Real* const*, Real*, std::size_t) noexcept,
                  Real (*value)(const Real*) noexcept, char* const* columns, const std::ptrdiff_t* steps,
                  std::size_t rows) noexcept {
  constexpr auto width = static_cast<std::ptrdiff_t>(sizeof(Real));
  const std::size_t most = rows < rows_per_block ? rows : rows_per_block;
  alignas(64) Real copies[most_inputs + 1][rows_per_block];
  // A result that takes the place of an input waits, as the input may be asked for again.
  bool direct = steps[arity] == width;
  for (int i = 0; i < arity; ++i) direct &= columns[i] != columns[arity];
  const bool past_cache = direct && rows >= bytes_past_cache / sizeof(Real);
  bool in_order = true;
  for (int i = 0; i < arity; ++i)
    if (steps[i] == 0)
      for (std::size_t row = 0; row < most; ++row) copies[i][row] = *reinterpret_cast<const Real*>(columns[i]);

  for (std::size_t start = 0; start < rows; start += rows_per_block) {
    const std::size_t count = rows - start < rows_per_block ? rows - start : rows_per_block;
    const auto at = [&](int i) { return columns[i] + static_cast<std::ptrdiff_t>(start) * steps[i]; };
    const Real* in[most_inputs];
    for (int i = 0; i < arity; ++i) {
      in[i] = copies[i];
      if (steps[i] == width)
        in[i] = reinterpret_cast<const Real*>(at(i));
      else if (steps[i] != 0)
        for (std::size_t row = 0; row < count; ++row)
          copies[i][row] = *reinterpret_cast<const Real*>(at(i) + static_cast<std::ptrdiff_t>(row) * steps[i]);
    }
    Real* const out = direct && !past_cache ? reinterpret_cast<Real*>(at(arity)) : copies[arity];
    if (!packed(in, out, count)) {
      in_order = false;
      Real x[most_inputs];
      for (std::size_t row = 0; row < count; ++row) {
        for (int i = 0; i < arity; ++i) x[i] = in[i][row];
        out[row] = value(x);
      }
    }
    if (past_cache)
      copy_past_cache(out, reinterpret_cast<Real*>(at(arity)), count);
    else if (!direct)
      for (std::size_t row = 0; row < count; ++row)
        *reinterpret_cast<Real*>(at(arity) + static_cast<std::ptrdiff_t>(row) * steps[arity]) = out[row];
  }
  if (past_cache) end_past_cache();
  return in_order;
}

template <class F, class Indices>
struct Erased;

template <class F, std::size_t... I>
struct Erased<F, std::index_sequence<I...>> {
  static constexpr int arity = sizeof...(I);

  template <class Real>
  static Real value(const Real* x) noexcept {
    return Formula<F>::si(x[I]...);
  }
  static Check check(const double* x) noexcept { return Formula<F>::check(x[I]...); }
  static double gradient(const double* x, double* slopes) noexcept {
    const Dual<arity> result = Formula<F>::gradient(x[I]...);
    ((slopes[I] = result.slope[I]), ...);
    return result.value;
  }
  static Symbolic expression() { return F::eval(Symbolic::of_input(static_cast<int>(I))...); }

  template <class Real>
  static bool packed(const Real* const* in, Real* out, std::size_t rows) noexcept {
    BitsOf<Real> outside = 0;
    TAUTEN_ROWS_ARE_INDEPENDENT
    for (std::size_t i = 0; i < rows; ++i) out[i] = Formula<F>::template si_unless<Real>(outside, in[I][i]...);
    return outside >> (8 * sizeof(Real) - 1) == 0;
  }
#if defined(TAUTEN_WIDE_ROWS)
  template <class Real>
  [[gnu::target("avx2"), gnu::flatten]] static bool packed_avx2(const Real* const* in, Real* out,
                                                                std::size_t rows) noexcept {
    return packed<Real>(in, out, rows);
  }
  template <class Real>
  [[gnu::target(TAUTEN_AVX512), gnu::flatten]] static bool packed_avx512(const Real* const* in, Real* out,
                                                                         std::size_t rows) noexcept {
    return packed<Real>(in, out, rows);
  }
  template <class Real>
  static auto best_packed() noexcept {
    if (machine_has_avx512()) return packed_avx512<Real>;
    return machine_has_avx2() ? packed_avx2<Real> : packed<Real>;
  }
#else
  template <class Real>
  static auto best_packed() noexcept {
    return packed<Real>;
  }
#endif

  template <class Real>
  static bool strided(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) noexcept {
    static_assert(arity <= most_inputs, "tauten: raise most_inputs for a formula with more inputs");
    return strided_rows<Real>(arity, best_packed<Real>(), value<Real>, columns, steps, rows);
  }
};

}  // namespace detail

/// The entry of a formula: `entry_of(preload_from_torque)`.
template <class F, class Indices>
constexpr Entry entry_of(Formula<F, Indices>) noexcept {
  using E = detail::Erased<F, Indices>;
  return {F::name,
          F::summary,
          F::inputs,
          F::output,
          F::sources,
          E::template value<double>,
          E::check,
          E::gradient,
          E::expression,
          E::template strided<double>,
          E::template strided<float>};
}

}  // namespace tauten::TAUTEN_ABI
