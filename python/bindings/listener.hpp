// Lets a long run hear what Python has to say: the interrupt key, and a call that is told the progress.
#pragma once

#include <pybind11/pybind11.h>

#include <atomic>
#include <utility>

#include "tauten/base/interruption.hpp"
#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::python {

/// While it lives, the interrupt key ends the long work of this thread.
class Interruptible : Interruption {
 public:
  Interruptible() : Interruption(ask, nullptr) {}

 private:
  static void ask(void*) {
    const pybind11::gil_scoped_acquire python;
    if (PyErr_CheckSignals() != 0) throw pybind11::error_already_set();
  }
};

/// Lets the interrupt key, and a Python call if there is one, stop a run.
class Listener {
 public:
  explicit Listener(pybind11::object call = pybind11::none()) : call_(std::move(call)) {}

  ProgressCall progress() {
    return [this](const Progress& p) {
      const pybind11::gil_scoped_acquire python;
      if (failed_) return false;
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
  /// Ends the long work of the thread that asked, once the run must stop.
  static void end(void* listener) {
    if (!static_cast<Listener*>(listener)->progress()({})) throw tauten::detail::Ended();
  }
  /// Raised once the run must stop.
  const std::atomic<bool>& failed() const { return failed_; }
  /// Call it once Python runs again.
  void look() const {
    if (failed_) throw pybind11::error_already_set();
  }

 private:
  pybind11::object call_;
  std::atomic<bool> failed_ = false;
};

}  // namespace tauten::python
