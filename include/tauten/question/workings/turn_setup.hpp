// From the description of a joint to everything that its turning depends on.
#pragma once

#include <algorithm>

#include "tauten/joint/build.hpp"
#include "tauten/joint/diagram.hpp"
#include "tauten/joint/engagement.hpp"
#include "tauten/joint/resilience.hpp"
#include "tauten/part/washer.hpp"
#include "tauten/question/turn_answer.hpp"
#include "tauten/question/workings/clamp_bolt.hpp"
#include "tauten/question/workings/clamp_suspects.hpp"
#include "tauten/turning/tightening_curve.hpp"
#include "tauten/turning/turned_bolt.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Strength of bolts as they are sold over the least of their class, and its
/// variation: 12 % above and 6 % by the typical surplus of 20 %, which is close
/// to the most that one finds. Judgement, no source.
struct StrengthSold {
  double median;
  double variation;
};
inline StrengthSold strength_sold(const TurnJob& job) noexcept {
  return {1 + 0.6 * job.strength_surplus, 0.3 * job.strength_surplus};
}

/// Uniform elongation of bolts as they are sold over half of the least
/// elongation of their class: a quarter more by the typical surplus. Judgement.
inline double elongation_sold(const TurnJob& job) noexcept { return 1 + 1.25 * job.strength_surplus; }

/// A joint ready to be turned, plain SI, with what was taken for granted on the way.
struct TurnSetup {
  TurnJoint joint;
  Suspect suspect;
  ClampBolt bolt;
  Conditions conditions;
  Joint built;  ///< the joint in pieces
  std::optional<ThreadEngagement> engagement;
  TurnedBolt turned;
  BoltSteel steel;
  double resilience_tolerance = 0;
  double tool_twist = 0;  ///< of the bars, rad per N.m
  double expansion = 0;   ///< of the layers, weighted by thickness
  bool width_assumed = false;
  bool one_friction = true;     ///< thread and face bear one condition and rub much
                                ///< or little together
  std::vector<Notice> notices;  ///< of the model of the layers
  double strain_limit = 0;      ///< strain that a bolt of the class bears at its surface, plastic

  TurningFriction friction(double Band<double>::* at) const {
    return {bolt.mu_G.*at, bolt.mu_K.*at, Length(bolt.D_Km.*at)};
  }
  TurningFriction nominal() const { return friction(&Band<double>::nominal); }
  /// Whether the shank is thinner than the thread's stress area, and yields first.
  bool reduced_shank() const { return bolt.d_s < suspect.thread.stress_diameter().si * (1 - 1e-9); }

  /// Stress while the wrench turns over the least yield strength, in the section that yields first.
  double utilisation(double preload, double thread_torque) const {
    if (!(preload > 0)) return 0;
    return yield_utilisation.si(preload, ShankTorsion::eval(thread_torque, bolt.prevailing), bolt.d_s,
                                bolt.strength.yield_strength.si);
  }
};

inline ClampJob clamp_job_of(const TurnJob& job) {
  ClampJob same;
  same.name = job.name;
  same.thread = job.thread;
  same.head = job.head;
  same.property_class = job.property_class;
  same.condition = job.condition;
  same.face_condition = job.face_condition;
  same.thread_friction = job.thread_friction;
  same.bearing_friction = job.bearing_friction;
  same.wrench_accuracy = job.wrench_accuracy;
  same.prevailing_torque = job.prevailing_torque;
  same.bearing_diameter = job.bearing_diameter;
  return same;
}

/// Largest angle of turn that is taken for one: three turns. Twice what the longest structural bolts are given.
inline constexpr double most_turn = 3 * 2 * pi_constant.value;
/// From here on an angle is questioned: a turn and a quarter, which is more than any rule asks for.
inline constexpr double unusual_turn = 1.25 * 2 * pi_constant.value;

