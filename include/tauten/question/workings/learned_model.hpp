// What can be drawn for a job: as it is described, after the aids already used, and after like fasteners were undone.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "tauten/loosening/learn.hpp"
#include "tauten/loosening/torque_sample.hpp"
#include "tauten/question/workings/aid.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Each aid once, where it came last. Hours of soaking add up, and a bolt is as hot as it was made last; what a second
/// brushing or a second round of impacts adds is not known, and is taken as nothing.
inline std::vector<AidUse> once_each(const std::vector<AidUse>& uses) {
  std::vector<AidUse> list;
  for (AidUse use : uses) {
    const auto earlier = std::find_if(list.begin(), list.end(), [&](const AidUse& one) { return one.aid == use.aid; });
    if (earlier != list.end()) {
      use.soak_hours += earlier->soak_hours;
      use.thin_fluid = use.thin_fluid || earlier->thin_fluid;
      list.erase(earlier);
    }
    list.push_back(use);
  }
  return list;
}

/// The model after the aids already used.
inline ReleaseModel after_aids(ReleaseModel m, const FreeJob& job) {
  for (const AidUse& use : once_each(job.aids)) m = with_aid(m, use, job.thread_friction, job.bearing_friction);
  return m;
}

}  // namespace detail

/// What can be drawn for a job, aids already used included.
inline ReleaseModel release_model(const FreeJob& job) { return detail::after_aids(detail::bare_model(job), job); }

namespace detail {

/// What can be drawn for a job, with what was learned from the fasteners already undone.
struct LearnedModel {
  ReleaseModel untreated;            ///< before the aids already used
  ReleaseModel model;                ///< after them
  std::optional<Learned> learned{};  ///< of the breakaway torque
  bool at_odds = false;              ///< some of them lie far from what was thought before
};

/// The outcomes as those of another end: the torque is known where it was `exact`, and lies above it elsewhere.
inline std::vector<Neighbour> censored_as(Neighbour::How exact, std::vector<Neighbour> outcomes) {
  for (Neighbour& one : outcomes) one.how = one.how == exact ? Neighbour::How::freed : Neighbour::How::unmoved;
  return outcomes;
}
inline bool any_of(Neighbour::How how, const std::vector<Neighbour>& outcomes) {
  return std::any_of(outcomes.begin(), outcomes.end(), [&](const Neighbour& one) { return one.how == how; });
}

/// Shanks of one flange may be far from the description as a whole, as where they are of another class: deviation of
/// ln T that is allowed for at least (judgement).
inline constexpr double least_between_shanks = 0.2;

/// \return the lognormal with the band of a prediction
inline Lognormal lognormal_of(const Learned& learned) noexcept {
  return {learned.torque.nominal.si, lognormal_between(learned.torque.low.si, learned.torque.high.si).variation};
}

/// \return whether one outcome would come about in fewer than one of a hundred cases if the description were right
inline bool is_at_odds(const Neighbour& one, const Lognormal& free, const Lognormal& shank, const Lognormal& drive) {
  constexpr double rare = 0.01;
  const auto below = [&](const Lognormal& x) { return x.median > 0 ? x.chance_below(one.torque.si) : 0.0; };
  // What did not give bore the torque; of what gave the torque is known.
  const auto bore = [&](const Lognormal& x) { return below(x) > 1 - rare; };
  const auto gave = [&](const Lognormal& x) { return below(x) < rare || below(x) > 1 - rare; };
  switch (one.how) {
    case Neighbour::How::freed: return gave(free) || bore(shank) || bore(drive);
    case Neighbour::How::sheared: return bore(free) || gave(shank) || bore(drive);
    case Neighbour::How::rounded: return bore(free) || bore(shank) || gave(drive);
    case Neighbour::How::unmoved: break;
  }
  return bore(free) || bore(shank) || bore(drive);
}

/// Learns from the outcomes that are treated or not, as `treated` says. Bolts and corners that gave tell of those that
/// are left just as those that came free do. Without one that gave, they are left as they were thought to be: what
/// others have borne says little of them.
/// \return what is wrong with them, or nothing
inline std::optional<Error> learn_from(const FreeJob& job, bool treated, LearnedModel& out, ReleaseModel& m) {
  std::vector<Neighbour> outcomes;
  for (const Neighbour& one : job.loosened)
    if (one.treated == treated) outcomes.push_back(one);
  if (outcomes.empty()) return std::nullopt;
  const TorqueSample sample(m, job.seed, std::nullopt, false);
  const Lognormal before = sample.lognormal(Draws::free), shank = sample.lognormal(Draws::shear);
  if (!(before.median > 0))
    return Error(
        "loosened",
        "loosened: as it is described, the joint comes free without torque, so that nothing can be learned from "
        "like ones; look at rust and preload, or leave loosened out");
  const Outcome<Learned> found = try_learn(prior_of(before), outcomes);
  if (!found) return found.error();
  for (const Neighbour& one : outcomes) out.at_odds = out.at_odds || is_at_odds(one, before, shank, m.drive);
  // Lognormals that come near first, then the rest of the way, trial by trial.
  m = with_learned(m, before, lognormal_of(*found), job.seed);
  std::optional<Learned> shanks, drives;
  if (any_of(Neighbour::How::sheared, outcomes) && shank.median > 0) {
    shanks = learn(prior_of(shank, least_between_shanks), censored_as(Neighbour::How::sheared, outcomes));
    m = with_learned_shank(m, lognormal_of(*shanks), job.seed);
  }
  if (any_of(Neighbour::How::rounded, outcomes) && m.drive.median > 0) {
    drives = learn(prior_of(m.drive), censored_as(Neighbour::How::rounded, outcomes));
    m.drive = lognormal_of(*drives);
  }
  const TorqueSample near_it(m, job.seed);
  LearnedShift shift{m, near_it.curve(Draws::free, *found), {}, {}};
  if (shanks) shift.shear = near_it.curve(Draws::shear, *shanks);
  if (drives) shift.round = near_it.curve(Draws::rounded, *drives);
  m.shift = std::make_shared<const LearnedShift>(std::move(shift));
  m.as_learned = true;
  const int earlier = out.learned ? out.learned->count : 0;
  out.learned = *found;
  out.learned->count += earlier;
  return std::nullopt;
}

/// In the order in which it happened: bolts undone as they were, aids, bolts undone after them.
inline Outcome<LearnedModel> try_learned_model(const FreeJob& job) {
  LearnedModel out;
  out.untreated = bare_model(job);
  if (const auto error = learn_from(job, false, out, out.untreated)) return *error;
  out.model = after_aids(out.untreated, job);
  if (const auto error = learn_from(job, true, out, out.model)) return *error;
  return out;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
