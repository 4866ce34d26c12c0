// Generated from src/tables/hole.csv by src/tables/generate.py; do not edit.
// clang-format off
// Clearance holes.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source hole_sources[] = {
  {"ISO 273:1979", "Table 1", Seen::in_print},
  {"ISO 273:1979", "Table 1", Seen::memory},
};

/// Clearance holes for bolts and screws.
struct ClearanceHole {
  const char* thread_size;  ///< thread diameter: "M10"
  double fine;              ///< fine series, m
  double medium;            ///< medium series, m
  double coarse;            ///< coarse series, m
  Seen coarse_seen;         ///< how the coarse series was seen
  unsigned char source;     ///< index into hole_sources
};

inline constexpr ClearanceHole clearance_holes[] = {
  {"M1", 1.1e-3, 1.2e-3, 1.3e-3, Seen::in_print, 0},
  {"M1.2", 1.3e-3, 1.4e-3, 1.5e-3, Seen::in_print, 0},
  {"M1.4", 1.5e-3, 1.6e-3, 1.8e-3, Seen::in_print, 0},
  {"M1.6", 1.7e-3, 1.8e-3, 2e-3, Seen::in_print, 0},
  {"M1.8", 2e-3, 2.1e-3, 2.2e-3, Seen::memory, 1},
  {"M2", 2.2e-3, 2.4e-3, 2.6e-3, Seen::in_print, 0},
  {"M2.5", 2.7e-3, 2.9e-3, 3.1e-3, Seen::in_print, 0},
  {"M3", 3.2e-3, 3.4e-3, 3.6e-3, Seen::in_print, 0},
  {"M3.5", 3.7e-3, 3.9e-3, 4.2e-3, Seen::in_print, 0},
  {"M4", 4.3e-3, 4.5e-3, 4.8e-3, Seen::in_print, 0},
  {"M4.5", 4.8e-3, 5e-3, 5.3e-3, Seen::memory, 1},
  {"M5", 5.3e-3, 5.5e-3, 5.8e-3, Seen::in_print, 0},
  {"M6", 6.4e-3, 6.6e-3, 7e-3, Seen::in_print, 0},
  {"M7", 7.4e-3, 7.6e-3, 8e-3, Seen::in_print, 0},
  {"M8", 8.4e-3, 9e-3, 10e-3, Seen::in_print, 0},
  {"M10", 10.5e-3, 11e-3, 12e-3, Seen::in_print, 0},
  {"M12", 13e-3, 13.5e-3, 14.5e-3, Seen::in_print, 0},
  {"M14", 15e-3, 15.5e-3, 16.5e-3, Seen::in_print, 0},
  {"M16", 17e-3, 17.5e-3, 18.5e-3, Seen::in_print, 0},
  {"M18", 19e-3, 20e-3, 21e-3, Seen::in_print, 0},
  {"M20", 21e-3, 22e-3, 24e-3, Seen::in_print, 0},
  {"M22", 23e-3, 24e-3, 26e-3, Seen::in_print, 0},
  {"M24", 25e-3, 26e-3, 28e-3, Seen::in_print, 0},
  {"M27", 28e-3, 30e-3, 32e-3, Seen::in_print, 0},
  {"M30", 31e-3, 33e-3, 35e-3, Seen::in_print, 0},
  {"M33", 34e-3, 36e-3, 38e-3, Seen::in_print, 0},
  {"M36", 37e-3, 39e-3, 42e-3, Seen::in_print, 0},
  {"M39", 40e-3, 42e-3, 45e-3, Seen::in_print, 0},
  {"M42", 43e-3, 45e-3, 48e-3, Seen::in_print, 0},
  {"M45", 46e-3, 48e-3, 52e-3, Seen::memory, 0},
  {"M48", 50e-3, 52e-3, 56e-3, Seen::memory, 0},
  {"M52", 54e-3, 56e-3, 62e-3, Seen::memory, 0},
  {"M56", 58e-3, 62e-3, 66e-3, Seen::memory, 1},
  {"M60", 62e-3, 66e-3, 70e-3, Seen::memory, 1},
  {"M64", 66e-3, 70e-3, 74e-3, Seen::memory, 1},
};

}  // namespace tauten::TAUTEN_ABI::table
