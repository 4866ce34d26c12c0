#include "tauten/question/free_lookup.hpp"

#include <doctest/doctest.h>

#include <string>

namespace free_lookup_test {

using namespace tauten;

namespace {

/// \return the argument that is at fault, or ""
std::string refused(const FreeNames& names, FreeJob job = {}) {
  const auto error = look_up(names, job);
  return error ? error->argument() : "";
}

FreeJob filled(const FreeNames& names, FreeJob job = {}) {
  REQUIRE_FALSE(look_up(names, job).has_value());
  return job;
}

}  // namespace

TEST_CASE("names give the figures of the standards") {
  const FreeJob job = filled({.thread = "M16", .property_class = "8.8"});
  CHECK(job.diameter->si == doctest::Approx(16e-3));
  CHECK(job.pitch->si == doctest::Approx(2e-3));                // ISO 261
  CHECK(job.width_across_flats->si == doctest::Approx(24e-3));  // ISO 4014
  CHECK(job.tensile_strength->si == doctest::Approx(800e6));    // ISO 898-1, up to 16 mm
  CHECK(job.yield_strength->si == doctest::Approx(640e6));
  CHECK(job.surroundings.quenched == true);
  CHECK(filled({.thread = "M20", .property_class = "8.8"}).tensile_strength->si == doctest::Approx(830e6));
  CHECK(filled({.thread = "M16", .property_class = "5.6"}).surroundings.quenched == false);
  CHECK(filled({.thread = "M16", .property_class = "A4-80"}).surroundings.quenched == false);
}

TEST_CASE("the tool that was said goes before the typical head") {
  CHECK(filled({.thread = "M16", .property_class = "8.8", .socket = Length(27e-3)}).width_across_flats->si == 27e-3);
  const FreeJob key = filled({.thread = "M16", .property_class = "8.8", .key = Length(14e-3)});
  CHECK(key.drive == DriveFit::internal_hexagon);
  CHECK(key.width_across_flats->si == 14e-3);
  const FreeJob nominal = filled({.thread = "M16", .property_class = "8.8", .drive = DriveFit::internal_hexagon});
  CHECK(nominal.width_across_flats->si == doctest::Approx(14e-3));  // ISO 4762
  const FreeJob bit = filled({.thread = "M16", .property_class = "8.8", .bit = 60});
  CHECK(bit.drive == DriveFit::hexalobular);
  CHECK(bit.drive_number == 60);
  const FreeJob lobes = filled({.thread = "M16", .property_class = "8.8", .drive = DriveFit::hexalobular});
  CHECK(lobes.drive_number == 70);  // ISO 14579
}

TEST_CASE("what is missing, unknown or said twice is refused") {
  FreeJob plain;
  plain.diameter = Length(16e-3);
  plain.pitch = Length(2e-3);
  plain.tensile_strength = Stress(800e6);
  plain.yield_strength = Stress(640e6);
  CHECK(refused({.socket = Length(24e-3)}, plain) == "");
  CHECK(refused({}, plain) == "socket");
  CHECK(refused({.thread = "M16"}, plain) == "diameter");
  CHECK(refused({.property_class = "8.8", .socket = Length(24e-3)}, plain) == "tensile_strength");
  CHECK(refused({}) == "thread");
  CHECK(refused({.thread = "M16"}) == "property_class");
  CHECK(refused({.thread = "banana", .property_class = "8.8"}) == "thread");
  CHECK(refused({.thread = "M16", .property_class = "9.9.9"}) == "property_class");
  CHECK(refused({.thread = "M16", .property_class = "8.8", .socket = Length(24e-3), .key = Length(14e-3)}) == "key");
  CHECK(refused({.thread = "M16", .property_class = "8.8", .key = Length(14e-3), .drive = DriveFit::open_end}) ==
        "drive");
  CHECK(refused({.thread = "M16", .property_class = "8.8", .bit = 60, .drive = DriveFit::open_end}) == "drive");
  CHECK(refused({.thread = "M16", .property_class = "8.8", .key = Length(14e-3), .bit = 60}) == "bit");
  CHECK(refused({.thread = "M16", .property_class = "8.8", .socket = Length(24e-3), .drive = DriveFit::hexalobular}) ==
        "drive");
  CHECK(refused({.thread = "M24", .property_class = "8.8", .drive = DriveFit::hexalobular}) == "bit");
  CHECK(refused({.drive = DriveFit::hexalobular}, plain) == "bit");
}

TEST_CASE("a tool alone is enough: thread and class are assumed, and kept as such") {
  FreeNames names{.socket = Length(24e-3)};
  FreeJob job;
  REQUIRE_FALSE(assume(names, job).has_value());
  CHECK(names.thread == "M16");  // ISO 4014, ISO 4032
  CHECK(job.assumed_thread == "M16");
  CHECK(names.property_class == "4.6");  // what an unmarked head must be taken for
  CHECK(job.class_assumed);
  REQUIRE_FALSE(look_up(names, job).has_value());
  CHECK(job.tensile_strength->si == 400e6);
  FreeNames key{.key = Length(14e-3)};
  FreeJob other;
  REQUIRE_FALSE(assume(key, other).has_value());
  CHECK(key.thread == "M16");  // ISO 4762
  FreeNames told{.thread = "M12", .property_class = "8.8", .socket = Length(24e-3)};
  FreeJob known;
  REQUIRE_FALSE(assume(told, known).has_value());
  CHECK(told.thread == "M12");
  CHECK(known.assumed_thread.empty());
  CHECK_FALSE(known.class_assumed);
}

TEST_CASE("a key in a thread that no cap screw has it for") {
  // ISO 7380-1: the recess of an M10 button head is 3.12 mm deep at least (from memory).
  const FreeJob button = filled({.thread = "M10", .property_class = "10.9", .key = Length(6e-3)});
  REQUIRE(button.head_height.has_value());
  CHECK(button.head_height->shop() == doctest::Approx(3.12));
  CHECK_FALSE(filled({.thread = "M8", .property_class = "10.9", .key = Length(6e-3)}).head_height.has_value());
  CHECK(refused({.thread = "M12", .property_class = "8.8", .key = Length(6e-3)}) == "key");
  FreeNames set{.key = Length(1.3e-3)};
  FreeJob job;
  CHECK(assume(set, job).has_value());
  // M3 has set screws for 1.5 mm, which are more common than the M2 cap screw, but no head.
  FreeNames small{.key = Length(1.5e-3)};
  REQUIRE_FALSE(assume(small, job).has_value());
  CHECK(small.thread != "M3");
}

}  // namespace free_lookup_test
