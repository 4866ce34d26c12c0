// Tables and paragraphs for a terminal of 100 columns.
#pragma once

#include <string>
#include <vector>

namespace tauten::command {

inline constexpr std::size_t page_width = 100;

/// \return how many columns of a terminal `text` takes
std::size_t width_of(const std::string& text);

/// \return `text` in lines of at most `width` columns, broken between words; a longer word is broken itself
std::vector<std::string> wrapped(const std::string& text, std::size_t width);

/// \return `text` as lines of the page, ending in a line break
/// \param mark  stands before the first line; the others are indented by its width
std::string paragraph(const std::string& text, const std::string& mark = "");

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
