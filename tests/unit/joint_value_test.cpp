// A joint as a value: builders, resilience by three models, the diagram.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tauten/joint/build.hpp"
#include "tauten/joint/diagram.hpp"
#include "tauten/joint/resilience.hpp"
#include "tauten/units.hpp"

namespace joint_value_test {

using namespace tauten;
using namespace tauten::literals;

namespace {

/// Relative comparison alone: the library's default adds 1 to the scale, which would let any two small SI numbers pass.
doctest::Approx about(double value, double relative = 1e-9) {
  return doctest::Approx(value).epsilon(relative).scale(0);
}

const Bolt foot_bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 80.0_mm};
const Layer iron{20.0_mm, 70.0_mm, material::grey_cast_iron};
const Layer base{35.0_mm, 70.0_mm, material::steel};

template <class T>
std::string problem(const Outcome<T>& outcome) {
  return outcome ? "" : outcome.error().what();
}
bool names(const Outcome<Joint>& outcome, const char* argument, const char* words) {
  return !outcome && std::string(outcome.error().argument()) == argument &&
         problem(outcome).find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("joint: lengths of thread and heights of nuts by their standards") {
  // ISO 4762: 2 d + 12 mm.
  for (const auto& [d, b] : {std::pair{8, 28}, {10, 32}, {12, 36}, {16, 44}, {20, 52}})
    CHECK(thread_length(Length(1e-3 * d), 60.0_mm, HeadForm::socket).si == doctest::Approx(1e-3 * b));
  CHECK(thread_length(20.0_mm, 80.0_mm).si == doctest::Approx(46e-3));    // ISO 4014
  CHECK(structural_thread_length(20.0_mm).si == doctest::Approx(33e-3));  // EN 14399-4
  CHECK(nut_height_of(16.0_mm).si == doctest::Approx(14.8e-3));           // ISO 4032
  CHECK(nut_height_of(20.0_mm).si == doctest::Approx(18e-3));
}

TEST_CASE("joint: a through bolt in pieces") {
  const Joint joint = through_bolt(foot_bolt, {iron, base});
  CHECK(joint.grip().si == about(55e-3));
  REQUIRE(joint.segments.size() == 5);
  CHECK(joint.segments[1].length.si == about(80e-3 - (2 * 16e-3 + 6e-3)));
  CHECK(joint.segments[2].length.si == about(55e-3 - 42e-3));
  // ISO 4014 bearing face and ISO 273 hole, by the tables.
  CHECK(joint.face_diameter.si == about(22.49e-3));
  CHECK(joint.layers[0].hole_diameter.si == about(17.5e-3));
  // Sum by hand: (0.5 d + 0.4 d + shank)/A_N + (free + 0.5 d)/A_3.
  const double a_n = 3.14159265358979 / 4 * 16e-3 * 16e-3;
  const double d3 = 16e-3 - 1.226869 * 2e-3;
  const double a_3 = 3.14159265358979 / 4 * d3 * d3;
  const double by_hand = (0.9 * 16e-3 + 42e-3) / (205e9 * a_n) + (13e-3 + 8e-3) / (205e9 * a_3);
  CHECK(bolt_resilience(joint).si == about(by_hand, 1e-6));
}

TEST_CASE("joint: thread lengths and standard lengths") {
  CHECK(thread_length(12.0_mm, 125.0_mm).si == about(30e-3));
  CHECK(thread_length(12.0_mm, 130.0_mm).si == about(36e-3));
  CHECK(thread_length(12.0_mm, 220.0_mm).si == about(49e-3));
  CHECK(standard_length(66.0_mm).si == about(70e-3));
  CHECK(standard_length(70.0_mm).si == about(70e-3));
  CHECK(standard_length(900.0_mm).si == about(900e-3));
}

TEST_CASE("joint: tapped hole and stud") {
  const Bolt screw{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 45.0_mm};
  const Joint tapped = tapped_joint(screw, {iron}, {.tapped_material = material::grey_cast_iron});
  CHECK(tapped.segments.back().kind == SegmentKind::tapped_hole);
  CHECK(tapped.segments.back().elastic_modulus == material::grey_cast_iron.elastic_modulus);
  CHECK(tapped.far_face_diameter.si == 0);
  const Joint stud = stud_joint(foot_bolt, {iron, base});
  CHECK(stud.segments[1].kind == SegmentKind::tapped_hole);
  CHECK(stud.segments.back().kind == SegmentKind::nut);
  for (const BoltSegment& s : stud.segments) CHECK(s.kind != SegmentKind::head);
  CHECK(plate_resilience(stud).value.si > 0);
}

TEST_CASE("plates: symmetric cones are twice a half, and layers add up") {
  const Layer whole{40.0_mm, 400.0_mm, material::steel, 17.5_mm};
  const Layer half{20.0_mm, 400.0_mm, material::steel, 17.5_mm};
  const Bolt bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 60.0_mm, .face_diameter = 24.0_mm};
  const double one = plate_resilience(through_bolt(bolt, {whole}), PlateModel::frustum).value.si;
  const double two = plate_resilience(through_bolt(bolt, {half, half}), PlateModel::frustum).value.si;
  const double cone = cone_resilience.si(20e-3, 17.5e-3, 24e-3, 3.14159265358979 / 6, 205e9);
  CHECK(one == about(2 * cone, 1e-12));
  CHECK(two == about(one, 1e-12));
  const double fit = plate_resilience(through_bolt(bolt, {half, half}), PlateModel::exponential).value.si;
  CHECK(fit == about(plate_resilience(through_bolt(bolt, {whole}), PlateModel::exponential).value.si));
}

TEST_CASE("plates: cones from unequal faces are equally wide where they meet") {
  Joint joint = through_bolt({.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 60.0_mm, .face_diameter = 24.0_mm},
                             {{40.0_mm, 400.0_mm, material::steel, 17.5_mm}});
  joint.far_face_diameter = 30.0_mm;
  const double angle = 3.14159265358979 / 6;
  // 24 + 2 x tan 30 = 30 + 2 (40 - x) tan 30
  const double x = 20e-3 + 6e-3 / (4 * std::tan(angle));
  const double expected =
      cone_resilience.si(x, 17.5e-3, 24e-3, angle, 205e9) + cone_resilience.si(40e-3 - x, 17.5e-3, 30e-3, angle, 205e9);
  CHECK(plate_resilience(joint, PlateModel::frustum).value.si == about(expected));
}

TEST_CASE("joint: twist of the bolt by hand") {
  const Joint joint = through_bolt(foot_bolt, {iron, base});
  const double d3 = 16e-3 - 1.226869 * 2e-3;
  const auto polar = [](double d) { return 3.14159265358979 / 32 * d * d * d * d; };
  const double by_hand = (42e-3 / polar(16e-3) + (13e-3 + 4e-3) / polar(d3)) / (205e9 / 2.6);
  CHECK(bolt_twist_per_torque(joint) == about(by_hand, 1e-6));
}

TEST_CASE("plates: a sleeve no wider than the face is a cylinder") {
  const Layer sleeve{40.0_mm, 24.0_mm, material::steel, 17.5_mm};
  const Bolt bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 60.0_mm, .face_diameter = 24.0_mm};
  for (PlateModel model : {PlateModel::deformation_cone, PlateModel::frustum}) {
    const PlateResilience found = plate_resilience(through_bolt(bolt, {sleeve}), model);
    CHECK(found.value.si == about(sleeve_resilience.si(40e-3, 17.5e-3, 24e-3, 205e9), 1e-12));
  }
}

