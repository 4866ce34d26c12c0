// The page of a stuck fastener: where to stop and the chances, what to do next, and what every part bears.
#pragma once

#include <algorithm>
#include <cctype>
#include <cmath>

#include "tauten/base/plain_words.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/loosening/release_model.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/part/inch_head.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/workings/capacity_list.hpp"
#include "tauten/question/workings/free_notices.hpp"
#include "tauten/question/workings/instruction.hpp"
#include "tauten/question/workings/stop_sentence.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// A chance in percent. Chances below a thousandth are not resolved by the typical number of trials.
inline std::string percent_cell(double chance) {
  return chance < 1e-3  ? "<0.1"
         : chance < 0.1 ? number_text(100 * chance, 2)
                        : number_text(std::round(100 * chance), 3);
}
/// The chance of coming free, cut off: none reads as certain, and no line only seems to reach the wanted chance.
inline std::string freed_cell(double chance) {
  return chance < 0.1 ? percent_cell(chance) : number_text(std::floor(100 * chance), 3);
}
/// The chance of staying stuck, which takes what was cut off there.
inline std::string stuck_cell(double chance) {
  return chance < 0.1 || chance >= 0.999 ? percent_cell(chance)
                                         : number_text(std::fmin(99, std::ceil(100 * chance)), 3);
}

/// A torque without its unit. The upper end of a band that no fastener reaches is left open.
inline std::string reached_torque_cell(Torque torque, const PageUnits& units) {
  return torque.si >= 0.1 * never_reached.median ? "-" : units.cell(torque);
}

/// The designation of ISO 261, or what is known of another thread.
inline std::string thread_text(const FreeJob& job, const PageUnits& units) {
  for (const Thread& thread : threads_of(*job.diameter))
    if (same_length(thread.pitch.si, job.pitch->si)) return thread.name();
  return units.typed(*job.diameter) + " x " + units.typed(*job.pitch);
}

inline std::string aids_text(const FreeJob& job, const std::vector<AidUse>& aids) {
  std::string out;
  for (const AidUse& use : aids) {
    std::string text = plain_words(word_of(use.aid));
    if (use.aid == Aid::fluid)
      text = (use.thin_fluid ? "thin " : "") + text + " " + number_text(use.soak_hours, 3) + " h";
    if (use.aid == Aid::heat)
      text = std::string("heat the ") + (has_nut(job) ? "nut" : "part") + " by " + number_text(use.nut_rise.si, 3) +
             " K (to about " + number_text(std::round(room_celsius + use.nut_rise.si)) + " \u00b0C)";
    if (use.aid == Aid::cold) text = "chill the bolt by " + number_text(use.bolt_rise.si, 3) + " K";
    out += (out.empty() ? "" : ", ") + text;
  }
  return out.empty() ? "just try" : out;
}

inline std::string drive_gives_title(const FreeJob& job) {
  std::string text = end_of_drive(job.drive);
  text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  return text;
}

/// "72 % come free by then, below 0.1 % shear, 28 % do not move"
/// \param harm_first  what breaks leads, where so much torque is no advice
inline std::string ends_text(const FreeJob& job, const Chances& c, bool harm_first) {
  const auto share = [](double chance, std::string (*cell)(double) = percent_cell) {
    return (chance < 1e-3 ? "below 0.1" : cell(chance)) + std::string(" % ");
  };
  const std::string then = " by then, ", free = share(c.free, freed_cell) + "come free",
                    shear = share(c.shear) + "shear";
  std::string text = harm_first ? shear + then : free + then + shear + ", ";
  if (c.round >= 1e-3)
    text += share(c.round) + (job.drive == DriveFit::hexalobular ? "strip the recess, " : "round off the corners, ");
  if (c.tool >= 1e-3) text += share(c.tool) + "break the tool, ";
  return text + (harm_first ? free + ", " : "") + share(c.not_moving, stuck_cell) + "do not move.";
}

/// A pull that most people can exert and gauge; above the median of one who stands braced, 350 N. Judgement.
inline constexpr Force steady_pull{450.0};

/// The shortest of some handles on which the stop is such a pull: a key or short handle, breaker bars, a long one.
/// Common practice, no source.
inline Length fitting_bar(Torque stop) {
  constexpr double lengths[] = {0.2, 0.6, 1.0, 1.5};
  for (const double length : lengths)
    if (stop.si <= steady_pull.si * length) return Length(length);
  return Length(lengths[3]);
}

