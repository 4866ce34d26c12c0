// Stiffness, load and loss formulas against second formulations, over their ranges.
#include <doctest/doctest.h>

#include <cmath>

#include "tauten/joint/cone.hpp"
#include "tauten/joint/cone_angle.hpp"
#include "tauten/joint/load.hpp"
#include "tauten/joint/margin.hpp"
#include "tauten/joint/segment.hpp"
#include "tauten/joint/stiffness.hpp"
#include "tauten/tightening/angle.hpp"
#include "tauten/tightening/loss.hpp"

namespace joint_formulas_test {

using namespace tauten;

namespace {

constexpr double degree = 3.14159265358979323846 / 180;

bool close(double a, double b, double relative = 1e-12) { return std::fabs(a - b) <= relative * std::fabs(b); }

/// Five-point Gauss rule on `parts` pieces: another way to the same integral.
template <class F>
double integral(F f, double from, double to, int parts = 200) {
  const double x[] = {-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640};
  const double w[] = {0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665,
                      0.2369268850561891};
  double sum = 0;
  for (int i = 0; i < parts; ++i)
    for (int k = 0; k < 5; ++k) {
      const double half = (to - from) / (2 * parts);
      sum += w[k] * half * f(from + half * (2 * i + 1 + x[k]));
    }
  return sum;
}

}  // namespace

TEST_CASE("a cone is the integral over its cross-sections") {
  for (double hole : {5.3e-3, 11e-3, 33e-3})
    for (double face : {1.2, 1.5, 2.2})
      for (double t : {0.1, 0.7, 3.0, 10.0})
        for (double angle : {20.0, 30.0, 45.0}) {
          const double tangent = std::tan(angle * degree);
          const double expected = integral(
              [&](double x) {
                const double outer = hole * face + 2 * x * tangent;
                return 4 / (205e9 * 3.14159265358979323846 * (outer * outer - hole * hole));
              },
              0, t * hole);
          CHECK(close(cone_resilience.si(t * hole, hole, face * hole, angle * degree, 205e9), expected, 1e-9));
          CHECK(close(frustum_stiffness.si(t * hole, hole, face * hole, angle * degree, 205e9) * expected, 1, 1e-9));
        }
}

TEST_CASE("a cone that hardly widens is a sleeve") {
  const double cone = cone_resilience.si(0.02, 0.011, 0.016, 0.01, 205e9);
  const double sleeve = sleeve_resilience.si(0.02, 0.011, 0.016, 205e9);
  CHECK(cone < sleeve);
  CHECK(close(cone, sleeve, 0.05));
  // A foil: the quotient of the textbook is one but for the last five digits of a double.
  const double foil = 1e-12;
  CHECK(
      close(cone_resilience.si(foil, 0.011, 0.016, 0.5, 205e9), sleeve_resilience.si(foil, 0.011, 0.016, 205e9), 1e-9));
}

TEST_CASE("shank twist by the polar moment of area") {
  const double d = 0.0135;
  const double polar = integral([](double r) { return 2 * 3.14159265358979323846 * r * r * r; }, 0, d / 2);
  CHECK(close(shank_twist.si(50, 0.08, d, 79e9), 50 * 0.08 / (79e9 * polar), 1e-12));
}

TEST_CASE("clamp load is gone at the separation load, and factors agree with each other") {
  for (double preload : {1e3, 40e3, 900e3})
    for (double c : {0.05, 0.2, 0.6}) {
      const double load = separation_load.si(preload, c);
      CHECK(std::fabs(service_clamp_load.si(preload, c, load)) < 1e-9 * preload);
      CHECK(close(service_bolt_load.si(preload, c, load * (1 - 1e-9)), load, 1e-8));
      CHECK(close(separation_factor.si(preload, c, load / 3), 3));
      // At the overloaded working load the bolt stands at its proof load, and the parts touch: (1 - C)(1 + C/2) < 1.
      const double area = 157e-6;
      const double proof = (1 + c / 2) * preload / area;
      const double grown = overload_factor.si(proof, area, c, 0.1 * preload, preload) * 0.1 * preload;
      CHECK(close(yield_factor.si(proof, area, c, grown, preload), 1));
      CHECK(close(service_stress.si(preload, c, grown, area), proof));
    }
}

TEST_CASE("once the parts have parted, what holds of a clamped joint has no value") {
  // 10 kN of preload, C = 0.2: the parts part at 10/0.8 = 12.5 kN. The bolt then carries 12.5 kN, and beyond all of the
  // working load: at 20 kN these are 20 kN, not 10 + 0.2 x 20 = 14.
  CHECK(close(service_bolt_load.si(10e3, 0.2, 12.4e3), 12.48e3));
  CHECK(std::isnan(service_bolt_load.si(10e3, 0.2, 12.6e3)));
  CHECK(std::isnan(service_bolt_load.si(10e3, 0.2, 20e3)));
  CHECK(service_bolt_load.check(10e3, 0.2, 20e3).status == Status::impossible);
  CHECK(close(service_stress.si(10e3, 0.2, 12.4e3, 100e-6), 124.8e6));
  CHECK(std::isnan(service_stress.si(10e3, 0.2, 12.6e3, 100e-6)));
  CHECK(close(yield_factor.si(600e6, 100e-6, 0.2, 12.4e3, 10e3), 60 / 12.48));
  CHECK(std::isnan(yield_factor.si(600e6, 100e-6, 0.2, 12.6e3, 10e3)));
  // A proof load of 12.4 kN is reached while they touch, at (12.4 - 10)/0.2 = 12 kN; one of 12.6 kN after they parted.
  CHECK(close(overload_factor.si(124e6, 100e-6, 0.2, 1e3, 10e3), 12));
  CHECK(std::isnan(overload_factor.si(126e6, 100e-6, 0.2, 1e3, 10e3)));
  // What presses the parts together never parts them.
  CHECK(close(service_bolt_load.si(10e3, 0.2, -20e3), 6e3));
}

TEST_CASE("stiffness and resilience tell the same share") {
  for (double bolt : {1e-9, 3e-9})
    for (double plates : {0.2e-9, 2e-9}) {
      CHECK(close(load_factor.si(1, bolt, plates), joint_constant.si(1 / bolt, 1 / plates)));
      CHECK(close(load_factor.si(0.5, bolt, plates), joint_constant.si(1 / bolt, 1 / plates) / 2));
    }
  CHECK(close(layer_stiffness.si(2e9, 3e9, 1e30, 1e30), 1.2e9));
  CHECK(close(two_area_stiffness.si(113e-6, 84.3e-6, 0.03, 0.015, 207e9),
              1 / (segment_resilience.si(0.03, 113e-6, 207e9) + segment_resilience.si(0.015, 84.3e-6, 207e9))));
}

TEST_CASE("angle and preload are inverses") {
  for (double preload : {-5e3, 0.0, 1e3, 250e3})
    for (double bolt : {0.3e-9, 5e-9})
      for (double plates : {0.0, 0.4e-9, 4e-9})
        for (double pitch : {0.5e-3, 2e-3, 4e-3}) {
          const double angle = angle_from_preload.si(preload, bolt, plates, pitch);
          CHECK(std::fabs(preload_from_angle.si(angle, bolt, plates, pitch) - preload) <= 1e-12 * std::fabs(preload));
        }
  // One full turn moves the nut by one pitch.
  CHECK(close(preload_from_angle.si(360 * degree, 3e-9, 1e-9, 2e-3), 2e-3 / 4e-9));
}

TEST_CASE("the joint rate is nine tenths of the angle of the whole torque") {
  const double lever = 2.1e-3;
  const double all = angle_from_preload.si(100 / lever, 2e-9, 0.5e-9, 1.75e-3);
  const double tenth = angle_from_preload.si(10 / lever, 2e-9, 0.5e-9, 1.75e-3);
  CHECK(close(joint_rate_angle.si(100, lever, 2e-9, 0.5e-9, 1.75e-3), all - tenth));
}

TEST_CASE("stiffer parts never lower the preload at an angle") {
  double last = 0;
  for (double plates = 4e-9; plates > 1e-12; plates /= 2) {
    const double preload = preload_from_angle.si(1, 2e-9, plates, 1.5e-3);
    CHECK(preload > last);
    last = preload;
  }
}

TEST_CASE("losses") {
  CHECK(close(embedding_loss.si(11e-6, 3e-9, 1e-9), 2750));
  // A steel bolt in aluminium gains when both warm up.
  CHECK(thermal_loss.si(0.05, 11.5e-6, 80, 23.5e-6, 80, 3e-9, 1e-9) < 0);
  CHECK(close(thermal_loss.si(0.05, 11.5e-6, 80, 11.5e-6, 20, 3e-9, 1e-9), 0.05 * 11.5e-6 * 60 / 4e-9));
}

TEST_CASE("the cone widens with slenderness and width") {
  double last = 0;
  for (double grip : {5e-3, 20e-3, 60e-3, 200e-3}) {
    const double angle = cone_angle_through.si(grip, 22e-3, 60e-3);
    CHECK(angle > last);
    last = angle;
  }
  CHECK(cone_angle_through.si(40e-3, 20e-3, 60e-3) > cone_angle_through.si(40e-3, 20e-3, 30e-3));
  CHECK(cone_angle_tapped.si(40e-3, 20e-3, 60e-3) > cone_angle_tapped.si(40e-3, 20e-3, 30e-3));
  // At l_K = 2 d_w and D_A = d_w both logarithms vanish.
  CHECK(close(std::tan(cone_angle_through.si(40e-3, 20e-3, 20e-3)), 0.362));
  CHECK(close(std::tan(cone_angle_tapped.si(20e-3, 20e-3, 20e-3)), 0.348));
}

TEST_CASE("outside the domain there is no number") {
  CHECK(std::isnan(segment_resilience.si(0.02, 0.0, 205e9)));
  CHECK(std::isnan(segment_resilience.si(0.02, 80e-6, -205e9)));
  CHECK(std::isnan(cone_resilience.si(0.02, 0.011, 0.010, 0.5, 205e9)));  // face inside the hole
  CHECK(std::isnan(angle_from_preload.si(1e3, 1e-9, 1e-9, 0.0)));
  CHECK(std::isnan(overload_factor.si(600e6, 84e-6, 0.2, 1e3, 60e3)));  // preload above the proof load
}

}  // namespace joint_formulas_test
