// Generated from src/tables/washer.csv by src/tables/generate.py; do not edit.
// clang-format off
// Plain washers.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source washer_sources[] = {
  {"ISO 7089:2000", "table of dimensions", Seen::in_print},
  {"ISO 7089:2000", "table of dimensions", Seen::once},
  {"ISO 7089:2000", "table of dimensions", Seen::memory},
  {"ISO 7090", "table of dimensions", Seen::once},
  {"ISO 7090", "table of dimensions", Seen::memory},
  {"ISO 7093-1", "table of dimensions", Seen::once},
};

/// Plain washers by standard and thread size.
struct Washer {
  const char* standard;     ///< "ISO 7089"
  const char* form;         ///< "plain", "chamfered" or "large"
  const char* thread_size;  ///< thread diameter: "M10"
  double inner_diameter;    ///< clearance hole d1, least, m
  double outer_diameter;    ///< outer diameter d2, greatest, m
  double thickness;         ///< thickness h, nominal, m
  unsigned char source;     ///< index into washer_sources
};

inline constexpr Washer washers[] = {
  {"ISO 7089", "plain", "M1.6", 1.7e-3, 4e-3, 0.3e-3, 0},
  {"ISO 7089", "plain", "M2", 2.2e-3, 5e-3, 0.3e-3, 0},
  {"ISO 7089", "plain", "M2.5", 2.7e-3, 6e-3, 0.5e-3, 0},
  {"ISO 7089", "plain", "M3", 3.2e-3, 7e-3, 0.5e-3, 0},
  {"ISO 7089", "plain", "M3.5", 3.7e-3, 8e-3, 0.5e-3, 1},
  {"ISO 7089", "plain", "M4", 4.3e-3, 9e-3, 0.8e-3, 0},
  {"ISO 7089", "plain", "M5", 5.3e-3, 10e-3, 1e-3, 0},
  {"ISO 7089", "plain", "M6", 6.4e-3, 12e-3, 1.6e-3, 0},
  {"ISO 7089", "plain", "M8", 8.4e-3, 16e-3, 1.6e-3, 0},
  {"ISO 7089", "plain", "M10", 10.5e-3, 20e-3, 2e-3, 0},
  {"ISO 7089", "plain", "M12", 13e-3, 24e-3, 2.5e-3, 0},
  {"ISO 7089", "plain", "M14", 15e-3, 28e-3, 2.5e-3, 1},
  {"ISO 7089", "plain", "M16", 17e-3, 30e-3, 3e-3, 0},
  {"ISO 7089", "plain", "M18", 19e-3, 34e-3, 3e-3, 1},
  {"ISO 7089", "plain", "M20", 21e-3, 37e-3, 3e-3, 0},
  {"ISO 7089", "plain", "M22", 23e-3, 39e-3, 3e-3, 1},
  {"ISO 7089", "plain", "M24", 25e-3, 44e-3, 4e-3, 0},
  {"ISO 7089", "plain", "M27", 28e-3, 50e-3, 4e-3, 2},
  {"ISO 7089", "plain", "M30", 31e-3, 56e-3, 4e-3, 0},
  {"ISO 7089", "plain", "M33", 34e-3, 60e-3, 5e-3, 2},
  {"ISO 7089", "plain", "M36", 37e-3, 66e-3, 5e-3, 0},
  {"ISO 7089", "plain", "M39", 42e-3, 72e-3, 6e-3, 2},
  {"ISO 7089", "plain", "M42", 45e-3, 78e-3, 8e-3, 1},
  {"ISO 7089", "plain", "M45", 48e-3, 85e-3, 8e-3, 2},
  {"ISO 7089", "plain", "M48", 52e-3, 92e-3, 8e-3, 1},
  {"ISO 7089", "plain", "M52", 56e-3, 98e-3, 8e-3, 2},
  {"ISO 7089", "plain", "M56", 62e-3, 105e-3, 10e-3, 1},
  {"ISO 7089", "plain", "M60", 66e-3, 110e-3, 10e-3, 2},
  {"ISO 7089", "plain", "M64", 70e-3, 115e-3, 10e-3, 1},
  {"ISO 7090", "chamfered", "M5", 5.3e-3, 10e-3, 1e-3, 3},
  {"ISO 7090", "chamfered", "M6", 6.4e-3, 12e-3, 1.6e-3, 3},
  {"ISO 7090", "chamfered", "M8", 8.4e-3, 16e-3, 1.6e-3, 3},
  {"ISO 7090", "chamfered", "M10", 10.5e-3, 20e-3, 2e-3, 3},
  {"ISO 7090", "chamfered", "M12", 13e-3, 24e-3, 2.5e-3, 3},
  {"ISO 7090", "chamfered", "M14", 15e-3, 28e-3, 2.5e-3, 4},
  {"ISO 7090", "chamfered", "M16", 17e-3, 30e-3, 3e-3, 3},
  {"ISO 7090", "chamfered", "M18", 19e-3, 34e-3, 3e-3, 4},
  {"ISO 7090", "chamfered", "M20", 21e-3, 37e-3, 3e-3, 3},
  {"ISO 7090", "chamfered", "M22", 23e-3, 39e-3, 3e-3, 4},
  {"ISO 7090", "chamfered", "M24", 25e-3, 44e-3, 4e-3, 3},
  {"ISO 7090", "chamfered", "M27", 28e-3, 50e-3, 4e-3, 4},
  {"ISO 7090", "chamfered", "M30", 31e-3, 56e-3, 4e-3, 3},
  {"ISO 7090", "chamfered", "M33", 34e-3, 60e-3, 5e-3, 4},
  {"ISO 7090", "chamfered", "M36", 37e-3, 66e-3, 5e-3, 3},
  {"ISO 7090", "chamfered", "M39", 42e-3, 72e-3, 6e-3, 4},
  {"ISO 7090", "chamfered", "M42", 45e-3, 78e-3, 8e-3, 3},
  {"ISO 7090", "chamfered", "M45", 48e-3, 85e-3, 8e-3, 4},
  {"ISO 7090", "chamfered", "M48", 52e-3, 92e-3, 8e-3, 3},
  {"ISO 7090", "chamfered", "M52", 56e-3, 98e-3, 8e-3, 4},
  {"ISO 7090", "chamfered", "M56", 62e-3, 105e-3, 10e-3, 3},
  {"ISO 7090", "chamfered", "M60", 66e-3, 110e-3, 10e-3, 4},
  {"ISO 7090", "chamfered", "M64", 70e-3, 115e-3, 10e-3, 3},
  {"ISO 7093-1", "large", "M3", 3.2e-3, 9e-3, 0.8e-3, 5},
  {"ISO 7093-1", "large", "M3.5", 3.7e-3, 11e-3, 0.8e-3, 5},
  {"ISO 7093-1", "large", "M4", 4.3e-3, 12e-3, 1e-3, 5},
  {"ISO 7093-1", "large", "M5", 5.3e-3, 15e-3, 1e-3, 5},
  {"ISO 7093-1", "large", "M6", 6.4e-3, 18e-3, 1.6e-3, 5},
  {"ISO 7093-1", "large", "M8", 8.4e-3, 24e-3, 2e-3, 5},
  {"ISO 7093-1", "large", "M10", 10.5e-3, 30e-3, 2.5e-3, 5},
  {"ISO 7093-1", "large", "M12", 13e-3, 37e-3, 3e-3, 5},
  {"ISO 7093-1", "large", "M14", 15e-3, 44e-3, 3e-3, 5},
  {"ISO 7093-1", "large", "M16", 17e-3, 50e-3, 3e-3, 5},
  {"ISO 7093-1", "large", "M18", 19e-3, 56e-3, 4e-3, 5},
  {"ISO 7093-1", "large", "M20", 21e-3, 60e-3, 4e-3, 5},
  {"ISO 7093-1", "large", "M22", 23e-3, 66e-3, 5e-3, 5},
  {"ISO 7093-1", "large", "M24", 25e-3, 72e-3, 5e-3, 5},
  {"ISO 7093-1", "large", "M27", 30e-3, 85e-3, 6e-3, 5},
  {"ISO 7093-1", "large", "M30", 33e-3, 92e-3, 6e-3, 5},
  {"ISO 7093-1", "large", "M33", 36e-3, 105e-3, 6e-3, 5},
  {"ISO 7093-1", "large", "M36", 39e-3, 110e-3, 8e-3, 5},
};

}  // namespace tauten::TAUTEN_ABI::table
