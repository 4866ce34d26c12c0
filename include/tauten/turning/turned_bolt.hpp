// From a joint to what turning its bolt needs to know.
#pragma once

#include "tauten/joint/resilience.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/turning/turning.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Share of a piece of thread that flows with the weakest section. In the engaged thread the load fades from turn to turn:
/// of the half diameter that stands for it half flows, as it twists by half (`bolt_twist_per_torque`). Judgement, held
/// against the rotation that structural bolts must bear.
constexpr double flowing_share(SegmentKind kind) noexcept { return kind == SegmentKind::engaged_thread ? 0.5 : 1; }

}  // namespace detail

/// The weakest section is the thread on its stress area, free and engaged (the first turns in the nut flow as well), or a thinner shank. All else of the bolt counts as elastic.
/// \param joint  from one of the builders
/// \param model  of the clamped layers
/// \return the bolt ready to be turned, or an error where the model does not know such a joint
inline Outcome<TurnedBolt> try_turned_bolt(const Joint& joint, PlateModel model = PlateModel::chosen) {
  const Outcome<PlateResilience> plates = try_plate_resilience(joint, model);
  if (!plates) return plates.error();
  TurnedBolt bolt;
  bolt.pitch = joint.pitch;
  bolt.pitch_diameter = Length(PitchDiameter::eval(joint.diameter.si, joint.pitch.si));
  bolt.section_diameter = Length(StressDiameter::eval(joint.diameter.si, joint.pitch.si));
  for (const BoltSegment& s : joint.segments)
    if (s.kind == SegmentKind::free_thread || s.kind == SegmentKind::engaged_thread)
      bolt.section_length = Length(bolt.section_length.si + detail::flowing_share(s.kind) * s.length.si);
  for (const BoltSegment& s : joint.segments)
    if (s.kind == SegmentKind::shank && s.diameter.si < bolt.section_diameter.si) {
      bolt.section_diameter = s.diameter;
      bolt.section_length = s.length;
    }
  bolt.bolt_resilience = bolt_resilience(joint);
  bolt.plate_resilience = plates->value;
  bolt.twist_per_torque = bolt_twist_per_torque(joint);
  return bolt;
}

/// \copydoc try_turned_bolt
/// \throws Error  where the model does not know such a joint
inline TurnedBolt turned_bolt(const Joint& joint, PlateModel model = PlateModel::chosen) {
  return try_turned_bolt(joint, model).value();
}

}  // namespace tauten::TAUTEN_ABI
