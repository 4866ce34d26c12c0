// Distributions against their definitions: moments by integrating quantiles, chances by areas under the density.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "tauten/base/lognormal.hpp"
#include "tauten/uncertainty/distribution.hpp"

#include "near.hpp"

namespace distribution_test {

using namespace tauten;

namespace {

// Preloads of ten lubricated bolts at 90 N.m, kN: Shigley, Mechanical Engineering Design, 9th ed., Table 8-14.
const std::vector<double> ten_bolts{30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5};

std::vector<Distribution> one_of_each() {
  return {Distribution(3.5),
          Distribution::normal(-2, 0.5),
          Distribution::lognormal(40, 0.3),
          Distribution::uniform(0.08, 0.16),
          Distribution::triangular(0.08, 0.10, 0.16),
          Distribution::triangular(0, 0, 1),
          Distribution::triangular(0, 1, 1),
          Distribution::two_piece(0.08, 0.10, 0.16),
          Distribution::from_samples(ten_bolts)};
}

}  // namespace

TEST_CASE("mean and standard deviation are the integrals of the quantile") {
  constexpr int parts = 400000;
  for (const Distribution& d : one_of_each()) {
    CAPTURE(static_cast<int>(d.shape()));
    std::vector<double> values;
    double sum = 0, squares = 0;
    for (int i = 0; i < parts; ++i) sum += values.emplace_back(d.quantile((i + 0.5) / parts));
    for (const double x : values) squares += std::pow(x - sum / parts, 2);
    CHECK(d.mean() == near(sum / parts).epsilon(1e-5));
    CHECK(d.standard_deviation() == near(std::sqrt(squares / parts)).epsilon(1e-4));
  }
}

TEST_CASE("quantiles are known values") {
  // Tables of the normal distribution.
  CHECK(Distribution::normal(10, 2).quantile(0.975) == near(10 + 2 * 1.959963984540).epsilon(1e-12));
  CHECK(Distribution::lognormal(5, 0.2).quantile(0.9) == near(Lognormal{5, 0.2}.quantile(0.9)).epsilon(1e-12));
  CHECK(Distribution::lognormal(5, 0.2).mean() == near(5 * std::sqrt(1.04)));
  CHECK(Distribution::uniform(-1, 3).quantile(0.25) == near(0));
  // Standard uncertainty of a tolerance +-a: a/sqrt 3, triangular a/sqrt 6 (JCGM 100:2008, 4.3.7 and 4.3.9).
  CHECK(Distribution::uniform(-1, 1).standard_deviation() == near(1 / std::sqrt(3.0)));
  CHECK(Distribution::triangular(-1, 0, 1).standard_deviation() == near(1 / std::sqrt(6.0)));
}

TEST_CASE("the triangle has the area of its density below every quantile") {
  const double low = 0.08, mode = 0.1, high = 0.16;
  const Distribution d = Distribution::from_band(low, mode, high);
  for (double p = 0.001; p < 1; p += 0.001) {
    const double x = d.quantile(p);
    const double area = x <= mode ? (x - low) * (x - low) / ((high - low) * (mode - low))
                                  : 1 - (high - x) * (high - x) / ((high - low) * (high - mode));
    CHECK(area == near(p).epsilon(1e-12));
  }
  CHECK(d.quantile(0) == low);
  CHECK(d.quantile(1) == high);
}

TEST_CASE("a two-piece band holds its coverage, half of it on each side of the nominal") {
  const Distribution d = Distribution::two_piece(0.08, 0.10, 0.16, 0.9);
  CHECK(d.quantile(0.05) == near(0.08).epsilon(1e-12));
  CHECK(d.quantile(0.50) == near(0.10).epsilon(1e-12));
  CHECK(d.quantile(0.95) == near(0.16).epsilon(1e-12));
}

TEST_CASE("samples keep their published mean and deviation") {
  const Distribution d = Distribution::from_samples(ten_bolts);
  CHECK(d.mean() == near(34.18).epsilon(1e-12));            // as printed below the table
  CHECK(std::fabs(d.standard_deviation() - 2.88) < 0.005);  // printed, for n - 1
  CHECK(d.quantile(0) < 30.3);
  CHECK(d.quantile(1) > 40.5);
  CHECK(d.quantile(0) > 30.3 - 0.15 * (40.5 - 30.3));
  CHECK(d.quantile(0.5) == near((32.9 + 33.8) / 2).epsilon(0.005));
  // 1, 2, 3 deviate by 1: (1 + 0 + 1)/2.
  CHECK(Distribution::from_samples(std::vector<double>{1, 2, 3}).standard_deviation() == near(1));
  CHECK(Distribution::from_samples(std::vector<double>{1, 2, 3}).mean() == near(2));
  // Of many samples the range comes near theirs.
  std::vector<double> many;
  for (int i = 0; i < 50; ++i) many.insert(many.end(), ten_bolts.begin(), ten_bolts.end());
  CHECK(Distribution::from_samples(many).standard_deviation() == near(2.88 * std::sqrt(0.9)).epsilon(0.01));
  CHECK(Distribution::from_samples(std::vector<double>{7, 7}).standard_deviation() == 0);
}

TEST_CASE("a draw is the quantile of its word and grows with it") {
  std::vector<std::uint32_t> words;
  for (std::uint64_t w = 0; w < (1ull << 32); w += 99991) words.push_back(static_cast<std::uint32_t>(w));
  words.push_back(0xFFFFFFFFu);
  for (const Distribution& d : one_of_each()) {
    CAPTURE(static_cast<int>(d.shape()));
    std::vector<double> x(words.size());
    d.draw(words.data(), x.data(), x.size());
    double before = x.front();
    bool rises = true;
    double worst = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
      const double wanted = d.quantile((static_cast<double>(words[i]) + 0.5) / 4294967296.0);
      worst = std::max(worst, std::fabs(x[i] - wanted));
      rises = rises && x[i] >= before - 1e-6 * d.standard_deviation();
      before = x[i];
    }
    CHECK(rises);
    CHECK(worst <= 5e-6 * d.standard_deviation() + 1e-6 * std::fabs(d.mean()) * (d.standard_deviation() > 0));
  }
}

