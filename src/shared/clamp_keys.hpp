// The keys of a joint that is to be tightened.
#pragma once

#include "tauten/tightening/clamp.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

std::span<const Key<ClampJob>> clamp_keys();

/// \return the job that is said; what excludes each other is refused
Outcome<ClampJob> try_clamp_job(std::span<const Assignment> said);

/// The clamp load that a torque leaves; `torque` must be among what is said.
Outcome<Clamp> try_clamp(std::span<const Assignment> said);

/// The torque for a clamp load, for a share of the proof load or, without either, the suggested torque.
Outcome<Clamp> try_torque_for(std::span<const Assignment> said);

}  // namespace tauten::shared
