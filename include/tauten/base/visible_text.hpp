// Text that others wrote, shown in full or shortened: whole characters, and nothing that acts on a terminal.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return how many bytes at the start of `text` are one character in UTF-8; 0 if they are none
inline std::size_t character_size(std::string_view text) noexcept {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u; };
  const unsigned first = byte(0);
  if (first < 0x80) return 1;
  const std::size_t size = first < 0xc2 ? 0 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : first < 0xf5 ? 4 : 0;
  for (std::size_t i = 1; i < size; ++i)
    if ((byte(i) & 0xc0u) != 0x80) return 0;
  // Not the shortest form, a half of a pair, or beyond the last character.
  const unsigned second = byte(1);
  if ((first == 0xe0 && second < 0xa0) || (first == 0xed && second > 0x9f) || (first == 0xf0 && second < 0x90) ||
      (first == 0xf4 && second > 0x8f))
    return 0;
  return size;
}

/// \return whether a character is seen as itself: no control code, and no mark that turns the direction of a line
inline bool is_seen(std::string_view character) noexcept {
  if (character.size() == 1) return character[0] >= ' ' && character[0] != '\x7f';
  const auto third = [&] { return static_cast<unsigned char>(character[2]); };
  if (character.size() == 2) return character[0] != '\xc2' || static_cast<unsigned char>(character[1]) >= 0xa0;
  if (character.starts_with("\xe2\x80")) return third() < 0x8b || (third() > 0x8f && third() < 0xa8) || third() > 0xae;
  if (character.starts_with("\xe2\x81")) return third() < 0xa6 || third() > 0xa9;
  return character != "\xef\xbb\xbf";
}

/// \param most  characters that are shown; of more the first ones and three points
/// \return `text` in UTF-8, with every byte of anything else, and of what acts on a terminal, as in \x1b
inline std::string visible(std::string_view text, std::size_t most = std::string_view::npos) {
  std::string out;
  for (; !text.empty() && most > 0; --most) {
    const std::size_t size = character_size(text);
    const std::string_view one = text.substr(0, size > 0 ? size : 1);
    if (size > 0 && is_seen(one)) {
      out += one;
    } else {
      for (const char c : one) {
        const unsigned byte = static_cast<unsigned char>(c);
        ((out += "\\x") += "0123456789abcdef"[byte >> 4]) += "0123456789abcdef"[byte & 15];
      }
    }
    text.remove_prefix(one.size());
  }
  return text.empty() ? out : out + "...";
}

/// \return `text` in quotes for a message, shortened
inline std::string shown(std::string_view text, std::size_t most = 40) { return "'" + visible(text, most) + "'"; }

}  // namespace tauten::TAUTEN_ABI::detail
