// tauten free: does a stuck fastener come free before something gives, where to stop, and what to do next?
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "shared/pages.hpp"

namespace tauten::command {

void add_free(Program& program, CLI::App* verb) {
  const auto words = add_said_options(program, *verb, shared::free_inputs());
  const auto table = add_table_options(*verb);
  const auto page = add_page_options(program, *verb);
  verb->callback([&program, words, table, page] {
    if (table->given())
      return answer_file(program, "free", *table, *words, *page, [&](const SaidWords& one, const PageUnits& units) {
        return shared::page_of(shared::try_free(one.said).value(), units);
      });
    const shared::FreeAnswer answer = shared::try_free(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else
      print(program, *page, shared::page_of(answer, page->page_units(words->pairs())));
  });
}

}  // namespace tauten::command
