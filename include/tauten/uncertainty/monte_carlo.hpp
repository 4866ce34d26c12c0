// Propagation of whole distributions by random trials.
// Source: JCGM 101:2008 (Supplement 1 to the GUM), clauses 7.2 to 7.9; clause numbers from memory.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "tauten/base/mode.hpp"
#include "tauten/uncertainty/coverage_interval.hpp"
#include "tauten/uncertainty/joint_distribution.hpp"
#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::TAUTEN_ABI {

/// What the trials have shown. Figures are in SI.
struct MonteCarlo {
  std::string output;
  double mean = 0;
  double standard_uncertainty = 0;
  double coverage = 0;
  CoverageInterval symmetric;
  CoverageInterval shortest;
  std::uint64_t trials = 0;   ///< that were run
  std::uint64_t outside = 0;  ///< of them, left out because the model has no value there
  double tolerance = 0;       ///< numerical tolerance of the digits asked for, in the unit of the result
  bool converged = false;     ///< mean, uncertainty and both ends are certain to the tolerance (95 % or so)
  bool stopped = false;       ///< by the progress call
  double mean_error = 0;      ///< numerical standard errors, NaN if there was but one block of trials
  double uncertainty_error = 0;
  double low_error = 0;  ///< of the interval that was asked for
  double high_error = 0;
  std::vector<double> values;  ///< of all trials that have one, in the order of the trials

  /// \return every value, rising: to sort them takes longer than the trials of a formula, so that it is done on request
  std::vector<double> sorted() const;
  /// \return the value below which `chance` lies
  double quantile(double chance) const;
  /// \return the share of trials at or below x; its standard error is sqrt(p (1 - p)/trials)
  double chance_below(double x) const noexcept;
  /// \return the share of trials above x
  double chance_above(double x) const noexcept { return 1 - chance_below(x); }

  template <class V>
  static void fields(V&& visit) {
    visit("output", &MonteCarlo::output);
    visit("mean", &MonteCarlo::mean);
    visit("standard_uncertainty", &MonteCarlo::standard_uncertainty);
    visit("coverage", &MonteCarlo::coverage);
    visit("symmetric", &MonteCarlo::symmetric);
    visit("shortest", &MonteCarlo::shortest);
    visit("trials", &MonteCarlo::trials);
    visit("outside", &MonteCarlo::outside);
    visit("tolerance", &MonteCarlo::tolerance);
    visit("converged", &MonteCarlo::converged);
    visit("stopped", &MonteCarlo::stopped);
    visit("mean_error", &MonteCarlo::mean_error);
    visit("uncertainty_error", &MonteCarlo::uncertainty_error);
    visit("low_error", &MonteCarlo::low_error);
    visit("high_error", &MonteCarlo::high_error);
  }
};

/// Runs blocks of trials until the digits asked for are certain, and gives mean, standard uncertainty and coverage
/// intervals. Trials in which the model has no value are counted and left out.
/// \param model    the function
/// \param inputs   of `try_joint` for this model
/// \param options  coverage, digits, seed, threads, progress
/// \return the result, which depends on the seed but not on the number of threads; or an error that names the option
///         at fault, or tells that the model has no value in most trials. A run that gave up has `converged` false.
Outcome<MonteCarlo> try_monte_carlo(const Model& model, const JointDistribution& inputs,
                                    const MonteCarloOptions& options = {});

/// \copydoc try_monte_carlo
/// \throws Error  instead of returning one
MonteCarlo monte_carlo(const Model& model, const JointDistribution& inputs, const MonteCarloOptions& options = {});

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/uncertainty/workings/monte_carlo.hpp"
#endif
