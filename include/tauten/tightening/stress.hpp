// How hard tightening works the bolt: tension and torsion together.
#pragma once

#include "tauten/friction/lever.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/tightening/thread_incline.hpp"

namespace tauten::TAUTEN_ABI {

/// Torsion of the thread section while tightening, as stress over tension stress (tau/sigma), for a torsion factor of
/// 3/2 (section fully plastic, VDI 2230 from 2001 on) or 2 (elastic, editions before). All formulas below rest on it.
struct TorsionOverTension {
  template <class Real>
  static constexpr Real of(Real factor, Real lever, Real d_s) noexcept {
    return factor * 2 * lever / d_s;
  }
  template <class Real>
  static constexpr Real equivalent(Real ratio) noexcept {
    return sqrt(1 + 3 * square(ratio));
  }
  /// Load at which the section reaches a share nu of the stress R, with the thread torque as lever of the load.
  template <class Real>
  static constexpr Real load(Real factor, Real lever, Real d_s, Real nu, Real R) noexcept {
    return nu * LoadAtStress::eval(circle_area(d_s), R) / equivalent(of(factor, lever, d_s));
  }
  template <class Real>
  static constexpr Real stress(Real factor, Real F_M, Real M_G, Real d_s) noexcept {
    return F_M / circle_area(d_s) * equivalent(of(factor, M_G / F_M, d_s));
  }
  template <class Real>
  static constexpr Real plastic() noexcept {
    return Real(3) / 2;
  }
  template <class Real>
  static constexpr Real elastic() noexcept {
    return Real(2);
  }
};

/// Inputs and output of the assembly preloads.
struct AssemblyPreloadArgs {
  static constexpr Arg inputs[] = {
      {"yield_strength", "R_p0.2", Dim::stress, positive, within(100e6, 1500e6)},
      {"utilisation", "nu", Dim::number, non_negative, within(0, 1)},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
      {"stress_diameter", "d_s", Dim::length, positive},
      {"thread_friction", "mu_G", Dim::number, non_negative, within(0.02, 1)},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, non_negative};
};

/// Preload at which tension and torsion together use a share nu of the yield strength, thread section fully plastic
/// in torsion (torsion factor 3/2, current editions). Linear thread torque, as the guideline
/// prints it; the tables themselves follow `assembly_preload_exact`.
struct AssemblyPreload : AssemblyPreloadArgs {
  static constexpr const char* name = "assembly_preload";
  static constexpr const char* summary = "Preload at a share of yield while tightening (plastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.5.2, assembly preload", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real R_p, Real nu, Real P, Real d_2, Real d_s, Real mu_G) noexcept {
    const Real lever = ThreadLever::eval(P, d_2, mu_G);
    return TorsionOverTension::load(TorsionOverTension::plastic<Real>(), lever, d_s, nu, R_p);
  }
};
/// \copydoc AssemblyPreload
inline constexpr Formula<AssemblyPreload> assembly_preload{};

/// `assembly_preload` without the small-angle form of the thread torque. The printed assembly preload tables were
/// computed this way; the linear form lies up to 1.3 % above them at high friction.
struct AssemblyPreloadExact : AssemblyPreloadArgs {
  static constexpr const char* name = "assembly_preload_exact";
  static constexpr const char* summary = "Preload at a share of yield while tightening (plastic torsion, exact thread)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2001", "Table A3, reproduced by its figures", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real R_p, Real nu, Real P, Real d_2, Real d_s, Real mu_G) noexcept {
    const Real lever = ThreadIncline::lever(P, d_2, mu_G);
    return TorsionOverTension::load(TorsionOverTension::plastic<Real>(), lever, d_s, nu, R_p);
  }
  /// Friction must leave the thread room to turn.
  template <class Real>
  static constexpr Real requirement(Real, Real, Real P, Real d_2, Real, Real mu_G) noexcept {
    return ThreadIncline::room(ThreadIncline::of(P, d_2, mu_G, tan30<Real>()));
  }
};
/// \copydoc AssemblyPreloadExact
inline constexpr Formula<AssemblyPreloadExact> assembly_preload_exact{};

