// Turns of structural bolting, as tables: the turn of the nut, and the combined method.
#pragma once

#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/source.hpp"

namespace tauten::TAUTEN_ABI {

/// Rotation of the nut from snug, all steel within the grip. One row holds for lengths up to `length_to` diameters.
struct TurnOfNutRow {
  double length_to;  ///< bolt length over diameter, up to and including
  double turn[3];    ///< of 360 degrees, for no, one and two faces that slope, at most 1 in 20
};
inline constexpr Source turn_of_nut_source{"RCSC Specification for structural joints", "Table 8.2, as summarised",
                                           Seen::once};
inline constexpr TurnOfNutRow turn_of_nut_rows[] = {
    {4, {1.0 / 3, 1.0 / 2, 2.0 / 3}}, {8, {1.0 / 2, 2.0 / 3, 5.0 / 6}}, {12, {2.0 / 3, 5.0 / 6, 1.0}}};

/// Rotation from snug that structural bolts must bear in the rotational capacity test, degrees, by length over diameter.
struct RotationRow {
  double length_to;
  double degrees;
};
inline constexpr Source rotation_capacity_source{"Rotational capacity test of structural bolts", "as summarised",
                                                 Seen::once};
inline constexpr RotationRow rotation_capacity_rows[] = {{4, 240}, {8, 360}, {1e9, 420}};

/// Further turn of the second step of the combined method, classes 8.8 and 10.9. One row holds for a clamped thickness
/// below `thickness_below` diameters; the last one up to and including it.
struct CombinedMethodRow {
  double thickness_below;
  double turn;  ///< of 360 degrees
};
inline constexpr Source combined_method_source{"EN 1090-2:2008", "Table 21, as reprinted", Seen::once};
inline constexpr CombinedMethodRow combined_method_rows[] = {{2, 1.0 / 6}, {6, 1.0 / 4}, {10, 1.0 / 3}};

/// First torque of the combined method over the torque of the torque method. EN 1090-2:2008, clause 8.5.4, from memory.
inline constexpr double combined_first_torque_share = 0.75;

/// A prescribed rotation with what it may be off.
struct NutRotation {
  Angle angle{};
  Angle tolerance{};  ///< either way; 0 where the source gives none
  Source source = turn_of_nut_source;

  template <class V>
  static void fields(V&& visit) {
    visit("angle", &NutRotation::angle);
    visit("tolerance", &NutRotation::tolerance);
    visit("source", &NutRotation::source);
  }
};

namespace detail {
inline constexpr double full_turn = 2 * 3.14159265358979323846;
}

/// \param diameter, length  of the bolt
/// \param sloping_faces     how many of the two outer faces slope, at most 1 in 20: 0, 1 or 2
/// \return the rotation from snug; its tolerance (30 degrees to half a turn, 45 above) is from memory
inline Outcome<NutRotation> try_turn_of_nut(Length diameter, Length length, int sloping_faces = 0) {
  if (!is_positive(diameter)) return refusal("diameter", diameter, "but must be above 0 mm");
  if (!is_positive(length)) return refusal("length", length, "but must be above 0 mm");
  if (sloping_faces < 0 || sloping_faces > 2) return refusal("sloping_faces", sloping_faces, "but must be 0, 1 or 2");
  for (const TurnOfNutRow& row : turn_of_nut_rows)
    if (length.si <= row.length_to * diameter.si * (1 + 1e-12)) {
      const double turn = row.turn[sloping_faces];
      return NutRotation{Angle(turn * detail::full_turn), Angle((turn <= 0.5 ? 30.0 : 45.0) / 360 * detail::full_turn),
                         turn_of_nut_source};
    }
  return refusal("length", length, "but the table ends at 12 diameters; find the rotation by a test");
}

/// \param diameter   of the bolt
/// \param thickness  all that is clamped, washers included
/// \return the further rotation after the first torque
inline Outcome<NutRotation> try_combined_method(Length diameter, Length thickness) {
  if (!is_positive(diameter)) return refusal("diameter", diameter, "but must be above 0 mm");
  if (!is_positive(thickness)) return refusal("thickness", thickness, "but must be above 0 mm");
  const double ratio = thickness.si / diameter.si;
  for (const CombinedMethodRow& row : combined_method_rows) {
    const bool last = &row == combined_method_rows + 2;
    if (last ? ratio <= row.thickness_below * (1 + 1e-12) : ratio < row.thickness_below * (1 - 1e-12))
      return NutRotation{Angle(row.turn * detail::full_turn), Angle(0), combined_method_source};
  }
  return refusal("thickness", thickness, "but the table ends at 10 diameters; no rotation is recommended beyond");
}

/// \return the rotation from snug that a structural bolt of this length must bear
inline Angle rotation_capacity(Length diameter, Length length) noexcept {
  for (const RotationRow& row : rotation_capacity_rows)
    if (length.si <= row.length_to * diameter.si * (1 + 1e-12)) return Angle(row.degrees / 360 * detail::full_turn);
  return Angle(0);
}

/// \copydoc try_turn_of_nut
/// \throws Error  naming the argument, its value and the allowed range
inline NutRotation turn_of_nut(Length diameter, Length length, int sloping_faces = 0) {
  return try_turn_of_nut(diameter, length, sloping_faces).value();
}
/// \copydoc try_combined_method
/// \throws Error  naming the argument, its value and the allowed range
inline NutRotation combined_method(Length diameter, Length thickness) {
  return try_combined_method(diameter, thickness).value();
}

}  // namespace tauten::TAUTEN_ABI
