#include "call.hpp"

#include "arguments.hpp"

namespace py = pybind11;

namespace tauten::python {

using shared::Value;

Outcome<double> PythonCall::Object::si(const char* input, Dim dimension) const {
  return read_number(input, object_, dimension);
}

Error PythonCall::Object::refusal(const char* input, const char* wanted) const {
  throw py::type_error(std::string(input) + " takes " + wanted + ", not " +
                       std::string(py::str(py::type::of(object_).attr("__name__"))));
}

Value PythonCall::value_of(const std::string& name, const py::object& object) {
  Value value;
  value.foreign = &objects_.emplace_back(object);
  PyObject* const raw = object.ptr();
  const auto has = [&](const char* attribute) { return py::hasattr(object, attribute); };
  const bool is_named = [&] {
    for (const char* key : {"designation", "key", "name"})
      if (!PyUnicode_Check(raw) && has(key) && py::isinstance<py::str>(object.attr(key))) return true;
    return false;
  }();
  if (PyUnicode_Check(raw) || is_named) {
    value.kind = Value::Kind::text;
    value.text = texts_.emplace_back(is_named ? read_text(name, object) : object.cast<std::string>());
  } else if (is_truth(object)) {
    value.kind = Value::Kind::truth;
    value.truth = object.cast<bool>();
  } else if (has("_REGISTRY")) {
    value.kind = Value::Kind::quantity;
  } else if (PyNumber_Check(raw) && !has("__len__")) {
    value.number = py::float_(object);
    value.kind = Value::Kind::number;
    if (PyIndex_Check(raw)) {
      int overflow = 0;
      const auto index = py::reinterpret_steal<py::object>(PyNumber_Index(raw));
      if (!index) throw py::error_already_set();
      value.kind = Value::Kind::whole;
      value.whole = PyLong_AsLongLongAndOverflow(index.ptr(), &overflow);
      if (overflow != 0)
        value.whole = overflow > 0 ? std::numeric_limits<long long>::max() : std::numeric_limits<long long>::min();
    }
  } else if (PyDict_Check(raw)) {
    value.kind = Value::Kind::record;
    for (const auto& [key, item] : object.cast<py::dict>()) {
      value.names.push_back(texts_.emplace_back(py::str(key)));
      value.items.push_back(value_of(name, py::reinterpret_borrow<py::object>(item)));
    }
  } else if (has("__iter__") && !PyBytes_Check(raw)) {
    value.kind = Value::Kind::list;
    for (const py::handle item : object)
      value.items.push_back(value_of(name, py::reinterpret_borrow<py::object>(item)));
  } else if (has("positions")) {  // an answer about a pattern stands for its places
    return value_of(name, object.attr("positions"));
  } else {
    value.kind = Value::Kind::other;
  }
  return value;
}

PythonCall::PythonCall(const py::dict& arguments) {
  for (const auto& [key, object] : arguments) {
    const std::string& name = texts_.emplace_back(py::str(key));
    said_.push_back({name, value_of(name, py::reinterpret_borrow<py::object>(object))});
  }
}

}  // namespace tauten::python
