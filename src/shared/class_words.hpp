// The names of the property classes, as words that a key takes.
#pragma once

#include <array>
#include <string_view>

#include "tauten/part/property_class_table.hpp"

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

}  // namespace tauten::shared
