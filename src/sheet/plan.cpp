// Reads the description of a job sheet.
#include <cstdint>
#include <map>

#include "sheet/sheet.hpp"

#include "shared/clamp_inputs.hpp"
#include "shared/did_you_mean.hpp"
#include "shared/questions.hpp"

namespace tauten::sheet {

namespace {

using shared::Value;
using Texts = std::vector<std::pair<const char*, std::string*>>;
using Lists = std::vector<std::pair<const char*, std::vector<std::string>*>>;

[[noreturn]] void refuse_key(const std::string& where, const std::string& key, const std::vector<std::string>& known) {
  const std::string name = tauten::detail::shown(key);
  throw Error(name.c_str(), (where + ": key " + name + " is unknown" +
                             shared::did_you_mean(key, known, "the keys are " + shared::listed(known)))
                                .c_str());
}

std::string text_of(const std::string& where, const std::string& key, const Value& value) {
  switch (value.kind) {
    case Value::Kind::text: return std::string(value.text);
    case Value::Kind::whole: return std::to_string(value.whole);
    case Value::Kind::number: return tauten::exact_text(value.number);
    case Value::Kind::truth:
      if (value.truth) return "yes";
      break;
    default: break;
  }
  throw Error(key.c_str(), (where + ": " + key + " must be a text in quotes").c_str());
}

std::vector<std::string> list_of(const std::string& where, const std::string& key, const Value& value) {
  if (value.kind != Value::Kind::list) return {text_of(where, key, value)};
  std::vector<std::string> texts;
  for (const Value& item : value.items) texts.push_back(text_of(where, key, item));
  return texts;
}

/// The members of a record by name, so that a sheet does not depend on the order in which they were written.
std::map<std::string, const Value*> members_of(const Value& record) {
  std::map<std::string, const Value*> members;
  for (std::size_t i = 0; i < record.items.size(); ++i) members[std::string(record.names[i])] = &record.items[i];
  return members;
}

/// Reads what a question takes; several numbers of one key are one text with semicolons, as on the command line.
void read_words(const std::string& where, const char* question, const Value& table, SaidWords& words) {
  if (table.kind != Value::Kind::record)
    throw Error(question, (where + ": " + question + " must be a table of its options").c_str());
  // A fastener has what goes with a torque as well as what goes with a wanted load.
  const auto keys = std::string_view(question) == "torque" ? shared::facts_of(shared::joint_inputs())
                                                           : shared::try_question(question).value()->inputs();
  std::vector<std::string> known;
  for (const shared::InputFacts* key : keys) known.emplace_back(key->option());
  for (const auto& [word, value] : members_of(table)) {
    const shared::InputFacts* found = shared::input_called(keys, word);
    if (found == nullptr) refuse_key(where + ", " + question, word, known);
    const shared::InputFacts& key = *found;
    const auto texts = list_of(where, word, *value);
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
void read_table(const std::string& where, const Value& table, const Texts& texts, const Lists& lists,
                const std::vector<std::string>& more, Other other) {
  for (const auto& [key, value] : members_of(table)) {
    bool known = false;
    for (const auto& [text, into] : texts)
      if (key == text) *into = text_of(where, key, *value), known = true;
    for (const auto& [list, into] : lists)
      if (key == list) *into = list_of(where, key, *value), known = true;
    if (known || other(key, *value)) continue;
    std::vector<std::string> names = more;
    for (const auto& [text, into] : texts) names.emplace_back(text);
    for (const auto& [list, into] : lists) names.emplace_back(list);
    refuse_key(where, key, names);
  }
}

void read_joint(const std::string& where, const Value& table, SheetJoint& joint) {
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
                       {"final-state", &joint.final_state},
                       {"retighten", &joint.retighten},
                       {"wrench", &joint.wrench}};
  const Lists lists = {{"unload", &joint.unload},   {"take-off", &joint.take_off},   {"reload", &joint.reload},
                       {"release", &joint.release}, {"new-parts", &joint.new_parts}, {"not-reused", &joint.not_reused},
                       {"look", &joint.look}};
  const std::vector<std::pair<const char*, SaidWords*>> questions = {{"torque", &joint.torque},
                                                                     {"reach", &joint.reach},
                                                                     {"sequence", &joint.sequence},
                                                                     {"free", &joint.free},
                                                                     {"turn", &joint.turn}};
  read_table(where, table, texts, lists, {"torque", "reach", "sequence", "free", "turn"},
             [&](const std::string& key, const Value& value) {
               for (const auto& [question, words] : questions)
                 if (key == question) return read_words(where, question, value, *words), true;
               return false;
             });
  for (const char* needed : {"name", "pattern"})
    if (!members_of(table).contains(needed)) throw Error(needed, (where + ": " + needed + " is missing").c_str());
  if (joint.torque.said.empty())
    throw Error(
        "torque",
        (where + ": torque is missing; describe the fastener like [joint.torque] with thread = \"M16\"").c_str());
}

}  // namespace

std::string fingerprint_of(const std::string& content) {
  std::uint64_t hash = 14695981039346656037ULL;  // FNV-1a, 64 bits
  for (const char c : content) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
  std::string digits;
  for (int shift = 60; shift >= 0; shift -= 4) {
    digits += "0123456789abcdef"[hash >> shift & 15];
    if (shift % 16 == 0 && shift > 0) digits += '-';
  }
  return digits;
}

SheetPlan sheet_plan_of(const Value& file, const std::string& called, const std::string& fingerprint) {
  SheetPlan plan;
  plan.fingerprint = fingerprint;
  const auto each = [&](const Value& list, const std::string& name, auto read) {
    if (list.kind != Value::Kind::list || list.items.empty())
      throw Error(name.c_str(), (called + ": begin each " + name + " with [[" + name + "]]").c_str());
    for (const Value& table : list.items) {
      if (table.kind != Value::Kind::record)
        throw Error(name.c_str(), (called + ": begin each " + name + " with [[" + name + "]]").c_str());
      read(table);
    }
  };
  read_table(called, file,
             {{"title", &plan.title}, {"place", &plan.place}, {"machine", &plan.machine}, {"note", &plan.note}},
             {{"before", &plan.before}, {"fetch", &plan.fetch}, {"after", &plan.after}}, {"wrench", "joint"},
             [&](const std::string& key, const Value& value) {
               if (key == "wrench")
                 each(value, key, [&](const Value& table) {
                   SheetWrench& wrench = plan.wrenches.emplace_back();
                   const std::string here = called + ", wrench " + std::to_string(plan.wrenches.size());
                   read_table(here, table, {{"name", &wrench.name}, {"serial", &wrench.serial}, {"due", &wrench.due}},
                              {}, {"reach"}, [&](const std::string& word, const Value& inner) {
                                return word == "reach" && (read_words(here, "reach", inner, wrench.reach), true);
                              });
                 });
               else if (key == "joint")
                 each(value, key, [&](const Value& table) {
                   SheetJoint& joint = plan.joints.emplace_back();
                   read_joint(called + ", joint " + std::to_string(plan.joints.size()), table, joint);
                 });
               else
                 return false;
               return true;
             });
  if (plan.joints.empty())
    throw Error("joint",
                (called + " holds no joint; begin each with [[joint]], in the order in which they are undone").c_str());
  return plan;
}

}  // namespace tauten::sheet
