// Small dense systems of equations for bolt groups. Plain loops: the matrices have a handful of rows.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Sum of products in four parts, which processors add up at once.
inline double dot(const double* a, const double* b, std::size_t count) noexcept {
  double sum[4] = {};
  std::size_t i = 0;
  for (; i + 4 <= count; i += 4)
    for (std::size_t k = 0; k < 4; ++k) sum[k] += a[i + k] * b[i + k];
  for (; i < count; ++i) sum[0] += a[i] * b[i];
  return (sum[0] + sum[1]) + (sum[2] + sum[3]);
}

/// Factors a symmetric positive definite matrix in place, A = L L^T; the lower triangle becomes L. Zeros at the start
/// of a row stay zero and cost nothing.
/// \param a  n x n, row by row
/// \param n  number of rows
/// \return false if the matrix is not positive definite to within rounding
template <class Matrix>
bool cholesky(Matrix& a, std::size_t n) noexcept {
  for (std::size_t i = 0; i < n; ++i) {
    double* row = a.data() + i * n;
    std::size_t first = 0;
    while (first < i && row[first] == 0) ++first;
    for (std::size_t j = first; j < i; ++j) {
      const double* other = a.data() + j * n;
      row[j] = (row[j] - dot(row + first, other + first, j - first)) / other[j];
    }
    const double pivot = row[i] - dot(row + first, row + first, i - first);
    if (!(pivot > 1e-13 * row[i])) return false;
    row[i] = std::sqrt(pivot);
  }
  return true;
}

/// Solves L L^T x = b in place.
template <class Matrix, class Vector>
void cholesky_solve(const Matrix& l, std::size_t n, Vector& x) noexcept {
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) x[i] -= l[i * n + k] * x[k];
    x[i] /= l[i * n + i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) x[i] -= l[k * n + i] * x[k];
    x[i] /= l[i * n + i];
  }
}

using Vector3 = std::array<double, 3>;
using Matrix3 = std::array<double, 9>;

/// Adds w b b^T.
constexpr void add_outer(Matrix3& a, double w, const Vector3& b) noexcept {
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) a[3 * i + j] += w * b[i] * b[j];
}

constexpr double dot(const Vector3& a, const Vector3& b) noexcept { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

}  // namespace tauten::TAUTEN_ABI::detail
