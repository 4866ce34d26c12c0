// Strength of a bolt away from room temperature.
#pragma once

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// Service temperatures between which ISO 898-1 lets the strengths of its classes hold, as differences to 20 degrees
/// Celsius: -50 to +150 degrees. Above, strength and modulus fall; below, steel may become brittle.
inline constexpr Quantity<Dim::temperature> coldest_service{-70};
inline constexpr Quantity<Dim::temperature> hottest_service{130};

/// Share of the room-temperature strength that a hot bolt has: R_p0.2 of class 8.8 at 20, 100, 200, 250, 300 degrees
/// Celsius (ISO 898-1:1999, Annex A, from memory), and falling on beyond (judgement).
/// \param rise  above 20 degrees Celsius
inline double hot_strength(Quantity<Dim::temperature> rise) noexcept {
  constexpr double at[] = {0, 80, 180, 230, 280, 405, 580};
  constexpr double share[] = {1, 590.0 / 640, 540.0 / 640, 510.0 / 640, 480.0 / 640, 0.5, 0.2};
  if (rise.si <= 0) return 1;
  for (int i = 1; i < 7; ++i)
    if (rise.si < at[i]) return share[i - 1] + (share[i] - share[i - 1]) * (rise.si - at[i - 1]) / (at[i] - at[i - 1]);
  return share[6];
}

/// The same for austenitic steel: R_p0.2 falls to 85, 80, 75 and 70 % at 100, 200, 300 and 400 degrees Celsius (ISO
/// 3506-1, Annex on elevated temperatures, from memory); half of it from 700 degrees on (judgement).
inline double hot_strength_austenitic(Quantity<Dim::temperature> rise) noexcept {
  constexpr double at[] = {0, 80, 180, 280, 380, 680};
  constexpr double share[] = {1, 0.85, 0.80, 0.75, 0.70, 0.5};
  if (rise.si <= 0) return 1;
  for (int i = 1; i < 6; ++i)
    if (rise.si < at[i]) return share[i - 1] + (share[i] - share[i - 1]) * (rise.si - at[i - 1]) / (at[i] - at[i - 1]);
  return share[5];
}

}  // namespace tauten::TAUTEN_ABI
