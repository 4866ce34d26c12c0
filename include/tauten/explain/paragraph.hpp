// Text in lines of a page.
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// Columns of a terminal that a page of text fills.
inline constexpr std::size_t page_width = 100;

namespace detail {

inline bool starts_character(char c) noexcept { return (static_cast<unsigned char>(c) & 0xc0u) != 0x80u; }

/// \return how many bytes the first `columns` characters of `text` have
inline std::size_t bytes_of(const std::string& text, std::size_t columns) {
  std::size_t at = 0;
  for (std::size_t seen = 0; at < text.size(); ++at)
    if (starts_character(text[at]) && seen++ == columns) break;
  return at;
}

/// \return `line` as one line of text
inline std::string without_trailing_blanks(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line + "\n";
}

}  // namespace detail

/// \return how many columns of a terminal `text` takes
inline std::size_t width_of(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), detail::starts_character));
}

/// \return `text` in lines of at most `width` columns, broken between words; a longer word is broken itself
inline std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
  std::vector<std::string> lines;
  std::string line;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    std::string word = text.substr(at, end - at);
    at = end + 1;
    if (!line.empty() && width_of(line) + 1 + width_of(word) > width) lines.push_back(std::exchange(line, ""));
    while (width_of(word) > width) {
      const std::size_t bytes = detail::bytes_of(word, width);
      lines.push_back(word.substr(0, bytes));
      word.erase(0, bytes);
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(line);
  return lines;
}

/// \return `text` as lines of the page, ending in a line break
/// \param mark  stands before the first line; the others are indented by its width
inline std::string paragraph(const std::string& text, const std::string& mark = "") {
  std::string out;
  const std::size_t indent = width_of(mark);
  for (const std::string& line : wrapped(text, page_width - indent))
    out += (out.empty() ? mark : std::string(indent, ' ')) + line + "\n";
  return out;
}

}  // namespace tauten::TAUTEN_ABI
