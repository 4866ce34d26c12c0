// The judgement of a stuck fastener from its description to where to stop.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/plain_words.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/free_steps.hpp"
#include "tauten/question/workings/stop_sentence.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::vector<Figure> free_given(const FreeJob& job) {
  const RustState& state = rust_state(job.rust);
  const CapacityEstimates& guess = capacity_estimates;
  std::vector<Figure> out;
  out.push_back(figure("diameter", *job.diameter));
  out.push_back(figure("pitch", *job.pitch));
  if (const auto lobes = lobes_of(job)) {
    const std::string note = "of drive number " + std::to_string(lobes->number) + ", ISO 10664";
    out.push_back(figure("outer_diameter", lobes->outer_diameter, note));
    out.push_back(figure("inner_diameter", lobes->inner_diameter, note));
  } else {
    out.push_back(figure("width_across_flats", *job.width_across_flats));
  }
  out.push_back(figure("tensile_strength", *job.tensile_strength, "minimum of the class"));
  out.push_back(figure("yield_strength", *job.yield_strength));
  out.push_back(figure("torsion_ratio", torsion_ratio_of(job)));
  out.push_back(figure_in_words("rust", state.title));
  if (job.preload)
    out.push_back(figure("preload", Force(guess.preload_left * job.preload->si), "what is left of it after years"));
  else if (state.loaded)
    out.push_back(figure("share", guess.preload_share, "of yield, as preload that is left", true, "%"));
  out.push_back(figure("thread_friction", job.thread_friction, "of the clean joint"));
  out.push_back(figure("bearing_friction", job.bearing_friction, "of the clean joint"));
  out.push_back(figure("thread_growth", state.thread_growth.median, "median for this rust", true));
  out.push_back(figure("bearing_growth", state.bearing_growth.median, "median for this rust", true));
  if (state.bond_strength.median > 0)
    out.push_back(figure("bond_strength", Stress(state.bond_strength.median), "median for this rust", true));
  const bool typical_length = !job.engaged_length;
  out.push_back(
      figure("engaged_length", Length(engaged_length_of(job)), typical_length ? "0.8 d" : "", typical_length));
  const bool typical_face = !job.bearing_diameter;
  out.push_back(figure("bearing_diameter", Length(bearing_diameter_of(job)),
                       typical_face ? "from width and diameter" : "", typical_face));
  if (job.held)
    out.push_back(figure("held", *job.held,
                         job.held_untreated ? "before the aids; it has not moved" : "as it is; it has not moved"));
  if (job.prevailing_torque.si > 0) out.push_back(figure("prevailing_torque", job.prevailing_torque));
  if (job.years) {
    out.push_back(figure("years", *job.years, "in place"));
    out.push_back(figure("first_year_loss", *job.first_year_loss));
  }
  for (const AidUse& use : job.aids) out.push_back(figure_in_words("aids", plain_words(word_of(use.aid))));
  if (job.handle_length) {
    const double pull = job.hand_force.si;
    out.push_back(figure("handle_length", *job.handle_length));
    out.push_back({"hand_force", Dim::force, {pull, pull, pull}, "", "median", false, "N"});
  }
  out.push_back(figure("shear_risk", job.shear_risk, "accepted chance of shearing", false, "%"));
  return out;
}

}  // namespace detail

TAUTEN_FUNCTION Derivation derivation_of(const FreeJob& job, const Free& answer) {
  Derivation out;
  out.title = "Does it come free before something gives?";
  out.given = detail::free_given(job);
  out.steps = free_steps(job);
  // A torque that nothing reaches is none to be shown.
  const auto torque = [&](const char* name, const Band<Torque>& band, const char* note) {
    if (band.high.si < 0.1 * never_reached.median) out.found.push_back(figure(name, band, note));
  };
  torque("breakaway", answer.breakaway, "nine of ten cases, by simulation");
  torque("shear", answer.shear, "torque at the head at which the bolt shears");
  torque("round", answer.round, ("torque at which the " + detail::end_of_drive(job.drive)).c_str());
  torque("tool", answer.tool, "torque at which the tool fails");
  if (answer.arm) torque("arm", *answer.arm, "torque that the arm reaches");
  if (answer.learned)
    out.found.push_back(figure("learned", answer.learned->median, "from the fasteners already undone"));
  out.found.push_back(figure("limit", answer.chances.limit, "for the chances below"));
  const auto chance = [&](const char* name, double share, const char* note) {
    // The typical number of trials does not resolve less.
    out.found.push_back(share < 1e-3 ? figure_in_words(name, "below 0.1 %", note)
                                     : figure(name, share, note, false, "%"));
  };
  chance("chance_free", answer.chances.free, job.held ? "comes loose, after what it has held" : "comes loose");
  chance("chance_shear", answer.chances.shear, "the bolt shears");
  chance("chance_round", answer.chances.round, ("the " + detail::end_of_drive(job.drive)).c_str());
  chance("chance_tool", answer.chances.tool, "the tool fails");
  chance("chance_not_moving", answer.chances.not_moving, "nothing moves");
  // Of those that end in what is left of the pull, more shear.
  for (const IfHeld& one : answer.if_held) {
    const std::string at = "if it has not moved at " + detail::shop_text(one.held);
    chance("chance_free", one.chances.free, at.c_str());
    chance("chance_shear", one.chances.shear, at.c_str());
  }
  out.verdict =
      detail::stop_sentence(job, answer, detail::shop_text(answer.stop_at), detail::percent_text(job.shear_risk),
                            job.limit ? detail::shop_text(*job.limit) : std::string());
  if (answer.next < answer.steps.size()) {
    std::string aids;
    for (const AidUse& use : answer.steps[answer.next].aids)
      aids += (aids.empty() ? "" : ", ") + plain_words(word_of(use.aid));
    out.verdict += " Next: " + (aids.empty() ? "just try" : aids) + "; " + answer.steps[answer.next].why + ".";
  }
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
