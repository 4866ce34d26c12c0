// A clamp load as a function of what scatters, and what follows from it.
#pragma once

#include <algorithm>

#include "tauten/base/mode.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/clamp_uncertainty_answer.hpp"
#include "tauten/question/workings/capacity.hpp"
#include "tauten/question/workings/clamp_candidate.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Clamp load and utilisation on any scalar. Order of inputs as in `ClampModel`.
struct ClampFunction {
  double P, d_2, d_s, lost, yield_strength, tensile_strength;
  Torsion torsion;
  double prevailing;

  template <class Span>
  auto free_load(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    const Real torque = EffectiveTorque::eval<Real>(x[0], 0, lost, 0);
    return preload_from_torque_exact.si(torque, P, d_2, x[1], x[2], x[3]);
  }
  template <class Span>
  auto load(const Span& x) const {
    return smaller(free_load(x), assembly_preload_exact.si(x[4] * tensile_strength, 1, P, d_2, d_s, x[1]));
  }
  template <class Span>
  auto utilisation(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    const Real tension = free_load(x);
    const Real twist = ShankTorsion::eval<Real>(thread_torque_exact.si(tension, P, d_2, x[1]), prevailing);
    const auto strength = x[4] * yield_strength;
    return torsion == Torsion::plastic ? yield_utilisation.si(tension, twist, d_s, strength)
                                       : yield_utilisation_elastic.si(tension, twist, d_s, strength);
  }
};

inline std::array<Variable, 5> clamp_variables() {
  return {{{"torque", Dim::torque},
           {"thread_friction", Dim::number},
           {"bearing_friction", Dim::number},
           {"bearing_diameter", Dim::length},
           {"strength", Dim::number}}};
}

