// The whole question of a stuck fastener: will it come free before something gives, where to stop, what to do next.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/loosening/after_release.hpp"
#include "tauten/loosening/aid.hpp"
#include "tauten/loosening/capacity_list.hpp"
#include "tauten/loosening/free_plan.hpp"
#include "tauten/loosening/learn.hpp"

namespace tauten {

namespace detail {

/// The model after the aids already used.
inline ReleaseModel after_aids(ReleaseModel m, const FreeJob& job) noexcept {
  for (const AidUse& use : job.done) m = with_aid(m, use, job.thread_friction, job.bearing_friction);
  return m;
}

}  // namespace detail

/// What can be drawn for a job, aids already used included.
inline ReleaseModel release_model(const FreeJob& job) noexcept {
  return detail::after_aids(detail::bare_model(job), job);
}

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

/// Whether fluid is on the joint by the time that it is heated.
inline bool heat_after_fluid(const std::vector<AidUse>& aids) noexcept {
  bool wet = false, burns = false;
  for (const AidUse& use : aids) {
    wet = wet || use.aid == Aid::fluid;
    burns = burns || (wet && use.aid == Aid::heat);
  }
  return burns;
}
inline bool heat_after_fluid(const std::vector<AidUse>& done, const std::vector<PlanStep>& steps) {
  bool burns = heat_after_fluid(done);
  for (const PlanStep& step : steps) {
    std::vector<AidUse> all = done;
    all.insert(all.end(), step.aids.begin(), step.aids.end());
    burns = burns || heat_after_fluid(all);
  }
  return burns;
}

inline void add_notices(const FreeJob& job, Free& answer) {
  const auto say = [&](bool holds, const char* code, const std::string& text, bool estimate = false) {
    if (holds) answer.notices.push_back({code, text, estimate});
  };
  for (const Caution& caution : {cautions::stored_energy, cautions::line_of_slip, cautions::eye_protection,
                                 cautions::no_pipe, cautions::impact_sockets})
    answer.notices.push_back(caution);
  say(job.drive == DriveFit::twelve_point, "six_point",
      "Take a six-point socket: it reaches nearly twice as much of each flank, and still holds on worn corners on "
      "which "
      "twelve points spin.");
  const bool lobes = job.drive == DriveFit::hexalobular;
  say(answer.round.nominal.si == 0, "tool_spins",
      lobes ? "The lobes are too far gone: this bit turns in the recess."
            : "The corners are too far gone: this tool spins on them.");
  say(lobes, "clean_recess",
      "Clean the recess to its floor and drive the bit home: a recess that is half filled holds half as much.");
  const HeatLimit heat = heat_limit(job.near);
  if (heat.allowed) answer.notices.push_back(cautions::heat_near);
  if (heat_after_fluid(job.done, answer.steps)) answer.notices.push_back(cautions::heat_after_fluid);
  answer.notices.insert(answer.notices.end(), heat.reasons.begin(), heat.reasons.end());
  say(job.limit && job.limit->si > answer.stop_at.si, "limit_above_stop",
      "The limit of " + (job.limit ? shop_text(*job.limit) : std::string()) + " lies above the torque to stop at, " +
          shop_text(answer.stop_at) + ".");
  say(!job.preload && rust_state(job.rust).loaded, "preload_assumed",
      "The preload is not known; about half of yield is taken, with a wide band.", true);
  say(job.square.si > 0 && find_square_drive(job.square) == nullptr, "square_unknown",
      "No square drive of " + shop_text(job.square) + " is known; its strength was not looked at.");
  say(job.square.si > 0 && find_square_drive(job.square) != nullptr, "square_from_memory",
      "The strength of the square drive is remembered.", true);
  say(true, "rust_estimate",
      "What rust does to friction, bond and section is judgement: no measured figures were found. Trust the order of "
      "the choices more than the chances.",
      true);
  say(true, "drive_estimate",
      lobes ? "What the recess takes is an estimate from contact pressure, what the bit takes one from its hardness."
            : "What the corners take is an estimate from contact pressure.",
      true);
  say(!answer.steps.empty(), "aid_estimate", "What the aids do is judgement, given as wide bands.", true);
  answer.notices.push_back(cautions::replace_used_up);
  answer.notices.push_back(cautions::no_release);
}

inline ReleaseHistory history_of(const FreeJob& job) {
  ReleaseHistory past;
  past.rusted = job.rust != Rust::clean && job.rust != Rust::aged_dry;
  past.locking_element = job.prevailing_torque.si > 0 || job.near.adhesive;
  for (const AidUse& use : job.done) {
    past.fluid_left = past.fluid_left || use.aid == Aid::fluid;
    past.heated = past.heated || use.aid == Aid::heat;
  }
  return past;
}

/// The greatest torque that is worth while within the risk of shearing.
inline Torque stop_of(const FreeJob& job, const Simulation& s) noexcept {
  return std::min(s.limit_for_shear(job.shear_risk), s.limit_for_gain());
}

/// Fills the steps of the plan and picks the next one: the mildest that promises the wanted chance, else cutting.
/// \param bare  the run without any further aid
inline void plan(const FreeJob& job, const ReleaseModel& start, const std::optional<Held>& held, const Simulation& bare,
                 Free& answer) {
  const HeatLimit heat = heat_limit(job.near);
  // A quarter of them will do for a comparison, unless most fall out of the count.
  const auto trials = static_cast<std::uint64_t>(held ? job.trials : std::max(1000, job.trials / 4));
  for (std::vector<AidUse>& aids : sequences(job.done, heat.allowed, heat.greatest_rise)) {
    PlanStep step;
    ReleaseModel m = start;
    step.why = aids.empty() ? "nothing is spent or damaged by trying up to the torque to stop at"
                            : aid_effect(aids.back().aid).why;
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
      const Simulation s = aids.empty() ? bare : simulate(m, trials, job.seed, job.threads, bare.greatest().si, held);
      step.stop_at = stop_of(job, s);
      if (job.limit) step.stop_at = std::min(step.stop_at, *job.limit);
      step.chances = s.at(step.stop_at);
    }
    step.aids = std::move(aids);
    answer.steps.push_back(std::move(step));
  }
  while (answer.next + 1 < answer.steps.size() && answer.steps[answer.next].chances.free < job.wanted_chance)
    ++answer.next;
}

}  // namespace detail

