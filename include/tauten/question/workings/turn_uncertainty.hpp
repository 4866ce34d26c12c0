// The clamp load of a tightening by angle as a function of what scatters.
#pragma once

#include <memory>
#include "tauten/base/caution.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/workings/turn_corner.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION Outcome<UncertaintyQuestion> try_turn_question(const TurnJob& job, const TurnAnswer& answer) {
  Outcome<detail::TurnSetup> found = detail::try_turn_setup(job);
  if (!found) return found.error();
  const auto setup = std::make_shared<const detail::TurnSetup>(std::move(found).value());
  const double snug = answer.snug_torque.si, angle = answer.angle.si, off = job.angle_tolerance.si;
  const double accuracy = setup->conditions.accuracy_at(snug), lost = setup->conditions.lost;

  const double stretch = detail::elongation_sold(job);

  const auto end_of = [setup, lost, stretch](std::span<const double> x) {
    // A draw outside of what steel can be has no value, nor has one in which
    // the bolt breaks.
    const detail::TurnEnd none{.preload = absent, .torque = absent, .thread_torque = absent, .reached = false};
    const bool possible = x[0] >= 0 && x[2] > 0 && x[3] > 0 && x[4] > 0 && x[5] > 0;
    if (!possible) return none;
    const TurningFriction friction{x[2], x[3], Length(setup->bolt.D_Km.nominal)};
    const detail::TurnCorner corner{friction, x[4],   x[5], std::max(EffectiveTorque::eval(x[0], 0.0, lost, 0.0), 0.0),
                                    0,        stretch};
    const detail::TurnEnd end = detail::turn_by(*setup, corner, {x[0], x[1], false});
    return end.reached ? end : none;
  };
  const std::vector<Variable> inputs = {{"snug_torque", Dim::torque},
                                        {"angle_of_turn", Dim::angle},
                                        {"thread_friction"},
                                        {"bearing_friction"},
                                        {"resilience"},
                                        {"strength"}};
  UncertaintyQuestion out;
  out.title = answer.joint.thread + ", class " + answer.joint.property_class + ", tightened by angle";
  using Inputs = std::span<const double>;
  out.outputs = {
      model_of({"clamp_load", Dim::force}, inputs, [end_of](Inputs x) { return end_of(x).preload; }),
      model_of({"torque", Dim::torque}, inputs, [end_of, lost](Inputs x) { return end_of(x).torque + lost; }),
      model_of({"yield_utilisation"}, inputs, [end_of, setup](Inputs x) {
        const detail::TurnEnd end = end_of(x);
        return end.reached ? setup->utilisation(end.preload, end.thread_torque) / x[5] : absent;
      })};
  const double softer = setup->resilience_tolerance;
  const detail::StrengthSold strength = detail::strength_sold(job);
  const auto band = [](const Band<double>& b) { return Distribution::from_band(b.low, b.nominal, b.high); };
  out.inputs = {{"snug_torque", Distribution::uniform(snug * (1 - accuracy), snug * (1 + accuracy))},
                {"angle_of_turn", Distribution::triangular(angle - off, angle, angle + off)},
                {"thread_friction", band(setup->bolt.mu_G)},
                {"bearing_friction", band(setup->bolt.mu_K)},
                {"resilience", Distribution::triangular(1 - softer, 1, 1 + softer)},
                {"strength", Distribution::lognormal(strength.median, strength.variation)}};
  if (setup->bolt.one_draw) out.correlations = {{"thread_friction", "bearing_friction", 1}};
  std::vector<double> nominal;
  for (const InputDistribution& input : out.inputs) nominal.push_back(input.distribution.mean());
  if (!end_of(nominal).reached)
    return refusal("angle", answer.angle,
                   "but the typical bolt necks and may break on the way, so that "
                   "there is no clamp load to be certain of; "
                   "turn less far");
  out.notices = {{"strength_estimated",
                  "Bolts are taken to be 12 % stronger than the minimum of their class, within 6 % (standard "
                  "uncertainty); give the strength as 1 for the minimum.",
                  true},
                 {"resilience_estimated",
                  "How far resilience and angle may be off is an estimate "
                  "unless it was given.",
                  true},
                 detail::friction_notice(setup->bolt.one_draw, false)};
  if (answer.may_neck)
    out.notices.push_back({"may_neck",
                           "Do not turn so far: the bolt may neck and break. Trials in which it "
                           "does have no clamp load "
                           "and are left out; the figures hold for the bolts that do not break.",
                           false});
  out.notices.push_back(cautions::no_release);
  return out;
}

TAUTEN_FUNCTION UncertaintyQuestion turn_question(const TurnJob& job, const TurnAnswer& answer) {
  return try_turn_question(job, answer).value();
}

}  // namespace tauten::TAUTEN_ABI
