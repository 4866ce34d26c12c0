// What the targets have in common.
#pragma once

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "tauten/base/error.hpp"
#include "tauten/base/visible_text.hpp"

namespace tauten::fuzz {

/// Ends the run, and libFuzzer keeps the input.
inline void must(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "does not hold: %s\n", what);
  std::abort();
}

/// A text for people is UTF-8 and has nothing in it that acts on a terminal.
inline void must_be_plain(std::string_view text) {
  while (!text.empty()) {
    const std::size_t size = detail::character_size(text);
    must(size > 0, "a text for people is UTF-8");
    must(detail::is_seen(text.substr(0, size)), "a text for people has no control codes");
    text.remove_prefix(size);
  }
}

inline void must_be_plain(const Error& error) {
  must_be_plain(error.argument());
  must_be_plain(error.what());
  must(error.what()[0] != '\0', "an error says why");
}

}  // namespace tauten::fuzz
