// What decides how a stuck fastener ends, as numbers to draw from.
#pragma once

#include <array>
#include <cstddef>
#include <memory>

#include "tauten/base/lognormal.hpp"

namespace tauten::TAUTEN_ABI {

/// A capacity that nothing reaches: the mode is absent.
inline constexpr Lognormal never_reached{1e30, 0};

struct LearnedShift;

/// The scattering inputs of one fastener under a slowly growing torque. SI throughout; all are independent.
/// Variations do not depend on the rust, so that more rust shifts every outcome the same way (see `rust_states`).
struct ReleaseModel {
  // What holds it.
  Lognormal preload;         ///< residual, N
  Lognormal thread_growth;   ///< factor on the thread friction, its own scatter included
  Lognormal bearing_growth;  ///< the same under the turned head or nut
  Lognormal bond;            ///< N.m
  Lognormal rust;            ///< from the pressure of rust, N.m
  Lognormal prevailing;      ///< N.m
  double flanks = 0;         ///< thread friction lever at growth 1, m
  double face = 0;           ///< bearing friction lever at growth 1, m
  double lift = 0;           ///< P/(2 pi), m
  double thread_floor = 0;   ///< least growth that a lubricant can bring about
  double bearing_floor = 0;
  double greatest_preload = 1e30;               ///< the bolt would have yielded beyond it, N
  double learned = 1;                           ///< factor on the breakaway torque from like fasteners
  std::shared_ptr<const LearnedShift> shift{};  ///< what is left to what was learned of them
  bool as_learned = false;                      ///< nothing has changed it since

  // What gives.
  Lognormal shear;              ///< torsion capacity of the sound bolt, no tension, N.m
  Lognormal section_loss;       ///< lost share of the root diameter
  double breaking_load = 1e30;  ///< of the sound bolt, N
  Lognormal drive = never_reached;
  Lognormal socket = never_reached;
  Lognormal square = never_reached;
  Lognormal arm = never_reached;

  // What heat needs to know.
  double nut_rise = 0, bolt_rise = 0;          ///< above the room, K
  std::shared_ptr<const ReleaseModel> room{};  ///< the same at room temperature, where it is not
  double diameter = 0;                         ///< m
  double nut_diameter = 0;                     ///< m
  double stress_area = 0;                      ///< m^2
  double nut_expansion = 11.5e-6;              ///< of what holds the thread, 1/K
  double rust_pressure = 0;                    ///< on the flanks, median, Pa
};

/// The torques of one end as they were drawn, and the factor on each that gives them the learned distribution.
struct LearnedCurve {
  static constexpr int size = 9;
  std::array<float, size> torque{}, factor{};  ///< a factor of 0: nothing was learned

  template <class Real>
  Real factor_at(const Real& x) const noexcept {
    // Also where numbers are double.
    const auto real = [](float one) { return Real(static_cast<double>(one)); };
    if (!(real(torque[0]) < x)) return real(factor[0]);
    for (std::size_t i = 1; i < size; ++i)
      if (!(real(torque[i]) < x))
        return real(factor[i - 1]) +
               real(factor[i] - factor[i - 1]) * (x - real(torque[i - 1])) / real(torque[i] - torque[i - 1]);
    return real(factor[size - 1]);
  }
};

/// What was learned, against a model that comes near to it: each trial of that model has its factor, which it keeps
/// when aids change the model.
struct LearnedShift {
  ReleaseModel base;
  LearnedCurve free, shear, round;
};

}  // namespace tauten::TAUTEN_ABI
