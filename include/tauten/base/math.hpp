// Elementary functions and named constants for every scalar a formula may be evaluated on.
//
// <cmath> alone is 16,000 lines in C++20. A formula needs seven functions, so they are declared here. Dual numbers and
// symbolic scalars bring their own overloads, found by argument-dependent look-up.
#pragma once

#if !defined(__GNUC__)
#include <cmath>
#endif

#include "tauten/base/version.hpp"

#if defined(__FAST_MATH__) || (defined(__FINITE_MATH_ONLY__) && __FINITE_MATH_ONLY__)
#error "tauten: build without -ffast-math and -ffinite-math-only, for it relies on NaN and on IEEE arithmetic"
#endif

namespace tauten::TAUTEN_ABI {

#if defined(__GNUC__)
inline double sqrt(double x) noexcept { return __builtin_sqrt(x); }
inline float sqrt(float x) noexcept { return __builtin_sqrtf(x); }
inline double sin(double x) noexcept { return __builtin_sin(x); }
inline float sin(float x) noexcept { return __builtin_sinf(x); }
inline double cos(double x) noexcept { return __builtin_cos(x); }
inline float cos(float x) noexcept { return __builtin_cosf(x); }
inline double tan(double x) noexcept { return __builtin_tan(x); }
inline float tan(float x) noexcept { return __builtin_tanf(x); }
inline double atan(double x) noexcept { return __builtin_atan(x); }
inline float atan(float x) noexcept { return __builtin_atanf(x); }
inline double exp(double x) noexcept { return __builtin_exp(x); }
inline float exp(float x) noexcept { return __builtin_expf(x); }
inline double log(double x) noexcept { return __builtin_log(x); }
inline float log(float x) noexcept { return __builtin_logf(x); }
inline double log1p(double x) noexcept { return __builtin_log1p(x); }
inline float log1p(float x) noexcept { return __builtin_log1pf(x); }
inline double pow(double x, double exponent) noexcept { return __builtin_pow(x, exponent); }
inline float pow(float x, double exponent) noexcept { return __builtin_powf(x, static_cast<float>(exponent)); }
#else
using std::atan;
using std::cos;
using std::exp;
using std::log;
using std::log1p;
using std::pow;
using std::sin;
using std::sqrt;
using std::tan;
#endif

template <class Real>
constexpr Real smaller(const Real& a, const Real& b) noexcept {
  return b < a ? b : a;
}

/// A constant that keeps its name when a formula is printed.
struct NamedConstant {
  double value;
  const char* text;  ///< how it reads in plain text
  const char* latex;
  const char* mathml;
  const char* algebra = nullptr;  ///< to a computer-algebra system; null: as in plain text
};

inline constexpr NamedConstant pi_constant{3.14159265358979323846, "pi", "\\pi", "<mi>&#x3C0;</mi>"};
/// Cosine of half the thread angle of the ISO 68-1 profile.
inline constexpr NamedConstant cos30_constant{
    0.86602540378443864676, "cos(pi/6)", "\\cos 30^\\circ",
    "<mi>cos</mi><mo rspace=\"0.17em\">&#x2061;</mo><mn>30</mn><mo>&#xB0;</mo>"};
inline constexpr NamedConstant tan30_constant{
    0.57735026918962576451, "tan(pi/6)", "\\tan 30^\\circ",
    "<mi>tan</mi><mo rspace=\"0.17em\">&#x2061;</mo><mn>30</mn><mo>&#xB0;</mo>"};
/// Cosine and tangent of half the angle between two teeth of a twelve-point opening.
inline constexpr NamedConstant cos15_constant{
    0.96592582628906828675, "cos(pi/12)", "\\cos 15^\\circ",
    "<mi>cos</mi><mo rspace=\"0.17em\">&#x2061;</mo><mn>15</mn><mo>&#xB0;</mo>"};
inline constexpr NamedConstant tan15_constant{
    0.26794919243112270647, "tan(pi/12)", "\\tan 15^\\circ",
    "<mi>tan</mi><mo rspace=\"0.17em\">&#x2061;</mo><mn>15</mn><mo>&#xB0;</mo>"};

/// Divides a length where a source takes the bare number of millimetres.
inline constexpr NamedConstant millimetre_constant{1e-3, "(1 mm)", "1\\,\\mathrm{mm}",
                                                   "<mn>1</mn><mtext>&#x2009;mm</mtext>", "0.001"};

/// How a named constant is made on the scalar `Real`. A symbolic scalar specialises this and keeps the name.
template <class Real>
struct Constant {
  static constexpr Real on(const NamedConstant& constant) noexcept { return static_cast<Real>(constant.value); }
};

template <class Real>
constexpr Real pi() noexcept {
  return Constant<Real>::on(pi_constant);
}
template <class Real>
constexpr Real cos30() noexcept {
  return Constant<Real>::on(cos30_constant);
}
template <class Real>
constexpr Real tan30() noexcept {
  return Constant<Real>::on(tan30_constant);
}
template <class Real>
constexpr Real cos15() noexcept {
  return Constant<Real>::on(cos15_constant);
}
template <class Real>
constexpr Real tan15() noexcept {
  return Constant<Real>::on(tan15_constant);
}

template <class Real>
constexpr Real millimetre() noexcept {
  return Constant<Real>::on(millimetre_constant);
}

template <class Real>
constexpr Real square(const Real& x) noexcept {
  return x * x;
}
template <class Real>
constexpr Real cube(const Real& x) noexcept {
  return x * x * x;
}

/// Area of a circle by its diameter.
template <class Real>
constexpr Real circle_area(const Real& diameter) noexcept {
  return pi<Real>() * square(diameter) / 4;
}

/// \return 10^n for a whole number, exactly up to 22 either way. It does without the tables of `pow`, which a module for a
///         page would load for the digits of a number alone
constexpr double power_of_ten(double n) noexcept {
  if (!(n >= -400 && n <= 400)) return n > 0 ? __builtin_inf() : n < 0 ? 0 : n;
  double power = 1;
  for (double i = n < 0 ? -n : n; i > 0; --i) power *= 10;
  return n < 0 ? 1 / power : power;
}

}  // namespace tauten::TAUTEN_ABI
