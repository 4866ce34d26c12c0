// A tightened bolt in service: the highest load on it, and the clamp load that remains under the working load.
#pragma once

#include "tauten/base/band.hpp"
#include "tauten/joint/diagram.hpp"

namespace tauten {

/// Loads in service. The bolt is looked at with the preload as tightened, for losses may be small; the clamp load with all
/// losses taken off. Each end of a band belongs to that end of the preload.
struct InService {
  Force working_load{};
  Band<Force> bolt_load;    ///< highest: before embedding and creep, with the gain by temperature and the working load
  Band<Force> clamp_load;   ///< after all losses and under the working load; 0 once the parts have separated
  Force separation_load{};  ///< working load that separates the parts, typical preload after all losses
  Force proof_load{};       ///< of the bolt at its temperature in service
  Force tensile_load{};     ///< the same, minimum load at which the bolt breaks
  double strength_share = 1;  ///< of the strength at room temperature

  template <class V>
  static void fields(V&& visit) {
    visit("working_load", &InService::working_load);
    visit("bolt_load", &InService::bolt_load);
    visit("clamp_load", &InService::clamp_load);
    visit("separation_load", &InService::separation_load);
    visit("proof_load", &InService::proof_load);
    visit("tensile_load", &InService::tensile_load);
    visit("strength_share", &InService::strength_share);
  }
};

/// \param tightened       preload after tightening
/// \param left            preload after all losses
/// \param thermal_gain    preload that a difference of temperature adds; 0 where it takes some away
/// \param share           of the working load that reaches the bolt
/// \param working_load    that pulls the joint apart
/// \return the loads; proof and tensile load are left to the caller
inline InService in_service(const Band<Force>& tightened, const Band<Force>& left, Force thermal_gain, double share,
                            Force working_load) noexcept {
  InService out;
  out.working_load = working_load;
  out.separation_load = Force(SeparationLoad::eval(left.nominal.si, share));
  for (const auto at : {&Band<Force>::low, &Band<Force>::nominal, &Band<Force>::high}) {
    const Force highest((tightened.*at).si + thermal_gain.si);
    out.bolt_load.*at = service_loads(highest, share, working_load).bolt;
    out.clamp_load.*at = service_loads(left.*at, share, working_load).clamp;
  }
  return out;
}

}  // namespace tauten
