// What was learned from the fasteners already undone.
#pragma once

#include <array>

#include "tauten/base/band.hpp"
#include "tauten/base/lognormal.hpp"

namespace tauten::TAUTEN_ABI {

/// Chances at which a prediction is kept.
inline constexpr int learned_points = 9;
inline constexpr double learned_chances[learned_points] = {0.01, 0.05, 0.15, 0.3, 0.5, 0.7, 0.85, 0.95, 0.99};

/// Breakaway torque of the fasteners still to come.
struct Learned {
  Band<Torque> torque;   ///< the next one lies in it in nine of ten cases
  Band<Torque> median;   ///< median of this flange
  Lognormal predictive;  ///< lognormal of the same log mean and variance as the prediction
  int count = 0;         ///< outcomes used
  /// The prediction itself, at `learned_chances`: an interface has the band.
  std::array<double, learned_points> quantiles{};

  template <class V>
  static void fields(V&& visit) {
    visit("torque", &Learned::torque);
    visit("median", &Learned::median);
    visit("predictive", &Learned::predictive);
    visit("count", &Learned::count);
  }
  template <class V>
  static void kept(V&& visit) {
    visit(&Learned::quantiles);
  }
};

}  // namespace tauten::TAUTEN_ABI
