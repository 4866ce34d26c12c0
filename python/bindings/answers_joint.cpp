// Threads, classes and conditions by name, which fastener it is, and the clamp load that a torque leaves.
#include "answers.hpp"
#include "bindings.hpp"
#include "call.hpp"
#include "shared/clamp_inputs.hpp"
#include "shared/class_words.hpp"
#include "shared/identification.hpp"
#include "shared/identification_page.hpp"
#include "shared/pages.hpp"
#include "shared/thread_inputs.hpp"
#include "tauten/base/chance_text.hpp"
#include "tauten/base/notice_kind.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/joint/material.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/clamp_uncertainty.hpp"

namespace py = pybind11;

namespace tauten {

template <>
struct Words<YieldKind> {
  static constexpr const char* list[] = {"R_eL", "R_p0.2", "R_pf"};
};

}  // namespace tauten

namespace tauten::python {

namespace {

using shared::ClampAnswer;

/// A property class with what to read on the head. What the standard does not give is empty.
struct ClassInfo : PropertyClass {
  std::string marks;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &PropertyClass::name);
    visit("marks", &ClassInfo::marks);
    visit("tensile_strength", &PropertyClass::tensile_strength);
    visit("yield_strength", &PropertyClass::yield_strength);
    visit("yield_kind", &PropertyClass::yield_kind);
    visit("proof_stress", &PropertyClass::proof_stress);
    visit("proof_is_yield", &PropertyClass::proof_is_yield);
    visit("elongation", &PropertyClass::elongation);
    visit("torsion_ratio", &PropertyClass::torsion_ratio);
    visit("shear_ratio", &PropertyClass::shear_ratio);
    visit("stainless", &PropertyClass::stainless);
    visit("withdrawn", &PropertyClass::withdrawn);
    visit("diameter_above", &PropertyClass::diameter_above);
    visit("diameter_to", &PropertyClass::diameter_to);
    visit("note", &PropertyClass::note);
    visit("source", &PropertyClass::source);
  }
};

ClassInfo class_of(const py::object& name, const py::object& diameter) {
  Length d;
  if (!diameter.is_none()) {
    read("diameter", diameter, d);
    if (const auto problem = shared::refuse_zero("diameter", d.si, Dim::length)) throw *problem;
  }
  const std::string text = read_text("property_class", name);
  return {tauten::property_class(text, d), head_marks(text)};
}

shared::Identification identification_of(const py::dict& values) {
  return value_or_throw(shared::try_identify(PythonCall(values)));
}

UncertaintyQuestion clamp_question_of(const py::dict& values) {
  const PythonCall call(values);
  const auto given = value_or_throw(shared::try_clamp_job(call));
  const Outcome<UncertaintyQuestion> found = try_clamp_question(given.job);
  if (!found) throw given.in_words(found.error());
  return *found;
}

std::string class_text(const ClampCandidate& c) { return c.property_class + (c.class_assumed ? " (assumed)" : ""); }

std::string line_of(const ClampCandidate& c) {
  return c.thread + ", class " + class_text(c) + ", at " + quantity_text(c.torque.si, Dim::torque) + ": " +
         (c.verdict == "breaks" ? "no clamp load" : AnyBand::of(c.clamp_load).text()) + ", " + c.verdict;
}

}  // namespace

