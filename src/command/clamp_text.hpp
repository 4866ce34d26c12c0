// The answer to `clamp` and `torque` as a page for people.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "tauten/question/clamp.hpp"

namespace tauten::command {

/// How many candidates a page shows unless it is asked for all.
inline constexpr std::size_t shown_candidates = 4;

/// \param job  what was asked
/// \param all  show every candidate
std::string page_of(const ClampJob& job, const Clamp& answer, bool all);

/// One joint of a job file: its answer, or what is wrong with it.
struct Joint {
  std::string name;
  ClampJob job;
  std::variant<Clamp, Error> answer;
};

/// One table of all joints, then what is to be said about each.
std::string page_of(const std::vector<Joint>& joints);

}  // namespace tauten::command
