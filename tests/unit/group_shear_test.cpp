#include "tauten/group/shear.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <limits>
#include <random>

#include "near.hpp"

namespace group_shear_test {

namespace {

using namespace tauten;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inch = 0.0254;
constexpr double degree = 3.14159265358979323846 / 180;
constexpr const char* aisc = "AISC Companion to the Manual, Volume 1: Design Examples v16.0 (2023)";

Pattern columns_of(std::size_t rows, std::size_t columns, double spacing, double gage) {
  return try_grid_pattern(columns, rows, Length(gage), Length(spacing)).value();
}

/// A load that leans from the vertical by an angle and crosses the horizontal through the centroid at `ex`.
ShearLoad leaning(double ex, double from_vertical) {
  return {Force(std::sin(from_vertical)), Force(-std::cos(from_vertical)), {ex, 0}, Torque(0)};
}

double coefficient(const Pattern& pattern, const ShearLoad& load) { return ultimate_shear(pattern, load).coefficient; }

/// Half of the last printed digit.
bool prints(double x, double printed, double last) { return std::fabs(x - printed) <= last / 2 + 1e-12; }

TEST_CASE("group shear: a published example by the elastic vector method") {
  // Shigley's Mechanical Engineering Design, 9th ed., Example 8-7, pp. 457-458: 16 kN at 425 mm from the centre.
  const Pattern four = try_rectangle_pattern(Length(0.15), Length(0.12)).value();
  const ElasticShear shear = elastic_shear(four, {Force(0), Force(-16e3), {0.425, 0}, Torque(0)});
  CHECK(prints(distance(four[0], shear.centre) * 1e3, 96.0, 0.1));
  CHECK(prints(shear.most.si / 1e3, 21.0, 0.1));
  double least = 1e9;
  for (const ShearForce& f : shear.bolts) least = std::min(least, f.size());
  // 14.8 is printed and comes from the rounded parts 4 and 17.7; without rounding it is 14.84.
  CHECK(prints(least / 1e3, 14.8, 0.1));
  // Secondary shear alone: 6800 N.m of torque.
  CHECK(prints(elastic_shear(four, {Force(0), Force(0), {}, Torque(6800)}).most.si / 1e3, 17.7, 0.1));
}

TEST_CASE("group shear: a square flange under shear with twist, as printed") {
  // Khurmi and Gupta, A Textbook of Machine Design, chapter 11, Example 11.20 (seen second hand): 13.5 kN at 250 mm,
  // bolts 200 x 200 mm.
  const Pattern square = try_rectangle_pattern(Length(0.2), Length(0.2)).value();
  const ElasticShear shear = elastic_shear(square, {Force(0), Force(-13.5e3), {0.25, 0}, Torque(0)});
  double least = 1e9;
  for (const ShearForce& f : shear.bolts) least = std::min(least, f.size());
  // The book uses the radius rounded to 141.4 mm and forces rounded to 1 N, so the last digit may differ by two.
  CHECK(std::fabs(shear.most.si - 8687) < 3);
  CHECK(std::fabs(least - 4303) < 3);
  CHECK(std::fabs(elastic_shear(square, {Force(0), Force(0), {}, Torque(13.5e3 * 0.25)}).most.si - 5967) < 3);
}

TEST_CASE("group shear: web cleats and fin plates of a published guide agree with the elastic vector method") {
  // Steel Buildings in Europe, Multi-Storey Steel Buildings Part 5, p. 5-70: six bolts in one column, pitch 70 mm,
  // z = 50 mm, F_v = 94 kN in each of two cleats: 962 kN.
  const Pattern column = columns_of(6, 1, 0.07, 0);
  const double per_bolt = elastic_shear(column, {Force(0), Force(-1), {0.05, 0}, Torque(0)}).most.si;
  CHECK(prints(2 * 94 / per_bolt, 962, 2));  // beta is rounded to 0.102 there
  // AS 4100 handbook (Hogan and Munter), single column: n/sqrt(1 + (6 e/(s (n + 1)))^2), seen second hand.
  for (std::size_t n = 2; n < 10; ++n) {
    const double count = static_cast<double>(n);
    const double worst = elastic_shear(columns_of(n, 1, 0.07, 0), {Force(0), Force(-1), {0.1, 0}, Torque(0)}).most.si;
    CHECK(1 / worst == near(count / std::sqrt(1 + std::pow(6 * 0.1 / (0.07 * (count + 1)), 2))));
  }
}

TEST_CASE("group shear: published coefficients of the instantaneous centre, to the printed digit") {
  INFO(aisc);
  const Pattern bracket = columns_of(6, 2, 3 * inch, 5.5 * inch);
  // Ex. II.A-24, vertical load: C = 3.55 and 57.5 kip with 16.2 kip per bolt; the elastic method gives 46.0 kip there.
  const double C = coefficient(bracket, leaning(16 * inch, 0));
  CHECK(prints(C, 3.55, 0.01));
  CHECK(prints(16.2 / elastic_shear(bracket, leaning(16 * inch, 0)).most.si, 46.0, 0.1));
  // Pages IIA-256 and 257: the load leans by 15 deg, ex = 14.0 in: C = 4.05 and 65.6 kip.
  const double leaned = coefficient(bracket, leaning(14 * inch, 15 * degree));
  CHECK(prints(leaned, 4.05, 0.01));
  // Page IIA-215, Ex. II.A-19B: a moment alone on two columns of five: C' = 38.7 in.
  const Pattern two_of_five = columns_of(5, 2, 3 * inch, 3 * inch);
  const UltimateShear moment = ultimate_shear(two_of_five, {Force(0), Force(0), {}, Torque(-5)});
  CHECK(prints(moment.torque_coefficient.si / inch, 38.7, 0.1));
  // M_max = (Fnv/0.90) Ab C' = 54/0.90 x 0.785 x C' = 1820 kip.in, printed to 10.
  CHECK(prints(54 / 0.9 * 0.785 * moment.torque_coefficient.si / inch, 1820, 10));
  CHECK(std::isnan(moment.coefficient));
  // Page IIA-232, Ex. II.A-20: C = 3.07 at ex = 2.5 in, which is the mean of the table's 2 and 3 in.
  const Pattern four = columns_of(4, 1, 3 * inch, 0);
  CHECK(prints((coefficient(four, leaning(2 * inch, 0)) + coefficient(four, leaning(3 * inch, 0))) / 2, 3.07, 0.01));
  // Left out: C = 4.53 (its group is not among the figures at hand); 2.33 and 3.53 (interpolated in tables whose rows
  // were not seen; their arms are 10 and 12 in, and the rows below are checked instead); C = 2.10 of a web page for
  // four bolts at 6 in (the method gives 1.73, and the page names no table).
}

TEST_CASE("group shear: coefficients solved apart from the library by another algorithm") {
  // Newton's method on the place of the centre, in Python, for the figures' collection; rounded to four decimals.
  struct Row {
    std::size_t rows, columns;
    double gage, ex, angle, C;
  };
  for (const Row& row :
       {Row{4, 1, 0, 1, 0, 3.7515}, Row{4, 1, 0, 2, 0, 3.3195}, Row{4, 1, 0, 3, 0, 2.8139}, Row{4, 2, 3, 10, 0, 2.4199},
        Row{4, 2, 3, 12, 0, 2.055}, Row{5, 2, 3, 10, 30, 3.8648}, Row{5, 2, 3, 12, 30, 3.335}}) {
    const Pattern pattern = columns_of(row.rows, row.columns, 3 * inch, row.gage * inch);
    CHECK(prints(coefficient(pattern, leaning(row.ex * inch, row.angle * degree)), row.C, 1e-4));
  }
}

TEST_CASE("group shear: there is no step as the arm goes to zero") {
  const Pattern four = columns_of(4, 1, 3 * inch, 0);
  const double fullest = LoadDeformation{}(1);
  CHECK(prints(fullest, 0.9815, 1e-4));
  CHECK(coefficient(four, leaning(0, 0)) == near(4 * fullest));
  CHECK_FALSE(ultimate_shear(four, leaning(0, 0)).centre);
  double before = 4 * fullest;
  for (double arm = 1e-12; arm < 10; arm *= 1.1) {
    const double C = coefficient(four, leaning(arm, 0));
    CHECK(C <= before * (1 + 1e-12));
    CHECK(before - C < 0.2);  // arms 1.1 times as long: no jump
    before = C;
  }
  CHECK(coefficient(four, leaning(0.001 * inch, 0)) == near(3.926).epsilon(2e-4));
}

TEST_CASE("group shear: one bolt at the centre of rotation carries nothing") {
  // The load passes through one of two bolts, across the line between them: that bolt takes it all.
  const Pattern two = try_line_pattern(2, Length(0.1)).value();
  const UltimateShear shear = ultimate_shear(two, {Force(0), Force(-3), {0.05, 0.4}, Torque(0)});
  CHECK(shear.coefficient == near(LoadDeformation{}(1)).epsilon(1e-6));
  CHECK(shear.bolts[0].size() < 1e-6);
  REQUIRE(shear.centre);
  CHECK(distance(*shear.centre, two[0]) < 1e-9);
  CHECK(shear.worst == 1);
}

/// Forces and torque of the bolts against those of the load.
void check_balance(const Pattern& pattern, const std::vector<ShearForce>& bolts, ShearLoad load, double factor,
                   double allow) {
  double x = 0;
  double y = 0;
  double torque = 0;
  double size = 0;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    x += bolts[i].x;
    y += bolts[i].y;
    torque += pattern[i].x * bolts[i].y - pattern[i].y * bolts[i].x;
    size += bolts[i].size();
  }
  CHECK(std::fabs(x - factor * load.x.si) <= allow * size);
  CHECK(std::fabs(y - factor * load.y.si) <= allow * size);
  const double given = load.torque.si + load.at.x * load.y.si - load.at.y * load.x.si;
  CHECK(std::fabs(torque - factor * given) <= allow * (size + std::fabs(factor * given)));
}

TEST_CASE("group shear: 10,000 random patterns are in balance, and the elastic method is on the safe side") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> place(-0.2, 0.2), any(-1, 1);
  int slowest = 0;
  for (int trial = 0; trial < 10000; ++trial) {
    std::vector<Position> at;
    const int count = 2 + trial % 11;
    for (int i = 0; i < count; ++i) at.push_back({place(random), trial % 7 == 0 ? 0 : place(random)});
    const Pattern pattern = try_pattern(at).value();
    const double far = std::pow(10, 2 * any(random));
    const ShearLoad load{Force(any(random)), Force(any(random)), {far * place(random), far * place(random)}, Torque(0)};
    const ElasticShear elastic = elastic_shear(pattern, load);
    check_balance(pattern, elastic.bolts, load, 1, 1e-12);
    const Outcome<UltimateShear> ultimate = try_ultimate_shear(pattern, load);
    REQUIRE(ultimate);
    slowest = std::max(slowest, ultimate->iterations);
    const double force = std::hypot(load.x.si, load.y.si);
    check_balance(pattern, ultimate->bolts, load, ultimate->coefficient / force, 1e-6);
    // Safe side (lower bound of plasticity): elastic shares under the law's least fullness.
    CHECK(ultimate->coefficient >= 0.97 * force / elastic.most.si);
    CHECK(ultimate->coefficient <= LoadDeformation{}(1) * count * (1 + 1e-9));
    for (std::size_t i = 0; i < pattern.size() && ultimate->centre; ++i) {
      // At right angles to the radius.
      const ShearForce f = ultimate->bolts[i];
      const double rx = pattern[i].x - ultimate->centre->x;
      const double ry = pattern[i].y - ultimate->centre->y;
      if (std::hypot(rx, ry) < 1e3) CHECK(std::fabs(rx * f.x + ry * f.y) <= 1e-6 * (std::hypot(rx, ry) + 1e-3));
    }
  }
  CHECK(slowest < 100);
}

