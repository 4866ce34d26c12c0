// Generated from src/tables/tolerance_deviation.csv, src/tables/tolerance_crest.csv, src/tables/tolerance_pitch.csv, src/tables/tolerance_limits.csv by src/tables/generate.py; do not edit.
// clang-format off
// Deviations and tolerances of ISO metric threads.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

namespace tauten::TAUTEN_ABI::table {

/// One figure with how it was seen.
struct Graded {
  TableLength value;  ///< absent where the standard has no such grade
  Seen seen;          ///< a figure from memory must not be given as a limit
};

/// Where the rows come from.
inline constexpr Source tolerance_sources[] = {
  {"ISO 965-1:1998", "Table 1", Seen::memory},
  {"ISO 965-1:1998", "Tables 2 to 5", Seen::memory},
  {"ISO 965-1:1998", "Tables 4 and 6", Seen::memory},
  {"ISO 965-1:1998", "6g and 6H limits computed from the tolerance tables; bolt limits seen", Seen::in_print},
  {"ISO 965-1:1998", "6g and 6H limits computed from the tolerance tables; bolt and nut limits seen", Seen::in_print},
  {"ISO 965-1:1998", "6g and 6H limits computed from the tolerance tables; bolt and nut limits seen", Seen::once},
  {"ISO 965-1:1998", "6g and 6H limits computed from the tolerance tables", Seen::memory},
};

/// Fundamental deviations by pitch. H and h are zero for every pitch.
struct FundamentalDeviation {
  TableLength pitch;     ///< pitch P, m
  Graded G;              ///< lower deviation EI of internal threads, position G
  Graded g;              ///< upper deviation es of external threads, position g
  Graded f;              ///< upper deviation es of external threads, position f
  Graded e;              ///< upper deviation es of external threads, position e
  unsigned char source;  ///< index into tolerance_sources
};

inline constexpr FundamentalDeviation fundamental_deviations[] = {
  {200, {17, Seen::memory}, {-17, Seen::memory}, {-32, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {250, {18, Seen::memory}, {-18, Seen::memory}, {-33, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {300, {18, Seen::memory}, {-18, Seen::memory}, {-33, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {350, {19, Seen::in_print}, {-19, Seen::in_print}, {-34, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {400, {19, Seen::in_print}, {-19, Seen::in_print}, {-34, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {450, {20, Seen::in_print}, {-20, Seen::in_print}, {-35, Seen::memory}, {TableLength::none, Seen::memory}, 0},
  {500, {20, Seen::in_print}, {-20, Seen::in_print}, {-36, Seen::memory}, {-50, Seen::memory}, 0},
  {600, {21, Seen::in_print}, {-21, Seen::in_print}, {-36, Seen::memory}, {-53, Seen::memory}, 0},
  {700, {22, Seen::in_print}, {-22, Seen::in_print}, {-38, Seen::memory}, {-56, Seen::memory}, 0},
  {750, {22, Seen::in_print}, {-22, Seen::in_print}, {-38, Seen::memory}, {-56, Seen::memory}, 0},
  {800, {24, Seen::in_print}, {-24, Seen::in_print}, {-38, Seen::memory}, {-60, Seen::memory}, 0},
  {1000, {26, Seen::in_print}, {-26, Seen::in_print}, {-40, Seen::memory}, {-60, Seen::memory}, 0},
  {1250, {28, Seen::in_print}, {-28, Seen::in_print}, {-42, Seen::memory}, {-63, Seen::memory}, 0},
  {1500, {32, Seen::in_print}, {-32, Seen::in_print}, {-45, Seen::memory}, {-67, Seen::memory}, 0},
  {1750, {34, Seen::in_print}, {-34, Seen::in_print}, {-48, Seen::memory}, {-71, Seen::memory}, 0},
  {2000, {38, Seen::in_print}, {-38, Seen::in_print}, {-52, Seen::memory}, {-71, Seen::memory}, 0},
  {2500, {42, Seen::memory}, {-42, Seen::memory}, {-58, Seen::memory}, {-80, Seen::memory}, 0},
  {3000, {48, Seen::memory}, {-48, Seen::memory}, {-63, Seen::memory}, {-85, Seen::memory}, 0},
  {3500, {53, Seen::memory}, {-53, Seen::memory}, {-70, Seen::memory}, {-90, Seen::memory}, 0},
  {4000, {60, Seen::memory}, {-60, Seen::memory}, {-75, Seen::memory}, {-95, Seen::memory}, 0},
  {4500, {63, Seen::memory}, {-63, Seen::memory}, {-80, Seen::memory}, {-100, Seen::memory}, 0},
  {5000, {71, Seen::memory}, {-71, Seen::memory}, {-85, Seen::memory}, {-106, Seen::memory}, 0},
  {5500, {75, Seen::memory}, {-75, Seen::memory}, {-90, Seen::memory}, {-112, Seen::memory}, 0},
  {6000, {80, Seen::memory}, {-80, Seen::memory}, {-95, Seen::memory}, {-118, Seen::memory}, 0},
};

/// Tolerances of the minor diameter of internal threads and the major diameter of external threads.
struct CrestTolerance {
  TableLength pitch;         ///< pitch P, m
  Graded minor_internal[5];  ///< T_D1 for grades 4 to 8; index is grade - 4
  Graded major_external[5];  ///< T_d for grades 4, 6 and 8; index is grade - 4
  unsigned char source;      ///< index into tolerance_sources
};

inline constexpr CrestTolerance crest_tolerances[] = {
  {200, {{38, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{36, Seen::memory}, {TableLength::none, Seen::memory}, {56, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {250, {{45, Seen::memory}, {56, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{42, Seen::memory}, {TableLength::none, Seen::memory}, {67, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {300, {{53, Seen::memory}, {67, Seen::memory}, {85, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{48, Seen::memory}, {TableLength::none, Seen::memory}, {75, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {350, {{63, Seen::memory}, {80, Seen::memory}, {100, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{53, Seen::memory}, {TableLength::none, Seen::memory}, {85, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {400, {{71, Seen::memory}, {90, Seen::memory}, {112, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{60, Seen::memory}, {TableLength::none, Seen::memory}, {95, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {450, {{80, Seen::memory}, {100, Seen::memory}, {125, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{63, Seen::memory}, {TableLength::none, Seen::memory}, {100, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {500, {{90, Seen::memory}, {112, Seen::memory}, {140, Seen::in_print}, {180, Seen::memory}, {TableLength::none, Seen::memory}}, {{67, Seen::memory}, {TableLength::none, Seen::memory}, {106, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {600, {{100, Seen::memory}, {125, Seen::memory}, {160, Seen::in_print}, {200, Seen::memory}, {TableLength::none, Seen::memory}}, {{80, Seen::memory}, {TableLength::none, Seen::memory}, {125, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {700, {{112, Seen::memory}, {140, Seen::memory}, {180, Seen::in_print}, {224, Seen::memory}, {TableLength::none, Seen::memory}}, {{90, Seen::memory}, {TableLength::none, Seen::memory}, {140, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {750, {{118, Seen::memory}, {150, Seen::memory}, {190, Seen::in_print}, {236, Seen::memory}, {TableLength::none, Seen::memory}}, {{90, Seen::memory}, {TableLength::none, Seen::memory}, {140, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 1},
  {800, {{125, Seen::memory}, {160, Seen::memory}, {200, Seen::in_print}, {250, Seen::memory}, {315, Seen::memory}}, {{95, Seen::memory}, {TableLength::none, Seen::memory}, {150, Seen::in_print}, {TableLength::none, Seen::memory}, {236, Seen::memory}}, 1},
  {1000, {{150, Seen::memory}, {190, Seen::memory}, {236, Seen::in_print}, {300, Seen::memory}, {375, Seen::memory}}, {{112, Seen::memory}, {TableLength::none, Seen::memory}, {180, Seen::in_print}, {TableLength::none, Seen::memory}, {280, Seen::memory}}, 1},
  {1250, {{170, Seen::memory}, {212, Seen::memory}, {265, Seen::in_print}, {335, Seen::memory}, {425, Seen::memory}}, {{132, Seen::memory}, {TableLength::none, Seen::memory}, {212, Seen::in_print}, {TableLength::none, Seen::memory}, {335, Seen::memory}}, 1},
  {1500, {{190, Seen::memory}, {236, Seen::memory}, {300, Seen::in_print}, {375, Seen::memory}, {475, Seen::memory}}, {{150, Seen::memory}, {TableLength::none, Seen::memory}, {236, Seen::in_print}, {TableLength::none, Seen::memory}, {375, Seen::memory}}, 1},
  {1750, {{212, Seen::memory}, {265, Seen::memory}, {335, Seen::in_print}, {425, Seen::memory}, {530, Seen::memory}}, {{170, Seen::memory}, {TableLength::none, Seen::memory}, {265, Seen::in_print}, {TableLength::none, Seen::memory}, {425, Seen::memory}}, 1},
  {2000, {{236, Seen::memory}, {300, Seen::memory}, {375, Seen::in_print}, {475, Seen::memory}, {600, Seen::memory}}, {{180, Seen::memory}, {TableLength::none, Seen::memory}, {280, Seen::in_print}, {TableLength::none, Seen::memory}, {450, Seen::memory}}, 1},
  {2500, {{280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}, {560, Seen::memory}, {710, Seen::memory}}, {{212, Seen::memory}, {TableLength::none, Seen::memory}, {335, Seen::memory}, {TableLength::none, Seen::memory}, {530, Seen::memory}}, 1},
  {3000, {{315, Seen::memory}, {400, Seen::memory}, {500, Seen::memory}, {630, Seen::memory}, {800, Seen::memory}}, {{236, Seen::memory}, {TableLength::none, Seen::memory}, {375, Seen::memory}, {TableLength::none, Seen::memory}, {600, Seen::memory}}, 1},
  {3500, {{355, Seen::memory}, {450, Seen::memory}, {560, Seen::memory}, {710, Seen::memory}, {900, Seen::memory}}, {{265, Seen::memory}, {TableLength::none, Seen::memory}, {425, Seen::memory}, {TableLength::none, Seen::memory}, {670, Seen::memory}}, 1},
  {4000, {{375, Seen::memory}, {475, Seen::memory}, {600, Seen::memory}, {750, Seen::memory}, {950, Seen::memory}}, {{300, Seen::memory}, {TableLength::none, Seen::memory}, {475, Seen::memory}, {TableLength::none, Seen::memory}, {750, Seen::memory}}, 1},
  {4500, {{425, Seen::memory}, {530, Seen::memory}, {670, Seen::memory}, {850, Seen::memory}, {1060, Seen::memory}}, {{315, Seen::memory}, {TableLength::none, Seen::memory}, {500, Seen::memory}, {TableLength::none, Seen::memory}, {800, Seen::memory}}, 1},
  {5000, {{450, Seen::memory}, {560, Seen::memory}, {710, Seen::memory}, {900, Seen::memory}, {1120, Seen::memory}}, {{335, Seen::memory}, {TableLength::none, Seen::memory}, {530, Seen::memory}, {TableLength::none, Seen::memory}, {850, Seen::memory}}, 1},
  {5500, {{475, Seen::memory}, {600, Seen::memory}, {750, Seen::memory}, {950, Seen::memory}, {1180, Seen::memory}}, {{355, Seen::memory}, {TableLength::none, Seen::memory}, {560, Seen::memory}, {TableLength::none, Seen::memory}, {900, Seen::memory}}, 1},
  {6000, {{500, Seen::memory}, {630, Seen::memory}, {800, Seen::memory}, {1000, Seen::memory}, {1250, Seen::memory}}, {{375, Seen::memory}, {TableLength::none, Seen::memory}, {600, Seen::memory}, {TableLength::none, Seen::memory}, {950, Seen::memory}}, 1},
};

/// Tolerances of the pitch diameter.
struct PitchTolerance {
  TableLength diameter_above;  ///< nominal diameter above, m
  TableLength diameter_to;     ///< nominal diameter up to and including, m
  TableLength pitch;           ///< pitch P, m
  Graded external[7];          ///< T_d2 for grades 3 to 9; index is grade - 3
  Graded internal[5];          ///< T_D2 for grades 4 to 8; index is grade - 4
  unsigned char source;        ///< index into tolerance_sources
};

inline constexpr PitchTolerance pitch_tolerances[] = {
  {990, 1400, 200, {{24, Seen::memory}, {30, Seen::in_print}, {38, Seen::memory}, {48, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{40, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {990, 1400, 250, {{26, Seen::memory}, {34, Seen::in_print}, {42, Seen::memory}, {53, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{45, Seen::in_print}, {56, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {990, 1400, 300, {{28, Seen::memory}, {36, Seen::in_print}, {45, Seen::memory}, {56, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{48, Seen::in_print}, {60, Seen::memory}, {75, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {1400, 2800, 200, {{25, Seen::memory}, {32, Seen::in_print}, {40, Seen::memory}, {50, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{42, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {1400, 2800, 250, {{28, Seen::memory}, {36, Seen::in_print}, {45, Seen::memory}, {56, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{48, Seen::in_print}, {60, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {1400, 2800, 350, {{32, Seen::memory}, {40, Seen::in_print}, {50, Seen::memory}, {63, Seen::in_print}, {80, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{53, Seen::in_print}, {67, Seen::memory}, {85, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {1400, 2800, 400, {{34, Seen::memory}, {42, Seen::in_print}, {53, Seen::memory}, {67, Seen::in_print}, {85, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{56, Seen::in_print}, {71, Seen::memory}, {90, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {1400, 2800, 450, {{36, Seen::memory}, {45, Seen::in_print}, {56, Seen::memory}, {71, Seen::in_print}, {90, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{60, Seen::in_print}, {75, Seen::memory}, {95, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 350, {{34, Seen::memory}, {42, Seen::in_print}, {53, Seen::memory}, {67, Seen::in_print}, {85, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{56, Seen::in_print}, {71, Seen::memory}, {90, Seen::in_print}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 500, {{38, Seen::memory}, {48, Seen::in_print}, {60, Seen::memory}, {75, Seen::in_print}, {95, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{63, Seen::in_print}, {80, Seen::memory}, {100, Seen::in_print}, {125, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 600, {{42, Seen::memory}, {53, Seen::in_print}, {67, Seen::memory}, {85, Seen::in_print}, {106, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{71, Seen::in_print}, {90, Seen::memory}, {112, Seen::in_print}, {140, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 700, {{45, Seen::memory}, {56, Seen::in_print}, {71, Seen::memory}, {90, Seen::in_print}, {112, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{75, Seen::in_print}, {95, Seen::memory}, {118, Seen::in_print}, {150, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 750, {{45, Seen::memory}, {56, Seen::in_print}, {71, Seen::memory}, {90, Seen::in_print}, {112, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{75, Seen::in_print}, {95, Seen::memory}, {118, Seen::in_print}, {150, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {2800, 5600, 800, {{48, Seen::memory}, {60, Seen::in_print}, {75, Seen::memory}, {95, Seen::in_print}, {118, Seen::memory}, {150, Seen::memory}, {190, Seen::memory}}, {{80, Seen::in_print}, {100, Seen::memory}, {125, Seen::in_print}, {160, Seen::memory}, {200, Seen::memory}}, 2},
  {5600, 11200, 750, {{50, Seen::memory}, {63, Seen::in_print}, {80, Seen::memory}, {100, Seen::in_print}, {125, Seen::memory}, {TableLength::none, Seen::memory}, {TableLength::none, Seen::memory}}, {{85, Seen::in_print}, {106, Seen::memory}, {132, Seen::in_print}, {170, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {5600, 11200, 1000, {{56, Seen::memory}, {71, Seen::in_print}, {90, Seen::memory}, {112, Seen::in_print}, {140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}}, {{95, Seen::in_print}, {118, Seen::memory}, {150, Seen::in_print}, {190, Seen::memory}, {236, Seen::memory}}, 2},
  {5600, 11200, 1250, {{60, Seen::memory}, {75, Seen::in_print}, {95, Seen::memory}, {118, Seen::in_print}, {150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}}, {{100, Seen::in_print}, {125, Seen::memory}, {160, Seen::in_print}, {200, Seen::memory}, {250, Seen::memory}}, 2},
  {5600, 11200, 1500, {{67, Seen::memory}, {85, Seen::in_print}, {106, Seen::memory}, {132, Seen::in_print}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}}, {{112, Seen::in_print}, {140, Seen::memory}, {180, Seen::in_print}, {224, Seen::memory}, {280, Seen::memory}}, 2},
  {11200, 22400, 1000, {{60, Seen::memory}, {75, Seen::memory}, {95, Seen::memory}, {118, Seen::memory}, {150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}}, {{100, Seen::memory}, {125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}}, 2},
  {11200, 22400, 1250, {{67, Seen::memory}, {85, Seen::memory}, {106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}}, {{112, Seen::memory}, {140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}}, 2},
  {11200, 22400, 1500, {{71, Seen::memory}, {90, Seen::memory}, {112, Seen::memory}, {140, Seen::in_print}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}}, {{118, Seen::memory}, {150, Seen::memory}, {190, Seen::in_print}, {236, Seen::memory}, {300, Seen::memory}}, 2},
  {11200, 22400, 1750, {{75, Seen::memory}, {95, Seen::memory}, {118, Seen::memory}, {150, Seen::once}, {190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}}, {{125, Seen::memory}, {160, Seen::memory}, {200, Seen::in_print}, {250, Seen::memory}, {315, Seen::memory}}, 2},
  {11200, 22400, 2000, {{80, Seen::memory}, {100, Seen::memory}, {125, Seen::memory}, {160, Seen::in_print}, {200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}}, {{132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}}, 2},
  {11200, 22400, 2500, {{85, Seen::memory}, {106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}}, {{140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}}, 2},
  {22400, 45000, 1000, {{63, Seen::memory}, {80, Seen::memory}, {100, Seen::memory}, {125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}}, {{106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {TableLength::none, Seen::memory}}, 2},
  {22400, 45000, 1500, {{75, Seen::memory}, {95, Seen::memory}, {118, Seen::memory}, {150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}}, {{125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}}, 2},
  {22400, 45000, 2000, {{85, Seen::memory}, {106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}}, {{140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}}, 2},
  {22400, 45000, 3000, {{100, Seen::memory}, {125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}, {400, Seen::memory}}, {{170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}, {425, Seen::memory}}, 2},
  {22400, 45000, 3500, {{106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}, {425, Seen::memory}}, {{180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}}, 2},
  {22400, 45000, 4000, {{112, Seen::memory}, {140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}}, {{190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}, {375, Seen::memory}, {475, Seen::memory}}, 2},
  {22400, 45000, 4500, {{118, Seen::memory}, {150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}, {375, Seen::memory}, {475, Seen::memory}}, {{200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}, {400, Seen::memory}, {500, Seen::memory}}, 2},
  {45000, 90000, 1500, {{80, Seen::memory}, {100, Seen::memory}, {125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}}, {{132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}}, 2},
  {45000, 90000, 2000, {{90, Seen::memory}, {112, Seen::memory}, {140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}}, {{150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}, {375, Seen::memory}}, 2},
  {45000, 90000, 3000, {{106, Seen::memory}, {132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}, {425, Seen::memory}}, {{180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}}, 2},
  {45000, 90000, 4000, {{118, Seen::memory}, {150, Seen::memory}, {190, Seen::memory}, {236, Seen::memory}, {300, Seen::memory}, {375, Seen::memory}, {475, Seen::memory}}, {{200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}, {400, Seen::memory}, {500, Seen::memory}}, 2},
  {45000, 90000, 5000, {{125, Seen::memory}, {160, Seen::memory}, {200, Seen::memory}, {250, Seen::memory}, {315, Seen::memory}, {400, Seen::memory}, {500, Seen::memory}}, {{212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}, {425, Seen::memory}, {530, Seen::memory}}, 2},
  {45000, 90000, 5500, {{132, Seen::memory}, {170, Seen::memory}, {212, Seen::memory}, {265, Seen::memory}, {335, Seen::memory}, {425, Seen::memory}, {530, Seen::memory}}, {{224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}, {560, Seen::memory}}, 2},
  {45000, 90000, 6000, {{140, Seen::memory}, {180, Seen::memory}, {224, Seen::memory}, {280, Seen::memory}, {355, Seen::memory}, {450, Seen::memory}, {560, Seen::memory}}, {{236, Seen::memory}, {300, Seen::memory}, {375, Seen::memory}, {475, Seen::memory}, {600, Seen::memory}}, 2},
};

/// Threads whose 6g and 6H limits of size were compared with printed ones.
struct ConfirmedLimits {
  const char* designation;  ///< thread: "M8", "M10x1.25"
  TableLength diameter;     ///< nominal diameter d, m
  TableLength pitch;        ///< pitch P, m
  Seen bolt_6g;             ///< how the 6g limits were seen
  Seen nut_6H;              ///< how the 6H limits were seen
  unsigned char source;     ///< index into tolerance_sources
};

inline constexpr ConfirmedLimits confirmed_limits[] = {
  {"M2.5", 2500, 450, Seen::in_print, Seen::memory, 3},
  {"M3", 3000, 500, Seen::in_print, Seen::memory, 3},
  {"M5", 5000, 800, Seen::in_print, Seen::memory, 3},
  {"M6", 6000, 1000, Seen::in_print, Seen::memory, 3},
  {"M7", 7000, 1000, Seen::in_print, Seen::memory, 3},
  {"M8", 8000, 1250, Seen::in_print, Seen::memory, 3},
  {"M10", 10000, 1500, Seen::in_print, Seen::in_print, 4},
  {"M12", 12000, 1750, Seen::once, Seen::in_print, 5},
  {"M16", 16000, 2000, Seen::memory, Seen::memory, 6},
  {"M20", 20000, 2500, Seen::memory, Seen::memory, 6},
  {"M22", 22000, 2500, Seen::memory, Seen::memory, 6},
  {"M27", 27000, 3000, Seen::memory, Seen::memory, 6},
  {"M30", 30000, 3500, Seen::memory, Seen::memory, 6},
  {"M33", 33000, 3500, Seen::memory, Seen::memory, 6},
  {"M36", 36000, 4000, Seen::memory, Seen::memory, 6},
  {"M48", 48000, 5000, Seen::memory, Seen::memory, 6},
  {"M56", 56000, 5500, Seen::memory, Seen::memory, 6},
  {"M64", 64000, 6000, Seen::memory, Seen::memory, 6},
  {"M8x1", 8000, 1000, Seen::in_print, Seen::memory, 3},
  {"M10x1.25", 10000, 1250, Seen::in_print, Seen::in_print, 4},
  {"M12x1.5", 12000, 1500, Seen::in_print, Seen::in_print, 4},
  {"M14x1.5", 14000, 1500, Seen::in_print, Seen::in_print, 4},
  {"M16x1.5", 16000, 1500, Seen::in_print, Seen::memory, 3},
  {"M18x1.5", 18000, 1500, Seen::in_print, Seen::memory, 3},
  {"M18x2", 18000, 2000, Seen::in_print, Seen::memory, 3},
  {"M20x1.5", 20000, 1500, Seen::in_print, Seen::memory, 3},
  {"M20x2", 20000, 2000, Seen::in_print, Seen::memory, 3},
  {"M22x1.5", 22000, 1500, Seen::in_print, Seen::memory, 3},
  {"M22x2", 22000, 2000, Seen::in_print, Seen::memory, 3},
  {"M27x2", 27000, 2000, Seen::memory, Seen::memory, 6},
  {"M30x2", 30000, 2000, Seen::memory, Seen::memory, 6},
};

}  // namespace tauten::TAUTEN_ABI::table
