// What all verbs of the command line share.
#pragma once

#include <CLI/CLI.hpp>
#include <map>
#include <string>
#include <vector>

#include "command/json.hpp"
#include "shared/questions.hpp"

namespace tauten::command {

enum ExitCode : int { all_well = 0, other_failure = 1, wrong_input = 2, some_joints_failed = 3 };

/// The program: its verbs and options, and what it has to say in the end.
struct Program {
  CLI::App app{"Torque and tension of threaded fasteners: what clamp load does a torque leave?", "tauten"};
  std::map<const CLI::Option*, std::vector<std::string>> choices;  ///< words that an option takes, for completion
  bool json = false;
  std::string out;         ///< for standard output; written at the very end, so that a failure is noticed
  std::string complaints;  ///< for standard error
  ExitCode code = all_well;

  /// Adds a verb; every verb understands --json.
  CLI::App* verb(CLI::App& parent, const char* name, const char* help) {
    CLI::App* added = parent.add_subcommand(name, help);
    added->add_flag("--json", json, "Answer in JSON, all numbers in SI");
    return added;
  }

  /// Says `answer` in JSON.
  void say(const Json& answer) { out += text_of(answer) + "\n"; }
};

/// Adds the options of a verb, and what it does: of a question that needs no more than every question has, and of the others.
void add_question(Program& program, CLI::App* verb, const shared::Question& question);

void add_identify(Program& program, CLI::App* verb);
void add_clamp(Program& program, CLI::App* verb);
void add_torque(Program& program, CLI::App* verb);
void add_reach(Program& program, CLI::App* verb);
void add_turn(Program& program, CLI::App* verb);
void add_curve(Program& program, CLI::App* verb);
void add_free(Program& program, CLI::App* verb);
void add_formulas(Program& program, CLI::App* verb);
void add_eval(Program& program, CLI::App* verb);
void add_explain(Program& program, CLI::App* verb);
void add_uncertainty(Program& program, CLI::App* verb);
void add_cautions(Program& program, CLI::App* verb);
void add_conditions(Program& program, CLI::App* verb);
void add_sheet(Program& program, CLI::App* verb);
void add_completion(Program& program, CLI::App* verb);
void add_chart(Program& program, CLI::App* verb);

}  // namespace tauten::command
