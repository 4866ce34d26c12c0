// The answer to `free` as a page for people.
#pragma once

#include <string>

#include "tauten/question/free.hpp"

namespace tauten::command {

/// \param job                what was asked, filled in
/// \param with_instructions  how each step is done as well
std::string page_of(const FreeJob& job, const Free& answer, bool with_instructions = false);

}  // namespace tauten::command
