// tauten identify: which fastener is it?
#include <fmt/format.h>

#include "command/clamp_text.hpp"
#include "command/program.hpp"
#include "command/refusal.hpp"
#include "command/table.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/explain/number_text.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/part/identify.hpp"

namespace tauten::command {

namespace {

struct Asked {
  std::string socket, key, bit, worn, property_class;
  bool all = false;
};

const char* fit_text(Fit fit) {
  switch (fit) {
    case Fit::exact: return "exact";
    case Fit::tight: return "tight";
    case Fit::loose: return "loose";
  }
  return "";
}

const char* how_common(int commonness) {
  constexpr const char* words[] = {"everyday", "usual", "seldom", "rare"};
  return words[commonness - 1];
}

std::vector<Candidate> by_width(const char* name, const std::string& text, const std::string& worn, Drive drive) {
  IdentifyOptions options;
  options.drive = drive;
  options.worn = drive == Drive::hexagon ? options.worn : Length(0);
  if (!worn.empty()) options.worn = Length(try_read_quantity("worn", worn, Dim::length).value());
  const double width = try_read_quantity(name, text, Dim::length).value();
  const auto found = try_identify(Length(width), options);
  if (!found) throw renamed(found.error(), "width_across_flats", name);
  return *found;
}

std::vector<Candidate> by_bit(const std::string& text) {
  int number = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (problem != std::errc() || end != text.data() + text.size())
    throw Error("bit",
                ("bit " + in_quotes(text) + " is not the number of a six-lobed drive; write it like 30").c_str());
  const auto found = try_identify_drive_number(number);
  if (!found) throw renamed(found.error(), "number", "bit");
  return *found;
}

PropertyClass class_of(const std::string& name) {
  const auto found = try_property_class(name);
  if (!found) throw renamed(found.error(), "property_class", "class");
  return *found;
}

Json json_of_candidate(const Candidate& c) {
  const Head& head = c.heads.front();
  return {{"rank", c.rank},
          {"thread", c.thread.name()},
          {"head", c.standard},
          {"kind", kind_text(c.kind)},
          {"commonness", c.commonness},
          {"how_common", how_common(c.commonness)},
          {"socket", c.width.si > 0 ? Json(c.width.si) : Json(nullptr)},
          {"drive_number", head.drive_number > 0 ? Json(head.drive_number) : Json(nullptr)},
          {"diameter", c.thread.diameter.si},
          {"pitch", c.thread.pitch.si},
          {"fit", fit_text(c.fit)},
          {"region", head.region},
          {"look", c.look},
          {"source", json_of(head.source)}};
}

void show(Program& program, const Asked& asked, const std::vector<Candidate>& found) {
  constexpr std::size_t usual = 8;
  const std::size_t shown = asked.all ? found.size() : std::min(usual, found.size());
  Table table({{"#", "", true},
               {"Thread", ""},
               {"Pitch", "mm", true},
               {"Head or nut", "", false, 24},
               {"Standard", "", false, 26},
               {"Width", "mm", true},
               {"Fit", ""},
               {"Met", ""}});
  std::vector<std::pair<std::string, std::string>> looks;
  for (const Candidate& c : std::span(found).first(shown)) {
    table.row({std::to_string(c.rank), c.thread.name(), number_text(c.thread.pitch.shop()), kind_text(c.kind),
               c.standard, c.width.si > 0 ? number_text(c.width.shop()) : "-", fit_text(c.fit),
               how_common(c.commonness)});
    looks.emplace_back(fmt::format("{:>2}  {:9} ", c.rank, c.thread.name()), c.look);
  }
  program.out += table.text();
  if (found.size() > shown)
    program.out += fmt::format("{} less likely ones are left out; --all shows them.\n", found.size() - shown);
  program.out += "\nWhat to look at\n" + looks_of(looks);
}

void answer(Program& program, const Asked& asked) {
  const int tools = !asked.socket.empty() + !asked.key.empty() + !asked.bit.empty();
  if (tools > 1) throw Error("socket", "socket, key and bit exclude each other; give the one tool that fits");
  if (tools == 0 && asked.property_class.empty())
    throw Error("socket",
                "say what fits: --socket 16mm, --socket 5/8in, --key 8mm or --bit 30; or ask for --class 8.8");
  if (!asked.worn.empty() && asked.socket.empty() && asked.key.empty())
    throw Error("worn", "worn goes with a socket or a key; write it like --socket 16mm --worn 0.3mm");
  std::vector<Candidate> found;
  if (!asked.socket.empty()) found = by_width("socket", asked.socket, asked.worn, Drive::hexagon);
  if (!asked.key.empty()) found = by_width("key", asked.key, asked.worn, Drive::hexagon_key);
  if (!asked.bit.empty()) found = by_bit(asked.bit);

  Json json = Json::object();
  if (tools > 0) {
    json["candidates"] = Json::array();
    for (const Candidate& c : found) json["candidates"].push_back(json_of_candidate(c));
    if (!program.json) show(program, asked, found);
  }
  if (!asked.property_class.empty()) {
    const PropertyClass c = class_of(asked.property_class);
    const std::string marks = head_marks(asked.property_class);
    json["class"] = {{"name", c.name},
                     {"marks", marks},
                     {"tensile_strength", json_of(c.tensile_strength)},
                     {"yield_strength", json_of(c.yield_strength)},
                     {"proof_stress", json_of(c.proof_stress)},
                     {"withdrawn", c.withdrawn},
                     {"source", json_of(c.source)}};
    if (tools > 0) program.out += "\n";
    program.out += paragraph(marks + ".", "Class " + c.name + ": ");
    program.out += paragraph(fmt::format(
        "At least {} tensile strength and {} yield strength{}.", quantity_text(c.tensile_strength.si, Dim::stress),
        quantity_text(c.yield_strength.si, Dim::stress), c.withdrawn ? "; no longer in the standard" : ""));
  }
  json["unmarked_class"] = unmarked_class;
  if (program.json) return program.out.clear(), program.say(json);
  program.out += paragraph(fmt::format("A steel head without a mark must be taken for class {}.", unmarked_class));
}

}  // namespace

void add_identify(Program& program) {
  CLI::App* verb = program.verb("identify", "Which fastener a tool fits, and what the mark on a head says");
  auto asked = std::make_shared<Asked>();
  verb->add_option("--socket", asked->socket, "Socket or spanner that fits, or the width as measured")
      ->type_name("16mm");
  verb->add_option("--key", asked->key, "Hexagon key that fits into the head")->type_name("8mm");
  verb->add_option("--bit", asked->bit, "Number of the six-lobed bit that fits into the head")->type_name("30");
  verb->add_option("--worn", asked->worn, "How far width and tool may differ; else 0.3 mm, for keys 0")
      ->type_name("0.3mm");
  CLI::Option* marks =
      verb->add_option("--class", asked->property_class, "What the mark of a property class looks like");
  marks->type_name("10.9");
  for (const table::PropertyClassRow& row : table::property_classes) {
    auto& names = program.choices[marks];
    if (names.empty() || names.back() != row.name) names.push_back(row.name);
  }
  verb->add_flag("--all", asked->all, "Show every fastener that fits, not only the most likely");
  verb->callback([&program, asked, verb] {
    for (const CLI::Option* option : verb->get_options())
      if (option->count() > 0 && option->get_items_expected_max() == 1 && option->results().front().empty())
        throw Error(option->get_lnames().front().c_str(), (option->get_lnames().front() + " is empty; write it like " +
                                                           option->get_name() + " " + option->get_type_name())
                                                              .c_str());
    answer(program, *asked);
  });
}

}  // namespace tauten::command