TEST_CASE("plates: the model is chosen by width, and says where it is out of range") {
  const Bolt bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 60.0_mm, .face_diameter = 24.0_mm};
  const auto at = [&](Length width, PlateModel model) {
    return plate_resilience(through_bolt(bolt, {{40.0_mm, width}}), model);
  };
  CHECK(at(60.0_mm, PlateModel::chosen).model == PlateModel::deformation_cone);
  CHECK(at(100.0_mm, PlateModel::chosen).model == PlateModel::frustum);
  CHECK(at(60.0_mm, PlateModel::chosen).notices.empty());
  CHECK(at(100.0_mm, PlateModel::chosen).notices.empty());
  REQUIRE(at(100.0_mm, PlateModel::deformation_cone).notices.size() == 1);
  CHECK(std::string(at(100.0_mm, PlateModel::deformation_cone).notices[0].code) == "wide_layers");
  CHECK(std::string(at(60.0_mm, PlateModel::frustum).notices[0].code) == "narrow_layers");
  CHECK(at(60.0_mm, PlateModel::exponential).notices.size() == 2);
  const Joint tapped = tapped_joint(bolt, {{40.0_mm, 200.0_mm}});
  CHECK(plate_resilience(tapped).model == PlateModel::deformation_cone);
}

TEST_CASE("plates: wider, stiffer and shorter is never more resilient") {
  const auto value = [](Length thickness, Length width, const Material& of, PlateModel model) {
    const Bolt bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 160.0_mm, .thread_length = 150.0_mm};
    return plate_resilience(through_bolt(bolt, {{thickness, width, of}}), model).value.si;
  };
  for (PlateModel model : {PlateModel::deformation_cone, PlateModel::frustum}) {
    double last = 1;
    for (double width : {20e-3, 25e-3, 30e-3, 40e-3, 60e-3, 100e-3, 200e-3}) {
      const double now = value(80.0_mm, Length(width), material::steel, model);
      CHECK(now <= last * (1 + 1e-12));
      last = now;
    }
    CHECK(value(80.0_mm, 50.0_mm, material::aluminium, model) > value(80.0_mm, 50.0_mm, material::steel, model));
    CHECK(value(80.0_mm, 50.0_mm, material::steel, model) > value(40.0_mm, 50.0_mm, material::steel, model));
  }
}

