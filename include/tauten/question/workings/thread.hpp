// The answer about a thread, gathered from the tables of threads, heads, holes, bolts and nuts.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/base/source_text.hpp"
#include "tauten/part/breaking_torque.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/hole.hpp"
#include "tauten/part/nut.hpp"
#include "tauten/question/thread_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline DiameterLimits limits_of(const SizeLimits& size) { return {size.min, size.max}; }

/// \return what a bolt of a class bears, or an error if the class is not made in this size
inline Outcome<ClassLoads> class_loads(const Thread& t, const std::string& name) {
  const Outcome<RatedLoad> proof = try_proof_load(t, name);
  if (!proof) return proof.error();
  const Outcome<RatedLoad> tensile = try_tensile_load(t, name);
  if (!tensile) return tensile.error();
  ClassLoads loads{name, proof->value, tensile->value, {}, false, {}, {}, source_text(proof->source)};
  if (const auto torque = try_minimum_breaking_torque(t, name)) {
    loads.breaking_torque = torque->value;
    loads.breaking_torque_is_estimate = torque->seen >= Seen::memory;
  }
  if (const auto nut = try_matching_nut(name))
    if (const auto load = try_nut_proof_load(t, *nut)) {
      loads.nut_class = *nut;
      loads.nut_proof_load = load->value;
    }
  return loads;
}

/// A limit that is left out, and why.
inline Notice left_out(const Error& error) {
  std::string sentence = std::string(error.what()) + ".";
  sentence[0] = sentence[0] == 't' ? 'T' : sentence[0];
  return {"limits_left_out", sentence};
}

inline void note_estimates(ThreadFacts& facts) {
  std::string names;
  for (const ClassLoads& one : facts.classes)
    if (one.breaking_torque_is_estimate) names += (names.empty() ? "" : ", ") + one.property_class;
  if (names.empty()) return;
  facts.notices.push_back(
      {"breaking_torque_estimated",
       "The torques that twist a bolt off are computed from figures that were not seen in print, or are "
       "judgement, for class " +
           names + "; a bolt may give way somewhat below them.",
       true});
}

/// \return the classes that are made today, each once
inline std::vector<std::string> made_classes() {
  std::vector<std::string> names;
  for (const table::PropertyClassRow& row : table::property_classes)
    if (!row.withdrawn && (names.empty() || names.back() != row.name)) names.emplace_back(row.name);
  return names;
}

inline ThreadFacts dimensions_of(const Thread& t) {
  ThreadFacts facts{};
  facts.name = t.name();
  facts.designation = t.designation();
  facts.diameter = t.diameter;
  facts.pitch = t.pitch;
  facts.coarse = t.coarse;
  facts.selected = t.selected;
  facts.tolerance_class = t.tolerance_class;
  facts.pitch_diameter = t.pitch_diameter();
  facts.minor_diameter = t.minor_diameter();
  facts.root_diameter = t.root_diameter();
  facts.stress_diameter = t.stress_diameter();
  facts.stress_area = t.stress_area();
  facts.lead_angle = t.lead_angle();
  if (const auto bolt = try_head(t, "ISO 4014")) facts.socket = bolt->width;
  if (const auto screw = try_head(t, "ISO 4762")) facts.key = screw->width;
  for (const auto& [series, hole] :
       {std::pair{HoleSeries::fine, &ThreadFacts::fine_hole}, std::pair{HoleSeries::medium, &ThreadFacts::medium_hole},
        std::pair{HoleSeries::coarse, &ThreadFacts::coarse_hole}})
    if (const auto found = try_clearance_hole(t, series)) facts.*hole = found->diameter;
  return facts;
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<ThreadFacts> try_thread_facts(const ThreadJob& job) {
  const Outcome<Thread> found = try_parse_thread(job.thread);
  if (!found) return found.error();
  const Thread& t = *found;
  ThreadFacts facts = detail::dimensions_of(t);

  const std::string& given = t.tolerance_class;
  const bool of_nut = given.find_first_of("GH") != std::string::npos;
  const auto bolt = try_bolt_limits(t, of_nut ? "6g" : given);
  const auto nut = try_nut_limits(t, of_nut || given.empty() ? given : "6H");
  if (bolt)
    facts.bolt = ThreadLimits{bolt->tolerance_class, detail::limits_of(bolt->diameter),
                              detail::limits_of(bolt->pitch_diameter), detail::limits_of(bolt->root_diameter)};
  else
    facts.notices.push_back(detail::left_out(bolt.error()));
  if (nut)
    facts.nut = ThreadLimits{nut->tolerance_class,
                             {nut->diameter_min, {}},
                             detail::limits_of(nut->pitch_diameter),
                             detail::limits_of(nut->minor_diameter)};
  else
    facts.notices.push_back(detail::left_out(nut.error()));

  if (!job.property_class.empty()) {
    const Outcome<ClassLoads> loads = detail::class_loads(t, job.property_class);
    if (!loads) return loads.error();
    facts.classes.push_back(*loads);
    detail::note_estimates(facts);
    return facts;
  }
  for (const std::string& name : detail::made_classes())
    if (const auto loads = detail::class_loads(t, name)) facts.classes.push_back(*loads);
  detail::note_estimates(facts);
  return facts;
}

TAUTEN_FUNCTION ThreadFacts thread_facts(const ThreadJob& job) { return try_thread_facts(job).value(); }

}  // namespace tauten::TAUTEN_ABI
