// Tables and paragraphs for a terminal of 100 columns.
#pragma once

#include <string>
#include <vector>

#include "tauten/explain/paragraph.hpp"

namespace tauten::command {

/// \return true if standard output is a terminal that is to show colours: NO_COLOR is respected
bool wants_colour();

/// One column. Text stands left, numbers right.
struct Column {
  std::string title;
  std::string unit;      ///< second line of the header
  bool right = false;    ///< numbers
  std::size_t most = 0;  ///< longer cells are wrapped; 0 for never
};

/// A table with a header. Words that are verdicts get their colour.
class Table {
 public:
  explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}
  void row(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  std::string text(bool colour = wants_colour()) const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace tauten::command
