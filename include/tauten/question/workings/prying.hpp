// The answer about prying, from the formulas of both standards, and its derivation.
#pragma once

#include <string>
#include <string_view>

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/prying_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// \return the error with the names that the question has
inline Error prying_error(const Error& error) {
  const std::string_view name = error.argument();
  const char* known = name == "strength" || name == "yield_strength" ? "plate_strength"
                      : name == "bolt" || name == "bolts"            ? "bolt_strength"
                      : name == "stress_area"                        ? "bolt_area"
                                                                     : nullptr;
  if (known == nullptr) return error;
  return Error(known, (known + std::string(error.what()).substr(name.size())).c_str());
}

inline std::optional<Error> prying_job_error(const PryingJob& job) {
  if (job.tributary.has_value() == job.effective_length.has_value())
    return Error("tributary",
                 "give one of tributary (length of plate for one bolt, AISC) and effective_length (T-stub of EN "
                 "1993-1-8)");
  if (!job.thickness && !job.pull)
    return Error("thickness",
                 "thickness is missing; give that of the plate, or a pull for which a thickness is wanted");
  if (job.bolts < 1 || job.bolts > 1000)
    return refusal("bolts", static_cast<double>(job.bolts), "but must be 1 to 1000; count those that are pulled");
  if (!is_positive(job.bolt_strength))
    return refusal("bolt_strength", job.bolt_strength, "but must be above 0; give the strength of one bolt");
  const double all = static_cast<double>(job.bolts) * job.bolt_strength.si;
  if (job.pull && !(job.pull->si > 0 && job.pull->si <= all))
    return refusal("pull", *job.pull,
                   "but must be above 0 and not above the strength of all bolts; use stronger bolts");
  if (job.tributary)
    for (const auto& [name, given] : {std::pair{"diameter", job.diameter}, {"hole", job.hole}}) {
      if (!given) return Error(name, (std::string(name) + " is missing; the AISC form needs it").c_str());
      if (!is_positive(*given)) return refusal(name, *given, "but must be above 0; measure it");
    }
  return {};
}

inline PryingPlate plate_of(const PryingJob& job) {
  return {job.bolt_to_web, job.bolt_to_edge,   *job.diameter,        *job.hole,
          *job.tributary,  job.plate_strength, job.resistance_factor};
}

inline TeeStub tee_of(const PryingJob& job, Length thickness) {
  TeeStub tee{job.bolt_to_web, job.bolt_to_edge,   *job.effective_length,
              thickness,       job.plate_strength, Force(static_cast<double>(job.bolts) * job.bolt_strength.si)};
  tee.washer = job.washer;
  tee.elongation_length = job.elongation_length;
  tee.stress_area = job.bolt_area.value_or(Area(absent));
  tee.rows = std::max(1.0, static_cast<double>(job.bolts) / 2);
  return tee;
}

/// The AISC form: one bolt with its strip of plate, times the bolts.
inline std::optional<Error> add_aisc(const PryingJob& job, PlatePrying& answer) {
  const PryingPlate plate = plate_of(job);
  const double count = static_cast<double>(job.bolts);
  // Levers and thickness without prying do not depend on the thickness.
  const auto levers = try_prying(plate, job.bolt_strength, job.thickness.value_or(Length(1)));
  if (!levers) return prying_error(levers.error());
  answer.bolt_lever = levers->bolt_lever;
  answer.edge_lever = levers->edge_lever;
  answer.no_prying_thickness = levers->no_prying_thickness;
  if (job.thickness) {
    answer.strength = Force(count * levers->strength.si);
    answer.plastic_moment = levers->plastic_moment;
    answer.bending_share = levers->bending_share;
    answer.presses = levers->bending_share > 0;
    answer.mode = levers->bending_share > 1    ? TeeMode::flange
                  : levers->bending_share >= 0 ? TeeMode::flange_and_bolts
                                               : TeeMode::bolts;
  }
  if (!job.pull) return {};
  const Force on_one(job.pull->si / count);
  const auto least = try_prying_thickness(plate, job.bolt_strength, on_one);
  if (!least) return prying_error(least.error());
  answer.minimum_thickness = least->least;
  if (!job.thickness || on_one.si > levers->strength.si) return {};
  const auto edge = try_prying_force(plate, job.bolt_strength, *job.thickness, on_one);
  if (!edge) return prying_error(edge.error());
  answer.edge_force = Force(count * edge->si);
  answer.bolt_load = Force(on_one.si + edge->si);
  return {};
}

