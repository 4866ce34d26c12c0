// tauten sheet: one sheet for the machine, from a file that describes its joints.
#include "command/sheet.hpp"

#include <ctime>

#include "command/program.hpp"

namespace tauten::command {

namespace {

std::string now() {
  const std::time_t seconds = std::time(nullptr);
  std::tm parts{};
  localtime_r(&seconds, &parts);
  char text[32];
  std::strftime(text, sizeof text, "%Y-%m-%d %H:%M", &parts);
  return text;
}

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

void add_sheet(Program& program) {
  CLI::App* verb = program.verb("sheet", "One sheet for the machine: undo, look, assemble, check, record");
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
    const Sheet sheet = sheet_of(sheet_plan_of(given->file), given->time.empty() ? now() : given->time);
    if (program.json)
      program.say(json_of_sheet(sheet));
    else
      program.out += sheet_as(sheet, as);
  });
}

}  // namespace tauten::command
