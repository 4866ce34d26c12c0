// How random trials are run and summed up.
#pragma once

#include <algorithm>
#include <optional>

#include "tauten/base/refusal.hpp"
#include "tauten/base/share_out.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"
#include "tauten/uncertainty/pulse.hpp"
#include "tauten/uncertainty/trials.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION std::vector<double> MonteCarlo::sorted() const {
  std::vector<double> all = values;
  std::sort(all.begin(), all.end());
  return all;
}
TAUTEN_FUNCTION double MonteCarlo::quantile(double chance) const { return detail::quantile_of(values, chance); }
TAUTEN_FUNCTION double MonteCarlo::chance_below(double x) const noexcept {
  const auto below = std::count_if(values.begin(), values.end(), [x](double y) { return y <= x; });
  return static_cast<double>(below) / static_cast<double>(values.size());
}

namespace detail {

/// Minimum number of trials in a block (clause 7.9.4 b): 10 000, or more where the tails are thin.
inline std::uint64_t trials_per_block(double coverage) {
  return static_cast<std::uint64_t>(std::max(10'000.0, std::ceil(100 / (1 - coverage) - 1e-9)));
}

inline std::optional<Error> fault_of(const MonteCarloOptions& o) {
  if (!Interval{0, 0.9999, true}.contains(o.coverage))
    return refusal("coverage", o.coverage, "but must be above 0 and at most 0.9999; write 0.95 for 95 %");
  if (o.digits < 1 || o.digits > 5) return refusal("digits", o.digits, "but must be from 1 to 5; 1 or 2 are typical");
  if (o.jobs < 1) return too_few_jobs(o.jobs);
  const double least = 100 / (1 - o.coverage);
  const std::uint64_t most = o.trials > 0 ? o.trials : o.most_trials;
  if (static_cast<double>(most) >= least - 1e-6 && most <= 1'000'000'000) return {};
  char text[200];
  const char* name = o.trials > 0 ? "trials" : "most_trials";
  std::snprintf(text, sizeof text, "%s is %llu, but must be at least %llu for this coverage and at most 1e9", name,
                static_cast<unsigned long long>(most), static_cast<unsigned long long>(std::ceil(least - 1e-9)));
  return Error(name, text);
}

/// One block of trials, whose numbers start at `first`.
/// \param pulse  may stop any block but the very first one
/// \return nothing if it was stopped
inline std::optional<TrialBlock> run_block(const Model& model, const JointDistribution& inputs,
                                           const MonteCarloOptions& o, std::uint64_t first, std::uint64_t count,
                                           Pulse& pulse) {
  constexpr std::size_t chunk = JointDistribution::block;
  std::vector<double> cells(chunk * inputs.size());
  std::vector<double*> columns(inputs.size());
  for (std::size_t i = 0; i < inputs.size(); ++i) columns[i] = &cells[i * chunk];
  std::vector<double> values(count);
  std::size_t rows = 0;
  for (std::uint64_t start = 0; start < count; start += chunk) {
    if (!pulse.go_on(rows) && first > 0) return {};
    rows = static_cast<std::size_t>(std::min<std::uint64_t>(chunk, count - start));
    inputs.draw(o.seed, 0, first + start, rows, columns.data());
    model.rows(columns.data(), &values[start], rows);
  }
  return summed_up(std::move(values), o.coverage, o.interval);
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<MonteCarlo> try_monte_carlo(const Model& model, const JointDistribution& inputs,
                                                    const MonteCarloOptions& options) {
  if (inputs.size() != model.inputs.size())
    return Error("inputs", "the inputs belong to another model; make them for this one");
  if (auto fault = detail::fault_of(options)) return *fault;
  const bool fixed = options.trials > 0;
  const std::uint64_t limit = fixed ? options.trials : options.most_trials;
  const std::uint64_t size = std::min(limit, detail::trials_per_block(options.coverage));
  // Threads work ahead of the look at the tolerance; what they did too much is thrown away.
  const std::uint64_t ahead = options.jobs > 1 ? 4 * static_cast<std::uint64_t>(std::min(options.jobs, 256)) : 1;

  MonteCarlo out;
  out.output = model.output.name;
  out.coverage = options.coverage;
  detail::Gathered gathered;
  if (fixed) gathered.values.reserve(limit);
  detail::Pulse pulse(options.progress);
  std::uint64_t expected = limit;
  bool enough = false;
  while (!enough && !out.stopped && out.trials < limit) {
    const std::uint64_t left = (limit - out.trials + size - 1) / size;
    std::vector<std::optional<detail::TrialBlock>> round(std::min(ahead, left));
    pulse.begin(out.trials, expected);
    detail::share_out(round.size(), options.jobs, [&](std::uint64_t i) {
      const std::uint64_t first = out.trials + i * size;
      round[i] = detail::run_block(model, inputs, options, first, std::min(size, limit - first), pulse);
    });
    out.stopped = pulse.stopped();
    for (const auto& done : round) {
      if (enough || !done) break;
      const detail::TrialBlock& block = *done;
      const std::uint64_t count = std::min(size, limit - out.trials);
      if (block.values.size() < (count + 1) / 2) {
        char text[300];
        std::snprintf(text, sizeof text,
                      "%.120s has no value in %llu of %llu trials; the inputs reach beyond the range of the model",
                      out.output.c_str(), static_cast<unsigned long long>(count - block.values.size()),
                      static_cast<unsigned long long>(count));
        return Error("inputs", text);
      }
      out.trials += count;
      out.outside += count - block.values.size();
      gathered.add(block);
      out.tolerance = detail::numerical_tolerance(gathered.standard_uncertainty(), options.digits);
      out.converged = gathered.worst_half_width() <= out.tolerance || gathered.is_constant();
      enough = out.converged && !fixed;
    }
    if (options.progress && !out.stopped && !enough && out.trials < limit) {  // what is done cannot be stopped
      const double growth = out.tolerance > 0 ? 2 * gathered.worst_error() / out.tolerance : 1;
      const double needed = static_cast<double>(out.trials) * std::max(1.0, growth * growth);  // NaN at first
      const bool known = !fixed && needed < static_cast<double>(limit);
      expected = known ? static_cast<std::uint64_t>(needed) : limit;
      pulse.report(out.trials, expected);
      out.stopped = pulse.stopped();
    }
  }
  out.mean = gathered.mean();
  out.standard_uncertainty = gathered.standard_uncertainty();
  out.mean_error = gathered.block_mean.error();
  out.uncertainty_error = gathered.block_deviation.error();
  out.low_error = gathered.block_low.error();
  out.high_error = gathered.block_high.error();
  out.values = std::move(gathered.values);
  out.symmetric = detail::symmetric_interval(out.values, options.coverage);
  out.shortest = detail::shortest_interval(out.values, options.coverage);
  return out;
}

TAUTEN_FUNCTION MonteCarlo monte_carlo(const Model& model, const JointDistribution& inputs,
                                       const MonteCarloOptions& options) {
  return try_monte_carlo(model, inputs, options).value();
}

}  // namespace tauten::TAUTEN_ABI
