// A value or the error that stands in its place: how everything above the kernels reports wrong input.
#pragma once

#include <optional>
#include <utility>

#include "tauten/base/error.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {
/// Here, so that not each type of outcome has one of its own.
inline const Error& no_error() noexcept {
  static const Error none("", "");
  return none;
}

/// Ends the program with the message on standard error, or as TAUTEN_END does it.
[[noreturn, gnu::cold, gnu::noinline]] inline void end_with(const Error& error) noexcept {
#ifdef TAUTEN_END
  TAUTEN_END(error.what());
#else
  std::fputs(error.what(), stderr);
  std::fputc('\n', stderr);
#endif
  std::terminate();
}
}  // namespace detail

/// Either a value or an `Error`. Functions named `try_...` return it and never throw; their twins without the prefix
/// throw the error instead. To take the value where there is none ends the program with the message on standard error. For
/// a machine that has none, define TAUTEN_END before the headers in all files: TAUTEN_END("message") is called instead.
template <class T>
class [[nodiscard]] Outcome {
 public:
  Outcome(T value) : value_(std::move(value)) {}      // NOLINT(google-explicit-constructor)
  Outcome(Error error) : error_(std::move(error)) {}  // NOLINT(google-explicit-constructor)

  /// \return true if there is a value
  explicit operator bool() const noexcept { return value_.has_value(); }
  /// \return the value; without one the program ends
  const T& operator*() const noexcept {
    if (!*this) [[unlikely]]
      detail::end_with(error());
    return *value_;
  }
  const T* operator->() const noexcept { return &**this; }
  /// \return the error; an empty one where there is a value
  const Error& error() const noexcept { return error_ ? *error_ : detail::no_error(); }

  /// \return the value
  /// \throws Error  if there is none; without exceptions the program ends
  const T& value() const& {
    need();
    return *value_;
  }
  T value() && {
    need();
    return *std::move(value_);
  }

 private:
  void need() const {
    if (*this) return;
    raise(error());
    detail::end_with(error());
  }

  std::optional<T> value_;
  std::optional<Error> error_;  // most outcomes are values: 576 bytes need not be written then
};

}  // namespace tauten::TAUTEN_ABI
