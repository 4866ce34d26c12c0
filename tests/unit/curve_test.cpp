// The tightening curve: exact limits, convergence, energy, release, reuse, and what it refuses.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "tauten/joint/build.hpp"
#include "tauten/tightening/torque.hpp"
#include "tauten/turning/reuse.hpp"
#include "tauten/turning/turned_bolt.hpp"
#include "tauten/units.hpp"

namespace curve_test {

using namespace tauten;
using namespace tauten::literals;

namespace {

/// Relative comparison alone: the library's default adds 1 to the scale, which would let any two small SI numbers pass.
doctest::Approx about(double value, double relative = 1e-9) {
  return doctest::Approx(value).epsilon(relative).scale(0);
}

constexpr double pi_value = 3.14159265358979323846;

/// No hardening: the steel of the handbooks, for which limits are known in closed form.
const BoltSteel ideal{Stress(640e6), Stress(640e6), 0.5};
const BoltSteel class_8_8 = bolt_steel(Stress(640e6), Stress(800e6), 0.12);
const TurningFriction oiled{0.12, 0.12, Length(20e-3)};

TurnedBolt foot_bolt() {
  return turned_bolt(through_bolt({.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 80.0_mm},
                                  {{20.0_mm, 70.0_mm, material::grey_cast_iron}, {35.0_mm, 70.0_mm, material::steel}}));
}

/// Fully plastic section under tension and torsion that grow in proportion, x = twist R/(sqrt(3) strain): tension and
/// torque over their own limits. Hill, The Mathematical Theory of Plasticity, chapter IV, from memory.
double plastic_tension(double x) { return 2 * (std::sqrt(1 + x * x) - 1) / (x * x); }
double plastic_torque(double x) {
  const double w = std::sqrt(1 + x * x);
  return 3 * (w * w * w / 3 - w + 2.0 / 3) / (x * x * x);
}

/// Torque in the thread per newton: a wedge on a helix, flank angle in the section normal to the thread.
double helix_lever(double pitch, double d_2, double mu) {
  const double slope = std::atan(pitch / (std::acos(-1.0) * d_2));
  const double flank = std::atan(std::tan(std::acos(-1.0) / 6) * std::cos(slope));
  return d_2 / 2 * std::tan(slope + std::atan(mu / std::cos(flank)));
}

double balance(const TurningEnergy& e) { return (e.torque - e.friction - e.elastic - e.plastic) / e.torque; }

}  // namespace

TEST_CASE("section: pure tension and pure torsion") {
  const double radius = 7e-3;
  const double area = pi_value * radius * radius;
  RoundSection pulled(radius, ideal, 15);
  double force = 0;
  for (int i = 1; i <= 50; ++i) {
    force = pulled.respond(1e-4 * i, 0).force;
    pulled.keep();
  }
  CHECK(force == about(640e6 * area, 1e-9));

  // Elastic up to tau pi d^3/16, then T = 4/3 T_e (1 - (rho/R)^3/4), and 4/3 T_e in the end.
  const double shear = 640e6 / std::sqrt(3.0);
  const double first = shear * pi_value * radius * radius * radius / 2;
  const double modulus = 205e9 / 2.6;
  const double yield_twist = shear / (modulus * radius);
  RoundSection twisted(radius, ideal, 15);
  for (int i = 1; i <= 400; ++i) {
    const double twist = yield_twist * i / 20;
    const double torque = twisted.respond(0, twist).torque;
    twisted.keep();
    const double core = std::min(1.0, 20.0 / i);
    const double exact = i <= 20 ? first * i / 20 : 4.0 / 3 * first * (1 - core * core * core / 4);
    CHECK(torque == about(exact, 1e-3));
    if (i == 19) CHECK(twisted.surface_strain() == 0);
    if (i == 21) CHECK(twisted.surface_strain() > 0);
  }
}

TEST_CASE("section: tension and torsion together, fully plastic") {
  const double radius = 7e-3;
  const double full_force = 640e6 * pi_value * radius * radius;
  const double full_torque = 640e6 / std::sqrt(3.0) * 2 * pi_value / 3 * radius * radius * radius;
  for (double x : {0.3, 1.0, 3.0}) {
    RoundSection section(radius, ideal, 15);
    SectionLoad load;
    for (int i = 1; i <= 400; ++i) {
      load = section.respond(1e-4 * i, std::sqrt(3.0) * x * 1e-4 * i / radius);
      section.keep();
    }
    CHECK(load.force / full_force == about(plastic_tension(x), 1e-3));
    CHECK(load.torque / full_torque == about(plastic_torque(x), 1e-3));
    // The circle is a lower bound.
    const double n = load.force / full_force;
    const double m = load.torque / full_torque;
    CHECK(n * n + m * m >= 1 - 1e-3);
  }
}

TEST_CASE("section: the tangent is the slope") {
  RoundSection section(7e-3, class_8_8, 15);
  section.respond(0.003, 0.8);
  section.keep();
  const double h = 1e-8;
  const SectionLoad at = section.respond(0.0035, 1.1);
  const SectionLoad by_e = section.respond(0.0035 + h, 1.1);
  const SectionLoad by_k = section.respond(0.0035, 1.1 + 100 * h);
  CHECK(at.force_by_e == about((by_e.force - at.force) / h, 1e-3));
  CHECK(at.torque_by_e == about((by_e.torque - at.torque) / h, 1e-3));
  CHECK(at.force_by_k == about((by_k.force - at.force) / (100 * h), 1e-3));
  CHECK(at.torque_by_k == about((by_k.torque - at.torque) / (100 * h), 1e-3));
}

TEST_CASE("flow curve passes through the class figures") {
  for (const BoltSteel& steel : {class_8_8, bolt_steel(Stress(940e6), Stress(1040e6), 0.09)}) {
    const FlowCurve flow(steel);
    CHECK(flow.at(0.002).stress == about(steel.yield_strength.si, 1e-12));
    CHECK(flow.at(steel.uniform_elongation).stress == about(steel.tensile_strength.si, 1e-12));
    CHECK(std::fabs(flow.at(steel.uniform_elongation).slope) < 1);
    double last = 0;
    for (double p = 0; p < 1.2 * steel.uniform_elongation; p += 1e-4) {
      CHECK(flow.at(p).stress >= last);
      last = flow.at(p).stress;
      const double h = 1e-7;
      CHECK(flow.at(p).slope ==
            doctest::Approx((flow.at(p + h).stress - flow.at(p).stress) / h).epsilon(1e-3).scale(1e9));
    }
  }
}

TEST_CASE("flow curve: mild steel has a plateau, austenitic steel stretches far") {
  const BoltSteel mild = class_steel(property_class("5.6", 16.0_mm));
  const FlowCurve flow(mild);
  CHECK(flow.start() == about(300e6));
  CHECK(flow.at(0.001).stress == about(300e6));
  CHECK(flow.at(0.019).stress == about(300e6));
  CHECK(flow.at(0.019).slope == 0);
  CHECK(flow.at(0.03).stress > 305e6);
  CHECK(flow.at(mild.uniform_elongation).stress == about(500e6, 1e-12));
  double last = 0;
  for (double p = 0; p < 1.2 * mild.uniform_elongation; p += 1e-4) {
    CHECK(flow.at(p).stress >= last);
    last = flow.at(p).stress;
  }
  // ISO 898-1:1999, Table 3, from memory: 14, 10 and 8 % after fracture; half of it uniform.
  CHECK(class_steel(property_class("4.8", 16.0_mm)).uniform_elongation == about(0.07));
  CHECK(class_steel(property_class("5.8", 16.0_mm)).uniform_elongation == about(0.05));
  CHECK(class_steel(property_class("6.8", 16.0_mm)).uniform_elongation == about(0.04));
  CHECK(class_steel(property_class("8.8", 16.0_mm)).yield_plateau == 0);
  CHECK(class_steel(property_class("A2-50", 16.0_mm)).uniform_elongation >= 0.3);
  for (const char* name :
       {"3.6", "4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9", "A2-50", "A2-70", "A4-80"}) {
    CAPTURE(name);
    const BoltSteel steel = class_steel(property_class(name, 16.0_mm));
    REQUIRE(try_flow_curve(steel));
    CHECK(FlowCurve(steel).at(0.002).stress == about(steel.yield_strength.si, 1e-9));
    const Outcome<Curve> drawn = try_tightening_curve(foot_bolt(), steel, oiled);
    REQUIRE(drawn);
    CHECK(drawn->end == CurveEnd::uniform_elongation);
    CHECK(drawn->energy.torque == about(drawn->energy.friction + drawn->energy.elastic + drawn->energy.plastic, 2e-3));
  }
}

TEST_CASE("curve: elastic slope, onset and plateau") {
  const TurnedBolt bolt = foot_bolt();
  const Curve curve = tightening_curve(bolt, ideal, oiled, {.end_angle = Angle(6), .points = 4000});
  const double lever = helix_lever(2e-3, bolt.pitch_diameter.si, 0.12);

  // Elastic: stretch and twist by the formulas.
  const CurvePoint& early = curve.points[200];
  REQUIRE(early.plastic_strain == 0);
  const double angle =
      angle_from_preload.si(early.preload.si, bolt.bolt_resilience.si, bolt.plate_resilience.si, 2e-3) +
      early.preload.si * lever * bolt.twist_per_torque;
  CHECK(early.angle.si == about(angle, 1e-6));
  CHECK(early.torque.si == about(early.preload.si * (lever + 0.12 * 20e-3 / 2)));

  // Onset: elastic torsion factor. The first point with plastic strain brackets it.
  const double d_s = bolt.section_diameter.si;
  const double onset = 640e6 * pi_value / 4 * d_s * d_s / std::sqrt(1 + 3 * std::pow(4 * lever / d_s, 2));
  for (std::size_t i = 1; i < curve.points.size(); ++i)
    if (curve.points[i].plastic_strain > 0) {
      CHECK(curve.points[i].preload.si >= onset * (1 - 1e-3));
      CHECK(curve.points[i - 1].preload.si <= onset * (1 + 1e-3));
      CHECK(curve.points[i].preload.si - curve.points[i - 1].preload.si < 3e-3 * onset);
      break;
    }
  CHECK(curve.first_yield.preload.si == about(onset));

  // Plateau: the x at which torque over force is the thread lever.
  const double full_force = 640e6 * pi_value / 4 * bolt.section_diameter.si * bolt.section_diameter.si;
  const double full_torque = full_force * bolt.section_diameter.si / 3 / std::sqrt(3.0);
  double low = 1e-3;
  double high = 100;
  for (int i = 0; i < 100; ++i) {
    const double x = (low + high) / 2;
    (plastic_torque(x) * full_torque < lever * plastic_tension(x) * full_force ? low : high) = x;
  }
  const double plateau = plastic_tension(low) * full_force;
  CHECK(curve.points.back().preload.si == about(plateau, 1e-3));
  // The handbook formula takes the circle for the interaction: a lower bound, 1 to 2 % below.
  const double circle = assembly_preload.si(640e6, 1.0, 2e-3, bolt.pitch_diameter.si, bolt.section_diameter.si, 0.12);
  CHECK(curve.points.back().preload.si > circle);
  CHECK(curve.points.back().preload.si < 1.03 * circle);
}

TEST_CASE("curve: second order in rings and in steps") {
  const TurnedBolt bolt = foot_bolt();
  const auto end = [&](int rings, int points) {
    return tightening_curve(bolt, class_8_8, oiled, {.end_angle = Angle(1.0), .points = points, .rings = rings});
  };
  const double exact = end(255, 400).points.back().preload.si;
  const double coarse = std::fabs(end(7, 400).points.back().preload.si - exact);
  const double fine = std::fabs(end(31, 400).points.back().preload.si - exact);
  MESSAGE("order in rings " << std::log(coarse / fine) / std::log(31.0 / 7));
  CHECK(coarse / exact < 1e-3);
  CHECK(std::log(coarse / fine) / std::log(31.0 / 7) > 1.5);

  const double rough = std::fabs(balance(end(15, 101).energy));
  const double smooth = std::fabs(balance(end(15, 401).energy));
  MESSAGE("order in steps " << std::log(rough / smooth) / std::log(4.0) << ", energy balance " << rough
                            << " at 101 points");
  CHECK(std::log(rough / smooth) / std::log(4.0) > 1.5);
}

TEST_CASE("curve: the work of the torque is accounted for") {
  for (const BoltSteel& steel : {ideal, class_8_8, bolt_steel(Stress(1100e6), Stress(1220e6), 0.08)})
    for (double mu : {0.0, 0.08, 0.2, 0.4}) {
      const Curve curve = tightening_curve(foot_bolt(), steel, {mu, mu, Length(20e-3)}, {.end_angle = Angle(2)});
      CHECK(std::fabs(balance(curve.energy)) < 1e-3);
      CHECK(curve.energy.plastic > 0);
    }
}

TEST_CASE("curve: friction decides") {
  double yield = 1e9;
  for (double mu : {0.06, 0.10, 0.14, 0.20, 0.30}) {
    const Curve curve = tightening_curve(foot_bolt(), class_8_8, {mu, mu, Length(20e-3)});
    CHECK(curve.has_yield_point);
    CHECK(curve.end == CurveEnd::uniform_elongation);
    CHECK(curve.yield_point.preload.si < yield);
    CHECK(curve.first_yield.preload.si < curve.yield_point.preload.si);
    yield = curve.yield_point.preload.si;
    for (std::size_t i = 1; i < curve.points.size(); ++i) {
      CHECK(curve.points[i].angle > curve.points[i - 1].angle);
      CHECK(curve.points[i].preload.si >= curve.points[i - 1].preload.si * (1 - 1e-6));
      CHECK(curve.points[i].plastic_strain >= curve.points[i - 1].plastic_strain);
    }
    CHECK(curve.points.back().plastic_strain == about(0.06, 0.01));
    CHECK(curve.points.back().tension.si < class_8_8.tensile_strength.si);
  }
  // At a torque, more friction never raises the preload, past yield neither.
  for (const double torque : {80.0, 120.0, 160.0}) {
    double last = 1e9;
    for (double mu : {0.06, 0.08, 0.10, 0.14, 0.20, 0.30}) {
      const Curve curve = tightening_curve(foot_bolt(), class_8_8, {mu, mu, Length(20e-3)});
      if (curve.points.back().torque.si < torque) continue;  // the bolt does not bear it
      std::size_t i = 1;
      while (curve.points[i].torque.si < torque) ++i;
      const CurvePoint at = detail::between(
          curve.points[i - 1], curve.points[i],
          (torque - curve.points[i - 1].torque.si) / (curve.points[i].torque.si - curve.points[i - 1].torque.si));
      CHECK(at.preload.si < last);
      last = at.preload.si;
    }
  }
  const Band<Curve> band =
      tightening_curves(foot_bolt(), class_8_8, {{0.08, 0.08, 20.0_mm}, {0.12, 0.12, 20.0_mm}, {0.16, 0.16, 20.0_mm}});
  CHECK(band.low.yield_point.preload > band.nominal.yield_point.preload);
  CHECK(band.nominal.yield_point.preload > band.high.yield_point.preload);
}

TEST_CASE("curve: the angle begins at snug") {
  const Curve whole = tightening_curve(foot_bolt(), class_8_8, oiled, {.end_angle = Angle(1.2)});
  const Curve snug =
      tightening_curve(foot_bolt(), class_8_8, oiled, {.snug_torque = 40.0_N_m, .end_angle = Angle(0.8)});
  CHECK(snug.points.front().angle.si == 0);
  CHECK(snug.points.front().torque.si == about(40, 1e-6));
  CHECK(snug.first_yield.preload.si == about(whole.first_yield.preload.si));
  CHECK(snug.first_yield.angle.si < whole.first_yield.angle.si);
}

TEST_CASE("turning: release keeps the preload, unloading and reloading meet again") {
  const TurnedBolt bolt = foot_bolt();
  Turning turning(bolt, class_8_8, oiled);
  for (int i = 1; i <= 100; ++i) REQUIRE(turning.turn_to(0.012 * i));
  const double preload = turning.preload();
  const double torque = turning.thread_torque();
  const double used = turning.section().surface_strain();
  const double stretch = turning.lasting_stretch();
  REQUIRE(used > 0.001);

  REQUIRE(turning.spring_back(0.5));
  CHECK(turning.preload() == about(preload, 1e-6));
  CHECK(turning.thread_torque() == about(torque / 2, 1e-6));
  CHECK(turning.section().surface_strain() == about(used));

  REQUIRE(turning.loosen());
  CHECK(std::fabs(turning.preload()) < 1e-6 * preload);
  CHECK(turning.lasting_stretch() == about(stretch, 1e-6));

  // Reloading is elastic almost up to the old preload, then follows the curve of a bolt turned in one go.
  const double elastic = turning.elastic_angle(preload);
  REQUIRE(turning.turn_to(0.9 * elastic));
  CHECK(turning.preload() == about(0.9 * preload, 2e-3));
  CHECK(turning.section().surface_strain() == about(used, 1e-3));
  for (int i = 1; i <= 100; ++i) REQUIRE(turning.turn_to(elastic * (0.9 + 0.005 * i)));
  Turning in_one_go(bolt, class_8_8, oiled);
  double at = 0;
  while (in_one_go.section().mean_strain() < turning.section().mean_strain()) REQUIRE(in_one_go.turn_to(at += 0.004));
  CHECK(in_one_go.preload() == about(turning.preload(), 2e-3));
}

TEST_CASE("curve: all lengths scaled alike give the same angles") {
  TurnedBolt bolt = foot_bolt();
  const Curve one = tightening_curve(bolt, class_8_8, oiled, {.snug_torque = 40.0_N_m});
  const double s = 2.5;
  bolt.pitch = Length(s * bolt.pitch.si);
  bolt.pitch_diameter = Length(s * bolt.pitch_diameter.si);
  bolt.section_diameter = Length(s * bolt.section_diameter.si);
  bolt.section_length = Length(s * bolt.section_length.si);
  bolt.bolt_resilience = Quantity<Dim::compliance>(bolt.bolt_resilience.si / s);
  bolt.plate_resilience = Quantity<Dim::compliance>(bolt.plate_resilience.si / s);
  bolt.twist_per_torque /= s * s * s;
  const Curve two =
      tightening_curve(bolt, class_8_8, {0.12, 0.12, Length(s * 20e-3)}, {.snug_torque = Torque(40 * s * s * s)});
  CHECK(two.points.back().angle.si == about(one.points.back().angle.si, 1e-6));
  CHECK(two.points.back().preload.si == about(s * s * one.points.back().preload.si, 1e-6));
  CHECK(two.yield_point.torque.si == about(s * s * s * one.yield_point.torque.si, 1e-4));
}

TEST_CASE("a reduced shank is the section that yields") {
  const std::vector<Layer> layers{{55.0_mm, 70.0_mm, material::steel}};
  const TurnedBolt full = turned_bolt(through_bolt({.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 80.0_mm}, layers));
  const TurnedBolt reduced = turned_bolt(
      through_bolt({.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 80.0_mm, .shank_diameter = 12.0_mm}, layers));
  CHECK(reduced.section_diameter.si == about(12e-3));
  CHECK(reduced.section_length.si == about(42e-3));
  CHECK(reduced.bolt_resilience > full.bolt_resilience);
  // 13 mm of free thread and half of 8 mm in the nut flow: the nut's first turns count.
  CHECK(full.section_length.si == about(17e-3));
  // Longer plastic length: much further to the end of uniform elongation.
  CHECK(tightening_curve(reduced, class_8_8, oiled).points.back().angle.si >
        2 * 13.0 / 17 * tightening_curve(full, class_8_8, oiled).points.back().angle.si);
}

TEST_CASE("reuse is counted") {
  const TurnedBolt bolt = foot_bolt();
  const Reuse far = reuse(bolt, class_8_8, oiled, {.snug_torque = 60.0_N_m, .angle = 120.0_deg});
  CHECK(far.single_use);
  const Reuse elastic = reuse(bolt, class_8_8, oiled, {.snug_torque = 20.0_N_m, .angle = 15.0_deg, .at_most = 5});
  CHECK(elastic.unlimited);
  CHECK(elastic.uses.back().plastic_strain == 0);
  const Reuse yield = reuse(bolt, class_8_8, oiled, {});
  REQUIRE(yield.uses.size() > 2);
  for (std::size_t i = 1; i < yield.uses.size(); ++i) {
    CHECK(yield.uses[i].plastic_strain > yield.uses[i - 1].plastic_strain);
    CHECK(yield.uses[i].preload.si > yield.uses[i - 1].preload.si * 0.999);
  }
  CHECK(yield.uses.size() >= reuse(bolt, class_8_8, oiled, {.slope_share = 0.3}).uses.size());
}

TEST_CASE("curve: wrong input is refused") {
  const auto argument = [](const TurnedBolt& bolt, const BoltSteel& steel, const TurningFriction& friction,
                           const CurveOptions& options) {
    const Outcome<Curve> curve = try_tightening_curve(bolt, steel, friction, options);
    return curve ? std::string("none") : std::string(curve.error().argument());
  };
  const TurnedBolt good = foot_bolt();
  CHECK(argument(good, class_8_8, oiled, {}) == "none");
  CHECK(argument(good, class_8_8, oiled, {.snug_torque = 500.0_N_m}) == "snug_torque");
  CHECK(argument(good, class_8_8, oiled, {.snug_torque = Torque(-1)}) == "snug_torque");
  CHECK(argument(good, class_8_8, oiled, {.points = 1}) == "points");
  CHECK(argument(good, class_8_8, oiled, {.rings = 0}) == "rings");
  CHECK(argument(good, class_8_8, {-0.1, 0.1, 20.0_mm}, {}) == "thread_friction");
  CHECK(argument(good, class_8_8, {0.1, std::nan(""), 20.0_mm}, {}) == "bearing_friction");
  CHECK(argument(good, bolt_steel(Stress(0), Stress(800e6), 0.12), oiled, {}) == "yield_strength");
  CHECK(argument(good, bolt_steel(Stress(900e6), Stress(800e6), 0.12), oiled, {}) == "tensile_strength");
  BoltSteel steel = class_8_8;
  steel.elastic_modulus = Stress(-1);
  CHECK(argument(good, steel, oiled, {}) == "elastic_modulus");
  TurnedBolt bolt = good;
  bolt.section_length = Length(0);
  CHECK(argument(bolt, class_8_8, oiled, {}) == "section_length");
  bolt = good;
  bolt.bolt_resilience = Quantity<Dim::compliance>(1e-12);
  bolt.plate_resilience = Quantity<Dim::compliance>(0);
  CHECK(argument(bolt, class_8_8, oiled, {}) == "bolt_resilience");
}

}  // namespace curve_test
