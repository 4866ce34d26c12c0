// tauten clamp: what clamp load does this torque leave?
#include "command/job.hpp"
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/table_file.hpp"
#include "shared/pages.hpp"

namespace tauten::command {

namespace {

/// All joints of a file; those that are wrong do not spoil the others.
void answer_file(Program& program, const std::string& path, const PageOptions& page) {
  const std::vector<ListedClamp> joints = joints_of(path);
  Json list = Json::array();
  for (const ListedClamp& joint : joints) {
    if (const auto* error = std::get_if<Error>(&joint.answer)) {
      program.code = some_joints_failed;
      program.complaints += std::string("tauten: ") + error->what() + "\n";
      list.push_back({{"name", joint.name}, {"error", json_of(*error)}});
    } else {
      Json answer = json_of(std::get<Clamp>(joint.answer));
      answer["name"] = joint.name;
      list.push_back(std::move(answer));
    }
  }
  if (program.json)
    program.say({{"joints", list}});
  else
    print(program, page, page_of(joints, page.page_units({})));
}

}  // namespace

void add_clamp(Program& program) {
  CLI::App* verb = program.question("clamp");
  auto all = std::make_shared<bool>(false);
  const auto said = add_job_options(program, *verb, {"clamp-load"});
  const auto table =
      add_table_options(*verb, "JOB.toml", "Answer for each [[joint]] of a TOML file or row of a CSV table");
  verb->add_flag("--all", *all, "Show every fastener that fits, not only the most common");
  const auto page = add_page_options(program, *verb);
  verb->callback([&program, said, table, all, page] {
    if (table->given()) {
      if (table->is_table()) return answer_table(program, *table, "clamp", said->pairs());
      if (!said->said.empty()) {
        const std::string key(said->said.front().key);
        throw Error(key.c_str(), ("--file stands alone; write " + key + " into the joints of the file").c_str());
      }
      return answer_file(program, table->file, *page);
    }
    if (!has(*said, "torque")) throw Error("torque", "torque is missing; write it like --torque 48N.m");
    const shared::ClampAnswer answer = answer_of(*said);
    if (program.json)
      program.say(json_of(answer));
    else
      print(program, *page, shared::page_of(answer, page->page_units(said->pairs()), *all));
  });
}

}  // namespace tauten::command
