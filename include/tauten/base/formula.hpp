// A formula is written once, as a struct with its metadata and one `eval`; everything else is derived from it here.
//
//   struct BearingTorque {
//     static constexpr const char* name = "bearing_torque";
//     static constexpr const char* summary = "Friction torque under the turned head or nut";
//     static constexpr Arg inputs[] = {{"preload", "F_M", Dim::force, non_negative}, ...};
//     static constexpr Arg output = {"bearing_torque", "M_K", Dim::torque, non_negative};
//     static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "eq. (5.4/9)", Seen::memory}};
//     template <class Real> static constexpr Real eval(Real F_M, ...) noexcept { return ...; }
//     // If inputs may be fine one by one and nonsense together: must come out above zero.
//     template <class Real> static constexpr Real requirement(Real F_M, ...) noexcept { return ...; }
//   };
//   inline constexpr Formula<BearingTorque> bearing_torque{};
#pragma once

#include <cstddef>
#include <type_traits>
#include <utility>

#include "tauten/base/dual.hpp"
#include "tauten/base/error.hpp"
#include "tauten/base/interval.hpp"
#include "tauten/base/plain_number.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/vocabulary.hpp"

namespace tauten::TAUTEN_ABI {

/// One input or the output of a formula.
struct Arg {
  const char* name;    ///< snake_case word of the nomenclature
  const char* symbol;  ///< the source's symbol, "mu_G"
  Dim dimension;
  Interval domain;               ///< where the formula has a meaning; outside it the value is NaN
  Interval validity = any_sign;  ///< the range that the source states; outside it the value carries a warning
};

/// Outcome of looking at the inputs of a call: what is wrong, and with which input (-1: with their combination).
struct Check {
  Status status = Status::ok;
  int argument = -1;
};

namespace detail {

inline constexpr double nan = __builtin_nan("");

/// The plain value by which a scalar is compared with a domain.
template <class Real>
constexpr Real plain(const Real& x) noexcept {
  return x;
}
template <int N>
constexpr double plain(const Dual<N>& x) noexcept {
  return x.value;
}

/// What stands instead of a value outside the domain: NaN, and for dual numbers NaN in every derivative too.
template <class Real>
constexpr Real no_value(const Real&) noexcept {
  return static_cast<Real>(nan);
}
template <int N>
constexpr Dual<N> no_value(const Dual<N>& x) noexcept {
  return x * nan;
}

/// The scalar on which mixed arguments are evaluated: integers count as double.
template <class... X>
using scalar_of = std::common_type_t<std::conditional_t<std::is_integral_v<X>, double, X>...>;

/// The first quantity type that is not a plain number, to answer in the same unit library; a plain number otherwise.
template <class... Q>
struct FirstQuantity {
  using type = double;
};
template <class Q, class... Rest>
struct FirstQuantity<Q, Rest...>
    : std::conditional_t<std::is_arithmetic_v<Q>, FirstQuantity<Rest...>, std::type_identity<Q>> {};

// What is wrong lives out of line, so that a typed call stays as small as its arithmetic.

/// \return the error of an input outside a range
[[gnu::cold, gnu::noinline]] inline Error range_error(const char* formula, const Arg& arg, const Interval& allowed,
                                                      double si, const char* rule, const char* remedy) {
  const double low = allowed.low;
  const double high = allowed.high;
  const DimensionText text = describe(arg.dimension);
  const double unit = text.shop_unit_in_si;
  const char* space = *text.shop_unit == '\0' ? "" : " ";
  const char* from = allowed.excludes_low ? "above" : "at least";
  const bool finite = si >= -largest && si <= largest;
  char range[160];
  if (high < largest)
    std::snprintf(range, sizeof range, "%s %s and at most %s%s%s", from, PlainNumber(low / unit).c_str(),
                  PlainNumber(high / unit).c_str(), space, text.shop_unit);
  else if (low > -largest && finite)
    std::snprintf(range, sizeof range, "%s %s%s%s", from, PlainNumber(low / unit).c_str(), space, text.shop_unit);
  else
    std::snprintf(range, sizeof range, "a finite number");
  char message[512];
  std::snprintf(message, sizeof message, "%s: %s is %s%s%s, %s %s; %s %s, for example %s", formula, arg.name,
                PlainNumber(si / unit).c_str(), space, text.shop_unit, rule, range, remedy, text.name,
                text.how_to_write);
  return {arg.name, message};
}

/// \return the error of an input outside its domain
inline Error domain_error(const char* formula, const Arg& arg, double si) {
  return range_error(formula, arg, arg.domain, si, "but must be", "give it as");
}

/// \return what to hear of an input outside the range that the source states
inline Error unusual_error(const char* formula, const Arg& arg, double si) {
  return range_error(formula, arg, arg.validity, si, "but the source states", "check that it is");
}

/// \return the error of inputs that are fine one by one and have no solution together
[[gnu::cold, gnu::noinline]] inline Error impossible_error(const char* formula, const char* output) {
  char message[512];
  std::snprintf(message, sizeof message,
                "%s: no %s fits these inputs together; check that each value carries the right unit and that none is "
                "swapped with another",
                formula, output);
  return {"", message};
}

}  // namespace detail

/// For typed calls that refuse what lies outside the range that the source states: `preload_from_torque(throw_unusual, ...)`.
inline constexpr auto throw_unusual = [](const Error& unusual) { raise(unusual); };

/// All uses of the formula `F`. An object of this type is the formula: `preload_from_torque(48.0_N_m, ...)`.
/// The second parameter only counts the inputs.
template <class F, class Indices = std::make_index_sequence<std::extent_v<decltype(F::inputs)>>>
class Formula;

template <class F, std::size_t... I>
class Formula<F, std::index_sequence<I...>> {
 public:
  using definition = F;
  static constexpr int arity = sizeof...(I);

