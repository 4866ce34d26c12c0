// Models made of plain functions: values and derivatives.
#include <doctest/doctest.h>

#include <cmath>

#include "tauten/uncertainty/model.hpp"

#include "near.hpp"

namespace model_test {

using namespace tauten;

TEST_CASE("a function of any scalar has exact derivatives") {
  const Model model = model_of<2>({"y"}, {{{"a"}, {"b"}}}, [](auto x) { return x[0] * x[0] * tauten::sin(x[1]); });
  const double x[] = {3, 0.7}, scale[] = {0, 0};
  double slopes[2] = {};
  CHECK(model.gradient(x, scale, slopes) == near(9 * std::sin(0.7)).epsilon(1e-15));
  CHECK(slopes[0] == near(6 * std::sin(0.7)).epsilon(1e-15));
  CHECK(slopes[1] == near(9 * std::cos(0.7)).epsilon(1e-15));
  CHECK(model.value(x) == near(9 * std::sin(0.7)).epsilon(1e-15));
}

TEST_CASE("a function of doubles has derivatives by differences, whatever the size of its inputs") {
  const Model model = model_of({"y"}, {{"length", Dim::length}, {"stress", Dim::stress}, {"zero"}},
                               [](std::span<const double> x) { return std::exp(x[0] / 1e-3) * x[1] / 1e6 + x[2]; });
  const double x[] = {2e-3, 640e6, 0};
  for (const bool spread : {true, false}) {
    const double scale[] = {spread ? 1e-4 : 0, spread ? 30e6 : 0, spread ? 1e-9 : 0};
    double slopes[3] = {};
    CHECK(model.gradient(x, scale, slopes) == near(640 * std::exp(2.0)).epsilon(1e-14));
    CHECK(slopes[0] == near(640e3 * std::exp(2.0)).epsilon(1e-8));
    CHECK(slopes[1] == near(std::exp(2.0) / 1e6).epsilon(1e-8));
    // The third input is lost in the rounding of a result of 4729 unless it moves enough.
    if (!spread) CHECK(slopes[2] == near(1).epsilon(1e-6));
  }
}

TEST_CASE("many rows are many single values") {
  const Model one = model_of({"y"}, {{"a"}, {"b"}}, [](std::span<const double> x) { return x[0] / x[1]; });
  const Model other = model_of<2>({"y"}, {{{"a"}, {"b"}}}, [](auto x) { return x[0] / x[1]; });
  std::vector<double> a, b;
  for (int i = 0; i < 1000; ++i) {
    a.push_back(i);
    b.push_back(1 + 0.1 * i);
  }
  const double* const columns[] = {a.data(), b.data()};
  std::vector<double> y(a.size()), z(a.size());
  one.rows(columns, y.data(), y.size());
  other.rows(columns, z.data(), z.size());
  for (std::size_t i = 0; i < y.size(); ++i) {
    CHECK(y[i] == a[i] / b[i]);
    CHECK(z[i] == y[i]);
  }
}

}  // namespace model_test
