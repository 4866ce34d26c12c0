// The whole question of tightening by angle: how far to turn from snug for a clamp load, or what a specification leaves.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/joint/diagram.hpp"
#include "tauten/joint/face_pressure.hpp"
#include "tauten/joint/in_service.hpp"
#include "tauten/method/method.hpp"
#include "tauten/part/hot_strength.hpp"
#include "tauten/question/workings/clamp_verdict.hpp"
#include "tauten/question/workings/turn_corner.hpp"
#include "tauten/question/workings/turn_notices.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"
#include "tauten/turning/reuse.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// What is wanted where no angle is given: the load, and in what words it was asked for.
struct TurnWish {
  const char* argument = "share";
  double load = 0;         ///< 0: by utilisation
  double utilisation = 0;  ///< of yield, while the wrench turns
};

inline Outcome<TurnWish> turn_wish(const TurnJob& job, const TurnSetup& setup) {
  const char* said[4] = {job.angle ? "angle" : nullptr, job.clamp_load ? "clamp_load" : nullptr,
                         job.share ? "share" : nullptr, job.utilisation ? "utilisation" : nullptr};
  const char* first = nullptr;
  for (const char* one : said) {
    if (one && first)
      return refuse(one, std::string(one) + " and " + first + " exclude each other; leave one of them out");
    if (one) first = one;
  }
  if (job.clamp_load) return TurnWish{"clamp_load", job.clamp_load->si, 0};
  if (job.utilisation) return TurnWish{"utilisation", 0, *job.utilisation};
  return TurnWish{"share", job.share.value_or(default_proof_share) * setup.joint.proof_load.si, 0};
}

/// The snug torque that was given, or that for a quarter of the load wanted; common practice, no source.
inline Outcome<double> snug_of(const TurnJob& job, const TurnSetup& setup, const TurnWish& wish) {
  const Conditions& c = setup.conditions;
  if (!job.snug_torque) {
    if (job.angle)
      return refuse("snug_torque",
                    "snug_torque is missing; an angle counts from the torque "
                    "at which all gaps are closed, write it "
                    "like 60N.m");
    const double load = wish.load > 0 ? wish.load : wish.utilisation * setup.joint.yield_preload.si;
    return plain_setting(setup.bolt, load / 4, c.lost);
  }
  const Band<double> closes = effective_band(job.snug_torque->si, c.accuracy_at(job.snug_torque->si), c.lost);
  if (!(closes.low > 0))
    return refuse("snug_torque", "snug_torque is " + shop_text(*job.snug_torque) +
                                     ", but the prevailing torque takes " + shop_text(Torque(c.lost)) +
                                     "; nothing is left to close the joint");
  if (closes.nominal / plain_setting(setup.bolt, 1, 0) >= setup.joint.first_yield.si)
    return refusal("snug_torque", *job.snug_torque, "but already brings the bolt to yield; give a lower snug torque");
  return job.snug_torque->si;
}

/// How far the typical bolt is turned for what is wanted.
inline Outcome<double> angle_for(const TurnJob& job, const TurnSetup& setup, const TurnWish& wish, double snug) {
  const TurnCorner nominal = typical_corner(setup, job, {snug, 0, false});
  const bool by_load = wish.load > 0;
  const double target = by_load ? wish.load : wish.utilisation;
  const TurnEnd end = turn_corner(setup, nominal, target, [&](const Turning& t, double, double) {
    return by_load ? t.preload() : setup.utilisation(t.preload(), t.thread_torque());
  });
  if (!end.reached) {
    const std::string most =
        "but the bolt necks at " + shop_text(Force(end.preload)) + "; take a stronger or larger one";
    if (wish.utilisation > 0) return refusal("utilisation", Quantity<Dim::number>(wish.utilisation), most.c_str());
    return refuse(wish.argument, std::string(wish.argument) + " asks for " + shop_text(Force(wish.load)) + ", " + most);
  }
  if (!(end.angle > 0))
    return refuse("snug_torque", "snug_torque is " + shop_text(Torque(snug)) + ", which leaves " +
                                     shop_text(Force(end.snug_load)) +
                                     ", already more than is wanted; give a lower snug torque");
  return end.angle;
}

