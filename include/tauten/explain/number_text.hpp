// Numbers and quantities as text.
#pragma once

#include <charconv>
#include <cmath>
#include <string>

#include "tauten/base/dimension.hpp"

namespace tauten {

/// \param x       any number
/// \param digits  significant digits
/// \return plain decimal notation between 1e-4 and 1e7, scientific outside; "nan" for NaN. The point is a point in
///         every locale, so that what is printed can be read again
inline std::string number_text(double x, int digits = 4) {
  if (x == 0) return "0";
  if (std::isnan(x)) return "nan";
  char text[64];
  const double size = std::fabs(x);
  if (!std::isfinite(x) || size < 1e-4 || size >= 1e7)
    return {text, std::to_chars(text, text + sizeof text, x, std::chars_format::general, digits).ptr};
  const int before_point = static_cast<int>(std::floor(std::log10(size))) + 1;
  const int decimals = digits > before_point ? digits - before_point : 0;
  std::string result(text, std::to_chars(text, text + sizeof text, x, std::chars_format::fixed, decimals).ptr);
  if (decimals > 0) {
    result.erase(result.find_last_not_of('0') + 1);
    if (result.back() == '.') result.pop_back();
  }
  return result;
}

/// \return the shortest text that is read back as the very same number
inline std::string exact_text(double x) {
  char text[32];
  return {text, std::to_chars(text, text + sizeof text, x).ptr};
}

/// \return an SI value in the unit a workshop reads, "29.93 kN"
inline std::string quantity_text(double si, Dim dimension, int digits = 4) {
  const DimensionText unit = describe(dimension);
  std::string text = number_text(si / unit.shop_unit_in_si, digits);
  if (*unit.shop_unit != '\0') text += std::string(" ") + unit.shop_unit;
  return text;
}

}  // namespace tauten
