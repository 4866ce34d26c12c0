// Three builders of joints: bolt with nut, screw in a tapped hole, stud.
//
//   const Bolt bolt{.diameter = 16.0_mm, .pitch = 2.0_mm, .length = 80.0_mm};
//   const Joint foot = through_bolt(bolt, {{20.0_mm, 70.0_mm, material::grey_cast_iron}, {35.0_mm, 70.0_mm, material::steel}});
#pragma once

#include <optional>

#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/joint/joint.hpp"
#include "tauten/part/hole_table.hpp"
#include "tauten/thread/profile.hpp"

namespace tauten::TAUTEN_ABI {

/// What the far end needs. Zero stands for what is typical.
struct FarEnd {
  Length nut_height{};                         ///< of a nut; 0: ISO 4032, see `nut_height_of`
  Length engagement{};                         ///< of a stud in its tapped hole; 0: 1.25 d, common practice
  Material tapped_material = material::steel;  ///< of the part that holds the tapped thread
};

namespace detail {

inline Length clearance_hole(Length diameter) noexcept {
  const std::string size = "M" + mm_text(diameter.si);
  for (const table::ClearanceHole& row : table::clearance_holes)
    if (size == row.thread_size) return Length(row.medium);
  return Length(1.1 * diameter.si);
}

/// Looks at everything that does not depend on the kind of joint, and fills in what was left at zero.
inline Outcome<Joint> begin_joint(JointKind kind, const Bolt& bolt, std::vector<Layer> layers) {
  if (!is_positive(bolt.diameter))
    return refusal("diameter", bolt.diameter, "but must be above 0 mm; give the nominal diameter of the thread");
  if (!is_positive(bolt.pitch) || bolt.pitch.si > bolt.diameter.si / 2)
    return refusal("pitch", bolt.pitch, "but must be above 0 mm and at most half the diameter");
  if (!is_positive(bolt.length))
    return refusal("length", bolt.length, "but must be above 0 mm; give the length of the bolt under its head");
  if (!is_positive(bolt.material.elastic_modulus))
    return refusal("elastic_modulus", bolt.material.elastic_modulus,
                   "but must be above 0 MPa; give the modulus of the bolt, for example 205GPa");
  if (!is_not_negative(bolt.thread_length) || !is_not_negative(bolt.face_diameter))
    return refusal("thread_length", bolt.thread_length,
                   "but neither it nor the face diameter may be below 0 mm; leave them at 0 for the standard");
  const double least = RootDiameter::eval(bolt.diameter.si, bolt.pitch.si) / 2;
  if (bolt.shank_diameter.si != 0 &&
      !(bolt.shank_diameter.si > least && bolt.shank_diameter.si <= 1.5 * bolt.diameter.si))
    return refusal(
        "shank_diameter", bolt.shank_diameter,
        "but must lie between half the root diameter and 1.5 times the nominal diameter; leave it at 0 for a "
        "full shank");
  if (layers.empty())
    return refusal("grip_length", Length(0), "but must be above 0 mm; give at least one clamped layer");
  for (Layer& layer : layers) {
    if (layer.hole_diameter.si == 0) layer.hole_diameter = clearance_hole(bolt.diameter);
    if (!is_positive(layer.thickness))
      return refusal("thickness", layer.thickness, "but must be above 0 mm; give the thickness of the clamped layer");
    if (!is_positive(layer.material.elastic_modulus))
      return refusal("elastic_modulus", layer.material.elastic_modulus,
                     "but must be above 0 MPa; give the modulus of the layer, for example 110GPa");
    if (!(layer.hole_diameter.si >= bolt.diameter.si))
      return refusal("hole_diameter", layer.hole_diameter,
                     "but the bolt must pass; give a hole of at least its diameter");
    if (!(layer.outer_diameter.si > layer.hole_diameter.si && std::isfinite(layer.outer_diameter.si)))
      return refusal("outer_diameter", layer.outer_diameter, "but must exceed the hole of the layer");
  }
  const Length face = face_diameter_of(bolt);
  if (!(face.si > layers.front().hole_diameter.si))
    return refusal("face_diameter", face, "but must exceed the hole below it; add a washer as a layer");
  return Joint{kind, bolt.diameter, bolt.pitch, face, Length(0), {}, std::move(layers), bolt.material};
}

/// Adds shank and free thread within the grip.
/// \return what is wrong with them, or nothing
inline std::optional<Error> add_shank(Joint& joint, const Bolt& bolt) {
  const double grip = joint.grip().si;
  const double thread =
      bolt.thread_length.si > 0 ? bolt.thread_length.si : thread_length(bolt.diameter, bolt.length, bolt.head).si;
  const double shank = bolt.length.si > thread ? bolt.length.si - thread : 0;
  if (shank >= grip)
    return refusal("grip_length", joint.grip(),
                   "but the thread begins only beyond it; choose a shorter bolt, a longer thread or more washers");
  if (bolt.shank_diameter.si != 0 && shank == 0)
    return refusal(
        "shank_diameter", bolt.shank_diameter,
        "but the bolt is threaded along its whole length and has no shank in the grip; leave it out, or choose "
        "a bolt with a shank");
  const double full = bolt.shank_diameter.si > 0 ? bolt.shank_diameter.si : bolt.diameter.si;
  const Stress modulus = bolt.material.elastic_modulus;
  if (shank > 0) joint.segments.push_back({SegmentKind::shank, Length(shank), Length(full), modulus});
  joint.segments.push_back({SegmentKind::free_thread, Length(grip - shank),
                            Length(RootDiameter::eval(bolt.diameter.si, bolt.pitch.si)), modulus});
  return std::nullopt;
}

/// Adds the thread that is engaged, and the nut or tapped hole around it.
inline void add_engagement(Joint& joint, SegmentKind holder, Stress modulus) {
  const double d = joint.diameter.si;
  const double around = holder == SegmentKind::nut ? extra_length::nut : extra_length::tapped_hole;
  joint.segments.push_back({SegmentKind::engaged_thread, Length(extra_length::engaged_thread * d),
                            Length(RootDiameter::eval(d, joint.pitch.si)), joint.bolt_material.elastic_modulus});
  joint.segments.push_back({holder, Length(around * d), joint.diameter, modulus});
}

inline void add_head(Joint& joint, const Bolt& bolt) {
  const double share = bolt.head == HeadForm::socket ? extra_length::socket_head : extra_length::hexagon_head;
  joint.segments.push_back(
      {SegmentKind::head, Length(share * bolt.diameter.si), bolt.diameter, bolt.material.elastic_modulus});
}

/// Adds the face of the nut. A bolt or stud must reach through it.
/// \return what is wrong with it, or nothing
inline std::optional<Error> add_nut_face(Joint& joint, const Bolt& bolt, const FarEnd& end) {
  const double nut = end.nut_height.si > 0 ? end.nut_height.si : nut_height_of(bolt.diameter).si;
  if (!(bolt.length.si >= joint.grip().si + nut * (1 - 1e-9))) {
    char rule[160];
    std::snprintf(rule, sizeof rule,
                  "but ends inside its nut: grip and nut together need %s mm; choose a longer bolt or a shorter grip",
                  PlainNumber(1e3 * (joint.grip().si + nut)).c_str());
    return refusal("length", bolt.length, rule);
  }
  if (joint.far_face_diameter.si == 0) joint.far_face_diameter = joint.face_diameter;
  if (!(joint.far_face_diameter.si > joint.layers.back().hole_diameter.si))
    return refusal("face_diameter", joint.far_face_diameter, "but must exceed the hole of the layer at the nut");
  return std::nullopt;
}

}  // namespace detail

/// A bolt through clearance holes with a nut.
/// \param bolt    plain dimensions
/// \param layers  clamped layers from the head to the nut, washers included
/// \param end     nut height, if it is not typical
inline Outcome<Joint> try_through_bolt(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  Outcome<Joint> begun = detail::begin_joint(JointKind::through_bolt, bolt, std::move(layers));
  if (!begun) return begun;
  Joint joint = *begun;
  if (const auto error = detail::add_nut_face(joint, bolt, end)) return *error;
  detail::add_head(joint, bolt);
  if (const auto error = detail::add_shank(joint, bolt)) return *error;
  detail::add_engagement(joint, SegmentKind::nut, bolt.material.elastic_modulus);
  return joint;
}

/// A screw in a tapped hole. What the bolt is longer than the grip is its engagement.
/// \param bolt    plain dimensions
/// \param layers  clamped layers under the head, washers included; the part with the tapped hole is none of them
/// \param end     material of the tapped part
inline Outcome<Joint> try_tapped_joint(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  Outcome<Joint> begun = detail::begin_joint(JointKind::tapped_hole, bolt, std::move(layers));
  if (!begun) return begun;
  Joint joint = *begun;
  const double engaged = bolt.length.si - joint.grip().si;
  if (!(engaged >= extra_length::engaged_thread * bolt.diameter.si * (1 - 1e-9)))
    return refusal("length", bolt.length,
                   engaged > 0 ? "but leaves less than 0.5 d of engaged thread; choose a longer bolt"
                               : "but is shorter than the grip, no thread is engaged; choose a longer bolt");
  if (!is_positive(end.tapped_material.elastic_modulus))
    return refusal("elastic_modulus", end.tapped_material.elastic_modulus,
                   "but must be above 0 MPa; give the modulus of the tapped part");
  detail::add_head(joint, bolt);
  if (const auto error = detail::add_shank(joint, bolt)) return *error;
  detail::add_engagement(joint, SegmentKind::tapped_hole, end.tapped_material.elastic_modulus);
  return joint;
}

/// A stud: one end in a tapped hole, a nut on the other.
/// \param bolt    plain dimensions; the length is that from the tapped part to the tip
/// \param layers  clamped layers from the nut to the tapped part
/// \param end     nut height, engagement and material of the tapped part
inline Outcome<Joint> try_stud_joint(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  Outcome<Joint> begun = detail::begin_joint(JointKind::stud, bolt, std::move(layers));
  if (!begun) return begun;
  if (end.engagement.si != 0 && !(end.engagement.si >= extra_length::engaged_thread * bolt.diameter.si))
    return refusal("engagement", end.engagement, "but a stud needs at least 0.5 d of engaged thread");
  if (!is_positive(end.tapped_material.elastic_modulus))
    return refusal("elastic_modulus", end.tapped_material.elastic_modulus,
                   "but must be above 0 MPa; give the modulus of the tapped part");
  Joint joint = *begun;
  if (const auto error = detail::add_nut_face(joint, bolt, end)) return *error;
  joint.far_face_diameter = Length(0);
  detail::add_engagement(joint, SegmentKind::tapped_hole, end.tapped_material.elastic_modulus);
  if (const auto error = detail::add_shank(joint, bolt)) return *error;
  detail::add_engagement(joint, SegmentKind::nut, bolt.material.elastic_modulus);
  return joint;
}

/// \copydoc try_through_bolt
/// \throws Error  naming the argument, its value and the allowed range
inline Joint through_bolt(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  return try_through_bolt(bolt, std::move(layers), end).value();
}
/// \copydoc try_tapped_joint
/// \throws Error  naming the argument, its value and the allowed range
inline Joint tapped_joint(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  return try_tapped_joint(bolt, std::move(layers), end).value();
}
/// \copydoc try_stud_joint
/// \throws Error  naming the argument, its value and the allowed range
inline Joint stud_joint(const Bolt& bolt, std::vector<Layer> layers, const FarEnd& end = {}) {
  return try_stud_joint(bolt, std::move(layers), end).value();
}

}  // namespace tauten::TAUTEN_ABI
