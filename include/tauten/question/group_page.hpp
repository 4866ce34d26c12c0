// The page of a group of bolts: which bolt carries most by which model, what other models give, the loads as arrows.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>

#include "tauten/base/plain_words.hpp"
#include "tauten/base/words.hpp"
#include "tauten/drawing/pattern_sketch.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/group_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// \return the bolts as they are drawn, with their loads
inline PatternSketch sketch_of(const GroupJob& job, const BoltGroup& group, const PageUnits& units = {}) {
  PatternSketch sketch{job.positions};
  sketch.outline = job.outline;
  for (const std::vector<Force>& force : group.forces) sketch.arrows.push_back({force[0].si, force[1].si});
  for (const Force load : group.loads) sketch.words.push_back(units.text(load));
  sketch.worst = group.worst;
  return sketch;
}

namespace detail {

/// Bolts in a table; of more, those with the largest loads.
inline constexpr std::size_t most_bolt_rows = 40;

inline PageTable bolt_table(const GroupJob& job, const BoltGroup& group, const PageUnits& units) {
  PageTable table{"Loads of the bolts",
                  {{"Bolt", "", true}, {"x", units.unit(Dim::length), true}, {"y", units.unit(Dim::length), true}},
                  {},
                  {}};
  const std::string unit = units.unit(Dim::force);
  const bool shears = !group.forces.empty(), pulls = !group.tension.empty();
  if (shears) table.columns.push_back({"Shear", unit, true});
  if (pulls) table.columns.push_back({"Tension", unit, true});
  if (shears && pulls) table.columns.push_back({"Together", unit, true});
  if (job.preload) {
    table.columns.push_back({"In the bolt", unit, true});
    table.columns.push_back({"Clamp load", unit, true});
  }
  std::vector<std::size_t> bolts;
  for (std::size_t i = 0; i < group.loads.size(); ++i) bolts.push_back(i);
  if (bolts.size() > most_bolt_rows) {
    std::sort(bolts.begin(), bolts.end(), [&](std::size_t a, std::size_t b) {
      return group.loads[a].si != group.loads[b].si ? group.loads[a].si > group.loads[b].si : a < b;
    });
    bolts.resize(most_bolt_rows);
    table.legend.push_back("The " + std::to_string(most_bolt_rows) + " bolts with the largest loads of " +
                           std::to_string(group.loads.size()) + ".");
  }
  for (const std::size_t i : bolts) {
    const auto place = [&](double x) { return units.cell(Length(std::fabs(x) < 1e-9 ? 0 : x)); };
    std::vector<std::string> row = {std::to_string(i + 1), place(job.positions[i].x), place(job.positions[i].y)};
    if (shears) row.push_back(units.cell(Force(std::hypot(group.forces[i][0].si, group.forces[i][1].si))));
    if (pulls) row.push_back(units.cell(group.tension[i]));
    if (shears && pulls) row.push_back(units.cell(group.loads[i]));
    if (job.preload) {
      row.push_back(units.cell(group.bolt_loads[i]));
      row.push_back(group.open[i] ? "open" : units.cell(group.clamp_loads[i]));
    }
    table.rows.push_back(std::move(row));
  }
  if (job.worst_clocking) table.legend.push_back("Each bolt with the moment in its worst direction.");
  if (pulls)
    table.legend.push_back("Negative tension: the part is pressed on at that bolt, which carries nothing of it.");
  return table;
}

/// \return whether this is a model of the answer, not a neighbour
inline bool is_chosen(const BoltGroup& group, const ModelLoad& one) {
  return group.model == one.model || group.model.starts_with(one.model + " and ") ||
         group.model.ends_with(" and " + one.model);
}

inline PageTable model_table(const BoltGroup& group, const PageUnits& units) {
  PageTable table{
      "The same load by other models", {{"Model"}, {"Largest", "", true}, {"Remark", "", false, 60}}, {}, {}};
  for (const ModelLoad& one : group.models)
    table.rows.push_back({plain_words(one.model), one.largest.si == one.largest.si ? units.text(one.largest) : "-",
                          is_chosen(group, one) ? "this answer" : one.why_not});
  return table;
}

}  // namespace detail

