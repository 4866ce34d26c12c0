#include "tauten/loosening/breakaway.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tauten/loosening/bond.hpp"
#include "tauten/loosening/rust.hpp"
#include "tauten/tightening/loosening_torque.hpp"

#include "near.hpp"

namespace breakaway_test {

using namespace tauten;

TEST_CASE("breakaway torque: a clean joint without extras is the loosening torque") {
  for (double mu = 0.02; mu < 0.5; mu += 0.03)
    for (double F : {0.0, 1e3, 80e3}) {
      const double clean = loosening_torque.si(F, 1.75e-3, 10.86e-3, mu, 0.13, 15e-3);
      CHECK(breakaway_torque.si(F, 1.75e-3, 10.86e-3, mu, 0.13, 15e-3, 1, 1, 0, 0, 0) == near(clean));
      CHECK(breakaway_torque.si(F, 1.75e-3, 10.86e-3, mu, 0.13, 15e-3, 1, 1, 3, 4, 5) == near(clean + 12));
      // A factor on friction is a joint with that friction.
      CHECK(breakaway_torque.si(F, 1.75e-3, 10.86e-3, mu, 0.13, 15e-3, 2.5, 1.5, 0, 0, 0) ==
            near(loosening_torque.si(F, 1.75e-3, 10.86e-3, 2.5 * mu, 1.5 * 0.13, 15e-3)));
    }
}

TEST_CASE("breakaway torque: no preload and a clean thread need no torque") {
  CHECK(breakaway_torque.si(0, 1.5e-3, 9.026e-3, 0.14, 0.14, 13e-3, 1, 1, 0, 0, 0) == 0);
}

TEST_CASE("bond torque: the sum over small rings of the flank area") {
  const double tau = 9e6, k = 1.25, d_2 = 9.026e-3, L = 8e-3;
  double sum = 0;
  const int rings = 1000;
  for (int i = 0; i < rings; ++i) {
    const double area =
        k * 3.14159265358979323846 * d_2 * L / rings;  // of one ring of the cylinder, grown to the flanks
    sum += tau * area * d_2 / 2;
  }
  CHECK(bond_torque.si(tau, k, d_2, L) == near(sum));
  CHECK(rust_torque.si(tau / 0.3, 0.3, k, d_2, L) == near(sum));
  CHECK(std::isnan(bond_torque.si(-1.0, k, d_2, L)));
}

TEST_CASE("restart torque falls with the stretch") {
  CHECK(restart_torque.si(150, 1.5e-3, 1.5e-3) == near(150));
  CHECK(restart_torque.si(150, 1.5e-3, 0) == 0);
}

TEST_CASE("rust: power law of metal loss, growth") {
  for (double t = 0.5; t < 60; t *= 1.7)
    CHECK(metal_loss.si(50e-6, t) == near(50e-6 * std::pow(t, 0.523)).epsilon(1e-12));
  CHECK(metal_loss.si(50e-6, 1) == near(50e-6));
  CHECK(rust_growth.si(100e-6, 2.1) == near(110e-6));
}

TEST_CASE("rust pressure: the general press fit with any Poisson ratio") {
  const double E = 206e9, u = 4e-6;
  for (double nu : {0.0, 0.3, 0.45})
    for (double ratio = 1.2; ratio < 6; ratio += 0.4) {
      const double c = 4.5e-3, b = c * ratio;  // radius of the fit, radius of the ring
      const double ring = ((b * b + c * c) / (b * b - c * c) + nu) / E, shaft = (1 - nu) / E;
      CHECK(rust_pressure.si(u, E, 2 * c, 2 * b) == near(u / (c * (ring + shaft))));
    }
  CHECK(std::isnan(rust_pressure.si(u, E, 16e-3, 9e-3)));  // a ring inside its shaft
}

TEST_CASE("rust pressure: the displacement field of ring and shaft (Lame), solved for a radial interference") {
  const double E = 206e9, nu = 0.3, u = 3e-6;
  for (double ratio : {1.3, 1.6, 2.5, 8.0}) {
    const double c = 7.35e-3, b = c * ratio;
    // Ring: A r + B/r, shaft: S r. A free outer face gives B = A b^2 (1 + nu)/(1 - nu).
    const auto radial_stress = [&](double A, double B, double r) {
      return E / (1 - nu * nu) * ((1 + nu) * A - (1 - nu) * B / (r * r));
    };
    // With A = 1 both follow; then the size comes from the step of u between the two faces at r = c.
    const double B = b * b * (1 + nu) / (1 - nu), S = radial_stress(1, B, c) * (1 - nu) / E;
    const double size = u / (c + B / c - S * c);
    CHECK(std::fabs(radial_stress(size, size * B, b)) < 1e-6 * std::fabs(radial_stress(size, size * B, c)));
    CHECK(rust_pressure.si(u, E, 2 * c, 2 * b) == near(-radial_stress(size, size * B, c)));
  }
}

TEST_CASE("rust on leaning flanks: a grown ridge pushes its groove outward by twice the growth") {
  // Section through the axis: the ridge of the bolt is as wide as |z| <= 1 - r tan 30, the groove lies `play` outside,
  // square to the flank. Points of the flank are moved out along the normal, then the groove is lifted until all fit.
  const double tan30 = std::tan(std::acos(-1.0) / 6), length = std::hypot(1, tan30);
  for (double play : {0.0, 0.01})
    for (double growth : {0.012, 0.02, 0.05}) {
      double low = 0, high = 1;
      for (int i = 0; i < 60; ++i) {
        const double lift = (low + high) / 2;
        bool fits = true;
        for (double r = 0; r < 1; r += 0.1) {
          const double z = 1 - r * tan30 + growth / length, outward = r + growth * tan30 / length;
          fits = fits && z <= 1 + play * length - (outward - lift) * tan30 + 1e-12;
        }
        (fits ? high : low) = lift;
      }
      CHECK(rust_interference.si(growth, play) == near(low).epsilon(1e-9));
    }
  CHECK(rust_interference.si(0, 0.01) < 0);  // room left
}

TEST_CASE("pressure on leaning flanks: its radial part, summed over the profile, is the pressure on the cylinder") {
  const double P = 1.5, h = 0.54 * P, pi = std::acos(-1.0), pressure = 7e6;
  double outward = 0, area = 0;
  const int pieces = 1000;
  for (int side = 0; side < 2; ++side)
    for (int i = 0; i < pieces; ++i) {
      const double piece = h / pieces / std::cos(pi / 6);
      area += piece;
      outward += pressure * piece * std::sin(pi / 6);
    }
  CHECK(flank_pressure.si(outward / P, area / P) == near(pressure));
  CHECK(area / P == near(1.25).epsilon(0.005));  // the flank factor of both flanks
}

}  // namespace breakaway_test
