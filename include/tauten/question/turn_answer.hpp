// What `turn` and `curve` answer.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/joint/service.hpp"
#include "tauten/method/turn_of_nut.hpp"
#include "tauten/question/clamp_answer.hpp"
#include "tauten/question/turn_job.hpp"
#include "tauten/tightening/residual.hpp"
#include "tauten/turning/curve_points.hpp"

namespace tauten::TAUTEN_ABI {

/// What was understood of a joint, and how it answers to load.
struct TurnJoint {
  std::string thread;
  std::string head;  ///< standards of the turned head or nut
  std::string property_class;
  bool class_assumed = false;
  JointKind kind = JointKind::through_bolt;
  Length length{};  ///< of the bolt
  bool length_assumed = false;
  Length grip{};
  std::vector<TurnLayer> layers;  ///< washers included
  Compliance bolt_resilience{};
  Compliance plate_resilience{};
  PlateModel plate_model = PlateModel::chosen;
  double joint_constant = 0;  ///< share of a working load under head and nut that reaches the bolt
  Force proof_load{};
  Force tensile_load{};   ///< minimum load at which the bolt breaks
  Force first_yield{};    ///< preload at which the surface of the thread begins to flow while the wrench turns
  Force yield_preload{};  ///< preload at which the whole thread has reached its yield strength while the wrench turns
  Angle rate_angle{};     ///< from 10 % to 100 % of the torque for three quarters of the proof load
  std::string rate;       ///< hard, between or soft joint, ISO 5393

  template <class V>
  static void fields(V&& visit) {
    visit("thread", &TurnJoint::thread);
    visit("head", &TurnJoint::head);
    visit("property_class", &TurnJoint::property_class);
    visit("class_assumed", &TurnJoint::class_assumed);
    visit("kind", &TurnJoint::kind);
    visit("length", &TurnJoint::length);
    visit("length_assumed", &TurnJoint::length_assumed);
    visit("grip", &TurnJoint::grip);
    visit("layers", &TurnJoint::layers);
    visit("bolt_resilience", &TurnJoint::bolt_resilience);
    visit("plate_resilience", &TurnJoint::plate_resilience);
    visit("plate_model", &TurnJoint::plate_model);
    visit("joint_constant", &TurnJoint::joint_constant);
    visit("proof_load", &TurnJoint::proof_load);
    visit("tensile_load", &TurnJoint::tensile_load);
    visit("first_yield", &TurnJoint::first_yield);
    visit("yield_preload", &TurnJoint::yield_preload);
    visit("rate_angle", &TurnJoint::rate_angle);
    visit("rate", &TurnJoint::rate);
  }
};

/// Preload that a way of tightening would leave, aimed at the same nominal preload.
struct MethodBand {
  std::string key;
  std::string title;
  double tightening_factor = 1;  ///< greatest over least preload, alpha_A
  Band<Force> clamp_load;
  Source source{"", "", Seen::judgement};

  template <class V>
  static void fields(V&& visit) {
    visit("key", &MethodBand::key);
    visit("title", &MethodBand::title);
    visit("tightening_factor", &MethodBand::tightening_factor);
    visit("clamp_load", &MethodBand::clamp_load);
    visit("source", &MethodBand::source);
  }
};

/// What the turns of structural bolting would leave in this joint, beside the preload that they are meant to reach. Each
/// load is `absent` where the bolt may break.
struct StructuralTurn {
  Force least_preload{};                   ///< 0.7 of the tensile load
  std::optional<NutRotation> turn_of_nut;  ///< none beyond the table
  std::optional<Band<Force>> turn_of_nut_load;
  std::optional<NutRotation> combined;  ///< second step of the combined method; none beyond the table
  Torque full_torque{};            ///< for the least preload: by the declared k-value, else at the typical friction
  Torque combined_first_torque{};  ///< first step of the combined method: 0.75 of it
  std::optional<Band<Force>> combined_load;

