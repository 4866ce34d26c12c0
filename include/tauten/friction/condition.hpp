// Conditions of the threads: named states with a friction band for the thread and for the bearing face.
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/spelling.hpp"
#include "tauten/friction/condition_table.hpp"

namespace tauten::TAUTEN_ABI {

/// A state of thread and bearing face.
struct ThreadCondition {
  std::string key;                ///< short name: "oiled"
  std::string title;              ///< what it is
  std::string group;              ///< bare, coated, paste, stainless, locked or field
  Band<double> thread_friction;   ///< mu_G
  Band<double> bearing_friction;  ///< mu_K
  bool lubricated = false;        ///< a fluid, paste or wax is on the surface
  std::string note;
  Source source{"", "", Seen::judgement};

  template <class V>
  static void fields(V&& visit) {
    visit("key", &ThreadCondition::key);
    visit("title", &ThreadCondition::title);
    visit("group", &ThreadCondition::group);
    visit("thread_friction", &ThreadCondition::thread_friction);
    visit("bearing_friction", &ThreadCondition::bearing_friction);
    visit("lubricated", &ThreadCondition::lubricated);
    visit("note", &ThreadCondition::note);
    visit("source", &ThreadCondition::source);
  }
};

namespace detail {

/// \return "hot dip galvanised" for "Hot-dip  Galvanised."
inline std::string condition_key(std::string_view text) {
  std::string key;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '-' || c == '_' || c == '\t' || c == '.' || c == ',';
    if (!blank) key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (blank && !key.empty() && key.back() != ' ') key += ' ';
  }
  while (key.ends_with(' ')) key.pop_back();
  return key;
}

/// Words that stand for conditions whose friction differs: a guess could cost a bolt.
inline constexpr std::pair<const char*, const char*> ambiguous_conditions[] = {
    {"black", "dry or oiled"},
    {"blackened", "dry or oiled"},
    {"black oxide", "dry or oiled"},
    {"none", "dry or unknown"},
    {"wet", "oiled or penetrating-fluid"},
    {"paste", "moly-paste or anti-seize"},
    {"moly grease", "moly-paste or oiled"},
    {"moly oil", "moly-paste or oiled"},
    {"coated", "zinc, waxed, zinc-flake or dry-film"},
    {"plated", "zinc, zinc-oiled, waxed or cadmium"},
    {"zinc coated", "zinc, waxed, zinc-flake or galvanised"},
};

/// Calls `see(row, word)` for the name and each trade word of every condition.
template <class See>
void each_condition_word(See see) {
  for (const table::ThreadConditionRow& row : table::thread_conditions) {
    see(row, condition_key(row.key));
    for (std::string_view rest = row.words; !rest.empty();) {
      const std::string_view word = rest.substr(0, rest.find(';'));
      see(row, std::string(word));
      rest.remove_prefix(std::min(rest.size(), word.size() + 1));
    }
  }
}

/// \return the condition of exactly this name, or nullptr
inline const table::ThreadConditionRow* condition_called(std::string_view name) {
  for (const table::ThreadConditionRow& row : table::thread_conditions)
    if (name == row.key) return &row;
  return nullptr;
}

/// \return the condition that is meant, by its name, a trade word or a long one that is a letter or two off; nullptr if none
///         is or two are as near
/// \param shortest  letters of a word that may have a slip of the pen
inline const table::ThreadConditionRow* condition_meant(std::string_view text, std::size_t shortest = 7) {
  const std::string key = condition_key(text.substr(0, 40));
  const table::ThreadConditionRow* found = nullptr;
  each_condition_word([&](const auto& row, const std::string& word) {
    if (word == key) found = &row;
  });
  if (found) return found;
  // Words that begin otherwise are others: unoiled is not oiled.
  std::size_t least = key.size() >= 10 ? 3 : 2;
  bool two = false;
  each_condition_word([&](const auto& row, const std::string& word) {
    if (std::min(word.size(), key.size()) < shortest || word[0] != key[0]) return;
    const std::size_t apart = letters_apart(word, key);
    if (apart < least)
      least = apart, found = &row, two = false;
    else if (apart == least && found)
      two = two || found != &row;
  });
  return two ? nullptr : found;
}

}  // namespace detail

/// \param key  name of a state, "oiled", or what people call it: "Oil", "greased", "HDG"; `table::thread_conditions` lists all
/// \return the state with its bands, or an error that lists the names, or those between which a word does not decide
inline Outcome<ThreadCondition> try_thread_condition(const std::string& key) {
  const table::ThreadConditionRow* meant = detail::condition_called(key);
  const std::string typed = meant ? "" : detail::condition_key(key.substr(0, 40));
  for (const auto& [word, choices] : detail::ambiguous_conditions)
    if (typed == word)
      return Error("condition", ("condition " + detail::shown(key) + " may mean " + choices +
                                 ", whose friction differs; give one of them (tauten conditions lists their bands)")
                                    .c_str());
  if (const table::ThreadConditionRow* row = meant ? meant : detail::condition_meant(key))
    return ThreadCondition{row->key,
                           row->title,
                           row->group,
                           {row->thread_low, row->thread_nominal, row->thread_high},
                           {row->face_low, row->face_nominal, row->face_high},
                           row->lubricated,
                           row->note,
                           table::condition_sources[row->source]};
  const table::ThreadConditionRow* near = detail::condition_meant(key, 4);
  std::string names;
  for (const table::ThreadConditionRow& row : table::thread_conditions)
    names += (names.empty() ? "" : ", ") + std::string(row.key);
  return Error("condition",
               ("condition " + detail::shown(key) + " is not known; " +
                (near ? "did you mean " + std::string(near->key) + "? Give" : std::string("give")) + " one of " + names)
                   .c_str());
}

/// \copydoc try_thread_condition
/// \throws Error  if there is no such state
inline ThreadCondition thread_condition(const std::string& key) { return try_thread_condition(key).value(); }

}  // namespace tauten::TAUTEN_ABI
