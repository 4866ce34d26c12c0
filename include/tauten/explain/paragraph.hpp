// Text in lines of a page.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "tauten/base/version.hpp"
#include "tauten/base/visible_text.hpp"

namespace tauten::TAUTEN_ABI {

/// Columns of a terminal that a page of text fills.
inline constexpr std::size_t page_width = 100;

namespace detail {

inline bool starts_character(char c) noexcept { return (static_cast<unsigned char>(c) & 0xc0u) != 0x80u; }

/// \return how many bytes the first `columns` characters of `text` have
inline std::size_t bytes_of(std::string_view text, std::size_t columns) {
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
inline std::size_t width_of(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), detail::starts_character));
}

/// \return `text` in lines of at most `width` columns, broken between words; a longer word is broken itself. What would act
///         on a terminal is shown
inline std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
  const std::string seen = detail::visible(text);
  text = seen;
  std::vector<std::string> lines;
  std::string line;
  std::size_t taken = 0;  // columns of the line
  while (!text.empty()) {
    std::string_view word = text.substr(0, text.find(' '));
    text.remove_prefix(std::min(word.size() + 1, text.size()));
    std::size_t size = width_of(word);
    if (!line.empty() && taken + 1 + size > width) lines.push_back(std::exchange(line, "")), taken = 0;
    for (; size > width; size -= width) {
      const std::size_t bytes = detail::bytes_of(word, width);
      lines.emplace_back(word.substr(0, bytes));
      word.remove_prefix(bytes);
    }
    if (!line.empty()) line += ' ', ++taken;
    line += word;
    taken += size;
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
