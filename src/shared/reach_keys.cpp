#include "shared/reach_keys.hpp"

#include "shared/bar_text.hpp"

namespace tauten::shared {

namespace {

using ReachKey = Key<ReachJob>;
using Line = std::string_view;

Problem wrong_form(const char* key, Line text, const char* form) {
  return Error(key, (std::string(key) + " " + tauten::detail::shown(text) + " is not understood; " + form).c_str());
}

Problem put_extension(const ReachKey& key, Line text, ReachJob& job) {
  const auto parts = split(text, '@');
  ExtensionLink& link = job.extensions.emplace_back();
  const auto problem = read(key.name, parts[0], link.length);
  if (parts.size() > 2 || (problem && parts[0].find_first_of(",:;/ ") != Line::npos))
    return wrong_form(key.name, text, "write its length, and its angle unless it is in line, like 75mm@45deg");
  if (problem) return problem;
  return parts.size() == 1 ? Problem() : read(key.name, parts[1], link.angle);
}

Problem put_class(const ReachKey&, Line text, ReachJob& job) {
  job.wrench.class_letter = text.size() == 1 ? text[0] : ' ';  // the library refuses a blank
  return {};
}

/// The multiplier is there once its ratio is said; what else is said of it waits in the same place.
TorqueMultiplier& multiplier(ReachJob& job) { return job.multiplier ? *job.multiplier : job.multiplier.emplace(); }

constexpr ReachKey keys[] = {
    {"torque", "130N.m", "Torque that is wanted at the fastener", put<[](auto& j) -> auto& { return j.torque; }>},
    {"setting", "104N.m", "Setting of the wrench, in place of the torque",
     put<[](auto& j) -> auto& { return j.torque; }>},
    {"wrench-length", "400mm", "From the drive to the middle of the hand; 300 mm if not said",
     put<[](auto& j) -> auto& { return j.wrench.length; }>, "wrench_length"},
    {"extension",
     "100mm@30deg",
     "Offset extension: length and angle from the wrench; each in its order",
     put_extension,
     "extensions",
     {},
     Takes::several_values},
    {"hand-offset", "20mm", "How far the hand stands beyond the mark; negative: nearer to the drive",
     put<[](auto& j) -> auto& { return j.hand_offset; }>, "hand_offset"},
    {"support-share", "30%", "Share of the pull that a second hand takes at the wrench head",
     put<[](auto& j) -> auto& { return j.support_share; }>, "support_share"},
    {"tilt", "3deg", "Wrench out of the plane of turning", put<[](auto& j) -> auto& { return j.tilt; }>},
    {"universal-joint", "15deg", "Bend of a universal joint", put<[](auto& j) -> auto& { return j.universal_joint; }>,
     "universal_joint"},
    {"multiplier-ratio", "4", "Ratio of a torque multiplier", put<[](auto& j) -> auto& { return multiplier(j).ratio; }>,
     "multiplier_ratio"},
    {"multiplier-efficiency", "90%", "Its efficiency; 1 if the ratio is a torque ratio that the maker states",
     put<[](auto& j) -> auto& { return multiplier(j).efficiency; }>, "multiplier_efficiency"},
    {"efficiency-range", "4%", "By how much its efficiency differs, full width",
     put<[](auto& j) -> auto& { return multiplier(j).efficiency_range; }>, "efficiency_range"},
    {"reaction-arm", "300mm", "From the axis of the multiplier to where its arm rests",
     put_above_zero<[](auto& j) -> auto& { return multiplier(j).arm; }>, "reaction_arm"},
    {"bar",
     "square:250mm:12.7mm",
     "Straight bar: square, round or hexagon, length, size",
     [](const ReachKey& key, Line text, ReachJob& job) { return read_bar(key.name, text, job.bars.emplace_back()); },
     "bars",
     {},
     Takes::several_values},
    {"drive-square", "12.7mm", "Smallest square in the line",
     put_above_zero<[](auto& j) -> auto& { return j.drive_square; }>, "drive_square"},
    {"wrench-type", "setting", "setting (clicks) or indicating", put<[](auto& j) -> auto& { return j.wrench.type; }>,
     "wrench_type", Words<WrenchType>::list},
    {"wrench-class", "A", "Letter of ISO 6789-1", put_class, "wrench_class"},
    {"scale-low", "40N.m", "Lowest mark of the scale", put<[](auto& j) -> auto& { return j.wrench.scale_low; }>,
     "scale_low"},
    {"scale-high", "200N.m", "Greatest torque of the wrench",
     put_above_zero<[](auto& j) -> auto& { return j.wrench.scale_high; }>, "scale_high"},
    {"division", "1N.m", "Between two marks or digits",
     put_above_zero<[](auto& j) -> auto& { return j.wrench.division; }>},
    {"hinged-handle",
     "yes",
     "The handle has a hinge",
     put<[](auto& j) -> auto& { return j.wrench.hinged_handle; }>,
     "hinged_handle",
     {},
     Takes::nothing},
    {"pipe-on-handle",
     "yes",
     "A pipe is on the handle",
     put<[](auto& j) -> auto& { return j.wrench.pipe_on_handle; }>,
     "pipe_on_handle",
     {},
     Takes::nothing},
    {"tolerance-hand", "20mm", "How far the hand may be off; like those below an estimate if not said",
     put<[](auto& j) -> auto& { return j.tolerances.hand; }>, "tolerance_hand"},
    {"tolerance-extension", "1mm", "How far the reach of the extension may be off",
     put<[](auto& j) -> auto& { return j.tolerances.extension; }>, "tolerance_extension"},
    {"tolerance-extension-angle", "3deg", "How far its angle may be off",
     put<[](auto& j) -> auto& { return j.tolerances.extension_angle; }>, "tolerance_extension_angle"},
    {"tolerance-pull-angle", "10deg", "How far the pull may be off the square",
     put<[](auto& j) -> auto& { return j.tolerances.pull_angle; }>, "tolerance_pull_angle"},
    {"tolerance-support-share", "10%", "How far the share of the second hand may be off",
     put<[](auto& j) -> auto& { return j.tolerances.support_share; }>, "tolerance_support_share"},
    {"tolerance-operator", "2%", "What speed, jerks and stopping may do",
     put<[](auto& j) -> auto& { return j.tolerances.operator_share; }>, "tolerance_operator"},
};

/// One of several extensions or bars has a name of its own in the library.
Error in_words(std::span<const Said> said, const Error& error) {
  const Line argument = error.argument();
  if (argument.starts_with("extension_")) return {"extension", error.what()};
  if (argument.starts_with("bar_")) return {"bar", error.what()};
  return in_words_of<ReachJob>(keys, said, error);
}

}  // namespace

std::span<const ReachKey> reach_keys() { return keys; }

Outcome<ReachAnswer> try_reach(std::span<const Said> said) {
  ReachJob job;
  if (auto problem = set_all<ReachJob>(keys, said, job)) return *problem;
  const bool setting = has(said, "setting");
  if (setting && has(said, "torque"))
    return Error("setting", "setting and torque exclude each other; leave one of them out");
  if (!setting && !has(said, "torque"))
    return Error("torque", "torque is missing; give it at the fastener, or as setting of the wrench, like 48N.m");
  if (job.multiplier && !has(said, "multiplier-ratio"))
    return Error("multiplier-ratio",
                 "multiplier-ratio is missing; write it like 4, or leave its efficiency and arm out");
  job.known = setting ? ReachJob::Known::setting : ReachJob::Known::at_fastener;
  const auto found = tauten::try_reach(job);
  if (!found) return in_words(said, found.error());
  return ReachAnswer{*found, job};
}

}  // namespace tauten::shared
