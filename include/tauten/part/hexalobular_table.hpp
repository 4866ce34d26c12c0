// Generated from src/tables/hexalobular.csv by src/tables/generate.py; do not edit.
// clang-format off
// Sizes of six-lobed drives.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source hexalobular_sources[] = {
  {"ISO 10664:2014", "nominal dimensions A and B", Seen::in_print},
};

/// Hexalobular internal drives by number, as the recess is drawn.
struct HexalobularDrive {
  unsigned char number;   ///< drive number, also that of the bit
  double outer_diameter;  ///< over the lobes, A, m
  double inner_diameter;  ///< between the lobes, B, m
  Seen seen;              ///< how number and A were seen
  Seen inner_seen;        ///< how B was seen
  unsigned char source;   ///< index into hexalobular_sources
};

inline constexpr HexalobularDrive hexalobular_drives[] = {
  {3, 1.2e-3, 0.85e-3, Seen::in_print, Seen::once, 0},
  {4, 1.35e-3, 1e-3, Seen::in_print, Seen::once, 0},
  {5, 1.5e-3, 1.1e-3, Seen::in_print, Seen::once, 0},
  {6, 1.75e-3, 1.27e-3, Seen::in_print, Seen::once, 0},
  {8, 2.4e-3, 1.75e-3, Seen::in_print, Seen::once, 0},
  {10, 2.8e-3, 2.05e-3, Seen::in_print, Seen::once, 0},
  {15, 3.35e-3, 2.4e-3, Seen::in_print, Seen::once, 0},
  {20, 3.95e-3, 2.85e-3, Seen::in_print, Seen::once, 0},
  {25, 4.5e-3, 3.25e-3, Seen::in_print, Seen::once, 0},
  {30, 5.6e-3, 4.05e-3, Seen::in_print, Seen::once, 0},
  {40, 6.75e-3, 4.85e-3, Seen::in_print, Seen::once, 0},
  {45, 7.93e-3, 5.64e-3, Seen::in_print, Seen::once, 0},
  {50, 8.95e-3, 6.45e-3, Seen::in_print, Seen::once, 0},
  {55, 11.35e-3, 8.05e-3, Seen::in_print, Seen::memory, 0},
  {60, 13.45e-3, 9.6e-3, Seen::in_print, Seen::memory, 0},
  {70, 15.7e-3, 11.2e-3, Seen::in_print, Seen::memory, 0},
  {80, 17.75e-3, 12.8e-3, Seen::in_print, Seen::memory, 0},
  {90, 20.2e-3, 14.4e-3, Seen::in_print, Seen::memory, 0},
  {100, 22.4e-3, 16e-3, Seen::in_print, Seen::memory, 0},
};

}  // namespace tauten::TAUTEN_ABI::table
