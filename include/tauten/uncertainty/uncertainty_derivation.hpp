// The derivation of an uncertainty: the inputs, the formulas at their means, and the contribution of each input.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/plain_words.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/uncertainty/budget.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"
#include "tauten/uncertainty/sobol.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline Figure plain_figure(std::string name, Dim dimension, double si, std::string note = "") {
  return {std::move(name), dimension, {si, si, si}, "", std::move(note)};
}
inline Figure percent_figure(std::string name, double share, std::string note) {
  return {std::move(name), Dim::number, {share, share, share}, "", std::move(note), false, "%"};
}

/// "even from 124.8 N.m to 135.2 N.m"
inline std::string spread_text(const Distribution& spread, Dim dimension) {
  using Shape = Distribution::Shape;
  const auto between = [&](const std::string& shape) {
    return shape + " from " + quantity_text(spread.quantile(0), dimension) + " to " +
           quantity_text(spread.quantile(1), dimension);
  };
  switch (spread.shape()) {
    case Shape::fixed: return "known";
    case Shape::normal: return "normal";
    case Shape::lognormal: return "lognormal";
    case Shape::uniform: return between("even");
    case Shape::triangular: return between("triangular");
    case Shape::two_piece: return "half of a normal spread to either side";
    case Shape::samples: break;
  }
  return between("as observed");
}

/// The inputs at their means, with how they spread and what goes together.
inline std::vector<Figure> inputs_as_figures(const Model& model, const JointDistribution& inputs) {
  std::vector<Figure> out;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    const Variable& v = model.inputs[i];
    std::string note = spread_text(inputs[i], v.dimension);
    if (const double u = inputs[i].standard_deviation(); u > 0)
      note += ", standard uncertainty " + quantity_text(u, v.dimension, 3);
    out.push_back(plain_figure(v.name, v.dimension, inputs[i].mean(), std::move(note)));
  }
  for (std::size_t i = 0; i < inputs.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (const double r = inputs.correlation(i, j); r != 0)
        out.push_back(plain_figure("correlation", Dim::number, r,
                                   plain_words(model.inputs[j].name + " with " + model.inputs[i].name)));
  return out;
}

}  // namespace detail

/// How a budget came about: each input, the formulas at the means, and what each input brings to the uncertainty.
/// \param question  what was asked; its title and notices are taken
/// \param model     one of its outputs
/// \param inputs    of `try_joint`
/// \param budget    of `try_budget` for the same model and inputs
inline Derivation derivation_of(const UncertaintyQuestion& question, const Model& model,
                                const JointDistribution& inputs, const Budget& budget) {
  const Dim dimension = model.output.dimension;
  const auto with_unit = [&](double si, int digits) { return quantity_text(si, dimension, digits); };
  Derivation out;
  out.title = "Uncertainty to first order: " + plain_words(question.title);
  out.given = detail::inputs_as_figures(model, inputs);
  std::vector<double> means;
  double squares = 0;
  for (const Contribution& c : budget.contributions) {
    means.push_back(c.estimate);
    squares += c.contribution * c.contribution;
  }
  if (model.steps) out.steps = model.steps(means.data());
  out.found.push_back(detail::plain_figure(budget.output, dimension, budget.value, "with all inputs at their means"));
  for (std::size_t i = 0; i < means.size(); ++i) {
    const Contribution& c = budget.contributions[i];
    if (!(c.standard_uncertainty > 0)) continue;
    const DimensionText in = describe(model.inputs[i].dimension);
    const std::string one = std::string("1 ") + in.shop_unit;
    out.found.push_back(detail::plain_figure("from_" + c.name, dimension, c.contribution,
                                             number_text(100 * c.share, 3) + " % of the variance; " +
                                                 with_unit(c.sensitivity * in.shop_unit_in_si, 4) + " for " +
                                                 one.substr(0, one.find_last_not_of(' ') + 1)));
  }
  // Where inputs go together, more or less is left than their squares add up to.
  const bool together = std::fabs(squares - square(budget.standard_uncertainty)) > 1e-9 * squares;
  out.found.push_back(
      detail::plain_figure("standard_uncertainty", dimension, budget.standard_uncertainty,
                           together ? "root of the sum of squares and of what goes together; JCGM 100:2008, clause 5.2"
                                    : "root of the sum of squares; JCGM 100:2008, clause 5.1"));
  out.found.push_back(detail::plain_figure("expanded_uncertainty", dimension, budget.expanded_uncertainty,
                                           number_text(budget.coverage_factor, 3) + " times as much"));
  out.verdict = plain_words(budget.output) + " is " + with_unit(budget.value, 4) + ", plus or minus " +
                with_unit(budget.expanded_uncertainty, 3) + ". Exact where the result goes straight with its inputs.";
  out.notices = question.notices;
  return out;
}

