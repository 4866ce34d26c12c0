// The thread that holds a bolt: when nut or tapped part strips, and how long an engagement lets the bolt break first.
#pragma once

#include <algorithm>

#include "tauten/base/band.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/joint/material.hpp"
#include "tauten/joint/service.hpp"
#include "tauten/part/nut.hpp"
#include "tauten/part/strip.hpp"
#include "tauten/thread/tolerance.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Shear strength over tensile strength of steels of which no figure is known: judgement.
inline constexpr double usual_shear_ratio = 0.6;

/// Strip areas per length of engagement, at the limits of 6g and 6H that any pair reaches; where ISO 965-1 has no
/// figures for the size those of the basic profile, which lie above.
struct StripAreas {
  double bolt;
  double part;
  double D_2;  ///< of the internal thread, to reckon with
  double d;    ///< of the bolt, to reckon with
};

inline StripAreas strip_areas(const Thread& thread) {
  const double P = thread.pitch.si;
  double d = thread.diameter.si, d_2 = thread.pitch_diameter().si, D_1 = thread.minor_diameter().si, D_2 = d_2;
  const Outcome<BoltLimits> bolt = bolt_limits_even_remembered(thread, "6g");
  const Outcome<NutLimits> nut = nut_limits_even_remembered(thread, "6H");
  if (bolt && nut) {
    d = bolt->diameter.min.si;
    d_2 = bolt->pitch_diameter.min.si;
    D_1 = nut->minor_diameter.max.si;
    D_2 = nut->pitch_diameter.max.si;
  }
  return {ExternalStripArea::eval(1.0, P, D_1, d_2), InternalStripArea::eval(1.0, P, d, D_2), D_2, d};
}

/// What a thread in a part carries per length, and whose thread strips.
struct StripStrength {
  double per_length;
  bool part_first;
  double bending;  ///< of the thread that strips
};

/// A part around a tapped hole is wide: it does not widen under load.
inline StripStrength strip_strength(const StripAreas& areas, double bolt_shear, double part_shear) {
  const double ratio = StripStrengthRatio::eval(part_shear, areas.part, bolt_shear, areas.bolt);
  const double in_range = std::clamp(ratio, 0.4, 2.2);
  if (ratio <= 1) {
    const double bending = NutThreadBendingFactor::eval(in_range);
    return {StripLoad::eval(part_shear, areas.part, 1.0, bending), true, bending};
  }
  const double bending = BoltThreadBendingFactor::eval(in_range);
  return {StripLoad::eval(bolt_shear, areas.bolt, 1.0, bending), false, bending};
}

inline double bolt_shear_strength(const PropertyClass& strength) noexcept {
  const double ratio = strength.shear_ratio > 0 ? strength.shear_ratio : usual_shear_ratio;
  return ratio * strength.tensile_strength.si;
}

}  // namespace detail

/// Tensile strength of a strong bolt over the least of its class, for the engagement that it needs: judgement, close to
/// what the hardness limits of ISO 898-1 allow.
inline constexpr double strong_bolt = 1.2;

/// A bolt in a tapped hole.
/// \param thread    of both
/// \param strength  of the bolt
/// \param tensile   least load at which the bolt breaks
/// \param part      what the hole is tapped in
/// \param engaged   how far the bolt reaches into it
inline ThreadEngagement tapped_engagement(const Thread& thread, const PropertyClass& strength, Force tensile,
                                          const Material& part, Length engaged) {
  const detail::StripAreas areas = detail::strip_areas(thread);
  const double shear = part.shear_ratio * part.tensile_strength.si;
  const detail::StripStrength strip = detail::strip_strength(areas, detail::bolt_shear_strength(strength), shear);
  const double ends = 0.8 * thread.pitch.si;
  const Force whole(strip.per_length * engaged.si);
  ThreadEngagement out;
  out.holder = part.name;
  out.engaged_length = engaged;
  // A stronger bolt does not strip earlier in its own thread, so only that of the part is held against it.
  out.needed_length = Length((strip.part_first ? strong_bolt : 1.0) * tensile.si / strip.per_length + ends);
  out.strip_load = {Force(strip.per_length * std::max(engaged.si - ends, 0.0)), whole, whole};
  out.strips = strip.part_first ? "part" : "bolt";
  out.breaks_first = engaged >= out.needed_length;
  return out;
}

/// \return what "aluminium" without more is taken for, and what a casting would bear, which is much less
/// \param cast     the same thread in cast aluminium
/// \param highest  load that the bolt may reach
inline Notice aluminium_notice(const ThreadEngagement& cast, Force highest) {
  std::string text =
      "Aluminium is taken as wrought. In a casting this thread strips from " + detail::shop_text(cast.strip_load.low);
  if (cast.strip_load.low < highest) text += ", below the " + detail::shop_text(highest) + " that the bolt may reach";
  text += ". Housings are mostly cast: find out, and give cast_aluminium or wrought_aluminium.";
  return {"which_aluminium", text, false};
}

/// A bolt with a nut. A nut of the matching class and of full height lets the bolt break first, as ISO 898-2 is made; any
/// other carries its proof load, less where it is lower than the nuts of its standard.
/// \param thread      of both
/// \param bolt_class  property class of the bolt
/// \param nut_class   of the nut; "" for the one that matches
/// \param height      of the nut; 0 for the standard's
/// \param standard    height of the standard's nut
inline Outcome<ThreadEngagement> try_nut_engagement(const Thread& thread, std::string_view bolt_class,
                                                    std::string nut_class, Length height, Length standard) {
  if (nut_class.empty()) {
    const Outcome<std::string> matching = try_matching_nut(bolt_class);
    if (!matching) return matching.error();
    nut_class = *matching;
  }
  const Outcome<NutPairing> pair = try_nut_pairing(thread, bolt_class, nut_class);
  if (!pair) return pair.error();
  ThreadEngagement out;
  out.holder = "nut of class " + nut_class;
  out.engaged_length = height.si > 0 ? height : standard;
  const double share = std::min(out.engaged_length.si / standard.si, 1.0);
  const Force load(share * pair->nut_proof_load.value.si);
  out.strip_load = {load, load, load};
  out.strips = "nut";
  out.breaks_first = pair->matched && share > 0.999;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
