// Sources in words.
#pragma once

#include <string>

#include "tauten/base/source.hpp"

namespace tauten::TAUTEN_ABI {

/// \return how a figure was seen, in words
inline const char* seen_text(Seen seen) noexcept {
  switch (seen) {
    case Seen::in_print: return "seen in print";
    case Seen::once: return "seen once in print";
    case Seen::memory: return "from memory";
    case Seen::judgement: return "estimate";
  }
  return "";
}

/// \return document, place, and how it was seen
inline std::string source_text(const Source& source) {
  const std::string where = *source.document == '\0' ? "common practice, no source" : source.document;
  return where + (*source.place == '\0' ? "" : std::string(", ") + source.place) + " (" + seen_text(source.seen) + ")";
}

}  // namespace tauten::TAUTEN_ABI
