#include "tauten/base/normal.hpp"
#include "tauten/base/lognormal.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "near.hpp"

namespace normal_test {

using namespace tauten;

TEST_CASE("normal: tabulated values") {
  // Abramowitz and Stegun, tables 26.1 and 26.5 (from memory).
  CHECK(normal_chance(0) == 0.5);
  CHECK(normal_chance(1) == near(0.841344746068543).epsilon(1e-14));
  CHECK(normal_chance(-5) == near(2.866515718791939e-7).epsilon(1e-12));
  CHECK(normal_quantile(0.975) == near(1.959963984540054).epsilon(1e-13));
  CHECK(normal_quantile(0.05) == near(-1.644853626951473).epsilon(1e-13));
  CHECK(normal_quantile(1e-9) == near(-5.997807015007686).epsilon(1e-12));
}

TEST_CASE("normal: the inverse goes back, far down too") {
  for (double x = -37; x < 5; x += 0.37) CHECK(normal_quantile(normal_chance(x)) == near(x).epsilon(1e-9).scale(1));
  CHECK(normal_quantile(0) == -HUGE_VAL);
  CHECK(normal_quantile(1) == HUGE_VAL);
  CHECK(std::isnan(normal_quantile(-0.1)));
  CHECK(std::isnan(normal_quantile(std::nan(""))));
}

TEST_CASE("normal: logarithm of the chance is smooth where the series takes over") {
  CHECK(log_normal_chance(-20.0000001) == near(log_normal_chance(-19.9999999)).epsilon(1e-7));
  for (double x = -36; x < -20; x += 0.5)
    CHECK(log_normal_chance(x) == near(std::log(normal_chance(x))).epsilon(1e-11));
}

TEST_CASE("normal: the fast draw keeps its stated error") {
  double worst = 0;
  const auto look = [&](std::uint32_t bits) {
    const double tail = ((bits & 0x7FFFFFFFu) + 0.5) / 4294967296.0;
    const double exact = (bits >> 31) != 0 ? -normal_quantile(tail) : normal_quantile(tail);
    worst = std::max(worst, std::fabs(static_cast<double>(detail::normal_from_bits(bits)) - exact));
  };
  for (std::uint64_t bits = 0; bits < (1ull << 32); bits += 60013) look(static_cast<std::uint32_t>(bits));
  for (std::uint32_t bits = 0; bits < 2000; ++bits) {
    look(bits);
    look(~bits);
    look(0x7FFFFFFFu - bits);
  }
  CHECK(worst < 2e-6);
  CHECK(worst > 1e-8);  // single precision cannot do better: the check has looked
}

TEST_CASE("normal: fast exponential and logarithm keep their stated errors") {
  for (float x = -79; x < 79; x += 0.37f) {
    const auto exact = std::exp(static_cast<double>(x));
    CHECK(std::fabs(static_cast<double>(detail::fast_exp(x)) / exact - 1) < 3e-7);
    const auto y = static_cast<float>(exact);
    const double log_exact = std::log(static_cast<double>(y));
    CHECK(std::fabs(static_cast<double>(detail::fast_log(y)) - log_exact) < 2e-7 * std::max(1.0, std::fabs(log_exact)));
  }
}

TEST_CASE("lognormal: quantiles, chances, product") {
  const Lognormal x{40, 0.3};
  CHECK(x.chance_below(x.quantile(0.123)) == near(0.123));
  CHECK(x.quantile(0.5) == near(40));
  const Lognormal between = lognormal_between(20, 80);
  CHECK(between.quantile(0.05) == near(20));
  CHECK(between.quantile(0.95) == near(80));
  const Lognormal y{2, 0.4}, both = x * y;
  CHECK(both.median == near(80));
  // Variances of logarithms add.
  CHECK(std::pow(both.log_deviation(), 2) == near(std::pow(x.log_deviation(), 2) + std::pow(y.log_deviation(), 2)));
  CHECK(Lognormal{0, 0.5}.chance_below(0) == 1);
  CHECK(Lognormal{3, 0}.chance_below(2.9) == 0);
  CHECK(Lognormal{3, 0}.quantile(0.01) == 3);
}

}  // namespace normal_test
