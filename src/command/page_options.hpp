// How the page of an answer is printed: whole or its first line, as text, Markdown or HTML, and in which units.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "command/program.hpp"
#include "command/said_options.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"

namespace tauten::command {

/// What was asked about the page.
struct PageOptions {
  std::string format = "text";
  bool is_short = false;
  std::vector<std::string> units;

  /// \param said  what was typed: its units are those of the page
  PageUnits page_units(const std::vector<std::pair<std::string, std::string>>& said) const;
};

/// Adds --format, --short and --unit to a verb.
std::shared_ptr<PageOptions> add_page_options(Program& program, CLI::App& verb);

/// Prints a page; of a short one the cautions are named on standard error.
void print(Program& program, const PageOptions& options, const Page& page);

}  // namespace tauten::command
