// Formulas of the registry as models: one by name, or a chain in which one feeds the next.
#pragma once

#include <algorithm>
#include <cstdint>

#include "tauten/base/outcome.hpp"
#include "tauten/base/registry.hpp"
#include "tauten/base/visible_text.hpp"
#include "tauten/uncertainty/model.hpp"

namespace tauten::TAUTEN_ABI {

/// One formula of a chain.
struct Link {
  std::string formula;  ///< name in the registry
  // NOLINTNEXTLINE(readability-redundant-member-init): without it `{"name"}` draws a warning
  std::string result = {};  ///< under which name later links take the result; "" for the name of the formula's output
};

namespace detail {

/// Evaluates a chain of formulas, for many trials or with derivatives.
struct ChainKernel {
  static constexpr std::size_t most_links = 16, most_inputs = 32, block = 256;

  struct Part {
    const Entry* formula;
    std::vector<std::size_t> from;  ///< where each input comes from: a model input, or the result of a link after those
  };
  std::vector<Part> parts;
  std::size_t inputs = 0;

  void operator()(const double* const* x, double* y, std::size_t count) const noexcept {
    alignas(64) double results[most_links][block];
    std::ptrdiff_t steps[most_inputs + 1];
    std::fill_n(steps, most_inputs + 1, std::ptrdiff_t{sizeof(double)});
    for (std::size_t start = 0; start < count; start += block) {
      const std::size_t rows = std::min(block, count - start);
      for (std::size_t k = 0; k < parts.size(); ++k) {
        char* columns[most_inputs + 1];
        std::size_t n = 0;
        for (const std::size_t from : parts[k].from) {
          const double* column = from < inputs ? x[from] + start : results[from - inputs];
          columns[n++] = reinterpret_cast<char*>(const_cast<double*>(column));  // inputs are only read
        }
        columns[n] = reinterpret_cast<char*>(k + 1 == parts.size() ? y + start : results[k]);
        parts[k].formula->rows_double(columns, steps, rows);
      }
    }
  }

  double gradient(const double* x, double* slopes) const {
    std::vector<double> values(x, x + inputs);
    std::vector<std::vector<double>> derivatives;  // of each link's result by the model's inputs
    for (const Part& part : parts) {
      double at[most_inputs], own[most_inputs];
      for (std::size_t j = 0; j < part.from.size(); ++j) at[j] = values[part.from[j]];
      values.push_back(part.formula->gradient(at, own));
      std::vector<double> total(inputs, 0.0);
      for (std::size_t j = 0; j < part.from.size(); ++j) {
        if (part.from[j] < inputs)
          total[part.from[j]] += own[j];
        else
          for (std::size_t i = 0; i < inputs; ++i) total[i] += own[j] * derivatives[part.from[j] - inputs][i];
      }
      derivatives.push_back(std::move(total));
    }
    std::copy(derivatives.back().begin(), derivatives.back().end(), slopes);
    return values.back();
  }

  std::vector<Step> steps(const double* x) const {
    std::vector<double> values(x, x + inputs);
    std::vector<Step> out;
    for (const Part& part : parts) {
      std::vector<double> at;
      for (const std::size_t from : part.from) at.push_back(values[from]);
      values.push_back(part.formula->value(at.data()));
      out.push_back({part.formula->name, std::move(at), values.back(), ""});
    }
    return out;
  }
};

}  // namespace detail

/// A chain of formulas as model, with exact derivatives. An input of the name of an earlier result takes that result;
/// inputs of the same name are one input of the model. The last link gives the output.
/// \param known  the registry: `formulas`
/// \param chain  for example {{"preload_from_torque"}, {"thread_torque"}, {"yield_utilisation"}}
/// \return the model, or an error if a name is unknown or a result is not taken by any later link
inline Outcome<Model> try_chain_model(std::span<const Entry> known, const std::vector<Link>& chain) {
  using Kernel = detail::ChainKernel;
  if (chain.empty() || chain.size() > Kernel::most_links)
    return Error("chain", "a chain takes from 1 to 16 formulas; name the formulas from the first to the last");
  constexpr std::size_t as_result = SIZE_MAX / 2;  // results are counted from here until the inputs have been counted
  Model model;
  Kernel kernel;
  std::vector<std::string> results;
  std::vector<bool> taken;
  for (const Link& link : chain) {
    const auto entry = std::find_if(known.begin(), known.end(), [&](const Entry& e) { return e.name == link.formula; });
    if (entry == known.end())
      return Error("formula", ("formula " + detail::shown(link.formula) + " is not in the registry").c_str());
    Kernel::Part part{&*entry, {}};
    for (const Arg& arg : entry->inputs) {
      const auto result = std::find(results.rbegin(), results.rend(), arg.name);
      if (result != results.rend()) {
        const auto place = static_cast<std::size_t>(results.rend() - result) - 1;
        taken[place] = true;
        part.from.push_back(as_result + place);
        continue;
      }
      const auto input =
          std::find_if(model.inputs.begin(), model.inputs.end(), [&](const Variable& v) { return v.name == arg.name; });
      part.from.push_back(static_cast<std::size_t>(input - model.inputs.begin()));
      if (input == model.inputs.end()) model.inputs.push_back({arg.name, arg.dimension});
    }
    results.push_back(link.result.empty() ? entry->output.name : link.result);
    taken.push_back(false);
    model.output = {results.back(), entry->output.dimension};
    kernel.parts.push_back(std::move(part));
  }
  for (std::size_t k = 0; k + 1 < chain.size(); ++k)
    if (!taken[k])
      return Error("chain", ("no later formula of the chain takes '" + results[k] + "', the result of '" +
                             chain[k].formula + "'; leave it out, or give its result the name of an input")
                                .c_str());
  kernel.inputs = model.inputs.size();
  if (kernel.inputs > Kernel::most_inputs) return Error("chain", "the chain has more than 32 inputs; split it");
  for (Kernel::Part& part : kernel.parts)
    for (std::size_t& from : part.from)
      if (from >= as_result) from = from - as_result + kernel.inputs;
  model.gradient = [kernel](const double* x, const double*, double* slopes) { return kernel.gradient(x, slopes); };
  model.steps = [kernel](const double* x) { return kernel.steps(x); };
  model.rows = std::move(kernel);
  return model;
}

/// One formula of the registry as model.
inline Outcome<Model> try_formula_model(std::span<const Entry> known, const std::string& name) {
  return try_chain_model(known, {{name}});
}

/// \copydoc try_chain_model
/// \throws Error  instead of returning one
inline Model chain_model(std::span<const Entry> known, const std::vector<Link>& chain) {
  return try_chain_model(known, chain).value();
}
/// \copydoc try_formula_model
/// \throws Error  instead of returning one
inline Model formula_model(std::span<const Entry> known, const std::string& name) {
  return try_formula_model(known, name).value();
}

}  // namespace tauten::TAUTEN_ABI
