// The verb of a question that needs no more than every question has.
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "command/table_file.hpp"
#include "rows/rows.hpp"
#include "tauten/explain/json_text.hpp"

namespace tauten::command {

void add_question(Program& program, const shared::Question& question) {
  CLI::App* verb = program.question(question.name);
  const auto words = add_said_options(program, *verb, question.inputs());
  const auto page = add_page_options(program, *verb);
  const auto table =
      shared::try_row_question(question.name) ? add_table_options(*verb, "TABLE.csv", table_help) : nullptr;
  verb->callback([&program, &question, words, page, table] {
    if (table != nullptr && table->given()) return answer_table(program, *table, question.name, words->pairs());
    if (program.json)
      program.say(Json::parse(json_text(question.answer(words->said).value())));
    else
      print(program, *page, question.page(words->said, page->page_units(words->pairs())).value());
  });
}

}  // namespace tauten::command
