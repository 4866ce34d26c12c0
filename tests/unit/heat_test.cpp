#include "tauten/loosening/heat.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tauten/loosening/heat_limit.hpp"
#include "tauten/question/workings/aid.hpp"
#include "tauten/question/workings/free_notices.hpp"

#include "near.hpp"

namespace heat_test {

using namespace tauten;

TEST_CASE("heat: opening and its inverse, load lost and its inverse") {
  for (double dT : {1.0, 60.0, 250.0}) {
    const double u = thermal_opening.si(11.5e-6, 12e-3, dT);
    CHECK(opening_temperature.si(u, 11.5e-6, 12e-3) == near(dT));
    const double F = thermal_load_loss.si(11.5e-6, 206e9, 84.3e-6, dT);
    CHECK(unloading_temperature.si(F / 84.3e-6, 11.5e-6, 206e9) == near(dT));
  }
  // 400 MPa are gone after about 167 K (handbook figure from memory, expansion 11.7e-6, modulus 205 GPa).
  CHECK(unloading_temperature.si(400e6, 11.7e-6, 205e9) == near(166.8).epsilon(1e-3));
}

TEST_CASE("heat never strengthens") {
  ReleaseModel m;
  m.preload = {20e3, 0.3};
  m.thread_growth = m.bearing_growth = {2, 0.3};
  m.bond = {8, 0.6};
  m.rust = {10, 0.6};
  m.shear = {76, 0.06};
  m.drive = {150, 0.3};
  m.diameter = 10e-3;
  m.nut_diameter = 16e-3;
  m.stress_area = 58e-6;
  m.breaking_load = 52e3;
  m.rust_pressure = 22e6;
  const ReleaseModel cold = m;
  double share = 1, shear = cold.shear.median;
  for (double rise = 0; rise <= 700; rise += 10) {
    const double now = hot_strength(Quantity<Dim::temperature>(rise));
    CHECK(now <= share);
    CHECK(now > 0);
    share = now;
    const ReleaseModel hot = with_aid(
        m,
        {.aid = Aid::heat, .nut_rise = Quantity<Dim::temperature>(rise), .bolt_rise = Quantity<Dim::temperature>(rise)},
        0.14, 0.14);
    CHECK(hot.shear.median <= shear);
    CHECK(hot.breaking_load <= cold.breaking_load);
    CHECK(hot.drive.median <= cold.drive.median);
    CHECK(hot.preload.median <= cold.preload.median);
    CHECK(hot.bond.median <= cold.bond.median);
    CHECK(hot.rust.median <= cold.rust.median);
    shear = hot.shear.median;
  }
}

TEST_CASE("aids: what fluid cannot do") {
  ReleaseModel m;
  m.thread_growth = m.bearing_growth = {1, 0.3};
  m.bond = {8, 0.6};
  m.rust = {10, 0.6};
  const ReleaseModel fresh = with_aid(m, {.aid = Aid::fluid, .soak_hours = 0}, 0.14, 0.14);
  CHECK(fresh.bond.median == 8);
  CHECK(fresh.bond.variation == near(0.6));
  const ReleaseModel soaked = with_aid(m, {.aid = Aid::fluid, .soak_hours = 48, .thin_fluid = true}, 0.14, 0.20);
  CHECK(soaked.bond.median == near(0.4 * 8).epsilon(0.01));
  CHECK(soaked.rust.median == 10);  // the pressure of rust stays
  CHECK(soaked.thread_floor == near(0.10 / 0.14));
  CHECK(soaked.bearing_floor == near(0.5));
  CHECK(fluid_factor(1, false) > fluid_factor(24, false));
}

TEST_CASE("heat takes half of what rigid parts would lose of the load; cold adds all of it") {
  ReleaseModel m;
  m.preload = {60e3, 0.2};
  m.stress_area = 157e-6;
  const Quantity<Dim::temperature> rise(60.0);
  const double rigid = 11.5e-6 * 206e9 * 157e-6 * 60;  // alpha E A dT
  CHECK(with_aid(m, {.aid = Aid::heat, .bolt_rise = rise}, 0.14, 0.14).preload.median == near(60e3 - rigid / 2));
  CHECK(with_aid(m, {.aid = Aid::cold, .bolt_rise = rise}, 0.14, 0.14).preload.median == near(60e3 + rigid));
}

TEST_CASE("heat acts by the difference between nut and bolt, and by what the nut is made of") {
  ReleaseModel m;
  m.preload = {60e3, 0.2};
  m.thread_growth = m.bearing_growth = {2, 0.3};
  m.bond = {8, 0.6};
  m.rust = {10, 0.6};
  m.shear = {76, 0.06};
  m.diameter = 16e-3;
  m.nut_diameter = 24e-3;
  m.stress_area = 157e-6;
  m.rust_pressure = 1e9;  // so high that the play relieves a part of it only
  const auto heated = [&](double nut, double bolt, double nut_expansion) {
    m.nut_expansion = nut_expansion;
    return with_aid(
        m,
        {.aid = Aid::heat, .nut_rise = Quantity<Dim::temperature>(nut), .bolt_rise = Quantity<Dim::temperature>(bolt)},
        0.14, 0.14);
  };
  double rust = 10;
  for (const auto& [nut, bolt, expansion] : {std::array{60.0, 60.0, 11.5e-6},
                                             {90.0, 60.0, 11.5e-6},
                                             {150.0, 60.0, 11.5e-6},
                                             {150.0, 30.0, 11.5e-6},
                                             {150.0, 60.0, 23.5e-6}}) {
    CAPTURE(nut);
    CAPTURE(bolt);
    const ReleaseModel hot = heated(nut, bolt, expansion);
    // By hand: the difference in kelvin of steel; the factors 0.9 and 0.5 are those of 90 K.
    const double difference = nut * expansion / 11.5e-6 - bolt;
    const double power = std::min(1.5, difference / 90);
    CHECK(hot.thread_growth.median == near(2 * std::pow(0.9, power)));
    CHECK(hot.bearing_growth.median == near(2 * std::pow(0.9, power)));
    CHECK(hot.bond.median == near(8 * std::pow(0.5, power)));
    CHECK(hot.preload.median == near(60e3 - 0.5 * 11.5e-6 * 206e9 * 157e-6 * bolt));
    CHECK((difference > 0 ? hot.rust.median < rust : hot.rust.median == rust));
    rust = hot.rust.median;
    CHECK(rust >= 0.3 * 10);
  }
  // Of a bolt that would be hotter than its nut: it is heated through the nut, and no hotter.
  CHECK(heated(60, 200, 11.5e-6).preload.median == near(heated(60, 60, 11.5e-6).preload.median));
}

TEST_CASE("heat: three tenths of the rust's grip stay, however far the play opens") {
  ReleaseModel m;
  m.diameter = 16e-3;
  m.nut_diameter = 24e-3;
  m.rust_pressure = 1;  // Pa: any opening is more than enough
  CHECK(detail::rust_left(m, 150, 60) == near(0.3));
  CHECK(detail::rust_left(m, 60, 150) == 1);  // a bolt that is hotter than its nut sits tighter
}

TEST_CASE("after release: what is known of the fasteners is set in their history") {
  FreeJob job;
  job.diameter = Length(16e-3);
  job.pitch = Length(2e-3);
  job.yield_strength = Stress(640e6);
  job.rust = Rust::clean;
  const auto none = detail::history_of(job, {});
  for (const bool set : {none.fluid_left, none.rusted, none.heated, none.glowed, none.sheared, none.rounded,
                         none.past_yield, none.locking_element})
    CHECK_FALSE(set);
  job.rust = Rust::aged_dry;  // years in place, but no rust to see
  CHECK_FALSE(detail::history_of(job, {}).rusted);
  job.rust = Rust::rusted;
  CHECK(detail::history_of(job, {}).rusted);
  job.loosened = {{Neighbour::How::freed, Torque(80)}, {Neighbour::How::unmoved, Torque(80)}};
  CHECK_FALSE((detail::history_of(job, {}).sheared || detail::history_of(job, {}).rounded));
  job.loosened.push_back({Neighbour::How::sheared, Torque(120)});
  CHECK(detail::history_of(job, {}).sheared);
  CHECK_FALSE(detail::history_of(job, {}).rounded);
  job.loosened = {{Neighbour::How::rounded, Torque(90)}};
  CHECK(detail::history_of(job, {}).rounded);
  // 640 MPa on 156.7 mm2 are 100.3 kN.
  job.preload = Force(100.2e3);
  CHECK_FALSE(detail::history_of(job, {}).past_yield);
  job.preload = Force(100.4e3);
  CHECK(detail::history_of(job, {}).past_yield);
  AidUse heat{.aid = Aid::heat};
  heat.nut_rise.si = 504;
  CHECK(detail::history_of(job, {heat}).heated);
  CHECK_FALSE(detail::history_of(job, {heat}).glowed);
  heat.nut_rise.si = 506;  // 526 degrees Celsius; the Draper point is 525
  job.aids = {heat};
  CHECK(detail::history_of(job, {}).glowed);
  job.aids = {{.aid = Aid::fluid}};
  CHECK(detail::history_of(job, {}).fluid_left);
  CHECK_FALSE(detail::history_of(job, {}).heated);
  job.prevailing_torque = Torque(5);
  CHECK(detail::history_of(job, {}).locking_element);
  job.prevailing_torque = Torque(0);
  job.surroundings.adhesive = true;
  CHECK(detail::history_of(job, {}).locking_element);
  const auto says = [](ReleaseHistory past, const char* code, bool replace) {
    past.rusted = false;
    const AfterRelease advice = after_release(past);
    return advice.replace == replace && advice.notices.size() == 1 && std::string(advice.notices[0].code) == code;
  };
  CHECK(says({.fluid_left = true}, "fluid_left", false));
  CHECK(says({.heated = true}, "replace_heated", true));
  CHECK(says({.heated = true, .glowed = true}, "replace_glowed", true));
  CHECK(says({.sheared = true}, "replace_damaged", true));
  CHECK(says({.rounded = true}, "replace_damaged", true));
  CHECK(says({.past_yield = true}, "replace_past_yield", true));
  CHECK(says({.locking_element = true}, "replace_locking", false));
}

TEST_CASE("heat limits are hard rules with reasons") {
  HeatSurroundings around;
  CHECK(heat_limit(around).greatest_rise.si == near(405));
  around.reused = true;
  CHECK(heat_limit(around).greatest_rise.si == near(280));
  around.zinc_or_cadmium = true;
  CHECK(heat_limit(around).greatest_rise.si == near(180));
  CHECK(heat_limit(around).reasons.size() == 3);
  around.fire_or_burst = true;
  CHECK_FALSE(heat_limit(around).allowed);
  CHECK(heat_limit(around).greatest_rise.si == 0);
  around.adhesive = true;
  REQUIRE(heat_limit(around).reasons.size() == 1);  // the reason, and nothing that hides it
  CHECK(std::string(heat_limit(around).reasons[0].code) == "heat_forbidden");
}

}  // namespace heat_test
