// Whether a stuck fastener comes free before it shears or its drive gives.
#include "answers.hpp"
#include "bindings.hpp"
#include "call.hpp"
#include "listener.hpp"
#include "shared/pages.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/free_lookup.hpp"
#include "tauten/question/free_uncertainty.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

using shared::FreeAnswer;

/// What is given, with the number of threads, which is no part of the question.
shared::GivenJob<shared::FreeQuestion> given_of(const py::dict& values) {
  py::dict inputs(values.attr("copy")());
  int jobs = 1;
  if (inputs.contains("jobs")) read("jobs", inputs.attr("pop")("jobs"), jobs);
  const PythonCall call(inputs);
  auto given = value_or_throw(shared::try_read_free(call));
  given.job.job.jobs = jobs;
  return given;
}

FreeAnswer answer(const py::dict& values) {
  const auto given = given_of(values);
  const FreeJob& job = given.job.job;
  const Interruptible by_the_interrupt_key;
  const Outcome<Free> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_free_joint(job);
  }();
  if (!found) throw shared::in_words(given, found.error());
  return shared::answer_of(given, *found);
}

UncertaintyQuestion question(const py::dict& values) {
  const auto given = given_of(values);
  const Interruptible by_the_interrupt_key;
  const auto found = try_free_question(given.job.job);
  if (!found) throw shared::in_words(given, found.error());
  return *found;
}

std::string percent(double chance) {
  // The typical number of trials does not resolve less.
  return chance < 1e-3 ? "below 0.1 %" : number_text(100 * chance, 2) + " %";
}

std::string line_of(const Free& free) {
  const Chances& c = free.chances;
  return "up to " + quantity_text(c.limit.si, Dim::torque) + ": free " + percent(c.free) + ", shears " +
         percent(c.shear) + ", rounds " + percent(c.round) + ", tool fails " + percent(c.tool) + ", does not move " +
         percent(c.not_moving);
}

/// \param shown  name, text -> whether the member is shown; it may change the text
template <class T, class Shown>
std::string members_text(const char* type, const T& record, Shown shown) {
  std::string out;
  for (const auto& row : rows_of(record))
    if (std::string text = row[1]; shown(row[0], text)) out += (out.empty() ? "" : ", ") + row[0] + "=" + text;
  return type + ("(" + out) + ")";
}

/// An aid with what applies to it: a brush heats no nut.
std::string text_of(const AidUse& use) {
  return members_text("AidUse", use, [&](std::string_view name, std::string&) {
    return name == "aid" || (use.aid == Aid::fluid && (name == "soak_hours" || name == "thin_fluid")) ||
           (use.aid == Aid::heat && name == "nut_rise") ||
           ((use.aid == Aid::heat || use.aid == Aid::cold) && name == "bolt_rise");
  });
}

}  // namespace

void add_free_joint(py::module_& module) {
  auto chances = add_record<Chances>(module, "Chances", "How the fastener ends as the torque grows up to a limit");
  add_record<Lognormal>(module, "Lognormal",
                        "A quantity that scatters by factors: median and coefficient of variation");
  add_record<Learned>(module, "Learned", "What the fasteners already undone show about the next one");
  add_record<IfHeld>(module, "IfHeld", "Chances of the rest of the pull, once the fastener is seen not to have moved");
  auto use = add_record<AidUse>(module, "AidUse", "An aid to release as it is used");
  set_repr(use, [](const AidUse& aid) { return text_of(aid); });
  add_record<Capacity>(module, "Capacity", "What one part takes before it gives, and where the figure comes from");
  add_record<Instruction>(module, "Instruction", "How a step is done: what to do, how long, what to watch");
  add_record<StopBound>(module, "StopBound", "One limit of the torque, and what it follows from");
  auto step = add_record<PlanStep>(module, "PlanStep", "One sequence of aids and what to expect of it");
  set_repr(step, [](const PlanStep& one) {
    std::string aids;
    for (const AidUse& aid : one.aids) aids += (aids.empty() ? "" : ", ") + text_of(aid);
    return members_text("PlanStep", one, [&](std::string_view name, std::string& text) {
      if (name == "aids") text = "[" + aids + "]";
      return true;
    });
  });
  add_record<AfterRelease>(module, "AfterRelease", "Advice for the next tightening");
  auto type = add_record<FreeAnswer>(module, "Free", "Whether a stuck fastener comes free, where to stop, what next",
                                     [](const py::dict& values) { return given_of(values).job.job; });
  set_repr(type, [](const FreeAnswer& free) { return "Free(" + line_of(free) + ")"; });
  add_page(type, [](const FreeAnswer& free, const PageUnits& units) { return shared::page_of(free, units); });
  add_explain(type, [](const FreeAnswer& free) { return derivation_of(free); });
  module.def("free_joint", [](const py::dict& values) { return with_question(py::cast(answer(values)), values); });
  module.def("free_question", question);
}

}  // namespace tauten::python
