// Hexalobular drives against ISO 10664.
#include "tauten/part/hexalobular.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "near.hpp"
#include "tauten/part/head_table.hpp"
#include "tauten/tool/drive_strength.hpp"

namespace hexalobular_test {

using namespace tauten;

TEST_CASE("drives by number: A and B of ISO 10664") {
  const HexalobularDrive drive = hexalobular_drive(30);
  CHECK(drive.outer_diameter.si == near(5.6e-3));
  CHECK(drive.inner_diameter.si == near(4.05e-3));
  CHECK(std::string(drive.source.document) == "ISO 10664:2014");
  CHECK(hexalobular_drive(100).outer_diameter.si == near(22.4e-3));
  CHECK(hexalobular_drive(100).inner_seen == Seen::memory);
  CHECK_FALSE(find_hexalobular_drive(31));
  const auto unknown = try_hexalobular_drive(31);
  REQUIRE_FALSE(unknown);
  CHECK(std::string(unknown.error().argument()) == "drive_number");
  CHECK(std::string(unknown.error().what()).find("25, 30, 40") != std::string::npos);
}

TEST_CASE("drives grow with their number, and lobes are about a fifth of the radius deep") {
  const table::HexalobularDrive* last = nullptr;
  for (const table::HexalobularDrive& drive : table::hexalobular_drives) {
    CAPTURE(int{drive.number});
    const double ratio = drive.outer_diameter / drive.inner_diameter;
    CHECK(ratio > 1.34);
    CHECK(ratio < 1.42);
    if (last != nullptr) {
      CHECK(drive.number > last->number);
      CHECK(drive.outer_diameter > last->outer_diameter);
      CHECK(drive.inner_diameter > last->inner_diameter);
    }
    last = &drive;
  }
}

TEST_CASE("each six-lobed head has a drive of the tables, which fits into its thread") {
  int heads = 0;
  for (const table::Head& head : table::heads) {
    if (head.drive != table::Drive::hexalobular) continue;
    CAPTURE(head.thread_size);
    const auto drive = find_hexalobular_drive(head.drive_number);
    REQUIRE(drive);
    const double d = std::stod(std::string(head.thread_size).substr(1)) * 1e-3;
    CHECK(drive->outer_diameter.si > 0.85 * d);
    CHECK(drive->outer_diameter.si < 1.02 * d);
    ++heads;
  }
  CHECK(heads > 10);
}

TEST_CASE("plastic six-lobed bit: stronger than its round core, weaker than the bar it is cut from") {
  const double tau = 1400e6, pi = std::acos(-1.0);
  for (const table::HexalobularDrive& drive : table::hexalobular_drives) {
    const double A = drive.outer_diameter, B = drive.inner_diameter;
    const double torque = hexalobular_plastic_torque.si(tau, A, B);
    CHECK(torque > pi / 12 * tau * B * B * B);
    CHECK(torque < pi / 12 * tau * A * A * A);
    CHECK(hexalobular_plastic_torque.si(2 * tau, A, B) == near(2 * torque));
  }
  CHECK(std::isnan(hexalobular_plastic_torque.si(tau, 4e-3, 5e-3)));
}

}  // namespace hexalobular_test
