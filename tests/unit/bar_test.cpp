#include "tauten/tool/bar.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>

#include "tauten/tool/drive_sizes.hpp"
#include "tauten/tool/drive_strength.hpp"
#include "tauten/tool/twist.hpp"

#include "near.hpp"

namespace bar_test {

namespace {

using namespace tauten;

constexpr double pi_number = 3.14159265358979323846;

TEST_CASE("bar: the constants of the square agree with the series solution of Saint-Venant") {
  double stiffness_sum = 0;
  double stress_sum = 0;
  for (int n = 1; n < 40; n += 2) {
    stiffness_sum += std::tanh(n * pi_number / 2) / std::pow(n, 5);
    stress_sum += 1 / (n * n * std::cosh(n * pi_number / 2));
  }
  const double stiffness = (1 - 192 / std::pow(pi_number, 5) * stiffness_sum) / 3;
  const double stress = 1 - 8 / (pi_number * pi_number) * stress_sum;
  CHECK(std::fabs(SquareBarStiffness::eval(1.0, 1.0, 1.0) - stiffness) < 0.5e-4);
  CHECK(std::fabs(SquareYieldTorque::eval(1.0, 1.0) - stiffness / stress) < 0.5e-3);
}

TEST_CASE("bar: the constant of the hexagon agrees with a solution by collocation on its edge") {
  // Stress function: a particular solution and three harmonics of sixfold symmetry, zero at three places of the edge.
  const auto edge = [](double t) { return 0.5 / std::cos(t); };
  double m[3][4];
  for (int i = 0; i < 3; ++i) {
    const double t = pi_number / 6 * (0.15 + 0.35 * i);
    const double r = edge(t);
    for (int k = 0; k < 3; ++k) m[i][k] = std::pow(2 * r, 6 * k) * std::cos(6 * k * t);
    m[i][3] = r * r / 4;
  }
  for (int c = 0; c < 3; ++c)
    for (int i = 0; i < 3; ++i) {
      if (i == c) continue;
      const double factor = m[i][c] / m[c][c];
      for (int k = c; k < 4; ++k) m[i][k] -= factor * m[c][k];
    }
  double volume = 0;
  const int fine = 400;
  for (int i = 0; i < fine; ++i) {
    const double t = pi_number / 6 * (i + 0.5) / fine;
    for (int j = 0; j < fine; ++j) {
      const double r = edge(t) * (j + 0.5) / fine;
      double value = -r * r / 4;
      for (int k = 0; k < 3; ++k) value += m[k][3] / m[k][k] * std::pow(2 * r, 6 * k) * std::cos(6 * k * t);
      volume += value * r * edge(t) / fine * pi_number / 6 / fine;
    }
  }
  CHECK(HexagonBarStiffness::eval(1.0, 1.0, 1.0) == near(4 * 12 * volume).epsilon(1e-3));
}

TEST_CASE("bar: plastic torques agree with the volume of the sand hill, summed over a grid") {
  double square = 0;
  double hexagon = 0;
  const int fine = 800;
  for (int i = 0; i < fine; ++i)
    for (int j = 0; j < fine; ++j) {
      const double x = 1.2 * ((i + 0.5) / fine - 0.5);
      const double y = 1.2 * ((j + 0.5) / fine - 0.5);
      const double cell = 1.2 / fine * 1.2 / fine;
      square += cell * std::max(0.0, 0.5 - std::max(std::fabs(x), std::fabs(y)));
      double reach = std::fabs(y);
      for (double s : {-1.0, 1.0}) reach = std::max(reach, std::fabs(x * std::sqrt(3) / 2 + s * y / 2));
      hexagon += cell * std::max(0.0, 0.5 - reach);
    }
  CHECK(SquarePlasticTorque::eval(1.0, 1.0) == near(2 * square).epsilon(1e-4));
  CHECK(HexagonPlasticTorque::eval(1.0, 1.0) == near(2 * hexagon).epsilon(1e-4));
}

TEST_CASE("bar: a round bar twists as the sum of thin discs, each shearing at its own radius") {
  const double d = 0.02, l = 0.25, G = 79e9, twist = 0.01;
  double torque = 0;
  const int rings = 20000;
  for (int i = 0; i < rings; ++i) {
    const double r = d / 2 * (i + 0.5) / rings;
    torque += G * twist / l * r * r * 2 * pi_number * r * (d / 2 / rings);
  }
  CHECK(RoundBarTwist::eval(torque, l, d, G) == near(twist).epsilon(1e-6));
  CHECK(RoundBarStiffness::eval(l, d, G) == near(torque / twist).epsilon(1e-6));
  // The square lies between the circle inside it and the circle around it.
  CHECK(BarTwist::eval(torque, l, d, G) < twist);
  CHECK(BarTwist::eval(torque, l, d, G) > RoundBarTwist::eval(torque, l, d * std::sqrt(2.0), G));
}

TEST_CASE("twist: springs in series add their twists; energy is the area under torque over twist") {
  const double c1 = 900, c2 = 350, torque = 60;
  const double both = series_stiffness.si(c1, c2);
  CHECK(torque / both == near(torque / c1 + torque / c2));
  double area = 0;
  const int steps = 1000;
  for (int i = 0; i < steps; ++i) area += torque * (i + 0.5) / steps * (torque / both / steps);
  CHECK(twist_energy.si(torque, both) == near(area));
  CHECK(blow_torque.si(area, both) == near(torque));
  CHECK(blow_torque.si(area, both / 4) == near(torque / 2));
}

TEST_CASE("twist: the angle at the handle and at the fastener are inverse to each other") {
  for (double snug : {0.0, 20.0})
    for (double torque : {40.0, 120.0}) {
      const double handle = handle_angle.si(1.2, snug, torque, 800.0);
      CHECK(handle == near(1.2 + (torque - snug) / 800));
      CHECK(fastener_angle.si(handle, snug, torque, 800.0) == near(1.2));
    }
  // More wind-up than turn: the readings do not belong together.
  CHECK(std::isnan(fastener_angle.si(0.01, 0.0, 100.0, 800.0)));
}

TEST_CASE("drive: sizes are found by either name, torques grow with size") {
  CHECK(find_square_drive(Length(12.5e-3)) == find_square_drive(Length(12.7e-3)));
  REQUIRE(find_square_drive(Length(12.7e-3)) != nullptr);
  CHECK(std::string(find_square_drive(Length(0.5 * 0.0254))->inch) == "1/2");
  CHECK(find_square_drive(Length(15e-3)) == nullptr);
  CHECK(find_square_drive(Length(std::nan(""))) == nullptr);
  for (std::size_t i = 1; i < std::size(hexagon_keys); ++i) {
    CHECK(hexagon_keys[i - 1].width < hexagon_keys[i].width);
    CHECK(hexagon_keys[i - 1].test_torque < hexagon_keys[i].test_torque);
  }
  CHECK(find_hexagon_key(Length(6e-3))->test_torque.si == 52);
  CHECK(find_hexagon_key(Length(20e-3)) == nullptr);
  for (const SquareDrive& drive : square_drives) {
    // Remembered torques must at least be possible: below full plasticity at the hardest typical steel.
    CHECK(drive.socket_test_torque.si < SquarePlasticTorque::eval(1000e6, drive.male.si));
    CHECK(drive.driver_test_torque < drive.socket_test_torque);
  }
}

}  // namespace

}  // namespace bar_test