/// Preload at which the surface of the thread section reaches a share nu of the yield strength (torsion factor 2,
/// editions before 2001); 4 % below the plastic form at mu_G 0.08, 16 % at 0.30.
struct AssemblyPreloadElastic : AssemblyPreloadArgs {
  static constexpr const char* name = "assembly_preload_elastic";
  static constexpr const char* summary = "Preload at a share of yield while tightening (elastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:1986", "assembly preload, elastic torsion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real R_p, Real nu, Real P, Real d_2, Real d_s, Real mu_G) noexcept {
    const Real lever = ThreadLever::eval(P, d_2, mu_G);
    return TorsionOverTension::load(TorsionOverTension::elastic<Real>(), lever, d_s, nu, R_p);
  }
};
/// \copydoc AssemblyPreloadElastic
inline constexpr Formula<AssemblyPreloadElastic> assembly_preload_elastic{};

/// Inputs and output of the stresses while tightening.
struct AssemblyStressArgs {
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, positive},
      {"thread_torque", "M_G", Dim::torque, non_negative},
      {"stress_diameter", "d_s", Dim::length, positive},
  };
  static constexpr Arg output = {"stress", "sigma_red", Dim::stress, non_negative};
};

/// Equivalent (von Mises) stress of the thread section while the wrench turns, section fully plastic in torsion.
struct AssemblyStress : AssemblyStressArgs {
  static constexpr const char* name = "assembly_stress";
  static constexpr const char* summary = "Equivalent stress while tightening (plastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.5.2, assembly preload", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real M_G, Real d_s) noexcept {
    return TorsionOverTension::stress(TorsionOverTension::plastic<Real>(), F_M, M_G, d_s);
  }
};
/// \copydoc AssemblyStress
inline constexpr Formula<AssemblyStress> assembly_stress{};

/// Equivalent (von Mises) stress at the surface of the thread section while the wrench turns, elastic torsion.
struct AssemblyStressElastic : AssemblyStressArgs {
  static constexpr const char* name = "assembly_stress_elastic";
  static constexpr const char* summary = "Equivalent stress while tightening (elastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:1986", "assembly preload, elastic torsion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real M_G, Real d_s) noexcept {
    return TorsionOverTension::stress(TorsionOverTension::elastic<Real>(), F_M, M_G, d_s);
  }
};
/// \copydoc AssemblyStressElastic
inline constexpr Formula<AssemblyStressElastic> assembly_stress_elastic{};

/// Inputs and output of the utilisations.
struct YieldUtilisationArgs {
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, positive},
      {"thread_torque", "M_G", Dim::torque, non_negative},
      {"stress_diameter", "d_s", Dim::length, positive},
      {"yield_strength", "R_p0.2", Dim::stress, positive, within(100e6, 1500e6)},
  };
  static constexpr Arg output = {"utilisation", "nu", Dim::number, non_negative};
};

/// Share of the yield strength that tension and torsion together use while the wrench turns (plastic torsion).
struct YieldUtilisation : YieldUtilisationArgs {
  static constexpr const char* name = "yield_utilisation";
  static constexpr const char* summary = "Share of yield used while tightening (plastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.5.2, assembly preload", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real M_G, Real d_s, Real R_p) noexcept {
    return AssemblyStress::eval(F_M, M_G, d_s) / R_p;
  }
};
/// \copydoc YieldUtilisation
inline constexpr Formula<YieldUtilisation> yield_utilisation{};

/// Share of the yield strength that the surface of the thread section uses while the wrench turns (elastic torsion).
struct YieldUtilisationElastic : YieldUtilisationArgs {
  static constexpr const char* name = "yield_utilisation_elastic";
  static constexpr const char* summary = "Share of yield used while tightening (elastic torsion)";
  static constexpr Source sources[] = {{"VDI 2230 Part 1:1986", "assembly preload, elastic torsion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real M_G, Real d_s, Real R_p) noexcept {
    return AssemblyStressElastic::eval(F_M, M_G, d_s) / R_p;
  }
};
/// \copydoc YieldUtilisationElastic
inline constexpr Formula<YieldUtilisationElastic> yield_utilisation_elastic{};

}  // namespace tauten::TAUTEN_ABI
