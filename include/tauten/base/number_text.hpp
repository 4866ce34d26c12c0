// Numbers as strings.
#pragma once

#include <cmath>
#include <string>

#include "tauten/base/math.hpp"
#include "tauten/base/number_chars.hpp"
#include "tauten/base/plain_number.hpp"

namespace tauten::TAUTEN_ABI {

/// \param x       any number
/// \param digits  significant digits
/// \return plain decimal notation between 1e-4 and 1e7, scientific outside; "nan" for NaN. The point is a point in
///         every locale, so that what is printed can be read again
inline std::string number_text(double x, int digits = 4) { return PlainNumber(x, digits).c_str(); }

/// \return a setting of a wrench: three figures, never rounded up past what was found to be safe
inline std::string settable_text(double x) {
  const double step = power_of_ten(std::floor(std::log10(x)) - 2);
  return number_text(std::floor(x / step * (1 + 1e-9)) * step, 3);
}

/// \return a figure of a wide band: whole from 10 on and never more than three figures, "59", "1.2", "13300"
inline std::string rough_text(double x) {
  const double size = std::fabs(x);
  if (size >= 1000) {
    const double step = power_of_ten(std::floor(std::log10(size)) - 2);
    return PlainNumber::fixed(std::round(x / step) * step, 0).c_str();
  }
  return PlainNumber::fixed(x, size >= 10 ? 0 : size >= 1 ? 1 : 2).c_str();
}

/// \return a cell of a column: three figures, the last ones too if they are zeros, so that the column reads evenly; "-" if
///         there is none
inline std::string cell_text(double x) {
  if (!std::isfinite(x)) return "-";
  if (x == 0) return "0";
  const int places = 2 - static_cast<int>(std::floor(std::log10(std::fabs(x))));
  return PlainNumber::fixed(x, places > 0 ? places : 0).c_str();
}

/// \return the shortest text that is read back as the very same number
inline std::string exact_text(double x) {
  char text[32];
  return {text, detail::write_chars(text, text + sizeof text, x).ptr};
}

}  // namespace tauten::TAUTEN_ABI