/// Plain values that have a range of their own.
inline std::optional<Error> turn_range_error(const TurnJob& job) {
  if (auto e = unknown_value("kind", job.kind)) return e;
  if (auto e = unknown_value("plate_model", job.plate_model)) return e;
  if (auto e = outside("snug_torque", job.snug_torque, {0, 1e5, true})) return e;
  // Nobody turns so far from snug: a plain number was meant as degrees.
  if (job.angle && job.angle->si > most_turn)
    return refuse("angle", "angle is " + shop_text(*job.angle) + ", but must be at most " +
                               shop_text(Angle(most_turn)) +
                               "; a plain number counts as radians, write degrees like 45deg");
  if (auto e = outside("angle", job.angle, {0, most_turn, true})) return e;
  if (auto e = outside("clamp_load", job.clamp_load, {0, 1e7, true})) return e;
  if (auto e = outside("share", job.share, {0, 1.3, true})) return e;
  if (auto e = outside("utilisation", job.utilisation, {0, 1.2, true})) return e;
  if (auto e = outside("angle_tolerance", job.angle_tolerance, {0, pi_constant.value})) return e;
  if (auto e = outside("resilience_tolerance", job.resilience_tolerance, {0, 0.5})) return e;
  if (auto e = outside("strength_surplus", job.strength_surplus, {0, 1})) return e;
  if (auto e = outside("k_factor", job.k_factor, {0.05, 0.3})) return e;
  if (auto e = outside("washers", job.washers, {0, 2})) return e;
  if (job.washers == 2 && job.kind != JointKind::through_bolt)
    return refusal("washers", Quantity<Dim::number>(job.washers),
                   "but must be 0 or 1, for the far end sits in its part and "
                   "takes none; only a through_bolt takes 2");
  if (auto e = outside("length", job.length, {0, 10, true})) return e;
  if (auto e = outside("shank_diameter", job.shank_diameter, {0, 1, true})) return e;
  if (auto e = outside("grip", job.grip, {0, 10, true})) return e;
  if (auto e = outside("engagement", job.engagement, {0, 1, true})) return e;
  if (auto e = outside("nut_height", job.nut_height, {0, 1, true})) return e;
  for (const TurnLayer& layer : job.layers) {
    if (auto e = outside("thickness", layer.thickness, {0, 10, true})) return e;
    if (auto e = outside("outer_diameter", layer.outer_diameter, {0, 10, true})) return e;
    if (auto e = outside("hole_diameter", layer.hole_diameter, {0, 10, true})) return e;
    if (auto e = outside("elastic_modulus", layer.elastic_modulus, {0, 1e13, true})) return e;
  }
  if (job.engagement && job.kind == JointKind::through_bolt)
    return refuse("engagement",
                  "engagement is of a tapped hole, but this is a "
                  "through bolt; give nut_height instead");
  if (job.engagement && job.kind == JointKind::tapped_hole && job.length)
    return refuse("engagement", "engagement and length exclude each other; leave one of them out");
  if ((job.nut_height || !job.nut_class.empty()) && job.kind == JointKind::tapped_hole)
    return refuse(job.nut_height ? "nut_height" : "nut_class",
                  "a screw in a tapped hole has no nut; leave the nut out");
  return bars_error(job.bars);
}

/// The layers as said, with washers, and with what was left out filled in.
inline Outcome<std::vector<TurnLayer>> turn_layers(const TurnJob& job, const Thread& thread) {
  std::vector<TurnLayer> layers = job.layers;
  if (job.grip && !layers.empty()) return refuse("grip", "grip is given beside layers; leave one of them out");
  if (job.grip) layers.push_back({.thickness = *job.grip});
  if (layers.empty())
    return refuse("layers",
                  "no clamped layer is given; give at least one, for "
                  "example 20 mm of steel, or a grip");
  if (job.washers == 0) return layers;
  const Outcome<Washer> part = try_washer(thread);
  if (!part) return part.error();
  TurnLayer washer{.thickness = part->thickness, .material = material::washer_steel.name};
  washer.outer_diameter = part->outer_diameter;
  washer.hole_diameter = part->inner_diameter;
  layers.insert(layers.begin(), washer);
  if (job.washers == 2) layers.push_back(washer);
  return layers;
}