void add_joints(py::module_& module) {
  add_record<DiameterLimits>(module, "DiameterLimits", "Minimum and maximum of a diameter");
  add_record<ThreadLimits>(module, "ThreadLimits", "Limits of size of a bolt or nut thread after ISO 965-1");
  add_record<ClassLoads>(module, "ClassLoads",
                         "What bolts of a class bear in a thread, and the nut that belongs to them");
  auto thread_type = add_record<shared::ThreadAnswer>(
      module, "Thread", "An ISO metric thread: sizes, limits, tools, what bolts and nuts bear",
      [](const py::dict& values) { return value_or_throw(shared::try_thread(PythonCall(values))).job; });
  set_repr(thread_type, [](const shared::ThreadAnswer& t) { return "Thread(" + t.designation + ")"; });
  add_page(thread_type,
           [](const shared::ThreadAnswer& t, const PageUnits& units) { return shared::page_of(t, units); });
  module.def("thread", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_thread(PythonCall(values)))), values);
  });

  auto class_type = add_record<ClassInfo>(module, "PropertyClass", "Minimum mechanical properties of a property class");
  set_repr(class_type, [](const ClassInfo& c) {
    return "PropertyClass(" + c.name + ": tensile strength " + quantity_text(c.tensile_strength.si, Dim::stress) +
           ", yield strength " + quantity_text(c.yield_strength.si, Dim::stress) + ")";
  });
  class_type.def("__str__", [](const ClassInfo& c) { return c.name; });
  module.def("property_class", class_of);

  auto condition_type =
      add_record<ThreadCondition>(module, "ThreadCondition", "What is on the threads, with its friction bands");
  set_repr(condition_type, [](const ThreadCondition& c) {
    return "ThreadCondition(" + c.key + ": " + c.title + "; thread friction " + AnyBand::of(c.thread_friction).text() +
           ")";
  });
  condition_type.def("__str__", [](const ThreadCondition& c) { return c.key; });
  module.def("thread_condition",
             [](const py::object& key) { return tauten::thread_condition(read_text("condition", key)); });
  py::list conditions;
  for (const table::ThreadConditionRow& row : table::thread_conditions) conditions.append(row.key);
  module.attr("conditions") = py::tuple(conditions);
  py::list classes, threads, materials;
  for (const char* name : shared::class_words) classes.append(name);
  for (const table::MetricSize& size : table::metric_sizes) threads.append(size.designation);
  for (const Material& known : material::all) materials.append(known.name);
  py::dict heads;  // a set that keeps its order
  for (const table::Head& head : table::heads) heads[head.standard] = py::none();
  module.attr("property_classes") = py::tuple(classes);
  module.attr("threads") = py::tuple(threads);
  module.attr("materials") = py::tuple(materials);
  module.attr("heads") = py::tuple(py::list(heads));

  add_record<shared::ClassMark>(module, "ClassMark", "What the mark of a property class looks like and promises");
  auto one = add_record<shared::Identified>(module, "Identified", "A fastener that it may be");
  set_repr(one, [](const shared::Identified& c) {
    return "Identified(" + std::to_string(c.rank) + ": " + c.thread + " " + c.kind + ", " + c.head + ", " +
           c.how_common + ", " + c.fit + " fit)";
  });
  auto all =
      add_record<shared::Identification>(module, "Identification", "Fasteners that a tool fits, the most likely first");
  set_repr(all, [](const shared::Identification& i) {
    std::string text;
    for (const shared::Identified& c : i.candidates) text += (text.empty() ? "" : ", ") + c.thread;
    return "Identification(" + (text.empty() ? std::to_string(i.candidates.size()) + " candidates" : text) + ")";
  });
  add_page(all,
           [](const shared::Identification& i, const PageUnits& units) { return shared::page_of(i, units, true); });
  module.def("identify", identification_of);

  auto case_type = add_record<ConditionCase>(module, "ConditionCase",
                                             "What one fastener does at the torque if a condition is on its threads");
  set_repr(case_type, [](const ConditionCase& c) {
    return "ConditionCase(" + c.condition + ": " + AnyBand::of(c.clamp_load).text() + ", " + c.verdict + ")";
  });
  add_record<ThreadEngagement>(module, "ThreadEngagement", "The thread that holds a bolt, and when it strips");
  auto candidate = add_record<ClampCandidate>(module, "ClampCandidate", "What one fastener does at the torque");
  set_repr(candidate, [](const ClampCandidate& c) { return "ClampCandidate(" + line_of(c) + ")"; });
  add_explain(candidate, [](const ClampCandidate& c) { return derivation_of(c); });
  auto clamp = add_record<ClampAnswer>(
      module, "Clamp", "All fasteners that it can be, the most common first, and what holds for every one of them",
      [](const py::dict& values) { return value_or_throw(shared::try_clamp_job(PythonCall(values))).job; });
  set_repr(clamp, [](const ClampAnswer& c) {
    const std::size_t more = c.candidates.size() - 1;
    return "Clamp(" + (c.name.empty() ? "" : c.name + ": ") + line_of(c.candidates.front()) +
           (more > 0 ? "; " + std::to_string(more) + " more candidates" : "") + ")";
  });
  // Where it can be only one fastener, the answer is about that one.
  add_members<ClampCandidate>(clamp, [](const ClampAnswer& c) -> const ClampCandidate& {
    if (c.candidates.size() == 1) return c.candidates.front();
    throw py::attribute_error("it may be one of " + std::to_string(c.candidates.size()) +
                              " fasteners: take one from candidates, or give thread and head");
  });
  add_page(clamp, [](const ClampAnswer& c, const PageUnits& units) { return shared::page_of(c, units, true); });
  add_explain(clamp, [](const ClampAnswer& c) { return derivation_of(c); });
  module.def("clamp_question", clamp_question_of);
  module.def("clamp", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_clamp(PythonCall(values)))), values);
  });
  module.def("torque_for", [](const py::dict& values) {
    return with_question(py::cast(value_or_throw(shared::try_torque_for(PythonCall(values)))), values);
  });
  module.def("notice_kind", [](const std::string& code) { return word_of(kind_of(code, false)); });
  module.def("chance_text", [](double chance) { return chance_text(chance); });
  module.def("settable_text", [](double x) { return settable_text(x); });
  const auto dimension_of = [](const std::string& unit) {
    for (int i = 0; i < dimension_count; ++i)
      if (const auto dimension = static_cast<Dim>(i); unit == describe(dimension).si_unit) return dimension;
    return Dim::number;
  };
  module.def("quantity_text",
             [=](double si, const std::string& unit) { return quantity_text(si, dimension_of(unit)); });
  module.def("shop_unit", [=](const std::string& unit) { return describe(dimension_of(unit)).shop_unit; });
}

}  // namespace tauten::python
