// Codes and notices as people read them on a page.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "command/table.hpp"
#include "tauten/base/notice.hpp"

namespace tauten::command {

/// \return the code of something with blanks for underscores
inline std::string in_words(std::string code) {
  std::replace(code.begin(), code.end(), '_', ' ');
  return code;
}

/// \return one item for each notice; what is an estimate says so
inline std::string list_of(const std::vector<Notice>& notices) {
  std::string out;
  for (const Notice& notice : notices) out += paragraph(notice.text + (notice.is_estimate ? " (Estimate.)" : ""), "- ");
  return out;
}

}  // namespace tauten::command
