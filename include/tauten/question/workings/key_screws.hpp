// What else a hexagon key fits: screws with other heads than the cap screw, or with none.
#pragma once

#include <string>

#include "tauten/question/identify.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Threads of the screws that a hexagon key fits, by shape: "M10", "M14 or M16"; "" if there are none.
struct KeyScrews {
  std::string cap;
  std::string button;
  std::string sunk;
  std::string set;
};

/// \param wanted  which threads count: called with each thread
template <class Wanted>
KeyScrews key_screws(Length key, Wanted wanted) {
  KeyScrews out;
  IdentifyOptions options;
  options.worn = Length(0);
  options.drive = Drive::hexagon_key;
  const Outcome<std::vector<Candidate>> all = try_identify(key, options);
  if (!all) return out;
  for (const Candidate& c : *all) {
    if (!wanted(c.thread)) continue;
    std::string& list = c.kind == HeadKind::socket_button_head        ? out.button
                        : c.kind == HeadKind::socket_countersunk_head ? out.sunk
                        : c.kind == HeadKind::socket_set_screw        ? out.set
                                                                      : out.cap;
    list += (list.empty() ? "" : " or ") + c.thread.name();
  }
  return out;
}

/// "a button head screw M10, a countersunk screw M10 and a set screw M12"
inline std::string key_screws_text(const KeyScrews& screws) {
  std::string text;
  const std::pair<const char*, const std::string*> kinds[] = {
      {"a button head screw ", &screws.button}, {"a countersunk screw ", &screws.sunk}, {"a set screw ", &screws.set}};
  std::size_t left = 0;
  for (const auto& [what, threads] : kinds) left += threads->empty() ? 0 : 1;
  for (const auto& [what, threads] : kinds)
    if (!threads->empty()) {
      text += (text.empty() ? "" : left == 1 ? " and " : ", ") + (what + *threads);
      --left;
    }
  return text;
}

}  // namespace tauten::TAUTEN_ABI::detail
