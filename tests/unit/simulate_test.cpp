#include "tauten/loosening/simulate.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "tauten/loosening/shear_before_free.hpp"

#include "near.hpp"

namespace simulate_test {

using namespace tauten;

namespace {

/// Four standard errors of a chance.
double four_errors(double p, double trials) { return 4 * std::sqrt(std::max(p * (1 - p), 1 / trials) / trials); }

ReleaseModel whole_model() {
  ReleaseModel m;
  m.preload = {20e3, 0.35};
  m.thread_growth = {2.8, 0.3};
  m.bearing_growth = {2.4, 0.3};
  m.bond = {7.7, 0.6};
  m.rust = {11, 0.6};
  m.prevailing = {2, 0.2};
  m.flanks = 0.14 * 5.2e-3;
  m.face = 0.14 * 6.65e-3;
  m.lift = 0.239e-3;
  m.thread_floor = 2.5;
  m.greatest_preload = 41e3;
  m.shear = {76, 0.08};
  m.section_loss = {0.05, 0.5};
  m.breaking_load = 52e3;
  m.drive = {120, 0.3};
  m.socket = {140, 0.12};
  m.square = {170, 0.12};
  m.arm = {140, 0.35};
  return m;
}

/// Chances that each of some independent torques is the least, and at most `limit`, by plain quadrature.
/// \param above  each is known to lie above its own of these
std::vector<double> first_up_to(double limit, const std::vector<Lognormal>& part, const std::vector<double>& above) {
  double counted = 1;
  for (std::size_t k = 0; k < part.size(); ++k) counted *= 1 - part[k].chance_below(above[k]);
  std::vector<double> ended(part.size());
  const int n = 8000;
  for (int i = 0; i < n; ++i) {
    const double t = limit * (i + 0.5) / n;
    for (std::size_t k = 0; k < part.size(); ++k) {
      if (t < above[k]) continue;
      const double z = part[k].log_deviation(), y = std::log(t / part[k].median) / z;
      double chance = std::exp(-y * y / 2) / std::sqrt(2 * std::acos(-1.0)) / (z * t) * limit / n / counted;
      for (std::size_t j = 0; j < part.size(); ++j)
        if (j != k) chance *= 1 - part[j].chance_below(std::max(t, above[j]));
      ended[k] += chance;
    }
  }
  return ended;
}

}  // namespace

TEST_CASE("simulation against the closed form for two lognormals") {
  for (const auto& [median, variation] : {std::pair{40.0, 0.5}, {60.0, 0.3}, {90.0, 0.8}}) {
    ReleaseModel m;
    m.bond = {median, variation};
    m.shear = {70, 0.1};
    const double trials = 400'000;
    const Simulation s = simulate(m, static_cast<std::uint64_t>(trials));
    const double expected = shear_chance(m.shear, m.bond);
    const Chances c = s.at(s.greatest());
    CHECK(std::fabs(c.shear - expected) < four_errors(expected, trials));
    CHECK(c.free + c.shear + c.not_moving == near(1));
  }
}

TEST_CASE("closed form: even odds, certainty, and the integral over both densities") {
  CHECK(shear_chance({50, 0.2}, {50, 0.4}) == near(0.5));
  CHECK(shear_chance({50, 0.2}, {0, 0.4}) == 0);
  CHECK(shear_chance({0, 0.2}, {50, 0.4}) == 1);
  CHECK(shear_chance({50, 0}, {40, 0}) == 0);
  const Lognormal breaks{76, 0.1}, frees{55, 0.5};
  double sum = 0;
  const double z = frees.log_deviation();
  const int n = 20000;
  for (int i = 0; i < n; ++i) {
    const double x = -8 + 16 * (i + 0.5) / n;
    sum += breaks.chance_below(frees.median * std::exp(z * x)) * std::exp(-x * x / 2) / std::sqrt(2 * std::acos(-1.0)) *
           16 / n;
  }
  CHECK(shear_chance(breaks, frees) == near(sum).epsilon(1e-6));
}

TEST_CASE("simulation against quadrature over five independent lognormals, at every limit") {
  ReleaseModel m;
  m.bond = {60, 0.4};
  m.shear = {75, 0.1};
  m.drive = {90, 0.3};
  m.socket = {110, 0.12};
  m.square = {95, 0.12};
  m.arm = {100, 0.35};
  const std::vector<Lognormal> part = {m.bond, m.shear, m.drive, m.socket, m.square, m.arm};
  const double trials = 400'000;
  const Simulation s = simulate(m, static_cast<std::uint64_t>(trials), 7);
  for (double limit : {40.0, 70.0, 90.0, 200.0}) {
    const std::vector<double> ended = first_up_to(limit, part, std::vector<double>(6));
    const Chances c = s.at(Torque(limit));
    CHECK(std::fabs(c.free - ended[0]) < four_errors(ended[0], trials) + 2e-4);
    CHECK(std::fabs(c.shear - ended[1]) < four_errors(ended[1], trials) + 2e-4);
    CHECK(std::fabs(c.round - ended[2]) < four_errors(ended[2], trials) + 2e-4);
    CHECK(std::fabs(c.tool - ended[3] - ended[4]) < four_errors(ended[3] + ended[4], trials) + 2e-4);
  }
}

TEST_CASE("known to have held: the rest of the pull against quadrature over the torques that lie above it") {
  ReleaseModel before;
  before.bond = {60, 0.4};
  before.shear = {75, 0.1};
  before.drive = {90, 0.3};
  before.arm = {120, 0.35};
  ReleaseModel after = before;  // an aid that halves what holds, and that alone
  after.bond.median /= 2;
  const double held = 55, trials = 400'000;
  for (const bool aided : {false, true}) {
    CAPTURE(aided);
    const ReleaseModel& now = aided ? after : before;
    const Simulation s = simulate(now, static_cast<std::uint64_t>(trials), 7, 2, 0, Held{before, Torque(held)});
    const std::vector<Lognormal> part = {now.bond, now.shear, now.drive, now.arm};
    // What it is known to lie above: half as much holds after the aid as before it.
    const std::vector<double> above = {aided ? held / 2 : held, held, held, held};
    double counted = 1;
    for (std::size_t k = 0; k < 4; ++k) counted *= 1 - part[k].chance_below(above[k]);
    CHECK(std::fabs(static_cast<double>(s.trials()) / trials - counted) < four_errors(counted, trials));
    for (double limit : {60.0, 80.0, 110.0}) {
      const std::vector<double> ended = first_up_to(limit, part, above);
      const Chances c = s.at(Torque(limit));
      const double left = static_cast<double>(s.trials());
      CHECK(std::fabs(c.free - ended[0]) < four_errors(ended[0], left) + 1e-3);
      CHECK(std::fabs(c.shear - ended[1]) < four_errors(ended[1], left) + 1e-3);
      CHECK(std::fabs(c.round - ended[2]) < four_errors(ended[2], left) + 1e-3);
      if (aided) continue;
      // The same question to a run that knows nothing of it.
      const Chances later = simulate(before, static_cast<std::uint64_t>(trials), 7).after(Torque(held), Torque(limit));
      CHECK(later.free == near(c.free).epsilon(0.01));
      CHECK(later.shear == near(c.shear).epsilon(0.01));
      CHECK(later.not_moving == near(c.not_moving).epsilon(0.01));
    }
  }
}

TEST_CASE("the whole model against a plain program with another generator") {
  const ReleaseModel m = whole_model();
  std::mt19937_64 generator(20240101);
  std::normal_distribution<double> normal;
  const auto pick = [&](const Lognormal& x) {
    return x.median * std::exp(std::sqrt(std::log(1 + x.variation * x.variation)) * normal(generator));
  };
  const int trials = 200'000;
  const double limit = 95;
  double free = 0, shear = 0, round = 0, tool = 0;
  for (int i = 0; i < trials; ++i) {
    const double F = std::min(pick(m.preload), 41e3);
    const double thread = F * (std::max(pick(m.thread_growth), 2.5) * m.flanks - m.lift) + pick(m.bond) + pick(m.rust) +
                          pick(m.prevailing);
    const double face = F * pick(m.bearing_growth) * m.face;
    const double strength = pick(m.shear) / 76, left = 1 - pick(m.section_loss);
    const double tension = F / (52e3 * strength * left * left);
    const double twist = tension < 1 ? 76 * strength * left * left * left * std::sqrt(1 - tension * tension) : 0;
    const double ends[] = {thread + face, twist + face, pick(m.drive), std::min(pick(m.socket), pick(m.square)),
                           pick(m.arm)};
    const auto first = std::min_element(ends, ends + 5);
    if (*first > limit) continue;
    const auto way = first - ends;
    free += way == 0, shear += way == 1, round += way == 2, tool += way == 3;
  }
  const double many = 1'000'000;
  const Chances c = simulate(m, static_cast<std::uint64_t>(many)).at(Torque(limit));
  for (const auto& [mine, other] : {std::pair{c.free, free}, {c.shear, shear}, {c.round, round}, {c.tool, tool}})
    CHECK(std::fabs(mine - other / trials) < four_errors(mine, trials) + 2e-4);
}

TEST_CASE("the same seed gives the same counts on any number of threads, another seed others") {
  const ReleaseModel m = whole_model();
  Simulation one = simulate(m, 100'001, 42, 1);
  for (int threads : {2, 3, 7}) {
    Simulation more = simulate(m, 100'001, 42, threads);
    bool same = true;
    for (int way = 0; way < Simulation::ways; ++way)
      for (int bin = 0; bin <= Simulation::bins; ++bin) same = same && one.count(way, bin) == more.count(way, bin);
    CHECK(same);
  }
  CHECK(simulate(m, 100'001, 43).at(Torque(80.0)).free != one.at(Torque(80.0)).free);
}

TEST_CASE("chances grow with the limit; the limit for a risk keeps it") {
  const Simulation s = simulate(whole_model(), 100'000);
  Chances before;
  for (double limit = 0; limit < 300; limit += 0.7) {
    const Chances now = s.at(Torque(limit));
    CHECK(now.free >= before.free);
    CHECK(now.shear >= before.shear);
    CHECK(now.round >= before.round);
    before = now;
  }
  for (double risk : {0.01, 0.05, 0.2}) {
    const Torque stop = s.limit_for_shear(risk);
    CHECK(s.at(stop).shear == near(risk).epsilon(1e-6));
    CHECK(s.at(Torque(stop.si * 1.05)).shear > risk);
  }
  CHECK(s.limit_for_shear(1) == s.greatest());
}

TEST_CASE("the balance of breaking and freeing lies where both densities meet") {
  ReleaseModel m;
  m.bond = {60, 0.5};
  m.shear = {90, 0.1};
  m.drive = {150, 0.3};
  // Density of ending this way at t while the others have not: the first of three independent lognormals.
  const auto density = [](const Lognormal& x, double t) {
    const double z = x.log_deviation(), y = std::log(t / x.median) / z;
    return std::exp(-y * y / 2) / (z * t);
  };
  const auto left = [](const Lognormal& x, double t) { return 1 - x.chance_below(t); };
  double low = 40, high = 120;
  for (int i = 0; i < 60; ++i) {
    const double t = (low + high) / 2;
    const double frees = density(m.bond, t) * left(m.shear, t) * left(m.drive, t);
    const double breaks =
        left(m.bond, t) * (density(m.shear, t) * left(m.drive, t) + density(m.drive, t) * left(m.shear, t));
    (frees > breaks ? low : high) = t;
  }
  CHECK(simulate(m, 1'000'000, 3).limit_for_balance().si == near(low).epsilon(0.02));
}

TEST_CASE("nothing is left to gain where all but a hundredth of what comes free has done so") {
  ReleaseModel m;
  m.bond = {60, 0.5};
  m.shear = never_reached;
  CHECK(simulate(m, 1'000'000, 3).limit_for_gain().si == near(m.bond.quantile(0.99)).epsilon(0.01));
}

TEST_CASE("a shank that has lost four fifths of its diameter bears the cube of what is left in torsion") {
  ReleaseModel m;
  m.bond = {500, 0.1};
  m.shear = {1000, 0};
  m.section_loss = {0.8, 0};
  const Simulation s = simulate(m, 2'000, 1, 1, 20);  // in bins of 0.02 N.m
  CHECK(s.at(Torque(0.98 * 1000 * 0.008)).shear == 0);
  CHECK(s.at(Torque(1.02 * 1000 * 0.008)).shear == 1);
}

TEST_CASE("what was risked before a torque was held counts against the accepted chance") {
  const ReleaseModel m = whole_model();
  const Simulation fresh = simulate(m, 400'000, 5);
  const double held = 60;
  const Simulation later = simulate(m, 400'000, 5, 1, 0, Held{m, Torque(held)});
  CHECK(later.spent(1) == near(fresh.at(Torque(held)).shear).epsilon(0.02));
  const Torque stop = later.limit_for_shear(0.2);
  CHECK(later.spent(1) + later.at(stop).shear == near(0.2).epsilon(1e-6));
  CHECK(stop <= fresh.limit_for_shear(0.2));
  CHECK(later.limit_for_shear(0.5 * later.spent(1)).si == near(held).epsilon(0.02));  // nothing is left of it
}

}  // namespace simulate_test
