// How the steel of a bolt flows: a smooth stress-strain curve through the figures of its property class.
#pragma once

#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"

namespace tauten {

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

  template <class V>
  static void fields(V&& visit) {
    visit("yield_strength", &BoltSteel::yield_strength);
    visit("tensile_strength", &BoltSteel::tensile_strength);
    visit("uniform_elongation", &BoltSteel::uniform_elongation);
    visit("elastic_modulus", &BoltSteel::elastic_modulus);
    visit("poisson_ratio", &BoltSteel::poisson_ratio);
    visit("early_yield", &BoltSteel::early_yield);
  }
};

/// \param tensile     R_m
/// \param yield       R_p0.2 or R_eL
/// \param elongation  after fracture, A; NaN where the class has none: 10 % is assumed then
/// \return the steel; half of the elongation counts as uniform
inline BoltSteel bolt_steel(Stress yield, Stress tensile, double elongation) noexcept {
  return {yield, tensile, elongation > 0 ? elongation / 2 : 0.05};
}

/// Flow stress over equivalent plastic strain, in engineering stress: starts at R_0, passes R_p0.2 at a plastic strain
/// of 0.002, and ends flat at R_m, where uniform elongation ends:
///   R_m - (R_m - R_0) (1 - q)^2/(1 + c q),  q = strain/A_g.
/// With R_m = R_p0.2 it is the perfectly plastic steel of the handbooks.
class FlowCurve {
 public:
  explicit FlowCurve(const BoltSteel& steel) noexcept {
    const double rise = steel.tensile_strength.si - steel.yield_strength.si;
    top_ = steel.tensile_strength.si;
    drop_ = rise * (1 + steel.early_yield);
    per_strain_ = 1 / steel.uniform_elongation;
    const double q = 0.002 * per_strain_;
    bend_ = ((1 + steel.early_yield) * (1 - q) * (1 - q) - 1) / q;
  }

  /// Stress at which flow begins.
  double start() const noexcept { return top_ - drop_; }

  struct Value {
    double stress;
    double slope;
  };
  // Both sides of a choice are worked out first, so that loops over this stay free of branches.
  Value at(double plastic_strain) const noexcept {
    const double q = plastic_strain * per_strain_;
    const double left = 1 - q;
    const double x = left > 0 ? left : 0;
    const double below = 1 / (1 + bend_ * q);
    const double share = drop_ * x * below;
    return {top_ - share * x, share * per_strain_ * (2 + bend_ * x * below)};
  }

 private:
  double top_;
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
  if (!(steel.early_yield >= 0.35 && steel.early_yield <= 1) ||
      steel.early_yield * (steel.tensile_strength.si - steel.yield_strength.si) >= steel.yield_strength.si)
    return refusal("early_yield", steel.early_yield, "but must lie between 0.35 and 1 and leave some elastic range");
  return FlowCurve(steel);
}

}  // namespace tauten
