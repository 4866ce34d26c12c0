// The program `tauten`: takes the words apart, lets the verb answer, and tells what went wrong in one sentence.
#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <iterator>
#include <string_view>
#include <system_error>
#include <utility>

#include "command/program.hpp"
#include "command/refusal.hpp"

namespace tauten::command {
namespace {

constexpr const char* closing_words =
    R"(A length, torque, force or angle carries its unit: 48N.m 35lbf.ft 12mm 5/8in 25kN 90deg. Shares
and coefficients have none: 75% 0.12.
Exit codes: 0 all well; 2 invalid input, explained in one sentence; 3 some joints of a file failed,
the others are answered; 1 anything else, such as a full disk.
The answers are estimates and do not approve a joint for service; the manufacturer's manual, local
codes and licensed professionals take precedence.)";

void refuse(Program& program, const Error& error) {
  program.code = wrong_input;
  program.out = program.json ? text_of({{"error", json_of(error)}}) + "\n" : "";
  program.complaints = std::string("tauten: ") + error.what() + "\n";
}

/// A reader that has gone, like `head`, has what it wanted: the exit code says that the answer is cut, and no words do.
std::string complaint_of(const std::system_error& problem) {
  if (problem.code() == std::errc::broken_pipe) return "";
  return std::string("tauten: ") + problem.what() + "\n";
}

/// \return the words, the last one first; --name= has the value "", not the word behind it
std::vector<std::string> taken_apart(int count, const char* const* words) {
  std::vector<std::string> all;
  for (int i = count - 1; i > 0; --i) {
    const std::string word = words[i];
    const bool is_empty = word.starts_with("--") && word.find('=') == word.size() - 1;
    if (is_empty) all.emplace_back();
    all.push_back(is_empty ? word.substr(0, word.size() - 1) : word);
  }
  return all;
}

/// \return the verb that is asked, "" if there is none
std::string_view asked(int count, const char* const* words) {
  for (int i = 1; i < count; ++i)
    if (std::strcmp(words[i], "--json") != 0) return words[i];
  return "";
}

/// Adds all verbs, questions first, and the options of the one that is asked: those of all take longer than most answers.
void add_verbs(Program& program, std::string_view asked) {
  using Add = void (*)(Program&, CLI::App*);
  constexpr struct {
    const char *name, *help;
    Add add;
  } others[] = {
      {"sheet", "One sheet for the machine: undo, look, assemble, check, record", add_sheet},
      {"chart", "Charts to print: torques for sizes, settings, loads, angles", add_chart},
      {"formulas", "All formulas, those that mention a text, or one by its name", add_formulas},
      {"eval", "The value of one formula: eval bearing_torque preload=25kN ...", add_eval},
      {"explain", "How a figure comes about: of a formula, or of a whole answer", add_explain},
      {"uncertainty", "How certain a figure is: of formulas, or of a whole answer", add_uncertainty},
      {"conditions", "What can be on the threads: names, meaning, friction, trade words", add_conditions},
      {"cautions", "What can hurt: every caution, in full", add_cautions},
      {"completion", "A script that completes verbs, options and names in a shell", add_completion},
  };
  // Questions with options of their own.
  constexpr std::pair<std::string_view, Add> own[] = {
      {"identify", add_identify}, {"clamp", add_clamp}, {"torque", add_torque}, {"turn", add_turn},
      {"curve", add_curve},       {"reach", add_reach}, {"free", add_free}};
  const bool all = asked == "completion";  // it tells of the options of every verb
  for (const shared::Question& question : shared::questions()) {
    CLI::App* verb = program.verb(program.app, question.name, question.summary);
    if (!all && asked != question.name) continue;
    const auto found =
        std::ranges::find(own, std::string_view(question.name), &std::pair<std::string_view, Add>::first);
    if (found != std::end(own))
      found->second(program, verb);
    else
      add_question(program, verb, question);
  }
  for (const auto& [name, help, add] : others) {
    CLI::App* verb = program.verb(program.app, name, help);
    if (all || asked == name) add(program, verb);
  }
}

void run(Program& program, int count, const char* const* words) {
  // Also when the words are not understood, the answer has the form that was asked for.
  for (int i = 1; i < count; ++i) program.json |= std::strcmp(words[i], "--json") == 0;
  const bool json = program.json;
  try {
    program.app.parse(taken_apart(count, words));
  } catch (const CLI::Success& asked) {  // --help, --version
    const CLI::App* verb = &program.app;
    while (!verb->get_subcommands().empty()) verb = verb->get_subcommands().front();
    const bool version = dynamic_cast<const CLI::CallForVersion*>(&asked) != nullptr;
    program.out =
        version ? std::string(asked.what()) + "\n"
        : verb == &program.app
            ? verb->help()
            : verb->help(verb->get_parent() == &program.app ? "tauten" : "tauten " + verb->get_parent()->get_name());
  } catch (const CLI::ParseError& problem) {
    program.json = json;
    refuse(program, refusal_of(program.app, problem));
  } catch (const Error& error) {
    refuse(program, error);
  } catch (const std::system_error& problem) {
    program.code = other_failure;
    program.complaints = complaint_of(problem);
  } catch (const std::exception& problem) {
    program.code = other_failure;
    program.complaints = std::string("tauten: ") + problem.what() + "\n";
  }
}

/// Writes everything and notices if it does not arrive: a full disk, a closed pipe.
int finish(const Program& program) {
  errno = 0;
  const bool written =
      std::fwrite(program.out.data(), 1, program.out.size(), stdout) == program.out.size() && std::fflush(stdout) == 0;
  const int reason = errno;
  std::fputs(program.complaints.c_str(), stderr);
  if (written) return program.code;
  const std::system_error problem(reason, std::generic_category(), "the answer could not be written");
  std::fputs(complaint_of(problem).c_str(), stderr);
  return other_failure;
}

}  // namespace
}  // namespace tauten::command

int main(int count, char** words) {
  using namespace tauten::command;
  try {
    for (const int signal : {SIGPIPE, SIGXFSZ}) std::signal(signal, SIG_IGN);  // errors of writing, reported as such
    Program program;
    program.app.footer(closing_words);
    program.app.set_version_flag("--version", "tauten " TAUTEN_VERSION, "Show the version");
    program.app.add_flag("--json", program.json, "Answer in JSON, all numbers in SI");
    program.app.require_subcommand(1);
    add_verbs(program, asked(count, words));
    run(program, count, words);
    return finish(program);
  } catch (const std::exception& problem) {
    std::fprintf(stderr, "tauten: %s\n", problem.what());
    return other_failure;
  }
}
