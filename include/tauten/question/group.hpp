// What each bolt of a group carries, in the plane of the joint and across it, with and without preload.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/group_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Shares a load among the bolts of a pattern.
/// \return the loads, or an error for input without meaning and for a load that the pattern cannot carry, such as a moment
///         across bolts that are all in one line
Outcome<BoltGroup> try_bolt_group(const GroupJob& job);

/// \copydoc try_bolt_group
/// \throws Error  in place of returning one
BoltGroup bolt_group(const GroupJob& job);

/// The derivation of it.
Derivation derivation_of(const GroupJob& job, const BoltGroup& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/group.hpp"
#include "tauten/question/workings/group_derivation.hpp"
#endif
