// tauten identify: which fastener is it?
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "shared/identification_page.hpp"

namespace tauten::command {

void add_identify(Program& program, CLI::App* verb) {
  const auto words = add_said_options(program, *verb, shared::identify_inputs());
  auto all = std::make_shared<bool>(false);
  verb->add_flag("--all", *all, "Show every candidate, not only the most likely");
  const auto page = add_page_options(program, *verb);
  const auto table = add_table_options(*verb);
  verb->callback([&program, words, all, page, table] {
    if (table->given())
      return answer_file(program, "identify", *table, *words, *page, [&](const SaidWords& one, const PageUnits& units) {
        return shared::page_of(shared::try_identify(one.said).value(), units, *all);
      });
    const shared::Identification answer = shared::try_identify(words->said).value();
    if (program.json) return program.say(json_of(answer));
    print(program, *page, shared::page_of(answer, page->page_units(words->pairs()), *all));
  });
}

}  // namespace tauten::command
