#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "sample.hpp"
#include "tauten/tightening/torque.hpp"

#include "near.hpp"

namespace dual_test {

using tauten::Dual;
using tauten::Entry;

namespace {

// Derivative by central differences, sharpened once (Richardson), so that it is good to about ten digits.
template <class Function>
double difference(Function f, double x, double step) {
  const double wide = (f(x + step) - f(x - step)) / (2 * step);
  const double narrow = (f(x + step / 2) - f(x - step / 2)) / step;
  return (4 * narrow - wide) / 3;
}

}  // namespace

TEST_CASE("elementary functions have their textbook derivatives") {
  for (const double x : {0.03, 0.4, 0.9, 1.3}) {
    const auto v = Dual<2>::variable(x, 0);
    const auto w = Dual<2>::variable(0.7, 1);
    const auto same = [](double a) { return near(a).epsilon(1e-14); };
    CHECK(sqrt(v).slope[0] == same(1 / (2 * std::sqrt(x))));
    CHECK(sin(v).slope[0] == same(std::cos(x)));
    CHECK(cos(v).slope[0] == same(-std::sin(x)));
    CHECK(tan(v).slope[0] == same(1 / (std::cos(x) * std::cos(x))));
    CHECK(atan(v).slope[0] == same(1 / (1 + x * x)));
    CHECK(exp(v).slope[0] == same(std::exp(x)));
    CHECK(log(v).slope[0] == same(1 / x));
    CHECK(log1p(v).slope[0] == same(1 / (1 + x)));
    CHECK((v * w).slope[0] == same(0.7));
    CHECK((v * w).slope[1] == same(x));
    CHECK((v / w).slope[1] == same(-x / 0.49));
    CHECK((2 - v * v + w / 3).slope[0] == same(-2 * x));
    CHECK((1 / v).slope[0] == same(-1 / (x * x)));
    CHECK((-v).slope[0] == -1);
    CHECK(tauten::square(v).slope[0] == same(2 * x));
    CHECK(tauten::cube(v).slope[0] == same(3 * x * x));
    CHECK((v + 5.0).slope[1] == 0);
  }
}

TEST_CASE("the gradient of the linear torque is exact") {
  // M = F (P/(2 pi) + mu_G d_2/(2 cos 30) + mu_K D/2), differentiated by hand.
  const double F = 25e3, P = 1.5e-3, d = 9.026e-3, muG = 0.11, muK = 0.14, D = 12.8e-3;
  const double pi = std::acos(-1.0), root3 = std::sqrt(3.0);
  const auto g = tauten::tightening_torque.gradient(F, P, d, muG, muK, D);
  const auto same = [](double a) { return near(a).epsilon(1e-14); };
  CHECK(g.value == same(F * (P / (2 * pi) + muG * d / root3 + muK * D / 2)));
  CHECK(g.slope[0] == same(P / (2 * pi) + muG * d / root3 + muK * D / 2));
  CHECK(g.slope[1] == same(F / (2 * pi)));
  CHECK(g.slope[2] == same(F * muG / root3));
  CHECK(g.slope[3] == same(F * d / root3));
  CHECK(g.slope[4] == same(F * D / 2));
  CHECK(g.slope[5] == same(F * muK / 2));
}

TEST_CASE("the gradient of every formula equals central differences over its range of validity") {
  std::mt19937_64 random(20240501);
  for (const Entry& entry : tauten::shared::registry()) {
    CAPTURE(std::string(entry.name));
    int compared = 0;
    for (int round = 0; round < 40; ++round) {
      const std::vector<double> x = sample::inputs(entry, random);
      REQUIRE(x.size() == entry.inputs.size());
      std::vector<double> slopes(x.size());
      const double value = entry.gradient(x.data(), slopes.data());
      CHECK(value == near(entry.value(x.data())).epsilon(1e-14));
      for (std::size_t i = 0; i < x.size(); ++i) {
        const auto along = [&](double at) {
          std::vector<double> moved = x;
          moved[i] = at;
          return entry.value(moved.data());
        };
        // Three steps show how much of a difference is rounding, which grows where a formula nearly cancels.
        const double estimate = difference(along, x[i], x[i] * 1e-4);
        const double narrow = difference(along, x[i], x[i] * 3e-5);
        const double wide = difference(along, x[i], x[i] * 3e-4);
        if (!std::isfinite(wide)) continue;  // the step left the domain
        CAPTURE(std::string(entry.inputs[i].name));
        CAPTURE(x[i]);
        const double rounding = std::fabs(estimate - narrow) + std::fabs(estimate - wide);
        const double resolution = 1e-8 * std::fabs(slopes[i]) + 1e-10 * std::fabs(value / x[i]) + 10 * rounding;
        // Beside the end of a domain a slope may change faster than differences can follow.
        if (rounding > 1e-4 * (std::fabs(slopes[i]) + std::fabs(value / x[i]))) continue;
        ++compared;
        CHECK(std::fabs(slopes[i] - estimate) <= resolution);
      }
    }
    CHECK(compared > 20 * entry.arity());
  }
}

}  // namespace dual_test
