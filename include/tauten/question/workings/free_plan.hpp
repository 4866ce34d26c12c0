// The next steps: aids in the order of the damage they do, each with what it promises.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "tauten/question/workings/aid.hpp"
#include "tauten/question/workings/instruction.hpp"
#include "tauten/question/workings/stop.hpp"

namespace tauten {

/// One sequence of aids and what to expect of it.
struct PlanStep {
  std::vector<AidUse> aids;                ///< to be used in this order, after those already used; empty: just try
  Torque stop_at;                          ///< torque that must not be exceeded, and no more than the given limit
  StopLimit stop_limit = StopLimit::gain;  ///< what limits it, the given limit aside
  Chances chances;                         ///< at that torque, of those that the lines above have left stuck
  double freed_by = 0;  ///< chance that it has come free by the end of this line, all lines from the first on
  double minutes = 0;   ///< of work and waiting (judgement)
  int damage = 0;       ///< worst of the aids and of what may break, 0 to 4
  std::string why;
  std::vector<Instruction> instructions;  ///< how its last aid is used

  template <class V>
  static void fields(V&& visit) {
    visit("aids", &PlanStep::aids);
    visit("stop_at", &PlanStep::stop_at);
    visit("stop_limit", &PlanStep::stop_limit);
    visit("chances", &PlanStep::chances);
    visit("freed_by", &PlanStep::freed_by);
    visit("minutes", &PlanStep::minutes);
    visit("damage", &PlanStep::damage);
    visit("why", &PlanStep::why);
    visit("instructions", &PlanStep::instructions);
  }
};

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
  if (!is_internal(job.drive)) then({.aid = Aid::impact});
  AidUse heat{.aid = Aid::heat};
  heat.nut_rise.si = std::min(heat.nut_rise.si, limit.greatest_rise.si);
  heat.bolt_rise.si = std::min(heat.bolt_rise.si, 0.4 * heat.nut_rise.si);
  if (limit.allowed)
    then(heat);
  else
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

}  // namespace detail

}  // namespace tauten
