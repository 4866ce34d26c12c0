// Half angle of the cone of pressure: no constant, but grows with slenderness and width.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Half angle of the deformation cone of a bolt with nut: tan phi_D = 0.362 + 0.032 ln(beta_L/2) + 0.153 ln y with
/// beta_L = l_K/d_w and y = D_A/d_w.
struct ConeAngleThrough {
  static constexpr const char* name = "cone_angle_through";
  static constexpr const char* summary = "Half angle of the deformation cone, bolt with nut";
  static constexpr Arg inputs[] = {
      {"grip_length", "l_K", Dim::length, positive},
      {"face_diameter", "d_w", Dim::length, positive},
      {"plate_diameter", "D_A", Dim::length, positive},
  };
  static constexpr Arg output = {"half_angle", "phi_D", Dim::angle, within(0.01, 1.5)};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.1.2.1, eq. for tan phi_D", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l_K, Real d_w, Real D_A) noexcept {
    return atan(Real(0.362) + Real(0.032) * log(l_K / (2 * d_w)) + Real(0.153) * log(D_A / d_w));
  }
  /// The layers reach as far as the bearing face at least; narrower ones carry the load as a cylinder, without a cone.
  template <class Real>
  static constexpr Real requirement(Real, Real d_w, Real D_A) noexcept {
    return Real(1.000001) * D_A - d_w;
  }
};
/// \copydoc ConeAngleThrough
inline constexpr Formula<ConeAngleThrough> cone_angle_through{};

/// Half angle of the deformation cone of a screw in a tapped hole: tan phi_D = 0.348 + 0.013 ln beta_L + 0.193 ln y.
struct ConeAngleTapped {
  static constexpr const char* name = "cone_angle_tapped";
  static constexpr const char* summary = "Half angle of the deformation cone, tapped hole";
  static constexpr Arg inputs[] = {
      {"grip_length", "l_K", Dim::length, positive},
      {"face_diameter", "d_w", Dim::length, positive},
      {"plate_diameter", "D_A", Dim::length, positive},
  };
  static constexpr Arg output = {"half_angle", "phi_D", Dim::angle, within(0.01, 1.5)};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.1.2.1, eq. for tan phi_D", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l_K, Real d_w, Real D_A) noexcept {
    return atan(Real(0.348) + Real(0.013) * log(l_K / d_w) + Real(0.193) * log(D_A / d_w));
  }
  /// The layers reach as far as the bearing face at least; narrower ones carry the load as a cylinder, without a cone.
  template <class Real>
  static constexpr Real requirement(Real, Real d_w, Real D_A) noexcept {
    return Real(1.000001) * D_A - d_w;
  }
};
/// \copydoc ConeAngleTapped
inline constexpr Formula<ConeAngleTapped> cone_angle_tapped{};

}  // namespace tauten::TAUTEN_ABI
