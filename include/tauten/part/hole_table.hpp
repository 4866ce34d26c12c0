// Generated from src/tables/hole.csv by src/tables/generate.py; do not edit.
// clang-format off
// Clearance holes.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source hole_sources[] = {
  {"ISO 273:1979", "Table 1", Seen::in_print},
  {"ISO 273:1979", "Table 1", Seen::memory},
};

/// Clearance holes for bolts and screws.
struct ClearanceHole {
  const char* thread_size;  ///< thread diameter: "M10"
  TableLength fine;         ///< fine series, m
  TableLength medium;       ///< medium series, m
  TableLength coarse;       ///< coarse series, m
  Seen coarse_seen;         ///< how the coarse series was seen
  unsigned char source;     ///< index into hole_sources
};

inline constexpr ClearanceHole clearance_holes[] = {
  {"M1", 1100, 1200, 1300, Seen::in_print, 0},
  {"M1.2", 1300, 1400, 1500, Seen::in_print, 0},
  {"M1.4", 1500, 1600, 1800, Seen::in_print, 0},
  {"M1.6", 1700, 1800, 2000, Seen::in_print, 0},
  {"M1.8", 2000, 2100, 2200, Seen::memory, 1},
  {"M2", 2200, 2400, 2600, Seen::in_print, 0},
  {"M2.5", 2700, 2900, 3100, Seen::in_print, 0},
  {"M3", 3200, 3400, 3600, Seen::in_print, 0},
  {"M3.5", 3700, 3900, 4200, Seen::in_print, 0},
  {"M4", 4300, 4500, 4800, Seen::in_print, 0},
  {"M4.5", 4800, 5000, 5300, Seen::memory, 1},
  {"M5", 5300, 5500, 5800, Seen::in_print, 0},
  {"M6", 6400, 6600, 7000, Seen::in_print, 0},
  {"M7", 7400, 7600, 8000, Seen::in_print, 0},
  {"M8", 8400, 9000, 10000, Seen::in_print, 0},
  {"M10", 10500, 11000, 12000, Seen::in_print, 0},
  {"M12", 13000, 13500, 14500, Seen::in_print, 0},
  {"M14", 15000, 15500, 16500, Seen::in_print, 0},
  {"M16", 17000, 17500, 18500, Seen::in_print, 0},
  {"M18", 19000, 20000, 21000, Seen::in_print, 0},
  {"M20", 21000, 22000, 24000, Seen::in_print, 0},
  {"M22", 23000, 24000, 26000, Seen::in_print, 0},
  {"M24", 25000, 26000, 28000, Seen::in_print, 0},
  {"M27", 28000, 30000, 32000, Seen::in_print, 0},
  {"M30", 31000, 33000, 35000, Seen::in_print, 0},
  {"M33", 34000, 36000, 38000, Seen::in_print, 0},
  {"M36", 37000, 39000, 42000, Seen::in_print, 0},
  {"M39", 40000, 42000, 45000, Seen::in_print, 0},
  {"M42", 43000, 45000, 48000, Seen::in_print, 0},
  {"M45", 46000, 48000, 52000, Seen::memory, 0},
  {"M48", 50000, 52000, 56000, Seen::memory, 0},
  {"M52", 54000, 56000, 62000, Seen::memory, 0},
  {"M56", 58000, 62000, 66000, Seen::memory, 1},
  {"M60", 62000, 66000, 70000, Seen::memory, 1},
  {"M64", 66000, 70000, 74000, Seen::memory, 1},
};

}  // namespace tauten::TAUTEN_ABI::table