/// The T-stub, all its bolts together.
inline std::optional<Error> add_tee(const PryingJob& job, PlatePrying& answer) {
  const TeeStub any = tee_of(job, job.thickness.value_or(Length(1e-3)));
  const auto found = try_tee_strength(any);
  if (!found) return prying_error(found.error());
  const double m = job.bolt_to_web.si;
  const double n = std::min(job.bolt_to_edge.si, 1.25 * m);
  answer.bolt_lever = Length(m);
  answer.edge_lever = Length(n);
  // Mode 2 meets mode 3 where the plate alone bears half of the bolts on either side.
  answer.no_prying_thickness =
      Length(NoPryingThickness::eval(any.bolts.si / 2, m, any.effective_length.si, any.yield_strength.si));
  if (job.thickness) {
    answer.strength = found->strength;
    answer.plastic_moment = found->plastic_moment;
    answer.flange = found->flange;
    if (found->combined) answer.combined = *found->combined;
    answer.mode = found->mode;
    answer.presses = found->prying && found->mode != TeeMode::bolts;
  }
  if (!job.pull) return {};
  // Thicker plates that stay off their support may bear less than thinner ones whose edges press. The least thickness is
  // the one from which on all bear the pull: that without prying, unless the edges press up to there.
  const auto bears_alone =
      Length(NoPryingThickness::eval(job.pull->si / 2, m, any.effective_length.si, any.yield_strength.si));
  const auto there = try_tee_strength(tee_of(job, bears_alone));
  if (!there) return prying_error(there.error());
  if (!there->prying) {
    answer.minimum_thickness = bears_alone;
    return {};
  }
  const double mode_1 = job.pull->si / TeeFlangeStrength::eval(1.0, m, n, job.washer.value_or(Length()).si / 4);
  const double mode_2 = ((m + n) * job.pull->si - n * any.bolts.si) / 2;
  answer.minimum_thickness = Length(std::sqrt(
      std::max(mode_1, mode_2) / PlatePlasticMoment::eval(any.effective_length.si, 1.0, any.yield_strength.si)));
  return {};
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<PlatePrying> try_plate_prying(const PryingJob& job) {
  if (auto error = detail::prying_job_error(job)) return *error;
  PlatePrying answer;
  answer.form = job.tributary ? PryingForm::aisc : PryingForm::t_stub;
  answer.bolts_alone = Force(static_cast<double>(job.bolts) * job.bolt_strength.si);
  if (auto error = job.tributary ? detail::add_aisc(job, answer) : detail::add_tee(job, answer)) return *error;
  answer.strength_share = answer.strength.si / answer.bolts_alone.si;
  if (job.pull) answer.utilisation = job.pull->si / answer.strength.si;
  if (answer.utilisation > 1)
    answer.notices.push_back({"plate_pries",
                              "Plate and bolts together do not hold this pull. Use a thicker plate, bolts nearer the "
                              "web, or stronger bolts."});
  if (job.effective_length && !job.elongation_length && answer.presses.value_or(true))
    answer.notices.push_back(
        {"prying_assumed",
         "The edges are taken to press. With long bolts they may stay off, and then the plate bears "
         "as little as half: give elongation_length and bolt_area to know."});
  if (answer.form == PryingForm::t_stub)
    answer.notices.push_back({"tee_formulas_second_hand",
                              "Formulas of EN 1993-1-8 Table 6.2 were seen second hand, the form without prying is "
                              "from memory, not checked against the standard.",
                              true});
  answer.notices.push_back({"strength_alone",
                            "Strengths are those of plate and bolt as given; welds, web and the code's other checks "
                            "are left out.",
                            true});
  return answer;
}

TAUTEN_FUNCTION PlatePrying plate_prying(const PryingJob& job) { return try_plate_prying(job).value(); }

TAUTEN_FUNCTION Derivation derivation_of(const PryingJob& job, const PlatePrying& answer) {
  const bool aisc = answer.form == PryingForm::aisc;
  Derivation out;
  out.title = std::string("Prying after ") + word_of(answer.form);
  out.given = {figure("load", job.bolt_strength, "strength of one bolt"),
               figure("bolts", static_cast<double>(job.bolts)),
               figure("stress", job.plate_strength, "of the plate"),
               figure("length", aisc ? *job.tributary : *job.effective_length,
                      aisc ? "of plate for one bolt" : "effective, of all rows"),
               figure(aisc ? "bolt_lever" : "web_distance", answer.bolt_lever,
                      aisc ? "distance to the web less half a diameter" : ""),
               figure(aisc ? "edge_lever" : "edge_distance", answer.edge_lever,
                      aisc ? "distance to the edge, at most 1.25 of that to the web, and half a diameter"
                           : "at most 1.25 of the distance to the web")};
  if (job.thickness) out.given.push_back(figure("thickness", *job.thickness, "of the plate"));
  const double design = (aisc ? job.resistance_factor : 1) * job.plate_strength.si;
  const double bolts = aisc ? job.bolt_strength.si : answer.bolts_alone.si / 2;
  const double length = (aisc ? job.tributary : job.effective_length)->si;
  step(out.steps, aisc ? "for one bolt at its full strength" : "for the bolts on one side", no_prying_thickness, bolts,
       answer.bolt_lever.si, length, design);
  if (job.thickness) {
    const double t = job.thickness->si;
    const double moment =
        step(out.steps, aisc ? "with the resistance factor" : "", plate_plastic_moment, length, t, design);
    if (aisc) {
      const double net = 1 - job.hole->si / length;
      const double ratio = answer.bolt_lever.si / answer.edge_lever.si;
      const double alpha = step(out.steps, "below 0 the bolts decide, above 1 the plate", prying_bending_share,
                                answer.no_prying_thickness.si, t, net, ratio);
      if (alpha >= 0)
        step(out.steps, "", prying_strength_share, answer.no_prying_thickness.si, t, net, std::min(alpha, 1.0));
      if (answer.edge_force.si > 0)
        step(out.steps, "per bolt", edge_force, job.pull->si / static_cast<double>(job.bolts), answer.bolt_lever.si,
             moment, answer.edge_lever.si);
    } else if (answer.combined.si == answer.combined.si) {
      step(out.steps, "mode 1", tee_flange_strength, moment, answer.bolt_lever.si, answer.edge_lever.si,
           job.washer.value_or(Length()).si / 4);
      step(out.steps, "mode 2", tee_combined_strength, moment, answer.bolt_lever.si, answer.edge_lever.si,
           answer.bolts_alone.si);
    }
    out.found.push_back(figure("strength", answer.strength, "of plate and bolts"));
  }
  out.found.push_back(figure("bolts_alone", answer.bolts_alone, "if nothing pried"));
  if (job.pull) out.found.push_back(figure("minimum_thickness", answer.minimum_thickness, "of the plate for the pull"));
  out.verdict = answer.mode ? std::string("Gives way first: ") + word_of(*answer.mode) + "."
                            : "As thick, plate and bolts bear the pull together.";
  out.notices = answer.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
