// The inputs of a joint of which the order of tightening is asked.
#pragma once

#include "tauten/question/sequence.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<SequenceJob>> sequence_inputs();

/// The answer with what was asked, which its page needs.
struct SequenceAnswer : TighteningSequence {
  SequenceJob job;
};
inline Derivation derivation_of(const SequenceAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// In which order a joint is tightened and undone.
Outcome<SequenceAnswer> try_sequence(const Call& call);

}  // namespace tauten::shared
