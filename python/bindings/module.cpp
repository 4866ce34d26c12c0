#include "bindings.hpp"
#include "travel.hpp"

namespace {

void fill(pybind11::module_& module) {
  // Docstrings begin with the signature as Python writes it, where there is one, or have none.
  pybind11::options docs;
  docs.disable_function_signatures();
  module.attr("__version__") = TAUTEN_VERSION;
  module.doc() = "Compiled part of tauten: formulas as NumPy functions, what is known of them, and answers.";
  tauten::python::add_errors(module);
  tauten::python::add_restoring(module);
  tauten::python::add_metadata(module);
  tauten::python::add_ufuncs(module);
  tauten::python::add_kernel(module);
  tauten::python::add_derivation(module);
  tauten::python::add_uncertainty(module);
  tauten::python::add_joints(module);
  tauten::python::add_turn(module);
  tauten::python::add_reach(module);
  tauten::python::add_free_joint(module);
  tauten::python::add_group(module);
  tauten::python::add_rows(module);
  tauten::python::add_inputs(module);
}

}  // namespace

// What PYBIND11_MODULE stands for, with a look at the interpreter before pybind11 takes the lock of another one and waits
// for it without end.
PYBIND11_PLUGIN_IMPL(_core) {
  if (PyInterpreterState_Get() != PyInterpreterState_Main()) {
    PyErr_SetString(PyExc_ImportError, "tauten does not work in a subinterpreter; import it in the main interpreter");
    return nullptr;
  }
  PYBIND11_CHECK_PYTHON_VERSION
  PYBIND11_ENSURE_INTERNALS_READY
  static pybind11::module_::module_def definition;
  auto module = pybind11::module_::create_extension_module("_core", nullptr, &definition);
  try {
    fill(module);
    return module.ptr();
  }
  PYBIND11_CATCH_INIT_EXCEPTIONS
}
