// How certain the clamp load of a tightening by angle is, below yield and beyond it.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/question/turn_answer.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

/// A tightening by angle as a question of uncertainty. Results: clamp_load, torque at the end of the turn, and
/// yield_utilisation, the stress while the wrench turns over the yield strength of the very bolt. Every trial turns the
/// bolt through its curve: ten thousand trials take a second or two, and two certain digits a minute; derivatives are
/// differences. A trial in which the bolt uses up its uniform elongation, necks and may break has no value; the results
/// hold for those bolts that do not.
/// \param job     as for `turn`
/// \param answer  of `turn` to this job; its angle counts at the fastener
/// \return the question, or an error if the job is not the one of the answer and cannot be turned, or if the bolt necks
///         with every input at its mean
Outcome<UncertaintyQuestion> try_turn_question(const TurnJob& job, const TurnAnswer& answer);

/// \copydoc try_turn_question
/// \throws Error  instead of returning one
UncertaintyQuestion turn_question(const TurnJob& job, const TurnAnswer& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/turn_uncertainty.hpp"
#endif
