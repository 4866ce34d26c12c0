// Effective friction diameter of the bearing face.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Outer diameter d_w of a hexagon's bearing face over the width across flats, where no standard gives d_w (estimate).
/// The minimum d_w of ISO 4014 and ISO 4032 lies between 0.89 and 0.94 of the nominal width from M8 to M64, which is 0.95
/// of the minimum width where grade and size allow; below M8 it is smaller, down to 0.71.
inline constexpr double hexagon_face_share = 0.92;

/// Effective diameter of the bearing face, as the mean of its outer diameter and the hole. The typical form.
struct MeanBearingDiameter {
  static constexpr const char* name = "mean_bearing_diameter";
  static constexpr const char* summary = "Effective bearing diameter, mean of outer and hole diameter";
  static constexpr Arg inputs[] = {
      {"outer_diameter", "d_a", Dim::length, positive},
      {"inner_diameter", "d_i", Dim::length, non_negative},
  };
  static constexpr Arg output = {"bearing_diameter", "D_Km", Dim::length, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "eq. for D_Km", Seen::memory},
                                       {"ISO 16047:2005", "clause 9, D_b", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d_a, Real d_i) noexcept {
    return (d_a + d_i) / 2;
  }
  /// The face lies outside of the hole.
  template <class Real>
  static constexpr Real requirement(Real d_a, Real d_i) noexcept {
    return d_a - d_i;
  }
};
/// \copydoc MeanBearingDiameter
inline constexpr Formula<MeanBearingDiameter> mean_bearing_diameter{};

/// Effective diameter of a bearing face under uniform pressure: (2/3)(d_a^3 - d_i^3)/(d_a^2 - d_i^2), always between
/// the mean and the outer diameter. Written without the difference quotient, so that a narrow face loses no digits.
struct UniformPressureBearingDiameter {
  static constexpr const char* name = "uniform_pressure_bearing_diameter";
  static constexpr const char* summary = "Effective bearing diameter under uniform pressure";
  static constexpr Arg inputs[] = {
      {"outer_diameter", "d_a", Dim::length, positive},
      {"inner_diameter", "d_i", Dim::length, non_negative},
  };
  static constexpr Arg output = {"bearing_diameter", "D_Km", Dim::length, positive};
  static constexpr Source sources[] = {
      {"Textbook machine design", "collar friction at uniform pressure", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real d_a, Real d_i) noexcept {
    return 2 * (square(d_a) + d_a * d_i + square(d_i)) / (3 * (d_a + d_i));
  }
  /// The face lies outside of the hole.
  template <class Real>
  static constexpr Real requirement(Real d_a, Real d_i) noexcept {
    return d_a - d_i;
  }
};
/// \copydoc UniformPressureBearingDiameter
inline constexpr Formula<UniformPressureBearingDiameter> uniform_pressure_bearing_diameter{};

}  // namespace tauten::TAUTEN_ABI
