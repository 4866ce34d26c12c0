// The whole question of a stuck fastener: will it come free before something gives, where to stop, what to do next.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/loosening/after_release.hpp"
#include "tauten/loosening/aid.hpp"
#include "tauten/loosening/capacity_list.hpp"
#include "tauten/loosening/free_plan.hpp"
#include "tauten/loosening/learned_model.hpp"

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
  Band<Torque> breakaway;            ///< torque at which it would come free
  Band<Torque> shear;                ///< torque at the head at which the bolt shears
  Band<Torque> round;                ///< torque at which the corners go, or the recess strips
  Band<Torque> tool;                 ///< torque at which socket, key, bit or square fails
  std::optional<Band<Torque>> arm;   ///< torque that the arm reaches, if turned by hand
  std::vector<Capacity> capacities;  ///< what each part takes, and where the figure comes from
  Torque stop_at;                 ///< greatest torque worth while within the risk of shearing, corners and tool aside
  bool stopped_by_shear = false;  ///< false: more torque gains nothing, whatever the risk
  Chances chances;  ///< of the whole pull from zero or `held` to the given limit, or to `stop_at` if none was given
  std::vector<IfHeld> if_held;     ///< chances of what is left of that pull, once some of it has been held
  std::vector<Chances> curve;      ///< chances against the limit, from 0 upwards
  double standard_error = 0;       ///< greatest one of any chance, from the number of trials
  std::optional<Learned> learned;  ///< from the fasteners already undone
  std::vector<PlanStep> steps;     ///< what could be done, by damage
  std::size_t next = 0;            ///< the advised one of them
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
    visit("stopped_by_shear", &Free::stopped_by_shear);
    visit("chances", &Free::chances);
    visit("if_held", &Free::if_held);
    visit("curve", &Free::curve);
    visit("standard_error", &Free::standard_error);
    visit("learned", &Free::learned);
    visit("steps", &Free::steps);
    visit("next", &Free::next);
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
      "The fasteners already undone lie far from what such a joint typically takes, so that the next one is uncertain: "
      "look at thread, class and state of rust again.",
      true);
  say(lobes, "clean_recess",
      "Clean the recess to its floor and drive the bit home: a recess that is half filled holds half as much.");
  const HeatLimit heat = heat_limit(job.surroundings);
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
      "The preload is not known; about half of yield is taken, with a wide band.", true);
  say(job.drive_square.si > 0 && find_square_drive(job.drive_square) == nullptr, "square_unknown",
      "No square drive of " + shop_text(job.drive_square) + " is known; its strength was not looked at.");
  say(job.drive_square.si > 0 && find_square_drive(job.drive_square) != nullptr, "square_from_memory",
      "The strength of the square drive is remembered.", true);
  say(true, "rust_estimate",
      "What rust does to friction, bond and section is judgement: no measured figures were found. Trust the order of "
      "the choices more than the chances.",
      true);
  say(true, "drive_estimate",
      lobes
          ? "What the recess takes is an estimate from contact pressure, what the bit takes one from its hardness."
          : "What the corners take is an estimate from contact pressure, what the tool takes one from its test torque.",
      true);
  const bool across = !is_internal(job.drive);
  const Interval tried =
      job.drive == DriveFit::open_end ? OpenEndTestTorque::inputs[0].validity : RingTestTorque::inputs[0].validity;
  say(across && !tried.contains(job.width_across_flats.si), "tool_beyond_table",
      "No test torque is known of a tool this wide; what it takes is drawn on from smaller ones.", true);
  say(across && rust_state(job.rust).metal_loss.median > 0 && !(job.corner_loss.si > 0), "measure_corners",
      "The corners count as new. Rust takes them too: measure across the flats and the corners, and say what is gone "
      "as corner_loss.");
  say(!answer.steps.empty(), "aid_estimate", "What the aids do is judgement, given as wide bands.", true);
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

/// The greatest torque that is worth while within the risk of shearing. Whoever has reached a torque had the arm for it:
/// the risk is counted as if the arm never gave out.
inline Torque stop_of(const FreeJob& job, const ReleaseModel& m, const std::optional<Held>& held, const Simulation& s) {
  if (!(m.drive.median > 0)) return Torque(0.0);  // the tool spins
  Torque shear = s.limit_for_shear(job.shear_risk);
  if (m.arm.median < never_reached.median) {
    ReleaseModel strong = m;
    strong.arm = never_reached;
    std::optional<Held> borne = held;
    if (borne) borne->model.arm = never_reached;
    shear = simulate(strong, s.drawn(), job.seed, job.jobs, 0, borne).limit_for_shear(job.shear_risk);
  }
  return std::min(shear, s.limit_for_gain());
}

