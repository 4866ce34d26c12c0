// tauten cautions: every caution of the trade, which the pages of answers name in one line.
#include "tauten/base/caution.hpp"

#include "command/program.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::command {

void add_cautions(Program& program, CLI::App* verb) {
  verb->callback([&program] {
    Json list = Json::array();
    for (const Caution* caution : cautions::all) {
      list.push_back({{"code", caution->code}, {"text", caution->text}});
      if (!program.json) program.out += paragraph(caution->text, "- ");
    }
    if (program.json) program.say({{"cautions", list}});
  });
}

}  // namespace tauten::command
