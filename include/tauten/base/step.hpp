// One step of a computation, kept as data so that the derivation of any answer can be shown.
#pragma once

#include <string>
#include <vector>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// A formula that was used, with the numbers that went in and came out.
struct Step {
  std::string formula;         ///< name in the registry
  std::vector<double> inputs;  ///< SI, in the order of the formula's inputs
  double value = 0;            ///< SI
  std::string note;            ///< why this step, in a few words

  template <class V>
  static void fields(V&& visit) {
    visit("formula", &Step::formula);
    visit("inputs", &Step::inputs);
    visit("value", &Step::value);
    visit("note", &Step::note);
  }
};

/// Evaluates `formula` on SI numbers and writes the step down.
/// \return the value in SI, NaN outside the formula's domain
template <class F, class... X>
double step(std::vector<Step>& steps, const char* note, F formula, const X&... x) {
  const double value = formula.si(static_cast<double>(x)...);
  steps.push_back({F::definition::name, {static_cast<double>(x)...}, value, note});
  return value;
}

}  // namespace tauten::TAUTEN_ABI
