#include "command/free_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <optional>
#include <utility>

#include "command/notices_text.hpp"
#include "command/table.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/workings/instruction.hpp"
#include "tauten/question/workings/stop_sentence.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::command {

namespace {

std::string rounded_torque(Torque torque) { return number_text(torque.si, 3) + " N.m"; }

/// A torque without its unit. The upper end of a band that no fastener reaches is left open.
std::string figure(Torque torque) {
  return torque.si >= 0.1 * never_reached.median ? "-" : fmt::format("{:.0f}", torque.si);
}

/// Chances below a thousandth are not resolved by the typical number of trials.
std::string chance_text(double chance) {
  return chance < 1e-3 ? "<0.1" : chance < 0.1 ? number_text(100 * chance, 2) : fmt::format("{:.0f}", 100 * chance);
}

/// The chance of coming free, cut off: a plan takes no line that only seems to reach the wanted chance.
std::string reached_text(double chance) { return fmt::format("{:.0f}", std::floor(100 * chance)); }

/// The designation of ISO 261, or what is known of another thread.
std::string thread_text(const FreeJob& job) {
  for (const Thread& thread : threads_of(*job.diameter))
    if (detail::same_length(thread.pitch.si, job.pitch->si)) return thread.name();
  return fmt::format("{} mm x {} mm", number_text(job.diameter->shop()), number_text(job.pitch->shop()));
}

std::string band_text(const Band<Torque>& band) {
  return fmt::format("{} to {} N.m, typically {} N.m", number_text(band.low.si, 3), number_text(band.high.si, 3),
                     number_text(band.nominal.si, 3));
}

std::string use_text(const AidUse& use, bool has_nut) {
  const std::string aid = plain_words(word_of(use.aid));
  if (use.aid == Aid::fluid)
    return fmt::format("{}{} {} h", use.thin_fluid ? "thin " : "", aid, number_text(use.soak_hours, 3));
  if (use.aid == Aid::heat)
    return fmt::format("heat the {} by {} K (to about {:.0f} \u00b0C)", has_nut ? "nut" : "part",
                       number_text(use.nut_rise.si, 3), room_celsius + use.nut_rise.si);
  if (use.aid == Aid::cold) return fmt::format("chill the bolt by {} K", number_text(use.bolt_rise.si, 3));
  return aid;
}

std::string aids_text(const FreeJob& job, const std::vector<AidUse>& aids) {
  std::string out;
  for (const AidUse& use : aids) out += (out.empty() ? "" : ", ") + use_text(use, detail::has_nut(job));
  return out.empty() ? "just try" : out;
}

std::string minutes_text(double minutes) {
  return minutes < 90 ? fmt::format("{:.0f} min", minutes) : fmt::format("{:.0f} h", minutes / 60);
}

std::string stop_text(const FreeJob& job, const Free& answer) {
  return detail::stop_sentence(job, answer, rounded_torque(answer.stop_at), number_text(100 * job.shear_risk, 3) + " %",
                               job.limit ? rounded_torque(*job.limit) : std::string());
}

std::string chances_text(const FreeJob& job, const Free& answer) {
  const Chances& c = answer.chances;
  Table table(
      {{"End", ""}, {"Chance", "%", true}, {"Low", "N.m", true}, {"Typical", "N.m", true}, {"High", "N.m", true}});
  const auto row = [&](const char* end, const std::string& chance, const std::optional<Band<Torque>>& band) {
    if (band)
      table.row({end, chance, figure(band->low), figure(band->nominal), figure(band->high)});
    else
      table.row({end, chance, "-", "-", "-"});
  };
  row("comes free", chance_text(c.free), answer.breakaway);
  row("shears", chance_text(c.shear), answer.shear);
  row(detail::end_of_drive(job.drive).c_str(), chance_text(c.round), answer.round);
  row("tool fails", chance_text(c.tool), answer.tool);
  row("does not move", chance_text(c.not_moving), std::nullopt);
  if (answer.arm) row("the arm reaches", "", answer.arm);
  return "\nUp to " + rounded_torque(c.limit) + "\n" + table.text() +
         paragraph(fmt::format(
             "Chance: outcome on the way from {} to that torque; sampling error about {} percentage points. "
             "Low, Typical, High: torque at which that outcome would come, whether or not another comes "
             "first; nine of ten cases lie between Low and High.",
             job.held && !job.held_untreated ? "the " + rounded_torque(*job.held) + " that it has held" : "zero",
             number_text(100 * answer.standard_error, 2)));
}

/// What is left of the pull once some of it has been held.
std::string if_held_text(const FreeJob& job, const Free& answer) {
  if (answer.if_held.empty()) return "";
  std::string drive_gives = detail::end_of_drive(job.drive);
  drive_gives[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(drive_gives[0])));
  Table table({{"Not moved at", "N.m", true},
               {"Free", "%", true},
               {"Shears", "%", true},
               {drive_gives.c_str(), "%", true},
               {"Tool fails", "%", true},
               {"Does not move", "%", true}});
  for (const IfHeld& one : answer.if_held) {
    const Chances& c = one.chances;
    table.row({figure(one.held), chance_text(c.free), chance_text(c.shear), chance_text(c.round), chance_text(c.tool),
               chance_text(c.not_moving)});
  }
  return "\nIf it has not moved, then from there up to " + rounded_torque(answer.chances.limit) + "\n" + table.text() +
         paragraph(fmt::format(
             "The accepted chance, {} %, holds for shearing and for damage to the drive, each over the whole pull. "
             "The higher the torque a bolt has withstood, the more likely it is to shear rather than come free. Give "
             "that torque as held to find where to stop with this very bolt.",
             number_text(100 * job.shear_risk, 3)));
}

