// Proof loads of nuts against ISO 898-2, and pairs of bolts and nuts.
#include "tauten/part/nut.hpp"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <tuple>

#include "near.hpp"

namespace nut_test {

using namespace tauten;

namespace {

struct Printed {
  const char* thread;
  const char* nut_class;
  int style;
  double proof_load;  // N
};

// ISO 898-2:1992 Tables 5 and 6, seen in print.
constexpr Printed printed[] = {
    // clang-format off
    {"M3", "6", 1, 3000},
    {"M3", "12", 1, 5700},
    {"M3", "12", 2, 5800},
    {"M3.5", "6", 1, 4050},
    {"M3.5", "8", 1, 5400},
    {"M3.5", "12", 1, 7700},
    {"M3.5", "12", 2, 7800},
    {"M4", "8", 1, 7000},
    {"M4", "10", 1, 9150},
    {"M5", "5", 1, 8250},
    {"M5", "6", 1, 9500},
    {"M5", "8", 1, 12140},
    {"M5", "10", 1, 14800},
    {"M6", "6", 1, 13500},
    {"M6", "10", 1, 20900},
    {"M6", "12", 1, 22900},
    {"M7", "5", 1, 16800},
    {"M7", "6", 1, 19400},
    {"M7", "8", 1, 24700},
    {"M7", "10", 1, 30100},
    {"M7", "12", 2, 33200},
    {"M8", "5", 1, 21600},
    {"M8", "8", 1, 31800},
    {"M8", "10", 1, 38100},
    {"M8", "12", 1, 41700},
    {"M8", "12", 2, 42500},
    {"M10", "5", 1, 34200},
    {"M10", "6", 1, 39400},
    {"M10", "10", 1, 60300},
    {"M10", "12", 2, 67300},
    {"M12", "5", 1, 51400},
    {"M12", "6", 1, 59000},
    {"M12", "10", 1, 88500},
    {"M12", "12", 2, 100300},
    {"M14", "6", 1, 80500},
    {"M14", "8", 1, 101200},
    {"M14", "10", 1, 120800},
    {"M14", "12", 1, 134600},
    {"M16", "5", 1, 95800},
    {"M16", "8", 1, 138200},
    {"M16", "10", 1, 164900},
    {"M16", "12", 1, 183700},
    {"M18", "4", 1, 97900},
    {"M18", "5", 1, 121000},
    {"M18", "6", 1, 138200},
    {"M18", "8", 2, 170900},
    {"M18", "12", 2, 230400},
    {"M20", "5", 1, 154400},
    {"M20", "6", 1, 176400},
    {"M20", "8", 1, 225400},
    {"M20", "8", 2, 218100},
    {"M20", "12", 2, 294000},
    {"M22", "5", 1, 190900},
    {"M22", "6", 1, 218200},
    {"M22", "8", 1, 278800},
    {"M22", "8", 2, 269700},
    {"M22", "10", 1, 321200},
    {"M22", "12", 2, 363600},
    {"M24", "4", 1, 180000},
    {"M24", "6", 1, 254200},
    {"M24", "8", 1, 324800},
    {"M24", "8", 2, 314200},
    {"M24", "10", 1, 374200},
    {"M24", "12", 2, 423600},
    {"M27", "4", 1, 234100},
    {"M27", "8", 1, 422300},
    {"M27", "10", 1, 486500},
    {"M27", "12", 2, 550800},
    {"M30", "4", 1, 286100},
    {"M30", "5", 1, 353400},
    {"M30", "6", 1, 403900},
    {"M30", "8", 1, 516100},
    {"M30", "8", 2, 499300},
    {"M30", "12", 2, 673200},
    {"M33", "4", 1, 353900},
    {"M33", "5", 1, 437200},
    {"M33", "6", 1, 499700},
    {"M33", "8", 2, 617700},
    {"M33", "10", 1, 735600},
    {"M33", "12", 2, 832800},
    {"M36", "5", 1, 514700},
    {"M36", "6", 1, 588200},
    {"M36", "10", 1, 866000},
    {"M39", "4", 1, 497800},
    {"M39", "5", 1, 614900},
    {"M39", "6", 1, 702700},
    {"M39", "8", 1, 897900},
    {"M39", "8", 2, 868600},
    // clang-format on
};

bool says(const Error& error, const char* part) { return std::string(error.what()).find(part) != std::string::npos; }

}  // namespace

TEST_CASE("printed proof loads are given as printed") {
  for (const Printed& row : printed) {
    CAPTURE(row.thread);
    CAPTURE(row.nut_class);
    const RatedLoad load = nut_proof_load(thread(row.thread), row.nut_class, row.style);
    CHECK(load.printed);
    CHECK(load.value.si == row.proof_load);
  }
}

TEST_CASE("one proof stress per class, style and step of sizes") {
  // The rule by which missing cells are filled must hold for all cells that are there.
  std::map<std::tuple<std::string, int, int>, double> stress;
  for (const table::NutLoad& row : table::nut_loads) {
    int step = 0;
    const double d = thread(row.designation).diameter.si;
    for (const double limit : detail::nut_size_steps) step += d > limit + 1e-8 ? 1 : 0;
    const auto [at, added] = stress.try_emplace({row.nut_class, row.style, step}, row.proof_stress);
    CAPTURE(row.designation);
    CAPTURE(row.nut_class);
    CHECK(at->second == row.proof_stress);
  }
}

TEST_CASE("missing cells are nominal area times stress") {
  const RatedLoad m12 = nut_proof_load(thread("M12"), "8");
  CHECK_FALSE(m12.printed);
  CHECK(m12.value.si == near(84.3 * 880));  // ISO 898-2:1992: S_p 880 MPa above 10 to 16 mm
  const RatedLoad m20 = nut_proof_load(thread("M20"), "10");
  CHECK(m20.value.si == near(245.0 * 1060));
  // Style 1 goes before style 2, also where only style 2 is printed.
  CHECK(nut_proof_load(thread("M18"), "8").value.si == near(192.0 * 920));
  CHECK(nut_proof_load(thread("M18"), "8", 2).value.si == 170900);
  // Fine thread: an estimate.
  const RatedLoad fine = nut_proof_load(thread("M10x1.25"), "10");
  CHECK_FALSE(fine.printed);
  CHECK(fine.seen == Seen::judgement);
  CHECK(fine.value.si == near(61.2 * 1040));
  // Stainless, ISO 3506-2: 700 MPa.
  CHECK(nut_proof_load(thread("M10"), "A2-70").value.si == near(58.0 * 700));
  CHECK(nut_proof_load(thread("M10"), "70").value.si == near(58.0 * 700));
  CHECK(says(try_nut_proof_load(thread("M10"), "11").error(), "the classes are 4, 5, 6, 8, 9, 10, 12"));
  CHECK_FALSE(try_nut_proof_load(thread("M42"), "8"));
  CHECK_FALSE(try_nut_proof_load(thread("M10"), ""));
  CHECK_THROWS_AS((void)nut_proof_load(thread("M10"), "11"), Error);
}

TEST_CASE("the nut that belongs to a bolt") {
  // ISO 898-2: a nut takes bolts up to the first number of their class.
  const char* pairs[][2] = {{"4.6", "5"}, {"5.8", "5"},   {"6.8", "6"},   {"8.8", "8"},
                            {"9.8", "9"}, {"10.9", "10"}, {"12.9", "12"}, {"8.8 structural", "8"}};
  for (const auto& [bolt, nut] : pairs) CHECK(matching_nut(bolt) == nut);
  CHECK(matching_nut("A4-80") == "A4-80");
  CHECK(says(try_matching_nut("3.6").error(), "withdrawn"));
  CHECK_FALSE(try_matching_nut("7.7"));
  CHECK_THROWS_AS((void)matching_nut("3.6"), Error);
}

TEST_CASE("which of the two gives way") {
  const Thread m16 = thread("M16");
  CHECK_FALSE(nut_pairing(m16, "8.8", "8").weaker);
  CHECK_FALSE(nut_pairing(m16, "8.8", "10").weaker);
  CHECK(nut_pairing(m16, "10.9", "8").weaker);
  CHECK(nut_pairing(m16, "8.8", "04").weaker);
  CHECK(nut_pairing(m16, "4.6", "05").weaker);
  CHECK_FALSE(nut_pairing(m16, "A2-70", "A2-70").weaker);
  CHECK(nut_pairing(m16, "A4-80", "A2-70").weaker);
  // A stainless nut of 700 MPa on a steel bolt of 1040 MPa; a steel nut of 880 MPa on a stainless bolt of 700 MPa.
  CHECK(nut_pairing(m16, "10.9", "A2-70").weaker);
  CHECK_FALSE(nut_pairing(m16, "A2-70", "8").weaker);
  const NutPairing pair = nut_pairing(m16, "10.9", "8");
  CHECK(pair.matching_class == "10");
  CHECK_FALSE(pair.matched);
  CHECK(pair.nut_proof_load.value.si == 138200);     // ISO 898-2:1992 Table 5
  CHECK(pair.bolt_tensile_load.value.si == 163000);  // ISO 898-1 Table 4
  CHECK_FALSE(try_nut_pairing(m16, "7.7", "8"));
  CHECK_FALSE(try_nut_pairing(m16, "8.8", "7"));
  CHECK_THROWS_AS((void)nut_pairing(m16, "8.8", "7"), Error);
  // A matched pair never limits the proof load of its bolt.
  for (const table::NutMatch& row : table::nut_matches)
    for (const char* size : {"M5", "M8", "M10", "M12", "M16"}) {
      CAPTURE(size);
      CAPTURE(row.bolt_class);
      CHECK_FALSE(nut_pairing(thread(size), row.bolt_class, row.nut_class).weaker);
    }
}

}  // namespace nut_test
