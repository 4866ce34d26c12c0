// When a thread strips: the cylinders along which its ridges shear, and the load that they carry.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Area along which the thread of a bolt shears: the cylinder of the nut's minor diameter, as far as it cuts the ridges
/// of the bolt. Take the largest minor diameter of the nut and the smallest pitch diameter of the bolt for the area that
/// any pair within tolerance reaches.
struct ExternalStripArea {
  static constexpr const char* name = "external_strip_area";
  static constexpr const char* summary = "Area in which the thread of a bolt strips";
  static constexpr Arg inputs[] = {
      {"engaged_length", "L_e", Dim::length, non_negative},
      {"pitch", "P", Dim::length, positive},
      {"minor_diameter", "D_1", Dim::length, positive},
      {"pitch_diameter", "d_2", Dim::length, positive},
  };
  static constexpr Arg output = {"strip_area", "A_SG", Dim::area, non_negative};
  static constexpr Source sources[] = {{"Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed.",
                                        "metric thread stress and strip areas, after FED-STD-H28", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real L_e, Real P, Real D_1, Real d_2) noexcept {
    return pi<Real>() * L_e * D_1 * (Real(0.5) + (d_2 - D_1) * tan30<Real>() / P);
  }
  /// The cylinder cuts the ridges.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real D_1, Real d_2) noexcept {
    return P / 2 + (d_2 - D_1) * tan30<Real>();
  }
};
/// \copydoc ExternalStripArea
inline constexpr Formula<ExternalStripArea> external_strip_area{};

