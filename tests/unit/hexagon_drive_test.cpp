#include "tauten/loosening/hexagon_drive.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "tauten/tool/drive_sizes.hpp"
#include "tauten/tool/drive_strength.hpp"

#include "near.hpp"

namespace hexagon_drive_test {

using namespace tauten;

namespace {

const double half_turn = std::acos(-1.0), degree = half_turn / 180;

// Geometry written apart from the library: both outlines by their radius over the angle, seen from the common axis.

/// Radius of a hexagon of this width; a flat lies square to the angle zero.
double hexagon(double width, double angle) {
  const double from_flat = std::remainder(angle, half_turn / 3);
  return width / 2 / std::cos(from_flat);
}

/// An opening of six or twelve points: one hexagon, or all that either of two hexagons leaves open.
struct Opening {
  double width;
  bool twelve;
  double radius(double angle) const {
    return twelve ? std::max(hexagon(width, angle), hexagon(width, angle + half_turn / 6)) : hexagon(width, angle);
  }
  /// Its nearest point to the axis, found by looking: for twelve points a tooth, else the middle of a flat.
  double nearest() const {
    double found = 0;
    for (int i = 0; i <= 1000; ++i)
      if (const double angle = i * half_turn / 6000; radius(angle) < radius(found)) found = angle;
    return found;
  }
};

/// A hexagon with its corners worn down to a circle.
struct Worn {
  double width, corner;
  double radius(double angle) const { return std::min(hexagon(width, angle), corner); }
  /// Does it fit into the opening, turned by `turn`? Looked at where one of both outlines has a kink or comes nearest.
  bool fits(const Opening& in, double turn) const {
    std::vector<double> places;
    const double end = std::acos(std::min(1.0, width / 2 / radius(half_turn / 6)));
    for (int i = 0; i < 24; ++i) places.push_back(i * half_turn / 12);  // flats, teeth and corners of the opening
    for (int i = 0; i < 6; ++i)
      for (int j = -4; j <= 4; ++j)  // from one end of the worn corner to the other
        places.push_back(turn + half_turn / 6 + i * half_turn / 3 + j / 4.0 * (half_turn / 6 - end));
    return std::all_of(places.begin(), places.end(),
                       [&](double at) { return radius(at - turn) <= in.radius(at) * (1 + 1e-12); });
  }
  bool spins(const Opening& in) const {
    for (double turn = 0; turn < 60; turn += 0.05)
      if (!fits(in, turn * degree)) return false;
    return true;
  }
  /// Angle from flats parallel to the first touch.
  double touch(const Opening& in) const {
    double low = 0, high = 0;
    while (fits(in, high)) high += 0.1 * degree;
    for (int i = 0; i < 100; ++i) (fits(in, (low + high) / 2) ? low : high) = (low + high) / 2;
    return low;
  }
};

}  // namespace

TEST_CASE("hexagon in an opening of six or twelve points: play and lever from turning it until it touches") {
  const double s = 16e-3;
  for (const bool twelve : {false, true})
    for (double D : {0.05e-3, 0.1e-3, 0.4e-3})
      for (double w : {0.0, 0.2e-3, 0.6e-3}) {
        CAPTURE(twelve);
        CAPTURE(D);
        CAPTURE(w);
        const Worn head{s, s / std::sqrt(3.0) - w};
        const double turn = head.touch({s + D, twelve});
        CHECK(corner_play.si(s, D, w) == near(turn).epsilon(1e-6));
        // It touches with the end of a flat. The push is square to the flat of the opening; its lever is the distance
        // of that end from the normal through the axis.
        const double end = std::acos(s / 2 / head.corner);
        CHECK(flank_lever.si(s, D, w) == near(head.corner * std::sin(end - turn)).epsilon(1e-6));
      }
  CHECK(flank_lever.si(s, 0, 0) == near(s / std::sqrt(3.0) * std::sin(half_turn / 6)));
  CHECK(corner_play.si(s, 0, 0) == 0);
  // A play too small to matter keeps its digits: D/2 along the flank of a new hexagon, over the half flank s/(2 sqrt 3).
  CHECK(corner_play.si(s, 1e-10 * s, 0) == near(1e-10 * std::sqrt(3.0)).epsilon(1e-9));
}

TEST_CASE(
    "flank that an opening reaches at a corner: 0.577 s of six points, 0.309 s of twelve, by the common outline") {
  const double s = 1;
  for (const bool twelve : {false, true}) {
    const Worn head{s, s / std::sqrt(3.0)};
    const Opening opening{s, twelve};
    // Walk along one whole flat of the head: as much of each flat as there is at each corner.
    const int steps = 200'000;
    int common = 0;
    for (int i = 0; i < steps; ++i) {
      const double along = ((i + 0.5) / steps - 0.5) * s / std::sqrt(3.0);
      const double angle = std::atan2(along, s / 2);
      common += opening.radius(angle) - head.radius(angle) < 1e-12;
    }
    const double length = common * s / std::sqrt(3.0) / steps;
    const double expected = 2 * (twelve ? twelve_point_flank.si(s, 0, 0) : flank_lever.si(s, 0, 0));
    CHECK(expected == near(length).epsilon(1e-4));
    CHECK(std::fabs(expected - (twelve ? 0.309 : 0.577)) < 0.0005);
  }
}

TEST_CASE("flank that twelve points reach, with play and wear: from the lever inward to the tooth") {
  const double s = 24e-3;
  for (double D : {0.0, 0.1e-3, 0.4e-3}) {
    const Opening opening{s + D, true};
    const double tooth = opening.nearest();
    const double inner = opening.radius(tooth) * std::sin(tooth);  // along the flat that is square to the angle zero
    for (double w : {0.0, 0.3e-3, 0.8e-3})
      CHECK(twelve_point_flank.si(s, D, w) == near(flank_lever.si(s, D, w) - inner).epsilon(1e-5));
  }
}

TEST_CASE("worn corners: the wear at which a hexagon turns all the way round in six and in twelve points") {
  const double s = 16e-3, R = s / std::sqrt(3.0);
  for (const bool twelve : {false, true})
    for (double D : {0.0, 0.2e-3, 0.6e-3}) {
      CAPTURE(twelve);
      double low = 0, high = 0.2 * s;
      for (int i = 0; i < 40; ++i)
        (Worn{s, R - (low + high) / 2}.spins({s + D, twelve}) ? high : low) = (low + high) / 2;
      const double end = twelve ? twelve_point_slipping_corner_loss.si(s, D) : slipping_corner_loss.si(s, D);
      CHECK(end == near(low).epsilon(1e-6));
      // The printed constants: 0.0774 s - D/2 and 0.0597 s - 0.518 D.
      CHECK(std::fabs(end - (twelve ? 0.0597 * s - 0.518 * D : 0.0774 * s - D / 2)) < 5e-5 * s);
      if (twelve) {
        CHECK(twelve_point_flank.si(s, D, 0.9999 * end) > 0);
        CHECK(std::isnan(twelve_point_flank.si(s, D, 1.0001 * end)));
        CHECK(end < slipping_corner_loss.si(s, D));  // six points still hold where twelve spin
      } else {
        CHECK(flank_lever.si(s, D, 0.9999 * end) > 0);
        CHECK(std::isnan(flank_lever.si(s, D, 1.0001 * end)));
      }
    }
  CHECK(std::isnan(slipping_corner_loss.si(s, 0.2 * s)));  // so wide an opening spins on sharp corners
  CHECK(std::isnan(twelve_point_slipping_corner_loss.si(s, 0.2 * s)));
}

TEST_CASE("hexagon key, plastic all through: twice the shear strength times the heap of sand on its section") {
  const double tau = 900e6, s = 6e-3, side = s / std::sqrt(3.0);
  // Height of the heap at a point is the distance to the nearest side; the point is in the hexagon where it is positive.
  const int n = 2000;
  double volume = 0;
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < n; ++j) {
      const double x = side * (2 * (i + 0.5) / n - 1), y = side * (2 * (j + 0.5) / n - 1);
      double height = s / 2 - std::fabs(y);
      for (const double sign : {-1.0, 1.0})
        height = std::min(height, s / 2 - std::fabs(std::sqrt(0.75) * x + sign * 0.5 * y));
      if (height > 0) volume += height * (2 * side / n) * (2 * side / n);
    }
  CHECK(hexagon_key_strength.si(tau / (2 * std::sqrt(3.0)), s) == near(2 * tau * volume).epsilon(1e-4));
}

TEST_CASE("hexagon key: the strength over s^3 falls with the hardness, and stays above what it is tested with") {
  double before = HUGE_VAL;
  for (const HexagonKey& key : hexagon_keys) {
    const double stress = hexagon_key_breaking_stress(key.width.si);
    CHECK(stress <= before);
    CHECK(hexagon_key_strength.si(stress, key.width.si) > key.test_torque.si);
    before = stress;
  }
}

TEST_CASE("rounding torque: pushes times levers") {
  CHECK(rounding_torque.si(800e6, 6, 1.2e-3, 6e-3, 4.4e-3) == near(6 * (800e6 * 1.2e-3 * 6e-3) * 4.4e-3));
}

}  // namespace hexagon_drive_test
