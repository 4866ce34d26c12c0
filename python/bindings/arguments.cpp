#include "arguments.hpp"

#include <cmath>
#include <string_view>

#include "tauten/base/plain_number.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/base/unit_text.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

using tauten::detail::shown;

[[noreturn]] void refuse(const std::string& name, const std::string& sentence) {
  throw Error(name.c_str(), (name + " " + sentence).c_str());
}

[[noreturn]] void wrong_type(const std::string& name, const char* wanted, py::handle value) {
  throw py::type_error(name + " takes " + wanted + ", not " +
                       std::string(py::str(py::type::of(value).attr("__name__"))));
}

}  // namespace

double read_number(const std::string& name, py::handle value, Dim dimension) {
  const DimensionText unit = describe(dimension);
  double number = 0;
  if (py::isinstance<py::str>(value)) {
    number = try_read_quantity(name.c_str(), value.cast<std::string>(), dimension).value();
  } else if (py::hasattr(value, "_REGISTRY")) {
    number = py::module_::import("tauten._pint")
                 .attr("si")(name, value, unit.si_unit, unit.name, unit.how_to_write)
                 .cast<double>();
  } else {
    const bool truth =
        PyBool_Check(value.ptr()) || std::string_view(Py_TYPE(value.ptr())->tp_name).starts_with("numpy.bool");
    if (!PyNumber_Check(value.ptr()) || truth || py::hasattr(value, "__len__"))
      wrong_type(name, "one number, text with a unit or a quantity", value);
    number = py::float_(py::reinterpret_borrow<py::object>(value));
  }
  if (!std::isfinite(number))
    refuse(name, std::string("is ") + PlainNumber(number).c_str() + ", but must be a finite number; write it like " +
                     example_of(name, dimension));
  return number;
}

std::string read_text(const std::string& name, py::handle value) {
  for (const char* key : {"designation", "key", "name"})
    if (!py::isinstance<py::str>(value) && py::hasattr(value, key) && py::isinstance<py::str>(value.attr(key)))
      return value.attr(key).cast<std::string>();
  if (!py::isinstance<py::str>(value)) wrong_type(name, "text in quotes", value);
  const auto text = value.cast<std::string>();
  if (text.empty()) refuse(name, "is empty; leave it out if it is not known");
  return text;
}

bool read_truth(const std::string& name, py::handle value) {
  if (!PyBool_Check(value.ptr())) wrong_type(name, "True or False", value);
  return value.cast<bool>();
}

long long read_whole(const std::string& name, py::handle value, long long least, long long most) {
  if (PyBool_Check(value.ptr()) || !PyIndex_Check(value.ptr())) wrong_type(name, "a whole number", value);
  int overflow = 0;
  const auto index = py::reinterpret_steal<py::object>(PyNumber_Index(value.ptr()));
  if (!index) throw py::error_already_set();
  const long long number = PyLong_AsLongLongAndOverflow(index.ptr(), &overflow);
  if (overflow != 0 || number < least || number > most)
    refuse(name, "is " + (overflow != 0 ? "a number of more than 18 digits" : std::to_string(number)) +
                     ", but must be at least " + std::to_string(least) + " and at most " + std::to_string(most));
  return number;
}

Band<double> read_band(const std::string& name, py::handle value) {
  double parts[3] = {};
  int count = 0;
  const auto how = "; give one number, or low, typical and high like 0.08..0.12..0.16";
  const auto add = [&](py::handle part) {
    if (count == 3) refuse(name, std::string("has more than three numbers") + how);
    parts[count++] = read_number(name, part, Dim::number);
  };
  if (py::isinstance<py::str>(value)) {
    for (const py::handle part : py::list(value.attr("split")(".."))) add(part);
  } else if (py::hasattr(value, "__iter__") && !py::hasattr(value, "_REGISTRY")) {
    for (const py::handle part : value) add(part);
  } else {
    add(value);
  }
  if (count == 1) return {parts[0], parts[0], parts[0]};
  if (count == 2) return {parts[0], (parts[0] + parts[1]) / 2, parts[1]};
  if (count == 3) return {parts[0], parts[1], parts[2]};
  refuse(name, std::string("has no number") + how);
}

int read_word(const std::string& name, py::handle value, const char* const* words, int count) {
  if (!py::isinstance<py::str>(value)) wrong_type(name, "a word", value);
  const auto text = value.cast<std::string>();
  std::string known;
  for (int i = 0; i < count; ++i) {
    if (text == words[i]) return i;
    known += (i == 0 ? "" : i + 1 == count ? " or " : ", ") + std::string(words[i]);
  }
  refuse(name, shown(text) + " is not known; write " + known);
}

py::dict read_members(const std::string& name, py::handle value, const std::vector<const char*>& members) {
  std::string known;
  for (const char* member : members) known += (known.empty() ? "" : ", ") + std::string(member);
  py::dict given;
  if (py::isinstance<py::dict>(value)) {
    given = value.cast<py::dict>();
    for (const auto& item : given) {
      const std::string key = py::str(item.first);
      bool found = false;
      for (const char* member : members) found = found || key == member;
      if (!found) refuse(name, "has no member " + shown(key) + "; the members are " + known);
    }
  } else if (py::isinstance<py::tuple>(value) || py::isinstance<py::list>(value)) {
    std::size_t place = 0;
    for (const py::handle item : value) {
      if (place == members.size()) refuse(name, "has too many values; they are " + known);
      given[members[place++]] = item;
    }
  } else {
    given[members.front()] = value;
  }
  return given;
}

py::list read_items(const std::string& name, py::handle value) {
  if (!py::isinstance<py::tuple>(value) && !py::isinstance<py::list>(value)) wrong_type(name, "a list", value);
  return py::list(py::reinterpret_borrow<py::object>(value));
}

}  // namespace tauten::python
