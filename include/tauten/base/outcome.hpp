// A value or the error that stands in its place: how everything above the kernels reports wrong input.
#pragma once

#include <utility>
#include <variant>

#include "tauten/base/error.hpp"

namespace tauten {

/// Either a value or an `Error`. Functions named `try_...` return it and never throw; their twins without the prefix
/// throw the error instead.
template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(T value) : held_(std::in_place_index<0>, std::move(value)) {}      // NOLINT(google-explicit-constructor)
  Outcome(Error error) : held_(std::in_place_index<1>, std::move(error)) {}  // NOLINT(google-explicit-constructor)

  /// \return true if there is a value
  explicit operator bool() const noexcept { return held_.index() == 0; }
  const T& operator*() const noexcept { return *std::get_if<0>(&held_); }
  const T* operator->() const noexcept { return std::get_if<0>(&held_); }
  /// \return the error; an empty one where there is a value
  const Error& error() const noexcept {
    static const Error none("", "");
    const Error* error = std::get_if<1>(&held_);
    return error == nullptr ? none : *error;
  }

  /// \return the value
  /// \throws Error  if there is none; without exceptions the program ends with the message on standard error
  T value() && {
    if (!*this) {
      raise(error());
      std::fprintf(stderr, "%s\n", error().what());
      std::terminate();
    }
    return std::move(*std::get_if<0>(&held_));
  }

 private:
  std::variant<T, Error> held_;  // most outcomes are values, and an error is 576 bytes that need not be written then
};

}  // namespace tauten
