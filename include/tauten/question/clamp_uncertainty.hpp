// How certain the clamp load of a torque is: its distribution, the chance to yield, and which input brings how much.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/question/clamp_uncertainty_answer.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

/// A clamp job as models with distributions, one for each fastener that it can be.
/// \param job      as for `clamp`
/// \param scatter  what is known of the spread; what is absent follows from the job
/// \return models in the order of the candidates of `clamp`, or the error that `clamp` would give
Outcome<std::vector<ClampModel>> try_clamp_models(const ClampJob& job, const ClampScatter& scatter = {});

/// A clamp job as a question of uncertainty. Results: clamp_load and yield_utilisation; above 1 the bolt yields.
/// \param model  one of `try_clamp_models`
UncertaintyQuestion question_of(const ClampModel& model);

/// The question of the most common fastener that the job can mean. The others are named, with a notice.
/// \param job      as for `clamp`
/// \param scatter  what is known of the spread
/// \return the question of the first of `try_clamp_models`, or the error that `clamp` would give
Outcome<UncertaintyQuestion> try_clamp_question(const ClampJob& job, const ClampScatter& scatter = {});

/// What clamp load does this torque leave, how certain is it, and what makes it uncertain?
/// \param options  of `monte_carlo`; the same trials serve clamp load and utilisation
/// \return one answer for each candidate of `clamp`, or an error. A progress call that stops ends the list, too.
Outcome<std::vector<ClampUncertainty>> try_clamp_uncertainty(const ClampJob& job, const ClampScatter& scatter = {},
                                                             const MonteCarloOptions& options = {});

/// \copydoc try_clamp_models
/// \throws Error  instead of returning one
std::vector<ClampModel> clamp_models(const ClampJob& job, const ClampScatter& scatter = {});

/// \copydoc try_clamp_question
/// \throws Error  instead of returning one
UncertaintyQuestion clamp_question(const ClampJob& job, const ClampScatter& scatter = {});

/// \copydoc try_clamp_uncertainty
/// \throws Error  instead of returning one
std::vector<ClampUncertainty> clamp_uncertainty(const ClampJob& job, const ClampScatter& scatter = {},
                                                const MonteCarloOptions& options = {});

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/clamp_uncertainty.hpp"
#endif
