// A chance as it is printed.
#pragma once

#include <cmath>
#include <string>

#include "tauten/base/number_text.hpp"

namespace tauten::TAUTEN_ABI {

/// A chance in words: "1 in 14", "7 in 10". What is rarer than 1 in 100 gets no number, for it depends on the shape of
/// the bands far out in their tails, which nobody knows.
inline std::string chance_text(double chance) {
  if (!(chance >= 0)) return "unknown";
  if (chance < 0.01) return "below 1 in 100";
  if (chance <= 0.5) return "1 in " + number_text(std::round(1 / chance));
  if (chance > 0.99) return "above 99 in 100";
  if (chance > 0.95) return number_text(std::round(100 * chance)) + " in 100";
  return number_text(std::fmin(9, std::round(10 * chance))) + " in 10";
}

}  // namespace tauten::TAUTEN_ABI
