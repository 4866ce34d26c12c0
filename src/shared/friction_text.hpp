// Friction as it is said: a coefficient, a band, or what is on the threads.
#pragma once

#include <array>

#include "tauten/base/band.hpp"
#include "tauten/friction/condition.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

/// The words for what is on the threads.
inline constexpr auto condition_words = [] {
  std::array<const char*, std::size(table::thread_conditions)> words{};
  for (std::size_t i = 0; i < words.size(); ++i) words[i] = table::thread_conditions[i].key;
  return words;
}();

/// 0.12, or low..nominal..high as in 0.08..0.12..0.16
inline Problem read_band(const char* key, std::string_view text, std::optional<Band<double>>& into) {
  double parts[3] = {};
  int count = 0;
  for (std::string_view rest = text; count < 3; ++count) {
    const std::size_t dots = rest.find("..");
    if (read(key, rest.substr(0, dots), parts[count])) break;
    if (dots == std::string_view::npos) {
      if (count == 0) into = {parts[0], parts[0], parts[0]};
      if (count == 2) into = {parts[0], parts[1], parts[2]};
      if (count != 1) return {};
      break;
    }
    rest.remove_prefix(dots + 2);
  }
  return Error(key, (std::string(key) + " " + tauten::detail::shown(text) +
                     " is neither one number nor three; write it like 0.12 or, low..nominal..high, 0.08..0.12..0.16")
                        .c_str());
}

inline Problem read_condition(const char* key, std::string_view text, std::string& into) {
  into = text;
  const auto found = try_thread_condition(into);
  return found ? Problem() : renamed(found.error(), "condition", key);
}

}  // namespace tauten::shared
