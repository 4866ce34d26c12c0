// tauten explain: how a figure comes about.
#include <fmt/format.h>

#include "command/evaluation.hpp"
#include "command/refusal.hpp"
#include "command/said_options.hpp"
#include "tauten/explain/derivation.hpp"

namespace tauten::command {

namespace {

/// How it is to be written, as said.
struct Form {
  std::string format = "text";
  std::vector<std::string> digits;
  std::vector<std::string> units;

  Layout layout() const { return try_layout(format).value(); }
  Style style() const {
    Style style;
    for (const std::string& text : digits)
      if (const auto error = set_digits(style, text)) throw *error;
    for (const std::string& text : units)
      if (const auto error = set_unit(style, text)) throw *error;
    return style;
  }
};

std::shared_ptr<Form> add_form(Program& program, CLI::App& verb) {
  auto form = std::make_shared<Form>();
  CLI::Option* format =
      verb.add_option("--format", form->format, "text, markdown, latex (for amsmath) or html (MathML)");
  format->type_name("text");
  program.choices[format] = {std::begin(Words<Layout>::list), std::end(Words<Layout>::list)};
  const auto add = [&](const char* name, std::vector<std::string>& into, const char* example, const char* help) {
    CLI::Option* option = verb.add_option(name, into, help);
    option->type_name(example)->expected(1)->allow_extra_args(false);
    option->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  };
  add("--digits", form->digits, "4", "Significant digits; of one quantity: preload=3");
  add("--unit", form->units, "length=in", "Unit of a dimension or of one quantity: preload=lbf");
  return form;
}

Json json_of_steps(std::span<const Step> steps, Layout layout, const Style& style) {
  Json list = Json::array();
  for (const Step& step : steps) {
    const Entry& entry = formula_named(step.formula);
    const StepText text = step_text(entry, step, notation_of(layout), style);
    list.push_back({{"formula", step.formula},
                    {"title", text.title},
                    {"note", text.note},
                    {"expression", text.symbol + " = " + text.expression},
                    {"with_values", "= " + text.with_values},
                    {"result", "= " + text.result},
                    {"inputs", json_of(step.inputs)},
                    {"value", json_of(step.value)},
                    {"unit", describe(entry.output.dimension).si_unit},
                    {"source", text.source},
                    {"validity", text.validity},
                    {"warning", fmt::format("{}", fmt::join(text.warnings, "; "))}});
  }
  return list;
}

/// \param more  what JSON has beside the derivation
void say(Program& program, const Form& form, const Derivation& derivation, Json more) {
  const std::string text = derivation_text(derivation, all_formulas(), form.layout(), form.style());
  if (!program.json) {
    program.out += text;
    return;
  }
  const Json all = json_of(derivation);
  for (const auto& [key, value] : all.items()) more[key] = value;
  more["steps"] = json_of_steps(derivation.steps, form.layout(), form.style());
  program.say(more);
}

/// \return what JSON has beside the derivation: of a joint the fastener that it is about
Json fastener_of(const shared::Question& question, const shared::Call& call) {
  Json more = Json::object();
  if (std::string_view(question.result) != "Clamp") return more;
  const Tree answer = question.answer(call).value();
  for (const char* key : {"thread", "head", "property_class"})
    more[key] = find(answer, "candidates/0/" + std::string(key))->text;
  more["torque"] = find(answer, "candidates/0/torque")->number;
  return more;
}

/// Adds a question whose answer is derived.
void add_answer(Program& program, CLI::App& parent, const shared::Question& question) {
  CLI::App* verb = program.verb(parent, question.name, question.summary);
  const auto words = add_said_options(program, *verb, question.inputs());
  const auto form = add_form(program, *verb);
  verb->callback([&program, &question, words, form] {
    const Derivation derivation = try_derivation(question, words->said).value();
    say(program, *form, derivation, program.json ? fastener_of(question, words->said) : Json::object());
  });
}

}  // namespace

void add_explain(Program& program, CLI::App* verb) {
  auto name = std::make_shared<std::string>();
  auto words = std::make_shared<std::vector<std::string>>();
  const auto form = add_form(program, *verb);
  program.choices[verb->add_option("formula", *name, "Name of the formula")->type_name("NAME")] = formula_names();
  verb->add_option("inputs", *words, "Its inputs, each with its unit")->type_name("name=value");
  verb->require_subcommand(0, 1);

  for (const shared::Question& question : shared::questions())
    if (question.derivation != nullptr) add_answer(program, *verb, question);

  verb->callback([&program, verb, name, words, form] {
    if (!verb->get_subcommands().empty()) return;
    if (name->empty())
      throw Error(
          "formula",
          "name what to explain, as in tauten explain stress_area diameter=10mm pitch=1.5mm, or tauten explain clamp "
          "--thread M10 --torque 48N.m");
    const Evaluation evaluation = evaluation_of(*name, *words);
    say(program, *form, derivation_of(*evaluation.entry, evaluation.step.inputs), json_of_evaluation(evaluation));
  });
}

}  // namespace tauten::command
