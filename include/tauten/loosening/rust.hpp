// How much steel rusts away, how much more room the rust needs, and how hard it presses.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Volume of rust over the volume of the iron it was made of: 2.1 for magnetite to 3.2 for lepidocrocite.
/// Both molar volumes in the same unit, for example cm3/mol; iron has 7.092.
struct RustVolumeRatio {
  static constexpr const char* name = "rust_volume_ratio";
  static constexpr const char* summary = "Volume of rust over the volume of its iron";
  static constexpr Arg inputs[] = {
      {"oxide_volume", "V_ox", Dim::number, positive},
      {"iron_atoms", "z", Dim::number, positive, within(1, 3)},
      {"iron_volume", "V_Fe", Dim::number, positive},
  };
  static constexpr Arg output = {"volume_ratio", "n", Dim::number, positive};
  static constexpr Source sources[] = {
      {"Materials 2017, 10(4):406", "Table 5, molar volumes of rust phases", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real V_ox, Real z, Real V_Fe) noexcept {
    return V_ox / (z * V_Fe);
  }
};
/// \copydoc RustVolumeRatio
inline constexpr Formula<RustVolumeRatio> rust_volume_ratio{};

/// Depth of steel lost after some years in the open, from the loss of the first year: r t^0.523. First-year loss by
/// corrosivity category: C2 1.3 to 25, C3 25 to 50, C4 50 to 80, C5 80 to 200 micrometres. For freely exposed faces;
/// a crevice or salt deposit can be worse.
struct MetalLoss {
  static constexpr const char* name = "metal_loss";
  static constexpr const char* summary = "Depth of steel lost to corrosion after some years";
  static constexpr Arg inputs[] = {
      {"first_year_loss", "r_corr", Dim::length, non_negative, within(0, 200e-6)},
      {"years", "t", Dim::number, positive, within(1, 20)},
  };
  static constexpr Arg output = {"metal_loss", "x", Dim::length, non_negative};
  static constexpr Source sources[] = {{"ISO 9224:2012", "carbon steel, exponent 0.523", Seen::memory},
                                       {"ISO 9223:2012", "Table 2, corrosivity categories", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real r_corr, Real t) noexcept {
    return r_corr * exp(Real(0.523) * log(t));
  }
};
/// \copydoc MetalLoss
inline constexpr Formula<MetalLoss> metal_loss{};

/// Thickness that a face gains, square to it, when a depth of steel turns to rust which stays in place.
struct RustGrowth {
  static constexpr const char* name = "rust_growth";
  static constexpr const char* summary = "Thickness gained where steel turns to rust";
  static constexpr Arg inputs[] = {
      {"metal_loss", "x", Dim::length, non_negative},
      {"volume_ratio", "n", Dim::number, positive, within(2, 3.3)},
  };
  static constexpr Arg output = {"rust_growth", "s_R", Dim::length, any_sign};
  static constexpr Source sources[] = {{"Geometry", "volume ratio on a flat face", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real x, Real n) noexcept {
    return (n - 1) * x;
  }
};
/// \copydoc RustGrowth
inline constexpr Formula<RustGrowth> rust_growth{};

/// Radial interference of bolt and nut when the flanks of their threads have grown by more than the play between them.
/// The flanks lean 30 degrees out of the plane square to the axis (ISO 68-1), so that a nut which gives way by u makes
/// room of u sin 30 square to each flank: growth square to the flank enters twofold. A negative result is room left.
struct RustInterference {
  static constexpr const char* name = "rust_interference";
  static constexpr const char* summary = "Radial interference from rust on the flanks of a thread";
  static constexpr Arg inputs[] = {
      {"rust_growth", "s_R", Dim::length, non_negative},  // of both flanks that face each other, together
      {"flank_play", "j_F", Dim::length, non_negative},   // between them, square to the flank, nut centred
  };
  static constexpr Arg output = {"interference", "u", Dim::length, any_sign};
  static constexpr Source sources[] = {{"Geometry", "flanks of the ISO 68-1 profile, sin 30 = 1/2", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real s_R, Real j_F) noexcept {
    return 2 * (s_R - j_F);
  }
};
/// \copydoc RustInterference
inline constexpr Formula<RustInterference> rust_interference{};

/// Radial pressure between a solid bolt and its nut when rust fills more than the play: a thick ring on a solid shaft of
/// the same elasticity (Lame). `interference` is radial, shaft radius less ring radius before they are joined; a play or
/// an opening in diameter counts half, growth on the flanks as `rust_interference` says. An upper bound: packed rust is
/// softer than steel, and the nut yields.
struct RustPressure {
  static constexpr const char* name = "rust_pressure";
  static constexpr const char* summary = "Pressure of rust that has filled the play (upper bound)";
  static constexpr Arg inputs[] = {
      {"interference", "u", Dim::length, non_negative},
      {"elastic_modulus", "E", Dim::stress, positive, within(60e9, 220e9)},
      {"diameter", "d", Dim::length, positive},
      {"outer_diameter", "d_a", Dim::length, positive},
  };
  static constexpr Arg output = {"radial_pressure", "p_r", Dim::stress, non_negative};
  static constexpr Source sources[] = {
      {"Textbook machine design", "press fit of a ring on a solid shaft, same material", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real u, Real E, Real d, Real d_a) noexcept {
    return E * u / d * (1 - square(d / d_a));
  }
};
/// \copydoc RustPressure
inline constexpr Formula<RustPressure> rust_pressure{};

/// Pressure square to the flanks that holds a radial pressure on the cylinder of the pitch diameter: flanks of k_A times
/// its area, each leaning by 30 degrees, push outward with half of their force.
struct FlankPressure {
  static constexpr const char* name = "flank_pressure";
  static constexpr const char* summary = "Pressure on the flanks that goes with a radial pressure";
  static constexpr Arg inputs[] = {
      {"radial_pressure", "p_r", Dim::stress, non_negative},
      {"flank_factor", "k_A", Dim::number, positive, within(0.5, 1.7)},
  };
  static constexpr Arg output = {"rust_pressure", "p_R", Dim::stress, non_negative};
  static constexpr Source sources[] = {{"Geometry", "flanks of the ISO 68-1 profile, sin 30 = 1/2", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real p_r, Real k_A) noexcept {
    return 2 * p_r / k_A;
  }
};
/// \copydoc FlankPressure
inline constexpr Formula<FlankPressure> flank_pressure{};

}  // namespace tauten::TAUTEN_ABI
