// Resilience of a whole joint: the bolt by its pieces, the clamped layers by one of three models.
#pragma once

#include <algorithm>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/joint/cone.hpp"
#include "tauten/joint/cone_angle.hpp"
#include "tauten/joint/joint.hpp"
#include "tauten/joint/kind.hpp"
#include "tauten/joint/stiffness.hpp"

namespace tauten::TAUTEN_ABI {

/// Resilience of the clamped layers, by which model, and what speaks against it here.
struct PlateResilience {
  Compliance value{};
  PlateModel model = PlateModel::deformation_cone;
  Angle half_angle{};  ///< of the cones; 0 for the exponential fit
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("value", &PlateResilience::value);
    visit("model", &PlateResilience::model);
    visit("half_angle", &PlateResilience::half_angle);
    visit("notices", &PlateResilience::notices);
  }
};

/// \return the stretch of the bolt per unit of preload, head, engaged thread and nut included
inline Compliance bolt_resilience(const Joint& joint) noexcept {
  double sum = 0;
  for (const BoltSegment& s : joint.segments)
    sum += SegmentResilience::eval(s.length.si, circle_area(s.diameter.si), s.elastic_modulus.si);
  return Compliance(sum);
}

/// \return the elastic twist of the bolt in radians per N.m of thread torque: shank, free thread and, as the torque
///         fades along it, half of the engaged thread
inline double bolt_twist_per_torque(const Joint& joint) noexcept {
  double sum = 0;
  for (const BoltSegment& s : joint.segments) {
    const double share = s.kind == SegmentKind::shank || s.kind == SegmentKind::free_thread ? 1
                         : s.kind == SegmentKind::engaged_thread                            ? 0.5
                                                                                            : 0;
    const double shear_modulus = s.elastic_modulus.si / (2 * (1 + joint.bolt_material.poisson_ratio));
    sum += share * ShankTwist::eval(1.0, s.length.si, s.diameter.si, shear_modulus);
  }
  return sum;
}

namespace detail {

/// A piece of a layer through which pressure widens from `start` on, over `length`, until it fills the layer.
inline double widening(const Layer& layer, double start, double length, double half_angle) noexcept {
  const double edge = layer.outer_diameter.si;
  const double hole = layer.hole_diameter.si;
  const double modulus = layer.material.elastic_modulus.si;
  const double cone = std::clamp((edge - start) / (2 * tan(half_angle)), 0.0, length);
  return ConeResilience::eval(cone, hole, std::min(start, edge), half_angle, modulus) +
         SleeveResilience::eval(length - cone, hole, edge, modulus);
}

/// Diameter of the pressure where it enters each layer, coming from a face.
inline std::vector<double> fronts(const std::vector<Layer>& layers, double face, double half_angle, bool from_below) {
  std::vector<double> entries(layers.size());
  for (std::size_t k = 0; k < layers.size(); ++k) {
    const std::size_t i = from_below ? layers.size() - 1 - k : k;
    const double edge = layers[i].outer_diameter.si;
    entries[i] = std::min(face, edge);
    face = std::min(entries[i] + 2 * layers[i].thickness.si * tan(half_angle), edge);
  }
  return entries;
}

/// Cones from one face, or from both faces up to where they are equally wide.
inline double cones(const Joint& joint, double half_angle) {
  const std::vector<double> above = fronts(joint.layers, joint.face_diameter.si, half_angle, false);
  const bool two = joint.far_face_diameter.si > 0;
  const std::vector<double> below =
      two ? fronts(joint.layers, joint.far_face_diameter.si, half_angle, true) : std::vector<double>();
  double sum = 0;
  for (std::size_t i = 0; i < joint.layers.size(); ++i) {
    const double t = joint.layers[i].thickness.si;
    const double meet = two ? std::clamp(t / 2 + (below[i] - above[i]) / (4 * tan(half_angle)), 0.0, t) : t;
    sum += widening(joint.layers[i], above[i], meet, half_angle);
    if (two) sum += widening(joint.layers[i], below[i], t - meet, half_angle);
  }
  return sum;
}

/// Each layer takes its share of the grip of a joint made of it alone.
inline double exponential(const Joint& joint) noexcept {
  const ExponentialFit fit = exponential_fits[std::size(exponential_fits) - 1];
  double sum = 0;
  for (const Layer& layer : joint.layers)
    sum += layer.thickness.si / joint.grip().si /
           ExponentialStiffness::eval(joint.diameter.si, joint.grip().si, layer.material.elastic_modulus.si,
                                      fit.fit_factor, fit.fit_exponent);
  return sum;
}

/// Outer diameter of the layers, weighted by thickness.
inline double mean_width(const Joint& joint) noexcept {
  double sum = 0;
  for (const Layer& layer : joint.layers) sum += layer.thickness.si * layer.outer_diameter.si;
  return sum / joint.grip().si;
}

/// What speaks against a model, as the comparison with finite elements has shown.
inline std::vector<Notice> plate_notices(const Joint& joint, PlateModel model) {
  const double grip = joint.grip().si / joint.diameter.si;
  const double face = joint.face_diameter.si / joint.diameter.si;
  const double width = mean_width(joint) / joint.face_diameter.si;
  const bool two = joint.far_face_diameter.si > 0;
  std::vector<Notice> notices;
  const auto note = [&](bool applies, const char* code, const char* text) {
    if (applies) notices.push_back({code, text, false});
  };
  note(grip < 0.5 || grip > 10, "grip_outside_comparison",
       "The grip lies outside 0.5 to 10 diameters, over which the models were compared with finite elements.");
  note(model == PlateModel::deformation_cone && two && width > 4, "wide_layers",
       "The layers are wider than four bearing faces; the deformation cone is then up to 19 % too stiff. Use the "
       "frustum.");
  note(
      model == PlateModel::frustum && width < 3, "narrow_layers",
      "The layers are narrower than three bearing faces; the frustum is then up to 18 % too stiff. Use the deformation "
      "cone.");
  note(model == PlateModel::exponential && width < 5, "narrow_layers",
       "The layers are narrower than five bearing faces; the exponential fit takes them as wide. Use the deformation "
       "cone.");
  note(model == PlateModel::exponential && (face < 1.35 || face > 1.65), "face_outside_fit",
       "The exponential fit holds for a bearing face of 1.5 diameters; here it is another one.");
  note(model == PlateModel::exponential && grip > 2, "grip_outside_fit",
       "Beyond a grip of 2 diameters the exponential fit is 7 to 24 % too stiff.");
  note(model == PlateModel::frustum && !two, "frustum_tapped",
       "For a tapped hole the frustum is taken as one cone over the grip; the deformation cone is made for this case.");
  return notices;
}

}  // namespace detail

