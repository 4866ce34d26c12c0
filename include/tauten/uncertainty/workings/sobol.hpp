// How Sobol indices are found.
#pragma once

#include <algorithm>

#include "tauten/base/refusal.hpp"
#include "tauten/base/share_out.hpp"
#include "tauten/uncertainty/sobol.hpp"
#include "tauten/uncertainty/trials.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Sums over one batch. Values are taken from a fixed value near the mean, which keeps the first-order products small.
struct SobolSums {
  double count = 0, outside = 0, sum = 0, squares = 0;
  std::vector<double> first, total;

  explicit SobolSums(std::size_t inputs) : first(inputs, 0.0), total(inputs, 0.0) {}
  void add(const SobolSums& other) {
    count += other.count, outside += other.outside, sum += other.sum, squares += other.squares;
    for (std::size_t i = 0; i < first.size(); ++i) first[i] += other.first[i], total[i] += other.total[i];
  }
  double mean() const { return sum / (2 * count); }
  double variance() const { return squares / (2 * count) - mean() * mean(); }
  double first_index(std::size_t i) const { return first[i] / count / variance(); }
  double total_index(std::size_t i) const { return total[i] / (2 * count) / variance(); }
};

inline void sobol_block(const Model& model, const JointDistribution& inputs, std::uint64_t seed, std::uint64_t first,
                        double near, SobolSums& sums) {
  constexpr std::size_t rows = JointDistribution::block;
  const std::size_t n = inputs.size();
  std::vector<double> cells(2 * n * rows), values((n + 2) * rows);
  std::vector<double*> a, b;
  for (std::size_t i = 0; i < n; ++i) {
    a.push_back(&cells[i * rows]);
    b.push_back(&cells[(n + i) * rows]);
  }
  inputs.draw(seed, 1, first, rows, a.data());
  inputs.draw(seed, 2, first, rows, b.data());
  double* const f_a = &values[n * rows];
  double* const f_b = &values[(n + 1) * rows];
  model.rows(a.data(), f_a, rows);
  model.rows(b.data(), f_b, rows);
  for (std::size_t i = 0; i < n; ++i) {
    std::swap(a[i], b[i]);  // set A with input i from B
    model.rows(a.data(), &values[i * rows], rows);
    std::swap(a[i], b[i]);
  }
  for (std::size_t row = 0; row < rows; ++row) {
    bool has_values = true;
    for (std::size_t k = 0; k < n + 2; ++k) has_values = has_values && std::isfinite(values[k * rows + row]);
    if (!has_values) {
      sums.outside += 1;
      continue;
    }
    const double y_a = f_a[row] - near, y_b = f_b[row] - near;
    sums.count += 1;
    sums.sum += y_a + y_b;
    sums.squares += y_a * y_a + y_b * y_b;
    for (std::size_t i = 0; i < n; ++i) {
      const double y = values[i * rows + row] - near;
      sums.first[i] += y_b * (y - y_a);
      sums.total[i] += (y_a - y) * (y_a - y);
    }
  }
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<Sobol> try_sobol(const Model& model, const JointDistribution& inputs,
                                         const SobolOptions& options) {
  const std::size_t n = model.inputs.size();
  if (inputs.size() != n) return Error("inputs", "the inputs belong to another model; make them for this one");
  if (inputs.correlated())
    return Error("correlations", "Sobol indices are for independent inputs; use a budget where inputs are correlated");
  if (options.batches < 4 || options.batches > 1000)
    return refusal("batches", static_cast<double>(options.batches), "but must be from 4 to 1000; 32 is the default");
  if (options.trials < 1000 || options.trials > 1'000'000'000)
    return refusal("trials", static_cast<double>(options.trials),
                   "but must be from 1000 to 1e9; 65536 give indices to about 0.01");
  if (options.jobs < 1) return detail::too_few_jobs(options.jobs);
  constexpr std::uint64_t rows = JointDistribution::block;
  const std::uint64_t blocks = (options.trials + rows * options.batches - 1) / (rows * options.batches);

  std::vector<double> means(n);
  for (std::size_t i = 0; i < n; ++i) means[i] = inputs[i].mean();
  const double at_means = model.value(means);
  // A first block tells where the mean lies.
  detail::SobolSums taste(n);
  detail::sobol_block(model, inputs, options.seed, 0, std::isfinite(at_means) ? at_means : 0, taste);
  const double near = (std::isfinite(at_means) ? at_means : 0) + (taste.count > 0 ? taste.mean() : 0);

  Sobol out{model.output.name, 0, 0, 0, 0, false, {}};
  detail::SobolSums all(n);
  std::vector<detail::Running> first(n), total(n);
  const auto at_once = std::max<std::uint64_t>(1, static_cast<std::uint64_t>(std::clamp(options.jobs, 1, 256)));
  for (std::uint64_t done = 0; done < options.batches && !out.stopped; done += at_once) {
    std::vector<detail::SobolSums> round(std::min(at_once, options.batches - done), detail::SobolSums(n));
    detail::share_out(round.size(), options.jobs, [&](std::uint64_t k) {
      for (std::uint64_t block = 0; block < blocks; ++block)
        detail::sobol_block(model, inputs, options.seed, ((done + k) * blocks + block) * rows, near, round[k]);
    });
    for (const detail::SobolSums& batch : round) {
      all.add(batch);
      for (std::size_t i = 0; i < n; ++i) {
        first[i].add(batch.first_index(i));
        total[i].add(batch.total_index(i));
      }
    }
    const std::uint64_t batches_done = done + round.size();
    out.trials = batches_done * blocks * rows;
    if (options.progress && batches_done < options.batches)
      out.stopped = !options.progress({out.trials, options.batches * blocks * rows});
  }
  out.outside = static_cast<std::uint64_t>(all.outside);
  if (all.outside > all.count)
    return Error("inputs", "the model has no value in most trials; the inputs reach beyond its range");
  out.mean = near + all.mean();
  out.variance = all.variance();
  if (!(out.variance > 0)) return Error("inputs", "the result does not vary; give at least one input a spread");
  for (std::size_t i = 0; i < n; ++i)
    out.inputs.push_back(
        {model.inputs[i].name, all.first_index(i), first[i].error(), all.total_index(i), total[i].error()});
  return out;
}

TAUTEN_FUNCTION Sobol sobol(const Model& model, const JointDistribution& inputs, const SobolOptions& options) {
  return try_sobol(model, inputs, options).value();
}

}  // namespace tauten::TAUTEN_ABI
