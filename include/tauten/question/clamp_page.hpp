// The page of a clamp load and of a torque: the answer of the most common fastener that fits, then what the others do.
#pragma once

#include <algorithm>
#include <array>
#include <span>
#include <variant>

#include "tauten/base/chance_text.hpp"
#include "tauten/base/plain_number.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/holder_text.hpp"
#include "tauten/question/looks.hpp"
#include "tauten/question/workings/clamp_candidate.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"
#include "tauten/question/workings/clamp_notices.hpp"
#include "tauten/question/workings/clamp_verdict.hpp"

namespace tauten::TAUTEN_ABI {

/// Fasteners that a page shows unless all are asked for.
inline constexpr std::size_t shown_fasteners = 4;

/// One joint of a list: its answer, or what is wrong with it.
struct ListedClamp {
  std::string name;
  ClampJob job;
  std::variant<Clamp, Error> answer;
};

namespace detail {

inline constexpr const char* chance_columns_legend =
    "Low to high: clamp load in 19 of 20 cases. Yield: chance that a bolt that just meets its class stretches for "
    "good.";
inline constexpr const char* no_load_legend = "\"-\": the bolt breaks, so no clamp load is given.";
inline constexpr const char* strips_legend = "\"-\": the thread strips or the bolt breaks, so no clamp load is given.";

inline std::string class_cell(const ClampCandidate& c) { return c.property_class + (c.class_assumed ? " ?" : ""); }
inline std::string torque_cell(const ClampCandidate& c, const PageUnits& units) {
  return c.torque.si == c.suggested_torque.si ? units.settable_cell(c.torque) : units.cell(c.torque);
}
/// A chance in a narrow column.
inline std::string chance_cell(double chance) {
  return chance < 0.01 ? "<1 %" : chance > 0.99 ? ">99 %" : chance > 0.95 ? ">95 %" : chance_text(chance);
}

inline std::string friction_text(const Band<double>& band, const std::string& condition) {
  const std::string figures = band.low == band.high ? number_text(band.nominal, 3)
                                                    : number_text(band.low, 3) + " to " + number_text(band.high, 3) +
                                                          ", typically " + number_text(band.nominal, 3);
  return figures + " (" + condition + ")";
}

/// What the suggested torque rests on.
inline std::string limit_text(const ClampJob& job, const ClampCandidate& c) {
  if (c.suggested_limit == "chance of yield") return "held back to a chance of yielding of 1 in 100";
  if (c.suggested_limit == "thread") return "held back to what the thread that holds the bolt bears";
  if (c.suggested_limit == "head") return "held back to what the head bears";
  if (c.suggested_limit == "key") return "held back to the torque to which the key is tested";
  if (c.suggested_limit == "worst case") return "held back to where the worst case just yields";
  return PageUnits::percent(share_of(job)) + " of the proof load at nominal friction";
}

inline std::string suggestion_text(const ClampJob& job, const ClampCandidate& c, const PageUnits& units) {
  const std::string fastener = c.thread + ", class " + c.property_class;
  for (const Notice& notice : c.notices)
    if (notice.code == std::string_view("paste_first")) return "";
  if (!is_given(c.suggested_torque.si)) return "No torque can be suggested for " + fastener + ".";
  std::string text =
      "Suggested torque for " + fastener + ": " + units.settable(c.suggested_torque) + ", " + limit_text(job, c) + ".";
  if (c.suggested_torque.si != c.torque.si)
    text += " Clamp load " + units.range(c.suggested_clamp_load) + ", typically " +
            units.text(c.suggested_clamp_load.nominal) + ".";
  // A steel class is no advice for a stainless joint.
  const bool strips = c.suggested_limit == "thread" || c.suggested_limit == "head" || c.suggested_limit == "key" ||
                      c.verdict == Verdict::strips || c.verdict == Verdict::may_strip;
  const bool too_much = c.chance_of_yield > accepted_chance_of_yield && !c.property_class.starts_with('A') &&
                        !strips;  // a stronger bolt strips the thread all the same
  if (too_much && !c.least_class.empty() && c.least_class != c.property_class)
    text += " Class " + c.least_class + " would bear " + units.typed(c.torque) +
            "; check nut, thread, embrittlement and maker before a stronger bolt goes in.";
  if (too_much && c.least_class.empty()) text += " No class of ISO 898-1 bears " + units.typed(c.torque) + " here.";
  return text;
}

inline std::string worst_case_text(const ClampCandidate& c, const PageUnits& units) {
  const std::string yield = "up to " + number_text(std::round(100 * c.yield_utilisation.high)) + " % of yield";
  return !is_given(c.worst_case.nominal.si) ? yield : units.range(c.worst_case) + ", " + yield;
}

/// Notices that say what to do now lead the page, the gravest first.
inline constexpr std::string_view to_do_codes[] = {"unusual_torque",   "may_strip",        "may_break",
                                                   "stretched",        "may_have_yielded", "drive_overloaded",
                                                   "corrected_torque", "paste_first",      "torque_suggests_class"};

/// Notices of all fasteners that say what to look at before anything is turned; they lead the page too.
inline constexpr std::string_view which_codes[] = {"inch_tool", "other_screws"};

/// What to do with one fastener, the gravest first; texts in the units of the page.
inline std::vector<Notice> clamp_actions(const ClampJob& job, const ClampCandidate& c, const PageUnits& units) {
  std::vector<Notice> out;
  for (const std::string_view code : to_do_codes)
    for (const Notice& notice : c.notices)
      if (notice.code == code) {
        const bool in_shop_units = code == "may_strip" || code == "paste_first" || code == "drive_overloaded";
        out.push_back(
            {notice.code, in_shop_units ? units.restated(notice.text) : text_of_code(code, c, job, units), false});
      }
  return out;
}

/// What one fastener does if it were known what is on its threads.
inline PageTable case_table(const ClampCandidate& c, const PageUnits& units) {
  const std::string load = units.unit(Dim::force);
  PageTable table{"If the threads are",
                  {{"Condition"},
                   {"Low", load, true},
                   {"Typical", load, true},
                   {"High", load, true},
                   {"Suggest", units.unit(Dim::torque), true},
                   {"Verdict"}},
                  {},
                  {}};
  for (const ConditionCase& here : c.by_condition)
    table.rows.push_back({here.condition, units.cell(here.clamp_load.low), units.cell(here.clamp_load.nominal),
                          units.cell(here.clamp_load.high), units.settable_cell(here.suggested_torque), here.verdict});
  return table;
}

inline void add_clamp_figures(Page& page, const ClampJob& job, const Clamp& answer,
                              std::span<const ClampCandidate> shown, const PageUnits& units) {
  page.figures.push_back({"Worst case of friction and wrench", worst_case_text(shown.front(), units)});
  if (const Torque lost(job.prevailing_torque.si + job.shank_torque.si); lost.si > 0)
    page.figures.push_back(
        {"Included in the torque", units.typed(lost) +
                                       (job.shank_torque.si == 0        ? " of the locking element"
                                        : job.prevailing_torque.si == 0 ? " of the shank"
                                                                        : " of locking element and shank") +
                                       ": do not add it again"});
  if (const auto& held = shown.front().engagement) {
    auto [what, text] = engagement_figure(*held, units);
    const Force highest = shown.front().clamp_load.high;
    if (held->breaks_first) text += "; it holds " + units.text(held->strip_load.low);
    if (is_given(highest.si))
      text += std::string(", ") + PlainNumber::fixed(held->strip_load.low.si / highest.si, 1).c_str() +
              " times the highest clamp load of " + units.text(highest);
    page.figures.push_back({what, text});
  }
  const Conditions on = conditions_of(job).value();
  const std::string in_thread =
      friction_text(answer.thread_friction, job.thread_friction ? "measured" : on.thread.title);
  const std::string under_head =
      friction_text(answer.bearing_friction, job.bearing_friction ? "measured" : on.face.title);
  if (in_thread == under_head) {
    page.figures.push_back({"Friction of thread and bearing face", in_thread});
  } else {
    page.figures.push_back({"Friction of the thread", in_thread});
    page.figures.push_back({"Friction of the bearing face", under_head});
  }
  // Without a stated accuracy the wrench may be good to one share for small settings and to another for large ones.
  std::vector<std::string> shares;
  for (const ClampCandidate& c : shown)
    if (const std::string share = number_text(100 * c.wrench_accuracy, 3);
        std::find(shares.begin(), shares.end(), share) == shares.end())
      shares.push_back(share);
  std::string wrench = "+-" + shares.front();
  for (std::size_t i = 1; i < shares.size(); ++i) wrench += " or " + shares[i];
  page.figures.push_back({"Wrench", wrench + " %" + (shares.size() > 1 ? " by its setting" : "")});
}

inline PageTable fastener_table(const ClampJob& job, std::span<const ClampCandidate> shown, std::size_t more,
                                const PageUnits& units) {
  const bool one_torque = job.torque.has_value(), for_load = job.clamp_load.has_value();
  const std::string load = units.unit(Dim::force), torque = units.unit(Dim::torque);
  PageTable table{"", {{"#", "", true}, {"Thread"}, {"Head or nut", "", false, 20}, {"Class", "", false, 10}}, {}, {}};
  const auto column = [&](bool has, const char* title, const std::string& unit, bool number = true) {
    if (has) table.columns.push_back({title, unit, number});
  };
  column(!one_torque, "Torque", torque);
  for (const char* title : {"Low", "Typical", "High"}) column(true, title, load);
  column(!for_load, "Proof", "%");
  column(true, "Yield", "");
  column(one_torque || for_load, "Suggest", torque);
  column(true, "Verdict", "", false);
  bool none = false, strips = false;
  for (const ClampCandidate& c : shown) {
    auto& row = table.rows.emplace_back();
    row = {std::to_string(table.rows.size()), c.thread, c.head.empty() ? "-" : standards_text(c.head, 20),
           class_cell(c)};
    if (!one_torque) row.push_back(torque_cell(c, units));
    for (const Force end : {c.clamp_load.low, c.clamp_load.nominal, c.clamp_load.high}) row.push_back(units.cell(end));
    if (!for_load)
      row.push_back(is_given(c.proof_share.nominal) ? number_text(std::round(100 * c.proof_share.nominal)) : "-");
    row.push_back(chance_cell(c.chance_of_yield));
    if (one_torque || for_load) row.push_back(units.settable_cell(c.suggested_torque));
    row.push_back(c.verdict);
    none |= !is_given(c.clamp_load.nominal.si);
    strips |= c.verdict == Verdict::strips;
  }
  table.legend.push_back(std::string(chance_columns_legend) +
                         (for_load ? "" : " Proof: typical share of the proof load."));
  if (none) table.legend.push_back(strips ? strips_legend : no_load_legend);
  if (more > 0)
    table.legend.push_back(std::to_string(more) + " less common " + (more == 1 ? "fastener fits" : "fasteners fit") +
                           " this tool too; --all shows " + (more == 1 ? "it." : "them."));
  return table;
}

/// "M16 8.8, oiled, 150 N.m: clamp load 59 kN ...", in the units of the page.
inline std::string clamp_headline(const ClampJob& job, const Clamp& answer, const PageUnits& units) {
  const ClampCandidate& first = answer.candidates.front();
  const bool inch = job.thread.empty() && !inch_text(job).empty();
  std::string text = inch ? inch_headline : "";
  text += job.torque ? "" : job.clamp_load ? "Torque for " + units.typed(*job.clamp_load) + ". " : "Suggested torque. ";
  if (answer.candidates.size() > 1) text += "Most likely ";
  // The torque is not for what is on the threads: then that is the line that is needed, and the setting that leads.
  const bool corrected =
      job.torque && std::any_of(first.notices.begin(), first.notices.end(), [](const Notice& notice) {
        return notice.code == std::string_view("corrected_torque");
      });
  text += summary_of(first, conditions_of(job).value(), units, corrected);
  if (corrected) {
    text += " The torque is for '" + job.specified_condition + "': set " + units.text(*first.corrected_torque) +
            " here for the load that it means";
    if (*first.corrected_torque > first.suggested_torque)
      text += ", or the suggested " + units.settable(first.suggested_torque) + ", which is safer";
    text += ".";
  }
  return text;
}

/// \return what to find out before anything is turned, "" if one fastener only fits
inline std::string identity_text(const ClampJob& job, const Clamp& answer, const PageUnits& units) {
  const std::size_t others = answer.candidates.size() - 1;
  if (others == 0) return "";
  const ClampCandidate& first = answer.candidates.front();
  const auto hurt = std::count_if(answer.candidates.begin() + 1, answer.candidates.end(),
                                  [](const ClampCandidate& c) { return c.chance_of_yield > accepted_chance_of_yield; });
  std::string text = "Make sure that it is " + first.thread + ": " + std::to_string(others) + " more " +
                     (others == 1 ? "fastener fits " : "fasteners fit ") +
                     (job.inner_hexagon ? "hexagon key " : "width across flats ") + units.typed(first.socket) + ".";
  if (job.torque && hurt > 0) text += " At this torque " + std::to_string(hurt) + " of them may stretch or break.";
  return text;
}

}  // namespace detail

/// \param job     what was asked
/// \param answer  what came of it
/// \param all     show every fastener that fits
/// \return the answer laid out for people
inline Page page_of(const ClampJob& job, const Clamp& answer, const PageUnits& units = {}, bool all = false) {
  const std::size_t count = all ? answer.candidates.size() : std::min(shown_fasteners, answer.candidates.size());
  const std::span shown(answer.candidates.data(), count);
  const ClampCandidate& first = shown.front();
  Page page;
  page.name = job.name;
  page.headline = detail::clamp_headline(job, answer, units);
  for (const Notice& notice : answer.notices)
    if (detail::lists(detail::which_codes, notice.code)) page.actions.push_back(units.restated(notice.text));
  for (const Notice& notice : detail::clamp_actions(job, first, units)) page.actions.push_back(notice.text);
  if (const std::string text = detail::identity_text(job, answer, units); !text.empty()) page.actions.push_back(text);
  if (const std::string text = detail::suggestion_text(job, first, units); !text.empty()) page.actions.push_back(text);
  page.findings.push_back(units.restated(first.meaning));
  detail::add_clamp_figures(page, job, answer, shown, units);
  if (!first.by_condition.empty()) page.tables.push_back(detail::case_table(first, units));
  page.tables.push_back(detail::fastener_table(job, shown, answer.candidates.size() - count, units));
  SharedNotices notes;
  std::vector<detail::Look> looks;
  for (const ClampCandidate& c : shown) {
    const std::string number = std::to_string(looks.size() + 1);
    for (const Notice& notice : c.notices)
      if (&c != &first || !detail::lists(detail::to_do_codes, notice.code)) notes.add(notice, number);
    looks.push_back({number, c.thread, c.look});
  }
  page.add(notes.notices(count), units);
  std::vector<Notice> others = answer.notices;
  std::erase_if(others, [](const Notice& notice) { return detail::lists(detail::which_codes, notice.code); });
  page.add(others, units);
  if (count > 1) page.tables.push_back(detail::look_table(looks));
  page.limit_cautions();
  return page;
}

/// \return a list of joints laid out for people: a summary, a table, and each notice once with the numbers of its joints
inline Page page_of(const std::vector<ListedClamp>& joints, const PageUnits& units = {}) {
  static constexpr std::array verdicts = {"strips",    "breaks", "may strip",    "may break",    "yields",
                                          "may yield", "slack",  "may be slack", "within limits"};
  const std::string load = units.unit(Dim::force), torque = units.unit(Dim::torque);
  PageTable table{"",
                  {{"#", "", true},
                   {"Joint", "", false, 24},
                   {"Fastener", "", false, 13},
                   {"Torque", torque, true},
                   {"Low", load, true},
                   {"Typical", load, true},
                   {"High", load, true},
                   {"Yield", "", true},
                   {"Suggest", torque, true},
                   {"Verdict"}},
                  {},
                  {std::string(detail::chance_columns_legend) + " A ? marks an assumed class."}};
  Page page;
  SharedNotices to_do, notes, common;
  PageList each{"Joint by joint", {}};
  std::size_t answered = 0, failed = 0;
  std::array<std::size_t, verdicts.size()> counts{};
  for (const ListedClamp& joint : joints) {
    const std::string number = std::to_string(table.rows.size() + 1);
    const std::string who = number + " " + joint.name + ": ";
    if (const auto* error = std::get_if<Error>(&joint.answer)) {
      table.rows.push_back({number, joint.name, "-", "-", "-", "-", "-", "-", "-", "error"});
      each.items.push_back(who + error->what());
      ++failed;
      continue;
    }
    ++answered;
    const auto& answer = std::get<Clamp>(joint.answer);
    const ClampCandidate& c = answer.candidates.front();
    for (std::size_t i = 0; i < verdicts.size(); ++i) counts[i] += c.verdict == verdicts[i];
    table.rows.push_back({number, joint.name, c.thread + " " + detail::class_cell(c), detail::torque_cell(c, units),
                          units.cell(c.clamp_load.low), units.cell(c.clamp_load.nominal), units.cell(c.clamp_load.high),
                          detail::chance_cell(c.chance_of_yield), units.settable_cell(c.suggested_torque), c.verdict});
    each.items.push_back(who + detail::clamp_headline(joint.job, answer, units) + " " + c.meaning + " " +
                         detail::suggestion_text(joint.job, c, units));
    for (const ConditionCase& here : c.by_condition)
      each.items.back() +=
          " If " + here.condition + ": " +
          (detail::is_given(here.clamp_load.nominal.si)
               ? units.rough(here.clamp_load.nominal) + " (" + units.rough_range(here.clamp_load) + ")"
               : std::string("no clamp load")) +
          ", " + here.verdict +
          (detail::is_given(here.suggested_torque.si) ? "; suggested " + units.settable(here.suggested_torque) + "."
                                                      : std::string("."));
    for (const Notice& notice : detail::clamp_actions(joint.job, c, units)) to_do.add(notice, number);
    if (const std::string text = detail::identity_text(joint.job, answer, units); !text.empty())
      to_do.add({"identity", text + " Name the thread to be sure.", false}, number);
    for (const Notice& notice : c.notices)
      if (!detail::lists(detail::to_do_codes, notice.code)) notes.add(notice, number);
    for (const Notice& notice : answer.notices) common.add(notice, number);
  }
  page.headline = std::to_string(joints.size()) + (joints.size() == 1 ? " joint: " : " joints: ");
  std::string counted;
  for (std::size_t i = 0; i < verdicts.size(); ++i)
    if (counts[i] > 0) counted += (counted.empty() ? "" : ", ") + std::to_string(counts[i]) + " " + verdicts[i];
  if (failed > 0) counted += (counted.empty() ? "" : ", ") + std::to_string(failed) + " without an answer";
  page.headline += counted + ".";
  if (counts[0] > 0)
    table.legend.push_back(detail::strips_legend);
  else if (counts[1] > 0)
    table.legend.push_back(detail::no_load_legend);
  for (const Notice& notice : to_do.notices(joints.size())) page.actions.push_back(units.restated(notice.text));
  page.tables.push_back(std::move(table));
  page.lists.push_back(std::move(each));
  page.add(notes.notices(answered), units);
  page.add(common.notices(answered), units);
  page.limit_cautions();
  return page;
}

}  // namespace tauten::TAUTEN_ABI
