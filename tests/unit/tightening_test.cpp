#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <random>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "sample.hpp"
#include "second_way.hpp"
#include "tauten/formulas.hpp"

#include "near.hpp"

namespace tightening_test {

using namespace tauten;
namespace by = second_way;

namespace {

doctest::Approx about(double x, double allow = 1e-12) { return doctest::Approx(x).epsilon(allow).scale(1e-30); }

// Coarse and fine threads from M1.6 to M64 with their basic dimensions as ISO 724 and DIN 13-1 print them, and the
// stress area as ISO 898-1 prints it; millimetres. M1.6 and M64: areas not in ISO 898-1, left at 0.
struct Thread {
  double d, P, d2, D1, d3, As;
};
constexpr Thread threads[] = {{1.6, 0.35, 1.373, 1.221, 1.171, 0},  {3, 0.5, 2.675, 2.459, 2.387, 5.03},
                              {6, 1, 5.350, 4.917, 4.773, 20.1},    {8, 1, 7.350, 6.917, 6.773, 39.2},
                              {8, 1.25, 7.188, 6.647, 6.466, 36.6}, {10, 1.25, 9.188, 8.647, 8.466, 61.2},
                              {10, 1.5, 9.026, 8.376, 8.160, 58.0}, {12, 1.75, 10.863, 10.106, 9.853, 84.3},
                              {16, 2, 14.701, 13.835, 13.546, 157}, {24, 3, 22.051, 20.752, 20.319, 353},
                              {36, 4, 33.402, 31.670, 31.093, 817}, {64, 6, 60.103, 57.505, 56.639, 0}};
constexpr double mm = 1e-3;

// Calls `f(P, d_2, d, mu_G, mu_K, D_Km)` over threads and the whole range of friction.
template <class Function>
void sweep(Function f) {
  for (const Thread& t : threads)
    for (const double mu_G : {0.0, 0.02, 0.08, 0.14, 0.3, 1.0})
      for (const double mu_K : {0.0, 0.02, 0.12, 1.0}) {
        CAPTURE(t.d);
        CAPTURE(mu_G);
        CAPTURE(mu_K);
        f(t.P * mm, t.d2 * mm, t.d * mm, mu_G, mu_K, 1.3 * t.d * mm);
      }
}

// The rooms that this file answers for.
constexpr Entry rooms[] = {entry_of(triangle_height),
                           entry_of(pitch_diameter),
                           entry_of(minor_diameter),
                           entry_of(root_diameter),
                           entry_of(minimum_root_diameter),
                           entry_of(stress_diameter),
                           entry_of(stress_area),
                           entry_of(stress_area_unified),
                           entry_of(lead_angle),
                           entry_of(load_at_stress),
                           entry_of(target_preload),
                           entry_of(torsion_yield_torque),
                           entry_of(torsion_plastic_torque),
                           entry_of(breaking_torque),
                           entry_of(mean_bearing_diameter),
                           entry_of(uniform_pressure_bearing_diameter),
                           entry_of(thread_lever),
                           entry_of(torque_lever),
                           entry_of(nut_factor),
                           entry_of(nut_factor_from_test),
                           entry_of(total_friction),
                           entry_of(thread_friction_from_test),
                           entry_of(bearing_friction_from_test),
                           entry_of(tightening_torque),
                           entry_of(tightening_torque_exact),
                           entry_of(thread_torque_exact),
                           entry_of(nut_factor_exact),
                           entry_of(preload_from_torque),
                           entry_of(preload_from_torque_exact),
                           entry_of(thread_torque),
                           entry_of(bearing_torque),
                           entry_of(loosening_torque),
                           entry_of(loosening_torque_exact),
                           entry_of(screw_torque),
                           entry_of(screw_loosening_torque),
                           entry_of(screw_efficiency),
                           entry_of(pitch_share),
                           entry_of(loosening_ratio),
                           entry_of(preload_from_torque_pair),
                           entry_of(torque_from_nut_factor),
                           entry_of(preload_from_nut_factor),
                           entry_of(preload_after_friction_change),
                           entry_of(setting_with_prevailing),
                           entry_of(effective_torque),
                           entry_of(shank_torsion),
                           entry_of(assembly_preload),
                           entry_of(assembly_preload_exact),
                           entry_of(assembly_preload_elastic),
                           entry_of(assembly_stress),
                           entry_of(assembly_stress_elastic),
                           entry_of(yield_utilisation),
                           entry_of(yield_utilisation_elastic),
                           entry_of(greatest_preload),
                           entry_of(least_preload),
                           entry_of(tightening_factor),
                           entry_of(preload_after_relaxation)};

}  // namespace

TEST_CASE("thread profile: diameters by the thickness of the ridge") {
  for (const Thread& t : threads) {
    CAPTURE(t.d);
    CAPTURE(t.P);
    // Flanks at 60 degrees over a base of one pitch meet at the height of the triangle.
    CHECK(triangle_height.si(t.P) ==
          about(by::bisect([&](double h) { return 2 * h * std::tan(by::pi / 6); }, 0, 9, t.P)));
    const double pitch_line = by::diameter_at_ridge(t.P / 2, t.d, t.P);       // ridge and groove equally wide
    const double nut_crest = by::diameter_at_ridge(t.P - t.P / 4, t.d, t.P);  // the nut's crest is a quarter pitch wide
    const double apex = by::diameter_at_ridge(t.P, t.d, t.P);                 // the groove has closed
    const double root = by::arc_bottom(apex, t.P * std::cos(by::pi / 6) / 6);  // root arc of radius H/6
    CHECK(pitch_diameter.si(t.d, t.P) == about(pitch_line));
    CHECK(minor_diameter.si(t.d, t.P) == about(nut_crest));
    CHECK(root_diameter.si(t.d, t.P) == about(root));
    CHECK(stress_diameter.si(t.d, t.P) == about((pitch_line + root) / 2));
    CHECK(stress_area.si(t.d, t.P) == about(by::disc_area((pitch_line + root) / 2)));
    // A bolt 0.1 mm thinner at the pitch line, root radius 0.125 P.
    const double thin_apex = by::diameter_at_ridge(t.P, t.d - 0.1, t.P);
    CHECK(minimum_root_diameter.si(pitch_line - 0.1, t.P) == about(by::arc_bottom(thin_apex, 0.125 * t.P)));
    // One turn unrolled.
    CHECK(lead_angle.si(t.P, t.d2) == about(std::asin(t.P / std::hypot(t.P, by::pi * t.d2))));
  }
}

TEST_CASE("thread profile: printed diameters and areas") {
  for (const Thread& t : threads) {
    CAPTURE(t.d);
    CAPTURE(t.P);
    CHECK(std::fabs(pitch_diameter.si(t.d, t.P) - t.d2) <= 0.000501);
    CHECK(std::fabs(minor_diameter.si(t.d, t.P) - t.D1) <= 0.000501);
    CHECK(std::fabs(root_diameter.si(t.d, t.P) - t.d3) <= 0.000501);
    // From the printed d_2 and d_3, each rounded to a micrometre.
    const double mean = (t.d2 + t.d3) / 2;
    CHECK(stress_area.si(t.d, t.P) == near(by::disc_area(mean)).epsilon(1.1e-3 / mean));
    if (t.As > 0) CHECK(stress_area.si(t.d, t.P) == near(t.As).epsilon(t.As < 10 ? 1.1e-3 : 3.1e-3));
    // ISO 898-1, clause 9.1.6 in its printed form: pi/4 (d - 0.9382 P)^2.
    CHECK(stress_area.si(t.d, t.P) == near(by::disc_area(t.d - 0.9382 * t.P)).epsilon(3e-5));
  }
  // ASME B1.1, Appendix B: 0.7854 (D - 0.9743/n)^2 in inches. 1/2-13 UNC 0.1419, 3/8-24 UNF 0.0878.
  CHECK(stress_area_unified.si(0.5, 1.0 / 13) == near(0.1419).epsilon(4e-4));
  CHECK(stress_area_unified.si(0.375, 1.0 / 24) == near(0.0878).epsilon(6e-4));
  CHECK(stress_area_unified.si(0.5, 1.0 / 13) == about(by::disc_area(0.5 - 0.9743 / 13)));
}

TEST_CASE("bearing diameters: the pressure integrated over the ring") {
  for (const double outer : {2.5, 10.0, 40.0, 95.0})
    for (const double share : {0.0, 0.05, 0.5, 0.9, 0.999}) {
      const double inner = outer * share;
      CAPTURE(outer);
      CAPTURE(share);
      const double uniform = by::ring_torque([](double) { return 7.0; }, 1, 1, outer, inner);
      CHECK(uniform_pressure_bearing_diameter.si(outer, inner) == about(2 * uniform, 1e-11));
      // A face that has worn in presses as 1/r; its effective diameter is the mean one.
      if (inner > 0.1) {
        const double worn = by::ring_torque([](double r) { return 1 / r; }, 1, 1, outer, inner);
        CHECK(mean_bearing_diameter.si(outer, inner) == about(2 * worn, 1e-11));
      }
      CHECK(uniform_pressure_bearing_diameter.si(outer, inner) >= mean_bearing_diameter.si(outer, inner));
      CHECK(uniform_pressure_bearing_diameter.si(outer, inner) <= outer);
    }
  // A narrow face loses no digits: (2/3)(a^3 - b^3)/(a^2 - b^2) tends to the diameter itself.
  CHECK(uniform_pressure_bearing_diameter.si(20.0, 20.0 * (1 - 1e-15)) == about(20));
}

TEST_CASE("torque, linear form: statics by superposition, and the printed form") {
  sweep([](double P, double d2, double d, double mu_G, double mu_K, double D) {
    const double F = 25e3;
    const double thread = by::linear_thread_torque(F, P, d2, mu_G, +1);
    const double bearing = by::narrow_ring_torque(F, mu_K, D);
    CHECK(thread_lever.si(P, d2, mu_G) == about(thread / F, 1e-10));
    CHECK(thread_torque.si(F, P, d2, mu_G) == about(thread, 1e-10));
    CHECK(bearing_torque.si(F, mu_K, D) == about(bearing));
    CHECK(torque_lever.si(P, d2, mu_G, mu_K, D) == about((thread + bearing) / F, 1e-10));
    CHECK(tightening_torque.si(F, P, d2, mu_G, mu_K, D) == about(thread + bearing, 1e-10));
    CHECK(nut_factor.si(d, P, d2, mu_G, mu_K, D) == about((thread + bearing) / (F * d), 1e-10));
    // VDI 2230 and ISO 16047 print F (0.159 P + 0.578 d_2 mu_G + D/2 mu_K).
    const double as_printed = F * (0.159 * P + 0.578 * d2 * mu_G + D / 2 * mu_K);
    CHECK(tightening_torque.si(F, P, d2, mu_G, mu_K, D) == about(as_printed, 1.2e-3));
    // Work over one turn: the load rises by one pitch, the share of the pitch is that part of the work.
    CHECK(pitch_share.si(P, d2, mu_G, mu_K, D) == about(F * P / (2 * by::pi * (thread + bearing)), 1e-10));
    // Loosening: the friction changes its sign.
    const double loosening = by::linear_thread_torque(F, P, d2, mu_G, -1) + bearing;
    const double scale = thread + bearing;
    CHECK(std::fabs(loosening_torque.si(F, P, d2, mu_G, mu_K, D) - loosening) <= 1e-10 * scale);
    CHECK(std::fabs(loosening_torque.si(F, P, d2, mu_G, mu_K, D) + TighteningTorque::eval(F, P, d2, -mu_G, -mu_K, D)) <=
          1e-14 * scale);
    CHECK(std::fabs(loosening_ratio.si(P, d2, mu_G, mu_K, D) - loosening / scale) <= 1e-10);
    // The two torques together tell the preload.
    CHECK(preload_from_torque_pair.si(thread + bearing, loosening, P) == about(F, 1e-8));
  });
}

TEST_CASE("torque, exact form: statics on the inclined flank, and the form with angles") {
  sweep([](double P, double d2, double, double mu_G, double mu_K, double D) {
    const double F = 25e3;
    const double bearing = by::narrow_ring_torque(F, mu_K, D);
    for (const double alpha : {0.0, 0.0524, 0.2618, by::pi / 6, 0.7, 1.2}) {
      CAPTURE(alpha);
      const double up = by::flank_torque(F, P, d2, mu_G, alpha, +1);
      const double down = by::flank_torque(F, P, d2, mu_G, alpha, -1);
      const double phi = std::atan(P / (by::pi * d2));
      const double rho = std::atan(mu_G / std::cos(std::atan(std::tan(alpha) * std::cos(phi))));
      CHECK(screw_torque.si(F, P, d2, mu_G, alpha, mu_K, D) == about(up + bearing));
      CHECK(screw_torque.si(F, P, d2, mu_G, alpha, mu_K, D) == about(F * d2 / 2 * std::tan(phi + rho) + bearing));
      CHECK(std::fabs(screw_loosening_torque.si(F, P, d2, mu_G, alpha, mu_K, D) - (down + bearing)) <=
            1e-12 * (up + bearing));
      CHECK(std::fabs(screw_loosening_torque.si(F, P, d2, mu_G, alpha, mu_K, D) -
                      (F * d2 / 2 * std::tan(rho - phi) + bearing)) <= 1e-12 * (up + bearing));
      // Work: what lifts the load over what the wrench puts into the thread.
      CHECK(screw_efficiency.si(P, d2, mu_G, alpha) == about(F * P / (2 * by::pi * up)));
    }
    const double up = by::flank_torque(F, P, d2, mu_G, by::pi / 6, +1) + bearing;
    const double down = by::flank_torque(F, P, d2, mu_G, by::pi / 6, -1) + bearing;
    CHECK(tightening_torque_exact.si(F, P, d2, mu_G, mu_K, D) == about(up));
    CHECK(std::fabs(loosening_torque_exact.si(F, P, d2, mu_G, mu_K, D) - down) <= 1e-12 * up);
    CHECK(preload_from_torque_exact.si(up, P, d2, mu_G, mu_K, D) == about(F));
    CHECK(thread_torque_exact.si(F, P, d2, mu_G) == about(up - bearing, 1e-11));
    CHECK(nut_factor_exact.si(D, P, d2, mu_G, mu_K, D) == about(up / (F * D)));
    CHECK(std::fabs(loosening_torque_exact.si(F, P, d2, mu_G, mu_K, D) +
                    TighteningTorqueExact::eval(F, P, d2, -mu_G, -mu_K, D)) <= 1e-12 * up);
  });
}

TEST_CASE("the linear torque lies 0.2 to 1 % below the exact one for M6 to M16 and friction 0.08 to 0.30, as stated") {
  double least = 1;
  double most = 0;
  for (const Thread& t : threads)
    for (double mu = 0.08; mu < 0.301; mu += 0.02) {
      if (t.d < 6 || t.d > 16) continue;
      const double linear = tightening_torque.si(1.0, t.P, t.d2, mu, mu, 1.3 * t.d);
      const double below = 1 - linear / tightening_torque_exact.si(1.0, t.P, t.d2, mu, mu, 1.3 * t.d);
      least = std::min(least, below);
      most = std::max(most, below);
    }
  CAPTURE(least);
  CAPTURE(most);
  CHECK(least > 0.0015);
  CHECK(most < 0.0105);
}

TEST_CASE("friction locks a steep thread: there is no torque, and a screw without friction turns back by itself") {
  // mu' tan(phi) = 1 needs mu' of 18.9 for M10; far outside the range of validity, but inside the domain.
  CHECK(std::isnan(screw_efficiency.si(1.5e-3, 9.026e-3, 19.0, 0.0)));
  CHECK(std::isnan(screw_torque.si(1e3, 1.5e-3, 9.026e-3, 19.2, 0.0, 0.0, 0.0)));
  CHECK(screw_torque.check(1e3, 1.5e-3, 9.026e-3, 19.2, 0.0, 0.0, 0.0).status == Status::impossible);
  CHECK(loosening_torque_exact.si(1e3, 1.5e-3, 9.026e-3, 0.0, 0.0, 0.0) == about(-1e3 * 1.5e-3 / (2 * by::pi)));
  CHECK(loosening_torque.si(1e3, 1.5e-3, 9.026e-3, 0.0, 0.0, 0.0) == about(-1e3 * 1.5e-3 / (2 * by::pi)));
}

TEST_CASE("friction from a test: the forward torque by statics, inverted") {
  sweep([](double P, double d2, double d, double mu_G, double mu_K, double D) {
    const double F = 18e3;
    const double thread = by::linear_thread_torque(F, P, d2, mu_G, +1);
    const double bearing = by::narrow_ring_torque(F, mu_K, D);
    CHECK(nut_factor_from_test.si(thread + bearing, F, d) == about((thread + bearing) / F / d));
    if (mu_K > 0) CHECK(bearing_friction_from_test.si(bearing, F, D) == about(mu_K));
    if (mu_G > 0) CHECK(thread_friction_from_test.si(thread, F, P, d2) == about(mu_G, 1e-8));
    if (mu_G == 0 || mu_K == 0) return;
    // The one coefficient that gives the same torque in both places lies between the two.
    const double both = by::bisect(
        [&](double mu) { return by::linear_thread_torque(F, P, d2, mu, +1) + by::narrow_ring_torque(F, mu, D); }, 0, 2,
        thread + bearing);
    CHECK(total_friction.si(thread + bearing, F, P, d2, D) == about(both, 1e-8));
    CHECK(both >= std::min(mu_G, mu_K) * (1 - 1e-9));
    CHECK(both <= std::max(mu_G, mu_K) * (1 + 1e-9));
  });
}

TEST_CASE("preload from a torque: the statics solved by bisection") {
  sweep([](double P, double d2, double d, double mu_G, double mu_K, double D) {
    const auto linear = [&](double F) {
      return by::linear_thread_torque(F, P, d2, mu_G, +1) + by::narrow_ring_torque(F, mu_K, D);
    };
    const auto exact = [&](double F) {
      return by::flank_torque(F, P, d2, mu_G, by::pi / 6, +1) + by::narrow_ring_torque(F, mu_K, D);
    };
    CHECK(preload_from_torque.si(48, P, d2, mu_G, mu_K, D) == about(by::bisect(linear, 0, 1e8, 48), 1e-9));
    CHECK(preload_from_torque_exact.si(48, P, d2, mu_G, mu_K, D) == about(by::bisect(exact, 0, 1e8, 48)));
    // By the nut factor of the same joint, there and back.
    const double K = linear(1e3) / 1e3 / d;
    CHECK(preload_from_nut_factor.si(48, d, K) == about(by::bisect(linear, 0, 1e8, 48), 1e-9));
    CHECK(torque_from_nut_factor.si(2e4, d, K) == about(linear(2e4), 1e-9));
    // Oil halves the friction, the torque stays.
    const auto oiled = [&](double F) {
      return by::linear_thread_torque(F, P, d2, mu_G / 2, +1) + by::narrow_ring_torque(F, mu_K / 2, D);
    };
    const double dry = by::bisect(linear, 0, 1e8, 48);
    CHECK(preload_after_friction_change.si(dry, K, oiled(1e3) / 1e3 / d) == about(by::bisect(oiled, 0, 1e8, 48), 1e-9));
    // A locking nut takes its prevailing torque first; what is left makes the preload.
    const double setting = setting_with_prevailing.si(48, 6.5);
    CHECK(by::bisect(linear, 0, 1e8, setting - 6.5) == about(dry, 1e-9));
    // Of what a wrench 3 % too strong gives, prevailing and shank torque are taken first: solved for the setting.
    const auto reading = by::bisect([](double M) { return effective_torque.si(M, 0.03, 6.5, 1.5); }, 8, 1e4, 48);
    CHECK(reading / 100 * 103 == about(48 + 6.5 + 1.5, 1e-9));
    CHECK(shank_torsion.si(20, 6.5) == about(26.5));
  });
}

TEST_CASE("torsion of a round bar: the shear stress summed over the section") {
  for (const double d : {0.6e-3, 4e-3, 9e-3, 40e-3})
    for (const double tau : {120e6, 400e6, 900e6}) {
      const double radius = d / 2;
      const double elastic = by::integral([&](double r) { return tau * r / radius * r * 2 * by::pi * r; }, 0, radius);
      const double plastic = by::integral([&](double r) { return tau * r * 2 * by::pi * r; }, 0, radius);
      CHECK(torsion_yield_torque.si(tau, d) == about(elastic));
      CHECK(torsion_plastic_torque.si(tau, d) == about(plastic));
      CHECK(breaking_torque.si(0.8, tau / 0.8, d) == about(elastic));
      const double load = by::integral([&](double r) { return tau * 2 * by::pi * r; }, 0, radius);
      CHECK(load_at_stress.si(by::disc_area(d), tau) == about(load));
      CHECK(target_preload.si(0.75, by::disc_area(d), tau) == about(load - load / 4));
    }
}

TEST_CASE("stress while tightening: principal stresses of the section") {
  for (const Thread& t : threads) {
    const double d_s = (t.d2 + t.d3) / 2 * mm;
    for (const double F : {20.0, 5e3, 3e5})
      for (const double arm : {0.0, 0.02, 0.1, 0.5}) {  // thread torque over preload and diameter
        const double M_G = F * arm * t.d * mm;
        const double plastic = by::equivalent_stress(F, M_G, d_s, true);
        const double elastic = by::equivalent_stress(F, M_G, d_s, false);
        CHECK(assembly_stress.si(F, M_G, d_s) == about(plastic));
        CHECK(assembly_stress_elastic.si(F, M_G, d_s) == about(elastic));
        CHECK(yield_utilisation.si(F, M_G, d_s, 660e6) == about(plastic / 660e6));
        CHECK(yield_utilisation_elastic.si(F, M_G, d_s, 660e6) == about(elastic / 660e6));
      }
  }
}

TEST_CASE("assembly preload: the load at which the equivalent stress has risen to its share of yield") {
  for (const Thread& t : threads)
    for (const double mu : {0.0, 0.02, 0.08, 0.14, 0.3, 1.0})
      for (const double R_p : {210e6, 640e6, 1100e6})
        for (const double nu : {0.5, 0.9, 1.0}) {
          const double P = t.P * mm;
          const double d2 = t.d2 * mm;
          const double d_s = (t.d2 + t.d3) / 2 * mm;
          CAPTURE(t.d);
          CAPTURE(mu);
          const auto load_for = [&](bool plastic, bool exact) {
            return by::bisect(
                [&](double F) {
                  const double torque = exact ? by::flank_torque(F, P, d2, mu, by::pi / 6, +1)
                                              : by::linear_thread_torque(F, P, d2, mu, +1);
                  return by::equivalent_stress(F, torque, d_s, plastic);
                },
                0, R_p * by::disc_area(d_s), nu * R_p);
          };
          CHECK(assembly_preload.si(R_p, nu, P, d2, d_s, mu) == about(load_for(true, false), 1e-9));
          if (nu != 0.9) continue;  // the others scale alike
          CHECK(assembly_preload_exact.si(R_p, nu, P, d2, d_s, mu) == about(load_for(true, true), 1e-10));
          CHECK(assembly_preload_elastic.si(R_p, nu, P, d2, d_s, mu) == about(load_for(false, false), 1e-9));
        }
}

TEST_CASE("the elastic assembly preload lies below the plastic one by what is stated, 7 to 13 %") {
  // Editions before 2001 against later ones. The figure holds for the middle of the friction range.
  for (const Thread& t : threads)
    for (const double mu : {0.14, 0.16, 0.18, 0.20}) {
      if (t.d < 4) continue;
      const double d_s = (t.d2 + t.d3) / 2;
      const double below = 1 - assembly_preload_elastic.si(640e6, 0.9, t.P, t.d2, d_s, mu) /
                                   assembly_preload.si(640e6, 0.9, t.P, t.d2, d_s, mu);
      CAPTURE(t.d);
      CAPTURE(mu);
      CHECK(below > 0.07);
      CHECK(below < 0.13);
    }
}

TEST_CASE("scatter and relaxation: what the bounds have to fulfil") {
  for (const double F : {800.0, 25e3, 4e5})
    for (const double s : {0.0, 0.05, 0.17, 0.35, 0.7, 0.99}) {
      const double most = greatest_preload.si(F, s);
      const double least = least_preload.si(F, s);
      CHECK((most + least) / 2 == about(F));
      CHECK((most - least) / 2 == near(F * s).epsilon(1e-12));
      CHECK(tightening_factor.si(s) == about(most / least));
      // What is lost is the stated share of what is left.
      const double left = preload_after_relaxation.si(F, s);
      CHECK(F - left == near(s * left).epsilon(1e-12));
    }
}

TEST_CASE("inverse pairs bring back what went in, over the whole range") {
  std::mt19937_64 random(3);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  for (int i = 0; i < 2000; ++i) {
    const double F = between(10, 1e6), P = between(0.2e-3, 6e-3), d2 = between(8 * P, 20 * P);
    const double mu_G = between(0.02, 0.99), mu_K = between(0.02, 0.99), D = between(d2, 2 * d2), d = 1.1 * d2;
    const double K = between(0.05, 0.6), R_p = between(200e6, 1500e6), nu = between(0.1, 1), d_s = 0.95 * d2;
    const double linear = tightening_torque.si(F, P, d2, mu_G, mu_K, D);
    CHECK(preload_from_torque.si(linear, P, d2, mu_G, mu_K, D) == about(F));
    CHECK(preload_from_torque_exact.si(tightening_torque_exact.si(F, P, d2, mu_G, mu_K, D), P, d2, mu_G, mu_K, D) ==
          about(F));
    CHECK(preload_from_nut_factor.si(torque_from_nut_factor.si(F, d, K), d, K) == about(F));
    CHECK(nut_factor_from_test.si(torque_from_nut_factor.si(F, d, K), F, d) == about(K));
    CHECK(thread_friction_from_test.si(thread_torque.si(F, P, d2, mu_G), F, P, d2) == about(mu_G));
    CHECK(bearing_friction_from_test.si(bearing_torque.si(F, mu_K, D), F, D) == about(mu_K));
    CHECK(total_friction.si(tightening_torque.si(F, P, d2, mu_G, mu_G, D), F, P, d2, D) == about(mu_G));
    CHECK(preload_from_torque_pair.si(linear, loosening_torque.si(F, P, d2, mu_G, mu_K, D), P) == about(F, 1e-10));
    CHECK(preload_after_friction_change.si(preload_after_friction_change.si(F, K, 0.2), 0.2, K) == about(F));
    const double F_M = assembly_preload.si(R_p, nu, P, d2, d_s, mu_G);
    CHECK(yield_utilisation.si(F_M, thread_torque.si(F_M, P, d2, mu_G), d_s, R_p) == about(nu));
    const double F_e = assembly_preload_elastic.si(R_p, nu, P, d2, d_s, mu_G);
    CHECK(yield_utilisation_elastic.si(F_e, thread_torque.si(F_e, P, d2, mu_G), d_s, R_p) == about(nu));
    CHECK(screw_torque.si(F, P, d2, mu_G, by::pi / 6, mu_K, D) ==
          about(tightening_torque_exact.si(F, P, d2, mu_G, mu_K, D)));
  }
}

TEST_CASE("monotonicity: which way each answer moves when one input grows") {
  struct Direction {
    const char* formula;
    const char* signs;  // one per input: + grows, - falls
  };
  constexpr Direction directions[] = {
      {"triangle_height", "+"},
      {"pitch_diameter", "+-"},
      {"minor_diameter", "+-"},
      {"root_diameter", "+-"},
      {"minimum_root_diameter", "+-"},
      {"stress_diameter", "+-"},
      {"lead_angle", "+-"},
      {"load_at_stress", "++"},
      {"target_preload", "+++"},
      {"torsion_yield_torque", "++"},
      {"torsion_plastic_torque", "++"},
      {"breaking_torque", "+++"},
      {"mean_bearing_diameter", "++"},
      {"thread_lever", "+++"},
      {"torque_lever", "+++++"},
      {"nut_factor", "-+++++"},
      {"nut_factor_from_test", "+--"},
      {"total_friction", "+----"},
      {"thread_friction_from_test", "+---"},
      {"bearing_friction_from_test", "+--"},
      {"tightening_torque", "++++++"},
      {"preload_from_torque", "+-----"},
      {"thread_torque", "++++"},
      {"bearing_torque", "+++"},
      {"loosening_ratio", "-++++"},
      {"pitch_share", "+----"},
      {"preload_from_torque_pair", "+--"},
      {"torque_from_nut_factor", "+++"},
      {"preload_from_nut_factor", "+--"},
      {"preload_after_friction_change", "++-"},
      {"setting_with_prevailing", "++"},
      {"effective_torque", "++--"},
      {"shank_torsion", "++"},
      {"assembly_preload", "++--+-"},
      {"assembly_preload_elastic", "++--+-"},
      {"assembly_stress", "++-"},
      {"assembly_stress_elastic", "++-"},
      {"yield_utilisation", "++--"},
      {"greatest_preload", "++"},
      {"least_preload", "+-"},
      {"tightening_factor", "+"},
      {"preload_after_relaxation", "+-"},
  };
  std::mt19937_64 random(5);
  for (const Direction& direction : directions) {
    const Entry* entry = shared::formula_named(direction.formula);
    REQUIRE(entry != nullptr);
    REQUIRE(std::string(direction.signs).size() == entry->inputs.size());
    for (int round = 0; round < 100; ++round) {
      const std::vector<double> x = sample::inputs(*entry, random);
      for (std::size_t i = 0; i < x.size(); ++i) {
        std::vector<double> more = x;
        more[i] *= 1.02;
        const double change = entry->value(more.data()) - entry->value(x.data());
        if (std::isnan(change)) continue;
        CAPTURE(std::string(direction.formula));
        CAPTURE(std::string(entry->inputs[i].name));
        CHECK((direction.signs[i] == '+' ? change : -change) > 0);
      }
    }
  }
}

TEST_CASE("scale: measured in other units of length and force, every answer is the same quantity") {
  const auto factor = [](Dim dimension, double length, double force) {
    switch (dimension) {
      case Dim::length: return length;
      case Dim::area: return length * length;
      case Dim::force: return force;
      case Dim::torque:
      case Dim::energy: return force * length;
      case Dim::stress: return force / (length * length);
      case Dim::compliance: return length / force;
      case Dim::stiffness: return force / length;
      default: return 1.0;
    }
  };
  std::mt19937_64 random(17);
  std::set<std::string> names;
  for (const Entry& entry : rooms) {
    CAPTURE(std::string(entry.name));
    names.insert(entry.name);
    for (int round = 0; round < 50; ++round) {
      const std::vector<double> x = sample::inputs(entry, random);
      REQUIRE(x.size() == entry.inputs.size());
      // Millimetre, inch and pound-force, and something odd.
      for (const auto& [length, force] : {std::pair{1e3, 1.0}, std::pair{39.37, 0.2248}, std::pair{0.37, 1.9e4}}) {
        std::vector<double> scaled = x;
        for (std::size_t i = 0; i < x.size(); ++i) scaled[i] *= factor(entry.inputs[i].dimension, length, force);
        const double expected = entry.value(x.data()) * factor(entry.output.dimension, length, force);
        CHECK(entry.value(scaled.data()) == about(expected, 1e-10));
      }
    }
  }
  CHECK(names.size() == std::size(rooms));
}

}  // namespace tightening_test
