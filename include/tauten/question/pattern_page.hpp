// The page of a pattern: what the holes are and how many ways round, what to measure next, the standard drillings.
#pragma once

#include "tauten/drawing/pattern_sketch.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/pattern_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Places that a person measured, as numbers to draw.
inline std::vector<Position> positions_of(const std::vector<Coordinates>& list) {
  std::vector<Position> at;
  for (const Coordinates& p : list) at.push_back({p[0].si, p[1].si});
  return at;
}

/// \return the holes as they are drawn
inline PatternSketch sketch_of(const PatternFacts& facts) {
  PatternSketch sketch{positions_of(facts.positions)};
  sketch.empty = positions_of(facts.missing);
  sketch.centre = {facts.centre[0].si, facts.centre[1].si};
  if (facts.circle_diameter.si == facts.circle_diameter.si) sketch.circle = facts.circle_diameter.si;
  sketch.worst = facts.odd.value_or(0);
  return sketch;
}

namespace detail {

/// Rows of a table of candidates; more of them help nobody.
inline constexpr std::size_t most_candidates = 30;

/// Holes whose partners a row of a table names.
inline constexpr std::size_t most_partners = 8;

/// \return "8 holes on 180 mm circle"
inline std::string pattern_words(const PatternFacts& facts, const PageUnits& units) {
  const std::string holes = std::to_string(facts.count) + " holes ";
  const std::string circle = units.text(facts.circle_diameter, 4) + " circle";
  switch (facts.kind) {
    case PatternKind::circle: return holes + "on " + circle;
    case PatternKind::odd_hole:
      return holes +
             (facts.columns > 0 ? "in rows, " + units.text(facts.width, 4) + " by " + units.text(facts.height, 4)
                                : "on " + circle) +
             ", hole " + std::to_string(*facts.odd) + " is " + units.text(*facts.odd_by) + " out of its place";
    case PatternKind::missing_holes:
      return holes + "on " + circle + " of " + std::to_string(facts.count + static_cast<int>(facts.missing.size())) +
             " places";
    case PatternKind::uneven_circle: return holes + "unevenly on " + circle;
    case PatternKind::rectangle:
      return holes + "on a rectangle " + units.text(facts.width, 4) + " by " + units.text(facts.height, 4);
    case PatternKind::grid:
      return holes + "in " + std::to_string(facts.rows) + " rows of " + std::to_string(facts.columns) + ", " +
             units.text(facts.width, 4) + " by " + units.text(facts.height, 4);
    case PatternKind::line: return holes + "in a line of " + units.text(facts.width, 4);
    case PatternKind::irregular: break;
  }
  return holes + "in no even pattern";
}

inline std::string ways_words(int ways) { return std::to_string(ways) + (ways == 1 ? " way round" : " ways round"); }

inline const char* measure_next(NextMeasurement next) {
  switch (next) {
    case NextMeasurement::hole: return "Measure the diameter of the holes next: it rules out most candidates.";
    case NextMeasurement::outside: return "Measure the outside diameter next: it rules out most candidates.";
    case NextMeasurement::height: return "Measure the shaft height next: it rules out most candidates.";
    case NextMeasurement::circle:
      return "Measure the pattern more closely next, to a tenth of a millimetre: it rules out most candidates.";
    case NextMeasurement::marking:
      return "The holes alone show no more: read the mark on the rim or plate, or ask for the drawing.";
    case NextMeasurement::nothing: break;
  }
  return "";
}

inline PageTable candidate_table(const PatternFacts& facts, const PageUnits& units) {
  PageTable table{
      "Standard drillings with these holes",
      {{"Standard"}, {"Rating"}, {"Size"}, {"Pattern", "", true}, {"Hole", "", true}, {"Outside", "", true}},
      {},
      {"-: not in the table. Most figures were seen second hand: order by the drawing or the standard."}};
  const auto text = [&](Length x) { return x.si == x.si ? units.text(x, 4) : std::string("-"); };
  for (const StandardDrilling& one : facts.candidates) {
    if (table.rows.size() == most_candidates) {
      table.legend.insert(table.legend.begin(),
                          "and " + std::to_string(facts.candidates.size() - most_candidates) + " more.");
      break;
    }
    table.rows.push_back({one.standard, one.rating.empty() ? "-" : one.rating, one.size,
                          one.circle_diameter.si == one.circle_diameter.si ? text(one.circle_diameter)
                                                                           : text(one.across) + " x " + text(one.along),
                          text(one.hole_diameter), text(one.outside_diameter)});
  }
  return table;
}

inline PageTable way_table(const std::vector<PatternWay>& ways, const char* title, const PageUnits& units) {
  PageTable table{title,
                  {{"Turn", "clockwise", true},
                   {"Holes on", "by number", false, 40},
                   {"Farthest off", "", true},
                   {"Hole", "", true}},
                  {},
                  {}};
  for (const PatternWay& way : ways) {
    if (table.rows.size() == most_candidates) {
      table.legend.push_back("and " + std::to_string(ways.size() - most_candidates) + " more.");
      break;
    }
    std::string pairs;
    for (std::size_t i = 0; i < way.partners.size() && i < most_partners; ++i)
      if (way.partners[i] > 0)
        pairs += (pairs.empty() ? "" : ", ") + std::to_string(i + 1) + " on " + std::to_string(way.partners[i]);
    if (way.partners.size() > most_partners) pairs += ", ...";
    table.rows.push_back({units.text(way.turn), pairs, units.text(way.off), std::to_string(way.worst)});
  }
  return table;
}

/// \return what is answered about two patterns with different numbers of holes
inline std::string partial_words(const PatternJob& job, const PatternFacts& facts) {
  const std::string here = std::to_string(facts.count), there = std::to_string(job.on.size());
  const bool fewer = static_cast<std::size_t>(facts.count) < job.on.size();
  const std::string fewest = fewer ? here : there;
  const int ways = static_cast<int>(facts.partial_ways.size());
  return ", hole for hole: they are " + there + ", and it has " + here + ". It is not the same joint, " +
         (ways == 0 ? "and " + std::string(fewer ? "its holes do" : "they do") + " not all line up either."
                    : "although " + std::string(fewer ? "all of its " : "all ") + fewest + " line up with " + fewest +
                          " of the " + (fewer ? there : here) + " (" + ways_words(ways) + ").");
}

}  // namespace detail

