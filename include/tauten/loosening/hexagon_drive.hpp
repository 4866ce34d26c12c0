// What a hexagon takes before its corners round off.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Geometry of a hexagon of width s in an opening of width s + D, its corner circle worn down to radius R - w.
///
/// A six-point opening is a hexagon. A twelve-point opening is the star that two hexagons make, one turned by 30
/// degrees: of each flat only the two ends are left, from the tooth, (s + D) tan(15)/2 from the middle of the flat, to the
/// corner, (s + D) tan(30)/2. Its teeth reach inward to the radius (s + D)/(2 cos 15).
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
/// radius to the corner. New and without play it is half a flank. The same in a six- and a twelve-point opening, as long
/// as neither spins (`slipping_corner_loss`, `twelve_point_slipping_corner_loss`). No lever fits once the corners have
/// worn through. For an internal hexagon the width is that of the key.
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

/// Angle from the position in which the flats of tool and hexagon are parallel to the first touch, both on one axis. The
/// whole free turn, from touch in one sense to touch in the other, is twice it. The same for six and twelve points. The
/// corner moves along its circle from x = s/2 to x = (s + D)/2, and the tangent of half the angle between two points of a
/// circle is the difference of their x over the sum of their y: no digits are lost where the play is small.
struct CornerPlay {
  static constexpr const char* name = "corner_play";
  static constexpr const char* summary = "Turn of a tool on a hexagon from flats parallel to touch";
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
    return 2 * atan(D / 2 / (HexagonParts::half_flank(rho, s) + HexagonParts::half_flank(rho, s + D)));
  }
};
/// \copydoc CornerPlay
inline constexpr Formula<CornerPlay> corner_play{};

/// Radial loss of the corners at which a six-point tool spins: 0.0774 s - D/2.
struct SlippingCornerLoss {
  static constexpr const char* name = "slipping_corner_loss";
  static constexpr const char* summary = "Loss of the corners at which a six-point tool spins";
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

/// Radial loss of the corners at which a twelve-point tool spins: 0.0597 s - 0.518 D. It spins as soon as the corner
/// circle passes inside the teeth, that is before a six-point tool would.
struct TwelvePointSlippingCornerLoss {
  static constexpr const char* name = "twelve_point_slipping_corner_loss";
  static constexpr const char* summary = "Loss of the corners at which a twelve-point tool spins";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive},
      {"drive_clearance", "D", Dim::length, non_negative},
  };
  static constexpr Arg output = {"corner_loss", "w", Dim::length, non_negative};
  static constexpr Source sources[] = {{"Geometry", "corner circle as wide as the teeth leave", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s, Real D) noexcept {
    return HexagonParts::corner_radius(s, (s + D) / (2 * cos15<Real>()));
  }
};
/// \copydoc TwelvePointSlippingCornerLoss
inline constexpr Formula<TwelvePointSlippingCornerLoss> twelve_point_slipping_corner_loss{};

/// Length of flank, on each side of a corner of a hexagon, that a twelve-point opening reaches: the lever less the gap
/// between its teeth. New and without play (tan 30 - tan 15) s/2 = 0.155 s, for both sides 0.309 s; a six-point opening
/// reaches all of it up to the middle of the flat, 0.289 s and 0.577 s, which is `flank_lever`. Zero where it spins.
struct TwelvePointFlank {
  static constexpr const char* name = "twelve_point_flank";
  static constexpr const char* summary = "Length of flank beside a corner that a twelve-point tool reaches";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive},
      {"drive_clearance", "D", Dim::length, non_negative},
      {"corner_loss", "w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"flank_length", "l_F", Dim::length, non_negative};
  static constexpr Source sources[] = {{"Geometry", "star of two hexagons turned by 30 degrees", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s, Real D, Real w) noexcept {
    return FlankLever::eval(s, D, w) - tan15<Real>() * (s + D) / 2;
  }
};
/// \copydoc TwelvePointFlank
inline constexpr Formula<TwelvePointFlank> twelve_point_flank{};

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

}  // namespace tauten::TAUTEN_ABI
