// How far to turn from snug for a clamp load, or what a tightening by angle leaves.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/turn_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Works out a tightening by angle.
/// \param job  joint, condition, and the angle or what is wanted
/// \return angle and clamp load with their bands, torque to watch, verdict, residual load, reuse and cautions; or an
///         error that names the argument at fault. Past yield it follows `Turning`, below it agrees with
///         `try_turn_for_preload`. Friction bands are those of `thread_condition`; how far angle and resilience may be
///         off are estimates unless given.
Outcome<TurnAnswer> try_turn(const TurnJob& job);

/// \copydoc try_turn
/// \throws Error  in place of returning one
TurnAnswer turn(const TurnJob& job);

/// The derivation of a tightening by angle. The steps stand at the typical friction; the bands turn the joint at the
/// corners of friction, angle, resilience and strength.
Derivation derivation_of(const TurnAnswer& a);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/turn.hpp"
#include "tauten/question/workings/turn_derivation.hpp"
#endif
