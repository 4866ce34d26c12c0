// The one error type, and the status that stands for it where nothing can be thrown.
#pragma once

#include <cstdio>
#include <cstring>
#include <exception>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// What became of a call on plain numbers.
enum class Status : unsigned char {
  ok,
  unusual,         ///< computed, but an input lies outside the range that the source states: treat with care
  outside_domain,  ///< an input lies where the formula has no meaning: the value is NaN
  impossible       ///< inputs are fine one by one, but together they have no solution: the value is NaN
};

/// Wrong input. The message names the argument, its value with unit, the allowed range and what to do.
class Error : public std::exception {
 public:
  /// \param argument  name of the argument at fault ("torque"); may be "" where no single argument is
  /// \param message   one plain sentence for the user; cut off after 511 characters
  Error(const char* argument, const char* message) noexcept {
    copy(argument, argument_, sizeof argument_);
    copy(message, message_, sizeof message_);
  }

  /// \return the sentence for the user
  const char* what() const noexcept override { return message_; }
  /// \return the name of the argument at fault
  const char* argument() const noexcept { return argument_; }

 private:
  static void copy(const char* text, char* into, std::size_t room) noexcept {
    const std::size_t size = std::strlen(text);
    std::size_t length = size < room ? size : room - 1;
    while (size >= room && length > 0 && (text[length] & '\xc0') == '\x80') --length;  // never half a character
    std::memcpy(into, text, length);
    into[length] = '\0';
  }

  char argument_[64];
  char message_[512];
};

/// Throws `error`. Without exceptions it returns, and the caller hands out NaN.
/// So functions that call it differ with and without exceptions: all translation units of a program that include this
/// library must be built the same way, as the one-definition rule asks.
inline void raise([[maybe_unused]] const Error& error) {
#if defined(__cpp_exceptions)
  throw error;
#endif
}

}  // namespace tauten::TAUTEN_ABI
