// What to heed with a stuck fastener, and what its history means for the next tightening.
#pragma once

#include <algorithm>
#include <string>
#include <vector>
#include "tauten/base/caution.hpp"
#include "tauten/loosening/after_release.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/part/inch_head.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/capacity.hpp"
#include "tauten/question/workings/free_checks.hpp"
#include "tauten/question/workings/key_screws.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Whether one aid comes after another, among those already used and those of any step of the plan.
inline bool comes_after(Aid later, Aid earlier, const std::vector<AidUse>& done, const std::vector<PlanStep>& steps) {
  const auto in = [&](const std::vector<AidUse>& first, const std::vector<AidUse>& then) {
    bool seen = false, found = false;
    for (const std::vector<AidUse>* aids : {&first, &then})
      for (const AidUse& use : *aids) {
        found = found || (seen && use.aid == later);
        seen = seen || use.aid == earlier;
      }
    return found;
  };
  bool found = in(done, {});
  for (const PlanStep& step : steps) found = found || in(done, step.aids);
  return found;
}
/// Whether an aid was used or is in the plan.
inline bool is_used(Aid aid, const std::vector<AidUse>& done, const std::vector<PlanStep>& steps) {
  const auto is = [&](const AidUse& use) { return use.aid == aid; };
  return std::any_of(done.begin(), done.end(), is) ||
         std::any_of(steps.begin(), steps.end(),
                     [&](const PlanStep& step) { return std::any_of(step.aids.begin(), step.aids.end(), is); });
}

