// What is known of a formula, as Python objects.
#include <string>

#include "bindings.hpp"
#include "record.hpp"
#include "shared/examples.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/explain/derivation.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

struct Range {
  double low;
  double high;
  bool excludes_low;

  /// The library's bound `largest` stands for no bound at all.
  static Range of(const Interval& interval) {
    const double infinity = __builtin_inf();
    return {interval.low <= -largest ? -infinity : interval.low, interval.high >= largest ? infinity : interval.high,
            interval.excludes_low};
  }
  bool contains(double x) const { return Interval{low, high, excludes_low}.contains(x); }

  template <class V>
  static void fields(V&& v) {
    v("low", &Range::low);
    v("high", &Range::high);
    v("excludes_low", &Range::excludes_low);
  }
};

/// "a torque" without its article.
std::string dimension_name(Dim dimension) {
  const std::string name = describe(dimension).name;
  return name.substr(name.find(' ') + 1);
}

struct ArgInfo {
  std::string name;
  std::string symbol;
  std::string dimension;
  std::string unit;
  Range domain;
  std::optional<Range> validity;
  std::string domain_text;
  std::string validity_text;
  const char* example;
  Dim tag;

  static ArgInfo of(const Arg& arg) {
    const bool validity = has_validity_range(arg);
    return {arg.name,
            arg.symbol,
            dimension_name(arg.dimension),
            describe(arg.dimension).si_unit,
            Range::of(arg.domain),
            validity ? std::optional(Range::of(arg.validity)) : std::nullopt,
            range_text(arg.domain, arg.dimension),
            validity ? range_text(arg.validity, arg.dimension) : "",
            shared::example_of(arg),
            arg.dimension};
  }

  template <class V>
  static void fields(V&& v) {
    v("name", &ArgInfo::name);
    v("symbol", &ArgInfo::symbol);
    v("dimension", &ArgInfo::dimension);
    v("unit", &ArgInfo::unit);
    v("domain", &ArgInfo::domain);
    v("validity", &ArgInfo::validity);
    v("domain_text", &ArgInfo::domain_text);
    v("validity_text", &ArgInfo::validity_text);
  }
  template <class V>
  static void kept(V&& v) {
    v(&ArgInfo::example);
    v(&ArgInfo::tag);
  }
};

/// Exactly as many SI numbers as the formula has inputs.
struct Numbers {
  double x[most_inputs];
  int count = 0;
  std::span<const double> span() const { return {x, static_cast<std::size_t>(count)}; }
};

Numbers numbers_for(const Entry& entry, const py::sequence& values) {
  if (static_cast<int>(values.size()) != entry.arity())
    throw py::type_error(std::string(entry.name) + " takes " + std::to_string(entry.arity()) + " numbers");
  Numbers numbers;
  for (const auto& value : values) numbers.x[numbers.count++] = value.cast<double>();
  return numbers;
}

/// Every input outside the range that the source states, in one sentence; "" if there is none.
std::string unusual_text(const Entry& entry, const double* x) {
  std::string found;
  for (const std::string& one : input_warnings(entry, {x, entry.inputs.size()}))
    found += (found.empty() ? "" : ", ") + one;
  return found.empty() ? found : std::string(entry.name) + ": " + found + "; treat the result with care";
}

/// \return value and warning text ("" if there is none)
/// \throws Error  if the formula has no value there
py::tuple one_value(const Entry& entry, const py::sequence& values) {
  const Numbers numbers = numbers_for(entry, values);
  const double value = entry.value(numbers.x);
  if (value != value) {
    const Check found = entry.check(numbers.x);
    if (found.status == Status::outside_domain)
      throw tauten::detail::domain_error(entry.name, entry.inputs[static_cast<std::size_t>(found.argument)],
                                         numbers.x[found.argument]);
    throw tauten::detail::impossible_error(entry.name, entry.output.name);
  }
  return py::make_tuple(value, unusual_text(entry, numbers.x));
}

