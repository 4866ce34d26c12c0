// Will it come free before it shears: the closed form for two lognormal torques.
#pragma once

#include "tauten/base/lognormal.hpp"
#include "tauten/loosening/shear_before_free.hpp"

namespace tauten {

/// Chance that the bolt shears before it comes free when nothing else gives and nothing limits the torque. Exact for
/// two independent lognormal torques; with more ways to end, or a limit, use `simulate`.
/// \param breaks  torque at which the bolt shears
/// \param frees   torque at which it comes free
inline double shear_chance(const Lognormal& breaks, const Lognormal& frees) noexcept {
  if (!(frees.median > 0)) return 0;
  if (!(breaks.median > 0)) return 1;
  if (breaks.variation == 0 && frees.variation == 0) return breaks.median < frees.median ? 1 : 0;
  return normal_chance(-ShearBeforeFreeIndex::eval(breaks.median, breaks.variation, frees.median, frees.variation));
}

}  // namespace tauten
