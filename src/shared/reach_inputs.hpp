// The inputs of what stands between hand and fastener.
#pragma once

#include "tauten/question/reach.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<ReachJob>> reach_inputs();

/// The answer with the job, which the drawing needs.
struct ReachAnswer : Reach {
  ReachJob job;
};
inline Derivation derivation_of(const ReachAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// What to set for a torque at the fastener, or what a setting gives there; one of `torque` and `setting` must be said.
Outcome<ReachAnswer> try_reach(const Call& call);

}  // namespace tauten::shared