/// Parts of the typical turn, and the formulas behind them.
inline void explain_turn(const TurnSetup& setup, const TurnJob& job, const TurnEnd& end, TurnAnswer& a) {
  const TurnedBolt& bolt = setup.turned;
  const ClampBolt& b = setup.bolt;
  const double lost = setup.conditions.lost;
  const double P = bolt.pitch.si;
  const double d_2 = bolt.pitch_diameter.si;
  const double tightens = lost > 0
                              ? step(a.steps, "of the snug torque", effective_torque, a.snug_torque.si, 0.0, lost, 0.0)
                              : a.snug_torque.si;
  const double snug = end.snug_load > 0 ? step(a.steps, "what the snug torque leaves", preload_from_torque_exact,
                                               tightens, P, d_2, b.mu_G.nominal, b.mu_K.nominal, b.D_Km.nominal)
                                        : 0;
  const bool elastic = end.strain == 0;
  const double gain = (elastic ? end.preload : setup.joint.first_yield.si) - snug;
  if (gain > 0)
    step(a.steps, elastic ? "turn that stretches the joint" : "the same up to first yield; beyond, the curve counts",
         angle_from_preload, gain, bolt.bolt_resilience.si, bolt.plate_resilience.si, P);
  step(a.steps, "at the end of the turn", tightening_torque_exact, end.preload, P, d_2, b.mu_G.nominal, b.mu_K.nominal,
       b.D_Km.nominal);
  if (const auto stiffness = torsional_stiffness(job.bars, a.steps))
    step(a.steps, "with the twist of the bars", handle_angle, end.angle, a.snug_torque.si, end.torque + lost,
         stiffness->si);
  double thread = step(a.steps, "what reaches the shank", thread_torque_exact, end.preload, P, d_2, b.mu_G.nominal);
  if (b.prevailing > 0) thread = step(a.steps, "", shank_torsion, thread, b.prevailing);
  step(a.steps, "while the wrench turns", yield_utilisation, end.preload, thread, bolt.section_diameter.si,
       b.strength.yield_strength.si);
  step(a.steps, "share of a working load that reaches the bolt", load_factor, job.after.load_introduction,
       bolt.bolt_resilience.si, bolt.plate_resilience.si);
}

/// Losses after tightening, and what remains.
inline std::optional<Error> lose(const TurnJob& job, const TurnSetup& setup, TurnAnswer& a) {
  const AfterTurn& after = job.after;
  const TurnedBolt& bolt = setup.turned;
  // A plain grip stands for two parts with one parting line.
  const int layers = static_cast<int>(setup.joint.layers.size()) + (job.grip ? 1 : 0);
  // A stud has a nut on one side and sits in its part on the other, like a screw in a tapped hole.
  const bool one_face = job.kind != JointKind::through_bolt;
  const Outcome<Length> embeds =
      try_embedding({after.roughness, one_face ? 1 : 2, layers - 1 + (one_face ? 1 : 0), after.load_across});
  if (!embeds) return embeds.error();
  for (const auto& [name, warming] :
       {std::pair{"bolt_warming", after.bolt_warming}, {"plate_warming", after.plate_warming}})
    if (auto e = outside(name, warming, {-100, 400})) return e;
  Losses losses{.embedding = *embeds, .creep_share = after.creep_share, .neighbours = after.neighbours};
  const double alpha =
      setup.bolt.strength.stainless ? material::stainless_steel.expansion.si : material::steel.expansion.si;
  step(a.steps, "", embedding_loss, embeds->si, bolt.bolt_resilience.si, bolt.plate_resilience.si);
  if (after.bolt_warming.si != 0 || after.plate_warming.si != 0)
    losses.thermal =
        Force(step(a.steps, "", thermal_loss, setup.joint.grip.si, alpha, after.bolt_warming.si, setup.expansion,
                   after.plate_warming.si, bolt.bolt_resilience.si, bolt.plate_resilience.si));
  const Outcome<ResidualClamp> residual =
      try_residual_clamp(a.clamp_load, losses, bolt.bolt_resilience, bolt.plate_resilience);
  if (!residual) return residual.error();
  a.residual = *residual;
  const Outcome<LoadDiagram> diagram =
      try_load_diagram(a.residual.clamp_load.nominal, bolt.bolt_resilience, bolt.plate_resilience, after.working_load,
                       after.load_introduction);
  if (!diagram) return diagram.error();
  a.diagram = *diagram;
  a.service = in_service(a.clamp_load, a.residual.clamp_load, Force(std::max(-losses.thermal.si, 0.0)),
                         diagram->joint_constant, after.working_load);
  // The rise counts from a tightening at 20 degrees Celsius.
  a.service.strength_share = setup.bolt.strength.stainless          ? hot_strength_austenitic(after.bolt_warming)
                             : after.bolt_warming > hottest_service ? hot_strength(after.bolt_warming)
                                                                    : 1;
  a.pressures = face_pressures(setup.built, a.service.bolt_load.nominal, a.service.bolt_load.high);
  a.engagement = setup.engagement;
  a.service.proof_load = Force(a.service.strength_share * setup.joint.proof_load.si);
  a.service.tensile_load = Force(a.service.strength_share * setup.joint.tensile_load.si);
  return std::nullopt;
}

