// The tightening curve of a joint as somebody describes it: torque and preload against the angle, with its zones.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/turn_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Draws the curve of a joint, past yield to the end of uniform elongation, for low, typical and high friction.
/// \param job  the joint, where to end and how many points
/// \return the curves with yield points and zones, or an error that names the argument at fault. For the least strength
///         of the class; the twist of bars is not in the angle, and a prevailing torque does not count for where the
///         bolt yields.
Outcome<CurveAnswer> try_curve(const CurveJob& job);

/// \copydoc try_curve
/// \throws Error  in place of returning one
CurveAnswer curve(const CurveJob& job);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/curve.hpp"
#endif
