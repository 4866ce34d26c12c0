// How to tell several fasteners apart that fit one tool, as a table of a page.
#pragma once

#include <algorithm>
#include <map>

#include "tauten/explain/page.hpp"

namespace tauten::TAUTEN_ABI::detail {

inline std::vector<std::string> look_parts(const std::string& look) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at < look.size();) {
    const std::size_t end = std::min(look.find("; ", at), look.size());
    parts.push_back(look.substr(at, end - at));
    at = end + 2;
  }
  return parts;
}

/// One of several fasteners.
struct Look {
  std::string number;
  std::string thread;
  std::string look;  ///< how to recognise it, parts with semicolons between them
};

/// \return what to look at, a row each; what all of them share stands once below
inline PageTable look_table(const std::vector<Look>& looks) {
  PageTable table{"What to look at", {{"#", "", true}, {"Thread"}, {"Look", "", false, 80}}, {}, {}};
  std::map<std::string, std::size_t> seen;
  for (const Look& one : looks)
    for (const std::string& part : look_parts(one.look)) ++seen[part];
  const auto parts = [&](const std::string& look, bool common) {
    std::string out;
    for (const std::string& part : look_parts(look))
      if ((looks.size() > 1 && seen[part] == looks.size()) == common) out += (out.empty() ? "" : "; ") + part;
    return out;
  };
  for (const Look& one : looks)
    if (const std::string own = parts(one.look, false); !own.empty())
      table.rows.push_back({one.number, one.thread, own});
  if (const std::string common = looks.empty() ? "" : parts(looks.front().look, true); !common.empty())
    table.legend.push_back("All of them: " + common + ".");
  return table;
}

/// \return names of standards in at most so many columns: the first, and how many more there are
inline std::string standards_text(const std::string& list, std::size_t most) {
  if (list.size() <= most) return list;
  const auto more = std::count(list.begin(), list.end(), ',');
  return more == 0 ? list : list.substr(0, list.find(',')) + " and " + std::to_string(more) + " more";
}

}  // namespace tauten::TAUTEN_ABI::detail
