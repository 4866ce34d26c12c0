// The whole question of a stuck fastener: will it come free before something gives, where to stop, what to do next.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/loosening/after_release.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/question/workings/aid.hpp"
#include "tauten/question/workings/capacity_list.hpp"
#include "tauten/question/workings/free_plan.hpp"
#include "tauten/question/workings/learned_model.hpp"
#include "tauten/question/workings/stop.hpp"

namespace tauten {

/// What is left to happen to a fastener that is seen not to have moved at a torque.
struct IfHeld {
  Torque held;
  Chances chances;  ///< from there on, up to their limit

  template <class V>
  static void fields(V&& visit) {
    visit("held", &IfHeld::held);
    visit("chances", &IfHeld::chances);
  }
};

/// Answer to a `FreeJob`. Bands hold nine of ten cases.
struct Free {
  Band<Torque> breakaway;                  ///< torque at which it would come free
  Band<Torque> shear;                      ///< torque at the head at which the bolt shears
  Band<Torque> round;                      ///< torque at which the corners round off, or the recess strips
  Band<Torque> tool;                       ///< torque at which socket, key, bit or square fails
  std::optional<Band<Torque>> arm;         ///< torque that the arm reaches, if turned by hand
  std::vector<Capacity> capacities;        ///< what each part takes, and where the figure comes from
  Torque stop_at;                          ///< torque that must not be exceeded: the least of `stop_bounds`
  StopLimit stop_limit = StopLimit::gain;  ///< which of them that is
  bool stopped_by_shear = false;           ///< it is the accepted chance of shearing
  std::vector<StopBound> stop_bounds;      ///< everything that limits the torque
  Chances chances;  ///< of the whole pull from zero or `held` to the given limit, or to `stop_at` if none was given
  std::vector<IfHeld> if_held;     ///< chances of what is left of that pull, once some of it has been held
  std::vector<Chances> curve;      ///< chances against the limit, from 0 upwards
  double standard_error = 0;       ///< greatest one of any chance, from the number of trials
  std::optional<Learned> learned;  ///< from the fasteners already undone
  std::vector<PlanStep> steps;     ///< what could be done, by damage
  std::size_t next = 0;            ///< the advised one of them: the first that is worth the pull
  std::size_t enough = 0;          ///< the one by which it has come free with the wanted chance, or the last
  AfterRelease after;
  std::vector<Notice> notices;  ///< cautions and estimates

  template <class V>
  static void fields(V&& visit) {
    visit("breakaway", &Free::breakaway);
    visit("shear", &Free::shear);
    visit("round", &Free::round);
    visit("tool", &Free::tool);
    visit("arm", &Free::arm);
    visit("capacities", &Free::capacities);
    visit("stop_at", &Free::stop_at);
    visit("stop_limit", &Free::stop_limit);
    visit("stopped_by_shear", &Free::stopped_by_shear);
    visit("stop_bounds", &Free::stop_bounds);
    visit("chances", &Free::chances);
    visit("if_held", &Free::if_held);
    visit("curve", &Free::curve);
    visit("standard_error", &Free::standard_error);
    visit("learned", &Free::learned);
    visit("steps", &Free::steps);
    visit("next", &Free::next);
    visit("enough", &Free::enough);
    visit("after", &Free::after);
    visit("notices", &Free::notices);
  }
};

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
  for (const Caution& caution : {cautions::stored_energy, cautions::line_of_slip, cautions::eye_protection,
                                 cautions::no_pipe, cautions::impact_sockets})
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
  answer.notices.insert(answer.notices.end(), heat.reasons.begin(), heat.reasons.end());
  say(job.limit && job.limit->si > answer.stop_at.si, "limit_above_stop",
      "The limit of " + (job.limit ? shop_text(*job.limit) : std::string()) + " lies above the torque to stop at, " +
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
      "The corners count as new. Rust removes corners too: measure across flats and corners, and enter the loss as "
      "corner_loss.");
  say(!answer.steps.empty(), "aid_estimate", "The effect of the aids is judgement, given as wide bands.", true);
  answer.notices.push_back(cautions::replace_used_up);
  answer.notices.push_back(cautions::no_release);
}

