// What the answers have in common.
#pragma once

#include "arguments.hpp"
#include "record.hpp"
#include "tauten/base/derivation.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"

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
  type.def("_repr_latex_",
           [derive](const T& answer) { return std::string(py::str(explained(derive(answer), "latex", py::none()))); });
  type.def(
      "derivation", [derive](const T& answer) { return derive(answer); },
      "derivation(self, /)\n--\n\nHow the answer came about, as data: given, steps, found, verdict and notices");
  type.def(
      "explain",
      [derive](const T& answer, const std::string& format, const py::object& style) {
        return explained(derive(answer), format, style);
      },
      py::arg("format") = "text", py::arg("style") = py::none(),
      "explain(self, /, format='text', style=None)\n--\n\nHow the answer came about, from what is given to the "
      "verdict: text, markdown, latex (for amsmath) or html (with "
      "MathML). A `Style` sets units and digits. Raises Error for another format. In a notebook it shows itself.");
}

/// \param format  text, markdown or html
/// \throws Error  for another format
std::string page_text_of(const Page& page, const std::string& format);

/// \param units  dict from a dimension to a unit, or None
/// \throws Error  for an unknown unit
/// \param answer  whose page it is: quantities that were given as text keep their units
/// \param units   goes before: a dict of dimension and unit, or None
PageUnits page_units_of(const pybind11::object& answer, const pybind11::object& units = pybind11::none());

/// Gives the class of an answer its page, which `print` and notebooks show.
/// \param page_for  answer, `PageUnits` -> Page
template <class T, class F>
void add_page(pybind11::class_<T>& type, F page_for) {
  namespace py = pybind11;
  const auto page_of = [page_for](const py::object& answer, const py::object& units) {
    return page_for(answer.cast<const T&>(), page_units_of(answer, units));
  };
  type.def(
          "page",
          [page_of](const py::object& answer, const std::string& format, const py::object& units) {
            return page_text_of(page_of(answer, units), format);
          },
          py::arg("format") = "text", py::arg("units") = py::none(),
          "page(self, /, format='text', units=None)\n--\n\nThe answer laid out for people, the line that is needed "
          "first: text, markdown or html. Figures are in the units in which texts were given, else those of a "
          "workshop, "
          "unless `units` says otherwise, as {\"torque\": \"lbf.ft\"}. Raises Error for another format or an unknown "
          "unit.")
      .def_property_readonly(
          "headline", [page_of](const py::object& answer) { return page_of(answer, py::none()).first_line(); },
          "The first line of the page")
      .def("__str__", [page_of](const py::object& answer) { return page_text_of(page_of(answer, py::none()), "text"); })
      .def("_repr_markdown_",
           [page_of](const py::object& answer) { return page_text_of(page_of(answer, py::none()), "markdown"); });
  set_method(type, "_repr_html_",
             [page_of](const py::object& answer) { return page_text_of(page_of(answer, py::none()), "html"); });
}

}  // namespace tauten::python
