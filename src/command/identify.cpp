// tauten identify: which fastener is it?
#include "shared/identification.hpp"

#include <fmt/format.h>

#include "command/clamp_text.hpp"
#include "command/said_options.hpp"
#include "command/table.hpp"

namespace tauten::command {

namespace {

std::string page_of(const shared::Identification& answer, bool all) {
  constexpr std::size_t most_shown = 8;
  const std::size_t shown = all ? answer.candidates.size() : std::min(most_shown, answer.candidates.size());
  Table table({{"#", "", true},
               {"Thread", ""},
               {"Pitch", "mm", true},
               {"Head or nut", "", false, 24},
               {"Standard", ""},
               {"Width", "mm", true},
               {"Fit", ""},
               {"Met", ""}});
  std::vector<std::pair<std::string, std::string>> looks;
  for (const shared::Identified& c : std::span(answer.candidates).first(shown)) {
    table.row({std::to_string(c.rank), c.thread, number_text(c.pitch.shop()), c.kind, standards_text(c.head, 30),
               c.socket ? number_text(c.socket->shop()) : "-", c.fit, c.how_common});
    looks.emplace_back(fmt::format("{:>2}  {:9} ", c.rank, c.thread), c.look);
  }
  std::string out = table.text();
  if (answer.candidates.size() > shown)
    out += fmt::format("{} less likely ones are left out; --all shows them.\n", answer.candidates.size() - shown);
  return out + "\nWhat to look at\n" + looks_of(looks);
}

std::string text_of(const shared::ClassMark& c) {
  return paragraph(c.marks + ".", "Class " + c.name + ": ") +
         paragraph(fmt::format(
             "At least {} tensile strength and {} yield strength{}.", quantity_text(c.tensile_strength.si, Dim::stress),
             quantity_text(c.yield_strength.si, Dim::stress), c.withdrawn ? "; no longer in the standard" : ""));
}

}  // namespace

void add_identify(Program& program) {
  CLI::App* verb = program.verb("identify", "Which fastener is it, going by the tool that fits or by its mark?");
  const auto words = add_said_options(program, *verb, shared::identify_inputs());
  auto all = std::make_shared<bool>(false);
  verb->add_flag("--all", *all, "Show every candidate, not only the most likely");
  verb->callback([&program, words, all] {
    const shared::Identification answer = shared::try_identify(words->said).value();
    if (program.json) return program.say(json_of(answer));
    if (!answer.candidates.empty()) program.out += page_of(answer, *all);
    if (answer.mark) program.out += (answer.candidates.empty() ? "" : "\n") + text_of(*answer.mark);
    program.out += paragraph(fmt::format("Treat an unmarked steel head as class {}.", answer.unmarked_class));
  });
}

}  // namespace tauten::command
