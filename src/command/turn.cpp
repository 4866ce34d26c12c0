// tauten turn: how far to turn from snug for a clamp load, or what snug torque and angle leave.
#include "command/said_options.hpp"
#include "command/table_file.hpp"
#include "command/turn_text.hpp"
#include "shared/turn_inputs.hpp"

namespace tauten::command {

void add_turn(Program& program) {
  CLI::App* verb = program.question("turn");
  const auto words = add_said_options(program, *verb, shared::turn_inputs());
  const auto table = add_table_options(*verb, "TABLE.csv", table_help);
  verb->callback([&program, words, table] {
    if (table->given()) return answer_table(program, *table, "turn", words->pairs());
    const TurnAnswer answer = shared::try_turn(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else
      program.out += page_of(answer);
  });
}

}  // namespace tauten::command
