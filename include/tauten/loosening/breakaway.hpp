// The torque at which a joint that has stood begins to turn.
#pragma once

#include "tauten/friction/lever.hpp"
#include "tauten/loosening/torque_terms.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque that starts a joint: residual preload on grown friction, less what the pitch gives back, plus bond, rust
/// pressure and a prevailing element. Zero means nothing holds; negative, that the joint turns by itself. The growth
/// factors are 1 on a clean joint. One figure is worth little here: the factors of rust spread by two and more.
struct BreakawayTorque {
  static constexpr const char* name = "breakaway_torque";
  static constexpr const char* summary =
      "Torque that starts a joint which has stood (estimate: real ones spread by a factor of two)";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
      {"thread_growth", "f_t", Dim::number, non_negative, within(0.3, 5)},
      {"bearing_growth", "f_b", Dim::number, non_negative, within(0.3, 5)},
      {"bond_torque", "T_bond", Dim::torque, non_negative},
      {"rust_torque", "T_press", Dim::torque, non_negative},
      {"prevailing_torque", "M_P", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"breakaway_torque", "T_off", Dim::torque, any_sign};
  static constexpr Source sources[] = {
      {"Derived from ISO 16047:2005, clause 9", "linear loosening torque with factors on friction", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km, Real f_t, Real f_b,
                             Real T_bond, Real T_press, Real M_P) noexcept {
    return BreakawayParts::thread(F_M, f_t * mu_G * LeverParts::flanks(d_2), LeverParts::lift(P),
                                  T_bond + T_press + M_P) +
           BreakawayParts::face(F_M, f_b * mu_K * LeverParts::face(D_Km));
  }
};
/// \copydoc BreakawayTorque
inline constexpr Formula<BreakawayTorque> breakaway_torque{};

/// Torque to turn a joint further after some of its stretch has gone: it falls as the stretch does, friction
/// unchanged. One measured joint stands behind it.
struct RestartTorque {
  static constexpr const char* name = "restart_torque";
  static constexpr const char* summary = "Torque to tighten further after stretch was lost";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"stretch", "f", Dim::length, positive},
      {"remaining_stretch", "f_r", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque", "M_r", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"J. H. Bickford, bolted joint handbook", "tank track connector bolts 5/8-18", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real f, Real f_r) noexcept {
    return M_A * f_r / f;
  }
};
/// \copydoc RestartTorque
inline constexpr Formula<RestartTorque> restart_torque{};

}  // namespace tauten::TAUTEN_ABI
