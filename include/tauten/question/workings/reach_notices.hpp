// The notices of `reach`.
#pragma once

#include <string>
#include <vector>

#include "tauten/base/caution.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/question/reach_job.hpp"
#include "tauten/tool/drive_sizes.hpp"
#include "tauten/tool/hand.hpp"

namespace tauten::TAUTEN_ABI {

/// Bend of a universal joint up to which it is used for torque work (common practice, no source).
inline constexpr Angle moderate_joint_bend{15 * pi_constant.value / 180};
/// Twist from which an angle read at the handle needs correction (judgement).
inline constexpr Angle noticeable_twist{2 * pi_constant.value / 180};

namespace detail {

/// \return what is said where nobody gave the length of a wrench with an extension; only who reads the inputs knows
inline Notice assumed_length(const ReachJob& job) {
  return {"assumed_length",
          "The wrench is taken to be " + shop_text(job.wrench.length) +
              " long, from its drive to the middle of the hand, and the setting depends on it: measure "
              "yours and give its length."};
}

/// \return what stands out about the numbers of a finished reach, and cautions
inline std::vector<Notice> notices_of(const ReachJob& job, const Reach& reach) {
  std::vector<Notice> list;
  const auto warn = [&](bool holds, const char* code, const std::string& text, bool estimate = false) {
    if (holds) list.push_back({code, text, estimate});
  };
  const bool extended = !job.extensions.empty();
  const TorqueWrench& wrench = job.wrench;
  // A second hand that makes a couple with the first takes the extension out of it.
  warn(extended && reach.extension.along.si < 0 && reach.lever_ratio < 1, "folded_back",
       "The extension folds back over the wrench: the setting is above the torque behind the extension, and errors of "
       "length grow.");
  warn(extended && job.hand_offset.si != 0, "hand_off_mark",
       "The hand is " + shop_text(Length(std::fabs(job.hand_offset.si))) +
           (job.hand_offset.si > 0 ? " beyond" : " inside") +
           " the mark; the setting allows for this. Mark the place.");
  warn(extended && job.support_share > 0, "support_hand",
       "A second hand on the wrench head cancels part of what the extension adds; the share is assumed.", true);
  warn(wrench.hinged_handle, "hinged_handle", "Keep the hinged handle straight while you pull.");
  warn(job.tilt.si != 0, "tilted", "The wrench is tilted by " + shop_text(job.tilt) + "; the socket may slip off.");
  warn(job.universal_joint > moderate_joint_bend, "universal_joint_bend",
       "The universal joint is bent by " + shop_text(job.universal_joint) + "; the torque swings by up to " +
           percent_text(1 / std::cos(job.universal_joint.si) - 1) + " within a turn. Keep to " +
           shop_text(moderate_joint_bend) + ".");
  warn(extended && job.universal_joint.si > 0, "universal_joint_and_extension",
       "A universal joint does not hold an offset extension in line; hold the joint's fastener side by hand.");
  const double most = wrench.scale_high ? wrench.scale_high->si : reach.setting.si;  // unknown: nothing to report
  const double least = wrench.scale_low ? wrench.scale_low->si : reach.setting.si;
  warn(reach.setting.si > most, "setting_above_scale",
       "The setting of " + shop_text(reach.setting) + " is above the wrench's " + shop_text(Torque(most)) +
           "; take a larger wrench or a torque multiplier.");
  warn(reach.setting.si < least, "setting_below_scale",
       "The setting of " + shop_text(reach.setting) + " is below the wrench's lowest mark, " +
           shop_text(Torque(least)) + "; take a smaller wrench.");
  warn(reach.setting.si < lowest_tested_share * most, "setting_low_on_scale",
       "The setting lies below " + percent_text(lowest_tested_share) +
           " of the maximum torque of the wrench, where its accuracy may never have been tested.");
  warn(reach.hand_force > median_pull, "hand_force",
       "The pull needed, " + shop_text(reach.hand_force) + ", is beyond what half of all people can exert (" +
           shop_text(median_pull) + ", braced). Take a longer wrench or a torque multiplier.",
       true);
  const SquareDrive* drive = job.drive_square ? find_square_drive(*job.drive_square) : nullptr;
  if (drive != nullptr)
    warn(reach.arrives.high > drive->driver_test_torque, "drive_overloaded",
         std::string("The ") + drive->inch + " inch square is tested with " + shop_text(drive->driver_test_torque) +
             " and may get " + shop_text(reach.arrives.high) + "; take a larger drive.",
         true);
  else if (job.drive_square)
    warn(true, "drive_unknown",
         "No square drive of " + shop_text(*job.drive_square) + " is known; its strength was not checked.");
  warn(reach.twist > noticeable_twist, "bar_twist",
       "The bars twist by " + shop_text(reach.twist) + "; take the angle of turn at the socket, not at the handle.");
  warn(true, "deviation_from_memory",
       "The permissible deviation of the wrench class is from memory, not checked against the standard.", true);
  warn(true, "tolerances_judged", "The tolerances of hand, angle and operator are estimates unless you gave your own.",
       true);
  list.insert(list.end(), {cautions::line_of_slip, cautions::eye_protection, cautions::no_pipe});
  if (job.multiplier)
    list.push_back({"reaction_arm", "Crushing hazard: the reaction arm of the multiplier presses with " +
                                        (reach.reaction_force.si > 0 ? shop_text(reach.reaction_force)
                                                                     : shop_text(reach.reaction_torque)) +
                                        ". Keep fingers away, and rest the arm on a support that can carry it."});
  if (!job.bars.empty())
    list.push_back({"wound_up_bars", "Wound up, the bars store " + shop_text(reach.stored_energy) +
                                         " and release it all at once if the socket slips. Keep clear."});
  list.push_back(cautions::no_release);
  return list;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
