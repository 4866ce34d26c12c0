#include "tauten/group/interaction.hpp"

#include <doctest/doctest.h>

#include <random>

#include "near.hpp"

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

}  // namespace
