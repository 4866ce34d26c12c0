// Text that people typed, prepared for comparison, and refusals.
#pragma once

#include <string>
#include <string_view>

#include "tauten/base/error.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/visible_text.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return `text` without blanks, with a decimal point for a decimal comma and x for a multiplication sign
inline std::string tidy(std::string_view text) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == ' ' || text[i] == '\t') continue;
    if (text.substr(i, 2) == "\u00d7") {
      result += 'x';
      ++i;
    } else {
      result += text[i] == ',' ? '.' : text[i];
    }
  }
  return result;
}

/// \return `text` tidied and in capital letters, for comparing names
inline std::string name_key(std::string_view text) {
  std::string result = tidy(text);
  for (char& c : result)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return result;
}

/// \return a length in millimetres as plain digits, without the unit
inline std::string mm_text(double metres) { return number_text(metres * 1e3, 6); }

/// \return the error that names `argument` and says `sentence`
inline Error refuse(const char* argument, const std::string& sentence) { return {argument, sentence.c_str()}; }

/// Lengths that come from text and from tables may differ in the last bit.
constexpr bool same_length(double a, double b) noexcept { return a - b < 1e-8 && b - a < 1e-8; }

/// \return the weaker of two ways in which figures were seen
constexpr Seen weaker(Seen a, Seen b) noexcept { return a > b ? a : b; }

}  // namespace tauten::TAUTEN_ABI::detail
