// One bolt in the conditions of a job: its strength and friction, and what is to be said of both.
#pragma once

#include <algorithm>

#include "tauten/base/caution.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"
#include "tauten/question/workings/clamp_load.hpp"
#include "tauten/question/workings/taken.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Strength, friction and the face that slides at each corner: the one with the least friction torque.
/// \param bearing_diameter  of head or nut
inline Outcome<ClampBolt> bolt_of(const ClampJob& job, const Thread& thread, double bearing_diameter,
                                  const Conditions& c) {
  const Outcome<PropertyClass> strength =
      try_property_class(job.property_class.empty() ? unmarked_class : job.property_class, thread.diameter);
  if (!strength) return strength.error();
  const Outcome<RatedLoad> proof = try_proof_load(thread, strength->name);
  if (!proof) return proof.error();
  const auto below_thread = [&](double diameter) {
    return refuse("bearing_diameter",
                  "bearing_diameter is " + shop_text(Length(diameter)) + ", but must be at least the " +
                      shop_text(thread.diameter) +
                      " of the thread; give the effective diameter of the bearing face, or leave it out");
  };
  const double first = bearing_diameter;
  if (!(first >= thread.diameter.si)) return below_thread(first);
  ClampBolt bolt{thread,
                 *strength,
                 proof->value.si,
                 c.mu_G,
                 c.mu_K,
                 {first, first, first},
                 job.torsion,
                 job.prevailing_torque.si,
                 thread.stress_diameter().si,
                 !c.thread_measured && !c.face_measured && c.thread.key == c.face.key};
  for (const Face& face : job.more_faces) {
    const Outcome<ThreadCondition> between = try_thread_condition(face.condition);
    if (!between) return between.error();
    const double diameter = face.bearing_diameter.si;
    if (!(diameter >= thread.diameter.si)) return below_thread(diameter);
    bolt.one_draw = bolt.one_draw && between->key == c.thread.key;
    const auto slides = [&](double& mu, double& at, double other) {
      if (other * diameter < mu * at) mu = other, at = diameter;
    };
    slides(bolt.mu_K.low, bolt.D_Km.low, between->bearing_friction.low);
    slides(bolt.mu_K.nominal, bolt.D_Km.nominal, between->bearing_friction.nominal);
    slides(bolt.mu_K.high, bolt.D_Km.high, between->bearing_friction.high);
  }
  if (job.friction_together) bolt.one_draw = *job.friction_together;
  return bolt;
}

/// What of a bolt was not said or not found, and is taken for granted.
struct BoltDoubts {
  bool class_assumed = false;
  bool head_assumed = false;
  bool bearing_estimated = false;
};

/// What is to be said of a bolt, however it is tightened.
/// \param on_threads  what is there
inline void add_bolt_notices(std::vector<Notice>& notices, const ClampBolt& bolt, const BoltDoubts& doubts,
                             const ThreadCondition& on_threads) {
  if (doubts.class_assumed)
    notices.push_back({"unmarked_head",
                       std::string("No class is given. Treat an unmarked steel head as class ") + unmarked_class +
                           ". Check the head: all strength figures depend on it.",
                       true});
  if (bolt.strength.stainless && on_threads.key != "stainless-paste")
    notices.push_back({"galling",
                       "Stainless threads gall: turn slowly, use paste, and never force a nut that starts to bind.",
                       false});
  if (doubts.head_assumed)
    notices.push_back({"head_assumed",
                       "No head is given: the bearing face is taken to be that of a hexagon head after ISO 4014 or "
                       "ISO 4017. Name the head's standard if it is another.",
                       true});
  if (doubts.bearing_estimated)
    notices.push_back({"bearing_estimated",
                       "No standard in the tables gives the bearing face of this head; it is estimated from its width.",
                       true});
  if (bolt.strength.seen == Seen::memory)
    notices.push_back(
        {"class_from_memory", "The strengths of this class are from memory, not checked against the standard.", true});
}

