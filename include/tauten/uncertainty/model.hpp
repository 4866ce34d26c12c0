// A model for uncertainty: any function of named inputs.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "tauten/base/dimension.hpp"
#include "tauten/base/dual.hpp"
#include "tauten/base/step.hpp"

namespace tauten::TAUTEN_ABI {

/// An input or output of a model.
struct Variable {
  std::string name;
  Dim dimension = Dim::number;
};

/// A function of named inputs, in SI. Both members may be called from several threads at once.
struct Model {
  std::vector<Variable> inputs;
  Variable output;
  /// Values of many trials: `x[i]` points at `count` values of input i. NaN where the inputs have no meaning.
  std::function<void(const double* const* x, double* y, std::size_t count)> rows;
  /// Value and partial derivatives. `scale` holds the standard uncertainties of the inputs; only models whose
  /// derivatives are not exact look at it.
  std::function<double(const double* x, const double* scale, double* slopes)> gradient;
  /// The formulas that lead to the value at one set of inputs, as data; empty where the model is not made of formulas.
  std::function<std::vector<Step>(const double* x)> steps{};

  /// \return the value at one set of inputs
  double value(std::span<const double> x) const {
    std::vector<const double*> columns;
    for (const double& each : x) columns.push_back(&each);
    double y = 0;
    rows(columns.data(), &y, 1);
    return y;
  }
};

namespace detail {

/// Derivatives by differences of fourth order, a hundredth of the standard uncertainty apart; error about 1e-9 of a
/// smooth function's own.
template <class F>
double gradient_by_differences(const F& f, std::span<const double> x, const double* scale, double* slopes) {
  std::vector<double> at(x.begin(), x.end());
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double step = scale[i] > 0 ? 0.01 * scale[i] : 1e-3 * (x[i] == 0 ? 1 : std::fabs(x[i]));
    const auto shifted = [&](double steps) {
      at[i] = x[i] + steps * step;
      const double y = f(std::span<const double>(at));
      at[i] = x[i];
      return y;
    };
    slopes[i] = (8 * (shifted(1) - shifted(-1)) - (shifted(2) - shifted(-2))) / (12 * step);
  }
  return f(x);
}

template <class F>
auto rows_of(const F& f, std::size_t inputs) {
  return [f, inputs](const double* const* x, double* y, std::size_t count) {
    std::vector<double> at(inputs);
    for (std::size_t row = 0; row < count; ++row) {
      for (std::size_t i = 0; i < inputs; ++i) at[i] = x[i][row];
      y[row] = f(std::span<const double>(at));
    }
  };
}

}  // namespace detail

/// Any function as model.
/// \param output  what comes out
/// \param inputs  what goes in, in the order in which `f` takes it
/// \param f       takes a span of doubles, returns a double; may be called from several threads at once
inline Model model_of(Variable output, std::vector<Variable> inputs,
                      const std::function<double(std::span<const double>)>& f) {
  const std::size_t count = inputs.size();
  return {std::move(inputs), std::move(output), detail::rows_of(f, count),
          [f, count](const double* x, const double* scale, double* slopes) {
            return detail::gradient_by_differences(f, {x, count}, scale, slopes);
          }};
}

/// A function of N inputs as model, with exact derivatives.
/// \param f  takes a span of any scalar, double or `Dual<N>`, and returns the same scalar:
///           `model_of<2>({"area"}, {{{"width"}, {"height"}}}, [](auto x) { return x[0] * x[1]; })`.
///           Roots and angles must be written as `tauten::sqrt(x[0])`, `tauten::sin(x[0])`
template <int N, class F>
Model model_of(Variable output, std::array<Variable, N> inputs, F f) {
  const auto rows = [f](const double* const* x, double* y, std::size_t count) {
    for (std::size_t row = 0; row < count; ++row) {
      std::array<double, N> at{};
      for (std::size_t i = 0; i < N; ++i) at[i] = x[i][row];
      y[row] = f(std::span<const double, N>(at));
    }
  };
  const auto gradient = [f](const double* x, const double*, double* slopes) {
    std::array<Dual<N>, N> at;
    for (std::size_t i = 0; i < N; ++i) at[i] = Dual<N>::variable(x[i], static_cast<int>(i));
    const Dual<N> y = f(std::span<const Dual<N>, N>(at));
    std::copy_n(y.slope, N, slopes);
    return y.value;
  };
  return {{inputs.begin(), inputs.end()}, std::move(output), rows, gradient};
}

}  // namespace tauten::TAUTEN_ABI