/// Where to stop as it is now: what the first line of the plan leaves of the accepted chance for the lines after it.
inline Torque first_stop(const Free& answer) { return answer.steps.front().stop_at; }

/// \return true if a stop lies so far above what it has held that a wrench can tell them apart
inline bool is_worth_pulling(Torque stop, Torque held) { return stop.si > 1.01 * held.si; }

inline std::string free_headline(const FreeJob& job, const Free& answer, const PageUnits& units) {
  const bool assumed = !job.assumed_thread.empty();
  const std::string inch =
      assumed && !inch_bolt(*job.width_across_flats, is_internal(job.drive)).empty() ? inch_headline : "";
  const std::string what = inch + thread_text(job, units) +
                           (assumed ? std::string(job.class_assumed ? " and class " : "") +
                                          (job.class_assumed ? unmarked_class : "") + " assumed"
                                    : std::string()) +
                           ", " + plain_words(word_of(job.rust)) +
                           (job.aids.empty() ? std::string() : ", after " + aids_text(job, job.aids)) + ": ";
  const Torque first = first_stop(answer);
  const std::string stop = units.settable(first);
  const bool spins = answer.round.high.si <= 0 && answer.breakaway.high.si > 0;
  const bool held = job.held && !job.held_untreated;
  if (spins) return what + "do not pull, the tool spins on what is left of the drive.";
  if (answer.stop_at.si <= 0)
    return what + (answer.stop_limit == StopLimit::gain
                       ? "nothing holds it; it turns without torque."
                       : "do not turn it as it is: at any torque " +
                             stop_reason(job, answer.stop_limit, PageUnits::percent(job.shear_risk)) + ".");
  if (held && !is_worth_pulling(first, *job.held))
    return what + "do not pull it further as it is; it has held " + units.typed(*job.held) + ".";
  if (!(first.si > 0)) return what + "do not turn it as it is; follow the plan.";
  const bool too_high = job.limit && *job.limit > answer.stop_at;
  const std::string ends = (held ? "having held " + units.typed(*job.held) + ", " : std::string()) +
                           ends_text(job, too_high ? answer.chances : answer.steps.front().chances, too_high);
  if (too_high) return what + "stop at " + stop + ". Do not go to your limit, " + units.typed(*job.limit) + ": " + ends;
  const bool limited = job.limit && !(first < *job.limit);
  return what + "stop at " + (limited ? units.typed(*job.limit) + ", your limit; " : stop + "; ") + ends;
}

inline PageTable plan_table(const FreeJob& job, const Free& answer, const PageUnits& units) {
  const bool lobes = job.drive == DriveFit::hexalobular;
  PageTable table{
      "The plan",
      {{""},
       {"Step", "", false, 36},
       {"Stop at", units.unit(Dim::torque), true},
       {"Free", "%", true},
       {"Shears", "%", true},
       {lobes ? "Recess" : "Corners", "%", true},
       {"Tool", "%", true},
       {"Time", "", true},
       {"Damage", "0 to 4", true}},
      {},
      {"Each line is for a fastener that the lines above have not freed, and has a torque of its own to stop "
       "at: the lines share the accepted chance, " +
           PageUnits::percent(job.shear_risk) + ".",
       "Damage: 0 none, 1 marks, 2 fastener, drive or tool may suffer, 3 its neighbours may suffer, 4 it "
       "is destroyed."}};
  for (std::size_t i = 0; i < answer.steps.size(); ++i) {
    const PlanStep& step = answer.steps[i];
    const Chances& c = step.chances;
    const bool cut = !step.aids.empty() && step.aids.back().aid == Aid::cut;
    const auto cell = [&](const std::string& text) { return cut ? std::string("-") : text; };
    const double hours = step.minutes / 60;
    table.rows.push_back(
        {i == answer.next ? ">" : "", aids_text(job, step.aids), cell(units.settable_cell(step.stop_at)),
         cell(freed_cell(c.free)), cell(percent_cell(c.shear)), cell(percent_cell(c.round)), cell(percent_cell(c.tool)),
         step.minutes < 90 ? number_text(std::round(step.minutes)) + " min" : number_text(std::round(hours)) + " h",
         std::to_string(step.damage)});
  }
  const PlanStep& enough = answer.steps[answer.enough];
  if (answer.enough + 1 < answer.steps.size())
    table.legend.push_back("By the line \"" + aids_text(job, enough.aids) + "\", " + freed_cell(enough.freed_by) +
                           " % have come free.");
  else if (answer.steps.size() > 1)
    table.legend.push_back("All lines before cutting free " +
                           freed_cell(answer.steps[answer.steps.size() - 2].freed_by) + " %.");
  return table;
}