/// \param next  aids that are advised, and will have been used by then
inline ReleaseHistory history_of(const FreeJob& job, const std::vector<AidUse>& next) {
  ReleaseHistory past;
  past.rusted = job.rust != Rust::clean && job.rust != Rust::aged_dry;
  past.locking_element = job.prevailing_torque.si > 0 || job.surroundings.adhesive;
  for (const std::vector<AidUse>* aids : {&job.aids, &next})
    for (const AidUse& use : *aids) {
      past.fluid_left = past.fluid_left || use.aid == Aid::fluid;
      past.heated = past.heated || use.aid == Aid::heat;
    }
  return past;
}

/// Fewer trials that count say nothing.
inline constexpr std::uint64_t least_held = 200;

/// A line that frees fewer is not worth the pull while others free more.
inline constexpr double worthwhile = 0.05;

/// Fills the steps of the plan: each for those that the lines above have left stuck, and within what these have left of
/// the accepted chances. Picks the next one: the first that is worth the pull; cutting only where nothing else frees.
/// The accepted chances are shared out evenly among the lines, and what a line does not use goes to those after it: one
/// that used them up would leave nothing for the aids that help most.
/// \param bare  the run without any further aid
/// \param pull  the same with an arm that never gives out
/// \param stuck, hard  the fasteners of both runs
inline void plan(const FreeJob& job, const ReleaseModel& start, const Simulation& bare, const Simulation& pull,
                 Stuck stuck, Stuck hard, Free& answer) {
  double left = 1, freed = 0, line = 0;
  // Half of the trials will do for the lines.
  const std::uint64_t trials = std::min(bare.drawn(), std::max<std::uint64_t>(20'000, bare.drawn() / 2));
  for (Stuck* some : {&stuck, &hard})
    if (some->all > 0) {
      some->trial.resize(trials);
      some->all = trials;
    }
  std::vector<std::vector<AidUse>> lines = sequences(job, heat_limit_of(job));
  for (std::vector<AidUse>& aids : lines) {
    PlanStep step;
    FreeJob used = job;
    ReleaseModel m = start;
    step.why = aids.empty() ? "costs nothing but the risks listed above" : why_of(job, aids.back());
    bool cut = false;
    for (const AidUse& use : aids) {
      if (use.aid == Aid::another_tool) {
        m = with_other_tool(m, job);
        used = with_other_tool(job);
      } else {
        m = with_aid(m, use, job.thread_friction, job.bearing_friction);
      }
      step.minutes += aid_effect(use.aid).minutes + 60 * (use.aid == Aid::fluid ? use.soak_hours : 0);
      step.damage = std::max(step.damage, aid_effect(use.aid).damage);
      cut = cut || use.aid == Aid::cut;
    }
    if (cut) {
      step.chances.free = step.freed_by = 1;
    } else {
      const bool first = aids.empty();
      const double risk = job.shear_risk * ++line / static_cast<double>(lines.size() - 1);
      std::optional<Simulation> run, strong;
      if (!first) run = simulate(m, trials, job.seed, job.jobs, 0, std::nullopt, &stuck);
      if (!first) strong = tireless(used, m, std::nullopt, trials, hard);
      const Simulation& s = first ? bare : *run;
      const StopBound stop = least_of(stop_bounds(used, m, first ? pull : strong ? *strong : s, s, risk));
      step.stop_limit = stop.limit;
      step.stop_at = job.limit ? std::min(stop.torque, *job.limit) : stop.torque;
      step.chances = s.at(step.stop_at);
      step.damage = std::max(step.damage, damage_of(step.chances));
      freed += left * step.chances.free;
      left *= step.chances.not_moving;
      step.freed_by = std::min(1.0, freed);
      // Where too few would be left to count, the lines that follow are judged by those that were stuck before this one.
      for (Stuck* some : {&stuck, &hard}) {
        Stuck after = *some;
        after.pull(step.stop_at);
        if (after.trial.size() >= least_held) *some = std::move(after);
      }
    }
    step.instructions = instructions_of(job, aids);
    step.aids = std::move(aids);
    answer.steps.push_back(std::move(step));
  }
  const auto first = [&](auto holds) {
    std::size_t place = 0;
    while (place + 1 < answer.steps.size() && !holds(answer.steps[place])) ++place;
    return place;
  };
  answer.next = first([](const PlanStep& step) { return step.chances.free >= worthwhile; });
  // Where no single line is worth it, but all of them together are, the best of them.
  if (answer.next + 1 == answer.steps.size() && freed >= worthwhile)
    for (std::size_t i = answer.next = 0; i + 1 < answer.steps.size(); ++i)
      if (answer.steps[i].chances.free > answer.steps[answer.next].chances.free) answer.next = i;
  answer.enough = first([&](const PlanStep& step) { return step.freed_by >= job.wanted_chance; });
}

inline Error never_held(const FreeJob& job, std::uint64_t count) {
  return Error(
      "held", ("held is " + shop_text(*job.held) + ", but only " + std::to_string(count) + " of " +
               std::to_string(job.trials) + " simulated fasteners bear that without moving or breaking, and at least " +
               std::to_string(least_held) + " must; look at class, rust and tool again, or take more trials")
                  .c_str());
}

/// Fills in what is left once half, three quarters and nine tenths of the pull have been held.
inline void add_outlook(const FreeJob& job, const Simulation& s, Free& answer) {
  const double from = job.held && !job.held_untreated ? job.held->si : 0;
  const Torque limit = answer.chances.limit;
  for (const double share : {0.5, 0.75, 0.9}) {
    const Torque held(from + share * (limit.si - from));
    // A hundredth of the trials, so that the figures stand.
    if (limit.si > from && s.unmoved_at(held) >= 0.01) answer.if_held.push_back({held, s.after(held, limit)});
  }
}

}  // namespace detail

/// Judges a stuck fastener.
/// \return chances, torque to stop at, next steps and cautions, or what is wrong with the description
inline Outcome<Free> try_free_joint(const FreeJob& job) {
  if (auto error = detail::job_error(job)) return *error;
  const auto release = detail::try_learned_model(job);
  if (!release) return release.error();
  const ReleaseModel& model = release->model;
  std::optional<Held> held;
  if (job.held) held = Held{job.held_untreated ? release->untreated : model, *job.held};
  Free answer;
  answer.learned = release->learned;

  const auto trials = static_cast<std::uint64_t>(job.trials);
  Stuck stuck, hard;
  const Simulation s = simulate(model, trials, job.seed, job.jobs, end_of_range(model), held, &stuck);
  if (s.trials() < detail::least_held) return detail::never_held(job, s.trials());
  const detail::TorqueSample sample(model, job.seed, held);
  if (sample.count() < detail::least_held) return detail::never_held(job, sample.count());
  using detail::Draws;
  answer.breakaway = sample.band(Draws::free);
  answer.shear = sample.band(Draws::shear);
  answer.round = sample.band(Draws::rounded);
  answer.tool = sample.band(Draws::tool);
  if (job.handle_length) answer.arm = sample.band(Draws::arm);
  answer.capacities = detail::capacities_of(job, model, answer.shear, answer.round, held ? held->torque : Torque(0.0));

  answer.standard_error = 0.5 / std::sqrt(static_cast<double>(s.trials()));
  const std::optional<Simulation> strong = detail::tireless(job, model, held, trials, hard);
  const Simulation& pull = strong ? *strong : s;
  answer.stop_bounds = detail::stop_bounds(job, model, pull, s, job.shear_risk);
  const StopBound stop = detail::least_of(answer.stop_bounds);
  answer.stop_at = stop.torque;
  answer.stop_limit = stop.limit;
  answer.stopped_by_shear = stop.limit == StopLimit::shear;
  const bool spins = stop.limit == StopLimit::spins;
  answer.chances = s.at(job.limit ? *job.limit : answer.stop_at);
  detail::add_outlook(job, s, answer);
  constexpr int points = 60;
  // Where the tool spins, everything has ended before it begins.
  const double last =
      std::min(spins ? never_reached.median : s.greatest().si,
               1.2 * std::max({answer.breakaway.high.si, answer.stop_at.si, job.limit ? job.limit->si : 0.0}));
  for (int i = 0; i <= points; ++i) answer.curve.push_back(s.at(Torque(last * i / points)));
  detail::plan(job, model, s, pull, std::move(stuck), std::move(hard), answer);
  answer.after = after_release(detail::history_of(job, answer.steps[answer.next].aids));
  detail::add_notices(job, answer, release->at_odds);
  return answer;
}

/// \copydoc try_free_joint
/// \throws Error  on such input
inline Free free_joint(const FreeJob& job) { return try_free_joint(job).value(); }

}  // namespace tauten
