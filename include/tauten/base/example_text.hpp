// Examples of values, for messages.
#pragma once

#include <string_view>
#include <utility>

#include "tauten/base/dimension.hpp"

namespace tauten::TAUTEN_ABI {

/// An example of a value, for a message. Plain numbers of different kinds look different; the last word of the
/// argument's name tells them apart.
constexpr const char* example_of(std::string_view argument, Dim dimension) {
  constexpr std::pair<std::string_view, const char*> numbers[] = {
      {"share", "0.75 or 75%"},      {"wrench", "0.04 or 4%"}, {"accuracy", "0.04 or 4%"}, {"friction", "0.12"},
      {"efficiency", "0.95 or 95%"}, {"risk", "0.05 or 5%"},   {"chance", "0.9 or 90%"},   {"ratio", "4"}};
  if (dimension == Dim::number)
    for (const auto& [ending, example] : numbers)
      if (argument.ends_with(ending)) return example;
  return describe(dimension).how_to_write;
}

}  // namespace tauten::TAUTEN_ABI