inline PageTable chances_table(const FreeJob& job, const Free& answer, const PageUnits& units) {
  const bool too_high = job.limit && *job.limit > answer.stop_at;
  const Chances& c = too_high ? answer.chances : answer.steps.front().chances;
  const std::string unit = units.unit(Dim::torque);
  PageTable table{
      "Up to " + (too_high ? units.typed(c.limit) : units.settable(c.limit)),
      {{"End"}, {"Chance", "%", true}, {"Low", unit, true}, {"Typical", unit, true}, {"High", unit, true}},
      {},
      {"Chance: outcome on the way from " +
       (job.held && !job.held_untreated ? "the " + units.typed(*job.held) + " that it has held" : std::string("zero")) +
       " to that torque; sampling error about " + number_text(100 * answer.standard_error, 2) +
       " percentage points. Low, Typical, High: torque at which that outcome would come, whether or not "
       "another comes first; nine of ten cases lie between Low and High."}};
  const auto row = [&](const std::string& end, const std::string& chance, const Band<Torque>& band) {
    table.rows.push_back({end, chance, reached_torque_cell(band.low, units), reached_torque_cell(band.nominal, units),
                          reached_torque_cell(band.high, units)});
  };
  row("comes free", freed_cell(c.free), answer.breakaway);
  row("shears", percent_cell(c.shear), answer.shear);
  row(end_of_drive(job.drive), percent_cell(c.round), answer.round);
  row("tool fails", percent_cell(c.tool), answer.tool);
  table.rows.push_back({"does not move", stuck_cell(c.not_moving), "-", "-", "-"});
  if (answer.arm) row("the arm reaches", "", *answer.arm);
  return table;
}

/// What is left of the pull once some of it has been held.
inline PageTable if_held_table(const FreeJob& job, const Free& answer, const PageUnits& units) {
  PageTable table{
      "If it has not moved, then from there up to " + std::string(job.limit ? "" : "the limit of any single pull, ") +
          (job.limit ? units.typed(answer.chances.limit) : units.settable(answer.chances.limit)),
      {{"Not moved at", units.unit(Dim::torque), true},
       {"Free", "%", true},
       {"Shears", "%", true},
       {drive_gives_title(job), "%", true},
       {"Tool fails", "%", true},
       {"Does not move", "%", true}},
      {},
      {"The accepted chance, " + PageUnits::percent(job.shear_risk) +
       ", holds for shearing and for damage to the drive, each over the whole pull. The higher the torque a bolt has "
       "withstood, the more likely it is to shear rather than come free. Give that torque as held to find where to "
       "stop with this very bolt."}};
  for (const IfHeld& one : answer.if_held) {
    const Chances& c = one.chances;
    table.rows.push_back({reached_torque_cell(one.held, units), freed_cell(c.free), percent_cell(c.shear),
                          percent_cell(c.round), percent_cell(c.tool), stuck_cell(c.not_moving)});
  }
  return table;
}

inline PageTable strength_table(const Free& answer, const PageUnits& units) {
  const std::string unit = units.unit(Dim::torque);
  PageTable table{
      "Strength of each part",
      {{"Part"}, {"Low", unit, true}, {"Typical", unit, true}, {"High", unit, true}, {"Basis", "", false, 60}},
      {},
      {}};
  for (const Capacity& c : answer.capacities)
    table.rows.push_back({c.part, reached_torque_cell(c.torque.low, units),
                          reached_torque_cell(c.torque.nominal, units), reached_torque_cell(c.torque.high, units),
                          std::string(c.source.document) + ", " + c.source.place});
  return table;
}

