// Decimal numbers to and from characters by the C library's snprintf and strtod: what number_chars.hpp takes with TAUTEN_C_NUMBERS.
#pragma once

#include <charconv>
#include <clocale>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string_view>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// The point of numbers in the locale of the program: a comma in many.
inline char point_of_locale() noexcept { return *std::localeconv()->decimal_point; }

/// As std::to_chars, which does not need the place for one character more.
inline std::to_chars_result write_chars_in_c(char* first, char* last, double x, std::chars_format format,
                                             int precision) noexcept {
  const auto room = static_cast<std::size_t>(last - first);
  const int size = std::snprintf(first, room, format == std::chars_format::fixed ? "%.*f" : "%.*g", precision, x);
  if (size < 0 || static_cast<std::size_t>(size) >= room) return {last, std::errc::value_too_large};
  if (void* const point = std::memchr(first, point_of_locale(), static_cast<std::size_t>(size)))
    *static_cast<char*>(point) = '.';
  return {first + size, std::errc()};
}

/// As std::from_chars of what begins with a digit, a point or a minus. Numbers of 128 characters and more are refused, which
/// do not occur in units and designations.
inline std::from_chars_result read_chars_in_c(const char* first, const char* last, double& x) noexcept {
  constexpr std::string_view allowed = "-.0123456789eE+";
  char text[128];
  std::size_t size = 0;
  for (const char* c = first; c != last && allowed.find(*c) != std::string_view::npos; ++c) {
    if (size + 1 == sizeof text) return {first, std::errc::invalid_argument};
    text[size++] = *c;
  }
  text[size] = '\0';
  if (*text == '+') return {first, std::errc::invalid_argument};
  if (char* const point = std::strchr(text, '.')) *point = point_of_locale();
  char* end = nullptr;
  const double read = std::strtod(text, &end);
  if (end == text) return {first, std::errc::invalid_argument};
  const std::from_chars_result done{first + (end - text), std::errc()};
  // Too small for a double: zero, and yet a figure above zero was written.
  const bool lost = read == 0 && std::strcspn(text, "123456789") < std::strcspn(text, "eE");
  if (lost || !std::isfinite(read)) return {done.ptr, std::errc::result_out_of_range};
  x = read;
  return done;
}

/// The fewest digits that read back as the same number.
inline std::to_chars_result write_chars_in_c(char* first, char* last, double x) noexcept {
  for (int digits = 15;; ++digits) {
    const std::to_chars_result written = write_chars_in_c(first, last, x, std::chars_format::general, digits);
    double again = 0;
    if (digits == 17 || written.ec != std::errc()) return written;
    if (read_chars_in_c(first, written.ptr, again).ec == std::errc() && again == x) return written;
  }
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
