// Coefficients of friction from a torque and preload test.
#pragma once

#include "tauten/friction/lever.hpp"

namespace tauten::TAUTEN_ABI {

/// Friction cannot be negative, but the difference of two torques may round to just below zero.
inline constexpr Interval measured_friction{-1e-9, largest};

/// One coefficient for thread and bearing face together, from torque and preload.
struct TotalFriction {
  static constexpr const char* name = "total_friction";
  static constexpr const char* summary = "Total coefficient of friction from a test";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"total_friction", "mu_tot", Dim::number, measured_friction};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, mu_tot", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real F_M, Real P, Real d_2, Real D_Km) noexcept {
    return (M_A / F_M - LeverParts::lift(P)) / (LeverParts::flanks(d_2) + LeverParts::face(D_Km));
  }
};
/// \copydoc TotalFriction
inline constexpr Formula<TotalFriction> total_friction{};

/// Coefficient of friction in the thread, from thread torque and preload.
struct ThreadFrictionFromTest {
  static constexpr const char* name = "thread_friction_from_test";
  static constexpr const char* summary = "Thread friction from a test";
  static constexpr Arg inputs[] = {
      {"thread_torque", "M_G", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
  };
  static constexpr Arg output = {"thread_friction", "mu_G", Dim::number, measured_friction};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, mu_th", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_G, Real F_M, Real P, Real d_2) noexcept {
    return (M_G / F_M - LeverParts::lift(P)) / LeverParts::flanks(d_2);
  }
};
/// \copydoc ThreadFrictionFromTest
inline constexpr Formula<ThreadFrictionFromTest> thread_friction_from_test{};

/// Coefficient of friction under the head or nut, from bearing torque and preload.
struct BearingFrictionFromTest {
  static constexpr const char* name = "bearing_friction_from_test";
  static constexpr const char* summary = "Bearing friction from a test";
  static constexpr Arg inputs[] = {
      {"bearing_torque", "M_K", Dim::torque, non_negative},
      {"preload", "F_M", Dim::force, positive},
      {"bearing_diameter", "D_Km", Dim::length, positive},
  };
  static constexpr Arg output = {"bearing_friction", "mu_K", Dim::number, non_negative};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, mu_b", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_K, Real F_M, Real D_Km) noexcept {
    return M_K / (F_M * LeverParts::face(D_Km));
  }
};
/// \copydoc BearingFrictionFromTest
inline constexpr Formula<BearingFrictionFromTest> bearing_friction_from_test{};

}  // namespace tauten::TAUTEN_ABI