std::string plan_text(const FreeJob& job, const Free& answer) {
  const bool lobes = job.drive == DriveFit::hexalobular;
  Table table({{"", ""},
               {"What to do", "", false, 36},
               {"Stop at", "N.m", true},
               {"Free", "%", true},
               {"Shears", "%", true},
               {lobes ? "Recess" : "Corners", "%", true},
               {"Tool", "%", true},
               {"Time", "", true},
               {"Damage", "0 to 4", true}});
  for (std::size_t i = 0; i < answer.steps.size(); ++i) {
    const PlanStep& step = answer.steps[i];
    const bool cut = !step.aids.empty() && step.aids.back().aid == Aid::cut;
    table.row({i == answer.next ? ">" : "", aids_text(job, step.aids), cut ? "-" : figure(step.stop_at),
               cut ? "-" : reached_text(step.chances.free), cut ? "-" : chance_text(step.chances.shear),
               cut ? "-" : chance_text(step.chances.round), cut ? "-" : chance_text(step.chances.tool),
               minutes_text(step.minutes), std::to_string(step.damage)});
  }
  const PlanStep& next = answer.steps[answer.next];
  const PlanStep& enough = answer.steps[answer.enough];
  std::string out =
      "\nWhat to do\n" + table.text() +
      paragraph(
          "Each line is for a fastener that the lines above have not freed. The accepted chance is shared among "
          "the lines, so that each stops lower than a single pull could.") +
      paragraph(
          "Damage: 0 none, 1 marks, 2 fastener, drive or tool may suffer, 3 its neighbours may suffer, 4 it is "
          "destroyed.") +
      paragraph(fmt::format("Next: {}; {}.", aids_text(job, next.aids), next.why));
  const bool cut_only = answer.enough + 1 == answer.steps.size();
  if (!cut_only)
    out += paragraph(fmt::format("By the line \"{}\", {} % have come free.", aids_text(job, enough.aids),
                                 reached_text(enough.freed_by)));
  else if (answer.steps.size() > 1)
    out += paragraph(fmt::format("All lines before cutting free {} %.",
                                 reached_text(answer.steps[answer.steps.size() - 2].freed_by)));
  if (std::any_of(answer.steps.begin(), answer.steps.end(),
                  [](const PlanStep& step) { return !step.aids.empty() && step.aids.back().aid == Aid::impact; }))
    out += paragraph("An impact wrench shows no torque: choose one whose rated torque stays below the stop.");
  return out;
}

