// tauten explain: how a figure comes about.
#include <fmt/format.h>

#include "command/evaluation.hpp"
#include "command/job.hpp"
#include "command/refusal.hpp"
#include "tauten/explain/derivation.hpp"

namespace tauten::command {

namespace {

Layout layout_named(const std::string& format) {
  if (format == "text") return Layout::text;
  if (format == "markdown") return Layout::markdown;
  if (format == "latex") return Layout::latex;
  throw Error("format", ("format " + in_quotes(format) + " is not known; write text, markdown or latex").c_str());
}

Json json_of_steps(std::span<const Step> steps, Layout layout) {
  Json list = Json::array();
  for (const Step& step : steps) {
    const Entry& entry = formula_named(step.formula);
    const StepText text = step_text(entry, step, layout == Layout::text ? Notation::text : Notation::latex);
    list.push_back({{"formula", step.formula},
                    {"title", text.title},
                    {"note", text.note},
                    {"expression", text.formula},
                    {"with_values", text.with_values},
                    {"result", text.result},
                    {"inputs", json_of(step.inputs)},
                    {"value", json_of(step.value)},
                    {"unit", describe(entry.output.dimension).si_unit},
                    {"source", text.source},
                    {"warning", text.warning}});
  }
  return list;
}

/// The steps behind the nominal figures of the most common fastener.
void explain_joint(Program& program, const SaidWords& said, Layout layout) {
  const Clamp answer = answer_of(said);
  const ClampCandidate& c = answer.candidates.front();
  if (program.json) {
    program.say({{"thread", c.thread},
                 {"head", c.head},
                 {"class", c.property_class},
                 {"torque", json_of(c.torque)},
                 {"steps", json_of_steps(c.steps, layout)}});
    return;
  }
  program.out += fmt::format("{}{}, {}class {}{}, {} N.m\n\n", layout == Layout::latex ? "% " : "", c.thread,
                             c.head.empty() ? "" : c.head + ", ", c.property_class, c.class_assumed ? " (assumed)" : "",
                             number_text(c.torque.shop()));
  program.out += derivation(c.steps, all_formulas(), layout);
}

CLI::Option* add_format(Program& program, CLI::App& verb, std::string& format) {
  CLI::Option* option = verb.add_option("--format", format, "How it is written: text, markdown or latex");
  option->type_name("text");
  program.choices[option] = {"text", "markdown", "latex"};
  return option;
}

}  // namespace

void add_explain(Program& program) {
  CLI::App* verb = program.verb("explain", "How a figure comes about: of a formula, of clamp, of torque");
  auto format = std::make_shared<std::string>("text");
  auto name = std::make_shared<std::string>();
  auto words = std::make_shared<std::vector<std::string>>();
  add_format(program, *verb, *format);
  program.choices[verb->add_option("formula", *name, "Name of the formula")->type_name("NAME")] = formula_names();
  verb->add_option("inputs", *words, "Its inputs, each with its unit")->type_name("name=value");
  verb->require_subcommand(0, 1);

  for (const auto& [joint, help, without] :
       {std::tuple{"clamp", "The steps from a torque to the clamp load of the most common fastener", "clamp-load"},
        std::tuple{"torque", "The steps at the torque for a clamp load or a share of the proof load", "torque"}}) {
    CLI::App* inner = program.verb(*verb, joint, help);
    add_format(program, *inner, *format);
    const auto said = add_job_options(program, *inner, {without});
    const bool needs_torque = std::string(joint) == "clamp";
    inner->callback([&program, said, format, needs_torque] {
      if (needs_torque && !has(*said, "torque"))
        throw Error("torque", "torque is missing; write it like --torque 48N.m");
      explain_joint(program, *said, layout_named(*format));
    });
  }

  verb->callback([&program, verb, name, words, format] {
    if (!verb->get_subcommands().empty()) return;
    if (name->empty())
      throw Error(
          "formula",
          "say what to explain, like tauten explain stress_area diameter=10mm pitch=1.5mm, or tauten explain clamp "
          "--thread M10 --torque 48N.m");
    const Layout layout = layout_named(*format);
    const Evaluation evaluation = evaluation_of(*name, *words);
    const std::vector<Step> steps{evaluation.step};
    if (program.json) {
      Json answer = json_of_evaluation(evaluation);
      answer["steps"] = json_of_steps(steps, layout);
      program.say(answer);
    } else {
      program.out += derivation(steps, all_formulas(), layout);
    }
  });
}

}  // namespace tauten::command
