// The page of a turn by angle: setting and angle, what clamp load they leave, and whether bolt, thread and joint bear it.
#pragma once

#include "tauten/base/chance_text.hpp"
#include "tauten/base/plain_words.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/holder_text.hpp"
#include "tauten/question/turn_answer.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// "M16 8.8, snug at 60 N.m", the beginning of line 1.
inline std::string turned_text(const TurnJoint& joint, Torque snug, const PageUnits& units) {
  return joint.thread +
         (joint.class_assumed ? ", class " + joint.property_class + " assumed" : " " + joint.property_class) +
         ", snug at " + units.typed(snug);
}

/// What was understood of the joint.
inline void add_joint_figures(Page& page, const TurnJoint& joint, const PageUnits& units) {
  page.figures.push_back({"Joint", joint.thread + ", " + joint.head + ", class " + joint.property_class +
                                       (joint.class_assumed ? " (assumed)" : "") + ", " + units.typed(joint.length) +
                                       " long" + (joint.length_assumed ? " (assumed)" : "") + ", " +
                                       units.typed(joint.grip) + " clamped, " + plain_words(word_of(joint.kind))});
  page.figures.push_back({"Resilience", "bolt " + units.text(joint.bolt_resilience) + ", layers " +
                                            units.text(joint.plate_resilience) + " by " +
                                            plain_words(word_of(joint.plate_model))});
  page.figures.push_back({"Working load", PageUnits::percent(joint.joint_constant, 2) + " of it reaches the bolt"});
  page.figures.push_back({"Joint rate", (joint.rate == "between" ? "medium" : joint.rate) + " (" +
                                            units.text(joint.rate_angle, 2) + " from 10 to 100 % of the torque)"});
}

/// The verdict, and what to do about it in a few words.
inline std::string turn_advice(const TurnAnswer& a, const PageUnits& units) {
  std::string text = a.verdict;
  text[0] = static_cast<char>(text[0] - 'a' + 'A');
  const double chance = a.verdict == Verdict::may_neck                                      ? a.chance_of_necking
                        : a.verdict == Verdict::may_yield                                   ? a.chance_of_yield
                        : a.verdict == Verdict::may_be_slack || a.verdict == Verdict::slack ? a.chance_of_slack
                                                                                            : absent;
  if (chance >= 0.01 && chance <= 0.99) text += " (" + chance_text(chance) + ")";
  if (a.verdict.ends_with("neck") || a.verdict == Verdict::necks) return text + "; do not turn so far.";
  if (a.verdict.ends_with("strip") || a.verdict == Verdict::strips) return text + "; do not tighten so far.";
  if (a.verdict == Verdict::yields)
    return text + ": does the maker's procedure call for that? If not, " +
           (a.suggested_angle ? "turn by " + units.text(*a.suggested_angle) + " for 75 % of the proof load."
                              : std::string("turn less."));
  return text + (a.verdict == Verdict::yields_as_intended ? "; use the bolt once only." : ".");
}

inline std::string turn_headline(const TurnAnswer& a, const PageUnits& units) {
  const bool twisted = a.tool_twist.si > 0;
  const bool none = a.may_neck || a.verdict == Verdict::strips;
  return turned_text(a.joint, a.snug_torque, units) + ", turned by " + units.text(a.angle) +
         (twisted ? " (" + units.text(a.handle_angle) + " at the handle)" : std::string()) + ": " +
         (none ? std::string("no clamp load is given")
               : "clamp load " + units.text(a.clamp_load.nominal) + " (" + units.range(a.clamp_load) +
                     " in 19 of 20 cases)") +
         ". " + turn_advice(a, units);
}

inline PageTable turn_table(const TurnAnswer& a, const PageUnits& units) {
  PageTable table{"", {{"Figure"}, {"Unit"}, {"Low", "", true}, {"Typical", "", true}, {"High", "", true}}, {}, {}};
  const auto shares = [&](const char* title, const Band<double>& band) {
    table.rows.push_back(
        {title, "%", cell_text(100 * band.low), cell_text(100 * band.nominal), cell_text(100 * band.high)});
  };
  const auto row = [&]<Dim D>(const char* title, const Band<Quantity<D>>& band) {
    table.rows.push_back({title, units.unit(D), units.cell(band.low), units.cell(band.nominal), units.cell(band.high)});
  };
  row("load at snug", a.snug_load);
  row("clamp load", a.clamp_load);
  row("the same, worst case", a.worst_case);
  shares("of the proof load", a.proof_share);
  shares("of yield, while turning", a.yield_utilisation);
  row("torque at the end", a.torque);
  row("lasting stretch", a.lasting_stretch);
  row("left after all losses", a.residual.clamp_load);
  row("by that torque alone", a.by_torque);
  if (!is_given(a.by_torque.nominal.si) && !a.may_neck)
    table.legend.push_back("By that torque alone some bolts would break.");
  return table;
}

