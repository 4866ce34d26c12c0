// A bar of the drive line as it is said.
#pragma once

#include "tauten/tool/drive_bar.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// square:250mm:12.7mm
template <>
struct Form<DriveBar> {
  static Problem read(const char* called, std::string_view text, DriveBar& bar) {
    const auto parts = split(text, ':');
    if (parts.size() != 3)
      return refuse_text(called, text, " is not understood; write section, length and size like square:250mm:12.7mm");
    if (auto problem = shared::read(called, parts[0], bar.section)) return problem;
    if (auto problem = shared::read(called, parts[1], bar.length)) return problem;
    return shared::read(called, parts[2], bar.size);
  }
  static Problem check(const char*, const DriveBar&) { return {}; }  // the library does
};

}  // namespace tauten::shared
