// A page as text for a terminal.
#pragma once

#include "tauten/explain/page.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::TAUTEN_ABI {

/// The escape code in front of a cell that gets a colour, or nullptr.
using PaintCell = const char* (*)(const std::string& cell);

namespace detail {

inline std::string text_list(const char* title, const std::vector<std::string>& items) {
  std::string out;
  for (const std::string& item : items) out += paragraph(item, "- ");
  return items.empty() ? out : std::string("\n") + title + "\n" + out;
}

}  // namespace detail

/// \return the table in columns with blanks between them
inline std::string table_text(const PageTable& table, PaintCell paint = nullptr) {
  const std::vector<PageColumn>& columns = table.columns;
  std::vector<std::vector<std::vector<std::string>>> lines;  // row, column, line
  std::vector<std::size_t> width;
  bool units = false;
  for (const PageColumn& column : columns) {
    width.push_back(std::max(width_of(column.title), width_of(column.unit)));
    units |= !column.unit.empty();
  }
  for (const auto& row : table.rows) {
    auto& cells = lines.emplace_back();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      cells.push_back(columns[i].most ? wrapped(row[i], columns[i].most) : std::vector{detail::visible(row[i])});
      for (const std::string& line : cells.back()) width[i] = std::max(width[i], width_of(line));
    }
  }
  const auto padded = [&](const std::string& cell, std::size_t i) {
    const std::string blanks(width[i] - width_of(cell), ' ');
    const char* colour = paint ? paint(cell) : nullptr;
    const std::string shown = colour ? colour + cell + "\033[0m" : cell;
    return columns[i].number ? blanks + shown : shown + blanks;
  };
  std::string titles, second, rule;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::string gap = i ? "  " : "";
    titles += gap + padded(columns[i].title, i);
    second += gap + padded(columns[i].unit, i);
    rule += gap + std::string(width[i], '-');
  }
  std::string out;
  if (!table.title.empty()) out += table.title + "\n";
  const std::string head = detail::without_trailing_blanks(titles);
  if (head != "\n")
    out += head + (units ? detail::without_trailing_blanks(second) : "") + detail::without_trailing_blanks(rule);
  for (const auto& cells : lines) {
    std::size_t height = 1;
    for (const auto& cell : cells) height = std::max(height, cell.size());
    for (std::size_t n = 0; n < height; ++n) {
      std::string line;
      for (std::size_t i = 0; i < cells.size(); ++i)
        line += (i ? "  " : "") + padded(n < cells[i].size() ? cells[i][n] : "", i);
      out += detail::without_trailing_blanks(line);
    }
  }
  for (const std::string& sentence : table.legend) out += paragraph(sentence);
  return out;
}

/// \param paint  colours words in tables
/// \return the page for a terminal of `page_width` columns
inline std::string page_text(const Page& page, PaintCell paint = nullptr) {
  std::string out = paragraph(page.first_line());
  out += detail::text_list("What to do", page.actions);
  if (!page.figures.empty()) out += "\n" + table_text(detail::figure_table(page));
  if (!page.drawing.text.empty()) out += "\n" + page.drawing.text + (page.drawing.text.ends_with('\n') ? "" : "\n");
  for (const PageTable& table : page.tables) out += "\n" + table_text(table, paint);
  for (const PageList& list : page.lists) out += detail::text_list(list.title.c_str(), list.items);
  out += detail::text_list("What stands out", page.findings);
  out += detail::text_list("Take care", detail::all_cautions(page));
  return out + detail::text_list("How far to trust this", page.trust);
}

}  // namespace tauten::TAUTEN_ABI
