// What is given is never taken for "not given": zero, NaN and infinity are values, and where they have no meaning they are
// refused by a sentence that names the argument, its value and what to write.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "tauten/question/clamp.hpp"
#include "tauten/question/curve.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/free_lookup.hpp"
#include "tauten/question/group.hpp"
#include "tauten/question/pattern.hpp"
#include "tauten/question/prying.hpp"
#include "tauten/question/reach.hpp"
#include "tauten/question/sequence.hpp"
#include "tauten/question/turn.hpp"

namespace absent_test {

using namespace tauten;

namespace {

enum class Zero { refused, taken };

/// A member of a job, by the name that an error has for it.
template <class Job>
struct Member {
  const char* argument;
  void (*set)(Job& job, double si);
  Zero zero = Zero::refused;
};

/// \param ask  answers a job, or says why not
template <class Job, class Ask>
void check_members(const Job& good, const std::vector<Member<Job>>& members, Ask ask) {
  REQUIRE_FALSE(ask(good).has_value());
  for (const Member<Job>& member : members) {
    CAPTURE(std::string(member.argument));
    for (const double value : {std::nan(""), HUGE_VAL, -HUGE_VAL, 0.0}) {
      CAPTURE(value);
      Job job = good;
      member.set(job, value);
      const std::optional<Error> error = ask(job);
      if (value == 0 && member.zero == Zero::taken) {
        CHECK_FALSE(error.has_value());
        continue;
      }
      REQUIRE(error.has_value());
      CHECK(std::string(error->argument()) == member.argument);
      const std::string sentence = error->what();
      const std::string shown = value == 0 ? "0" : std::isnan(value) ? "nan" : value > 0 ? "inf" : "-inf";
      CHECK(sentence.starts_with(std::string(member.argument) + " is " + shown));
      CHECK(sentence.find(", but ") != std::string::npos);  // behind it stands what can be
    }
  }
}

template <class Answer>
std::optional<Error> error_of(const Outcome<Answer>& answer) {
  if (answer) return std::nullopt;
  return answer.error();
}

ClampJob pump_bolt() {
  ClampJob job;
  job.thread = "M10";
  job.property_class = "8.8";
  job.condition = "oiled";
  return job;
}

TurnJob pump_foot() {
  TurnJob job;
  job.thread = "M16";
  job.property_class = "8.8";
  job.condition = "oiled";
  job.layers = {{.thickness = Length(20e-3), .outer_diameter = Length(70e-3)},
                {.thickness = Length(35e-3), .outer_diameter = Length(70e-3)}};
  return job;
}

FreeJob flange_bolt() {
  FreeJob job;
  job.diameter = Length(16e-3);
  job.pitch = Length(2e-3);
  job.width_across_flats = Length(24e-3);
  job.tensile_strength = Stress(800e6);
  job.yield_strength = Stress(640e6);
  job.trials = 2000;
  return job;
}

}  // namespace

TEST_CASE("clamp: what is given counts, zero and NaN too") {
  ClampJob job = pump_bolt();
  job.torque = Torque(48);
  const std::vector<Member<ClampJob>> both = {
      {"share", [](ClampJob& j, double x) { j.share = x; }},
      {"width_across_flats", [](ClampJob& j, double x) { j.thread = "", j.socket = Length(x); }},
      {"bearing_diameter", [](ClampJob& j, double x) { j.bearing_diameter = Length(x); }},
      {"bearing_diameter", [](ClampJob& j, double x) { j.more_faces = {{Length(x), "oiled"}}; }},
      {"wrench_accuracy", [](ClampJob& j, double x) { j.wrench_accuracy = x; }, Zero::taken},
      {"prevailing_torque", [](ClampJob& j, double x) { j.prevailing_torque = Torque(x); }, Zero::taken},
      {"shank_torque", [](ClampJob& j, double x) { j.shank_torque = Torque(x); }, Zero::taken},
      {"thread_friction", [](ClampJob& j, double x) { j.thread_friction = Band<double>{x, x, x}; }},
      {"bearing_friction", [](ClampJob& j, double x) { j.bearing_friction = Band<double>{x, x, x}; }},
  };
  const auto leaves = [](const ClampJob& asked) { return error_of(try_clamp(asked)); };
  const auto wanted = [](const ClampJob& asked) { return error_of(try_torque_for(asked)); };
  check_members<ClampJob>(job, both, leaves);
  check_members<ClampJob>(job, {{"torque", [](ClampJob& j, double x) { j.torque = Torque(x); }}}, leaves);
  check_members<ClampJob>(pump_bolt(), both, wanted);
  check_members<ClampJob>(pump_bolt(), {{"clamp_load", [](ClampJob& j, double x) { j.clamp_load = Force(x); }}},
                          wanted);
  ClampJob excess = job;
  excess.clamp_load = Force(50e3);  // what is not asked for is refused, not passed over
  CHECK(std::string(try_clamp(excess).error().argument()) == "clamp_load");
  CHECK(std::string(try_torque_for(excess).error().argument()) == "torque");
  CHECK(std::string(try_clamp(pump_bolt()).error().argument()) == "torque");
  // A perfect wrench is not the one of the standard.
  const ClampCandidate typical = clamp(job).candidates.front();
  job.wrench_accuracy = 0;
  CHECK(clamp(job).candidates.front().wrench_accuracy == 0);
  CHECK(typical.wrench_accuracy == 0.04);
}

TEST_CASE("turn: what is given counts, zero and NaN too") {
  TurnJob job = pump_foot();
  job.snug_torque = Torque(60);
  const auto ask = [](const TurnJob& asked) { return error_of(try_turn(asked)); };
  check_members<TurnJob>(
      job,
      {
          {"length", [](TurnJob& j, double x) { j.length = Length(x); }},
          {"shank_diameter", [](TurnJob& j, double x) { j.shank_diameter = Length(x); }},
          {"grip", [](TurnJob& j, double x) { j.layers.clear(), j.grip = Length(x); }},
          {"engagement", [](TurnJob& j, double x) { j.kind = JointKind::tapped_hole, j.engagement = Length(x); }},
          {"nut_height", [](TurnJob& j, double x) { j.nut_height = Length(x); }},
          {"outer_diameter", [](TurnJob& j, double x) { j.layers[1].outer_diameter = Length(x); }},
          {"hole_diameter", [](TurnJob& j, double x) { j.layers[1].hole_diameter = Length(x); }},
          {"elastic_modulus", [](TurnJob& j, double x) { j.layers[1].elastic_modulus = Stress(x); }},
          {"thickness", [](TurnJob& j, double x) { j.layers[1].thickness = Length(x); }},
          {"snug_torque", [](TurnJob& j, double x) { j.snug_torque = Torque(x); }},
          {"angle", [](TurnJob& j, double x) { j.angle = Angle(x); }},
          {"clamp_load", [](TurnJob& j, double x) { j.clamp_load = Force(x); }},
          {"share", [](TurnJob& j, double x) { j.share = x; }},
          {"utilisation", [](TurnJob& j, double x) { j.utilisation = x; }},
          {"bearing_diameter", [](TurnJob& j, double x) { j.bearing_diameter = Length(x); }},
          {"k_factor", [](TurnJob& j, double x) { j.structural = true, j.k_factor = x; }},
          {"wrench_accuracy", [](TurnJob& j, double x) { j.wrench_accuracy = x; }, Zero::taken},
          {"angle_tolerance", [](TurnJob& j, double x) { j.angle_tolerance = Angle(x); }, Zero::taken},
          {"resilience_tolerance", [](TurnJob& j, double x) { j.resilience_tolerance = x; }, Zero::taken},
          {"strength_surplus", [](TurnJob& j, double x) { j.strength_surplus = x; }, Zero::taken},
          {"prevailing_torque", [](TurnJob& j, double x) { j.prevailing_torque = Torque(x); }, Zero::taken},
          {"thread_friction", [](TurnJob& j, double x) { j.thread_friction = Band<double>{x, x, x}; }},
          {"bearing_friction", [](TurnJob& j, double x) { j.bearing_friction = Band<double>{x, x, x}; }},
          {"roughness", [](TurnJob& j, double x) { j.after.roughness = Length(x); }, Zero::taken},
          {"bolt_warming", [](TurnJob& j, double x) { j.after.bolt_warming = Quantity<Dim::temperature>(x); },
           Zero::taken},
          {"plate_warming", [](TurnJob& j, double x) { j.after.plate_warming = Quantity<Dim::temperature>(x); },
           Zero::taken},
          {"creep_share", [](TurnJob& j, double x) { j.after.creep_share = x; }, Zero::taken},
          {"neighbours", [](TurnJob& j, double x) { j.after.neighbours = Force(x); }, Zero::taken},
          {"working_load", [](TurnJob& j, double x) { j.after.working_load = Force(x); }, Zero::taken},
          {"load_introduction", [](TurnJob& j, double x) { j.after.load_introduction = x; }, Zero::taken},
      },
      ask);
  check_members<CurveJob>({.joint = job},
                          {{"end_angle", [](CurveJob& j, double x) { j.end_angle = Angle(x); }},
                           {"slope_share", [](CurveJob& j, double x) { j.slope_share = x; }},
                           {"snug_torque", [](CurveJob& j, double x) { j.joint.snug_torque = Torque(x); }}},
                          [](const CurveJob& asked) { return error_of(try_curve(asked)); });
}

TEST_CASE("reach: what is given counts, zero and NaN too") {
  ReachJob job;
  job.torque = Torque(130);
  job.extensions = {{Length(0.1), Angle(0.5)}};
  job.multiplier = TorqueMultiplier{4, 0.9, 0.04, Length(0.3)};
  using Job = ReachJob;
  check_members<Job>(
      job,
      {
          {"torque", [](Job& j, double x) { j.torque = Torque(x); }},
          {"wrench_length", [](Job& j, double x) { j.wrench.length = Length(x); }},
          {"scale_low", [](Job& j, double x) { j.wrench.scale_low = Torque(x); }, Zero::taken},
          {"scale_high", [](Job& j, double x) { j.wrench.scale_high = Torque(x); }},
          {"division", [](Job& j, double x) { j.wrench.division = Torque(x); }},
          {"extension_1_length", [](Job& j, double x) { j.extensions[0].length = Length(x); }},
          {"extension_1_angle", [](Job& j, double x) { j.extensions[0].angle = Angle(x); }, Zero::taken},
          {"hand_offset", [](Job& j, double x) { j.hand_offset = Length(x); }, Zero::taken},
          {"support_share", [](Job& j, double x) { j.support_share = x; }, Zero::taken},
          {"tilt", [](Job& j, double x) { j.tilt = Angle(x); }, Zero::taken},
          {"universal_joint", [](Job& j, double x) { j.universal_joint = Angle(x); }, Zero::taken},
          {"multiplier_ratio", [](Job& j, double x) { j.multiplier->ratio = x; }},
          {"multiplier_efficiency", [](Job& j, double x) { j.multiplier->efficiency = x; }},
          {"efficiency_range", [](Job& j, double x) { j.multiplier->efficiency_range = x; }, Zero::taken},
          {"reaction_arm", [](Job& j, double x) { j.multiplier->arm = Length(x); }},
          {"drive_square", [](Job& j, double x) { j.drive_square = Length(x); }},
          {"bar_length", [](Job& j, double x) { j.bars = {{DriveBar::Section::square, Length(x), Length(12e-3)}}; }},
          {"bar_size", [](Job& j, double x) { j.bars = {{DriveBar::Section::square, Length(0.2), Length(x)}}; }},
          {"tolerance_hand", [](Job& j, double x) { j.tolerances.hand = Length(x); }, Zero::taken},
          {"tolerance_extension", [](Job& j, double x) { j.tolerances.extension = Length(x); }, Zero::taken},
          {"tolerance_extension_angle", [](Job& j, double x) { j.tolerances.extension_angle = Angle(x); }, Zero::taken},
          {"tolerance_pull_angle", [](Job& j, double x) { j.tolerances.pull_angle = Angle(x); }, Zero::taken},
          {"tolerance_support_share", [](Job& j, double x) { j.tolerances.support_share = x; }, Zero::taken},
          {"tolerance_operator", [](Job& j, double x) { j.tolerances.operator_share = x; }, Zero::taken},
      },
      [](const Job& asked) { return error_of(try_reach(asked)); });
}

TEST_CASE("free: what is given counts, zero and NaN too") {
  using Job = FreeJob;
  const auto ask = [](const Job& asked) { return error_of(try_free_joint(asked)); };
  check_members<Job>(
      flange_bolt(),
      {
          {"diameter", [](Job& j, double x) { j.diameter = Length(x); }},
          {"pitch", [](Job& j, double x) { j.pitch = Length(x); }},
          {"width_across_flats", [](Job& j, double x) { j.width_across_flats = Length(x); }},
          {"tensile_strength", [](Job& j, double x) { j.tensile_strength = Stress(x); }},
          {"yield_strength", [](Job& j, double x) { j.yield_strength = Stress(x); }},
          {"torsion_ratio", [](Job& j, double x) { j.torsion_ratio = x; }},
          {"preload", [](Job& j, double x) { j.preload = Force(x); }, Zero::taken},
          {"thread_friction", [](Job& j, double x) { j.thread_friction = x; }},
          {"bearing_friction", [](Job& j, double x) { j.bearing_friction = x; }},
          {"engaged_length", [](Job& j, double x) { j.engaged_length = Length(x); }},
          {"bearing_diameter", [](Job& j, double x) { j.bearing_diameter = Length(x); }},
          {"nut_diameter", [](Job& j, double x) { j.nut_diameter = Length(x); }},
          {"nut_yield", [](Job& j, double x) { j.nut_yield = Stress(x); }},
          {"prevailing_torque", [](Job& j, double x) { j.prevailing_torque = Torque(x); }, Zero::taken},
          {"years", [](Job& j, double x) { j.first_year_loss = Length(5e-5), j.years = x; }},
          {"first_year_loss", [](Job& j, double x) { j.years = 10, j.first_year_loss = Length(x); }, Zero::taken},
          {"head_height", [](Job& j, double x) { j.head_height = Length(x); }},
          {"drive_clearance", [](Job& j, double x) { j.drive_clearance = Length(x); }, Zero::taken},
          {"corner_loss", [](Job& j, double x) { j.corner_loss = Length(x); }, Zero::taken},
          {"drive_square", [](Job& j, double x) { j.drive_square = Length(x); }},
          {"handle_length", [](Job& j, double x) { j.handle_length = Length(x); }},
          {"hand_force", [](Job& j, double x) { j.handle_length = Length(0.4), j.hand_force = Force(x); }},
          {"hand_variation", [](Job& j, double x) { j.handle_length = Length(0.4), j.hand_variation = x; },
           Zero::taken},
          {"limit", [](Job& j, double x) { j.limit = Torque(x); }},
          {"held", [](Job& j, double x) { j.held = Torque(x); }},
          {"shear_risk", [](Job& j, double x) { j.shear_risk = x; }},
          {"wanted_chance", [](Job& j, double x) { j.wanted_chance = x; }},
          {"soak_hours", [](Job& j, double x) { j.aids = {{.aid = Aid::fluid, .soak_hours = x}}; }, Zero::taken},
      },
      ask);
  // Either of the two alone is not enough, and is not passed over.
  FreeJob job = flange_bolt();
  job.years = 10;
  CHECK(std::string(ask(job).value().argument()) == "first_year_loss");
  job.years.reset(), job.first_year_loss = Length(5e-5);
  CHECK(std::string(ask(job).value().argument()) == "years");
  // A joint that has lost nothing in ten years is not one of which the loss is unknown.
  job.rust = Rust::heavy_rust, job.years = 10, job.first_year_loss = Length(0);
  FreeJob unknown = flange_bolt();
  unknown.rust = Rust::heavy_rust;
  CHECK(free_joint(job).shear.nominal > free_joint(unknown).shear.nominal);
  for (const char* argument : {"diameter", "pitch", "width_across_flats", "tensile_strength", "yield_strength"}) {
    FreeJob incomplete = flange_bolt();
    const std::string missing = argument;
    if (missing == "diameter") incomplete.diameter.reset();
    if (missing == "pitch") incomplete.pitch.reset();
    if (missing == "width_across_flats") incomplete.width_across_flats.reset();
    if (missing == "tensile_strength") incomplete.tensile_strength.reset();
    if (missing == "yield_strength") incomplete.yield_strength.reset();
    CHECK(std::string(ask(incomplete).value().argument()) == missing);
  }
  FreeJob lobes = flange_bolt();
  lobes.drive = DriveFit::hexalobular;
  CHECK(std::string(ask(lobes).value().argument()) == "drive_number");
  lobes.drive_number = 0;
  CHECK(std::string(ask(lobes).value().argument()) == "drive_number");
}

TEST_CASE("free: a name does not stand in for a zero that is given beside it") {
  const auto refused = [](FreeNames names, FreeJob job) {
    auto error = assume(names, job);
    if (!error) error = look_up(names, job);
    if (!error) error = error_of(try_free_joint(job));
    return error ? std::string(error->argument()) : std::string();
  };
  const FreeNames stamped{.thread = "M16", .property_class = "8.8"};
  for (const double value : {std::nan(""), HUGE_VAL, 0.0}) {
    CAPTURE(value);
    FreeJob job;
    job.diameter = Length(value);
    CHECK(refused(stamped, job) == "diameter");
    job = {}, job.pitch = Length(value);
    CHECK(refused(stamped, job) == "pitch");
    job = {}, job.tensile_strength = Stress(value);
    CHECK(refused(stamped, job) == "tensile_strength");
    job = {}, job.yield_strength = Stress(value);
    CHECK(refused(stamped, job) == "yield_strength");
    job = {}, job.torsion_ratio = value;
    CHECK(refused(stamped, job) == "torsion_ratio");
    job = {}, job.width_across_flats = Length(value);
    CHECK(refused(stamped, job) == "width_across_flats");
    FreeNames tool = stamped;
    tool.socket = Length(value);
    CHECK(refused(tool, {}) == "width_across_flats");
    tool = stamped, tool.key = Length(value);
    CHECK(refused(tool, {}) == "width_across_flats");
    CHECK(refused({.socket = Length(value)}, {}) == "width_across_flats");
  }
  // What is known of the heat treatment goes before what the class says.
  FreeJob softened;
  softened.surroundings.quenched = false;
  REQUIRE_FALSE(look_up(stamped, softened).has_value());
  CHECK(softened.surroundings.quenched == false);
}

TEST_CASE("pattern, group and sequence: what is given counts, zero and NaN too") {
  const std::vector<Position> square = {{-0.1, 0.1}, {0.1, 0.1}, {0.1, -0.1}, {-0.1, -0.1}};
  PatternJob holes;
  holes.positions = square;
  check_members<PatternJob>(holes,
                            {{"hole", [](PatternJob& j, double x) { j.hole = Length(x); }},
                             {"outside", [](PatternJob& j, double x) { j.outside = Length(x); }},
                             {"height", [](PatternJob& j, double x) { j.height = Length(x); }},
                             {"tolerance", [](PatternJob& j, double x) { j.tolerance = Length(x); }}},
                            [](const PatternJob& asked) { return error_of(try_pattern_facts(asked)); });
  GroupJob bolts;
  bolts.positions = square;
  bolts.load = PlaneForce{Force(0), Force(-16e3)};
  bolts.moment = LiftingMoment{Torque(0), Torque(2e3)};
  bolts.preload = Force(40e3);
  check_members<GroupJob>(bolts,
                          {{"torque", [](GroupJob& j, double x) { j.torque = Torque(x); }, Zero::taken},
                           {"force", [](GroupJob& j, double x) { j.force = Force(x); }, Zero::taken},
                           {"preload", [](GroupJob& j, double x) { j.preload = Force(x); }, Zero::taken},
                           {"friction", [](GroupJob& j, double x) { j.friction = x; }}},
                          [](const GroupJob& asked) { return error_of(try_bolt_group(asked)); });
  SequenceJob order;
  order.pattern = square;
  order.interaction = {{0.2}};
  check_members<SequenceJob>(
      order,
      {{"torque", [](SequenceJob& j, double x) { j.torque = Torque(x); }},
       {"load", [](SequenceJob& j, double x) { j.load = Force(x); }},
       {"limit", [](SequenceJob& j, double x) { j.limit = Force(x); }},
       {"shortfall", [](SequenceJob& j, double x) { j.shortfall = x; }},
       {"friction_scatter", [](SequenceJob& j, double x) { j.friction_scatter = x; }, Zero::taken},
       {"act_scatter", [](SequenceJob& j, double x) { j.act_scatter = x; }, Zero::taken},
       {"wrench_scatter", [](SequenceJob& j, double x) { j.wrench_scatter = x; }, Zero::taken}},
      [](const SequenceJob& asked) { return error_of(try_tightening_sequence(asked)); });
}

TEST_CASE("prying: what is given counts, zero and NaN too") {
  PryingJob plate;
  plate.tributary = Length(70e-3);
  plate.bolt_to_web = Length(49e-3), plate.bolt_to_edge = Length(41e-3);
  plate.thickness = Length(25e-3);
  plate.plate_strength = Stress(450e6);
  plate.bolt_strength = Force(163e3);
  plate.diameter = Length(20e-3), plate.hole = Length(22e-3);
  plate.pull = Force(110e3);
  const auto ask = [](const PryingJob& asked) { return error_of(try_plate_prying(asked)); };
  check_members<PryingJob>(plate,
                           {{"tributary", [](PryingJob& j, double x) { j.tributary = Length(x); }},
                            {"thickness", [](PryingJob& j, double x) { j.thickness = Length(x); }},
                            {"diameter", [](PryingJob& j, double x) { j.diameter = Length(x); }},
                            {"hole", [](PryingJob& j, double x) { j.hole = Length(x); }},
                            {"pull", [](PryingJob& j, double x) { j.pull = Force(x); }}},
                           ask);
  PryingJob tee = plate;
  tee.tributary.reset(), tee.diameter.reset(), tee.hole.reset();
  tee.effective_length = Length(200e-3);
  tee.plate_strength = Stress(250e6);
  tee.washer = Length(37e-3);
  tee.elongation_length = Length(60e-3), tee.bolt_area = Area(245e-6);
  check_members<PryingJob>(tee,
                           {{"effective_length", [](PryingJob& j, double x) { j.effective_length = Length(x); }},
                            {"washer", [](PryingJob& j, double x) { j.washer = Length(x); }},
                            {"elongation_length", [](PryingJob& j, double x) { j.elongation_length = Length(x); }},
                            {"bolt_area", [](PryingJob& j, double x) { j.bolt_area = Area(x); }}},
                           ask);
}

}  // namespace absent_test
