// How the steel of a bolt flows: a smooth stress-strain curve through the figures of its property class.
#pragma once

#include "tauten/base/math.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/part/property_class.hpp"

namespace tauten::TAUTEN_ABI {

/// What the curve is made from. Class data give least values; a bolt from the box is typically stronger.
struct BoltSteel {
  Stress yield_strength{};    ///< R_p0.2
  Stress tensile_strength{};  ///< R_m
  double uniform_elongation =
      0.05;  ///< plastic strain at the greatest load, A_g; half of the elongation after fracture
             ///< is an estimate
  Stress elastic_modulus{205e9};
  double poisson_ratio = 0.3;
  double early_yield = 0.4;  ///< how far flow begins below R_p0.2, in units of R_m - R_p0.2; an estimate
  double yield_plateau = 0;  ///< plastic strain up to which the steel flows at its yield strength before it hardens

  template <class V>
  static void fields(V&& visit) {
    visit("yield_strength", &BoltSteel::yield_strength);
    visit("tensile_strength", &BoltSteel::tensile_strength);
    visit("uniform_elongation", &BoltSteel::uniform_elongation);
    visit("elastic_modulus", &BoltSteel::elastic_modulus);
    visit("poisson_ratio", &BoltSteel::poisson_ratio);
    visit("early_yield", &BoltSteel::early_yield);
    visit("yield_plateau", &BoltSteel::yield_plateau);
  }
};

/// \param tensile     R_m
/// \param yield       R_p0.2 or R_eL
/// \param elongation  after fracture, A; NaN where the class has none: 10 % is assumed then
/// \return the steel; half of the elongation counts as uniform
inline BoltSteel bolt_steel(Stress yield, Stress tensile, double elongation) noexcept {
  return {yield, tensile, elongation > 0 ? elongation / 2 : 0.05};
}

/// Elongation after fracture of classes that ISO 898-1:2013 states by full-size tests only: ISO 898-1:1999, Table 3, from
/// memory.
struct ElongationRow {
  const char* property_class;
  double elongation;
};
inline constexpr ElongationRow older_elongations[] = {{"4.8", 0.14}, {"5.8", 0.10}, {"6.8", 0.08}};

/// Plastic strain over which steels of classes 3.6 to 6.8 flow before they harden. Judgement: mild steels flow over 1.5 to
/// 2.5 %.
inline constexpr double mild_steel_plateau = 0.02;

/// How austenitic steel of one strength flows. Soft steel stretches uniformly over 30 % and more; cold work takes most of
/// that away. Judgement by handbook curves of such steels, no source.
struct AusteniticRow {
  const char* strength;
  double uniform_elongation;
  double early_yield;
};
inline constexpr AusteniticRow austenitic_rows[] = {{"50", 0.30, 0.05}, {"70", 0.15, 0.4}, {"80", 0.12, 0.4}};

/// \return the steel of a property class, at its least strength
inline BoltSteel class_steel(const PropertyClass& of) noexcept {
  double elongation = of.elongation;
  for (const ElongationRow& row : older_elongations)
    if (of.name == row.property_class) elongation = row.elongation;
  BoltSteel steel = bolt_steel(of.yield_strength, of.tensile_strength, elongation);
  if (of.stainless) {
    for (const AusteniticRow& row : austenitic_rows)
      if (of.name.ends_with(row.strength)) {
        steel.uniform_elongation = row.uniform_elongation;
        steel.early_yield = row.early_yield;
      }
  } else if (of.tensile_strength.si < 700e6) {
    steel.yield_plateau = mild_steel_plateau;
  }
  return steel;
}

/// Flow stress over equivalent plastic strain, in engineering stress: starts at R_0, passes R_p0.2 at a plastic strain
/// of 0.002, and ends flat at R_m, where uniform elongation ends:
///   R_m - (R_m - R_0) (1 - q)^2/(1 + c q),  q = strain/A_g.
/// With R_m = R_p0.2 it is the perfectly plastic steel of the handbooks. A steel with a plateau starts at its yield
/// strength, stays there up to the end of the plateau, and rises from there by a parabola: R_0 = R_eL, c = 0, and q counts
/// from the plateau on.
class FlowCurve {
 public:
  explicit FlowCurve(const BoltSteel& steel) noexcept {
    const double rise = steel.tensile_strength.si - steel.yield_strength.si;
    const bool plateau = steel.yield_plateau > 0;
    top_ = steel.tensile_strength.si;
    plateau_ = steel.yield_plateau;
    drop_ = plateau ? rise : rise * (1 + steel.early_yield);
    per_strain_ = 1 / (steel.uniform_elongation - plateau_);
    const double q = 0.002 * per_strain_;
    bend_ = plateau ? 0 : ((1 + steel.early_yield) * (1 - q) * (1 - q) - 1) / q;
  }

  /// Stress at which flow begins.
  double start() const noexcept { return top_ - drop_; }

  struct Value {
    double stress;
    double slope;
  };
  // Both sides of a choice are worked out first, so that loops over this stay free of branches.
  Value at(double plastic_strain) const noexcept {
    const double past = (plastic_strain - plateau_) * per_strain_;
    const double q = past > 0 ? past : 0;
    const double hardens = plastic_strain >= plateau_ ? per_strain_ : 0;
    const double left = 1 - q;
    const double x = left > 0 ? left : 0;
    const double below = 1 / (1 + bend_ * q);
    const double share = drop_ * x * below;
    return {top_ - share * x, share * hardens * (2 + bend_ * x * below)};
  }

 private:
  double top_;
  double plateau_;
  double drop_;
  double per_strain_;
  double bend_;
};

/// \return an error if no flow curve passes through these figures
inline Outcome<FlowCurve> try_flow_curve(const BoltSteel& steel) {
  if (!is_positive(steel.yield_strength))
    return refusal("yield_strength", steel.yield_strength, "but must be above 0 MPa; give R_p0.2 of the bolt");
  if (!(steel.tensile_strength.si >= steel.yield_strength.si && std::isfinite(steel.tensile_strength.si)))
    return refusal("tensile_strength", steel.tensile_strength, "but must be at least the yield strength");
  if (!is_positive(steel.elastic_modulus))
    return refusal("elastic_modulus", steel.elastic_modulus, "but must be above 0 MPa, for example 205GPa");
  if (!(steel.poisson_ratio >= 0 && steel.poisson_ratio <= 0.5))
    return refusal("poisson_ratio", steel.poisson_ratio, "but must lie between 0 and 0.5");
  if (!(steel.uniform_elongation >= 0.015 && steel.uniform_elongation <= 1))
    return refusal("uniform_elongation", steel.uniform_elongation, "but must lie between 0.015 and 1");
  if (!(steel.yield_plateau >= 0 && steel.yield_plateau <= 0.8 * steel.uniform_elongation))
    return refusal("yield_plateau", steel.yield_plateau, "but must lie between 0 and 0.8 of the uniform elongation");
  // Below the lower end the curve would have to bend upward on its way through R_p0.2.
  const double lowest = 1 / square(1 - 0.002 / steel.uniform_elongation) - 1;
  if (!(steel.early_yield >= lowest && steel.early_yield <= 1) ||
      steel.early_yield * (steel.tensile_strength.si - steel.yield_strength.si) >= steel.yield_strength.si) {
    char rule[160];
    std::snprintf(rule, sizeof rule, "but must lie between %s and 1 and leave some elastic range",
                  PlainNumber(lowest, 3).c_str());
    return refusal("early_yield", steel.early_yield, rule);
  }
  return FlowCurve(steel);
}

}  // namespace tauten::TAUTEN_ABI