/// Nominal tensile strength, by which structural codes state the preload: 800 MPa of class 8.8, 1000 MPa of 10.9. EN
/// 1090-2:2008, clause 8.5.1. Other classes are none of theirs.
inline double structural_strength(const PropertyClass& strength) {
  return strength.name.starts_with("8.8")    ? 800e6
         : strength.name.starts_with("10.9") ? 1000e6
                                             : strength.tensile_strength.si;
}

/// Of a bolt that may break no load is named.
inline Band<Force> load_borne(const TurnBands& bands) {
  const Force none(absent);
  return bands.necks() ? Band<Force>{none, none, none} : band_of<Dim::force>(bands.preload);
}

/// The turns of structural bolting on this joint.
inline Outcome<StructuralTurn> structural_turn(const TurnJob& job, const TurnSetup& setup, double snug) {
  StructuralTurn s;
  const Thread& thread = setup.suspect.thread;
  if (auto e = outside("sloping_faces", Quantity<Dim::number>(job.sloping_faces), {0, 2})) return *e;
  s.least_preload =
      Force(target_preload.si(0.7, thread.nominal_stress_area().si, structural_strength(setup.bolt.strength)));
  s.full_torque = Torque(job.k_factor ? torque_from_nut_factor.si(s.least_preload.si, thread.diameter.si, *job.k_factor)
                                      : plain_setting(setup.bolt, s.least_preload.si, setup.conditions.lost));
  if (const auto turn = try_turn_of_nut(thread.diameter, setup.joint.length, job.sloping_faces)) {
    s.turn_of_nut = *turn;
    TurnJob by_table = job;
    by_table.angle_tolerance = turn->tolerance;
    s.turn_of_nut_load = load_borne(turn_bands(setup, by_table, {snug, turn->angle.si, false}));
  }
  if (const auto turn = try_combined_method(thread.diameter, setup.joint.grip)) {
    s.combined = *turn;
    s.combined_first_torque = Torque(combined_first_torque_share * s.full_torque.si);
    const TurnSpec spec{s.combined_first_torque.si, turn->angle.si, false};
    s.combined_load = load_borne(turn_bands(setup, job, spec));
  }
  return s;
}

inline std::vector<MethodBand> method_bands(Force preload) {
  std::vector<MethodBand> list;
  for (const TighteningMethod& method : tightening_methods)
    if (const auto band = try_preload_band(preload, method))
      list.push_back({method.key, method.title, method.factor(), *band, method.source});
  return list;
}

