// The answer about holes, from the fit of patterns, the ways round and the tables of drillings.
#pragma once

#include <cmath>

#include "tauten/base/mode.hpp"
#include "tauten/group/drilling.hpp"
#include "tauten/group/identity.hpp"
#include "tauten/group/pattern_words.hpp"
#include "tauten/question/pattern_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// What is left of rounding is nothing to a person.
inline double without_rounding(double x) noexcept { return std::fabs(x) < 1e-12 ? 0 : x; }

inline Coordinates coordinates_of(Position p) { return {Length(without_rounding(p.x)), Length(without_rounding(p.y))}; }

inline std::vector<Coordinates> coordinates_of(const std::vector<Position>& at) {
  std::vector<Coordinates> all;
  for (const Position p : at) all.push_back(coordinates_of(p));
  return all;
}

inline Outcome<Pattern> holes_of(const PatternJob& job) {
  if (!job.positions.empty()) return try_pattern(job.positions);
  if (!job.chords.empty()) {
    std::vector<Length> chords = job.chords;
    if (job.edges && !job.hole) return Error("hole", "hole is missing; edges need the diameter of the holes");
    if (job.edges)
      for (Length& chord : chords) chord.si += (*job.edges == HoleEdges::near_edges ? 1 : -1) * job.hole->si;
    return try_pattern_from_chords(chords);
  }
  if (!job.name.empty()) return try_pattern_from_words(job.name);
  return Error("positions", "positions are missing; give them, chords or a name like circle:8:160mm");
}

/// Adds the standard drillings that the holes may be.
/// \return what is wrong with a measurement, or nothing
inline std::optional<Error> add_candidates(const PatternJob& job, PatternFacts& facts) {
  MeasuredDrilling measured;
  measured.count = static_cast<std::size_t>(facts.count) + facts.missing.size();
  measured.hole = job.hole;
  measured.outside = job.outside;
  measured.height = job.height;
  const bool even = facts.kind == PatternKind::circle;
  const bool rows = facts.columns > 0;
  if (even || (facts.kind == PatternKind::odd_hole && !rows) || facts.kind == PatternKind::missing_holes)
    measured.circle = facts.circle_diameter;
  if (rows && facts.count == 4 && facts.rows == 2) {
    measured.across = facts.width;
    measured.along = facts.height;
  } else if (even && facts.count == 4) {  // a square stands in the tables of rectangles as well
    measured.across = measured.along = Length(facts.circle_diameter.si * std::sqrt(0.5));
  }
  const auto found = try_drilling_candidates(measured);
  if (!found) return found.error();
  facts.next_measurement = next_measurement(*found, measured);
  for (const DrillingCandidate& c : *found)
    facts.candidates.push_back(
        {c.standard, c.rating, c.size, c.circle, c.across, c.along, c.hole, c.outside, c.height, c.source});
  if (found->empty()) return {};
  facts.notices.push_back(
      {"rating_unknown",
       "Holes alone do not show a rating: flanges of several ratings have the same holes. Read the mark on the rim."});
  if (mixes_standards(*found))
    facts.notices.push_back(
        {"several_standards",
         "Candidates are from several standards: bolts may go in although the flanges do not match. "
         "Check outside diameter, facing and mark."});
  return {};
}

}  // namespace detail

namespace detail {

inline Error error_on(const Error& error) { return Error("on", (std::string("on: ") + error.what()).c_str()); }

}  // namespace detail

TAUTEN_FUNCTION Outcome<std::vector<PatternWay>> try_pattern_ways(const std::vector<Position>& part,
                                                                  const std::vector<Position>& on, Length tolerance,
                                                                  bool flipped) {
  const auto from = try_pattern(part);
  if (!from) return from.error();
  const auto to = try_pattern(on);
  if (!to) return detail::error_on(to.error());
  const auto found = try_ways_on(*from, *to, tolerance, flipped);
  if (!found) return found.error();
  std::vector<PatternWay> ways;
  for (const Way& way : *found)
    ways.push_back({way.turn, way.flipped, numbered(way.partner), static_cast<int>(way.worst) + 1, way.off});
  return ways;
}