py::tuple status_of(const Entry& entry, const py::sequence& values) {
  const char* const words[] = {"ok", "unusual", "outside_domain", "impossible"};
  const Check found = entry.check(numbers_for(entry, values).x);
  const char* argument = found.argument < 0 ? "" : entry.inputs[static_cast<std::size_t>(found.argument)].name;
  return py::make_tuple(words[static_cast<int>(found.status)], argument);
}

py::tuple slopes_of(const Entry& entry, const py::sequence& values) {
  double slopes[most_inputs];
  entry.gradient(numbers_for(entry, values).x, slopes);
  py::list result;
  for (int i = 0; i < entry.arity(); ++i) result.append(slopes[i]);
  return py::tuple(result);
}

std::string expression_of(const Entry& entry, const std::string& notation, const py::object& values) {
  const auto as = notation == "text"      ? Notation::text
                  : notation == "latex"   ? Notation::latex
                  : notation == "algebra" ? Notation::algebra
                                          : throw Error("notation", "notation must be 'text', 'latex' or 'algebra'");
  if (values.is_none()) return expression_text(entry, as);
  const Numbers numbers = numbers_for(entry, values);
  return ExpressionWriter(entry.inputs, as, numbers.span())(entry.expression());
}

/// Reads text of any dimension.
double read_any(const std::string& text) {
  for (int i = 0; i < dimension_count; ++i)
    if (const auto value = try_read_quantity("text", text, static_cast<Dim>(i))) return *value;
  throw Error("text", (tauten::detail::shown(text, 60) +
                       " is not a number with a known unit; write for example 48N.m, 12mm, 25kN, 640MPa or 90deg")
                          .c_str());
}

template <class Info, class Items>
py::tuple tuple_of(const Items& items) {
  py::list list;
  for (const auto& item : items) list.append(Info::of(item));
  return py::tuple(list);
}

}  // namespace

void add_metadata(py::module_& module) {
  add_record<Range>(module, "Range", "Range of admissible values in SI; the lower end may be excluded")
      .def("__contains__", &Range::contains);
  add_record<SourceInfo>(module, "Source", "Where a formula comes from, and how it was seen: in print or from memory")
      .def("__str__", &SourceInfo::text);
  add_record<ArgInfo>(module, "Arg", "An input or the output of a formula")
      .def(
          "read",
          [](const ArgInfo& arg, const std::string& text) {
            return try_read_quantity(arg.name.c_str(), text, arg.tag).value();
          },
          "read(self, /, text)\n--\n\nSI value of text with a unit, of this dimension")
      .def(
          "text", [](const ArgInfo& arg, double si) { return quantity_text(si, arg.tag); },
          "text(self, /, si)\n--\n\nAn SI value in the unit a workshop reads")
      .def_property_readonly("latex", [](const ArgInfo& arg) { return latex_symbol(arg.symbol); })
      .def_property_readonly(
          "how_to_write", [](const ArgInfo& arg) { return describe(arg.tag).how_to_write; },
          "A value of this dimension")
      .def_property_readonly(
          "example", [](const ArgInfo& arg) { return arg.example; },
          "A value that fits to the examples of the other inputs");
  py::class_<Entry, std::unique_ptr<Entry, py::nodelete>>(module, "Entry", "A formula of the registry")
      .def_property_readonly("name", [](const Entry& entry) { return entry.name; })
      .def_property_readonly("room", [](const Entry& entry) { return room_of(entry); })
      .def_property_readonly("summary", [](const Entry& entry) { return entry.summary; })
      .def_property_readonly("inputs", [](const Entry& entry) { return tuple_of<ArgInfo>(entry.inputs); })
      .def_property_readonly("output", [](const Entry& entry) { return ArgInfo::of(entry.output); })
      .def_property_readonly("sources", [](const Entry& entry) { return tuple_of<SourceInfo>(entry.sources); })
      .def("one", one_value)
      .def("status", status_of)
      .def("slopes", slopes_of)
      .def("expression", expression_of, py::arg("notation"), py::arg("values") = py::none());

  py::list all;
  for (const Entry& entry : entries()) all.append(py::cast(&entry, py::return_value_policy::reference));
  module.attr("entries") = py::tuple(all);
  module.def("read_quantity", read_any, py::arg("text"), "SI value of text with a unit, whatever its dimension");
}

}  // namespace tauten::python
