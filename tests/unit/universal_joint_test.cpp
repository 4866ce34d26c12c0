#include "tauten/tool/universal_joint.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "near.hpp"

namespace universal_joint_test {

namespace {

using namespace tauten;

constexpr double pi_number = 3.14159265358979323846;
using Vector3 = std::array<double, 3>;
using Matrix3 = std::array<Vector3, 3>;

Matrix3 about_x(double t) { return {{{1, 0, 0}, {0, std::cos(t), -std::sin(t)}, {0, std::sin(t), std::cos(t)}}}; }
Matrix3 about_z(double t) { return {{{std::cos(t), -std::sin(t), 0}, {std::sin(t), std::cos(t), 0}, {0, 0, 1}}}; }
Vector3 times(const Matrix3& m, const Vector3& v) {
  Vector3 r{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) r[i] += m[i][j] * v[j];
  return r;
}
double dot(const Vector3& a, const Vector3& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

/// Angle of the driven shaft: the two arms of the cross stay square to each other. The driving shaft lies along x, the
/// driven one is turned from it about z, so that the bend is in the plane of x and y.
double driven_angle(double bend, double rotation) {
  const Vector3 driving_arm = times(about_x(rotation), {0, 1, 0});
  const auto off_square = [&](double driven) {
    return dot(driving_arm, times(about_z(bend), times(about_x(driven), {0, 0, 1})));
  };
  double low = rotation - 1;
  double high = rotation + 1;
  for (int i = 0; i < 80; ++i) {
    const double middle = (low + high) / 2;
    ((off_square(middle) > 0) == (off_square(low) > 0) ? low : high) = middle;
  }
  return (low + high) / 2;
}

TEST_CASE("universal joint: the ratio agrees with shafts turned by rotation matrices") {
  const double step = 1e-5;
  for (double bend : {0.0, 0.1, 0.2618, 0.5236, 0.7, 1.0}) {
    double least = 1e9;
    double greatest = 0;
    for (int i = 0; i < 72; ++i) {
      const double rotation = i * pi_number / 36;
      const double expected = (driven_angle(bend, rotation + step) - driven_angle(bend, rotation - step)) / (2 * step);
      const double ratio = universal_joint_ratio.si(bend, rotation);
      CHECK(ratio == near(expected).epsilon(1e-6));
      least = std::min(least, ratio);
      greatest = std::max(greatest, ratio);
    }
    CHECK(universal_joint_least_ratio.si(bend) == near(least));
    CHECK(universal_joint_greatest_ratio.si(bend) == near(greatest));
  }
}

TEST_CASE("universal joint: the mean ratio over a turn is one, since both shafts turn as often") {
  double sum = 0;
  for (int i = 0; i < 1000; ++i) sum += universal_joint_ratio.si(0.6, 2 * pi_number * i / 1000);
  CHECK(sum / 1000 == near(1));
}

TEST_CASE("universal joint: the safe bend is the inverse of the greatest ratio") {
  for (double v : {0.0, 0.005, 0.035, 0.155, 0.4})
    CHECK(universal_joint_greatest_ratio.si(universal_joint_bend.si(v)) == near(1 + v));
  CHECK(std::isnan(universal_joint_ratio.si(1.6, 0.0)));
}

}  // namespace

}  // namespace universal_joint_test
