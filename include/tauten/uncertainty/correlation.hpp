// Correlated inputs: correlation coefficients and the Cholesky factor that correlates independent draws.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "tauten/base/outcome.hpp"

namespace tauten::TAUTEN_ABI {

/// Two inputs that go together, by the coefficient of the normal copula: both inputs are increasing functions of
/// standard normal numbers, and the coefficient is the correlation of those. For normal inputs it is the ordinary
/// correlation coefficient; for two uniform inputs the ordinary one is 6/pi asin(r/2), at most 0.02 less.
struct Correlation {
  std::string first;
  std::string second;
  double coefficient = 0;  ///< from -1 to 1
};

/// \param matrix  symmetric correlation matrix, row by row
/// \param size    number of rows
/// \return the lower triangle L with L L^T = matrix, row by row; inputs may be fully correlated. An error if the
///         coefficients contradict each other.
inline Outcome<std::vector<double>> try_cholesky(const std::vector<double>& matrix, std::size_t size) {
  std::vector<double> lower(size * size, 0.0);
  for (std::size_t j = 0; j < size; ++j) {
    const auto rest = [&](std::size_t i) {
      double sum = matrix[i * size + j];
      for (std::size_t k = 0; k < j; ++k) sum -= lower[i * size + k] * lower[j * size + k];
      return sum;
    };
    const double pivot = rest(j);
    // What rounding leaves of a pivot that should be zero is far below 1e-10, and its root bounds the column.
    const bool dependent = pivot < 1e-10;
    bool contradiction = !(pivot > -1e-10);
    const double root = dependent ? 0 : std::sqrt(pivot);
    lower[j * size + j] = root;
    for (std::size_t i = j + 1; i < size; ++i) {
      const double below = rest(i);
      if (dependent)
        contradiction |= !(std::fabs(below) < 2e-5);
      else
        lower[i * size + j] = below / root;
    }
    if (contradiction)
      return Error("correlations",
                   "the correlations contradict each other: no quantities go together in this way; inputs that go with "
                   "the same third input also go with each other");
  }
  return lower;
}

}  // namespace tauten::TAUTEN_ABI
