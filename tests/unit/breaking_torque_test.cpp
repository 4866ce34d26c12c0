// Minimum breaking torques against ISO 898-7 and ISO 3506-1.
#include "tauten/part/breaking_torque.hpp"

#include <doctest/doctest.h>

#include <string>

#include "near.hpp"

namespace breaking_torque_test {

using namespace tauten;

namespace {

struct Printed {
  const char* thread;
  const char* property_class;
  double torque;  // N.m
};

// ISO 898-7:1992 Table 2 (from memory) and ISO 3506-1:1997/2009 (seen once; M12 and M16 from memory).
constexpr Printed printed[] = {
    // clang-format off
    {"M1", "12.9", 0.045},
    {"M1.2", "8.8", 0.075},
    {"M1.2", "9.8", 0.082},
    {"M1.2", "10.9", 0.092},
    {"M1.4", "8.8", 0.12},
    {"M1.4", "9.8", 0.13},
    {"M1.4", "12.9", 0.16},
    {"M1.6", "8.8", 0.16},
    {"M1.6", "9.8", 0.18},
    {"M1.6", "10.9", 0.2},
    {"M2", "8.8", 0.37},
    {"M2", "9.8", 0.4},
    {"M2", "10.9", 0.45},
    {"M2", "12.9", 0.5},
    {"M2.5", "8.8", 0.82},
    {"M2.5", "9.8", 0.9},
    {"M2.5", "10.9", 1.0},
    {"M2.5", "12.9", 1.1},
    {"M3", "9.8", 1.7},
    {"M3", "10.9", 1.9},
    {"M3", "12.9", 2.1},
    {"M3.5", "9.8", 2.7},
    {"M3.5", "10.9", 3.0},
    {"M4", "8.8", 3.6},
    {"M5", "8.8", 7.6},
    {"M5", "9.8", 8.3},
    {"M5", "10.9", 9.3},
    {"M5", "12.9", 10},
    {"M6", "8.8", 13},
    {"M6", "9.8", 14},
    {"M6", "10.9", 16},
    {"M6", "12.9", 17},
    {"M7", "8.8", 23},
    {"M7", "9.8", 25},
    {"M7", "10.9", 28},
    {"M7", "12.9", 31},
    {"M8", "8.8", 33},
    {"M8", "10.9", 40},
    {"M8x1", "9.8", 42},
    {"M8x1", "12.9", 52},
    {"M10", "8.8", 66},
    {"M10", "10.9", 81},
    {"M10", "12.9", 90},
    {"M10x1", "10.9", 102},
    {"M10x1", "12.9", 114},
    {"M1.6", "A2-50", 0.15},
    {"M1.6", "A2-80", 0.24},
    {"M2", "A2-50", 0.3},
    {"M2", "A2-80", 0.48},
    {"M2.5", "A2-80", 0.96},
    {"M3", "A2-50", 1.1},
    {"M3", "A2-80", 1.8},
    {"M4", "A2-70", 3.8},
    {"M4", "A2-80", 4.3},
    {"M5", "A2-50", 5.5},
    {"M5", "A2-70", 7.8},
    {"M5", "A2-80", 8.8},
    {"M6", "A2-70", 13},
    {"M6", "A2-80", 15},
    {"M8", "A2-50", 23},
    {"M8", "A2-70", 32},
    {"M8", "A2-80", 37},
    {"M10", "A2-80", 74},
    {"M12", "A2-50", 80},
    {"M12", "A2-70", 110},
    {"M12", "A2-80", 130},
    {"M16", "A2-50", 210},
    {"M16", "A2-80", 330},
    // clang-format on
};

}  // namespace

TEST_CASE("printed torques are given as printed") {
  for (const Printed& row : printed) {
    CAPTURE(row.thread);
    CAPTURE(row.property_class);
    const MinimumBreakingTorque found = minimum_breaking_torque(thread(row.thread), row.property_class);
    CHECK(found.basis == BreakingBasis::printed);
    CHECK(found.value.si == row.torque);
  }
  // Any austenitic grade of the same strength.
  CHECK(minimum_breaking_torque(thread("M8"), "A4-70").value.si == 32);
}

TEST_CASE("the formula meets the printed torques of steel") {
  // ISO 898-7 prints two figures: half a unit of the last one, and one more where the standard rounded otherwise.
  for (const Printed& row : printed) {
    if (row.property_class[0] == 'A') continue;
    CAPTURE(row.thread);
    CAPTURE(row.property_class);
    const Thread t = thread(row.thread);
    const PropertyClass c = property_class(row.property_class);
    // Threads below M1.6 are made without allowance (tolerance position h).
    const char* tolerance = t.diameter.si < 1.5e-3 ? "6h" : "6g";
    const double root = detail::bolt_limits_even_remembered(t, tolerance)->root_diameter.min.si;
    CHECK(breaking_torque.si(c.torsion_ratio, c.tensile_strength.si, root) == near(row.torque).epsilon(0.04));
  }
}

TEST_CASE("the estimate for stainless steel stays at or below the printed torques") {
  for (const Printed& row : printed) {
    if (row.property_class[0] != 'A') continue;
    CAPTURE(row.thread);
    CAPTURE(row.property_class);
    const double root = detail::bolt_limits_even_remembered(thread(row.thread), "6g")->root_diameter.min.si;
    const double estimate = breaking_torque.si(detail::stainless_torsion_ratio,
                                               property_class(row.property_class).tensile_strength.si, root);
    CHECK(estimate < row.torque * 1.005);
    CHECK(estimate > row.torque * 0.7);
  }
}

TEST_CASE("unprinted sizes and classes are computed, and say how") {
  // Formula value of ISO 898-7 for M10x1.25 in class 10.9: 91.3 N.m, computed by others from d_3min 8.272 mm.
  const MinimumBreakingTorque fine = minimum_breaking_torque(thread("M10x1.25"), "10.9");
  CHECK(fine.basis == BreakingBasis::formula);
  CHECK(fine.value.si == near(91.31).epsilon(0.001));
  CHECK(fine.seen == Seen::memory);
  // Soft steel: the whole root yields at 0.7 R_m: pi/12 d_3^3 tau, with d_3min 7.938 mm of M10 (ISO 965-1) by hand.
  const MinimumBreakingTorque soft = minimum_breaking_torque(thread("M10"), "4.6");
  CHECK(soft.basis == BreakingBasis::fully_plastic);
  CHECK(soft.value.si == near(3.14159265 / 12 * 7.938 * 7.938 * 7.938 * 0.7 * 400 * 1e-3).epsilon(1e-3));
  CHECK(minimum_breaking_torque(thread("M10"), "6.8").seen == Seen::judgement);
  CHECK(minimum_breaking_torque(thread("M20"), "A4-80").seen == Seen::judgement);
  CHECK(minimum_breaking_torque(thread("M10"), "8.8 structural").value.si == 66);
  CHECK_FALSE(try_minimum_breaking_torque(thread("M10"), "7.7"));
  CHECK_FALSE(try_minimum_breaking_torque(thread("M42"), "8.8"));
  CHECK_THROWS_AS((void)minimum_breaking_torque(thread("M42"), "8.8"), Error);
}

TEST_CASE("threads below M1.6 break at the root of a thread without allowance") {
  // ISO 898-7:1992, Table 2 (from memory).
  CHECK(minimum_breaking_torque(thread("M1"), "8.8").value.si == near(0.033).epsilon(0.005));
  CHECK(minimum_breaking_torque(thread("M1"), "10.9").value.si == near(0.040).epsilon(0.015));
  CHECK(minimum_breaking_torque(thread("M1.4"), "10.9").value.si == near(0.14).epsilon(0.04));
}

TEST_CASE("every size up to M39 has a breaking torque") {
  for (const table::MetricSize& row : table::metric_sizes) {
    if (row.diameter > 39.5e-3) continue;
    CAPTURE(row.designation);
    const Outcome<MinimumBreakingTorque> found = try_minimum_breaking_torque(thread(row.designation), "10.9");
    REQUIRE(found);
    CHECK(found->value.si > 0);
  }
}

TEST_CASE("a larger or stronger bolt takes more") {
  double last = 0;
  for (const char* size : {"M5", "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M39"}) {
    const double torque = minimum_breaking_torque(thread(size), "8.8").value.si;
    CHECK(torque > last);
    last = torque;
  }
  last = 0;
  for (const char* name : {"4.6", "5.6", "6.8", "8.8", "10.9", "12.9"}) {
    const double torque = minimum_breaking_torque(thread("M16"), name).value.si;
    CHECK(torque > last);
    last = torque;
  }
}

}  // namespace breaking_torque_test
