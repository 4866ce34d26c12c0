#include "command/page_options.hpp"

#include "command/table.hpp"
#include "tauten/explain/page_format.hpp"

namespace tauten::command {

PageUnits PageOptions::page_units(const std::vector<std::pair<std::string, std::string>>& said) const {
  PageUnits shown;
  for (const auto& [key, text] : said) shown.take_unit_of(text);
  for (const std::string& text : units)
    if (const auto error = shown.set(text)) throw *error;
  return shown;
}

std::shared_ptr<PageOptions> add_page_options(Program& program, CLI::App& verb) {
  auto options = std::make_shared<PageOptions>();
  CLI::Option* format = verb.add_option("--format", options->format, "The page as text, markdown or html");
  format->type_name("text");
  program.choices[format] = {std::begin(Words<PageFormat>::list), std::end(Words<PageFormat>::list)};
  verb.add_flag("--short", options->is_short, "Only the first line of the page");
  CLI::Option* unit = verb.add_option("--unit", options->units, "Unit of a dimension; default: as typed");
  unit->type_name("torque=lbf.ft")->expected(1)->allow_extra_args(false);
  unit->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  return options;
}

void print(Program& program, const PageOptions& options, const Page& page) {
  const PageFormat format = try_page_format(options.format).value();
  if (options.is_short) {
    program.out += page.first_line() + "\n";
    std::string line;
    if (const std::size_t own = page.cautions.size(); own > 0)
      line = "This answer has " + std::to_string(own) + (own == 1 ? " caution" : " cautions") +
             " of its own; leave out --short to read " + (own == 1 ? "it. " : "them. ");
    if (page.standing_cautions) line += standing_cautions_line();
    if (!line.empty()) program.complaints += "tauten: " + line + "\n";
    return;
  }
  program.out += page_as(page, format, verdict_colours());
}

}  // namespace tauten::command
