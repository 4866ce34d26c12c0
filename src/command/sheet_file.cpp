// Reads the description of a job sheet from a TOML file.
#include <fmt/format.h>

#include <cstdint>

#include "command/refusal.hpp"
#include "command/sheet.hpp"
#include "command/toml_file.hpp"
#include "shared/clamp_inputs.hpp"
#include "shared/questions.hpp"

namespace tauten::command {

namespace {

using Texts = std::vector<std::pair<const char*, std::string*>>;
using Lists = std::vector<std::pair<const char*, std::vector<std::string>*>>;

[[noreturn]] void refuse_key(const std::string& where, const std::string& key, const std::vector<std::string>& known) {
  throw Error(in_quotes(key).c_str(), (where + ": key " + in_quotes(key) + " is unknown" +
                                       did_you_mean(key, known, "the keys are " + listed(known)))
                                          .c_str());
}

std::string text_of(const std::string& where, const std::string& key, const toml::node& node) {
  if (const auto* text = node.as_string()) return text->get();
  if (const auto* whole = node.as_integer()) return fmt::format("{}", whole->get());
  if (const auto* number = node.as_floating_point()) return fmt::format("{}", number->get());
  if (const auto* truth = node.as_boolean(); truth && truth->get()) return "yes";
  throw Error(key.c_str(), (where + ": " + key + " must be a text in quotes").c_str());
}

std::vector<std::string> list_of(const std::string& where, const std::string& key, const toml::node& node) {
  std::vector<std::string> texts;
  if (const toml::array* list = node.as_array())
    for (const toml::node& item : *list) texts.push_back(text_of(where, key, item));
  else
    texts.push_back(text_of(where, key, node));
  return texts;
}

/// Reads what a question takes; several numbers of one key are one text with semicolons, as on the command line.
void read_words(const std::string& where, const char* question, const toml::node& node, SaidWords& words) {
  const toml::table* table = node.as_table();
  if (table == nullptr) throw Error(question, (where + ": " + question + " must be a table of its options").c_str());
  // A fastener has what goes with a torque as well as what goes with a wanted load.
  const auto keys = std::string_view(question) == "torque" ? shared::facts_of(shared::joint_inputs())
                                                           : shared::try_question(question).value()->inputs();
  std::vector<std::string> known;
  for (const shared::InputFacts* key : keys) known.emplace_back(key->option());
  for (const auto& [name, value] : *table) {
    const std::string word(name.str());
    const auto at = std::find(known.begin(), known.end(), word);
    if (at == known.end()) refuse_key(where + ", " + question, word, known);
    const shared::InputFacts& key = *keys[static_cast<std::size_t>(at - known.begin())];
    const auto texts = list_of(where, word, value);
    if (key.takes == shared::Takes::several_values) {
      for (const std::string& text : texts) words.add(key.option(), text);
      continue;
    }
    std::string all;
    for (const std::string& text : texts) all += (all.empty() ? "" : ";") + text;
    words.add(key.option(), all);
  }
}

/// Puts the texts and lists of a table where they belong.
/// \param other  takes what is neither; returns whether it is known
template <class Other>
void read_table(const std::string& where, const toml::table& table, const Texts& texts, const Lists& lists,
                const std::vector<std::string>& more, Other other) {
  for (const auto& [name, node] : table) {
    const std::string key(name.str());
    bool known = false;
    for (const auto& [text, into] : texts)
      if (key == text) *into = text_of(where, key, node), known = true;
    for (const auto& [list, into] : lists)
      if (key == list) *into = list_of(where, key, node), known = true;
    if (known || other(key, node)) continue;
    std::vector<std::string> names = more;
    for (const auto& [text, into] : texts) names.emplace_back(text);
    for (const auto& [list, into] : lists) names.emplace_back(list);
    refuse_key(where, key, names);
  }
}

void read_joint(const std::string& where, const toml::table& table, SheetJoint& joint) {
  const Texts texts = {{"name", &joint.name},
                       {"carries", &joint.carries},
                       {"pattern", &joint.pattern},
                       {"hole", &joint.hole},
                       {"mark", &joint.mark},
                       {"turned", &joint.turned},
                       {"held", &joint.held},
                       {"direction", &joint.direction},
                       {"length", &joint.length},
                       {"washers", &joint.washers},
                       {"locking", &joint.locking},
                       {"gasket", &joint.gasket},
                       {"maker-torque", &joint.maker_torque},
                       {"maker-source", &joint.maker_source},
                       {"lubricate", &joint.lubricate},
                       {"load-state", &joint.load_state},
                       {"retighten", &joint.retighten},
                       {"wrench", &joint.wrench}};
  const Lists lists = {{"unload", &joint.unload},
                       {"reload", &joint.reload},
                       {"new-parts", &joint.new_parts},
                       {"not-reused", &joint.not_reused},
                       {"look", &joint.look}};
  const std::vector<std::pair<const char*, SaidWords*>> questions = {{"torque", &joint.torque},
                                                                     {"reach", &joint.reach},
                                                                     {"sequence", &joint.sequence},
                                                                     {"free", &joint.free},
                                                                     {"turn", &joint.turn}};
  read_table(where, table, texts, lists, {"torque", "reach", "sequence", "free", "turn"},
             [&](const std::string& key, const toml::node& node) {
               for (const auto& [question, words] : questions)
                 if (key == question) return read_words(where, question, node, *words), true;
               return false;
             });
  for (const char* needed : {"name", "pattern"})
    if (!table.contains(needed)) throw Error(needed, (where + ": " + needed + " is missing").c_str());
  if (joint.torque.said.empty())
    throw Error(
        "torque",
        (where + ": torque is missing; describe the fastener like [joint.torque] with thread = \"M16\"").c_str());
}

/// FNV-1a, 64 bits: enough to tell apart two sheets that somebody holds in hand.
std::string fingerprint_of(const std::string& content) {
  std::uint64_t hash = 14695981039346656037ULL;
  for (const char c : content) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
  const std::string digits = fmt::format("{:016x}", hash);
  return digits.substr(0, 4) + "-" + digits.substr(4, 4) + "-" + digits.substr(8, 4) + "-" + digits.substr(12);
}

}  // namespace

SheetPlan sheet_plan_of(const std::string& path) {
  std::string content;
  const toml::table file = toml_file(path, content);
  const std::string where = path_text(path);
  SheetPlan plan;
  plan.fingerprint = fingerprint_of(content);
  const auto each = [&](const toml::node& node, const char* name, auto read) {
    const toml::array* list = node.as_array();
    if (list == nullptr || list->empty() || !list->front().is_table())
      throw Error(name, fmt::format("{}: begin each {} with [[{}]]", where, name, name).c_str());
    for (const toml::node& item : *list) {
      const toml::table* table = item.as_table();
      if (table == nullptr) throw Error(name, fmt::format("{}: each {} is a table", where, name).c_str());
      read(*table);
    }
  };
  read_table(where, file,
             {{"title", &plan.title}, {"place", &plan.place}, {"machine", &plan.machine}, {"note", &plan.note}},
             {{"before", &plan.before}, {"fetch", &plan.fetch}, {"after", &plan.after}}, {"wrench", "joint"},
             [&](const std::string& key, const toml::node& node) {
               if (key == "wrench")
                 each(node, "wrench", [&](const toml::table& table) {
                   SheetWrench& wrench = plan.wrenches.emplace_back();
                   const std::string here = fmt::format("{}, wrench {}", where, plan.wrenches.size());
                   read_table(here, table, {{"name", &wrench.name}, {"serial", &wrench.serial}, {"due", &wrench.due}},
                              {}, {"reach"}, [&](const std::string& word, const toml::node& inner) {
                                return word == "reach" && (read_words(here, "reach", inner, wrench.reach), true);
                              });
                 });
               else if (key == "joint")
                 each(node, "joint", [&](const toml::table& table) {
                   plan.joints.emplace_back();
                   read_joint(fmt::format("{}, joint {}", where, plan.joints.size()), table, plan.joints.back());
                 });
               else
                 return false;
               return true;
             });
  if (plan.joints.empty())
    throw Error("joint",
                (where + " holds no joint; begin each with [[joint]], in the order in which they are undone").c_str());
  return plan;
}

}  // namespace tauten::command
