// Torque and preload, linear form: what a torque leaves in the bolt, and what a preload asks for.
#pragma once

#include "tauten/friction/lever.hpp"

namespace tauten::TAUTEN_ABI {

/// Tightening torque for a preload, friction of thread and bearing face given apart.
/// Linear in both coefficients; 0.2 to 1 % below `tightening_torque_exact` for M6 to M16 and mu 0.08 to 0.30.
/// A prevailing torque adds to it (`setting_with_prevailing`).
struct TighteningTorque {
  static constexpr const char* name = "tightening_torque";
  static constexpr const char* summary = "Torque that leaves a given preload (linear form)";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3, tightening torque", Seen::memory},
                                       {"ISO 16047:2005", "clause 9", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return F_M * TorqueLever::eval(P, d_2, mu_G, mu_K, D_Km);
  }
};
/// \copydoc TighteningTorque
inline constexpr Formula<TighteningTorque> tightening_torque{};

/// Preload that a torque leaves; the inverse of `tightening_torque`. A prevailing torque is to be taken off first.
struct PreloadFromTorque {
  static constexpr const char* name = "preload_from_torque";
  static constexpr const char* summary = "Preload that a torque leaves (linear form)";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3, solved for the preload", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return M_A / TorqueLever::eval(P, d_2, mu_G, mu_K, D_Km);
  }
};
/// \copydoc PreloadFromTorque
inline constexpr Formula<PreloadFromTorque> preload_from_torque{};

/// The part of the tightening torque that twists the shank.
struct ThreadTorque {
  static constexpr const char* name = "thread_torque";
  static constexpr const char* summary = "Torque in the thread at a preload (linear form)";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
  };
  static constexpr Arg output = {"thread_torque", "M_G", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3, thread torque", Seen::memory},
                                       {"ISO 16047:2005", "clause 9", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G) noexcept {
    return F_M * ThreadLever::eval(P, d_2, mu_G);
  }
};
/// \copydoc ThreadTorque
inline constexpr Formula<ThreadTorque> thread_torque{};

}  // namespace tauten::TAUTEN_ABI
