// tauten conditions: what can be on the threads, with the friction that comes with it.
#include "tauten/friction/condition.hpp"

#include <algorithm>

#include "command/program.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::command {

namespace {

std::string band_text(const Band<double>& band) {
  return number_text(band.low) + " to " + number_text(band.high) + ", typically " + number_text(band.nominal);
}

}  // namespace

void add_conditions(Program& program, CLI::App* verb) {
  verb->callback([&program] {
    Json list = Json::array();
    for (const table::ThreadConditionRow& row : table::thread_conditions) {
      const ThreadCondition condition = thread_condition(row.key);
      Json words = Json::array();
      std::string listed;
      detail::each_condition_word([&](const table::ThreadConditionRow& of, const std::string& word) {
        if (&of != &row || word == detail::condition_key(row.key)) return;
        words.push_back(word);
        listed += (listed.empty() ? " Also: " : ", ") + word;
      });
      Json one = json_of(condition);
      one["words"] = words;
      list.push_back(one);
      const std::string note = condition.note.empty() ? "" : "; " + condition.note;
      program.out += paragraph(condition.key + ": " + condition.title + note + ". Friction " +
                                   band_text(condition.thread_friction) + "." + listed + (listed.empty() ? "" : "."),
                               "- ");
    }
    if (!program.json) return;
    program.out.clear();
    program.say({{"conditions", list}});
  });
}

}  // namespace tauten::command
