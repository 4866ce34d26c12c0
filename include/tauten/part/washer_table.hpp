// Generated from src/tables/washer.csv by src/tables/generate.py; do not edit.
// clang-format off
// Plain washers.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

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
  const char* standard;        ///< "ISO 7089"
  const char* form;            ///< "plain", "chamfered" or "large"
  const char* thread_size;     ///< thread diameter: "M10"
  TableLength inner_diameter;  ///< clearance hole d1, least, m
  TableLength outer_diameter;  ///< outer diameter d2, greatest, m
  TableLength thickness;       ///< thickness h, nominal, m
  unsigned char source;        ///< index into washer_sources
};

inline constexpr Washer washers[] = {
  {"ISO 7089", "plain", "M1.6", 1700, 4000, 300, 0},
  {"ISO 7089", "plain", "M2", 2200, 5000, 300, 0},
  {"ISO 7089", "plain", "M2.5", 2700, 6000, 500, 0},
  {"ISO 7089", "plain", "M3", 3200, 7000, 500, 0},
  {"ISO 7089", "plain", "M3.5", 3700, 8000, 500, 1},
  {"ISO 7089", "plain", "M4", 4300, 9000, 800, 0},
  {"ISO 7089", "plain", "M5", 5300, 10000, 1000, 0},
  {"ISO 7089", "plain", "M6", 6400, 12000, 1600, 0},
  {"ISO 7089", "plain", "M8", 8400, 16000, 1600, 0},
  {"ISO 7089", "plain", "M10", 10500, 20000, 2000, 0},
  {"ISO 7089", "plain", "M12", 13000, 24000, 2500, 0},
  {"ISO 7089", "plain", "M14", 15000, 28000, 2500, 1},
  {"ISO 7089", "plain", "M16", 17000, 30000, 3000, 0},
  {"ISO 7089", "plain", "M18", 19000, 34000, 3000, 1},
  {"ISO 7089", "plain", "M20", 21000, 37000, 3000, 0},
  {"ISO 7089", "plain", "M22", 23000, 39000, 3000, 1},
  {"ISO 7089", "plain", "M24", 25000, 44000, 4000, 0},
  {"ISO 7089", "plain", "M27", 28000, 50000, 4000, 2},
  {"ISO 7089", "plain", "M30", 31000, 56000, 4000, 0},
  {"ISO 7089", "plain", "M33", 34000, 60000, 5000, 2},
  {"ISO 7089", "plain", "M36", 37000, 66000, 5000, 0},
  {"ISO 7089", "plain", "M39", 42000, 72000, 6000, 2},
  {"ISO 7089", "plain", "M42", 45000, 78000, 8000, 1},
  {"ISO 7089", "plain", "M45", 48000, 85000, 8000, 2},
  {"ISO 7089", "plain", "M48", 52000, 92000, 8000, 1},
  {"ISO 7089", "plain", "M52", 56000, 98000, 8000, 2},
  {"ISO 7089", "plain", "M56", 62000, 105000, 10000, 1},
  {"ISO 7089", "plain", "M60", 66000, 110000, 10000, 2},
  {"ISO 7089", "plain", "M64", 70000, 115000, 10000, 1},
  {"ISO 7090", "chamfered", "M5", 5300, 10000, 1000, 3},
  {"ISO 7090", "chamfered", "M6", 6400, 12000, 1600, 3},
  {"ISO 7090", "chamfered", "M8", 8400, 16000, 1600, 3},
  {"ISO 7090", "chamfered", "M10", 10500, 20000, 2000, 3},
  {"ISO 7090", "chamfered", "M12", 13000, 24000, 2500, 3},
  {"ISO 7090", "chamfered", "M14", 15000, 28000, 2500, 4},
  {"ISO 7090", "chamfered", "M16", 17000, 30000, 3000, 3},
  {"ISO 7090", "chamfered", "M18", 19000, 34000, 3000, 4},
  {"ISO 7090", "chamfered", "M20", 21000, 37000, 3000, 3},
  {"ISO 7090", "chamfered", "M22", 23000, 39000, 3000, 4},
  {"ISO 7090", "chamfered", "M24", 25000, 44000, 4000, 3},
  {"ISO 7090", "chamfered", "M27", 28000, 50000, 4000, 4},
  {"ISO 7090", "chamfered", "M30", 31000, 56000, 4000, 3},
  {"ISO 7090", "chamfered", "M33", 34000, 60000, 5000, 4},
  {"ISO 7090", "chamfered", "M36", 37000, 66000, 5000, 3},
  {"ISO 7090", "chamfered", "M39", 42000, 72000, 6000, 4},
  {"ISO 7090", "chamfered", "M42", 45000, 78000, 8000, 3},
  {"ISO 7090", "chamfered", "M45", 48000, 85000, 8000, 4},
  {"ISO 7090", "chamfered", "M48", 52000, 92000, 8000, 3},
  {"ISO 7090", "chamfered", "M52", 56000, 98000, 8000, 4},
  {"ISO 7090", "chamfered", "M56", 62000, 105000, 10000, 3},
  {"ISO 7090", "chamfered", "M60", 66000, 110000, 10000, 4},
  {"ISO 7090", "chamfered", "M64", 70000, 115000, 10000, 3},
  {"ISO 7093-1", "large", "M3", 3200, 9000, 800, 5},
  {"ISO 7093-1", "large", "M3.5", 3700, 11000, 800, 5},
  {"ISO 7093-1", "large", "M4", 4300, 12000, 1000, 5},
  {"ISO 7093-1", "large", "M5", 5300, 15000, 1000, 5},
  {"ISO 7093-1", "large", "M6", 6400, 18000, 1600, 5},
  {"ISO 7093-1", "large", "M8", 8400, 24000, 2000, 5},
  {"ISO 7093-1", "large", "M10", 10500, 30000, 2500, 5},
  {"ISO 7093-1", "large", "M12", 13000, 37000, 3000, 5},
  {"ISO 7093-1", "large", "M14", 15000, 44000, 3000, 5},
  {"ISO 7093-1", "large", "M16", 17000, 50000, 3000, 5},
  {"ISO 7093-1", "large", "M18", 19000, 56000, 4000, 5},
  {"ISO 7093-1", "large", "M20", 21000, 60000, 4000, 5},
  {"ISO 7093-1", "large", "M22", 23000, 66000, 5000, 5},
  {"ISO 7093-1", "large", "M24", 25000, 72000, 5000, 5},
  {"ISO 7093-1", "large", "M27", 30000, 85000, 6000, 5},
  {"ISO 7093-1", "large", "M30", 33000, 92000, 6000, 5},
  {"ISO 7093-1", "large", "M33", 36000, 105000, 6000, 5},
  {"ISO 7093-1", "large", "M36", 39000, 110000, 8000, 5},
};

}  // namespace tauten::TAUTEN_ABI::table
