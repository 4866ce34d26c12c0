// What a clamp answer says beside its figures: the answer in one line, and its warnings.
#pragma once

#include <array>
#include <cmath>

#include "tauten/base/number_text.hpp"
#include "tauten/question/workings/clamp_bolt.hpp"
#include "tauten/question/workings/clamp_suspects.hpp"
#include "tauten/question/workings/clamp_verdict.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// A suggested torque as it is set, in N.m.
inline std::string settable_text(Torque torque) { return tauten::settable_text(torque.shop()); }

/// "48 to 77 kN"; whole kN from 10 kN on, for a band is no more certain than that.
inline std::string rough_load_text(Force load) { return rough_text(load.shop()); }

/// Quantities in the sentences of an answer, in the units of a workshop. A page has others that go by the same names.
struct ShopUnits {
  std::string typed(Length q) const { return number_text(q.shop()) + " mm"; }
  std::string settable(Torque q) const { return settable_text(q) + " N.m"; }
  std::string typed(Torque q) const { return number_text(q.shop()) + " N.m"; }
  std::string text(Torque q) const { return number_text(q.shop(), 3) + " N.m"; }
  std::string rough(Force q) const { return rough_load_text(q) + " kN"; }
  std::string rough_range(const Band<Force>& band) const {
    return rough_load_text(band.low) + " to " + rough_load_text(band.high) + " kN";
  }
};

inline std::string condition_text(const Conditions& c) {
  if (c.thread_measured && c.face_measured) return "friction measured";
  const auto name = [](const ThreadCondition& on, bool measured) {
    return measured ? "measured" : on.key == "unknown" ? std::string("friction unknown") : on.key;
  };
  const std::string on_thread = name(c.thread, c.thread_measured);
  const std::string on_face = name(c.face, c.face_measured);
  return on_thread == on_face ? on_thread : "thread " + on_thread + ", face " + on_face;
}

/// What to make of a verdict, in a few words: "Within limits; up to 173 N.m is possible."
/// \param no_more  the threads must not be tightened as they are, so that no other setting is named
template <class Units = ShopUnits>
std::string verdict_advice(const ClampCandidate& c, bool unknown, const Units& units = {}, bool no_more = false) {
  std::string text = c.verdict;
  text[0] = static_cast<char>(text[0] - 'a' + 'A');
  const bool any = is_given(c.suggested_torque.si);
  const std::string suggested = any ? units.settable(c.suggested_torque) : "";
  // Half a per cent: what three figures can show.
  const bool below = any && !no_more && c.torque.si < c.suggested_torque.si * 0.995;
  const bool above = any && !no_more && c.torque.si > c.suggested_torque.si * 1.005;
  if (c.verdict == Verdict::within_limits) return text + (below ? "; up to " + suggested + " is possible." : ".");
  const bool breaks = c.verdict == Verdict::breaks || c.verdict == Verdict::may_break;
  const bool strips = c.verdict == Verdict::strips || c.verdict == Verdict::may_strip;
  const double chance = strips || head_breaks_off(c) ? 0 : breaks ? c.chance_of_breaking : c.chance_of_yield;
  if (c.verdict == Verdict::may_be_slack || c.verdict == Verdict::slack) {
    // Without knowing the friction more torque is no advice: on paste it may break the bolt.
    text += below && !unknown ? "; up to " + suggested + " is possible." : ".";
  } else {
    if (chance >= accepted_chance_of_yield && chance <= 0.99) text += " (" + chance_text(chance) + ")";
    text += above ? "; set " + suggested + " instead." : ".";
  }
  if (unknown) text += " Find out what is on the threads.";
  return text;
}

