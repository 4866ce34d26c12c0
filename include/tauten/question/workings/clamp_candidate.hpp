// A clamp answer, fastener by fastener: from socket, torque and thread condition to verdict.
#pragma once

#include <algorithm>
#include <utility>
#include <vector>

#include "tauten/base/number_text.hpp"
#include "tauten/question/workings/clamp_bearing.hpp"
#include "tauten/question/workings/clamp_notices.hpp"
#include "tauten/question/workings/clamp_steps.hpp"
#include "tauten/question/workings/key_screws.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline double share_of(const ClampJob& job) { return job.share.value_or(default_proof_share); }

inline Outcome<ClampBolt> bolt_of(const ClampJob& job, const Suspect& s, const Conditions& c) {
  return bolt_of(job, s.thread, s.bearing_diameter, c);
}

/// What such a fastener is tightened to, class by class.
class TypicalTorques {
 public:
  TypicalTorques(const ClampJob& job, const Suspect& s, const Conditions& c) {
    ClampJob of = job;
    for (const char* name : {"4.6", "5.6", "8.8", "10.9", "12.9"}) {
      if (job.property_class.empty()) of.property_class = name;
      const Outcome<ClampBolt> bolt = bolt_of(of, s, c);
      if (!bolt) continue;
      const double target = plain_setting(*bolt, default_proof_share * bolt->proof_load, c.lost);
      targets_.push_back({name, target});
      if (!job.property_class.empty()) break;
    }
  }

  /// \return what is usual; absent if no class is made in this size
  Band<Torque> band() const {
    if (targets_.empty()) return {Torque(absent), Torque(absent), Torque(absent)};
    return {Torque(least * targets_.front().second), Torque(targets_[targets_.size() / 2].second),
            Torque(most * targets_.back().second)};
  }
  /// \return the lowest class for which a torque is usual; "" if there is none
  const char* lowest_class(double torque) const {
    for (const auto& [name, target] : targets_)
      if (torque <= most * target) return name;
    return "";
  }
  bool holds(double torque) const {
    const Band<Torque> usual = band();
    return torque >= usual.low.si && torque <= usual.high.si;
  }

 private:
  // Gaskets and soft parts get less; dry and plated threads, and tightening towards yield, more. Judgement, no source.
  static constexpr double least = 1.0 / 3;
  static constexpr double most = 1.5;
  std::vector<std::pair<const char*, double>> targets_;
};

/// Writes down what changes with the torque but for words: loads, chances, shares and verdict.
inline void put_figures(ClampCandidate& out, const ClampBolt& bolt, const BoltChance& chance, const Conditions& c,
                        double setting, WantedFigures wanted = {}) {
  put_chances(out, bolt, chance, {setting, c.accuracy_at(setting)}, c.lost, wanted);
  out.verdict = verdict_of(out, bolt.strip, c.friction_unknown());
  if (out.verdict == Verdict::strips || out.verdict == Verdict::breaks) {
    out.clamp_load = out.worst_case = absent_force();
    out.chance_of_slack = absent;
    out.proof_share = {absent, absent, absent};
  }
}

