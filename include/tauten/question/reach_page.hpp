// The page of a reach: what to set on the wrench, what arrives, and what makes it uncertain.
#pragma once

#include <algorithm>

#include "tauten/base/plain_words.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/reach_job.hpp"
#include "tauten/question/workings/reach_drawing.hpp"
#include "tauten/tool/hand.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Columns of the drawing; the page stays readable beside a terminal of eighty.
inline constexpr int drawing_columns = 72;

inline PageTable contribution_table(const Reach& reach) {
  PageTable table{"What makes it uncertain",
                  {{"Cause"}, {"Full width", "%", true}, {"Of the band", "%", true}, {"Basis"}},
                  {},
                  {"Full width: any value within it is equally likely. Of the band: share of the variance."}};
  const double all = combined_uncertainty(reach.contributions);
  std::vector<const TorqueContribution*> order;
  for (const TorqueContribution& c : reach.contributions) order.push_back(&c);
  std::sort(order.begin(), order.end(),
            [](const auto* a, const auto* b) { return a->range > b->range || (a->range == b->range && a < b); });
  for (const TorqueContribution* c : order) {
    const double share = c->uncertainty() / all;
    table.rows.push_back({plain_words(c->cause), number_text(100 * c->range, 3),
                          number_text(std::round(100 * share * share), 3), c->is_estimate ? "estimate" : "given"});
  }
  return table;
}

/// \return how the extensions are to stand, whether or not somebody gave their angles
inline std::string keep_the_angle(const std::vector<ExtensionLink>& extensions, const PageUnits& units) {
  std::string angles;
  bool in_line = true;
  for (const ExtensionLink& link : extensions) {
    angles += (angles.empty() ? "" : ", ") + units.typed(link.angle);
    in_line = in_line && link.angle.si == 0;
  }
  const std::string which = extensions.size() == 1 ? "Keep the extension " : "Keep the extensions ";
  return which +
         (in_line                  ? "in line with the wrench (" + angles + ")"
          : extensions.size() == 1 ? "at " + angles + " to the wrench"
                                   : "at their angles to the wrench (" + angles + ")") +
         ": at another angle another torque arrives.";
}

}  // namespace detail

/// \param job    what was asked
/// \param reach  what came of it
/// \return the answer laid out for people
inline Page page_of(const ReachJob& job, const Reach& reach, const PageUnits& units = {}) {
  const bool by_setting = job.known == ReachJob::Known::setting;
  const std::string setting = by_setting ? units.typed(reach.setting) : units.text(reach.setting);
  const std::string arrives = by_setting ? units.text(reach.arrives.nominal) : units.typed(reach.arrives.nominal);
  const std::string band = " (" + units.range(reach.arrives) + " in 19 of 20 cases).";
  Page page;
  page.headline = by_setting ? "Set to " + setting + ", the wrench applies " + arrives + " at the fastener" + band
                             : "Set the wrench to " + setting + " for " + arrives + " at the fastener" + band;

  const Length hand(job.wrench.length.si + job.hand_offset.si);
  page.actions.push_back("Pull with " + units.text(reach.hand_force) + ", square to the wrench, with the hand " +
                         units.typed(hand) + " from the drive.");
  if (!job.extensions.empty()) page.actions.push_back(detail::keep_the_angle(job.extensions, units));
  if (job.multiplier)
    page.actions.push_back(
        "Rest the arm of the multiplier on something that holds " +
        (reach.reaction_force.si > 0 ? units.text(reach.reaction_force) : units.text(reach.reaction_torque)) + ".");
  if (reach.wrench_accuracy > maximum_wrench_accuracy)
    page.actions.push_back("Do not tighten with this line of tools: its torque may be off by more than half.");
  else if (reach.arrives.nominal <= greatest_tightening_torque)
    page.actions.push_back("To carry this into a clamp load: tauten clamp --torque " +
                           number_text(reach.arrives.nominal.si, typed_digits) + "N.m --wrench-accuracy " +
                           number_text(100 * reach.wrench_accuracy, 3) + "%");

  if (job.multiplier)
    page.figures = {{"Input of the multiplier", units.text(reach.behind_extension)},
                    {"Reaction torque", units.text(reach.reaction_torque)}};
  if (reach.torsional_stiffness) {
    page.figures.push_back({"Twist of the bars", units.text(reach.twist)});
    page.figures.push_back({"Energy stored in the bars", units.text(reach.stored_energy)});
  }
  const ToolPlan plan = tool_plan(job, reach, [&](auto quantity) { return units.text(quantity, 4); });
  page.drawing = {draw_text(plan, detail::drawing_columns), draw_svg(plan)};
  page.tables = {detail::contribution_table(reach)};
  page.add(reach.notices, units);
  return page;
}

}  // namespace tauten::TAUTEN_ABI
