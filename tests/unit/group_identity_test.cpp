#include "tauten/group/identity.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <limits>
#include <random>
#include <string>

#include "tauten/group/drilling.hpp"
#include "tauten/group/pattern_words.hpp"
#include "tauten/question/pattern.hpp"

#include "near.hpp"

namespace group_identity_test {

namespace {

using namespace tauten;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double mm = 1e-3;
constexpr double degree = 3.14159265358979323846 / 180;

/// The pattern turned clockwise, moved, renumbered and measured with errors.
Pattern measured(const Pattern& pattern, double turn, Position to, double error, std::mt19937& random) {
  std::uniform_real_distribution<double> off(-error, error);
  std::vector<Position> at;
  for (const Position p : pattern)
    at.push_back({std::cos(turn) * p.x + std::sin(turn) * p.y + to.x + off(random),
                  std::cos(turn) * p.y - std::sin(turn) * p.x + to.y + off(random)});
  return try_pattern(at).value();
}

TEST_CASE("group identity: circles are found as made, turned and moved, and their scatter tells the error") {
  std::mt19937 random(3);
  for (std::size_t n = 3; n <= 40; ++n) {
    const double turn = 0.37 * static_cast<double>(n);
    const Pattern ring = measured(try_circle_pattern(n, Length(0.4)).value(), turn, {0.7, -0.2}, 0, random);
    const PatternIdentity found = identify_pattern(ring);
    CHECK(found.kind == PatternKind::circle);
    CHECK(found.circle_diameter.si == near(0.4));
    CHECK(distance(found.centre, {0.7, -0.2}) < 1e-12);
    CHECK(found.ways_round == n);
    CHECK(found.ways_flipped == n);
    CHECK(found.freedom == 2 * n - 4);
    const double step = 2 * 180 * degree / static_cast<double>(n);
    const double first = std::fmod(turn, step);
    CHECK(std::fabs(std::remainder(found.first.si - first, step)) < 1e-9);
    CHECK(found.first.si >= 0);
  }
  // The error of the diameter against the spread of many measurements of one ring.
  const Pattern true_ring = try_circle_pattern(8, Length(0.16)).value();
  double squares = 0;
  double said = 0;
  for (int i = 0; i < 2000; ++i) {
    const PatternIdentity found = identify_pattern(measured(true_ring, 0.2, {}, 0.2 * mm, random));
    REQUIRE(found.kind == PatternKind::circle);
    squares += std::pow(found.circle_diameter.si - 0.16, 2);
    said += std::pow(found.circle_error.si, 2);
  }
  CHECK(squares / said == near(1).epsilon(0.1));
  CHECK(std::sqrt(squares / 2000) == near(2 * 0.2 * mm / std::sqrt(3.0) / std::sqrt(8.0)).epsilon(0.05));
}

TEST_CASE("group identity: least squares against the condition that the gradient vanishes") {
  std::mt19937 random(9);
  std::uniform_real_distribution<double> any(-1, 1);
  for (int trial = 0; trial < 200; ++trial) {
    std::vector<Position> at;
    for (int i = 0; i < 4 + trial % 7; ++i) {
      const double angle = 1.3 * i + 0.2 * any(random);
      at.push_back({0.3 * std::sin(angle) + 5 * mm * any(random) + 2, 0.3 * std::cos(angle) + 5 * mm * any(random)});
    }
    const auto fit = fit_circle(at);
    REQUIRE(fit);
    const auto cost = [&](double x, double y, double r) {
      double sum = 0;
      for (const Position p : at) sum += std::pow(std::hypot(p.x - x, p.y - y) - r, 2);
      return sum;
    };
    const double best = cost(fit->centre.x, fit->centre.y, fit->radius);
    for (int k = 0; k < 6; ++k) {
      const double d = k % 2 == 0 ? 1e-5 : -1e-5;
      CHECK(cost(fit->centre.x + (k / 2 == 0 ? d : 0), fit->centre.y + (k / 2 == 1 ? d : 0),
                 fit->radius + (k / 2 == 2 ? d : 0)) > best);
    }
  }
  // Three places always fit, and nothing is left to tell how well.
  const auto three = fit_circle({{0, 0}, {0.1, 0}, {0.03, 0.2}});
  REQUIRE(three);
  CHECK(three->greatest < 1e-12);
  CHECK(three->freedom == 0);
  CHECK(std::isnan(three->radius_error));
  CHECK_FALSE(fit_circle({{0, 0}, {0.1, 0.1}, {0.2, 0.2}}));
  CHECK_FALSE(fit_circle({{0, 0}, {0.1, 0.1}}));
}

TEST_CASE("group identity: a hole out of its place is found, with the ways round that are left") {
  std::mt19937 random(4);
  for (std::size_t n = 4; n <= 24; ++n)
    for (std::size_t bad = 0; bad < n; bad += 1 + n / 5) {
      const Pattern even = try_circle_pattern(n, Length(0.3)).value();
      const Pattern odd = try_moved(even, bad, {even[bad].x + 4 * mm, even[bad].y - 3 * mm}).value();
      const PatternIdentity found = identify_pattern(measured(odd, 1, {0.1, 0.1}, 0.1 * mm, random));
      CHECK(found.kind == PatternKind::odd_hole);
      REQUIRE(found.odd);
      CHECK(*found.odd == bad);
      CHECK(found.odd_by.si == near(5 * mm).epsilon(0.15));
      CHECK(found.ways_round == 1);
      CHECK(found.circle_diameter.si == near(0.3).epsilon(0.002));
    }
  // Two opposite holes moved outward: the part goes on two ways round.
  const Pattern eight = try_circle_pattern(8, Length(0.2)).value();
  const Pattern two = try_moved(try_moved(eight, 0, {0, 0.104}).value(), 4, {0, -0.104}).value();
  CHECK(identify_pattern(two).ways_round == 2);
}

TEST_CASE("group identity: missing holes, rectangles, grids, lines and the rest") {
  std::mt19937 random(8);
  const Pattern twelve = try_circle_pattern(12, Length(0.3)).value();
  const PatternIdentity missing =
      identify_pattern(measured(try_without(try_without(twelve, 3).value(), 7).value(), 0.4, {}, 0.1 * mm, random));
  CHECK(missing.kind == PatternKind::missing_holes);
  REQUIRE(missing.missing.size() == 2);
  CHECK(missing.circle_diameter.si == near(0.3).epsilon(0.001));
  CHECK(missing.ways_round == 1);
  // Three of four: the fourth place is named.
  const PatternIdentity three = identify_pattern(try_pattern({{0, 0.1}, {0.1, 0}, {0, -0.1}}).value());
  CHECK(three.kind == PatternKind::missing_holes);
  REQUIRE(three.missing.size() == 1);
  CHECK(distance(three.missing[0], {-0.1, 0}) < 1e-9);

  const Pattern feet = try_rectangle_pattern(Length(0.216), Length(0.178)).value();
  const PatternIdentity rectangle = identify_pattern(measured(feet, 0.5, {1, 1}, 0.1 * mm, random));
  CHECK(rectangle.kind == PatternKind::rectangle);
  CHECK(rectangle.width.si == near(0.216).epsilon(0.002));
  CHECK(rectangle.height.si == near(0.178).epsilon(0.002));
  CHECK(rectangle.ways_round == 2);
  CHECK(rectangle.ways_flipped == 2);
  const PatternIdentity square = identify_pattern(try_rectangle_pattern(Length(0.2), Length(0.2)).value());
  CHECK(square.kind == PatternKind::circle);
  CHECK(square.ways_round == 4);
  const PatternIdentity grid = identify_pattern(
      measured(try_grid_pattern(3, 5, Length(0.07), Length(0.06)).value(), -0.3, {}, 0.1 * mm, random));
  CHECK(grid.kind == PatternKind::grid);
  CHECK(grid.columns == 5);
  CHECK(grid.rows == 3);
  CHECK(grid.ways_round == 2);
  const PatternIdentity line = identify_pattern(try_line_pattern(4, Length(0.07)).value());
  CHECK(line.kind == PatternKind::line);
  CHECK(line.width.si == near(0.21));
  CHECK(line.ways_round == 2);
  // Three holes: on a circle always, which proves nothing.
  const PatternIdentity bracket = identify_pattern(try_pattern({{0, 0}, {0.1, 0.01}, {0.02, 0.15}}).value());
  CHECK(bracket.kind == PatternKind::uneven_circle);
  CHECK(bracket.freedom == 0);
  CHECK(bracket.ways_round == 1);
  // One hole out of line on an isosceles bracket: it goes on turned over, and only so.
  const PatternIdentity isosceles = identify_pattern(try_pattern({{-0.1, 0}, {0.1, 0}, {0, 0.07}}).value());
  CHECK(isosceles.ways_round == 1);
  CHECK(isosceles.ways_flipped == 1);
  CHECK(identify_pattern(try_pattern({{0, 0}, {0.1, 0.03}, {0.02, 0.15}, {0.3, 0.2}, {0.11, 0.05}}).value()).kind ==
        PatternKind::irregular);
  CHECK_FALSE(try_identify_pattern(feet, Length(0)));
  CHECK_FALSE(try_identify_pattern(feet, Length(nan)));
  CHECK_FALSE(try_identify_pattern(feet, Length(0.1)));
}

TEST_CASE("group identity: does the old part fit the new one, and which way") {
  std::mt19937 random(6);
  const std::vector<Position> plate{{0, 0}, {0.08, 0}, {0.08, 0.12}, {0, 0.06}, {0.04, 0.15}};
  const Pattern holes = try_pattern(plate).value();
  std::vector<Position> shuffled{plate[3], plate[0], plate[4], plate[2], plate[1]};
  const Pattern part = measured(try_pattern(shuffled).value(), 2.0, {5, 5}, 0.1 * mm, random);
  const auto ways = try_ways_on(part, holes, Length(0.5 * mm)).value();
  REQUIRE(ways.size() == 1);
  CHECK(ways[0].turn.si == near(-2.0).epsilon(0.01));
  CHECK(ways[0].partner == std::vector<std::size_t>{3, 0, 4, 2, 1});
  CHECK(ways[0].off.si < 0.3 * mm);
  CHECK(try_ways_on(part, holes, Length(0.5 * mm), true).value().empty());
  // Turned over, it fits its mirror image.
  std::vector<Position> mirrored;
  for (const Position p : plate) mirrored.push_back({-p.x, p.y});
  CHECK(try_ways_on(holes, try_pattern(mirrored).value(), Length(0.5 * mm)).value().empty());
  CHECK(try_ways_on(holes, try_pattern(mirrored).value(), Length(0.5 * mm), true).value().size() == 1);
  // A ring 2 mm larger does not go on within 0.5 mm, but within 1.1 mm it does, all ways round.
  const Pattern small = try_circle_pattern(8, Length(0.16)).value();
  const Pattern large = try_circle_pattern(8, Length(0.162)).value();
  CHECK(try_ways_on(small, large, Length(0.5 * mm)).value().empty());
  CHECK(try_ways_on(small, large, Length(1.1 * mm)).value().size() == 8);
  CHECK(try_ways_on(small, try_circle_pattern(6, Length(0.16)).value(), Length(1 * mm)).value().empty());
}

TEST_CASE("group identity: fewer holes on some of more, and which ways") {
  std::mt19937 random(12);
  const std::vector<Position> plate{{0, 0},       {0.08, 0},    {0.08, 0.12}, {0, 0.06},
                                    {0.04, 0.15}, {0.15, 0.02}, {0.13, 0.11}};
  const Pattern holes = try_pattern(plate).value();
  const std::vector<std::size_t> picked{5, 2, 0, 4};
  std::vector<Position> few;
  for (const std::size_t i : picked) few.push_back(plate[i]);
  const Pattern part = measured(try_pattern(few).value(), 0.9, {-3, 2}, 0.1 * mm, random);
  const auto ways = try_ways_on_some(part, holes, Length(0.5 * mm)).value();
  REQUIRE(ways.size() == 1);
  CHECK(ways[0].partner == picked);
  CHECK(ways[0].turn.si == near(-0.9).epsilon(0.01));
  CHECK(ways[0].off.si < 0.3 * mm);
  CHECK(try_ways_on_some(part, holes, Length(0.5 * mm), true).value().empty());
  for (Position& p : few) p.x = -p.x;
  CHECK(try_ways_on_some(try_pattern(few).value(), holes, Length(0.5 * mm), true).value().size() == 1);
  CHECK(try_ways_on_some(try_pattern(few).value(), holes, Length(0.5 * mm)).value().empty());
  // One hole 1.5 mm off: within 0.5 mm it goes nowhere, though three of its four holes do.
  const Pattern off = try_moved(part, 1, {part[1].x + 1.5 * mm, part[1].y}).value();
  CHECK(try_ways_on_some(off, holes, Length(0.5 * mm)).value().empty());
  CHECK(try_ways_on_some(off, holes, Length(2 * mm)).value().size() == 1);
  // As many, or more, go on no part of the other.
  CHECK(try_ways_on_some(holes, holes, Length(0.5 * mm)).value().empty());
  CHECK(try_ways_on_some(holes, part, Length(0.5 * mm)).value().empty());
  CHECK_FALSE(try_ways_on_some(part, holes, Length(0)));
  CHECK_FALSE(try_ways_on_some(part, holes, Length(0.1)));
  // Places close together, so that the pair is laid on many: each way is listed once.
  std::vector<Position> close;
  for (int i = 0; i < 6; ++i) close.push_back({0.006 * i, 0.001 * (i % 2)});
  const auto many = try_ways_on_some(try_pattern({close[0], close[2], close[5]}).value(), try_pattern(close).value(),
                                     Length(2.4 * mm))
                        .value();
  CHECK(many.size() > 1);
  for (std::size_t i = 0; i < many.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) CHECK(many[i].partner != many[k].partner);
  // Two bolts 1 mm apart do not share a place, however generous the tolerance.
  const Pattern twins = try_pattern({{0, 0}, {0.001, 0}, {0.1, 0}}).value();
  CHECK(try_ways_on(twins, try_pattern({{0, 0}, {0.05, 0}, {0.1, 0}}).value(), Length(2 * mm)).value().empty());
  CHECK(try_ways_on_some(twins, try_pattern({{0, 0}, {0.05, 0}, {0.1, 0}, {0.05, 0.05}}).value(), Length(2 * mm))
            .value()
            .empty());
  // Rings by counting: 4 of 8 go on in 8 ways, 4 of 12 in 12, 6 of 8 in none.
  for (const auto& [count, on, expected] : {std::array{4, 8, 8}, std::array{4, 12, 12}, std::array{6, 8, 0}}) {
    const Pattern small = try_circle_pattern(static_cast<std::size_t>(count), Length(0.18), Angle(0.3)).value();
    const Pattern large = try_circle_pattern(static_cast<std::size_t>(on), Length(0.18)).value();
    CHECK(try_ways_on_some(small, large, Length(0.5 * mm)).value().size() == static_cast<std::size_t>(expected));
    CHECK(try_ways_on_some(small, large, Length(0.5 * mm), true).value().size() == static_cast<std::size_t>(expected));
  }
  // The way back, of a part with more holes than what it goes on: the same pairs.
  const auto there = try_partial_pattern_ways(part.positions(), plate, Length(0.5 * mm), false).value();
  const auto back = try_partial_pattern_ways(plate, part.positions(), Length(0.5 * mm), false).value();
  REQUIRE(there.size() == 1);
  REQUIRE(back.size() == 1);
  CHECK(there[0].partners == std::vector<int>{6, 3, 1, 5});
  CHECK(back[0].partners == std::vector<int>{3, 0, 2, 0, 4, 1, 0});
  CHECK(back[0].turn.si == near(-there[0].turn.si));
  CHECK(back[0].worst == there[0].partners[static_cast<std::size_t>(there[0].worst) - 1]);
}

TEST_CASE("group identity: ways on some holes against all ways to pick partners, by distances and turning senses") {
  std::mt19937 random(31);
  int met = 0;
  for (std::size_t trial = 0; trial < 300; ++trial) {
    // Places on a coarse lattice, so that two patterns are alike to the last digit or differ by millimetres.
    const auto lattice = [&](std::size_t count) {
      std::vector<Position> at;
      while (at.size() < count) {
        const Position p{0.01 * static_cast<double>(random() % 4), 0.01 * static_cast<double>(random() % 4)};
        if (std::find(at.begin(), at.end(), p) == at.end()) at.push_back(p);
      }
      return at;
    };
    const std::vector<Position> to = lattice(4 + trial % 4);
    const std::vector<Position> from = lattice(2 + trial % 2);
    const bool flipped = trial % 3 == 0;
    const auto turning = [](Position a, Position b, Position c) {
      return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    };
    std::size_t expected = 0;
    std::vector<std::size_t> partner(from.size());
    const auto pick = [&](auto&& self, std::size_t i) -> void {
      if (i == from.size()) {
        bool alike = true;
        for (std::size_t a = 0; a < i; ++a)
          for (std::size_t b = 0; b < a; ++b)
            alike = alike && std::fabs(distance(from[a], from[b]) - distance(to[partner[a]], to[partner[b]])) < 1e-9;
        if (i == 3)
          alike = alike && std::fabs((flipped ? -1 : 1) * turning(from[0], from[1], from[2]) -
                                     turning(to[partner[0]], to[partner[1]], to[partner[2]])) < 1e-9;
        expected += alike;
        return;
      }
      for (std::size_t k = 0; k < to.size(); ++k) {
        if (std::find(partner.begin(), partner.begin() + static_cast<std::ptrdiff_t>(i), k) !=
            partner.begin() + static_cast<std::ptrdiff_t>(i))
          continue;
        partner[i] = k;
        self(self, i + 1);
      }
    };
    pick(pick, 0);
    CHECK(try_ways_on_some(try_pattern(from).value(), try_pattern(to).value(), Length(0.2 * mm), flipped)
              .value()
              .size() == expected);
    met += expected > 0;
  }
  CHECK(met > 100);
}

TEST_CASE("group identity: a hole out of place in rows and columns") {
  std::mt19937 random(21);
  for (std::size_t bad = 0; bad < 4; ++bad) {
    const Pattern feet = try_rectangle_pattern(Length(0.2), Length(0.14)).value();
    const Position outward{std::copysign(3 * mm, feet[bad].x), std::copysign(4 * mm, feet[bad].y)};
    const Pattern odd = try_moved(feet, bad, {feet[bad].x + outward.x, feet[bad].y + outward.y}).value();
    const PatternIdentity found = identify_pattern(measured(odd, 0.4, {0.3, 0.1}, 0.05 * mm, random));
    CHECK(found.kind == PatternKind::odd_hole);
    REQUIRE(found.odd);
    CHECK(*found.odd == bad);
    CHECK(found.odd_by.si == near(5 * mm).epsilon(0.1));
    CHECK(found.width.si == near(0.2).epsilon(0.003));
    CHECK(found.height.si == near(0.14).epsilon(0.003));
    CHECK(found.columns == 2);
    CHECK(found.rows == 2);
    CHECK(found.freedom == 1);
    CHECK(std::isnan(found.circle_diameter.si));
    CHECK(found.ways_round == 1);
  }
  const Pattern grid = try_grid_pattern(4, 3, Length(0.07), Length(0.06)).value();
  for (std::size_t bad = 0; bad < 12; ++bad) {
    const Pattern odd = try_moved(grid, bad, {grid[bad].x - 2 * mm, grid[bad].y + 2 * mm}).value();
    const PatternIdentity found = identify_pattern(measured(odd, -0.2, {1, 1}, 0.05 * mm, random));
    CHECK(found.kind == PatternKind::odd_hole);
    REQUIRE(found.odd);
    CHECK(*found.odd == bad);
    CHECK(found.odd_by.si == near(std::sqrt(8.0) * mm).epsilon(0.1));
    CHECK(found.columns == 4);
    CHECK(found.rows == 3);
  }
  // Moved so that the corner stays a right angle: then the opposite hole explains it as well, and none is named.
  const Pattern corner = try_rectangle_pattern(Length(0.2), Length(0.14)).value();
  const PatternIdentity either =
      identify_pattern(try_moved(corner, 0, {corner[0].x + 3 * mm, corner[0].y + 4.2 * mm}).value());
  CHECK(either.kind != PatternKind::odd_hole);
  CHECK_FALSE(either.odd);
  // Beyond a tenth of the distance of the rows it is no rectangle with a bad hole, but a pattern of its own.
  const Pattern feet = try_rectangle_pattern(Length(0.2), Length(0.14)).value();
  CHECK(identify_pattern(try_moved(feet, 1, {0.13, 0.10}).value()).kind != PatternKind::odd_hole);
}

TEST_CASE("group identity: a ring from its chords") {
  for (std::size_t n = 3; n < 20; ++n) {
    const double chord = 0.2 * std::sin(3.14159265358979323846 / static_cast<double>(n));
    const Pattern ring = try_pattern_from_chords(std::vector<Length>(n, Length(chord))).value();
    CHECK(identify_pattern(ring).circle_diameter.si == near(0.2));
  }
  // Any ring of holes, the centre inside or outside of it: chords of the pattern found are the chords given.
  std::mt19937 random(2);
  std::uniform_real_distribution<double> any(0.1, 1);
  int outside = 0;
  for (int trial = 0; trial < 500; ++trial) {
    std::vector<Length> chords;
    double sum = 0;
    double longest = 0;
    for (int i = 0; i < 3 + trial % 6; ++i) {
      chords.push_back(Length(any(random)));
      sum += chords.back().si;
      longest = std::max(longest, chords.back().si);
    }
    const auto ring = try_pattern_from_chords(chords);
    CHECK(static_cast<bool>(ring) == (longest < sum - longest));
    if (!ring) continue;
    const auto circle = fit_circle(ring->positions());
    REQUIRE(circle);
    CHECK(circle->greatest < 1e-7);
    outside += circle->radius * std::cos(std::asin(std::min(longest / 2 / circle->radius, 1.0))) > 0.3;
    for (std::size_t i = 0; i < ring->size(); ++i)
      CHECK(distance((*ring)[i], (*ring)[(i + 1) % ring->size()]) == near(chords[i].si).epsilon(1e-7));
  }
  CHECK(outside > 5);
  CHECK_FALSE(try_pattern_from_chords({Length(0.1), Length(0.1)}));
  CHECK_FALSE(try_pattern_from_chords({Length(0.1), Length(0.1), Length(0.2)}));
  CHECK_FALSE(try_pattern_from_chords({Length(0.1), Length(nan), Length(0.1)}));
}

MeasuredDrilling ring_of(std::size_t count, double circle) {
  MeasuredDrilling m;
  m.count = count;
  m.circle = Length(circle * mm);
  return m;
}

TEST_CASE("group drilling: candidates, and what would tell them apart") {
  // DN100: PN10 and PN16 have the same holes (EN 1092-1 as tabulated), which no measurement parts.
  MeasuredDrilling flange = ring_of(8, 180);
  auto found = try_drilling_candidates(flange).value();
  REQUIRE(found.size() >= 2);
  bool pn10 = false;
  bool pn16 = false;
  for (const auto& c : found) {
    pn10 = pn10 || (std::strcmp(c.rating, "PN10") == 0 && std::strcmp(c.size, "DN100") == 0);
    pn16 = pn16 || (std::strcmp(c.rating, "PN16") == 0 && std::strcmp(c.size, "DN100") == 0);
  }
  CHECK(pn10);
  CHECK(pn16);
  flange.hole = Length(18 * mm);
  flange.outside = Length(220 * mm);
  CHECK(next_measurement(try_drilling_candidates(flange).value(), flange) == NextMeasurement::marking);
  // Bolt circle 75: PN6 DN25 has holes of 11, PN10 to PN40 DN20 of 14 (notes on the figures): the hole decides there.
  found = try_drilling_candidates(ring_of(4, 75)).value();
  CHECK(next_measurement(found, ring_of(4, 75)) != NextMeasurement::nothing);
  CHECK(mixes_standards(found));
  MeasuredDrilling hole = ring_of(4, 75);
  hole.hole = Length(11 * mm);
  for (const auto& c : try_drilling_candidates(hole).value())
    CHECK((std::strcmp(c.rating, "PN6") == 0 || std::strcmp(c.rating, "5K") == 0) == (c.hole.si < 12.5 * mm));
  // Motor feet: two frames of a height differ in B alone.
  MeasuredDrilling feet;
  feet.count = 4;
  feet.across = Length(0.14);
  feet.along = Length(0.216);
  found = try_drilling_candidates(feet).value();
  // Feet of 216 x 140 are those of IEC 132S and, to half a millimetre, of NEMA 213T (8.5 x 5.5 in): holes of 12 and
  // 10.4 mm part them.
  REQUIRE(found.size() == 2);
  CHECK(std::string(found[0].size) == "frame 132S");
  CHECK(std::string(found[1].size) == "frame 213T");
  CHECK(next_measurement(found, feet) == NextMeasurement::hole);
  feet.hole = Length(12 * mm);
  found = try_drilling_candidates(feet).value();
  REQUIRE(found.size() == 1);
  CHECK(next_measurement(found, feet) == NextMeasurement::nothing);
  CHECK(try_drilling_candidates(ring_of(7, 180)).value().empty());
  CHECK_FALSE(try_drilling_candidates(ring_of(1, 180)));
  CHECK_FALSE(try_drilling_candidates(ring_of(8, -180)));
  // What is not a measurement is not one that was not made.
  for (const double wrong : {0.0, std::nan(""), HUGE_VAL}) {
    for (std::optional<Length> MeasuredDrilling::* figure :
         {&MeasuredDrilling::circle, &MeasuredDrilling::across, &MeasuredDrilling::along, &MeasuredDrilling::hole,
          &MeasuredDrilling::outside, &MeasuredDrilling::height}) {
      MeasuredDrilling measured = ring_of(8, 180);
      measured.*figure = Length(wrong);
      CHECK(std::string(try_drilling_candidates(measured).error().what()).find("must be above 0") != std::string::npos);
    }
  }
}

const table::CircleDrilling* row(const char* standard, const char* rating, const char* size) {
  for (const auto& r : table::circle_drillings)
    if (std::strcmp(r.standard, standard) == 0 && std::strcmp(r.rating, rating) == 0 && std::strcmp(r.size, size) == 0)
      return &r;
  return nullptr;
}

TEST_CASE("group drilling: standards that take each other's bolts, as worked out for the collection of figures") {
  struct Pair {
    const char *standard, *rating, *size, *other_standard, *other_rating, *other_size;
    double bolt;
  };
  for (const Pair& p : {Pair{"JIS B 2220", "10K", "DN150", "EN 1092-1", "PN10", "DN150", 20},
                        Pair{"JIS B 2220", "10K", "DN150", "ASME B16.5", "class 150", "DN150", 19.05},
                        Pair{"JIS B 2220", "10K", "DN65", "ASME B16.5", "class 150", "DN65", 15.875},
                        Pair{"EN 1092-1", "PN40", "DN300", "ASME B16.5", "class 300", "DN300", 28.575},
                        Pair{"EN 1092-1", "PN6", "DN20", "JIS B 2220", "5K", "DN20", 10},
                        Pair{"EN 1092-1", "PN10", "DN500", "JIS B 2220", "10K", "DN500", 24},
                        Pair{"EN 1092-1", "PN16", "DN250", "JIS B 2220", "10K", "DN250", 22}}) {
    const auto* a = row(p.standard, p.rating, p.size);
    const auto* b = row(p.other_standard, p.other_rating, p.other_size);
    REQUIRE(a);
    REQUIRE(b);
    CHECK(take_each_others_bolts(*a, *b, Length(p.bolt * mm)));
  }
  CHECK_FALSE(
      take_each_others_bolts(*row("EN 1092-1", "PN6", "DN300"), *row("EN 1092-1", "PN10", "DN300"), Length(20 * mm)));
}

TEST_CASE("group drilling: even rings of EN 1092-1 have a number of holes divisible by four") {
  // Flange type sheet DIN 2501 / EN 1092: divisible by four, straddling both axes.
  for (const auto& r : table::circle_drillings) {
    if (std::strcmp(r.standard, "EN 1092-1") == 0) CHECK(r.count % 4 == 0);
    CHECK((std::isnan(r.outside) || r.outside > r.circle + r.hole));
    CHECK((std::isnan(r.hole) || r.circle * std::sin(3.14159265358979 / r.count) > 1.2 * r.hole));
  }
  const Pattern named = try_pattern_by_name("EN 1092-1 PN16 DN100").value();
  REQUIRE(named.size() == 8);
  for (const Position p : named) CHECK(std::min(std::fabs(p.x), std::fabs(p.y)) > 30 * mm);
  CHECK(identify_pattern(named).circle_diameter.si == near(0.18));
  CHECK_FALSE(try_pattern_by_name("EN 1092-1 DN100"));
  CHECK_FALSE(try_pattern_by_name("EN 1092-1 PN16 DN65"));  // 4 or 8 holes: sources disagree
  CHECK_FALSE(try_pattern_by_name("EN 1092-1 PN17 DN100"));
  CHECK_FALSE(try_pattern_by_name(""));
}

TEST_CASE("group pattern words: each shape as it is written, and one error for the rest") {
  CHECK(try_pattern_from_words("circle:8:160mm").value().positions() ==
        try_circle_pattern(8, Length(160 * mm)).value().positions());
  CHECK(try_pattern_from_words("circle:4:160mm:45deg").value()[0].x == near(0.08 * std::sqrt(0.5)));
  CHECK(try_pattern_from_words("rectangle:200mm:150mm").value().size() == 4);
  CHECK(try_pattern_from_words("rectangle:200mm:150mm:4x3").value().size() == 10);
  CHECK(try_pattern_from_words("grid:2x4:140mm:70mm").value().size() == 8);
  CHECK(try_pattern_from_words("line:4:3in").value()[3].x == near(4.5 * 25.4 * mm));
  CHECK(try_pattern_from_words("chords:80mm,80mm,80mm").value().size() == 3);
  CHECK(try_pattern_from_words("places:0mm,0mm;80mm,0mm").value()[1].x == near(0.08));
  CHECK(try_pattern_from_words("EN 1092-1 PN16 DN100").value().size() == 8);
  for (const char* bad : {"", "circle", "circle:8", "circle:8:160", "circle:8.5:160mm", "circle:1:160mm",
                          "star:8:160mm", "grid:2:140mm:70mm", "rectangle:200mm", "line:4:-75mm", "places:0mm;1mm",
                          "chords:", "circle:8:160mm:x", "circle:99999999999999999999:1mm"})
    CHECK_MESSAGE(!try_pattern_from_words(bad), bad);
}

}  // namespace

}  // namespace group_identity_test
