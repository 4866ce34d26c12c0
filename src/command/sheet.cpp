// tauten sheet: one sheet for the machine, from a file that describes its joints.
#include "sheet/sheet.hpp"

#include <deque>
#include <sstream>

#include "command/program.hpp"
#include "command/refusal.hpp"
#include "command/toml_file.hpp"

namespace tauten::command {

namespace {

using namespace sheet;

/// The tables of a TOML file as a record, with the texts that it points to.
class FileRecord {
 public:
  explicit FileRecord(const toml::table& file) : record(of(file)) {}

 private:
  shared::Value of(const toml::node& node) {
    using Kind = shared::Value::Kind;
    shared::Value value;
    if (const toml::table* table = node.as_table()) {
      value.kind = Kind::record;
      for (const auto& [name, item] : *table) {
        value.names.push_back(texts_.emplace_back(name.str()));
        value.items.push_back(of(item));
      }
    } else if (const toml::array* list = node.as_array()) {
      value.kind = Kind::list;
      for (const toml::node& item : *list) value.items.push_back(of(item));
    } else if (const auto* whole = node.as_integer()) {
      value.kind = Kind::whole;
      value.whole = whole->get();
    } else if (const auto* number = node.as_floating_point()) {
      value.kind = Kind::number;
      value.number = number->get();
    } else if (const auto* truth = node.as_boolean()) {
      value.kind = Kind::truth;
      value.truth = truth->get();
    } else if (const auto* text = node.as_string()) {
      value.text = texts_.emplace_back(text->get());
    } else {  // a date without quotes
      std::ostringstream date;
      node.visit([&](const auto& other) {
        if constexpr (toml::is_date<decltype(other)> || toml::is_time<decltype(other)> ||
                      toml::is_date_time<decltype(other)>)
          date << other.get();
      });
      value.text = texts_.emplace_back(date.str());
    }
    return value;
  }

  std::deque<std::string> texts_;

 public:
  const shared::Value record;
};

Json json_of_table(const PageTable& table) {
  Json rows = Json::array();
  for (const auto& row : table.rows) {
    Json cells;
    for (std::size_t i = 0; i < row.size(); ++i) cells[table.columns[i].title] = row[i];
    rows.push_back(cells);
  }
  return rows;
}

Json json_of_sheet(const Sheet& sheet) {
  Json sections = Json::array();
  for (const SheetSection& section : sheet.sections) {
    Json blocks = Json::array();
    for (const SheetBlock& block : section.blocks) {
      Json steps = Json::array();
      for (const SheetStep& step : block.steps) steps.push_back({{"text", step.text}, {"caution", step.caution}});
      Json one = {{"title", block.title}, {"lines", block.lines}, {"steps", steps}, {"boxes", block.boxes}};
      if (block.table) one["table"] = json_of_table(*block.table);
      if (!block.drawing.svg.empty()) one["drawing"] = block.drawing.svg;
      blocks.push_back(one);
    }
    sections.push_back({{"title", section.title}, {"blocks", blocks}});
  }
  return {{"title", sheet.title},
          {"subtitle", sheet.subtitle},
          {"note", sheet.note},
          {"stamp", sheet.stamp},
          {"sections", sections}};
}

}  // namespace

void add_sheet(Program& program, CLI::App* verb) {
  struct Given {
    std::string file, format = "text", time;
  };
  const auto given = std::make_shared<Given>();
  verb->add_option("--file", given->file, "Description of the joints; docs/demo/pump_overhaul.toml is one")
      ->type_name("JOB.toml")
      ->required();
  CLI::Option* format =
      verb->add_option("--format", given->format, "text, markdown, or html to print on A4")->type_name("html");
  program.choices[format] = {Words<PageFormat>::list, Words<PageFormat>::list + std::size(Words<PageFormat>::list)};
  verb->add_option("--time", given->time, "When it is printed; default: now")->type_name("\"2026-05-04 07:30\"");
  verb->callback([&program, given] {
    const PageFormat as = try_page_format(given->format).value();
    std::string content;
    const FileRecord file(toml_file(given->file, content));
    const Sheet sheet =
        sheet_of(sheet_plan_of(file.record, path_text(given->file), fingerprint_of(content)), given->time);
    if (program.json)
      program.say(json_of_sheet(sheet));
    else
      program.out += sheet_as(sheet, as);
  });
}

}  // namespace tauten::command
