// Washers against ISO 7089, ISO 7090 and ISO 7093-1.
#include "tauten/part/washer.hpp"

#include <doctest/doctest.h>

#include "near.hpp"

namespace washer_test {

using namespace tauten;

namespace {

struct Printed {
  const char* standard;
  const char* thread;
  double d_1, d_2, h;  // mm
};

// Tables of dimensions of ISO 7089:2000, ISO 7090 and ISO 7093-1; some sizes of ISO 7089 and 7090 from memory.
constexpr Printed printed[] = {
    // clang-format off
    {"ISO 7089", "M1.6", 1.7, 4, 0.3},
    {"ISO 7089", "M2", 2.2, 5, 0.3},
    {"ISO 7089", "M2.5", 2.7, 6, 0.5},
    {"ISO 7089", "M3", 3.2, 7, 0.5},
    {"ISO 7089", "M3.5", 3.7, 8, 0.5},
    {"ISO 7089", "M4", 4.3, 9, 0.8},
    {"ISO 7089", "M5", 5.3, 10, 1},
    {"ISO 7090", "M5", 5.3, 10, 1},
    {"ISO 7089", "M6", 6.4, 12, 1.6},
    {"ISO 7090", "M6", 6.4, 12, 1.6},
    {"ISO 7089", "M8", 8.4, 16, 1.6},
    {"ISO 7090", "M8", 8.4, 16, 1.6},
    {"ISO 7089", "M10", 10.5, 20, 2},
    {"ISO 7090", "M10", 10.5, 20, 2},
    {"ISO 7089", "M12", 13, 24, 2.5},
    {"ISO 7090", "M12", 13, 24, 2.5},
    {"ISO 7089", "M14", 15, 28, 2.5},
    {"ISO 7090", "M14", 15, 28, 2.5},
    {"ISO 7089", "M16", 17, 30, 3},
    {"ISO 7090", "M16", 17, 30, 3},
    {"ISO 7089", "M18", 19, 34, 3},
    {"ISO 7090", "M18", 19, 34, 3},
    {"ISO 7089", "M20", 21, 37, 3},
    {"ISO 7090", "M20", 21, 37, 3},
    {"ISO 7089", "M22", 23, 39, 3},
    {"ISO 7090", "M22", 23, 39, 3},
    {"ISO 7089", "M24", 25, 44, 4},
    {"ISO 7090", "M24", 25, 44, 4},
    {"ISO 7089", "M27", 28, 50, 4},
    {"ISO 7090", "M27", 28, 50, 4},
    {"ISO 7089", "M30", 31, 56, 4},
    {"ISO 7090", "M30", 31, 56, 4},
    {"ISO 7089", "M33", 34, 60, 5},
    {"ISO 7090", "M33", 34, 60, 5},
    {"ISO 7089", "M36", 37, 66, 5},
    {"ISO 7090", "M36", 37, 66, 5},
    {"ISO 7089", "M39", 42, 72, 6},
    {"ISO 7090", "M39", 42, 72, 6},
    {"ISO 7089", "M42", 45, 78, 8},
    {"ISO 7090", "M42", 45, 78, 8},
    {"ISO 7089", "M45", 48, 85, 8},
    {"ISO 7090", "M45", 48, 85, 8},
    {"ISO 7089", "M48", 52, 92, 8},
    {"ISO 7090", "M48", 52, 92, 8},
    {"ISO 7089", "M52", 56, 98, 8},
    {"ISO 7090", "M52", 56, 98, 8},
    {"ISO 7089", "M56", 62, 105, 10},
    {"ISO 7090", "M56", 62, 105, 10},
    {"ISO 7089", "M60", 66, 110, 10},
    {"ISO 7090", "M60", 66, 110, 10},
    {"ISO 7089", "M64", 70, 115, 10},
    {"ISO 7090", "M64", 70, 115, 10},
    {"ISO 7093-1", "M3", 3.2, 9, 0.8},
    {"ISO 7093-1", "M3.5", 3.7, 11, 0.8},
    {"ISO 7093-1", "M4", 4.3, 12, 1},
    {"ISO 7093-1", "M5", 5.3, 15, 1},
    {"ISO 7093-1", "M6", 6.4, 18, 1.6},
    {"ISO 7093-1", "M8", 8.4, 24, 2},
    {"ISO 7093-1", "M10", 10.5, 30, 2.5},
    {"ISO 7093-1", "M12", 13, 37, 3},
    {"ISO 7093-1", "M14", 15, 44, 3},
    {"ISO 7093-1", "M16", 17, 50, 3},
    {"ISO 7093-1", "M18", 19, 56, 4},
    {"ISO 7093-1", "M20", 21, 60, 4},
    {"ISO 7093-1", "M22", 23, 66, 5},
    {"ISO 7093-1", "M24", 25, 72, 5},
    {"ISO 7093-1", "M27", 30, 85, 6},
    {"ISO 7093-1", "M30", 33, 92, 6},
    {"ISO 7093-1", "M33", 36, 105, 6},
    {"ISO 7093-1", "M36", 39, 110, 8},
    // clang-format on
};

bool says(const Error& error, const char* part) { return std::string(error.what()).find(part) != std::string::npos; }

}  // namespace

TEST_CASE("washers are the printed ones") {
  CHECK(std::size(printed) == std::size(table::washers));
  for (const Printed& row : printed) {
    CAPTURE(row.standard);
    CAPTURE(row.thread);
    const Washer w = washer(thread(row.thread), row.standard);
    CHECK(w.standard == row.standard);
    CHECK(w.inner_diameter.shop() == near(row.d_1));
    CHECK(w.outer_diameter.shop() == near(row.d_2));
    CHECK(w.thickness.shop() == near(row.h));
    CHECK(w.outer_diameter > w.inner_diameter);
  }
}

TEST_CASE("unknown standards and sizes are named") {
  CHECK(washer(thread("M10")).standard == "ISO 7089");
  CHECK(washer(thread("M10x1"), "iso7093-1").form == "large");
  CHECK(says(try_washer(thread("M10"), "ISO 1").error(), "the standards are ISO 7089, ISO 7090 and ISO 7093-1"));
  CHECK(says(try_washer(thread("M9")).error(), "ISO 7089 has no washer for M9; its sizes run from M1.6 to M64"));
  CHECK_THROWS_AS((void)washer(thread("M9")), Error);
}

}  // namespace washer_test
