// The answer to `free` as a page for people.
#pragma once

#include <string>

#include "tauten/loosening/free.hpp"

namespace tauten::command {

/// \param job  what was asked, filled in
std::string page_of(const FreeJob& job, const Free& answer);

}  // namespace tauten::command
