// What the answers have in common.
#pragma once

#include "arguments.hpp"
#include "tauten/base/derivation.hpp"

namespace tauten::python {

/// \param format  text, markdown, latex or html
/// \param style   a `Style` or None
/// \return how an answer came about, as `Explanation`, which shows itself in a notebook
/// \throws Error  for another format, or if the style does not fit
pybind11::object explained(const Derivation& derivation, const std::string& format, const pybind11::object& style);

/// Gives the class of an answer its methods `derivation` and `explain`.
/// \param derive  answer -> Derivation
template <class T, class F>
void add_explain(pybind11::class_<T>& type, F derive) {
  namespace py = pybind11;
  type.def(
      "derivation", [derive](const T& answer) { return derive(answer); },
      "How the answer came about, as data: given, steps, found, verdict and notices");
  type.def(
      "explain",
      [derive](const T& answer, const std::string& format, const py::object& style) {
        return explained(derive(answer), format, style);
      },
      py::arg("format") = "text", py::arg("style") = py::none(),
      "How the answer came about, from what is given to the verdict: text, markdown, latex (for amsmath) or html (with "
      "MathML). A `Style` sets units and digits. Raises Error for another format. In a notebook it shows itself.");
}

}  // namespace tauten::python
