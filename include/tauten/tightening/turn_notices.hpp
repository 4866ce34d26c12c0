// What a turn by angle has to say beside its numbers: verdict, warnings and cautions.
#pragma once

#include "tauten/tightening/turn_setup.hpp"
#include "tauten/tool/reach_notices.hpp"

namespace tauten::detail {

inline std::string turn_verdict(const TurnAnswer& a) {
  if (a.may_neck) return "would neck";
  if (a.past_yield) return "past yield";
  if (a.yield_utilisation.high > 1) return "yields";
  if (a.yield_utilisation.high > usable_yield_share) return "near yield";
  return a.proof_share.nominal < useful_proof_share ? "slack" : "fit";
}

inline std::string turn_meaning(const std::string& verdict) {
  if (verdict == "would neck")
    return "In the worst case the bolt uses up its uniform elongation before the end of the turn; it necks and may "
           "break.";
  if (verdict == "past yield")
    return "The bolt is turned past yield: the load depends on bolt strength and hardly on friction; use the "
           "bolt once only.";
  if (verdict == "yields")
    return "In the worst case the bolt stretches for good; do not use it again unless it was measured.";
  if (verdict == "near yield") return "In the worst case less than a tenth of the yield strength is left.";
  if (verdict == "slack")
    return "The typical clamp load is below half of the proof load; the joint may slip or shake loose.";
  return "The typical clamp load is at least half of the proof load, and the worst case stays below nine tenths of "
         "yield.";
}

/// What holds of the joint, for a turn and for a curve.
inline std::vector<Notice> joint_notices(const TurnJob& job, const TurnSetup& setup) {
  std::vector<Notice> list = setup.notices;
  const auto say = [&](bool holds, const char* code, const std::string& text, bool estimate) {
    if (holds) list.push_back({code, text, estimate});
  };
  add_bolt_notices(list, setup.bolt,
                   {setup.joint.class_assumed, setup.suspect.head_assumed, setup.suspect.bearing_estimated},
                   job.condition);
  say(true, "snug_is_found",
      "Snug is where all gaps are closed and the faces lie on each other. Find it on the joint; the angle counts from "
      "there, never from the first touch.",
      false);
  say(setup.joint.length_assumed, "length_assumed",
      "The length of the bolt is not given; " + shop_text(setup.joint.length) + " is the shortest that reaches.", true);
  say(setup.width_assumed, "width_assumed",
      "The width of a layer is not given; it is taken as three bearing faces. The distance to the next edge counts.",
      true);
  say(job.kind != JointKind::through_bolt, "tapped_from_memory", "What the tapped part yields is a remembered figure.",
      true);
  say(setup.reduced_shank(), "reduced_shank", "The reduced shank is taken as what yields first.", false);
  return list;
}

/// Adds the notices that hold whatever is tightened, the one on friction among them.
inline void add_common_notices(const TurnJob& job, const TurnSetup& setup, std::vector<Notice>& list) {
  for (Notice& notice : notices_of(clamp_job_of(job), setup.conditions, false)) list.push_back(std::move(notice));
}

/// Which of the turns of structural bolting this bolt may not bear; "" if it bears both.
inline std::string breaking_turns(const TurnAnswer& a) {
  const auto breaks = [](const std::optional<Band<Force>>& load) { return load && !is_given(load->nominal.si); };
  const bool nut = a.structural && breaks(a.structural->turn_of_nut_load);
  const bool combined = a.structural && breaks(a.structural->combined_load);
  return std::string(nut ? "the turn of the nut" : "") + (nut && combined ? " and by " : "") +
         (combined ? "the combined method" : "");
}

inline std::vector<Notice> turn_notices(const TurnJob& job, const TurnSetup& setup, bool snug_assumed,
                                        const TurnAnswer& a) {
  std::vector<Notice> list = joint_notices(job, setup);
  const auto say = [&](bool holds, const char* code, const std::string& text, bool estimate = false) {
    if (holds) list.push_back({code, text, estimate});
  };
  say(snug_assumed, "snug_assumed",
      "No snug torque is given; " + shop_text(a.snug_torque) + " leaves a quarter of the load wanted, as is usual.",
      true);
  // Of a bolt that may break no load is named, and nothing is said that asks to turn so far or counts on a load.
  const bool borne = !a.may_neck;
  say(borne && a.torque.low.si > 0, "watch_the_torque",
      "The torque at the end of the turn should be " + shop_text(a.torque.low) + " to " + shop_text(a.torque.high) +
          ". Outside that, stop and find out why: a seized thread, a wrong bolt, a gap that was still open.");
  say(a.may_neck, "may_neck",
      "Do not turn so far: the bolt may neck and break. The typical bolt has used up " +
          percent_text(a.plastic_strain.nominal / setup.steel.uniform_elongation) + " of its uniform elongation at " +
          shop_text(Angle(a.clamping.si + a.bolt_twist.si)) + ". Ask the maker for the angle.");
  say(a.past_yield, "single_use",
      "Tightened past yield: a bolt for one use. Replace it once it is loosened, whatever the strain would allow, "
      "unless "
      "its maker says otherwise.");
  say(!a.past_yield && a.yield_utilisation.high > 1, "stretched",
      "It may be stretched for good. Measure its length before and after, and replace it if it has grown.");
  say(borne && a.proof_share.nominal < useful_proof_share, "may_be_slack",
      "The typical clamp load is " + percent_text(a.proof_share.nominal) + " of the proof load.");
  say(borne && a.tool_twist > noticeable_twist, "bar_twist",
      "The bars twist by " + shop_text(a.tool_twist) + "; take the angle at the socket, or read " +
          shop_text(a.handle_angle) + " at the handle.");
  say(job.angle_tolerance.si > 0.2 * a.angle.si, "small_angle",
      "The angle may be off by " + shop_text(job.angle_tolerance) +
          ", much of the whole turn: the joint is stiff, and torque would do as well.");
  say(borne && a.residual.may_open, "may_open", "In the worst case no clamp load is left after all losses.");
  say(borne && a.diagram.separated, "separates", "The working load parts the joint; the bolt carries all of it.");
  say(borne && job.after.working_load.si > 0, "working_load",
      "The working load is added to the typical preload; fatigue is not looked at.");
  say(true, "embedding_from_memory", "How far faces embed are remembered guide values.", true);
  say(true, "tolerances_judged",
      "How far angle and resilience may be off, and by how much a bolt exceeds its class, are judgement unless given.",
      true);
  say(job.structural && !setup.bolt.strength.name.starts_with("8.8") && !setup.bolt.strength.name.starts_with("10.9"),
      "structural_class", "The turns of structural bolting are for bolts of class 8.8 and 10.9; this is another one.");
  const std::string breaking = breaking_turns(a);
  say(!breaking.empty(), "structural_may_neck",
      "By " + breaking +
          " of structural bolting this bolt may neck and break, reckoned with the least elongation of its "
          "class: no load is named. Its code and its maker say how such a joint is tightened.");
  say(job.structural, "structural_rules",
      "Structural bolts are tightened by the rules of their code, checked there and by licensed practice.");
  add_common_notices(job, setup, list);
  return list;
}

}  // namespace tauten::detail
