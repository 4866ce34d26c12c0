// What one bolt of a group gets of a load: equal parts of a force, parts of a moment that grow with the distance, and
// tension and shear together.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Load of one bolt of a group along one direction: an equal part of the force, and of the moment a part that grows with
/// the distance from the centre. In the plane of the joint one direction after the other, with the sum of squares about
/// the centre; across it with that about the axis that the part turns on. Rigid parts, equal bolts, not beyond yield.
struct GroupBoltLoad {
  static constexpr const char* name = "group_bolt_load";
  static constexpr const char* summary = "Load of one bolt of a group along one direction";
  static constexpr Arg inputs[] = {
      {"working_load", "F_A", Dim::force, any_sign}, {"bolt_count", "n_b", Dim::number, positive},
      {"moment", "M", Dim::torque, any_sign},        {"moment_arm", "c", Dim::length, any_sign},
      {"square_sum", "J", Dim::area, positive},
  };
  static constexpr Arg output = {"bolt_load", "F_i", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "section 8-12", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_A, Real n_b, Real M, Real c, Real J) noexcept {
    return F_A / n_b + M * c / J;
  }
};
/// \copydoc GroupBoltLoad
inline constexpr Formula<GroupBoltLoad> group_bolt_load{};

/// Size of a force with two parts at right angles, as the shear of a bolt to the right and up.
struct ResultantForce {
  static constexpr const char* name = "resultant_force";
  static constexpr const char* summary = "Resultant of two forces at right angles";
  static constexpr Arg inputs[] = {
      {"force_x", "F_x", Dim::force, any_sign},
      {"force_y", "F_y", Dim::force, any_sign},
  };
  static constexpr Arg output = {"shear", "V", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "Example 8-7", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real F_x, Real F_y) noexcept {
    return sqrt(square(F_x) + square(F_y));
  }
};
/// \copydoc ResultantForce
inline constexpr Formula<ResultantForce> resultant_force{};

/// Tension alone that strains a bolt as much as tension and shear together, by the greatest principal stress.
struct PrincipalTension {
  static constexpr const char* name = "principal_tension";
  static constexpr const char* summary = "Tension equivalent to tension and shear together";
  static constexpr Arg inputs[] = {
      {"tension", "T", Dim::force, non_negative},
      {"shear", "V", Dim::force, any_sign},
  };
  static constexpr Arg output = {"tension", "T_e", Dim::force, non_negative};
  static constexpr Source sources[] = {
      {"Khurmi and Gupta, A Textbook of Machine Design, 14th ed.", "chapter 11, Example 11.14", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real T, Real V) noexcept {
    return (T + sqrt(square(T) + 4 * square(V))) / 2;
  }
};
/// \copydoc PrincipalTension
inline constexpr Formula<PrincipalTension> principal_tension{};

}  // namespace tauten::TAUTEN_ABI
