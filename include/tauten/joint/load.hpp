// A working load on a preloaded joint: what the bolt gets of it, and what remains between the parts.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Share of a working load that the bolt gets, by stiffness; the load acts under head and nut.
struct JointConstant {
  static constexpr const char* name = "joint_constant";
  static constexpr const char* summary = "Share of the working load that reaches the bolt";
  static constexpr Arg inputs[] = {
      {"bolt_stiffness", "k_b", Dim::stiffness, positive},
      {"plate_stiffness", "k_m", Dim::stiffness, positive},
  };
  static constexpr Arg output = {"joint_constant", "C", Dim::number, within(0, 1)};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (f) of section 8-7, Example 8-3", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real k_b, Real k_m) noexcept {
    return k_b / (k_b + k_m);
  }
};
/// \copydoc JointConstant
inline constexpr Formula<JointConstant> joint_constant{};

/// Share of a working load that the bolt gets, by resilience, with the factor n for where the load enters: 1 under
/// head and nut, 0.5 at mid-depth, 0 in the parting line.
struct LoadFactor {
  static constexpr const char* name = "load_factor";
  static constexpr const char* summary = "Share of the working load that reaches the bolt, by load introduction";
  static constexpr Arg inputs[] = {
      {"load_introduction", "n", Dim::number, within(0, 1)},
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
  };
  static constexpr Arg output = {"joint_constant", "Phi_n", Dim::number, within(0, 1)};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.3, load factor", Seen::memory},
                                       {"NASA TM-106943", "text at eqs. (11) and following", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real n, Real delta_S, Real delta_P) noexcept {
    return n * delta_P / (delta_S + delta_P);
  }
};
/// \copydoc LoadFactor
inline constexpr Formula<LoadFactor> load_factor{};

/// Clamp load that remains between the parts under a working load. A value below zero means that they part.
struct ServiceClampLoad {
  static constexpr const char* name = "service_clamp_load";
  static constexpr const char* summary = "Clamp load that remains under a working load";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"joint_constant", "C", Dim::number, within(0, 1)},
      {"working_load", "F_A", Dim::force, any_sign},
  };
  static constexpr Arg output = {"clamp_load", "F_K", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-25)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real C, Real F_A) noexcept {
    return F_M - (1 - C) * F_A;
  }
};
/// \copydoc ServiceClampLoad
inline constexpr Formula<ServiceClampLoad> service_clamp_load{};

/// Load on the bolt under a working load, as long as the parts press on each other: below `separation_load`. From there
/// on the bolt carries the whole working load, and this formula has no value.
struct ServiceBoltLoad {
  static constexpr const char* name = "service_bolt_load";
  static constexpr const char* summary = "Load on the bolt under a working load";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"joint_constant", "C", Dim::number, within(0, 1)},
      {"working_load", "F_A", Dim::force, any_sign},
  };
  static constexpr Arg output = {"bolt_load", "F_S", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-24)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real C, Real F_A) noexcept {
    return F_M + C * F_A;
  }
  /// Some clamp load is left.
  template <class Real>
  static constexpr Real requirement(Real F_M, Real C, Real F_A) noexcept {
    return ServiceClampLoad::eval(F_M, C, F_A);
  }
};
/// \copydoc ServiceBoltLoad
inline constexpr Formula<ServiceBoltLoad> service_bolt_load{};

/// Working load at which the parts just part.
struct SeparationLoad {
  static constexpr const char* name = "separation_load";
  static constexpr const char* summary = "Working load that opens the joint";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"joint_constant", "C", Dim::number, within(0, 0.999)},
  };
  static constexpr Arg output = {"working_load", "F_A", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-30), solved for the load", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real C) noexcept {
    return F_M / (1 - C);
  }
};
/// \copydoc SeparationLoad
inline constexpr Formula<SeparationLoad> separation_load{};

}  // namespace tauten::TAUTEN_ABI
