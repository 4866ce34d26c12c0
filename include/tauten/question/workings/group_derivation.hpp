// The derivation of the loads of a group: of its most loaded bolt.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/group/combined.hpp"
#include "tauten/question/group_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// The elastic vector method for one bolt.
inline double derive_shear(const GroupJob& job, const Pattern& pattern, const BoltGroup& answer, std::size_t worst,
                           Derivation& out) {
  const Position centre{answer.centre[0].si, answer.centre[1].si};
  ShearLoad load;
  if (job.load) load.x = job.load->x, load.y = job.load->y;
  load.at = job.at ? *job.at : pattern.centroid();
  if (job.torque) load.torque = *job.torque;
  const double torque = torque_about(load, centre);
  double weights = 0;
  double polar = 0;
  const auto weight = [&](std::size_t i) { return job.weights.empty() ? 1.0 : job.weights[i]; };
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    weights += weight(i);
    polar += weight(i) * std::pow(distance(pattern[i], centre), 2);
  }
  out.given.push_back(figure("moment", Torque(torque), "in the plane, about the centre of the bolts"));
  const double count = weights / weight(worst);
  const double x = pattern[worst].x - centre.x;
  const double y = pattern[worst].y - centre.y;
  const double right =
      step(out.steps, "to the right", group_bolt_load, load.x.si, count, -torque, y, polar / weight(worst));
  const double up = step(out.steps, "up", group_bolt_load, load.y.si, count, torque, x, polar / weight(worst));
  return step(out.steps, "", resultant_force, right, up);
}

/// A pull and moments about the centroid, along one principal axis after the other.
inline void derive_tension(const GroupJob& job, const Pattern& pattern, std::size_t worst, Derivation& out) {
  const PrincipalAxes axes(pattern);
  const double right = job.moment ? job.moment->right.si : 0;
  const double up = job.moment ? job.moment->up.si : 0;
  const double x = pattern[worst].x - axes.centre.x;
  const double y = pattern[worst].y - axes.centre.y;
  const double n = static_cast<double>(pattern.size());
  const double force = job.force.value_or(Force()).si;
  const bool turns = std::fabs(axes.along_of(right, up)) > std::fabs(axes.across_of(right, up)) * 1e-9;
  if (turns || (right == 0 && up == 0))
    step(out.steps, "pull, and the moment along the first axis of the pattern", group_bolt_load, force, n,
         axes.along_of(right, up), axes.along_of(x, y), axes.along);
  if (std::fabs(axes.across_of(right, up)) > 1e-9 * std::hypot(right, up))
    step(out.steps, turns ? "and along the second, to be added" : "pull, and the moment along the axis of the pattern",
         group_bolt_load, turns ? 0.0 : force, n, axes.across_of(right, up), axes.across_of(x, y), axes.across);
}

}  // namespace detail

TAUTEN_FUNCTION Derivation derivation_of(const GroupJob& job, const BoltGroup& answer) {
  const Pattern pattern = try_pattern(job.positions).value();
  const std::size_t worst = static_cast<std::size_t>(answer.worst) - 1;
  const std::string bolt = "bolt " + std::to_string(answer.worst);
  const bool shears = !answer.forces.empty(), pulls = !answer.tension.empty();
  Derivation out;
  out.title = std::to_string(pattern.size()) + " bolts, model " + answer.model + ": " + bolt + ", which carries most";
  if (job.load) {
    out.given.push_back(figure("force_x", job.load->x, "in the plane, to the right"));
    out.given.push_back(figure("force_y", job.load->y, "in the plane, up"));
  }
  if (job.force) out.given.push_back(figure("working_load", *job.force, "across the plane"));
  if (job.moment) {
    out.given.push_back(figure("moment", job.moment->right, "pulls on the right"));
    out.given.push_back(figure("moment", job.moment->up, "pulls at the top"));
  }
  out.given.push_back(figure("bolt_count", static_cast<double>(pattern.size())));
  double shear = shears ? std::hypot(answer.forces[worst][0].si, answer.forces[worst][1].si) : 0;
  const bool elastic = shears && answer.model.starts_with(word_of(GroupModel::elastic));
  const bool centroid = pulls && answer.model.ends_with(word_of(GroupModel::centroid)) && !job.worst_clocking;
  if (elastic) shear = detail::derive_shear(job, pattern, answer, worst, out);
  if (centroid) detail::derive_tension(job, pattern, worst, out);
  if (shears) out.found.push_back(figure("shear", Force(shear), "of " + bolt));
  if (pulls) {
    const Force tension = answer.tension[worst];
    out.found.push_back(figure("tension", tension, "of " + bolt));
    if (shears) step(out.steps, "tension and shear together", principal_tension, std::max(tension.si, 0.0), shear);
    if (job.preload && !answer.open[worst] && tension.si > 0) {
      step(out.steps, bolt.c_str(), service_bolt_load, job.preload->si, job.load_factor, tension.si);
      step(out.steps, bolt.c_str(), service_clamp_load, job.preload->si, job.load_factor, tension.si);
    }
  }
  for (const ModelLoad& one : answer.models)
    if (one.largest.si == one.largest.si)
      out.found.push_back(figure("largest", one.largest, "of the most loaded bolt, model " + one.model));
  out.verdict = (elastic || !shears) && (centroid || !pulls)
                    ? "The steps are those of " + bolt + "; the others follow with their own distances."
                    : "The loads of model " + answer.model +
                          " follow from a balance that is solved step by step and has no closed formula; the sums of "
                          "forces and moments are the load.";
  if (job.worst_clocking) out.verdict = "Each bolt was taken with the moment in the direction that is worst for it.";
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
