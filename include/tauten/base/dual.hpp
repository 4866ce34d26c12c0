// Dual numbers: a value together with its exact partial derivatives.
#pragma once

#include "tauten/base/math.hpp"

namespace tauten::TAUTEN_ABI {

/// Value and `N` partial derivatives. Arithmetic follows the chain rule, so any formula evaluated on duals yields its
/// gradient to rounding error.
template <int N>
struct Dual {
  double value = 0;
  double slope[N] = {};

  constexpr Dual() noexcept = default;
  constexpr Dual(double x) noexcept : value(x) {}  // NOLINT(google-explicit-constructor): a number is a constant dual

  /// \return the independent variable number `i` at `x`
  static constexpr Dual variable(double x, int i) noexcept {
    Dual v(x);
    v.slope[i] = 1;
    return v;
  }
};

/// `f(a)` by its value and derivative at `a.value`.
template <int N>
constexpr Dual<N> chain(const Dual<N>& a, double value, double derivative) noexcept {
  Dual<N> r(value);
  for (int i = 0; i < N; ++i) r.slope[i] = derivative * a.slope[i];
  return r;
}

template <int N>
constexpr Dual<N> operator-(const Dual<N>& a) noexcept {
  return chain(a, -a.value, -1);
}

template <int N>
constexpr Dual<N> operator+(const Dual<N>& a, const Dual<N>& b) noexcept {
  Dual<N> r(a.value + b.value);
  for (int i = 0; i < N; ++i) r.slope[i] = a.slope[i] + b.slope[i];
  return r;
}

template <int N>
constexpr Dual<N> operator-(const Dual<N>& a, const Dual<N>& b) noexcept {
  return a + (-b);
}

template <int N>
constexpr Dual<N> operator*(const Dual<N>& a, const Dual<N>& b) noexcept {
  Dual<N> r(a.value * b.value);
  for (int i = 0; i < N; ++i) r.slope[i] = a.slope[i] * b.value + a.value * b.slope[i];
  return r;
}

template <int N>
constexpr Dual<N> operator/(const Dual<N>& a, const Dual<N>& b) noexcept {
  Dual<N> r(a.value / b.value);
  for (int i = 0; i < N; ++i) r.slope[i] = (a.slope[i] - r.value * b.slope[i]) / b.value;
  return r;
}

template <int N> constexpr Dual<N> operator+(double a, const Dual<N>& b) noexcept { return Dual<N>(a) + b; }
template <int N> constexpr Dual<N> operator+(const Dual<N>& a, double b) noexcept { return a + Dual<N>(b); }
template <int N> constexpr Dual<N> operator-(double a, const Dual<N>& b) noexcept { return Dual<N>(a) - b; }
template <int N> constexpr Dual<N> operator-(const Dual<N>& a, double b) noexcept { return a - Dual<N>(b); }
template <int N> constexpr Dual<N> operator*(double a, const Dual<N>& b) noexcept { return Dual<N>(a) * b; }
template <int N> constexpr Dual<N> operator*(const Dual<N>& a, double b) noexcept { return a * Dual<N>(b); }
template <int N> constexpr Dual<N> operator/(double a, const Dual<N>& b) noexcept { return Dual<N>(a) / b; }
template <int N> constexpr Dual<N> operator/(const Dual<N>& a, double b) noexcept { return a / Dual<N>(b); }

template <int N> constexpr bool operator<(const Dual<N>& a, const Dual<N>& b) noexcept { return a.value < b.value; }

template <int N>
Dual<N> sqrt(const Dual<N>& a) noexcept {
  const double r = sqrt(a.value);
  return chain(a, r, 0.5 / r);
}
template <int N>
Dual<N> sin(const Dual<N>& a) noexcept {
  return chain(a, sin(a.value), cos(a.value));
}
template <int N>
Dual<N> cos(const Dual<N>& a) noexcept {
  return chain(a, cos(a.value), -sin(a.value));
}
template <int N>
Dual<N> tan(const Dual<N>& a) noexcept {
  const double t = tan(a.value);
  return chain(a, t, 1 + t * t);
}
template <int N>
Dual<N> atan(const Dual<N>& a) noexcept {
  return chain(a, atan(a.value), 1 / (1 + a.value * a.value));
}
template <int N>
Dual<N> exp(const Dual<N>& a) noexcept {
  const double e = exp(a.value);
  return chain(a, e, e);
}
template <int N>
Dual<N> log(const Dual<N>& a) noexcept {
  return chain(a, log(a.value), 1 / a.value);
}
template <int N>
Dual<N> log1p(const Dual<N>& a) noexcept {
  return chain(a, log1p(a.value), 1 / (1 + a.value));
}
template <int N>
Dual<N> pow(const Dual<N>& a, double exponent) noexcept {
  return chain(a, pow(a.value, exponent), exponent * pow(a.value, exponent - 1));
}

}  // namespace tauten::TAUTEN_ABI
