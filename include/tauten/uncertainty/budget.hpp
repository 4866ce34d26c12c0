// First-order propagation: the contribution of each input to the uncertainty.
// Source: JCGM 100:2008 (GUM), clauses 5.1, 5.2 and 6.2.
#pragma once

#include "tauten/base/refusal.hpp"
#include "tauten/uncertainty/joint_distribution.hpp"

namespace tauten::TAUTEN_ABI {

/// One line of a budget. Figures are in SI.
struct Contribution {
  std::string name;
  std::string unit;                 ///< SI, of the input; "" for a plain number
  double estimate = 0;              ///< mean of the input
  double standard_uncertainty = 0;  ///< u(x)
  double sensitivity = 0;           ///< c, partial derivative of the result
  double contribution = 0;          ///< c u(x), in the unit of the result, with its sign
  double share = 0;  ///< of the variance of the result; all shares add up to 1. With correlations, an input
                     ///< has half of what it shares with another, and may have less than nothing.

  template <class V>
  static void fields(V&& visit) {
    visit("name", &Contribution::name);
    visit("unit", &Contribution::unit);
    visit("estimate", &Contribution::estimate);
    visit("standard_uncertainty", &Contribution::standard_uncertainty);
    visit("sensitivity", &Contribution::sensitivity);
    visit("contribution", &Contribution::contribution);
    visit("share", &Contribution::share);
  }
};

/// Result with combined standard uncertainty.
struct Budget {
  std::string output;
  std::string unit;                 ///< SI, of the result
  double value = 0;                 ///< the model at the means of its inputs
  double standard_uncertainty = 0;  ///< combined, u_c
  double coverage_factor = 2;       ///< k
  double expanded_uncertainty = 0;  ///< U = k u_c
  std::vector<Contribution> contributions;

  template <class V>
  static void fields(V&& visit) {
    visit("output", &Budget::output);
    visit("unit", &Budget::unit);
    visit("value", &Budget::value);
    visit("standard_uncertainty", &Budget::standard_uncertainty);
    visit("coverage_factor", &Budget::coverage_factor);
    visit("expanded_uncertainty", &Budget::expanded_uncertainty);
    visit("contributions", &Budget::contributions);
  }
};

/// \return the k factor of a normal distribution: 1.96 for 95 %
inline double coverage_factor(double coverage) noexcept { return normal_quantile((1 + coverage) / 2); }

/// First-order propagation, with the correlation coefficients of the inputs themselves. Exact for linear models; where the model bends within the spread of its inputs, or its
/// inputs are skewed, compare with `monte_carlo`.
/// \param model   the function
/// \param inputs  of `try_joint` for this model
/// \param k       coverage factor; 2 is typical, `coverage_factor` gives others
/// \return the budget, or an error if the model has no value at the means of its inputs
inline Outcome<Budget> try_budget(const Model& model, const JointDistribution& inputs, double k = 2) {
  const std::size_t n = model.inputs.size();
  if (inputs.size() != n) return Error("inputs", "the inputs belong to another model; make them for this one");
  if (!Interval{0, 100, true}.contains(k))
    return refusal("coverage_factor", k, "but must be above 0 and at most 100; 2 is typical");
  std::vector<double> x(n), u(n), c(n);
  for (std::size_t i = 0; i < n; ++i) {
    x[i] = inputs[i].mean();
    u[i] = inputs[i].standard_deviation();
  }
  Budget out{model.output.name,
             describe(model.output.dimension).si_unit,
             model.gradient(x.data(), u.data(), c.data()),
             0,
             k,
             0,
             {}};
  double variance = 0;
  for (std::size_t i = 0; i < n; ++i) {
    double with_all = 0;
    for (std::size_t j = 0; j < n; ++j) with_all += inputs.input_correlation(i, j) * c[j] * u[j];
    const double part = c[i] * u[i] * with_all;
    variance += part;
    out.contributions.push_back(
        {model.inputs[i].name, describe(model.inputs[i].dimension).si_unit, x[i], u[i], c[i], c[i] * u[i], part});
  }
  // Also true for NaN: a slope may have no value where the result still has one.
  if (!any_sign.contains(out.value) || !any_sign.contains(variance))
    return Error("inputs", (model.output.name + " or its derivative has no value at the means of the inputs; " +
                            "look at the range of each input")
                               .c_str());
  // Inputs that cancel leave a rounding error, of either sign.
  out.standard_uncertainty = std::sqrt(std::max(0.0, variance));
  out.expanded_uncertainty = k * out.standard_uncertainty;
  for (Contribution& line : out.contributions) line.share = variance > 0 ? line.share / variance : 0;
  return out;
}

/// \copydoc try_budget
/// \throws Error  instead of returning one
inline Budget budget(const Model& model, const JointDistribution& inputs, double k = 2) {
  return try_budget(model, inputs, k).value();
}

}  // namespace tauten::TAUTEN_ABI
