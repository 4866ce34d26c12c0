// The verb of a question that needs no more than every question has.
#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "tauten/explain/json_text.hpp"

namespace tauten::command {

void add_question(Program& program, CLI::App* verb, const shared::Question& question) {
  const auto words = add_said_options(program, *verb, question.inputs());
  const auto page = add_page_options(program, *verb);
  const auto table = add_table_options(*verb);
  verb->callback([&program, &question, words, page, table] {
    if (table->given()) return answer_file(program, question.name, *table, *words, *page);
    if (program.json)
      program.say(Json::parse(json_text(question.answer(words->said).value())));
    else
      print(program, *page, question.page(words->said, page->page_units(words->pairs())).value());
  });
}

}  // namespace tauten::command