namespace detail {

/// What can be drawn for a job, with what was learned from the fasteners already undone.
struct LearnedModel {
  ReleaseModel untreated;  ///< before the aids already used
  ReleaseModel model;      ///< after them
  std::optional<Learned> learned{};
};

/// Learns from the outcomes that are treated or not, as `treated` says.
/// \return what is wrong with them, or nothing
inline std::optional<Error> learn_from(const FreeJob& job, bool treated, ReleaseModel& m,
                                       std::optional<Learned>& learned) {
  std::vector<Undone> outcomes;
  for (const Undone& one : job.undone)
    if (one.treated == treated) outcomes.push_back(one);
  if (outcomes.empty()) return std::nullopt;
  const Lognormal before = TorqueSample(m, job.seed).free_torque();
  if (!(before.median > 0))
    return Error("undone",
                 "undone: as it is described, the joint comes free without torque, so that nothing can be learned from "
                 "like ones; look at rust and preload, or leave undone out");
  const Outcome<Learned> found = try_learn(prior_of(before), outcomes);
  if (!found) return found.error();
  m = with_learned(m, before, found->predictive, job.seed);
  const int earlier = learned ? learned->count : 0;
  learned = *found;
  learned->count += earlier;
  return std::nullopt;
}

/// In the order in which it happened: bolts undone as they were, aids, bolts undone after them.
inline Outcome<LearnedModel> try_learned_model(const FreeJob& job) {
  LearnedModel out;
  out.untreated = bare_model(job);
  if (const auto error = learn_from(job, false, out.untreated, out.learned)) return *error;
  out.model = after_aids(out.untreated, job);
  if (const auto error = learn_from(job, true, out.model, out.learned)) return *error;
  return out;
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
inline void look_on(const FreeJob& job, const Simulation& s, Free& answer) {
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
  const Simulation s = simulate(model, trials, job.seed, job.threads, end_of_range(model), held);
  if (s.trials() < detail::least_held) return detail::never_held(job, s.trials());
  const detail::TorqueSample sample(model, job.seed, held);
  using detail::Draws;
  answer.breakaway = sample.band(Draws::free);
  answer.shear = sample.band(Draws::shear);
  answer.round = sample.band(Draws::round);
  answer.tool = sample.band(Draws::tool);
  if (job.handle_length.si > 0) answer.arm = sample.band(Draws::arm);
  answer.capacities = detail::capacities_of(job, model, answer.shear, held ? held->torque : Torque(0.0));

  answer.standard_error = 0.5 / std::sqrt(static_cast<double>(s.trials()));
  answer.stop_at = detail::stop_of(job, s);
  answer.stopped_by_shear = answer.stop_at < s.limit_for_gain();
  answer.chances = s.at(job.limit ? *job.limit : answer.stop_at);
  detail::look_on(job, s, answer);
  constexpr int points = 60;
  const double last = std::min(
      s.greatest().si, 1.2 * std::max({answer.breakaway.high.si, answer.stop_at.si, job.limit ? job.limit->si : 0.0}));
  for (int i = 0; i <= points; ++i) answer.curve.push_back(s.at(Torque(last * i / points)));
  detail::plan(job, model, held, s, answer);
  answer.after = after_release(detail::history_of(job));
  detail::add_notices(job, answer);
  return answer;
}

/// \copydoc try_free_joint
/// \throws Error  on such input
inline Free free_joint(const FreeJob& job) { return try_free_joint(job).value(); }

}  // namespace tauten
