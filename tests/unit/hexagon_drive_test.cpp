#include "tauten/loosening/drive.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "near.hpp"

using namespace tauten;

TEST_CASE("hexagon in an opening: lever and play from turning it until it touches") {
  const double s = 16e-3, pi = 3.14159265358979323846;
  for (double D : {0.0, 0.1e-3, 0.4e-3})
    for (double w : {0.0, 0.2e-3, 0.8e-3}) {
      // The outermost point of a flank stands at radius rho. Turn it until it reaches the flat of the opening.
      const double rho = s / std::sqrt(3.0) - w;
      const double start = std::acos(s / 2 / rho);
      double low = 0, high = start;
      for (int i = 0; i < 200; ++i) {
        const double turn = (low + high) / 2;
        (rho * std::cos(start - turn) < (s + D) / 2 ? low : high) = turn;
      }
      CHECK(corner_play.si(s, D, w) == near(low).epsilon(1e-9));
      // The push is square to the flat; its lever is the distance of the point from the normal through the axis.
      CHECK(flank_lever.si(s, D, w) == near(rho * std::sin(start - low)).epsilon(1e-9));
    }
  CHECK(flank_lever.si(s, 0, 0) == near(s / std::sqrt(3.0) * std::sin(pi / 6)));
  CHECK(corner_play.si(s, 0, 0) == near(0));
}

TEST_CASE("worn corners: the tool spins at 0.0774 s - D/2, and the lever ends there") {
  const double s = 16e-3, D = 0.2e-3;
  const double end = slipping_corner_loss.si(s, D);
  CHECK(end == near((1 / std::sqrt(3.0) - 0.5) * s - D / 2));
  CHECK(flank_lever.si(s, D, 0.9999 * end) > 0);
  CHECK(std::isnan(flank_lever.si(s, D, 1.0001 * end)));
  CHECK(std::isnan(slipping_corner_loss.si(s, 0.2 * s)));  // so wide an opening spins on sharp corners
}

TEST_CASE("rounding torque: pushes times levers") {
  CHECK(rounding_torque.si(800e6, 6, 1.2e-3, 6e-3, 4.4e-3) == near(6 * (800e6 * 1.2e-3 * 6e-3) * 4.4e-3));
}
