// After release: what the fluid left behind does to the next tightening, and what must be replaced.
#pragma once

#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/loosening/reuse_advice.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"

namespace tauten::TAUTEN_ABI {

/// What happened on the way out, as far as it matters for going back in.
struct ReleaseHistory {
  bool fluid_left = false;  ///< oil or penetrating fluid stays on thread or face
  bool rusted = true;       ///< thread or shank lost metal
  bool heated = false;
  bool glowed = false;
  bool sheared = false;
  bool rounded = false;
  bool galled = false;
  bool past_yield = false;       ///< tightened past yield, or a torque-to-yield type
  bool locking_element = false;  ///< locking nut, patch or adhesive
  double nut_factor = 0.20;      ///< that the torque figure of the sheet stands for
};

/// Preload at the same torque goes with K/K_new. K_new: machine oil 0.10 to 0.26, dry steel 0.18 to 0.27 (published
/// ranges of several sources, nominal 0.15 and 0.20).
inline AfterRelease after_release(const ReleaseHistory& past) {
  AfterRelease advice;
  advice.nut_factor = past.fluid_left ? Band<double>{0.10, 0.15, 0.26} : Band<double>{0.18, 0.20, 0.27};
  const auto ratio = [&](double K) { return PreloadAfterFrictionChange::eval(1.0, past.nut_factor, K); };
  advice.preload_ratio = {ratio(advice.nut_factor.high), ratio(advice.nut_factor.nominal),
                          ratio(advice.nut_factor.low)};
  const auto say = [&](bool holds, bool replace, const char* code, const char* text, bool estimate = false) {
    if (!holds) return;
    advice.notices.push_back({code, text, estimate});
    advice.replace = advice.replace || replace;
  };
  say(past.fluid_left, false, "fluid_left",
      "Fluid left on the thread lowers friction: the torque of the sheet may overload the bolt. Clean it off, or take "
      "a torque for oiled threads.");
  say(past.sheared || past.rounded, true, "replace_damaged", "Replace the sheared or rounded fastener.");
  say(past.galled, true, "replace_galled", "Replace a galled bolt and its nut: the threads are torn.");
  say(past.past_yield, true, "replace_past_yield", "Replace fasteners tightened past yield and torque-to-yield types.");
  say(past.glowed, true, "replace_glowed", "Replace any fastener that has been red-hot.");
  say(past.heated && !past.glowed, true, "replace_heated",
      "Replace the heated bolt unless you are certain that it stayed below 300 \u00b0C.", true);
  say(past.locking_element, false, "replace_locking", "Locking nuts, patches and adhesive are used up: renew them.");
  say(past.rusted, false, "inspect_rusted",
      "Look at the thread after cleaning. Replace a fastener that is necked, cracked or pitted at the root.");
  return advice;
}

}  // namespace tauten::TAUTEN_ABI
