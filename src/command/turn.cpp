// tauten turn: how far to turn from snug for a clamp load, or what snug torque and angle leave.
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "shared/pages.hpp"

namespace tauten::command {

void add_turn(Program& program, CLI::App* verb) {
  const auto words = add_said_options(program, *verb, shared::turn_inputs());
  const auto table = add_table_options(*verb);
  const auto page = add_page_options(program, *verb);
  verb->callback([&program, words, table, page] {
    if (table->given()) return answer_file(program, "turn", *table, *words, *page);
    const TurnAnswer answer = shared::try_turn(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else
      print(program, *page, shared::page_of(answer, page->page_units(words->pairs())));
  });
}

}  // namespace tauten::command
