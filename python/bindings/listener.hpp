// Lets a long run hear what Python has to say: the interrupt key, and a call that is told the progress.
#pragma once

#include <pybind11/pybind11.h>

#include <utility>

#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::python {

/// Lets the interrupt key, and a Python call if there is one, stop a run.
class Listener {
 public:
  explicit Listener(pybind11::object call = pybind11::none()) : call_(std::move(call)) {}

  ProgressCall progress() {
    return [this](const Progress& p) {
      const pybind11::gil_scoped_acquire python;
      if (PyErr_CheckSignals() != 0) return !(failed_ = true);
      if (call_.is_none()) return true;
      try {
        return !call_(p.done, p.expected).is(pybind11::bool_(false));
      } catch (pybind11::error_already_set& error) {
        error.restore();
        return !(failed_ = true);
      }
    };
  }
  /// Call it once Python runs again.
  void look() const {
    if (failed_) throw pybind11::error_already_set();
  }

 private:
  pybind11::object call_;
  bool failed_ = false;
};

}  // namespace tauten::python
