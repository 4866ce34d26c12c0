// What a turn by angle has to say beside its numbers: verdict, warnings and cautions.
#pragma once

#include "tauten/part/hot_strength.hpp"
#include "tauten/question/workings/reach_notices.hpp"
#include "tauten/question/workings/turn_setup.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Verdict on the joint in service, the worst that applies; "" if working load and temperature do no harm. A bolt
/// tightened past yield lies above its proof load on purpose: it fails only where it breaks.
inline std::string service_verdict(const TurnAnswer& a) {
  const InService& s = a.service;
  const bool loaded = s.working_load.si > 0 || s.bolt_load.nominal.si > a.clamp_load.nominal.si || s.strength_share < 1;
  if (loaded && s.bolt_load.nominal > s.tensile_load) return word_of(Verdict::breaks_in_service);
  if (!(s.clamp_load.nominal.si > 0)) return word_of(Verdict::opens_in_service);
  const bool kept_elastic = !a.past_yield;
  if (loaded && kept_elastic && s.bolt_load.nominal > s.proof_load) return word_of(Verdict::yields_in_service);
  // A stronger bolt that gets a greater load bears it as well: past yield the high end is one of strength.
  if (loaded && kept_elastic && s.bolt_load.high > s.tensile_load) return word_of(Verdict::may_break_in_service);
  if (!(s.clamp_load.low.si > 0)) return word_of(Verdict::may_open_in_service);
  if (loaded && kept_elastic && !(a.chance_of_yield > 0.01) && s.bolt_load.high > s.proof_load)
    return word_of(Verdict::may_yield_in_service);
  return "";
}

inline std::string service_meaning(const TurnAnswer& a) {
  const InService& s = a.service;
  const bool in_the_worst_case = a.verdict.starts_with("may");
  const std::string when = in_the_worst_case ? "In the worst case the bolt" : "The bolt";
  const Force load = in_the_worst_case ? s.bolt_load.high : s.bolt_load.nominal;
  const std::string carries = when + " carries " + shop_text(load) + " in service, above its ";
  if (a.verdict.ends_with("open in service") || a.verdict.starts_with("opens"))
    return std::string(in_the_worst_case ? "In the worst case no" : "No") + " clamp load remains after all losses" +
           (s.working_load.si > 0 ? " at a working load of " + shop_text(s.working_load) +
                                        "; the parts separate and the bolt carries all of it."
                                  : std::string("; the joint is loose."));
  if (a.verdict.find("break") != std::string::npos)
    return carries + "tensile load of " + shop_text(s.tensile_load) + (in_the_worst_case ? "." : ": it breaks.");
  return carries + "proof load of " + shop_text(s.proof_load) + ": it stretches for good and loses clamp load.";
}

/// "strips" or "may strip" where the thread gives way before the load is reached, with the working load on; else "".
inline std::string strip_verdict(const TurnAnswer& a) {
  if (!a.engagement || a.engagement->breaks_first) return "";
  const Band<Force>& load = a.service.bolt_load;
  if (load.nominal > a.engagement->strip_load.nominal) return word_of(Verdict::strips);
  return load.high > a.engagement->strip_load.low ? word_of(Verdict::may_strip) : "";
}

inline std::string strip_meaning(const TurnAnswer& a) {
  const ThreadEngagement& e = *a.engagement;
  const Band<Force>& strip = e.strip_load;
  const bool nut = e.strips == "nut";
  const std::string whose = nut                  ? "The " + e.holder
                            : e.strips == "part" ? "The thread in the " + e.holder
                                                 : "The thread of the bolt";
  const std::string range =
      strip.low < strip.high ? shop_text(strip.low) + " to " + shop_text(strip.high) : shop_text(strip.low);
  const bool certain = a.verdict == Verdict::strips;
  return whose +
         (nut       ? " carries only "
          : certain ? " strips at "
                    : " may strip from ") +
         range + (nut ? "" : " at an engagement of " + shop_text(e.engaged_length)) + ", " +
         (certain ? "before the bolt reaches its load" : "which the highest load in service may reach") +
         (e.needed_length.si > 0
              ? "; engage at least " + shop_text(e.needed_length) + ", use a thread insert, or tighten less."
              : "; use a nut of the matching class and full height.");
}

/// The first that applies. Chances as for tightening by torque: half of the
/// cases, 1 in 20 for what may break or slip, 1 in 100 for what may stretch.
inline std::string turn_verdict(const TurnAnswer& a) {
  const std::string strip = strip_verdict(a);
  if (strip == Verdict::strips) return strip;
  if (a.chance_of_necking >= 0.5) return word_of(Verdict::necks);
  if (!strip.empty()) return strip;
  if (a.may_neck) return word_of(Verdict::may_neck);
  if (const std::string service = service_verdict(a); !service.empty()) return service;
  if (a.past_yield) return word_of(a.yield_intended ? Verdict::yields_as_intended : Verdict::yields);
  if (a.chance_of_yield > 0.01) return word_of(Verdict::may_yield);
  if (a.chance_of_slack >= 0.5) return word_of(Verdict::slack);
  return a.chance_of_slack > 0.05 || a.friction_unknown ? word_of(Verdict::may_be_slack)
                                                        : word_of(Verdict::within_limits);
}

