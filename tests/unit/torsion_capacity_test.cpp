#include "tauten/loosening/torsion_capacity.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "near.hpp"

namespace torsion_capacity_test {

using namespace tauten;

TEST_CASE("partly plastic torsion: integration of the shear stress over the radius") {
  const double tau = 400e6, r = 5e-3;
  for (double share = 0; share <= 1; share += 0.125) {
    const double core = share * r;
    double sum = 0;
    const int n = 40000;
    for (int i = 0; i < n; ++i) {
      const double x = (i + 0.5) * r / n;
      const double stress = x < core ? tau * x / core : tau;
      sum += stress * 2 * 3.14159265358979323846 * x * x * r / n;
    }
    CHECK(partly_plastic_torque.si(tau, 2 * r, 2 * core) == near(sum).epsilon(1e-7));
  }
  CHECK(partly_plastic_torque.si(tau, 2 * r, 2 * r) == near(torsion_yield_torque.si(tau, 2 * r)));
  CHECK(partly_plastic_torque.si(tau, 2 * r, 0) == near(torsion_plastic_torque.si(tau, 2 * r)));
}

TEST_CASE("corroded section: the same as a thinner bolt") {
  for (double x = 0; x < 3e-3; x += 0.2e-3)
    CHECK(corroded_breaking_torque.si(0.84, 800e6, 8.16e-3, x) ==
          near(breaking_torque.si(0.84, 800e6, 8.16e-3 - 2 * x)));
  CHECK(std::isnan(corroded_breaking_torque.si(0.84, 800e6, 8.16e-3, 4.1e-3)));  // nothing left
}

TEST_CASE("shearing torque at the head: what the shank takes, and what rubs under the head") {
  CHECK(shearing_torque_at_head.si(70, 30e3, 50e3, 0.14, 2, 13e-3) == near(56 + 30e3 * 2 * 0.14 * 6.5e-3));
  CHECK(shearing_torque_at_head.si(70, 0, 50e3, 0.14, 2, 13e-3) == 70);  // nothing presses on the face
  CHECK(std::isnan(shearing_torque_at_head.si(70, 51e3, 50e3, 0.14, 2, 13e-3)));
}

TEST_CASE("torsion beside tension: ends, a point of the circle, and below the elastic-plastic truth") {
  CHECK(breaking_torque_under_tension.si(70, 0, 50e3) == 70);
  CHECK(breaking_torque_under_tension.si(70, 50e3, 50e3) == 0);
  CHECK(breaking_torque_under_tension.si(70, 30e3, 50e3) == near(56));  // 3, 4, 5
  CHECK(std::isnan(breaking_torque_under_tension.si(70, 51e3, 50e3)));
  // Fully plastic section under a strain e and a twist: sigma = Y e/q, tau = Y g r/(3 q), q^2 = e^2 + (g r)^2/3.
  const double Y = 640e6, r = 4e-3, pi = 3.14159265358979323846;
  const double F_p = Y * pi * r * r, T_p = Y / std::sqrt(3.0) * 2 * pi * r * r * r / 3;
  for (double e : {0.05, 0.2, 0.5, 1.0, 2.0, 5.0}) {
    double F = 0, T = 0;
    const int n = 20000;
    for (int i = 0; i < n; ++i) {
      const double x = (i + 0.5) * r / n, g = x / r, q = std::sqrt(e * e + g * g / 3);
      F += Y * e / q * 2 * pi * x * r / n;
      T += Y * g / (3 * q) * 2 * pi * x * x * r / n;
    }
    const double bound = breaking_torque_under_tension.si(T_p, F, F_p);
    CHECK(bound <= T * 1.0001);
    CHECK(bound > 0.9 * T);
  }
}

}  // namespace torsion_capacity_test
