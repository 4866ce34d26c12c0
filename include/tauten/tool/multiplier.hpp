// Torque multipliers: output torque, reaction force, and the counter-torque on the other side of the joint.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque that a geared multiplier gives. The efficiency is 0.90 to 0.95 per stage (from memory); a maker's stated
/// torque ratio already includes it, so that the efficiency is then 1.
struct MultiplierOutput {
  static constexpr const char* name = "multiplier_output";
  static constexpr const char* summary = "Output torque of a torque multiplier";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"gear_ratio", "i", Dim::number, positive, within(1, 200)},
      {"efficiency", "eta", Dim::number, {0, 1, true}, within(0.5, 1)},
  };
  static constexpr Arg output = {"output_torque", "M_2", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "gear train with losses", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real i, Real eta) noexcept {
    return M_A * i * eta;
  }
};
/// \copydoc MultiplierOutput
inline constexpr Formula<MultiplierOutput> multiplier_output{};

/// Torque to put into a multiplier; the inverse of `multiplier_output`.
struct MultiplierInput {
  static constexpr const char* name = "multiplier_input";
  static constexpr const char* summary = "Input torque of a torque multiplier for an output torque";
  static constexpr Arg inputs[] = {
      {"output_torque", "M_2", Dim::torque, non_negative},
      {"gear_ratio", "i", Dim::number, positive, within(1, 200)},
      {"efficiency", "eta", Dim::number, {0, 1, true}, within(0.5, 1)},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "gear train with losses", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_2, Real i, Real eta) noexcept {
    return M_2 / MultiplierOutput::eval(Real(1), i, eta);
  }
};
/// \copydoc MultiplierInput
inline constexpr Formula<MultiplierInput> multiplier_input{};

/// Torque that holds the housing of a multiplier whose two shafts are in line and turn the same way: output less input.
struct MultiplierReaction {
  static constexpr const char* name = "multiplier_reaction";
  static constexpr const char* summary = "Torque at the reaction arm of a torque multiplier";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"output_torque", "M_2", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"reaction_torque", "M_R", Dim::torque, any_sign};
  static constexpr Source sources[] = {{"Textbook mechanics", "moments on the housing of a gear train", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real M_2) noexcept {
    return M_2 - M_A;
  }
};
/// \copydoc MultiplierReaction
inline constexpr Formula<MultiplierReaction> multiplier_reaction{};

/// Force at the end of a reaction arm or counter-hold bar. The same force, turned round, pushes sideways on the drive.
struct ReactionForce {
  static constexpr const char* name = "reaction_force";
  static constexpr const char* summary = "Force where a reaction arm rests";
  static constexpr Arg inputs[] = {
      {"reaction_torque", "M_R", Dim::torque, any_sign},
      {"arm_length", "l_R", Dim::length, positive},
  };
  static constexpr Arg output = {"reaction_force", "F_R", Dim::force, any_sign};
  static constexpr Source sources[] = {{"Textbook mechanics", "moment of a force", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_R, Real l_R) noexcept {
    return M_R / l_R;
  }
};
/// \copydoc ReactionForce
inline constexpr Formula<ReactionForce> reaction_force{};

/// Maximum torque needed to hold the other side (head or nut) still: what the thread passes on. Friction under the held
/// side helps and is not counted.
struct CounterHoldTorque {
  static constexpr const char* name = "counter_hold_torque";
  static constexpr const char* summary = "Torque that holds the other side of the joint";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"bearing_torque", "M_K", Dim::torque, non_negative},
  };
  static constexpr Arg output = {"hold_torque", "M_H", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "moments on bolt and nut", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real M_K) noexcept {
    return M_A - M_K;
  }
};
/// \copydoc CounterHoldTorque
inline constexpr Formula<CounterHoldTorque> counter_hold_torque{};

}  // namespace tauten::TAUTEN_ABI
