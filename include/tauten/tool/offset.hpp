// Offset extensions: the setting of the wrench, and the torque that a set wrench applies.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// The lever of a force square to the handle: at the drive L, at the fastener longer by what the extension reaches in the
/// wrench's direction.
struct OffsetLever {
  template <class Real>
  static constexpr Real at_fastener(Real L, Real E, Real alpha) noexcept {
    return L + E * cos(alpha);
  }
};

/// Setting of a torque wrench with an offset extension (crowfoot, offset ring) between its drive and the fastener.
/// `wrench_length` runs from the drive to the middle of the hand, `extension_length` from the drive to the fastener.
/// The angle is measured from the wrench's own direction: 0 in line, 90 degrees square to it (changes nothing),
/// 180 degrees folded back. Exact for one force square to the handle at the hand. What people get wrong: the rule does
/// not hold for a hand beside the mark, a tilted wrench or a hinged handle, nor for two hands, which have their own
/// (`setting_with_support_hand`).
struct WrenchSetting {
  static constexpr const char* name = "wrench_setting";
  static constexpr const char* summary = "Setting of a torque wrench with an offset extension";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, positive},
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
  };
  static constexpr Arg output = {"setting", "M_S", Dim::torque, positive};
  static constexpr Source sources[] = {{"US Army TM 9-254", "torque wrench section, figs 45 and 46", Seen::in_print},
                                       {"US Army TM 9-2350-277-40&P", "work package 0004", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real L, Real E, Real alpha) noexcept {
    return M_A * L / OffsetLever::at_fastener(L, E, alpha);
  }
};
/// \copydoc WrenchSetting
inline constexpr Formula<WrenchSetting> wrench_setting{};

/// Torque that a set wrench applies through an offset extension; the inverse of `wrench_setting`.
struct TorqueAtFastener {
  static constexpr const char* name = "torque_at_fastener";
  static constexpr const char* summary = "Torque at the fastener from a wrench setting with an offset extension";
  static constexpr Arg inputs[] = {
      {"setting", "M_S", Dim::torque, positive},
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, positive};
  static constexpr Source sources[] = {{"US Army TM 9-254", "torque wrench section, figs 45 and 46", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real M_S, Real L, Real E, Real alpha) noexcept {
    return M_S * OffsetLever::at_fastener(L, E, alpha) / L;
  }
};
/// \copydoc TorqueAtFastener
inline constexpr Formula<TorqueAtFastener> torque_at_fastener{};

/// Torque that a set wrench applies when a second hand steadies its head with a share q of the pull, against the pull.
/// The second hand acts in the line of the drive: the wrench does not feel it, the fastener does. With q = 1 the hands
/// form a couple and the extension drops out; with q = 0 this is `torque_at_fastener`.
struct TorqueWithSupportHand {
  static constexpr const char* name = "torque_with_support_hand";
  static constexpr const char* summary = "Torque at the fastener when a second hand steadies the wrench head";
  static constexpr Arg inputs[] = {
      {"setting", "M_S", Dim::torque, positive},
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
      {"support_share", "q", Dim::number, within(0, 1)},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, positive};
  static constexpr Source sources[] = {{"Textbook statics", "moments of plane forces", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_S, Real L, Real E, Real alpha, Real q) noexcept {
    return TorqueAtFastener::eval(M_S, L, (1 - q) * E, alpha);
  }
};
/// \copydoc TorqueWithSupportHand
inline constexpr Formula<TorqueWithSupportHand> torque_with_support_hand{};

/// Setting for a torque at the fastener when a second hand steadies the head; the inverse of
/// `torque_with_support_hand`.
struct SettingWithSupportHand {
  static constexpr const char* name = "setting_with_support_hand";
  static constexpr const char* summary = "Setting of a torque wrench when a second hand steadies its head";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, positive},
      {"wrench_length", "L", Dim::length, positive, within(0.05, 3)},
      {"extension_length", "E", Dim::length, non_negative, within(0, 1.5)},
      {"extension_angle", "alpha", Dim::angle, within(-6.2831853071795872, 6.2831853071795872)},
      {"support_share", "q", Dim::number, within(0, 1)},
  };
  static constexpr Arg output = {"setting", "M_S", Dim::torque, positive};
  static constexpr Source sources[] = {{"Textbook statics", "moments of plane forces", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real L, Real E, Real alpha, Real q) noexcept {
    return WrenchSetting::eval(M_A, L, (1 - q) * E, alpha);
  }
};
/// \copydoc SettingWithSupportHand
inline constexpr Formula<SettingWithSupportHand> setting_with_support_hand{};

}  // namespace tauten::TAUTEN_ABI
