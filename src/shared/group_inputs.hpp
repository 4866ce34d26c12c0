// The inputs of a group of bolts under load.
#pragma once

#include "tauten/question/group.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

std::span<const Input<GroupJob>> group_inputs();

/// The answer with what was asked, which its page needs.
struct GroupAnswer : BoltGroup {
  GroupJob job;
};
inline Derivation derivation_of(const GroupAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// What each bolt of a group carries.
Outcome<GroupAnswer> try_group(const Call& call);

}  // namespace tauten::shared
