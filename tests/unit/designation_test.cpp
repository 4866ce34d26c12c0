// Designations, dimensions and areas of ISO metric threads.
#include "tauten/thread/designation.hpp"

#include <doctest/doctest.h>

#include <string>

#include "near.hpp"

namespace designation_test {

using namespace tauten;

namespace {

/// Dimensions in mm to the printed third decimal, areas in mm2 to three significant digits.
struct Printed {
  const char* designation;
  double d_2, D_1, d_3, area;
};

// ISO 724 for the diameters, ISO 898-1:2013 Tables 4 to 7 for the areas of its sizes (seen in print, or computed from
// ISO 68-1 by others for sizes that ISO 898-1 leaves out).
constexpr Printed printed[] = {
    // clang-format off
    {"M1", 0.838, 0.729, 0.693, 0.46},
    {"M1x0.2", 0.870, 0.783, 0.755, 0.518},
    {"M1.1", 0.938, 0.829, 0.793, 0.588},
    {"M1.1x0.2", 0.970, 0.883, 0.855, 0.654},
    {"M1.2", 1.038, 0.929, 0.893, 0.732},
    {"M1.2x0.2", 1.070, 0.983, 0.955, 0.805},
    {"M1.4", 1.205, 1.075, 1.032, 0.983},
    {"M1.4x0.2", 1.270, 1.183, 1.155, 1.15},
    {"M1.6", 1.373, 1.221, 1.171, 1.27},
    {"M1.6x0.2", 1.470, 1.383, 1.355, 1.57},
    {"M1.8", 1.573, 1.421, 1.371, 1.7},
    {"M1.8x0.2", 1.670, 1.583, 1.555, 2.04},
    {"M2", 1.740, 1.567, 1.509, 2.07},
    {"M2x0.25", 1.838, 1.729, 1.693, 2.45},
    {"M2.2", 1.908, 1.713, 1.648, 2.48},
    {"M2.2x0.25", 2.038, 1.929, 1.893, 3.03},
    {"M2.5", 2.208, 2.013, 1.948, 3.39},
    {"M2.5x0.35", 2.273, 2.121, 2.071, 3.7},
    {"M3", 2.675, 2.459, 2.387, 5.03},
    {"M3x0.35", 2.773, 2.621, 2.571, 5.61},
    {"M3.5", 3.110, 2.850, 2.764, 6.78},
    {"M3.5x0.35", 3.273, 3.121, 3.071, 7.9},
    {"M4", 3.545, 3.242, 3.141, 8.78},
    {"M4x0.5", 3.675, 3.459, 3.387, 9.79},
    {"M4.5", 4.013, 3.688, 3.580, 11.3},
    {"M4.5x0.5", 4.175, 3.959, 3.887, 12.8},
    {"M5", 4.480, 4.134, 4.019, 14.2},
    {"M5x0.5", 4.675, 4.459, 4.387, 16.1},
    {"M5.5x0.5", 5.175, 4.959, 4.887, 19.9},
    {"M6", 5.350, 4.917, 4.773, 20.1},
    {"M6x0.75", 5.513, 5.188, 5.080, 22},
    {"M7", 6.350, 5.917, 5.773, 28.9},
    {"M7x0.75", 6.513, 6.188, 6.080, 31.1},
    {"M8", 7.188, 6.647, 6.466, 36.6},
    {"M8x1", 7.350, 6.917, 6.773, 39.2},
    {"M8x0.75", 7.513, 7.188, 7.080, 41.8},
    {"M9", 8.188, 7.647, 7.466, 48.1},
    {"M9x1", 8.350, 7.917, 7.773, 51},
    {"M9x0.75", 8.513, 8.188, 8.080, 54.1},
    {"M10", 9.026, 8.376, 8.160, 58},
    {"M10x1.25", 9.188, 8.647, 8.466, 61.2},
    {"M10x1", 9.350, 8.917, 8.773, 64.5},
    {"M10x0.75", 9.513, 9.188, 9.080, 67.9},
    {"M11", 10.026, 9.376, 9.160, 72.3},
    {"M11x1", 10.350, 9.917, 9.773, 79.5},
    {"M11x0.75", 10.513, 10.188, 10.080, 83.3},
    {"M12", 10.863, 10.106, 9.853, 84.3},
    {"M12x1.5", 11.026, 10.376, 10.160, 88.1},
    {"M12x1.25", 11.188, 10.647, 10.466, 92.1},
    {"M12x1", 11.350, 10.917, 10.773, 96.1},
    {"M14", 12.701, 11.835, 11.546, 115},
    {"M14x1.5", 13.026, 12.376, 12.160, 125},
    {"M14x1.25", 13.188, 12.647, 12.466, 129},
    {"M14x1", 13.350, 12.917, 12.773, 134},
    {"M15x1.5", 14.026, 13.376, 13.160, 145},
    {"M15x1", 14.350, 13.917, 13.773, 155},
    {"M16", 14.701, 13.835, 13.546, 157},
    {"M16x1.5", 15.026, 14.376, 14.160, 167},
    {"M16x1", 15.350, 14.917, 14.773, 178},
    {"M17x1.5", 16.026, 15.376, 15.160, 191},
    {"M17x1", 16.350, 15.917, 15.773, 203},
    {"M18", 16.376, 15.294, 14.933, 192},
    {"M18x2", 16.701, 15.835, 15.546, 204},
    {"M18x1.5", 17.026, 16.376, 16.160, 216},
    {"M18x1", 17.350, 16.917, 16.773, 229},
    {"M20", 18.376, 17.294, 16.933, 245},
    {"M20x2", 18.701, 17.835, 17.546, 258},
    {"M20x1.5", 19.026, 18.376, 18.160, 272},
    {"M20x1", 19.350, 18.917, 18.773, 285},
    {"M22", 20.376, 19.294, 18.933, 303},
    {"M22x2", 20.701, 19.835, 19.546, 318},
    {"M22x1.5", 21.026, 20.376, 20.160, 333},
    {"M22x1", 21.350, 20.917, 20.773, 348},
    {"M24", 22.051, 20.752, 20.319, 353},
    {"M24x2", 22.701, 21.835, 21.546, 384},
    {"M24x1.5", 23.026, 22.376, 22.160, 401},
    {"M24x1", 23.350, 22.917, 22.773, 418},
    {"M25x2", 23.701, 22.835, 22.546, 420},
    {"M25x1.5", 24.026, 23.376, 23.160, 437},
    {"M25x1", 24.350, 23.917, 23.773, 455},
    {"M26x1.5", 25.026, 24.376, 24.160, 475},
    {"M27", 25.051, 23.752, 23.319, 459},
    {"M27x2", 25.701, 24.835, 24.546, 496},
    {"M27x1.5", 26.026, 25.376, 25.160, 514},
    {"M27x1", 26.350, 25.917, 25.773, 533},
    {"M28x2", 26.701, 25.835, 25.546, 536},
    {"M28x1.5", 27.026, 26.376, 26.160, 555},
    {"M28x1", 27.350, 26.917, 26.773, 575},
    {"M30", 27.727, 26.211, 25.706, 561},
    {"M30x3", 28.051, 26.752, 26.319, 580},
    {"M30x2", 28.701, 27.835, 27.546, 621},
    {"M30x1.5", 29.026, 28.376, 28.160, 642},
    {"M30x1", 29.350, 28.917, 28.773, 663},
    {"M32x2", 30.701, 29.835, 29.546, 713},
    {"M32x1.5", 31.026, 30.376, 30.160, 735},
    {"M33", 30.727, 29.211, 28.706, 694},
    {"M33x3", 31.051, 29.752, 29.319, 716},
    {"M33x2", 31.701, 30.835, 30.546, 761},
    {"M33x1.5", 32.026, 31.376, 31.160, 784},
    {"M35x1.5", 34.026, 33.376, 33.160, 886},
    {"M36", 33.402, 31.670, 31.093, 817},
    {"M36x3", 34.051, 32.752, 32.319, 865},
    {"M36x2", 34.701, 33.835, 33.546, 915},
    {"M36x1.5", 35.026, 34.376, 34.160, 940},
    {"M38x1.5", 37.026, 36.376, 36.160, 1050},
    {"M39", 36.402, 34.670, 34.093, 976},
    {"M39x3", 37.051, 35.752, 35.319, 1030},
    {"M39x2", 37.701, 36.835, 36.546, 1080},
    {"M39x1.5", 38.026, 37.376, 37.160, 1110},
    {"M40x3", 38.051, 36.752, 36.319, 1090},
    {"M40x2", 38.701, 37.835, 37.546, 1140},
    {"M40x1.5", 39.026, 38.376, 38.160, 1170},
    {"M42", 39.077, 37.129, 36.479, 1120},
    {"M42x4", 39.402, 37.670, 37.093, 1150},
    {"M42x3", 40.051, 38.752, 38.319, 1210},
    {"M42x2", 40.701, 39.835, 39.546, 1260},
    {"M42x1.5", 41.026, 40.376, 40.160, 1290},
    {"M45", 42.077, 40.129, 39.479, 1310},
    {"M45x4", 42.402, 40.670, 40.093, 1340},
    {"M45x3", 43.051, 41.752, 41.319, 1400},
    {"M45x2", 43.701, 42.835, 42.546, 1460},
    {"M45x1.5", 44.026, 43.376, 43.160, 1490},
    {"M48", 44.752, 42.587, 41.866, 1470},
    {"M48x4", 45.402, 43.670, 43.093, 1540},
    {"M48x3", 46.051, 44.752, 44.319, 1600},
    {"M48x2", 46.701, 45.835, 45.546, 1670},
    {"M48x1.5", 47.026, 46.376, 46.160, 1710},
    {"M50x3", 48.051, 46.752, 46.319, 1750},
    {"M50x2", 48.701, 47.835, 47.546, 1820},
    {"M50x1.5", 49.026, 48.376, 48.160, 1850},
    {"M52", 48.752, 46.587, 45.866, 1760},
    {"M52x4", 49.402, 47.670, 47.093, 1830},
    {"M52x3", 50.051, 48.752, 48.319, 1900},
    {"M52x2", 50.701, 49.835, 49.546, 1970},
    {"M52x1.5", 51.026, 50.376, 50.160, 2010},
    {"M55x4", 52.402, 50.670, 50.093, 2060},
    {"M55x3", 53.051, 51.752, 51.319, 2140},
    {"M55x2", 53.701, 52.835, 52.546, 2220},
    {"M55x1.5", 54.026, 53.376, 53.160, 2260},
    {"M56", 52.428, 50.046, 49.252, 2030},
    {"M56x4", 53.402, 51.670, 51.093, 2140},
    {"M56x3", 54.051, 52.752, 52.319, 2220},
    {"M56x2", 54.701, 53.835, 53.546, 2300},
    {"M56x1.5", 55.026, 54.376, 54.160, 2340},
    {"M58x4", 55.402, 53.670, 53.093, 2310},
    {"M58x3", 56.051, 54.752, 54.319, 2390},
    {"M58x2", 56.701, 55.835, 55.546, 2470},
    {"M58x1.5", 57.026, 56.376, 56.160, 2520},
    {"M60", 56.428, 54.046, 53.252, 2360},
    {"M60x4", 57.402, 55.670, 55.093, 2480},
    {"M60x3", 58.051, 56.752, 56.319, 2570},
    {"M60x2", 58.701, 57.835, 57.546, 2650},
    {"M60x1.5", 59.026, 58.376, 58.160, 2700},
    {"M62x4", 59.402, 57.670, 57.093, 2660},
    {"M62x3", 60.051, 58.752, 58.319, 2750},
    {"M62x2", 60.701, 59.835, 59.546, 2840},
    {"M62x1.5", 61.026, 60.376, 60.160, 2880},
    {"M64", 60.103, 57.505, 56.639, 2680},
    {"M64x4", 61.402, 59.670, 59.093, 2850},
    {"M64x3", 62.051, 60.752, 60.319, 2940},
    {"M64x2", 62.701, 61.835, 61.546, 3030},
    {"M64x1.5", 63.026, 62.376, 62.160, 3080},
    // clang-format on
};

bool says(const Error& error, const char* part) { return std::string(error.what()).find(part) != std::string::npos; }

}  // namespace

TEST_CASE("every size of the standard is read and has the printed dimensions") {
  CHECK(std::size(printed) == std::size(table::metric_sizes));
  for (const Printed& row : printed) {
    CAPTURE(row.designation);
    const Outcome<Thread> read = try_parse_thread(row.designation);
    REQUIRE(read);
    CHECK(read->designation() == row.designation);
    CHECK(std::fabs(read->pitch_diameter().shop() - row.d_2) < 0.00051);
    CHECK(std::fabs(read->minor_diameter().shop() - row.D_1) < 0.00051);
    CHECK(std::fabs(read->root_diameter().shop() - row.d_3) < 0.00051);
    CHECK(read->nominal_stress_area().shop() == near(row.area).epsilon(1e-9));
    CHECK(read->nominal_stress_area().si == near(read->stress_area().si).epsilon(0.005));
  }
}

TEST_CASE("other ways of writing the same thread") {
  for (const char* text :
       {"M10x1.25", "m10x1.25", "M10X1.25", "M10x1,25", "M10\u00d71,25", " M10 x 1.25 ", "M10x1.250"})
    CHECK(thread(text).designation() == "M10x1.25");
  for (const char* text : {"M10", "m10", "M10x1.5", "M10 x 1,5", "M10.0"}) {
    CHECK(thread(text).designation() == "M10");
    CHECK(thread(text).coarse);
  }
  CHECK(thread("M10-6g").tolerance_class == "6g");
  CHECK(thread("M10x1.25 - 6H").designation() == "M10x1.25-6H");
  CHECK(thread("M10x1.5-5g6g").designation() == "M10-5g6g");
  CHECK(thread("M10x1.25-6H").name() == "M10x1.25");
  CHECK(thread("M10x1.25-6H").size() == "M10");
}

TEST_CASE("a coarse and a fine thread in numbers") {
  // Textbook figures: M10 climbs at 3.03 degrees (tan phi = 1.5 / (pi 9.026)).
  const Thread m10 = thread("M10");
  CHECK(std::tan(m10.lead_angle().si) == near(1.5 / (3.14159265 * 9.0257)).epsilon(1e-5));
  CHECK(m10.stress_diameter().shop() == near((m10.pitch_diameter().shop() + m10.root_diameter().shop()) / 2));
  CHECK_FALSE(thread("M10x1.25").coarse);
  CHECK(thread("M10x1.25").selected);
  CHECK_FALSE(thread("M10x0.75").selected);
  CHECK(thread("M10x1.25").lead_angle().si < m10.lead_angle().si);
}

TEST_CASE("threads of a diameter come coarse first, then selected, then the rest") {
  const auto names = [](double d) {
    std::string all;
    for (const Thread& t : threads_of(Length(d))) all += t.name() + " ";
    return all;
  };
  CHECK(names(10e-3) == "M10 M10x1.25 M10x1 M10x0.75 ");
  CHECK(names(5.5e-3) == "M5.5x0.5 ");
  CHECK(names(9e-3) == "M9 M9x1 M9x0.75 ");
  CHECK(names(11.3e-3).empty());
}

TEST_CASE("threads are read as people write them, and a length is left out") {
  for (const char* text : {"M10-1.25", "M10*1.25", "M10x1.25x60", "M10 - 1,25 x 60", "M10-1.25x60-6g"}) {
    CAPTURE(std::string(text));
    const Thread read = thread(text);
    CHECK(read.name() == "M10x1.25");
    CHECK_FALSE(thread_taken(text, read).empty());
  }
  CHECK(thread("M36-4").name() == "M36");
  CHECK(thread("M10-6g").tolerance_class == "6g");
  for (const char* text : {"M10", "m10", "M10x1.5", "M10x1.25", "M10X1,25", "M10 x 1.25-6g", "M10-6g"}) {
    CAPTURE(std::string(text));
    CHECK(thread_taken(text, thread(text)).empty());
  }
}

TEST_CASE("wrong text is named, and the nearest real sizes") {
  const Outcome<Thread> pitch = try_parse_thread("M10x9");
  REQUIRE_FALSE(pitch);
  CHECK(std::string(pitch.error().argument()) == "thread");
  CHECK(std::string(pitch.error().what()) ==
        "'M10x9' is not an ISO 261 size; M10 comes with pitches 1.5, 1.25, 1, 0.75 mm; did you mean M10?");
  CHECK(says(try_parse_thread("M10x1.1").error(), "did you mean M10x1?"));
  CHECK(says(try_parse_thread("M10x60").error(), "If 60 mm is the length of the bolt, leave it out"));
  CHECK(says(try_parse_thread("M5.5").error(), "M5.5 comes with pitch 0.5 mm; did you mean M5.5x0.5?"));
  CHECK(says(try_parse_thread("M11.3").error(),
             "'M11.3' is not an ISO 261 size from M1 to M64; the nearest are M11 and M12"));
  CHECK(says(try_parse_thread("M100").error(), "the nearest is M64"));
  CHECK(says(try_parse_thread("M0.5").error(), "the nearest is M1"));
  for (const char* text : {"", "M", "X10", "M10x", "10x1.25", "M-10", "M0", "M10x0", "M10x1.25x2", "M10..5", "M1e1",
                           "Mnan", "Minf", "M0x10", "M10 fine", "3/8-16"}) {
    CAPTURE(text);
    const Outcome<Thread> read = try_parse_thread(text);
    REQUIRE_FALSE(read);
    CHECK(says(read.error(), "write an ISO metric thread like M10, M10x1.25 or M10x1.25-6g"));
    CHECK(says(read.error(), detail::shown(text).c_str()));
  }
  for (const char* text : {"M10-", "M10-6", "M10-6z", "M10-2g", "M10-6g6H", "M10-LH"})
    CHECK(says(try_parse_thread(text).error(), "write one like -6g for a bolt or -6H for a nut"));
}

TEST_CASE("long and binary text is cut and made readable") {
  const std::string nines(100000, '9');
  for (const std::string& text : {"M" + nines, "M10x" + nines, "M10-" + nines, nines, std::string(5000, 'M')}) {
    const Outcome<Thread> read = try_parse_thread(text);
    REQUIRE_FALSE(read);
    CHECK(std::string(read.error().what()).size() < 300);
  }
  const char bytes[] = {'M', '1', '\0', '\n', '\xff', '\x1b'};
  CHECK(says(try_parse_thread(std::string_view(bytes, sizeof bytes)).error(), "'M1\\x00\\x0a\\xff\\x1b'"));
  CHECK(detail::shown(std::string(41, 'a')) == "'" + std::string(40, 'a') + "...'");
  CHECK_THROWS_AS((void)thread("M10x9"), Error);
}

}  // namespace designation_test
