// The universal joint: speed and torque swing twice in each turn.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Speed of the driven shaft over speed of the driving shaft, cos(beta)/(1 - sin(beta)^2 cos(theta)^2). Without friction
/// the torque ratio is its inverse. `rotation` is the angle of the driving shaft, zero where its fork lies in the plane
/// of the bend.
struct UniversalJointRatio {
  static constexpr const char* name = "universal_joint_ratio";
  static constexpr const char* summary = "Speed ratio of a universal joint over the turn";
  static constexpr Arg inputs[] = {
      {"bend_angle", "beta", Dim::angle, within(0, 1.55), within(0, 0.7853981633974483)},
      {"rotation", "theta", Dim::angle, any_sign, within(-13, 13)},
  };
  static constexpr Arg output = {"speed_ratio", "i_u", Dim::number, positive};
  static constexpr Source sources[] = {
      {"Textbook kinematics", "universal joint, instantaneous speed ratio", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real beta, Real theta) noexcept {
    return cos(beta) / (1 - square(sin(beta)) * square(cos(theta)));
  }
};
/// \copydoc UniversalJointRatio
inline constexpr Formula<UniversalJointRatio> universal_joint_ratio{};

/// Minimum ratio over a turn, cos(beta): for speed and, a quarter turn later, for torque.
struct UniversalJointLeastRatio {
  static constexpr const char* name = "universal_joint_least_ratio";
  static constexpr const char* summary = "Minimum ratio of a universal joint over the turn";
  static constexpr Arg inputs[] = {
      {"bend_angle", "beta", Dim::angle, within(0, 1.55), within(0, 0.7853981633974483)},
  };
  static constexpr Arg output = {"speed_ratio", "i_u", Dim::number, positive};
  static constexpr Source sources[] = {{"Textbook kinematics", "universal joint, minimum ratio", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real beta) noexcept {
    return cos(beta);
  }
};
/// \copydoc UniversalJointLeastRatio
inline constexpr Formula<UniversalJointLeastRatio> universal_joint_least_ratio{};

/// Maximum ratio over a turn, 1/cos(beta): 3.5 % above one at 15 degrees, 15.5 % at 30 degrees.
struct UniversalJointGreatestRatio {
  static constexpr const char* name = "universal_joint_greatest_ratio";
  static constexpr const char* summary = "Maximum ratio of a universal joint over the turn";
  static constexpr Arg inputs[] = {
      {"bend_angle", "beta", Dim::angle, within(0, 1.55), within(0, 0.7853981633974483)},
  };
  static constexpr Arg output = {"speed_ratio", "i_u", Dim::number, positive};
  static constexpr Source sources[] = {{"Textbook kinematics", "universal joint, maximum ratio", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real beta) noexcept {
    return 1 / UniversalJointLeastRatio::eval(beta);
  }
};
/// \copydoc UniversalJointGreatestRatio
inline constexpr Formula<UniversalJointGreatestRatio> universal_joint_greatest_ratio{};

/// Bend at which the maximum ratio is a given variation above one: the safe bend for a tolerance on the torque.
struct UniversalJointBend {
  static constexpr const char* name = "universal_joint_bend";
  static constexpr const char* summary = "Bend of a universal joint that keeps to a given variation";
  static constexpr Arg inputs[] = {
      {"variation", "v", Dim::number, non_negative, within(0, 0.42)},
  };
  static constexpr Arg output = {"bend_angle", "beta", Dim::angle, within(0, 1.5707963267948966)};
  static constexpr Source sources[] = {{"Textbook kinematics", "universal joint, maximum ratio", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real v) noexcept {
    // 1/cos(beta) = 1 + v, written with the tangent.
    return atan(sqrt(square(1 + v) - 1));
  }
};
/// \copydoc UniversalJointBend
inline constexpr Formula<UniversalJointBend> universal_joint_bend{};

}  // namespace tauten::TAUTEN_ABI
