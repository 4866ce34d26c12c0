// A value or the error that stands in its place: how everything above the kernels reports wrong input.
#pragma once

#include <optional>
#include <utility>

#include "tauten/base/error.hpp"

namespace tauten {

namespace detail {
/// Here, so that not each type of outcome has one of its own.
inline const Error& no_error() noexcept {
  static const Error none("", "");
  return none;
}
}  // namespace detail

/// Either a value or an `Error`. Functions named `try_...` return it and never throw; their twins without the prefix
/// throw the error instead.
template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(T value) : value_(std::move(value)) {}      // NOLINT(google-explicit-constructor)
  Outcome(Error error) : error_(std::move(error)) {}  // NOLINT(google-explicit-constructor)

  /// \return true if there is a value
  explicit operator bool() const noexcept { return value_.has_value(); }
  const T& operator*() const noexcept { return *value_; }
  const T* operator->() const noexcept { return &*value_; }
  /// \return the error; an empty one where there is a value
  const Error& error() const noexcept { return error_ ? *error_ : detail::no_error(); }

  /// \return the value
  /// \throws Error  if there is none; without exceptions the program ends with the message on standard error
  T value() && {
    if (!*this) {
      raise(error());
      std::fprintf(stderr, "%s\n", error().what());
      std::terminate();
    }
    return *std::move(value_);
  }

 private:
  std::optional<T> value_;
  std::optional<Error> error_;  // most outcomes are values: 576 bytes need not be written then
};

}  // namespace tauten
