// Threads and property classes by name.
#pragma once

#include <array>
#include <string_view>

#include "tauten/base/plain_number.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/thread/designation.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// \return true if the row is the first of its class; a class may have several, by size
constexpr bool names_class(std::size_t row) {
  constexpr auto& classes = table::property_classes;
  return row == 0 || std::string_view(classes[row].name) != classes[row - 1].name;
}

inline constexpr auto class_words = [] {
  constexpr std::size_t count = [] {
    std::size_t n = 0;
    for (std::size_t row = 0; row < std::size(table::property_classes); ++row) n += names_class(row) ? 1 : 0;
    return n;
  }();
  std::array<const char*, count> words{};
  std::size_t at = 0;
  for (std::size_t row = 0; row < std::size(table::property_classes); ++row)
    if (names_class(row)) words[at++] = table::property_classes[row].name;
  return words;
}();

/// Reads the name of a thread.
template <auto member, class Job>
Problem put_thread(const Input<Job>&, const char* called, const Value& value, Job& job) {
  std::string& name = detail::at<member>(job);
  if (auto problem = read(called, value, name)) return problem;
  const auto found = try_parse_thread(name);
  return found ? Problem() : renamed(found.error(), found.error().argument(), called);
}

/// Reads the name of a class, which may come as a number: 8.8.
template <auto member, class Job>
Problem put_class(const Input<Job>&, const char* called, const Value& value, Job& job) {
  std::string& name = detail::at<member>(job);
  if (value.is({Value::Kind::number, Value::Kind::whole}))
    name = PlainNumber(value.number).c_str();
  else if (auto problem = read(called, value, name))
    return problem;
  const auto found = try_property_class(name);
  return found ? Problem() : renamed(found.error(), found.error().argument(), called);
}

}  // namespace tauten::shared