  /// Typed call. Takes quantities of any unit library known to `QuantityTraits` and answers in the same one.
  /// \throws Error  naming the argument, its value and the allowed range, if an input lies outside its domain
  template <class... Q>
  constexpr auto operator()(const Q&... q) const {
    static_assert(sizeof...(Q) == arity, "tauten: wrong number of arguments; the formula's header lists its inputs");
    if constexpr (sizeof...(Q) == arity) {
      constexpr bool fits[] = {fits_argument<Q, I>()...};  // a list, so that the first mistake is named first
      if constexpr ((fits[I] && ...)) {
        using Real = detail::scalar_of<decltype(QuantityTraits<Q>::si(q))...>;
        return quantity<typename detail::FirstQuantity<Q...>::type>(
            checked<Real>(static_cast<Real>(QuantityTraits<Q>::si(q))...));
      }
    }
  }

  /// The same, and an input outside the range that the source states is heard of, such as pitch and pitch diameter that have
  /// changed places: `preload_from_torque(print_it, 48_N_m, ...)`. Without the first argument the call is silent about it.
  /// \param heard  called with the Error that describes the input; `throw_unusual` throws it
  template <class Heard, class... Q>
    requires std::is_invocable_v<Heard&, const Error&>
  constexpr auto operator()(Heard&& heard, const Q&... q) const {
    const auto value = (*this)(q...);
    const double x[] = {static_cast<double>(QuantityTraits<Q>::si(q))...};
    if (const Check found = check(x[I]...); found.status == Status::unusual)
      heard(detail::unusual_error(F::name, F::inputs[found.argument], x[found.argument]));
    return value;
  }

  /// Plain kernel: SI numbers in, SI number out; NaN outside the domain. Takes float, double and dual numbers.
  template <class... X>
  static constexpr auto si(const X&... x) noexcept {
    static_assert(sizeof...(X) == arity, "tauten: wrong number of arguments; the formula's header lists its inputs");
    using Real = detail::scalar_of<X...>;
    return guarded<Real>(static_cast<Real>(x)...);
  }