/// Fills the steps of the plan and picks the next one: the mildest that promises the wanted chance, else cutting.
/// \param bare    the run without any further aid
/// \param answer  has the torque to stop at of that run
inline void plan(const FreeJob& job, const ReleaseModel& start, const std::optional<Held>& held, const Simulation& bare,
                 Free& answer) {
  const HeatLimit heat = heat_limit(job.surroundings);
  // A quarter of them will do for a comparison, unless most fall out of the count.
  const auto trials = static_cast<std::uint64_t>(held ? job.trials : std::max(1000, job.trials / 4));
  for (std::vector<AidUse>& aids : sequences(job.aids, heat.allowed, heat.greatest_rise)) {
    PlanStep step;
    ReleaseModel m = start;
    step.why = aids.empty() ? "costs nothing but the risks listed above" : aid_effect(aids.back().aid).why;
    bool cut = false;
    for (const AidUse& use : aids) {
      m = with_aid(m, use, job.thread_friction, job.bearing_friction);
      step.minutes += aid_effect(use.aid).minutes + 60 * (use.aid == Aid::fluid ? use.soak_hours : 0);
      step.damage = std::max(step.damage, aid_effect(use.aid).damage);
      cut = cut || use.aid == Aid::cut;
    }
    if (cut) {
      step.chances.free = 1;
    } else {
      const Simulation s = aids.empty() ? bare : simulate(m, trials, job.seed, job.jobs, bare.greatest().si, held);
      step.stop_at = aids.empty() ? answer.stop_at : stop_of(job, m, held, s);
      if (job.limit) step.stop_at = std::min(step.stop_at, *job.limit);
      step.chances = s.at(step.stop_at);
    }
    step.aids = std::move(aids);
    answer.steps.push_back(std::move(step));
  }
  while (answer.next + 1 < answer.steps.size() && answer.steps[answer.next].chances.free < job.wanted_chance)
    ++answer.next;
}

/// Fewer trials that count say nothing.
inline constexpr std::uint64_t least_held = 200;

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
  const Simulation s = simulate(model, trials, job.seed, job.jobs, end_of_range(model), held);
  if (s.trials() < detail::least_held) return detail::never_held(job, s.trials());
  const detail::TorqueSample sample(model, job.seed, held);
  if (sample.count() < detail::least_held) return detail::never_held(job, sample.count());
  using detail::Draws;
  answer.breakaway = sample.band(Draws::free);
  answer.shear = sample.band(Draws::shear);
  answer.round = sample.band(Draws::rounded);
  answer.tool = sample.band(Draws::tool);
  if (job.handle_length.si > 0) answer.arm = sample.band(Draws::arm);
  answer.capacities = detail::capacities_of(job, model, answer.shear, answer.round, held ? held->torque : Torque(0.0));

  answer.standard_error = 0.5 / std::sqrt(static_cast<double>(s.trials()));
  answer.stop_at = detail::stop_of(job, model, held, s);
  const bool spins = !(model.drive.median > 0);
  answer.stopped_by_shear = !spins && answer.stop_at < s.limit_for_gain();
  answer.chances = s.at(job.limit ? *job.limit : answer.stop_at);
  detail::add_outlook(job, s, answer);
  constexpr int points = 60;
  // Where the tool spins, everything has ended before it begins.
  const double last =
      std::min(spins ? never_reached.median : s.greatest().si,
               1.2 * std::max({answer.breakaway.high.si, answer.stop_at.si, job.limit ? job.limit->si : 0.0}));
  for (int i = 0; i <= points; ++i) answer.curve.push_back(s.at(Torque(last * i / points)));
  detail::plan(job, model, held, s, answer);
  answer.after = after_release(detail::history_of(job, answer.steps[answer.next].aids));
  detail::add_notices(job, answer, release->at_odds);
  return answer;
}

/// \copydoc try_free_joint
/// \throws Error  on such input
inline Free free_joint(const FreeJob& job) { return try_free_joint(job).value(); }

}  // namespace tauten
