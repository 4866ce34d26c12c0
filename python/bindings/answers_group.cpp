// Patterns of bolts, what each bolt of a group carries, and in which order a joint is tightened and undone.
#include "answers.hpp"
#include "bindings.hpp"
#include "call.hpp"
#include "shared/pages.hpp"
#include "shared/place_inputs.hpp"
#include "tauten/question/group_page.hpp"
#include "tauten/question/pattern_page.hpp"
#include "tauten/question/prying_page.hpp"
#include "tauten/question/sequence_page.hpp"

#include "sheet/sheet.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

using shared::GroupAnswer;
using shared::PatternAnswer;
using shared::PryingAnswer;
using shared::SequenceAnswer;

py::object ways_of(const PatternAnswer& part, const py::object& on, const py::object& tolerance, bool flipped) {
  std::vector<Position> from, to;
  for (const Coordinates& p : part.positions) from.push_back({p[0].si, p[1].si});
  const PythonCall call(py::dict(py::arg("on") = on));
  const shared::Call said = call;
  if (const auto problem = shared::read_pattern("on", said.said[0].value, to)) throw *problem;
  const Length within(read_number("tolerance", tolerance, Dim::length));
  return to_python(value_or_throw(try_pattern_ways(from, to, within, flipped)));
}

/// The texts of the notices, as before they had codes.
template <class T>
void add_notes(py::class_<T>& type) {
  type.def_property_readonly(
      "notes",
      [](const T& answer) {
        py::list texts;
        for (const Notice& notice : answer.notices) texts.append(notice.text);
        return py::tuple(texts);
      },
      "The texts of the notices");
  type.attr("__annotations__")["notes"] = "tuple[str, ...]";
}

/// Gives an answer its drawing, and the places of its bolts, which make it a pattern for other questions.
/// \param sketch  answer -> PatternSketch
template <class T, class F>
void add_drawing(py::class_<T>& type, F sketch) {
  type.def(
          "drawing",
          [sketch](const T& answer, const std::string& format, const py::object& columns) {
            if (format == "svg") return sketch_svg(sketch(answer));
            if (format == "text")
              return sketch_text(sketch(answer), static_cast<int>(read_whole("columns", columns, 20, 400)));
            throw Error("format", "format must be text or svg");
          },
          py::arg("format") = "text", py::arg("columns") = 60,
          "drawing(self, /, format='text', columns=60)\n--\n\nThe bolts with their numbers, to scale: as text, "
          "`columns` wide, or as svg with loads as arrows")
      .def("_repr_svg_", [sketch](const T& answer) { return sketch_svg(sketch(answer)); });
  if constexpr (!requires(const T& answer) { answer.positions; }) {
    type.attr("__annotations__")["positions"] = "tuple[tuple[float, ...], ...]";
    type.def_property_readonly(
        "positions",
        [sketch](const T& answer) {
          py::list places;
          for (const Position p : sketch(answer).bolts) places.append(py::make_tuple(p.x, p.y));
          return py::tuple(places);
        },
        "x and y of each bolt in m");
  }
}

}  // namespace

