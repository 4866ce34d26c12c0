#include "command/reach_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "command/notices_text.hpp"
#include "command/table.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/drawing/reach_drawing.hpp"

namespace tauten::command {

namespace {

/// Columns of the drawing; the page stays readable beside a terminal of eighty.
constexpr int drawing_columns = 72;

std::string full_torque(Torque torque) { return quantity_text(torque.si, Dim::torque); }

std::string contributions_text(const Reach& answer) {
  const double all = combined_uncertainty(answer.contributions);
  std::vector<const TorqueContribution*> order;
  for (const TorqueContribution& c : answer.contributions) order.push_back(&c);
  std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) { return a->range > b->range; });
  Table table({{"Cause", ""}, {"Full width", "%", true}, {"Of the band", "%", true}, {"Basis", ""}});
  for (const TorqueContribution* c : order) {
    const double share = c->uncertainty() / all;
    table.row({plain_words(c->cause), number_text(100 * c->range, 3), fmt::format("{:.0f}", 100 * share * share),
               c->is_estimate ? "estimate" : "given"});
  }
  return table.text() +
         paragraph("Full width: any value within it is equally likely. Of the band: share of the variance.") +
         paragraph(fmt::format("All of it goes into a clamp load as clamp --torque {} --wrench-accuracy {}%.",
                               number_text(answer.arrives.nominal.si, 4) + "N.m",
                               number_text(100 * answer.wrench_accuracy, 3)));
}

std::string notes_text(const ReachJob& job, const Reach& answer) {
  const auto force = [](Force f) { return detail::shop_text(Force(std::round(f.si))); };
  std::string out = paragraph("The hand pulls with " + force(answer.hand_force) + ".", "- ");
  if (answer.torsional_stiffness)
    out += paragraph(fmt::format("The bars twist by {} and hold {}.", quantity_text(answer.twist.si, Dim::angle, 3),
                                 quantity_text(answer.stored_energy.si, Dim::energy, 3)),
                     "- ");
  if (job.multiplier)
    out += paragraph(fmt::format("The multiplier takes {} and leans on its arm with {}{}.",
                                 full_torque(answer.behind_extension), full_torque(answer.reaction_torque),
                                 answer.reaction_force.si > 0 ? ", " + force(answer.reaction_force) : ""),
                     "- ");
  return out;
}

std::string titled_list(const char* title, const std::vector<Notice>& notices) {
  return notices.empty() ? "" : std::string("\n") + title + "\n" + list_of(notices);
}

}  // namespace

std::string page_of(const ReachJob& job, const Reach& answer) {
  const bool by_setting = job.known == ReachJob::Known::setting;
  std::string out =
      paragraph(by_setting ? fmt::format("Set to {}, the wrench gives {} at the fastener.", full_torque(answer.setting),
                                         full_torque(answer.arrives.nominal))
                           : fmt::format("Set the wrench to {} for {} at the fastener.", full_torque(answer.setting),
                                         full_torque(answer.arrives.nominal)));
  out += paragraph(fmt::format("Between {} and {} arrive in about 95 % of cases.", full_torque(answer.arrives.low),
                               full_torque(answer.arrives.high)));
  out += notes_text(job, answer);
  out += "\n" + reach_drawing_text(job, answer, drawing_columns);
  if (!out.ends_with('\n')) out += '\n';
  out += "\nWhat makes it uncertain\n" + contributions_text(answer);
  return out + titled_list("Mind", answer.warnings) + titled_list("Take care", answer.cautions);
}

}  // namespace tauten::command
