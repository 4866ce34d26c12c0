// The clamp load that a torque leaves, and the torque for a clamp load.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/clamp_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// What clamp load does this torque leave, in every fastener that it can be?
/// \param job  socket or thread, torque, condition, and whatever else is known
/// \return candidates with clamp load, chances of yielding and breaking, a verdict, and the suggested torque; or an error
///         that names the argument at fault. Exact torque formula (VDI 2230), friction bands of `thread_condition`. The
///         clamp load is that of 19 in 20 cases among bolts that hold, `worst_case` that at the ends of friction and
///         wrench. The load is the one right after tightening, before surfaces settle; the pressure under head and nut
///         is not checked.
Outcome<Clamp> try_clamp(const ClampJob& job);

/// \copydoc try_clamp
/// \throws Error  in place of returning one
Clamp clamp(const ClampJob& job);

/// Which wrench setting gives the wanted clamp load at nominal friction?
/// \param job  as for `clamp`, with `clamp_load` or `share` instead of `torque`. By a share, or without either, the
///             setting is the suggested torque: that share of the proof load, three quarters by default, held back so
///             that no more than 1 in 100 bolts that just meet their class yield or, where friction is unknown, that the
///             worst case just yields.
/// \return as `clamp` at that setting. A setting for a clamp load is not held back: look at the verdict and
///         `suggested_torque`. An error too where prevailing and shank torque leave no torque that surely stretches the
///         bolt.
Outcome<Clamp> try_torque_for(const ClampJob& job);

/// \copydoc try_torque_for
/// \throws Error  in place of returning one
Clamp torque_for(const ClampJob& job);

/// The derivation of a clamp answer, or of a torque.
/// \param answer  of `clamp` or `torque_for`
/// \param c       the candidate that is meant, one of `answer.candidates`
Derivation derivation_of(const Clamp& answer, const ClampCandidate& c);

/// The derivation for the most common fastener.
Derivation derivation_of(const Clamp& answer);

/// The derivation of a candidate by itself, without what is said of all of them.
Derivation derivation_of(const ClampCandidate& c);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/clamp.hpp"
#include "tauten/question/workings/clamp_derivation.hpp"
#endif
