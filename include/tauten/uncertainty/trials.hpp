// Statistics of random trials: coverage intervals, blocks and their scatter, and the tolerance for a number of digits.
// Source: JCGM 101:2008, clauses 7.5 to 7.9; clause numbers from memory.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "tauten/uncertainty/coverage_interval.hpp"
#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Number of steps between the ends of a coverage interval in M sorted values (7.7.2).
inline std::size_t steps_covered(std::size_t trials, double coverage) noexcept {
  const auto q = static_cast<std::size_t>(std::floor(coverage * static_cast<double>(trials) + 0.5));
  return std::min(q, trials - 1);
}

/// \return the value at a place of the sorted values. A sample tells between which bounds to look, so that most values are
///         only passed by
inline double value_at(const std::vector<double>& values, std::size_t place) {
  constexpr std::size_t apart = 32;
  const auto nth = [](std::vector<double>& of, std::size_t n) {
    const auto there = of.begin() + static_cast<std::ptrdiff_t>(n);
    std::nth_element(of.begin(), there, of.end());
    return *there;
  };
  std::vector<double> sample(values.size() / apart), near;
  const auto size = static_cast<double>(sample.size());
  const double share = static_cast<double>(place) / static_cast<double>(values.size());
  // Four deviations to both sides: only rare runs, and values in an order of their own, miss the place.
  const double middle = share * size, margin = 4 * std::sqrt(middle * (1 - share)) + 4;
  if (4 * margin < size) {
    for (std::size_t i = 0; i < sample.size(); ++i) sample[i] = values[i * apart];
    const double low = middle < margin ? -HUGE_VAL : nth(sample, static_cast<std::size_t>(middle - margin));
    const double high = middle + margin >= size ? HUGE_VAL : nth(sample, static_cast<std::size_t>(middle + margin));
    std::size_t below = 0;
    near.reserve(static_cast<std::size_t>(3 * margin) * apart);
    for (const double y : values) {
      below += std::size_t{y < low};
      if (y >= low && y <= high) near.push_back(y);
    }
    if (below <= place && place < below + near.size()) return nth(near, place - below);
  }
  near = values;
  return nth(near, place);
}

/// Both intervals take values in any order.
inline CoverageInterval symmetric_interval(const std::vector<double>& values, double coverage) {
  const std::size_t q = steps_covered(values.size(), coverage), left = values.size() - q;
  // r of the document, which counts from 1.
  const std::size_t r = std::max<std::size_t>(1, left % 2 == 0 ? left / 2 : (left + 1) / 2);
  return {value_at(values, r - 1), value_at(values, r - 1 + q)};
}

inline CoverageInterval shortest_interval(const std::vector<double>& values, double coverage) {
  const std::size_t q = steps_covered(values.size(), coverage), left = values.size() - q;
  // It begins among as many of the smallest values as it leaves out, and ends among as many of the largest.
  std::vector<double> low, high;
  low.reserve(left), high.reserve(left);
  const double last_of_low = value_at(values, left - 1), first_of_high = value_at(values, q);
  for (const double y : values)
    if (y <= last_of_low) low.push_back(y);
  for (const double y : values)
    if (y >= first_of_high) high.push_back(y);
  std::sort(low.begin(), low.end());
  std::sort(high.begin(), high.end());
  const std::size_t more = high.size() - left;  // that equal the first of them
  std::size_t best = 0;
  for (std::size_t r = 1; r < left; ++r)
    if (high[r + more] - low[r] < high[best + more] - low[best]) best = r;
  return {low[best], high[best + more]};
}

/// Quantile on straight lines between neighbours; the values may have any order.
inline double quantile_of(const std::vector<double>& values, double chance) {
  if (!(chance >= 0 && chance <= 1) || values.empty()) return __builtin_nan("");
  const std::size_t last = values.size() - 1;
  const double place = std::clamp(chance * static_cast<double>(values.size()) - 0.5, 0.0, static_cast<double>(last));
  const auto whole = static_cast<std::size_t>(place);
  const double below = value_at(values, whole), above = value_at(values, std::min(whole + 1, last));
  return below + (place - std::floor(place)) * (above - below);
}

