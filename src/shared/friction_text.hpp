// What is on the threads, by name.
#pragma once

#include <array>

#include "tauten/friction/condition.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// The words for what is on the threads.
inline constexpr auto condition_words = [] {
  std::array<const char*, std::size(table::thread_conditions)> words{};
  for (std::size_t i = 0; i < words.size(); ++i) words[i] = table::thread_conditions[i].key;
  return words;
}();

/// Reads a name that the library knows.
inline Problem read_condition(const char* called, const Value& value, std::string& into) {
  if (auto problem = read(called, value, into)) return problem;
  const auto found = try_thread_condition(into);
  return found ? Problem() : renamed(found.error(), "condition", called);
}

}  // namespace tauten::shared
