// The pieces of arithmetic that formulas and simulation of loosening share.
#pragma once

#include "tauten/base/math.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque at breakaway, split by where it acts: the thread part goes through the shank, the face part does not.
struct BreakawayParts {
  /// \param flanks  grown friction lever of the flanks
  /// \param lift    P/(2 pi), which helps
  /// \param extra   bond, rust pressure and prevailing element together
  template <class Real>
  static constexpr Real thread(Real F_r, Real flanks, Real lift, Real extra) noexcept {
    return F_r * (flanks - lift) + extra;
  }
  template <class Real>
  static constexpr Real face(Real F_r, Real lever) noexcept {
    return F_r * lever;
  }
};

/// What is left of a round section's capacity.
struct SectionParts {
  /// Share of the torsion capacity that corrosion leaves; `loss` is the lost share of the diameter, 2 x/d_3.
  template <class Real>
  static constexpr Real corroded_torsion(Real loss) noexcept {
    return cube(1 - loss);
  }
  /// Share of the torsion capacity that a tension leaves; `tension` is the used share of the tension capacity.
  template <class Real>
  static constexpr Real torsion_beside_tension(Real tension) noexcept {
    return sqrt(1 - square(tension));
  }
};

}  // namespace tauten::TAUTEN_ABI
