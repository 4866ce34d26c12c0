#include "tauten/group/interaction.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tauten/group/flexibility.hpp"
#include "tauten/group/scatter.hpp"

#include "near.hpp"

namespace group_interaction_test {

namespace {

using namespace tauten;

/// A ring in which only neighbours meet.
Interaction ring(std::size_t n, double c) {
  std::vector<double> a(n * n);
  for (std::size_t i = 0; i < n; ++i) {
    a[i * n + i] = 1;
    a[i * n + (i + 1) % n] = c;
    a[(i + 1) % n * n + i] = c;
  }
  return try_interaction(n, a).value();
}

std::vector<LoadStep> passes(const BoltOrder& order, int count) {
  std::vector<LoadStep> steps;
  for (int i = 0; i < count; ++i)
    for (const std::size_t bolt : order) steps.push_back({bolt, 1});
  return steps;
}

TEST_CASE("group interaction: histories worked out apart from the library") {
  // Script for the collection of figures: 8 bolts, neighbours 0.2, target 1, a wrench that never loosens.
  const double star[][8] = {{0.5826, 1.0871, 0.5818, 1.0038, 0.5818, 1.0871, 0.5826, 1.0},
                            {0.9796, 1.0147, 0.9468, 1.0006, 0.9788, 1.0143, 0.945, 1.0},
                            {1.001, 1.0014, 0.9967, 1.0001, 1.0009, 1.0013, 0.9962, 1.0}};
  const double round[][8] = {{0.6258, 0.8712, 0.8182, 0.8296, 0.8254, 0.8349, 0.7913, 1.0},
                             {0.9496, 0.967, 0.9635, 0.9634, 0.9663, 0.957, 0.9768, 1.0},
                             {0.9906, 0.993, 0.9921, 0.9933, 0.9907, 0.9942, 0.9972, 1.0}};
  const Interaction joint = ring(8, 0.2);
  const auto crosswise = try_tighten(joint, passes(try_crosswise_order(8).value(), 3)).value();
  const auto circular = try_tighten(joint, passes(try_circular_order(8).value(), 3)).value();
  for (std::size_t pass = 0; pass < 3; ++pass)
    for (std::size_t i = 0; i < 8; ++i) {
      CHECK(std::fabs(crosswise[8 * pass + 7][i] - star[pass][i]) < 6e-5);
      CHECK(std::fabs(circular[8 * pass + 7][i] - round[pass][i]) < 6e-5);
    }
  const double first[] = {1.4, 0.913, 1.4, 0.9962, 1.4, 0.913, 1.4, 1.0};
  const auto plan = try_compensated_loads(joint, try_crosswise_order(8).value(), Force(1), Force(2)).value();
  for (std::size_t i = 0; i < 8; ++i) CHECK(std::fabs(plan[i] - first[i]) < 6e-5);
  CHECK_FALSE(try_compensated_loads(joint, try_crosswise_order(8).value(), Force(1), Force(1.3)));
  CHECK(passes_by_rule(0.2, 0.05) == 3);
  CHECK(passes_by_rule(0.4, 0.02) == 6);
  // Two bolts: the first loses c times what the second gains.
  CHECK(try_tighten(ring(2, 0.3), {{0, 1}, {1, 1}}).value()[1][0] == near(0.7));
}

TEST_CASE("group interaction: complementarity against enumeration of all sets, up to six bolts") {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> any(-1, 1);
  int clear = 0;
  for (int trial = 0; trial < 300; ++trial) {
    const std::size_t n = 2 + static_cast<std::size_t>(trial % 5);
    std::vector<double> b(n * n);
    std::vector<double> a(n * n);
    for (double& x : b) x = any(random);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t m = 0; m < n; ++m) a[i * n + k] += b[i * n + m] * b[k * n + m];
        if (i == k) a[i * n + k] += 0.2;
      }
    const Interaction joint = try_interaction(n, a).value();
    std::vector<double> nut(n);
    for (double& x : nut) x = any(random);
    const std::vector<double> found = detail::loads_of(joint, nut, std::vector<bool>(n, true), n, 0);
    // The one set whose loads are positive and whose other nuts are clear, by elimination of Gauss.
    bool met = false;
    for (unsigned set = 0; set < 1u << n && !met; ++set) {
      std::vector<double> m(n * n);
      std::vector<double> f = nut;
      for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = 0; k < n; ++k) m[i * n + k] = (set >> i & 1) ? a[i * n + k] * (set >> k & 1) : i == k;
      for (std::size_t i = 0; i < n; ++i)
        if (!(set >> i & 1)) f[i] = 0;
      for (std::size_t p = 0; p < n; ++p)
        for (std::size_t r = 0; r < n; ++r) {
          if (r == p) continue;
          const double factor = m[r * n + p] / m[p * n + p];
          for (std::size_t c = 0; c < n; ++c) m[r * n + c] -= factor * m[p * n + c];
          f[r] -= factor * f[p];
        }
      met = true;
      for (std::size_t i = 0; i < n; ++i) f[i] /= m[i * n + i];
      for (std::size_t i = 0; i < n; ++i) {
        double gap = -nut[i];
        for (std::size_t k = 0; k < n; ++k) gap += a[i * n + k] * f[k];
        met = met && f[i] >= -1e-12 && gap >= -1e-12;
      }
      for (std::size_t i = 0; met && i < n; ++i) {
        CHECK(std::fabs(found[i] - f[i]) < 1e-9);
        clear += f[i] == 0;
      }
    }
    CHECK(met);
  }
  CHECK(clear > 100);
}

