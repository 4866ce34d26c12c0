#include "command/refusal.hpp"

#include <CLI/CLI.hpp>

#include "tauten/base/shown_text.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::command {

namespace {

std::vector<std::string> options_of(const CLI::App& app) {
  std::vector<std::string> names;
  for (const CLI::Option* option : app.get_options())
    if (!option->get_lnames().empty()) names.push_back("--" + option->get_lnames().front());
  return names;
}

}  // namespace

std::string in_quotes(const std::string& text) { return detail::shown(text); }

std::string path_text(const std::string& path) {
  std::size_t from = path.size() > 60 ? path.size() - 57 : 0;
  while (from > 0 && from < path.size() && !detail::starts_character(path[from])) ++from;
  return (from > 0 ? "'..." : "'") + detail::visible(std::string_view(path).substr(from)) + "'";
}

Error refusal_of(const CLI::App& app, const CLI::ParseError& problem) {
  const CLI::App* verb = &app;
  std::string name;
  while (!verb->get_subcommands().empty()) {
    verb = verb->get_subcommands().front();
    name += (name.empty() ? "" : " ") + verb->get_name();
  }
  for (const CLI::Option* option : verb->get_options())
    if (option->get_multi_option_policy() == CLI::MultiOptionPolicy::Throw && option->get_items_expected_max() == 1 &&
        option->results().size() > 1)
      return {option->get_single_name().c_str(),
              (option->get_name() + " is given " + std::to_string(option->results().size()) + " times; give it once")
                  .c_str()};
  std::vector<std::string> verbs;
  for (const CLI::App* other : app.get_subcommands([](const CLI::App*) { return true; }))
    verbs.push_back(other->get_name());
  if (const std::vector<std::string> rest = app.remaining(true); !rest.empty()) {
    const std::string word = rest.front();
    if (name.empty())
      return {"verb",
              ("there is no verb " + in_quotes(word) + did_you_mean(word, verbs, "the verbs are " + listed(verbs)))
                  .c_str()};
    const std::vector<std::string> known = options_of(*verb);
    if (word.starts_with("-"))
      return {"option",
              (name + " has no option " + in_quotes(word) + did_you_mean(word, known, "see tauten " + name + " --help"))
                  .c_str()};
    return {"option", ("unexpected " + in_quotes(word) + " after " + name +
                       "; put a value after its option, as in --torque 48N.m (tauten " + name + " --help lists them)")
                          .c_str()};
  }
  if (name.empty()) return {"verb", ("no verb is given; the verbs are " + listed(verbs)).c_str()};
  const std::string message = problem.what();
  const std::string argument = message.substr(0, message.find(':'));
  for (const CLI::Option* option : verb->get_options()) {
    if (option->get_name() != argument && option->get_single_name() != argument) continue;
    if (dynamic_cast<const CLI::ValidationError*>(&problem) && !option->results().empty())
      return {option->get_single_name().c_str(), (option->get_name() + " is " + in_quotes(option->results().back()) +
                                                  ", but" + message.substr(message.find(':') + 1))
                                                     .c_str()};
    return {option->get_single_name().c_str(),
            (option->get_name() + " has no value; write it like " + option->get_name() + " " + option->get_type_name())
                .c_str()};
  }
  if (dynamic_cast<const CLI::RequiredError*>(&problem))
    return {"", (name + " needs more: " + message + " (tauten " + name + " --help)").c_str()};
  return {"", message.c_str()};
}

}  // namespace tauten::command