void add_group(py::module_& module) {
  add_record<StandardDrilling>(module, "DrillingCandidate",
                               "A standard drilling that fits the holes; it proves no rating");
  add_record<PatternWay>(module, "PatternWay", "One way in which a part goes on: bolt numbers from 1, turn clockwise");
  auto pattern = add_record<PatternAnswer>(
      module, "Pattern", "Which pattern the holes are; bolts are numbered from 1",
      [](const py::dict& values) { return value_or_throw(shared::try_pattern(PythonCall(values))).job; });
  pattern.def("ways_on", ways_of, py::arg("on"), py::arg("tolerance") = py::str("0.5mm"), py::arg("flipped") = false,
              "ways_on(self, /, on, tolerance='0.5mm', flipped=False)\n--\n\nAll ways in which this part goes on "
              "another pattern so that each bolt comes within the tolerance of its place; "
              "flipped: turned over first. None of them: it does not fit.");
  set_repr(pattern, [](const PatternAnswer& p) {
    return "Pattern(" + std::string(word_of(p.kind)) + ", " + std::to_string(p.count) + " holes" +
           (p.circle_diameter.si == p.circle_diameter.si ? " on " + to_text(p.circle_diameter) : "") + ", " +
           std::to_string(p.ways_round) + (p.ways_round == 1 ? " way round)" : " ways round)");
  });
  add_page(pattern, [](const PatternAnswer& p, const PageUnits& units) { return shared::page_of(p, units); });
  add_explain(pattern, [](const PatternAnswer& p) { return derivation_of(p); });
  add_notes(pattern);
  add_drawing(pattern, [](const PatternAnswer& p) { return sketch_of(p); });
  add_record<ModelLoad>(module, "ModelLoad", "The most loaded bolt after one model");
  auto group = add_record<GroupAnswer>(
      module, "BoltGroup", "What each bolt of a group carries, in N; bolts are numbered from 1",
      [](const py::dict& values) { return value_or_throw(shared::try_group(PythonCall(values))).job; });
  set_repr(group, [](const GroupAnswer& g) {
    return "BoltGroup(" + g.model + ", bolt " + std::to_string(g.worst) + " carries " + to_text(g.largest) + ")";
  });
  add_page(group, [](const GroupAnswer& g, const PageUnits& units) { return shared::page_of(g, units); });
  add_explain(group, [](const GroupAnswer& g) { return derivation_of(g); });
  add_notes(group);
  add_drawing(group, [](const GroupAnswer& g) { return sketch_of(g.job, g); });
  add_record<TighteningPass>(module, "TighteningPass", "One pass: share of the torque, torque, order, loads after it");
  auto sequence = add_record<SequenceAnswer>(
      module, "TighteningSequence", "In which order to tighten and undo; bolts are numbered from 1",
      [](const py::dict& values) { return value_or_throw(shared::try_sequence(PythonCall(values))).job; });
  set_repr(sequence, [](const SequenceAnswer& s) {
    std::string text = "TighteningSequence(";
    for (const int bolt : s.order) text += (bolt == s.order.front() ? "" : " ") + std::to_string(bolt);
    return text + "; " + std::to_string(s.passes.size()) + " passes)";
  });
  add_page(sequence, [](const SequenceAnswer& s, const PageUnits& units) { return shared::page_of(s, units); });
  add_explain(sequence, [](const SequenceAnswer& s) { return derivation_of(s); });
  add_notes(sequence);
  add_drawing(sequence, [](const SequenceAnswer& s) { return sketch_of(s.job, s); });
  auto prying = add_record<PryingAnswer>(
      module, "Prying", "How a plate and its bolts carry a pull together",
      [](const py::dict& values) { return value_or_throw(shared::try_prying(PythonCall(values))).job; });
  set_repr(prying, [](const PryingAnswer& p) {
    return "Prying(" + std::string(word_of(p.form)) + ", " +
           (p.mode ? to_text(p.strength) + ", " + word_of(*p.mode) : "at least " + to_text(p.minimum_thickness)) + ")";
  });
  add_page(prying, [](const PryingAnswer& p, const PageUnits& units) { return shared::page_of(p, units); });
  add_explain(prying, [](const PryingAnswer& p) { return derivation_of(p); });
  module.def("sheet", [](const py::dict& plan, const std::string& called, const std::string& content,
                         const std::string& format, const std::string& time) {
    const PythonCall call(py::dict(py::arg("plan") = plan));
    const shared::Value& record = static_cast<shared::Call>(call).said[0].value;
    return sheet::sheet_as(sheet::sheet_of(sheet::sheet_plan_of(record, called, sheet::fingerprint_of(content)), time),
                           value_or_throw(try_page_format(format)));
  });
  module.def("prying", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_prying(PythonCall(values)))), values);
  });
  module.def("pattern", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_pattern(PythonCall(values)))), values);
  });
  module.def("group", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_group(PythonCall(values)))), values);
  });
  module.def("sequence", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_sequence(PythonCall(values)))), values);
  });
}

}  // namespace tauten::python
