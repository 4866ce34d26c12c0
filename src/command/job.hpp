// A joint as the user describes it: the keys of the clamp questions, as options of a verb or in a job file.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "command/said_options.hpp"
#include "shared/clamp_inputs.hpp"

namespace tauten::command {

/// Adds all keys of a joint to a verb as options, but for those in `without`.
/// \return what will have been said once the words are parsed
std::shared_ptr<SaidWords> add_job_options(Program& program, CLI::App& verb, const std::vector<std::string>& without);

/// \return true if the key `name` was said
bool has(const SaidWords& words, const char* name);

/// Reads what was said and asks the library: `clamp` if there is a torque, else `torque_for`.
/// \throws Error  in the words of the keys
shared::ClampAnswer answer_of(const SaidWords& words);

}  // namespace tauten::command
