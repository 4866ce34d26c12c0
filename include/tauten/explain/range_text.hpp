// Ranges in words.
#pragma once

#include "tauten/base/quantity_text.hpp"
#include "tauten/base/registry.hpp"
#include "tauten/base/source_text.hpp"

namespace tauten::TAUTEN_ABI {

/// \return a range in the units of a workshop: "above 0 mm", "0.2 mm to 6 mm", "any finite value"
inline std::string range_text(const Interval& range, Dim dimension) {
  const std::string low = quantity_text(range.low, dimension);
  const std::string high = quantity_text(range.high, dimension);
  if (range.low <= -largest) return range.high >= largest ? "any finite value" : "at most " + high;
  if (range.high >= largest) return (range.excludes_low ? "above " : "at least ") + low;
  return range.excludes_low ? "above " + low + " and at most " + high : low + " to " + high;
}

/// \return true if the source of a formula states a range for this input
inline bool has_validity_range(const Arg& arg) noexcept {
  return arg.validity.low > -largest || arg.validity.high < largest;
}

}  // namespace tauten::TAUTEN_ABI
