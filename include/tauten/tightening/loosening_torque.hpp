// Loosening torque of a clean joint, linear form, and what a pair of torques tells.
#pragma once

#include "tauten/friction/lever.hpp"

namespace tauten::TAUTEN_ABI {

/// Loosening torque of a clean, newly tightened joint: friction as in tightening, less the pitch share that now
/// helps. Rust and time are not in it. Negative if the joint loosens by itself.
struct LooseningTorque {
  static constexpr const char* name = "loosening_torque";
  static constexpr const char* summary = "Loosening torque of a clean joint (linear form)";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"loosening_torque", "M_L", Dim::torque, any_sign};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return F_M * (mu_G * LeverParts::flanks(d_2) + mu_K * LeverParts::face(D_Km) - LeverParts::lift(P));
  }
};
/// \copydoc LooseningTorque
inline constexpr Formula<LooseningTorque> loosening_torque{};

/// Share of the tightening torque that stretches the bolt; friction eats the rest.
struct PitchShare {
  static constexpr const char* name = "pitch_share";
  static constexpr const char* summary = "Share of the torque that stretches the bolt";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"pitch_share", "p", Dim::number, positive};
  static constexpr Source sources[] = {
      {"W. Eccles, LUBMAT 2014, L144056", "abstract: about 14 % at mu 0.12", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return LeverParts::lift(P) / TorqueLever::eval(P, d_2, mu_G, mu_K, D_Km);
  }
};
/// \copydoc PitchShare
inline constexpr Formula<PitchShare> pitch_share{};

/// Loosening over tightening torque of a clean joint with equal friction both ways: 1 - 2 p.
struct LooseningRatio {
  static constexpr const char* name = "loosening_ratio";
  static constexpr const char* summary = "Loosening over tightening torque of a clean joint";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"loosening_ratio", "T_off/T_on", Dim::number, any_sign};
  static constexpr Source sources[] = {
      {"W. Eccles, LUBMAT 2014, L144056", "10 to 30 % less to undo than to tighten further", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return 1 - 2 * PitchShare::eval(P, d_2, mu_G, mu_K, D_Km);
  }
};
/// \copydoc LooseningRatio
inline constexpr Formula<LooseningRatio> loosening_ratio{};

/// Preload from the torque that just tightened a joint further and the torque that just loosened it, friction equal
/// both ways; no coefficient of friction is needed.
struct PreloadFromTorquePair {
  static constexpr const char* name = "preload_from_torque_pair";
  static constexpr const char* summary = "Preload from tightening and loosening torque";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"loosening_torque", "M_L", Dim::torque, any_sign},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"Derived from ISO 16047:2005, clause 9", "difference of tightening and loosening torque", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real M_L, Real P) noexcept {
    return pi<Real>() * (M_A - M_L) / P;
  }
};
/// \copydoc PreloadFromTorquePair
inline constexpr Formula<PreloadFromTorquePair> preload_from_torque_pair{};

}  // namespace tauten::TAUTEN_ABI
