// The answer about a group of bolts, from the models of shear and tension.
#pragma once

#include <algorithm>
#include <cmath>

#include "tauten/base/mode.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/group/combined.hpp"
#include "tauten/question/group_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline constexpr std::size_t shear_models = 2;  // of GroupModel; those of tension follow

/// The load in the plane by one model.
struct GroupShear {
  std::vector<ShearForce> bolts;  // N
  std::optional<Position> centre;
  std::optional<ElasticShear> elastic;
  double coefficient = absent;
  double torque_coefficient = absent;

  Force most() const noexcept {
    double size = 0;
    for (const ShearForce& bolt : bolts) size = std::max(size, bolt.size());
    return Force(size);
  }
};

inline Outcome<GroupShear> try_group_shear(const GroupJob& job, const Pattern& pattern, GroupModel model) {
  ShearLoad load;
  if (job.load) load.x = job.load->x, load.y = job.load->y;
  load.at = job.at ? *job.at : pattern.centroid();
  if (job.torque) load.torque = *job.torque;
  const double force = std::hypot(load.x.si, load.y.si);
  GroupShear shear;
  if (model == GroupModel::elastic) {
    const auto found = try_elastic_shear(pattern, load, job.weights);
    if (!found) return found.error();
    shear.bolts = found->bolts;
    shear.centre = found->centre;
    if (force > 0) shear.coefficient = force / found->most.si;
    if (force == 0 && found->most.si > 0) shear.torque_coefficient = std::fabs(found->torque.si) / found->most.si;
    shear.elastic = *found;
    return shear;
  }
  if (!job.weights.empty())
    return Error("weights",
                 "weights go with the elastic model; the instantaneous centre takes equal bolts; leave them out");
  const auto found = try_ultimate_shear(pattern, load);
  if (!found) return found.error();
  shear.coefficient = found->coefficient;
  shear.torque_coefficient = found->torque_coefficient.si;
  shear.centre = found->centre;
  // Shares of the strength at which the first bolt fails, brought down to the load that is given.
  const double scale =
      force > 0 ? force / found->coefficient : std::fabs(load.torque.si) / found->torque_coefficient.si;
  for (const ShearForce bolt : found->bolts) shear.bolts.push_back({bolt.x * scale, bolt.y * scale});
  return shear;
}

inline std::optional<Error> add_shear(const GroupJob& job, const Pattern& pattern, GroupModel model, BoltGroup& group,
                                      std::optional<ElasticShear>& elastic) {
  for (const GroupModel each : {GroupModel::elastic, GroupModel::instantaneous_centre}) {
    const auto shear = try_group_shear(job, pattern, each);
    if (!shear && each == model) return shear.error();
    group.models.push_back({word_of(each), shear ? shear->most() : Force(absent), shear ? "" : shear.error().what()});
    if (each != model) continue;
    for (const ShearForce& bolt : shear->bolts) group.forces.push_back({Force(bolt.x), Force(bolt.y)});
    group.coefficient = shear->coefficient;
    group.torque_coefficient = Length(shear->torque_coefficient);
    if (shear->centre) group.centre = {Length(shear->centre->x), Length(shear->centre->y)};
    elastic = shear->elastic;
  }
  if (model == GroupModel::instantaneous_centre)
    group.notices.push_back(
        {"loads_at_failure",
         "Loads by instantaneous centre are those at failure, brought down to the load in proportion; the coefficient "
         "times the strength of one bolt is the strength of the group. The farthest bolt counts with 98 %, as in the "
         "published tables. Bearing bolts in ductile plates; not for slip "
         "or "
         "fatigue.",
         true});
  else
    group.notices.push_back(
        {"elastic_shear",
         "The elastic model takes rigid parts, equal bolts that all bear at once and no slip; it is "
         "on the safe side of the instantaneous centre.",
         true});
  return {};
}

/// \return what the part lies on, if it was given
inline std::optional<ContactFace> face_of(const GroupJob& job, const Pattern& pattern, const LiftingLoad& load) {
  if (job.outline.empty() && !job.outside) return {};
  ContactFace face{job.outline, job.bolt_area.value_or(Area(absent)), job.modular_ratio};
  if (job.outside)
    face.outline = round_outline(pattern.centroid(), *job.outside, Angle(std::atan2(load.right.si, load.up.si)));
  return face;
}

inline std::optional<Error> add_tension(const GroupJob& job, const Pattern& pattern, TensionModel model,
                                        BoltGroup& group) {
  LiftingLoad load;
  if (job.force) load.force = *job.force;
  if (job.moment) load.right = job.moment->right, load.up = job.moment->up;
  const std::optional<ContactFace> face = face_of(job, pattern, load);
  if (job.outside && !(job.outside->si > 0 && job.outside->si <= 1000))
    return refusal("outside", *job.outside, "but must be above 0, up to 1 km; give the diameter of the part");
  const Torque moment(std::hypot(load.up.si, load.right.si));
  const auto all = job.worst_clocking ? tension_at_worst_direction(pattern, moment, load.force, face, job.outside)
                                      : tension_by_all_models(pattern, load, face);
  const TensionByModel& chosen = all[static_cast<std::size_t>(model)];
  if (!chosen.tension) return chosen.why_not;
  for (const double bolt : chosen.tension->bolts) group.tension.emplace_back(bolt);
  if (model == TensionModel::contact && !job.worst_clocking)
    if (const auto contact = try_tension_with_contact(pattern, load, *face))
      group.edge_pressure = Stress(contact->edge_pressure);
  for (const TensionByModel& each : all)
    group.models.push_back({word_of(each.model), each.tension ? each.tension->most : Force(absent),
                            each.tension ? "" : each.why_not->what()});
  group.notices.push_back({"models_differ",
                           "Models of tension differ by a factor near two for the most loaded bolt; the others are "
                           "listed beside this one.",
                           true});
  if (job.worst_clocking)
    group.notices.push_back({"worst_clocking",
                             "The moment acts in the direction that is worst for each bolt in turn: the loads do not "
                             "occur together, and all bolts must bear the largest.",
                             true});
  return {};
}

