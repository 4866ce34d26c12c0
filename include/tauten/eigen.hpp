// Formulas over arrays and vectors of Eigen, SI in and SI out.
//
//   Eigen::ArrayXd torque = ...;
//   Eigen::ArrayXd preload = tauten::evaluate(tauten::preload_from_nut_factor, torque, 16e-3, 0.16);
#pragma once

#include <Eigen/Core>

#include "tauten/base/column.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

template <class Derived>
void take_dense(const Eigen::DenseBase<Derived>&);

template <class X>
inline constexpr bool is_dense = requires(const X& x) { take_dense(x); };

/// The type of the first input that is an array or a vector, as it is when stored.
template <class... In>
struct FirstDense;
template <class X, class... Rest>
struct FirstDense<X, Rest...> : FirstDense<Rest...> {};
template <class X, class... Rest>
  requires is_dense<X>
struct FirstDense<X, Rest...> {
  using type = typename X::PlainObject;
};

/// An input as one column of numbers; a block, an expression or another layout is copied first.
template <class Plain, class X>
decltype(auto) stored(const X& x) {
  if constexpr (std::is_same_v<Plain, X>)
    return (x);
  else if constexpr (is_dense<X>)
    return Plain(x);
  else
    return static_cast<typename Plain::Scalar>(x);
}

template <class F, class Plain, class... In>
void evaluate_stored(Formula<F> formula, Plain& out, const In&... in) noexcept {
  using Real = typename Plain::Scalar;
  const auto rows = []<class X>(const X& x) {
    if constexpr (is_dense<X>)
      return Rows<Real>{x.data()};
    else
      return SameInAllRows<Real>{x};
  };
  each_row(formula, out.data(), static_cast<std::size_t>(out.size()), rows(in)...);
}

}  // namespace detail

/// Evaluates `formula` element by element; NaN where an element lies outside the domain.
/// \param in  per input an array, vector or matrix of Eigen (all of one shape, float or double), or one number
/// \return an array of that shape
/// \throws Error  if the shapes differ; without exceptions the result is then empty
template <class F, class... In>
  requires(detail::is_dense<In> || ...)
auto evaluate(Formula<F> formula, const In&... in) {
  static_assert(sizeof...(In) == Formula<F>::arity, "tauten: wrong number of arguments for this formula");
  using Plain = typename detail::FirstDense<In...>::type;
  Eigen::Index rows = -1;
  Eigen::Index columns = -1;
  bool fits = true;
  const auto look = [&]<class X>(const X& x) {
    if constexpr (detail::is_dense<X>) {
      fits = fits && (rows < 0 || (rows == x.rows() && columns == x.cols()));
      rows = x.rows();
      columns = x.cols();
    }
  };
  (look(in), ...);
  Plain out;
  if (!fits) {
    raise(Error("", "the arrays have different shapes; give every input the same, or one number"));
    return out;
  }
  out.resize(rows, columns);
  detail::evaluate_stored(formula, out, detail::stored<Plain>(in)...);
  return out;
}

}  // namespace tauten::TAUTEN_ABI
