// What a six-lobed recess gives a bit to push on.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Depth of each flank on which the lobes of bit and recess overlap: (A - B - D)/2 - w. The bit is narrower than the
/// recess by the play D; the ridges between the lobes of the recess are worn back by w. No flank is left where the bit
/// turns in the recess without a hold.
struct LobeFlank {
  static constexpr const char* name = "lobe_flank";
  static constexpr const char* summary = "Depth of flank on which a six-lobed bit bears";
  static constexpr Arg inputs[] = {
      {"outer_diameter", "d_a", Dim::length, positive, within(1.2e-3, 22.4e-3)},
      {"inner_diameter", "d_i", Dim::length, positive, within(0.85e-3, 16e-3)},
      {"drive_clearance", "D", Dim::length, non_negative},
      {"corner_loss", "w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"flank_length", "l_F", Dim::length, non_negative};
  static constexpr Source sources[] = {{"Geometry", "overlap of the circles A and B of ISO 10664", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real d_a, Real d_i, Real D, Real w) noexcept {
    return (d_a - d_i - D) / 2 - w;
  }
};
/// \copydoc LobeFlank
inline constexpr Formula<LobeFlank> lobe_flank{};

/// Lever of the push on a lobe: the mean radius of the flank that is left, (A + B - D)/4 + w/2. The push is taken as
/// tangential; the arcs of the true flank lean by some degrees, which shortens the lever by 1 to 13 %.
struct LobeLever {
  static constexpr const char* name = "lobe_lever";
  static constexpr const char* summary = "Lever of the push on a lobe of a six-lobed bit";
  static constexpr Arg inputs[] = {
      {"outer_diameter", "d_a", Dim::length, positive, within(1.2e-3, 22.4e-3)},
      {"inner_diameter", "d_i", Dim::length, positive, within(0.85e-3, 16e-3)},
      {"drive_clearance", "D", Dim::length, non_negative},
      {"corner_loss", "w", Dim::length, non_negative},
  };
  static constexpr Arg output = {"flank_lever", "a", Dim::length, positive};
  static constexpr Source sources[] = {
      {"Geometry", "mean radius between the circles A and B of ISO 10664", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real d_a, Real d_i, Real D, Real w) noexcept {
    return (d_a + d_i - D) / 4 + w / 2;
  }
  /// A flank is left.
  template <class Real>
  static constexpr Real requirement(Real d_a, Real d_i, Real D, Real w) noexcept {
    return LobeFlank::eval(d_a, d_i, D, w);
  }
};
/// \copydoc LobeLever
inline constexpr Formula<LobeLever> lobe_lever{};

}  // namespace tauten::TAUTEN_ABI