  template <class V>
  static void fields(V&& visit) {
    visit("least_preload", &StructuralTurn::least_preload);
    visit("turn_of_nut", &StructuralTurn::turn_of_nut);
    visit("turn_of_nut_load", &StructuralTurn::turn_of_nut_load);
    visit("combined", &StructuralTurn::combined);
    visit("full_torque", &StructuralTurn::full_torque);
    visit("combined_first_torque", &StructuralTurn::combined_first_torque);
    visit("combined_load", &StructuralTurn::combined_load);
  }
};

/// How far to turn, or what a turn leaves, and between what limits. Nominal is
/// the bolt as it is sold; 19 in 20 lie in a band, whose low end is never above
/// what a bolt leaves that just meets its class.
struct TurnAnswer {
  std::string name;
  TurnJoint joint;
  Band<double> thread_friction;
  Band<double> bearing_friction;
  double wrench_accuracy = 0;  ///< of the snug torque
  Torque snug_torque{};
  Angle angle{};         ///< at the fastener, from snug
  Angle handle_angle{};  ///< to be read at the handle: with the twist of the bars
  Angle clamping{};      ///< part of it that stretches bolt and layers
  Angle bolt_twist{};    ///< part that twists the bolt; it springs back in part
  Angle tool_twist{};    ///< part that twists the bars; it springs back
  Band<Force> snug_load;
  Band<Force> clamp_load;         ///< `absent` where the bolt may break, and so is all that follows from it
  Band<Force> worst_case;         ///< with everything that is not known at one end of its range
  double chance_of_yield = 0;     ///< of a bolt that just meets its class, while the wrench turns
  double chance_of_slack = 0;     ///< that less than half of the proof load is left
  bool friction_unknown = false;  ///< nobody knows what is on thread or face: no turn is within limits
  double chance_of_necking = 0;   ///< of bolts as they are sold
  Band<double> proof_share;
  Band<double> yield_utilisation;  ///< stress while the wrench turns over the least yield strength
  Band<Torque> torque;             ///< at the end of the turn: what a wrench would show
  Band<double> plastic_strain;     ///< at the surface of the thread
  Band<Length> lasting_stretch;    ///< by which the bolt would stay longer
  bool past_yield = false;         ///< the typical bolt is turned past yield
  bool yield_intended = false;     ///< maker or structural code tightens past yield, or the job asks for all of yield
  std::optional<Angle> suggested_angle;  ///< past yield without that: the angle for 75 % of the proof load, if any
  bool may_neck = false;                 ///< in the worst case uniform elongation is used up, and the bolt necks
  Band<Force> by_torque;                 ///< what the typical torque at the end would leave if it alone were aimed at;
                                         ///< `absent` if it might twist the bolt off
  std::optional<ThreadEngagement> engagement;  ///< none where nothing is known of such a nut
  std::vector<FacePressure> pressures;         ///< under head, nut and washers, at the highest load in service
  ResidualClamp residual;                      ///< after embedding and all other losses
  InService service;                           ///< working load and warmth against bolt and joint
  LoadDiagram diagram;                         ///< of the typical preload after all losses, with the working load
  int tightenings = 0;      ///< that the strain allows at the typical friction, this one counted; at most 20
  bool single_use = false;  ///< tightened past yield: replace the bolt once it is loosened
  std::vector<MethodBand> methods;
  std::optional<StructuralTurn> structural;
  std::string verdict;  ///< strips, necks, may strip, may neck, one of
                        ///< `service_verdict`, yields as intended, yields, may yield, slack, may
                        ///< be slack, within limits: the first that applies
  std::string meaning;  ///< the verdict in a sentence
  std::vector<Notice> notices;
  std::vector<Step> steps;  ///< how the nominal figures came about

  template <class V>
  static void fields(V&& visit) {
    visit("name", &TurnAnswer::name);
    visit("joint", &TurnAnswer::joint);
    visit("thread_friction", &TurnAnswer::thread_friction);
    visit("bearing_friction", &TurnAnswer::bearing_friction);
    visit("wrench_accuracy", &TurnAnswer::wrench_accuracy);
    visit("snug_torque", &TurnAnswer::snug_torque);
    visit("angle", &TurnAnswer::angle);
    visit("handle_angle", &TurnAnswer::handle_angle);
    visit("clamping", &TurnAnswer::clamping);
    visit("bolt_twist", &TurnAnswer::bolt_twist);
    visit("tool_twist", &TurnAnswer::tool_twist);
    visit("snug_load", &TurnAnswer::snug_load);
    visit("clamp_load", &TurnAnswer::clamp_load);
    visit("worst_case", &TurnAnswer::worst_case);
    visit("chance_of_yield", &TurnAnswer::chance_of_yield);
    visit("chance_of_slack", &TurnAnswer::chance_of_slack);
    visit("friction_unknown", &TurnAnswer::friction_unknown);
    visit("chance_of_necking", &TurnAnswer::chance_of_necking);
    visit("proof_share", &TurnAnswer::proof_share);
    visit("yield_utilisation", &TurnAnswer::yield_utilisation);
    visit("torque", &TurnAnswer::torque);
    visit("plastic_strain", &TurnAnswer::plastic_strain);
    visit("lasting_stretch", &TurnAnswer::lasting_stretch);
    visit("past_yield", &TurnAnswer::past_yield);
    visit("yield_intended", &TurnAnswer::yield_intended);
    visit("suggested_angle", &TurnAnswer::suggested_angle);
    visit("may_neck", &TurnAnswer::may_neck);
    visit("by_torque", &TurnAnswer::by_torque);
    visit("engagement", &TurnAnswer::engagement);
    visit("pressures", &TurnAnswer::pressures);
    visit("residual", &TurnAnswer::residual);
    visit("service", &TurnAnswer::service);
    visit("diagram", &TurnAnswer::diagram);
    visit("tightenings", &TurnAnswer::tightenings);
    visit("single_use", &TurnAnswer::single_use);
    visit("methods", &TurnAnswer::methods);
    visit("structural", &TurnAnswer::structural);
    visit("verdict", &TurnAnswer::verdict);
    visit("meaning", &TurnAnswer::meaning);
    visit("notices", &TurnAnswer::notices);
    visit("steps", &TurnAnswer::steps);
  }
};

/// A stretch of the nominal curve.
struct CurveZone {
  std::string name;  ///< elastic, yielding (from the surface inward), past_yield
  Angle start{};
  Angle end{};

  template <class V>
  static void fields(V&& visit) {
    visit("name", &CurveZone::name);
    visit("start", &CurveZone::start);
    visit("end", &CurveZone::end);
  }
};

/// Torque and preload against the angle from snug, at low, typical and high friction, for the least strength of the class.
struct CurveAnswer {
  std::string name;
  TurnJoint joint;
  Band<double> thread_friction;
  Band<double> bearing_friction;
  Torque snug_torque{};
  Curve low_friction;
  Curve nominal;
  Curve high_friction;
  std::vector<CurveZone> zones;  ///< of the nominal curve
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &CurveAnswer::name);
    visit("joint", &CurveAnswer::joint);
    visit("thread_friction", &CurveAnswer::thread_friction);
    visit("bearing_friction", &CurveAnswer::bearing_friction);
    visit("snug_torque", &CurveAnswer::snug_torque);
    visit("low_friction", &CurveAnswer::low_friction);
    visit("nominal", &CurveAnswer::nominal);
    visit("high_friction", &CurveAnswer::high_friction);
    visit("zones", &CurveAnswer::zones);
    visit("notices", &CurveAnswer::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
