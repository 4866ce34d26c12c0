// Codes in plain words.
#pragma once

#include <algorithm>
#include <string>

namespace tauten {

/// \return "thread friction" of thread_friction
inline std::string plain_words(std::string code) {
  std::replace(code.begin(), code.end(), '_', ' ');
  return code;
}

}  // namespace tauten
