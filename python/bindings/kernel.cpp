// The type `Kernel`: calls a formula on plain numbers and plain arrays without detour, and leaves every other call to its
// subclass.
//
// It is written against the C interface of Python because that alone offers vector calls: no tuple, no dict, no overload
// resolution. `Kernel` answers when all inputs are numbers and nothing is to be said about them. Plain arrays go straight
// to the NumPy function; if rows are to be spoken of, that is left to the method `_told` of the Python class. Anything
// else (text, units, options, values outside a range) goes to its method `_evaluate`.
#include <Python.h>
#include <structmember.h>

#include <cstddef>

#include "bindings.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

struct Kernel {
  PyObject_HEAD vectorcallfunc call;
  const Entry* entry;
  PyObject* names;  ///< tuple of interned argument names
  PyObject* ufunc;
};

// What is asked for by name at each call, the type of plain arrays, and the module, which has the NumPy functions.
PyObject* evaluate_name = nullptr;
PyObject* told_name = nullptr;
PyObject* out_name = nullptr;
PyObject* only_out = nullptr;
PyObject* array_type = nullptr;
PyObject* module_object = nullptr;

bool read_number(PyObject* object, double& x) noexcept {
  if (PyFloat_Check(object)) {
    x = PyFloat_AS_DOUBLE(object);
    return true;
  }
  if (!PyLong_CheckExact(object)) return false;
  x = PyLong_AsDouble(object);
  if (x != -1.0 || PyErr_Occurred() == nullptr) return true;
  PyErr_Clear();
  return false;
}

/// \return place of the argument, or -1
int place_of(PyObject* names, PyObject* name) noexcept {
  const auto count = static_cast<int>(PyTuple_GET_SIZE(names));
  for (int i = 0; i < count; ++i)
    if (PyTuple_GET_ITEM(names, i) == name) return i;
  for (int i = 0; i < count; ++i)  // a name that was put together at run time is another object
    if (PyUnicode_Compare(PyTuple_GET_ITEM(names, i), name) == 0) return i;
  return -1;
}

bool read_arguments(const Kernel& kernel, PyObject* const* arguments, Py_ssize_t by_position, PyObject* keywords,
                    double* x) noexcept {
  const Py_ssize_t by_name = keywords == nullptr ? 0 : PyTuple_GET_SIZE(keywords);
  if (by_position + by_name != kernel.entry->arity()) return false;
  unsigned seen = 0;
  for (Py_ssize_t i = 0; i < by_position; ++i, seen = seen << 1 | 1)
    if (!read_number(arguments[i], x[i])) return false;
  for (Py_ssize_t i = 0; i < by_name; ++i) {
    const int place = place_of(kernel.names, PyTuple_GET_ITEM(keywords, i));
    if (place < 0 || (seen >> place & 1) != 0) return false;
    if (!read_number(arguments[by_position + i], x[place])) return false;
    seen |= 1u << place;
  }
  return true;
}

/// Puts plain arrays and numbers in the order of the inputs, and behind them the array given as `out`, if there is one.
/// \return whether that is all there is, and an array among it
bool read_arrays(const Kernel& kernel, PyObject* const* arguments, Py_ssize_t by_position, PyObject* keywords,
                 PyObject** inputs, bool& has_out) noexcept {
  const Py_ssize_t by_name = keywords == nullptr ? 0 : PyTuple_GET_SIZE(keywords);
  const int arity = kernel.entry->arity();
  if (by_position > arity) return false;
  has_out = false;
  bool any_array = false;
  unsigned seen = 0;
  for (Py_ssize_t i = 0; i < by_position + by_name; ++i) {
    Py_ssize_t place = i;
    if (i >= by_position) {
      PyObject* name = PyTuple_GET_ITEM(keywords, i - by_position);
      place = name == out_name ? arity : place_of(kernel.names, name);
      if (place < 0 || (seen >> place & 1) != 0) return false;
    }
    const bool is_array = reinterpret_cast<PyObject*>(Py_TYPE(arguments[i])) == array_type;
    if (!is_array && !PyFloat_CheckExact(arguments[i])) return false;
    any_array |= is_array;
    has_out |= place == arity;
    seen |= 1u << place;
    inputs[place] = arguments[i];
  }
  return any_array && (seen & ((1u << arity) - 1)) == (1u << arity) - 1;
}

PyObject* over_rows(PyObject* self, PyObject* const* inputs, bool has_out) noexcept {
  const auto& kernel = *reinterpret_cast<Kernel*>(self);
  start_count();
  PyObject* result = PyObject_Vectorcall(kernel.ufunc, inputs, static_cast<std::size_t>(kernel.entry->arity()),
                                         has_out ? only_out : nullptr);
  if (result == nullptr || nothing_counted()) return result;
  PyObject* const words[] = {self, result};
  PyObject* told = PyObject_VectorcallMethod(told_name, words, 2, nullptr);
  Py_DECREF(result);
  return told;
}

