// How a plate bends at the bolts that pull it off, and what its edge presses then: the formulas behind prying.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Moment at which a strip of plate yields through its whole thickness. With the tensile strength times a resistance
/// factor in place of the yield strength it is that of the AISC form.
struct PlatePlasticMoment {
  static constexpr const char* name = "plate_plastic_moment";
  static constexpr const char* summary = "Plastic moment of a strip of plate";
  static constexpr Arg inputs[] = {
      {"length", "l", Dim::length, positive},
      {"thickness", "t", Dim::length, positive},
      {"stress", "S", Dim::stress, positive},
  };
  static constexpr Arg output = {"plastic_moment", "M_pl", Dim::torque, positive};
  static constexpr Source sources[] = {{"EN 1993-1-8", "Table 6.2", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real l, Real t, Real S) noexcept {
    return l * square(t) * S / 4;
  }
};
/// \copydoc PlatePlasticMoment
inline constexpr Formula<PlatePlasticMoment> plate_plastic_moment{};

/// Thickness at which the plate alone bears the load of a bolt, so that its edge does not press: t_c where the load is
/// the strength of the bolt.
struct NoPryingThickness {
  static constexpr const char* name = "no_prying_thickness";
  static constexpr const char* summary = "Thickness of plate from which its edge does not press";
  static constexpr Arg inputs[] = {
      {"load", "F", Dim::force, positive},
      {"bolt_lever", "b_1", Dim::length, positive},
      {"length", "l", Dim::length, positive},
      {"stress", "S", Dim::stress, positive},
  };
  static constexpr Arg output = {"no_prying_thickness", "t_c", Dim::length, positive};
  static constexpr Source sources[] = {
      {"AISC Companion Design Examples v16.0", "Ex. II.A-28B and II.D-1", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F, Real b_1, Real l, Real S) noexcept {
    return sqrt(4 * F * b_1 / (l * S));
  }
};
/// \copydoc NoPryingThickness
inline constexpr Formula<NoPryingThickness> no_prying_thickness{};

/// Moment of the plate at the bolts over that at the web, when bolt and plate are used up together. Below 0 the bolts
/// decide alone, above 1 the plate.
struct PryingBendingShare {
  static constexpr const char* name = "prying_bending_share";
  static constexpr const char* summary = "Moment of a prying plate at the bolts over that at the web";
  static constexpr Arg inputs[] = {
      {"no_prying_thickness", "t_c", Dim::length, positive},
      {"thickness", "t", Dim::length, positive},
      {"net_share", "delta", Dim::number, positive, within(0, 1)},
      {"lever_ratio", "rho", Dim::number, positive},
  };
  static constexpr Arg output = {"bending_share", "alpha", Dim::number, any_sign};
  static constexpr Source sources[] = {{"AISC Companion Design Examples v16.0", "Ex. II.A-28B", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real t_c, Real t, Real delta, Real rho) noexcept {
    return (square(t_c / t) - 1) / (delta * (1 + rho));
  }
};
/// \copydoc PryingBendingShare
inline constexpr Formula<PryingBendingShare> prying_bending_share{};

/// Share of the strength of the bolt that bolt and plate have together.
struct PryingStrengthShare {
  static constexpr const char* name = "prying_strength_share";
  static constexpr const char* summary = "Share of the strength of a bolt that prying leaves";
  static constexpr Arg inputs[] = {
      {"no_prying_thickness", "t_c", Dim::length, positive},
      {"thickness", "t", Dim::length, positive},
      {"net_share", "delta", Dim::number, positive, within(0, 1)},
      {"bending_share", "alpha", Dim::number, within(0, 1)},
  };
  static constexpr Arg output = {"strength_share", "Q", Dim::number, positive};
  static constexpr Source sources[] = {{"AISC Companion Design Examples v16.0", "Ex. II.A-28B", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real t_c, Real t, Real delta, Real alpha) noexcept {
    return square(t / t_c) * (1 + delta * alpha);
  }
};
/// \copydoc PryingStrengthShare
inline constexpr Formula<PryingStrengthShare> prying_strength_share{};

/// Force with which the edge presses, from the balance of the plate that is at its plastic moment at the web. Below 0:
/// the plate does not bend that far, and nothing presses.
struct EdgeForce {
  static constexpr const char* name = "edge_force";
  static constexpr const char* summary = "Force with which the edge of a prying plate presses";
  static constexpr Arg inputs[] = {
      {"load", "F", Dim::force, non_negative},
      {"bolt_lever", "b_1", Dim::length, positive},
      {"plastic_moment", "M_pl", Dim::torque, positive},
      {"edge_lever", "a_1", Dim::length, positive},
  };
  static constexpr Arg output = {"edge_force", "q", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Thornton 1985, as quoted with AISC Design Guide 29", "balance of the plate", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real F, Real b_1, Real M_pl, Real a_1) noexcept {
    return (F * b_1 - M_pl) / a_1;
  }
};
/// \copydoc EdgeForce
inline constexpr Formula<EdgeForce> edge_force{};

/// Mode 1 of a T-stub: hinges at web and bolts. A washer spreads the force of the bolt and makes it stronger.
struct TeeFlangeStrength {
  static constexpr const char* name = "tee_flange_strength";
  static constexpr const char* summary = "Resistance of a T-stub whose flange yields, mode 1";
  static constexpr Arg inputs[] = {
      {"plastic_moment", "M_pl", Dim::torque, positive},
      {"web_distance", "m", Dim::length, positive},
      {"edge_distance", "n", Dim::length, positive},
      {"washer_share", "e_w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"load", "F_1", Dim::force, positive};
  static constexpr Source sources[] = {{"EN 1993-1-8", "Table 6.2", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real M_pl, Real m, Real n, Real e_w) noexcept {
    return (8 * n - 2 * e_w) * M_pl / (2 * m * n - e_w * (m + n));
  }
  /// The washer is small beside the distances.
  template <class Real>
  static constexpr Real requirement(Real, Real m, Real n, Real e_w) noexcept {
    return 2 * m * n - e_w * (m + n);
  }
};
/// \copydoc TeeFlangeStrength
inline constexpr Formula<TeeFlangeStrength> tee_flange_strength{};

/// Mode 2 of a T-stub: hinges at the web, and the bolts.
struct TeeCombinedStrength {
  static constexpr const char* name = "tee_combined_strength";
  static constexpr const char* summary = "Resistance of a T-stub whose flange and bolts yield, mode 2";
  static constexpr Arg inputs[] = {
      {"plastic_moment", "M_pl", Dim::torque, positive},
      {"web_distance", "m", Dim::length, positive},
      {"edge_distance", "n", Dim::length, positive},
      {"load", "F", Dim::force, positive},
  };
  static constexpr Arg output = {"load", "F_2", Dim::force, positive};
  static constexpr Source sources[] = {{"EN 1993-1-8", "Table 6.2", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real M_pl, Real m, Real n, Real F) noexcept {
    return (2 * M_pl + n * F) / (m + n);
  }
};
/// \copydoc TeeCombinedStrength
inline constexpr Formula<TeeCombinedStrength> tee_combined_strength{};

}  // namespace tauten::TAUTEN_ABI
