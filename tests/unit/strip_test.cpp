// Strip areas by integration over the profile, the factors of thread bending at their ends, and loads by hand.
#include <doctest/doctest.h>

#include <cmath>

#include "tauten/part/strip.hpp"
#include "tauten/units.hpp"
#include "unit/near.hpp"
#include "unit/second_way.hpp"

namespace strip_test {

using namespace tauten;
using namespace tauten::literals;

TEST_CASE("strip: areas are the thickness of the ridge along the helix") {
  // On the basic profile of ISO 68-1 the cylinder of the nut's minor diameter cuts a ridge of a bolt whose pitch diameter
  // is d_2: the ridge is P/2 thick at its pitch diameter, and thicker inward by the flanks.
  for (const double pitch : {0.5, 1.25, 2.0, 4.5})
    for (const double d : {6.0, 16.0, 48.0}) {
      const double d_2 = d - 0.649519 * pitch;
      const double minor = d - 1.082532 * pitch;
      // The ridge of a full profile with this pitch diameter, flanks extended.
      const double crest = second_way::diameter_at_ridge(pitch / 2, d, pitch);
      CHECK(crest == near(d_2).epsilon(1e-6));
      const double turns = 10 / pitch;
      const double bolt = second_way::pi * minor * turns * second_way::ridge(minor, d, pitch);
      CHECK(external_strip_area.si(10.0, pitch, minor, d_2) == near(bolt).epsilon(1e-5));
      // The ridge of the nut fills what the bolt's leaves of a pitch.
      const double nut = second_way::pi * d * turns * (pitch - second_way::ridge(d, d, pitch));
      CHECK(internal_strip_area.si(10.0, pitch, d, d_2) == near(nut).epsilon(1e-5));
      CHECK(internal_strip_area.si(10.0, pitch, d, d_2) > external_strip_area.si(10.0, pitch, minor, d_2));
    }
  // A nut bored so wide that it does not touch the bolt.
  CHECK(std::isnan(external_strip_area.si(10.0, 1.0, 12.0, 9.0)));
}

TEST_CASE("strip: the factors at the ends of their range") {
  // Alexander 1977, from memory: C_1 0.75 at s/d 1.4, 0.84 at 1.5, 1 at 1.9; C_2 and C_3 meet at 0.897 for equal
  // strengths; C_2 1.187 at 2.2; C_3 1.055 at 0.4.
  CHECK(std::fabs(nut_dilation_factor.si(1.4) - 0.75) < 5e-3);
  CHECK(std::fabs(nut_dilation_factor.si(1.5) - 0.84) < 5e-3);
  CHECK(std::fabs(nut_dilation_factor.si(1.9) - 1.00) < 5e-3);
  CHECK(std::fabs(bolt_thread_bending_factor.si(1.0) - 0.897) < 5e-4);
  CHECK(std::fabs(bolt_thread_bending_factor.si(2.2) - 1.187) < 5e-4);
  CHECK(std::fabs(nut_thread_bending_factor.si(1.0) - 0.897) < 5e-4);
  CHECK(std::fabs(nut_thread_bending_factor.si(0.4) - 1.055) < 5e-4);
  CHECK(std::isnan(nut_dilation_factor.si(1.3)));
  CHECK(std::isnan(nut_thread_bending_factor.si(1.1)));
  // Coefficients as the source lists them, summed term by term.
  for (const double r : {1.1, 1.4, 1.8, 2.1})
    CHECK(bolt_thread_bending_factor.si(r) ==
          near(5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r + 0.9353 * r * r * r * r));
  for (const double r : {0.45, 0.6, 0.9})
    CHECK(nut_thread_bending_factor.si(r) == near(0.728 + 1.769 * r - 2.896 * r * r + 1.296 * r * r * r));
}

TEST_CASE("strip: strength ratio, load and needed engagement by hand") {
  // M10 at the limits of 6H and 6g: 15.58 mm2 of bolt and 21.48 mm2 of nut thread per mm (Bickford).
  CHECK(strip_strength_ratio.si(200e6, 21.477e-6, 732e6, 15.580e-6) == near(200 * 21.477 / (732 * 15.580)));
  CHECK(strip_load.si(200e6, 107.385e-6, 0.9, 1.05) == near(200 * 107.385 * 0.9 * 1.05));
  // The engagement needed carries the load when 0.8 P of it count for nothing.
  for (const double load : {5e3, 30e3, 70e3}) {
    const double length =
        needed_engagement.si(load, 200e6, 1.5e-3, internal_strip_area.si(1.5e-3, 1.5e-3, 9.732e-3, 9.206e-3), 1.0, 1.0);
    const double whole = internal_strip_area.si(length - 0.8 * 1.5e-3, 1.5e-3, 9.732e-3, 9.206e-3);
    CHECK(strip_load.si(200e6, whole, 1.0, 1.0) == near(load));
  }
  CHECK(std::fabs(bearing_pressure.si(1e3, 20e-3, 10e-3) * second_way::pi / 4 * 300e-6 - 1e3) < 1e-9);
  CHECK(std::isnan(bearing_pressure.si(1e3, 10e-3, 20e-3)));
}

}  // namespace strip_test