inline void add_free_figures(Page& page, const FreeJob& job, const Free& answer, const PageUnits& units) {
  const std::string drive = plain_words(word_of(job.drive));
  const auto range = [&](const Band<Torque>& band) { return units.range(band); };
  page.figures.push_back({"Fastener", thread_text(job, units) + ", " +
                                          (job.drive == DriveFit::hexalobular
                                               ? drive + " drive number " + std::to_string(*job.drive_number)
                                               : units.typed(*job.width_across_flats) + " across flats, " + drive)});
  page.figures.push_back({"Rust", rust_state(job.rust).title});
  const std::string when = job.aids.empty() ? "" : job.held_untreated ? " before the aids" : " after the aids";
  if (!job.aids.empty()) page.figures.push_back({"Aids already used", aids_text(job, job.aids)});
  page.figures.push_back({"Breakaway torque", range(answer.breakaway) + ", typically " +
                                                  units.text(answer.breakaway.nominal) + ", in nine of ten cases"});
  if (job.held)
    page.figures.push_back(
        {"Withstood without moving", units.typed(*job.held) + when + "; outcomes below that are excluded"});
  if (!answer.learned) return;
  // What was learned last, and is told, may be of fasteners that had the aids.
  const bool treated =
      std::any_of(job.loosened.begin(), job.loosened.end(), [](const Neighbour& n) { return n.treated; });
  page.figures.push_back(
      {"Results of the same flange",
       (answer.learned->count == 1 ? "one fastener" : std::to_string(answer.learned->count) + " fasteners") +
           std::string(", included; their median is ") + units.range(answer.learned->median) +
           (job.aids.empty() ? ""
            : treated        ? ", after the aids"
                             : ", before the aids")});
}

/// A preload is meant to be about three quarters of the proof load, which is 0.9 of yield and, of class 8.8, 0.73 of the
/// tensile strength (ISO 898-1): shares of it at which a bolt may yield or break.
inline constexpr double yields_at = 1 / (0.75 * 0.9), breaks_at = 1 / (0.75 * 0.73);

inline PageList after_list(const AfterRelease& after, const PageUnits& units) {
  const auto percent = [](double share) { return number_text(std::round(100 * share)); };
  const Band<double>& ratio = after.preload_ratio;
  PageList list{"Afterwards",
                {"Retightened to the specified torque, the bolt would reach " + percent(ratio.low) + " to " +
                 percent(ratio.high) + " % of the intended preload (typically " + percent(ratio.nominal) + " %)" +
                 (ratio.high >= breaks_at   ? "; it may break."
                  : ratio.high >= yields_at ? "; it may yield."
                                            : ".")}};
  for (const Notice& notice : after.notices) list.items.push_back(units.restated(notice.text));
  return list;
}

/// What each step of the plan does and, if wanted, how it is done; each once.
inline void add_steps(Page& page, const FreeJob& job, const Free& answer, bool with_instructions) {
  PageList why{"What each step does", {}}, how{"How each step is done", {}};
  for (const PlanStep& step : answer.steps) {
    const std::vector<AidUse> last(step.aids.empty() ? step.aids.end() : step.aids.end() - 1, step.aids.end());
    add_once(why.items, aids_text(job, last) + ": " + step.why + ".");
    for (const Instruction& one : step.instructions)
      add_once(how.items, std::string(one.title) + ": " + one.what + " " + one.how_long + " " + one.watch);
  }
  page.lists.push_back(std::move(why));
  if (with_instructions) page.lists.push_back(std::move(how));
}

/// \return true if the notice is about an aid that the next step does not use
inline bool is_of_later_step(const FreeJob& job, const Free& answer, std::string_view code) {
  const auto used = [&](Aid aid) { return is_used(aid, {}, {answer.steps[answer.next]}); };
  if (code == "impact_sockets") return !used(Aid::impact);
  if (code == "cold_burns") return !used(Aid::cold);
  if (code == "lubricant_places") return !used(Aid::fluid);
  if (code == "hot_fumes") return !used(Aid::heat);
  if (code == "cutting") return !used(Aid::cut);
  if (code == "fluid_after_heat") return !used(Aid::fluid) && !is_used(Aid::heat, job.aids, {});
  // Where heat is ruled out, that is read before anything else.
  return code.starts_with("heat_") && code != "heat_forbidden" && !used(Aid::heat);
}

}  // namespace detail

