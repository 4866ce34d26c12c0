// The inputs of a joint that is to be tightened.
#pragma once

#include "tauten/question/clamp.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// All that can be given about a joint, which is asked either way.
std::span<const Input<ClampJob>> joint_inputs();
/// Without the clamp load, which is what is asked for.
std::span<const Input<ClampJob>> clamp_inputs();
/// Without the torque and what it is meant for.
std::span<const Input<ClampJob>> torque_inputs();

/// \return the job that is given; what excludes each other is refused
Outcome<GivenJob<ClampJob>> try_clamp_job(const Call& call);

/// The answer with the job, which its page needs.
struct ClampAnswer : Clamp {
  ClampJob job;
};

/// The clamp load that a torque leaves; `torque` must be among what is given.
Outcome<ClampAnswer> try_clamp(const Call& call);

/// The torque for a clamp load, for a share of the proof load or, without either, the suggested torque.
Outcome<ClampAnswer> try_torque_for(const Call& call);

}  // namespace tauten::shared
