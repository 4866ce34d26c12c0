// What a clamp answer starts from, and how its figures came about: at nominal friction and in the worst cases.
#pragma once

#include <algorithm>

#include "tauten/base/source_text.hpp"
#include "tauten/question/workings/clamp_bolt.hpp"
#include "tauten/question/workings/clamp_load.hpp"
#include "tauten/question/workings/clamp_suspects.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// What the answer starts from, with what was assumed.
inline std::vector<Figure> clamp_given(const ClampJob& job, const Suspect& s, const Conditions& c,
                                       const ClampBolt& bolt, double setting, double wanted_load) {
  std::vector<Figure> out;
  if (job.socket) out.push_back(figure(job.inner_hexagon ? "hexagon_key" : "socket", *job.socket));
  out.push_back(figure_in_words("thread", s.thread.name(),
                                job.thread.empty() ? "fits the tool; others may fit it too" : "", job.thread.empty()));
  if (!s.heads.empty())
    out.push_back(figure_in_words("head", s.heads, job.head.empty() ? "the typical one" : "", job.head.empty()));
  out.push_back(figure("diameter", s.thread.diameter, "ISO 261"));
  out.push_back(figure("pitch", s.thread.pitch, "ISO 261"));
  const bool no_mark = job.property_class.empty();
  out.push_back(figure_in_words("property_class", bolt.strength.name, no_mark ? "no mark is known" : "", no_mark));
  const std::string of_class = source_text(bolt.strength.source);
  out.push_back(figure("yield_strength", bolt.strength.yield_strength, of_class));
  out.push_back(figure("tensile_strength", bolt.strength.tensile_strength, of_class));
  if (const auto proof = try_proof_load(s.thread, bolt.strength.name))
    out.push_back(figure("proof_load", proof->value, source_text(proof->source)));
  if (wanted_load > 0) {
    const bool by_load = job.clamp_load.has_value();
    if (!by_load)
      out.push_back(figure("share", job.share.value_or(default_proof_share), "of the proof load", !job.share, "%"));
    out.push_back(
        figure("preload", Force(wanted_load), by_load ? "wanted clamp load" : "wanted: share times proof load"));
  } else {
    out.push_back(figure("setting", Torque(setting), "of the wrench"));
  }
  const bool typical_wrench = !job.wrench_accuracy;
  out.push_back(figure("wrench_accuracy", c.accuracy_at(setting),
                       typical_wrench ? "ISO 6789-1, to either side" : "to either side", typical_wrench, "%"));
  const auto friction = [&](const char* name, const Band<double>& mu, bool measured, const ThreadCondition& on) {
    out.push_back(figure(name, mu, measured ? "measured" : on.title, !measured && on.key == "unknown"));
  };
  // Of several faces another one may slide at each end of friction, with a lesser coefficient at a greater diameter.
  const auto ends = [](const Band<double>& at) {
    return Band<double>{std::min({at.low, at.nominal, at.high}), at.nominal, std::max({at.low, at.nominal, at.high})};
  };
  friction("thread_friction", bolt.mu_G, job.thread_friction.has_value(), c.thread);
  friction("bearing_friction", ends(bolt.mu_K), job.bearing_friction.has_value(), c.face);
  if (!job.more_faces.empty()) {
    const Band<double> at = ends(bolt.D_Km);
    out.push_back(figure("bearing_diameter", Band<Length>{Length(at.low), Length(at.nominal), Length(at.high)},
                         "of the pair of faces with the lower friction"));
  } else if (!s.face) {
    out.push_back(figure("bearing_diameter", Length(s.bearing_diameter)));
  }
  if (s.face) {
    out.push_back(figure("outer_diameter", s.face->outer_diameter, "of the bearing face", s.face->estimated));
    out.push_back(figure("inner_diameter", s.face->inner_diameter, "clearance hole, ISO 273 medium", true));
  }
  if (job.prevailing_torque.si > 0) out.push_back(figure("prevailing_torque", job.prevailing_torque));
  if (job.shank_torque.si > 0) out.push_back(figure("shank_torque", job.shank_torque));
  out.push_back(figure_in_words(
      "torsion", job.torsion == Torsion::plastic ? "section fully plastic" : "section elastic at its surface"));
  return out;
}

/// Takes a clamp answer down step by step.
class ClampSteps {
 public:
  ClampSteps(const ClampJob& job, const Suspect& s, const Conditions& c, const ClampBolt& bolt)
      : job_(job), c_(c), bolt_(bolt), d_(s.thread.diameter.si) {
    step(out_, "", pitch_diameter, d_, bolt.P());
    step(out_, "", stress_diameter, d_, bolt.P());
    if (s.face && job.more_faces.empty())
      step(out_, "", mean_bearing_diameter, s.face->outer_diameter.si, s.face->inner_diameter.si);
  }

