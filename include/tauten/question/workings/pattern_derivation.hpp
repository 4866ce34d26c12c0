// The derivation of a pattern: what the fit rests on, and the circle from one chord as a check by hand.
#pragma once

#include <cmath>

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/group/ring.hpp"
#include "tauten/question/pattern_answer.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION Derivation derivation_of(const PatternJob& job, const PatternFacts& answer) {
  Derivation out;
  out.title = std::to_string(answer.count) + " holes: " + word_of(answer.kind);
  out.given = {figure("bolt_count", answer.count),
               figure("tolerance", job.tolerance, "how far a hole may be from its place")};
  const bool on_circle = answer.circle_diameter.si == answer.circle_diameter.si;
  if (answer.kind == PatternKind::circle) {
    const auto& p = answer.positions;
    const std::size_t over = p.size() / 2;
    const double chord = std::hypot(p[over][0].si - p[0][0].si, p[over][1].si - p[0][1].si);
    step(out.steps, "by hand, from the chord between hole 1 and the one farthest from it", circle_from_chord, chord,
         static_cast<double>(over), answer.count);
  }
  if (on_circle) {
    out.found.push_back(figure("circle_diameter", answer.circle_diameter, "least squares over all holes"));
    if (answer.circle_error.si == answer.circle_error.si)
      out.found.push_back(figure("circle_error", answer.circle_error, "standard uncertainty"));
  }
  out.found.push_back(figure("off", answer.off, "farthest that a hole is from its place"));
  out.found.push_back(figure("freedom", answer.freedom, "measured figures beyond what fixes the pattern"));
  out.found.push_back(figure("ways_round", answer.ways_round, "turns that bring every hole onto a hole"));
  out.verdict =
      "Circle, rectangle, grid and line are fitted by least squares, simplest first, and the first that leaves every "
      "hole "
      "within the tolerance of its place is taken; a hole counts as odd if the others fit much better without it.";
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
