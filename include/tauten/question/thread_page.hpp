// The page of a thread: tools and holes first, then what breaks it, then its limits of size.
#pragma once

#include <algorithm>

#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/thread_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Digits of dimensions that are measured with a micrometer.
inline constexpr int limit_digits = 5;

inline PageTable loads_table(const ThreadFacts& thread, const PageUnits& units) {
  PageTable table{
      "What bolts of each class bear, and the nut that belongs to them",
      {{"Class"},
       {"Proof load", "", true},
       {"Breaks from", "", true},
       {"Twisted off from", "", true},
       {"Nut", "class"},
       {"Proof load of nut", "", true}},
      {},
      {"Breaks from, twisted off from: no bolt of the class gives way below it in a test. None of these is a "
       "load or torque to tighten to."}};
  for (const ClassLoads& one : thread.classes) {
    std::vector<std::string> figures = {units.text(one.proof_load), units.text(one.tensile_load),
                                        one.breaking_torque ? units.text(*one.breaking_torque) : "-",
                                        one.nut_class.empty() ? "-" : one.nut_class,
                                        one.nut_proof_load ? units.text(*one.nut_proof_load) : "-"};
    // A1-70 to A5-70 bear the same: one row, of which the first and the last are named.
    const bool stainless = one.property_class.starts_with('A');
    if (stainless) figures[3] = "same";
    bool told = false;
    for (std::vector<std::string>& row : table.rows)
      if (stainless && row[0].starts_with('A') && std::equal(figures.begin(), figures.end(), row.begin() + 1)) {
        row[0] = row[0].substr(0, row[0].find(' ')) + " to " + one.property_class;
        told = true;
      }
    if (told) continue;
    figures.insert(figures.begin(), one.property_class);
    table.rows.push_back(std::move(figures));
  }
  return table;
}

inline PageTable limits_table(const ThreadFacts& thread, const PageUnits& units) {
  PageTable table{"Limits of size",
                  {{"Diameter"}, {"Class"}, {"Minimum", "", true}, {"Maximum", "", true}},
                  {},
                  {"After ISO 965-1, before any coating."}};
  const auto add = [&](const std::string& name, const ThreadLimits& of, const DiameterLimits& limits) {
    table.rows.push_back({name, of.tolerance_class, units.text(limits.minimum, limit_digits),
                          limits.maximum ? units.text(*limits.maximum, limit_digits) : "-"});
  };
  if (thread.bolt) {
    add("Major, bolt", *thread.bolt, thread.bolt->diameter);
    add("Pitch, bolt", *thread.bolt, thread.bolt->pitch_diameter);
    add("Root, bolt", *thread.bolt, thread.bolt->minor_diameter);
  }
  if (thread.nut) {
    add("Major, nut", *thread.nut, thread.nut->diameter);
    add("Pitch, nut", *thread.nut, thread.nut->pitch_diameter);
    add("Minor, nut", *thread.nut, thread.nut->minor_diameter);
  }
  return table;
}

}  // namespace detail

/// \param job     what was asked
/// \param thread  what came of it
/// \return the answer laid out for people
inline Page page_of(const ThreadJob& job, const ThreadFacts& thread, const PageUnits& units = {}) {
  Page page;
  page.standing_cautions = false;  // nothing is turned yet
  const auto text = [&](const auto& quantity) { return units.text(quantity); };
  std::string tools;
  const auto add = [&](const char* name, const std::optional<Length>& width) {
    if (width) tools += (tools.empty() ? "" : ", ") + std::string(name) + " " + text(*width);
  };
  add("socket", thread.socket);
  add("hexagon key", thread.key);
  add("clearance hole", thread.medium_hole);
  if (job.property_class.empty()) {
    page.headline = thread.designation + ": pitch " + text(thread.pitch) + (thread.coarse ? " (coarse)" : " (fine)") +
                    (tools.empty() ? "" : ", " + tools) + ".";
  } else {
    const ClassLoads& one = thread.classes.front();
    page.headline = thread.designation + " " + one.property_class + ": proof load " + text(one.proof_load) +
                    ", breaks from " + text(one.tensile_load) +
                    (one.breaking_torque ? ", twisted off from " + text(*one.breaking_torque) : "") +
                    (tools.empty() ? "" : "; " + tools) + ".";
  }
  const std::string name = job.property_class.empty() ? "8.8" : thread.classes.front().property_class;
  page.actions.push_back("For a torque to tighten to: tauten torque --thread " + thread.name + " --class " +
                         (name.find(' ') == std::string::npos ? name : "'" + name + "'") +
                         " --condition oiled, with the class that is on the head and what is on the threads.");

  page.figures = {{"Pitch diameter d_2", units.text(thread.pitch_diameter, detail::limit_digits)},
                  {"Minor diameter D_1", units.text(thread.minor_diameter, detail::limit_digits)},
                  {"Root diameter d_3", units.text(thread.root_diameter, detail::limit_digits)},
                  {"Stress area A_s", units.text(thread.stress_area, 4)},
                  {"Lead angle", text(thread.lead_angle)}};
  if (thread.fine_hole && thread.medium_hole && thread.coarse_hole)
    page.figures.push_back({"Clearance holes", text(*thread.fine_hole) + " fine, " + text(*thread.medium_hole) +
                                                   " medium, " + text(*thread.coarse_hole) + " coarse"});
  if (!thread.classes.empty()) page.tables.push_back(detail::loads_table(thread, units));
  if (thread.bolt || thread.nut) page.tables.push_back(detail::limits_table(thread, units));
  if (!thread.selected)
    page.findings.push_back(thread.name +
                            " is not in the selection of ISO 262 for bolts and nuts: "
                            "check the pitch with a gauge before a part is ordered.");
  page.add(thread.notices, units);
  page.trust.push_back("Sockets and keys are those of ISO 4014, ISO 4032 and ISO 4762; other heads have other widths.");
  return page;
}

}  // namespace tauten::TAUTEN_ABI