TEST_CASE("group interaction: passes needed, as counted apart from the library, and never more than the rule") {
  // Script for the collection of figures: 16 bolts, neighbours c, lowest bolt within 10, 5 and 2 %.
  struct Row {
    double c;
    std::size_t circular[3], star_then_circular[3];
  };
  const BoltOrder round = try_circular_order(16).value();
  const BoltOrder star = try_crosswise_order(16).value();
  const double within[] = {0.1, 0.05, 0.02};
  for (const Row& row :
       {Row{0.05, {1, 2, 2}, {2, 2, 2}}, Row{0.1, {2, 2, 2}, {2, 2, 3}}, Row{0.2, {2, 3, 3}, {2, 3, 3}},
        Row{0.3, {3, 3, 4}, {3, 4, 5}}, Row{0.4, {4, 5, 6}, {5, 6, 7}}}) {
    const Interaction joint = ring(16, row.c);
    for (std::size_t i = 0; i < 3; ++i) {
      CHECK(try_passes_needed(joint, {round}, within[i]).value() == row.circular[i]);
      CHECK(try_passes_needed(joint, {star, round}, within[i]).value() == row.star_then_circular[i]);
      CHECK(passes_by_rule(row.c, within[i]) >= static_cast<double>(row.circular[i]));
    }
  }
  // The rule itself: what is left after that many passes, each leaving its share, is half of what is allowed.
  for (double c = 0.02; c < 0.5; c += 0.04)
    for (const double t : within) CHECK(std::pow(c, passes_for_evenness.si(c, t)) == near(t / 2).epsilon(1e-12));
  CHECK(std::isnan(passes_for_evenness.si(1.0, 0.1)));
  // Rigid limit: bolts that do not meet need one pass.
  CHECK(try_passes_needed(ring(16, 0), {star}, 0.001).value() == 1);
  CHECK_FALSE(try_passes_needed(ring(4, 0.2), {}, 0.1));
  CHECK_FALSE(try_passes_needed(ring(4, 0.2), {{0, 1}}, 0.1));
  CHECK_FALSE(try_passes_needed(ring(4, 0.2), {{0, 1, 2, 3}}, 0));
}

TEST_CASE("group interaction: bad input is one clear error") {
  CHECK_FALSE(try_interaction(2, {1, 0.2, 0.3, 1}));
  CHECK_FALSE(try_interaction(2, {1, 2, 2, 1}));
  CHECK_FALSE(try_interaction(2, {1, 0, 0}));
  CHECK_FALSE(try_interaction(2, {1, std::nan(""), std::nan(""), 1}));
  CHECK_FALSE(try_tighten(ring(4, 0.2), {{4, 1}}));
  CHECK_FALSE(try_tighten(ring(4, 0.2), {{0, -1}}));
}

