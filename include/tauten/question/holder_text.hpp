// What holds a bolt, nut or tapped part, as a line of a page.
#pragma once

#include <string>
#include <utility>

#include "tauten/explain/page_units.hpp"
#include "tauten/joint/service.hpp"

namespace tauten::TAUTEN_ABI::detail {

inline std::pair<std::string, std::string> engagement_figure(const ThreadEngagement& e, const PageUnits& units) {
  const std::string held = e.breaks_first
                               ? "the bolt breaks before the thread strips"
                               : "the thread strips at " + (e.strip_load.low < e.strip_load.high
                                                                ? units.range(e.strip_load)
                                                                : units.text(e.strip_load.low) + " or above");
  if (e.strips == "nut") return {"N" + e.holder.substr(1) + ", " + units.text(e.engaged_length) + " high", held};
  return {"Thread in " + e.holder + ", " + units.text(e.engaged_length) + " engaged",
          units.text(e.needed_length) + " needed: " + held};
}

}  // namespace tauten::TAUTEN_ABI::detail
