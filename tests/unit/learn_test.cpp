#include "tauten/loosening/learn.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

#include "near.hpp"

namespace learn_test {

using namespace tauten;
using How = Neighbour::How;

TEST_CASE("without outcomes the prior comes back") {
  const Learned l = learn({50, 0.4, 0.3, 0.01}, {});
  CHECK(l.median.nominal.si == near(50).epsilon(1e-6));
  CHECK(l.predictive.log_deviation() == near(0.5).epsilon(1e-3));
  CHECK(l.torque.high.si == near(50 * std::exp(1.6448536 * 0.5)).epsilon(1e-3));
}

TEST_CASE("known scatter and only freed fasteners: the conjugate normal form") {
  const double s = 0.25, between = 0.6, centre = std::log(40.0);
  const double torques[] = {55, 71, 62, 80};
  double sum = centre / (between * between), precision = 1 / (between * between);
  std::vector<Neighbour> undone;
  for (const double torque : torques) {
    undone.push_back({How::freed, Torque(torque)});
    sum += std::log(torque) / (s * s);
    precision += 1 / (s * s);
  }
  const Learned l = learn({40, between, s, 1e-3}, undone);
  CHECK(std::log(l.median.nominal.si) == near(sum / precision).epsilon(1e-5));
  CHECK(std::log(l.median.high.si / l.median.low.si) / (2 * 1.6448536) == near(1 / std::sqrt(precision)).epsilon(1e-4));
}

TEST_CASE("censored outcomes: a plain sum over a fine, wide grid") {
  const FreeTorquePrior prior{60, 0.5, 0.35, 0.4};
  const std::vector<Neighbour> undone = {
      {How::freed, Torque(48)}, {How::sheared, Torque(75)}, {How::freed, Torque(66)}, {How::unmoved, Torque(90)}};
  double total = 0, first = 0, second = 0, below = 0;
  const double asked = std::log(70.0);
  for (double mu = 2; mu < 7; mu += 0.01)
    for (double log_s = -3; log_s < 1; log_s += 0.02) {
      const double s = std::exp(log_s);
      double p =
          std::exp(-std::pow((mu - std::log(60.0)) / 0.5, 2) / 2 - std::pow((log_s - std::log(0.35)) / 0.4, 2) / 2);
      for (const Neighbour& one : undone) {
        const double z = (std::log(one.torque.si) - mu) / s;
        p *= one.how == How::freed ? std::exp(-z * z / 2) / s : std::erfc(z / std::sqrt(2.0)) / 2;
      }
      total += p;
      first += p * mu;
      second += p * mu * mu;
      below += p * std::erfc(-(asked - mu) / s / std::sqrt(2.0)) / 2;
    }
  const double mean = first / total, deviation = std::sqrt(second / total - mean * mean);
  const Learned l = learn(prior, undone);
  CHECK(std::log(l.median.nominal.si) == near(mean).epsilon(1e-4));
  CHECK(std::log(l.median.high.si / l.median.nominal.si) / 1.6448536 == near(deviation).epsilon(1e-3));
  // The chance of 70 N.m, found between the band's points by its own quantiles.
  CHECK(l.torque.low.si < 70);
  CHECK(l.torque.high.si > 70);
  CHECK(below / total == near(l.predictive.chance_below(70)).epsilon(0.03));
}

TEST_CASE("a stated band holds the truth as often as it says, over simulated flanges") {
  const FreeTorquePrior prior{60, 0.4, 0.3, 0.4};
  std::mt19937_64 generator(5);
  std::normal_distribution<double> normal;
  const int flanges = 500;
  int inside_next = 0, inside_median = 0, narrower = 0;
  for (int flange = 0; flange < flanges; ++flange) {
    const double mu = std::log(prior.median) + prior.between * normal(generator);
    const double s = prior.within * std::exp(prior.within_doubt * normal(generator));
    std::vector<Neighbour> undone;
    for (int bolt = 0; bolt < 4; ++bolt) {
      const double free = std::exp(mu + s * normal(generator)), breaks = 90 * std::exp(0.15 * normal(generator));
      const double limit = 80;
      if (free <= std::min(breaks, limit))
        undone.push_back({How::freed, Torque(free)});
      else
        undone.push_back({breaks < limit ? How::sheared : How::unmoved, Torque(std::min(breaks, limit))});
    }
    const Learned l = learn(prior, undone);
    const double next = std::exp(mu + s * normal(generator));
    inside_next += next > l.torque.low.si && next < l.torque.high.si;
    inside_median += std::exp(mu) > l.median.low.si && std::exp(mu) < l.median.high.si;
    narrower += l.torque.high.si / l.torque.low.si < std::exp(2 * 1.6448536 * 0.5);
  }
  const double error = std::sqrt(0.9 * 0.1 / flanges);
  MESSAGE("coverage of the next bolt " << inside_next / double(flanges) << ", of the median "
                                       << inside_median / double(flanges));
  CHECK(std::fabs(inside_next / double(flanges) - 0.9) < 3 * error);
  CHECK(std::fabs(inside_median / double(flanges) - 0.9) < 3 * error);
  CHECK(narrower > 0.75 * flanges);
}

TEST_CASE("learning: more of the same moves it further, many outcomes pin it down") {
  const FreeTorquePrior prior{60, 0.5, 0.3};
  const std::vector<Neighbour> few(2, {How::freed, Torque(30)}), more(8, {How::freed, Torque(30)});
  CHECK(learn(prior, more).median.nominal < learn(prior, few).median.nominal);
  CHECK(learn(prior, {{How::unmoved, Torque(90)}}).median.nominal.si > 60);
  std::vector<Neighbour> many;
  for (int i = 0; i < 1000; ++i)
    many.push_back({How::freed, Torque(300 * std::exp(0.2 * normal_quantile((i + 0.5) / 1000)))});
  const Learned l = learn(prior, many);  // far outside the prior
  CHECK(l.median.nominal.si == near(300).epsilon(0.01));
  CHECK(l.predictive.log_deviation() == near(0.2).epsilon(0.02));
}

TEST_CASE("the heavy-tailed distribution: its density by quadrature, and its tail") {
  double sum = 0;
  const double step = 1e-3;
  for (int i = 0; i < 403'000; ++i) sum += step * detail::heavy_density(-400 + (i + 0.5) * step);
  CHECK(detail::heavy_chance_above(3) == near(1 - sum).epsilon(1e-5));
  CHECK(detail::heavy_chance_above(0) == 0.5);
  CHECK(detail::heavy_chance_above(2.1318) == near(0.05).epsilon(1e-4));  // table of Student's distribution, 4 degrees
  CHECK(detail::heavy_chance_above(3.7469) == near(0.01).epsilon(1e-4));
  CHECK(detail::heavy_chance_above(999) == near(detail::heavy_chance_above(1001)).epsilon(0.01));
  CHECK(detail::heavy_log_density(2) == near(std::log(detail::heavy_density(2) / 0.375)));
}

TEST_CASE("heavy tails: a flange far from the description is believed, one odd fastener is not") {
  const FreeTorquePrior heavy = prior_of({480, 0.08}, 0.2);
  FreeTorquePrior narrow = heavy;
  narrow.heavy_tails = false;
  const std::vector<Neighbour> six(6, {How::freed, Torque(200)});
  CHECK(learn(heavy, six).torque.nominal.si == near(200).epsilon(0.02));
  std::vector<Neighbour> odd(6, {How::freed, Torque(480)});
  odd.push_back({How::freed, Torque(200)});
  CHECK(learn(heavy, odd).median.nominal.si > 470);
  CHECK(learn(narrow, odd).median.nominal.si < 470);
  // The prediction before any outcome is the description.
  const Lognormal before{300, 0.36};
  const Learned none = learn(prior_of(before), {});
  CHECK(none.torque.low.si == near(before.quantile(0.05)).epsilon(2e-3));
  CHECK(none.torque.high.si == near(before.quantile(0.95)).epsilon(2e-3));
}

TEST_CASE("learning refuses what has no meaning") {
  for (double bad : {0.0, -5.0, std::nan(""), HUGE_VAL}) {
    const auto got = try_learn({60, 0.5, 0.3}, {{How::freed, Torque(bad)}});
    REQUIRE_FALSE(got);
    CHECK(std::string(got.error().argument()) == "loosened");
  }
  CHECK_FALSE(try_learn({0, 0.5, 0.3}, {}));
  CHECK_FALSE(try_learn({60, std::nan(""), 0.3}, {}));
}

}  // namespace learn_test