  /// The setting that gives the wanted load at nominal friction, and why it may be held back.
  /// \param limit  what the suggested torque rests on
  void wish(double load, double setting, const std::string& limit) {
    double torque = step(out_, "target: for the wanted clamp load at nominal friction", tightening_torque_exact, load,
                         bolt_.P(), bolt_.d_2(), bolt_.mu_G.nominal, bolt_.mu_K.nominal, bolt_.D_Km.nominal);
    if (job_.prevailing_torque.si > 0)
      torque = step(out_, "", setting_with_prevailing, torque, job_.prevailing_torque.si);
    if (job_.shank_torque.si > 0)
      torque = step(out_, "friction of the shank instead of the locking element", setting_with_prevailing, torque,
                    job_.shank_torque.si);
    if (setting < torque * (1 - 1e-9))
      held_back_ = limit == "thread" ? "at nominal friction; the setting is held back from the target to what the "
                                       "thread that holds the bolt bears"
                   : limit == "worst case"
                       ? "at nominal friction; as friction is unknown, the setting is held back from "
                         "the target to where the worst case just yields"
                       : "at nominal friction; the setting is held back from the target, so that no "
                         "more than 1 in 100 bolts that just meet their class yield";
  }

  /// From a setting to load and stress: at the typical friction, then at the corners.
  std::vector<Step> corners(double setting) && {
    accuracy_ = c_.accuracy_at(setting);
    step(out_, "at nominal friction", nut_factor_exact, d_, bolt_.P(), bolt_.d_2(), bolt_.mu_G.nominal,
         bolt_.mu_K.nominal, bolt_.D_Km.nominal);
    at_corner(held_back_ ? held_back_ : "at nominal friction", setting, 0, bolt_.mu_G.nominal, bolt_.mu_K.nominal,
              bolt_.D_Km.nominal, true);
    at_corner("worst case, maximum friction and weak wrench: minimum load", setting, -accuracy_, bolt_.mu_G.high,
              bolt_.mu_K.high, bolt_.D_Km.high, false);
    const double worst = worst_thread_friction(setting);
    const bool at_once = worst == bolt_.mu_G.low;
    at_corner(at_once ? "worst case, minimum friction and strong wrench: maximum load and stress"
                      : "worst case, minimum friction and strong wrench: maximum load",
              setting, accuracy_, bolt_.mu_G.low, bolt_.mu_K.low, bolt_.D_Km.low, at_once);
    if (!at_once)
      at_corner("worst case, friction in the thread, little under the head, strong wrench: maximum stress", setting,
                accuracy_, worst, bolt_.mu_K.low, bolt_.D_Km.low, true);
    return std::move(out_);
  }

 private:
  double worst_thread_friction(double setting) const {
    const double torque = EffectiveTorque::eval(setting, accuracy_, job_.prevailing_torque.si, job_.shank_torque.si);
    const auto stress = [&](double mu_g) {
      return bolt_.utilisation(bolt_.preload(torque, mu_g, bolt_.mu_K.low, bolt_.D_Km.low), mu_g, 1, job_.torsion);
    };
    return stress(bolt_.mu_G.high) > stress(bolt_.mu_G.low) ? bolt_.mu_G.high : bolt_.mu_G.low;
  }

  void at_corner(const char* note, double setting, double deviation, double mu_g, double mu_k, double bearing,
                 bool stress) {
    double torque = setting;
    const double prevailing = job_.prevailing_torque.si, d_s = bolt_.d_s;
    if (deviation != 0 || c_.lost > 0)
      torque = step(out_, note, effective_torque, setting, deviation, prevailing, job_.shank_torque.si);
    const double tensile = bolt_.strength.tensile_strength.si;
    const double asked = bolt_.preload(torque, mu_g, mu_k, bearing);
    if (bolt_.utilisation(asked, mu_g, tensile, Torsion::plastic) >= 1) {
      // A load that is not left is not shown: what the bolt bears, and the torque at which it gives way.
      const double most = step(out_, note, assembly_preload_exact, tensile, 1.0, bolt_.P(), bolt_.d_2(), d_s, mu_g);
      step(out_,
           prevailing > 0 ? "with the prevailing torque the bolt breaks still earlier; no clamp load is left"
                          : "here the bolt breaks before the torque is reached; no clamp load is left",
           tightening_torque_exact, most, bolt_.P(), bolt_.d_2(), mu_g, mu_k, bearing);
      return;
    }
    const double load =
        step(out_, note, preload_from_torque_exact, torque, bolt_.P(), bolt_.d_2(), mu_g, mu_k, bearing);
    if (!stress) return;
    double twist = step(out_, note, thread_torque_exact, load, bolt_.P(), bolt_.d_2(), mu_g);
    if (prevailing > 0) twist = step(out_, note, shank_torsion, twist, prevailing);
    const char* about = prevailing > 0 ? "the prevailing torque is part of the torque in the shank" : note;
    if (job_.torsion == Torsion::plastic)
      step(out_, about, yield_utilisation, load, twist, d_s, bolt_.strength.yield_strength.si);
    else
      step(out_, about, yield_utilisation_elastic, load, twist, d_s, bolt_.strength.yield_strength.si);
  }

  const ClampJob& job_;
  const Conditions& c_;
  const ClampBolt& bolt_;
  double d_;
  double accuracy_ = 0;
  const char* held_back_ = nullptr;
  std::vector<Step> out_;
};

}  // namespace tauten::TAUTEN_ABI::detail
