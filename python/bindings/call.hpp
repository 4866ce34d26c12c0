// The keyword arguments of a question as values, which its table of inputs reads.
#pragma once

#include <pybind11/pybind11.h>

#include <deque>
#include <string>
#include <vector>

#include "listener.hpp"
#include "shared/inputs.hpp"

namespace tauten::python {

/// Holds what the values point into. While it lives, the interrupt key is heard.
class PythonCall {
 public:
  /// \param arguments  by name; those that are None have been left out
  explicit PythonCall(const pybind11::dict& arguments);
  PythonCall(const PythonCall&) = delete;
  PythonCall& operator=(const PythonCall&) = delete;

  operator shared::Call() const { return {said_, shared::Spelling::argument}; }  // NOLINT(google-explicit-constructor)

 private:
  /// Reads Pint quantities, and raises TypeError where a value of this kind cannot be.
  class Object : public shared::Foreign {
   public:
    explicit Object(pybind11::object object) : object_(std::move(object)) {}
    Outcome<double> si(const char* input, Dim dimension) const override;
    Error refusal(const char* input, const char* wanted) const override;
    const pybind11::object& get() const { return object_; }

   private:
    pybind11::object object_;
  };

  shared::Value value_of(const std::string& name, const pybind11::object& object);

  const Interruptible while_it_is_asked_{};
  std::deque<Object> objects_;
  std::deque<std::string> texts_;
  std::vector<shared::Assignment> said_;
};

/// \return the value, or throws the error
template <class T>
T value_or_throw(const Outcome<T>& outcome) {
  if (!outcome) throw outcome.error();
  return *outcome;
}

}  // namespace tauten::python
