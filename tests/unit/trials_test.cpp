// Intervals of sorted values and numerical tolerances, by hand.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tauten/uncertainty/trials.hpp"

#include "near.hpp"

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

TEST_CASE("sums of parts are the sum of the whole, and blocks merge into order") {
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
    CHECK(std::move(gathered).sorted() == all);
  }
}
