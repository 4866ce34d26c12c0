// Generated from src/tables/manual_torque.csv by src/tables/generate.py; do not edit.
// clang-format off
// Torques as manuals of machines print them.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source manual_torque_sources[] = {
  {"machine manual", "lightly oiled threads (0.14), after an older edition of VDI 2230", Seen::once},
};

/// Torques that stand in manuals, to compare with.
struct ManualTorque {
  const char* thread;          ///< thread: "M10", "M10x1.25"
  const char* property_class;  ///< class of the bolt: "8.8"
  double torque;               ///< printed torque, N.m
  unsigned char source;        ///< index into manual_torque_sources
};

inline constexpr ManualTorque manual_torques[] = {
  {"M5", "8.8", 5.9, 0},
  {"M5", "10.9", 8.7, 0},
  {"M5", "12.9", 10.0, 0},
  {"M6", "8.8", 10.0, 0},
  {"M6", "10.9", 15.0, 0},
  {"M6", "12.9", 18.0, 0},
  {"M8", "8.8", 25.0, 0},
  {"M8", "10.9", 36.0, 0},
  {"M8", "12.9", 43.0, 0},
  {"M10", "8.8", 49.0, 0},
  {"M10", "10.9", 72.0, 0},
  {"M10", "12.9", 84.0, 0},
  {"M12", "12.9", 145.0, 0},
  {"M14", "8.8", 135.0, 0},
  {"M14", "10.9", 200.0, 0},
  {"M14", "12.9", 235.0, 0},
  {"M16", "8.8", 210.0, 0},
  {"M16", "10.9", 310.0, 0},
  {"M16", "12.9", 365.0, 0},
  {"M18", "12.9", 500.0, 0},
  {"M20", "8.8", 425.0, 0},
  {"M22", "12.9", 960.0, 0},
  {"M24", "8.8", 730.0, 0},
  {"M27", "8.8", 1100.0, 0},
  {"M27", "10.9", 1550.0, 0},
  {"M27", "12.9", 1800.0, 0},
  {"M30", "8.8", 1450.0, 0},
  {"M30", "10.9", 2100.0, 0},
  {"M8x1", "10.9", 39.0, 0},
  {"M8x1", "12.9", 46.0, 0},
  {"M10x1.25", "8.8", 52.0, 0},
  {"M10x1.25", "10.9", 76.0, 0},
  {"M10x1.25", "12.9", 90.0, 0},
  {"M12x1.25", "8.8", 93.0, 0},
  {"M12x1.25", "12.9", 160.0, 0},
  {"M12x1.5", "8.8", 89.0, 0},
  {"M12x1.5", "10.9", 130.0, 0},
  {"M12x1.5", "12.9", 155.0, 0},
  {"M14x1.5", "8.8", 145.0, 0},
  {"M14x1.5", "12.9", 255.0, 0},
  {"M16x1.5", "8.8", 225.0, 0},
  {"M16x1.5", "10.9", 330.0, 0},
  {"M16x1.5", "12.9", 390.0, 0},
  {"M20x1.5", "12.9", 790.0, 0},
  {"M24x2", "8.8", 800.0, 0},
  {"M24x2", "10.9", 1150.0, 0},
  {"M24x2", "12.9", 1350.0, 0},
  {"M30x2", "8.8", 1650.0, 0},
  {"M30x2", "10.9", 2350.0, 0},
  {"M30x2", "12.9", 2750.0, 0},
};

}  // namespace tauten::TAUTEN_ABI::table
