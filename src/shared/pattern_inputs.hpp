// The inputs of holes of which the pattern is asked.
#pragma once

#include "tauten/question/pattern.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<PatternJob>> pattern_inputs();

/// The answer with what was asked, which its page needs.
struct PatternAnswer : PatternFacts {
  PatternJob job;
};
inline Derivation derivation_of(const PatternAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// Which pattern the holes are.
Outcome<PatternAnswer> try_pattern(const Call& call);

}  // namespace tauten::shared
