// The keys of what stands between hand and fastener.
#pragma once

#include "tauten/tool/reach.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

std::span<const Key<ReachJob>> reach_keys();

/// The answer with the job, which the drawing needs.
struct ReachAnswer : Reach {
  ReachJob job;
};

/// What to set for a torque at the fastener, or what a setting gives there; one of `torque` and `setting` must be said.
Outcome<ReachAnswer> try_reach(std::span<const Assignment> said);

}  // namespace tauten::shared
