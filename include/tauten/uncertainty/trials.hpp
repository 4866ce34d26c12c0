// Statistics of random trials: coverage intervals, blocks and their scatter, and the tolerance for a number of digits.
// Source: JCGM 101:2008, clauses 7.5 to 7.9; clause numbers from memory.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::TAUTEN_ABI {

/// The ends between which a stated share of all values lies.
struct CoverageInterval {
  double low = 0;
  double high = 0;

  template <class V>
  static void fields(V&& visit) {
    visit("low", &CoverageInterval::low);
    visit("high", &CoverageInterval::high);
  }
};

namespace detail {

/// Number of steps between the ends of a coverage interval in M sorted values (7.7.2).
inline std::size_t steps_covered(std::size_t trials, double coverage) noexcept {
  const auto q = static_cast<std::size_t>(std::floor(coverage * static_cast<double>(trials) + 0.5));
  return std::min(q, trials - 1);
}

/// Puts in order what the coverage intervals are read from: the values that one of them may leave out at either end. The
/// many between them stay as they are, which costs a fraction of sorting them all.
inline void sort_ends(std::vector<double>& values, double coverage) {
  const auto at = [&](std::size_t place) { return values.begin() + static_cast<std::ptrdiff_t>(place); };
  const std::size_t q = steps_covered(values.size(), coverage), left = values.size() - q;
  if (left >= q) return std::sort(values.begin(), values.end());
  std::nth_element(values.begin(), at(left), values.end());
  std::sort(values.begin(), at(left));
  std::nth_element(at(left), at(q), values.end());
  std::sort(at(q), values.end());
}

/// Both intervals take values whose ends are in order (`sort_ends`).
inline CoverageInterval symmetric_interval(const std::vector<double>& sorted, double coverage) noexcept {
  const std::size_t q = steps_covered(sorted.size(), coverage);
  const std::size_t left = sorted.size() - q;  // r of the document counts from 1
  const std::size_t r = std::max<std::size_t>(1, left % 2 == 0 ? left / 2 : (left + 1) / 2);
  return {sorted[r - 1], sorted[r - 1 + q]};
}

inline CoverageInterval shortest_interval(const std::vector<double>& sorted, double coverage) noexcept {
  const std::size_t q = steps_covered(sorted.size(), coverage);
  std::size_t best = 0;
  for (std::size_t r = 1; r + q < sorted.size(); ++r)
    if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) best = r;
  return {sorted[best], sorted[best + q]};
}

/// Quantile on straight lines between neighbours; the values may have any order.
inline double quantile_of(std::vector<double> values, double chance) {
  if (!(chance >= 0 && chance <= 1) || values.empty()) return __builtin_nan("");
  const auto last = static_cast<double>(values.size() - 1);
  const double place = std::clamp(chance * static_cast<double>(values.size()) - 0.5, 0.0, last);
  const auto below = values.begin() + static_cast<std::ptrdiff_t>(place);
  std::nth_element(values.begin(), below, values.end());
  const double above = below + 1 == values.end() ? *below : *std::min_element(below + 1, values.end());
  return *below + (place - std::floor(place)) * (above - *below);
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

inline TrialBlock summed_up(std::vector<double> values, double coverage, Coverage kind) {
  std::erase_if(values, [](double y) { return !std::isfinite(y); });
  TrialBlock out;
  if (values.empty()) return out;
  double sum = 0, squares = 0;
  for (const double y : values) sum += y;
  const double mean = sum / static_cast<double>(values.size());
  for (const double y : values) squares += (y - mean) * (y - mean);
  out.all = {static_cast<double>(values.size()), mean, squares};
  sort_ends(values, coverage);
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
