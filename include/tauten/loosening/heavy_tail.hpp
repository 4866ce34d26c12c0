// Student's distribution with four degrees of freedom: a bell with heavy tails, in closed form.
#pragma once

#include <cmath>

namespace tauten::detail {

/// \return logarithm of the density, less that of its constant 3/8
inline double heavy_log_density(double t) noexcept { return -2.5 * std::log1p(t * t / 4); }

/// \return the density
inline double heavy_density(double t) noexcept {
  const double w = 1 + t * t / 4;
  return 0.375 / (w * w * std::sqrt(w));
}

/// \return the chance of a value above t
inline double heavy_chance_above(double t) noexcept {
  if (t > 1e3) return 3 / (t * t * t * t);  // the leading term; the rest cancels in the closed form
  const double u = t / std::sqrt(1 + t * t / 4);
  return 0.5 - 0.375 * u * (1 - u * u / 12);
}

}  // namespace tauten::detail
