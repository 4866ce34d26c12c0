#include "shared/reach_inputs.hpp"

#include "shared/bar_text.hpp"
#include "tauten/question/workings/reach_notices.hpp"

namespace tauten::shared {

/// 75mm, or 75mm@45deg
template <>
struct Form<ExtensionLink> {
  static Problem read(const char* called, std::string_view text, ExtensionLink& link) {
    const auto parts = split(text, '@');
    const auto problem = shared::read(called, parts[0], link.length);
    if (parts.size() > 2 || (problem && parts[0].find_first_of(",:;/ ") != std::string_view::npos))
      return refuse_text(called, text,
                         " is not understood; write its length, and its angle unless it is in line, like 75mm@45deg");
    if (problem) return problem;
    return parts.size() == 1 ? Problem() : shared::read(called, parts[1], link.angle);
  }
  static Problem check(const char*, const ExtensionLink&) { return {}; }  // the library does
};

namespace {
namespace of_reach {

using In = Declares<ReachJob>;
using ReachInput = Input<ReachJob>;

/// The multiplier is there once its ratio is given; what else is given of it waits in the same place.
TorqueMultiplier& multiplier(ReachJob& job) { return job.multiplier ? *job.multiplier : job.multiplier.emplace(); }

constexpr ReachInput inputs[] = {
    In::input<[](auto& j) -> auto& { return j.torque; }>("torque", "130N.m", "Torque that is wanted at the fastener"),
    In::input<[](auto& j) -> auto& { return j.torque; }>("setting", "104N.m",
                                                         "Setting of the wrench, instead of the torque"),
    In::input<[](auto& j) -> auto& { return j.wrench.length; }>(
        "wrench_length", "400mm", "From the drive to the middle of the hand; default: 300 mm"),
    In::input<[](auto& j) -> auto& { return j.extensions; }>(
        "extensions", "100mm@30deg", "Crowfoot or the like, not a bar: length and angle; each in its order")
        .with_option("extension"),
    In::input<[](auto& j) -> auto& { return j.hand_offset; }>(
        "hand_offset", "20mm", "How far the hand stands beyond the mark; negative: nearer to the drive"),
    In::input<[](auto& j) -> auto& { return j.support_share; }>(
        "support_share", "30%", "Share of the pull that a second hand takes at the wrench head"),
    In::input<[](auto& j) -> auto& { return j.tilt; }>("tilt", "3deg", "Wrench out of the plane of turning"),
    In::input<[](auto& j) -> auto& { return j.universal_joint; }>("universal_joint", "15deg",
                                                                  "Bend of a universal joint"),
    In::input<[](auto& j) -> auto& { return multiplier(j).ratio; }>("multiplier_ratio", "4",
                                                                    "Ratio of a torque multiplier"),
    In::input<[](auto& j) -> auto& { return multiplier(j).efficiency; }>(
        "multiplier_efficiency", "90%", "Its efficiency; 1 if the ratio is a torque ratio that the maker states"),
    In::input<[](auto& j) -> auto& { return multiplier(j).efficiency_range; }>(
        "efficiency_range", "4%", "By how much its efficiency differs, full width"),
    In::input<[](auto& j) -> auto& { return multiplier(j).arm; }>(
        "reaction_arm", "300mm", "From the axis of the multiplier to where its arm rests")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.bars; }>("bars", "square:250mm:12.7mm",
                                                       "Straight bar: square, round or hexagon, length, size")
        .with_option("bar"),
    In::input<[](auto& j) -> auto& { return j.drive_square; }>("drive_square", "12.7mm", "Smallest square in the line")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.wrench.type; }>("wrench_type", "setting",
                                                              "setting (clicks) or indicating"),
    In::input<[](auto& j) -> auto& { return j.wrench.class_letter; }>("wrench_class", "A", "Letter of ISO 6789-1"),
    In::input<[](auto& j) -> auto& { return j.wrench.scale_low; }>("scale_low", "40N.m", "Lowest mark of the scale"),
    In::input<[](auto& j) -> auto& { return j.wrench.scale_high; }>("scale_high", "200N.m",
                                                                    "Maximum torque of the wrench")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.wrench.division; }>("division", "1N.m", "Between two marks or digits")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.wrench.hinged_handle; }>("hinged_handle", "yes", "The handle has a hinge")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.wrench.pipe_on_handle; }>("pipe_on_handle", "yes",
                                                                        "A pipe is on the handle")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.tolerances.hand; }>(
        "tolerance_hand", "20mm", "How far the hand may be off; default: like those below an estimate"),
    In::input<[](auto& j) -> auto& { return j.tolerances.extension; }>("tolerance_extension", "1mm",
                                                                       "How far the reach of the extension may be off"),
    In::input<[](auto& j) -> auto& { return j.tolerances.extension_angle; }>("tolerance_extension_angle", "3deg",
                                                                             "How far its angle may be off"),
    In::input<[](auto& j) -> auto& { return j.tolerances.pull_angle; }>("tolerance_pull_angle", "10deg",
                                                                        "How far the pull may be off the square"),
    In::input<[](auto& j) -> auto& { return j.tolerances.support_share; }>(
        "tolerance_support_share", "10%", "How far the share of the second hand may be off"),
    In::input<[](auto& j) -> auto& { return j.tolerances.operator_share; }>("tolerance_operator", "2%",
                                                                            "What speed, jerks and stopping may do"),
};

constexpr Rule rules[] = {one_of("torque", "setting"), excludes("torque", "setting"),
                          needs("multiplier_efficiency", "multiplier_ratio"),
                          needs("efficiency_range", "multiplier_ratio"), needs("reaction_arm", "multiplier_ratio")};

/// One of several extensions or bars has a name of its own in the library.
Error in_words(const GivenJob<ReachJob>& given, const Error& error) {
  const std::string_view argument = error.argument();
  const bool options = given.spelling == Spelling::option;
  if (options && argument.starts_with("extension_")) return {"extension", error.what()};
  if (options && argument.starts_with("bar_")) return {"bar", error.what()};
  return given.in_words(error);
}

}  // namespace of_reach
}  // namespace

std::span<const Input<ReachJob>> reach_inputs() { return of_reach::inputs; }

Outcome<ReachAnswer> try_reach(const Call& call) {
  auto given = try_read<ReachJob>(of_reach::inputs, call, of_reach::rules);
  if (!given) return given.error();
  ReachJob job = given->job;
  job.known = given->has("setting") ? ReachJob::Known::setting : ReachJob::Known::at_fastener;
  const auto found = tauten::try_reach(job);
  if (!found) return of_reach::in_words(*given, found.error());
  ReachAnswer answer{*found, job};
  if (!job.extensions.empty() && !given->has("wrench_length"))
    answer.notices.push_back(tauten::detail::assumed_length(job));
  return answer;
}

}  // namespace tauten::shared
