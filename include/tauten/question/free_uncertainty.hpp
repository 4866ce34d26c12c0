// How certain it is that a stuck fastener comes free before it shears.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/question/free_job.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

/// A stuck fastener as a question of uncertainty. Results: breakaway_torque and shear_torque at the head, and
/// torque_ratio of the first to the second, above 1 where the bolt shears first. What was learned from fasteners already
/// undone is in it; corners, tool and arm are not.
/// \param job  as for `free_joint`
/// \return the question, or the error that `free_joint` would give
Outcome<UncertaintyQuestion> try_free_question(const FreeJob& job);

/// \copydoc try_free_question
/// \throws Error  instead of returning one
UncertaintyQuestion free_question(const FreeJob& job);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/free_uncertainty.hpp"
#endif
