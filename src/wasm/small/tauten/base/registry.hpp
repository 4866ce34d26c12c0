// The registry in little code, for the network. Each entry is the same as in the header of this name that stands behind
// it, and gives the same numbers, but only the arithmetic of a formula is compiled anew for each one; domains, rows and
// derivatives are worked through by the few functions here.
#pragma once

#define entry_of entry_of_in_fast_code
#include_next "tauten/base/registry.hpp"
#undef entry_of

namespace tauten {

namespace small {

using Slope = Dual<1>;

/// The arithmetic of a formula alone.
struct Kernel {
  std::span<const Arg> inputs;
  const Arg* output;
  double (*value)(const double* x) noexcept;
  Slope (*slope)(const Slope* x) noexcept;
};

[[gnu::noinline]] inline Check check(const Kernel& k, const double* x) noexcept {
  const int arity = static_cast<int>(k.inputs.size());
  for (int i = 0; i < arity; ++i)
    if (!k.inputs[static_cast<std::size_t>(i)].domain.contains(x[i])) return {Status::outside_domain, i};
  if (!k.output->domain.contains(k.value(x))) return {Status::impossible, -1};
  for (int i = 0; i < arity; ++i)
    if (!k.inputs[static_cast<std::size_t>(i)].usual.contains(x[i])) return {Status::unusual, i};
  return {};
}

[[gnu::noinline]] inline double value(const Kernel& k, const double* x) noexcept {
  const Status status = check(k, x).status;
  return status == Status::ok || status == Status::unusual ? k.value(x) : detail::nan;
}

using detail::most_inputs;

/// One derivative at a time.
[[gnu::noinline]] inline double gradient(const Kernel& k, const double* x, double* slopes) noexcept {
  const double result = value(k, x);
  Slope variables[most_inputs];
  for (std::size_t i = 0; i < k.inputs.size(); ++i) variables[i] = Slope(x[i]);
  for (std::size_t i = 0; i < k.inputs.size(); ++i) {
    variables[i] = Slope::variable(x[i], 0);
    slopes[i] = result == result ? k.slope(variables).slope[0] : detail::nan;
    variables[i] = Slope(x[i]);
  }
  return result;
}

/// Rows of float are worked out in double and rounded.
template <class Real>
[[gnu::noinline]] bool rows(const Kernel& k, char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) {
  const std::size_t arity = k.inputs.size();
  double x[most_inputs];
  bool in_order = true;
  for (std::size_t row = 0; row < rows; ++row) {
    const auto at = [&](std::size_t i) { return columns[i] + static_cast<std::ptrdiff_t>(row) * steps[i]; };
    for (std::size_t i = 0; i < arity; ++i) x[i] = static_cast<double>(*reinterpret_cast<const Real*>(at(i)));
    *reinterpret_cast<Real*>(at(arity)) = static_cast<Real>(value(k, x));
    in_order &= check(k, x).status == Status::ok;
  }
  return in_order;
}

template <class F, class Indices>
struct Erased;

template <class F, std::size_t... I>
struct Erased<F, std::index_sequence<I...>> {
  static_assert(static_cast<int>(sizeof...(I)) <= most_inputs);
  template <class Real>
  static Real kernel(const Real* x) noexcept {
    return F::eval(x[I]...);
  }
  static constexpr Kernel own{F::inputs, &F::output, kernel<double>, kernel<Slope>};

  static double value(const double* x) noexcept { return small::value(own, x); }
  static Check check(const double* x) noexcept { return small::check(own, x); }
  static double gradient(const double* x, double* slopes) noexcept { return small::gradient(own, x, slopes); }
  static Symbolic expression() { return F::eval(Symbolic::of_input(static_cast<int>(I))...); }
  template <class Real>
  static bool rows(char* const* columns, const std::ptrdiff_t* steps, std::size_t count) noexcept {
    return small::rows<Real>(own, columns, steps, count);
  }
};

}  // namespace small

template <class F, class Indices>
constexpr Entry entry_of(Formula<F, Indices>) noexcept {
  using E = small::Erased<F, Indices>;
  return {F::name,
          F::summary,
          F::inputs,
          F::output,
          F::sources,
          E::value,
          E::check,
          E::gradient,
          E::expression,
          E::template rows<double>,
          E::template rows<float>};
}

}  // namespace tauten
