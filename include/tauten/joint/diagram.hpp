// The load-extension diagram of a joint as data, ready to be drawn.
#pragma once

#include <vector>

#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/joint/load.hpp"
#include "tauten/joint/service.hpp"

namespace tauten::TAUTEN_ABI {

/// What a working load leaves: on the bolt, and between the parts.
struct ServiceLoads {
  Force bolt{};
  Force clamp{};  ///< 0 once the parts have separated
  bool separated = false;
};

/// \param preload  before the working load acts
/// \param share    of the working load that reaches the bolt
inline ServiceLoads service_loads(Force preload, double share, Force working_load) noexcept {
  if (working_load.si > SeparationLoad::eval(preload.si, share)) return {working_load, Force(0), true};
  return {Force(ServiceBoltLoad::eval(preload.si, share, working_load.si)),
          Force(ServiceClampLoad::eval(preload.si, share, working_load.si)), false};
}

/// \param preload           preload before the working load acts
/// \param bolt_resilience   stretch of the bolt per force
/// \param plate_resilience  of the clamped layers
/// \param working_load      axial load that pulls the joint apart; below zero it presses
/// \param load_introduction 1 under head and nut, 0 in the parting line
inline Outcome<LoadDiagram> try_load_diagram(Force preload, Quantity<Dim::compliance> bolt_resilience,
                                             Quantity<Dim::compliance> plate_resilience, Force working_load = {},
                                             double load_introduction = 1) {
  if (!is_not_negative(preload)) return refusal("preload", preload, "but must be at least 0 kN");
  if (!is_positive(bolt_resilience)) return refusal("bolt_resilience", bolt_resilience, "but must be above 0 um/kN");
  if (!is_positive(plate_resilience)) return refusal("plate_resilience", plate_resilience, "but must be above 0 um/kN");
  if (!std::isfinite(working_load.si)) return refusal("working_load", working_load, "but must be a finite load");
  if (!(load_introduction >= 0 && load_introduction <= 1))
    return refusal("load_introduction", load_introduction, "but must lie between 0 and 1");
  const double bolt = bolt_resilience.si;
  const double parts = plate_resilience.si;
  LoadDiagram out;
  out.working_load = working_load;
  out.joint_constant = LoadFactor::eval(load_introduction, bolt, parts);
  out.separation_load = Force(SeparationLoad::eval(preload.si, out.joint_constant));
  const ServiceLoads loads = service_loads(preload, out.joint_constant, working_load);
  out.separated = loads.separated;
  out.bolt_load = loads.bolt;
  out.clamp_load = loads.clamp;
  const double apex = preload.si * bolt;
  const LoadPoint preloaded{Length(apex), preload};
  const double stretched = out.bolt_load.si * bolt;
  out.bolt = {{Length(0), Force(0)}, preloaded, {Length(stretched), out.bolt_load}};
  out.parts = {{Length(apex + (preload.si - out.clamp_load.si) * parts), out.clamp_load},
               preloaded,
               {Length(apex + preload.si * parts), Force(0)}};
  return out;
}

/// \copydoc try_load_diagram
/// \throws Error  naming the argument, its value and the allowed range
inline LoadDiagram load_diagram(Force preload, Quantity<Dim::compliance> bolt_resilience,
                                Quantity<Dim::compliance> plate_resilience, Force working_load = {},
                                double load_introduction = 1) {
  return try_load_diagram(preload, bolt_resilience, plate_resilience, working_load, load_introduction).value();
}

}  // namespace tauten::TAUTEN_ABI
