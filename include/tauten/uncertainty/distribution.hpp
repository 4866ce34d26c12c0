// Knowledge of one input: a fixed number, or a spread with mean, standard deviation, quantiles and random draws.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "tauten/base/interval.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/normal.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/plain_number.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Standard normal value of a random word, growing with the word.
inline double normal_of(std::uint32_t word) noexcept {
  // In the upper half the draw counts its low bits from the tail inwards.
  return static_cast<double>(normal_from_bits(word ^ (word >> 31) * 0x7FFFFFFFu));
}

}  // namespace detail

/// How the values of an input spread. Every draw is the quantile of one evenly distributed number.
class Distribution {
 public:
  enum class Shape : unsigned char { fixed, normal, lognormal, uniform, triangular, two_piece, samples };

  /// A number that is known.
  Distribution(double value = 0) noexcept : Distribution(Shape::fixed, value, 0, 0) {}  // NOLINT: a number is one too

  static Outcome<Distribution> try_normal(double mean, double standard_deviation) {
    if (!any_sign.contains(mean)) return refuse("mean", mean, "must be a finite number");
    if (!non_negative.contains(standard_deviation))
      return refuse("standard_deviation", standard_deviation, "must be finite and not negative");
    return Distribution(Shape::normal, mean, standard_deviation, 0);
  }
  /// \param variation  standard deviation over mean, as in `Lognormal`
  static Outcome<Distribution> try_lognormal(double median, double variation) {
    if (!positive.contains(median)) return refuse("median", median, "must be finite and above 0");
    if (!within(0, 10).contains(variation)) return refuse("variation", variation, "must be at least 0 and at most 10");
    return Distribution(Shape::lognormal, median, std::sqrt(std::log1p(variation * variation)), variation);
  }
  /// Every value between two ends is as likely as any other: a tolerance or a wrench accuracy of which no more is known.
  static Outcome<Distribution> try_uniform(double low, double high) {
    if (auto bad = unordered(low, low, high)) return *bad;
    return Distribution(Shape::uniform, low, high, 0);
  }
  static Outcome<Distribution> try_triangular(double low, double mode, double high) {
    if (auto bad = unordered(low, mode, high)) return *bad;
    return Distribution(Shape::triangular, low, mode, high);
  }
  /// A low-nominal-high band whose ends are bounds: triangular, with the nominal as the most frequent value. This is
  /// what bands mean throughout the library, so no draw leaves the band that `clamp` states. In a skewed band the mean
  /// lies a third of the way to each end, not at the nominal.
  static Outcome<Distribution> try_from_band(double low, double nominal, double high) {
    return try_triangular(low, nominal, high);
  }
  /// A low-nominal-high band whose ends are exceeded now and then, as measured bands are: half of a normal distribution
  /// on each side. The nominal is the median, and `coverage` is the share that lies between the ends.
  static Outcome<Distribution> try_two_piece(double low, double nominal, double high, double coverage = 0.95) {
    if (auto bad = unordered(low, nominal, high)) return *bad;
    if (!(coverage > 0 && coverage < 1)) return refuse("coverage", coverage, "must be above 0 and below 1");
    const double z = normal_quantile((1 + coverage) / 2);
    return Distribution(Shape::two_piece, nominal, (nominal - low) / z, (high - nominal) / z);
  }
  /// The spread of observed values: the next value lies among them, on straight lines between neighbours. The lines are
  /// stretched about the mean so that the standard deviation is that of the sample (with n - 1), which few values show too
  /// small; a draw may then lie somewhat outside of them. This is not the uncertainty of their mean.
  static Outcome<Distribution> try_from_samples(std::span<const double> values) {
    if (values.size() < 2) {
      return Error("samples", values.empty()
                                  ? "samples is empty, but must hold at least two; give a certain value alone"
                                  : "samples is a single value, but must hold at least two, as one shows no "
                                    "spread; give a certain value alone");
    }
    for (const double x : values)
      if (!any_sign.contains(x)) return refuse("samples", x, "is not a finite number; leave it out or correct it");
    Distribution made(Shape::samples, 0, 0, 0);
    made.sorted_.assign(values.begin(), values.end());
    std::sort(made.sorted_.begin(), made.sorted_.end());
    made.stretch_samples();
    return made;
  }

  // The same, throwing the error instead of returning one.
  static Distribution normal(double mean, double deviation) { return try_normal(mean, deviation).value(); }
  static Distribution lognormal(double median, double variation) { return try_lognormal(median, variation).value(); }
  static Distribution uniform(double low, double high) { return try_uniform(low, high).value(); }
  static Distribution triangular(double low, double mode, double high) {
    return try_triangular(low, mode, high).value();
  }
  static Distribution from_band(double low, double nominal, double high) {
    return try_from_band(low, nominal, high).value();
  }
  static Distribution two_piece(double low, double nominal, double high, double coverage = 0.95) {
    return try_two_piece(low, nominal, high, coverage).value();
  }
  static Distribution from_samples(std::span<const double> values) { return try_from_samples(values).value(); }

  Shape shape() const noexcept { return shape_; }
  double mean() const noexcept;
  double standard_deviation() const noexcept;
  /// \return the value below which `chance` lies; NaN if that is not between 0 and 1
  double quantile(double chance) const noexcept;
  /// \return the quantile at the chance of a standard normal value
  double at_normal(double z) const noexcept;
  /// Turns random words into draws, each an increasing function of its word. Normal shapes are drawn in single
  /// precision, to 2e-6 of the standard deviation and not beyond 6.3 of them.
  void draw(const std::uint32_t* words, double* x, std::size_t count) const noexcept;