/// \param job    what was asked
/// \param group  what came of it
/// \return the answer laid out for people
inline Page page_of(const GroupJob& job, const BoltGroup& group, const PageUnits& units = {}) {
  const bool shears = !group.forces.empty(), pulls = !group.tension.empty();
  Page page;
  page.standing_cautions = false;
  page.headline = std::to_string(group.loads.size()) + " bolts, model " + plain_words(group.model) + ": bolt " +
                  std::to_string(group.worst) + " carries most, " + units.text(group.largest) +
                  (shears && pulls ? " of tension and shear together"
                   : shears        ? " of shear"
                                   : " of tension") +
                  (job.worst_clocking ? ", in the worst direction of the moment." : ".");
  if (group.slip > 1)
    page.headline += " The joint slips: the load is " + number_text(group.slip, 2) + " times what friction holds.";
  double low = 0, high = 0;
  for (const ModelLoad& one : group.models) {
    if (detail::is_chosen(group, one) || !(one.largest.si == one.largest.si)) continue;
    if (shears && pulls) continue;  // each neighbour has but one of the two
    low = low == 0 ? one.largest.si : std::min(low, one.largest.si);
    high = std::max(high, one.largest.si);
  }
  if (high > 0)
    page.headline += (low == high ? " The other model gives " : " Other models give ") +
                     (low == high ? units.text(Force(high)) : units.range(Force(low), Force(high))) + ".";
  if (job.preload) {
    const auto worst = std::max_element(group.bolt_loads.begin(), group.bolt_loads.end(),
                                        [](Force a, Force b) { return a.si < b.si; });
    const auto least = std::min_element(group.clamp_loads.begin(), group.clamp_loads.end(),
                                        [](Force a, Force b) { return a.si < b.si; });
    page.headline += " With " + units.typed(*job.preload) + " preload at most " + units.text(*worst) + " in a bolt; " +
                     (least->si > 0 ? "clamp load at least " + units.text(*least) + "." : "the joint opens.");
  }
  page.actions.push_back(
      "Compare the largest load with what the bolt bears: tauten thread --thread M16 --class 8.8 gives proof loads. "
      "The code that applies sets the margin.");
  if (job.preload && !(group.slip <= 1) && job.friction)
    page.actions.push_back("Raise preload or friction, or let dowels or bearing bolts carry the load in the plane.");
  if (group.coefficient == group.coefficient)
    page.figures.push_back({job.model == GroupModel::instantaneous_centre
                                ? "Strength of the group over that of one bolt"
                                : "Load over that of the worst bolt",
                            number_text(group.coefficient, 4)});
  if (group.torque_coefficient.si == group.torque_coefficient.si)
    page.figures.push_back({"Torque over the load of the worst bolt", units.text(group.torque_coefficient, 4)});
  if (group.centre.size() == 2) {
    // What is left of a sum that is zero is no place.
    const auto place = [&](Length at) { return units.text(std::fabs(at.si) < 1e-9 ? Length(0) : at); };
    page.figures.push_back(
        {group.model == word_of(GroupModel::instantaneous_centre) ? "The part turns about" : "Centre of the bolts",
         "x " + place(group.centre[0]) + ", y " + place(group.centre[1])});
  }
  if (group.edge_pressure.si == group.edge_pressure.si)
    page.figures.push_back({"Maximum pressure on the support", units.text(group.edge_pressure)});
  if (group.slip == group.slip) page.figures.push_back({"Utilisation against slip", PageUnits::percent(group.slip)});
  const PatternSketch sketch = sketch_of(job, group, units);
  page.drawing = {sketch_text(sketch), sketch_svg(sketch)};
  page.tables.push_back(detail::bolt_table(job, group, units));
  page.tables.push_back(detail::model_table(group, units));
  page.add(group.notices, units);
  return page;
}

}  // namespace tauten::TAUTEN_ABI