inline std::string turn_meaning(const TurnAnswer& a) {
  const std::string& verdict = a.verdict;
  if (verdict.ends_with("in service")) return service_meaning(a);
  if (verdict == Verdict::strips || verdict == Verdict::may_strip) return strip_meaning(a);
  if (verdict == Verdict::necks)
    return "The typical bolt uses up its uniform elongation before the end of "
           "the turn: it necks and may break.";
  if (verdict == Verdict::may_neck)
    return "Some bolts use up their uniform elongation before the end of the "
           "turn: they neck and may break.";
  if (verdict == Verdict::yields || verdict == Verdict::yields_as_intended)
    return "The bolt is turned past yield: the load depends on bolt strength "
           "and hardly on friction; use the "
           "bolt once only.";
  if (verdict == Verdict::may_yield)
    return "More than 1 in 100 bolts that just meet their class stretch for "
           "good; measure the length before a bolt is "
           "used again.";
  if (verdict == Verdict::slack)
    return "The typical clamp load is below half of the proof load; the joint "
           "may slip or shake loose.";
  if (verdict == Verdict::may_be_slack && a.chance_of_slack <= 0.05)
    return "Friction is unknown, and with it the load at snug: the clamp load may be below half of the proof load. "
           "Find out "
           "what is on the threads.";
  if (verdict == Verdict::may_be_slack)
    return "More than 1 in 20 joints get less than half of the proof load; "
           "they may slip or shake loose.";
  return "At least 19 in 20 joints get half of the proof load or more, and at "
         "most 1 in 100 bolts yields.";
}

/// What holds of the joint, for a turn and for a curve.
inline std::vector<Notice> joint_notices(const TurnJob& job, const TurnSetup& setup) {
  std::vector<Notice> list = setup.notices;
  const auto say = [&](bool holds, const char* code, const std::string& text, bool estimate) {
    if (holds) list.push_back({code, text, estimate});
  };
  add_bolt_notices(list, setup.bolt,
                   {setup.joint.class_assumed, setup.suspect.head_assumed, setup.suspect.bearing_estimated},
                   setup.conditions.thread);
  say(true, "snug_is_found",
      "Snug is where all gaps are closed and the faces lie on each other. Find "
      "it on the joint; the angle counts from "
      "there, never from the first touch.",
      false);
  say(setup.joint.length_assumed, "length_assumed",
      "The length of the bolt is not given; " + shop_text(setup.joint.length) + " is the shortest that reaches.", true);
  say(setup.width_assumed, "width_assumed",
      "The width of a layer is not given; it is taken as three bearing faces. "
      "The distance to the next edge counts.",
      true);
  say(job.kind != JointKind::through_bolt, "tapped_from_memory", "The compliance of the tapped part was not checked.",
      true);
  say(setup.reduced_shank(), "reduced_shank", "The reduced shank is assumed to yield first.", false);
  return list;
}

