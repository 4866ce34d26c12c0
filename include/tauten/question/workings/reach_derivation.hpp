// The derivation of a reach, from the hand to the fastener.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/reach_job.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::vector<Figure> reach_given(const ReachJob& job, const Reach& answer) {
  std::vector<Figure> out;
  if (job.known == ReachJob::Known::setting)
    out.push_back(figure("setting", job.torque, "of the wrench"));
  else
    out.push_back(figure("torque", job.torque, "wanted at the fastener"));
  out.push_back(figure("wrench_length", Length(job.wrench.length.si + job.hand_offset.si),
                       job.hand_offset.si != 0 ? "from the drive to where the hand pulls" : ""));
  for (std::size_t i = 0; i < job.extensions.size(); ++i) {
    const std::string place = job.extensions.size() > 1 ? "extension " + std::to_string(i + 1) : "";
    out.push_back(figure("extension_length", job.extensions[i].length, place));
    out.push_back(figure("extension_angle", job.extensions[i].angle, place));
  }
  if (job.extensions.size() > 1) {
    out.push_back(figure("extension_length", answer.extension.length, "all extensions as one, end to end"));
    out.push_back(figure("extension_angle", answer.extension.angle, "all extensions as one"));
  }
  if (job.support_share != 0)
    out.push_back(figure("support_share", job.support_share, "of a second hand at the wrench head", false, "%"));
  if (job.universal_joint.si != 0) out.push_back(figure("bend_angle", job.universal_joint, "universal joint"));
  if (job.multiplier) {
    out.push_back(figure("gear_ratio", job.multiplier->ratio));
    out.push_back(figure("efficiency", job.multiplier->efficiency, "", false, "%"));
    if (job.multiplier->arm) out.push_back(figure("arm_length", *job.multiplier->arm, "of the reaction"));
  }
  for (const DriveBar& bar : job.bars) {
    out.push_back(figure("length", bar.length, std::string(word_of(bar.section)) + " bar"));
    out.push_back(figure(bar.section == DriveBar::Section::round ? "diameter" : "side", bar.size, "across it"));
    out.push_back(figure("shear_modulus", bar.shear_modulus));
  }
  return out;
}

}  // namespace detail

TAUTEN_FUNCTION Derivation derivation_of(const ReachJob& job, const Reach& answer) {
  Derivation out;
  out.title = job.known == ReachJob::Known::setting ? "Torque at the fastener for a setting"
                                                    : "Setting for a torque at the fastener";
  out.given = detail::reach_given(job, answer);
  out.steps = answer.steps;
  out.found.push_back(figure("setting", answer.setting, "of the wrench"));
  out.found.push_back(
      figure("torque", answer.arrives, "at the fastener; ends: twice the root of the sum of squares of all causes"));
  for (const TorqueContribution& c : answer.contributions)
    out.found.push_back(figure((std::string(c.cause) + "_spread").c_str(), c.range,
                               "full width of an even spread, share of the torque", c.is_estimate, "%"));
  out.found.push_back({"hand_force",
                       Dim::force,
                       {answer.hand_force.si, answer.hand_force.si, answer.hand_force.si},
                       "",
                       "setting over wrench length",
                       false,
                       "N"});
  if (answer.torsional_stiffness)
    out.found.push_back(figure("twist", answer.twist, "of the bars: torque over stiffness"));
  out.verdict = job.extensions.empty() && !job.multiplier
                    ? "Nothing between wrench and fastener changes the torque: setting and torque are the same."
                    : "In about 95 % of cases the torque at the fastener lies within the band.";
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
