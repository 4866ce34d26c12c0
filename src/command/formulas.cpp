// tauten formulas: what the library can compute.
#include <fmt/format.h>

#include "command/evaluation.hpp"
#include "command/program.hpp"
#include "command/refusal.hpp"
#include "command/table.hpp"
#include "tauten/explain/expression.hpp"
#include "tauten/explain/range_text.hpp"

namespace tauten::command {

namespace {

Json json_of_interval(const Interval& range) {
  return {{"low", range.low <= -largest ? Json(nullptr) : Json(range.low)},
          {"high", range.high >= largest ? Json(nullptr) : Json(range.high)},
          {"excludes_low", range.excludes_low}};
}

Json json_of_argument(const Arg& arg) {
  return {{"name", arg.name},
          {"symbol", arg.symbol},
          {"dimension", describe(arg.dimension).name},
          {"unit", describe(arg.dimension).si_unit},
          {"domain", json_of_interval(arg.domain)},
          {"validity", json_of_interval(arg.validity)}};
}

Json json_of_entry(const Entry& entry) {
  Json inputs = Json::array();
  for (const Arg& arg : entry.inputs) inputs.push_back(json_of_argument(arg));
  return {{"name", entry.name},
          {"summary", entry.summary},
          {"inputs", inputs},
          {"output", json_of_argument(entry.output)},
          {"sources", json_of(entry.sources)},
          {"expression", expression_text(entry, Notation::text)},
          {"latex", expression_text(entry, Notation::latex)}};
}

/// \return both ranges of an input: where the formula has a meaning, and what the source states
std::string ranges_of(const Arg& arg) {
  const std::string domain = range_text(arg.domain, arg.dimension);
  return has_validity_range(arg) ? domain + "; stated " + range_text(arg.validity, arg.dimension) : domain;
}

std::string unit_of(const Arg& arg) {
  const char* unit = describe(arg.dimension).shop_unit;
  return *unit ? unit : "-";
}

std::string page_of(const Entry& entry) {
  std::string out = paragraph(entry.summary, std::string(entry.name) + ": ") + "\n";
  out += paragraph(expression_text(entry, Notation::text), std::string(entry.output.symbol) + " = ") + "\n";
  Table table({{"", ""}, {"Name", ""}, {"Symbol", ""}, {"Unit", ""}, {"Range", "", false, 52}});
  for (const Arg& arg : entry.inputs) table.row({"in", arg.name, arg.symbol, unit_of(arg), ranges_of(arg)});
  table.row({"out", entry.output.name, entry.output.symbol, unit_of(entry.output), ranges_of(entry.output)});
  out += table.text() + "\n";
  for (const Source& source : entry.sources) out += paragraph(source_text(source), "Source: ");
  std::string call = std::string("tauten eval ") + entry.name;
  for (const Arg& arg : entry.inputs) call += " " + example_of(arg);
  return out + paragraph(call, "How to write it: ");
}

bool mentions(const Entry& entry, const std::string& text) {
  const auto lower = [](std::string word) {
    for (char& c : word)
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return word;
  };
  std::string all = std::string(entry.name) + " " + entry.summary + " " + entry.output.name;
  for (const Arg& arg : entry.inputs) all += std::string(" ") + arg.name;
  return lower(all).find(lower(text)) != std::string::npos;
}

void answer(Program& program, const std::string& text) {
  std::vector<const Entry*> found;
  for (const Entry& entry : all_formulas()) {
    if (text == entry.name)
      return program.json ? program.say(json_of_entry(entry)) : void(program.out += page_of(entry));
    if (mentions(entry, text)) found.push_back(&entry);
  }
  if (found.empty())
    throw Error("text", ("no formula has " + in_quotes(text) + " in its name, summary or inputs" +
                         did_you_mean(text, formula_names(), "tauten formulas lists them all"))
                            .c_str());
  Json list = Json::array();
  Table table({{"Formula", ""}, {"What it gives", "", false, 44}, {"Symbol", ""}, {"Unit", ""}});
  for (const Entry* entry : found) {
    list.push_back(json_of_entry(*entry));
    table.row({entry->name, entry->summary, entry->output.symbol, unit_of(entry->output)});
  }
  if (program.json) return program.say({{"formulas", list}});
  program.out += table.text() + fmt::format("{} of {} formulas. tauten formulas NAME shows one of them.\n",
                                            found.size(), all_formulas().size());
}

}  // namespace

void add_formulas(Program& program, CLI::App* verb) {
  auto text = std::make_shared<std::string>();
  program.choices[verb->add_option("text", *text, "A name, or a part of name, summary or inputs")->type_name("TEXT")] =
      formula_names();
  verb->callback([&program, text] { answer(program, *text); });
}

}  // namespace tauten::command
