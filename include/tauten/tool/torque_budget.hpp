// The uncertainty budget of a torque: contributions and their sum.
#pragma once

#include <cmath>
#include <vector>

#include "tauten/base/band.hpp"

namespace tauten::TAUTEN_ABI {

/// One cause of uncertainty: any value within a range is taken as equally likely.
struct TorqueContribution {
  const char* cause;         ///< "scale", "operator", ...
  double range;              ///< full width, as a share of the torque
  bool is_estimate = false;  ///< true if the range is judgement and not a published or given figure

  /// \return standard uncertainty of an even distribution, range/(2 sqrt 3)
  double uncertainty() const noexcept { return range / (2 * std::sqrt(3.0)); }

  template <class V>
  static void fields(V&& visit) {
    visit("cause", &TorqueContribution::cause);
    visit("range", &TorqueContribution::range);
    visit("is_estimate", &TorqueContribution::is_estimate);
  }
};

/// A torque between limits.
using TorqueBand = Band<Torque>;

/// Standard uncertainties by which the limits of a band lie from its middle; about 95 % of cases fall between.
inline constexpr double reach_coverage_factor = 2;

/// \return root of the sum of squares of the standard uncertainties, as a share of the torque
inline double combined_uncertainty(const std::vector<TorqueContribution>& contributions) noexcept {
  double sum = 0;
  for (const TorqueContribution& c : contributions) sum += c.uncertainty() * c.uncertainty();
  return std::sqrt(sum);
}

/// \return half the width of the band of two combined standard uncertainties, as a share of the torque
inline double band_share(const std::vector<TorqueContribution>& contributions) noexcept {
  return reach_coverage_factor * combined_uncertainty(contributions);
}

/// \param nominal        the middle
/// \param contributions  what makes it uncertain
/// \return the band of two combined standard uncertainties; its lower limit is never below zero
inline TorqueBand torque_band(Torque nominal, const std::vector<TorqueContribution>& contributions) noexcept {
  const double share = band_share(contributions);
  return {Torque(nominal.si * (share < 1 ? 1 - share : 0)), nominal, Torque(nominal.si * (1 + share))};
}

}  // namespace tauten::TAUTEN_ABI
