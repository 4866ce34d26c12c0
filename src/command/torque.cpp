// tauten torque: which wrench setting leaves the clamp load that is wanted?
#include "command/job.hpp"
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "shared/pages.hpp"

namespace tauten::command {

void add_torque(Program& program, CLI::App* verb) {
  auto all = std::make_shared<bool>(false);
  const auto said = add_job_options(program, *verb, {"torque"});
  verb->add_flag("--all", *all, "Show every fastener that fits, not only the most common");
  const auto table = add_table_options(*verb);
  const auto page = add_page_options(program, *verb);
  verb->callback([&program, said, all, table, page] {
    if (table->given()) return answer_file(program, "torque", *table, *said, *page);
    const shared::ClampAnswer answer = answer_of(*said);
    if (program.json)
      program.say(json_of(answer));
    else
      print(program, *page, shared::page_of(answer, page->page_units(said->pairs()), *all));
  });
}

}  // namespace tauten::command
