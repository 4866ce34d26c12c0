// Will it come free before it shears: the index of two lognormal torques.
#pragma once

#include "tauten/base/formula.hpp"
#include "tauten/base/lognormal.hpp"

namespace tauten::TAUTEN_ABI {

/// Index beta of shearing before coming free, for lognormal breaking and freeing torque given by median and
/// coefficient of variation. The normal chance below -beta is the chance of shearing, and zero means even odds, on two
/// conditions: the two torques are independent, and nothing else ends the turning before, be it a limit on the torque,
/// the drive, the tool or the arm. With other ends, or friction of the face that both torques share, use `simulate`.
struct ShearBeforeFreeIndex {
  static constexpr const char* name = "shear_before_free_index";
  static constexpr const char* summary = "Index of shearing before coming free";
  static constexpr Arg inputs[] = {
      {"break_median", "m_B", Dim::torque, positive},
      {"break_variation", "V_B", Dim::number, non_negative, within(0, 1)},
      {"free_median", "m_F", Dim::torque, positive},
      {"free_variation", "V_F", Dim::number, non_negative, within(0, 1)},
  };
  static constexpr Arg output = {"index", "beta", Dim::number, any_sign};
  static constexpr Source sources[] = {
      {"Textbook structural reliability", "two lognormal variables, exact index", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real m_B, Real V_B, Real m_F, Real V_F) noexcept {
    return log(m_B / m_F) / sqrt(log1p(square(V_B)) + log1p(square(V_F)));
  }
};
/// \copydoc ShearBeforeFreeIndex
inline constexpr Formula<ShearBeforeFreeIndex> shear_before_free_index{};

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

}  // namespace tauten::TAUTEN_ABI
