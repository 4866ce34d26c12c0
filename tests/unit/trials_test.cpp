// Intervals of sorted values and numerical tolerances, by hand.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tauten/uncertainty/trials.hpp"

#include "near.hpp"

namespace trials_test {

using namespace tauten;

TEST_CASE("coverage intervals of counted values: JCGM 101, 7.7") {
  std::vector<double> sorted;
  for (int i = 1; i <= 1000; ++i) sorted.push_back(i);
  // q = 950, r = (1000 - 950)/2 = 25: from the 25th to the 975th value.
  const CoverageInterval symmetric = detail::symmetric_interval(sorted, 0.95);
  CHECK(symmetric.low == 25);
  CHECK(symmetric.high == 975);
  // Squares lie closest at the start.
  for (double& x : sorted) x *= x;
  const CoverageInterval shortest = detail::shortest_interval(sorted, 0.95);
  CHECK(shortest.low == 1);
  CHECK(shortest.high == 951 * 951);
  const std::vector<double> one{3};
  CHECK(detail::symmetric_interval(one, 0.95).high == 3);
  CHECK(detail::shortest_interval(one, 0.95).low == 3);
}

TEST_CASE("half a unit of the last digit that counts: JCGM 101, 7.9.2") {
  // From memory: u = 0.41 with two digits gives 0.005, with one digit 0.05; u = 35 with two digits gives 0.5.
  CHECK(detail::numerical_tolerance(0.41, 2) == near(0.005));
  CHECK(detail::numerical_tolerance(0.41, 1) == near(0.05));
  CHECK(detail::numerical_tolerance(35, 2) == near(0.5));
  CHECK(detail::numerical_tolerance(0.0996, 2) == near(0.005));
  CHECK(detail::numerical_tolerance(0.0994, 2) == near(0.0005));
  CHECK(detail::numerical_tolerance(4.6e3, 2) == near(50));
  CHECK(detail::numerical_tolerance(0, 2) == 0);
}

TEST_CASE("sums of parts are the sum of the whole, and no value is lost") {
  std::mt19937 random(3);
  std::normal_distribution<double> normal(1e6, 1);
  for (const std::size_t blocks : {1u, 2u, 3u, 7u, 8u}) {
    detail::Gathered gathered;
    std::vector<double> all;
    for (std::size_t k = 0; k < blocks; ++k) {
      std::vector<double> values(50 + 13 * k);
      for (double& x : values) x = normal(random);
      all.insert(all.end(), values.begin(), values.end());
      gathered.add(detail::summed_up(values, 0.95, Coverage::symmetric));
    }
    double sum = 0, squares = 0;
    for (const double x : all) sum += x;
    const double mean = sum / static_cast<double>(all.size());
    for (const double x : all) squares += (x - mean) * (x - mean);
    CHECK(gathered.mean() == near(mean).epsilon(1e-14));
    CHECK(gathered.standard_uncertainty() ==
          near(std::sqrt(squares / static_cast<double>(all.size() - 1))).epsilon(1e-9));
    std::sort(all.begin(), all.end());
    std::sort(gathered.values.begin(), gathered.values.end());
    CHECK(gathered.values == all);
  }
}

TEST_CASE("intervals of values in any order are those of sorted values") {
  std::mt19937 random(5);
  std::normal_distribution<double> normal(0, 1);
  for (const std::size_t count : {1u, 2u, 19u, 20u, 200u, 1001u, 20'000u, 100'000u})
    for (const double coverage : {0.1, 0.5, 0.6827, 0.95, 0.99, 0.9999}) {
      std::vector<double> values(count);
      for (double& x : values) x = std::exp(normal(random));  // skew, so that the two intervals differ
      std::vector<double> sorted = values;
      std::sort(sorted.begin(), sorted.end());
      const CoverageInterval symmetric = detail::symmetric_interval(values, coverage);
      const CoverageInterval shortest = detail::shortest_interval(values, coverage);
      const CoverageInterval all_symmetric = detail::symmetric_interval(sorted, coverage);
      const CoverageInterval all_shortest = detail::shortest_interval(sorted, coverage);
      CHECK((symmetric.low == all_symmetric.low && symmetric.high == all_symmetric.high));
      CHECK((shortest.low == all_shortest.low && shortest.high == all_shortest.high));
    }
}

TEST_CASE("a value is found at its place also where a sample misleads") {
  // Every 32nd value is looked at first: here all of those are large, or small, or the values rise or are equal.
  std::vector<std::vector<double>> hard(5, std::vector<double>(10'000));
  for (std::size_t i = 0; i < 10'000; ++i) {
    const auto x = static_cast<double>(i * 7919 % 10'000);
    hard[0][i] = i % 32 == 0 ? 1e6 + x : x;
    hard[1][i] = i % 32 == 0 ? -1e6 - x : x;
    hard[2][i] = static_cast<double>(i);
    hard[3][i] = -static_cast<double>(i);
    hard[4][i] = 3;
  }
  for (const std::vector<double>& values : hard) {
    std::vector<double> sorted = values;
    std::sort(sorted.begin(), sorted.end());
    for (const std::size_t place : {0u, 1u, 249u, 312u, 5000u, 9998u, 9999u})
      CHECK(detail::value_at(values, place) == sorted[place]);
    for (const double coverage : {0.5, 0.95}) {
      const CoverageInterval found = detail::shortest_interval(values, coverage);
      const CoverageInterval wanted = detail::shortest_interval(sorted, coverage);
      CHECK(found.high - found.low == wanted.high - wanted.low);
    }
  }
}

TEST_CASE("quantiles lie on straight lines between neighbours, in whatever order the values come") {
  const std::vector<double> values{4, 1, 3, 2};  // the k-th of n values stands at (k - 1/2)/n
  CHECK(detail::quantile_of(values, 0) == 1);
  CHECK(detail::quantile_of(values, 0.125) == 1);
  CHECK(detail::quantile_of(values, 0.25) == near(1.5));
  CHECK(detail::quantile_of(values, 0.5) == near(2.5));
  CHECK(detail::quantile_of(values, 0.8) == near(3.7));
  CHECK(detail::quantile_of(values, 1) == 4);
  CHECK(std::isnan(detail::quantile_of({}, 0.5)));
}

}  // namespace trials_test
