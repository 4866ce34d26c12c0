// How an answer came about: the derivation as data and as text, and the style in which it is written.
#include "tauten/explain/derivation.hpp"

#include "answers.hpp"
#include "bindings.hpp"
#include "tauten/explain/markup.hpp"
#include "tauten/explain/page_format.hpp"
#include "tauten/question/uncertainty_page.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

/// \param digits  a whole number; or a dict from a quantity or dimension to one, "" for all others
/// \param units   dict from a quantity or dimension to a unit
Style style_of(const py::object& digits, const py::dict& units) {
  Style style;
  const auto set = [&](const std::string& text, auto setter) {
    if (const auto error = setter(style, text)) throw *error;
  };
  if (py::isinstance<py::dict>(digits))
    for (const auto& [name, count] : digits.cast<py::dict>()) {
      const std::string key = py::str(name);
      set((key.empty() ? "" : key + "=") + std::string(py::str(count)), set_digits);
    }
  else if (!digits.is_none())
    set(py::str(digits), set_digits);
  for (const auto& [name, unit] : units) set(std::string(py::str(name)) + "=" + std::string(py::str(unit)), set_unit);
  return style;
}

std::string style_text(const Style& style) {
  std::string digits = std::to_string(style.digits), units;
  std::string of_one;
  for (const Style::Choice& choice : style.choices) {
    if (choice.significant > 0) of_one += ", '" + choice.quantity + "': " + std::to_string(choice.significant);
    if (!choice.unit.empty()) units += (units.empty() ? "'" : ", '") + choice.quantity + "': '" + choice.unit + "'";
  }
  if (!of_one.empty()) digits = "{'': " + digits + of_one + "}";
  return "Style(digits=" + digits + (units.empty() ? "" : ", units={" + units + "}") + ")";
}

Style style_from(const py::object& style) {
  if (style.is_none()) return {};
  if (!py::isinstance<Style>(style)) throw py::type_error("style takes a tauten.Style");
  return style.cast<Style>();
}

/// \return the steps that are formulas of the registry, in words
std::vector<StepText> step_texts(const Derivation& derivation, const std::string& format, const py::object& style) {
  const Notation notation = notation_of(try_layout(format).value());
  const Style how = style_from(style);
  std::vector<StepText> texts;
  for (const Step& step : derivation.steps)
    if (const Entry* entry = tauten::detail::entry_named(entries(), step.formula))
      texts.push_back(step_text(*entry, step, notation, how));
  return texts;
}

}  // namespace

py::object explained(const Derivation& derivation, const std::string& format, const py::object& style) {
  const Style how = style_from(style);
  const std::string text = derivation_text(derivation, entries(), try_layout(format).value(), how);
  return py::module_::import("tauten._explanation").attr("Explanation")(text, derivation, how);
}

namespace {

/// The members of a record that has no page of its own, for a notebook.
std::string record_html(const std::string& class_name, const std::vector<std::vector<std::string>>& rows) {
  PageTable table{"", {{""}, {class_name}}, {}, {}};
  for (const auto& row : rows)
    if (row[0] != "steps" && row[0] != "given" && row[0] != "notices") table.rows.push_back(row);
  return tauten::detail::html_table(table);
}

template <class F, class... Extra>
void add_method(py::handle type, const char* name, F method, const Extra&... extra) {
  py::setattr(type, name, py::cpp_function(method, py::name(name), py::is_method(type), extra...));
}

void add_property(py::handle type, const char* name, const py::cpp_function& get, const char* about) {
  py::setattr(type, name,
              py::handle(reinterpret_cast<PyObject*>(&PyProperty_Type))(get, py::none(), py::none(), about));
}

}  // namespace

void add_member(py::handle type, const char* name, py::object (*member)(py::handle record, std::size_t place),
                std::size_t place, const std::string& about) {
  add_property(
      type, name,
      py::cpp_function([member, place](py::handle record) { return member(record, place); }, py::is_method(type)),
      about.c_str());
}

