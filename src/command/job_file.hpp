// Joints from a TOML file: [[joint]] tables whose keys are the options of `clamp`.
#pragma once

#include <string>
#include <vector>

#include "tauten/question/clamp_page.hpp"

namespace tauten::command {

/// \param path  the file, at most 1 MB
/// \return all joints with their answers; a joint that is wrong holds an error that names file, joint and key
/// \throws Error  if the file as a whole cannot be used
std::vector<ListedClamp> joints_of(const std::string& path);

}  // namespace tauten::command
