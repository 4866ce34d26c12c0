// Codes and notices as people read them on a page.
#pragma once

#include <string>
#include <vector>

#include "command/table.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/plain_words.hpp"

namespace tauten::command {

/// \return one item for each notice; what is an estimate says so
inline std::string list_of(const std::vector<Notice>& notices) {
  std::string out;
  for (const Notice& notice : notices) out += paragraph(notice.text + (notice.is_estimate ? " (Estimate.)" : ""), "- ");
  return out;
}

}  // namespace tauten::command
