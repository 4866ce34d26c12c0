// A value with a dimension tag, and the customisation point by which other unit libraries take part in typed calls.
#pragma once

#include <compare>
#include <type_traits>

#include "tauten/base/dimension.hpp"

namespace tauten::TAUTEN_ABI {

/// Customisation point: what a type means as a quantity. Specialise it for the quantity type of a unit library with
///   static constexpr bool known = true;   static constexpr Dim dimension = ...;
///   static constexpr auto si(const Q&);   template <Dim D, class Real> using like = ...; (the same library's type)
///   template <Dim D, class Real> static constexpr auto make(Real si);
template <class Q>
struct QuantityTraits {
  static constexpr bool known = false;
};

/// A plain number. The truth is none.
template <class N>
concept Number = std::is_arithmetic_v<N> && !std::is_same_v<N, bool>;

/// Plain numbers are dimensionless.
template <Number Q>
struct QuantityTraits<Q> {
  static constexpr bool known = true;
  static constexpr Dim dimension = Dim::number;
  static constexpr auto si(Q x) noexcept {
    if constexpr (std::is_floating_point_v<Q>)
      return x;
    else
      return static_cast<double>(x);
  }
};

template <class Q>
concept AnyQuantity = QuantityTraits<Q>::known;

namespace detail {

/// False, but only once a type is given.
template <class Given>
inline constexpr bool never = false;

/// Fails to compile, in one plain sentence, unless `fits`.
template <Dim D, bool fits>
struct MustBe;
#define TAUTEN_DIMENSION(dimension)                                      \
  template <bool fits>                                                   \
  struct MustBe<Dim::dimension, fits> {                                  \
    static_assert(fits, "tauten: this must be " TAUTEN_ASK_##dimension); \
    static constexpr bool sentence = true;                               \
  };
TAUTEN_DIMENSION(number)
TAUTEN_DIMENSION(length)
TAUTEN_DIMENSION(area)
TAUTEN_DIMENSION(angle)
TAUTEN_DIMENSION(force)
TAUTEN_DIMENSION(torque)
TAUTEN_DIMENSION(stress)
TAUTEN_DIMENSION(compliance)
TAUTEN_DIMENSION(stiffness)
TAUTEN_DIMENSION(temperature)
TAUTEN_DIMENSION(energy)
TAUTEN_DIMENSION(expansion)
#undef TAUTEN_DIMENSION

/// What is given by mistake for a quantity: a bare number, a text, the truth, or a quantity of another dimension.
template <class T, Dim D>
concept Mistaken = Number<T> || std::is_same_v<T, bool> || std::is_convertible_v<T, const char*> ||
                   (QuantityTraits<T>::known && QuantityTraits<T>::dimension != D);

}  // namespace detail

/// A number in SI that knows its dimension: what tables and answers are made of. It holds a value and has no
/// arithmetic; for that, `units.hpp` converts to and from Boost.Units.
template <Dim D, class Real = double>
struct Quantity {
  Real si = 0;  ///< the value in the SI unit of its dimension

  constexpr Quantity() noexcept = default;
  constexpr explicit Quantity(Real value) noexcept : si(value) {}
  template <Number N>
  constexpr explicit Quantity(N value) noexcept : si(static_cast<Real>(value)) {}

  /// From any quantity type of the same dimension, so that `job.torque = 48.0_N_m` works.
  template <AnyQuantity Q>
    requires(QuantityTraits<Q>::dimension == D && !Number<Q>)
  constexpr Quantity(const Q& q) noexcept  // NOLINT(google-explicit-constructor)
      : si(static_cast<Real>(QuantityTraits<Q>::si(q))) {}

  /// Refuses what is given by mistake without a word of templates, also through std::optional: the sentence stands where
  /// a compiler reads it as soon as this constructor is chosen.
  template <class Given>
    requires detail::Mistaken<Given, D>
  constexpr Quantity(Given) noexcept(detail::MustBe<D, detail::never<Given>>::sentence) {
  }  // NOLINT(google-explicit-constructor)

  /// \return the value in the unit a workshop reads: mm, kN, MPa, N.m, degrees
  constexpr Real shop() const noexcept { return si / static_cast<Real>(describe(D).shop_unit_in_si); }

  friend constexpr auto operator<=>(const Quantity&, const Quantity&) noexcept = default;
};

template <Dim D, class Real>
struct QuantityTraits<Quantity<D, Real>> {
  static constexpr bool known = true;
  static constexpr Dim dimension = D;
  static constexpr Real si(const Quantity<D, Real>& q) noexcept { return q.si; }
  template <Dim E, class R>
  static constexpr Quantity<E, R> make(R value) noexcept {
    return Quantity<E, R>(value);
  }
};

using Length = Quantity<Dim::length>;
using Area = Quantity<Dim::area>;
using Angle = Quantity<Dim::angle>;
using Force = Quantity<Dim::force>;
using Torque = Quantity<Dim::torque>;
using Stress = Quantity<Dim::stress>;

}  // namespace tauten::TAUTEN_ABI