/// The lowest class of ISO 898-1 that stands the torque; "" if none does.
inline const char* least_class(const ClampBolt& bolt, const BoltChance& chance, const Conditions& c, double setting) {
  const WrenchSpread wrench{setting, c.accuracy_at(setting)};
  const Band<double> torque = effective_band(setting, wrench.accuracy, c.lost);
  for (const char* name : {"4.6", "5.6", "4.8", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"}) {
    const Outcome<PropertyClass> other = try_property_class(name, bolt.thread.diameter);
    if (!other) continue;
    const double yield = other->yield_strength.si;
    if (c.friction_unknown() ? worst_utilisation(bolt, torque.high, yield, bolt.torsion) <= 1
                             : chance.of_yield(wrench, yield) <= accepted_chance_of_yield)
      return name;
  }
  return "";
}

/// \param key  torque to which the key is tested, where that counts
inline Suggestion suggestion_of(const ClampJob& job, const ClampBolt& bolt, const BoltChance& chance,
                                const Conditions& c, double key) {
  Suggestion found = suggestion_of(
      bolt, chance, share_of(job) * bolt.proof_load, [&](double setting) { return c.accuracy_at(setting); }, c.lost,
      c.friction_unknown());
  if (found.setting > key) found.setting = key, found.limit = "key";
  if (!std::isfinite(bolt.strip.low) || !is_given(found.setting)) return found;
  // Nor more than the thread that holds the bolt, or its head, bears in 19 of 20 cases. The load grows with the torque that is not lost;
  // a second step, since a wrench may be less accurate at a small setting.
  for (int i = 0; i < 3; ++i) {
    ClampCandidate there;
    put_chances(there, bolt, chance, {found.setting, c.accuracy_at(found.setting)}, c.lost, {true, false});
    if (there.clamp_load.high.si <= bolt.strip.low * (1 + 1e-9)) break;
    found.setting = c.lost + (found.setting - c.lost) * (bolt.strip.low / there.clamp_load.high.si);
    found.limit = bolt.strip.is_head ? "head" : "thread";
  }
  if (!(effective_band(found.setting, c.accuracy_at(found.setting), c.lost).low > 0)) found.setting = absent;
  return found;
}

/// The same fastener at the same setting with what is likely to be on its threads, for whoever does not know it.
inline std::vector<ConditionCase> cases_of(const ClampJob& job, const Suspect& s, const ClampBolt& bolt,
                                           double setting) {
  std::vector<ConditionCase> out;
  const bool stainless = bolt.strength.stainless;
  for (const char* condition : {stainless ? "stainless" : "dry", stainless ? "stainless-oiled" : "oiled",
                                stainless ? "stainless-paste" : "moly-paste"}) {
    ClampJob known = job;
    for (std::string* on : {&known.condition, &known.face_condition})
      if (const auto meant = try_thread_condition(*on); meant && meant->key == "unknown") *on = condition;
    const Outcome<Conditions> c = conditions_of(known);
    const Outcome<ClampBolt> made = c ? held_bolt_of(known, s, *c) : Outcome<ClampBolt>(c.error());
    if (!made) continue;
    const BoltChance chance(*made, c->lost);
    ClampCandidate there;
    put_figures(there, *made, chance, *c, setting, {true, false});
    out.push_back({condition, there.clamp_load, there.chance_of_yield, there.chance_of_breaking,
                   Torque(suggestion_of(known, *made, chance, *c, key_bound(s)).setting), there.verdict});
  }
  return out;
}

/// Torque here over torque under the specified condition, for the same clamp load at nominal friction; `absent` if no
/// condition is specified.
inline double condition_ratio(const ClampJob& job, const Suspect& s, const ClampBolt& bolt) {
  if (job.specified_condition.empty()) return absent;
  ClampJob meant = job;
  meant.condition = job.specified_condition;
  meant.face_condition = "";
  meant.thread_friction.reset(), meant.bearing_friction.reset();
  const Outcome<Conditions> c = conditions_of(meant);
  const Outcome<ClampBolt> there = c ? bolt_of(meant, s, *c) : Outcome<ClampBolt>(c.error());
  return there ? plain_setting(bolt, 1, 0) / plain_setting(*there, 1, 0) : absent;
}

/// \param ratio  of `condition_ratio`, or its inverse to go the other way
inline std::optional<Torque> corrected_setting(double setting, double lost, double ratio) {
  if (!is_given(ratio)) return std::nullopt;
  return Torque((setting - lost) * ratio + lost);
}

/// A fastener that fits, under its conditions: what no torque changes is worked out once.
class Fastener {
 public:
  static Outcome<Fastener> try_make(const ClampJob& job, const Suspect& s, const Conditions& c) {
    const Outcome<ClampBolt> bolt = held_bolt_of(job, s, c);
    if (!bolt) return bolt.error();
    return Fastener(job, s, c, *bolt);
  }

  /// The answer as far as no torque changes it.
  const ClampCandidate& fixed() const { return fixed_; }
  const ClampBolt& bolt() const { return bolt_; }
  const Suspect& suspect() const { return suspect_; }
  /// \return true if such a fastener is typically tightened to this torque, and is not a rare one
  bool is_likely_at(double setting) const { return suspect_.commonness < 4 && typical_.holds(setting); }

  /// Writes down what the torque changes; notices, explanation and what may be on the threads apart.
  void put(double setting, ClampCandidate& out, const WantedFigures& wanted = {}) const {
    out.torque = Torque(setting);
    out.wrench_accuracy = conditions_.accuracy_at(setting);
    out.corrected_torque = corrected_setting(setting, conditions_.lost, ratio_);
    put_figures(out, bolt_, chance_, conditions_, setting, wanted);
    if (wanted.least_class) out.least_class = least_class(bolt_, chance_, conditions_, setting);
    if (out.class_assumed) out.typical_class = typical_.lowest_class(setting);
    if (wanted.meaning) out.meaning = meaning_of(out);
    if (wanted.summary) out.summary = summary_of(out, conditions_);
  }
  /// Works out now what every setting of a wrench needs; for tables.
  void prepare(double accuracy) { chance_.prepare(accuracy); }

 private:
  Fastener(const ClampJob& job, const Suspect& s, const Conditions& c, const ClampBolt& bolt)
      : suspect_(s), conditions_(c), bolt_(bolt), chance_(bolt, c.lost), typical_(job, s, c) {
    fixed_.thread = s.thread.name();
    fixed_.head = s.heads;
    fixed_.look = s.look;
    fixed_.commonness = s.commonness;
    fixed_.socket = s.socket;
    fixed_.property_class = bolt.strength.name;
    fixed_.class_assumed = job.property_class.empty();
    fixed_.proof_load = Force(bolt.proof_load);
    const auto factor = [&](double mu_g, double mu_k, double bearing) {
      return nut_factor_exact.si(s.thread.diameter.si, bolt.P(), bolt.d_2(), mu_g, mu_k, bearing);
    };
    fixed_.nut_factor.low = factor(bolt.mu_G.low, bolt.mu_K.low, bolt.D_Km.low);
    fixed_.nut_factor.high = factor(bolt.mu_G.high, bolt.mu_K.high, bolt.D_Km.high);
    fixed_.nut_factor.nominal = factor(bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal);
    const Suggestion suggestion = suggestion_of(job, bolt, chance_, c, key_bound(s));
    fixed_.suggested_torque = Torque(suggestion.setting);
    fixed_.suggested_limit = suggestion.limit;
    fixed_.target_torque = Torque(suggestion.target);
    ClampCandidate there;
    if (is_given(suggestion.setting)) put_figures(there, bolt, chance_, c, suggestion.setting, {true, false});
    fixed_.suggested_clamp_load = is_given(suggestion.setting) ? there.clamp_load : absent_force();
    fixed_.typical_torque = typical_.band();
    const double ratio = condition_ratio(job, s, bolt);
    ratio_ = job.torque ? ratio : 1 / ratio;
    const double at_target = chance_.of_yield({suggestion.target, c.accuracy_at(suggestion.target)});
    add_fastener_notices(fixed_.notices, fixed_, s, bolt, c, job, at_target);
  }

  Suspect suspect_;
  Conditions conditions_;
  ClampBolt bolt_;
  BoltChance chance_;
  TypicalTorques typical_;
  ClampCandidate fixed_;
  double ratio_;  ///< for the corrected torque
};

/// \return the fasteners that fit a job, the most common first; a class that is not made in a size is none
inline Outcome<std::vector<Fastener>> fasteners_of(const ClampJob& job, const Conditions& c) {
  const Outcome<std::vector<Suspect>> suspects = suspects_of(job);
  if (!suspects) return suspects.error();
  std::vector<Fastener> made;
  std::optional<Error> first_error;
  for (const Suspect& s : *suspects) {
    const Outcome<Fastener> one = Fastener::try_make(job, s, c);
    if (one)
      made.push_back(*one);
    else if (!first_error)
      first_error = one.error();
  }
  if (made.empty()) return *first_error;
  return made;
}

/// The same, the most likely first: those for which the torque is typical, unless they are rare, then the others.
inline Outcome<std::vector<Fastener>> ranked_fasteners(const ClampJob& job, const Conditions& c) {
  Outcome<std::vector<Fastener>> all = fasteners_of(job, c);
  if (!all || !job.torque || !job.thread.empty()) return all;
  std::vector<Fastener> ranked, others;
  for (const Fastener& one : *all) (one.is_likely_at(job.torque->si) ? ranked : others).push_back(one);
  ranked.insert(ranked.end(), others.begin(), others.end());
  return ranked;
}

/// Everything about one fastener at one wrench setting.
inline Outcome<ClampCandidate> candidate_of(const ClampJob& job, const Fastener& fastener, const Conditions& c,
                                            double setting) {
  const Suspect& s = fastener.suspect();
  const ClampBolt& bolt = fastener.bolt();
  ClampCandidate out = fastener.fixed();
  fastener.put(setting, out);
  if (c.friction_unknown()) out.by_condition = cases_of(job, s, bolt, setting);
  for (const char* code : torque_codes(out, job.torque.has_value()))
    if (code) out.notices.push_back({code, text_of_code(code, out, job), false});
  if (setting > key_bound(s))
    out.notices.push_back({"drive_overloaded",
                           "The torque exceeds the " + shop_text(Torque(key_bound(s))) + " to which a hexagon key of " +
                               shop_text(s.socket) + " is tested: key or recess may give way and the hand slip.",
                           false});
  if (names_parts(job))
    if (auto error = add_parts(out, job, s, bolt)) return *error;
  // Without a torque in the job the setting was worked out for a load.
  const double wanted = job.torque ? 0 : job.clamp_load ? job.clamp_load->si : share_of(job) * bolt.proof_load;
  out.given = clamp_given(job, s, c, bolt, setting, wanted);
  ClampSteps steps(job, s, c, bolt);
  if (wanted > 0) steps.wish(wanted, setting, out.suggested_limit);
  out.steps = std::move(steps).corners(setting);
  return out;
}

/// \return true if even a weak wrench at this setting stretches the bolt
inline bool something_is_left(double setting, const Conditions& c) {
  return effective_band(setting, c.accuracy_at(setting), c.lost).low > 0;
}

/// The error for a setting that may stretch nothing.
/// \param what  how the setting is called
inline Error nothing_left(const char* argument, const char* what, double setting, const Conditions& c) {
  const std::string start = std::string(what) == argument ? "" : std::string(argument) + " is too small: ";
  const double accuracy = c.accuracy_at(setting);
  const std::string text = start + what + " is " + number_text(setting) + " N.m, which a wrench good to " +
                           number_text(100 * accuracy, 3) + " % may leave at " +
                           number_text(effective_band(setting, accuracy, 0).low) +
                           " N.m, but prevailing and shank torque take " + number_text(c.lost) +
                           " N.m; it may be that nothing is left to stretch the bolt";
  return {argument, text.c_str()};
}

/// \return what else a hexagon key fits that does not clamp by a flat face, "" if nothing
inline std::string other_screws_text(Length key, const std::optional<Thread>& thread) {
  KeyScrews screws =
      key_screws(key, [&](const Thread& t) { return !thread || same_length(t.diameter.si, thread->diameter.si); });
  screws.button.clear();  // is among the answers
  const std::string all = key_screws_text(screws);
  if (all.empty()) return "";
  return "The same key fits " + all + ", for which these figures do not hold: look at the head first." +
         (screws.sunk.empty() ? ""
                              : " A countersunk head rubs in its cone on about 1.4 times the lever of a flat face, so "
                                "that a torque leaves less clamp load, and it bears about 80 % of the tensile load of "
                                "its class.") +
         (screws.set.empty() ? "" : " A set screw has no head and clamps nothing under one.");
}

/// Common part of both questions.
/// \param asked    what the answer has, and the job may not: "torque" or "clamp_load"
/// \param setting  fastener, conditions -> the wrench setting of a candidate
template <class Setting>
Outcome<Clamp> answer(const ClampJob& job, std::string_view asked, Setting setting) {
  if (const auto error = clamp_range_error(job)) return *error;
  if (asked == "torque" && job.torque)
    return Error("torque", "the torque is what is asked for; leave it out, or ask clamp");
  if (asked == "clamp_load" && job.clamp_load)
    return Error("clamp_load", "the clamp load is what is asked for; leave it out, or ask torque_for");
  if (const auto error = part_error(job)) return *error;
  const Outcome<Conditions> c = conditions_of(job);
  if (!c) return c.error();
  if (!job.specified_condition.empty())
    if (const auto meant = try_thread_condition(job.specified_condition); !meant) return meant.error();
  const Outcome<std::vector<Fastener>> fasteners = ranked_fasteners(job, *c);
  if (!fasteners) return fasteners.error();
  Clamp out{job.name, c->mu_G, c->mu_K, 0, {}, notices_of(job, *c, job.torque.has_value(), !job.seat_material.empty())};
  if (const std::string text = inch_text(job); !text.empty())
    out.notices.insert(out.notices.begin(), {"inch_tool", text, false});
  if (job.inner_hexagon && job.head.empty()) {
    std::optional<Thread> wanted;
    if (const Outcome<Thread> read = try_parse_thread(job.thread); !job.thread.empty() && read) wanted = *read;
    if (const std::string text = other_screws_text(*job.socket, wanted); !text.empty())
      out.notices.push_back({"other_screws", text, false});
  }
  std::optional<Error> first_error;
  for (const Fastener& fastener : *fasteners) {
    const Outcome<double> torque = setting(fastener, *c);
    const Outcome<ClampCandidate> candidate =
        torque ? candidate_of(job, fastener, *c, *torque) : Outcome<ClampCandidate>(torque.error());
    if (candidate)
      out.candidates.push_back(*candidate);
    else if (!first_error)
      first_error = candidate.error();
  }
  if (out.candidates.empty()) return *first_error;
  out.wrench_accuracy = out.candidates.front().wrench_accuracy;
  return out;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
