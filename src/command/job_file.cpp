#include "command/job_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "command/job.hpp"
#include "command/refusal.hpp"
#include "command/toml_file.hpp"
#include "tauten/explain/json_text.hpp"
#include "tauten/question/clamp_page.hpp"

namespace tauten::command {

namespace {

const char* kind_of(const toml::node& node) {
  if (node.is_boolean()) return "true or false";
  if (node.is_array()) return "a list";
  if (node.is_table()) return "a table";
  return "a date or time";
}

using shared::InputFacts;
using shared::Value;

/// The words of a joint, with the units that were typed.
struct Joint {
  std::string name;
  std::string where;  ///< "'feet.toml', joint 2 'coupling'"
  SaidWords words;
  std::optional<Error> error{};

  std::string_view keep(std::string text) { return words.texts.emplace_back(std::move(text)); }
};

/// A value as it would stand on the command line: a number is fine for what has no unit, and told to have none else.
Value value_of(Joint& joint, const InputFacts& key, const toml::node& node) {
  Value value;
  if (const auto* text = node.as_string()) {
    value.text = joint.keep(text->get());
  } else if (const auto* whole = node.as_integer()) {
    value.text = joint.keep(fmt::format("{}", whole->get()));
  } else if (const auto* number = node.as_floating_point()) {
    value.text = joint.keep(fmt::format("{}", number->get()));
  } else if (const auto* truth = node.as_boolean(); truth && (key.holds == shared::Holds::truth || key.members)) {
    value.kind = Value::Kind::truth;
    value.truth = truth->get();
  } else if (const auto* list = node.as_array();
             list && (key.holds == shared::Holds::band || key.holds == shared::Holds::list || key.members)) {
    value.kind = Value::Kind::list;
    for (const toml::node& item : *list) value.items.push_back(value_of(joint, key, item));
  } else if (const auto* record = node.as_table(); record && key.members) {
    value.kind = Value::Kind::record;
    for (const auto& [name, member] : *record) {
      value.names.push_back(joint.keep(std::string(name.str())));
      value.items.push_back(value_of(joint, key, member));
    }
  } else {
    throw Error(key.option(), fmt::format("{} is {}, but must be a text; write it like {} = \"{}\"", key.option(),
                                          kind_of(node), key.option(), key.example)
                                  .c_str());
  }
  return value;
}

void read_joint(Joint& joint, const std::vector<const InputFacts*>& keys, const toml::table& table) {
  std::vector<std::string> names;
  for (const InputFacts* key : keys) names.emplace_back(key->option());
  // Holes that are described need no name of a drilling.
  const bool is_described = std::any_of(table.begin(), table.end(), [&](const auto& member) {
    const InputFacts* key = shared::input_called(keys, member.first.str());
    return key != nullptr &&
           (key->option() == std::string_view("pattern") || key->option() == std::string_view("chords"));
  });
  for (const auto& [name, node] : table) {
    const std::string word(name.str());
    const InputFacts* found = shared::input_called(keys, word);
    if (word == "name" && node.is_string() && (found == nullptr || is_described)) continue;  // what the joint is called
    if (found == nullptr)
      throw Error(in_quotes(word).c_str(), ("key " + in_quotes(word) + " is unknown" +
                                            did_you_mean(word, names, "the keys are " + listed(names)))
                                               .c_str());
    const InputFacts& key = *found;
    const auto say = [&](const toml::node& item) {
      joint.words.said.push_back({key.option(), value_of(joint, key, item)});
    };
    const auto* truth = node.as_boolean();
    if (truth && !truth->get() && key.takes == shared::Takes::flag) continue;  // not said
    if (const auto* list = node.as_array(); list && key.takes == shared::Takes::several_values)
      for (const toml::node& item : *list) say(item);
    else
      say(node);
  }
  // The file has its keys by the alphabet; what is wrong is told in the order of the options, as everywhere.
  std::vector<shared::Assignment> in_order;
  for (const std::string& name : names)
    for (shared::Assignment& said : joint.words.said)
      if (said.key == name) in_order.push_back(std::move(said));
  joint.words.said = std::move(in_order);
}

std::vector<Joint> joints_of(const std::string& path, const std::vector<const InputFacts*>& keys) {
  std::string content;
  const toml::table table = toml_file(path, content);
  for (const auto& [name, node] : table)
    if (name.str() != "joint")
      refuse_file(path, "has the unknown key " + in_quotes(std::string(name.str())) +
                            " at its top; all it may hold is [[joint]] tables");
  const toml::array* list = table["joint"].as_array();
  if (!list || list->empty())
    refuse_file(path, "holds no joint; begin each with [[joint]] and write the options of the question below it");
  std::vector<Joint> joints;
  for (const toml::node& node : *list) {
    const std::size_t number = joints.size() + 1;
    Joint& joint = joints.emplace_back();
    joint.name = "joint " + std::to_string(number);
    joint.where = fmt::format("{}, joint {}", path_text(path), number);
    try {
      const toml::table* one = node.as_table();
      if (!one) throw Error("joint", "a joint is a table; begin it with [[joint]]");
      if (const auto name = (*one)["name"].value<std::string>(); name && !name->empty()) {
        joint.name = *name;
        joint.where += " " + in_quotes(*name);
      }
      read_joint(joint, keys, *one);
    } catch (const Error& error) {
      joint.error = error;
    }
  }
  return joints;
}

/// \return the joint's answer, or its error, which names file and joint
template <class Ask>
auto answer_to(const Joint& joint, Ask ask) -> Outcome<decltype(ask())> {
  const auto placed = [&](const Error& error) {
    return Error(error.argument(), (joint.where + ": " + error.what()).c_str());
  };
  if (joint.error) return placed(*joint.error);
  try {
    return ask();
  } catch (const Error& error) {
    return placed(error);
  }
}

void complain(Program& program, const Error& error) {
  program.code = some_joints_failed;
  program.complaints += std::string("tauten: ") + error.what() + "\n";
}

Json failed(const Joint& joint, const Error& error) { return {{"name", joint.name}, {"error", json_of(error)}}; }

shared::ClampAnswer clamp_of(const Joint& joint, bool needs_torque) {
  const SaidWords& said = joint.words;
  if (needs_torque && !has(said, "torque") && !has(said, "clamp-load") && !has(said, "share"))
    throw Error("torque", "torque is missing; write it like torque = \"48N.m\", or give clamp-load or share instead");
  return answer_of(said);
}

/// Joints that are tightened have a page in common.
void answer_clamps(Program& program, const std::vector<Joint>& joints, bool need_torque, const PageOptions& page) {
  std::vector<ListedClamp> answers;
  Json list = Json::array();
  for (const Joint& joint : joints) {
    Outcome<shared::ClampAnswer> answer = answer_to(joint, [&] { return clamp_of(joint, need_torque); });
    if (!answer) {
      complain(program, answer.error());
      answers.push_back({joint.name, {}, answer.error()});
      list.push_back(failed(joint, answer.error()));
      continue;
    }
    list.push_back(json_of(static_cast<const Clamp&>(*answer)));
    list.back()["name"] = joint.name;
    answers.push_back({joint.name, answer->job, static_cast<const Clamp&>(*answer)});
  }
  if (program.json)
    program.say({{"joints", list}});
  else
    print(program, page, page_of(answers, page.page_units({})));
}

/// One page after the other.
void answer_each(Program& program, const shared::Question& question, const std::vector<Joint>& joints,
                 const PageOptions& options, const PageFor& page_for) {
  Json list = Json::array();
  for (const Joint& joint : joints) {
    const SaidWords& words = joint.words;
    if (program.json) {
      const auto answer = answer_to(joint, [&] { return Json::parse(json_text(question.answer(words.said).value())); });
      list.push_back(answer ? *answer : failed(joint, answer.error()));
      if (answer) list.back()["name"] = joint.name;
      if (!answer) complain(program, answer.error());
      continue;
    }
    std::vector<std::pair<std::string, std::string>> typed;
    for (const std::string& text : words.texts) typed.emplace_back("", text);
    const auto page = answer_to(joint, [&] {
      const PageUnits units = options.page_units(typed);
      return page_for ? page_for(words, units) : question.page(words.said, units).value();
    });
    if (!page) {
      complain(program, page.error());
      continue;
    }
    Page named = *page;
    named.name = joint.name;
    if (options.is_short && &joint != &joints.back()) named.standing_cautions = false;  // once is enough
    if (!program.out.empty() && !options.is_short) program.out += "\n";
    print(program, options, named);
  }
  if (program.json) program.say({{"joints", list}});
}

void refuse_option(const std::string& option, const std::string& why) {
  throw Error(option.c_str(), ("--" + option + " " + why).c_str());
}

}  // namespace

void answer_file(Program& program, std::string_view name, const TableOptions& table, const SaidWords& said,
                 const PageOptions& page, const PageFor& page_for) {
  if (table.is_table()) return answer_table(program, table, name, said.pairs());
  if (!said.said.empty()) {
    const std::string key(said.said.front().key);
    throw Error(key.c_str(), ("--file stands alone; write " + key + " into the joints of the file").c_str());
  }
  for (const auto& [option, given] : {std::pair{"output", !table.output.empty()},
                                      {"columns", !table.columns.empty()},
                                      {"shop", table.shop},
                                      {"from-row", table.from_row > 1},
                                      {"jobs", table.jobs > 0},
                                      {"rename", !table.renamed.empty()}})
    if (given) refuse_option(option, "is for a table; leave it out for a list of joints");
  const shared::Question& question = *shared::try_question(name).value();
  const std::vector<Joint> joints =
      joints_of(table.file, name == "clamp" ? shared::facts_of(shared::joint_inputs()) : question.inputs());
  if (std::string_view(question.result) == "Clamp")
    answer_clamps(program, joints, name == "clamp", page);
  else
    answer_each(program, question, joints, page, page_for);
}

}  // namespace tauten::command
