// A tightened bolt in service: the highest load on it, and the clamp load that remains under the working load.
#pragma once

#include "tauten/base/band.hpp"
#include "tauten/joint/diagram.hpp"
#include "tauten/joint/service.hpp"

namespace tauten::TAUTEN_ABI {

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

}  // namespace tauten::TAUTEN_ABI
