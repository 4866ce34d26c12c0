// The main question: what clamp load does this torque leave, and its inverse. From socket, torque and thread condition
// to verdict.
#pragma once

#include <algorithm>

#include "tauten/base/number_text.hpp"
#include "tauten/tightening/clamp_bolt.hpp"
#include "tauten/tightening/clamp_derivation.hpp"
#include "tauten/tightening/clamp_steps.hpp"

namespace tauten {

namespace detail {

inline double share_of(const ClampJob& job) { return is_given(job.share) ? job.share : default_proof_share; }

inline Outcome<ClampBolt> bolt_of(const ClampJob& job, const Suspect& s, const Conditions& c) {
  return bolt_of(job, s.thread, s.bearing_diameter, c);
}

inline void add_notices(ClampCandidate& c, const Suspect& s, const ClampBolt& bolt, const ClampJob& job) {
  add_bolt_notices(c.notices, bolt, {c.class_assumed, s.head_assumed, s.bearing_estimated}, job.condition);
  if (c.yield_utilisation.high > 1)
    c.notices.push_back({"stretched",
                         "Replace a bolt tightened past yield. Use this torque only if the maker specifies yield "
                         "tightening, and then with a new bolt each time.",
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
  out.tensile_utilisation = tensile_band(bolt, torque);
  out.clamp_load = load_left(bolt, torque, out.tensile_utilisation);
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
  const Band<double> torque = effective_band(setting, c.accuracy_at(setting), c.lost);

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
  out.nut_factor.nominal = factor(bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal);
  put_figures(out, bolt, torque);
  const double right = right_setting_of(job, bolt, c);
  out.right_torque = Torque(right);
  out.right_clamp_load = load_band(bolt, effective_band(right, c.accuracy_at(right), c.lost));
  out.least_class = least_class(bolt, torque);
  out.meaning = meaning_of(out.verdict);
  add_notices(out, s, bolt, job);
  // Without a torque in the job the setting was worked out for a load.
  const double wanted = job.torque.si > 0       ? 0
                        : job.clamp_load.si > 0 ? job.clamp_load.si
                                                : share_of(job) * bolt.proof_load;
  out.given = clamp_given(job, s, c, bolt, setting, wanted);
  ClampSteps steps(job, s, c, bolt);
  if (wanted > 0) steps.wish(wanted, setting);
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

/// Common part of both questions: `setting(suspect, conditions)` gives the wrench setting of a candidate.
template <class Setting>
Outcome<Clamp> answer(const ClampJob& job, bool torque_given, Setting setting) {
  const Outcome<Conditions> c = conditions_of(job);
  if (!c) return c.error();
  if (!job.specified_condition.empty())
    if (const auto meant = try_thread_condition(job.specified_condition); !meant) return meant.error();
  if (const auto error = range_error("share", share_of(job), Dim::number, {0, 1, true})) return *error;
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
  if (const auto error = detail::range_error("torque", torque, Dim::torque, {0, 1e5, true})) return *error;
  return detail::answer(job, true, [&](const detail::Suspect&, const detail::Conditions& c) -> Outcome<double> {
    if (detail::something_is_left(torque, c)) return torque;
    return detail::nothing_left("torque", "torque", torque, c);
  });
}

/// \copydoc try_clamp
/// \throws Error  in place of returning one
inline Clamp clamp(const ClampJob& job) { return try_clamp(job).value(); }

/// Which wrench setting leaves the wanted clamp load at the typical friction?
/// \param job  as for `clamp`, with `clamp_load` or `share` in place of `torque`. If neither is given, the setting is the
///             right torque: three quarters of the proof load, held back so that the worst corner of the band stays
///             within nine tenths of yield.
/// \return as `clamp` at that setting. A setting for a wish is not held back: look at the verdict and `right_torque`.
///         An error too where prevailing and shank torque leave no torque that surely stretches the bolt.
inline Outcome<Clamp> try_torque_for(const ClampJob& job) {
  const double wanted = job.clamp_load.si;
  if (wanted != 0)
    if (const auto error = detail::range_error("clamp_load", wanted, Dim::force, {0, 1e7, true})) return *error;
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
