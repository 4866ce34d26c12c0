// The main question: what clamp load does this torque leave, and its inverse. From socket, torque and thread condition
// to verdict.
#pragma once

#include <algorithm>

#include "tauten/base/caution.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/tightening/clamp_load.hpp"
#include "tauten/tightening/clamp_suspects.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"

namespace tauten {

namespace detail {

/// The share of the proof load that is aimed at; three quarters suit joints that are taken apart again (Shigley,
/// eq. (8-31)).
inline double share_of(const ClampJob& job) { return is_given(job.share) ? job.share : 0.75; }

/// The pair of faces that slides at each corner: the one with the least friction torque.
inline Outcome<ClampBolt> bolt_of(const ClampJob& job, const Suspect& s, const Conditions& c) {
  const Outcome<PropertyClass> strength =
      try_property_class(job.property_class.empty() ? unmarked_class : job.property_class, s.thread.diameter);
  if (!strength) return strength.error();
  const Outcome<RatedLoad> proof = try_proof_load(s.thread, strength->name);
  if (!proof) return proof.error();
  const double first = s.bearing_diameter;
  ClampBolt bolt{s.thread,        *strength,
                 proof->value.si, c.mu_G,
                 c.mu_K,          {first, first, first},
                 job.torsion,     job.prevailing_torque.si};
  for (const Face& face : job.more_faces) {
    const Outcome<ThreadCondition> between = try_thread_condition(face.condition);
    if (!between) return between.error();
    const double diameter = face.bearing_diameter.si;
    if (const auto fine = inside("bearing_diameter", diameter, Dim::length, {0, 0.5, true}); !fine) return fine.error();
    const auto slides = [&](double& mu, double& at, double other) {
      if (other * diameter < mu * at) mu = other, at = diameter;
    };
    slides(bolt.mu_K.low, bolt.D_Km.low, between->bearing_friction.low);
    slides(bolt.mu_K.nominal, bolt.D_Km.nominal, between->bearing_friction.nominal);
    slides(bolt.mu_K.high, bolt.D_Km.high, between->bearing_friction.high);
  }
  return bolt;
}

/// What is to be said of a bolt, however it is tightened.
inline void add_bolt_notices(std::vector<Notice>& notices, const Suspect& s, const ClampBolt& bolt, bool class_assumed,
                             const std::string& condition) {
  if (class_assumed)
    notices.push_back({"unmarked_head",
                       std::string("No class is given. A steel head without a mark must be taken for ") +
                           unmarked_class + "; read the head, the figures for strength depend on it.",
                       true});
  if (bolt.strength.stainless && condition != "stainless-paste")
    notices.push_back({"galling",
                       "Stainless threads gall: turn slowly, use paste, and never force a nut that starts to bind.",
                       false});
  if (s.head_assumed)
    notices.push_back({"head_assumed",
                       "No head is given: the bearing face is taken to be that of a hexagon head after ISO 4014 or "
                       "ISO 4017. Name the head's standard if it is another.",
                       true});
  if (s.bearing_estimated)
    notices.push_back(
        {"bearing_estimated",
         "No standard in the tables gives the bearing face of this head; it is estimated from its width.", true});
  if (bolt.strength.seen == Seen::memory)
    notices.push_back(
        {"class_from_memory", "The strengths of this class are remembered, not read in the standard.", true});
}

inline void add_notices(ClampCandidate& c, const Suspect& s, const ClampBolt& bolt, const ClampJob& job) {
  add_bolt_notices(c.notices, s, bolt, c.class_assumed, job.condition);
  if (c.yield_utilisation.high > 1)
    c.notices.push_back({"stretched",
                         "A bolt tightened past yield has been used up: replace it and never tighten it to this torque "
                         "again, unless its maker specifies torque to yield.",
                         false});
  if (c.limited_by_strength)
    c.notices.push_back({"limited_by_strength",
                         "The bolt may twist off before this torque is reached. Then no clamp load is left, so none "
                         "is given.",
                         false});
  if (!is_given(c.right_torque.si))
    c.notices.push_back(
        {"no_right_torque",
         "No torque is right here: what prevailing and shank torque take leaves no room between a slack "
         "bolt and one that yields.",
         false});
  if (c.proof_share.nominal >= useful_proof_share && c.proof_share.low < useful_proof_share && !c.limited_by_strength) {
    c.notices.push_back({"may_be_slack",
                         std::string("The clamp load may be as low as ") +
                             PlainNumber::fixed(100 * c.proof_share.low, 0).c_str() +
                             " % of the proof load; better known friction narrows the band.",
                         false});
  }
}

/// Writes down what changes with the torque but for words: loads, shares and verdict.
/// \param torque  band of the torque that reaches thread and bearing face
inline void put_figures(ClampCandidate& out, const ClampBolt& bolt, const Band<double>& torque) {
  out.yield_utilisation = utilisation_band(bolt, torque, bolt.strength.yield_strength.si, bolt.torsion);
  out.clamp_load = load_left(bolt, torque);
  out.limited_by_strength = !is_given(out.clamp_load.nominal.si);
  out.proof_share = {out.clamp_load.low.si / bolt.proof_load, out.clamp_load.nominal.si / bolt.proof_load,
                     out.clamp_load.high.si / bolt.proof_load};
  out.verdict = verdict_of(out);
}

/// The lowest class of ISO 898-1 that stands the torque; "" if none does.
inline const char* least_class(const ClampBolt& bolt, const Band<double>& torque) {
  for (const char* name : {"4.6", "5.6", "4.8", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"}) {
    const Outcome<PropertyClass> other = try_property_class(name, bolt.thread.diameter);
    if (other && utilisation_band(bolt, torque, other->yield_strength.si, bolt.torsion).high <= usable_yield_share)
      return name;
  }
  return "";
}

/// The wrench setting that would be right.
inline double right_setting_of(const ClampJob& job, const ClampBolt& bolt, const Conditions& c) {
  return right_setting(
      bolt, share_of(job) * bolt.proof_load, [&](double setting) { return c.accuracy_at(setting); }, c.lost);
}

/// Everything about one fastener at one wrench setting.
inline Outcome<ClampCandidate> candidate_of(const ClampJob& job, const Suspect& s, const Conditions& c,
                                            double setting) {
  const Outcome<ClampBolt> made = bolt_of(job, s, c);
  if (!made) return made.error();
  const ClampBolt& bolt = *made;
  const Band<double> torque = effective_torque(setting, c.accuracy_at(setting), c.lost);

  ClampCandidate out;
  out.thread = s.thread.name();
  out.head = s.heads;
  out.look = s.look;
  out.commonness = s.commonness;
  out.socket = s.socket;
  out.property_class = bolt.strength.name;
  out.class_assumed = job.property_class.empty();
  out.torque = Torque(setting);
  out.wrench_accuracy = c.accuracy_at(setting);
  out.proof_load = Force(bolt.proof_load);
  const auto factor = [&](double mu_g, double mu_k, double bearing) {
    return nut_factor.si(s.thread.diameter.si, bolt.P(), bolt.d_2(), mu_g, mu_k, bearing);
  };
  out.nut_factor.low = factor(bolt.mu_G.low, bolt.mu_K.low, bolt.D_Km.low);
  out.nut_factor.high = factor(bolt.mu_G.high, bolt.mu_K.high, bolt.D_Km.high);
  out.nut_factor.nominal = step(out.steps, "at the usual friction", nut_factor, s.thread.diameter.si, bolt.P(),
                                bolt.d_2(), bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal);
  const double load = step(out.steps, "at the usual friction", preload_from_torque, torque.nominal, bolt.P(),
                           bolt.d_2(), bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal);
  const double twist =
      step(out.steps, "what reaches the shank", thread_torque, load, bolt.P(), bolt.d_2(), bolt.mu_G.nominal);
  const double d_s = s.thread.stress_diameter().si;
  const double shank = twist + job.prevailing_torque.si;
  if (job.torsion == Torsion::plastic)
    step(out.steps, "", yield_utilisation, load, shank, d_s, bolt.strength.yield_strength.si);
  else
    step(out.steps, "", yield_utilisation_elastic, load, shank, d_s, bolt.strength.yield_strength.si);
  put_figures(out, bolt, torque);
  const double right = right_setting_of(job, bolt, c);
  out.right_torque = Torque(right);
  out.right_clamp_load = load_band(bolt, effective_torque(right, c.accuracy_at(right), c.lost));
  out.least_class = least_class(bolt, torque);
  out.meaning = meaning_of(out.verdict);
  add_notices(out, s, bolt, job);
  return out;
}

/// Warnings that hold whatever fastener it is.
/// \param torque_given  false if the torque is worked out for this very condition
inline std::vector<Notice> notices_of(const ClampJob& job, const Conditions& c, bool torque_given) {
  std::vector<Notice> out;
  const auto lever_ratio = [&](const ThreadCondition& meant) {
    // Nut factors of the usual M10 bolt stand for all: the ratio hardly depends on the size.
    const auto factor = [](double mu_g, double mu_k) {
      return nut_factor.si(10e-3, 1.5e-3, 9.026e-3, mu_g, mu_k, 12.8e-3);
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
    if (const Outcome<ThreadCondition> meant = try_thread_condition(job.specified_condition))
      say_ratio(*meant, "The torque is for threads '" + meant->title + "', but these " + here + ":");
  } else if (c.thread.lubricated && !c.thread_measured) {
    if (const Outcome<ThreadCondition> meant = try_thread_condition("dry"))
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
                 "The clamp load is the one right after tightening: surfaces settle and take some of it away. The "
                 "pressure under head and nut is not checked.",
                 false});
  for (const Caution& caution : {cautions::line_of_slip, cautions::eye_protection, cautions::no_pipe,
                                 cautions::replace_used_up, cautions::no_release})
    out.push_back(caution);
  return out;
}

/// \return true if even a weak wrench at this setting stretches the bolt
inline bool something_is_left(double setting, const Conditions& c) {
  return effective_torque(setting, c.accuracy_at(setting), c.lost).low > 0;
}

/// The error for a setting that may stretch nothing.
/// \param what  how the setting is called
inline Error nothing_left(const char* argument, const char* what, double setting, const Conditions& c) {
  const std::string start = std::string(what) == argument ? "" : std::string(argument) + " is too small: ";
  const double accuracy = c.accuracy_at(setting);
  const std::string text = start + what + " is " + number_text(setting) + " N.m, which a wrench good to " +
                           number_text(100 * accuracy, 3) + " % may leave at " + number_text(setting * (1 - accuracy)) +
                           " N.m, but prevailing and shank torque take " + number_text(c.lost) +
                           " N.m; it may be that nothing is left to stretch the bolt";
  return {argument, text.c_str()};
}

/// Common part of both questions: `setting(suspect, conditions)` gives the wrench setting of a candidate.
template <class Setting>
Outcome<Clamp> answer(const ClampJob& job, bool torque_given, Setting setting) {
  const Outcome<Conditions> c = conditions_of(job);
  if (!c) return c.error();
  if (!job.specified_condition.empty())
    if (const auto meant = try_thread_condition(job.specified_condition); !meant) return meant.error();
  if (const auto fine = inside("share", share_of(job), Dim::number, {0, 1, true}); !fine) return fine.error();
  const Outcome<std::vector<Suspect>> suspects = suspects_of(job);
  if (!suspects) return suspects.error();
  Clamp out{job.name, c->mu_G, c->mu_K, 0, {}, notices_of(job, *c, torque_given)};
  std::optional<Error> first_error;
  for (const Suspect& s : *suspects) {
    const Outcome<double> torque = setting(s, *c);
    const Outcome<ClampCandidate> candidate =
        torque ? candidate_of(job, s, *c, *torque) : Outcome<ClampCandidate>(torque.error());
    if (candidate)
      out.candidates.push_back(*candidate);
    else if (!first_error)
      first_error = candidate.error();
  }
  // A socket may fit sizes for which the class is not made; those fall away as long as one is left.
  if (out.candidates.empty()) return *first_error;
  out.wrench_accuracy = out.candidates.front().wrench_accuracy;
  return out;
}

}  // namespace detail

/// What clamp load does this torque leave, in every fastener that it can be?
/// \param job  socket or thread, torque, condition, and whatever else is known
/// \return candidates with bands of nut factor, clamp load and yield utilisation, a verdict, and the right torque; or an
///         error that names the argument at fault. Linear torque formula (VDI 2230, ISO 16047), friction bands of
///         `thread_condition`; low and high combine all that lowers and all that raises the load, so the band is wider
///         than what is seen in most joints. The load is the one right after tightening, before surfaces settle; the
///         pressure under head and nut is not checked.
inline Outcome<Clamp> try_clamp(const ClampJob& job) {
  const double torque = job.torque.si;
  if (const auto fine = detail::inside("torque", torque, Dim::torque, {0, 1e5, true}); !fine) return fine.error();
  return detail::answer(job, true, [&](const detail::Suspect&, const detail::Conditions& c) -> Outcome<double> {
    if (detail::something_is_left(torque, c)) return torque;
    return detail::nothing_left("torque", "torque", torque, c);
  });
}

/// \copydoc try_clamp
/// \throws Error  in place of returning one
inline Clamp clamp(const ClampJob& job) { return try_clamp(job).value(); }

/// Which wrench setting leaves the wanted clamp load at the usual friction?
/// \param job  as for `clamp`, with `clamp_load` or `share` in place of `torque`. If neither is given, the setting is the
///             right torque: three quarters of the proof load, held back so that the worst corner of the band stays
///             within nine tenths of yield.
/// \return as `clamp` at that setting. A setting for a wish is not held back: look at the verdict and `right_torque`.
///         An error too where prevailing and shank torque leave no torque that surely stretches the bolt.
inline Outcome<Clamp> try_torque_for(const ClampJob& job) {
  const double wanted = job.clamp_load.si;
  if (wanted != 0)
    if (const auto fine = detail::inside("clamp_load", wanted, Dim::force, {0, 1e7, true}); !fine) return fine.error();
  const bool a_wish = wanted != 0 || detail::is_given(job.share);
  return detail::answer(job, false, [&](const detail::Suspect& s, const detail::Conditions& c) -> Outcome<double> {
    const Outcome<detail::ClampBolt> bolt = detail::bolt_of(job, s, c);
    if (!bolt) return bolt.error();
    if (!a_wish) {
      const double right = detail::right_setting_of(job, *bolt, c);
      if (detail::is_given(right)) return right;
      const std::string lost = job.prevailing_torque.si > 0 ? "prevailing_torque" : "shank_torque";
      return Error(lost.c_str(),
                   (lost + " leaves no room between a slack bolt and one that yields, so that no torque " +
                    "is right; take another locking element or a stronger bolt")
                       .c_str());
    }
    const double load = wanted != 0 ? wanted : detail::share_of(job) * bolt->proof_load;
    const double setting = detail::plain_setting(*bolt, load, c.lost);
    if (detail::something_is_left(setting, c)) return setting;
    return detail::nothing_left(wanted != 0 ? "clamp_load" : "share", "the torque for it", setting, c);
  });
}

/// \copydoc try_torque_for
/// \throws Error  in place of returning one
inline Clamp torque_for(const ClampJob& job) { return try_torque_for(job).value(); }

}  // namespace tauten
