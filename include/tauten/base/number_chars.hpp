// Decimal numbers to and from characters: the one place where the library leaves that to another.
//
// With TAUTEN_C_NUMBERS it is the C library: small machines and web pages save the 110 kB of tables that std::to_chars and
// std::from_chars bring along. The texts are the same.
#pragma once

#include <charconv>

#ifdef TAUTEN_C_NUMBERS
#include "tauten/base/c_number_chars.hpp"
#endif
#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::to_chars_result write_chars(char* first, char* last, double x, std::chars_format format,
                                        int precision) noexcept {
#ifdef TAUTEN_C_NUMBERS
  return write_chars_in_c(first, last, x, format, precision);
#else
  return std::to_chars(first, last, x, format, precision);
#endif
}

/// The fewest digits that read back as the same number.
inline std::to_chars_result write_chars(char* first, char* last, double x) noexcept {
#ifdef TAUTEN_C_NUMBERS
  return write_chars_in_c(first, last, x);
#else
  return std::to_chars(first, last, x);
#endif
}

inline std::from_chars_result read_chars(const char* first, const char* last, double& x) noexcept {
#ifdef TAUTEN_C_NUMBERS
  return read_chars_in_c(first, last, x);
#else
  return std::from_chars(first, last, x);
#endif
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