/// Adds what bolts and joint carry with preload, and how near it is to slip.
inline std::optional<Error> add_preload(const GroupJob& job, std::size_t count,
                                        const std::optional<ElasticShear>& elastic, BoltGroup& group) {
  std::vector<double> external(count);
  for (std::size_t i = 0; i < group.tension.size(); ++i) external[i] = group.tension[i].si;
  const auto bolts = try_preloaded(tension_of(external), *job.preload, job.load_factor);
  if (!bolts) return bolts.error();
  std::string separated;
  for (std::size_t i = 0; i < count; ++i) {
    const PreloadedBolt& bolt = (*bolts)[i];
    group.bolt_loads.push_back(bolt.bolt);
    group.clamp_loads.push_back(bolt.clamp);
    group.open.push_back(bolt.open);
    if (bolt.open) separated += (separated.empty() ? "" : ", ") + std::to_string(i + 1);
  }
  if (!separated.empty())
    group.notices.push_back(
        {"joint_opens", "The joint opens at bolts " + separated +
                            ", which then carry all of their share; the shares of the others are a guide."});
  if (!job.friction) return {};
  if (!elastic) return Error("friction", "slip needs the elastic model and a load in the plane; give load");
  const auto slip = try_slip(*elastic, *bolts, *job.friction);
  if (!slip) return slip.error();
  group.slip = slip->worst;
  if (!(slip->worst <= 1))
    group.notices.push_back({"joint_slips",
                             "Friction does not hold the load at every bolt: the parts slip until bolts bear. Raise "
                             "preload or friction, or count on bearing."});
  return {};
}

/// \return which models are meant, or why they do not go with the load
inline Outcome<std::pair<GroupModel, TensionModel>> try_models(const GroupJob& job, bool shears, bool pulls) {
  if (job.model)
    if (auto e = unknown_value("model", *job.model)) return *e;
  if (job.tension_model)
    if (auto e = unknown_value("tension_model", *job.tension_model)) return *e;
  GroupModel shear = GroupModel::elastic;
  TensionModel tension = TensionModel::about_centroid;
  if (job.model && static_cast<std::size_t>(*job.model) < shear_models) {
    shear = *job.model;
    if (!shears) return Error("model", "model shares a load in the plane; give load or torque, or a model of tension");
  } else if (job.model) {
    tension = static_cast<TensionModel>(static_cast<std::size_t>(*job.model) - shear_models);
    if (!pulls) return Error("model", "model shares a pull or moment; give force or moment, or a model of shear");
  }
  if (job.tension_model) {
    if (!pulls) return Error("tension_model", "tension_model goes with force or moment; give one of them");
    tension = *job.tension_model;
  }
  return std::pair(shear, tension);
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<BoltGroup> try_bolt_group(const GroupJob& job) {
  const auto pattern = try_pattern(job.positions);
  if (!pattern) return pattern.error();
  const bool pulls = job.force || job.moment;
  const bool shears = job.load || job.torque;
  if (!pulls && !shears)
    return Error("load",
                 "load is missing; give one in the plane of the joint (load, torque) or across it (force, moment)");
  if (job.worst_clocking && !job.moment) return Error("worst_clocking", "worst_clocking turns a moment; give moment");
  const auto models = detail::try_models(job, shears, pulls);
  if (!models) return models.error();
  BoltGroup group;
  std::optional<ElasticShear> elastic;
  if (shears)
    if (auto error = detail::add_shear(job, *pattern, models->first, group, elastic)) return *error;
  if (pulls)
    if (auto error = detail::add_tension(job, *pattern, models->second, group)) return *error;
  group.model = shears ? word_of(models->first) : "";
  if (pulls) group.model += (shears ? " and " : "") + std::string(word_of(models->second));
  for (std::size_t i = 0; i < pattern->size(); ++i) {
    const Force across(shears ? std::hypot(group.forces[i][0].si, group.forces[i][1].si) : 0);
    const Force pull(pulls ? group.tension[i].si : 0);
    group.loads.push_back(!pulls ? across : !shears ? pull : equivalent_tension(Force(std::max(pull.si, 0.0)), across));
  }
  if (shears && pulls)
    group.notices.push_back({"equivalent_tension",
                             "Loads are equivalent tensions, (T + sqrt(T^2 + 4 V^2))/2, of tension and shear together.",
                             true});
  const auto most = std::max_element(group.loads.begin(), group.loads.end(),
                                     [](Force one, Force other) { return one.si < other.si; });
  group.largest = *most;
  // Of bolts that carry alike the first, whatever rounding made of them.
  const auto first = std::find_if(group.loads.begin(), group.loads.end(),
                                  [&](Force one) { return one.si >= most->si - 1e-9 * std::fabs(most->si); });
  group.worst = static_cast<int>(first - group.loads.begin()) + 1;
  if (job.preload)
    if (auto error = detail::add_preload(job, pattern->size(), elastic, group)) return *error;
  return group;
}

TAUTEN_FUNCTION BoltGroup bolt_group(const GroupJob& job) { return try_bolt_group(job).value(); }

}  // namespace tauten::TAUTEN_ABI
