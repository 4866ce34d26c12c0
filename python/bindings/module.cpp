#include "bindings.hpp"
#include "travel.hpp"

PYBIND11_MODULE(_core, module) {
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
