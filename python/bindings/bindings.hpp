// The parts of the compiled module `_core`.
#pragma once

#include <pybind11/pybind11.h>

#include <span>

#include "tauten/base/registry.hpp"

namespace tauten::python {

/// More inputs than any formula has; NumPy allows 31.
inline constexpr int most_inputs = 16;

/// \return every formula. Only one source file includes them all, because that takes the compiler its time.
std::span<const Entry> entries() noexcept;
/// \return the room of the library to which the formula belongs
const char* room_of(const Entry& entry) noexcept;

/// Counting what the rows of a call have wrong, in this thread.
void start_count() noexcept;
bool nothing_counted() noexcept;

void add_errors(pybind11::module_& module);
void add_metadata(pybind11::module_& module);
void add_kernel(pybind11::module_& module);
void add_ufuncs(pybind11::module_& module);
void add_derivation(pybind11::module_& module);
void add_uncertainty(pybind11::module_& module);
void add_joints(pybind11::module_& module);
void add_turn(pybind11::module_& module);
void add_reach(pybind11::module_& module);
void add_free_joint(pybind11::module_& module);
void add_group(pybind11::module_& module);
void add_rows(pybind11::module_& module);
void add_inputs(pybind11::module_& module);

}  // namespace tauten::python