/// \param face    bearing face; a layer of which no width is known is taken as three of them
/// \param assumed set to true if one was
inline Outcome<std::vector<Layer>> layers_of(std::vector<TurnLayer>& described, double face, bool& assumed) {
  std::vector<Layer> layers;
  for (TurnLayer& one : described) {
    if (!one.outer_diameter) one.outer_diameter = Length(3 * face), assumed = true;
    const Outcome<Material> of = try_material(one.material);
    if (!of) return of.error();
    one.material = of->name;
    Layer layer{one.thickness, *one.outer_diameter, *of, one.hole_diameter.value_or(Length())};
    if (one.elastic_modulus) layer.material.elastic_modulus = *one.elastic_modulus;
    layers.push_back(layer);
  }
  return layers;
}

/// Nuts of structural bolts, system HV, are 0.8 d high (EN 14399-4, from memory); all others are taken as ISO 4032.
inline Length standard_nut_height(const TurnJob& job, const Thread& thread) {
  return name_key(job.head) == "EN14399-4" ? Length(0.8 * thread.diameter.si) : nut_height_of(thread.diameter);
}

/// Engagement in a tapped hole: 1.25 d, common practice, or as much as lets the bolt break before the thread strips.
inline Length usual_engagement(const Thread& thread, const PropertyClass& strength, const Material& part) {
  const Outcome<RatedLoad> tensile = try_tensile_load(thread, strength.name);
  const Length needed =
      tensile ? tapped_engagement(thread, strength, tensile->value, part, Length(0)).needed_length : Length(0);
  return std::max(Length(1.25 * thread.diameter.si), needed);
}

/// Length that reaches through the nut by two pitches, or so far into a tapped hole as its thread needs.
/// \param engaged  engagement in the hole
inline Length reaching_length(const TurnJob& job, const Thread& thread, double grip, Length engaged) {
  if (job.kind == JointKind::tapped_hole)
    return job.engagement ? Length(grip + engaged.si) : standard_length(Length(grip + engaged.si));
  const Length nut = job.nut_height.value_or(standard_nut_height(job, thread));
  return standard_length(Length(grip + nut.si + 2 * thread.pitch.si));
}

