// The inputs of a plate that its bolts pull off.
#pragma once

#include "tauten/question/prying.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<PryingJob>> prying_inputs();

/// The answer with what was asked, which its page needs.
struct PryingAnswer : PlatePrying {
  PryingJob job;
};
inline Derivation derivation_of(const PryingAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// What prying leaves of the strength of bolts.
Outcome<PryingAnswer> try_prying(const Call& call);

}  // namespace tauten::shared
