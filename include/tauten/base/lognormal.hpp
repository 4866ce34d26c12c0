// A quantity that scatters by factors: a median and a coefficient of variation.
#pragma once

#include "tauten/base/normal.hpp"

namespace tauten::TAUTEN_ABI {

/// Lognormal quantity. A median of zero means that the quantity is zero.
struct Lognormal {
  double median = 0;     ///< half of all cases lie below
  double variation = 0;  ///< standard deviation over mean

  template <class V>
  static void fields(V&& visit) {
    visit("median", &Lognormal::median);
    visit("variation", &Lognormal::variation);
  }

  /// \return standard deviation of the logarithm, z of z^2 = ln(1 + V^2)
  double log_deviation() const noexcept { return std::sqrt(std::log1p(variation * variation)); }
  /// \return the value below which `chance` of all cases lie
  double quantile(double chance) const noexcept {
    return variation == 0 ? median : median * std::exp(log_deviation() * normal_quantile(chance));
  }
  /// \return the chance of a value at or below x
  double chance_below(double x) const noexcept {
    if (!(x > 0) || median == 0 || variation == 0) return x >= median ? 1 : 0;
    return normal_chance(std::log(x / median) / log_deviation());
  }

  /// \return median and variation of the product of two independent quantities
  friend Lognormal operator*(const Lognormal& a, const Lognormal& b) noexcept {
    const double u = a.variation * a.variation, v = b.variation * b.variation;
    return {a.median * b.median, std::sqrt(u + v + u * v)};
  }
  friend Lognormal operator*(const Lognormal& a, double factor) noexcept { return {a.median * factor, a.variation}; }
};

/// \return the quantity of which nine of ten cases lie between two positive values
inline Lognormal lognormal_between(double low, double high) noexcept {
  const double z = std::log(high / low) / (2 * 1.64485362695147271486);
  return {std::sqrt(low * high), std::sqrt(std::expm1(z * z))};
}

}  // namespace tauten::TAUTEN_ABI
