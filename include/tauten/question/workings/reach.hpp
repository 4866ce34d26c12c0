// The torque wrench and everything between it and the fastener: setting, torque at the fastener, and its band.
#pragma once

#include <algorithm>

#include "tauten/base/mode.hpp"
#include "tauten/question/workings/reach_checks.hpp"
#include "tauten/question/workings/reach_notices.hpp"
#include "tauten/tool/multiplier.hpp"
#include "tauten/tool/offset.hpp"
#include "tauten/tool/offset_error.hpp"
#include "tauten/tool/universal_joint.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// \return the full width of what errors of both signs, or none, may do
inline double width(double plus, double minus) { return std::max({plus, minus, 0.0}) - std::min({plus, minus, 0.0}); }

/// \return everything that makes the torque uncertain; causes that do not occur are left out
inline std::vector<TorqueContribution> reach_contributions(const ReachJob& job, const WrenchClass& tool,
                                                           const Reach& reach) {
  std::vector<TorqueContribution> list;
  const auto add = [&](const char* cause, double range, bool estimate) {
    // Below this the cause is rounding noise.
    if (range > 1e-12) list.push_back({cause, range, estimate});
  };
  const ReachTolerances& t = job.tolerances;
  const double L = job.wrench.length.si + job.hand_offset.si;
  const double E = reach.extension.length.si;
  const double alpha = reach.extension.angle.si;
  const double felt = (1 - job.support_share) * E;
  add("scale", 2 * permissible_deviation(tool, job.wrench.scale_high.value_or(Torque())), true);
  if (job.wrench.division) add("reading", job.wrench.division->si / reach.setting.si, false);
  // The formula's own derivatives: by extension length (2) and by the share of the second hand (4).
  const auto torque = torque_with_support_hand.gradient(reach.setting.si, L, E, alpha, job.support_share);
  if (E > 0) add("extension", 2 * t.extension.si * std::fabs(torque.slope[2]) / torque.value, true);
  add("hand_shift",
      width(HandShiftError::eval(L, felt, alpha, t.hand.si), HandShiftError::eval(L, felt, alpha, -t.hand.si)), true);
  add("extension_angle",
      width(ExtensionAngleError::eval(L, felt, alpha, t.extension_angle.si),
            ExtensionAngleError::eval(L, felt, alpha, -t.extension_angle.si)),
      true);
  add("pull_angle", 2 * std::fabs(PullAngleError::eval(L, felt, alpha, t.pull_angle.si)), true);
  if (job.support_share > 0) add("support_hand", 2 * t.support_share * std::fabs(torque.slope[4]) / torque.value, true);
  add("tilt", 1 - std::cos(job.tilt.si), false);
  if (job.multiplier) add("multiplier", job.multiplier->efficiency_range / job.multiplier->efficiency, true);
  add("universal_joint",
      UniversalJointGreatestRatio::eval(job.universal_joint.si) -
          UniversalJointLeastRatio::eval(job.universal_joint.si),
      false);
  add("operator", 2 * t.operator_share, true);
  return list;
}

/// \return the setting that gives a torque behind the extensions, with the step that leads there
inline double setting_for(std::vector<Step>& steps, double torque, double hand, const ChainEnd& end, double support) {
  if (end.length.si == 0) return torque;
  return support == 0 ? step(steps, "", wrench_setting, torque, hand, end.length.si, end.angle.si)
                      : step(steps, "", setting_with_support_hand, torque, hand, end.length.si, end.angle.si, support);
}

/// \return the torque behind the extensions that a setting gives, with the step that leads there
inline double torque_behind(std::vector<Step>& steps, double setting, double hand, const ChainEnd& end,
                            double support) {
  if (end.length.si == 0) return setting;
  return support == 0 ? step(steps, "", torque_at_fastener, setting, hand, end.length.si, end.angle.si)
                      : step(steps, "", torque_with_support_hand, setting, hand, end.length.si, end.angle.si, support);
}

/// Fills in what the bars do at the torque that arrives.
inline void wind_up(const std::vector<DriveBar>& bars, Reach& reach) {
  reach.torsional_stiffness = torsional_stiffness(bars, reach.steps);
  if (!reach.torsional_stiffness) return;
  reach.twist = Angle(reach.arrives.nominal.si / reach.torsional_stiffness->si);
  reach.stored_energy = Quantity<Dim::energy>(
      step(reach.steps, "", twist_energy, reach.arrives.nominal.si, reach.torsional_stiffness->si));
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<Reach> try_reach(const ReachJob& job) {
  if (auto error = detail::reach_range_error(job)) return *error;
  const auto tool = try_wrench_class(job.wrench.type, job.wrench.class_letter);
  if (!tool) return tool.error();
  const auto end = try_chain_end(job.extensions);
  if (!end) return end.error();
  if (auto error = detail::reach_refusal(job, *end)) return *error;

  Reach reach;
  reach.extension = *end;
  const TorqueMultiplier multiplier = job.multiplier.value_or(TorqueMultiplier{});
  const double hand = job.wrench.length.si + job.hand_offset.si;
  double arrives = job.torque.si;
  if (job.known == ReachJob::Known::at_fastener) {
    reach.behind_extension = job.torque;
    if (job.multiplier)
      reach.behind_extension =
          Torque(step(reach.steps, "", multiplier_input, arrives, multiplier.ratio, multiplier.efficiency));
    reach.setting = Torque(detail::setting_for(reach.steps, reach.behind_extension.si, hand, *end, job.support_share));
  } else {
    reach.setting = job.torque;
    reach.behind_extension = Torque(detail::torque_behind(reach.steps, job.torque.si, hand, *end, job.support_share));
    arrives = reach.behind_extension.si;
    if (job.multiplier)
      arrives = step(reach.steps, "", multiplier_output, arrives, multiplier.ratio, multiplier.efficiency);
  }
  reach.lever_ratio = reach.behind_extension.si / reach.setting.si;
  reach.hand_force = Force(reach.setting.si / hand);
  reach.contributions = detail::reach_contributions(job, *tool, reach);
  reach.arrives = torque_band(Torque(arrives), reach.contributions);
  reach.wrench_accuracy = band_share(reach.contributions);
  if (job.multiplier) {
    reach.reaction_torque = Torque(step(reach.steps, "", multiplier_reaction, reach.behind_extension.si, arrives));
    if (multiplier.arm)
      reach.reaction_force = Force(step(reach.steps, "", reaction_force, reach.reaction_torque.si, multiplier.arm->si));
  }
  if (job.universal_joint.si > 0) {
    step(reach.steps, "within a turn; it widens the band", universal_joint_least_ratio, job.universal_joint.si);
    step(reach.steps, "within a turn; it widens the band", universal_joint_greatest_ratio, job.universal_joint.si);
  }
  if (auto error = detail::reach_misfit(job, reach)) return *error;
  detail::wind_up(job.bars, reach);
  reach.notices = detail::notices_of(job, reach);
  return reach;
}

TAUTEN_FUNCTION Reach reach(const ReachJob& job) { return try_reach(job).value(); }

}  // namespace tauten::TAUTEN_ABI
