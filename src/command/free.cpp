// tauten free: does a stuck fastener come free before something gives, where to stop, and what to do next?
#include "command/free_text.hpp"
#include "command/said_options.hpp"
#include "command/table_file.hpp"
#include "shared/free_inputs.hpp"

namespace tauten::command {

void add_free(Program& program) {
  CLI::App* verb = program.question("free");
  const auto words = add_said_options(program, *verb, shared::free_inputs());
  const auto table = add_table_options(*verb, "TABLE.csv", table_help);
  const auto instructions = std::make_shared<bool>(false);
  verb->add_flag("--instructions", *instructions, "Print how each step is done: what to do, how long, what to watch");
  verb->callback([&program, words, table, instructions] {
    if (table->given()) return answer_table(program, *table, "free", words->pairs());
    const shared::FreeAnswer answer = shared::try_free(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else
      program.out += page_of(answer.job, answer, *instructions);
  });
}

}  // namespace tauten::command
