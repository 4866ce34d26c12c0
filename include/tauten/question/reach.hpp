// What to set on a wrench that reaches the fastener over extensions, joints, bars or a multiplier, and what arrives.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/reach_job.hpp"

namespace tauten::TAUTEN_ABI {

/// Works out a reach: the setting for a torque at the fastener, or the torque at the fastener for a setting.
/// \return numbers with their band, and notices; or an error where input has no meaning or the rule of the
///         lever does not hold (pipe on the handle, tilt, hinged handle with an extension, folded back to no lever)
Outcome<Reach> try_reach(const ReachJob& job);

/// \copydoc try_reach
/// \throws Error  instead of returning it
Reach reach(const ReachJob& job);

/// The derivation of a reach.
Derivation derivation_of(const ReachJob& job, const Reach& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/reach.hpp"
#include "tauten/question/workings/reach_derivation.hpp"
#endif
