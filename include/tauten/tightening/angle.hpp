// Angle of turn and preload of an elastic joint, from the moment when all gaps are closed.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Angle that a preload asks for. Friction does not enter. Valid up to yield, after snug: the turn that closes gaps is
/// to be measured, never computed from zero torque. While torque acts, the wrench turns further by the twist of bolt
/// and tool; that part springs back.
struct AngleFromPreload {
  static constexpr const char* name = "angle_from_preload";
  static constexpr const char* summary = "Angle of turn for a preload, elastic joint";
  static constexpr Arg inputs[] = {
      {"preload", "F_M", Dim::force, any_sign},
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"angle_of_turn", "theta", Dim::angle, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design", "problem on the turn of the nut", Seen::memory},
      {"VDI 2230 Part 1:2003", "section 5.4.1, angle-controlled tightening", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real F_M, Real delta_S, Real delta_P, Real P) noexcept {
    return 2 * pi<Real>() * F_M * (delta_S + delta_P) / P;
  }
};
/// \copydoc AngleFromPreload
inline constexpr Formula<AngleFromPreload> angle_from_preload{};

/// Preload that an angle adds; the inverse of `angle_from_preload`. Above yield it says too much: see `curve.hpp`.
struct PreloadFromAngle {
  static constexpr const char* name = "preload_from_angle";
  static constexpr const char* summary = "Preload from an angle of turn, elastic joint";
  static constexpr Arg inputs[] = {
      {"angle_of_turn", "theta", Dim::angle, any_sign, within(-13, 13)},  // two turns; beyond, degrees are likely
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"preload", "F_M", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design", "problem on the turn of the nut", Seen::memory},
      {"VDI 2230 Part 1:2003", "section 5.4.1, angle-controlled tightening", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real theta, Real delta_S, Real delta_P, Real P) noexcept {
    return theta * P / (2 * pi<Real>() * (delta_S + delta_P));
  }
};
/// \copydoc PreloadFromAngle
inline constexpr Formula<PreloadFromAngle> preload_from_angle{};

/// Angle from 10 % of a torque to all of it: the joint rate by which power tools are judged. At most 27 degrees is a
/// hard joint, 650 degrees or more a soft one; most joints lie between.
struct JointRateAngle {
  static constexpr const char* name = "joint_rate_angle";
  static constexpr const char* summary = "Angle from 10 % to 100 % of the torque";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"torque_lever", "a", Dim::length, positive},
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
      {"pitch", "P", Dim::length, positive, within(0.2e-3, 8e-3)},
  };
  static constexpr Arg output = {"angle_of_turn", "theta", Dim::angle, non_negative};
  static constexpr Source sources[] = {{"ISO 5393:1994", "joint rate", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real a, Real delta_S, Real delta_P, Real P) noexcept {
    return Real(0.9) * AngleFromPreload::eval(M_A / a, delta_S, delta_P, P);
  }
};
/// \copydoc JointRateAngle
inline constexpr Formula<JointRateAngle> joint_rate_angle{};

/// Bounds of `joint_rate_angle` in radians. From memory.
inline constexpr double hard_joint_angle = 27 * 3.14159265358979323846 / 180;
inline constexpr double soft_joint_angle = 650 * 3.14159265358979323846 / 180;

}  // namespace tauten::TAUTEN_ABI
