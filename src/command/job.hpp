// A joint as the user describes it: one list of keys, which are the options of the command line and the keys of a job
// file alike.
#pragma once

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "command/program.hpp"
#include "tauten/tightening/clamp.hpp"

namespace tauten::command {

/// Something that can be said about a joint.
struct JobKey {
  const char* name;      ///< "clamp-load": --clamp-load on the command line, clamp-load in a file
  const char* argument;  ///< what the library calls it in its errors
  const char* example;
  const char* help;
  void (*set)(const JobKey& key, const std::string& text, ClampJob& job);  ///< throws Error for wrong text
  std::vector<std::string> (*choices)() = nullptr;                         ///< words that it takes
};

std::span<const JobKey> job_keys();
std::vector<std::string> job_key_names();

/// What was said: key and text.
using Said = std::vector<std::pair<const JobKey*, std::string>>;

/// Adds all keys to a verb as options, but for those in `without`.
/// \return what will have been said once the words are parsed
std::shared_ptr<Said> add_job_options(Program& program, CLI::App& verb, const std::vector<std::string>& without);

/// \return true if the key `name` was said
bool has(const Said& said, const std::string& name);

/// \return names of keys and texts
std::vector<std::pair<std::string, std::string>> texts_of(const Said& said);

/// Reads what was said and asks the library: `clamp` if there is a torque, else `torque_for`.
/// \throws Error  in the words of the keys
Clamp answer_of(const Said& said);

/// \return the job itself
ClampJob job_of(const Said& said);

}  // namespace tauten::command
