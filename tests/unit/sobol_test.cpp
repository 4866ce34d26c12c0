// Sobol indices against the exact ones of the Ishigami function, of sums and of products.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tauten/uncertainty/sobol.hpp"

#include "near.hpp"

namespace sobol_test {

using namespace tauten;

namespace {

const double a = 7, b = 0.1, pi_4 = std::pow(M_PI, 4);

Model ishigami() {
  return model_of({"y"}, {{"x1"}, {"x2"}, {"x3"}}, [](std::span<const double> x) {
    return std::sin(x[0]) + a * std::pow(std::sin(x[1]), 2) + b * std::pow(x[2], 4) * std::sin(x[0]);
  });
}

JointDistribution even(const Model& model) {
  std::vector<InputDistribution> given;
  for (const Variable& v : model.inputs) given.push_back({v.name, Distribution::uniform(-M_PI, M_PI)});
  return joint_distribution(model, given);
}

}  // namespace

TEST_CASE("the exact indices of the Ishigami function") {
  // Ishigami and Homma 1990. Parts of the variance by hand: E sin^2 = 1/2, Var sin^2 = 1/8, E x^4 = pi^4/5,
  // E x^8 = pi^8/9.
  const double part_1 = 0.5 * std::pow(1 + b * pi_4 / 5, 2);
  const double part_2 = a * a / 8;
  const double part_13 = 0.5 * b * b * pi_4 * pi_4 * (1.0 / 9 - 1.0 / 25);
  const double all = part_1 + part_2 + part_13;
  const double first[] = {part_1 / all, part_2 / all, 0};
  const double total[] = {(part_1 + part_13) / all, part_2 / all, part_13 / all};
  CHECK(first[0] == near(0.3139).epsilon(1e-3));  // as often printed
  CHECK(total[2] == near(0.2437).epsilon(1e-3));

  const Sobol s = sobol(ishigami(), even(ishigami()), {.trials = 200000});
  CHECK(s.mean == near(a / 2).epsilon(0.01));
  CHECK(s.variance == near(all).epsilon(0.01));
  for (std::size_t i = 0; i < 3; ++i) {
    CAPTURE(i);
    CHECK(std::fabs(s.inputs[i].first - first[i]) < 4 * s.inputs[i].first_error);
    CHECK(std::fabs(s.inputs[i].total - total[i]) < 4 * s.inputs[i].total_error);
    CHECK(s.inputs[i].first_error < 0.006);
    CHECK(s.inputs[i].total_error < 0.006);
  }
}

TEST_CASE("standard errors are honest: over many seeds the deviations scatter as they say") {
  const double part_1 = 0.5 * std::pow(1 + b * pi_4 / 5, 2), part_2 = a * a / 8;
  const double all = part_1 + part_2 + 0.5 * b * b * pi_4 * pi_4 * (1.0 / 9 - 1.0 / 25);
  const double first[] = {part_1 / all, part_2 / all, 0};
  const double total[] = {1 - part_2 / all, part_2 / all, 1 - (part_1 + part_2) / all};
  double squares = 0;
  constexpr int seeds = 40;
  for (int seed = 1; seed <= seeds; ++seed) {
    const Sobol s = sobol(ishigami(), even(ishigami()), {.trials = 16384, .seed = static_cast<std::uint64_t>(seed)});
    for (std::size_t i = 0; i < 3; ++i) {
      squares += std::pow((s.inputs[i].first - first[i]) / s.inputs[i].first_error, 2);
      squares += std::pow((s.inputs[i].total - total[i]) / s.inputs[i].total_error, 2);
    }
  }
  const double scatter = std::sqrt(squares / (6 * seeds));
  CHECK(scatter > 0.75);
  CHECK(scatter < 1.3);
}

TEST_CASE("in a sum first and total order are the shares of the variances") {
  const Model sum = model_of<3>({"y"}, {{{"p"}, {"q"}, {"r"}}}, [](auto x) { return x[0] + 2 * x[1] + x[2]; });
  const Sobol s = sobol(sum, joint_distribution(sum, {{"p", Distribution::normal(1000, 1)},
                                                      {"q", Distribution::uniform(0, std::sqrt(12.0))},
                                                      {"r", 3.0}}));
  const double shares[] = {0.2, 0.8, 0.0};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(s.inputs[i].first == near(shares[i]).epsilon(0.03));
    CHECK(s.inputs[i].total == near(shares[i]).epsilon(0.03));
  }
  CHECK(s.inputs[2].total == 0);
}

