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
void add_explaining(pybind11::handle type, Derivation (*derive)(pybind11::handle answer));

/// \tparam F  answer -> Derivation, without state
template <class T, class F>
void add_explain(pybind11::class_<T>& type, F) {
  add_explaining(type, [](pybind11::handle answer) -> Derivation { return F{}(answer.cast<const T&>()); });
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
void add_laid_out(pybind11::handle type, Page (*page_for)(pybind11::handle answer, const PageUnits& units));

/// \tparam F  answer, `PageUnits` -> Page, without state
template <class T, class F>
void add_page(pybind11::class_<T>& type, F) {
  add_laid_out(type, [](pybind11::handle answer, const PageUnits& units) -> Page {
    return F{}(answer.cast<const T&>(), units);
  });
}

}  // namespace tauten::python