/// The answer in one line.
/// \param sets_another  a setting is named elsewhere, so that none is here
template <class Units = ShopUnits>
std::string summary_of(const ClampCandidate& c, const Conditions& conditions, const Units& units = {},
                       bool sets_another = false) {
  std::string text = c.thread +
                     (c.class_assumed ? ", class " + c.property_class + " assumed" : " " + c.property_class) + ", " +
                     condition_text(conditions) + ", " +
                     (c.torque.si == c.suggested_torque.si ? units.settable(c.torque) : units.typed(c.torque)) + ": ";
  if (is_given(c.clamp_load.nominal.si))
    text += "clamp load " + units.rough(c.clamp_load.nominal) + " (" + units.rough_range(c.clamp_load) +
            " in 19 of 20 cases" +
            (c.verdict == Verdict::may_break || c.verdict == Verdict::may_strip ? ", if it holds" : "") + "). ";
  else
    text += "no clamp load. ";
  // Dry stainless threads are not tightened, but pasted first.
  const bool dry_stainless = conditions.is_dry_stainless();
  return text + verdict_advice(c, conditions.friction_unknown(), units, dry_stainless || sets_another) +
         (dry_stainless
              ? " Paste the threads first: dry, they may seize. Then ask again: on paste this torque pulls far "
                "harder."
              : "");
}

/// What is to be said of a fastener whatever the torque.
/// \param at_target  chance of yielding at the target torque
inline void add_fastener_notices(std::vector<Notice>& notices, const ClampCandidate& c, const Suspect& s,
                                 const ClampBolt& bolt, const Conditions& conditions, const ClampJob& job,
                                 double at_target) {
  add_bolt_notices(notices, bolt, {c.class_assumed, s.head_assumed, s.bearing_estimated}, conditions.thread);
  if (s.kind == HeadKind::socket_button_head)
    notices.push_back({"reduced_loadability",
                       "A button head bears only about 80 % of the tensile load of its class and may break off; a zero "
                       "before the class, such as 010.9, marks it (from memory, not checked against the standard). Its "
                       "key is small, too. Never fit it instead of a cap screw.",
                       false});
  if (bolt.strength.stainless && conditions.is_dry_stainless())
    notices.push_back(
        {"paste_first",
         "Do not tighten dry stainless threads: they gall, and may seize for good. Apply anti-seize paste "
         "and ask again with condition stainless-paste.",
         false});
  if (!is_given(c.suggested_torque.si)) {
    const bool by_thread = c.suggested_limit == "thread";
    notices.push_back({"no_suggested_torque",
                       std::string("No torque can be suggested: ") +
                           (by_thread ? "the thread that holds the bolt bears too little."
                                      : "prevailing and shank torque leave no room between a slack bolt and one that "
                                        "yields."),
                       false});
    return;
  }
  const std::string share = number_text(100 * job.share.value_or(default_proof_share), 3);
  const std::string target =
      share + " % of the proof load needs " + settable_text(c.target_torque) + " N.m at nominal friction";
  if (c.suggested_limit == "chance of yield")
    notices.push_back({"held_back",
                       target + ", where the chance of yielding is " + chance_text(at_target) +
                           "; the suggested torque is held back to 1 in 100.",
                       false});
  if (c.suggested_limit == "thread" || c.suggested_limit == "head")
    notices.push_back({"held_back",
                       target + "; the suggested torque is held back to what the " +
                           (c.suggested_limit == "head" ? "head" : "thread that holds the bolt") +
                           " bears in 19 of 20 cases.",
                       false});
  if (c.suggested_limit == "key")
    notices.push_back({"held_back",
                       target + "; the suggested torque is held back to the torque to which its hexagon key is tested.",
                       false});
  if (c.suggested_limit == "worst case")
    notices.push_back({"held_back",
                       target + "; as friction is unknown, the suggested torque is held back to where the worst case "
                                "just yields. Threads with paste or wax need less still.",
                       false});
}

