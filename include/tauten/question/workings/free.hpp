// The whole question of a stuck fastener: will it come free before something gives, where to stop, what to do next.
#pragma once

#include <algorithm>

#include "tauten/base/mode.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/aid.hpp"
#include "tauten/question/workings/capacity_list.hpp"
#include "tauten/question/workings/free_notices.hpp"
#include "tauten/question/workings/free_plan.hpp"
#include "tauten/question/workings/learned_model.hpp"
#include "tauten/question/workings/stop.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

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

TAUTEN_FUNCTION Outcome<Free> try_free_joint(const FreeJob& job) {
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
  detail::TorqueSample sample(model, job.seed, held, false, trials);
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

TAUTEN_FUNCTION Free free_joint(const FreeJob& job) { return try_free_joint(job).value(); }

}  // namespace tauten::TAUTEN_ABI
