// How far to turn from snug, what a turn leaves, and torque and preload against the angle.
#include <pybind11/numpy.h>

#include "answers.hpp"
#include "bindings.hpp"
#include "call.hpp"
#include "shared/pages.hpp"
#include "tauten/question/curve.hpp"
#include "tauten/question/turn.hpp"
#include "tauten/question/turn_uncertainty.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

UncertaintyQuestion turn_question_of(const py::dict& values) {
  const PythonCall call(values);
  const auto given = value_or_throw(shared::try_turn_job(call));
  const TurnJob& job = given.job.joint;
  const Outcome<TurnAnswer> answer = try_turn(job);
  if (!answer) throw shared::in_words(given, answer.error());
  return turn_question(job, *answer);
}

CurveAnswer curve_of(const py::dict& values) {
  const PythonCall call(values);
  const auto given = value_or_throw(shared::try_read(shared::curve_inputs(), call));
  const Outcome<CurveAnswer> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_curve(given.job);
  }();
  if (!found) throw shared::in_words(given, found.error());
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
  add_record<FacePressure>(module, "FacePressure", "Pressure under head, nut or washer");
  add_record<InService>(module, "InService", "Loads on bolt and joint in service");
  add_record<LoadPoint>(module, "LoadPoint", "A point of the load-extension diagram");
  add_record<LoadDiagram>(module, "LoadDiagram", "Load-extension diagram: lines of bolt and clamped parts");
  add_record<MethodBand>(module, "MethodBand", "Preload that a way of tightening would leave");
  add_record<NutRotation>(module, "NutRotation", "A prescribed rotation with what it may be off");
  add_record<StructuralTurn>(module, "StructuralTurn", "What the turns of structural bolting would leave");
  auto turn = add_record<TurnAnswer, std::nullptr_t, true>(
      module, "Turn", "How far to turn, or what a turn leaves, and between what limits");
  set_repr(turn, [](const TurnAnswer& a) { return "Turn(" + line_of(a) + ")"; });
  add_page(turn, [](const TurnAnswer& a, const PageUnits& units) { return shared::page_of(a, units); });
  add_explain(turn, [](const TurnAnswer& a) { return derivation_of(a); });
  auto point = add_record<CurvePoint>(module, "CurvePoint", "A point of the tightening curve");
  set_repr(point, [](const CurvePoint& p) { return "CurvePoint(" + line_of(p) + ")"; });
  add_record<TurningEnergy>(module, "TurningEnergy", "Where the work of the torque has gone, in J");
  auto curve = add_record<Curve>(module, "Curve", "A tightening curve with its marks, for one friction");
  set_repr(curve, [](const Curve& c) { return "Curve(" + line_of(c) + ")"; });
  add_page(curve, [](const Curve& c, const PageUnits& units) { return shared::page_of(c, units); });
  curve.def("columns", columns_of, "columns(self, /)\n--\n\nThe points as NumPy arrays, by name, in SI");
  add_record<CurveZone>(module, "CurveZone", "A stretch of the curve");
  auto answer = add_record<CurveAnswer, std::nullptr_t, true>(
      module, "TighteningCurve", "Torque and preload against the angle, at low, typical and high friction");
  set_repr(answer, [](const CurveAnswer& a) {
    return "TighteningCurve(" + a.joint.thread + ", class " + a.joint.property_class + ": " + line_of(a.nominal) + ")";
  });
  add_page(answer, [](const CurveAnswer& a, const PageUnits& units) { return shared::page_of(a, units); });
  module.def("turn", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_turn(PythonCall(values)))), values);
  });
  module.def("turn_question", turn_question_of);
  module.def("curve", [](const py::dict& values) { return with_question(py::cast(curve_of(values)), values); });
}

}  // namespace tauten::python