TEST_CASE("group interaction: a fast step is the slow one, bolts relieved to zero included") {
  std::mt19937 random(15);
  std::uniform_real_distribution<double> any(-1, 1);
  int slack = 0;
  for (int trial = 0; trial < 300; ++trial) {
    const std::size_t n = 2 + static_cast<std::size_t>(trial % 9);
    std::vector<double> b(n * n);
    std::vector<double> a(n * n);
    for (double& x : b) x = any(random);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t m = 0; m < n; ++m) a[i * n + k] += b[i * n + m] * b[k * n + m];
        if (i == k) a[i * n + k] += 0.3;
        if (trial % 3 == 0 && i != k && (i + 1) % n != k && (k + 1) % n != i) a[i * n + k] = 0;  // a ring, if it stands
      }
    const auto joint = try_interaction(n, a);
    if (!joint) continue;
    // All by complementarity, from nothing but where the nuts are.
    std::vector<double> nut(n), loads(n);
    std::vector<bool> in(n);
    TighteningRun run(*joint);
    for (int step = 0; step < 40; ++step) {
      const std::size_t bolt = static_cast<std::size_t>((any(random) + 1) / 2 * static_cast<double>(n)) % n;
      const double load = 1 + any(random);
      if (loads[bolt] < load) {
        in[bolt] = true;
        loads = detail::loads_of(*joint, nut, in, bolt, load);
        nut[bolt] = 0;
        for (std::size_t k = 0; k < n; ++k) nut[bolt] += (*joint)(bolt, k) * loads[k];
      }
      run.tighten(bolt, load);
      slack += run.slack();
      for (std::size_t i = 0; i < n; ++i) CHECK(std::fabs(run.loads()[i] - loads[i]) < 1e-8);
    }
  }
  CHECK(slack > 500);
}

TEST_CASE("group interaction: a ring of a thousand bolts that meet their neighbours, in closed form") {
  const Interaction joint = ring(1000, 0.2);
  TighteningRun run(joint);
  for (std::size_t i = 0; i < 1000; ++i) run.tighten(i, 1);
  CHECK(run.loads()[999] == 1);
  // With all tight, the answer of neighbours is the decaying root of c x^2 + x + c = 0.
  const double root = (-1 + std::sqrt(1 - 4 * 0.2 * 0.2)) / (2 * 0.2);
  const std::vector<double> answer = run.response(500);
  for (std::size_t k = 0; k < 20; ++k) {
    CHECK(std::fabs(answer[500 + k] - std::pow(root, static_cast<double>(k))) < 1e-12);
    // Virtual work: what 500 does to another, that one does to 500.
    CHECK(answer[500 - k] == near(run.response(500 - k)[500]));
  }
}

FlangeOnGasket water_flange() {
  FlangeOnGasket f;
  f.count = 8;
  f.circle = Length(0.18);
  f.ring_width = Length(0.05);
  f.ring_thickness = Length(0.02);
  f.gasket_width = Length(0.02);
  f.gasket_thickness = Length(0.002);
  f.gasket_modulus = Stress(1e9);
  f.bolt_length = Length(0.055);
  f.bolt_area = Area(157e-6);
  return f;
}

