// Generated from src/tables/breaking_torque.csv by src/tables/generate.py; do not edit.
// clang-format off
// Minimum breaking torques of bolts and screws.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source breaking_torque_sources[] = {
  {"ISO 898-7:1992", "Table 2", Seen::memory},
  {"ISO 3506-1:1997/2009", "minimum breaking torques", Seen::once},
  {"ISO 3506-1:1997/2009", "minimum breaking torques", Seen::memory},
};

/// Minimum breaking torques as tabulated.
struct BreakingTorque {
  const char* designation;     ///< thread: "M6", "M8x1"
  const char* property_class;  ///< "8.8" (steel); "50", "70", "80" (austenitic stainless, any of A1 to A5)
  double torque;               ///< minimum breaking torque, N*m
  unsigned char source;        ///< index into breaking_torque_sources
};

inline constexpr BreakingTorque breaking_torques[] = {
  {"M1", "12.9", 0.045, 0},
  {"M1.2", "8.8", 0.075, 0},
  {"M1.2", "9.8", 0.082, 0},
  {"M1.2", "10.9", 0.092, 0},
  {"M1.4", "8.8", 0.12, 0},
  {"M1.4", "9.8", 0.13, 0},
  {"M1.4", "12.9", 0.16, 0},
  {"M1.6", "8.8", 0.16, 0},
  {"M1.6", "9.8", 0.18, 0},
  {"M1.6", "10.9", 0.2, 0},
  {"M2", "8.8", 0.37, 0},
  {"M2", "9.8", 0.4, 0},
  {"M2", "10.9", 0.45, 0},
  {"M2", "12.9", 0.5, 0},
  {"M2.5", "8.8", 0.82, 0},
  {"M2.5", "9.8", 0.9, 0},
  {"M2.5", "10.9", 1.0, 0},
  {"M2.5", "12.9", 1.1, 0},
  {"M3", "9.8", 1.7, 0},
  {"M3", "10.9", 1.9, 0},
  {"M3", "12.9", 2.1, 0},
  {"M3.5", "9.8", 2.7, 0},
  {"M3.5", "10.9", 3.0, 0},
  {"M4", "8.8", 3.6, 0},
  {"M5", "8.8", 7.6, 0},
  {"M5", "9.8", 8.3, 0},
  {"M5", "10.9", 9.3, 0},
  {"M5", "12.9", 10.0, 0},
  {"M6", "8.8", 13.0, 0},
  {"M6", "9.8", 14.0, 0},
  {"M6", "10.9", 16.0, 0},
  {"M6", "12.9", 17.0, 0},
  {"M7", "8.8", 23.0, 0},
  {"M7", "9.8", 25.0, 0},
  {"M7", "10.9", 28.0, 0},
  {"M7", "12.9", 31.0, 0},
  {"M8", "8.8", 33.0, 0},
  {"M8", "10.9", 40.0, 0},
  {"M8x1", "9.8", 42.0, 0},
  {"M8x1", "12.9", 52.0, 0},
  {"M10", "8.8", 66.0, 0},
  {"M10", "10.9", 81.0, 0},
  {"M10", "12.9", 90.0, 0},
  {"M10x1", "10.9", 102.0, 0},
  {"M10x1", "12.9", 114.0, 0},
  {"M1.6", "50", 0.15, 1},
  {"M1.6", "80", 0.24, 1},
  {"M2", "50", 0.3, 1},
  {"M2", "80", 0.48, 1},
  {"M2.5", "80", 0.96, 1},
  {"M3", "50", 1.1, 1},
  {"M3", "80", 1.8, 1},
  {"M4", "70", 3.8, 1},
  {"M4", "80", 4.3, 1},
  {"M5", "50", 5.5, 1},
  {"M5", "70", 7.8, 1},
  {"M5", "80", 8.8, 1},
  {"M6", "70", 13.0, 1},
  {"M6", "80", 15.0, 1},
  {"M8", "50", 23.0, 1},
  {"M8", "70", 32.0, 1},
  {"M8", "80", 37.0, 1},
  {"M10", "80", 74.0, 1},
  {"M12", "50", 80.0, 2},
  {"M12", "70", 110.0, 2},
  {"M12", "80", 130.0, 2},
  {"M16", "50", 210.0, 2},
  {"M16", "80", 330.0, 2},
};

}  // namespace tauten::TAUTEN_ABI::table
