// A clamp answer from socket to verdict.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/base/derivation.hpp"
#include "tauten/tightening/clamp_answer.hpp"

namespace tauten {

namespace detail {

/// The clamp load, or that none is left: what is not left is not shown.
inline Figure clamp_load_left(const ClampCandidate& c) {
  if (!c.limited_by_strength) return figure("clamp_load", c.clamp_load);
  const bool past_nominal = c.tensile_utilisation.nominal >= 1;
  return figure_in_words("clamp_load", past_nominal ? "none: the bolt twists off before the torque is reached"
                                                    : "none is sure: at the worst corner the bolt twists off");
}

}  // namespace detail

/// The derivation of a clamp answer, or of a torque.
/// \param answer  of `clamp` or `torque_for`
/// \param c       the candidate that is meant, one of `answer.candidates`
inline Derivation derivation_of(const Clamp& answer, const ClampCandidate& c) {
  Derivation out;
  const std::string name = answer.name.empty() ? "" : answer.name + ": ";
  out.title = name + c.thread + (c.head.empty() ? "" : ", " + c.head) + ", class " + c.property_class +
              (c.class_assumed ? " (assumed)" : "");
  out.given = c.given;
  out.steps = c.steps;
  out.found.push_back(figure("setting", c.torque, "of the wrench"));
  out.found.push_back(figure("nut_factor", c.nut_factor));
  out.found.push_back(detail::clamp_load_left(c));
  if (!c.limited_by_strength) {
    out.found.push_back(figure("proof_share", c.proof_share, "clamp load over proof load", false, "%"));
    out.found.push_back(
        figure("yield_utilisation", c.yield_utilisation, "stress while the wrench turns over yield", false, "%"));
  }
  if (c.right_torque.si == c.right_torque.si && c.right_torque.si != c.torque.si) {
    out.found.push_back(figure("right_torque", c.right_torque, "setting for this condition"));
    out.found.push_back(figure("right_clamp_load", c.right_clamp_load, "which it leaves"));
  }
  out.verdict = c.verdict + ". " + c.meaning;
  out.notices = c.notices;
  out.notices.insert(out.notices.end(), answer.notices.begin(), answer.notices.end());
  return out;
}

/// The derivation for the most common fastener.
inline Derivation derivation_of(const Clamp& answer) { return derivation_of(answer, answer.candidates.front()); }

/// The derivation of a candidate by itself, without what is said of all of them.
inline Derivation derivation_of(const ClampCandidate& c) {
  Clamp alone;
  alone.notices.push_back(cautions::no_release);
  return derivation_of(alone, c);
}

}  // namespace tauten
