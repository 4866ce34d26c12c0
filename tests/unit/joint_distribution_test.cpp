// Draws of several inputs together: independence, correlation, and what is refused.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tauten/uncertainty/joint_distribution.hpp"

#include "near.hpp"

namespace joint_distribution_test {

using namespace tauten;

namespace {

Model sum_of(int inputs) {
  std::vector<Variable> names;
  for (int i = 0; i < inputs; ++i) names.push_back({std::string(1, static_cast<char>('a' + i))});
  return model_of({"y"}, names, [](std::span<const double> x) {
    double sum = 0;
    for (const double each : x) sum += each;
    return sum;
  });
}

using Columns = std::vector<std::vector<double>>;

Columns drawn(const JointDistribution& joint, std::size_t trials, std::uint64_t seed = 1, std::uint32_t stream = 0) {
  Columns all(joint.size(), std::vector<double>(trials));
  for (std::size_t first = 0; first < trials; first += 200) {
    std::vector<double*> at;
    for (auto& column : all) at.push_back(&column[first]);
    joint.draw(seed, stream, first, std::min<std::size_t>(200, trials - first), at.data());
  }
  return all;
}

double correlation_of(const std::vector<double>& x, const std::vector<double>& y) {
  double mx = 0, my = 0, xx = 0, yy = 0, xy = 0;
  const auto n = static_cast<double>(x.size());
  for (std::size_t i = 0; i < x.size(); ++i) mx += x[i] / n, my += y[i] / n;
  for (std::size_t i = 0; i < x.size(); ++i) {
    xx += (x[i] - mx) * (x[i] - mx);
    yy += (y[i] - my) * (y[i] - my);
    xy += (x[i] - mx) * (y[i] - my);
  }
  return xy / std::sqrt(xx * yy);
}

}  // namespace

TEST_CASE("a trial does not depend on how the trials are cut into blocks") {
  const JointDistribution joint = joint_distribution(sum_of(6),
                                                     {{"a", Distribution::normal(0, 1)},
                                                      {"b", Distribution::uniform(0, 1)},
                                                      {"c", 2.0},
                                                      {"d", Distribution::triangular(0, 1, 3)},
                                                      {"e", Distribution::normal(5, 2)},
                                                      {"f", Distribution::uniform(1, 2)}},
                                                     {{"a", "e", 0.5}});
  const Columns all = drawn(joint, 1000);
  for (std::size_t trial : {0u, 1u, 199u, 200u, 777u}) {
    std::vector<double> one(6);
    std::vector<double*> at;
    for (double& x : one) at.push_back(&x);
    joint.draw(1, 0, trial, 1, at.data());
    for (std::size_t i = 0; i < 6; ++i) CHECK(one[i] == all[i][trial]);
  }
  CHECK(drawn(joint, 5, 2)[0] != drawn(joint, 5, 1)[0]);
  CHECK(drawn(joint, 5, 1, 1)[0] != drawn(joint, 5, 1, 0)[0]);
}

TEST_CASE("inputs are independent unless stated") {
  std::vector<InputDistribution> given;
  for (char name = 'a'; name < 'k'; ++name) given.push_back({std::string(1, name), Distribution::uniform(0, 1)});
  const Columns all = drawn(joint_distribution(sum_of(10), given), 100000);
  for (std::size_t i = 0; i < 10; ++i)
    for (std::size_t j = 0; j < i; ++j) CHECK(std::fabs(correlation_of(all[i], all[j])) < 4.5 / std::sqrt(1e5));
}

TEST_CASE("a coefficient is the ordinary one for normal inputs and a little less for uniform ones") {
  for (const double r : {-1.0, -0.5, 0.3, 0.9, 1.0}) {
    CAPTURE(r);
    const auto of = [&](const Distribution& d) {
      const Columns all = drawn(joint_distribution(sum_of(3), {{"a", d}, {"b", d}, {"c", d}}, {{"a", "c", r}}), 100000);
      CHECK(std::fabs(correlation_of(all[0], all[1])) < 0.015);
      return correlation_of(all[0], all[2]);
    };
    CHECK(of(Distribution::normal(3, 0.5)) == near(r).epsilon(0.012).scale(1));
    CHECK(of(Distribution::uniform(1, 2)) == near(6 / M_PI * std::asin(r / 2)).epsilon(0.015).scale(1));
  }
}

TEST_CASE("correlation leaves each input its own distribution") {
  const Distribution d = Distribution::from_band(0.08, 0.10, 0.16);
  std::vector<double> x = drawn(joint_distribution(sum_of(2), {{"a", d}, {"b", d}}, {{"a", "b", 0.8}}), 100000)[1];
  std::sort(x.begin(), x.end());
  double worst = 0;  // Kolmogorov's distance, through quantiles
  for (double p = 0.01; p < 1; p += 0.01) {
    const auto below = static_cast<double>(std::lower_bound(x.begin(), x.end(), d.quantile(p)) - x.begin());
    worst = std::max(worst, std::fabs(below / 1e5 - p));
  }
  CHECK(worst < 1.95 / std::sqrt(1e5));  // exceeded once in a thousand samples
}

TEST_CASE("the order in which inputs are given does not matter") {
  const auto one = joint_distribution(sum_of(2), {{"a", Distribution::normal(0, 1)}, {"b", 7.0}});
  const auto other = joint_distribution(sum_of(2), {{"b", 7.0}, {"a", Distribution::normal(0, 1)}});
  CHECK(drawn(one, 50) == drawn(other, 50));
}

TEST_CASE("what does not fit the model is refused by the name of the input") {
  const auto refused = [](const std::vector<InputDistribution>& given, const std::vector<Correlation>& pairs,
                          const char* argument) {
    const auto joint = try_joint(sum_of(3), given, pairs);
    REQUIRE_FALSE(joint);
    CAPTURE(joint.error().what());
    CHECK(std::string(joint.error().argument()) == argument);
  };
  const std::vector<InputDistribution> fine{
      {"a", 1.0}, {"b", Distribution::normal(0, 1)}, {"c", Distribution::normal(0, 1)}};
  CHECK(try_joint(sum_of(3), fine));
  refused({{"a", 1.0}, {"b", 1.0}}, {}, "c");
  refused({{"a", 1.0}, {"b", 1.0}, {"c", 1.0}, {"d", 1.0}}, {}, "d");
  refused({{"a", 1.0}, {"b", 1.0}, {"c", 1.0}, {"a", 1.0}}, {}, "a");
  refused({{"a", std::nan("")}, {"b", 1.0}, {"c", 1.0}}, {}, "a");
  refused(fine, {{"b", "x", 0.5}}, "x");
  refused(fine, {{"b", "b", 0.5}}, "b");
  refused(fine, {{"b", "c", 1.5}}, "b");
  refused(fine, {{"b", "c", std::nan("")}}, "b");
  refused(fine, {{"b", "c", 0.5}, {"c", "b", 0.4}}, "c");
  refused(fine, {{"a", "b", 0.9}, {"a", "c", 0.9}, {"b", "c", -0.9}}, "correlations");
}

}  // namespace joint_distribution_test
