#include <doctest/doctest.h>

#include <cmath>

#include "tauten/base/unit_text.hpp"
#include "tauten/units.hpp"

#include "near.hpp"

namespace units_test {

using namespace tauten;
using namespace tauten::literals;

namespace {

// The double nearest to a printed decimal, or one step beside it.
doctest::Approx decimal(double x) { return near(x).epsilon(3e-16); }

}  // namespace

TEST_CASE("literals are the SI value of what stands there") {
  CHECK((1.25_mm).value() == 1.25e-3);
  CHECK((12.0_mm).value() == 12e-3);
  CHECK((6.0_mm).value() == 6e-3);
  CHECK((7.5_um).value() == 7.5e-6);
  CHECK((58.0_mm2).value() == 58e-6);
  CHECK((25.0_kN).value() == 25e3);
  CHECK((640.0_MPa).value() == 640e6);
  CHECK((205.0_GPa).value() == 205e9);
  CHECK((48.0_N_m).value() == 48);
  CHECK((60.0_K).value() == 60);
  CHECK((1.5_m).value() == 1.5);
}

TEST_CASE("inch, pound-force and kilogram-force are exact by definition") {
  // NIST SP 811 (2008), appendix B.8: inch 2.54 E-02 m exact; pound-force 4.448 221 615 260 5 N exact (B.9, footnote);
  // kilogram-force 9.806 65 N exact.
  CHECK((1.0_in).value() == 0.0254);
  CHECK((1.0_lbf).value() == 4.4482216152605);
  CHECK((1.0_kgf).value() == 9.80665);
  CHECK((1.0_kgf_m).value() == 9.80665);
  // The pound-force is the avoirdupois pound, 0.453 592 37 kg exact, under standard gravity, 9.806 65 m/s2 exact.
  CHECK((1.0_lbf).value() == decimal(static_cast<double>(0.45359237L * 9.80665L)));
}

TEST_CASE("foot-pounds and inch-pounds agree with the printed factors of NIST SP 811") {
  // NIST SP 811 (2008), appendix B.8, "MOMENT OF FORCE or TORQUE": pound-force foot 1.355 818 E+00,
  // pound-force inch 1.129 848 E-01; seven digits are printed.
  CHECK((1.0_lbf_ft).value() == near(1.355818).epsilon(4e-7));
  CHECK((1.0_lbf_in).value() == near(0.1129848).epsilon(5e-7));
  // Exact products of the exact factors: 4.4482216152605 * 0.3048 and * 0.0254.
  CHECK((1.0_lbf_ft).value() == decimal(1.3558179483314004));
  CHECK((1.0_lbf_in).value() == decimal(0.1129848290276167));
  CHECK((12.0_lbf_in).value() == decimal((1.0_lbf_ft).value()));
}

TEST_CASE("a degree is exactly pi/180") {
  const double pi = std::acos(-1.0);
  CHECK((180.0_deg).value() == pi);
  CHECK((90.0_deg).value() == pi / 2);
  CHECK((45.0_deg).value() == pi / 4);
  CHECK((360.0_deg).value() == 2 * pi);
  CHECK((30.0_deg).value() == decimal(pi / 6));
  CHECK((1.0_rad).value() == 1);
}

TEST_CASE("a torque is not an energy, though both are newton times metre") {
  static_assert(QuantityTraits<decltype(48.0_N_m)>::dimension == Dim::torque);
  static_assert(QuantityTraits<decltype(1.0_kN * 1.0_mm)>::dimension == Dim::energy);
  static_assert(QuantityTraits<decltype(48.0_N_m * 1.0_rad)>::dimension == Dim::energy);
  // That neither turns into the other is held where it must not compile: quantity_from_energy.cpp, quantity_from_torque.cpp.
  CHECK((2.0_N_m * 3.0_rad).value() == 6);
}

TEST_CASE("quantities that arise by arithmetic are recognised") {
  static_assert(QuantityTraits<decltype(2.0_mm * 3.0_mm)>::dimension == Dim::area);
  static_assert(QuantityTraits<decltype(1.0_kN / 1.0_mm2)>::dimension == Dim::stress);
  static_assert(QuantityTraits<decltype(1.0_kN / 1.0_mm)>::dimension == Dim::stiffness);
  static_assert(QuantityTraits<decltype(1.0_mm / 1.0_kN)>::dimension == Dim::compliance);
  static_assert(QuantityTraits<decltype(1.0_mm / 1.0_mm)>::dimension == Dim::number);
  static_assert(QuantityTraits<decltype(1.0 / 1.0_K)>::dimension == Dim::expansion);
  static_assert(!QuantityTraits<decltype(1.0_mm * 1.0_mm * 1.0_mm)>::known);
  static_assert(!QuantityTraits<const char*>::known);
}

TEST_CASE("the library's quantities and those of Boost.Units turn into each other") {
  const Torque torque = 35.0_lbf_ft;
  CHECK(torque.si == (35.0_lbf_ft).value());
  CHECK(boost_quantity(torque) == 35.0_lbf_ft);
  // That neither a length nor a number turns into a torque is held where it must not compile: member_dimension.cpp and
  // quantity_from_number.cpp, since asking std::is_convertible already ends in their sentence.
}

TEST_CASE("literals of whole numbers, and the spellings of the trade") {
  CHECK(130_N_m == 130.0_N_m);
  CHECK((130_Nm).value() == 130);
  CHECK((-20_K).value() == -20);
  // 1 lbf.ft is 1.3558179483314004 N.m by NIST SP 811.
  CHECK((35_ft_lb).value() == doctest::Approx(35 * 1.3558179483314004).epsilon(1e-15));
  CHECK((420_in_lb).value() == doctest::Approx((35_ft_lb).value()).epsilon(1e-15));
  CHECK(75_percent == 0.75);
  CHECK(7.5_percent == decimal(0.075));
}

TEST_CASE("a force at a lever is a torque by name; by product it is an energy") {
  CHECK(torque_of(350_N, 400_mm) == 140_N_m);
  CHECK(torque_of(Force(350), Length(0.4)) == 140_N_m);
  CHECK(torque_of(-350_N, 400_mm) == -140_N_m);
  static_assert(!std::is_convertible_v<decltype(350_N * 400_mm), decltype(140_N_m)>);
}

TEST_CASE("shop units: what a workshop reads") {
  CHECK(Length(12e-3).shop() == decimal(12));
  CHECK(Force(25e3).shop() == 25);
  CHECK(Stress(640e6).shop() == 640);
  CHECK(Angle((90.0_deg).value()).shop() == decimal(90));
  CHECK(Quantity<Dim::compliance>(2.1e-9).shop() == decimal(2.1));
  for (int i = 0; i < dimension_count; ++i) {
    const DimensionText text = describe(static_cast<Dim>(i));
    CAPTURE(std::string(text.name));
    CHECK(text.shop_unit_in_si > 0);
    // The shop unit and the example are spelled as the reader of quantities understands them.
    const auto one = try_read_quantity("x", std::string("1") + text.shop_unit, static_cast<Dim>(i));
    REQUIRE(one);
    CHECK(*one == text.shop_unit_in_si);
    CHECK(try_read_quantity("x", text.how_to_write, static_cast<Dim>(i)));
    const auto si = try_read_quantity("x", std::string("1 ") + text.si_unit, static_cast<Dim>(i));
    REQUIRE(si);
    CHECK(*si == 1);
  }
}

}  // namespace units_test
