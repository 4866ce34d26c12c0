// Torque and preload by the nut factor: T = K F d.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque for a preload by the nut factor.
struct TorqueFromNutFactor {
  static constexpr const char* name = "torque_from_nut_factor";
  static constexpr const char* summary = "Torque from preload and nut factor";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"diameter", "d", Dim::length, positive},
      {"nut_factor", "K", Dim::number, positive, within(0.05, 0.6)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"Shigley, Mechanical Engineering Design, 9th ed.", "eq. (8-27)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real d, Real K) noexcept {
    return K * F_M * d;
  }
};
/// \copydoc TorqueFromNutFactor
inline constexpr Formula<TorqueFromNutFactor> torque_from_nut_factor{};

/// Preload that a torque leaves by the nut factor.
struct PreloadFromNutFactor {
  static constexpr const char* name = "preload_from_nut_factor";
  static constexpr const char* summary = "Preload from torque and nut factor";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"diameter", "d", Dim::length, positive},
      {"nut_factor", "K", Dim::number, positive, within(0.05, 0.6)},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
  static constexpr Source sources[] = {{"NASA TM-106943", "eq. (1)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real d, Real K) noexcept {
    return M_A / (K * d);
  }
};
/// \copydoc PreloadFromNutFactor
inline constexpr Formula<PreloadFromNutFactor> preload_from_nut_factor{};

/// Preload that the same torque leaves when the nut factor has changed: oil on threads of a dry specification, fluid
/// left behind after loosening.
struct PreloadAfterFrictionChange {
  static constexpr const char* name = "preload_after_friction_change";
  static constexpr const char* summary = "Preload after a change of the nut factor";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"nut_factor", "K", Dim::number, positive, within(0.05, 0.6)},
      {"new_nut_factor", "K_new", Dim::number, positive, within(0.05, 0.6)},
  };
  static constexpr Arg output = {"new_preload", "F_new", Dim::force, non_negative};
  static constexpr Source sources[] = {{"Textbook", "T = K F d at constant T", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real K, Real K_new) noexcept {
    return F_M * K / K_new;
  }
};
/// \copydoc PreloadAfterFrictionChange
inline constexpr Formula<PreloadAfterFrictionChange> preload_after_friction_change{};

/// Wrench torque for a nut with a prevailing torque: the prevailing torque adds, the preload comes from the rest.
struct SettingWithPrevailing {
  static constexpr const char* name = "setting_with_prevailing";
  static constexpr const char* summary = "Wrench torque with a prevailing torque";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"prevailing_torque", "M_P", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"setting", "M", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"US Army TM 5-2330-325-13&P", "WP 0095", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real M_P) noexcept {
    return M_A + M_P;
  }
};
/// \copydoc SettingWithPrevailing
inline constexpr Formula<SettingWithPrevailing> setting_with_prevailing{};

}  // namespace tauten::TAUTEN_ABI
