// What `free_joint` answers.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"
#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/chances.hpp"
#include "tauten/loosening/learned.hpp"
#include "tauten/loosening/reuse_advice.hpp"

namespace tauten::TAUTEN_ABI {

/// What limits the torque.
enum class StopLimit : unsigned char {
  shear,    ///< the accepted chance that the bolt shears, over the whole pull
  corners,  ///< the same of corners that round off, or of a recess that strips
  tool,     ///< test torque of socket, wrench or key; of a six-lobed bit the low end of its estimated strength
  square,   ///< test torque of the square drive
  sister,   ///< minimum torque at which a like fastener sheared or rounded off
  balance,  ///< beyond it the next N.m breaks something more often than it frees the fastener
  gain,     ///< beyond it more torque hardly frees any more
  spins     ///< the tool finds no grip at all
};
template <>
struct Words<StopLimit> {
  static constexpr const char* list[] = {"shear", "corners", "tool", "square", "sister", "balance", "gain", "spins"};
};

/// One limit of the torque.
struct StopBound {
  StopLimit limit = StopLimit::gain;
  Torque torque;

  template <class V>
  static void fields(V&& visit) {
    visit("limit", &StopBound::limit);
    visit("torque", &StopBound::torque);
  }
};

/// Strength of one part.
struct Capacity {
  const char* part = "";  ///< "bolt", "corners", "recess", "socket", "key", "bit", "square" or "arm"
  Band<Torque> torque;    ///< nine of ten cases lie in it
  Source source{};  ///< what it rests on; real parts are taken stronger than their standard asks, which is judgement

  template <class V>
  static void fields(V&& visit) {
    visit("part", &Capacity::part);
    visit("torque", &Capacity::torque);
    visit("source", &Capacity::source);
  }
};

/// One way to work on a stuck fastener. All of it is common practice; no source gives measured figures.
struct Instruction {
  const char* key = "";
  const char* title = "";
  const char* what = "";      ///< what to do
  const char* how_long = "";  ///< how long, or how often
  const char* watch = "";     ///< hazards, and when to stop

  template <class V>
  static void fields(V&& visit) {
    visit("key", &Instruction::key);
    visit("title", &Instruction::title);
    visit("what", &Instruction::what);
    visit("how_long", &Instruction::how_long);
    visit("watch", &Instruction::watch);
  }
};

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
  Torque stop_at;                          ///< torque that must not be exceeded in a single pull that spends all of the
                                           ///< accepted chance: the least of `stop_bounds`. Who means to go on with
                                           ///< aids stops at that of the first of `steps`
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

}  // namespace tauten::TAUTEN_ABI
