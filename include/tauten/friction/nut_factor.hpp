// The nut factor K of T = K F d.
#pragma once

#include "tauten/friction/lever.hpp"

namespace tauten::TAUTEN_ABI {

/// Nut factor from the two coefficients of friction: the torque lever over the nominal diameter.
struct NutFactor {
  static constexpr const char* name = "nut_factor";
  static constexpr const char* summary = "Nut factor from friction";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"nut_factor", "K", Dim::number, positive};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, K = T/(F d)", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return TorqueLever::eval(P, d_2, mu_G, mu_K, D_Km) / d;
  }
};
/// \copydoc NutFactor
inline constexpr Formula<NutFactor> nut_factor{};

/// Nut factor measured on a test rig.
struct NutFactorFromTest {
  static constexpr const char* name = "nut_factor_from_test";
  static constexpr const char* summary = "Nut factor from a test";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, positive},
      {"diameter", "d", Dim::length, positive},
  };
  static constexpr Arg output = {"nut_factor", "K", Dim::number, non_negative};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, K = T/(F d)", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real F_M, Real d) noexcept {
    return M_A / (F_M * d);
  }
};
/// \copydoc NutFactorFromTest
inline constexpr Formula<NutFactorFromTest> nut_factor_from_test{};

}  // namespace tauten::TAUTEN_ABI