TEST_CASE("in a product the total order holds what inputs do together") {
  // y = p q, means 1 and variances v, w: Var = v + w + v w.
  const double v = 0.25, w = 0.16, all = v + w + v * w;
  const Model product = model_of<2>({"y"}, {{{"p"}, {"q"}}}, [](auto x) { return x[0] * x[1]; });
  const Sobol s = sobol(product, joint_distribution(product, {{"p", Distribution::normal(1, std::sqrt(v))},
                                                              {"q", Distribution::normal(1, std::sqrt(w))}}));
  CHECK(std::fabs(s.inputs[0].first - v / all) < 4 * s.inputs[0].first_error);
  CHECK(std::fabs(s.inputs[1].first - w / all) < 4 * s.inputs[1].first_error);
  CHECK(std::fabs(s.inputs[0].total - (v + v * w) / all) < 4 * s.inputs[0].total_error);
  CHECK(std::fabs(s.inputs[1].total - (w + v * w) / all) < 4 * s.inputs[1].total_error);
}

TEST_CASE("the same indices bit for bit on any number of threads") {
  const Sobol one = sobol(ishigami(), even(ishigami()), {.trials = 20000});
  for (const int threads : {2, 3, 7, 64}) {
    const Sobol many = sobol(ishigami(), even(ishigami()), {.trials = 20000, .jobs = threads});
    CHECK(many.variance == one.variance);
    for (std::size_t i = 0; i < 3; ++i) {
      CHECK(many.inputs[i].first == one.inputs[i].first);
      CHECK(many.inputs[i].total_error == one.inputs[i].total_error);
    }
  }
}

TEST_CASE("a run can be watched and stopped") {
  std::uint64_t last = 0, expected = 0;
  const Sobol s = sobol(ishigami(), even(ishigami()), {.trials = 65536, .progress = [&](const Progress& p) {
                                                         CHECK(p.done > last);
                                                         last = p.done;
                                                         expected = p.expected;
                                                         return last < 10000;
                                                       }});
  CHECK(s.stopped);
  CHECK(s.trials == last);
  CHECK(expected == 65536);
  CHECK(s.inputs[1].first == near(0.44).epsilon(0.2));
}

TEST_CASE("what has no indices is refused") {
  const Model model = model_of<2>({"y"}, {{{"p"}, {"q"}}}, [](auto x) { return x[0] * x[1]; });
  const Distribution d = Distribution::normal(0, 1);
  const auto refused = [](const Outcome<Sobol>& s, const char* argument) {
    REQUIRE_FALSE(s);
    CHECK(std::string(s.error().argument()) == argument);
  };
  const auto fine = joint_distribution(model, {{"p", d}, {"q", d}});
  refused(try_sobol(model, joint_distribution(model, {{"p", d}, {"q", d}}, {{"p", "q", 0.5}})), "correlations");
  refused(try_sobol(model, joint_distribution(model, {{"p", 1.0}, {"q", 2.0}})), "inputs");
  refused(try_sobol(model, fine, {.trials = 10}), "trials");
  refused(try_sobol(model, fine, {.batches = 1}), "batches");
  refused(try_sobol(model, fine, {.jobs = 0}), "jobs");
  refused(try_sobol(model, JointDistribution{}), "inputs");
  const Model root = model_of({"y"}, {{"p"}}, [](std::span<const double> x) { return std::sqrt(x[0]); });
  refused(try_sobol(root, joint_distribution(root, {{"p", Distribution::normal(-1, 1)}})), "inputs");
}

}  // namespace sobol_test
