// The flanks of a thread as an inclined plane, without the small-angle form.
#pragma once

#include "tauten/base/math.hpp"

namespace tauten::TAUTEN_ABI {

/// Tangential force over axial force at the pitch diameter: tan(rho' + phi) when tightening, tan(rho' - phi) when
/// loosening, with mu' = mu/cos(beta_n) and tan(beta_n) = tan(alpha) cos(phi). All exact forms rest on it.
struct ThreadIncline {
  template <class Real>
  struct Slopes {
    Real rise;      ///< tan(phi)
    Real friction;  ///< mu', friction on the inclined flank
  };

  template <class Real>
  static constexpr Slopes<Real> of(Real P, Real d_2, Real mu_G, Real tan_flank) noexcept {
    const Real rise = P / (pi<Real>() * d_2);
    // 1/cos(beta_n) by tangents alone, so that a column needs a square root and no trigonometry.
    return {rise, mu_G * sqrt(1 + square(tan_flank) / (1 + square(rise)))};
  }
  template <class Real>
  static constexpr Real tighten(Slopes<Real> s) noexcept {
    return (s.friction + s.rise) / room(s);
  }
  /// Above zero as long as the friction leaves the thread room to turn.
  template <class Real>
  static constexpr Real room(Slopes<Real> s) noexcept {
    return 1 - s.friction * s.rise;
  }
  template <class Real>
  static constexpr Real loosen(Slopes<Real> s) noexcept {
    return (s.friction - s.rise) / (1 + s.friction * s.rise);
  }
  /// Torque in the ISO thread per unit of preload while tightening.
  template <class Real>
  static constexpr Real lever(Real P, Real d_2, Real mu_G) noexcept {
    return d_2 / 2 * tighten(of(P, d_2, mu_G, tan30<Real>()));
  }
};

}  // namespace tauten::TAUTEN_ABI
