// Figures of standards and handbooks that stand in headers, typed a second time.
#include <doctest/doctest.h>

#include <string>

#include "tauten/joint/material.hpp"
#include "tauten/tool/accuracy.hpp"
#include "tauten/tool/drive_sizes.hpp"

#include "near.hpp"

namespace typed_figures_test {

using namespace tauten;

TEST_CASE("square drives: ISO 1174-1, ISO 1711-1, ISO 3315, from memory") {
  struct Typed {
    const char* inch;
    double nominal, male, socket, driver;
  };
  constexpr Typed typed[] = {
      {"1/4", 6.3, 6.35, 68.6, 62},   {"3/8", 10, 9.53, 225, 202}, {"1/2", 12.5, 12.7, 569, 512},
      {"3/4", 20, 19.05, 1569, 1412}, {"1", 25, 25.4, 2745, 2471},
  };
  REQUIRE(std::size(typed) == std::size(square_drives));
  for (std::size_t i = 0; i < std::size(typed); ++i) {
    CHECK(std::string(square_drives[i].inch) == typed[i].inch);
    CHECK(square_drives[i].nominal.shop() == near(typed[i].nominal));
    CHECK(square_drives[i].male.shop() == near(typed[i].male));
    CHECK(square_drives[i].socket_test_torque.si == typed[i].socket);
    CHECK(square_drives[i].driver_test_torque.si == typed[i].driver);
    // ISO 3315 asks nine tenths of the cap of ISO 1711-1.
    CHECK(typed[i].driver == near(0.9 * typed[i].socket).epsilon(0.006));
    CHECK(find_square_drive(Length(typed[i].nominal * 1e-3)) == &square_drives[i]);
    CHECK(find_square_drive(Length(typed[i].male * 1e-3)) == &square_drives[i]);
    CHECK(find_square_drive(Length(typed[i].male * 1e-3 + 0.59e-3)) == &square_drives[i]);
    CHECK(find_square_drive(Length(typed[i].nominal * 1e-3 + 0.59e-3)) == &square_drives[i]);
    CHECK(find_square_drive(Length(16e-3)) == nullptr);
  }
}

TEST_CASE("hexagon keys: JIS B 4648:2008, Table 1, and ISO 2936 from memory") {
  // Width mm, test torque N.m, least hardness HRC.
  constexpr double typed[][3] = {
      // clang-format off
    {0.7, 0.08, 52},
    {0.9, 0.18, 52},
    {1.3, 0.53, 52},
    {1.5, 0.82, 52},
    {2, 1.9, 52},
    {2.5, 3.8, 52},
    {3, 6.6, 52},
    {3.5, 10.3, 52},
    {4, 16, 52},
    {4.5, 22, 52},
    {5, 30, 52},
    {6, 52, 52},
    {7, 80, 52},
    {8, 120, 52},
    {9, 165, 48},
    {10, 220, 48},
    {11, 282, 48},
    {12, 370, 48},
    {13, 470, 48},
    {14, 590, 48},
    {15, 725, 48},
    {16, 880, 48},
    {17, 980, 45},
    {18, 1158, 45},
    {19, 1360, 45},
    {21, 1840, 45},
    {22, 2110, 45},
    {23, 2414, 45},
    {24, 2750, 45},
    {27, 3910, 45},
      // clang-format on
  };
  REQUIRE(std::size(typed) == std::size(hexagon_keys));
  for (std::size_t i = 0; i < std::size(typed); ++i) {
    CHECK(hexagon_keys[i].width.shop() == near(typed[i][0]));
    CHECK(hexagon_keys[i].test_torque.si == typed[i][1]);
    CHECK(hexagon_keys[i].hardness == typed[i][2]);
    CHECK(find_hexagon_key(hexagon_keys[i].width) == &hexagon_keys[i]);
  }
  CHECK(find_hexagon_key(Length(6.1e-3)) == nullptr);
}

TEST_CASE("materials: VDI 2230 Part 1:2003, Table A9; R_m and p_G as reprinted, stiffness and expansion from memory") {
  struct Typed {
    const char* name;
    double modulus_GPa, poisson, expansion_1e6, tensile_MPa, shear_ratio, pressure_MPa;
  };
  constexpr Typed typed[] = {
      {"steel", 205, 0.30, 11.5, 340, 0.6, 490},                         // S235JRG1
      {"austenitic steel", 200, 0.30, 16.5, 510, 0.8, 460},              // X5CrNiMo17-12-2
      {"grey cast iron", 110, 0.24, 10.0, 250, 1.4, 900},                // GJL-250
      {"ductile iron", 170, 0.28, 12.5, 400, 0.9, 700},                  // GJS-400-15
      {"aluminium", 70, 0.33, 23.5, 290, 0.7, 260},                      // AlMgSi1 F31
      {"wrought aluminium", 70, 0.33, 23.5, 290, 0.7, 260},              // the same
      {"cast aluminium", 75, 0.33, 21.0, 180, 0.7, 220},                 // GK-AlSi9Cu3
      {"steel S355", 205, 0.30, 11.5, 510, 0.6, 760},                    // S355J0
      {"quenched and tempered steel", 205, 0.30, 11.5, 1000, 0.6, 870},  // 34CrMo4
      {"washer steel", 205, 0.30, 11.5, 640, 0.6, 710},                  // 200 HV; the pressure is judgement
  };
  REQUIRE(std::size(typed) == std::size(material::all));
  for (std::size_t i = 0; i < std::size(typed); ++i) {
    const Material& m = material::all[i];
    CAPTURE(typed[i].name);
    CHECK(std::string(m.name) == typed[i].name);
    CHECK(m.elastic_modulus.si == near(typed[i].modulus_GPa * 1e9));
    CHECK(m.poisson_ratio == typed[i].poisson);
    CHECK(m.expansion.si == near(typed[i].expansion_1e6 * 1e-6));
    CHECK(m.tensile_strength.si == near(typed[i].tensile_MPa * 1e6));
    CHECK(m.shear_ratio == typed[i].shear_ratio);
    CHECK(m.limiting_pressure.si == near(typed[i].pressure_MPa * 1e6));
    REQUIRE(try_material(m.name));
    CHECK(try_material(m.name)->elastic_modulus.si == m.elastic_modulus.si);
  }
  const Material plain;
  CHECK(plain.limiting_pressure.si == material::steel.limiting_pressure.si);
  CHECK(plain.tensile_strength.si == material::steel.tensile_strength.si);
}

TEST_CASE("hand torque tools: ISO 6789-1, from memory; the wider of two versions of the rule") {
  for (const WrenchClass& tool : wrench_classes) {
    CAPTURE(tool.description);
    const bool indicating = tool.type == WrenchType::indicating;
    const std::string four = indicating ? "BCE" : "ABC";
    const double percent = four.find(tool.letter) != std::string::npos ? 4 : 6;
    CHECK(100 * permissible_deviation(tool, Torque(200)) == near(percent));
    CHECK(100 * permissible_deviation(tool, Torque(0)) == near(percent));  // not known: as a large one
    CHECK(100 * permissible_deviation(tool, Torque(10.01)) == near(percent));
    CHECK(100 * permissible_deviation(tool, Torque(10)) == near(6));
    CHECK(tool.is_screwdriver == (std::string(tool.description).find("screwdriver") != std::string::npos));
  }
  CHECK(try_wrench_class(WrenchType::indicating, 'E'));
  CHECK_FALSE(try_wrench_class(WrenchType::indicating, 'F'));
  CHECK(try_wrench_class(WrenchType::setting, 'G'));
  CHECK_FALSE(try_wrench_class(WrenchType::setting, 'H'));
}

}  // namespace typed_figures_test
