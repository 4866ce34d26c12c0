// The derivation of an order of tightening: how the order was found, and how many passes it needs.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/group/ring.hpp"
#include "tauten/question/sequence_answer.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION Derivation derivation_of(const SequenceJob& job, const TighteningSequence& answer) {
  Derivation out;
  std::string order;
  for (const int bolt : answer.order) order += (order.empty() ? "" : " ") + std::to_string(bolt);
  out.title = "Order of " + std::to_string(answer.order.size()) + " bolts";
  out.given.push_back(figure("bolt_count", static_cast<double>(answer.order.size())));
  if (job.torque) out.given.push_back(figure("torque", *job.torque, "the full one"));
  if (job.shortfall) {
    out.given.push_back(figure("shortfall", *job.shortfall, "how far below the load a bolt may end", false, "%"));
    out.given.push_back(
        figure("neighbour_loss", answer.neighbour_loss, "what a neighbour loses per load gained", false, "%"));
    if (answer.passes_by_rule)
      step(out.steps, "rule of thumb, rounded up", passes_for_evenness, answer.neighbour_loss, *job.shortfall);
  }
  out.found.push_back(figure_in_words("order", order));
  for (std::size_t i = 0; i < answer.passes.size(); ++i) {
    const TighteningPass& pass = answer.passes[i];
    const std::string name = "pass " + std::to_string(i + 1);
    if (job.torque)
      out.found.push_back(figure("torque", pass.torque, name));
    else
      out.found.push_back(figure("share", pass.share, name, false, "%"));
  }
  if (answer.passes_needed)
    out.found.push_back(
        figure("passes", *answer.passes_needed, "at the full torque, counted with the loads of every step"));
  constexpr const char* how[] = {
      "Crosswise: the next bolt is the one farthest from all that are tight, the opposite of the last one first.",
      "In a circle: round the centre from bolt to bolt, whatever their numbers.",
      "Legacy labels: they are numbers going clockwise round the flange, tightened in the order of the labels.",
      "From the stiffest place outward: the nearest bolt comes first."};
  out.verdict = !job.order.empty()    ? "The order was given."
                : !job.labels.empty() ? "The order follows the labels that were given, going clockwise."
                                      : how[static_cast<int>(job.method)];
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
