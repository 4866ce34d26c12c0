// The tools between hand and fastener, and the answer of `reach`.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/step.hpp"
#include "tauten/tool/accuracy.hpp"
#include "tauten/tool/chain.hpp"
#include "tauten/tool/drive_bar.hpp"
#include "tauten/tool/torque_budget.hpp"

namespace tauten::TAUTEN_ABI {

/// The torque wrench. What is not known stays absent.
struct TorqueWrench {
  Length length{0.3};  ///< from the drive to the middle of the hand, which is where the mark is
  WrenchType type = WrenchType::setting;
  char class_letter = 'A';
  std::optional<Torque> scale_low{};   ///< lowest mark
  std::optional<Torque> scale_high{};  ///< maximum torque
  std::optional<Torque> division{};    ///< between two marks or digits
  bool hinged_handle = false;
  bool pipe_on_handle = false;
};

/// A geared multiplier behind the wrench and its extensions.
struct TorqueMultiplier {
  double ratio = 1;
  double efficiency = 1;        ///< 1 if `ratio` is a torque ratio that the maker states
  double efficiency_range = 0;  ///< full width, as a difference of efficiencies
  std::optional<Length> arm{};  ///< from the axis to where the reaction arm rests; absent: not known
};

/// How far things may be off, both ways. Judgement, no published figure: state your own where you know better.
struct ReachTolerances {
  Length hand{0.02};                    ///< of the hand along the handle
  Length extension{0.001};              ///< of the reach of the extension
  Angle extension_angle{0.0523598776};  ///< 3 degrees
  Angle pull_angle{0.1745329252};       ///< pull beside square, 10 degrees
  double support_share = 0.1;           ///< of the second hand, where there is one
  double operator_share = 0.02;         ///< of the torque: speed, jerks, stopping at the click
};

/// A job for `reach`. In line from the hand: wrench, offset extensions, multiplier, universal joint, bars, fastener.
struct ReachJob {
  enum class Known : unsigned char { at_fastener, setting };
  Known known = Known::at_fastener;
  Torque torque{};  ///< the one that is known
  TorqueWrench wrench{};
  std::vector<ExtensionLink> extensions{};
  Length hand_offset{};      ///< where the hand is meant to stand beyond the mark (negative: nearer to the drive)
  double support_share = 0;  ///< of a second hand at the wrench head: 0 none, 1 a couple
  Angle tilt{};              ///< of the wrench out of the plane square to the fastener
  Angle universal_joint{};   ///< bend; 0: no joint, or a straight one
  std::optional<TorqueMultiplier> multiplier{};
  std::vector<DriveBar> bars{};
  std::optional<Length> drive_square{};  ///< width of the smallest square in the line; absent: not known
  ReachTolerances tolerances{};
};

/// What to set, what arrives, and how surely.
struct Reach {
  Torque setting;
  TorqueBand arrives;          ///< at the fastener; about 95 % of cases
  double wrench_accuracy = 0;  ///< half the width of that band as a share: what `clamp` takes under this name
  std::vector<TorqueContribution> contributions;
  ChainEnd extension;      ///< all extensions as one
  double lever_ratio = 1;  ///< torque behind the extensions over setting
  Torque behind_extension;
  Force hand_force;                           ///< of the pulling hand
  std::optional<Torque> torsional_stiffness;  ///< of all bars in series, per radian; none without bars
  Angle twist;                                ///< of the bars at the torque
  Quantity<Dim::energy> stored_energy;        ///< in the bars at the torque
  Torque reaction_torque;                     ///< at the housing of the multiplier
  Force reaction_force;                       ///< where its arm rests; 0 if the arm is not known
  std::vector<Notice> notices;
  std::vector<Step> steps;  ///< how setting and torque came about; empty if the wrench sits on the fastener

  template <class V>
  static void fields(V&& visit) {
    visit("setting", &Reach::setting);
    visit("arrives", &Reach::arrives);
    visit("wrench_accuracy", &Reach::wrench_accuracy);
    visit("contributions", &Reach::contributions);
    visit("extension", &Reach::extension);
    visit("lever_ratio", &Reach::lever_ratio);
    visit("behind_extension", &Reach::behind_extension);
    visit("hand_force", &Reach::hand_force);
    visit("torsional_stiffness", &Reach::torsional_stiffness);
    visit("twist", &Reach::twist);
    visit("stored_energy", &Reach::stored_energy);
    visit("reaction_torque", &Reach::reaction_torque);
    visit("reaction_force", &Reach::reaction_force);
    visit("notices", &Reach::notices);
    visit("steps", &Reach::steps);
  }
};

}  // namespace tauten::TAUTEN_ABI
