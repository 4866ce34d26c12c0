// Property classes against ISO 898-1 and ISO 3506-1.
#include "tauten/part/property_class.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "near.hpp"

namespace property_class_test {

using namespace tauten;

namespace {

struct Printed {
  const char* name;
  double diameter_mm, R_m, yield, S_p, elongation_percent;
};

// ISO 898-1:2013 Table 3 (seen in print), ISO 3506-1:2020 for stainless (seen once, or by analogy with A2); MPa.
constexpr Printed printed[] = {
    {"4.6", 10, 400, 240, 225, 22},
    {"4.8", 10, 420, 340, 310, -1},
    {"5.6", 10, 500, 300, 280, 20},
    {"5.8", 10, 520, 420, 380, -1},
    {"6.8", 10, 600, 480, 440, -1},
    {"8.8", 16, 800, 640, 580, 12},
    {"8.8", 18, 830, 660, 600, 12},
    {"9.8", 16, 900, 720, 650, 10},
    {"10.9", 39, 1040, 940, 830, 9},
    {"12.9", 5, 1220, 1100, 970, 8},
    {"A2-50", 20, 500, 210, 210, -1},
    {"A2-70", 20, 700, 450, 450, -1},
    {"A4-80", 20, 800, 600, 600, -1},
    {"8.8 structural", 11, 800, 640, 580, 12},
    {"8.8 structural", 12, 830, 660, 600, 12},  // the printed load of M12, 70.0 kN, is 830 MPa on 84.3 mm2
    {"8.8 structural", 14, 830, 660, 600, 12},
};

bool says(const Error& error, const char* part) { return std::string(error.what()).find(part) != std::string::npos; }

}  // namespace

TEST_CASE("strengths are the printed ones") {
  for (const Printed& row : printed) {
    CAPTURE(row.name);
    const PropertyClass c = property_class(row.name, Length(row.diameter_mm * 1e-3));
    CHECK(c.name == row.name);
    CHECK(c.tensile_strength.shop() == near(row.R_m));
    CHECK(c.yield_strength.shop() == near(row.yield));
    CHECK(c.proof_stress.shop() == near(row.S_p));
    if (row.elongation_percent > 0)
      CHECK(c.elongation * 100 == near(row.elongation_percent));
    else
      CHECK(std::isnan(c.elongation));
    CHECK(c.stainless == (row.name[0] == 'A'));
    CHECK(c.proof_is_yield == c.stainless);
  }
}

TEST_CASE("figures behave as strengths do") {
  for (const table::PropertyClassRow& row : table::property_classes) {
    CAPTURE(row.name);
    const PropertyClass c = property_class(row.name, Length(row.diameter_to));
    CHECK(c.proof_stress <= c.yield_strength);
    CHECK(c.yield_strength < c.tensile_strength);
    CHECK(c.diameter_to.si == row.diameter_to);
  }
  CHECK(property_class("4.6").yield_kind == YieldKind::lower_yield);
  CHECK(property_class("10.9").yield_kind == YieldKind::proof_02);
  CHECK(property_class("10.9").torsion_ratio == near(0.79));  // ISO 898-7:1992 Table 1, from memory
  CHECK(std::isnan(property_class("4.6").torsion_ratio));
}

TEST_CASE("ways of writing a class, and figures that are from memory") {
  for (const char* text : {"A4-80", "a4-80", " A4 -80"}) CHECK(property_class(text).name == "A4-80");
  CHECK(property_class("8,8").name == "8.8");
  CHECK(property_class("8.8 Structural").name == "8.8 structural");
  CHECK(property_class("A4-80").seen == Seen::memory);
  CHECK(property_class("8.8").seen == Seen::in_print);
  CHECK(property_class("3.6").withdrawn);
  // Without a size the lower figures hold.
  CHECK(property_class("8.8").tensile_strength.shop() == near(800));
}

TEST_CASE("the dot of a mark may be left out") {
  for (const auto& [mark, name] : {std::pair("88", "8.8"), {"109", "10.9"}, {"129", "12.9"}, {"46", "4.6"}})
    CHECK(property_class(mark).name == std::string(name));
}

TEST_CASE("unknown classes and sizes are named") {
  for (const char* text : {"", "7.7", "8", "77", "A2", "A2-90", "grade 8"}) {
    CAPTURE(text);
    const Outcome<PropertyClass> found = try_property_class(text, Length(10e-3));
    REQUIRE_FALSE(found);
    CHECK(says(found.error(), "the classes are 3.6, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 8.8 structural, 9.8, 10.9, 12.9"));
    CHECK(says(found.error(), "A5-80"));
    CHECK(std::string(found.error().argument()) == "property_class");
  }
  CHECK(says(try_property_class("10.9", Length(42e-3)).error(),
             "class 10.9 is given for diameters up to 39 mm, not for 42 mm"));
  CHECK(says(try_property_class("9.8", Length(20e-3)).error(), "up to 16 mm, not for 20 mm"));
  CHECK_FALSE(try_property_class("8.8", Length(absent)));
  CHECK_FALSE(try_property_class("8.8", Length(-1e-3)));
  CHECK_THROWS_AS((void)property_class("7.7"), Error);
}

TEST_CASE("classes are read as people write them, and an inch grade is named as one") {
  for (const auto& [typed, name] : {std::pair{"8.8.", "8.8"},
                                    {"class 8.8", "8.8"},
                                    {"Grade 10.9", "10.9"},
                                    {"10.9S", "10.9"},
                                    {"8.8S", "8.8 structural"},
                                    {"10.9 HV", "10.9"},
                                    {"8,8", "8.8"}}) {
    CAPTURE(std::string(typed));
    CHECK(property_class(typed).name == name);
  }
  for (const char* inch : {"grade 8", "Grade 5", "SAE 2", "B7", "A325"})
    CHECK(says(try_property_class(inch).error(), "It is an inch grade"));
  CHECK(says(try_property_class("A2").error(), "A2-70 is common, A2-50 the weakest"));
  for (const char* nonsense : {"", ".", "S", "HV", "class", "8.9", "A9", "grades"})
    CHECK_FALSE(try_property_class(nonsense));
}

}  // namespace property_class_test
