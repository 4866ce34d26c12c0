// What kind of notice it is: a hazard, something about these numbers, or how far to trust them.
#pragma once

#include <cstddef>

#include "tauten/base/caution.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// Where a notice stands on a page.
enum class NoticeKind : unsigned char {
  hazard,    ///< someone or something may be hurt, and this answer gives the reason
  standing,  ///< a caution that holds for every job
  finding,   ///< something about these numbers
  trust      ///< an assumption or an estimate
};

template <>
struct Words<NoticeKind> {
  static constexpr const char* list[] = {"hazard", "standing", "finding", "trust"};
};

namespace detail {

/// Cautions that hold whatever the answer is; a page names them in one line.
inline constexpr std::string_view standing_notices[] = {"line_of_slip", "eye_protection", "no_pipe", "no_release"};

/// Notices on what may hurt someone or break, apart from the cautions themselves.
inline constexpr std::string_view hazard_notices[] = {"bar_twist",
                                                      "cold_bolt",
                                                      "drive_overloaded",
                                                      "engagement_short",
                                                      "fluid_left",
                                                      "folded_back",
                                                      "friction_not_as_specified",
                                                      "galled",
                                                      "galling",
                                                      "hand_force",
                                                      "hot_bolt",
                                                      "inch_tool",
                                                      "inspect_rusted",
                                                      "joint_opens",
                                                      "joint_slips",
                                                      "left_hand",
                                                      "limit_above_stop",
                                                      "low_head",
                                                      "may_be_slack",
                                                      "may_break",
                                                      "may_have_yielded",
                                                      "may_neck",
                                                      "may_open",
                                                      "may_separate",
                                                      "may_strip",
                                                      "only_some_holes_meet",
                                                      "order_goes_round",
                                                      "other_screws",
                                                      "paste_first",
                                                      "pressure",
                                                      "pressure_trapped",
                                                      "rating_unknown",
                                                      "reaction_arm",
                                                      "reduced_loadability",
                                                      "replace_damaged",
                                                      "replace_galled",
                                                      "replace_glowed",
                                                      "replace_heated",
                                                      "replace_locking",
                                                      "replace_past_yield",
                                                      "seized_in_aluminium",
                                                      "separates",
                                                      "setting_above_scale",
                                                      "several_standards",
                                                      "single_use",
                                                      "stretched",
                                                      "structural_may_neck",
                                                      "thread_direction",
                                                      "tilted",
                                                      "tool_spins",
                                                      "universal_joint_and_extension",
                                                      "universal_joint_bend",
                                                      "unmarked_head",
                                                      "unusual_angle",
                                                      "unusual_torque",
                                                      "watch_the_torque",
                                                      "weak_nut",
                                                      "which_aluminium",
                                                      "wound_up_bars"};

/// Notices on what an answer rests on, that no estimate is behind.
inline constexpr std::string_view trust_notices[] = {"before_embedding", "bearing_estimated", "class_from_memory",
                                                     "head_assumed",     "length_assumed",    "snug_assumed",
                                                     "width_assumed"};

template <std::size_t N>
constexpr bool lists(const std::string_view (&codes)[N], std::string_view code) noexcept {
  for (const std::string_view one : codes)
    if (one == code) return true;
  return false;
}

}  // namespace detail

/// \return where the notice stands: an estimate is a matter of trust unless it is a hazard
constexpr NoticeKind kind_of(std::string_view code, bool is_estimate) noexcept {
  if (detail::lists(detail::standing_notices, code)) return NoticeKind::standing;
  if (cautions::is_one(code) || code.starts_with("heat_") || detail::lists(detail::hazard_notices, code))
    return NoticeKind::hazard;
  return is_estimate || detail::lists(detail::trust_notices, code) ? NoticeKind::trust : NoticeKind::finding;
}

}  // namespace tauten::TAUTEN_ABI