void add_showing(py::handle type, const RecordClass& record_class) {
  add_method(type, "__repr__", [text = record_class.text](py::handle record) { return text(record); });
  add_method(
      type, "as_dict", [as_dict = record_class.as_dict](py::handle record) { return as_dict(record); },
      "as_dict(self, /)\n--\n\nAll members by name, in SI, nested ones too; None where there is no figure");
  add_method(type, "_repr_html_",
             [rows = record_class.rows, name = std::string(py::str(type.attr("__name__")))](py::handle record) {
               return record_html(name, rows(record));
             });
  add_method(
      type, "to_json",
      [as_dict = record_class.as_dict](py::handle record, const py::object& indent) {
        return py::module_::import("tauten._text").attr("json")(as_dict(record), indent);
      },
      py::arg("indent") = py::none(),
      "to_json(self, /, indent=None)\n--\n\nJSON with the keys of the command line and numbers in SI; null for what "
      "is not known");
}

void add_explaining(py::handle type, Derivation (*derive)(py::handle answer)) {
  add_method(type, "_repr_latex_", [derive](py::handle answer) {
    return std::string(py::str(explained(derive(answer), "latex", py::none())));
  });
  add_method(
      type, "derivation", [derive](py::handle answer) { return derive(answer); },
      "derivation(self, /)\n--\n\nHow the answer came about, as data: given, steps, found, verdict and notices");
  add_method(
      type, "explain",
      [derive](py::handle answer, const std::string& format, const py::object& style) {
        return explained(derive(answer), format, style);
      },
      py::arg("format") = "text", py::arg("style") = py::none(),
      "explain(self, /, format='text', style=None)\n--\n\nHow the answer came about, from what is given to the "
      "verdict: text, markdown, latex (for amsmath) or html (with "
      "MathML). A `Style` sets units and digits. Raises Error for another format. In a notebook it shows itself.");
}

void add_laid_out(py::handle type, Page (*page_for)(py::handle answer, const PageUnits& units)) {
  const auto page_of = [page_for](const py::object& answer, const py::object& units) {
    return page_for(answer, page_units_of(answer, units));
  };
  add_method(
      type, "page",
      [page_of](const py::object& answer, const std::string& format, const py::object& units) {
        return page_text_of(page_of(answer, units), format);
      },
      py::arg("format") = "text", py::arg("units") = py::none(),
      "page(self, /, format='text', units=None)\n--\n\nThe answer laid out for people, the line that is needed "
      "first: text, markdown or html. Figures are in the units in which texts were given, else those of a "
      "workshop, "
      "unless `units` says otherwise, as {\"torque\": \"lbf.ft\"}. Raises Error for another format or an unknown "
      "unit.");
  add_property(
      type, "headline",
      py::cpp_function([page_of](const py::object& answer) { return page_of(answer, py::none()).first_line(); },
                       py::is_method(type)),
      "The first line of the page");
  for (const auto& [method, format] :
       {std::pair{"__str__", "text"}, {"_repr_markdown_", "markdown"}, {"_repr_html_", "html"}})
    add_method(type, method, [page_of, format](const py::object& answer) {
      return page_text_of(page_of(answer, py::none()), format);
    });
}

std::string page_text_of(const Page& page, const std::string& format) {
  return page_as(page, try_page_format(format).value());
}

namespace {

/// Takes the units of texts, in lists too.
void take_units_of(const py::handle& value, PageUnits& shown) {
  if (py::isinstance<py::str>(value)) return shown.take_unit_of(value.cast<std::string>());
  if (py::isinstance<py::list>(value) || py::isinstance<py::tuple>(value))
    for (const py::handle item : value) take_units_of(item, shown);
}

}  // namespace

