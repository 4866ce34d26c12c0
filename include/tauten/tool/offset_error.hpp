// Effect of a misplaced hand, a wrong angle or a skew pull on the torque behind an offset extension.
#pragma once

#include "tauten/tool/offset.hpp"

namespace tauten::TAUTEN_ABI {

/// Relative change of the torque at the fastener when the hand stands `hand_shift` beyond the length that the setting
/// was worked out for (positive: away from the drive). Without an extension a torque wrench does not care where the hand
/// is. Equal to `torque_at_fastener` at the new length over that at the old, less one; that difference of near numbers is
/// carried out here by hand, so that small shifts keep all their digits.
struct HandShiftError {
  static constexpr const char* name = "hand_shift_error";
  static constexpr const char* summary = "Relative change of the torque when the hand moves along the handle";
  static constexpr Arg inputs[] = {
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
      {"hand_shift", "dL", Dim::length, any_sign, within(-0.2, 0.2)},
  };
  static constexpr Arg output = {"relative_error", "e", Dim::number, {-1, largest, true}};
  static constexpr Source sources[] = {{"Textbook statics", "moments of plane forces", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real L, Real E, Real alpha, Real dL) noexcept {
    return -E * cos(alpha) * dL / ((L + dL) * OffsetLever::at_fastener(L, E, alpha));
  }
  /// The levers at the fastener and of the moved hand.
  template <class Real>
  static constexpr Real requirement(Real L, Real E, Real alpha, Real dL) noexcept {
    return smaller(OffsetLever::at_fastener(L, E, alpha), L + dL);
  }
};
/// \copydoc HandShiftError
inline constexpr Formula<HandShiftError> hand_shift_error{};

/// Relative change of the torque at the fastener when the extension stands `angle_shift` beside the angle that the
/// setting was worked out for. Small in line with the wrench, maximum near a right angle. The difference of the two
/// cosines is written as a product, so that small shifts keep all their digits.
struct ExtensionAngleError {
  static constexpr const char* name = "extension_angle_error";
  static constexpr const char* summary = "Relative change of the torque when the extension stands at another angle";
  static constexpr Arg inputs[] = {
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
      {"angle_shift", "delta_a", Dim::angle, any_sign, within(-0.8, 0.8)},
  };
  static constexpr Arg output = {"relative_error", "e", Dim::number, {-1, largest, true}};
  static constexpr Source sources[] = {{"Textbook statics", "moments of plane forces", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real L, Real E, Real alpha, Real delta_a) noexcept {
    return -2 * E * sin(alpha + delta_a / 2) * sin(delta_a / 2) / OffsetLever::at_fastener(L, E, alpha);
  }
  /// The lever at the fastener at either angle.
  template <class Real>
  static constexpr Real requirement(Real L, Real E, Real alpha, Real delta_a) noexcept {
    return smaller(OffsetLever::at_fastener(L, E, alpha), OffsetLever::at_fastener(L, E, alpha + delta_a));
  }
};
/// \copydoc ExtensionAngleError
inline constexpr Formula<ExtensionAngleError> extension_angle_error{};

/// Relative change of the torque at the fastener when the pull is not square to the handle but leans outward, away
/// from the drive, by `pull_angle`. The wrench feels only the square part of the pull; the part along the handle passes
/// beside the fastener at E sin(alpha). A positive angle means that the extension turns to the side to which the hand
/// pulls; pulling the other way, give the extension angle with the other sign.
struct PullAngleError {
  static constexpr const char* name = "pull_angle_error";
  static constexpr const char* summary = "Relative change of the torque when the pull is not square to the handle";
  static constexpr Arg inputs[] = {
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
      {"pull_angle", "delta", Dim::angle, within(-1.5, 1.5), within(-0.5, 0.5)},
  };
  static constexpr Arg output = {"relative_error", "e", Dim::number, any_sign};
  static constexpr Source sources[] = {{"Textbook statics", "moments of plane forces", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real L, Real E, Real alpha, Real delta) noexcept {
    return E * sin(alpha) * tan(delta) / OffsetLever::at_fastener(L, E, alpha);
  }
  template <class Real>
  static constexpr Real requirement(Real L, Real E, Real alpha, Real) noexcept {
    return OffsetLever::at_fastener(L, E, alpha);
  }
};
/// \copydoc PullAngleError
inline constexpr Formula<PullAngleError> pull_angle_error{};

}  // namespace tauten::TAUTEN_ABI
