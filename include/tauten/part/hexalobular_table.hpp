// Generated from src/tables/hexalobular.csv by src/tables/generate.py; do not edit.
// clang-format off
// Sizes of six-lobed drives.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source hexalobular_sources[] = {
  {"ISO 10664:2014", "nominal dimensions A and B", Seen::in_print},
};

/// Hexalobular internal drives by number, as the recess is drawn.
struct HexalobularDrive {
  unsigned char number;        ///< drive number, also that of the bit
  TableLength outer_diameter;  ///< over the lobes, A, m
  TableLength inner_diameter;  ///< between the lobes, B, m
  Seen seen;                   ///< how number and A were seen
  Seen inner_seen;             ///< how B was seen
  unsigned char source;        ///< index into hexalobular_sources
};

inline constexpr HexalobularDrive hexalobular_drives[] = {
  {3, 1200, 850, Seen::in_print, Seen::once, 0},
  {4, 1350, 1000, Seen::in_print, Seen::once, 0},
  {5, 1500, 1100, Seen::in_print, Seen::once, 0},
  {6, 1750, 1270, Seen::in_print, Seen::once, 0},
  {8, 2400, 1750, Seen::in_print, Seen::once, 0},
  {10, 2800, 2050, Seen::in_print, Seen::once, 0},
  {15, 3350, 2400, Seen::in_print, Seen::once, 0},
  {20, 3950, 2850, Seen::in_print, Seen::once, 0},
  {25, 4500, 3250, Seen::in_print, Seen::once, 0},
  {30, 5600, 4050, Seen::in_print, Seen::once, 0},
  {40, 6750, 4850, Seen::in_print, Seen::once, 0},
  {45, 7930, 5640, Seen::in_print, Seen::once, 0},
  {50, 8950, 6450, Seen::in_print, Seen::once, 0},
  {55, 11350, 8050, Seen::in_print, Seen::memory, 0},
  {60, 13450, 9600, Seen::in_print, Seen::memory, 0},
  {70, 15700, 11200, Seen::in_print, Seen::memory, 0},
  {80, 17750, 12800, Seen::in_print, Seen::memory, 0},
  {90, 20200, 14400, Seen::in_print, Seen::memory, 0},
  {100, 22400, 16000, Seen::in_print, Seen::memory, 0},
};

}  // namespace tauten::TAUTEN_ABI::table