  /// The value whatever the inputs are, for loops over many rows. What is wrong with a row is gathered, not told apart.
  /// \param outside  gets its topmost bit set where `check` does not give `Status::ok`, or an input is minus zero
  template <class Real>
  static constexpr Real si_unless(BitsOf<Real>& outside, const auto&... x) noexcept {
    constexpr Interval ordinary[] = {F::inputs[I].domain.meet(F::inputs[I].validity)...};
    const Real value = F::eval(x...);
    outside |= (F::output.domain.outside_bit(value) | ... | ordinary[I].outside_bit(x));
    if constexpr (has_requirement) outside |= F::requirement(x...) > 0 ? BitsOf<Real>{0} : ~BitsOf<Real>{0};
    return value;
  }

  /// Looks at plain SI inputs.
  /// \return status, and the number of the first input at fault
  template <class... X>
  static constexpr Check check(const X&... x) noexcept {
    // On the scalar of the call, so that the answer agrees with `si` at the very ends of a domain.
    using Real = detail::scalar_of<X...>;
    const Real values[] = {static_cast<Real>(x)...};
    for (int i = 0; i < arity; ++i)
      if (!F::inputs[i].domain.contains(values[i])) return {Status::outside_domain, i};
    if (!possible(F::eval(values[I]...), values[I]...)) return {Status::impossible, -1};
    for (int i = 0; i < arity; ++i)
      if (!F::inputs[i].validity.contains(values[i])) return {Status::unusual, i};
    return {};
  }

  /// Value and all partial derivatives at plain SI inputs, in the order of the inputs.
  template <class... X>
  static constexpr Dual<arity> gradient(const X&... x) noexcept {
    return guarded<Dual<arity>>(Dual<arity>::variable(static_cast<double>(x), static_cast<int>(I))...);
  }

 private:
  template <class Q, std::size_t i>
  static constexpr bool fits_argument() {
    static_assert(QuantityTraits<Q>::known, "tauten: an argument is neither a plain number nor a known quantity");
    if constexpr (QuantityTraits<Q>::known) {
      constexpr bool fits = QuantityTraits<Q>::dimension == F::inputs[i].dimension;
      [[maybe_unused]] constexpr RequireDimension<word_of(F::inputs[i].name), fits> sentence{};
      return fits;
    }
    return false;
  }

  /// Whether `F` has a `requirement(inputs...)` that must come out above zero for the inputs to make sense together.
  static constexpr bool has_requirement = requires(double x) { F::requirement((static_cast<void>(I), x)...); };

  // No branches: a loop over columns becomes packed compares and one blend.
  template <class Real>
  static constexpr bool inside(const Real& value, const auto&... x) noexcept {
    return ((... & int{F::inputs[I].domain.contains(detail::plain(x))}) & int{possible(value, x...)}) != 0;
  }

  template <class Real>
  static constexpr bool possible(const Real& value, const auto&... x) noexcept {
    const bool fits = F::output.domain.contains(detail::plain(value));
    if constexpr (has_requirement)
      return (int{fits} & int{detail::plain(F::requirement(x...)) > 0}) != 0;
    else
      return fits;
  }

  template <class Real>
  static constexpr Real guarded(const auto&... x) noexcept {
    const Real value = F::eval(x...);
    return inside(value, x...) ? value : detail::no_value(value);
  }

  template <class Real>
  static constexpr Real checked(const auto&... x) {
    const Real value = F::eval(x...);
    if (inside(value, x...)) [[likely]]
      return value;
    return refused<Real>(x...);
  }

  // Out of line like what it calls, so that the compiler keeps the way past it short.
  template <class Real>
  [[gnu::cold, gnu::noinline]] static constexpr Real refused(const auto... x) {
    const double values[] = {static_cast<double>(x)...};
    const Check found = check(x...);
    if (found.status == Status::outside_domain)
      raise(detail::domain_error(F::name, F::inputs[found.argument], values[found.argument]));
    else
      raise(detail::impossible_error(F::name, F::output.name));
    return static_cast<Real>(detail::nan);
  }

  template <class Model, class Real>
  static constexpr auto quantity(Real si) noexcept {
    if constexpr (F::output.dimension == Dim::number)
      return si;
    else if constexpr (std::is_arithmetic_v<Model>)
      return Quantity<F::output.dimension, Real>(si);
    else
      return QuantityTraits<Model>::template make<F::output.dimension>(si);
  }
};

}  // namespace tauten::TAUTEN_ABI
