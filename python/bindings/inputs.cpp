// What the questions take, for signatures, docstrings, stubs and tables of the manual.
#include "bindings.hpp"
#include "shared/questions.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

py::tuple texts(std::span<const char* const> all) {
  py::list list;
  for (const char* text : all) list.append(text);
  return py::tuple(list);
}

py::dict described(const shared::InputFacts& input) {
  constexpr const char* kinds[] = {"quantity", "band", "text", "truth", "whole", "word", "list"};
  std::vector<const char*> members;
  if (input.members != nullptr) input.members(members);
  return py::dict(py::arg("name") = input.name, py::arg("option") = input.option(), py::arg("example") = input.example,
                  py::arg("help") = input.help, py::arg("kind") = kinds[static_cast<int>(input.holds)],
                  py::arg("dimension") = describe(input.dimension).name,
                  py::arg("unit") = describe(input.dimension).si_unit, py::arg("words") = texts(input.words),
                  py::arg("members") = texts(members), py::arg("flag") = input.takes == shared::Takes::flag,
                  py::arg("repeats") = input.takes == shared::Takes::several_values,
                  py::arg("positive") = input.positive);
}

py::list questions() {
  py::list all;
  for (const shared::Question& question : shared::questions()) {
    py::list inputs;
    for (const shared::InputFacts* input : question.inputs()) inputs.append(described(*input));
    all.append(py::dict(py::arg("name") = question.name, py::arg("function") = question.function,
                        py::arg("result") = question.result, py::arg("summary") = question.summary,
                        py::arg("inputs") = inputs));
  }
  return all;
}

}  // namespace

void add_inputs(py::module_& module) { module.attr("questions") = questions(); }

}  // namespace tauten::python
