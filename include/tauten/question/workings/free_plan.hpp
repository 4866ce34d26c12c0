// The next steps: aids in the order of the damage they do, each with what it promises.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/aid.hpp"
#include "tauten/question/workings/instruction.hpp"
#include "tauten/question/workings/stop.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// A chance that is worth a word: what is rarer is lost among the estimates.
inline constexpr double notable_chance = 1e-3;

/// \return the damage that some chances stand for: a fastener or tool that may break is never harmless
inline int damage_of(const Chances& chances) noexcept {
  return chances.shear + chances.round + chances.tool < notable_chance ? 0 : 2;
}

/// The same job with the best tool: six points, a square that holds, and a bar or multiplier that reaches any torque.
inline FreeJob with_other_tool(FreeJob job) {
  if (!is_internal(job.drive)) job.drive = DriveFit::six_point;
  job.drive_square.reset(), job.handle_length.reset();
  return job;
}
/// \return what another tool would be, "" where none is better
inline std::string other_tool(const FreeJob& job) {
  std::string text;
  const auto add = [&](bool holds, const char* tool) {
    if (holds) text += (text.empty() ? "" : ", ") + std::string(tool);
  };
  add(job.drive == DriveFit::twelve_point || job.drive == DriveFit::open_end, "a six-point socket");
  const auto square = square_test_torque(job);
  add(square && *square < tool_test_torque(job), "a larger square drive");
  add(job.handle_length.has_value(), "a longer bar or a torque multiplier, up to the torque to stop at");
  return text;
}
/// The model with the best tool; what aids and like fasteners have done to the corners stays.
inline ReleaseModel with_other_tool(ReleaseModel m, const FreeJob& job) {
  const FreeJob other = with_other_tool(job);
  const Lognormal before = drive_capacity(job), after = drive_capacity(other);
  m.drive = before.median > 0 ? m.drive * (after.median / before.median) : after;
  m.socket = tool_capacity(other);
  m.as_learned = false;
  m.square = m.arm = never_reached;
  return m;
}

/// \return aids that may come next, in the order of the damage they do
inline std::vector<std::vector<AidUse>> sequences(const FreeJob& job, const HeatLimit& limit) {
  const auto used = [&](Aid aid) {
    return std::any_of(job.aids.begin(), job.aids.end(), [&](const AidUse& use) { return use.aid == aid; });
  };
  std::vector<std::vector<AidUse>> list = {{}};
  std::vector<AidUse> path;
  const auto then = [&](const AidUse& use) {
    if (used(use.aid)) return;
    path.push_back(use);
    list.push_back(path);
  };
  const bool poor_grip = job.drive == DriveFit::twelve_point || job.drive == DriveFit::open_end;
  if (poor_grip) then({.aid = Aid::another_tool});
  then({.aid = Aid::brush});
  then({.aid = Aid::fluid, .soak_hours = 1});
  if (!used(Aid::fluid)) path.pop_back();
  then({.aid = Aid::fluid, .soak_hours = 24, .thin_fluid = true});
  then({.aid = Aid::tighten_first});
  // Short pulses break keys and bits, and would spread an open end; by now that has been changed for a socket.
  const bool galled = job.rust == Rust::galled_stainless;  // torn threads, no rust: blows and heat do not part them
  if (!is_internal(job.drive) && !galled) then({.aid = Aid::impact});
  AidUse heat{.aid = Aid::heat};
  heat.nut_rise.si = std::min(heat.nut_rise.si, limit.greatest_rise.si);
  heat.bolt_rise.si = std::min(heat.bolt_rise.si, 0.4 * heat.nut_rise.si);
  if (limit.allowed && !galled)
    then(heat);
  else if (!galled)
    then({.aid = Aid::cold, .bolt_rise = Quantity<Dim::temperature>(30)});
  if (!poor_grip && !other_tool(job).empty()) then({.aid = Aid::another_tool});
  path.clear();
  then({.aid = Aid::cut});
  return list;
}

/// \return why the last aid of a line helps, for this job
inline std::string why_of(const FreeJob& job, const AidUse& use) {
  switch (use.aid) {
    case Aid::another_tool: return other_tool(job);
    case Aid::heat:
      return has_nut(job) ? aid_effect(Aid::heat).why
                          : "the part around the thread opens, crushes the rust and cracks the bond";
    case Aid::cut:
      return std::string(has_nut(job) ? "split the nut, or saw or drill the bolt" : "saw or drill the bolt") +
             (job.surroundings.fire_or_burst
                  ? "; fuel, gas or oil is near: by hand and cold, no grinder, no torch, no sparks"
                  : "") +
             "; nothing else is left within the limits";
    default: return aid_effect(use.aid).why;
  }
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
    step.why = aids.empty() ? "costs nothing but the risks on this page" : why_of(job, aids.back());
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

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