 private:
  Distribution(Shape shape, double a, double b, double c) noexcept : shape_(shape), a_(a), b_(b), c_(c) {}

  static Error refuse(const char* argument, double value, const char* demand) {
    char text[200];
    std::snprintf(text, sizeof text, "%s is %s, but %s", argument, PlainNumber(value).c_str(), demand);
    return {argument, text};
  }
  static std::optional<Error> unordered(double low, double middle, double high) {
    if (any_sign.contains(low) && any_sign.contains(high) && low <= middle && middle <= high) return {};
    char text[200];
    std::snprintf(text, sizeof text, "band is %s, %s, %s, but must rise from low to high and be finite",
                  PlainNumber(low).c_str(), PlainNumber(middle).c_str(), PlainNumber(high).c_str());
    return Error("band", text);
  }
  /// Brings the standard deviation of the lines to that of the sample.
  void stretch_samples() noexcept {
    const double middle = mean();
    const double lines = standard_deviation();
    double squares = 0;
    for (const double x : sorted_) squares += (x - middle) * (x - middle);
    const double sample = std::sqrt(squares / static_cast<double>(sorted_.size() - 1));
    if (!(lines > 0)) return;
    for (double& x : sorted_) x = middle + sample / lines * (x - middle);
  }
  /// Variance of a value that is equally likely anywhere between two numbers, plus the square of its mean.
  static double square_of_segment(double from, double to) noexcept { return (from * from + from * to + to * to) / 3; }
  double triangle_at(double u) const noexcept {
    // One root for both sides: it takes longer than all else.
    const double width = c_ - a_;
    const bool rises = u * width < b_ - a_;
    const double root = std::sqrt(width * (rises ? u * (b_ - a_) : (1 - u) * (c_ - b_)));
    return rises ? a_ + root : c_ - root;
  }
  double sample_at(double u) const noexcept {
    const auto last = static_cast<double>(sorted_.size() - 1);
    const double place = std::clamp(u * static_cast<double>(sorted_.size()) - 0.5, 0.0, last);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted_.size() - 1);
    return sorted_[below] + (place - static_cast<double>(below)) * (sorted_[above] - sorted_[below]);
  }

  Shape shape_;
  double a_, b_, c_;  ///< the parameters, in the order of the named constructors
  std::vector<double> sorted_;
};

inline double Distribution::mean() const noexcept {
  switch (shape_) {
    case Shape::fixed:
    case Shape::normal: return a_;
    case Shape::lognormal: return a_ * std::exp(b_ * b_ / 2);
    case Shape::uniform: return (a_ + b_) / 2;
    case Shape::triangular: return (a_ + b_ + c_) / 3;
    case Shape::two_piece: return a_ + (c_ - b_) * 0.39894228040143267794;  // 1/sqrt(2 pi)
    case Shape::samples: break;
  }
  double sum = 0;
  for (const double x : sorted_) sum += x;
  return sum / static_cast<double>(sorted_.size());
}

inline double Distribution::standard_deviation() const noexcept {
  const double difference = c_ - b_;
  switch (shape_) {
    case Shape::fixed: return 0;
    case Shape::normal: return b_;
    case Shape::lognormal: return mean() * c_;
    case Shape::uniform: return (b_ - a_) / std::sqrt(12.0);
    case Shape::triangular:
      return std::sqrt(((b_ - a_) * (b_ - a_) + (c_ - a_) * (c_ - a_) + difference * difference) / 36);
    case Shape::two_piece:
      return std::sqrt((b_ * b_ + c_ * c_) / 2 - difference * difference * 0.15915494309189533577);  // 1/(2 pi)
    case Shape::samples: break;
  }
  // Half a share of the chance stands on each end, the rest on the lines between neighbours.
  const double middle = mean();
  const double first = sorted_.front() - middle, last = sorted_.back() - middle;
  double sum = (first * first + last * last) / 2;
  for (std::size_t i = 1; i < sorted_.size(); ++i)
    sum += square_of_segment(sorted_[i - 1] - middle, sorted_[i] - middle);
  return std::sqrt(sum / static_cast<double>(sorted_.size()));
}

inline double Distribution::at_normal(double z) const noexcept {
  switch (shape_) {
    case Shape::fixed: return a_;
    case Shape::normal: return b_ == 0 ? a_ : a_ + b_ * z;
    case Shape::lognormal: return b_ == 0 ? a_ : a_ * std::exp(b_ * z);
    case Shape::two_piece: return z == 0 ? a_ : z < 0 ? a_ + (b_ == 0 ? 0 : b_ * z) : a_ + (c_ == 0 ? 0 : c_ * z);
    default: return quantile(normal_chance(z));
  }
}

inline double Distribution::quantile(double chance) const noexcept {
  if (!(chance >= 0 && chance <= 1)) return __builtin_nan("");
  switch (shape_) {
    case Shape::uniform: return a_ + (b_ - a_) * chance;
    case Shape::triangular: return triangle_at(chance);
    case Shape::samples: return sample_at(chance);
    default: return at_normal(normal_quantile(chance));
  }
}

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/uncertainty/workings/distribution.hpp"
#endif