PageUnits page_units_of(const py::object& answer, const py::object& units) {
  PageUnits shown;
  for (const auto& [name, value] : py::dict(py::getattr(answer, "_asked", py::dict()))) take_units_of(value, shown);
  if (!units.is_none())
    for (const auto& [dimension, unit] : units.cast<py::dict>())
      if (const auto error = shown.set(std::string(py::str(dimension)) + "=" + std::string(py::str(unit))))
        throw *error;
  return shown;
}

void add_derivation(py::module_& module) {
  auto band = add_record<AnyBand>(
      module, "Band", "A figure that rests on friction: low, nominal and high, in SI. Unpacks into the three.");
  set_method(band, "_repr_html_", [](const AnyBand& b) { return html_text(b.text()); });
  band.def_property_readonly("unit", &AnyBand::unit, "Unit of the three numbers; \"\" for plain numbers")
      .def("__str__", &AnyBand::text)
      .def("__iter__", [](const AnyBand& b) { return py::iter(py::make_tuple(b.low, b.nominal, b.high)); });
  module.def("band_text", [](double low, double nominal, double high) {
    const auto [from, typical, to] = band_text(low, nominal, high);
    return py::make_tuple(from, typical, to);
  });
  // What one of a unit is in the SI unit of the same dimension.
  module.def("unit_in_si", [](const std::string& unit, const std::string& of) {
    return try_read_quantity("unit", "1" + unit, dimension_of_unit(of)).value();
  });
  add_record<Notice>(module, "Notice", "A warning or a caution: a stable code for programs, text for people")
      .def("__str__", [](const Notice& notice) { return notice.text; });
  add_record<Step>(module, "Step", "A formula that was used, with the numbers that went in and came out, in SI");
  add_record<Figure>(module, "Figure",
                     "A named figure of an answer: a number, a band or a word, and where it comes from");
  py::class_<Style>(module, "Style",
                    "Units and significant digits of what is printed.\n\n"
                    "Style(digits=5, units={\"length\": \"in\", \"preload\": \"lbf\"}): a key is a quantity or a "
                    "dimension; digits may be a dict too, with \"\" for all others. Raises Error for an unknown unit.")
      .def(py::init(&style_of), py::arg("digits") = 4, py::arg("units") = py::dict())
      .def("__repr__", &style_text)
      .def("__eq__", [](const Style& a, const Style& b) { return a.digits == b.digits && a.choices == b.choices; });
  add_record<StepText>(module, "StepText",
                       "A step in words: title, symbol, expression, with_values, result, source, validity, note and "
                       "warnings");
  auto how =
      add_record<Derivation>(module, "Derivation", "How an answer came about: given, steps, found, verdict, notices");
  for (const auto& [method, format] : {std::pair{"_repr_html_", "html"}, std::pair{"_repr_latex_", "latex"}})
    set_method(how, method,
               [format](const Derivation& d) { return std::string(py::str(explained(d, format, py::none()))); });
  how.def(
         "step_texts",
         [](const Derivation& d, const std::string& format, const py::object& style) {
           return to_python(step_texts(d, format, style));
         },
         py::arg("format") = "text", py::arg("style") = py::none(),
         "step_texts(self, /, format='text', style=None)\n--\n\nEach step in words, as a `StepText`: the formula with "
         "symbols and with values, the result with its unit, "
         "source, stated range and warnings, in the notation of text, latex or html. A `Style` sets units and digits")
      .def("explain", &explained, py::arg("format") = "text", py::arg("style") = py::none(),
           "explain(self, /, format='text', style=None)\n--\n\nThe derivation as text, markdown, latex or html");
  module.def("formula_derivation", [](const Entry& entry, const py::sequence& inputs) {
    std::vector<double> x;
    for (const auto& input : inputs) x.push_back(input.cast<double>());
    if (static_cast<int>(x.size()) != entry.arity()) throw py::type_error("one number for each input is needed");
    return derivation_of(entry, x);
  });
}

}  // namespace tauten::python
