#include "command/job_file.hpp"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "command/job.hpp"
#include "command/refusal.hpp"

namespace tauten::command {

toml::table toml_file(const std::string& path, std::string& content);  // which sheets read as well

namespace {

constexpr std::size_t most_bytes = 1'000'000;

[[noreturn]] void refuse_file(const std::string& path, const std::string& why) {
  throw Error("file", ("file " + path_text(path) + " " + why).c_str());
}

std::string content_of(const std::string& path) {
  std::error_code problem;
  if (std::filesystem::is_directory(path, problem))
    refuse_file(path, "is a folder; give a TOML file with [[joint]] tables");
  errno = 0;
  std::ifstream stream(path, std::ios::binary);
  if (!stream) refuse_file(path, std::string("cannot be read: ") + std::strerror(errno));
  std::string content(most_bytes + 1, '\0');
  stream.read(content.data(), static_cast<std::streamsize>(content.size()));
  if (stream.bad()) refuse_file(path, "cannot be read to its end");
  content.resize(static_cast<std::size_t>(stream.gcount()));
  if (content.size() > most_bytes) refuse_file(path, "is larger than 1 MB, too large for a list of joints");
  if (content.find('\0') != std::string::npos) refuse_file(path, "is not text; give a TOML file with [[joint]] tables");
  return content;
}

toml::table table_of(const std::string& path, const std::string& content) {
  try {
    return toml::parse(content);
  } catch (const toml::parse_error& problem) {
    std::string why(problem.description());
    for (char& c : why)
      if (c < ' ' || c > '~') c = '?';
    if (why.size() > 160) why = why.substr(0, 160) + "...";
    refuse_file(path, fmt::format("is not valid TOML in line {}: {}", problem.source().begin.line, why));
  }
}

const char* kind_of(const toml::node& node) {
  if (node.is_boolean()) return "true or false";
  if (node.is_array()) return "a list";
  if (node.is_table()) return "a table";
  return "a date or time";
}

/// The value as it would stand on the command line. Numbers are fine for what has no unit, and told to have none else.
std::string text_of(const shared::Input<ClampJob>& key, const toml::node& node) {
  if (const auto* text = node.as_string()) return text->get();
  if (const auto* number = node.as_integer()) return fmt::format("{}", number->get());
  if (const auto* number = node.as_floating_point()) return fmt::format("{}", number->get());
  throw Error(key.option(), fmt::format("{} is {}, but must be a text; write it like {} = \"{}\"", key.option(),
                                        kind_of(node), key.option(), key.example)
                                .c_str());
}

SaidWords said_in(const toml::table& table) {
  const auto keys = shared::joint_inputs();
  std::vector<std::string> names;
  for (const auto& key : keys) names.emplace_back(key.option());
  SaidWords words;
  for (const auto& [name, node] : table) {
    const std::string word(name.str());
    const auto at = std::find(names.begin(), names.end(), word);
    if (at == names.end())
      throw Error(in_quotes(word).c_str(), ("key " + in_quotes(word) + " is unknown" +
                                            did_you_mean(word, names, "the keys are " + listed(names)))
                                               .c_str());
    const auto& key = keys[static_cast<std::size_t>(at - names.begin())];
    if (const auto* list = node.as_array(); list && key.takes == shared::Takes::several_values)
      for (const toml::node& item : *list) words.add(key.option(), text_of(key, item));
    else
      words.add(key.option(), text_of(key, node));
  }
  return words;
}

ListedClamp joint_of(const std::string& path, std::size_t number, const toml::node& node) {
  ListedClamp joint{"joint " + std::to_string(number), {}, Error("", "")};
  std::string where = fmt::format("{}, joint {}", path_text(path), number);
  try {
    const toml::table* table = node.as_table();
    if (!table) throw Error("joint", "a joint is a table; begin it with [[joint]]");
    if (const auto name = (*table)["name"].value<std::string>(); name && !name->empty()) {
      joint.name = *name;
      where += " " + in_quotes(*name);
    }
    const SaidWords said = said_in(*table);
    if (!has(said, "torque") && !has(said, "clamp-load") && !has(said, "share"))
      throw Error("torque", "torque is missing; write it like torque = \"48N.m\", or give clamp-load or share instead");
    shared::ClampAnswer answer = answer_of(said);
    joint.job = answer.job;
    joint.answer = static_cast<Clamp&&>(answer);
  } catch (const Error& error) {
    joint.answer = Error(error.argument(), (where + ": " + error.what()).c_str());
  }
  return joint;
}

}  // namespace

toml::table toml_file(const std::string& path, std::string& content) {
  content = content_of(path);
  return table_of(path, content);
}

std::vector<ListedClamp> joints_of(const std::string& path) {
  std::string content;
  const toml::table table = toml_file(path, content);
  for (const auto& [name, node] : table)
    if (name.str() != "joint")
      refuse_file(path, "has the unknown key " + in_quotes(std::string(name.str())) +
                            " at its top; all it may hold is [[joint]] tables");
  const toml::array* list = table["joint"].as_array();
  if (!list || list->empty())
    refuse_file(path, "holds no joint; begin each with [[joint]] and give it at least a thread or socket and a torque");
  std::vector<ListedClamp> joints;
  for (const toml::node& node : *list) joints.push_back(joint_of(path, joints.size() + 1, node));
  return joints;
}

}  // namespace tauten::command