/// Area along which the thread of a nut or tapped hole shears: the cylinder of the bolt's major diameter. Take the
/// smallest major diameter of the bolt and the largest pitch diameter of the nut for the area that any pair reaches.
struct InternalStripArea {
  static constexpr const char* name = "internal_strip_area";
  static constexpr const char* summary = "Area in which the thread of a nut or tapped hole strips";
  static constexpr Arg inputs[] = {
      {"engaged_length", "L_e", Dim::length, non_negative},
      {"pitch", "P", Dim::length, positive},
      {"diameter", "d", Dim::length, positive},
      {"nut_pitch_diameter", "D_2", Dim::length, positive},
  };
  static constexpr Arg output = {"strip_area", "A_SGM", Dim::area, non_negative};
  static constexpr Source sources[] = {{"Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed.",
                                        "metric thread stress and strip areas, after FED-STD-H28", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real L_e, Real P, Real d, Real D_2) noexcept {
    return pi<Real>() * L_e * d * (Real(0.5) + (d - D_2) * tan30<Real>() / P);
  }
  /// The cylinder cuts the ridges.
  template <class Real>
  static constexpr Real requirement(Real, Real P, Real d, Real D_2) noexcept {
    return P / 2 + (d - D_2) * tan30<Real>();
  }
};
/// \copydoc InternalStripArea
inline constexpr Formula<InternalStripArea> internal_strip_area{};

/// Strip strength of the internal thread over that of the external one. Below 1 the nut or tapped part strips first.
struct StripStrengthRatio {
  static constexpr const char* name = "strip_strength_ratio";
  static constexpr const char* summary = "Strip strength of the internal over that of the external thread";
  static constexpr Arg inputs[] = {
      {"internal_shear_strength", "tau_BM", Dim::stress, positive},
      {"internal_area", "A_SGM", Dim::area, positive},
      {"external_shear_strength", "tau_BS", Dim::stress, positive},
      {"external_area", "A_SG", Dim::area, positive},
  };
  static constexpr Arg output = {"strength_ratio", "R_S", Dim::number, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.5.5, strength ratio", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_BM, Real A_SGM, Real tau_BS, Real A_SG) noexcept {
    return tau_BM * A_SGM / (tau_BS * A_SG);
  }
};
/// \copydoc StripStrengthRatio
inline constexpr Formula<StripStrengthRatio> strip_strength_ratio{};

/// Share of the strip strength that a nut keeps although it widens under load, C_1 over width across flats by diameter.
/// It is 1 from a ratio of 1.9 on, and for a tapped part that wide.
struct NutDilationFactor {
  static constexpr const char* name = "nut_dilation_factor";
  static constexpr const char* summary = "Strip strength kept by a nut that widens";
  static constexpr Arg inputs[] = {
      {"width_ratio", "s_d", Dim::number, within(1.4, 1.9), within(1.4, 1.9)},
  };
  static constexpr Arg output = {"dilation_factor", "C_1", Dim::number, positive};
  static constexpr Source sources[] = {
      {"E. M. Alexander, Analysis and design of threaded assemblies, SAE 770420", "nut dilation", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real s_d) noexcept {
    return Real(3.8) * s_d - square(s_d) - Real(2.61);
  }
};
/// \copydoc NutDilationFactor
inline constexpr Formula<NutDilationFactor> nut_dilation_factor{};

/// Factor on the strip strength of the bolt thread as the threads of both bend, C_2, where the nut is the stronger: its
/// ratio of strip strengths lies between 1 and 2.2. Below 1 it is 0.897.
struct BoltThreadBendingFactor {
  static constexpr const char* name = "bolt_thread_bending_factor";
  static constexpr const char* summary = "Effect of thread bending on the strip strength of the bolt";
  static constexpr Arg inputs[] = {
      {"strength_ratio", "R_S", Dim::number, within(1, 2.2), within(1, 2.2)},
  };
  static constexpr Arg output = {"bending_factor", "C_2", Dim::number, positive};
  static constexpr Source sources[] = {
      {"E. M. Alexander, Analysis and design of threaded assemblies, SAE 770420", "thread bending", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real R_S) noexcept {
    return Real(5.594) - R_S * (Real(13.682) - R_S * (Real(14.107) - R_S * (Real(6.057) - R_S * Real(0.9353))));
  }
};
/// \copydoc BoltThreadBendingFactor
inline constexpr Formula<BoltThreadBendingFactor> bolt_thread_bending_factor{};

/// Factor on the strip strength of the internal thread as the threads of both bend, C_3, where the bolt is the stronger:
/// the ratio of strip strengths lies between 0.4 and 1. Above 1 it is 0.897.
struct NutThreadBendingFactor {
  static constexpr const char* name = "nut_thread_bending_factor";
  static constexpr const char* summary = "Effect of thread bending on the strip strength of the nut";
  static constexpr Arg inputs[] = {
      {"strength_ratio", "R_S", Dim::number, within(0.4, 1), within(0.4, 1)},
  };
  static constexpr Arg output = {"bending_factor", "C_3", Dim::number, positive};
  static constexpr Source sources[] = {
      {"E. M. Alexander, Analysis and design of threaded assemblies, SAE 770420", "thread bending", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real R_S) noexcept {
    return Real(0.728) + R_S * (Real(1.769) - R_S * (Real(2.896) - R_S * Real(1.296)));
  }
};
/// \copydoc NutThreadBendingFactor
inline constexpr Formula<NutThreadBendingFactor> nut_thread_bending_factor{};

/// Load at which a thread strips. The handbooks leave both factors at 1, which lies 10 % above for threads of equal
/// strength and up to a third above for a narrow nut.
struct StripLoad {
  static constexpr const char* name = "strip_load";
  static constexpr const char* summary = "Load at which a thread strips";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"strip_area", "A_SG", Dim::area, non_negative},
      {"dilation_factor", "C_1", Dim::number, positive, within(0.75, 1)},
      {"bending_factor", "C_3", Dim::number, positive, within(0.85, 1.2)},
  };
  static constexpr Arg output = {"load", "F_mG", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"E. M. Alexander, Analysis and design of threaded assemblies, SAE 770420", "strip load", Seen::memory},
      {"VDI 2230 Part 1:2003", "section 5.5.5", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real A_SG, Real C_1, Real C_3) noexcept {
    return tau_u * A_SG * C_1 * C_3;
  }
};
/// \copydoc StripLoad
inline constexpr Formula<StripLoad> strip_load{};

/// Length of engagement at which the internal thread carries a load, 0.8 P for the chamfered ends included. With the
/// load at which the bolt breaks it is the length from which on the bolt breaks and no thread strips. The strip area is
/// that of one pitch, `internal_strip_area` with the pitch as engaged length.
struct NeededEngagement {
  static constexpr const char* name = "needed_engagement";
  static constexpr const char* summary =
      "Engagement at which the internal thread carries a load, from the strip area of one pitch";
  static constexpr Arg inputs[] = {
      {"load", "F", Dim::force, non_negative},
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"pitch", "P", Dim::length, positive},
      {"strip_area", "A_SG", Dim::area, positive},
      {"dilation_factor", "C_1", Dim::number, positive, within(0.75, 1)},
      {"bending_factor", "C_3", Dim::number, positive, within(0.85, 1.2)},
  };
  static constexpr Arg output = {"engaged_length", "m_ges", Dim::length, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.5.5, length of engagement", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F, Real tau_u, Real P, Real A_SG, Real C_1, Real C_3) noexcept {
    return F * P / StripLoad::eval(tau_u, A_SG, C_1, C_3) + Real(0.8) * P;
  }
};
/// \copydoc NeededEngagement
inline constexpr Formula<NeededEngagement> needed_engagement{};

/// Pressure under a head or nut, even over the ring between its bearing face and the hole.
struct BearingPressure {
  static constexpr const char* name = "bearing_pressure";
  static constexpr const char* summary = "Pressure under a head or nut";
  static constexpr Arg inputs[] = {
      {"load", "F", Dim::force, non_negative},
      {"outer_diameter", "d_a", Dim::length, positive},
      {"inner_diameter", "d_i", Dim::length, non_negative},
  };
  static constexpr Arg output = {"pressure", "p", Dim::stress, non_negative};
  static constexpr Source sources[] = {
      {"Course lesson notes on aircraft components, script V5.0.16, 2025", "lesson 13, after VDI 2230", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real F, Real d_a, Real d_i) noexcept {
    return F / (circle_area(d_a) - circle_area(d_i));
  }
  /// The face lies outside of the hole.
  template <class Real>
  static constexpr Real requirement(Real, Real d_a, Real d_i) noexcept {
    return d_a - d_i;
  }
};
/// \copydoc BearingPressure
inline constexpr Formula<BearingPressure> bearing_pressure{};

}  // namespace tauten::TAUTEN_ABI
