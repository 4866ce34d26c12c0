// Extension bars and bit shanks: their twist under a torque.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

// A torsional stiffness is a torque per radian of twist; it is written in the unit of torque.

/// Torsional stiffness of a square bar, 0.1406 G a^4/l (Saint-Venant). The ends are not counted: a square in a socket
/// gives a little more.
struct SquareBarStiffness {
  static constexpr const char* name = "square_bar_stiffness";
  static constexpr const char* summary = "Torque per radian of twist of a square bar";
  static constexpr Arg inputs[] = {
      {"length", "l", Dim::length, positive},
      {"side", "a", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(10e9, 100e9)},
  };
  static constexpr Arg output = {"torsional_stiffness", "c_T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Timoshenko and Goodier, Theory of Elasticity", "torsion of rectangular bars, table, b/a = 1", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l, Real a, Real G) noexcept {
    return Real(0.1406) * G * square(square(a)) / l;
  }
};
/// \copydoc SquareBarStiffness
inline constexpr Formula<SquareBarStiffness> square_bar_stiffness{};

/// Torsional stiffness of a round bar, pi G d^4/(32 l).
struct RoundBarStiffness {
  static constexpr const char* name = "round_bar_stiffness";
  static constexpr const char* summary = "Torque per radian of twist of a round bar";
  static constexpr Arg inputs[] = {
      {"length", "l", Dim::length, positive},
      {"diameter", "d", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(10e9, 100e9)},
  };
  static constexpr Arg output = {"torsional_stiffness", "c_T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "torsion of a solid round bar", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l, Real d, Real G) noexcept {
    return pi<Real>() * G * square(square(d)) / (32 * l);
  }
};
/// \copydoc RoundBarStiffness
inline constexpr Formula<RoundBarStiffness> round_bar_stiffness{};

/// Torsional stiffness of a hexagonal shank or key, 0.115 G s^4/l, s across the flats.
struct HexagonBarStiffness {
  static constexpr const char* name = "hexagon_bar_stiffness";
  static constexpr const char* summary = "Torque per radian of twist of a hexagonal shank";
  static constexpr Arg inputs[] = {
      {"length", "l", Dim::length, positive},
      {"width_across_flats", "s", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(10e9, 100e9)},
  };
  static constexpr Arg output = {"torsional_stiffness", "c_T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Textbook theory of elasticity", "torsion of a regular hexagon, 1.0353 x (edge length)^4", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l, Real s, Real G) noexcept {
    // The edge of the hexagon is s tan 30.
    return Real(1.0353) * G * square(square(s * tan30<Real>())) / l;
  }
};
/// \copydoc HexagonBarStiffness
inline constexpr Formula<HexagonBarStiffness> hexagon_bar_stiffness{};

/// Twist of a square bar under a torque.
struct BarTwist {
  static constexpr const char* name = "bar_twist";
  static constexpr const char* summary = "Twist of a square bar";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, any_sign},
      {"length", "l", Dim::length, positive},
      {"side", "a", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(10e9, 100e9)},
  };
  static constexpr Arg output = {"twist", "theta_T", Dim::angle, any_sign};
  static constexpr Source sources[] = {
      {"Timoshenko and Goodier, Theory of Elasticity", "torsion of rectangular bars, table, b/a = 1", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real l, Real a, Real G) noexcept {
    return M_A / SquareBarStiffness::eval(l, a, G);
  }
};
/// \copydoc BarTwist
inline constexpr Formula<BarTwist> bar_twist{};

/// Twist of a round bar under a torque.
struct RoundBarTwist {
  static constexpr const char* name = "round_bar_twist";
  static constexpr const char* summary = "Twist of a round bar";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, any_sign},
      {"length", "l", Dim::length, positive},
      {"diameter", "d", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(10e9, 100e9)},
  };
  static constexpr Arg output = {"twist", "theta_T", Dim::angle, any_sign};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "torsion of a solid round bar", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real l, Real d, Real G) noexcept {
    return M_A / RoundBarStiffness::eval(l, d, G);
  }
};
/// \copydoc RoundBarTwist
inline constexpr Formula<RoundBarTwist> round_bar_twist{};

}  // namespace tauten::TAUTEN_ABI
