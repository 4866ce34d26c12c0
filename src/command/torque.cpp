// tauten torque: which wrench setting leaves the clamp load that is wanted?
#include "command/clamp_text.hpp"
#include "command/job.hpp"
#include "command/table_file.hpp"

namespace tauten::command {

void add_torque(Program& program) {
  CLI::App* verb = program.question("torque");
  auto all = std::make_shared<bool>(false);
  const auto said = add_job_options(program, *verb, {"torque"});
  verb->add_flag("--all", *all, "Show every fastener that fits, not only the most common");
  const auto table = add_table_options(*verb, "TABLE.csv", table_help);
  verb->callback([&program, said, all, table] {
    if (table->given()) return answer_table(program, *table, "torque", said->pairs());
    const Clamp answer = answer_of(*said);
    if (program.json)
      program.say(json_of(answer));
    else
      program.out += page_of(job_of(*said), answer, *all);
  });
}

}  // namespace tauten::command