TEST_CASE("group interaction: from geometry, against differences along a closed beam and statics") {
  const FlangeOnGasket f = water_flange();
  const Interaction joint = try_interaction_on_gasket(f).value();
  // E I times the fourth derivative plus k w = p on a closed line, by differences: 800 places, one load at place 0.
  const std::size_t n = 800;
  const double step = 3.14159265358979323846 * 0.18 / static_cast<double>(n);
  const double bed = 2 * 1e9 * 0.02 / 0.002;
  const double bending = 210e9 * 0.05 * std::pow(0.02, 3) / 12 / std::pow(step, 4);
  std::vector<double> a(n * n);
  for (std::size_t i = 0; i < n; ++i) {
    const double stencil[] = {1, -4, 6, -4, 1};
    for (std::size_t k = 0; k < 5; ++k) a[i * n + (i + k + n - 2) % n] += bending * stencil[k];
    a[i * n + i] += bed;
  }
  std::vector<double> w(n);
  w[0] = 1 / step;
  REQUIRE(detail::cholesky(a, n));
  detail::cholesky_solve(a, n, w);
  for (std::size_t k = 1; k <= 4; ++k) CHECK(std::fabs(joint(0, k) - w[k * n / 8]) < 2e-3 * w[0]);
  CHECK(joint(0, 0) - 0.055 / (210e9 * 157e-6) == near(w[0]).epsilon(2e-3));
  // A thick ring moves as a whole: 1/K at all bolts.
  FlangeOnGasket rigid = f;
  rigid.ring_thickness = Length(2);
  const double whole = bed * 3.14159265358979323846 * 0.18;
  CHECK(try_interaction_on_gasket(rigid).value()(0, 4) == near(1 / whole).epsilon(0.01));
  // Softer gaskets pass more on to the neighbour.
  double before = -1;
  for (const double modulus : {3000e6, 1000e6, 300e6, 50e6}) {
    FlangeOnGasket g = f;
    g.gasket_modulus = Stress(modulus);
    const double loss = neighbour_loss(try_interaction_on_gasket(g).value(), 0, 1);
    CHECK(loss > before);
    CHECK(loss < 1);
    before = loss;
  }
  // Rigid flange on a ring of gasket: a load at one bolt presses evenly, and tilts by P R/(K r^2/2).
  const Interaction tilting = try_interaction_rigid(8, Length(0.18), Length(0.14), Quantity<Dim::stiffness>(2e9),
                                                    Quantity<Dim::compliance>(1e-9))
                                  .value();
  for (std::size_t k = 1; k < 8; ++k) {
    const double turn = 0.09 / (2e9 * 0.07 * 0.07 / 2);
    const double angle = 2 * 3.14159265358979323846 * static_cast<double>(k) / 8;
    CHECK(tilting(0, k) == near(1 / 2e9 + turn * 0.09 * std::cos(angle)));
  }
  CHECK(try_tighten(tilting, {{0, 1}, {4, 1}}).value()[1][0] > 1);  // opposite bolts gain: q is above 1/2
  FlangeOnGasket bad = f;
  bad.gasket_modulus = Stress(0);
  CHECK_FALSE(try_interaction_on_gasket(bad));
  bad = f;
  bad.count = 2;
  CHECK_FALSE(try_interaction_on_gasket(bad));
}

TEST_CASE("group interaction: measured losses give back the joint that was measured") {
  const Interaction joint = try_interaction_on_gasket(water_flange()).value();
  const BoltOrder star = try_crosswise_order(8).value();
  std::vector<LoadStep> once;
  for (const std::size_t bolt : star) once.push_back({bolt, 40e3 + 1e3 * static_cast<double>(bolt)});
  const MeasuredLosses losses = try_measured_losses(star, try_tighten(joint, once).value()).value();
  const Interaction found = losses.try_interaction_of_equal_bolts().value();
  for (std::size_t i = 0; i < 8; ++i)
    for (std::size_t k = 0; k < 8; ++k) CHECK(std::fabs(found(i, k) - joint(i, k) / joint(0, 0)) < 1e-9);
  // First loads by the losses are those by compatibility, and end even.
  const auto first = losses.try_first_loads(Force(50e3), Force(90e3)).value();
  const auto exact = try_compensated_loads(joint, star, Force(50e3), Force(90e3)).value();
  std::vector<LoadStep> plan;
  for (const std::size_t bolt : star) plan.push_back({bolt, first[bolt]});
  const auto end = try_tighten(joint, plan).value().back();
  for (std::size_t i = 0; i < 8; ++i) {
    CHECK(first[i] == near(exact[i]).epsilon(1e-9));
    CHECK(end[i] == near(50e3).epsilon(1e-9));
  }
  // Model of the collection of figures: neighbours 0.2, star, first loads up to 1.40, which a yield load of 1.3 forbids.
  std::vector<LoadStep> ones;
  for (const std::size_t bolt : star) ones.push_back({bolt, 1});
  const auto eight = try_measured_losses(star, try_tighten(ring(8, 0.2), ones).value()).value();
  CHECK(eight.try_first_loads(Force(1), Force(2)).value()[0] == near(1.4).epsilon(1e-9));
  CHECK_FALSE(eight.try_first_loads(Force(1), Force(1.3)));
  // Two bolts: the first loses c times what the second gains.
  CHECK(try_measured_losses({0, 1}, {{1, 0}, {0.7, 1}}).value().loss(0, 1) == near(0.3));
  CHECK_FALSE(try_measured_losses({0, 1}, {{1, 0}}));
  CHECK_FALSE(try_measured_losses({0, 1}, {{1, 0}, {0.7}}));
  CHECK_FALSE(try_measured_losses({0, 1}, {{1, 0}, {0.7, std::nan("")}}));
  CHECK_FALSE(try_measured_losses({0, 1}, {{1, 0}, {0.7, 0}}));
  CHECK_FALSE(try_measured_losses({0, 0}, {{1, 0}, {0.7, 1}}));
  // Readings of which no elastic joint is the cause: all load lost and more.
  CHECK_FALSE(try_measured_losses({0, 1}, {{1, 0}, {-0.5, 1}}).value().try_interaction_of_equal_bolts());
}