bool all_valid(const Entry& entry, const double* x) noexcept {
  bool valid = true;
  for (const Arg& arg : entry.inputs) valid &= arg.validity.contains(*x++);
  return valid;
}

PyObject* call(PyObject* self, PyObject* const* arguments, std::size_t flagged_count, PyObject* keywords) noexcept {
  const auto& kernel = *reinterpret_cast<Kernel*>(self);
  const Py_ssize_t count = PyVectorcall_NARGS(flagged_count);
  double x[most_inputs];
  if (read_arguments(kernel, arguments, count, keywords, x)) {
    const double value = kernel.entry->value(x);
    if (value == value && all_valid(*kernel.entry, x)) return PyFloat_FromDouble(value);
  }
  PyObject* inputs[most_inputs + 1];
  bool has_out;
  if (read_arrays(kernel, arguments, count, keywords, inputs, has_out)) {
    PyObject* result = over_rows(self, inputs, has_out);
    if (result != nullptr || !PyErr_ExceptionMatches(PyExc_TypeError)) return result;
    PyErr_Clear();  // the long way finds out which argument holds no numbers
  }
  const Py_ssize_t total = count + (keywords == nullptr ? 0 : PyTuple_GET_SIZE(keywords));
  auto** with_self = static_cast<PyObject**>(PyMem_Malloc(static_cast<std::size_t>(total + 1) * sizeof(PyObject*)));
  if (with_self == nullptr) return PyErr_NoMemory();
  with_self[0] = self;
  for (Py_ssize_t i = 0; i < total; ++i) with_self[i + 1] = arguments[i];
  PyObject* result = PyObject_VectorcallMethod(evaluate_name, with_self, static_cast<std::size_t>(count + 1), keywords);
  PyMem_Free(with_self);
  return result;
}

PyObject* make(PyTypeObject* type, PyObject* arguments, PyObject*) noexcept {
  try {
    const Entry& entry = py::cast<const Entry&>(py::handle(PyTuple_GetItem(arguments, 0)));
    PyObject* self = type->tp_alloc(type, 0);
    if (self == nullptr) return nullptr;
    auto& kernel = *reinterpret_cast<Kernel*>(self);
    kernel.call = call;
    kernel.entry = &entry;
    kernel.names = PyTuple_New(entry.arity());
    kernel.ufunc = PyObject_GetAttrString(module_object, entry.name);
    if (kernel.names == nullptr || kernel.ufunc == nullptr) {
      Py_DECREF(self);
      return nullptr;
    }
    for (int i = 0; i < entry.arity(); ++i)
      PyTuple_SET_ITEM(kernel.names, i, PyUnicode_InternFromString(entry.inputs[static_cast<std::size_t>(i)].name));
    return self;
  } catch (const std::exception&) {
    PyErr_Clear();
    PyErr_SetString(PyExc_TypeError, "a formula is made from an entry of the registry");
    return nullptr;
  }
}

void destroy(PyObject* self) noexcept {
  PyTypeObject* type = Py_TYPE(self);
  Py_XDECREF(reinterpret_cast<Kernel*>(self)->names);
  Py_XDECREF(reinterpret_cast<Kernel*>(self)->ufunc);
  type->tp_free(self);
  Py_DECREF(type);
}

}  // namespace

void add_kernel(py::module_& module) {
  static PyMemberDef members[] = {
      {"__vectorcalloffset__", T_PYSSIZET, static_cast<Py_ssize_t>(offsetof(Kernel, call)), READONLY, nullptr},
      {nullptr, 0, 0, 0, nullptr}};
  static PyType_Slot slots[] = {{Py_tp_doc, const_cast<char*>("A formula on plain numbers")},
                                {Py_tp_new, reinterpret_cast<void*>(make)},
                                {Py_tp_dealloc, reinterpret_cast<void*>(destroy)},
                                {Py_tp_call, reinterpret_cast<void*>(PyVectorcall_Call)},
                                {Py_tp_members, members},
                                {0, nullptr}};
  static PyType_Spec spec = {"tauten._core.Kernel", sizeof(Kernel), 0,
                             Py_TPFLAGS_DEFAULT | Py_TPFLAGS_BASETYPE | Py_TPFLAGS_HAVE_VECTORCALL, slots};
  evaluate_name = PyUnicode_InternFromString("_evaluate");
  told_name = PyUnicode_InternFromString("_told");
  out_name = PyUnicode_InternFromString("out");
  only_out = PyTuple_Pack(1, out_name);
  array_type = py::object(py::module_::import("numpy").attr("ndarray")).release().ptr();
  module_object = module.ptr();
  const auto type = py::reinterpret_steal<py::object>(PyType_FromSpec(&spec));
  if (!type || evaluate_name == nullptr || told_name == nullptr || only_out == nullptr) throw py::error_already_set();
  module.attr("Kernel") = type;
}

}  // namespace tauten::python
