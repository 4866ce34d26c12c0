// tauten completion: scripts for shells, made from the program's own verbs and options.
#include <fmt/format.h>

#include "command/program.hpp"
#include "command/refusal.hpp"

namespace tauten::command {

namespace {

/// What may follow after some verbs: "" at the start, " clamp", " explain clamp".
struct Place {
  std::string path;
  std::vector<std::string> words;  ///< verbs, options, and words without an option
  struct Value {
    std::string option;
    std::vector<std::string> words;
    bool is_file;
  };
  std::vector<Value> values;  ///< options that take a value, and which
  const CLI::App* verb;
};

/// Words with blanks would have to be quoted differently by each shell; they are left out.
std::vector<std::string> simple(const std::vector<std::string>& words) {
  std::vector<std::string> kept;
  for (const std::string& word : words)
    if (word.find_first_of(" \"'\\$`") == std::string::npos) kept.push_back(word);
  return kept;
}

void collect(const Program& program, const CLI::App& verb, const std::string& path, std::vector<Place>& places) {
  Place place{path, {}, {}, &verb};
  std::vector<const CLI::App*> inner = verb.get_subcommands([](const CLI::App*) { return true; });
  for (const CLI::App* next : inner) place.words.push_back(next->get_name());
  for (const CLI::Option* option : verb.get_options()) {
    const auto found = program.choices.find(option);
    const std::vector<std::string> words =
        found == program.choices.end() ? std::vector<std::string>{} : simple(found->second);
    if (option->get_lnames().empty()) {
      place.words.insert(place.words.end(), words.begin(), words.end());
      continue;
    }
    const std::string name = "--" + option->get_lnames().front();
    place.words.push_back(name);
    if (option->get_items_expected_max() > 0)
      place.values.push_back({name, words, name == "--file" || name == "--svg"});
  }
  places.push_back(place);
  for (const CLI::App* next : inner) collect(program, *next, path + " " + next->get_name(), places);
}

std::string in_row(const std::vector<std::string>& words) { return fmt::format("{}", fmt::join(words, " ")); }

std::string cases(const std::vector<Place>& places, const char* values, const char* files, const char* nothing,
                  bool of_values) {
  std::string out;
  for (const Place& place : places) {
    if (!of_values)
      out += fmt::format("    '{}') {} ;;\n", place.path, fmt::format(fmt::runtime(values), in_row(place.words)));
    if (of_values)
      for (const Place::Value& value : place.values)
        out += fmt::format("    '{} {}') {}; return ;;\n", place.path, value.option,
                           value.is_file         ? files
                           : value.words.empty() ? nothing
                                                 : fmt::format(fmt::runtime(values), in_row(value.words)));
  }
  return out;
}

std::string paths_of(const std::vector<Place>& places) {
  std::string out;
  for (const Place& place : places)
    if (!place.path.empty()) out += (out.empty() ? "'" : "|'") + place.path + "'";
  return out;
}

std::string bash_script(const std::vector<Place>& places) {
  const char* words = "COMPREPLY=($(compgen -W '{}' -- \"$word\"))";
  const char* files = "COMPREPLY=($(compgen -f -- \"$word\"))";
  return fmt::format(R"(# Completion of tauten for bash. Load it with: source <(tauten completion bash)
_tauten() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} place='' each
  for each in "${{COMP_WORDS[@]:1:COMP_CWORD-1}}"; do
    case "$place $each" in {}) place="$place $each" ;; esac
  done
  COMPREPLY=()
  case "$place ${{COMP_WORDS[COMP_CWORD-1]}}" in
{}  esac
  case "$place" in
{}  esac
}}
complete -F _tauten tauten
)",
                     paths_of(places), cases(places, words, files, ":", true), cases(places, words, files, ":", false));
}

std::string zsh_script(const std::vector<Place>& places) {
  const char* words = "compadd -- {}";
  return fmt::format(R"(#compdef tauten
# Completion of tauten for zsh. Load it with: source <(tauten completion zsh), or save it as _tauten on fpath.
_tauten() {{
  local place='' each
  for each in "${{(@)words[2,CURRENT-1]}}"; do
    case "$place $each" in ({}) place="$place $each" ;; esac
  done
  case "$place ${{words[CURRENT-1]}}" in
{}  esac
  case "$place" in
{}  esac
}}
if [[ ${{funcstack[1]-}} == _tauten ]]; then _tauten "$@"; else compdef _tauten tauten; fi
)",
                     paths_of(places), cases(places, words, "_files", ":", true),
                     cases(places, words, "_files", ":", false));
}

std::string fish_text(const std::string& text) {
  std::string out = "'";
  for (const char c : text) out += c == '\'' || c == '\\' ? std::string("\\") + c : std::string(1, c);
  return out + "'";
}

std::string fish_script(const std::vector<Place>& places) {
  std::string out =
      "# Completion of tauten for fish. Load it with: tauten completion fish | source\n"
      "function __tauten_at\n"
      "  set -l place ''\n"
      "  for each in (commandline -opc)[2..-1]\n"
      "    if contains -- \"$place $each\"";
  for (const Place& place : places)
    if (!place.path.empty()) out += " '" + place.path + "'";
  out +=
      "\n      set place \"$place $each\"\n"
      "    end\n"
      "  end\n"
      "  test \"$place\" = \"$argv[1]\"\n"
      "end\n"
      "complete -c tauten -f\n";
  for (const Place& place : places) {
    const std::string start = fmt::format("complete -c tauten -n \"__tauten_at '{}'\"", place.path);
    for (const CLI::App* inner : place.verb->get_subcommands([](const CLI::App*) { return true; }))
      out += fmt::format("{} -a {} -d {}\n", start, inner->get_name(), fish_text(inner->get_description()));
    for (const CLI::Option* option : place.verb->get_options()) {
      if (option->get_lnames().empty()) continue;
      const std::string name = option->get_lnames().front();
      out += fmt::format("{} -l {} -d {}", start, name, fish_text(option->get_description()));
      for (const Place::Value& value : place.values)
        if (value.option == "--" + name)
          out += value.is_file ? " -r -F" : fmt::format(" -x -a {}", fish_text(in_row(value.words)));
      out += "\n";
    }
    const auto is_verb = [&](const std::string& word) {
      return !place.verb->get_subcommands([&](const CLI::App* inner) { return inner->get_name() == word; }).empty();
    };
    std::vector<std::string> free;
    for (const std::string& word : place.words)
      if (!word.starts_with("--") && !is_verb(word)) free.push_back(word);
    if (!free.empty()) out += fmt::format("{} -a {}\n", start, fish_text(in_row(free)));
  }
  return out;
}

}  // namespace

void add_completion(Program& program, CLI::App* verb) {
  auto shell = std::make_shared<std::string>();
  program.choices[verb->add_option("shell", *shell, "bash, zsh or fish")->type_name("bash")] = {"bash", "zsh", "fish"};
  verb->callback([&program, shell] {
    if (*shell != "bash" && *shell != "zsh" && *shell != "fish")
      throw Error("shell", ("shell " + in_quotes(*shell) + " is not known; write bash, zsh or fish").c_str());
    std::vector<Place> places;
    collect(program, program.app, "", places);
    const std::string script = *shell == "bash"  ? bash_script(places)
                               : *shell == "zsh" ? zsh_script(places)
                                                 : fish_script(places);
    if (program.json)
      program.say({{"shell", *shell}, {"script", script}});
    else
      program.out += script;
  });
}

}  // namespace tauten::command
