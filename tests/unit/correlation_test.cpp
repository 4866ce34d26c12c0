// The Cholesky factor against the matrix that it must give back.
#include <doctest/doctest.h>

#include <random>
#include <string>

#include "tauten/uncertainty/correlation.hpp"

#include "near.hpp"

namespace correlation_test {

using namespace tauten;

namespace {

double worst_difference(const std::vector<double>& lower, const std::vector<double>& matrix, std::size_t n) {
  double worst = 0;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      double sum = 0;
      for (std::size_t k = 0; k < n; ++k) sum += lower[i * n + k] * lower[j * n + k];
      worst = std::max(worst, std::fabs(sum - matrix[i * n + j]));
    }
  return worst;
}

}  // namespace

TEST_CASE("the factor gives back random correlation matrices, those of full rank and those below") {
  std::mt19937 random(5);
  std::normal_distribution<double> normal;
  for (int round = 0; round < 300; ++round) {
    const std::size_t n = 2 + static_cast<std::size_t>(round) % 15;
    const std::size_t rank = round % 3 == 0 ? 1 + n / 2 : n + 2;
    std::vector<double> rows(n * rank), matrix(n * n);
    for (double& x : rows) x = normal(random);
    for (std::size_t i = 0; i < n; ++i) {
      double length = 0;
      for (std::size_t k = 0; k < rank; ++k) length += rows[i * rank + k] * rows[i * rank + k];
      for (std::size_t k = 0; k < rank; ++k) rows[i * rank + k] /= std::sqrt(length);
    }
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j < n; ++j)
        for (std::size_t k = 0; k < rank; ++k) matrix[i * n + j] += rows[i * rank + k] * rows[j * rank + k];
    const auto lower = try_cholesky(matrix, n);
    REQUIRE(lower);
    CHECK(worst_difference(*lower, matrix, n) < 1e-9);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = i + 1; j < n; ++j) CHECK((*lower)[i * n + j] == 0);
  }
}

TEST_CASE("the known factor of two inputs") {
  const auto lower = try_cholesky({1, 0.6, 0.6, 1}, 2);
  REQUIRE(lower);
  CHECK((*lower)[0] == near(1));
  CHECK((*lower)[2] == near(0.6));
  CHECK((*lower)[3] == near(0.8));
}

TEST_CASE("correlations that contradict each other are refused") {
  for (const auto& matrix : {std::vector<double>{1, 0.9, 0.9, 0.9, 1, -0.9, 0.9, -0.9, 1},
                             std::vector<double>{1, 1, 0.5, 1, 1, 0.4, 0.5, 0.4, 1}}) {
    const auto lower = try_cholesky(matrix, 3);
    REQUIRE_FALSE(lower);
    CHECK(std::string(lower.error().argument()) == "correlations");
  }
}

}  // namespace correlation_test
