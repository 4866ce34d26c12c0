// Torque and preload without the small-angle form, for any flank angle.
#pragma once

#include "tauten/friction/lever.hpp"
#include "tauten/tightening/thread_incline.hpp"

namespace tauten::TAUTEN_ABI {

/// Inputs of the torques for any flank angle.
struct ScrewTorqueInputs {
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"flank_angle", "alpha", Dim::angle, within(0, 1.2)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
};

/// Tightening (raising) torque of a screw with any flank angle, exact. Flank angle is half the thread angle: 30
/// degrees for ISO threads, 0 for square threads. Pitch is the way of one turn: of a thread with several starts that is
/// the lead. No torque exists once the friction locks the thread against turning
/// (mu tan phi of 1).
struct ScrewTorque : ScrewTorqueInputs {
  static constexpr const char* name = "screw_torque";
  static constexpr const char* summary = "Tightening torque for any flank angle (exact form)";
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {
      {"Shigley, Mechanical Engineering Design, 9th ed.", "eqs. (8-1), (8-5), (8-6); solution 8-4", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real alpha, Real mu_K, Real D_Km) noexcept {
    const auto slopes = ThreadIncline::of(P, d_2, mu_G, tan(alpha));
    return F_M * d_2 / 2 * ThreadIncline::tighten(slopes) + BearingTorque::eval(F_M, mu_K, D_Km);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d_2, Real mu_G, Real alpha, Real, Real) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan(alpha)));
  }
};
/// \copydoc ScrewTorque
inline constexpr Formula<ScrewTorque> screw_torque{};

/// Loosening (lowering) torque of a screw with any flank angle, exact. Negative if the screw turns back by itself. Pitch
/// is the way of one turn, the lead of a thread with several starts.
struct ScrewLooseningTorque : ScrewTorqueInputs {
  static constexpr const char* name = "screw_loosening_torque";
  static constexpr const char* summary = "Loosening torque for any flank angle (exact form)";
  static constexpr Arg output = {"loosening_torque", "M_L", Dim::torque, any_sign};
  static constexpr Source sources[] = {
      {"Shigley, Mechanical Engineering Design, 9th ed.", "eqs. (8-2), (8-6); solution 8-4", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real alpha, Real mu_K, Real D_Km) noexcept {
    const auto slopes = ThreadIncline::of(P, d_2, mu_G, tan(alpha));
    return F_M * d_2 / 2 * ThreadIncline::loosen(slopes) + BearingTorque::eval(F_M, mu_K, D_Km);
  }
};
/// \copydoc ScrewLooseningTorque
inline constexpr Formula<ScrewLooseningTorque> screw_loosening_torque{};

/// Share of the thread torque that lifts the load: tan(phi)/tan(phi + rho'). Pitch is the way of one turn, the lead of a
/// thread with several starts.
struct ScrewEfficiency {
  static constexpr const char* name = "screw_efficiency";
  static constexpr const char* summary = "Efficiency of a screw thread";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"flank_angle", "alpha", Dim::angle, within(0, 1.2)},
  };
  static constexpr Arg output = {"efficiency", "eta", Dim::number, positive};
  static constexpr Source sources[] = {
      {"Shigley, Mechanical Engineering Design, 9th ed.", "eq. (8-4); solution 8-3", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2, Real mu_G, Real alpha) noexcept {
    const auto slopes = ThreadIncline::of(P, d_2, mu_G, tan(alpha));
    return slopes.rise / ThreadIncline::tighten(slopes);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real P, Real d_2, Real mu_G, Real alpha) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan(alpha)));
  }
};
/// \copydoc ScrewEfficiency
inline constexpr Formula<ScrewEfficiency> screw_efficiency{};

/// Inputs of the torques of the ISO thread, which has one start.
struct ExactTorqueInputs {
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
};

/// Tightening torque of the ISO thread without the small-angle form.
struct TighteningTorqueExact : ExactTorqueInputs {
  static constexpr const char* name = "tightening_torque_exact";
  static constexpr const char* summary = "Torque that leaves a given preload (exact form)";
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return F_M * ThreadIncline::lever(P, d_2, mu_G) + BearingTorque::eval(F_M, mu_K, D_Km);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d_2, Real mu_G, Real, Real) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan30<Real>()));
  }
};
/// \copydoc TighteningTorqueExact
inline constexpr Formula<TighteningTorqueExact> tightening_torque_exact{};

/// Preload that a torque leaves, without the small-angle form; the inverse of `tightening_torque_exact`.
struct PreloadFromTorqueExact {
  static constexpr const char* name = "preload_from_torque_exact";
  static constexpr const char* summary = "Preload that a torque leaves (exact form)";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return M_A / TighteningTorqueExact::eval(Real(1), P, d_2, mu_G, mu_K, D_Km);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d_2, Real mu_G, Real, Real) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan30<Real>()));
  }
};
/// \copydoc PreloadFromTorqueExact
inline constexpr Formula<PreloadFromTorqueExact> preload_from_torque_exact{};

/// The part of the tightening torque that twists the shank, without the small-angle form.
struct ThreadTorqueExact {
  static constexpr const char* name = "thread_torque_exact";
  static constexpr const char* summary = "Torque in the thread at a preload (exact form)";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
  };
  static constexpr Arg output = {"thread_torque", "M_G", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G) noexcept {
    return F_M * ThreadIncline::lever(P, d_2, mu_G);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d_2, Real mu_G) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan30<Real>()));
  }
};
/// \copydoc ThreadTorqueExact
inline constexpr Formula<ThreadTorqueExact> thread_torque_exact{};

/// Nut factor from the two coefficients of friction, without the small-angle form; 0.2 to 1 % above `nut_factor` for M6
/// to M16 and mu 0.08 to 0.30.
struct NutFactorExact {
  static constexpr const char* name = "nut_factor_exact";
  static constexpr const char* summary = "Nut factor from friction (exact form)";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_friction", "mu_K", Dim::number, non_negative, within(0.02, 1)},
      {"bearing_diameter", "D_Km", Dim::length, non_negative},
  };
  static constexpr Arg output = {"nut_factor", "K", Dim::number, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory},
                                       {"ISO 16047:2005", "clause 9, K = T/(F d)", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    return TighteningTorqueExact::eval(Real(1), P, d_2, mu_G, mu_K, D_Km) / d;
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d_2, Real mu_G, Real, Real) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan30<Real>()));
  }
};
/// \copydoc NutFactorExact
inline constexpr Formula<NutFactorExact> nut_factor_exact{};

/// Loosening torque of a clean, newly tightened joint of the ISO thread, without the small-angle form. Rust and time
/// are not in it. Negative if it loosens by itself.
struct LooseningTorqueExact : ExactTorqueInputs {
  static constexpr const char* name = "loosening_torque_exact";
  static constexpr const char* summary = "Loosening torque of a clean joint (exact form)";
  static constexpr Arg output = {"loosening_torque", "M_L", Dim::torque, any_sign};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real P, Real d_2, Real mu_G, Real mu_K, Real D_Km) noexcept {
    const auto slopes = ThreadIncline::of(P, d_2, mu_G, tan30<Real>());
    return F_M * d_2 / 2 * ThreadIncline::loosen(slopes) + BearingTorque::eval(F_M, mu_K, D_Km);
  }
};
/// \copydoc LooseningTorqueExact
inline constexpr Formula<LooseningTorqueExact> loosening_torque_exact{};

}  // namespace tauten::TAUTEN_ABI
