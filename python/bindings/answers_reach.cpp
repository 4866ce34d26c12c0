// What to set on a wrench with extensions, joints and bars, and what arrives.
#include "answers.hpp"
#include "bindings.hpp"
#include "call.hpp"
#include "shared/pages.hpp"
#include "tauten/question/reach.hpp"
#include "tauten/question/workings/reach_drawing.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

using shared::ReachAnswer;

std::string line_of(const Reach& reach) {
  return "set " + quantity_text(reach.setting.si, Dim::torque) + "; at the fastener " +
         AnyBand::of(reach.arrives).text();
}

}  // namespace

void add_reach(py::module_& module) {
  add_record<TorqueContribution>(
      module, "TorqueContribution",
      "One cause of uncertainty: full width of an even distribution, as share of the torque");
  add_record<ChainEnd>(module, "ChainEnd", "All extensions as one: where the chain ends, seen from the wrench's drive");
  auto type = add_record<ReachAnswer>(
      module, "Reach", "What to set, what arrives, and how surely",
      [](const py::dict& values) { return value_or_throw(shared::try_reach(PythonCall(values))).job; });
  set_repr(type, [](const ReachAnswer& reach) { return "Reach(" + line_of(reach) + ")"; });
  type.def(
          "drawing",
          [](const ReachAnswer& reach, const std::string& format, const py::object& columns) {
            if (format == "svg") return reach_drawing_svg(reach.job, reach);
            if (format == "text")
              return reach_drawing_text(reach.job, reach, static_cast<int>(read_whole("columns", columns, 20, 400)));
            throw Error("format", "format must be text or svg");
          },
          py::arg("format") = "text", py::arg("columns") = 64,
          "drawing(self, /, format='text', columns=64)\n--\n\nWrench, extensions and fastener to scale: as text, "
          "`columns` wide, or as svg")
      .def("_repr_svg_", [](const ReachAnswer& reach) { return reach_drawing_svg(reach.job, reach); });
  add_page(type, [](const ReachAnswer& reach, const PageUnits& units) { return shared::page_of(reach, units); });
  add_explain(type, [](const ReachAnswer& reach) { return derivation_of(reach); });
  module.def("reach", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_reach(PythonCall(values)))), values);
  });
}

}  // namespace tauten::python
