// Will it come loose before it shears, where to stop, and what to do next.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/free_job.hpp"

namespace tauten::TAUTEN_ABI {

/// Judges a stuck fastener.
/// \return chances, torque to stop at, next steps and cautions, or what is wrong with the description
Outcome<Free> try_free_joint(const FreeJob& job);

/// \copydoc try_free_joint
/// \throws Error  on such input
Free free_joint(const FreeJob& job);

/// The derivation of a judgement. The steps stand at the medians before any fastener of this flange was undone; bands
/// and chances come from the simulation.
Derivation derivation_of(const FreeJob& job, const Free& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/free.hpp"
#include "tauten/question/workings/free_derivation.hpp"
#endif
