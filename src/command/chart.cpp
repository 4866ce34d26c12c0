// tauten chart: tables to print, of the answers of questions over sizes, tools, torques or angles.
#include "command/chart.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "command/said_options.hpp"
#include "rows/csv.hpp"
#include "shared/class_words.hpp"
#include "shared/pages.hpp"
#include "tauten/base/caution.hpp"
#include "tauten/base/chance_text.hpp"
#include "tauten/base/source_text.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/manual_torque_table.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"

namespace tauten::command {

namespace {

/// What is asked of a chart, whatever it shows.
struct Asked {
  std::string format = "text";
  std::vector<std::string> units;
  std::vector<std::string> down, across;  ///< what the rows and the columns are for, if not the usual ones
  const char *down_option = "", *across_option = "";
  std::shared_ptr<SaidWords> words;

  PageUnits page_units() const {
    PageUnits shown;
    for (const auto& [key, text] : words->pairs()) shown.take_unit_of(text);
    for (const std::string& text : units)
      if (const auto error = shown.set(text)) throw *error;
    return shown;
  }
  /// \return what was said, and one more pair
  std::vector<shared::Assignment> with(std::initializer_list<std::pair<const char*, const std::string*>> more) const {
    std::vector<shared::Assignment> all = words->said;
    for (const auto& [key, text] : more) all.push_back({key, *text});
    return all;
  }
  const std::string* said(std::string_view key) const {
    for (std::size_t i = 0; i < words->said.size(); ++i)
      if (words->said[i].key == key) return &words->texts[i];
    return nullptr;
  }
};

/// Sentences that each stand once.
/// \param of  the cell that they are about; then a hazard stands once for all cells
void add_notices(std::vector<std::string>& hazards, std::vector<std::string>& trust, const std::vector<Notice>& notices,
                 const std::string& of = "") {
  for (const Notice& notice : notices) switch (kind_of(notice.code, notice.is_estimate)) {
      case NoticeKind::hazard:
        tauten::detail::add_once(hazards, of.empty() ? notice.text : of + ": " + notice.text);
        break;
      case NoticeKind::trust: tauten::detail::add_once(trust, notice.text); break;
      default: break;
    }
}

/// The parts that every chart ends with.
void finish(Chart& chart, const std::string& command, std::vector<std::string> hazards,
            std::vector<std::string> trust) {
  hazards.push_back(standing_cautions_line());
  auto& blocks = chart.sheet.sections.front().blocks;
  blocks.push_back({.title = "Take care", .lines = std::move(hazards)});
  if (!trust.empty()) blocks.push_back({.title = "How far to trust this", .lines = std::move(trust)});
  chart.sheet.stamp = fmt::format("tauten {}: {}", TAUTEN_VERSION, command);
}

/// \return what somebody types to have the chart once more
std::string command_of(const char* which, const Asked& asked) {
  std::string text = std::string("tauten chart ") + which;
  const auto add = [&](const std::string& option, const std::string& value) {
    text += " " + option + (value.find(' ') == std::string::npos ? " " + value : " \"" + value + "\"");
  };
  for (const std::string& one : asked.down) add(asked.down_option, one);
  for (const std::string& one : asked.across) add(asked.across_option, one);
  for (const auto& [key, value] : asked.words->pairs()) add("--" + key, value);
  return text;
}

/// \return the band of friction and where it is from: "Friction 0.08 to 0.16, typically 0.12: plain steel with oil (VDI
///         2230 ...)."
std::string friction_sentence(const ClampJob& job) {
  const tauten::detail::Conditions on = tauten::detail::conditions_of(job).value();
  return fmt::format("Friction {} to {}, typically {}: {}.", number_text(on.mu_G.low), number_text(on.mu_G.high),
                     number_text(on.mu_G.nominal),
                     on.thread_measured ? "measured" : on.thread.title + " (" + source_text(on.thread.source) + ")");
}

bool is_everyday(const table::MetricSize& size) {
  return size.selected && size.diameter > 4.5e-3 && size.diameter < 36.5e-3 && size.choice == 1;
}

const table::ManualTorque* manual_torque(const std::string& thread, const std::string& property_class) {
  for (const table::ManualTorque& row : table::manual_torques)
    if (thread == row.thread && property_class == row.property_class) return &row;
  return nullptr;
}

/// \return what marks a figure: " *" where the bolt may stretch for good, " !" where it may break or its thread strip
const char* mark_of(const ClampCandidate& bolt) {
  const auto is_any_of = [&](auto... verdicts) { return ((bolt.verdict == verdicts) || ...); };
  if (is_any_of(Verdict::within_limits, Verdict::slack, Verdict::may_be_slack)) return "";
  return is_any_of(Verdict::may_break, Verdict::breaks, Verdict::may_strip, Verdict::strips) ? " !" : " *";
}

/// Torques for sizes by classes.
Chart torque_chart(const Asked& asked) {
  const PageUnits units = asked.page_units();
  std::vector<std::string> threads = asked.down, classes = asked.across;
  if (threads.empty())
    for (const table::MetricSize& size : table::metric_sizes)
      if (is_everyday(size)) threads.emplace_back(size.designation);
  if (classes.empty()) classes = {"8.8", "10.9", "12.9"};
  const std::string torque = units.unit(Dim::torque), force = units.unit(Dim::force);
  PageTable table{"", {{"Thread"}}, {}, {}};
  for (const std::string& mark : classes) {
    table.columns.push_back({mark, torque, true});
    table.columns.push_back({"clamp load", force, true});
    table.columns.push_back({"manual", torque, true});
  }
  Chart chart;
  std::vector<std::string> hazards, trust;
  std::string friction, condition = asked.said("condition") ? *asked.said("condition") : "unknown";
  double worst = 0;
  for (const std::string& thread : threads) {
    std::vector<std::string> row{thread};
    for (const std::string& mark : classes) {
      const auto answer = shared::try_torque_for(asked.with({{"thread", &thread}, {"class", &mark}})).value();
      const ClampCandidate& bolt = answer.candidates.front();
      const table::ManualTorque* manual = manual_torque(bolt.thread, mark);
      row.push_back(units.settable_cell(bolt.torque));
      row.push_back(rough_text(units.in_unit(bolt.clamp_load.low)) + " to " +
                    rough_text(units.in_unit(bolt.clamp_load.high)));
      std::string printed, verdict_on_printed;
      if (manual) {
        const std::string said = number_text(manual->torque) + "N.m";
        const auto checked =
            shared::try_clamp(asked.with({{"thread", &thread}, {"class", &mark}, {"torque", &said}})).value();
        printed = number_text(manual->torque / units.one(Dim::torque), 3) + mark_of(checked.candidates.front());
        verdict_on_printed = checked.candidates.front().verdict;
      }
      row.push_back(printed);
      worst = std::max(worst, bolt.chance_of_yield);
      chart.figures.push_back({{"thread", bolt.thread},
                               {"property_class", mark},
                               {"head", bolt.head},
                               {"condition", condition},
                               {"torque [N.m]", json_of(bolt.torque)},
                               {"clamp_load_low [N]", json_of(bolt.clamp_load.low)},
                               {"clamp_load_nominal [N]", json_of(bolt.clamp_load.nominal)},
                               {"clamp_load_high [N]", json_of(bolt.clamp_load.high)},
                               {"chance_of_yield", json_of(bolt.chance_of_yield)},
                               {"verdict", bolt.verdict},
                               {"manual_torque [N.m]", manual ? Json(manual->torque) : Json(nullptr)},
                               {"verdict_on_manual_torque", manual ? Json(verdict_on_printed) : Json(nullptr)}});
      // Of the many answers what concerns every bolt of a class; the notices on one size stand with its own answer.
      add_notices(hazards, trust, answer.notices);
      for (const Notice& notice : bolt.notices)
        if (notice.code == std::string_view("galling") || notice.code == std::string_view("paste_first"))
          add_notices(hazards, trust, {notice});
      if (friction.empty()) friction = friction_sentence(answer.job);
    }
    table.rows.push_back(std::move(row));
  }
  table.legend = {
      fmt::format("{}: suggested setting for the class of the bolt. Clamp load: in 19 of 20 cases, right after "
                  "tightening. The chance that a bolt that just meets its class stretches for good: {}.",
                  torque, chance_text(worst)),
      "Manual, to compare: as one machine manual prints it for lightly oiled threads (friction 0.14), once seen in "
      "print. *: with the friction below, a bolt that just meets its class may stretch for good at that torque. !: it "
      "may break, or its thread strip. Set the suggested torque, unless the maker of your machine names one for this "
      "joint.",
      friction + " Heads after ISO 4014. Coarse threads have no pitch in their name."};
  chart.sheet.title = "Tightening torques, " + condition;
  chart.sheet.subtitle = "Metric threads, coarse and fine, with what each torque leaves.";
  chart.sheet.sections = {{"Torque and clamp load", {{.table = std::move(table)}}}};
  finish(chart, command_of("torque", asked), std::move(hazards), std::move(trust));
  return chart;
}

std::string length_text(double si, const PageUnits& units) { return units.text(si, Dim::length, 4); }

/// Settings for an offset extension, by its length and angle.
Chart reach_chart(const Asked& asked) {
  const PageUnits units = asked.page_units();
  const std::vector<std::string> angles =
      !asked.down.empty() ? asked.down
                          : std::vector<std::string>{"0deg",   "15deg",  "30deg",  "45deg",  "60deg",  "75deg", "90deg",
                                                     "105deg", "120deg", "135deg", "150deg", "165deg", "180deg"};
  const std::vector<std::string> lengths =
      !asked.across.empty() ? asked.across
                            : std::vector<std::string>{"25mm", "50mm", "75mm", "100mm", "150mm", "200mm"};
  PageTable table{"Setting of the wrench", {{"Angle", "deg", true}}, {}, {}};
  for (const std::string& length : lengths)
    table.columns.push_back(
        {length_text(try_read_quantity("length", length, Dim::length).value(), units), units.unit(Dim::torque), true});
  Chart chart;
  std::vector<std::string> hazards, trust;
  std::string wanted;
  std::set<std::string> seen;  // what many cells warn of stands once, with the first of them
  for (const std::string& angle : angles) {
    const double turned = try_read_quantity("angle", angle, Dim::angle).value();
    std::vector<std::string> row{number_text(turned * 180 / pi_constant.value)};
    for (const std::string& length : lengths) {
      const std::string extension = length + "@" + angle;
      const auto found = shared::try_reach(asked.with({{"extension", &extension}}));
      // Folded back so far that hardly a lever is left, the rule has no answer; anything else is wrong in every cell.
      if (!found && (std::string_view(found.error().argument()) != "extension" || wanted.empty())) throw found.error();
      row.push_back(found ? units.cell(found->setting) : "-");
      chart.figures.push_back({{"extension [m]", try_read_quantity("length", length, Dim::length).value()},
                               {"angle [rad]", turned},
                               {"setting [N.m]", found ? json_of(found->setting) : Json(nullptr)},
                               {"arrives_low [N.m]", found ? json_of(found->arrives.low) : Json(nullptr)},
                               {"arrives_nominal [N.m]", found ? json_of(found->arrives.nominal) : Json(nullptr)},
                               {"arrives_high [N.m]", found ? json_of(found->arrives.high) : Json(nullptr)}});
      if (!found) continue;
      for (const Notice& notice : found->notices)
        if (seen.insert(notice.code).second) add_notices(hazards, trust, {notice}, extension);
      wanted = units.text(found->arrives.nominal);
    }
    table.rows.push_back(std::move(row));
  }
  table.legend = {
      "Angle: 0 in line with the wrench and away from the hand, 90 square, 180 back along the handle. \"-\": "
      "hardly a lever is left, so that the rule gives no setting.",
      "The length of the wrench is that from its drive to the middle of the hand: hold it there. Source: US Army "
      "TM 9-254 (offset extensions)."};
  chart.sheet.title = "Wrench settings for " + wanted + " at the fastener";
  chart.sheet.subtitle = "Wrench of " +
                         (asked.said("wrench-length") ? *asked.said("wrench-length") : "300 mm (default)") +
                         ", offset extension by length and angle.";
  chart.sheet.sections = {{"Setting", {{.table = std::move(table)}}}};
  finish(chart, command_of("reach", asked), std::move(hazards), std::move(trust));
  return chart;
}

/// Clamp load against torque, for one coefficient of friction after another.
Chart load_chart(const Asked& asked) {
  const PageUnits units = asked.page_units();
  const std::vector<std::string> frictions =
      !asked.across.empty() ? asked.across : std::vector<std::string>{"0.08", "0.10", "0.12", "0.14", "0.16", "0.20"};
  const auto ask = [&](const std::string& torque, const std::string& friction) {
    return shared::try_clamp(
               asked.with({{"torque", &torque}, {"thread-friction", &friction}, {"bearing-friction", &friction}}))
        .value();
  };
  std::vector<std::string> torques = asked.down;
  if (torques.empty()) {  // up to a third above what stretches the bolt at the lowest friction
    const std::string& low = frictions.front();
    const double suggested = ask("10N.m", low).candidates.front().target_torque.si;
    for (int i = 1; i <= 12; ++i) torques.push_back(settable_text(suggested * 2.2 * i / 12) + "N.m");
  }
  PageTable table{"Typical clamp load", {{"Torque", units.unit(Dim::torque), true}}, {}, {}};
  ChartDiagram diagram{"torque in " + units.unit(Dim::torque), "clamp load in " + units.unit(Dim::force), {}};
  for (const std::string& friction : frictions) {
    table.columns.push_back({friction, units.unit(Dim::force), true});
    diagram.lines.push_back({"friction " + friction, {{0, 0}}});
  }
  Chart chart;
  std::vector<std::string> hazards, trust;
  std::string what;
  for (const std::string& torque : torques) {
    const Torque set(try_read_quantity("torque", torque, Dim::torque).value());
    std::vector<std::string> row{units.cell(set)};
    for (std::size_t i = 0; i < frictions.size(); ++i) {
      const auto answer = ask(torque, frictions[i]);
      const ClampCandidate& bolt = answer.candidates.front();
      const bool is_none = bolt.verdict == Verdict::breaks || bolt.verdict == Verdict::strips;
      row.push_back(units.cell(bolt.clamp_load.nominal) + (is_none ? "" : mark_of(bolt)));
      chart.figures.push_back({{"torque [N.m]", set.si},
                               {"friction", try_read_quantity("friction", frictions[i], Dim::number).value()},
                               {"clamp_load [N]", json_of(bolt.clamp_load.nominal)},
                               {"chance_of_yield", json_of(bolt.chance_of_yield)},
                               {"chance_of_breaking", json_of(bolt.chance_of_breaking)},
                               {"verdict", bolt.verdict}});
      if (bolt.clamp_load.nominal.si == bolt.clamp_load.nominal.si)
        diagram.lines[i].points.emplace_back(units.in_unit(set), units.in_unit(bolt.clamp_load.nominal));
      what = bolt.thread + ", class " + bolt.property_class + (bolt.class_assumed ? " (assumed)" : "");
      add_notices(hazards, trust, answer.notices);
    }
    table.rows.push_back(std::move(row));
  }
  table.legend = {
      "Columns: coefficient of friction of thread and face. *: the bolt may stretch for good. !: it may break, or its "
      "thread strip. \"-\": it does, so that no clamp load is left.",
      "Source: exact torque formula (VDI 2230). The load is the one right after tightening, before surfaces settle."};
  chart.sheet.title = "Clamp load against torque, " + what;
  chart.sheet.subtitle = "The same torque leaves much or little, as friction has it.";
  chart.sheet.sections = {
      {"Clamp load", {{.table = std::move(table), .drawing = {.text = "", .svg = diagram_svg(diagram)}}}}};
  finish(chart, command_of("load", asked), std::move(hazards), std::move(trust));
  return chart;
}

/// \return preload and torque where the curve has turned by an angle, on a straight line between points; NaN beyond it
CurvePoint turned_by(const Curve& curve, double angle) {
  const auto& points = curve.points;
  const auto after = std::lower_bound(points.begin(), points.end(), angle,
                                      [](const CurvePoint& point, double at) { return point.angle.si < at; });
  CurvePoint found;
  found.preload = Force(absent), found.torque = Torque(absent);
  if (after == points.end()) return found;
  if (after == points.begin()) return *after;
  const CurvePoint& before = *(after - 1);
  const double part = (angle - before.angle.si) / (after->angle.si - before.angle.si);
  found.preload = Force(before.preload.si + part * (after->preload.si - before.preload.si));
  found.torque = Torque(before.torque.si + part * (after->torque.si - before.torque.si));
  return found;
}

/// Load and torque against the angle from snug.
Chart turn_chart(const Asked& asked) {
  const PageUnits units = asked.page_units();
  const CurveAnswer curve = shared::try_curve(asked.words->said).value();
  std::vector<std::string> angles = asked.down;
  const double end = curve.nominal.points.back().angle.si * 180 / pi_constant.value;
  if (angles.empty())
    for (int i = 0; i <= 12; ++i) angles.push_back(number_text(std::floor(end / 12) * i) + "deg");
  const std::string force = units.unit(Dim::force), torque = units.unit(Dim::torque);
  PageTable table{"From snug, at low, typical and high friction",
                  {{"Angle", "deg", true},
                   {"load, low", force, true},
                   {"typical", force, true},
                   {"high", force, true},
                   {"torque, low", torque, true},
                   {"typical", torque, true},
                   {"high", torque, true}},
                  {},
                  {}};
  const Curve* const lines[] = {&curve.low_friction, &curve.nominal, &curve.high_friction};
  const char* const names[] = {"low friction", "typical friction", "high friction"};
  Chart chart;
  for (const std::string& text : angles) {
    const double angle = try_read_quantity("angle", text, Dim::angle).value();
    std::vector<std::string> loads, torques;
    for (std::size_t i = 0; i < 3; ++i) {
      const CurvePoint at = turned_by(*lines[i], angle);
      loads.push_back(units.cell(at.preload));
      torques.push_back(units.cell(at.torque));
      chart.figures.push_back({{"angle [rad]", angle},
                               {"friction", names[i]},
                               {"preload [N]", json_of(at.preload)},
                               {"torque [N.m]", json_of(at.torque)}});
    }
    std::vector<std::string> row{number_text(angle * 180 / pi_constant.value)};
    row.insert(row.end(), loads.begin(), loads.end());
    row.insert(row.end(), torques.begin(), torques.end());
    table.rows.push_back(std::move(row));
  }
  ChartDiagram diagram{"angle from snug in deg", "preload in " + force, {}};
  for (std::size_t i = 0; i < 3; ++i) {
    diagram.lines.push_back({names[i], {}});
    for (const CurvePoint& point : lines[i]->points)
      diagram.lines.back().points.emplace_back(point.angle.si * 180 / pi_constant.value, units.in_unit(point.preload));
  }
  std::string yields;
  for (std::size_t i = 0; i < 3; ++i)
    if (lines[i]->has_yield_point)
      yields += (yields.empty() ? "" : ", ") +
                fmt::format("{} at {} deg ({})", names[i],
                            number_text(lines[i]->yield_point.angle.si * 180 / pi_constant.value, 3),
                            units.text(lines[i]->yield_point.preload));
  table.legend = {"For the minimum strength of the class. \"-\": beyond the curve, where the bolt necks. " +
                  (yields.empty() ? std::string() : "Yield: " + yields + ".")};
  std::vector<std::string> hazards, trust;
  add_notices(hazards, trust, curve.notices);
  chart.sheet.title = fmt::format("Load against angle, {}, class {}", curve.joint.thread, curve.joint.property_class);
  chart.sheet.subtitle = fmt::format("Snug torque {}.", units.text(curve.snug_torque));
  chart.sheet.sections = {
      {"Preload and torque", {{.table = std::move(table), .drawing = {.text = "", .svg = diagram_svg(diagram)}}}}};
  finish(chart, command_of("turn", asked), std::move(hazards), std::move(trust));
  return chart;
}

std::string csv_of(const Json& figures) {
  std::string out;
  for (const auto& [name, value] : figures.front().items()) {
    if (!out.empty()) out += ',';
    shared::csv_add(out, name);
  }
  for (const Json& figure : figures) {
    const char* before = "\n";
    for (const auto& [name, value] : figure.items()) {
      out += before;
      if (value.is_string())
        shared::csv_add(out, value.get<std::string>());
      else if (!value.is_null())
        shared::csv_add(out, value.get<double>());
      before = ",";
    }
  }
  return out + "\n";
}

constexpr const char* formats[] = {"text", "markdown", "html", "svg", "csv"};

/// Adds a chart: its verb, the options of the question that it asks, and what its rows and columns are for.
void add(Program& program, CLI::App& charts, const char* name, const char* help, const char* question,
         Chart (*draw)(const Asked&), const std::vector<std::string>& without, const char* down,
         const char* down_example, const char* down_help, const char* across, const char* across_example,
         const char* across_help) {
  CLI::App* verb = program.verb(charts, name, help);
  const auto asked = std::make_shared<Asked>();
  asked->down_option = down;
  asked->across_option = across;
  const auto several = [verb](const char* option, std::vector<std::string>& to, const char* example,
                              const char* about) {
    verb->add_option(option, to, about)
        ->type_name(example)
        ->expected(1)
        ->allow_extra_args(false)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  };
  several(down, asked->down, down_example, down_help);
  if (across != nullptr) several(across, asked->across, across_example, across_help);
  asked->words = add_said_options(program, *verb, shared::try_question(question).value()->inputs(), without);
  CLI::Option* format =
      verb->add_option("--format", asked->format, "text, markdown, html or svg to print on A4, or csv in SI");
  format->type_name("svg");
  program.choices[format] = {std::begin(formats), std::end(formats)};
  several("--unit", asked->units, "torque=lbf.ft", "Unit of a dimension; default: as typed");
  verb->callback([&program, asked, draw] {
    if (std::find(std::begin(formats), std::end(formats), asked->format) == std::end(formats))
      throw Error("format", ("format " + tauten::detail::shown(asked->format) +
                             " is not known; write text, markdown, html, svg or csv")
                                .c_str());
    const Chart chart = draw(*asked);
    if (program.json)
      program.say({{"title", chart.sheet.title}, {"figures", chart.figures}});
    else if (asked->format == "csv")
      program.out += csv_of(chart.figures);
    else if (asked->format == "svg")
      program.out += sheet_svg(chart.sheet);
    else
      program.out += sheet_as(chart.sheet, try_page_format(asked->format).value());
  });
}

}  // namespace

void add_chart(Program& program, CLI::App* verb) {
  verb->require_subcommand(1);
  add(program, *verb, "torque", "Torques for sizes by classes, with clamp load and the torques of manuals", "torque",
      torque_chart, {"thread", "socket", "key", "class", "clamp-load", "name"}, "--thread", "M16",
      "A thread; again for each; default: M5 to M36", "--class", "8.8",
      "A class; again for each; default: 8.8, 10.9, 12.9");
  add(program, *verb, "reach", "Settings of a wrench for an offset extension, by length and angle", "reach",
      reach_chart, {"extension", "setting"}, "--angle", "90deg", "An angle of the extension; again for each",
      "--length", "100mm", "A length of the extension; again for each");
  add(program, *verb, "load", "Clamp load against torque and friction", "clamp", load_chart,
      {"torque", "thread-friction", "bearing-friction", "condition", "face", "specified", "friction-together", "name"},
      "--torque", "120N.m", "A torque; again for each", "--friction", "0.12",
      "A coefficient of friction; again for each");
  add(program, *verb, "turn", "Preload and torque against the angle from snug", "curve", turn_chart, {"name"},
      "--angle", "60deg", "An angle; again for each", nullptr, nullptr, nullptr);
}

}  // namespace tauten::command