TAUTEN_FUNCTION Outcome<std::vector<PatternWay>> try_partial_pattern_ways(const std::vector<Position>& part,
                                                                          const std::vector<Position>& on,
                                                                          Length tolerance, bool flipped) {
  const auto from = try_pattern(part);
  if (!from) return from.error();
  const auto to = try_pattern(on);
  if (!to) return detail::error_on(to.error());
  const bool fewer = from->size() < to->size();
  const auto found =
      fewer ? try_ways_on_some(*from, *to, tolerance, flipped) : try_ways_on_some(*to, *from, tolerance, flipped);
  if (!found) return found.error();
  std::vector<PatternWay> ways;
  for (const Way& way : *found) {
    PatternWay one{way.turn, way.flipped, numbered(way.partner), static_cast<int>(way.worst) + 1, way.off};
    if (!fewer) {  // the holes of the base were laid on those of the part: the way back
      if (!flipped) one.turn = detail::plain_turn(-way.turn.si);
      one.worst = one.partners[way.worst];
      one.partners.assign(from->size(), 0);
      for (std::size_t i = 0; i < way.partner.size(); ++i) one.partners[way.partner[i]] = static_cast<int>(i) + 1;
    }
    ways.push_back(std::move(one));
  }
  detail::sort_ways(ways, &PatternWay::partners);
  return ways;
}

TAUTEN_FUNCTION Outcome<PatternFacts> try_pattern_facts(const PatternJob& job) {
  const auto pattern = detail::holes_of(job);
  if (!pattern) return pattern.error();
  const auto found = try_identify_pattern(*pattern, job.tolerance);
  if (!found) return found.error();
  PatternFacts facts;
  facts.kind = found->kind;
  facts.count = static_cast<int>(pattern->size());
  facts.positions = detail::coordinates_of(pattern->positions());
  facts.centre = detail::coordinates_of(found->centre);
  facts.circle_diameter = found->circle_diameter;
  facts.circle_error = Length(detail::without_rounding(found->circle_error.si));
  facts.first = Angle(detail::without_rounding(found->first.si));
  facts.width = found->width;
  facts.height = found->height;
  facts.columns = static_cast<int>(found->columns);
  facts.rows = static_cast<int>(found->rows);
  facts.off = Length(detail::without_rounding(found->off.si));
  facts.freedom = static_cast<int>(found->freedom);
  if (found->odd) {
    facts.odd = static_cast<int>(*found->odd) + 1;
    facts.odd_by = found->odd_by;
  }
  facts.missing = detail::coordinates_of(found->missing);
  facts.ways_round = static_cast<int>(found->ways_round);
  facts.ways_flipped = static_cast<int>(found->ways_flipped);
  if (auto error = detail::add_candidates(job, facts)) return *error;
  if (!job.on.empty()) {
    auto ways = try_pattern_ways(pattern->positions(), job.on, job.tolerance, job.flipped);
    if (!ways) return ways.error();
    facts.ways = *ways;
    facts.goes_on = !facts.ways.empty();
    if (job.on.size() != pattern->size()) {
      auto partial = try_partial_pattern_ways(pattern->positions(), job.on, job.tolerance, job.flipped);
      if (!partial) return partial.error();
      facts.partial_ways = *partial;
      if (!facts.partial_ways.empty())
        facts.notices.push_back(
            {"only_some_holes_meet",
             "Bolts go in although it is another joint: it has another number of bolts, so each carries another load, "
             "and a gasket may leak. Do not fit it unless the maker of both parts agrees."});
    }
  }
  if (facts.freedom == 0)
    facts.notices.push_back({"fit_proves_nothing",
                             "So few holes fit this pattern whatever they measure; the fit proves nothing. Measure "
                             "across other holes as well.",
                             true});
  if (!job.chords.empty())
    facts.notices.push_back(
        {"errors_of_chords", "Errors of chords add up round the ring: check by one measurement across.", true});
  return facts;
}

TAUTEN_FUNCTION PatternFacts pattern_facts(const PatternJob& job) { return try_pattern_facts(job).value(); }

}  // namespace tauten::TAUTEN_ABI
