// Codes in plain words.
#pragma once

#include <algorithm>
#include <string>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// \return "thread friction" of thread_friction
inline std::string plain_words(std::string code) {
  std::replace(code.begin(), code.end(), '_', ' ');
  return code;
}

}  // namespace tauten::TAUTEN_ABI
