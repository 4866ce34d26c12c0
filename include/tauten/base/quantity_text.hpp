// Quantities as text.
#pragma once

#include <string>

#include "tauten/base/dimension.hpp"
#include "tauten/base/number_text.hpp"

namespace tauten::TAUTEN_ABI {

/// \return an SI value in the unit a workshop reads, "29.93 kN"
inline std::string quantity_text(double si, Dim dimension, int digits = 4) {
  const DimensionText unit = describe(dimension);
  std::string text = number_text(si / unit.shop_unit_in_si, digits);
  if (*unit.shop_unit != '\0') text += std::string(" ") + unit.shop_unit;
  return text;
}

}  // namespace tauten::TAUTEN_ABI
