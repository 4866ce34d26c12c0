// tauten eval: one formula, one value.
#include <fmt/format.h>

#include "command/evaluation.hpp"
#include "command/program.hpp"
#include "command/table.hpp"
#include "tauten/explain/derivation.hpp"

namespace tauten::command {

namespace {

std::string page_of(const Evaluation& evaluation) {
  const Entry& entry = *evaluation.entry;
  Table table({{"Input", ""}, {"Symbol", ""}, {"Value", "", true}});
  for (std::size_t i = 0; i < entry.inputs.size(); ++i)
    table.row({entry.inputs[i].name, entry.inputs[i].symbol,
               quantity_text(evaluation.step.inputs[i], entry.inputs[i].dimension, 6)});
  std::string out = std::string(entry.summary) + "\n\n" + table.text();
  out += fmt::format("\n{} {} = {}\n", entry.output.name, entry.output.symbol,
                     quantity_text(evaluation.step.value, entry.output.dimension, 6));
  for (const Source& source : entry.sources) out += paragraph(source_text(source), "Source: ");
  for (const std::string& warning : evaluation.warnings) out += paragraph(warning, "Take care: ");
  return out;
}

}  // namespace

void add_eval(Program& program, CLI::App* verb) {
  auto name = std::make_shared<std::string>();
  auto words = std::make_shared<std::vector<std::string>>();
  program.choices[verb->add_option("formula", *name, "Name of the formula")->type_name("NAME")] = formula_names();
  verb->add_option("inputs", *words, "Its inputs, each with its unit")->type_name("name=value");
  verb->callback([&program, name, words] {
    if (name->empty())
      throw Error("formula", "name the formula, as in tauten eval stress_area diameter=10mm pitch=1.5mm");
    const Evaluation evaluation = evaluation_of(*name, *words);
    if (program.json)
      program.say(json_of_evaluation(evaluation));
    else
      program.out += page_of(evaluation);
  });
}

}  // namespace tauten::command
