// Keys that other interfaces share, as options of a verb.
#pragma once

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

#include "command/program.hpp"
#include "command/table.hpp"
#include "shared/said_words.hpp"

namespace tauten::command {

using shared::SaidWords;

/// Lists the words that keys take, each list once, at the end of the help.
inline void add_words_to_help(CLI::App& verb, const std::vector<const shared::InputFacts*>& keys) {
  std::string help;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    const auto same = [&](const shared::InputFacts* other) { return other->words.data() == keys[i]->words.data(); };
    if (keys[i]->words.empty() || std::any_of(keys.begin(), keys.begin() + static_cast<std::ptrdiff_t>(i), same))
      continue;
    std::string names, words;
    for (const shared::InputFacts* key : keys)
      if (same(key)) names += (names.empty() ? "" : ", ") + std::string(key->option());
    for (const char* word : keys[i]->words) words += (words.empty() ? "" : ", ") + std::string(word);
    help += paragraph(names + ": " + words + ".");
  }
  if (!help.empty()) verb.footer(help + "\n" + verb.get_footer());
}

/// Adds all keys of a question to a verb as options, but for those in `without`.
/// \return what will have been said once the words are parsed
inline std::shared_ptr<SaidWords> add_said_options(Program& program, CLI::App& verb,
                                                   const std::vector<const shared::InputFacts*>& keys,
                                                   const std::vector<std::string>& without = {}) {
  auto words = std::make_shared<SaidWords>();
  for (const shared::InputFacts* key : keys) {
    if (std::find(without.begin(), without.end(), key->option()) != without.end()) continue;
    // A pattern of bolts needs no option in front of it.
    const std::string name =
        (std::string_view(key->option()) == "pattern" ? "pattern,--" : "--") + std::string(key->option());
    if (key->takes == shared::Takes::flag) {
      verb.add_flag_callback(name, [words, key] { words->add(key->option(), "yes"); }, key->help);
      continue;
    }
    CLI::Option* option = verb.add_option_function<std::vector<std::string>>(
        name,
        [words, key](const std::vector<std::string>& texts) {
          for (const std::string& text : texts) words->add(key->option(), text);
        },
        key->help);
    // One value behind each mention: a stray word is not taken for a second one.
    option->type_name(key->example)->expected(1)->allow_extra_args(false);
    option->multi_option_policy(key->takes == shared::Takes::several_values ? CLI::MultiOptionPolicy::TakeAll
                                                                            : CLI::MultiOptionPolicy::Throw);
    program.choices[option] = {key->words.begin(), key->words.end()};
  }
  add_words_to_help(verb, keys);
  return words;
}

/// The same for the keys of a job.
template <class Job>
std::shared_ptr<SaidWords> add_said_options(Program& program, CLI::App& verb, std::span<const shared::Input<Job>> keys,
                                            const std::vector<std::string>& without = {}) {
  return add_said_options(program, verb, shared::facts_of(keys), without);
}

}  // namespace tauten::command
