// tauten::Error becomes the Python exception tauten.Error, with the name of the argument at fault.
#include "bindings.hpp"
#include "tauten/base/error.hpp"

namespace py = pybind11;

namespace tauten::python {

void add_errors(py::module_&) {
  py::register_exception_translator([](std::exception_ptr thrown) {
    try {
      if (thrown) std::rethrow_exception(thrown);
    } catch (const Error& error) {
      const py::object type = py::module_::import("tauten._errors").attr("Error");
      PyErr_SetObject(type.ptr(), type(error.what(), error.argument()).ptr());
    }
  });
}

}  // namespace tauten::python
