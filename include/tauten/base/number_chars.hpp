// Decimal numbers to and from characters: the one place where the library leaves that to another.
//
// With TAUTEN_C_NUMBERS it is the C library's snprintf and strtod: small machines and web pages save the 110 kB of tables that
// std::to_chars and std::from_chars bring along. The locale of the program must then be "C", as it is there. The texts are the same.
#pragma once

#include <charconv>
#ifdef TAUTEN_C_NUMBERS
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#endif

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

#ifdef TAUTEN_C_NUMBERS

inline std::to_chars_result write_chars(char* first, char* last, double x, std::chars_format format,
                                        int precision) noexcept {
  const auto room = static_cast<std::size_t>(last - first);
  const int size = std::snprintf(first, room, format == std::chars_format::fixed ? "%.*f" : "%.*g", precision, x);
  if (size < 0 || static_cast<std::size_t>(size) >= room) return {last, std::errc::value_too_large};
  return {first + size, std::errc()};
}
inline std::to_chars_result write_chars(char* first, char* last, double x) noexcept {
  for (int digits = 15;; ++digits) {
    const std::to_chars_result written = write_chars(first, last, x, std::chars_format::general, digits);
    if (digits == 17 || written.ec != std::errc() || std::strtod(first, nullptr) == x) return written;
  }
}
inline std::from_chars_result read_chars(const char* first, const char* last, double& x) noexcept {
  char text[128];  // longer numbers do not occur in units and designations
  const auto size = static_cast<std::size_t>(last - first);
  if (size == 0 || size >= sizeof text || *first == '+' || *first == ' ') return {first, std::errc::invalid_argument};
  std::memcpy(text, first, size);
  text[size] = '\0';
  char* end = nullptr;
  const double read = std::strtod(text, &end);
  if (end == text) return {first, std::errc::invalid_argument};
  if (!std::isfinite(read)) return {first + (end - text), std::errc::result_out_of_range};
  x = read;
  return {first + (end - text), std::errc()};
}

#else

inline std::to_chars_result write_chars(char* first, char* last, double x, std::chars_format format,
                                        int precision) noexcept {
  return std::to_chars(first, last, x, format, precision);
}
/// The fewest digits that read back as the same number.
inline std::to_chars_result write_chars(char* first, char* last, double x) noexcept {
  return std::to_chars(first, last, x);
}
inline std::from_chars_result read_chars(const char* first, const char* last, double& x) noexcept {
  return std::from_chars(first, last, x);
}

#endif

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
