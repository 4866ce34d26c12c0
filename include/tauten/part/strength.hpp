// What a section carries in tension and in torsion.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Load at which a section reaches a given stress: proof load with the proof stress, least tensile load with the
/// tensile strength, proof load of a nut with its own stress. Standards print the result rounded; use the printed
/// load where one exists.
struct LoadAtStress {
  static constexpr const char* name = "load_at_stress";
  static constexpr const char* summary = "Load at a given stress in a section";
  static constexpr Arg inputs[] = {
      {"stress_area", "A_s", Dim::area, positive},
      {"stress", "S", Dim::stress, non_negative},
  };
  static constexpr Arg output = {"load", "F", Dim::force, non_negative};
  static constexpr Source sources[] = {{"ISO 898-1:2013", "Tables 4 to 7", Seen::in_print},
                                       {"ISO 898-2:1992", "Tables 5 and 6", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real A_s, Real S) noexcept {
    return A_s * S;
  }
};
/// \copydoc LoadAtStress
inline constexpr Formula<LoadAtStress> load_at_stress{};

/// Preload as a share of the load at a given stress: 0.75 of the proof load for joints that are taken apart again,
/// 0.7 of the tensile load in structural bolting.
struct TargetPreload {
  static constexpr const char* name = "target_preload";
  static constexpr const char* summary = "Preload as a share of proof or tensile load";
  static constexpr Arg inputs[] = {
      {"share", "x", Dim::number, non_negative, within(0, 1)},
      {"stress_area", "A_s", Dim::area, positive},
      {"stress", "S", Dim::stress, non_negative},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"Shigley, Mechanical Engineering Design, 9th ed.", "eqs. (8-31) and (8-32)", Seen::in_print},
      {"EN 1090-2:2008", "clause 8.5.1", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real x, Real A_s, Real S) noexcept {
    return x * LoadAtStress::eval(A_s, S);
  }
};
/// \copydoc TargetPreload
inline constexpr Formula<TargetPreload> target_preload{};

/// Torque at which the surface of a solid round section reaches a shear strength; elastic below.
struct TorsionYieldTorque {
  static constexpr const char* name = "torsion_yield_torque";
  static constexpr const char* summary = "Torque at first yield in torsion";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"diameter", "d", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "torsion of a solid round bar", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real d) noexcept {
    return tau_u * pi<Real>() * cube(d) / 16;
  }
};
/// \copydoc TorsionYieldTorque
inline constexpr Formula<TorsionYieldTorque> torsion_yield_torque{};

/// Torque at which a whole solid round section has reached a shear strength: 4/3 of the torque at first yield.
struct TorsionPlasticTorque {
  static constexpr const char* name = "torsion_plastic_torque";
  static constexpr const char* summary = "Torque of the fully plastic section";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"diameter", "d", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "fully plastic torsion of a solid round bar", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real d) noexcept {
    return 4 * TorsionYieldTorque::eval(tau_u, d) / 3;
  }
};
/// \copydoc TorsionPlasticTorque
inline constexpr Formula<TorsionPlasticTorque> torsion_plastic_torque{};

/// Minimum breaking torque of a bolt or screw: the torsion formula on the least root diameter, with the shear
/// strength given as a ratio X of the tensile strength (0.84, 0.815, 0.79, 0.75 for 8.8, 9.8, 10.9, 12.9).
struct BreakingTorque {
  static constexpr const char* name = "breaking_torque";
  static constexpr const char* summary = "Minimum breaking torque";
  static constexpr Arg inputs[] = {
      {"torsion_ratio", "X", Dim::number, positive, within(0.3, 1.3)},
      {"tensile_strength", "R_m", Dim::stress, positive, within(100e6, 2000e6)},
      {"root_diameter", "d_3", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "M_B", Dim::torque, positive};
  static constexpr Source sources[] = {{"ISO 898-7:1992", "clause 3, Tables 1 and 2", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real X, Real R_m, Real d_3) noexcept {
    return TorsionYieldTorque::eval(X * R_m, d_3);
  }
};
/// \copydoc BreakingTorque
inline constexpr Formula<BreakingTorque> breaking_torque{};

}  // namespace tauten::TAUTEN_ABI
