#include "bindings.hpp"

PYBIND11_MODULE(_core, module) {
  module.doc() = "Compiled part of tauten: formulas as NumPy functions, and what is known of them.";
  tauten::python::add_errors(module);
  tauten::python::add_metadata(module);
  tauten::python::add_ufuncs(module);
  tauten::python::add_kernel(module);
}
