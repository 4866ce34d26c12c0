#include "command/table.hpp"

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <iterator>
#include <string_view>

namespace tauten::command {

namespace {

const char* colour_of(const std::string& cell) {
  static constexpr std::string_view good[] = {"within limits"};
  static constexpr std::string_view doubtful[] = {"may be slack", "slack", "may yield", "yields as intended"};
  static constexpr std::string_view bad[] = {"yields", "may break", "may strip", "may neck",
                                             "breaks", "necks",     "strips",    "error"};
  const auto one_of = [&](const auto& verdicts) {
    return std::find(std::begin(verdicts), std::end(verdicts), cell) != std::end(verdicts);
  };
  if (cell.ends_with("s in service")) return "\033[31m";
  return one_of(good) ? "\033[32m" : one_of(doubtful) ? "\033[33m" : one_of(bad) ? "\033[31m" : nullptr;
}

}  // namespace

PaintCell verdict_colours() {
  const char* refused = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  const bool wanted =
      isatty(STDOUT_FILENO) == 1 && (!refused || *refused == '\0') && !(terminal && std::strcmp(terminal, "dumb") == 0);
  return wanted ? colour_of : nullptr;
}

}  // namespace tauten::command
