// What scatters about a tightening, and how certain its clamp load is.
#pragma once

#include "tauten/question/clamp_answer.hpp"
#include "tauten/uncertainty/budget.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"

namespace tauten::TAUTEN_ABI {

/// What scatters about a tightening. What is absent follows from the job.
struct ClampScatter {
  std::optional<Distribution> torque;            ///< of the wrench; absent: even within its accuracy
  std::optional<Distribution> thread_friction;   ///< absent: triangular over the band of the condition
  std::optional<Distribution> bearing_friction;  ///< the same
  std::optional<double> friction_correlation;    ///< of thread and face; absent: as the job says, else 1 where one
                                                 ///< condition names both and neither is given, which widens the spread
  std::optional<Distribution> bearing_diameter;  ///< D_Km; absent: triangular, 5 % to either side
  std::optional<Distribution> strength;  ///< factor on the minimum strengths of the class; absent: as bolts are sold
};

/// A clamp job as functions of what scatters, for any of the methods in this room.
/// Inputs: torque, thread_friction, bearing_friction, bearing_diameter, strength.
struct ClampModel {
  ClampCandidate candidate;     ///< what `clamp` says about it
  Model clamp_load;             ///< N, not above what the bolt bears
  Model yield_utilisation;      ///< stress while the wrench turns over yield strength; above 1 the bolt yields
  JointDistribution inputs;     ///< of both
  std::vector<Notice> notices;  ///< what was assumed
};

/// The clamp answer with its uncertainty.
struct ClampUncertainty {
  ClampCandidate candidate;
  MonteCarlo clamp_load;
  MonteCarlo yield_utilisation;
  Budget clamp_load_budget;
  Budget yield_utilisation_budget;
  double chance_to_yield = 0;  ///< that the bolt yields while the wrench turns
  double chance_slack = 0;     ///< that the clamp load stays below half of the proof load
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("candidate", &ClampUncertainty::candidate);
    visit("clamp_load", &ClampUncertainty::clamp_load);
    visit("yield_utilisation", &ClampUncertainty::yield_utilisation);
    visit("clamp_load_budget", &ClampUncertainty::clamp_load_budget);
    visit("yield_utilisation_budget", &ClampUncertainty::yield_utilisation_budget);
    visit("chance_to_yield", &ClampUncertainty::chance_to_yield);
    visit("chance_slack", &ClampUncertainty::chance_slack);
    visit("notices", &ClampUncertainty::notices);
  }
};

/// Spread of the effective bearing diameter to either side. Pressure that falls to zero at one edge of the face moves
/// the diameter by 4 to 5 % with the typical heads and holes (a sixth of the width of the face, in the radius); judgement.
inline constexpr double bearing_diameter_spread = 0.05;

}  // namespace tauten::TAUTEN_ABI