inline Outcome<ClampModel> clamp_model_of(const ClampJob& job, const ClampScatter& scatter, const Suspect& suspect,
                                          const Conditions& c, const ClampCandidate& candidate) {
  const Outcome<ClampBolt> made = bolt_of(job, suspect, c);
  if (!made) return made.error();
  const ClampBolt& bolt = *made;
  const ClampFunction f{bolt.P(),
                        bolt.d_2(),
                        bolt.d_s,
                        c.lost,
                        bolt.strength.yield_strength.si,
                        bolt.strength.tensile_strength.si,
                        bolt.torsion,
                        bolt.prevailing};
  ClampModel out{candidate,
                 model_of<5>({"clamp_load", Dim::force}, clamp_variables(), [f](auto x) { return f.load(x); }),
                 model_of<5>({"yield_utilisation"}, clamp_variables(), [f](auto x) { return f.utilisation(x); }),
                 {},
                 {}};
  const double setting = job.torque->si, accuracy = c.accuracy_at(setting), face = bolt.D_Km.nominal;
  // Where washers slide, friction and diameter change together from corner to corner; their product counts.
  const double nominal = bolt.mu_K.nominal;
  const Band<double> on_face{std::min(nominal, bolt.mu_K.low * (bolt.D_Km.low / face)), nominal,
                             std::max(nominal, bolt.mu_K.high * (bolt.D_Km.high / face))};
  const auto from_band = [](const Band<double>& b) { return Distribution::from_band(b.low, b.nominal, b.high); };
  const std::vector<InputDistribution> given = {
      {"torque", scatter.torque.value_or(Distribution::uniform(setting * (1 - accuracy), setting * (1 + accuracy)))},
      {"thread_friction", scatter.thread_friction.value_or(from_band(bolt.mu_G))},
      {"bearing_friction", scatter.bearing_friction.value_or(from_band(on_face))},
      {"bearing_diameter", scatter.bearing_diameter.value_or(Distribution::triangular(
                               face * (1 - bearing_diameter_spread), face, face * (1 + bearing_diameter_spread)))},
      {"strength", scatter.strength.value_or(Distribution::lognormal(capacity_estimates.above_minimum,
                                                                     capacity_estimates.strength_variation))}};
  std::optional<double> stated = scatter.friction_correlation;
  if (!stated && job.friction_together) stated = *job.friction_together ? 1 : 0;
  const bool together = !stated && bolt.one_draw && !scatter.thread_friction && !scatter.bearing_friction;
  std::vector<Correlation> pairs;
  if (const double r = together ? 1 : stated.value_or(0); r != 0)
    pairs.push_back({"thread_friction", "bearing_friction", r});
  const Outcome<JointDistribution> joint = try_joint(out.clamp_load, given, pairs);
  if (!joint) return joint.error();
  out.inputs = *joint;

  if (!scatter.strength)
    out.notices.push_back(
        {"strength_estimated",
         "Bolts are assumed to be 12 % (plus or minus 6 %) stronger than the minimum of their class; give "
         "the strength as 1 to use the minimum.",
         true});
  if (!scatter.bearing_diameter)
    out.notices.push_back({"bearing_spread_estimated",
                           "The effective bearing diameter is taken to lie within 5 % of its typical value.", true});
  if (!stated) out.notices.push_back(friction_notice(together, true));
  return out;
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<std::vector<ClampModel>> try_clamp_models(const ClampJob& job, const ClampScatter& scatter) {
  const Outcome<Clamp> answer = try_clamp(job);
  if (!answer) return answer.error();
  const Outcome<detail::Conditions> conditions = detail::conditions_of(job);
  if (!conditions) return conditions.error();
  const Outcome<std::vector<detail::Fastener>> fasteners = detail::ranked_fasteners(job, *conditions);
  if (!fasteners) return fasteners.error();
  std::vector<ClampModel> out;
  for (const detail::Fastener& fastener : *fasteners) {
    const ClampCandidate& candidate = answer->candidates[out.size()];
    const Outcome<ClampModel> model = detail::clamp_model_of(job, scatter, fastener.suspect(), *conditions, candidate);
    if (!model) return model.error();
    out.push_back(*model);
  }
  return out;
}

namespace detail {

/// "M16, ISO 4014, ISO 4017, class 8.8"
inline std::string fastener_text(const ClampCandidate& c) {
  return c.thread + (c.head.empty() ? "" : ", " + c.head) + ", class " + c.property_class +
         (c.class_assumed ? " (assumed)" : "");
}

}  // namespace detail

TAUTEN_FUNCTION UncertaintyQuestion question_of(const ClampModel& model) {
  UncertaintyQuestion out;
  out.title = detail::fastener_text(model.candidate);
  out.outputs = {model.clamp_load, model.yield_utilisation};
  for (std::size_t i = 0; i < model.inputs.size(); ++i)
    out.inputs.push_back({model.clamp_load.inputs[i].name, model.inputs[i]});
  if (const double r = model.inputs.correlation(1, 2); r != 0)
    out.correlations = {{model.clamp_load.inputs[1].name, model.clamp_load.inputs[2].name, r}};
  out.notices = model.notices;
  if (model.candidate.tensile_utilisation.high >= 1)
    out.notices.push_back({"may_break",
                           "The bolt may break before the torque is reached. Such trials count with the load at which "
                           "it breaks, but then none is left.",
                           false});
  out.notices.push_back(cautions::no_release);
  return out;
}

TAUTEN_FUNCTION Outcome<UncertaintyQuestion> try_clamp_question(const ClampJob& job, const ClampScatter& scatter) {
  const Outcome<std::vector<ClampModel>> models = try_clamp_models(job, scatter);
  if (!models) return models.error();
  UncertaintyQuestion out = question_of(models->front());
  std::vector<std::string> threads;  // each once
  for (auto model = models->begin() + 1; model != models->end(); ++model) {
    out.others.push_back(detail::fastener_text(model->candidate));
    const std::string& thread = model->candidate.thread;
    if (std::find(threads.begin(), threads.end(), thread) == threads.end()) threads.push_back(thread);
  }
  if (out.others.empty()) return out;
  const std::size_t count = out.others.size();
  std::string text = "The most common fastener that fits is taken. " + std::to_string(count) +
                     (count == 1 ? " other fits too, of thread " : " others fit too, of thread ");
  for (std::size_t i = 0; i < threads.size(); ++i)
    text += (i == 0 ? "" : i + 1 < threads.size() ? ", " : " or ") + threads[i];
  out.notices.insert(out.notices.begin(),
                     {"others_fit", text + "; name thread and head to ask about one of them.", false});
  return out;
}

TAUTEN_FUNCTION Outcome<std::vector<ClampUncertainty>> try_clamp_uncertainty(const ClampJob& job,
                                                                             const ClampScatter& scatter,
                                                                             const MonteCarloOptions& options) {
  const Outcome<std::vector<ClampModel>> models = try_clamp_models(job, scatter);
  if (!models) return models.error();
  std::vector<ClampUncertainty> out;
  for (const ClampModel& model : *models) {
    Outcome<MonteCarlo> load = try_monte_carlo(model.clamp_load, model.inputs, options);
    if (!load) return load.error();
    Outcome<MonteCarlo> stress = try_monte_carlo(model.yield_utilisation, model.inputs, options);
    if (!stress) return stress.error();
    const Outcome<Budget> load_budget = try_budget(model.clamp_load, model.inputs);
    if (!load_budget) return load_budget.error();
    const Outcome<Budget> stress_budget = try_budget(model.yield_utilisation, model.inputs);
    if (!stress_budget) return stress_budget.error();
    const double chance_to_yield = stress->chance_above(1);
    const double chance_slack = load->chance_below(useful_proof_share * model.candidate.proof_load.si);
    const bool stopped = load->stopped || stress->stopped;
    out.push_back({model.candidate, std::move(load).value(), std::move(stress).value(), *load_budget, *stress_budget,
                   chance_to_yield, chance_slack, model.notices});
    if (stopped) break;
  }
  return out;
}

TAUTEN_FUNCTION std::vector<ClampModel> clamp_models(const ClampJob& job, const ClampScatter& scatter) {
  return try_clamp_models(job, scatter).value();
}

TAUTEN_FUNCTION UncertaintyQuestion clamp_question(const ClampJob& job, const ClampScatter& scatter) {
  return try_clamp_question(job, scatter).value();
}

TAUTEN_FUNCTION std::vector<ClampUncertainty> clamp_uncertainty(const ClampJob& job, const ClampScatter& scatter,
                                                                const MonteCarloOptions& options) {
  return try_clamp_uncertainty(job, scatter, options).value();
}

}  // namespace tauten::TAUTEN_ABI
