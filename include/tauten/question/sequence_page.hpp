// The page of an order of tightening: order and torques pass by pass, and the way back.
#pragma once

#include <algorithm>

#include "tauten/drawing/pattern_sketch.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/sequence_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// \return the bolts as they are drawn, each with its turn
inline PatternSketch sketch_of(const SequenceJob& job, const TighteningSequence& sequence) {
  PatternSketch sketch{job.pattern};
  for (const int label : sequence.labels) sketch.words.push_back("turn " + std::to_string(label));
  return sketch;
}

/// \return "1 5 3 7"
inline std::string order_text(const std::vector<int>& bolts) {
  std::string text;
  for (const int bolt : bolts) text += (text.empty() ? "" : " ") + std::to_string(bolt);
  return text;
}

/// What to do with the wrench, pass by pass.
/// \param full  the full torque as it was typed
inline std::vector<std::string> tightening_steps(const SequenceJob& job, const TighteningSequence& sequence,
                                                 const PageUnits& units) {
  std::vector<std::string> steps = {
      "Run all bolts down by hand and snug them in the same order; the gap must be even at four points."};
  const std::size_t passes = sequence.passes.size() - job.rounds;
  for (std::size_t i = 0; i < sequence.passes.size(); ++i) {
    const TighteningPass& pass = sequence.passes[i];
    const std::string torque = !job.torque ? PageUnits::percent(pass.share) + " of the torque"
                               : pass.share == 1.0
                                   ? units.typed(*job.torque)
                                   : units.settable(pass.torque) + " (" + PageUnits::percent(pass.share) + ")";
    steps.push_back((i < passes ? "Pass " + std::to_string(i + 1) + ", " : std::string("Settling round, ")) + torque +
                    ": " + order_text(pass.order) + ".");
  }
  if (job.rounds > 0) steps.push_back("Repeat the settling round until no bolt turns any more.");
  return steps;
}

/// \return true if the middle between two bolts is that of the pattern, or near it
inline bool are_opposite(const Pattern& pattern, int one, int other) {
  const Position a = pattern[static_cast<std::size_t>(one - 1)], b = pattern[static_cast<std::size_t>(other - 1)];
  return distance({(a.x + b.x) / 2, (a.y + b.y) / 2}, pattern.centroid()) <= 0.1 * distance(a, b);
}

/// What to do to undo it, in words that keep people whole.
inline std::vector<std::string> undoing_steps(const SequenceJob& job, const TighteningSequence& sequence) {
  const std::size_t n = sequence.remove.size();
  const int last = sequence.remove[n - 1], before = sequence.remove[n - 2];
  std::vector<std::string> steps;
  if (job.pressurised) steps.emplace_back("Prove that the pressure is zero. Stand clear of the gap.");
  steps.push_back("Ease every bolt by a quarter turn, none further yet" +
                  std::string(job.pressurised ? ", the far side first: " : ": ") + order_text(sequence.ease) + ".");
  steps.emplace_back("Support the part, so that it cannot drop or swing.");
  steps.emplace_back(job.pressurised
                         ? "Break the joint loose while all bolts are still in, and wait until nothing flows."
                         : "Break the joint loose while all bolts are still in: nothing may spring or flow.");
  steps.push_back("Take the bolts out: " +
                  order_text({sequence.remove.begin(),
                              sequence.remove.end() - std::min<std::ptrdiff_t>(2, static_cast<std::ptrdiff_t>(n))}) +
                  (n > 2 ? "; " : "") + "last " + std::to_string(before) + " and " + std::to_string(last) +
                  (are_opposite(try_pattern(job.pattern).value(), before, last) ? ", which are opposite"
                                                                                : ", which lie farthest apart") +
                  " and hold the part to the end.");
  return steps;
}

namespace detail {

inline PageTable load_table(const SequenceJob& job, const TighteningSequence& sequence, const PageUnits& units) {
  const auto text = [&](Force load) { return job.load ? units.text(load) : PageUnits::percent(load.si); };
  PageTable table{"Loads of the bolts after each pass",
                  {{"Pass", "", true},
                   {"Lowest", "", true},
                   {"Highest", "", true},
                   {"Loads, by number of the bolt", "", false, 56}},
                  {},
                  {}};
  for (std::size_t i = 0; i < sequence.passes.size(); ++i) {
    const std::vector<Force>& loads = sequence.passes[i].loads;
    if (loads.empty()) continue;
    const auto [low, high] =
        std::minmax_element(loads.begin(), loads.end(), [](Force a, Force b) { return a.si < b.si; });
    std::string all;
    for (const Force load : loads)
      all += (all.empty() ? "" : " ") + number_text(job.load ? units.in_unit(load) : 100 * load.si, 3);
    table.rows.push_back({std::to_string(i + 1), text(*low), text(*high), loads.size() > most_with_words ? "" : all});
  }
  return table;
}

}  // namespace detail

