#include "command/table.hpp"

#include <unistd.h>

#include <cstdlib>
#include <cstring>

namespace tauten::command {

namespace {

const char* colour_of(const std::string& cell) {
  if (cell == "fit" || cell == "within limits") return "\033[32m";
  if (cell == "slack" || cell == "near yield" || cell == "yields as intended" || cell.starts_with("may "))
    return "\033[33m";
  if (cell == "yields" || cell == "would shear" || cell == "necks" || cell == "strips" ||
      cell.ends_with("s in service") || cell == "error")
    return "\033[31m";
  return nullptr;
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
