// Clearance holes against ISO 273.
#include "tauten/part/hole.hpp"

#include <doctest/doctest.h>

#include "near.hpp"

namespace hole_test {

using namespace tauten;

namespace {

struct Printed {
  const char* thread;
  double fine, medium, coarse;  // mm
};

// ISO 273:1979 Table 1; M1.8, M4.5 and sizes above M42 from memory.
constexpr Printed printed[] = {
    // clang-format off
    {"M1", 1.1, 1.2, 1.3},
    {"M1.2", 1.3, 1.4, 1.5},
    {"M1.4", 1.5, 1.6, 1.8},
    {"M1.6", 1.7, 1.8, 2},
    {"M1.8", 2, 2.1, 2.2},
    {"M2", 2.2, 2.4, 2.6},
    {"M2.5", 2.7, 2.9, 3.1},
    {"M3", 3.2, 3.4, 3.6},
    {"M3.5", 3.7, 3.9, 4.2},
    {"M4", 4.3, 4.5, 4.8},
    {"M4.5", 4.8, 5, 5.3},
    {"M5", 5.3, 5.5, 5.8},
    {"M6", 6.4, 6.6, 7},
    {"M7", 7.4, 7.6, 8},
    {"M8", 8.4, 9, 10},
    {"M10", 10.5, 11, 12},
    {"M12", 13, 13.5, 14.5},
    {"M14", 15, 15.5, 16.5},
    {"M16", 17, 17.5, 18.5},
    {"M18", 19, 20, 21},
    {"M20", 21, 22, 24},
    {"M22", 23, 24, 26},
    {"M24", 25, 26, 28},
    {"M27", 28, 30, 32},
    {"M30", 31, 33, 35},
    {"M33", 34, 36, 38},
    {"M36", 37, 39, 42},
    {"M39", 40, 42, 45},
    {"M42", 43, 45, 48},
    {"M45", 46, 48, 52},
    {"M48", 50, 52, 56},
    {"M52", 54, 56, 62},
    {"M56", 58, 62, 66},
    {"M60", 62, 66, 70},
    {"M64", 66, 70, 74},
    // clang-format on
};

}  // namespace

TEST_CASE("holes are the printed ones") {
  for (const Printed& row : printed) {
    CAPTURE(row.thread);
    const Thread t = thread(row.thread);
    CHECK(clearance_hole(t, HoleSeries::fine).diameter.shop() == near(row.fine));
    CHECK(clearance_hole(t).diameter.shop() == near(row.medium));
    CHECK(clearance_hole(t, HoleSeries::coarse).diameter.shop() == near(row.coarse));
    CHECK(clearance_hole(t).diameter > t.diameter);
  }
}

TEST_CASE("only the diameter counts, and a missing size is named") {
  CHECK(clearance_hole(thread("M10x1.25-6g")).diameter == clearance_hole(thread("M10")).diameter);
  CHECK(clearance_hole(thread("M64")).seen == Seen::memory);
  const Outcome<ClearanceHole> missing = try_clearance_hole(thread("M15x1"));
  REQUIRE_FALSE(missing);
  CHECK(std::string(missing.error().what()).find("ISO 273 has no clearance hole for M15; the nearest size is M14") ==
        0);
  CHECK_THROWS_AS((void)clearance_hole(thread("M15x1")), Error);
}

}  // namespace hole_test
