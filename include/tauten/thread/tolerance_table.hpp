// Generated from src/tables/tolerance_deviation.csv, src/tables/tolerance_crest.csv, src/tables/tolerance_pitch.csv, src/tables/tolerance_limits.csv by src/tables/generate.py; do not edit.
// clang-format off
// Deviations and tolerances of ISO metric threads.
#pragma once

#include <tauten/base/source.hpp>

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
  double pitch;          ///< pitch P, m
  Graded G;              ///< lower deviation EI of internal threads, position G
  Graded g;              ///< upper deviation es of external threads, position g
  Graded f;              ///< upper deviation es of external threads, position f
  Graded e;              ///< upper deviation es of external threads, position e
  unsigned char source;  ///< index into tolerance_sources
};

inline constexpr FundamentalDeviation fundamental_deviations[] = {
  {0.2e-3, {17e-6, Seen::memory}, {-17e-6, Seen::memory}, {-32e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.25e-3, {18e-6, Seen::memory}, {-18e-6, Seen::memory}, {-33e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.3e-3, {18e-6, Seen::memory}, {-18e-6, Seen::memory}, {-33e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.35e-3, {19e-6, Seen::in_print}, {-19e-6, Seen::in_print}, {-34e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.4e-3, {19e-6, Seen::in_print}, {-19e-6, Seen::in_print}, {-34e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.45e-3, {20e-6, Seen::in_print}, {-20e-6, Seen::in_print}, {-35e-6, Seen::memory}, {absent, Seen::memory}, 0},
  {0.5e-3, {20e-6, Seen::in_print}, {-20e-6, Seen::in_print}, {-36e-6, Seen::memory}, {-50e-6, Seen::memory}, 0},
  {0.6e-3, {21e-6, Seen::in_print}, {-21e-6, Seen::in_print}, {-36e-6, Seen::memory}, {-53e-6, Seen::memory}, 0},
  {0.7e-3, {22e-6, Seen::in_print}, {-22e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-56e-6, Seen::memory}, 0},
  {0.75e-3, {22e-6, Seen::in_print}, {-22e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-56e-6, Seen::memory}, 0},
  {0.8e-3, {24e-6, Seen::in_print}, {-24e-6, Seen::in_print}, {-38e-6, Seen::memory}, {-60e-6, Seen::memory}, 0},
  {1e-3, {26e-6, Seen::in_print}, {-26e-6, Seen::in_print}, {-40e-6, Seen::memory}, {-60e-6, Seen::memory}, 0},
  {1.25e-3, {28e-6, Seen::in_print}, {-28e-6, Seen::in_print}, {-42e-6, Seen::memory}, {-63e-6, Seen::memory}, 0},
  {1.5e-3, {32e-6, Seen::in_print}, {-32e-6, Seen::in_print}, {-45e-6, Seen::memory}, {-67e-6, Seen::memory}, 0},
  {1.75e-3, {34e-6, Seen::in_print}, {-34e-6, Seen::in_print}, {-48e-6, Seen::memory}, {-71e-6, Seen::memory}, 0},
  {2e-3, {38e-6, Seen::in_print}, {-38e-6, Seen::in_print}, {-52e-6, Seen::memory}, {-71e-6, Seen::memory}, 0},
  {2.5e-3, {42e-6, Seen::memory}, {-42e-6, Seen::memory}, {-58e-6, Seen::memory}, {-80e-6, Seen::memory}, 0},
  {3e-3, {48e-6, Seen::memory}, {-48e-6, Seen::memory}, {-63e-6, Seen::memory}, {-85e-6, Seen::memory}, 0},
  {3.5e-3, {53e-6, Seen::memory}, {-53e-6, Seen::memory}, {-70e-6, Seen::memory}, {-90e-6, Seen::memory}, 0},
  {4e-3, {60e-6, Seen::memory}, {-60e-6, Seen::memory}, {-75e-6, Seen::memory}, {-95e-6, Seen::memory}, 0},
  {4.5e-3, {63e-6, Seen::memory}, {-63e-6, Seen::memory}, {-80e-6, Seen::memory}, {-100e-6, Seen::memory}, 0},
  {5e-3, {71e-6, Seen::memory}, {-71e-6, Seen::memory}, {-85e-6, Seen::memory}, {-106e-6, Seen::memory}, 0},
  {5.5e-3, {75e-6, Seen::memory}, {-75e-6, Seen::memory}, {-90e-6, Seen::memory}, {-112e-6, Seen::memory}, 0},
  {6e-3, {80e-6, Seen::memory}, {-80e-6, Seen::memory}, {-95e-6, Seen::memory}, {-118e-6, Seen::memory}, 0},
};

/// Tolerances of the minor diameter of internal threads and the major diameter of external threads.
struct CrestTolerance {
  double pitch;              ///< pitch P, m
  Graded minor_internal[5];  ///< T_D1 for grades 4 to 8; index is grade - 4
  Graded major_external[5];  ///< T_d for grades 4, 6 and 8; index is grade - 4
  unsigned char source;      ///< index into tolerance_sources
};

inline constexpr CrestTolerance crest_tolerances[] = {
  {0.2e-3, {{38e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{36e-6, Seen::memory}, {absent, Seen::memory}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.25e-3, {{45e-6, Seen::memory}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{42e-6, Seen::memory}, {absent, Seen::memory}, {67e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.3e-3, {{53e-6, Seen::memory}, {67e-6, Seen::memory}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::memory}, {absent, Seen::memory}, {75e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.35e-3, {{63e-6, Seen::memory}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{53e-6, Seen::memory}, {absent, Seen::memory}, {85e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.4e-3, {{71e-6, Seen::memory}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{60e-6, Seen::memory}, {absent, Seen::memory}, {95e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.45e-3, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, {{63e-6, Seen::memory}, {absent, Seen::memory}, {100e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.5e-3, {{90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::in_print}, {180e-6, Seen::memory}, {absent, Seen::memory}}, {{67e-6, Seen::memory}, {absent, Seen::memory}, {106e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.6e-3, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {absent, Seen::memory}}, {{80e-6, Seen::memory}, {absent, Seen::memory}, {125e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.7e-3, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::in_print}, {224e-6, Seen::memory}, {absent, Seen::memory}}, {{90e-6, Seen::memory}, {absent, Seen::memory}, {140e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.75e-3, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::in_print}, {236e-6, Seen::memory}, {absent, Seen::memory}}, {{90e-6, Seen::memory}, {absent, Seen::memory}, {140e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 1},
  {0.8e-3, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::in_print}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{95e-6, Seen::memory}, {absent, Seen::memory}, {150e-6, Seen::in_print}, {absent, Seen::memory}, {236e-6, Seen::memory}}, 1},
  {1e-3, {{150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::in_print}, {300e-6, Seen::memory}, {375e-6, Seen::memory}}, {{112e-6, Seen::memory}, {absent, Seen::memory}, {180e-6, Seen::in_print}, {absent, Seen::memory}, {280e-6, Seen::memory}}, 1},
  {1.25e-3, {{170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::in_print}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{132e-6, Seen::memory}, {absent, Seen::memory}, {212e-6, Seen::in_print}, {absent, Seen::memory}, {335e-6, Seen::memory}}, 1},
  {1.5e-3, {{190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::in_print}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{150e-6, Seen::memory}, {absent, Seen::memory}, {236e-6, Seen::in_print}, {absent, Seen::memory}, {375e-6, Seen::memory}}, 1},
  {1.75e-3, {{212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::in_print}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, {{170e-6, Seen::memory}, {absent, Seen::memory}, {265e-6, Seen::in_print}, {absent, Seen::memory}, {425e-6, Seen::memory}}, 1},
  {2e-3, {{236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::in_print}, {475e-6, Seen::memory}, {600e-6, Seen::memory}}, {{180e-6, Seen::memory}, {absent, Seen::memory}, {280e-6, Seen::in_print}, {absent, Seen::memory}, {450e-6, Seen::memory}}, 1},
  {2.5e-3, {{280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}}, {{212e-6, Seen::memory}, {absent, Seen::memory}, {335e-6, Seen::memory}, {absent, Seen::memory}, {530e-6, Seen::memory}}, 1},
  {3e-3, {{315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}, {630e-6, Seen::memory}, {800e-6, Seen::memory}}, {{236e-6, Seen::memory}, {absent, Seen::memory}, {375e-6, Seen::memory}, {absent, Seen::memory}, {600e-6, Seen::memory}}, 1},
  {3.5e-3, {{355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}, {900e-6, Seen::memory}}, {{265e-6, Seen::memory}, {absent, Seen::memory}, {425e-6, Seen::memory}, {absent, Seen::memory}, {670e-6, Seen::memory}}, 1},
  {4e-3, {{375e-6, Seen::memory}, {475e-6, Seen::memory}, {600e-6, Seen::memory}, {750e-6, Seen::memory}, {950e-6, Seen::memory}}, {{300e-6, Seen::memory}, {absent, Seen::memory}, {475e-6, Seen::memory}, {absent, Seen::memory}, {750e-6, Seen::memory}}, 1},
  {4.5e-3, {{425e-6, Seen::memory}, {530e-6, Seen::memory}, {670e-6, Seen::memory}, {850e-6, Seen::memory}, {1060e-6, Seen::memory}}, {{315e-6, Seen::memory}, {absent, Seen::memory}, {500e-6, Seen::memory}, {absent, Seen::memory}, {800e-6, Seen::memory}}, 1},
  {5e-3, {{450e-6, Seen::memory}, {560e-6, Seen::memory}, {710e-6, Seen::memory}, {900e-6, Seen::memory}, {1120e-6, Seen::memory}}, {{335e-6, Seen::memory}, {absent, Seen::memory}, {530e-6, Seen::memory}, {absent, Seen::memory}, {850e-6, Seen::memory}}, 1},
  {5.5e-3, {{475e-6, Seen::memory}, {600e-6, Seen::memory}, {750e-6, Seen::memory}, {950e-6, Seen::memory}, {1180e-6, Seen::memory}}, {{355e-6, Seen::memory}, {absent, Seen::memory}, {560e-6, Seen::memory}, {absent, Seen::memory}, {900e-6, Seen::memory}}, 1},
  {6e-3, {{500e-6, Seen::memory}, {630e-6, Seen::memory}, {800e-6, Seen::memory}, {1000e-6, Seen::memory}, {1250e-6, Seen::memory}}, {{375e-6, Seen::memory}, {absent, Seen::memory}, {600e-6, Seen::memory}, {absent, Seen::memory}, {950e-6, Seen::memory}}, 1},
};

/// Tolerances of the pitch diameter.
struct PitchTolerance {
  double diameter_above;  ///< nominal diameter above, m
  double diameter_to;     ///< nominal diameter up to and including, m
  double pitch;           ///< pitch P, m
  Graded external[7];     ///< T_d2 for grades 3 to 9; index is grade - 3
  Graded internal[5];     ///< T_D2 for grades 4 to 8; index is grade - 4
  unsigned char source;   ///< index into tolerance_sources
};

inline constexpr PitchTolerance pitch_tolerances[] = {
  {0.99e-3, 1.4e-3, 0.2e-3, {{24e-6, Seen::memory}, {30e-6, Seen::in_print}, {38e-6, Seen::memory}, {48e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{40e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {0.99e-3, 1.4e-3, 0.25e-3, {{26e-6, Seen::memory}, {34e-6, Seen::in_print}, {42e-6, Seen::memory}, {53e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{45e-6, Seen::in_print}, {56e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {0.99e-3, 1.4e-3, 0.3e-3, {{28e-6, Seen::memory}, {36e-6, Seen::in_print}, {45e-6, Seen::memory}, {56e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::in_print}, {60e-6, Seen::memory}, {75e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1.4e-3, 2.8e-3, 0.2e-3, {{25e-6, Seen::memory}, {32e-6, Seen::in_print}, {40e-6, Seen::memory}, {50e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{42e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1.4e-3, 2.8e-3, 0.25e-3, {{28e-6, Seen::memory}, {36e-6, Seen::in_print}, {45e-6, Seen::memory}, {56e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{48e-6, Seen::in_print}, {60e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1.4e-3, 2.8e-3, 0.35e-3, {{32e-6, Seen::memory}, {40e-6, Seen::in_print}, {50e-6, Seen::memory}, {63e-6, Seen::in_print}, {80e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{53e-6, Seen::in_print}, {67e-6, Seen::memory}, {85e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1.4e-3, 2.8e-3, 0.4e-3, {{34e-6, Seen::memory}, {42e-6, Seen::in_print}, {53e-6, Seen::memory}, {67e-6, Seen::in_print}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {1.4e-3, 2.8e-3, 0.45e-3, {{36e-6, Seen::memory}, {45e-6, Seen::in_print}, {56e-6, Seen::memory}, {71e-6, Seen::in_print}, {90e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{60e-6, Seen::in_print}, {75e-6, Seen::memory}, {95e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.35e-3, {{34e-6, Seen::memory}, {42e-6, Seen::in_print}, {53e-6, Seen::memory}, {67e-6, Seen::in_print}, {85e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {absent, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.5e-3, {{38e-6, Seen::memory}, {48e-6, Seen::in_print}, {60e-6, Seen::memory}, {75e-6, Seen::in_print}, {95e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{63e-6, Seen::in_print}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {125e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.6e-3, {{42e-6, Seen::memory}, {53e-6, Seen::in_print}, {67e-6, Seen::memory}, {85e-6, Seen::in_print}, {106e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{71e-6, Seen::in_print}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {140e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.7e-3, {{45e-6, Seen::memory}, {56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {112e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.75e-3, {{45e-6, Seen::memory}, {56e-6, Seen::in_print}, {71e-6, Seen::memory}, {90e-6, Seen::in_print}, {112e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {2.8e-3, 5.6e-3, 0.8e-3, {{48e-6, Seen::memory}, {60e-6, Seen::in_print}, {75e-6, Seen::memory}, {95e-6, Seen::in_print}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}}, {{80e-6, Seen::in_print}, {100e-6, Seen::memory}, {125e-6, Seen::in_print}, {160e-6, Seen::memory}, {200e-6, Seen::memory}}, 2},
  {5.6e-3, 11.2e-3, 0.75e-3, {{50e-6, Seen::memory}, {63e-6, Seen::in_print}, {80e-6, Seen::memory}, {100e-6, Seen::in_print}, {125e-6, Seen::memory}, {absent, Seen::memory}, {absent, Seen::memory}}, {{85e-6, Seen::in_print}, {106e-6, Seen::memory}, {132e-6, Seen::in_print}, {170e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {5.6e-3, 11.2e-3, 1e-3, {{56e-6, Seen::memory}, {71e-6, Seen::in_print}, {90e-6, Seen::memory}, {112e-6, Seen::in_print}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}}, {{95e-6, Seen::in_print}, {118e-6, Seen::memory}, {150e-6, Seen::in_print}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, 2},
  {5.6e-3, 11.2e-3, 1.25e-3, {{60e-6, Seen::memory}, {75e-6, Seen::in_print}, {95e-6, Seen::memory}, {118e-6, Seen::in_print}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, {{100e-6, Seen::in_print}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, 2},
  {5.6e-3, 11.2e-3, 1.5e-3, {{67e-6, Seen::memory}, {85e-6, Seen::in_print}, {106e-6, Seen::memory}, {132e-6, Seen::in_print}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}}, {{112e-6, Seen::in_print}, {140e-6, Seen::memory}, {180e-6, Seen::in_print}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 1e-3, {{60e-6, Seen::memory}, {75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}}, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 1.25e-3, {{67e-6, Seen::memory}, {85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}}, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 1.5e-3, {{71e-6, Seen::memory}, {90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::in_print}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}}, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::in_print}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 1.75e-3, {{75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::once}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::in_print}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 2e-3, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::in_print}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, 2},
  {11.2e-3, 22.4e-3, 2.5e-3, {{85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 1e-3, {{63e-6, Seen::memory}, {80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}}, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {absent, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 1.5e-3, {{75e-6, Seen::memory}, {95e-6, Seen::memory}, {118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}}, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 2e-3, {{85e-6, Seen::memory}, {106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 3e-3, {{100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}}, {{170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 3.5e-3, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 4e-3, {{112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, {{190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, 2},
  {22.4e-3, 45e-3, 4.5e-3, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 1.5e-3, {{80e-6, Seen::memory}, {100e-6, Seen::memory}, {125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}}, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 2e-3, {{90e-6, Seen::memory}, {112e-6, Seen::memory}, {140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}}, {{150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 3e-3, {{106e-6, Seen::memory}, {132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}}, {{180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 4e-3, {{118e-6, Seen::memory}, {150e-6, Seen::memory}, {190e-6, Seen::memory}, {236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}}, {{200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 5e-3, {{125e-6, Seen::memory}, {160e-6, Seen::memory}, {200e-6, Seen::memory}, {250e-6, Seen::memory}, {315e-6, Seen::memory}, {400e-6, Seen::memory}, {500e-6, Seen::memory}}, {{212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 5.5e-3, {{132e-6, Seen::memory}, {170e-6, Seen::memory}, {212e-6, Seen::memory}, {265e-6, Seen::memory}, {335e-6, Seen::memory}, {425e-6, Seen::memory}, {530e-6, Seen::memory}}, {{224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}}, 2},
  {45e-3, 90e-3, 6e-3, {{140e-6, Seen::memory}, {180e-6, Seen::memory}, {224e-6, Seen::memory}, {280e-6, Seen::memory}, {355e-6, Seen::memory}, {450e-6, Seen::memory}, {560e-6, Seen::memory}}, {{236e-6, Seen::memory}, {300e-6, Seen::memory}, {375e-6, Seen::memory}, {475e-6, Seen::memory}, {600e-6, Seen::memory}}, 2},
};

/// Threads whose 6g and 6H limits of size were compared with printed ones.
struct ConfirmedLimits {
  const char* designation;  ///< thread: "M8", "M10x1.25"
  double diameter;          ///< nominal diameter d, m
  double pitch;             ///< pitch P, m
  Seen bolt_6g;             ///< how the 6g limits were seen
  Seen nut_6H;              ///< how the 6H limits were seen
  unsigned char source;     ///< index into tolerance_sources
};

inline constexpr ConfirmedLimits confirmed_limits[] = {
  {"M2.5", 2.5e-3, 0.45e-3, Seen::in_print, Seen::memory, 3},
  {"M3", 3e-3, 0.5e-3, Seen::in_print, Seen::memory, 3},
  {"M5", 5e-3, 0.8e-3, Seen::in_print, Seen::memory, 3},
  {"M6", 6e-3, 1e-3, Seen::in_print, Seen::memory, 3},
  {"M7", 7e-3, 1e-3, Seen::in_print, Seen::memory, 3},
  {"M8", 8e-3, 1.25e-3, Seen::in_print, Seen::memory, 3},
  {"M10", 10e-3, 1.5e-3, Seen::in_print, Seen::in_print, 4},
  {"M12", 12e-3, 1.75e-3, Seen::once, Seen::in_print, 5},
  {"M16", 16e-3, 2e-3, Seen::memory, Seen::memory, 6},
  {"M20", 20e-3, 2.5e-3, Seen::memory, Seen::memory, 6},
  {"M22", 22e-3, 2.5e-3, Seen::memory, Seen::memory, 6},
  {"M27", 27e-3, 3e-3, Seen::memory, Seen::memory, 6},
  {"M30", 30e-3, 3.5e-3, Seen::memory, Seen::memory, 6},
  {"M33", 33e-3, 3.5e-3, Seen::memory, Seen::memory, 6},
  {"M36", 36e-3, 4e-3, Seen::memory, Seen::memory, 6},
  {"M48", 48e-3, 5e-3, Seen::memory, Seen::memory, 6},
  {"M56", 56e-3, 5.5e-3, Seen::memory, Seen::memory, 6},
  {"M64", 64e-3, 6e-3, Seen::memory, Seen::memory, 6},
  {"M8x1", 8e-3, 1e-3, Seen::in_print, Seen::memory, 3},
  {"M10x1.25", 10e-3, 1.25e-3, Seen::in_print, Seen::in_print, 4},
  {"M12x1.5", 12e-3, 1.5e-3, Seen::in_print, Seen::in_print, 4},
  {"M14x1.5", 14e-3, 1.5e-3, Seen::in_print, Seen::in_print, 4},
  {"M16x1.5", 16e-3, 1.5e-3, Seen::in_print, Seen::memory, 3},
  {"M18x1.5", 18e-3, 1.5e-3, Seen::in_print, Seen::memory, 3},
  {"M18x2", 18e-3, 2e-3, Seen::in_print, Seen::memory, 3},
  {"M20x1.5", 20e-3, 1.5e-3, Seen::in_print, Seen::memory, 3},
  {"M20x2", 20e-3, 2e-3, Seen::in_print, Seen::memory, 3},
  {"M22x1.5", 22e-3, 1.5e-3, Seen::in_print, Seen::memory, 3},
  {"M22x2", 22e-3, 2e-3, Seen::in_print, Seen::memory, 3},
  {"M27x2", 27e-3, 2e-3, Seen::memory, Seen::memory, 6},
  {"M30x2", 30e-3, 2e-3, Seen::memory, Seen::memory, 6},
};

}  // namespace tauten::TAUTEN_ABI::table
