// A ring of evenly spaced bolts: its circle from one measured chord, and the passes that leave all bolts alike.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// The bolt circle of evenly spaced holes from one chord. Measure over as many holes as possible: an error of the chord of
/// neighbours is multiplied, 2.6 times with 8 holes and 7.7 times with 24.
struct CircleFromChord {
  static constexpr const char* name = "circle_from_chord";
  static constexpr const char* summary = "Bolt circle from one measured chord";
  static constexpr Arg inputs[] = {
      {"chord", "c", Dim::length, positive},
      {"spaces", "k", Dim::number, positive},
      {"bolt_count", "n_b", Dim::number, positive},
  };
  static constexpr Arg output = {"circle_diameter", "D_c", Dim::length, positive};
  static constexpr Source sources[] = {{"Geometry of a regular polygon", "chord of a circle", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real c, Real k, Real n_b) noexcept {
    return c / sin(pi<Real>() * k / n_b);
  }
  /// A chord spans half of the spaces at most.
  template <class Real>
  static constexpr Real requirement(Real, Real k, Real n_b) noexcept {
    return n_b + Real(1e-9) - 2 * k;
  }
};
/// \copydoc CircleFromChord
inline constexpr Formula<CircleFromChord> circle_from_chord{};

/// Rule for the passes at the full torque after which every bolt of a ring is within a share of the load, rounded up to
/// whole passes. For neighbours that meet each other alone and rounds in a circle.
struct PassesForEvenness {
  static constexpr const char* name = "passes_for_evenness";
  static constexpr const char* summary = "Passes at full torque that leave a ring of bolts even";
  static constexpr Arg inputs[] = {
      {"neighbour_loss", "c_n", Dim::number, positive, within(0, 0.5)},
      {"shortfall", "e_F", Dim::number, positive, within(0, 0.5)},
  };
  static constexpr Arg output = {"passes", "k", Dim::number, any_sign};
  static constexpr Source sources[] = {
      {"Rule of this library", "from simulations of rings of 8 to 24 bolts", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real c_n, Real e_F) noexcept {
    return log(e_F / 2) / log(c_n);
  }
  /// Less is lost than was gained.
  template <class Real>
  static constexpr Real requirement(Real c_n, Real) noexcept {
    return 1 - c_n;
  }
};
/// \copydoc PassesForEvenness
inline constexpr Formula<PassesForEvenness> passes_for_evenness{};

}  // namespace tauten::TAUTEN_ABI
