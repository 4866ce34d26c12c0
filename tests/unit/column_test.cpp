#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include "sample.hpp"
#include "tauten/base/column.hpp"
#include "tauten/base/column_threads.hpp"
#include "tauten/friction/nut_factor.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/torque.hpp"

namespace column_test {

using namespace tauten;

namespace {

// Equal, or both NaN.
template <class Real>
bool same(Real a, Real b) {
  return a == b || (std::isnan(a) && std::isnan(b));
}

template <class Real>
std::vector<Real> spread(Real low, Real high, std::size_t rows) {
  std::vector<Real> column(rows);
  for (std::size_t i = 0; i < rows; ++i)
    column[i] = low + (high - low) * static_cast<Real>(i) / static_cast<Real>(rows);
  return column;
}

}  // namespace

TEST_CASE_TEMPLATE("a column holds what the scalar kernel gives, NaN rows included", Real, double, float) {
  // 1003 rows leave a rest in every width of packed instructions.
  for (const std::size_t rows : {std::size_t{0}, std::size_t{1}, std::size_t{3}, std::size_t{1003}}) {
    std::vector<Real> torque = spread<Real>(-20, 300, rows);
    std::vector<Real> friction = spread<Real>(Real(0.3), Real(-0.1), rows);
    if (rows > 9) {
      torque[5] = std::numeric_limits<Real>::quiet_NaN();
      friction[8] = std::numeric_limits<Real>::infinity();
    }
    std::vector<Real> out(rows, Real(-1));
    REQUIRE(evaluate(preload_from_torque_exact, std::span<Real>(out), torque, 1.5e-3, 9.026e-3, friction, friction,
                     12.8e-3));
    int without_value = 0;
    for (std::size_t i = 0; i < rows; ++i) {
      const Real alone = preload_from_torque_exact.si(torque[i], Real(1.5e-3), Real(9.026e-3), friction[i], friction[i],
                                                      Real(12.8e-3));
      CAPTURE(i);
      CHECK(same(out[i], alone));
      without_value += std::isnan(out[i]);
    }
    if (rows > 100) {
      CHECK(without_value > 100);
      CHECK(without_value < 900);
    }
  }
}

TEST_CASE("the output may be the very memory of an input") {
  std::vector<double> torque = spread<double>(1, 90, 517);
  const std::vector<double> before = torque;
  REQUIRE(evaluate(preload_from_nut_factor, std::span<double>(torque), torque, 10e-3, 0.2));
  for (std::size_t i = 0; i < torque.size(); ++i) CHECK(torque[i] == preload_from_nut_factor.si(before[i], 10e-3, 0.2));
}

TEST_CASE("a number that lies in the output is read before it is overwritten") {
  std::vector<double> memory = {20, 30, 40, 50};
  REQUIRE(evaluate(preload_from_nut_factor, std::span<double>(memory), memory[0], 10e-3, 0.2));
  for (const double preload : memory) CHECK(preload == preload_from_nut_factor.si(20, 10e-3, 0.2));
}

TEST_CASE("a column of another length is refused and nothing is written") {
  const std::vector<double> torque(10, 48.0);
  const std::vector<double> diameter(9, 10e-3);
  std::vector<double> out(10, -7.0);
  CHECK_FALSE(evaluate(preload_from_nut_factor, std::span<double>(out), torque, diameter, 0.2));
  for (const double untouched : out) CHECK(untouched == -7.0);
  CHECK_FALSE(evaluate(preload_from_nut_factor, std::span<double>(out).first(9), torque, diameter, 0.2));
}

TEST_CASE("spans, vectors, arrays, integers and numbers mix") {
  const std::array<double, 3> torque = {20, 40, 60};
  const std::vector<double> diameter = {6e-3, 8e-3, 10e-3};
  std::array<double, 3> out{};
  REQUIRE(evaluate(preload_from_nut_factor, std::span<double>(out), torque, std::span<const double>(diameter), 0.2F));
  CHECK(out[2] == preload_from_nut_factor.si(60, 10e-3, static_cast<double>(0.2F)));
  REQUIRE(evaluate(setting_with_prevailing, std::span<double>(out), torque, 5));
  CHECK(out[1] == 45);
  const double plain_array[] = {1, 2, 3};
  REQUIRE(evaluate(setting_with_prevailing, std::span<double>(out), torque, plain_array));
  CHECK(out[2] == 63);
  // No column at all: the same number in every row.
  REQUIRE(evaluate(setting_with_prevailing, std::span<double>(out), 40, 5));
  CHECK(out[0] == 45);
  CHECK(out[2] == 45);
}

TEST_CASE("columns of any stride: members of structs, every third number, backwards") {
  struct Bolt {
    double torque;
    float length;
    double diameter;
  };
  std::vector<Bolt> bolts;
  std::vector<double> factors;
  for (int i = 0; i < 205; ++i) {
    bolts.push_back({10.0 + i, 0.1F, (6 + i % 20) * 1e-3});
    factors.insert(factors.end(), {0.1 + 1e-3 * i, -1, -1});
  }
  const std::span<const Bolt> all(bolts);
  const auto torque = column_of(all, &Bolt::torque);
  const auto diameter = column_of(all, &Bolt::diameter);
  const StridedColumn<double> factor{factors.data(), 3 * sizeof(double), bolts.size()};
  std::vector<double> out(bolts.size());
  REQUIRE(evaluate(preload_from_nut_factor, std::span<double>(out), torque, diameter, factor));
  for (std::size_t i = 0; i < out.size(); ++i)
    CHECK(out[i] == preload_from_nut_factor.si(bolts[i].torque, bolts[i].diameter, factors[3 * i]));
  const StridedColumn<double> backwards{factors.data() + 3 * 204, -3 * static_cast<std::ptrdiff_t>(sizeof(double)),
                                        bolts.size()};
  REQUIRE(evaluate(preload_from_nut_factor, std::span<double>(out), torque, 10e-3, backwards));
  CHECK(out[1] == preload_from_nut_factor.si(bolts[1].torque, 10e-3, factors[3 * 203]));
  CHECK_FALSE(evaluate(preload_from_nut_factor, std::span<double>(out).first(9), torque, diameter, 0.2));
  CHECK(column_of(std::span<const Bolt>(), &Bolt::torque).size() == 0);
}

TEST_CASE("any number of threads gives the numbers of one") {
  for (const std::size_t rows : {std::size_t{0}, std::size_t{1}, std::size_t{16'384}, std::size_t{50'001}}) {
    const std::vector<double> torque = spread<double>(-20, 300, rows), friction = spread<double>(0.3, -0.1, rows);
    const StridedColumn<double> backwards{rows == 0 ? nullptr : &friction[rows - 1],
                                          -static_cast<std::ptrdiff_t>(sizeof(double)), rows};
    const auto on = [&](auto evaluated) {
      std::vector<double> out(rows, -1);
      REQUIRE(evaluated(std::span<double>(out)));
      return out;
    };
    const auto alone = on([&](auto out) {
      return evaluate(preload_from_torque_exact, out, torque, 1.5e-3, 9.026e-3, backwards, friction, 12.8e-3);
    });
    for (const int threads : {-1, 1, 2, 7}) {
      const auto shared = on([&](auto out) {
        return evaluate_on(threads, preload_from_torque_exact, out, torque, 1.5e-3, 9.026e-3, backwards, friction,
                           12.8e-3);
      });
      std::size_t equal = 0;
      for (std::size_t i = 0; i < rows; ++i) equal += same(shared[i], alone[i]);
      CHECK(equal == rows);
    }
    std::vector<double> out(rows + 1, -7);
    CHECK_FALSE(evaluate_on(2, preload_from_torque_exact, std::span<double>(out), torque, 1.5e-3, 9.026e-3, friction,
                            friction, 12.8e-3));
    CHECK(out[0] == -7);
  }
}

}  // namespace column_test
