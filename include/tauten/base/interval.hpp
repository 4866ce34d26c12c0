// A range of admissible values.
#pragma once

#include <cstdint>
#include <type_traits>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// As many bits as a floating-point number has.
template <class Real>
using BitsOf = std::conditional_t<sizeof(Real) == sizeof(std::uint64_t), std::uint64_t, std::uint32_t>;

/// From `low` to `high` in SI; the lower end may be excluded. The upper end counts as inside. NaN and infinity never do.
struct Interval {
  double low;
  double high;
  bool excludes_low = false;

  // In place, so that the bounds of a formula are constants of its own type: a call would turn them from double to float on
  // machines that compute in float.
  template <class Real>
  [[gnu::always_inline]] constexpr bool contains(Real x) const noexcept {
    const bool above = excludes_low ? x > static_cast<Real>(low) : x >= static_cast<Real>(low);
    // Written with & so that loops over columns stay free of branches.
    return (int{above} & int{x <= static_cast<Real>(high)}) != 0;
  }

  /// For loops over many rows, in which most numbers lie inside and one answer for all of them is wanted: an `or` gathers
  /// it. Numbers from zero on have the order of their bits read as a whole number; infinity and NaN come after them, and
  /// whatever has a sign after those. So two differences tell of both ends, with no comparison.
  /// \return bits of which the topmost is set if `x` lies outside, or is minus zero
  template <class Real>
  constexpr BitsOf<Real> outside_bit(Real x) const noexcept {
    using Bits = BitsOf<Real>;
    if (low < 0) return contains(x) ? Bits{0} : ~Bits{0};
    const auto bits = __builtin_bit_cast(Bits, x);
    const auto first = __builtin_bit_cast(Bits, static_cast<Real>(low)) + Bits{excludes_low};
    const auto last = __builtin_bit_cast(Bits, static_cast<Real>(high));
    return (bits - first) | (last - bits);
  }

  /// What both contain.
  constexpr Interval meet(const Interval& other) const noexcept {
    const bool excludes = low > other.low   ? excludes_low
                          : low < other.low ? other.excludes_low
                                            : excludes_low || other.excludes_low;
    return {low > other.low ? low : other.low, high < other.high ? high : other.high, excludes};
  }
};

/// No engineering quantity in SI comes near this bound. It also lies inside the range of float.
inline constexpr double largest = 1e30;

inline constexpr Interval positive{0, largest, true};
inline constexpr Interval non_negative{0, largest};
inline constexpr Interval any_sign{-largest, largest};

/// \return the closed interval from `low` to `high`
constexpr Interval within(double low, double high) noexcept { return {low, high}; }

}  // namespace tauten::TAUTEN_ABI
