// Generated from src/tables/tolerance_deviation.csv, src/tables/tolerance_crest.csv, src/tables/tolerance_pitch.csv, src/tables/tolerance_limits.csv by src/tables/generate.py; do not edit.
// clang-format off
// Deviations and tolerances of ISO metric threads.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

namespace tauten::TAUTEN_ABI::table {

/// One figure with how it was seen.
struct Graded {
  double value;  ///< m; absent where the standard has no such grade
  Seen seen;     ///< a figure from memory must not be given as a limit
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
  {200, {17e-6, Seen::memory}, {-17e-6, Seen::memory}, {-32e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {250, {18e-6, Seen::memory}, {-18e-6, Seen::memory}, {-33e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {300, {18e-6, Seen::memory}, {-18e-6, Seen::memory}, {-33e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {350, {19e-6, Seen::in_print}, {-19e-6, Seen::in_print}, {-34e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {400, {19e-6, Seen::in_print}, {-19e-6, Seen::in_print}, {-34e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {450, {20e-6, Seen::in_print}, {-20e-6, Seen::in_print}, {-35e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {500, {20e-6, Seen::in_print}, {-20e-6, Seen::in_print}, {-36e-6, Seen::memory}, {-50e-6, Seen::memory}, 0},
  {600, {21e-6, Seen::in_print}, {-21e-6, Seen::in_print}, {-36e-6, Seen::memory}, {-53e-6, Seen::memory}, 0},
  {700, {22e-6, Seen::in_print}, {-22e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-56e-6, Seen::memory}, 0},
  {750, {22e-6, Seen::in_print}, {-22e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-56e-6, Seen::memory}, 0},
  {800, {24e-6, Seen::in_print}, {-24e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-60e-6, Seen::memory}, 0},
  {1000, {26e-6, Seen::in_print}, {-26e-6, Seen::in_print}, {-40e-6, Seen::memory}, {-60e-6, Seen::memory}, 0},
  {1250, {28e-6, Seen::in_print}, {-28e-6, Seen::in_print}, {-42e-6, Seen::memory}, {-63e-6, Seen::memory}, 0},
  {1500, {32e-6, Seen::in_print}, {-32e-6, Seen::in_print}, {-45e-6, Seen::memory}, {-67e-6, Seen::memory}, 0},
  {1750, {34e-6, Seen::in_print}, {-34e-6, Seen::in_print}, {-48e-6, Seen::memory}, {-71e-6, Seen::memory}, 0},
  {2000, {38e-6, Seen::in_print}, {-38e-6, Seen::in_print}, {-52e-6, Seen::memory}, {-71e-6, Seen::memory}, 0},
  {2500, {42e-6, Seen::memory}, {-42e-6, Seen::memory}, {-58e-6, Seen::memory}, {-80e-6, Seen::memory}, 0},
  {3000, {48e-6, Seen::memory}, {-48e-6, Seen::memory}, {-63e-6, Seen::memory}, {-85e-6, Seen::memory}, 0},
  {3500, {53e-6, Seen::memory}, {-53e-6, Seen::memory}, {-70e-6, Seen::memory}, {-90e-6, Seen::memory}, 0},
  {4000, {60e-6, Seen::memory}, {-60e-6, Seen::memory}, {-75e-6, Seen::memory}, {-95e-6, Seen::memory}, 0},
  {4500, {63e-6, Seen::memory}, {-63e-6, Seen::memory}, {-80e-6, Seen::memory}, {-100e-6, Seen::memory}, 0},
  {5000, {71e-6, Seen::memory}, {-71e-6, Seen::memory}, {-85e-6, Seen::memory}, {-106e-6, Seen::memory}, 0},
  {5500, {75e-6, Seen::memory}, {-75e-6, Seen::memory}, {-90e-6, Seen::memory}, {-112e-6, Seen::memory}, 0},
  {6000, {80e-6, Seen::memory}, {-80e-6, Seen::memory}, {-95e-6, Seen::memory}, {-118e-6, Seen::memory}, 0},
};

/// Tolerances of the minor diameter of internal threads and the major diameter of external threads.
struct CrestTolerance {
  TableLength pitch;         ///< pitch P, m
  Graded minor_internal[5];  ///< T_D1 for grades 4 to 8; index is grade - 4
  Graded major_external[5];  ///< T_d for grades 4, 6 and 8; index is grade - 4
  unsigned char source;      ///< index into tolerance_sources
};

inline constexpr CrestTolerance crest_tolerances[] = {
  {200, {{38e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{36e-6, Seen::memory}, {absent, Seen::memory}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {250, {{45e-6, Seen::memory}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{42e-6, Seen::memory}, {absent, Seen::memory}, {67e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {300, {{53e-6, Seen::memory}, {67e-6, Seen::memory}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::memory}, {absent, Seen::memory}, {75e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {350, {{63e-6, Seen::memory}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{53e-6, Seen::memory}, {absent, Seen::memory}, {85e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {400, {{71e-6, Seen::memory}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{60e-6, Seen::memory}, {absent, Seen::memory}, {95e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {450, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{63e-6, Seen::memory}, {absent, Seen::memory}, {100e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {500, {{90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::in_print}, {180e-6, Seen::memory}, {absent, Seen::memory}}, {{67e-6, Seen::memory}, {absent, Seen::memory}, {106e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {600, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {absent, Seen::memory}}, {{80e-6, Seen::memory}, {absent, Seen::memory}, {125e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {700, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::in_print}, {224e-6, Seen::memory}, {absent, Seen::memory}}, {{90e-6, Seen::memory}, {absent, Seen::memory}, {140e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {750, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::in_print}, {236e-6, Seen::memory}, {absent, Seen::memory}}, {{90e-6, Seen::memory}, {absent, Seen::memory}, {140e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {800, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::in_print}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{95e-6, Seen::memory}, {absent, Seen::memory}, {150e-6, Seen::in_print}, {absent, Seen::memory}, {236e-6, Seen::memory}}, 1},
  {1000, {{150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::in_print}, {300e-6, Seen::memory}, {375e-6, Seen::memory}}, {{112e-6, Seen::memory}, {absent, Seen::memory}, {180e-6, Seen::in_print}, {absent, Seen::memory}, {280e-6, Seen::memory}}, 1},
  {1250, {{170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::in_print}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{132e-6, Seen::memory}, {absent, Seen::memory}, {212e-6, Seen::in_print}, {absent, Seen::memory}, {335e-6, Seen::memory}}, 1},
  {1500, {{190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::in_print}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{150e-6, Seen::memory}, {absent, Seen::memory}, {236e-6, Seen::in_print}, {absent, Seen::memory}, {375e-6, Seen::memory}}, 1},
  {1750, {{212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::in_print}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, {{170e-6, Seen::memory}, {absent, Seen::memory}, {265e-6, Seen::in_print}, {absent, Seen::memory}, {425e-6, Seen::memory}}, 1},
  {2000, {{236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::in_print}, {475e-6, Seen::memory}, {600e-6, Seen::memory}}, {{180e-6, Seen::memory}, {absent, Seen::memory}, {280e-6, Seen::in_print}, {absent, Seen::memory}, {450e-6, Seen::memory}}, 1},
  {2500, {{280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}}, {{212e-6, Seen::memory}, {absent, Seen::memory}, {335e-6, Seen::memory}, {absent, Seen::memory}, {530e-6, Seen::memory}}, 1},
  {3000, {{315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}, {630e-6, Seen::memory}, {800e-6, Seen::memory}}, {{236e-6, Seen::memory}, {absent, Seen::memory}, {375e-6, Seen::memory}, {absent, Seen::memory}, {600e-6, Seen::memory}}, 1},
  {3500, {{355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}, {900e-6, Seen::memory}}, {{265e-6, Seen::memory}, {absent, Seen::memory}, {425e-6, Seen::memory}, {absent, Seen::memory}, {670e-6, Seen::memory}}, 1},
  {4000, {{375e-6, Seen::memory}, {475e-6, Seen::memory}, {600e-6, Seen::memory}, {750e-6, Seen::memory}, {950e-6, Seen::memory}}, {{300e-6, Seen::memory}, {absent, Seen::memory}, {475e-6, Seen::memory}, {absent, Seen::memory}, {750e-6, Seen::memory}}, 1},
  {4500, {{425e-6, Seen::memory}, {530e-6, Seen::memory}, {670e-6, Seen::memory}, {850e-6, Seen::memory}, {1060e-6, Seen::memory}}, {{315e-6, Seen::memory}, {absent, Seen::memory}, {500e-6, Seen::memory}, {absent, Seen::memory}, {800e-6, Seen::memory}}, 1},
  {5000, {{450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}, {900e-6, Seen::memory}, {1120e-6, Seen::memory}}, {{335e-6, Seen::memory}, {absent, Seen::memory}, {530e-6, Seen::memory}, {absent, Seen::memory}, {850e-6, Seen::memory}}, 1},
  {5500, {{475e-6, Seen::memory}, {600e-6, Seen::memory}, {750e-6, Seen::memory}, {950e-6, Seen::memory}, {1180e-6, Seen::memory}}, {{355e-6, Seen::memory}, {absent, Seen::memory}, {560e-6, Seen::memory}, {absent, Seen::memory}, {900e-6, Seen::memory}}, 1},
  {6000, {{500e-6, Seen::memory}, {630e-6, Seen::memory}, {800e-6, Seen::memory}, {1000e-6, Seen::memory}, {1250e-6, Seen::memory}}, {{375e-6, Seen::memory}, {absent, Seen::memory}, {600e-6, Seen::memory}, {absent, Seen::memory}, {950e-6, Seen::memory}}, 1},
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
  {990, 1400, 200, {{24e-6, Seen::memory}, {30e-6, Seen::in_print}, {38e-6, Seen::memory}, {48e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{40e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {990, 1400, 250, {{26e-6, Seen::memory}, {34e-6, Seen::in_print}, {42e-6, Seen::memory}, {53e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{45e-6, Seen::in_print}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {990, 1400, 300, {{28e-6, Seen::memory}, {36e-6, Seen::in_print}, {45e-6, Seen::memory}, {56e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::in_print}, {60e-6, Seen::memory}, {75e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1400, 2800, 200, {{25e-6, Seen::memory}, {32e-6, Seen::in_print}, {40e-6, Seen::memory}, {50e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{42e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1400, 2800, 250, {{28e-6, Seen::memory}, {36e-6, Seen::in_print}, {45e-6, Seen::memory}, {56e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::in_print}, {60e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1400, 2800, 350, {{32e-6, Seen::memory}, {40e-6, Seen::in_print}, {50e-6, Seen::memory}, {63e-6, Seen::in_print}, {80e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{53e-6, Seen::in_print}, {67e-6, Seen::memory}, {85e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1400, 2800, 400, {{34e-6, Seen::memory}, {42e-6, Seen::in_print}, {53e-6, Seen::memory}, {67e-6, Seen::in_print}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1400, 2800, 450, {{36e-6, Seen::memory}, {45e-6, Seen::in_print}, {56e-6, Seen::memory}, {71e-6, Seen::in_print}, {90e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{60e-6, Seen::in_print}, {75e-6, Seen::memory}, {95e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 350, {{34e-6, Seen::memory}, {42e-6, Seen::in_print}, {53e-6, Seen::memory}, {67e-6, Seen::in_print}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 500, {{38e-6, Seen::memory}, {48e-6, Seen::in_print}, {60e-6, Seen::memory}, {75e-6, Seen::in_print}, {95e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{63e-6, Seen::in_print}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {125e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 600, {{42e-6, Seen::memory}, {53e-6, Seen::in_print}, {67e-6, Seen::memory}, {85e-6, Seen::in_print}, {106e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{71e-6, Seen::in_print}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {140e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 700, {{45e-6, Seen::memory}, {56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {112e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 750, {{45e-6, Seen::memory}, {56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {112e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2800, 5600, 800, {{48e-6, Seen::memory}, {60e-6, Seen::in_print}, {75e-6, Seen::memory}, {95e-6, Seen::in_print}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}}, {{80e-6, Seen::in_print}, {100e-6, Seen::memory}, {125e-6, Seen::in_print}, {160e-6, Seen::memory}, {200e-6, Seen::memory}}, 2},
  {5600, 11200, 750, {{50e-6, Seen::memory}, {63e-6, Seen::in_print}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {125e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{85e-6, Seen::in_print}, {106e-6, Seen::memory}, {132e-6, Seen::in_print}, {170e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {5600, 11200, 1000, {{56e-6, Seen::memory}, {71e-6, Seen::in_print}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}}, {{95e-6, Seen::in_print}, {118e-6, Seen::memory}, {150e-6, Seen::in_print}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, 2},
  {5600, 11200, 1250, {{60e-6, Seen::memory}, {75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, {{100e-6, Seen::in_print}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, 2},
  {5600, 11200, 1500, {{67e-6, Seen::memory}, {85e-6, Seen::in_print}, {106e-6, Seen::memory}, {132e-6, Seen::in_print}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}}, {{112e-6, Seen::in_print}, {140e-6, Seen::memory}, {180e-6, Seen::in_print}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, 2},
  {11200, 22400, 1000, {{60e-6, Seen::memory}, {75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, 2},
  {11200, 22400, 1250, {{67e-6, Seen::memory}, {85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}}, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, 2},
  {11200, 22400, 1500, {{71e-6, Seen::memory}, {90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::in_print}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::in_print}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, 2},
  {11200, 22400, 1750, {{75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::once}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::in_print}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, 2},
  {11200, 22400, 2000, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, 2},
  {11200, 22400, 2500, {{85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, 2},
  {22400, 45000, 1000, {{63e-6, Seen::memory}, {80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {22400, 45000, 1500, {{75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, 2},
  {22400, 45000, 2000, {{85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, 2},
  {22400, 45000, 3000, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}}, {{170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, 2},
  {22400, 45000, 3500, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, 2},
  {22400, 45000, 4000, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, {{190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, 2},
  {22400, 45000, 4500, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, 2},
  {45000, 90000, 1500, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, 2},
  {45000, 90000, 2000, {{90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, {{150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}}, 2},
  {45000, 90000, 3000, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, 2},
  {45000, 90000, 4000, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, 2},
  {45000, 90000, 5000, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, {{212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, 2},
  {45000, 90000, 5500, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, {{224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}}, 2},
  {45000, 90000, 6000, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}}, {{236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}, {600e-6, Seen::memory}}, 2},
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