TEST_CASE("group shear: turned, mirrored, scaled and superposed") {
  const std::vector<Position> at{{0, 0}, {0.08, 0}, {0.08, 0.12}, {0, 0.06}, {0.04, 0.15}};
  const Pattern pattern = try_pattern(at).value();
  const ShearLoad load{Force(300), Force(-700), {0.3, 0.1}, Torque(20)};
  const double C = coefficient(pattern, load);
  const double most = elastic_shear(pattern, load).most.si;
  const double c = std::cos(0.7);
  const double s = std::sin(0.7);
  std::vector<Position> turned;
  std::vector<Position> mirrored;
  std::vector<Position> large;
  for (const Position p : at) {
    turned.push_back({c * p.x - s * p.y + 1, s * p.x + c * p.y - 2});
    mirrored.push_back({-p.x, p.y});
    large.push_back({10 * p.x, 10 * p.y});
  }
  const ShearLoad load_turned{
      Force(c * 300 + s * 700), Force(s * 300 - c * 700), {c * 0.3 - s * 0.1 + 1, s * 0.3 + c * 0.1 - 2}, Torque(20)};
  CHECK(coefficient(try_pattern(turned).value(), load_turned) == near(C));
  CHECK(elastic_shear(try_pattern(turned).value(), load_turned).most.si == near(most));
  const ShearLoad load_mirrored{Force(-300), Force(-700), {-0.3, 0.1}, Torque(-20)};
  CHECK(coefficient(try_pattern(mirrored).value(), load_mirrored) == near(C));
  CHECK(elastic_shear(try_pattern(mirrored).value(), load_mirrored).most.si == near(most));
  const ShearLoad load_large{Force(300), Force(-700), {3, 1}, Torque(200)};
  CHECK(coefficient(try_pattern(large).value(), load_large) == near(C));
  // Elastic: the loads of two cases add up, bolt by bolt.
  const ShearLoad other{Force(-50), Force(90), {-0.1, 0.4}, Torque(-3)};
  const ShearLoad both{
      Force(250), Force(-610), {0, 0}, Torque(20 - 3 + 0.3 * -700 - 0.1 * 300 + -0.1 * 90 - 0.4 * -50)};
  for (std::size_t i = 0; i < at.size(); ++i)
    CHECK(elastic_shear(pattern, both).bolts[i].x ==
          near(elastic_shear(pattern, load).bolts[i].x + elastic_shear(pattern, other).bolts[i].x));
  // A bolt of double weight stands for two bolts in one place.
  const ElasticShear weighted =
      elastic_shear(try_line_pattern(2, Length(0.3)).value(), {Force(0), Force(90), {0.05, 0}, Torque(0)}, {1, 2});
  CHECK(weighted.centre.x == near(0.05));
  CHECK(weighted.bolts[1].y == near(60));
}

