// Everything about a thread by its designation: dimensions, limits, tools and holes, and what bolts and nuts of each class bear.
#pragma once

#include "tauten/base/outcome.hpp"
#include "tauten/question/thread_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Looks up all that follows from a designation.
/// \return the facts, or an error for a size that ISO 261 does not have, an unknown class, or one that is not made in this
///         size. A tolerance class belongs to bolt or nut, by its letter; where ISO 965-1 has no row for the other thread, or
///         its figures were not seen in print, its limits are left out and a notice says so.
Outcome<ThreadFacts> try_thread_facts(const ThreadJob& job);

/// \copydoc try_thread_facts
/// \throws Error  in place of returning one
ThreadFacts thread_facts(const ThreadJob& job);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/thread.hpp"
#endif
