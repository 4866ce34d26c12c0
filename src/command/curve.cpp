// tauten curve: torque and preload against the angle, from snug past yield.
#include "command/said_options.hpp"
#include "command/turn_text.hpp"
#include "shared/turn_inputs.hpp"

namespace tauten::command {

void add_curve(Program& program) {
  CLI::App* verb = program.question("curve");
  const auto words = add_said_options(program, *verb, shared::curve_inputs());
  auto csv = std::make_shared<bool>(false);
  verb->add_flag("--csv", *csv, "Answer in comma-separated values, all numbers in SI");
  verb->callback([&program, words, csv] {
    if (*csv && program.json) throw Error("csv", "csv and json exclude each other; leave one of them out");
    const CurveAnswer answer = shared::try_curve(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else
      program.out += *csv ? csv_of(answer) : page_of(answer);
  });
}

}  // namespace tauten::command
