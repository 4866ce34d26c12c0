// Torque per unit of preload: the lengths by which a preload acts on the wrench, and the torque of the bearing face.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// The three lengths of which every linear torque formula is made, per unit of preload and coefficient of friction.
/// Compilers do not turn a division by a constant into the far cheaper multiplication, as the last digit may differ.
/// Loops over columns spend most of their time in divisions, so it is done here.
struct LeverParts {
  /// P/(2 pi): lifts the load, and helps when loosening.
  template <class Real>
  static constexpr Real lift(Real P) noexcept {
    return P * (1 / (2 * pi<Real>()));
  }
  /// d_2/(2 cos 30): rubs on the flanks of the 60 degree thread.
  template <class Real>
  static constexpr Real flanks(Real d_2) noexcept {
    return d_2 * (1 / (2 * cos30<Real>()));
  }
  /// D_Km/2: rubs under the turned head or nut.
  template <class Real>
  static constexpr Real face(Real D_Km) noexcept {
    return D_Km / 2;
  }
};

/// Torque in the thread per unit of preload, linear form:
///   P/(2 pi) lifts, mu_G d_2/(2 cos 30) rubs on the flanks.
/// Valid for the 60 degree ISO thread; 0.4 to 2 % below the exact form for M6 to M16 and mu_G 0.08 to 0.30.
struct ThreadLever {
  static constexpr const char* name = "thread_lever";
  static constexpr const char* summary = "Thread torque per unit of preload (linear form)";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
  };
  static constexpr Arg output = {"thread_lever", "a_G", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9, thread torque", Seen::memory},
                                       {"VDI 2230 Part 1:2003", "section 5.4.3, thread torque", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2, Real mu_G) noexcept {
    return LeverParts::lift(P) + mu_G * LeverParts::flanks(d_2);
  }
};
/// \copydoc ThreadLever
inline constexpr Formula<ThreadLever> thread_lever{};

/// Torque at the turned head or nut per unit of preload, linear form: the thread lever and mu_K D_Km/2 of the bearing
/// face. The ratio of this length to the diameter is the nut factor.
struct TorqueLever {
  static constexpr const char* name = "torque_lever";
  static constexpr const char* summary = "Tightening torque per unit of preload (linear form)";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"torque_lever", "a", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 16047:2005", "clause 9", Seen::memory},
                                       {"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return ThreadLever::eval(P, d_2, mu_G) + mu_K * LeverParts::face(D_Km);
  }
};
/// \copydoc TorqueLever
inline constexpr Formula<TorqueLever> torque_lever{};

/// Friction torque under the turned head or nut. It does not reach the shank.
struct BearingTorque {
  static constexpr const char* name = "bearing_torque";
  static constexpr const char* summary = "Friction torque under the turned head or nut";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"bearing_torque", "M_K", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3, head friction torque", Seen::memory},
                                       {"ISO 16047:2005", "clause 9", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real mu_K, Real D_Km) noexcept {
    return F_M * mu_K * LeverParts::face(D_Km);
  }
};
/// \copydoc BearingTorque
inline constexpr Formula<BearingTorque> bearing_torque{};

}  // namespace tauten::TAUTEN_ABI
