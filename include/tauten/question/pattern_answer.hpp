// What can be asked about the holes of a joint, and what is answered.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/text.hpp"
#include "tauten/group/terms.hpp"

namespace tauten::TAUTEN_ABI {

/// x and y, seen from the side that is tightened: x to the right, y up.
using Coordinates = std::vector<Length>;

/// Between which edges of two holes a distance was measured.
enum class HoleEdges : unsigned char { near_edges, far_edges };

template <>
struct Words<HoleEdges> {
  static constexpr const char* list[] = {"near", "far"};
};

/// What is asked about holes. Positions, chords or a name are given.
struct PatternJob {
  std::vector<Position> positions{};  ///< centres of the holes, in m
  std::vector<Length> chords{};       ///< distances of neighbours clockwise round the ring, the last one back to hole 1
  std::optional<HoleEdges> edges{};   ///< between which edges the chords were measured; centres if not given
  Text name{};                        ///< "circle:8:160mm", "EN 1092-1 PN16 DN100"
  std::optional<Length> hole{};       ///< diameter of the holes
  std::optional<Length> outside{};    ///< outside diameter of a flange
  std::optional<Length> height{};     ///< shaft height of a motor
  Length tolerance{0.5e-3};           ///< how far a hole may be from its place by error of measurement
  std::vector<Position> on{};         ///< the holes that the part is to go on
  bool flipped = false;               ///< it goes on turned over
};

/// A standard drilling that fits the holes; it proves no rating.
struct StandardDrilling {
  std::string standard;    ///< "EN 1092-1"
  std::string rating;      ///< "PN16"
  std::string size;        ///< "DN100"
  Length circle_diameter;  ///< NaN for what the standard does not have, as below
  Length across, along;    ///< sides of a rectangle
  Length hole_diameter;
  Length outside_diameter;
  Length shaft_height;
  Source source;

  template <class V>
  static void fields(V&& visit) {
    visit("standard", &StandardDrilling::standard);
    visit("rating", &StandardDrilling::rating);
    visit("size", &StandardDrilling::size);
    visit("circle_diameter", &StandardDrilling::circle_diameter);
    visit("across", &StandardDrilling::across);
    visit("along", &StandardDrilling::along);
    visit("hole_diameter", &StandardDrilling::hole_diameter);
    visit("outside_diameter", &StandardDrilling::outside_diameter);
    visit("shaft_height", &StandardDrilling::shaft_height);
    visit("source", &StandardDrilling::source);
  }
};

/// One way in which the part goes on other holes. Holes are numbered from 1.
struct PatternWay {
  Angle turn;                 ///< clockwise
  bool flipped = false;       ///< turned over first, left to right
  std::vector<int> partners;  ///< for each hole of the part the one that it meets; 0 for none
  int worst = 0;              ///< hole that is farthest from its partner
  Length off;                 ///< how far

  template <class V>
  static void fields(V&& visit) {
    visit("turn", &PatternWay::turn);
    visit("flipped", &PatternWay::flipped);
    visit("partners", &PatternWay::partners);
    visit("worst", &PatternWay::worst);
    visit("off", &PatternWay::off);
  }
};

/// Which pattern the holes are. Holes are numbered from 1; lengths that the pattern does not have are NaN.
struct PatternFacts {
  PatternKind kind = PatternKind::irregular;
  int count = 0;
  std::vector<Coordinates> positions;
  Coordinates centre;  ///< of the circle, else of the holes
  Length circle_diameter;
  Length circle_error;   ///< standard uncertainty of it
  Angle first;           ///< of the first hole, clockwise from the top
  Length width, height;  ///< of a rectangle, grid or line; the longer side first
  int columns = 0, rows = 0;
  Length off;              ///< farthest that a hole is from its place
  int freedom = 0;         ///< measured figures beyond what fixes the pattern; 0 proves nothing
  std::optional<int> odd;  ///< hole out of its place
  std::optional<Length> odd_by;
  std::vector<Coordinates> missing;  ///< places without a hole
  int ways_round = 1;                ///< in which the part goes back on its own holes
  int ways_flipped = 0;              ///< in which it does turned over
  std::vector<StandardDrilling> candidates;
  NextMeasurement next_measurement = NextMeasurement::nothing;  ///< that distinguishes the candidates
  std::optional<bool> goes_on;                                  ///< whether the part goes on the other holes
  std::vector<PatternWay> ways;                                 ///< in which it does
  std::vector<PatternWay> partial_ways;  ///< counts differ: how all holes of one meet some of the other; no permission
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("kind", &PatternFacts::kind);
    visit("count", &PatternFacts::count);
    visit("positions", &PatternFacts::positions);
    visit("centre", &PatternFacts::centre);
    visit("circle_diameter", &PatternFacts::circle_diameter);
    visit("circle_error", &PatternFacts::circle_error);
    visit("first", &PatternFacts::first);
    visit("width", &PatternFacts::width);
    visit("height", &PatternFacts::height);
    visit("columns", &PatternFacts::columns);
    visit("rows", &PatternFacts::rows);
    visit("off", &PatternFacts::off);
    visit("freedom", &PatternFacts::freedom);
    visit("odd", &PatternFacts::odd);
    visit("odd_by", &PatternFacts::odd_by);
    visit("missing", &PatternFacts::missing);
    visit("ways_round", &PatternFacts::ways_round);
    visit("ways_flipped", &PatternFacts::ways_flipped);
    visit("candidates", &PatternFacts::candidates);
    visit("next_measurement", &PatternFacts::next_measurement);
    visit("goes_on", &PatternFacts::goes_on);
    visit("ways", &PatternFacts::ways);
    visit("partial_ways", &PatternFacts::partial_ways);
    visit("notices", &PatternFacts::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
