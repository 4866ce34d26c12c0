// Where a figure or a formula comes from.
#pragma once

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// How a figure was come by. A figure seen in print is worth more than one from memory.
enum class Seen : unsigned char {
  in_print,  ///< read in two sources, or read once and reproduced by the standard's own formula
  once,      ///< read once in print
  memory,    ///< from memory, not checked against the source: a hint
  judgement  ///< no published figure was found; an estimate, given as a wide band
};

/// A document and the place in it.
struct Source {
  const char* document;  ///< title with edition, "" for trade practice
  const char* place;     ///< clause, table, equation or page
  Seen seen;
};

/// Marks a figure that a source does not give.
inline constexpr double absent = __builtin_nan("");

}  // namespace tauten::TAUTEN_ABI