/// \param job                what was asked, filled in
/// \param with_instructions  how each step is done as well
/// \return the answer laid out for people
inline Page page_of(const FreeJob& job, const Free& answer, const PageUnits& units = {},
                    bool with_instructions = false) {
  Page page;
  page.headline = detail::free_headline(job, answer, units);
  page.actions.emplace_back(
      "First make sure that nothing behind it is under pressure, and that nothing hangs or presses on it.");
  static constexpr std::string_view to_do[] = {"left_hand", "thread_direction", "six_point", "clean_recess",
                                               "measure_corners"};
  PageList later{"Take care in the later steps", {}};
  std::vector<Notice> others;
  const bool impact = detail::is_used(Aid::impact, {}, answer.steps);
  for (const Notice& notice : answer.notices) {
    const std::string_view code = notice.code;
    if (code == "impact_sockets" && !impact && !detail::is_used(Aid::impact, job.aids, {})) continue;
    if (detail::lists(to_do, code))
      page.actions.push_back(units.restated(notice.text));
    else if (detail::is_of_later_step(job, answer, code))
      detail::add_once(later.items, units.restated(notice.text));
    else
      others.push_back(notice);
  }
  if (impact)
    later.items.push_back("An impact wrench shows no torque: choose one whose rated torque stays below the stop.");
  // One torque leads: that of the pull as it is, which leaves some of the accepted chance for the lines after it.
  const Torque first = detail::first_stop(answer);
  const std::string risk = PageUnits::percent(job.shear_risk), most = units.settable(answer.stop_at);
  const bool no_pull =
      !(first.si > 0) || (job.held && !job.held_untreated && !detail::is_worth_pulling(first, *job.held));
  const bool limited = job.limit && !no_pull && !(first < *job.limit);
  const bool shared = first < answer.stop_at;
  if (limited)
    page.actions.push_back("Stop at " + units.typed(*job.limit) + ", your limit.");
  else if (shared)
    page.actions.push_back((no_pull ? "Do not pull it further as it is: follow the plan. Its"
                                    : "Stop at " + units.settable(first) + ", then follow the plan: its") +
                           std::string(" lines share the accepted chance of damage, ") + risk + ".");
  else
    page.actions.push_back(detail::stop_sentence(job, answer, most, risk, job.limit ? units.typed(*job.limit) : ""));
  if (limited || shared)
    page.findings.push_back(detail::stop_sentence(job, answer, most, risk, "", "No pull on it as it is may exceed "));
  if (!no_pull) {
    const Length bar = job.handle_length.value_or(detail::fitting_bar(first));
    const Force pull(first.si / bar.si);
    page.actions.push_back("On a breaker bar of " + units.text(bar) + " the stop is a pull of " +
                           units.text(Force(std::floor(pull.si))) +
                           (pull > detail::steady_pull ? ", more than most people can exert: a longer bar or a torque "
                                                         "multiplier reaches it"
                                                       : "") +
                           ". Do not loosen with a clicking wrench unless its maker allows it.");
  }
  const PlanStep& next = answer.steps[answer.next];
  const bool cuts = !next.aids.empty() && next.aids.back().aid == Aid::cut;
  if (cuts && limited && answer.breakaway.nominal > *job.limit)
    page.actions.push_back("Your limit, " + units.typed(*job.limit) +
                           ", is below what such a bolt takes to come free (" + "typically " +
                           units.text(answer.breakaway.nominal) +
                           "): check the limit and its unit, or take a stronger tool, before anything is cut.");
  else
    page.actions.push_back("Next: " + detail::aids_text(job, next.aids) + "; " + next.why + "." +
                           (answer.next > 0 && !cuts ? " Then stop at " + units.settable(next.stop_at) + "." : ""));
  detail::add_free_figures(page, job, answer, units);
  page.tables.push_back(detail::plan_table(job, answer, units));
  page.tables.push_back(detail::chances_table(job, answer, units));
  if (!answer.if_held.empty()) page.tables.push_back(detail::if_held_table(job, answer, units));
  page.tables.push_back(detail::strength_table(answer, units));
  detail::add_steps(page, job, answer, with_instructions);
  if (!later.items.empty()) page.lists.push_back(std::move(later));
  page.lists.push_back(detail::after_list(answer.after, units));
  page.add(others, units);
  page.limit_cautions();
  return page;
}

}  // namespace tauten::TAUTEN_ABI