/// Half a unit in the last of the digits of u that count (7.9.2).
inline double numerical_tolerance(double u, int digits) noexcept {
  if (!(u > 0)) return 0;
  double exponent = std::floor(std::log10(u)) - (digits - 1);
  // 0.0996 to two digits is 0.10, not 0.0100.
  if (std::round(u / std::pow(10.0, exponent)) >= std::pow(10.0, digits)) exponent += 1;
  return 0.5 * std::pow(10.0, exponent);
}

/// Mean and scatter of numbers that come one by one.
struct Running {
  double count = 0, mean = 0, squares = 0;

  void add(double x) noexcept { add({1, x, 0}); }
  void add(const Running& other) noexcept {
    const double all = count + other.count, shift = other.mean - mean;
    mean += shift * other.count / all;
    squares += other.squares + shift * shift * count * other.count / all;
    count = all;
  }
  double deviation() const noexcept { return std::sqrt(squares / (count - 1)); }
  /// Standard error of the mean; NaN for a single number.
  double error() const noexcept { return deviation() / std::sqrt(count); }
};

/// One block of trials.
struct TrialBlock {
  std::vector<double> values;
  Running all;
  CoverageInterval interval;
};

/// The sum of what `f` makes of each value, in four strands: a single one would wait for every addition.
template <class F>
double sum_of(const std::vector<double>& values, F f) {
  double strand[4] = {};
  std::size_t i = 0;
  for (; i + 4 <= values.size(); i += 4)
    for (std::size_t j = 0; j < 4; ++j) strand[j] += f(values[i + j]);
  for (; i < values.size(); ++i) strand[0] += f(values[i]);
  return (strand[0] + strand[1]) + (strand[2] + strand[3]);
}

inline TrialBlock summed_up(std::vector<double> values, double coverage, Coverage kind) {
  const auto itself = [](double y) { return y; };
  double sum = sum_of(values, itself);
  if (!std::isfinite(sum)) {
    std::erase_if(values, [](double y) { return !std::isfinite(y); });
    sum = sum_of(values, itself);
  }
  TrialBlock out;
  if (values.empty()) return out;
  const double mean = sum / static_cast<double>(values.size());
  const double squares = sum_of(values, [mean](double y) { return (y - mean) * (y - mean); });
  out.all = {static_cast<double>(values.size()), mean, squares};
  out.interval =
      kind == Coverage::symmetric ? symmetric_interval(values, coverage) : shortest_interval(values, coverage);
  out.values = std::move(values);
  return out;
}

/// Blocks so far, added in their order, whichever thread made them.
struct Gathered {
  Running all, block_mean, block_deviation, block_low, block_high;
  std::vector<double> values;

  void add(const TrialBlock& part) {
    all.add(part.all);
    block_mean.add(part.all.mean);
    block_deviation.add(part.all.deviation());
    block_low.add(part.interval.low);
    block_high.add(part.interval.high);
    values.insert(values.end(), part.values.begin(), part.values.end());
  }
  double mean() const noexcept { return all.mean; }
  double standard_uncertainty() const noexcept { return all.deviation(); }
  /// Blocks before which nothing is said of their scatter: fewer stop a run by luck.
  static constexpr double least_blocks = 8;
  /// Half the width in which mean, uncertainty and both ends lie in 95 % of runs, the widest; NaN after too few blocks. The
  /// scatter of few blocks is itself uncertain, and a run stops where it happens to be small: Student's factor for 97.5 %
  /// of the blocks at hand stands in for 2, and the least number of blocks is kept whatever they show.
  double worst_half_width() const noexcept {
    if (block_mean.count < least_blocks) return __builtin_nan("");
    // Student's t for 97.5 %, within 0.3 % from 7 degrees of freedom on: 1.96 + 2.3723/f + 2.82/f^2 (Abramowitz and
    // Stegun 26.7.5).
    const double f = block_mean.count - 1;
    return (1.95996 + 2.3723 / f + 2.8225 / (f * f)) * worst_error();
  }
  /// The largest numerical standard error of mean, uncertainty and both ends; NaN after the first block.
  double worst_error() const noexcept {
    if (block_mean.count < 2) return __builtin_nan("");
    return std::max(std::max(block_mean.error(), block_deviation.error()),
                    std::max(block_low.error(), block_high.error()));
  }
  /// \return true if every trial gave one value
  bool is_constant() const noexcept { return all.count > 0 && all.squares == 0; }
};

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