/// How the friction of thread and face go with each other where both scatter.
/// \param together    see `ClampBolt::one_draw`
/// \param can_be_set  the question has the input `friction_together`
inline Notice friction_notice(bool together, bool can_be_set) {
  if (together)
    return {"friction_together",
            std::string("Thread and face are under one condition, so both are taken to rub much or little together. "
                        "Independent friction ") +
                (can_be_set ? "(friction_together: no) " : "") + "has a smaller spread.",
            true};
  return {"friction_independent",
          "Friction of thread and face is taken as independent. One lubricant on both makes them go together and "
          "widens the spread.",
          true};
}

/// Warnings that hold whatever fastener it is.
/// \param torque_given      false if the torque is worked out for this very condition
/// \param pressure_checked  the answer has the pressure under head and nut
inline std::vector<Notice> notices_of(const ClampJob& job, const Conditions& c, bool torque_given,
                                      bool pressure_checked = false) {
  std::vector<Notice> out;
  add_thread_taken(out, job.thread);
  add_class_taken(out, job.property_class);
  for (const std::string* condition : {&job.condition, &job.face_condition, &job.specified_condition})
    add_condition_taken(out, *condition);
  for (const Face& face : job.more_faces) add_condition_taken(out, face.condition);
  const auto lever_ratio = [&](const ThreadCondition& meant) {
    // Nut factors of the typical M10 bolt stand for all: the ratio hardly depends on the size.
    const auto factor = [](double mu_g, double mu_k) {
      return nut_factor_exact.si(10e-3, 1.5e-3, 9.026e-3, mu_g, mu_k, 12.8e-3);
    };
    return factor(meant.thread_friction.nominal, meant.bearing_friction.nominal) /
           factor(c.mu_G.nominal, c.mu_K.nominal);
  };
  const auto say_ratio = [&](const ThreadCondition& meant, const std::string& start) {
    const double ratio = lever_ratio(meant);
    if (std::fabs(ratio - 1) < 0.1) return;
    out.push_back(
        {"friction_not_as_specified",
         start + " it leaves about " + PlainNumber::fixed(ratio, 1).c_str() + " times the clamp load that was meant.",
         true});
  };
  if (!torque_given) {
    // The setting is for this condition; a comparison with another one would only mislead.
  } else if (!job.specified_condition.empty()) {
    const std::string here = c.thread_measured ? "have the friction that was measured" : "are '" + c.thread.title + "'";
    if (const Outcome<ThreadCondition> meant = condition_on(job, job.specified_condition))
      say_ratio(*meant, "The torque is for threads '" + meant->title + "', but these " + here + ":");
  } else if (c.thread.lubricated && !c.thread_measured) {
    if (const Outcome<ThreadCondition> meant = condition_on(job, "dry"))
      say_ratio(*meant, "If the torque figure is for dry threads,");
  }
  // What was measured needs no remark on the band of a condition.
  std::vector<const ThreadCondition*> by_table;
  if (!c.thread_measured) by_table.push_back(&c.thread);
  if (!c.face_measured && (c.thread_measured || c.face.key != c.thread.key)) by_table.push_back(&c.face);
  const auto is_judged = [](const ThreadCondition* on) { return on->source.seen == Seen::judgement; };
  if (std::any_of(by_table.begin(), by_table.end(), is_judged))
    out.push_back({"friction_estimated",
                   "The friction band of this condition is an estimate; no published figure was found.", true});
  for (const ThreadCondition* on : by_table)
    if (!on->note.empty()) out.push_back({"condition_note", on->title + ": " + on->note + ".", false});
  out.push_back({"before_embedding",
                 std::string("The clamp load is the one right after tightening: surfaces settle and take some of it "
                             "away.") +
                     (pressure_checked ? "" : " The pressure under head and nut is not checked."),
                 false});
  for (const Caution& caution : {cautions::line_of_slip, cautions::eye_protection, cautions::no_pipe,
                                 cautions::replace_used_up, cautions::no_release})
    out.push_back(caution);
  return out;
}

}  // namespace tauten::TAUTEN_ABI::detail