TEST_CASE("the value at a normal number is the quantile of its chance") {
  for (const Distribution& d : one_of_each())
    for (double z = -4; z <= 4; z += 0.25)
      CHECK(d.at_normal(z) == near(d.quantile(std::erfc(-z / std::sqrt(2.0)) / 2)).epsilon(1e-9).scale(1));
}

TEST_CASE("no spread at all is allowed") {
  for (const Distribution& d : {Distribution::normal(2, 0), Distribution::uniform(2, 2), Distribution::lognormal(2, 0),
                                Distribution::triangular(2, 2, 2), Distribution::two_piece(2, 2, 2)})
    for (const double p : {0.0, 0.3, 1.0}) CHECK(d.quantile(p) == 2);
  CHECK(std::isnan(Distribution::uniform(0, 1).quantile(1.5)));
  CHECK(std::isnan(Distribution::uniform(0, 1).quantile(std::nan(""))));
}

TEST_CASE("a distribution that cannot be is refused by the name of the argument") {
  const double nan = std::nan("");
  const auto refused = [](const Outcome<Distribution>& d, const char* argument) {
    REQUIRE_FALSE(d);
    CAPTURE(d.error().what());
    CHECK(std::string(d.error().argument()) == argument);
  };
  refused(Distribution::try_normal(nan, 1), "mean");
  refused(Distribution::try_normal(0, -1), "standard_deviation");
  refused(Distribution::try_normal(0, HUGE_VAL), "standard_deviation");
  refused(Distribution::try_lognormal(0, 0.1), "median");
  refused(Distribution::try_lognormal(1, -0.1), "variation");
  refused(Distribution::try_uniform(2, 1), "band");
  refused(Distribution::try_uniform(nan, 1), "band");
  refused(Distribution::try_triangular(0, 2, 1), "band");
  refused(Distribution::try_from_band(0, 1, HUGE_VAL), "band");
  refused(Distribution::try_two_piece(0, 1, 2, 1), "coverage");
  refused(Distribution::try_from_samples({}), "samples");
  refused(Distribution::try_from_samples(std::vector<double>{7}), "samples");
  refused(Distribution::try_from_samples(std::vector<double>{1, nan}), "samples");
  CHECK_THROWS_AS(Distribution::normal(0, -1), Error);
}

}  // namespace distribution_test