/// How a Monte Carlo run came about: from what the inputs were drawn, and what the trials have shown.
/// \param question  what was asked; its title and notices are taken
/// \param model     one of its outputs
/// \param inputs    of `try_joint`
/// \param run       of `try_monte_carlo` for the same model and inputs
inline Derivation derivation_of(const UncertaintyQuestion& question, const Model& model,
                                const JointDistribution& inputs, const MonteCarlo& run) {
  const Dim dimension = model.output.dimension;
  const std::string share = number_text(100 * run.coverage) + " % of the trials";
  const double median = run.quantile(0.5);
  const auto interval = [&](const char* name, const CoverageInterval& i, const std::string& note) {
    return Figure{name, dimension, {i.low, median, i.high}, "", note};
  };
  Derivation out;
  out.title = "Uncertainty by random trials: " + plain_words(question.title);
  out.given = detail::inputs_as_figures(model, inputs);
  out.given.push_back(
      detail::plain_figure("trials", Dim::number, static_cast<double>(run.trials), "each draws every input anew"));
  if (run.outside > 0)
    out.given.push_back(detail::plain_figure("outside", Dim::number, static_cast<double>(run.outside),
                                             "trials without a value, left out"));
  out.found.push_back(detail::plain_figure(run.output, dimension, run.mean, "mean of the trials"));
  out.found.push_back(detail::plain_figure("standard_uncertainty", dimension, run.standard_uncertainty,
                                           "standard deviation of the trials"));
  out.found.push_back(interval("symmetric_interval", run.symmetric, share + ", symmetric"));
  out.found.push_back(interval("shortest_interval", run.shortest, share + ", the shortest that holds them"));
  out.found.push_back(detail::plain_figure("tolerance", dimension, run.tolerance,
                                           "numerical, of the digits asked for; JCGM 101:2008, clause 7.9"));
  out.verdict = run.stopped     ? "Stopped before the requested digits were certain."
                : run.converged ? "Mean, uncertainty and both ends are certain to the tolerance."
                                : "Not certain to the requested digits; use more trials.";
  out.notices = question.notices;
  return out;
}

/// How Sobol indices came about: from what the inputs were drawn, and which share of the variance each brings.
/// \param question  what was asked; its title and notices are taken
/// \param model     one of its outputs
/// \param inputs    of `try_joint`
/// \param sobol     of `try_sobol` for the same model and inputs
inline Derivation derivation_of(const UncertaintyQuestion& question, const Model& model,
                                const JointDistribution& inputs, const Sobol& sobol) {
  const auto give_or_take = [](double error) { return "plus or minus " + number_text(200 * error, 2) + " %, "; };
  Derivation out;
  out.title = "Shares of the variance: " + plain_words(question.title);
  out.given = detail::inputs_as_figures(model, inputs);
  out.given.push_back(
      detail::plain_figure("trials", Dim::number, static_cast<double>(sobol.trials), "pairs of input sets"));
  for (std::size_t i = 0; i < sobol.inputs.size(); ++i) {
    const SobolIndex& index = sobol.inputs[i];
    if (!(inputs[i].standard_deviation() > 0)) continue;
    out.found.push_back(
        detail::percent_figure("from_" + index.name, index.first, give_or_take(index.first_error) + "by itself"));
    out.found.push_back(detail::percent_figure("with_" + index.name, index.total,
                                               give_or_take(index.total_error) + "together with other inputs"));
  }
  out.verdict = "Where both shares of an input differ, it acts on the result together with others.";
  out.notices = question.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
