// The answer to `reach` as a page for people.
#pragma once

#include <string>

#include "tauten/tool/reach.hpp"

namespace tauten::command {

/// \param job  what was asked
std::string page_of(const ReachJob& job, const Reach& answer);

}  // namespace tauten::command
