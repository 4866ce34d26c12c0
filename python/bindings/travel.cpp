#include "travel.hpp"

#include <map>
#include <set>
#include <utility>

#include "bindings.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

/// How each class travels, by its name. It is never destroyed: Python may still hold records when the program ends.
std::map<std::string, Travel>& known() {
  static auto* const all = new std::map<std::string, Travel>;
  return *all;
}

std::string name_of(py::handle type) { return py::str(type.attr("__name__")); }

const Travel& travel_of(py::handle record) { return known().at(name_of(py::type::handle_of(record))); }

py::object asked_for(py::handle record) { return py::getattr(record, "_asked", py::none()); }

py::tuple reduced(const py::object& record) {
  return py::make_tuple(py::module_::import("tauten._answers").attr("restored"),
                        py::make_tuple(name_of(py::type::of(record)), TAUTEN_VERSION,
                                       py::bytes(travel_of(record).bytes(record)), asked_for(record)));
}

py::object restored(const std::string& name, const std::string& version, const py::bytes& bytes,
                    const py::object& asked) {
  if (version != TAUTEN_VERSION)
    throw py::value_error("this " + name + " was pickled by tauten " + version +
                          ", but this is tauten " TAUTEN_VERSION "; ask the question again");
  const auto at = known().find(name);
  if (at == known().end()) refuse_bytes();
  py::object record = at->second.restored(std::string_view(bytes), asked);
  if (!asked.is_none()) record.attr("_asked") = asked;
  return record;
}

newfunc made_by_pybind = nullptr;

/// Stands in the base of all our classes: an object without a C++ record in it would crash at its first use.
PyObject* refuse_empty(PyTypeObject* type, PyObject* arguments, PyObject* keywords) {
  const PyTypeObject* const base = type->tp_base;
  if (base != &PyBaseObject_Type && type->tp_init != base->tp_init) return made_by_pybind(type, arguments, keywords);
  PyErr_Format(PyExc_TypeError, "objects of %s come from the functions of tauten and cannot be made empty",
               type->tp_name);
  return nullptr;
}

}  // namespace

const char* lasting(std::string_view text) {
  static auto* const all = new std::set<std::string, std::less<>>;
  const auto at = all->find(text);
  return (at != all->end() ? at : all->emplace(text).first)->c_str();
}

void refuse_bytes() { throw py::value_error("these bytes are not the pickle of a record of tauten"); }

void add_travel(py::handle type, Travel travel) {
  known()[name_of(type)] = std::move(travel);
  const auto add = [&](const char* name, auto method) {
    py::setattr(type, name, py::cpp_function(method, py::is_method(type), py::name(name)));
  };
  add("__reduce__", reduced);
  add("__copy__", [](const py::object& record) { return record; });  // it never changes
  add("__deepcopy__", [](const py::object& record, const py::object&) { return record; });
  add("__eq__", [](const py::object& one, const py::object& other) -> py::object {
    if (!py::type::of(one).is(py::type::of(other))) return py::reinterpret_borrow<py::object>(Py_NotImplemented);
    return py::bool_(one.is(other) || travel_of(one).bytes(one) == travel_of(other).bytes(other));
  });
  add("__hash__", [](const py::object& record) { return py::hash(py::bytes(travel_of(record).bytes(record))); });
}

py::object with_question(py::object answer, const py::dict& asked) {
  py::dict kept;
  const py::object copy = py::module_::import("copy").attr("deepcopy");
  for (const auto& [name, value] : asked)  // lists may be changed later by who gave them
    kept[name] = py::isinstance<py::str>(value) || py::isinstance<py::float_>(value) ? value : copy(value);
  answer.attr("_asked") = kept;
  return answer;
}

void add_restoring(py::module_& module) {
  module.def("restored", restored);
  auto* const base = reinterpret_cast<PyTypeObject*>(py::detail::get_internals().instance_base);
  made_by_pybind = std::exchange(base->tp_new, refuse_empty);
  PyType_Modified(base);
}

}  // namespace tauten::python
