#include "tauten/tightening/chance.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "near.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/part/rated_load.hpp"
#include "tauten/thread/designation.hpp"

namespace chance_test {

using namespace tauten;

namespace {

constexpr double plastic = 1.5;

/// A bolt of the pumping station with a hexagon head, and what its class promises.
struct Fastener {
  TighteningOdds odds;
  double yield;
  double tensile;
  double proof_load;
  TighteningChance chance{odds};

  double yields(double torque) const { return chance.reaching({torque, 0.04}, yield, plastic); }
  double yields_as_sold(double torque) const { return chance.reaching_as_sold({torque, 0.04}, yield, plastic); }
  double breaks(double torque) const { return chance.reaching({torque, 0.04}, tensile, plastic); }
  Band<double> load(double torque) const { return chance.load_band({torque, 0.04}, chance.loads_at(tensile, plastic)); }
  double slack(double torque) const {
    return chance.below({torque, 0.04}, proof_load / 2, chance.loads_at(tensile, plastic));
  }
};

Band<double> scaled(const Band<double>& band, double by) { return {band.low * by, band.nominal * by, band.high * by}; }

Fastener fastener(const char* designation, const char* property_class, const char* condition, double prevailing = 0,
                  const char* face_condition = nullptr) {
  const Thread thread = try_parse_thread(designation).value();
  const double radius = try_bearing_diameter(try_head(thread, "ISO 4014").value()).value().value.si / 2;
  const PropertyClass strength = try_property_class(property_class, thread.diameter).value();
  const char* on_face = face_condition ? face_condition : condition;
  return {{thread.pitch.si, thread.pitch_diameter().si, thread.stress_diameter().si, prevailing, prevailing,
           FrictionSpread{try_thread_condition(condition).value().thread_friction},
           FrictionSpread{scaled(try_thread_condition(on_face).value().bearing_friction, radius)}, !face_condition},
          strength.yield_strength.si,
          strength.tensile_strength.si,
          try_proof_load(thread, property_class).value().value.si};
}

// ---- The second way: draws of friction and wrench, statics of wedge and section written out; nothing of the library ----

struct Drawn {
  double yields = 0, breaks = 0, yields_as_sold = 0;
  std::vector<double> loads;  ///< of the bolts that hold, sorted
};

double half_triangles(double low, double nominal, double high, double u) {
  return u < 0.5 ? low + (nominal - low) * std::sqrt(2 * u) : high - (high - nominal) * std::sqrt(2 * (1 - u));
}

Drawn draw(const Fastener& f, double torque, double accuracy, int trials) {
  std::mt19937_64 generator(20261);
  std::uniform_real_distribution<double> uniform(0, 1);
  std::normal_distribution<double> normal;
  const double pi = std::acos(-1.0);
  const double d = f.odds.d_s;
  Drawn out;
  for (int i = 0; i < trials; ++i) {
    const double u = uniform(generator);
    const double v = f.odds.one_draw ? u : uniform(generator);
    const auto& g = f.odds.thread.band;
    const auto& k = f.odds.face.band;
    const double mu = half_triangles(g.low, g.nominal, g.high, u);
    const double face = half_triangles(k.low, k.nominal, k.high, v);
    const double wrench = torque * (1 + accuracy * (2 * uniform(generator) - 1));
    const double phi = std::atan(f.odds.P / (pi * f.odds.d_2));
    // Flank angle in the section normal to the thread.
    const double beta = std::atan(std::tan(pi / 6) * std::cos(phi));
    const double thread = f.odds.d_2 / 2 * std::tan(phi + std::atan(mu / std::cos(beta)));
    const double load = (wrench - f.odds.lost) / (thread + face);
    const double sigma = load / (pi * d * d / 4);
    const double tau = (load * thread + f.odds.prevailing) / (pi * d * d * d / 12);
    const double stress = std::sqrt(sigma * sigma + 3 * tau * tau);
    out.yields += stress > f.yield;
    out.yields_as_sold += stress > f.yield * 1.12 * std::exp(0.06 * normal(generator));
    out.breaks += stress > f.tensile;
    if (stress < f.tensile) out.loads.push_back(load);
  }
  for (double* share : {&out.yields, &out.yields_as_sold, &out.breaks}) *share /= trials;
  std::sort(out.loads.begin(), out.loads.end());
  return out;
}

/// "1 in n" as it is printed: n is the nearest whole number.
double one_in(double chance) { return 1 / chance; }

}  // namespace

TEST_CASE("chances and loads agree with a simulation") {
  struct Case {
    const char* thread;
    const char* property_class;
    const char* condition;
    const char* face;
    double torque, accuracy, prevailing;
  };
  for (const Case& c :
       {Case{"M16", "8.8", "oiled", nullptr, 206, 0.04, 0}, Case{"M16", "8.8", "oiled", nullptr, 260, 0.04, 0},
        Case{"M16", "8.8", "unknown", nullptr, 200, 0.2, 0}, Case{"M10", "8.8", "oiled", nullptr, 55, 0.04, 8},
        Case{"M16", "8.8", "oiled", "dry", 260, 0.04, 0}, Case{"M12", "10.9", "dry", "moly-paste", 120, 0.06, 5},
        Case{"M16", "8.8", "oiled", nullptr, 206, 0, 0}, Case{"M16", "8.8", "oiled", "dry", 250, 0, 0}}) {
    CAPTURE(c.thread);
    CAPTURE(c.condition);
    CAPTURE(c.torque);
    const Fastener f = fastener(c.thread, c.property_class, c.condition, c.prevailing, c.face);
    const Drawn seen = draw(f, c.torque, c.accuracy, 200'000);
    const WrenchSpread wrench{c.torque, c.accuracy};
    // Three standard errors of the simulation, and 0.001 of what is interpolated.
    const auto agrees = [&](double said, double drawn) {
      CHECK(std::fabs(said - drawn) < 0.001 + 3 * std::sqrt(drawn * (1 - drawn) / 200'000));
    };
    agrees(f.chance.reaching(wrench, f.yield, plastic), seen.yields);
    agrees(f.chance.reaching(wrench, f.tensile, plastic), seen.breaks);
    agrees(f.chance.reaching_as_sold(wrench, f.yield, plastic), seen.yields_as_sold);
    const Band<double> load = f.chance.load_band(wrench, f.chance.loads_at(f.tensile, plastic));
    const auto drawn = [&](double share) {
      return seen.loads[static_cast<std::size_t>(share * static_cast<double>(seen.loads.size()))];
    };
    CHECK(load.low == near(drawn(0.025)).epsilon(0.005));
    CHECK(load.nominal == near(drawn(0.5)).epsilon(0.005));
    CHECK(load.high == near(drawn(0.975)).epsilon(0.005));
  }
}

TEST_CASE("frictions drawn apart: a fine sum over both and a true wrench") {
  // Oil on the thread, dry under the head; the draw of the one is laid through by equal shares, so is that of the other.
  const Fastener f = fastener("M16", "8.8", "oiled", 0, "dry");
  const double pi = std::acos(-1.0);
  const auto& g = f.odds.thread.band;
  const auto& k = f.odds.face.band;
  const int n = 1500;
  for (const double torque : {230.0, 250.0, 280.0, 320.0}) {
    double beyond = 0;
    for (int i = 0; i < n; ++i) {
      const double mu = half_triangles(g.low, g.nominal, g.high, (i + 0.5) / n);
      const double phi = std::atan(f.odds.P / (pi * f.odds.d_2));
      const double beta = std::atan(std::tan(pi / 6) * std::cos(phi));
      const double lever = f.odds.d_2 / 2 * std::tan(phi + std::atan(mu / std::cos(beta)));
      for (int j = 0; j < n; ++j) {
        const double face = half_triangles(k.low, k.nominal, k.high, (j + 0.5) / n);
        const double load = torque / (lever + face);
        const double sigma = load / (pi * f.odds.d_s * f.odds.d_s / 4);
        const double tau = load * lever / (pi * std::pow(f.odds.d_s, 3) / 12);
        beyond += sigma * sigma + 3 * tau * tau > f.yield * f.yield;
      }
    }
    CHECK(f.chance.reaching({torque, 0}, f.yield, plastic) == doctest::Approx(beyond / n / n).epsilon(5e-4));
  }
}

TEST_CASE("chances of everyday bolts") {
  // Computed apart from the library, printed to the nearest "1 in n": the half of the last figure is allowed.
  const Fastener m16 = fastener("M16", "8.8", "oiled");
  const auto near_one_in = [](double chance, double n) {
    CAPTURE(n);
    CHECK(one_in(chance) > n - 0.5 - 0.02 * n);
    CHECK(one_in(chance) < n + 0.5 + 0.02 * n);
  };
  near_one_in(m16.yields(180), 60);
  near_one_in(m16.yields(190), 17);
  near_one_in(m16.yields(206), 5);
  near_one_in(m16.yields(210), 4);
  near_one_in(m16.yields_as_sold(206), 21);
  near_one_in(m16.breaks(240), 14);
  near_one_in(fastener("M10", "8.8", "oiled").yields(49), 5);
  near_one_in(fastener("M8", "8.8", "oiled").yields(25), 5);
  near_one_in(fastener("M12", "10.9", "oiled").yields(117), 11);
  near_one_in(fastener("M10", "8.8", "oiled", 4).yields(45), 95);
  for (const double torque : {153.0, 164.0, 173.0}) CHECK(m16.yields(torque) < 0.01);
  CHECK(fastener("M16", "8.8", "dry").yields(240) < 0.01);
  const Band<double> load = m16.load(130);
  CHECK(load.low / 1e3 == near(41).epsilon(0.012));
  CHECK(load.nominal / 1e3 == near(51).epsilon(0.01));
  CHECK(load.high / 1e3 == near(66).epsilon(0.008));
  CHECK(m16.slack(130) > 0.05);
  CHECK(m16.slack(130) < 0.5);
  CHECK(m16.slack(153) < 0.05);
}

TEST_CASE("the torque for the least friction of a class neither stretches the bolt nor leaves it slack") {
  // VDI 2230: nine tenths of yield at the least friction of class B. The lever is written out, not taken from the library.
  const double pi = std::acos(-1.0);
  for (const char* thread : {"M6", "M8", "M10", "M12", "M16", "M20", "M24"})
    for (const char* property_class : {"8.8", "10.9", "12.9"}) {
      CAPTURE(thread);
      CAPTURE(property_class);
      const Fastener f = fastener(thread, property_class, "oiled");
      const double lever = f.odds.P / (2 * pi) + 0.08 * f.odds.d_2 / std::sqrt(3.0);
      const double area = pi * f.odds.d_s * f.odds.d_s / 4;
      const double load = 0.9 * f.yield * area / std::sqrt(1 + 3 * std::pow(3 * lever / f.odds.d_s, 2));
      const double torque = load * (lever + f.odds.face.band.low);
      if (thread == std::string("M16") && property_class == std::string("8.8"))
        CHECK(torque == near(153).epsilon(0.01));  // Table A3, mu 0.08
      CHECK(f.yields(torque) < 0.01);
      CHECK(f.slack(torque) < 0.05);
    }
}

TEST_CASE("the load of an oiled bolt spreads as a torque wrench and estimated friction are said to let it") {
  // VDI 2230 Part 1:2003, Table A8: tightening factor 1.6 to 2.0. Here 1.6 holds 19 of 20 cases and 2.0 the worst.
  const Fastener m16 = fastener("M16", "8.8", "oiled");
  const Band<double> load = m16.load(153);
  CHECK(load.high / load.low == near(1.6).epsilon(0.03));
  // At its ends: least friction with a strong wrench over most friction with a weak one. The linear lever of ISO 16047.
  const auto lever = [&](double mu) {
    return m16.odds.P / (2 * std::acos(-1.0)) + mu * m16.odds.d_2 / std::sqrt(3.0) + m16.odds.face.at(0) * mu / 0.12;
  };
  const double worst = 1.04 / 0.96 * lever(0.16) / lever(0.08);
  CHECK(worst == near(2.0).epsilon(0.05));
  const TighteningChance::Loads breaking = m16.chance.loads_at(m16.tensile, plastic);
  CHECK(m16.chance.below({153, 0.04}, 0.96 * 153 / lever(0.16) * 0.98, breaking) == near(0));
  CHECK(m16.chance.below({153, 0.04}, 1.04 * 153 / lever(0.08) * 1.02, breaking) == near(1));
}

TEST_CASE("the setting for a chance of 1 in 100") {
  const Fastener m16 = fastener("M16", "8.8", "oiled");
  const auto setting = [&](double accuracy) { return m16.chance.setting_for(0.01, accuracy, m16.yield, plastic, 1e3); };
  CHECK(m16.yields(setting(0.04)) == near(0.01).epsilon(1e-3));
  CHECK(setting(0.10) < setting(0.04));
  CHECK(m16.chance.setting_for(0.01, 0.04, m16.yield, plastic, 50) == 50);
}

TEST_CASE("more torque, less strength and a rougher wrench never make it safer") {
  for (const char* face : {static_cast<const char*>(nullptr), "dry"})
    for (const double prevailing : {0.0, 20.0}) {
      const Fastener f = fastener("M16", "8.8", "oiled", prevailing, face);
      double yields = 0, breaks = 0, slack = 1;
      Band<double> load{};
      for (double torque = 60; torque < 600; torque += 10) {
        CHECK(f.yields(torque) >= yields - 1e-12);
        CHECK(f.breaks(torque) >= breaks - 1e-12);
        CHECK(f.breaks(torque) <= f.yields(torque) + 1e-12);
        CHECK(f.yields_as_sold(torque) >= 0);
        CHECK(f.yields_as_sold(torque) <= 1 + 1e-12);
        CHECK(f.slack(torque) <= slack + 1e-9);
        yields = f.yields(torque), breaks = f.breaks(torque), slack = f.slack(torque);
        const Band<double> now = f.load(torque);
        if (breaks < 1 - 1e-9) {
          CHECK(now.low >= load.low * (1 - 1e-5));
          CHECK(now.low <= now.nominal);
          CHECK(now.nominal <= now.high);
          CHECK(now.high < f.tensile * 156.67e-6 * 1.01);  // stress area of M16, ISO 898-1
        }
        load = now;
      }
      CHECK(yields == near(1));
      CHECK(breaks == near(1));
      CHECK(std::isnan(f.load(3000).nominal));
    }
}

TEST_CASE("no spread leaves certainty, and a locking element that twists the bolt off too") {
  const Fastener f = fastener("M16", "8.8", "oiled");
  TighteningOdds known = f.odds;
  known.thread.band = {0.12, 0.12, 0.12};
  known.face.band = {f.odds.face.band.nominal, f.odds.face.band.nominal, f.odds.face.band.nominal};
  for (const bool together : {true, false}) {
    known.one_draw = together;
    const TighteningChance chance(known);
    const double critical = chance.setting_for(0.5, 0, f.yield, plastic, 1e3);
    CHECK(chance.reaching({critical * 0.999, 0}, f.yield, plastic) == 0);
    CHECK(chance.reaching({critical * 1.001, 0}, f.yield, plastic) == near(1));
    // In the middle of its band the wrench is as often above as below.
    CHECK(chance.reaching({critical, 0.04}, f.yield, plastic) == near(0.5).epsilon(1e-4));
    // Torque at mu 0.12 for 90 % of yield, VDI 2230 Table A3, M16 8.8: 206 N.m.
    CHECK(chance.setting_for(0.5, 0, 0.9 * f.yield, plastic, 1e3) == near(206).epsilon(0.01));
  }
  TighteningOdds jammed = f.odds;
  jammed.prevailing = jammed.lost = 1000;
  CHECK(TighteningChance(jammed).reaching({1200, 0.04}, f.yield, plastic) == near(1));
}

TEST_CASE("half of the friction lies below nominal, however skew the band") {
  const FrictionSpread skew{{0.08, 0.14, 0.35}};
  CHECK(skew.below(0.14) == 0.5);
  CHECK(skew.below(0.08) == 0);
  CHECK(skew.below(0.35) == 1);
  double sum = 0;
  const int n = 20'000;
  for (int i = 0; i < n; ++i) sum += skew.below(0.05 + (i + 0.5) * 0.35 / n) * 0.35 / n;
  CHECK(skew.below_integral(0.40) == near(sum).epsilon(1e-6));
}

}  // namespace chance_test
