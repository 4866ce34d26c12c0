// A range of admissible values.
#pragma once

namespace tauten {

/// From `low` to `high` in SI; the lower end may be excluded. The upper end counts as inside. NaN and infinity never do.
struct Interval {
  double low;
  double high;
  bool excludes_low = false;

  template <class Real>
  constexpr bool contains(Real x) const noexcept {
    const bool above = excludes_low ? x > static_cast<Real>(low) : x >= static_cast<Real>(low);
    // Written with & so that loops over columns stay free of branches.
    return (int{above} & int{x <= static_cast<Real>(high)}) != 0;
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

}  // namespace tauten
