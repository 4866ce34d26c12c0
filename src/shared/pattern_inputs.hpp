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

/// Which pattern the holes are.
Outcome<PatternAnswer> try_pattern(const Call& call);

}  // namespace tauten::shared
