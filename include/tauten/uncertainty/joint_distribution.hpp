// All inputs of a model together: their distributions, their correlations, and reproducible draws.
#pragma once

#include <algorithm>
#include <cstdint>
#include <utility>

#include "tauten/base/mode.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/base/visible_text.hpp"
#include "tauten/uncertainty/correlation.hpp"
#include "tauten/uncertainty/distribution.hpp"
#include "tauten/uncertainty/model.hpp"

namespace tauten::TAUTEN_ABI {

/// What is known of one input. A plain number is a fixed one: `{{"pitch", 1.5e-3}, {"torque", Distribution::normal(...)}}`.
struct InputDistribution {
  std::string name;
  Distribution distribution;
};

namespace detail {

/// Correlation coefficient of two inputs whose standard normal numbers are correlated by r: the mean of the product of
/// their standardised values over the bivariate normal distribution, by the trapezoidal rule out to 6 deviations. For two
/// uniform inputs it is 6/pi asin(r/2).
inline double correlation_of(const Distribution& a, const Distribution& b, double r) {
  using Shape = Distribution::Shape;
  if (a.shape() == Shape::normal && b.shape() == Shape::normal) return r;
  if (!(a.standard_deviation() > 0 && b.standard_deviation() > 0)) return 0;
  constexpr int half = 60;
  constexpr double step = 6.0 / half;
  const double rest = std::sqrt(std::max(0.0, 1 - r * r));
  double product = 0, sum_a = 0, sum_b = 0, square_a = 0, square_b = 0, weights = 0;
  for (int i = -half; i <= half; ++i) {
    const double z = i * step;
    const double x = a.at_normal(z);
    // Fully correlated, the second number does not count.
    const int reach = rest > 0 ? half : 0;
    for (int j = -reach; j <= reach; ++j) {
      const double other = j * step;
      const double weight = std::exp(-(z * z + other * other) / 2);
      const double y = b.at_normal(r * z + rest * other);
      weights += weight;
      sum_a += weight * x;
      sum_b += weight * y;
      square_a += weight * x * x;
      square_b += weight * y * y;
      product += weight * x * y;
    }
  }
  const double mean_a = sum_a / weights, mean_b = sum_b / weights;
  return (product / weights - mean_a * mean_b) /
         std::sqrt((square_a / weights - mean_a * mean_a) * (square_b / weights - mean_b * mean_b));
}

}  // namespace detail

/// The inputs of a model, in its order.
class JointDistribution {
 public:
  /// Trials that are drawn at once.
  static constexpr std::size_t block = 256;

  std::size_t size() const noexcept { return of_.size(); }
  const Distribution& operator[](std::size_t i) const noexcept { return of_[i]; }
  /// \return the coefficient of the copula, as given
  double correlation(std::size_t i, std::size_t j) const noexcept { return matrix_[i * size() + j]; }
  /// \return the correlation coefficient of the inputs themselves, which the copula's is for normal ones only
  double input_correlation(std::size_t i, std::size_t j) const {
    if (i == j) return 1;
    const double r = correlation(i, j);
    return r == 0 ? 0 : detail::correlation_of(of_[i], of_[j], r);
  }
  /// \return true if any two inputs go together
  bool correlated() const noexcept { return !lower_.empty(); }

  /// Draws trials `first` to `first + count - 1`, which depend on their numbers, seed and stream alone.
  /// \param count    at most `block`
  /// \param columns  one column of `count` numbers for each input
  void draw(std::uint64_t seed, std::uint32_t stream, std::uint64_t first, std::size_t count,
            double* const* columns) const;

  friend Outcome<JointDistribution> try_joint(const Model& model, const std::vector<InputDistribution>& given,
                                              const std::vector<Correlation>& correlations);

 private:
  bool goes_with_others(std::size_t input) const noexcept { return correlated() && mixed_[input]; }

  std::vector<Distribution> of_;
  std::vector<double> matrix_;  ///< correlation coefficients, row by row
  std::vector<double> lower_;   ///< its Cholesky factor; empty if all inputs are independent
  std::vector<bool> mixed_;
};

/// \param model         whose inputs are meant
/// \param given         one distribution or number for each input, in any order
/// \param correlations  what goes together; all else is independent
/// \return the inputs in the order of the model, or an error that names the input that is missing, unknown, given
///         twice, or at fault in a correlation
inline Outcome<JointDistribution> try_joint(const Model& model, const std::vector<InputDistribution>& given,
                                            const std::vector<Correlation>& correlations = {}) {
  const std::size_t size = model.inputs.size();
  const auto refuse = [](const std::string& name, const std::string& fault) {
    return Error(name.c_str(), (detail::visible(name, 60) + " " + fault).c_str());
  };
  const auto place_of = [&](const std::string& name) {
    std::size_t i = 0;
    while (i < size && model.inputs[i].name != name) ++i;
    return i;
  };
  JointDistribution joint;
  joint.of_.resize(size);
  std::vector<bool> seen(size, false);
  for (const InputDistribution& each : given) {
    const std::size_t i = place_of(each.name);
    if (i == size) return refuse(each.name, "is not an input of " + model.output.name + "; check the spelling");
    if (seen[i]) return refuse(each.name, "is given twice; give each input once");
    if (!any_sign.contains(each.distribution.mean())) return refuse(each.name, "is not a finite number");
    seen[i] = true;
    joint.of_[i] = each.distribution;
  }
  for (std::size_t i = 0; i < size; ++i)
    if (!seen[i]) return refuse(model.inputs[i].name, "is missing; give it a distribution or a fixed number");

  joint.matrix_.assign(size * size, 0.0);
  joint.mixed_.assign(size, false);
  for (std::size_t i = 0; i < size; ++i) joint.matrix_[i * size + i] = 1;
  for (const Correlation& each : correlations) {
    const std::size_t i = place_of(each.first), j = place_of(each.second);
    if (i == size || j == size)
      return refuse(i == size ? each.first : each.second, "is not an input, but stands in a correlation");
    if (i == j) return refuse(each.first, "is correlated with itself; name two different inputs");
    if (!within(-1, 1).contains(each.coefficient))
      return refuse(each.first, "is correlated with " + each.second + " by " + number_text(each.coefficient) +
                                    ", but a coefficient must be at least -1 and at most 1");
    if (joint.matrix_[i * size + j] != 0)
      return refuse(each.first, "is correlated with " + each.second + " twice; give each pair once");
    joint.matrix_[i * size + j] = joint.matrix_[j * size + i] = each.coefficient;
    if (each.coefficient != 0) joint.mixed_[i] = joint.mixed_[j] = true;
  }
  if (std::find(joint.mixed_.begin(), joint.mixed_.end(), true) == joint.mixed_.end()) return joint;
  const Outcome<std::vector<double>> lower = try_cholesky(joint.matrix_, size);
  if (!lower) return lower.error();
  joint.lower_ = *lower;
  return joint;
}

/// \copydoc try_joint
/// \throws Error  instead of returning one
inline JointDistribution joint_distribution(const Model& model, const std::vector<InputDistribution>& given,
                                            const std::vector<Correlation>& correlations = {}) {
  return try_joint(model, given, correlations).value();
}

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/uncertainty/workings/joint_distribution.hpp"
#endif
