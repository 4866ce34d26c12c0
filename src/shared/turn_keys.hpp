// The keys of a joint that is to be tightened by angle.
#pragma once

#include "tauten/tightening/joint_curve.hpp"
#include "tauten/tightening/turn_by_angle.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

/// Those of `turn`; they fill the joint of the question.
std::span<const Key<CurveJob>> turn_keys();
/// Those of `curve`.
std::span<const Key<CurveJob>> curve_keys();

/// \return the job that is said
Outcome<TurnJob> try_turn_job(std::span<const Assignment> said);

/// How far to turn for a load, or what a specification of snug torque and angle leaves.
Outcome<TurnAnswer> try_turn(std::span<const Assignment> said);

/// Torque and preload against the angle.
Outcome<CurveAnswer> try_curve(std::span<const Assignment> said);

}  // namespace tauten::shared
