// Six-lobed recess: overlap and lever of the flanks against sums over the flank and the arcs of the outline.
#include "tauten/loosening/recess.hpp"
#include "tauten/question/workings/capacity.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "near.hpp"
#include "tauten/loosening/hexagon_drive.hpp"
#include "tauten/part/hexalobular_table.hpp"
#include "tauten/question/free.hpp"

namespace recess_test {

using namespace tauten;

namespace {

/// An M10 of class 10.9 with cylinder head, ISO 14579: drive number 50.
FreeJob pump_cover_screw() {
  FreeJob job;
  job.diameter = Length(10e-3);
  job.pitch = Length(1.5e-3);
  job.tensile_strength = Stress(1040e6);
  job.yield_strength = Stress(940e6);
  job.torsion_ratio = 0.79;
  job.drive = DriveFit::hexalobular;
  job.drive_number = 50;
  job.trials = 20'000;
  return job;
}

double recess(const FreeJob& job) { return detail::drive_capacity(job).median; }
double bit(const FreeJob& job) { return detail::tool_capacity(job).median; }

}  // namespace

TEST_CASE("six flanks under pressure: torque as a sum over narrow strips of the flanks") {
  const double pressure = 900e6, depth = 4e-3;
  for (const table::HexalobularDrive& drive : table::hexalobular_drives)
    for (double play : {0.0, 0.02, 0.1})
      for (double worn : {0.0, 0.05, 0.1}) {
        const double A = drive.outer_diameter, B = drive.inner_diameter, D = play * (A - B), w = worn * (A - B);
        // From the ridge of the recess, worn back, out to the tip of the bit's lobe.
        const double from = B / 2 + w, to = (A - D) / 2;
        const int strips = 1000;
        double torque = 0;
        for (int i = 0; i < strips; ++i)
          torque += 6 * pressure * depth * (to - from) / strips * (from + (i + 0.5) / strips * (to - from));
        const double length = lobe_flank.si(A, B, D, w), lever = lobe_lever.si(A, B, D, w);
        CHECK(rounding_torque.si(pressure, 6, length, depth, lever) == near(torque).epsilon(1e-9));
      }
}

TEST_CASE("no flank is left once the ridges are worn back to the tips of the lobes") {
  const double A = 8.95e-3, B = 6.45e-3, D = 0.05e-3;
  CHECK(lobe_flank.si(A, B, D, 1.22e-3) > 0);
  CHECK(std::isnan(lobe_flank.si(A, B, D, 1.23e-3)));
  CHECK(lobe_lever.si(A, B, D, 1.22e-3) < A / 2);
  CHECK(std::isnan(lobe_lever.si(A, B, D, 1.23e-3)));
  CHECK(std::isnan(lobe_flank.si(B, A, 0, 0)));
}

TEST_CASE("lever of the mean radius against the common normal of the arcs of lobe and ridge") {
  for (const table::HexalobularDrive& drive : table::hexalobular_drives)
    for (double share : {0.06, 0.08, 0.10}) {
      const double A = drive.outer_diameter, B = drive.inner_diameter;
      // The lobe is a circle about (c, 0), the ridge one about a point at 30 degrees whose distance from the axis is
      // found by bisection: both touch where lobe and ridge meet.
      const double lobe = share * A, c = A / 2 - lobe, third = std::acos(-1.0) / 6;
      const auto apart = [&](double ridge) {
        const double x = (B / 2 + ridge) * std::cos(third), y = (B / 2 + ridge) * std::sin(third);
        return std::hypot(x - c, y) - lobe - ridge;
      };
      double low = 0, high = A;
      REQUIRE(apart(low) > 0);
      REQUIRE(apart(high) < 0);
      for (int i = 0; i < 100; ++i) (apart((low + high) / 2) > 0 ? low : high) = (low + high) / 2;
      const double x = (B / 2 + low) * std::cos(third), y = (B / 2 + low) * std::sin(third);
      const double lever = c * y / std::hypot(x - c, y);  // distance of the line through both centres from the axis
      const double ratio = lever / lobe_lever.si(A, B, 0, 0);
      CHECK(ratio < 0.99);
      CHECK(ratio > 0.87);
    }
}

TEST_CASE("six-lobed screw: a deeper recess is never weaker, wear and play never make it stronger") {
  const FreeJob screw = pump_cover_screw();
  double last = 0;
  for (double depth = 1e-3; depth < 9e-3; depth += 0.5e-3) {
    FreeJob job = screw;
    job.head_height = Length(depth);
    CHECK(recess(job) > last);
    last = recess(job);
  }
  FreeJob half = screw, full = screw;
  half.head_height = Length(2.5e-3), full.head_height = Length(5e-3);
  CHECK(recess(half) == near(recess(full) / 2));  // partly filled
  CHECK(recess(screw) == near(recess(full)));     // 0.5 d if nothing is said
  last = 1e9;
  for (double wear = 0; wear < 1.6e-3; wear += 0.05e-3) {
    FreeJob job = screw;
    job.corner_loss = Length(wear);
    CHECK((recess(job) < last || recess(job) == 0));
    last = recess(job);
  }
  CHECK(last == 0);
  last = 1e9;
  for (double play = 0; play < 3e-3; play += 0.1e-3) {
    FreeJob job = screw;
    job.drive_clearance = Length(play);
    CHECK((recess(job) < last || recess(job) == 0));
    last = recess(job);
  }
}

TEST_CASE("six-lobed screw: a larger drive takes more, in the recess and in the bit") {
  FreeJob job = pump_cover_screw();
  double last_recess = 0, last_bit = 0;
  for (int number : {20, 25, 30, 40, 45, 50, 55}) {
    job.drive_number = number;
    CHECK(recess(job) > last_recess);
    CHECK(bit(job) > last_bit);
    last_recess = recess(job), last_bit = bit(job);
  }
}

TEST_CASE("six-lobed screw: recess and bit are ways to fail, and are named") {
  const Free answer = free_joint(pump_cover_screw());
  REQUIRE(answer.capacities.size() == 3);
  CHECK(std::string(answer.capacities[1].part) == "recess");
  CHECK(std::string(answer.capacities[2].part) == "bit");
  for (const Capacity& one : answer.capacities) {
    CHECK(one.torque.low < one.torque.nominal);
    CHECK(one.torque.nominal < one.torque.high);
  }
  CHECK(answer.capacities[1].torque.nominal.si == near(answer.round.nominal.si).epsilon(0.02));
  CHECK(answer.capacities[2].torque.nominal.si == near(answer.tool.nominal.si).epsilon(0.02));
  FreeJob shallow = pump_cover_screw(), worn_bit = pump_cover_screw();
  shallow.limit = worn_bit.limit = Torque(150.0);
  const Free sound = free_joint(shallow);
  CHECK(sound.chances.round > 0.05);
  CHECK(sound.chances.tool > 0.05);
  shallow.head_height = Length(2e-3);
  CHECK(free_joint(shallow).chances.round > sound.chances.round + 0.2);
  bool said = false;
  for (const Notice& one : sound.notices) said = said || std::string("clean_recess") == one.code;
  CHECK(said);
}

TEST_CASE("six-lobed screw: a number that is not in the tables or does not suit the thread is refused") {
  FreeJob job = pump_cover_screw();
  for (int number : {0, -1, 31, 90, 8}) {
    CAPTURE(number);
    job.drive_number = number;
    const auto found = try_free_joint(job);
    REQUIRE_FALSE(found);
    CHECK(std::string(found.error().argument()) == "drive_number");
  }
}

}  // namespace recess_test
