// Least and greatest preload under scatter and relaxation.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Greatest preload for a relative scatter.
struct GreatestPreload {
  static constexpr const char* name = "greatest_preload";
  static constexpr const char* summary = "Maximum preload under scatter";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"scatter", "s", Dim::number, within(0, 0.99), within(0, 0.7)},
  };
  static constexpr Arg output = {"preload", "F_Mmax", Dim::force, non_negative};
  static constexpr Source sources[] = {{"NASA TM-106943", "eq. (11)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real s) noexcept {
    return F_M * (1 + s);
  }
};
/// \copydoc GreatestPreload
inline constexpr Formula<GreatestPreload> greatest_preload{};

/// Least preload for a relative scatter, before relaxation.
struct LeastPreload {
  static constexpr const char* name = "least_preload";
  static constexpr const char* summary = "Minimum preload under scatter";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"scatter", "s", Dim::number, within(0, 0.99), within(0, 0.7)},
  };
  static constexpr Arg output = {"preload", "F_Mmin", Dim::force, non_negative};
  static constexpr Source sources[] = {{"NASA TM-106943", "eq. (12)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real s) noexcept {
    return F_M * (1 - s);
  }
};
/// \copydoc LeastPreload
inline constexpr Formula<LeastPreload> least_preload{};

/// Tightening factor alpha_A, greatest over least preload, of a symmetric scatter.
struct TighteningFactor {
  static constexpr const char* name = "tightening_factor";
  static constexpr const char* summary = "Tightening factor from scatter";
  static constexpr Arg inputs[] = {
      {"scatter", "s", Dim::number, within(0, 0.99), within(0, 0.7)},
  };
  static constexpr Arg output = {"tightening_factor", "alpha_A", Dim::number, positive};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "Table A8", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real s) noexcept {
    return (1 + s) / (1 - s);
  }
};
/// \copydoc TighteningFactor
inline constexpr Formula<TighteningFactor> tightening_factor{};

/// Preload left after relaxation, which the source states as a share of the preload that is left: F/(1 + r).
struct PreloadAfterRelaxation {
  static constexpr const char* name = "preload_after_relaxation";
  static constexpr const char* summary = "Preload left after relaxation";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, non_negative},
      {"relaxation", "r", Dim::number, non_negative, within(0, 0.5)},
  };
  static constexpr Arg output = {"preload", "F_V", Dim::force, non_negative};
  static constexpr Source sources[] = {{"NASA TM-106943", "eqs. (13) to (16)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real r) noexcept {
    return F_M / (1 + r);
  }
};
/// \copydoc PreloadAfterRelaxation
inline constexpr Formula<PreloadAfterRelaxation> preload_after_relaxation{};

}  // namespace tauten::TAUTEN_ABI
