// What of the wrench torque tightens the joint, and what twists the shank beside it.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque that reaches thread and bearing face: what the wrench really gives, less what is lost before.
/// The prevailing torque of a locking nut or insert is measured while it turns without preload; it is taken to stay the
/// same under preload. Solved for the setting of a true wrench it is `setting_with_prevailing`.
struct EffectiveTorque {
  static constexpr const char* name = "effective_torque";
  static constexpr const char* summary = "Torque that reaches thread and bearing face";
  static constexpr Arg inputs[] = {
      {"setting", "M_S", Dim::torque, non_negative},
      {"wrench_deviation", "e_W", Dim::number, within(-0.5, 0.5), within(-0.1, 0.1)},
      {"prevailing_torque", "M_P", Dim::torque, non_negative},
      {"shank_torque", "M_D", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"US Army TM 5-2330-325-13&P", "WP 0095, prevailing torque", Seen::in_print},
                                       {"ISO 6789-1:2017", "relative deviation of the wrench", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_S, Real e_W, Real M_P, Real M_D) noexcept {
    return M_S * (1 + e_W) - M_P - M_D;
  }
};
/// \copydoc EffectiveTorque
inline constexpr Formula<EffectiveTorque> effective_torque{};

/// Torque that twists the shank while the wrench turns: the thread torque, and the prevailing torque of a locking
/// element, which the shank carries too.
struct ShankTorsion {
  static constexpr const char* name = "shank_torsion";
  static constexpr const char* summary = "Torque that twists the shank, with a prevailing torque";
  static constexpr Arg inputs[] = {
      {"thread_torque", "M_G", Dim::torque, non_negative},
      {"prevailing_torque", "M_P", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"shank_torsion", "M_T", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Statics", "sum of the torques on the shank", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real M_G, Real M_P) noexcept {
    return M_G + M_P;
  }
};
/// \copydoc ShankTorsion
inline constexpr Formula<ShankTorsion> shank_torsion{};

}  // namespace tauten::TAUTEN_ABI
