// The clamp answer with its uncertainty, against the torque balance written out here with another random generator.
#include <doctest/doctest.h>
#include "tauten/question/clamp.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/uncertainty/sobol.hpp"

#include "near.hpp"

namespace clamp_uncertainty_test {

using namespace tauten;

namespace {

ClampJob pump_foot() {
  ClampJob job;
  job.thread = "M16";
  job.property_class = "8.8";
  job.torque = Torque(130);
  job.condition = "oiled";
  return job;
}

/// Torque in the thread per newton: a wedge on a helix, flank angle in the section normal to the thread.
double helix_lever(double pitch, double d_2, double mu) {
  const double slope = std::atan(pitch / (std::acos(-1.0) * d_2));
  const double flank = std::atan(std::tan(std::acos(-1.0) / 6) * std::cos(slope));
  return d_2 / 2 * std::tan(slope + std::atan(mu / std::cos(flank)));
}

/// Load and share of yield, from ISO 724 and ISO 898-1 figures of M16 8.8: wedge on a helix, plastic section.
struct Worked {
  double load;
  double share;
};
Worked worked_out(double torque, double mu_g, double mu_k, double face, double strength) {
  const double pi = std::acos(-1.0), d_s = std::sqrt(4 * 156.67e-6 / pi);
  const double in_thread = helix_lever(2e-3, 14.701e-3, mu_g);
  const double load = torque / (in_thread + mu_k * face / 2);
  const double tension = load / 156.67e-6, shear = load * in_thread / (pi * std::pow(d_s, 3) / 12);
  return {load, std::sqrt(tension * tension + 3 * shear * shear) / (strength * 640e6)};
}

bool has(const std::vector<Notice>& notices, const std::string& code) {
  return std::any_of(notices.begin(), notices.end(), [&](const Notice& n) { return n.code == code; });
}

}  // namespace

TEST_CASE("distribution of clamp load and utilisation as an independent simulation finds it") {
  // Thread and face friction of one lubricant, fully correlated: one draw serves both.
  for (const bool together : {false, true}) {
    CAPTURE(together);
    ClampScatter scatter;
    scatter.thread_friction = scatter.bearing_friction = Distribution::normal(0.12, 0.012);
    scatter.bearing_diameter = Distribution::uniform(19e-3, 21e-3);
    scatter.strength = Distribution::normal(1.1, 0.06);
    scatter.torque = Distribution::normal(170, 5);
    scatter.friction_correlation = together ? 1.0 : 0.0;
    const ClampUncertainty found = clamp_uncertainty(pump_foot(), scatter, {.trials = 400'000}).front();

    std::mt19937_64 random(11);
    std::normal_distribution<double> mu(0.12, 0.012), torque(170, 5), strength(1.1, 0.06);
    std::uniform_real_distribution<double> face(19e-3, 21e-3);
    constexpr int trials = 400'000;
    std::vector<double> loads, shares;
    for (int i = 0; i < trials; ++i) {
      const double mu_g = mu(random), mu_k = together ? mu_g : mu(random);
      const Worked w = worked_out(torque(random), mu_g, mu_k, face(random), strength(random));
      loads.push_back(w.load);
      shares.push_back(w.share);
    }
    const auto compare = [&](const MonteCarlo& m, std::vector<double> x) {
      double mean = 0, squares = 0;
      for (const double each : x) mean += each / trials;
      for (const double each : x) squares += (each - mean) * (each - mean) / trials;
      const double u = std::sqrt(squares);
      std::sort(x.begin(), x.end());
      CHECK(std::fabs(m.mean - mean) < 0.01 * u + 2e-4 * mean);  // printed diameters are rounded
      CHECK(m.standard_uncertainty == near(u).epsilon(0.01));
      CHECK(std::fabs(m.symmetric.low - x[trials / 40]) < 0.03 * u);
      CHECK(std::fabs(m.symmetric.high - x[trials - trials / 40]) < 0.03 * u);
    };
    compare(found.clamp_load, loads);
    compare(found.yield_utilisation, shares);
    int yielded = 0;
    for (const double share : shares) yielded += share > 1;
    CHECK(found.chance_to_yield == near(yielded / double{trials}).epsilon(1e-4).scale(1));
  }
}

TEST_CASE("friction of thread and face varies as the job says, unless its correlation is given") {
  const auto found = [](std::optional<bool> together, std::optional<double> correlation) {
    ClampJob job = pump_foot();
    job.friction_together = together;
    ClampScatter scatter;
    scatter.friction_correlation = correlation;
    return clamp_uncertainty(job, scatter, {.trials = 20'000}).front();
  };
  const auto spread = [&](std::optional<bool> together, std::optional<double> correlation) {
    return found(together, correlation).clamp_load.standard_uncertainty;
  };
  CHECK(spread(true, {}) == spread({}, 1.0));
  CHECK(spread(false, {}) == spread({}, 0.0));
  CHECK(spread(true, 0.0) == spread({}, 0.0));
  CHECK(spread(true, {}) > 1.2 * spread(false, {}));
  CHECK(spread({}, {}) == spread(true, {}));  // both oiled: one film of oil
  CHECK(has(found({}, {}).notices, "friction_together"));
  for (const bool said : {false, true})
    for (const char* code : {"friction_together", "friction_independent"})
      CHECK_FALSE(has(found(said, {}).notices, code));
  ClampJob job = pump_foot();
  job.face_condition = "dry";
  CHECK(has(clamp_uncertainty(job, {}, {.trials = 10'000}).front().notices, "friction_independent"));
  ClampScatter scatter;
  scatter.thread_friction = Distribution::uniform(0.1, 0.14);  // measured apart
  CHECK(has(clamp_uncertainty(pump_foot(), scatter, {.trials = 10'000}).front().notices, "friction_independent"));
}

TEST_CASE("with the job's own bands no trial leaves the band of the clamp answer") {
  ClampScatter scatter;
  scatter.bearing_diameter = Distribution(0.019995);  // the band of `clamp` takes it as known, too
  scatter.strength = Distribution(1.0);
  for (const double r : {0.0, 1.0}) {
    scatter.friction_correlation = r;
    const ClampUncertainty found = clamp_uncertainty(pump_foot(), scatter, {.trials = 200'000}).front();
    const ClampCandidate& c = found.candidate;
    CHECK(found.clamp_load.sorted().front() >= c.worst_case.low.si * (1 - 1e-12));
    CHECK(found.clamp_load.sorted().back() <= c.worst_case.high.si * (1 + 1e-12));
    CHECK(found.yield_utilisation.sorted().front() >= c.yield_utilisation.low * (1 - 1e-12));
    CHECK(found.yield_utilisation.sorted().back() <= c.yield_utilisation.high * (1 + 1e-12));
    CHECK(found.clamp_load.symmetric.low < c.clamp_load.nominal.si);
    CHECK(found.clamp_load.symmetric.high > c.clamp_load.nominal.si);
  }
}

TEST_CASE("friction brings most of the scatter of the load, strength only that of the utilisation") {
  const ClampUncertainty found = clamp_uncertainty(pump_foot()).front();
  CHECK(found.clamp_load.converged);
  const auto share = [](const Budget& b, const std::string& name) {
    for (const Contribution& line : b.contributions)
      if (line.name == name) return line.share;
    return -1.0;
  };
  CHECK(share(found.clamp_load_budget, "thread_friction") + share(found.clamp_load_budget, "bearing_friction") > 0.8);
  CHECK(share(found.clamp_load_budget, "strength") == 0);
  CHECK(share(found.yield_utilisation_budget, "strength") > 0.2);
  // Triangular bands of friction bend the result little: first order is near.
  CHECK(found.clamp_load_budget.standard_uncertainty == near(found.clamp_load.standard_uncertainty).epsilon(0.05));
  for (const char* code : {"strength_estimated", "bearing_spread_estimated", "friction_together"})
    CHECK(has(found.notices, code));
}

TEST_CASE("budget and Sobol indices agree where the model hardly bends") {
  ClampScatter scatter;
  scatter.friction_correlation = 0.0;
  const ClampModel model = clamp_models(pump_foot(), scatter).front();
  const Budget b = budget(model.clamp_load, model.inputs);
  const Sobol s = sobol(model.clamp_load, model.inputs);
  for (std::size_t i = 0; i < 5; ++i) {
    CAPTURE(b.contributions[i].name);
    CHECK(std::fabs(s.inputs[i].first - b.contributions[i].share) < 0.03);
    CHECK(s.inputs[i].total >= s.inputs[i].first - 4 * s.inputs[i].first_error);
  }
}

TEST_CASE("a lubricant on both faces widens the spread; more torque makes yielding more likely") {
  ClampScatter scatter;
  scatter.friction_correlation = 0.0;
  const double apart = clamp_uncertainty(pump_foot(), scatter).front().clamp_load.standard_uncertainty;
  scatter.friction_correlation = 0.9;
  CHECK(clamp_uncertainty(pump_foot(), scatter).front().clamp_load.standard_uncertainty > 1.2 * apart);
  double before = -1;
  for (const double torque : {150.0, 200.0, 250.0, 300.0, 350.0}) {
    ClampJob job = pump_foot();
    job.torque = Torque(torque);
    const ClampUncertainty found = clamp_uncertainty(job, {}, {.trials = 50'000}).front();
    CHECK(found.chance_to_yield >= before);
    before = found.chance_to_yield;
  }
  CHECK(before > 0.9);
}

TEST_CASE("the load never exceeds what the bolt bears, and a slack joint is seen") {
  ClampJob job = pump_foot();
  job.torque = Torque(2000);
  CHECK(clamp_uncertainty(job, {}, {.trials = 20'000}).front().clamp_load.sorted().back() < 1.5 * 800e6 * 156.67e-6);
  job.torque = Torque(40);
  CHECK(clamp_uncertainty(job, {}, {.trials = 20'000}).front().chance_slack == 1);
}

TEST_CASE("where nothing scatters the load is the nominal one of the clamp answer") {
  ClampJob job = pump_foot();
  job.thread_friction = job.bearing_friction = Band<double>{0.12, 0.12, 0.12};
  job.wrench_accuracy = 0;
  ClampScatter scatter;
  scatter.bearing_diameter = Distribution(0.019995);
  scatter.strength = Distribution(1.0);
  const ClampUncertainty found = clamp_uncertainty(job, scatter).front();
  CHECK(found.clamp_load.sorted().front() == found.clamp_load.sorted().back());
  CHECK(found.clamp_load.mean == near(found.candidate.clamp_load.nominal.si).epsilon(1e-12));
  CHECK(found.yield_utilisation.mean == near(found.candidate.yield_utilisation.nominal).epsilon(1e-12));
  CHECK(found.clamp_load.converged);
}

TEST_CASE("washers: the pair that slides is the one of the clamp answer") {
  ClampJob job = pump_foot();
  job.more_faces = {{Length(21e-3), "moly-paste"}};
  ClampScatter scatter;
  scatter.bearing_diameter = Distribution(21e-3);
  const ClampUncertainty found = clamp_uncertainty(job, scatter, {.trials = 100'000}).front();
  CHECK(found.clamp_load.sorted().front() >= found.candidate.worst_case.low.si * (1 - 1e-9));
  CHECK(found.clamp_load.sorted().back() <= found.candidate.worst_case.high.si * (1 + 1e-9));
}

TEST_CASE("every candidate of a socket, and a stop ends the list") {
  ClampJob job;
  job.socket = Length(16e-3);
  job.torque = Torque(48);
  job.property_class = "10.9";
  job.condition = "oiled";
  const Clamp plain = clamp(job);
  const std::vector<ClampUncertainty> all = clamp_uncertainty(job, {}, {.trials = 20'000});
  REQUIRE(all.size() == plain.candidates.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    CHECK(all[i].candidate.thread == plain.candidates[i].thread);
    CHECK(all[i].clamp_load_budget.value == near(plain.candidates[i].clamp_load.nominal.si).epsilon(0.1));
  }
  CHECK(clamp_uncertainty(job, {}, {.progress = [](const Progress&) { return false; }}).size() == 1);
}

TEST_CASE("the same answer bit for bit on any number of threads") {
  const ClampUncertainty one = clamp_uncertainty(pump_foot()).front();
  const ClampUncertainty many = clamp_uncertainty(pump_foot(), {}, {.jobs = 3}).front();
  CHECK(one.clamp_load.sorted() == many.clamp_load.sorted());
  CHECK(one.yield_utilisation.sorted() == many.yield_utilisation.sorted());
}

TEST_CASE("nonsense gives the error of the clamp answer, or names the input") {
  const auto refused = [](const ClampJob& job, const ClampScatter& scatter, const char* argument) {
    const auto found = try_clamp_uncertainty(job, scatter);
    REQUIRE_FALSE(found);
    CAPTURE(found.error().what());
    CHECK(std::string(found.error().argument()) == argument);
  };
  ClampJob job = pump_foot();
  job.torque = Torque(-5);
  refused(job, {}, "torque");
  job = pump_foot();
  job.thread = "M10x9";
  refused(job, {}, "thread");
  ClampScatter scatter;
  scatter.friction_correlation = 2;
  refused(pump_foot(), scatter, "thread_friction");
  scatter = {};
  scatter.thread_friction = Distribution::normal(-0.2, 0.01);
  refused(pump_foot(), scatter, "inputs");
}

}  // namespace clamp_uncertainty_test
