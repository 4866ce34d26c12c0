// A chance counted by trials, printed with the digits that they support.
#pragma once

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <string>

#include "tauten/base/number_chars.hpp"
#include "tauten/base/number_text.hpp"

namespace tauten::TAUTEN_ABI {

/// \param chance  share of the trials in which it happened
/// \param trials  that were counted
/// \return "8.0 %": the last digit counts at least the standard error sqrt(p (1 - p)/n); "below 0.03 %" where it happened
///         in none, which is 3/n, and "above 99.97 %" where it happened in all
inline std::string trial_chance_text(double chance, std::uint64_t trials) {
  const auto n = static_cast<double>(trials);
  const double rare = 3 / n;
  if (chance * n < 0.5) return "below " + number_text(100 * rare, 1) + " %";
  const auto decimals = [](double percent) {
    return std::clamp(static_cast<int>(std::floor(-std::log10(percent) + 1e-9)), 0, 6);
  };
  // A point in every locale, so that what is printed can be read again.
  const auto with_decimals = [](double percent, int places) {
    char text[40];
    return std::string(text,
                       detail::write_chars(text, text + sizeof text, percent, std::chars_format::fixed, places).ptr) +
           " %";
  };
  if ((1 - chance) * n < 0.5) return "above " + with_decimals(100 * (1 - rare), decimals(100 * rare) + 1);
  return with_decimals(100 * chance, decimals(100 * std::sqrt(chance * (1 - chance) / n)));
}

}  // namespace tauten::TAUTEN_ABI