/// \param job    what was asked
/// \param facts  what came of it
/// \return the answer laid out for people
inline Page page_of(const PatternJob& job, const PatternFacts& facts, const PageUnits& units = {}) {
  Page page;
  page.standing_cautions = false;  // nothing is turned yet
  page.headline = detail::pattern_words(facts, units) + ", " + detail::ways_words(facts.ways_round) + ".";
  if (facts.goes_on) {
    const int ways = static_cast<int>(facts.ways.size());
    page.headline +=
        *facts.goes_on
            ? " The part goes on the other holes " +
                  (ways == 1 ? std::string("one way.") : std::to_string(ways) + " ways.")
            : std::string(" The part does not go on the other holes") +
                  (job.on.size() == static_cast<std::size_t>(facts.count) ? "." : detail::partial_words(job, facts));
  } else {
    page.headline += facts.candidates.empty() ? " No standard drilling in the tables has these holes."
                                              : " Holes alone do not show the rating.";
  }
  if (const std::string next = detail::measure_next(facts.next_measurement); !next.empty())
    page.actions.push_back(next);
  if (facts.goes_on && !*facts.goes_on)
    page.actions.push_back(
        "Measure both again, then look for the right part. Do not ream or file holes to make it fit.");
  else if (facts.ways_round > 1)
    page.actions.push_back("Mark part and base before they come apart: the part goes on " +
                           detail::ways_words(facts.ways_round) + ", and only one of them is the old one.");
  else
    page.actions.push_back(
        "It goes on one way only: turn it until every hole lines up. Do not ream a hole to make it fit.");
  if (facts.odd)
    page.actions.push_back("Measure hole " + std::to_string(*facts.odd) +
                           " again: a slip of the caliper and a hole out of place look the same.");

  const auto add = [&](const char* name, Length x) {  // what is left of rounding is nothing to a person
    if (x.si > 1e-7) page.figures.push_back({name, units.text(x, 4)});
  };
  add("Bolt circle", facts.circle_diameter);
  add("Standard uncertainty of it", facts.circle_error);
  if (facts.first.si == facts.first.si && !job.positions.empty())
    page.figures.push_back(
        {"First hole, clockwise from the top", units.text(std::fabs(facts.first.si) < 1e-9 ? Angle(0) : facts.first)});
  add("Longer side", facts.width);
  add("Shorter side", facts.height);
  add("Farthest hole from its place", facts.off);
  if (facts.ways_flipped > 0) page.figures.push_back({"Turned over", detail::ways_words(facts.ways_flipped)});
  const PatternSketch sketch = sketch_of(facts);
  page.drawing = {sketch_text(sketch), sketch_svg(sketch)};
  if (!facts.ways.empty())
    page.tables.push_back(detail::way_table(facts.ways, "Ways in which the part goes on", units));
  if (!facts.partial_ways.empty())
    page.tables.push_back(
        detail::way_table(facts.partial_ways, "Where only some holes line up: not the same joint", units));
  if (!facts.candidates.empty()) page.tables.push_back(detail::candidate_table(facts, units));
  page.add(facts.notices, units);
  page.trust.push_back("A hole counts as in its place within " + units.text(job.tolerance) + ".");
  return page;
}

}  // namespace tauten::TAUTEN_ABI
