// Proof loads and tensile loads of bolts against ISO 898-1.
#include "tauten/part/rated_load.hpp"

#include <doctest/doctest.h>

#include <string>

#include "near.hpp"

namespace rated_load_test {

using namespace tauten;

namespace {

struct Printed {
  const char* thread;
  const char* property_class;
  double tensile_load, proof_load;  // N
  bool proof_printed;               // false: the proof load was computed from the printed stress and area
};

// ISO 898-1:2009/2013 Tables 4 and 5, coarse thread, seen in print.
constexpr Printed printed[] = {
    // clang-format off
    {"M3", "4.6", 2010, 1130, true},
    {"M3", "5.6", 2510, 1410, true},
    {"M3", "6.8", 3020, 2210, true},
    {"M3", "10.9", 5230, 4180, true},
    {"M3", "12.9", 6140, 4880, true},
    {"M3.5", "5.6", 3390, 1900, true},
    {"M3.5", "5.8", 3530, 2580, true},
    {"M3.5", "6.8", 4070, 2980, true},
    {"M3.5", "9.8", 6100, 4410, true},
    {"M3.5", "10.9", 7050, 5630, true},
    {"M3.5", "12.9", 8270, 6580, true},
    {"M4", "4.8", 3690, 2720, true},
    {"M4", "6.8", 5270, 3860, true},
    {"M5", "4.6", 5680, 3200, true},
    {"M5", "4.8", 5960, 4400, true},
    {"M5", "5.8", 7380, 5400, true},
    {"M5", "6.8", 8520, 6250, true},
    {"M5", "8.8", 11350, 8230, true},
    {"M5", "9.8", 12800, 9230, true},
    {"M5", "12.9", 17300, 13800, true},
    {"M6", "4.6", 8040, 4520, true},
    {"M6", "4.8", 8440, 6230, true},
    {"M6", "5.6", 10000, 5630, true},
    {"M6", "5.8", 10400, 7640, true},
    {"M6", "9.8", 18100, 13100, true},
    {"M6", "10.9", 20900, 16700, true},
    {"M6", "12.9", 24500, 19500, true},
    {"M7", "8.8", 23100, 16800, true},
    {"M7", "10.9", 30100, 24000, true},
    {"M8", "4.6", 14600, 8240, true},
    {"M8", "4.8", 15400, 11400, true},
    {"M8", "5.6", 18300, 10200, true},
    {"M8", "5.8", 19000, 13900, true},
    {"M8", "6.8", 22000, 16100, true},
    {"M8", "9.8", 32900, 23800, true},
    {"M10", "5.8", 30200, 22000, true},
    {"M10", "6.8", 34800, 25500, true},
    {"M10", "9.8", 52200, 37700, true},
    {"M10", "10.9", 60300, 48100, true},
    {"M10", "12.9", 70800, 56300, true},
    {"M12", "4.8", 35400, 26100, true},
    {"M12", "5.6", 42200, 23600, true},
    {"M12", "5.8", 43800, 32000, true},
    {"M12", "6.8", 50600, 37100, true},
    {"M12", "8.8", 67400, 48900, true},
    {"M12", "9.8", 75900, 54800, true},
    {"M12", "12.9", 103000, 81800, true},
    {"M14", "4.6", 46000, 25900, true},
    {"M14", "4.8", 48300, 35600, true},
    {"M14", "5.6", 57500, 32200, true},
    {"M14", "5.8", 59800, 43700, true},
    {"M14", "6.8", 69000, 50600, true},
    {"M14", "8.8", 92000, 66700, true},
    {"M14", "9.8", 104000, 74800, true},
    {"M14", "10.9", 120000, 95500, true},
    {"M14", "12.9", 140000, 112000, true},
    {"M16", "4.6", 62800, 35300, true},
    {"M16", "5.6", 78500, 44000, true},
    {"M16", "6.8", 94000, 69100, true},
    {"M16", "8.8", 125000, 91000, true},
    {"M16", "9.8", 141000, 102000, true},
    {"M16", "10.9", 163000, 130000, true},
    {"M16", "12.9", 192000, 152000, true},
    {"M18", "4.6", 76800, 43200, true},
    {"M18", "4.8", 80600, 59500, true},
    {"M18", "5.8", 99800, 73000, true},
    {"M18", "6.8", 115000, 84500, true},
    {"M18", "8.8", 159000, 115000, true},
    {"M20", "4.6", 98000, 55100, true},
    {"M20", "5.6", 122000, 68600, true},
    {"M20", "5.8", 127000, 93100, true},
    {"M20", "10.9", 255000, 203000, true},
    {"M20", "12.9", 299000, 238000, true},
    {"M22", "4.8", 127000, 93900, true},
    {"M22", "5.6", 152000, 84800, true},
    {"M22", "6.8", 182000, 133000, true},
    {"M22", "8.8", 252000, 182000, true},
    {"M22", "10.9", 315000, 252000, true},
    {"M22", "12.9", 370000, 294000, true},
    {"M24", "5.6", 176000, 98800, true},
    {"M24", "5.8", 184000, 134000, true},
    {"M24", "10.9", 367000, 293000, true},
    {"M27", "5.6", 230000, 128000, true},
    {"M27", "6.8", 275000, 202000, true},
    {"M27", "8.8", 381000, 275000, true},
    {"M27", "10.9", 477000, 381000, true},
    {"M30", "4.6", 224000, 126000, false},
    {"M30", "4.8", 236000, 174000, false},
    {"M30", "5.6", 280000, 157000, false},
    {"M30", "6.8", 337000, 247000, false},
    {"M30", "8.8", 466000, 337000, false},
    {"M30", "10.9", 583000, 466000, false},
    {"M33", "4.6", 278000, 156000, false},
    {"M33", "5.6", 347000, 194000, false},
    {"M33", "6.8", 416000, 305000, false},
    {"M33", "8.8", 576000, 416000, false},
    {"M33", "10.9", 722000, 576000, false},
    {"M33", "12.9", 847000, 673000, false},
    {"M36", "5.8", 425000, 310000, false},
    {"M36", "6.8", 490000, 359000, false},
    {"M36", "8.8", 678000, 490000, false},
    {"M36", "12.9", 997000, 792000, false},
    {"M39", "4.8", 410000, 303000, false},
    {"M39", "5.6", 488000, 273000, false},
    {"M39", "6.8", 586000, 429000, false},
    {"M39", "8.8", 810000, 586000, false},
    {"M39", "12.9", 1200000, 947000, false},
    // clang-format on
};

}  // namespace

TEST_CASE("printed loads are given as printed") {
  for (const Printed& row : printed) {
    CAPTURE(row.thread);
    CAPTURE(row.property_class);
    const Thread t = thread(row.thread);
    const RatedLoad tensile = tensile_load(t, row.property_class);
    CHECK(tensile.printed);
    CHECK(tensile.value.si == row.tensile_load);
    const RatedLoad proof = proof_load(t, row.property_class);
    CHECK(proof.printed == row.proof_printed);
    if (row.proof_printed)
      CHECK(proof.value.si == row.proof_load);
    else
      CHECK(proof.value.si == near(row.proof_load).epsilon(0.005));
    CHECK(proof.value < tensile.value);
  }
}

TEST_CASE("printed loads stay near nominal area times stress") {
  // An independent look at every printed cell; the standard's own rounding explains up to 1 %.
  for (const table::BoltLoad& row : table::bolt_loads) {
    CAPTURE(row.designation);
    CAPTURE(row.property_class);
    const Thread t = thread(row.designation);
    const PropertyClass c = property_class(row.property_class, t.diameter);
    const double area = t.nominal_stress_area().si;
    CHECK(tensile_load(t, row.property_class).value.si == near(area * c.tensile_strength.si).epsilon(0.01));
    CHECK(proof_load(t, row.property_class).value.si == near(area * c.proof_stress.si).epsilon(0.01));
  }
}

TEST_CASE("where nothing is printed the load is nominal area times stress, and says so") {
  const RatedLoad m10 = proof_load(thread("M10"), "8.8");
  CHECK_FALSE(m10.printed);
  CHECK(m10.value.si == near(58.0 * 580));  // ISO 898-1: area 58.0 mm2, S_p 580 MPa
  const RatedLoad stainless = tensile_load(thread("M12"), "A4-80");
  CHECK_FALSE(stainless.printed);
  CHECK(stainless.value.si == near(84.3 * 800));  // ISO 3506-1: R_m 800 MPa
  CHECK(stainless.seen == Seen::memory);
  // The tolerance class of the designation makes no difference.
  CHECK(tensile_load(thread("M12-6g"), "8.8").printed);
  CHECK_FALSE(try_proof_load(thread("M42"), "8.8"));
  CHECK_FALSE(try_tensile_load(thread("M10"), "7.7"));
  CHECK_THROWS_AS((void)proof_load(thread("M10"), "7.7"), Error);
  CHECK_THROWS_AS((void)tensile_load(thread("M10"), "7.7"), Error);
}

}  // namespace rated_load_test
