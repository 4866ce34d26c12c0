// How far a preloaded bolt under a working load is from yield, from overload and from separation.
#pragma once

#include "tauten/joint/load.hpp"
#include "tauten/part/strength.hpp"

namespace tauten::TAUTEN_ABI {

/// Tensile stress in the thread under a working load. Torsion left over from tightening is not in it, nor in the factors
/// below: as long as it stays, the bolt yields earlier by what `assembly_stress` shows, up to a fifth or so; vibration
/// and settling take it away in part. Bending is not in it either. It holds below `separation_load`, as `service_bolt_load`
/// does, and has no value beyond.
struct ServiceStress {
  static constexpr const char* name = "service_stress";
  static constexpr const char* summary = "Stress in the thread under a working load";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"joint_constant", "C", Dim::number, within(0, 1)},
      {"working_load", "F_A", Dim::force, any_sign},
      {"stress_area", "A_s", Dim::area, positive},
  };
  static constexpr Arg output = {"stress", "sigma_b", Dim::stress, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "Example 8-3", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real C, Real F_A, Real A_s) noexcept {
    return ServiceBoltLoad::eval(F_M, C, F_A) / A_s;
  }
  template <class Real>
  static constexpr Real requirement(Real F_M, Real C, Real F_A, Real) noexcept {
    return ServiceBoltLoad::requirement(F_M, C, F_A);
  }
};
/// \copydoc ServiceStress
inline constexpr Formula<ServiceStress> service_stress{};

/// Proof load over the load on the bolt. It holds below `separation_load`, like `service_bolt_load`; beyond, the bolt
/// carries the whole working load, and the factor is proof load over that.
struct YieldFactor {
  static constexpr const char* name = "yield_factor";
  static constexpr const char* summary = "Proof load over the load on the bolt";
  static constexpr Arg inputs[] = {
      {"proof_stress", "S_p", Dim::stress, positive},     {"stress_area", "A_s", Dim::area, positive},
      {"joint_constant", "C", Dim::number, within(0, 1)}, {"working_load", "F_A", Dim::force, non_negative},
      {"preload", "F_M", Dim::force, positive},
  };
  static constexpr Arg output = {"yield_factor", "n_p", Dim::number, positive};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-28) and Example 8-5", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real S_p, Real A_s, Real C, Real F_A, Real F_M) noexcept {
    return LoadAtStress::eval(A_s, S_p) / ServiceBoltLoad::eval(F_M, C, F_A);
  }
  template <class Real>
  static constexpr Real requirement(Real, Real, Real C, Real F_A, Real F_M) noexcept {
    return ServiceBoltLoad::requirement(F_M, C, F_A);
  }
};
/// \copydoc YieldFactor
inline constexpr Formula<YieldFactor> yield_factor{};

/// How many times the working load may grow before the bolt reaches its proof load. It falls as the preload rises. The
/// parts must still press on each other then, which they do if the preload is above 1 - C of the proof load. If it is
/// not, the joint opens first: `separation_factor` tells when, and the bolt reaches its proof load where the working load
/// is as large, at the factor proof load over working load.
struct OverloadFactor {
  static constexpr const char* name = "overload_factor";
  static constexpr const char* summary = "Growth of the working load up to the proof load";
  static constexpr Arg inputs[] = {
      {"proof_stress", "S_p", Dim::stress, positive},
      {"stress_area", "A_s", Dim::area, positive},
      {"joint_constant", "C", Dim::number, Interval{0, 1, true}},
      {"working_load", "F_A", Dim::force, positive},
      {"preload", "F_M", Dim::force, non_negative},
  };
  static constexpr Arg output = {"overload_factor", "n_L", Dim::number, non_negative};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-29) and Example 8-5", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real S_p, Real A_s, Real C, Real F_A, Real F_M) noexcept {
    return (LoadAtStress::eval(A_s, S_p) - F_M) / (C * F_A);
  }
  /// Some clamp load is left at the overload: F_M - (1 - C) n_L F_A, times C.
  template <class Real>
  static constexpr Real requirement(Real S_p, Real A_s, Real C, Real, Real F_M) noexcept {
    return F_M - (1 - C) * LoadAtStress::eval(A_s, S_p);
  }
};
/// \copydoc OverloadFactor
inline constexpr Formula<OverloadFactor> overload_factor{};

/// Separation load over the working load.
struct SeparationFactor {
  static constexpr const char* name = "separation_factor";
  static constexpr const char* summary = "Separation load over the working load";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"joint_constant", "C", Dim::number, within(0, 0.999)},
      {"working_load", "F_A", Dim::force, positive},
  };
  static constexpr Arg output = {"separation_factor", "n_0", Dim::number, non_negative};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-30) and Example 8-5", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real C, Real F_A) noexcept {
    return SeparationLoad::eval(F_M, C) / F_A;
  }
};
/// \copydoc SeparationFactor
inline constexpr Formula<SeparationFactor> separation_factor{};

}  // namespace tauten::TAUTEN_ABI