/// Resilience of the clamped layers.
/// \param joint  from one of the builders
/// \param model  the model, or `chosen`
/// \return the resilience with notices on its validity, or an error where the model does not know such a joint
inline Outcome<PlateResilience> try_plate_resilience(const Joint& joint, PlateModel model = PlateModel::chosen) {
  const double grip = joint.grip().si;
  if (!(grip > 0)) return refusal("grip_length", joint.grip(), "but must be above 0 mm; give at least one layer");
  const bool two = joint.far_face_diameter.si > 0;
  if (model == PlateModel::chosen)
    model = two && detail::mean_width(joint) > 4 * joint.face_diameter.si ? PlateModel::frustum
                                                                          : PlateModel::deformation_cone;
  if (model == PlateModel::exponential) {
    if (!two) return Error("model", "the exponential fit knows no tapped holes; use the deformation cone");
    return PlateResilience{Compliance(detail::exponential(joint)), model, Angle(0),
                           detail::plate_notices(joint, model)};
  }
  double half_angle = 3.14159265358979323846 / 6;
  if (model == PlateModel::deformation_cone) {
    const double face = two ? (joint.face_diameter.si + joint.far_face_diameter.si) / 2 : joint.face_diameter.si;
    const double width = std::max(detail::mean_width(joint), face);
    half_angle = two ? cone_angle_through.si(grip, face, width) : cone_angle_tapped.si(grip, face, width);
  }
  const double value = detail::cones(joint, half_angle);
  if (!(value > 0 && std::isfinite(value)))
    return refusal("plate_resilience", Compliance(value), "but must be above 0; check the dimensions of the layers");
  return PlateResilience{Compliance(value), model, Angle(half_angle), detail::plate_notices(joint, model)};
}

/// \copydoc try_plate_resilience
/// \throws Error  where the model does not know such a joint
inline PlateResilience plate_resilience(const Joint& joint, PlateModel model = PlateModel::chosen) {
  return try_plate_resilience(joint, model).value();
}

}  // namespace tauten::TAUTEN_ABI
