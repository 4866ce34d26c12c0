#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "tauten/formulas.hpp"
#include "tauten/units.hpp"

#include "near.hpp"

namespace formula_test {

using namespace tauten;
using namespace tauten::literals;

namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

// Reads the sentence of the error that a call raises, and which argument it blames.
template <class Call>
Error error_of(Call call) {
  try {
    call();
  } catch (const Error& error) {
    return error;
  }
  return {"none", "no error"};
}

bool contains(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("a typed call takes quantities of Boost.Units and answers in them") {
  // M10 pump foot. By hand: 48/(1.5/(2 pi) + 0.12 * 9.026/(2 cos 30) + 0.12 * 12.8/2) kN.
  const double by_hand = 48e3 / (1.5 / (2 * std::acos(-1.0)) + 0.12 * 9.026 / std::sqrt(3.0) + 0.12 * 6.4);
  const auto preload = preload_from_torque(48.0_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm);
  static_assert(std::is_same_v<decltype(preload), const BoostQuantity<Dim::force>>);
  CHECK(preload.value() == near(by_hand).epsilon(1e-14));
}

TEST_CASE("a typed call takes the library's own quantities and answers in them") {
  const auto preload = preload_from_torque(Torque(48), Length(1.5e-3), Length(9.026e-3), 0.12, 0.12, Length(12.8e-3));
  static_assert(std::is_same_v<decltype(preload), const Force>);
  CHECK(preload.si == preload_from_torque.si(48, 1.5e-3, 9.026e-3, 0.12, 0.12, 12.8e-3));
  CHECK(preload == Force(preload_from_torque(48.0_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm)));
}

TEST_CASE("a formula of plain numbers alone answers with the library's quantity or a number") {
  static_assert(std::is_same_v<decltype(tightening_factor(0.17)), double>);
  CHECK(tightening_factor(0.25) == near(1.25 / 0.75).epsilon(1e-15));
  CHECK(nut_factor_from_test(72.0_N_m, 30.0_kN, 12.0_mm) == near(0.2).epsilon(1e-15));
}

TEST_CASE("float stays float") {
  const auto torque =
      torque_from_nut_factor(Quantity<Dim::force, float>(25e3F), Quantity<Dim::length, float>(10e-3F), 0.2F);
  static_assert(std::is_same_v<decltype(torque), const Quantity<Dim::torque, float>>);
  CHECK(static_cast<double>(torque.si) == near(50).epsilon(1e-6));
  static_assert(std::is_same_v<decltype(torque_from_nut_factor.si(25e3F, 10e-3F, 0.2F)), float>);
  static_assert(std::is_same_v<decltype(torque_from_nut_factor.si(25e3F, 10e-3, 0.2F)), double>);
  static_assert(std::is_same_v<decltype(torque_from_nut_factor.si(25000, 1, 0)), double>);
}

TEST_CASE("linear formulas are usable in constant expressions") {
  static_assert(find_formula("bearing_torque")->inputs.size() == 3);
  static_assert(find_formula("no_such_formula") == nullptr && find_formula("") == nullptr);
  static_assert(torque_from_nut_factor.si(25e3, 10e-3, 0.2) > 49.9);
  static_assert(torque_from_nut_factor(25.0_kN, 10.0_mm, 0.2).value() < 50.1);
  static_assert(preload_from_torque.check(48.0, 1.5e-3, 9.026e-3, 0.12, 0.12, 12.8e-3).status == Status::ok);
}

TEST_CASE("an error names formula, argument, value with unit, range and what to write") {
  const Error negative = error_of([] { return preload_from_torque(48.0_N_m, -1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm); });
  CHECK(std::string(negative.argument()) == "pitch");
  CHECK(std::string(negative.what()) ==
        "preload_from_torque: pitch is -1.5 mm, but must be above 0 mm; give it as a length, for example 12mm");

  const Error zero_allowed = error_of([] { return bearing_torque(-3.0_kN, 0.12, 12.8_mm); });
  CHECK(std::string(zero_allowed.argument()) == "preload");
  CHECK(contains(zero_allowed.what(), "preload is -3 kN, but must be at least 0 kN;"));

  const Error number = error_of([] { return bearing_torque(3.0_kN, -0.12, 12.8_mm); });
  CHECK(std::string(number.what()) ==
        "bearing_torque: bearing_friction is -0.12, but must be at least 0; give it as a plain number, for example "
        "0.14");

  const Error two_ends = error_of([] { return tightening_factor(1.5); });
  CHECK(contains(two_ends.what(), "scatter is 1.5, but must be at least 0 and at most 0.99;"));

  const Error angle = error_of([] { return screw_efficiency(5.0_mm, 22.5_mm, 0.1, 80.0_deg); });
  CHECK(contains(angle.what(), "flank_angle is 80 deg, but must be at least 0 and at most 68.7549 deg"));
}

TEST_CASE("NaN and infinity are wrong input, and the sentence says what is wanted") {
  const Error not_a_number = error_of([] { return bearing_torque(Force(no_number), 0.12, Length(12.8e-3)); });
  CHECK(std::string(not_a_number.argument()) == "preload");
  CHECK(contains(not_a_number.what(), "must be a finite number"));
  const Error endless = error_of([] { return bearing_torque(Force(infinity), 0.12, Length(12.8e-3)); });
  CHECK(contains(endless.what(), "preload is inf kN, but must be a finite number"));
  const Error any_sign_too =
      error_of([] { return preload_from_torque_pair(Torque(40), Torque(infinity), Length(1.5e-3)); });
  CHECK(std::string(any_sign_too.argument()) == "loosening_torque");
}

TEST_CASE("the first argument at fault is the one that is named") {
  const Error both = error_of([] { return bearing_torque(-3.0_kN, -0.12, 12.8_mm); });
  CHECK(std::string(both.argument()) == "preload");
}

TEST_CASE("inputs that are fine one by one may have no solution together") {
  // 1 N.m cannot have stretched an M10 bolt to 50 kN: the pitch alone asks for 11.9 N.m.
  const Error error = error_of([] { return total_friction(1.0_N_m, 50.0_kN, 1.5_mm, 9.026_mm, 12.8_mm); });
  CHECK(std::string(error.argument()).empty());
  CHECK(contains(error.what(), "total_friction: no total_friction fits these inputs together"));
  CHECK(std::isnan(total_friction.si(1.0, 50e3, 1.5e-3, 9.026e-3, 12.8e-3)));
  const Check check = total_friction.check(1.0, 50e3, 1.5e-3, 9.026e-3, 12.8e-3);
  CHECK(check.status == Status::impossible);
  CHECK(check.argument == -1);
}

TEST_CASE("a plain kernel gives NaN outside the domain, for each input in turn") {
  const double good[] = {48, 1.5e-3, 9.026e-3, 0.12, 0.12, 12.8e-3};
  for (std::size_t i = 0; i < std::size(good); ++i)
    for (const double bad : {-1.0, no_number, infinity, -infinity, 2e30}) {
      double x[6];
      std::copy(std::begin(good), std::end(good), x);
      x[i] = bad;
      CAPTURE(i);
      CAPTURE(bad);
      CHECK(std::isnan(preload_from_torque.si(x[0], x[1], x[2], x[3], x[4], x[5])));
      const Check check = preload_from_torque.check(x[0], x[1], x[2], x[3], x[4], x[5]);
      CHECK(check.status == Status::outside_domain);
      CHECK(check.argument == static_cast<int>(i));
    }
}

TEST_CASE("the ends of a domain: a lower end may be excluded, the upper end is inside") {
  CHECK(std::isnan(preload_from_torque.si(48, 0.0, 9.026e-3, 0.12, 0.12, 12.8e-3)));
  CHECK(std::isfinite(preload_from_torque.si(0.0, 1.5e-3, 9.026e-3, 0.0, 0.0, 0.0)));
  CHECK(std::isfinite(tightening_factor.si(0.99)));
  CHECK(std::isnan(tightening_factor.si(std::nextafter(0.99, 1.0))));
}

TEST_CASE("outside the range that the source states a value is computed but marked") {
  const Check nominal = bearing_torque.check(25e3, 0.12, 12.8e-3);
  CHECK(nominal.status == Status::ok);
  const Check unusual = bearing_torque.check(25e3, 1.5, 12.8e-3);
  CHECK(unusual.status == Status::unusual);
  CHECK(unusual.argument == 1);
  CHECK(std::isfinite(bearing_torque.si(25e3, 1.5, 12.8e-3)));
  CHECK_NOTHROW(static_cast<void>(bearing_torque(25.0_kN, 1.5, 12.8_mm)));
  // What is impossible is reported before what is merely unusual.
  CHECK(bearing_torque.check(-1.0, 1.5, 12.8e-3).status == Status::outside_domain);
}

TEST_CASE("check and value agree on float at the very end of a domain") {
  CHECK(std::isfinite(tightening_factor.si(0.99F)));
  CHECK(tightening_factor.check(0.99F).status == Status::unusual);
}

TEST_CASE("outside the domain a gradient is NaN throughout, not a value with slopes of zero") {
  const auto outside = bearing_torque.gradient(-25e3, 0.12, 12.8e-3);
  CHECK(std::isnan(outside.value));
  for (const double slope : outside.slope) CHECK(std::isnan(slope));
}

TEST_CASE("inputs that are fine one by one and nonsense together are impossible") {
  // Diameter and pitch swapped, a hole wider than the face, friction beyond locking under a large bearing torque.
  CHECK(stress_area.check(1.5e-3, 10e-3).status == Status::impossible);
  CHECK(std::isnan(stress_area.si(1.5e-3, 10e-3)));
  CHECK(std::isnan(stress_diameter.si(1e-3, 2e-3)));
  CHECK(std::isnan(stress_area_unified.si(1e-3, 2e-3)));
  CHECK(mean_bearing_diameter.check(9e-3, 14e-3).status == Status::impossible);
  CHECK(std::isnan(uniform_pressure_bearing_diameter.si(9e-3, 14e-3)));
  CHECK(tightening_torque_exact.check(1e3, 6e-3, 1e-3, 1.0, 1.0, 10e-3).status == Status::impossible);
  CHECK(std::isnan(preload_from_torque_exact.si(5.0, 6e-3, 1e-3, 1.0, 1.0, 10e-3)));
  CHECK_THROWS_AS(tightening_torque_exact(Force(1e3), Length(6e-3), Length(1e-3), 1.0, 1.0, Length(10e-3)), Error);
  CHECK(stress_area.check(10e-3, 1.5e-3).status == Status::ok);
}

TEST_CASE("what lies outside the range that the source states is heard of by who asks for it") {
  std::string heard;
  const auto listen = [&](const Error& unusual) { heard = std::string(unusual.argument()) + ": " + unusual.what(); };
  const auto load = preload_from_torque(48_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm);
  CHECK(preload_from_torque(listen, 48_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm) == load);
  CHECK(heard.empty());
  // Pitch and pitch diameter have changed places: silent, heard of, thrown.
  const auto swapped = preload_from_torque(48_N_m, 9.026_mm, 1.5_mm, 0.12, 0.12, 12.8_mm);
  CHECK(preload_from_torque(listen, 48_N_m, 9.026_mm, 1.5_mm, 0.12, 0.12, 12.8_mm) == swapped);
  CHECK(heard ==
        "pitch: preload_from_torque: pitch is 9.026 mm, but the source states at least 0.2 and at most 8 mm; check "
        "that it is a length, for example 12mm");
  CHECK_THROWS_AS(preload_from_torque(throw_unusual, 48_N_m, 9.026_mm, 1.5_mm, 0.12, 0.12, 12.8_mm), Error);
  CHECK_NOTHROW(preload_from_torque(throw_unusual, 48_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm));
  // Outside the domain there is no value, so that nothing is heard of: it throws as ever.
  heard.clear();
  CHECK_THROWS_AS(preload_from_torque(listen, 48_N_m, -1_mm, 9.026_mm, 0.12, 0.12, 12.8_mm), Error);
  CHECK(heard.empty());
}

}  // namespace formula_test