/// How each step is done, in the order of the plan, each once.
std::string instructions_text(const Free& answer) {
  std::string out = "\nHow each step is done\n";
  std::vector<std::string> told;
  for (const PlanStep& step : answer.steps)
    for (const Instruction& one : step.instructions) {
      if (std::find(told.begin(), told.end(), one.key) != told.end()) continue;
      told.emplace_back(one.key);
      out += paragraph(fmt::format("{}: {} {} {}", one.title, one.what, one.how_long, one.watch), "- ");
    }
  return out;
}

std::string capacities_text(const Free& answer) {
  std::string out = "\nStrength of each part\n";
  for (const Capacity& c : answer.capacities)
    out += paragraph(fmt::format("{}: {} ({}, {}).", c.part, band_text(c.torque), c.source.document, c.source.place),
                     "- ");
  return out;
}

/// Whether what was learned last, and is told, is of fasteners that had the aids.
bool learned_treated(const FreeJob& job) {
  return std::any_of(job.loosened.begin(), job.loosened.end(), [](const Neighbour& one) { return one.treated; });
}

/// A preload is meant to be about three quarters of the proof load, which is 0.9 of yield and, of class 8.8, 0.73 of the
/// tensile strength (ISO 898-1): shares of it at which a bolt may yield or break.
constexpr double yields_at = 1 / (0.75 * 0.9), breaks_at = 1 / (0.75 * 0.73);

std::string after_text(const Free& answer) {
  const AfterRelease& after = answer.after;
  std::string out = paragraph(
      fmt::format(
          "Retightened to the specified torque, the bolt would reach {:.0f} to {:.0f} % of the intended preload "
          "(typically {:.0f} %){}.",
          100 * after.preload_ratio.low, 100 * after.preload_ratio.high, 100 * after.preload_ratio.nominal,
          after.preload_ratio.high >= breaks_at   ? "; it may break"
          : after.preload_ratio.high >= yields_at ? "; it may yield"
                                                  : ""),
      "- ");
  return "\nAfterwards\n" + out + list_of(after.notices);
}

}  // namespace

std::string page_of(const FreeJob& job, const Free& answer, bool with_instructions) {
  const std::string drive = plain_words(word_of(job.drive));
  const std::string tool =
      job.drive == DriveFit::hexalobular
          ? fmt::format("{} drive number {}", drive, *job.drive_number)
          : fmt::format("{} mm across flats, {}", number_text(job.width_across_flats->shop()), drive);
  std::string out = paragraph(stop_text(job, answer));
  out += paragraph(fmt::format("{}, {}. Rust: {}.", thread_text(job), tool, rust_state(job.rust).title));
  if (!job.aids.empty()) out += paragraph("Aids already used: " + aids_text(job, job.aids) + ".");
  out += paragraph(fmt::format("Breakaway torque: {}, in nine of ten cases.", band_text(answer.breakaway)));
  if (job.held)
    out += paragraph(fmt::format("It withstood {}{} without moving; outcomes below that are excluded.",
                                 rounded_torque(*job.held),
                                 job.aids.empty()     ? ""
                                 : job.held_untreated ? ", before the aids,"
                                                      : ", after the aids,"));
  if (answer.learned)
    out += paragraph(
        fmt::format("This includes the results of {} of the same flange; their median is between {} and {}{}.",
                    answer.learned->count == 1 ? "one fastener" : std::to_string(answer.learned->count) + " fasteners",
                    rounded_torque(answer.learned->median.low), rounded_torque(answer.learned->median.high),
                    job.aids.empty()       ? ""
                    : learned_treated(job) ? ", after the aids"
                                           : ", before the aids"));
  out += chances_text(job, answer) + if_held_text(job, answer) + capacities_text(answer) + plan_text(job, answer) +
         (with_instructions ? instructions_text(answer) : "") + after_text(answer);
  return out + "\nTake care\n" + list_of(answer.notices);
}

}  // namespace tauten::command
