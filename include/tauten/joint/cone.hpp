// Clamped parts as cones and sleeves of pressure: their resilience piece by piece.
#pragma once

#include "tauten/joint/segment.hpp"

namespace tauten::TAUTEN_ABI {

/// Resilience of a hollow cone of pressure that widens from the bearing face by the half angle. Stress counts as even
/// over each cross-section. One layer of one material.
struct ConeResilience {
  static constexpr const char* name = "cone_resilience";
  static constexpr const char* summary = "Resilience of a cone of pressure";
  static constexpr Arg inputs[] = {
      {"thickness", "t", Dim::length, non_negative},
      {"hole_diameter", "d_h", Dim::length, positive},
      {"face_diameter", "d_w", Dim::length, positive},
      {"half_angle", "phi_D", Dim::angle, within(0.01, 1.5), within(0.35, 0.8)},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
  };
  static constexpr Arg output = {"plate_resilience", "delta_P", Dim::compliance, non_negative};
  static constexpr Source sources[] = {
      {"VDI 2230 Part 1:2003", "section 5.1.2.1, deformation cone", Seen::memory},
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-19) and Table 8-12", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real t, Real d_h, Real d_w, Real phi_D, Real E) noexcept {
    // The logarithm of the quotient in the sources. What the quotient is above one is written out, so that no digits are
    // lost where a cone hardly widens.
    const Real widening = 2 * t * tan(phi_D);
    return log1p(2 * d_h * widening / ((d_w + widening + d_h) * (d_w - d_h))) / (pi<Real>() * E * d_h * tan(phi_D));
  }
};
/// \copydoc ConeResilience
inline constexpr Formula<ConeResilience> cone_resilience{};

/// Resilience of a sleeve: the part of a layer that the cone fills out to its edge, or all of a layer that is no wider
/// than the bearing face.
struct SleeveResilience {
  static constexpr const char* name = "sleeve_resilience";
  static constexpr const char* summary = "Resilience of a sleeve under pressure";
  static constexpr Arg inputs[] = {
      {"thickness", "t", Dim::length, non_negative},
      {"hole_diameter", "d_h", Dim::length, non_negative},
      {"plate_diameter", "D_A", Dim::length, positive},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
  };
  static constexpr Arg output = {"plate_resilience", "delta_P", Dim::compliance, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.1.2.1, deformation sleeve", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real t, Real d_h, Real D_A, Real E) noexcept {
    return SegmentResilience::eval(t, circle_area(D_A) - circle_area(d_h), E);
  }
};
/// \copydoc SleeveResilience
inline constexpr Formula<SleeveResilience> sleeve_resilience{};

/// Stiffness of one frustum of the textbook cone method, for any half angle; 30 degrees is typical, 45 degrees is older
/// and too stiff. A joint is a series of frusta that meet at half the grip.
struct FrustumStiffness {
  static constexpr const char* name = "frustum_stiffness";
  static constexpr const char* summary = "Stiffness of a frustum of clamped material";
  static constexpr Arg inputs[] = {
      {"thickness", "t", Dim::length, positive},
      {"hole_diameter", "d_h", Dim::length, positive},
      {"face_diameter", "d_w", Dim::length, positive},
      {"half_angle", "phi_D", Dim::angle, within(0.01, 1.5), within(0.35, 0.8)},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
  };
  static constexpr Arg output = {"plate_stiffness", "k_m", Dim::stiffness, positive};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-19) and Table 8-12", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real t, Real d_h, Real d_w, Real phi_D, Real E) noexcept {
    return 1 / ConeResilience::eval(t, d_h, d_w, phi_D, E);
  }
};
/// \copydoc FrustumStiffness
inline constexpr Formula<FrustumStiffness> frustum_stiffness{};

}  // namespace tauten::TAUTEN_ABI
