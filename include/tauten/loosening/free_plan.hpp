// The next steps: aids in the order of the damage they do, each with what it promises.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/stop.hpp"

namespace tauten {

/// One sequence of aids and what to expect of it.
struct PlanStep {
  std::vector<AidUse> aids;                ///< to be used in this order, after those already used; empty: just try
  Torque stop_at;                          ///< torque that must not be exceeded, and no more than the given limit
  StopLimit stop_limit = StopLimit::gain;  ///< what limits it, the given limit aside
  Chances chances;                         ///< at that torque
  double minutes = 0;                      ///< of work and waiting (judgement)
  int damage = 0;                          ///< worst of the aids and of what may break, 0 to 4
  std::string why;

  template <class V>
  static void fields(V&& visit) {
    visit("aids", &PlanStep::aids);
    visit("stop_at", &PlanStep::stop_at);
    visit("stop_limit", &PlanStep::stop_limit);
    visit("chances", &PlanStep::chances);
    visit("minutes", &PlanStep::minutes);
    visit("damage", &PlanStep::damage);
    visit("why", &PlanStep::why);
  }
};

namespace detail {

/// A chance that is worth a word: what is rarer is lost among the estimates.
inline constexpr double notable_chance = 1e-3;

/// \return the damage that some chances stand for: a fastener or tool that may break is never harmless
inline int damage_of(const Chances& chances) noexcept {
  return chances.shear + chances.round + chances.tool < notable_chance ? 0 : 2;
}

/// \return aids that may come next, in the order of the damage they do
inline std::vector<std::vector<AidUse>> sequences(const std::vector<AidUse>& done, bool heat_allowed,
                                                  Quantity<Dim::temperature> greatest_rise) {
  const auto used = [&](Aid aid) {
    return std::any_of(done.begin(), done.end(), [&](const AidUse& use) { return use.aid == aid; });
  };
  std::vector<std::vector<AidUse>> list = {{}};
  std::vector<AidUse> path;
  const auto then = [&](const AidUse& use) {
    if (used(use.aid)) return;
    path.push_back(use);
    list.push_back(path);
  };
  then({.aid = Aid::brush});
  then({.aid = Aid::fluid, .soak_hours = 1});
  if (!used(Aid::fluid)) path.pop_back();
  then({.aid = Aid::fluid, .soak_hours = 24, .thin_fluid = true});
  then({.aid = Aid::tighten_first});
  then({.aid = Aid::impact});
  AidUse heat{.aid = Aid::heat};
  heat.nut_rise.si = std::min(heat.nut_rise.si, greatest_rise.si);
  heat.bolt_rise.si = std::min(heat.bolt_rise.si, 0.4 * heat.nut_rise.si);
  if (heat_allowed)
    then(heat);
  else
    then({.aid = Aid::cold, .bolt_rise = Quantity<Dim::temperature>(30)});
  path.clear();
  then({.aid = Aid::cut});
  return list;
}

}  // namespace detail

}  // namespace tauten
