// The inputs of a thread.
#pragma once

#include "tauten/question/thread.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<ThreadJob>> thread_inputs();

/// The answer with what was asked, which its page needs.
struct ThreadAnswer : ThreadFacts {
  ThreadJob job;
};

/// All that follows from a designation.
Outcome<ThreadAnswer> try_thread(const Call& call);

}  // namespace tauten::shared