/// The warnings that depend on the torque, in their order: a likely slip of the pen, a correction for the specified
/// condition, a class that the torque suggests, and the one that goes with the verdict. nullptr for those that there are
/// not.
inline std::array<const char*, 4> torque_codes(const ClampCandidate& c, bool torque_given) {
  const double typical = c.typical_torque.nominal.si;
  const bool slip = torque_given && (c.torque.si > 8 * typical || c.torque.si < typical / 20);
  const bool corrected = c.corrected_torque && std::fabs(c.corrected_torque->si / c.torque.si - 1) >= 0.02;
  const bool suggests = c.class_assumed && torque_given && c.chance_of_yield > accepted_chance_of_yield;
  const char* of_verdict = nullptr;
  if (c.chance_of_breaking > accepted_chance || head_breaks_off(c))
    of_verdict = "may_break";
  else if (c.chance_of_yield >= 0.5)
    of_verdict = "stretched";
  else if (c.verdict == Verdict::may_yield || c.chance_of_yield > accepted_chance_of_yield * (1 + 1e-6))
    of_verdict = "may_have_yielded";
  else if (c.verdict == Verdict::may_be_slack || c.verdict == Verdict::slack)
    of_verdict = "may_be_slack";
  return {slip ? "unusual_torque" : nullptr, corrected ? "corrected_torque" : nullptr,
          suggests ? "torque_suggests_class" : nullptr, of_verdict};
}

/// \param code  one of `torque_codes`
template <class Units = ShopUnits>
std::string text_of_code(std::string_view code, const ClampCandidate& c, const ClampJob& job, const Units& units = {}) {
  if (code == "unusual_torque") {
    const double ratio = c.torque.si / c.typical_torque.nominal.si;
    return units.typed(c.torque) + " is " +
           (ratio > 1 ? "about " + number_text(ratio, 2) + " times"
                      : "only about 1/" + number_text(1 / ratio, 2) + " of") +
           " what " + c.thread + (c.class_assumed ? "" : " " + c.property_class) + " is typically tightened to, " +
           units.text(c.typical_torque.nominal) + ": check the figure and its unit before you tighten.";
  }
  if (code == "corrected_torque") {
    const std::string other = units.text(*c.corrected_torque);
    if (!job.torque) return "On '" + job.specified_condition + "' the same clamp load needs " + other + ".";
    std::string text =
        "The torque is for '" + job.specified_condition + "': for the same clamp load set " + other + " here.";
    if (c.corrected_torque->si > c.suggested_torque.si)
      text += " The suggested torque, " + units.settable(c.suggested_torque) + ", is lower.";
    return text;
  }
  if (code == "torque_suggests_class") {
    const bool by_tool = job.thread.empty() && job.socket;
    const std::string on = by_tool ? (job.inner_hexagon ? "a key of " : "") + units.typed(*job.socket) +
                                         (job.inner_hexagon ? "" : " across flats")
                                   : c.thread;
    const std::string start = units.typed(c.torque) + " on " + on;
    // The class that bears the torque, for a weaker one may well be on the head. Where friction is unknown none may bear it
    // in the worst case; then what is typical counts.
    const std::string& suggested = c.least_class.empty() && !c.by_condition.empty() ? c.typical_class : c.least_class;
    if (suggested.empty()) return start + " is more than any class of ISO 898-1 bears: look for another thread.";
    return start + " suggests " + (by_tool ? c.thread + ", " : "") + "class " + suggested +
           " or above: look for the mark before you tighten.";
  }
  if (code == "may_break")
    return "The bolt may break while it is tightened, and parts may fly along its axis: do not use this torque. "
           "Replace "
           "every bolt that was tightened to it.";
  if (code == "stretched")
    return "A bolt tightened to this torque is likely to have yielded: do not use it again. Use this torque only if "
           "the maker specifies yield tightening, and then with a new bolt each time.";
  if (code == "may_have_yielded")
    return "A bolt that was tightened to this torque may have yielded: compare its length with that of a new one, and "
           "replace it if it is longer. A torque-to-yield bolt never goes back in.";
  return std::string("The clamp load may be as low as ") + PlainNumber::fixed(100 * c.proof_share.low, 0).c_str() +
         " % of the proof load; better known friction narrows the band.";
}

}  // namespace tauten::TAUTEN_ABI::detail