inline PageTable structural_table(const StructuralTurn& s, const PageUnits& units) {
  const std::string load = units.unit(Dim::force);
  PageTable table{"Structural bolting",
                  {{"Method"},
                   {"First torque", units.unit(Dim::torque), true},
                   {"Turn", units.unit(Dim::angle), true},
                   {"Low", load, true},
                   {"Typical", load, true},
                   {"High", load, true}},
                  {},
                  {}};
  const auto row = [&](const char* title, const std::string& torque, const NutRotation& turn, const Band<Force>& end) {
    table.rows.push_back(
        {title, torque, units.cell(turn.angle), units.cell(end.low), units.cell(end.nominal), units.cell(end.high)});
  };
  if (s.turn_of_nut) row("turn of the nut", "snug", *s.turn_of_nut, *s.turn_of_nut_load);
  if (s.combined) row("combined method", units.cell(s.combined_first_torque), *s.combined, *s.combined_load);
  if (table.rows.empty()) table.legend.push_back("The tables of structural bolting do not reach so far.");
  table.legend.push_back("The preload to be reached is " + units.text(s.least_preload) + ", 0.7 of the tensile load.");
  return table;
}

inline std::string service_text(const InService& s, const PageUnits& units) {
  return "At a working load of " + units.text(s.working_load) + " the bolt carries up to " +
         units.text(s.bolt_load.nominal) + " (proof load " + units.text(s.proof_load) + ", tensile load " +
         units.text(s.tensile_load) + "). After all losses " +
         (s.clamp_load.nominal.si > 0 ? units.text(s.clamp_load.nominal) + " of clamp load remains"
                                      : std::string("no clamp load remains")) +
         "; the joint separates at " + units.text(s.separation_load) + ".";
}

}  // namespace detail

/// \return the answer laid out for people
inline Page page_of(const TurnAnswer& a, const PageUnits& units = {}) {
  Page page;
  page.name = a.name;
  page.headline = detail::turn_headline(a, units);
  const bool strips = a.verdict == Verdict::strips || a.verdict == Verdict::may_strip;
  if (strips) page.actions.push_back(units.restated(a.meaning));
  if (a.past_yield && !a.yield_intended && !a.may_neck && !strips)
    page.actions.push_back(
        "Turn so far only if the maker's procedure goes past yield (input: to yield), and then with a new bolt.");
  // In the order of the work: whether to turn at all, where to begin, how far, and how to see that it went well.
  static constexpr std::string_view to_do[] = {"may_neck", "snug_is_found", "bar_twist", "watch_the_torque"};
  for (const std::string_view code : to_do)
    for (const Notice& notice : a.notices)
      if (notice.code == code) page.actions.push_back(units.restated(notice.text));
  if (a.may_neck || (a.past_yield && strips))
    page.actions.push_back("Replace every bolt that was turned so far.");
  else if (a.past_yield && a.yield_intended)
    page.actions.push_back("Use the bolt once only, and a new one.");

  detail::add_joint_figures(page, a.joint, units);
  page.figures.push_back({"Of the angle", units.text(a.clamping) + " stretches the joint, " +
                                              units.text(a.bolt_twist, 2) + " twists the bolt"});
  if (a.tool_twist.si > 0)
    page.figures.push_back(
        {"At the handle", units.text(a.handle_angle) + ", as the bars twist by " + units.text(a.tool_twist)});
  if (a.engagement) page.figures.push_back(detail::engagement_figure(*a.engagement, units));
  page.tables.push_back(detail::turn_table(a, units));
  if (a.structural) page.tables.push_back(detail::structural_table(*a.structural, units));

  if (!strips) page.findings.push_back(units.restated(a.meaning));
  if (!a.may_neck && !a.past_yield) {
    if (a.tightenings == 0)
      page.cautions.push_back("The bolt cannot take this tightening even once.");
    else
      page.findings.push_back(a.tightenings >= 20 ? "The typical bolt stays below the strain that limits reuse."
                                                  : "The strain allows the typical bolt to be tightened " +
                                                        std::to_string(a.tightenings) + " times at most.");
  }
  if (a.diagram.working_load.si != 0) page.findings.push_back(detail::service_text(a.service, units));
  std::vector<Notice> others;
  for (const Notice& notice : a.notices)
    if (!detail::lists(to_do, notice.code)) others.push_back(notice);
  page.add(others, units);
  page.limit_cautions();
  return page;
}

}  // namespace tauten::TAUTEN_ABI