/// \param job       what was asked
/// \param sequence  what came of it
/// \return the answer laid out for people
inline Page page_of(const SequenceJob& job, const TighteningSequence& sequence, const PageUnits& units = {}) {
  Page page;
  const std::size_t n = sequence.order.size();
  const std::size_t passes = sequence.passes.size() - job.rounds;
  std::string torques;
  for (std::size_t i = 0; i < passes; ++i) {
    const TighteningPass& pass = sequence.passes[i];
    const bool last = i + 1 == passes;
    torques += i == 0 ? "" : last ? " and " : ", ";
    if (!job.torque)
      torques += number_text(100 * pass.share, 3);
    else
      torques += last && pass.share == 1.0 ? number_text(units.in_unit(*job.torque), typed_digits)
                                           : units.settable_cell(pass.torque);
  }
  torques += job.torque ? " " + units.unit(Dim::torque) : " % of the torque";
  const bool own = !job.order.empty() || !job.labels.empty();
  constexpr const char* methods[] = {"crosswise", "in a circle", "by legacy labels", "from the middle out"};
  page.headline = std::to_string(n) + " bolts, " +
                  (!job.labels.empty() ? "by the labels"
                   : own               ? "own order"
                                       : methods[static_cast<int>(job.method)]) +
                  ": " + (n <= 16 ? order_text(sequence.order) + ", " : std::string()) +
                  (passes == 1 ? "one pass of " : std::to_string(passes) + " passes of ") + torques +
                  (job.rounds == 0   ? std::string(".")
                   : job.rounds == 1 ? ", then one settling round."
                                     : ", then " + std::to_string(job.rounds) + " settling rounds.");
  if (sequence.passes_needed)
    page.headline += " " + std::to_string(*sequence.passes_needed) +
                     " passes at the full torque leave every bolt within " + PageUnits::percent(*job.shortfall) + ".";
  page.actions = tightening_steps(job, sequence, units);
  page.actions.emplace_back(
      "With a gasket: wait as its maker asks (4 h or more is common practice), then retighten once round at the full "
      "torque, cold and without pressure.");
  page.lists.push_back({"To undo", undoing_steps(job, sequence)});
  if (!job.pressurised)  // nobody said so, which does not mean that it is not
    page.lists.back().items.insert(page.lists.back().items.begin(),
                                   "If it may hold pressure: prove that it is zero, and begin on the far side of it.");
  if (!sequence.sets.empty()) {
    std::string sets;
    for (const std::vector<int>& set : sequence.sets) sets += (sets.empty() ? "" : "; ") + order_text(set);
    page.figures.push_back({"At once, set by set", sets});
  }
  page.figures.push_back({"Labels, going by number", order_text(sequence.labels)});
  if (sequence.neighbour_loss == sequence.neighbour_loss)
    page.figures.push_back({"A neighbour loses per load gained", PageUnits::percent(sequence.neighbour_loss)});
  if (sequence.passes_by_rule)
    page.figures.push_back({"Passes by the rule ln(t/2)/ln(c)", std::to_string(*sequence.passes_by_rule)});
  if (sequence.lowest && sequence.highest) {
    const auto band = [&](const Band<Force>& b) {
      return job.load ? units.range(b) : number_text(100 * b.low.si, 3) + " to " + PageUnits::percent(b.high.si);
    };
    page.figures.push_back({"Lowest bolt at the end, 19 of 20 joints", band(*sequence.lowest)});
    page.figures.push_back({"Highest bolt at the end, 19 of 20 joints", band(*sequence.highest)});
    page.figures.push_back({"Joints in which a bolt went slack on the way", PageUnits::percent(sequence.relieved)});
  }
  if (!sequence.first_loads.empty()) {
    std::string loads;
    for (const Force load : sequence.first_loads)
      loads += (loads.empty() ? "" : " ") + (job.load ? units.cell(load) : number_text(100 * load.si, 3));
    page.figures.push_back({"One pass ends even with loads, by bolt",
                            loads + (job.load ? " " + units.unit(Dim::force) : std::string(" %"))});
  }
  if (!sequence.why_no_first_loads.empty())
    page.findings.push_back("No one-pass plan: " + sequence.why_no_first_loads + ".");
  const PatternSketch sketch = sketch_of(job, sequence);
  page.drawing = {sketch_text(sketch), sketch_svg(sketch)};
  if (!sequence.history.empty()) page.tables.push_back(detail::load_table(job, sequence, units));
  page.add(sequence.notices, units);
  page.trust.emplace_back("Order, passes and the way to undo are common practice; the maker's own takes precedence.");
  return page;
}

}  // namespace tauten::TAUTEN_ABI