TEST_CASE("group interaction: scatter of loads against a plain simulation, and against no interaction at all") {
  const Interaction joint = ring(8, 0.25);
  std::vector<LoadStep> plan;
  for (const double share : {0.3, 0.6, 1.0, 1.0})
    for (const std::size_t bolt : try_crosswise_order(8).value()) plan.push_back({bolt, 50e3 * share});
  const ScatteredLoads found = try_scattered_loads(joint, plan, {0.15, 0.05, 0.03}, 20000, 3).value();
  // The same with another generator, one joint after another.
  std::mt19937_64 random(8);
  std::normal_distribution<double> normal;
  std::vector<double> lowest;
  std::vector<double> first;
  const auto s = [](double v) { return std::sqrt(std::log1p(v * v)); };
  const auto factor = [&](double v) { return std::exp(s(v) * normal(random) - s(v) * s(v) / 2); };
  for (int trial = 0; trial < 20000; ++trial) {
    const double wrench = factor(0.03);
    std::vector<double> friction;
    for (int i = 0; i < 8; ++i) friction.push_back(factor(0.15));
    TighteningRun run(joint);
    for (const LoadStep step : plan) run.tighten(step.bolt, step.load * wrench * friction[step.bolt] * factor(0.05));
    lowest.push_back(*std::min_element(run.loads().begin(), run.loads().end()));
    first.push_back(run.loads()[0]);
  }
  const auto same = [](const Band<Force>& band, std::vector<double>& plain) {
    const auto other = detail::quantiles(plain);
    CHECK(band.low.si == near(other.low.si).epsilon(0.012));
    CHECK(band.nominal.si == near(other.nominal.si).epsilon(0.006));
    CHECK(band.high.si == near(other.high.si).epsilon(0.012));
  };
  same(found.lowest, lowest);
  same(found.bolts[0], first);
  CHECK(found.lowest.nominal.si < found.highest.nominal.si);
  // Bolts that do not meet, one act each: a lognormal load of known quantiles.
  const ScatteredLoads alone = try_scattered_loads(ring(2, 0), {{0, 1}, {1, 1}}, {0, 0.2, 0}, 100000).value();
  CHECK(alone.bolts[1].high.si == near(std::exp(1.959964 * s(0.2) - s(0.2) * s(0.2) / 2)).epsilon(0.006));
  CHECK(alone.relieved == 0);
  // No scatter: the history itself.
  const ScatteredLoads sure = try_scattered_loads(joint, plan, {}, 100).value();
  const auto history = try_tighten(joint, plan).value();
  for (std::size_t i = 0; i < 8; ++i) CHECK(sure.bolts[i].high.si == near(history.back()[i]).epsilon(1e-6));
  // Bolts relieved to zero on the way are followed on their own: strong neighbours.
  const ScatteredLoads strong =
      try_scattered_loads(ring(5, 0.45), {{0, 1}, {1, 2}, {4, 2}, {0, 1}}, {0.3, 0, 0}, 2000).value();
  CHECK(strong.relieved > 0.05);
  CHECK(strong.lowest.low.si >= 0);
  CHECK_FALSE(try_scattered_loads(joint, plan, {-0.1, 0, 0}));
  CHECK_FALSE(try_scattered_loads(joint, plan, {0, std::nan(""), 0}));
  CHECK_FALSE(try_scattered_loads(joint, plan, {}, 10));
  CHECK_FALSE(try_scattered_loads(joint, {}, {}));
  CHECK_FALSE(try_scattered_loads(joint, {{9, 1}}, {}));
}

}  // namespace

}  // namespace group_interaction_test
