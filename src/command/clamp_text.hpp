// The answer to `clamp` and `torque` as a page for people.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "tauten/tightening/clamp.hpp"

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

/// \return a list of standards, or the first of them and how many more there are if it is longer than `most`
std::string standards_text(const std::string& list, std::size_t most);

/// \return "1  M10: look", one paragraph each; what all of them share stands once below
std::string looks_of(const std::vector<std::pair<std::string, std::string>>& named_looks);

}  // namespace tauten::command
