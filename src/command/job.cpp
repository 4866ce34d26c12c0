#include "command/job.hpp"

namespace tauten::command {

std::shared_ptr<SaidWords> add_job_options(Program& program, CLI::App& verb, const std::vector<std::string>& without) {
  return add_said_options(program, verb, shared::joint_inputs(), without);
}

bool has(const SaidWords& words, const char* name) { return shared::has(words.said, name); }

shared::ClampAnswer answer_of(const SaidWords& words) {
  return (has(words, "torque") ? shared::try_clamp(words.said) : shared::try_torque_for(words.said)).value();
}

}  // namespace tauten::command
