// The whole question of a stuck fastener: will it come free before something gives, where to stop, what to do next.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/loosening/after_release.hpp"
#include "tauten/loosening/aid.hpp"
#include "tauten/loosening/capacity_list.hpp"
#include "tauten/loosening/free_plan.hpp"
#include "tauten/loosening/learn.hpp"

namespace tauten {

/// What can be drawn for a job, aids already used included.
inline ReleaseModel release_model(const FreeJob& job) noexcept {
  ReleaseModel m = detail::bare_model(job);
  for (const AidUse& use : job.done) m = with_aid(m, use, job.thread_friction, job.bearing_friction);
  return m;
}

/// Answer to a `FreeJob`. Bands hold nine of ten cases.
struct Free {
  Band<Torque> breakaway;            ///< torque at which it would come free
  Band<Torque> shear;                ///< torque at the head at which the bolt shears
  Band<Torque> round;                ///< torque at which the corners go, or the recess strips
  Band<Torque> tool;                 ///< torque at which socket, key, bit or square fails
  std::optional<Band<Torque>> arm;   ///< torque that the arm reaches, if turned by hand
  std::vector<Capacity> capacities;  ///< what each part takes, and where the figure comes from
  Torque stop_at;                    ///< greatest torque worth while within the risk of shearing
  bool stopped_by_shear = false;     ///< false: more torque gains nothing, whatever the risk
  Chances chances;                   ///< at the given limit, or at `stop_at` if none was given
  std::vector<Chances> curve;        ///< chances against the limit, from 0 upwards
  double standard_error = 0;         ///< greatest one of any chance, from the number of trials
  std::optional<Learned> learned;    ///< from the fasteners already undone
  std::vector<PlanStep> steps;       ///< what could be done, by damage
  std::size_t next = 0;              ///< the advised one of them
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

/// Fills the steps of the plan and picks the next one: the mildest that promises the wanted chance, else cutting.
inline void plan(const FreeJob& job, const ReleaseModel& start, double end, Free& answer) {
  const HeatLimit heat = heat_limit(job.near);
  const auto trials = static_cast<std::uint64_t>(std::max(1000, job.trials / 4));
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
      const Simulation s = simulate(m, trials, job.seed, job.threads, end);
      step.stop_at = std::min(s.limit_for_shear(job.shear_risk), s.limit_for_gain());
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
  ReleaseModel model;
  std::optional<Learned> learned{};
};

inline Outcome<LearnedModel> try_learned_model(const FreeJob& job) {
  LearnedModel out{release_model(job)};
  if (job.undone.empty()) return out;
  const Lognormal before = TorqueSample(out.model, job.seed).free_torque();
  const Outcome<Learned> learned = try_learn(prior_of(before), job.undone);
  if (!learned) return learned.error();
  out.learned = *learned;
  out.model = with_learned(out.model, before, learned->predictive, job.seed);
  return out;
}

}  // namespace detail

/// Judges a stuck fastener.
/// \return chances, torque to stop at, next steps and cautions, or what is wrong with the description
inline Outcome<Free> try_free_joint(const FreeJob& job) {
  if (auto error = detail::job_error(job)) return *error;
  const auto release = detail::try_learned_model(job);
  if (!release) return release.error();
  const ReleaseModel& model = release->model;
  Free answer;
  answer.learned = release->learned;
  const detail::TorqueSample sample(model, job.seed);
  using detail::Draws;
  answer.breakaway = sample.band(Draws::free);
  answer.shear = sample.band(Draws::shear);
  answer.round = sample.band(Draws::round);
  answer.tool = sample.band(Draws::tool);
  if (job.handle_length.si > 0) answer.arm = sample.band(Draws::arm);
  answer.capacities = detail::capacities_of(job, model, answer.shear);

  const double end = end_of_range(model);
  const auto trials = static_cast<std::uint64_t>(job.trials);
  const Simulation s = simulate(model, trials, job.seed, job.threads, end);
  answer.standard_error = 0.5 / std::sqrt(static_cast<double>(trials));
  answer.stop_at = std::min(s.limit_for_shear(job.shear_risk), s.limit_for_gain());
  answer.stopped_by_shear = answer.stop_at < s.limit_for_gain();
  answer.chances = s.at(job.limit ? *job.limit : answer.stop_at);
  constexpr int points = 60;
  const double last =
      std::min(end, 1.2 * std::max({answer.breakaway.high.si, answer.stop_at.si, job.limit ? job.limit->si : 0.0}));
  for (int i = 0; i <= points; ++i) answer.curve.push_back(s.at(Torque(last * i / points)));
  detail::plan(job, model, end, answer);
  answer.after = after_release(detail::history_of(job));
  detail::add_notices(job, answer);
  return answer;
}

/// \copydoc try_free_joint
/// \throws Error  on such input
inline Free free_joint(const FreeJob& job) { return try_free_joint(job).value(); }

}  // namespace tauten