/// Adds the notices that hold whatever is tightened, the one on friction among them.
/// \param pressure_checked  the answer has the pressure under head and nut
inline void add_common_notices(const TurnJob& job, const TurnSetup& setup, std::vector<Notice>& list,
                               bool pressure_checked) {
  for (Notice& notice : notices_of(clamp_job_of(job), setup.conditions, false, pressure_checked))
    list.push_back(std::move(notice));
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
      "No snug torque is given; " + shop_text(a.snug_torque) +
          " leaves a quarter of the load wanted, which is typical.",
      true);
  // Of a bolt that may break no load is named, and nothing is said that asks to turn so far or counts on a load.
  const bool borne = !a.may_neck && strip_verdict(a) != Verdict::strips;
  say(borne && a.torque.low.si > 0, "watch_the_torque",
      "The torque at the end of the turn should be " + shop_text(a.torque.low) + " to " + shop_text(a.torque.high) +
          ". Outside that, stop and find out why: a seized thread, a wrong "
          "bolt, a gap that was still open.");
  say(a.may_neck, "may_neck",
      "Do not turn so far: the bolt may neck and break. The typical bolt has "
      "used up " +
          percent_text(a.plastic_strain.nominal / (elongation_sold(job) * setup.strain_limit)) +
          " of its uniform elongation at " + shop_text(Angle(a.clamping.si + a.bolt_twist.si)) +
          ". Ask the maker for the angle.");
  if (a.may_neck || a.past_yield) list.push_back(cautions::bolt_axis);
  say(a.past_yield, "single_use",
      "Tightened past yield: a bolt for one use. Replace it once it is "
      "loosened, whatever the strain would allow, "
      "unless "
      "its maker says otherwise.");
  say(!a.past_yield && a.chance_of_yield > 0.01, "stretched",
      "The bolt may be stretched for good. Measure its length before and "
      "after, and replace it if it has grown.");
  say(borne && a.proof_share.nominal < useful_proof_share, "may_be_slack",
      "The typical clamp load is " + percent_text(a.proof_share.nominal) + " of the proof load.");
  say(borne && a.tool_twist > noticeable_twist, "bar_twist",
      "The bars twist by " + shop_text(a.tool_twist) + "; take the angle at the socket, or read " +
          shop_text(a.handle_angle) + " at the handle.");
  say(job.angle && job.angle->si > unusual_turn, "unusual_angle",
      "An angle of " + shop_text(job.angle.value_or(a.angle)) +
          " is more than any rule asks for. Check the unit: a plain number "
          "counts as radians.");
  say(job.angle_tolerance.si > 0.2 * a.angle.si, "small_angle",
      "An error of " + shop_text(job.angle_tolerance) +
          " is a large part of this short turn; on so stiff a joint torque control would do as well.");
  say(borne && a.residual.may_open, "may_open", "In the worst case no clamp load is left after all losses.");
  say(borne && a.diagram.separated, "separates",
      "After all losses the working load separates the joint; the bolt carries "
      "all of it.");
  say(borne && job.after.working_load.si > 0 && !a.diagram.separated && !(a.service.clamp_load.low.si > 0),
      "may_separate",
      "In the worst case the working load separates the joint after all "
      "losses.");
  say(borne && job.after.working_load.si > 0, "working_load",
      "The bolt is checked with the preload as tightened, the clamp load with "
      "all losses taken off. Bending and "
      "fatigue "
      "are not checked.");
  say(job.after.bolt_warming > hottest_service, "hot_bolt",
      "At about " + number_text(20 + job.after.bolt_warming.si, 3) + " degC the bolt has " +
          percent_text(a.service.strength_share) +
          " of its strength: the figures of its class hold from -50 to +150 "
          "degC only. The modulus falls too, and the "
          "bolt creeps; ask the maker for a steel for this temperature.",
      true);
  say(job.after.bolt_warming < coldest_service, "cold_bolt",
      "At about " + number_text(20 + job.after.bolt_warming.si, 3) +
          " degC the steel may be brittle: the figures of its class hold from "
          "-50 to +150 degC only. Ask the maker for "
          "a "
          "steel for this temperature.",
      true);
  if (a.engagement && !a.engagement->breaks_first) {
    const ThreadEngagement& e = *a.engagement;
    say(true, "engagement_short",
        "The thread gives way before the bolt breaks: the " + e.holder + " holds " + shop_text(e.strip_load.low) +
            " and the bolt " + shop_text(a.joint.tensile_load) +
            (e.needed_length.si > 0 ? ". It needs " + shop_text(e.needed_length) + " of engagement and has " +
                                          shop_text(e.engaged_length) + "."
                                    : ". Use a nut of the matching class and full height."),
        true);
  }
  if (a.engagement && a.engagement->strips != "nut" && job.tapped_material == material::aluminium.name)
    if (const auto tensile = try_tensile_load(setup.suspect.thread, setup.bolt.strength.name))
      list.push_back(aluminium_notice(tapped_engagement(setup.suspect.thread, setup.bolt.strength, tensile->value,
                                                        material::cast_aluminium, a.engagement->engaged_length),
                                      a.service.bolt_load.high));
  for (const FacePressure& p : a.pressures)
    if (borne && p.highest > p.limiting_pressure)
      say(true, "pressure",
          std::string("Pressure under the ") + p.below + ": " + shop_text(p.pressure) + ", up to " +
              shop_text(p.highest) + "; " + p.material + " bears about " + shop_text(p.limiting_pressure) +
              ". The face sinks in and the clamp load falls: use a larger or "
              "harder washer, or a flange head.",
          true);
  say(true, "embedding_from_memory", "Embedding uses guide values that were not checked.", true);
  say(true, "tolerances_judged",
      "How far angle and resilience may be off, and by how much a bolt exceeds "
      "its class, are judgement unless given.",
      true);
  say(job.structural && !setup.bolt.strength.name.starts_with("8.8") && !setup.bolt.strength.name.starts_with("10.9"),
      "structural_class",
      "The turns of structural bolting are for bolts of class 8.8 and 10.9; "
      "this is another one.");
  const std::string breaking = breaking_turns(a);
  say(!breaking.empty(), "structural_may_neck",
      "By " + breaking +
          " of structural bolting this bolt may neck and break, reckoned with "
          "the minimum elongation of its "
          "class: no load is named. Its code and its maker say how such a "
          "joint is tightened.");
  say(job.structural, "structural_rules",
      "Structural bolts are tightened by the rules of their code, checked "
      "there and by licensed practice.");
  add_common_notices(job, setup, list, !a.pressures.empty());
  return list;
}

}  // namespace tauten::TAUTEN_ABI::detail
