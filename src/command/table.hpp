// Tables and paragraphs for a terminal of 100 columns.
#pragma once

#include <string>
#include <vector>

#include "tauten/explain/page_text.hpp"

namespace tauten::command {

/// \return how verdicts are coloured on standard output, or nullptr where it is no terminal; NO_COLOR is respected
PaintCell verdict_colours();

using Column = PageColumn;

/// A table that is filled row by row.
class Table {
 public:
  explicit Table(std::vector<Column> columns) { table_.columns = std::move(columns); }
  void row(std::vector<std::string> cells) { table_.rows.push_back(std::move(cells)); }
  std::string text() const { return table_text(table_, verdict_colours()); }

 private:
  PageTable table_;
};

}  // namespace tauten::command