TEST_CASE("group shear: in the limit one bolt carries all") {
  const Pattern two = try_line_pattern(2, Length(0.1)).value();
  const ElasticShear heavy = elastic_shear(two, {Force(300), Force(-400), two[0], Torque(0)}, {1e12, 1});
  CHECK(heavy.bolts[0].size() == near(500).epsilon(1e-9));
  CHECK(heavy.bolts[1].size() < 1e-3);
}

TEST_CASE("group shear: bad input is one clear error") {
  const Pattern two = try_line_pattern(2, Length(0.1)).value();
  const ShearLoad good{Force(0), Force(-3), {0.05, 0.4}, Torque(0)};
  CHECK_FALSE(try_elastic_shear(two, {Force(nan), Force(0), {}, Torque(0)}));
  CHECK_FALSE(try_elastic_shear(two, {Force(1), Force(0), {nan, 0}, Torque(0)}));
  CHECK_FALSE(try_elastic_shear(two, good, {1}));
  CHECK_FALSE(try_elastic_shear(two, good, {1, -1}));
  CHECK_FALSE(try_elastic_shear(two, good, {1, nan}));
  CHECK_FALSE(try_ultimate_shear(two, {}));
  CHECK_FALSE(try_ultimate_shear(two, {Force(0), Force(0), {}, Torque(nan)}));
  CHECK_FALSE(try_ultimate_shear(two, good, {0, 0.55}));
  CHECK_FALSE(try_ultimate_shear(two, good, {3.4, 1.5}));
  CHECK_FALSE(try_ultimate_shear(two, good, {nan, nan}));
}

}  // namespace

}  // namespace group_shear_test
