// What a bolt takes in torsion: corroded, partly plastic, and beside a tension.
#pragma once

#include "tauten/friction/lever.hpp"
#include "tauten/loosening/torque_terms.hpp"
#include "tauten/part/strength.hpp"

namespace tauten::TAUTEN_ABI {

/// Breaking torque of a bolt whose root has lost a depth of steel all round. It falls with the cube of the diameter.
struct CorrodedBreakingTorque {
  static constexpr const char* name = "corroded_breaking_torque";
  static constexpr const char* summary = "Minimum breaking torque of a corroded bolt";
  static constexpr Arg inputs[] = {
      {"torsion_ratio", "X", Dim::number, positive, within(0.3, 1.3)},
      {"tensile_strength", "R_m", Dim::stress, positive, within(100e6, 2000e6)},
      {"root_diameter", "d_3", Dim::length, positive},
      {"metal_loss", "x", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque", "M_B", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Derived from ISO 898-7:1992, clause 3", "root diameter less the loss on both sides", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real X, Real R_m, Real d_3, Real x) noexcept {
    return BreakingTorque::eval(X, R_m, d_3) * SectionParts::corroded_torsion(2 * x / d_3);
  }
};
/// \copydoc CorrodedBreakingTorque
inline constexpr Formula<CorrodedBreakingTorque> corroded_breaking_torque{};

/// Torque of a round section that yields outside an elastic core and does not harden. A core as wide as the section
/// gives the torque at first yield, no core the fully plastic torque, 4/3 of it.
struct PartlyPlasticTorque {
  static constexpr const char* name = "partly_plastic_torque";
  static constexpr const char* summary = "Torque of a round section with an elastic core";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"diameter", "d", Dim::length, positive},
      {"core_diameter", "d_c", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"R. V. Kukta and K. S. Kirane, university lecture 12, 2018", "elastic-plastic torsion", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real d, Real d_c) noexcept {
    return TorsionPlasticTorque::eval(tau_u, d) * (1 - cube(d_c / d) / 4);
  }
  /// The core is no wider than the section; the two may be equal.
  template <class Real>
  static constexpr Real requirement(Real, Real d, Real d_c) noexcept {
    return Real(1.000001) * d - d_c;
  }
};
/// \copydoc PartlyPlasticTorque
inline constexpr Formula<PartlyPlasticTorque> partly_plastic_torque{};

/// Breaking torque that is left beside a preload: (F/F_B)^2 + (T/T_B)^2 = 1, a lower bound for the plastic section.
/// The start of loosening is the worst moment: the whole residual preload stands beside the thread torque.
struct BreakingTorqueUnderTension {
  static constexpr const char* name = "breaking_torque_under_tension";
  static constexpr const char* summary = "Breaking torque left beside a preload (lower bound)";
  static constexpr Arg inputs[] = {
      {"breaking_torque", "M_B", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, non_negative},
      {"breaking_load", "F_m", Dim::force, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"Textbook plasticity", "limit of a round bar under tension and torsion, lower bound", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_B, Real F_M, Real F_m) noexcept {
    return M_B * SectionParts::torsion_beside_tension(F_M / F_m);
  }
};
/// \copydoc BreakingTorqueUnderTension
inline constexpr Formula<BreakingTorqueUnderTension> breaking_torque_under_tension{};

/// Torque at the head, and so at the wrench, at which the shank shears: what the shank takes beside its tension, and the
/// friction under the turned head or nut on top, which the shank does not feel.
struct ShearingTorqueAtHead {
  static constexpr const char* name = "shearing_torque_at_head";
  static constexpr const char* summary = "Torque at the head at which the shank shears";
  static constexpr Arg inputs[] = {
      {"breaking_torque", "M_B", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, non_negative},
      {"breaking_load", "F_m", Dim::force, positive},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_growth", "f_b", Dim::number, non_negative, within(0.3, 5)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque", "T_S", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"Textbook statics", "torque at the head is that in the shank and that under the head", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_B, Real F_M, Real F_m, Real mu_K, Real f_b, Real D_Km) noexcept {
    return BreakingTorqueUnderTension::eval(M_B, F_M, F_m) +
           BreakawayParts::face(F_M, f_b * mu_K * LeverParts::face(D_Km));
  }
};
/// \copydoc ShearingTorqueAtHead
inline constexpr Formula<ShearingTorqueAtHead> shearing_torque_at_head{};

}  // namespace tauten::TAUTEN_ABI