TEST_CASE("joint: resilience scales with one over length") {
  const Joint small = through_bolt(
      {.diameter = 8.0_mm, .pitch = 1.0_mm, .length = 50.0_mm, .face_diameter = 12.0_mm, .thread_length = 30.0_mm},
      {{30.0_mm, 40.0_mm, material::steel, 9.0_mm}});
  const Joint large = through_bolt(
      {.diameter = 24.0_mm, .pitch = 3.0_mm, .length = 150.0_mm, .face_diameter = 36.0_mm, .thread_length = 90.0_mm},
      {{90.0_mm, 120.0_mm, material::steel, 27.0_mm}});
  CHECK(bolt_resilience(small).si == about(3 * bolt_resilience(large).si, 1e-12));
  CHECK(bolt_twist_per_torque(small) == about(27 * bolt_twist_per_torque(large), 1e-12));
  for (PlateModel model : {PlateModel::deformation_cone, PlateModel::frustum, PlateModel::exponential})
    CHECK(plate_resilience(small, model).value.si == about(3 * plate_resilience(large, model).value.si, 1e-12));
}

TEST_CASE("joint: wrong input is refused with argument, value, rule") {
  Bolt bolt = foot_bolt;
  CHECK(names(try_through_bolt(bolt, {}), "grip_length", "0 mm"));
  CHECK(names(try_through_bolt(bolt, {{0.0_mm, 70.0_mm}}), "thickness", "0 mm"));
  CHECK(names(try_through_bolt(bolt, {{-2.0_mm, 70.0_mm}}), "thickness", "-2 mm"));
  CHECK(names(try_through_bolt(bolt, {{70.0_mm, 70.0_mm}}), "length", "longer bolt"));
  CHECK(names(try_through_bolt(bolt, {{90.0_mm, 70.0_mm}}), "length", "104.8 mm"));
  CHECK(names(try_through_bolt(bolt, {{20.0_mm, 70.0_mm}}), "grip_length", "begins only beyond"));
  CHECK(names(try_through_bolt(bolt, {{50.0_mm, 15.0_mm}}), "outer_diameter", "15 mm"));
  CHECK(names(try_through_bolt(bolt, {{50.0_mm, 70.0_mm, material::steel, 15.0_mm}}), "hole_diameter", "must pass"));
  CHECK(names(try_through_bolt(bolt, {{50.0_mm, 70.0_mm, material::steel, 30.0_mm}}), "face_diameter", "washer"));
  CHECK(names(try_tapped_joint(bolt, {{100.0_mm, 70.0_mm}}), "length", "no thread is engaged"));
  CHECK(names(try_tapped_joint(bolt, {{75.0_mm, 70.0_mm}}), "length", "0.5 d"));
  CHECK(names(try_stud_joint(bolt, {iron, base}, {.engagement = 3.0_mm}), "engagement", "3 mm"));
  Material soft = material::steel;
  soft.elastic_modulus = Stress(-70e9);
  CHECK(names(try_through_bolt(bolt, {{50.0_mm, 70.0_mm, soft}}), "elastic_modulus", "-70000 MPa"));
  bolt.material = soft;
  CHECK(names(try_through_bolt(bolt, {iron, base}), "elastic_modulus", "bolt"));
  bolt = foot_bolt;
  bolt.pitch = 9.0_mm;
  CHECK(names(try_through_bolt(bolt, {iron, base}), "pitch", "9 mm"));
  bolt = foot_bolt;
  bolt.diameter = Length(std::nan(""));
  CHECK(names(try_through_bolt(bolt, {iron, base}), "diameter", "nan"));
  bolt = foot_bolt;
  bolt.shank_diameter = 4.0_mm;
  CHECK(names(try_through_bolt(bolt, {iron, base}), "shank_diameter", "4 mm"));
  CHECK_FALSE(try_plate_resilience(tapped_joint({.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 45.0_mm}, {iron}),
                                   PlateModel::exponential));
}

TEST_CASE("joint: load-extension diagram") {
  const Quantity<Dim::compliance> bolt(3e-9);
  const Quantity<Dim::compliance> parts(1e-9);
  const LoadDiagram in_service = load_diagram(40.0_kN, bolt, parts, 20.0_kN);
  CHECK(in_service.joint_constant == about(0.25));
  CHECK(in_service.bolt_load.si == about(45e3));
  CHECK(in_service.clamp_load.si == about(25e3));
  // Bolt and parts meet at the preload, and stretch by the same amount under the working load.
  CHECK(in_service.bolt[1].extension.si == about(in_service.parts[1].extension.si));
  CHECK(in_service.bolt[2].extension.si == about(in_service.parts[0].extension.si));
  const LoadDiagram open = load_diagram(40.0_kN, bolt, parts, 60.0_kN);
  CHECK(open.separated);
  CHECK(open.bolt_load.si == about(60e3));
  CHECK(open.clamp_load.si == 0);
  CHECK(open.separation_load.si == about(40e3 / 0.75));
  CHECK_FALSE(try_load_diagram(Force(-1), bolt, parts));
  CHECK_FALSE(try_load_diagram(40.0_kN, bolt, parts, 20.0_kN, 1.5));
}

}  // namespace joint_value_test