/// Takes out of the answer what hangs on a load that may not be left.
inline void clear_load(TurnAnswer& a) {
  const Force none(absent);
  a.clamp_load = a.worst_case = a.by_torque = a.residual.clamp_load = {none, none, none};
  a.residual.nominal_loss = none;
  a.service.bolt_load = a.service.clamp_load = {none, none, none};
  a.service.separation_load = none;
  a.pressures.clear();
  a.proof_share = {absent, absent, absent};
  a.diagram = LoadDiagram{};
  a.methods.clear();
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<TurnAnswer> try_turn(const TurnJob& job) {
  using namespace detail;
  const Outcome<TurnSetup> found = try_turn_setup(job);
  if (!found) return found.error();
  const TurnSetup& setup = *found;
  const Outcome<TurnWish> wish = turn_wish(job, setup);
  if (!wish) return wish.error();
  const Outcome<double> snug = snug_of(job, setup, *wish);
  if (!snug) return snug.error();
  TurnSpec spec{*snug, 0, job.angle_at_handle && job.angle};
  if (job.angle) {
    spec.angle = job.angle->si;
  } else {
    const Outcome<double> angle = angle_for(job, setup, *wish, *snug);
    if (!angle) return angle.error();
    spec.angle = *angle;
  }

  const TurnBands bands = turn_bands(setup, job, spec);
  const TurnEnd& nominal = bands.nominal;
  TurnAnswer a;
  a.name = job.name;
  a.joint = setup.joint;
  a.thread_friction = setup.bolt.mu_G;
  a.bearing_friction = setup.bolt.mu_K;
  a.wrench_accuracy = setup.conditions.accuracy_at(*snug);
  a.snug_torque = Torque(*snug);
  a.bolt_twist = Angle(nominal.bolt_twist);
  a.clamping = Angle(nominal.angle - nominal.bolt_twist);
  a.tool_twist = Angle(setup.tool_twist * (nominal.torque + setup.conditions.lost - *snug));
  // Of a bolt that breaks on the way it is the angle that was asked for; the bars stay as they are, for past yield the
  // torque hardly rises.
  a.angle = Angle(nominal.reached ? nominal.angle : spec.angle - (spec.at_handle ? a.tool_twist.si : 0));
  a.handle_angle = Angle(a.angle.si + a.tool_twist.si);
  a.snug_load = band_of<Dim::force>(bands.snug_load);
  a.clamp_load = band_of<Dim::force>(bands.preload);
  a.yield_utilisation = bands.utilisation;
  a.torque = band_of<Dim::torque>(bands.torque);
  a.plastic_strain = bands.strain;
  a.lasting_stretch = band_of<Dim::length>(bands.stretch);
  const double proof = setup.joint.proof_load.si;
  a.proof_share = {bands.preload.low / proof, bands.preload.nominal / proof, bands.preload.high / proof};
  a.past_yield = bands.chance_of_yield >= 0.5;
  a.yield_intended = job.to_yield || job.structural || job.utilisation.value_or(0) >= 1;
  a.may_neck = bands.necks();
  a.worst_case = band_of<Dim::force>(bands.worst_case);
  a.chance_of_yield = bands.chance_of_yield;
  a.chance_of_slack = bands.chance_of_slack;
  a.friction_unknown = setup.conditions.friction_unknown();
  a.chance_of_necking = bands.chance_of_necking;
  const double end = a.torque.nominal.si;
  a.by_torque = load_by_torque(setup.bolt, {end, setup.conditions.accuracy_at(end)}, setup.conditions.lost);
  explain_turn(setup, job, nominal, a);
  if (auto error = lose(job, setup, a)) return *error;
  const Outcome<Reuse> again =
      try_reuse(setup.turned, setup.steel, setup.nominal(),
                {.snug_torque = Torque(std::max(*snug - setup.conditions.lost, 0.0)), .angle = a.angle, .at_most = 20});
  if (!again) return again.error();
  a.tightenings = static_cast<int>(again->uses.size());
  a.single_use = a.past_yield || again->single_use;
  a.methods = method_bands(a.clamp_load.nominal);
  if (job.structural) {
    const Outcome<StructuralTurn> structural = structural_turn(job, setup, *snug);
    if (!structural) return structural.error();
    a.structural = *structural;
  }
  a.verdict = turn_verdict(a);
  if (job.angle && a.past_yield && !a.yield_intended) {
    TurnWish less;
    less.load = default_proof_share * setup.joint.proof_load.si;
    if (const Outcome<double> angle = angle_for(job, setup, less, *snug)) a.suggested_angle = Angle(*angle);
  }
  a.meaning = turn_meaning(a);
  a.notices = turn_notices(job, setup, !job.snug_torque, a);
  if (a.may_neck) clear_load(a);
  return a;
}

TAUTEN_FUNCTION TurnAnswer turn(const TurnJob& job) { return try_turn(job).value(); }

}  // namespace tauten::TAUTEN_ABI
