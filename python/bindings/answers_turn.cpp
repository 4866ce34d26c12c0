// How far to turn from snug, what a turn leaves, and torque and preload against the angle.
#include <pybind11/numpy.h>

#include "answers.hpp"
#include "bindings.hpp"
#include "shared/inputs.hpp"
#include "tauten/tightening/joint_curve.hpp"
#include "tauten/tightening/turn_by_angle.hpp"
#include "tauten/tightening/turn_derivation.hpp"
#include "tauten/uncertainty/turn_uncertainty.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

/// What `turn` and `curve` are both asked.
TurnJob joint_of(const Given& given) {
  TurnJob job;
  given("name", job.name);
  given("thread", job.thread);
  given("property_class", job.property_class);
  given("head", job.head);
  given("kind", job.kind);
  given.above_zero("length", job.length);
  given.above_zero("shank_diameter", job.shank_diameter);
  given("layers", job.layers);
  given.above_zero("grip", job.grip);
  given("washers", job.washers);
  given("tapped_material", job.tapped_material);
  given("plate_model", job.plate_model);
  given.above_zero("snug_torque", job.snug_torque);
  given("condition", job.condition);
  given("face_condition", job.face_condition);
  if (const auto found = try_thread_condition(job.face_condition); given.has("face_condition") && !found)
    throw shared::renamed(found.error(), "condition", "face_condition");
  given("thread_friction", job.thread_friction);
  given("bearing_friction", job.bearing_friction);
  given("prevailing_torque", job.prevailing_torque);
  given.above_zero("bearing_diameter", job.bearing_diameter);
  return job;
}

Error in_words(const Error& error) { return shared::renamed(error, "standard", "head"); }

TurnJob turn_job_of(const Given& given) {
  TurnJob job = joint_of(given);
  given.above_zero("angle", job.angle);
  given("angle_at_handle", job.angle_at_handle);
  given.above_zero("clamp_load", job.clamp_load);
  given("share", job.share);
  given("utilisation", job.utilisation);
  given("bars", job.bars);
  given("wrench_accuracy", job.wrench_accuracy);
  given("angle_tolerance", job.angle_tolerance);
  given("resilience_tolerance", job.resilience_tolerance);
  given("strength_surplus", job.strength_surplus);
  given("roughness", job.after.roughness);
  given("load_across", job.after.load_across);
  given("bolt_warming", job.after.bolt_warming);
  given("plate_warming", job.after.plate_warming);
  given("creep_share", job.after.creep_share);
  given("neighbours", job.after.neighbours);
  given("working_load", job.after.working_load);
  given("load_introduction", job.after.load_introduction);
  given("structural", job.structural);
  given("sloping_faces", job.sloping_faces);
  return job;
}

TurnAnswer turn_of(const py::dict& values) {
  const Outcome<TurnAnswer> found = try_turn(turn_job_of(Given{values}));
  if (!found) throw in_words(found.error());
  return *found;
}

Question turn_question_of(const py::dict& values) {
  const TurnJob job = turn_job_of(Given{values});
  const Outcome<TurnAnswer> answer = try_turn(job);
  if (!answer) throw in_words(answer.error());
  return turn_question(job, *answer);
}

CurveAnswer curve_of(const py::dict& values) {
  const Given given{values};
  CurveJob job;
  job.joint = joint_of(given);
  given.above_zero("end_angle", job.end_angle);
  given("points", job.points);
  given("slope_share", job.slope_share);
  const Outcome<CurveAnswer> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_curve(job);
  }();
  if (!found) throw in_words(found.error());
  return *found;
}

/// \return the points as columns: name of the member to NumPy array
py::dict columns_of(const Curve& curve) {
  py::dict columns;
  CurvePoint::fields([&](const char* name, auto member) {
    py::array_t<double> column(static_cast<py::ssize_t>(curve.points.size()));
    auto rows = column.mutable_unchecked<1>();
    for (std::size_t i = 0; i < curve.points.size(); ++i) {
      const auto& value = curve.points[i].*member;
      if constexpr (requires { value.si; })
        rows(static_cast<py::ssize_t>(i)) = value.si;
      else
        rows(static_cast<py::ssize_t>(i)) = value;
    }
    columns[name] = column;
  });
  return columns;
}

std::string line_of(const TurnAnswer& a) {
  return a.joint.thread + ", class " + a.joint.property_class + ": " + quantity_text(a.angle.si, Dim::angle) +
         " from snug at " + quantity_text(a.snug_torque.si, Dim::torque) + ", " + AnyBand::of(a.clamp_load).text() +
         ", " + a.verdict;
}

std::string line_of(const CurvePoint& p) {
  return quantity_text(p.angle.si, Dim::angle) + ", " + quantity_text(p.torque.si, Dim::torque) + ", " +
         quantity_text(p.preload.si, Dim::force);
}

std::string line_of(const Curve& c) {
  return std::to_string(c.points.size()) + " points to " + line_of(c.points.back()) +
         (c.has_yield_point ? "; yield point at " + line_of(c.yield_point) : "");
}

}  // namespace

void add_turn(py::module_& module) {
  add_record<TurnLayer>(module, "TurnLayer", "A clamped layer");
  add_record<TurnJoint>(module, "TurnJoint", "What was understood of a joint, and how it answers to load");
  add_record<ResidualClamp>(module, "ResidualClamp", "What remains of the clamp load and what was lost on the way");
  add_record<LoadPoint>(module, "LoadPoint", "A point of the load-extension diagram");
  add_record<LoadDiagram>(module, "LoadDiagram", "Load-extension diagram: lines of bolt and clamped parts");
  add_record<MethodBand>(module, "MethodBand", "Preload that a way of tightening would leave");
  add_record<NutRotation>(module, "NutRotation", "A prescribed rotation with what it may be off");
  add_record<StructuralTurn>(module, "StructuralTurn", "What the turns of structural bolting would leave");
  auto turn = add_record<TurnAnswer>(module, "Turn", "How far to turn, or what a turn leaves, and between what limits");
  set_repr(turn, [](const TurnAnswer& a) { return "Turn(" + line_of(a) + ")"; });
  add_explain(turn, [](const TurnAnswer& a) { return derivation_of(a); });
  auto point = add_record<CurvePoint>(module, "CurvePoint", "A point of the tightening curve");
  set_repr(point, [](const CurvePoint& p) { return "CurvePoint(" + line_of(p) + ")"; });
  add_record<TurningEnergy>(module, "TurningEnergy", "Where the work of the torque has gone, in J");
  auto curve = add_record<Curve>(module, "Curve", "A tightening curve with its marks, for one friction");
  set_repr(curve, [](const Curve& c) { return "Curve(" + line_of(c) + ")"; });
  curve.def("columns", columns_of, "The points as NumPy arrays, by name, in SI");
  add_record<CurveZone>(module, "CurveZone", "A stretch of the curve");
  auto answer = add_record<CurveAnswer>(module, "TighteningCurve",
                                        "Torque and preload against the angle, at low, usual and high friction");
  set_repr(answer, [](const CurveAnswer& a) {
    return "TighteningCurve(" + a.joint.thread + ", class " + a.joint.property_class + ": " + line_of(a.nominal) + ")";
  });
  module.def("turn", turn_of);
  module.def("turn_question", turn_question_of);
  module.def("curve", curve_of);
}

}  // namespace tauten::python