inline Outcome<Joint> joint_of(const TurnJob& job, const Suspect& suspect, const PropertyClass& strength,
                               std::vector<TurnLayer>& described, TurnSetup& setup) {
  const Outcome<Head> part = try_head(suspect.thread, job.head.empty() ? "ISO 4014" : job.head);
  Bolt bolt{.diameter = suspect.thread.diameter, .pitch = suspect.thread.pitch};
  if (part) {
    if (part->kind == HeadKind::socket_button_head)
      return Error("head", "a button head is too weak to be tightened by angle; take a cap screw");
    bolt.head = part->kind == HeadKind::socket_head_cap || part->kind == HeadKind::hexalobular_socket
                    ? HeadForm::socket
                    : HeadForm::hexagon;
    if (const Outcome<BearingDiameter> face = try_bearing_diameter(*part)) bolt.face_diameter = face->outer_diameter;
  }
  bolt.face_diameter = face_diameter_of(bolt);
  if (strength.stainless) bolt.material = material::stainless_steel;
  bolt.shank_diameter = job.shank_diameter.value_or(Length());
  Outcome<std::vector<Layer>> layers = layers_of(described, bolt.face_diameter.si, setup.width_assumed);
  if (!layers) return layers.error();
  double grip = 0;
  for (const Layer& layer : *layers) {
    grip += layer.thickness.si;
    setup.expansion += layer.thickness.si * layer.material.expansion.si;
  }
  setup.expansion = grip > 0 ? setup.expansion / grip : 0;
  const Outcome<Material> tapped = try_material(job.tapped_material);
  if (!tapped) return Error("tapped_material", tapped.error().what());
  const Length engaged = job.engagement ? *job.engagement : usual_engagement(suspect.thread, strength, *tapped);
  setup.joint.length_assumed = !job.length;
  bolt.length = job.length ? *job.length : reaching_length(job, suspect.thread, grip, engaged);
  const std::string key = name_key(job.head);
  if (key == "ISO4017" || key == "DIN933") bolt.thread_length = bolt.length;
  if (key == "EN14399-4") bolt.thread_length = structural_thread_length(bolt.diameter);
  setup.joint.length = bolt.length;
  const Length nut = standard_nut_height(job, suspect.thread);
  const FarEnd end{job.nut_height.value_or(nut), engaged, *tapped};
  if (const Outcome<RatedLoad> tensile = try_tensile_load(suspect.thread, strength.name);
      tensile && job.kind != JointKind::through_bolt)
    setup.engagement = tapped_engagement(suspect.thread, strength, tensile->value, *tapped,
                                         job.kind == JointKind::stud ? engaged : Length(bolt.length.si - grip));
  if (job.kind != JointKind::tapped_hole) {
    const Outcome<ThreadEngagement> held =
        try_nut_engagement(suspect.thread, strength.name, job.nut_class, job.nut_height.value_or(Length()), nut);
    if (!held && !job.nut_class.empty()) return held.error();
    // Of a stud the weaker end counts.
    if (held && (!setup.engagement || held->strip_load.low < setup.engagement->strip_load.low))
      setup.engagement = *held;
  }
  switch (job.kind) {
    case JointKind::tapped_hole: return try_tapped_joint(bolt, *layers, end);
    case JointKind::stud: return try_stud_joint(bolt, *layers, end);
    case JointKind::through_bolt: break;
  }
  return try_through_bolt(bolt, *layers, end);
}

/// Fills in what the joint answers to load, once bolt and layers are known.
inline void describe(const TurnJob& job, double flow_start, TurnSetup& setup) {
  const TurnedBolt& turned = setup.turned;
  const PropertyClass& strength = setup.bolt.strength;
  TurnJoint& joint = setup.joint;
  joint.thread = setup.suspect.thread.name();
  joint.head = setup.suspect.heads;
  joint.property_class = strength.name;
  joint.class_assumed = job.property_class.empty();
  joint.kind = job.kind;
  joint.bolt_resilience = turned.bolt_resilience;
  joint.plate_resilience = turned.plate_resilience;
  joint.joint_constant = LoadFactor::eval(1.0, turned.bolt_resilience.si, turned.plate_resilience.si);
  // A reduced shank bears less than the thread for which the standards print loads.
  joint.proof_load =
      Force(setup.reduced_shank() ? load_at_stress.si(circle_area(turned.section_diameter.si), strength.proof_stress.si)
                                  : setup.bolt.proof_load);
  const Outcome<RatedLoad> tensile = try_tensile_load(setup.suspect.thread, strength.name);
  joint.tensile_load =
      setup.reduced_shank() || !tensile
          ? Force(load_at_stress.si(circle_area(turned.section_diameter.si), strength.tensile_strength.si))
          : tensile->value;
  joint.first_yield = Force(first_yield_preload(turned, setup.nominal(), flow_start));
  joint.yield_preload =
      Force(assembly_preload_exact.si(strength.yield_strength.si, 1, turned.pitch.si, turned.pitch_diameter.si,
                                      turned.section_diameter.si, setup.bolt.mu_G.nominal));
  const double load = default_proof_share * joint.proof_load.si;
  const double torque = plain_setting(setup.bolt, load, 0);
  const double lever = torque / load;
  joint.rate_angle =
      Angle(joint_rate_angle.si(torque, lever, turned.bolt_resilience.si, turned.plate_resilience.si, turned.pitch.si));
  joint.rate = joint.rate_angle.si <= hard_joint_angle   ? "hard"
               : joint.rate_angle.si >= soft_joint_angle ? "soft"
                                                         : "between";
}

