// What a hexagon takes before its corners go.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten {

/// Geometry of a hexagon of width s in an opening of width s + D, its corner circle worn down to radius R - w.
struct HexagonParts {
  template <class Real>
  static constexpr Real corner_radius(Real s, Real w) noexcept {
    return s / (2 * cos30<Real>()) - w;
  }
  /// Distance along a flank from its middle to where it meets a circle of radius rho.
  template <class Real>
  static constexpr Real half_flank(Real rho, Real width) noexcept {
    return sqrt(square(rho) - square(width) / 4);
  }
};

/// Lever at which each corner of a hexagon is pushed, measured from its axis: sqrt(R^2 - (s + D)^2/4) with R the
/// radius to the corner. New and without play it is half a flank. No lever fits once the corners have worn through:
/// the tool spins. For an internal hexagon the width is that of the key.
struct FlankLever {
  static constexpr const char* name = "flank_lever";
  static constexpr const char* summary = "Lever of the push on a corner of a hexagon";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive},
      {"drive_clearance", "D", Dim::length, non_negative},
      {"corner_loss", "w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"flank_lever", "a", Dim::length, non_negative};
  static constexpr Source sources[] = {
      {"Geometry", "hexagon in a wider hexagon or twelve-point opening", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s, Real D, Real w) noexcept {
    return HexagonParts::half_flank(HexagonParts::corner_radius(s, w), s + D);
  }
};
/// \copydoc FlankLever
inline constexpr Formula<FlankLever> flank_lever{};

/// Angle that the tool turns on a hexagon before both touch, from the centred position.
struct CornerPlay {
  static constexpr const char* name = "corner_play";
  static constexpr const char* summary = "Free turn of a tool on a hexagon";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive},
      {"drive_clearance", "D", Dim::length, non_negative},
      {"corner_loss", "w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"corner_play", "phi", Dim::angle, non_negative};
  static constexpr Source sources[] = {
      {"Geometry", "hexagon in a wider hexagon or twelve-point opening", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s, Real D, Real w) noexcept {
    const Real rho = HexagonParts::corner_radius(s, w);
    return atan(2 * HexagonParts::half_flank(rho, s) / s) - atan(2 * HexagonParts::half_flank(rho, s + D) / (s + D));
  }
};
/// \copydoc CornerPlay
inline constexpr Formula<CornerPlay> corner_play{};

/// Radial loss of the corners at which a tool spins: 0.0774 s - D/2.
struct SlippingCornerLoss {
  static constexpr const char* name = "slipping_corner_loss";
  static constexpr const char* summary = "Loss of the corners at which the tool spins";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive},
      {"drive_clearance", "D", Dim::length, non_negative},
  };
  static constexpr Arg output = {"corner_loss", "w", Dim::length, non_negative};
  static constexpr Source sources[] = {{"Geometry", "corner circle as wide as the opening", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s, Real D) noexcept {
    return HexagonParts::corner_radius(s, (s + D) / 2);
  }
};
/// \copydoc SlippingCornerLoss
inline constexpr Formula<SlippingCornerLoss> slipping_corner_loss{};

/// Torque at which the corners give way under a contact pressure. What pressure and which length of each flank bear
/// is an estimate; no published figure was found.
struct RoundingTorque {
  static constexpr const char* name = "rounding_torque";
  static constexpr const char* summary = "Torque at which the corners of a drive give way (estimate)";
  static constexpr Arg inputs[] = {
      {"contact_pressure", "p_c", Dim::stress, non_negative}, {"corners", "n_c", Dim::number, positive, within(2, 6)},
      {"contact_length", "l_c", Dim::length, non_negative},   {"engaged_height", "h", Dim::length, non_negative},
      {"flank_lever", "a", Dim::length, non_negative},
  };
  static constexpr Arg output = {"rounding_torque", "T_R", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Contact model", "pressure times area times lever", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real p_c, Real n_c, Real l_c, Real h, Real a) noexcept {
    return n_c * p_c * l_c * h * a;
  }
};
/// \copydoc RoundingTorque
inline constexpr Formula<RoundingTorque> rounding_torque{};

}  // namespace tauten