inline void add_notices(const FreeJob& job, Free& answer, bool at_odds) {
  const auto say = [&](bool holds, const char* code, const std::string& text, bool estimate = false) {
    if (holds) answer.notices.push_back({code, text, estimate});
  };
  for (const Caution& caution : {cautions::stored_energy, cautions::pressurised_flange, cautions::suspended_load,
                                 cautions::bolt_axis, cautions::tool_bursts, cautions::line_of_slip,
                                 cautions::eye_protection, cautions::no_pipe, cautions::impact_sockets})
    answer.notices.push_back(caution);
  say(job.drive == DriveFit::twelve_point, "six_point",
      "Take a six-point socket: it reaches nearly twice as much of each flank, and still holds on worn corners on "
      "which twelve points spin.");
  const bool lobes = job.drive == DriveFit::hexalobular;
  say(answer.round.nominal.si == 0, "tool_spins",
      lobes ? "The lobes are too far gone: this bit turns in the recess. Take another grip and ask again."
            : "The corners are too far gone: this tool spins on them. Take one that grips, and ask again.");
  say(at_odds, "outcomes_at_odds",
      "The fasteners already loosened lie far from what this description leads one to expect: check thread, class and "
      "state of rust again.",
      true);
  say(!job.assumed_thread.empty(), "thread_assumed",
      "No thread is given: " + job.assumed_thread +
          " is assumed, the most common one that takes this tool. Measure diameter and pitch.",
      true);
  const bool key = is_internal(job.drive);
  say(!lobes && !inch_bolt(job.width_across_flats.value_or(Length()), key).empty(), "inch_tool",
      std::string("The ") + (key ? "key" : "tool") +
          " has an inch size: the bolt is probably an inch bolt, which the tables do not have. The figures hold only "
          "if the "
          "thread is metric: check it with a pitch gauge.");
  if (job.drive == DriveFit::internal_hexagon) {
    const auto is_same = [&](const Thread& t) { return same_length(t.diameter.si, job.diameter->si); };
    const KeyScrews same = key_screws(*job.width_across_flats, is_same);
    KeyScrews others = key_screws(*job.width_across_flats, [&](const Thread& t) { return !is_same(t); });
    say(same.cap.empty() && !(same.button + same.sunk).empty(), "low_head",
        "This key fits a button head or countersunk screw of this thread: its recess is low and rounds off early, and "
        "a "
        "countersunk head rubs in its cone on about 1.4 times the lever of a flat face, so that it comes free at more "
        "torque than stated here. The head bears about 80 % of its class: it may break off.");
    // A thread that was measured rules the others out.
    if (!job.assumed_thread.empty()) {
      others.cap.clear();
      const std::string text = key_screws_text(others);
      say(!text.empty(), "other_screws",
          "The same key fits " + text +
              ", for which these figures do not hold: look at the head and measure the thread "
              "first.");
    }
  }
  say(job.class_assumed, "unmarked_head",
      std::string("No class is given. Treat an unmarked steel head as class ") + unmarked_class +
          ". Check the head: all strength figures depend on it.",
      true);
  say(!job.thread_direction, "thread_direction",
      "Check which way it loosens before pulling: most threads are right-hand and loosen anticlockwise, but parts that "
      "turn, such as impellers and couplings, are often held by left-hand threads.");
  say(job.thread_direction == ThreadDirection::left, "left_hand", "Left-hand thread: it loosens clockwise.");
  say(job.rust == Rust::galled_stainless, "galled",
      "Galled stainless steel seizes further as it turns: turn slowly, stop when the torque rises, and expect to cut "
      "it. "
      "Heat and impacts help little.");
  say(job.rust == Rust::seized_in_aluminium, "seized_in_aluminium",
      "Steel seized in aluminium: the thread in the part is weaker than the bolt and may come out with it. Heat the "
      "part, not the bolt, and keep aluminium below 150 \u00b0C.",
      true);
  say(lobes, "clean_recess",
      "Clean the recess to its floor and drive the bit home: a recess that is half filled holds half as much.");
  const HeatLimit heat = heat_limit_of(job);
  if (heat.allowed) answer.notices.push_back(cautions::heat_near);
  const auto warn = [&](bool holds, const Caution& caution) {
    if (holds) answer.notices.push_back(caution);
  };
  warn(comes_after(Aid::heat, Aid::fluid, job.aids, answer.steps), cautions::heat_after_fluid);
  warn(comes_after(Aid::fluid, Aid::heat, job.aids, answer.steps), cautions::fluid_after_heat);
  warn(is_used(Aid::cold, job.aids, answer.steps), cautions::cold_burns);
  warn(is_used(Aid::fluid, job.aids, answer.steps), cautions::lubricant_places);
  warn(is_used(Aid::heat, job.aids, answer.steps), cautions::hot_fumes);
  warn(is_used(Aid::cut, job.aids, answer.steps), cautions::cutting);
  answer.notices.insert(answer.notices.end(), heat.reasons.begin(), heat.reasons.end());
  say(job.limit && job.limit->si > answer.stop_at.si, "limit_above_stop",
      "The limit of " + (job.limit ? shop_text(*job.limit) : std::string()) + " lies above what any pull may reach, " +
          shop_text(answer.stop_at) + ".");
  say(!job.preload && rust_state(job.rust).loaded, "preload_assumed",
      "The preload is not known; about half of yield is assumed, with a wide band.", true);
  say(job.drive_square && find_square_drive(*job.drive_square) == nullptr, "square_unknown",
      "No square drive of " + shop_text(job.drive_square.value_or(Length())) +
          " is known; its strength is left out of account.");
  say(job.drive_square && find_square_drive(*job.drive_square) != nullptr, "square_from_memory",
      "The strength of the square drive is from memory, not checked against the standard.", true);
  say(true, "rust_estimate",
      "The effect of rust on friction, bond and section is judgement: no measured figures were found. Trust the order "
      "of "
      "the choices more than the chances.",
      true);
  say(true, "drive_estimate",
      lobes ? "Recess strength is estimated from contact pressure, bit strength from its hardness."
            : "Corner strength is estimated from contact pressure, tool strength from its test torque.",
      true);
  const bool across = !is_internal(job.drive);
  const Interval tried =
      job.drive == DriveFit::open_end ? OpenEndTestTorque::inputs[0].validity : RingTestTorque::inputs[0].validity;
  say(across && !tried.contains(job.width_across_flats->si), "tool_beyond_table",
      "No test torque is known for a tool this wide; it is extrapolated from smaller ones.", true);
  say(across && rust_state(job.rust).metal_loss.median > 0 && !(job.corner_loss.si > 0), "measure_corners",
      "The corners count as new. Rust removes corners too: measure across flats and corners, and enter what is missing "
      "(input: corner loss).");
  say(!answer.steps.empty(), "aid_estimate", "The effect of the aids is judgement, given as wide bands.", true);
  answer.notices.push_back(cautions::replace_used_up);
  answer.notices.push_back(cautions::no_release);
}

/// From this rise above the room on steel is red-hot, seen in the dark: the Draper point, 525 degrees Celsius.
inline constexpr double red_hot_rise = 505;

/// \param next  aids that are advised, and will have been used by then
inline ReleaseHistory history_of(const FreeJob& job, const std::vector<AidUse>& next) {
  ReleaseHistory past;
  for (const Neighbour& other : job.loosened) {
    past.sheared = past.sheared || other.how == Neighbour::How::sheared;
    past.rounded = past.rounded || other.how == Neighbour::How::rounded;
  }
  past.past_yield =
      job.preload && job.preload->si > job.yield_strength->si * StressArea::eval(job.diameter->si, job.pitch->si);
  past.galled = job.rust == Rust::galled_stainless;
  past.rusted = !past.galled && job.rust != Rust::clean && job.rust != Rust::aged_dry;
  past.locking_element = job.prevailing_torque.si > 0 || job.surroundings.adhesive;
  for (const std::vector<AidUse>* aids : {&job.aids, &next})
    for (const AidUse& use : *aids) {
      past.fluid_left = past.fluid_left || use.aid == Aid::fluid;
      past.heated = past.heated || use.aid == Aid::heat;
      past.glowed = past.glowed || (use.aid == Aid::heat && use.nut_rise.si >= red_hot_rise);
    }
  return past;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