/// Strain at the rotation that the test of structural bolts asks for: a bolt that is made for them bears it, however short the
/// thread in its grip. 0 for other bolts.
inline double structural_strain(const TurnSetup& setup) {
  bool structural = false;
  for (const char* standard : {"EN 14399-3", "EN 14399-4", "ISO 7411"})
    structural = structural || names_standard(setup.suspect.heads, name_key(standard));
  if (!structural) return 0;
  const Angle rotation = rotation_capacity(setup.suspect.thread.diameter, setup.joint.length);
  Turning turning(setup.turned, setup.steel, setup.nominal());
  const double start = turning.elastic_angle(0.1 * setup.joint.proof_load.si);
  const double step = rotation.si / 100;
  while (turning.angle() < start + rotation.si)
    if (!turning.turn_to(turning.angle() + step)) return 0;
  return turning.section().surface_strain();
}

/// \return the joint ready to be turned, or an error that names the argument at fault
inline Outcome<TurnSetup> try_turn_setup(const TurnJob& job) {
  if (auto error = turn_range_error(job)) return *error;
  const ClampJob same = clamp_job_of(job);
  if (auto error = clamp_range_error(same)) return *error;
  const Outcome<Conditions> conditions = conditions_of(same);
  if (!conditions) return conditions.error();
  if (job.thread.empty()) return refuse("thread", "give a thread like M16");
  const Outcome<Suspect> suspect = suspect_of_thread(same);
  if (!suspect) return suspect.error();
  const Outcome<ClampBolt> bolt = bolt_of(same, suspect->thread, suspect->bearing_diameter, *conditions);
  if (!bolt) return bolt.error();
  TurnSetup setup{{}, *suspect, *bolt, *conditions, {}, {}, {}, {}, 0, 0, 0, false, true, {}, 0};
  setup.one_friction = !job.thread_friction && !job.bearing_friction && conditions->thread.key == conditions->face.key;

  Outcome<std::vector<TurnLayer>> described = turn_layers(job, suspect->thread);
  if (!described) return described.error();
  setup.joint.layers = *described;
  const Outcome<Joint> joint = joint_of(job, *suspect, bolt->strength, setup.joint.layers, setup);
  if (!joint) return joint.error();
  setup.built = *joint;
  setup.joint.grip = joint->grip();
  for (std::size_t i = 0; i < joint->layers.size(); ++i) {
    setup.joint.layers[i].hole_diameter = joint->layers[i].hole_diameter;
    setup.joint.layers[i].elastic_modulus = joint->layers[i].material.elastic_modulus;
  }
  const Outcome<PlateResilience> plates = try_plate_resilience(*joint, job.plate_model);
  if (!plates) return Error("plate_model", plates.error().what());
  setup.joint.plate_model = plates->model;
  setup.notices = plates->notices;
  const Outcome<TurnedBolt> turned = try_turned_bolt(*joint, plates->model);
  if (!turned) return turned.error();
  setup.turned = *turned;
  setup.bolt.d_s = turned->section_diameter.si;

  const PropertyClass& strength = bolt->strength;
  setup.steel = class_steel(strength);
  setup.steel.elastic_modulus = joint->bolt_material.elastic_modulus;
  setup.steel.poisson_ratio = joint->bolt_material.poisson_ratio;
  const Outcome<FlowCurve> flow = check_turning(setup.turned, setup.steel, setup.nominal());
  if (!flow) return flow.error();
  setup.resilience_tolerance = job.resilience_tolerance.value_or(setup.width_assumed ? 0.15 : 0.10);
  setup.strain_limit = std::max(setup.steel.uniform_elongation, structural_strain(setup));
  std::vector<Step> unused;  // they belong to the answer, which makes them again
  if (const auto stiffness = torsional_stiffness(job.bars, unused)) setup.tool_twist = 1 / stiffness->si;
  describe(job, flow->start(), setup);
  return setup;
}

}  // namespace tauten::TAUTEN_ABI::detail
