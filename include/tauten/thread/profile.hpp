// Basic dimensions of the ISO 68-1 thread profile, and the areas that carry load.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Height of the fundamental triangle of the 60 degree profile.
struct TriangleHeight {
  static constexpr const char* name = "triangle_height";
  static constexpr const char* summary = "Height of the fundamental triangle";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"triangle_height", "H", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 68-1:1998", "clause 4, basic profile", Seen::memory},
                                       {"ISO 724:1993", "clause 4", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real P) noexcept {
    return cos30<Real>() * P;
  }
};
/// \copydoc TriangleHeight
inline constexpr Formula<TriangleHeight> triangle_height{};

/// Basic pitch diameter: d - 3/4 H.
struct PitchDiameter {
  static constexpr const char* name = "pitch_diameter";
  static constexpr const char* summary = "Basic pitch diameter";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"pitch_diameter", "d_2", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 68-1:1998", "clause 4, basic profile", Seen::memory},
                                       {"ISO 724:1993", "clause 4", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return d - 3 * TriangleHeight::eval(P) / 4;
  }
};
/// \copydoc PitchDiameter
inline constexpr Formula<PitchDiameter> pitch_diameter{};

/// Basic minor diameter of the internal thread: d - 5/4 H.
struct MinorDiameter {
  static constexpr const char* name = "minor_diameter";
  static constexpr const char* summary = "Basic minor diameter of the nut thread";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"minor_diameter", "D_1", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 68-1:1998", "clause 4, basic profile", Seen::memory},
                                       {"ISO 724:1993", "clause 4", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return d - 5 * TriangleHeight::eval(P) / 4;
  }
};
/// \copydoc MinorDiameter
inline constexpr Formula<MinorDiameter> minor_diameter{};

/// Minor diameter of the external thread with the root rounded at H/6: d - 17/12 H.
struct RootDiameter {
  static constexpr const char* name = "root_diameter";
  static constexpr const char* summary = "Root diameter of the bolt thread";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"root_diameter", "d_3", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 898-1:2013", "clause 9.1.6, stress area", Seen::memory},
                                       {"DIN 13-1:1999", "basic dimensions", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return d - 17 * TriangleHeight::eval(P) / 12;
  }
};
/// \copydoc RootDiameter
inline constexpr Formula<RootDiameter> root_diameter{};

/// Minimum root diameter of a bolt whose pitch diameter is at its lower limit, root radius 0.125 P: d_2min - H + P/4.
/// This root carries the breaking torques of ISO 898-7.
struct MinimumRootDiameter {
  static constexpr const char* name = "minimum_root_diameter";
  static constexpr const char* summary = "Minimum root diameter of the bolt thread";
  static constexpr Arg inputs[] = {
      {"minimum_pitch_diameter", "d_2min", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"minimum_root_diameter", "d_3min", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 965-1:1998", "clause 11, root contour", Seen::memory},
                                       {"ISO 898-7:1992", "Table 1, reproduced by its torques", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d_2min, Real P) noexcept {
    return d_2min - TriangleHeight::eval(P) + P / 4;
  }
};
/// \copydoc MinimumRootDiameter
inline constexpr Formula<MinimumRootDiameter> minimum_root_diameter{};

/// Diameter of the circle whose area carries the tension: mean of pitch and root diameter.
struct StressDiameter {
  static constexpr const char* name = "stress_diameter";
  static constexpr const char* summary = "Diameter of the stress area";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"stress_diameter", "d_s", Dim::length, positive};
  static constexpr Source sources[] = {{"ISO 898-1:2013", "clause 9.1.6", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return (PitchDiameter::eval(d, P) + RootDiameter::eval(d, P)) / 2;
  }
  /// A thread has a core; a diameter swapped with the pitch has none.
  template <class Real>
  static constexpr Real requirement(Real d, Real P) noexcept {
    return RootDiameter::eval(d, P);
  }
};
/// \copydoc StressDiameter
inline constexpr Formula<StressDiameter> stress_diameter{};

/// Nominal stress area of the ISO thread. Standards print it to three significant digits and compute with the rounded
/// figure; this is the exact one.
struct StressArea {
  static constexpr const char* name = "stress_area";
  static constexpr const char* summary = "Nominal stress area";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"stress_area", "A_s", Dim::area, positive};
  static constexpr Source sources[] = {{"ISO 898-1:2013", "clause 9.1.6", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return circle_area(StressDiameter::eval(d, P));
  }
  /// A thread has a core; a diameter swapped with the pitch has none.
  template <class Real>
  static constexpr Real requirement(Real d, Real P) noexcept {
    return RootDiameter::eval(d, P);
  }
};
/// \copydoc StressArea
inline constexpr Formula<StressArea> stress_area{};

/// Stress area of the unified inch thread: pi/4 (D - 0.9743 P)^2, with P one inch over the threads per inch.
struct StressAreaUnified {
  static constexpr const char* name = "stress_area_unified";
  static constexpr const char* summary = "Stress area of a unified thread";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"stress_area", "A_s", Dim::area, positive};
  static constexpr Source sources[] = {{"ASME B1.1", "Appendix B, tensile stress area", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d, Real P) noexcept {
    return circle_area(d - Real(0.9743) * P);
  }
  /// A thread has a core; a diameter swapped with the pitch has none.
  template <class Real>
  static constexpr Real requirement(Real d, Real P) noexcept {
    return d - Real(0.9743) * P;
  }
};
/// \copydoc StressAreaUnified
inline constexpr Formula<StressAreaUnified> stress_area_unified{};

/// Lead angle of a single-start thread at the pitch diameter.
struct LeadAngle {
  static constexpr const char* name = "lead_angle";
  static constexpr const char* summary = "Lead angle";
  static constexpr Arg inputs[] = {
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
      {"pitch_diameter", "d_2", Dim::length, positive},
  };
  static constexpr Arg output = {"lead_angle", "phi", Dim::angle, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.3", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real P, Real d_2) noexcept {
    return atan(P / (pi<Real>() * d_2));
  }
};
/// \copydoc LeadAngle
inline constexpr Formula<LeadAngle> lead_angle{};

}  // namespace tauten::TAUTEN_ABI
