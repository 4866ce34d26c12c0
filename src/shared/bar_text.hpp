// A bar of the drive line as it is said.
#pragma once

#include "tauten/tool/drive_bar.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

/// square:250mm:12.7mm
inline Problem read_bar(const char* key, std::string_view text, DriveBar& bar) {
  const auto parts = split(text, ':');
  if (parts.size() != 3)
    return Error(key, (std::string(key) + " " + tauten::detail::shown(text) +
                       " is not understood; write section, length and size like square:250mm:12.7mm")
                          .c_str());
  if (auto problem = read(key, parts[0], bar.section)) return problem;
  if (auto problem = read(key, parts[1], bar.length)) return problem;
  return read(key, parts[2], bar.size);
}

}  // namespace tauten::shared
