// What holds a seized thread besides friction: bond on the flanks and the pressure of rust.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque to shear a bond on the thread flanks: strength times flank area times half the pitch diameter. The flank
/// factor is the bonded area over that of the cylinder of the pitch diameter: 0.625 one flank, 1.25 both, 1.5 to 1.6
/// the whole profile. Rust acts like the adhesive that the standard tests; how strong it bonds is an estimate.
struct BondTorque {
  static constexpr const char* name = "bond_torque";
  static constexpr const char* summary = "Torque to shear a bond on the thread flanks";
  static constexpr Arg inputs[] = {
      {"bond_strength", "tau_B", Dim::stress, non_negative, within(0, 60e6)},
      {"flank_factor", "k_A", Dim::number, non_negative, within(0.5, 1.7)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"engaged_length", "L_e", Dim::length, non_negative},
  };
  static constexpr Arg output = {"bond_torque", "T_bond", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"ISO 10964:1993", "torsional strength of bonded threads, as analogue", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_B, Real k_A, Real d_2, Real L_e) noexcept {
    return tau_B * k_A * pi<Real>() * square(d_2) * L_e / 2;
  }
};
/// \copydoc BondTorque
inline constexpr Formula<BondTorque> bond_torque{};

/// Torque to overcome the pressure of packed rust on the flanks: a bond whose strength is friction times pressure. The
/// pressure is square to the flanks; `flank_pressure` gives it from a radial one.
struct RustTorque {
  static constexpr const char* name = "rust_torque";
  static constexpr const char* summary = "Friction torque from the pressure of rust in the thread";
  static constexpr Arg inputs[] = {
      {"rust_pressure", "p_R", Dim::stress, non_negative, within(0, 500e6)},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"flank_factor", "k_A", Dim::number, non_negative, within(0.5, 1.7)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"engaged_length", "L_e", Dim::length, non_negative},
  };
  static constexpr Arg output = {"rust_torque", "T_press", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"Textbook machine design", "friction of an interference fit, on the flank area", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real p_R, Real mu_G, Real k_A, Real d_2, Real L_e) noexcept {
    return BondTorque::eval(mu_G * p_R, k_A, d_2, L_e);
  }
};
/// \copydoc RustTorque
inline constexpr Formula<RustTorque> rust_torque{};

}  // namespace tauten::TAUTEN_ABI
