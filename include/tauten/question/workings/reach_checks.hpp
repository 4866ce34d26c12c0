// Checks of `reach`: input without meaning, and cases in which the rule of the lever does not hold.
#pragma once

#include <algorithm>
#include <optional>

#include "tauten/part/strength.hpp"
#include "tauten/question/reach_job.hpp"
#include "tauten/tool/drive_strength.hpp"

namespace tauten::TAUTEN_ABI {

/// A tilt out of the plane up to this is let pass with a warning: it costs less than 0.4 % of the torque.
inline constexpr Angle maximum_tilt{5 * pi_constant.value / 180};
/// A universal joint bent further than this is refused (common practice, no source).
inline constexpr Angle greatest_joint_bend{45 * pi_constant.value / 180};
/// Minimum lever at the fastener, as a share of the wrench length. Below it a small error in length is a large one in
/// torque, and at zero no pull turns the fastener.
inline constexpr double minimum_lever_share = 0.1;

/// No bar of steel bears a greater shear stress: hardened tool steel, far beyond what drive bars are made of (judgement).
inline constexpr Stress greatest_bar_shear_strength{1.4e9};

namespace detail {

/// \return the torque at which a bar of the hardest steel breaks
inline Torque greatest_bar_torque(const DriveBar& bar) {
  switch (bar.section) {
    case DriveBar::Section::round: return torsion_plastic_torque(greatest_bar_shear_strength, bar.size);
    case DriveBar::Section::hexagon: return hexagon_plastic_torque(greatest_bar_shear_strength, bar.size);
    case DriveBar::Section::square: break;
  }
  return square_plastic_torque(greatest_bar_shear_strength, bar.size);
}

/// \return what does not fit together in a finished reach, or nothing
inline std::optional<Error> reach_misfit(const ReachJob& job, const Reach& reach) {
  if (job.wrench.division && *job.wrench.division > reach.setting)
    return Error("division", ("division is " + shop_text(*job.wrench.division) + ", but the setting is only " +
                              shop_text(reach.setting) + ": the scale cannot show it; take a smaller wrench")
                                 .c_str());
  for (const DriveBar& bar : job.bars)
    if (const Torque most = greatest_bar_torque(bar); reach.arrives.nominal > most)
      return Error("bar_size", ("bar_size is " + shop_text(bar.size) + ", but at " + shop_text(reach.arrives.nominal) +
                                " such a bar breaks, of whatever steel: it bears " + shop_text(most) +
                                " at most; check the size, or take a thicker bar")
                                   .c_str());
  return std::nullopt;
}

/// \return the first error among plain values out of range
inline std::optional<Error> reach_range_error(const ReachJob& job) {
  constexpr double turn = 2 * pi_constant.value;
  using Share = Quantity<Dim::number>;
  if (auto e = unknown_value("type", job.wrench.type)) return e;
  const auto known = job.known == ReachJob::Known::setting ? "setting" : "torque";
  if (auto e = outside(known, job.torque, {0, 1e6, true})) return e;
  if (auto e = outside("wrench_length", job.wrench.length, {0, 10, true})) return e;
  if (auto e = outside("scale_low", job.wrench.scale_low, {0, 1e6})) return e;
  if (auto e = outside("scale_high", job.wrench.scale_high, {0, 1e6, true})) return e;
  if (auto e = outside("division", job.wrench.division, {0, 1e5, true})) return e;
  if (auto e = outside("hand_offset", job.hand_offset, {-0.9 * job.wrench.length.si, 10})) return e;
  if (auto e = outside("support_share", Share(job.support_share), {0, 1})) return e;
  if (auto e = outside("tilt", job.tilt, {-turn, turn})) return e;
  if (auto e = outside("universal_joint", job.universal_joint, {0, greatest_joint_bend.si})) return e;
  if (auto e = outside("drive_square", job.drive_square, {0, 1, true})) return e;
  if (job.multiplier) {
    if (auto e = outside("multiplier_ratio", Share(job.multiplier->ratio), {1, 1000})) return e;
    // One that gives less than it takes is no multiplier, and would push its arm the other way.
    if (auto e = outside("multiplier_efficiency", Share(job.multiplier->efficiency), {1 / job.multiplier->ratio, 1}))
      return e;
    if (auto e = outside("efficiency_range", Share(job.multiplier->efficiency_range), {0, job.multiplier->efficiency}))
      return e;
    if (auto e = outside("reaction_arm", job.multiplier->arm, {0, 10, true})) return e;
  }
  if (auto e = bars_error(job.bars)) return e;
  const ReachTolerances& t = job.tolerances;
  // Of the lever that the hand has: beyond half of it, the error that it makes has no bound.
  if (auto e = outside("tolerance_hand", t.hand, {0, 0.5 * (job.wrench.length.si + job.hand_offset.si)})) return e;
  if (auto e = outside("tolerance_extension", t.extension, {0, 1})) return e;
  if (auto e = outside("tolerance_extension_angle", t.extension_angle, {0, 0.8})) return e;
  if (auto e = outside("tolerance_pull_angle", t.pull_angle, {0, 0.8})) return e;
  if (auto e = outside("tolerance_support_share", Share(t.support_share), {0, 1})) return e;
  return outside("tolerance_operator", Share(t.operator_share), {0, 1});
}

/// \return why the rule of the lever does not hold for this job, or nothing
inline std::optional<Error> reach_refusal(const ReachJob& job, const ChainEnd& end) {
  if (job.wrench.pipe_on_handle)
    return Error("pipe_on_handle",
                 "a pipe on the handle of a torque wrench is refused: it moves the hand off the mark and overloads the "
                 "wrench; take a longer wrench or a torque multiplier");
  if (std::fabs(job.tilt.si) > maximum_tilt.si)
    return Error("tilt", ("tilt is " + shop_text(job.tilt) + ", but must be at most " + shop_text(maximum_tilt) +
                          ": the rule of the lever holds in the plane square to the fastener only; bring the wrench "
                          "into the plane, with a bar between if need be")
                             .c_str());
  if (job.wrench.hinged_handle && !job.extensions.empty())
    return Error("hinged_handle",
                 "a wrench with a hinged handle and an offset extension is refused: nobody knows its lever; use a "
                 "rigid wrench, or do without the extension");
  const double hand = job.wrench.length.si + job.hand_offset.si;
  const double lever = hand + (1 - job.support_share) * end.along.si;
  if (lever < minimum_lever_share * hand)
    return Error("extensions",
                 ("the extensions fold back so far that the lever at the fastener is " + shop_text(Length(lever)) +
                  ", but it must be at least " + shop_text(Length(minimum_lever_share * hand)) +
                  "; turn the extension to 90 degrees or less, or take a longer wrench")
                     .c_str());
  // The angle folds it back at most by its tolerance.
  const double worst = std::min(pi<double>(), std::fabs(end.angle.si) + job.tolerances.extension_angle.si);
  if (!job.extensions.empty() &&
      hand + (1 - job.support_share) * end.length.si * std::cos(worst) < minimum_lever_share * hand)
    return Error("tolerance_extension_angle",
                 ("tolerance_extension_angle is " + shop_text(job.tolerances.extension_angle) +
                  ", which may fold the extension back until no lever is left; measure the angle better, turn the "
                  "extension further out, or take a longer wrench")
                     .c_str());
  return std::nullopt;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
