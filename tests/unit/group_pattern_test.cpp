#include "tauten/group/pattern.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <string>

#include "near.hpp"

namespace group_pattern_test {

namespace {

using namespace tauten;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double mm = 1e-3;

std::string refused(const Outcome<Pattern>& outcome) { return outcome ? "" : outcome.error().what(); }

TEST_CASE("group pattern: a circle goes clockwise from the top, and neighbours are one chord apart") {
  const Pattern eight = try_circle_pattern(8, Length(0.16)).value();
  REQUIRE(eight.size() == 8);
  CHECK(eight[0].x == near(0));
  CHECK(eight[0].y == near(0.08));
  CHECK(eight[2].x == near(0.08));  // three o'clock
  CHECK(eight[4].y == near(-0.08));
  for (std::size_t i = 0; i < 8; ++i) CHECK(distance(eight[i], eight[(i + 4) % 8]) == near(0.16));
  // Straddling: no hole on an axis (EN 1092 as quoted on a maker's data sheet: holes off the two main axes).
  const Pattern straddling = try_circle_pattern(8, Length(0.16), Angle(pi<double>() / 8)).value();
  for (const Position p : straddling) CHECK(std::min(std::fabs(p.x), std::fabs(p.y)) > 0.02);
}

TEST_CASE("group pattern: chords give the bolt circle") {
  // Geometry worked out apart from the library: K over neighbour chord and over the widest chord.
  struct Row {
    std::size_t n;
    double over_neighbour, over_widest;
  };
  for (const Row row :
       {Row{3, 1.1547, 1.1547}, Row{4, 1.4142, 1}, Row{5, 1.7013, 1.0515}, Row{7, 2.3048, 1.0257}, Row{8, 2.6131, 1},
        Row{9, 2.9238, 1.0154}, Row{12, 3.8637, 1}, Row{16, 5.1258, 1}, Row{24, 7.6613, 1}, Row{32, 10.2023, 1}}) {
    CHECK(try_circle_from_chord(row.n, 1, Length(0.1)).value().si * 10 == near(row.over_neighbour).epsilon(5e-5));
    CHECK(try_circle_from_chord(row.n, row.n / 2, Length(0.1)).value().si * 10 == near(row.over_widest).epsilon(5e-5));
    // The circle built from it has the chord that was measured.
    const Length K = try_circle_from_chord(row.n, row.n / 2, Length(0.1)).value();
    const Pattern circle = try_circle_pattern(row.n, K).value();
    CHECK(distance(circle[0], circle[row.n / 2]) == near(0.1));
  }
  // The formula against the law of cosines, chord^2 = K^2/2 (1 - cos(2 pi k/n)).
  for (int n = 2; n <= 40; ++n)
    for (int k = 1; k <= n / 2; ++k) {
      const double K = circle_from_chord.si(0.1, static_cast<double>(k), static_cast<double>(n));
      CHECK(K * K / 2 * (1 - std::cos(2 * 3.14159265358979323846 * k / n)) == near(0.01).epsilon(1e-12));
    }
  CHECK(std::isnan(circle_from_chord.si(0.1, 5.0, 8.0)));
  CHECK_FALSE(try_circle_from_chord(8, 5, Length(0.1)));
  CHECK_FALSE(try_circle_from_chord(8, 0, Length(0.1)));
  CHECK_FALSE(try_circle_from_chord(8, 1, Length(nan)));
  // Holes of 18 mm, 160 mm apart.
  CHECK(try_centre_distance(Length(142 * mm), Length(178 * mm)).value().si == near(160 * mm));
  CHECK_FALSE(try_centre_distance(Length(178 * mm), Length(142 * mm)));
}

TEST_CASE("group pattern: grids, lines and rectangles are centred and numbered as described") {
  const Pattern grid = try_grid_pattern(2, 3, Length(0.1), Length(0.07)).value();
  REQUIRE(grid.size() == 6);
  CHECK(grid[0] == Position{-0.05, 0.07});
  CHECK(grid[1] == Position{0.05, 0.07});
  CHECK(grid[5] == Position{0.05, -0.07});
  const Pattern line = try_line_pattern(3, Length(0.05)).value();
  CHECK(line[0] == Position{-0.05, 0});
  CHECK(line[1] == Position{0, 0});
  const Pattern feet = try_rectangle_pattern(Length(0.2), Length(0.15)).value();
  REQUIRE(feet.size() == 4);
  CHECK(feet[2] == Position{0.1, -0.075});
  const Pattern cover = try_rectangle_pattern(Length(0.3), Length(0.2), 4, 3).value();
  CHECK(cover.size() == 10);  // 2 (4 + 3) less four corners counted twice
  for (const Pattern* p : {&grid, &line, &feet, &cover}) {
    CHECK(std::fabs(p->centroid().x) < 1e-15);
    CHECK(std::fabs(p->centroid().y) < 1e-15);
  }
}

TEST_CASE("group pattern: a ring with a wrong hole or without one") {
  const Pattern ring = try_circle_pattern(6, Length(0.12)).value();
  const Pattern odd = try_moved(ring, 2, {0.05, -0.02}).value();
  CHECK(odd[2] == Position{0.05, -0.02});
  CHECK(odd[3] == ring[3]);
  const Pattern missing = try_without(ring, 0).value();
  CHECK(missing.size() == 5);
  CHECK(missing[0] == ring[1]);
  CHECK(refused(try_moved(ring, 6, {})).find("bolt 7") != std::string::npos);
  CHECK_FALSE(try_moved(ring, 2, ring[3]));
  CHECK_FALSE(try_without(try_line_pattern(2, Length(0.1)).value(), 0));
}

TEST_CASE("group pattern: bad input is one clear error") {
  CHECK(refused(try_pattern({})).find("positions is 0") == 0);
  CHECK(refused(try_pattern({{0, 0}})).find("positions is 1") == 0);
  CHECK(refused(try_pattern({{0, 0}, {0.1, 0}, {0.1, 0.1}, {0.1, 1e-8}})).find("bolts 2 and 4") != std::string::npos);
  CHECK(refused(try_pattern({{0, 0}, {nan, 0}})).find("bolt 2") != std::string::npos);
  CHECK_FALSE(try_pattern({{0, 0}, {std::numeric_limits<double>::infinity(), 0}}));
  CHECK_FALSE(try_pattern({{0, 0}, {160, 1600}}));
  CHECK_FALSE(try_circle_pattern(1, Length(0.1)));
  CHECK_FALSE(try_circle_pattern(8, Length(-0.1)));
  CHECK_FALSE(try_circle_pattern(8, Length(nan)));
  CHECK_FALSE(try_circle_pattern(8, Length(1e-7)));  // all bolts in one place
  CHECK_FALSE(try_circle_pattern(1000000000, Length(0.1)));
  CHECK_FALSE(try_circle_pattern(8, Length(0.1), Angle(nan)));
  CHECK_FALSE(try_grid_pattern(0, 3, Length(0.1), Length(0.1)));
  CHECK_FALSE(try_grid_pattern(1, 1, Length(0.1), Length(0.1)));
  CHECK_FALSE(try_grid_pattern(2, 3, Length(0), Length(0.1)));
  CHECK_FALSE(try_grid_pattern(1000, 1000, Length(0.1), Length(0.1)));
  CHECK_FALSE(try_rectangle_pattern(Length(0.1), Length(nan)));
  CHECK_FALSE(try_rectangle_pattern(Length(0.1), Length(0.1), 1, 2));
}

}  // namespace

}  // namespace group_pattern_test
