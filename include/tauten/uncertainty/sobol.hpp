// Contributions of the inputs to the variance of a result, also of non-linear models: Sobol indices.
// Sources (from memory): Sobol, "Sensitivity estimates for nonlinear mathematical models", 1993; first order after
// Saltelli et al., Computer Physics Communications 181, 2010; total order after Jansen, same journal 117, 1999.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "tauten/base/mode.hpp"
#include "tauten/uncertainty/joint_distribution.hpp"
#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::TAUTEN_ABI {

/// Shares of the variance that one input brings.
struct SobolIndex {
  std::string name;
  double first = 0;        ///< by itself
  double first_error = 0;  ///< standard errors from the scatter of batches
  double total = 0;        ///< together with other inputs; never below `first` but for the standard error
  double total_error = 0;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &SobolIndex::name);
    visit("first", &SobolIndex::first);
    visit("first_error", &SobolIndex::first_error);
    visit("total", &SobolIndex::total);
    visit("total_error", &SobolIndex::total_error);
  }
};

/// Which input the variance of a result comes from, and how certain that is.
struct Sobol {
  std::string output;
  double mean = 0;
  double variance = 0;
  std::uint64_t trials = 0;   ///< pairs of input sets; the model was called (number of inputs + 2) times for each
  std::uint64_t outside = 0;  ///< pairs left out because the model has no value there
  bool stopped = false;       ///< by the progress call
  std::vector<SobolIndex> inputs;

  template <class V>
  static void fields(V&& visit) {
    visit("output", &Sobol::output);
    visit("mean", &Sobol::mean);
    visit("variance", &Sobol::variance);
    visit("trials", &Sobol::trials);
    visit("outside", &Sobol::outside);
    visit("stopped", &Sobol::stopped);
    visit("inputs", &Sobol::inputs);
  }
};

/// How Sobol indices are found.
struct SobolOptions {
  std::uint64_t trials = 65536;  ///< rounded up to full blocks of 256 in each batch
  std::uint64_t batches = 32;
  std::uint64_t seed = 1;
  int jobs = 1;  ///< the result does not depend on it
  ProgressCall progress = nullptr;
};

/// \param model   the function
/// \param inputs  of `try_joint` for this model; independent, since correlated inputs have no indices of their own
/// \return indices with standard errors, the same for a seed on any number of threads; or an error if inputs are
///         correlated, the model has no value in most trials, or its result does not vary
Outcome<Sobol> try_sobol(const Model& model, const JointDistribution& inputs, const SobolOptions& options = {});

/// \copydoc try_sobol
/// \throws Error  instead of returning one
Sobol sobol(const Model& model, const JointDistribution& inputs, const SobolOptions& options = {});

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/uncertainty/workings/sobol.hpp"
#endif
