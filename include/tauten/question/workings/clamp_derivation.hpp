// A clamp answer from socket to verdict.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/base/chance_text.hpp"
#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/clamp_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// The clamp load, or that none is left: what is not left is not shown.
inline Figure clamp_load_left(const ClampCandidate& c) {
  if (c.clamp_load.nominal.si == c.clamp_load.nominal.si)
    return figure("clamp_load", c.clamp_load, "in 19 of 20 cases among bolts that hold");
  return figure_in_words("clamp_load", c.verdict == Verdict::strips
                                           ? "none: the thread strips before the torque is reached"
                                           : "none: the bolt breaks before the torque is reached");
}

/// What lies behind "in 19 of 20 cases", in words: the quadrature itself has no step that could be followed by hand.
inline Figure spread_of_cases() {
  return figure_in_words("spread_of_cases",
                         "friction: half of all cases below the typical value, fewer and fewer towards the ends of the "
                         "range, none beyond; wrench: evenly within its accuracy; 1 case in 40 left out at each end");
}

/// A chance, of which none below 1 in 100 is shown as a number.
inline Figure chance_figure(const char* name, double chance) {
  return figure_in_words(name, chance_text(chance), "for a bolt that just meets its class");
}

}  // namespace detail

TAUTEN_FUNCTION Derivation derivation_of(const Clamp& answer, const ClampCandidate& c) {
  Derivation out;
  const std::string name = answer.name.empty() ? "" : answer.name + ": ";
  out.title = name + c.thread + (c.head.empty() ? "" : ", " + c.head) + ", class " + c.property_class +
              (c.class_assumed ? " (assumed)" : "");
  out.given = c.given;
  out.steps = c.steps;
  out.found.push_back(figure("setting", c.torque, "of the wrench"));
  out.found.push_back(figure("nut_factor", c.nut_factor));
  out.found.push_back(detail::clamp_load_left(c));
  if (c.clamp_load.nominal.si == c.clamp_load.nominal.si) {
    out.found.push_back(detail::spread_of_cases());
    out.found.push_back(figure("worst_case", c.worst_case, "at the ends of friction and wrench"));
    out.found.push_back(figure("proof_share", c.proof_share, "clamp load over proof load", false, "%"));
  }
  out.found.push_back(
      figure("yield_utilisation", c.yield_utilisation, "stress while the wrench turns over yield", false, "%"));
  out.found.push_back(detail::chance_figure("chance_of_yield", c.chance_of_yield));
  out.found.push_back(detail::chance_figure("chance_of_breaking", c.chance_of_breaking));
  if (c.suggested_torque.si == c.suggested_torque.si && c.suggested_torque.si != c.torque.si) {
    out.found.push_back(figure("suggested_torque", c.suggested_torque, "setting for this condition"));
    out.found.push_back(figure("suggested_clamp_load", c.suggested_clamp_load, "at the suggested torque"));
  }
  out.verdict = c.verdict + ". " + c.meaning;
  out.notices = c.notices;
  out.notices.insert(out.notices.end(), answer.notices.begin(), answer.notices.end());
  return out;
}

TAUTEN_FUNCTION Derivation derivation_of(const Clamp& answer) {
  return derivation_of(answer, answer.candidates.front());
}

TAUTEN_FUNCTION Derivation derivation_of(const ClampCandidate& c) {
  Clamp alone;
  alone.notices.push_back(cautions::no_release);
  return derivation_of(alone, c);
}

}  // namespace tauten::TAUTEN_ABI
