// The inputs of a joint that is to be tightened by angle.
#pragma once

#include "tauten/question/curve.hpp"
#include "tauten/question/turn.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// Those of `turn`; they fill the joint of the question.
std::span<const Input<CurveJob>> turn_inputs();
/// Those of `curve`.
std::span<const Input<CurveJob>> curve_inputs();

/// \return the job that is given
Outcome<GivenJob<CurveJob>> try_turn_job(const Call& call);

/// \return an error of the library in the words of what was given
Error in_words(const GivenJob<CurveJob>& given, const Error& error);

/// How far to turn for a load, or what a specification of snug torque and angle leaves.
Outcome<TurnAnswer> try_turn(const Call& call);

/// Torque and preload against the angle.
Outcome<CurveAnswer> try_curve(const Call& call);

}  // namespace tauten::shared
