// What to set on a wrench with extensions, joints and bars, and what arrives.
#include "answers.hpp"
#include "bindings.hpp"
#include "tauten/drawing/reach_drawing.hpp"
#include "tauten/question/reach_page.hpp"
#include "tauten/tool/reach.hpp"
#include "tauten/tool/reach_derivation.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

/// The answer with the job, which the drawing needs.
struct ReachAnswer : Reach {
  ReachJob job;
};

ReachAnswer reach_of(const py::dict& values) {
  const Arguments given{values};
  ReachJob job;
  given.either("torque", "setting");
  if (!given("torque", job.torque) && !given("setting", job.torque))
    throw Error("torque", "give the torque at the fastener, or the setting of the wrench; write it like 48N.m");
  job.known = given.has("setting") ? ReachJob::Known::setting : ReachJob::Known::at_fastener;
  given("wrench_length", job.wrench.length);
  given("wrench_type", job.wrench.type);
  if (std::string letter; given("wrench_class", letter)) job.wrench.class_letter = letter.size() == 1 ? letter[0] : ' ';
  given("scale_low", job.wrench.scale_low);
  given.above_zero("scale_high", job.wrench.scale_high);
  given.above_zero("division", job.wrench.division);
  given("hinged_handle", job.wrench.hinged_handle);
  given("pipe_on_handle", job.wrench.pipe_on_handle);
  given("extensions", job.extensions);
  given("hand_offset", job.hand_offset);
  given("support_share", job.support_share);
  given("tilt", job.tilt);
  given("universal_joint", job.universal_joint);
  for (const char* name : {"multiplier_efficiency", "efficiency_range", "reaction_arm"})
    if (given.has(name) && !given.has("multiplier_ratio"))
      throw Error("multiplier_ratio",
                  (std::string(name) + " goes with a multiplier; give multiplier_ratio too").c_str());
  if (given.has("multiplier_ratio")) {
    TorqueMultiplier& multiplier = job.multiplier.emplace();
    given("multiplier_ratio", multiplier.ratio);
    given("multiplier_efficiency", multiplier.efficiency);
    given("efficiency_range", multiplier.efficiency_range);
    given.above_zero("reaction_arm", multiplier.arm);
  }
  given("bars", job.bars);
  given.above_zero("drive_square", job.drive_square);
  given("tolerance_hand", job.tolerances.hand);
  given("tolerance_extension", job.tolerances.extension);
  given("tolerance_extension_angle", job.tolerances.extension_angle);
  given("tolerance_pull_angle", job.tolerances.pull_angle);
  given("tolerance_support_share", job.tolerances.support_share);
  given("tolerance_operator", job.tolerances.operator_share);
  return {tauten::reach(job), job};
}

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
  auto type = add_record<ReachAnswer>(module, "Reach", "What to set, what arrives, and how surely");
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
          "Wrench, extensions and fastener to scale: as text, `columns` wide, or as svg")
      .def("_repr_svg_", [](const ReachAnswer& reach) { return reach_drawing_svg(reach.job, reach); });
  add_page(type, [](const ReachAnswer& reach, const PageUnits& units) { return page_of(reach.job, reach, units); });
  add_explain(type, [](const ReachAnswer& reach) { return derivation_of(reach.job, reach); });
  module.def("reach", reach_of);
}

}  // namespace tauten::python
