// The three figures of a band as text.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "tauten/base/math.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/base/plain_number.hpp"

namespace tauten::TAUTEN_ABI {

/// \param low, nominal, high  finite figures in one unit, low below high
/// \return the three figures, ending at one place: that of the fourth digit of the greatest, or an earlier one where all end
///         in zeros, as in "63.7", "81.2", "102.0" and "0.08", "0.12", "0.16". A band over more than two powers of ten
///         keeps four digits of each, as do bands below 1e-3 and from 1e7 on
inline std::array<std::string, 3> band_text(double low, double nominal, double high) {
  const double greatest = std::max(std::fabs(low), std::fabs(high));
  const double least = std::min(std::fabs(low), std::fabs(high));
  if ((least != 0 && least < greatest / 100) || greatest < 1e-3 || greatest >= 1e7)
    return {number_text(low), number_text(nominal), number_text(high)};
  const int place = static_cast<int>(std::floor(std::log10(greatest))) - 3;
  const auto rounded = [&](double x) -> std::string {
    if (place <= 0) return PlainNumber::fixed(x, -place).c_str();
    const double step = power_of_ten(place);
    return PlainNumber::fixed(std::round(x / step) * step, 0).c_str();
  };
  std::array<std::string, 3> texts{rounded(low), rounded(nominal), rounded(high)};
  const auto all_end = [&](char last) {
    return std::all_of(texts.begin(), texts.end(), [=](const std::string& text) { return text.back() == last; });
  };
  for (int decimals = -place; decimals > 0 && all_end('0'); --decimals)
    for (std::string& text : texts) text.pop_back();
  if (all_end('.'))
    for (std::string& text : texts) text.pop_back();
  for (std::string& text : texts)
    if (text.find_first_not_of("-0.") == std::string::npos && text.front() == '-')
      text.erase(0, 1);  // no minus of zero
  return texts;
}

}  // namespace tauten::TAUTEN_ABI
