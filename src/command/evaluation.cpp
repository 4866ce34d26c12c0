#include "command/evaluation.hpp"

#include "command/refusal.hpp"
#include "shared/examples.hpp"
#include "shared/registry.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/explain/step_text.hpp"

namespace tauten::command {

namespace {

std::vector<std::string> names_of(const Entry& entry) {
  std::vector<std::string> names;
  for (const Arg& arg : entry.inputs) names.push_back(arg.name);
  return names;
}

std::vector<double> values_of(const Entry& entry, const std::vector<std::string>& words) {
  std::vector<double> values(entry.inputs.size());
  std::vector<bool> given(entry.inputs.size());
  for (const std::string& word : words) {
    const std::size_t equals = word.find('=');
    if (equals == std::string::npos)
      throw Error(
          "",
          (in_quotes(word) + " is not an input; write name=value, like " + example_of(entry.inputs.front())).c_str());
    const std::string name = word.substr(0, equals);
    std::size_t i = 0;
    while (i < entry.inputs.size() && name != entry.inputs[i].name) ++i;
    if (i == entry.inputs.size())
      throw Error(name.c_str(), (std::string(entry.name) + " has no input " + in_quotes(name) +
                                 did_you_mean(name, names_of(entry), "its inputs are " + listed(names_of(entry))))
                                    .c_str());
    if (given[i]) throw Error(name.c_str(), (name + " is given twice; give it once").c_str());
    given[i] = true;
    values[i] = try_read_quantity(entry.inputs[i].name, word.substr(equals + 1), entry.inputs[i].dimension).value();
  }
  std::vector<std::string> missing;
  const Arg* first = nullptr;
  for (std::size_t i = 0; i < given.size(); ++i) {
    if (given[i]) continue;
    if (!first) first = &entry.inputs[i];
    missing.push_back(example_of(entry.inputs[i]));
  }
  if (first) throw Error(first->name, (std::string(entry.name) + " also needs " + listed(missing)).c_str());
  return values;
}

}  // namespace

std::string example_of(const Arg& arg) { return std::string(arg.name) + "=" + shared::example_of(arg); }

std::span<const Entry> all_formulas() { return shared::registry(); }

std::vector<std::string> formula_names() {
  std::vector<std::string> names;
  for (const Entry& entry : shared::registry()) names.push_back(entry.name);
  return names;
}

const Entry& formula_named(const std::string& name) {
  if (const Entry* entry = shared::formula_named(name)) return *entry;
  throw Error("formula", ("formula " + in_quotes(name) + " is unknown" +
                          did_you_mean(name, formula_names(), "tauten formulas lists them all"))
                             .c_str());
}

Evaluation evaluation_of(const std::string& name, const std::vector<std::string>& words) {
  const Entry& entry = formula_named(name);
  Evaluation result{&entry, {entry.name, values_of(entry, words), 0, ""}, {}};
  const double* x = result.step.inputs.data();
  result.step.value = entry.value(x);
  const Check check = entry.check(x);
  if (check.status == Status::outside_domain)
    throw detail::domain_error(entry.name, entry.inputs[static_cast<std::size_t>(check.argument)], x[check.argument]);
  if (check.status == Status::impossible) throw detail::impossible_error(entry.name, entry.output.name);
  result.warnings = input_warnings(entry, result.step.inputs);
  return result;
}

Json json_of_evaluation(const Evaluation& evaluation) {
  const Entry& entry = *evaluation.entry;
  Json inputs = Json::object();
  for (std::size_t i = 0; i < entry.inputs.size(); ++i) inputs[entry.inputs[i].name] = evaluation.step.inputs[i];
  return {{"formula", entry.name},
          {"summary", entry.summary},
          {"value", json_of(evaluation.step.value)},
          {"unit", describe(entry.output.dimension).si_unit},
          {"inputs", inputs},
          {"sources", json_of(entry.sources)},
          {"warnings", evaluation.warnings}};
}

}  // namespace tauten::command
