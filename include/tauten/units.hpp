// Boost.Units quantities and literals: 48_N_m, 1.25_mm, 35_ft_lb, 90_deg, 75_percent.
//
// Quantities of Boost.Units may be passed to every formula, and the answer is one again. A torque is not an energy:
// Boost.Units keeps them apart, and so does the library.
#pragma once

#include <boost/units/get_dimension.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/dimensionless.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/surface_tension.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/torque.hpp>

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

namespace si = boost::units::si;

/// The unit that Boost.Units has for a dimension of ours, and the way back.
template <Dim D>
struct BoostUnit;
template <class BoostDimension>
inline constexpr bool known_to_boost = false;
template <class BoostDimension>
inline constexpr Dim from_boost = Dim::number;

#define TAUTEN_BOOST_UNIT(dimension, unit)                                              \
  template <>                                                                           \
  struct BoostUnit<Dim::dimension> {                                                    \
    using type = unit;                                                                  \
  };                                                                                    \
  template <>                                                                           \
  inline constexpr bool known_to_boost<boost::units::get_dimension<unit>::type> = true; \
  template <>                                                                           \
  inline constexpr Dim from_boost<boost::units::get_dimension<unit>::type> = Dim::dimension;
using Compliance = decltype(si::dimensionless() / si::surface_tension());
using PerKelvin = decltype(si::dimensionless() / si::temperature());
TAUTEN_BOOST_UNIT(number, si::dimensionless)
TAUTEN_BOOST_UNIT(length, si::length)
TAUTEN_BOOST_UNIT(area, si::area)
TAUTEN_BOOST_UNIT(angle, si::plane_angle)
TAUTEN_BOOST_UNIT(force, si::force)
TAUTEN_BOOST_UNIT(torque, si::torque)
TAUTEN_BOOST_UNIT(stress, si::pressure)
TAUTEN_BOOST_UNIT(stiffness, si::surface_tension)  // force per length
TAUTEN_BOOST_UNIT(compliance, Compliance)
TAUTEN_BOOST_UNIT(temperature, si::temperature)
TAUTEN_BOOST_UNIT(energy, si::energy)
TAUTEN_BOOST_UNIT(expansion, PerKelvin)
#undef TAUTEN_BOOST_UNIT

}  // namespace detail

/// A Boost.Units quantity of dimension `D` in SI.
template <Dim D, class Real = double>
using BoostQuantity = boost::units::quantity<typename detail::BoostUnit<D>::type, Real>;

template <class Unit, class Real>
struct QuantityTraits<boost::units::quantity<Unit, Real>> {
  using BoostDimension = typename boost::units::get_dimension<Unit>::type;
  static constexpr bool known = detail::known_to_boost<BoostDimension>;
  static constexpr Dim dimension = detail::from_boost<BoostDimension>;

  static constexpr Real si(const boost::units::quantity<Unit, Real>& q) noexcept {
    if constexpr (std::is_same_v<Unit, typename detail::BoostUnit<dimension>::type>)
      return q.value();
    else
      return BoostQuantity<dimension, Real>(q).value();
  }
  template <Dim E, class R>
  static constexpr BoostQuantity<E, R> make(R value) noexcept {
    return BoostQuantity<E, R>::from_value(value);
  }
};

/// \return a value of the library as a quantity of Boost.Units, for arithmetic with units
template <Dim D, class Real>
constexpr BoostQuantity<D, Real> boost_quantity(Quantity<D, Real> q) noexcept {
  return BoostQuantity<D, Real>::from_value(q.si);
}

/// The torque of a force square to a lever. By name, as the product of the two is an energy.
/// \param force  any force, of this library or of Boost.Units
/// \param lever  distance from the axis to its line
template <AnyQuantity F, AnyQuantity L>
constexpr BoostQuantity<Dim::torque> torque_of(const F& force, const L& lever) noexcept {
  constexpr bool fits = QuantityTraits<F>::dimension == Dim::force && QuantityTraits<L>::dimension == Dim::length;
  static_assert(fits, "tauten: torque_of takes a force and a lever, for example torque_of(350.0_N, 400.0_mm)");
  return BoostQuantity<Dim::torque>::from_value(static_cast<double>(QuantityTraits<F>::si(force)) *
                                                static_cast<double>(QuantityTraits<L>::si(lever)));
}

/// Literals for the units of the trade; `using namespace tauten::literals;`
namespace literals {

#define TAUTEN_LITERAL(suffix, dimension, factor)                                                                \
  constexpr BoostQuantity<Dim::dimension> operator""_##suffix(long double x) noexcept {                          \
    return BoostQuantity<Dim::dimension>::from_value(static_cast<double>(x * static_cast<long double>(factor))); \
  }                                                                                                              \
  constexpr BoostQuantity<Dim::dimension> operator""_##suffix(unsigned long long x) noexcept {                   \
    return operator""_##suffix(static_cast<long double>(x));                                                     \
  }
TAUTEN_LITERAL(m, length, 1)
TAUTEN_LITERAL(mm, length, 1e-3L)
TAUTEN_LITERAL(um, length, 1e-6L)
TAUTEN_LITERAL(in, length, unit_factor::inch)
TAUTEN_LITERAL(mm2, area, 1e-6L)
TAUTEN_LITERAL(rad, angle, 1)
TAUTEN_LITERAL(deg, angle, unit_factor::degree)
TAUTEN_LITERAL(N, force, 1)
TAUTEN_LITERAL(kN, force, 1e3L)
TAUTEN_LITERAL(lbf, force, unit_factor::pound_force)
TAUTEN_LITERAL(kgf, force, unit_factor::kilogram_force)
TAUTEN_LITERAL(N_m, torque, 1)
TAUTEN_LITERAL(Nm, torque, 1)
TAUTEN_LITERAL(kgf_m, torque, unit_factor::kilogram_force)
TAUTEN_LITERAL(lbf_ft, torque, unit_factor::pound_force* unit_factor::foot)
TAUTEN_LITERAL(ft_lb, torque, unit_factor::pound_force* unit_factor::foot)
TAUTEN_LITERAL(lbf_in, torque, unit_factor::pound_force* unit_factor::inch)
TAUTEN_LITERAL(in_lb, torque, unit_factor::pound_force* unit_factor::inch)
TAUTEN_LITERAL(Pa, stress, 1)
TAUTEN_LITERAL(MPa, stress, 1e6L)
TAUTEN_LITERAL(GPa, stress, 1e9L)
TAUTEN_LITERAL(K, temperature, 1)
#undef TAUTEN_LITERAL
/// 75_percent is 0.75.
constexpr double operator""_percent(long double x) noexcept { return static_cast<double>(x / 100); }
constexpr double operator""_percent(unsigned long long x) noexcept { return static_cast<double>(x) / 100; }

}  // namespace literals

}  // namespace tauten::TAUTEN_ABI
