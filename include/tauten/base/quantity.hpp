// A value with a dimension tag, and the customisation point by which other unit libraries take part in typed calls.
#pragma once

#include <compare>
#include <type_traits>

#include "tauten/base/dimension.hpp"

namespace tauten {

/// Customisation point: what a type means as a quantity. Specialise it for the quantity type of a unit library with
///   static constexpr bool known = true;   static constexpr Dim dimension = ...;
///   static constexpr auto si(const Q&);   template <Dim D, class Real> using like = ...; (the same library's type)
///   template <Dim D, class Real> static constexpr auto make(Real si);
template <class Q>
struct QuantityTraits {
  static constexpr bool known = false;
};

/// Plain numbers are dimensionless.
template <class Q>
  requires std::is_arithmetic_v<Q>
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

/// A number in SI that knows its dimension: what tables and answers are made of. It holds a value and has no
/// arithmetic; for that, `units.hpp` converts to and from Boost.Units.
template <Dim D, class Real = double>
struct Quantity {
  Real si = 0;  ///< the value in the SI unit of its dimension

  constexpr Quantity() noexcept = default;
  constexpr explicit Quantity(Real value) noexcept : si(value) {}

  /// From any quantity type of the same dimension, so that `job.torque = 48.0_N_m` works.
  template <AnyQuantity Q>
    requires(QuantityTraits<Q>::dimension == D && !std::is_arithmetic_v<Q>)
  constexpr Quantity(const Q& q) noexcept  // NOLINT(google-explicit-constructor)
      : si(static_cast<Real>(QuantityTraits<Q>::si(q))) {}

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

}  // namespace tauten
