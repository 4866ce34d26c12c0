#include "command/table.hpp"

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <utility>

namespace tauten::command {

namespace {

bool starts_character(char c) { return (static_cast<unsigned char>(c) & 0xc0u) != 0x80u; }

/// \return how many bytes the first `columns` characters of `text` have
std::size_t bytes_of(const std::string& text, std::size_t columns) {
  std::size_t at = 0;
  for (std::size_t seen = 0; at < text.size(); ++at)
    if (starts_character(text[at]) && seen++ == columns) break;
  return at;
}

const char* colour_of(const std::string& cell) {
  if (cell == "fit") return "\033[32m";
  if (cell == "slack" || cell == "near yield" || cell == "past yield") return "\033[33m";
  if (cell == "yields" || cell == "would shear" || cell == "would neck" || cell == "error") return "\033[31m";
  return nullptr;
}

std::string trimmed(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line + "\n";
}

}  // namespace

std::size_t width_of(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), starts_character));
}

std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
  std::vector<std::string> lines;
  std::string line;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    std::string word = text.substr(at, end - at);
    at = end + 1;
    if (!line.empty() && width_of(line) + 1 + width_of(word) > width) lines.push_back(std::exchange(line, ""));
    while (width_of(word) > width) {
      const std::size_t bytes = bytes_of(word, width);
      lines.push_back(word.substr(0, bytes));
      word.erase(0, bytes);
    }
    line += (line.empty() ? "" : " ") + word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(line);
  return lines;
}

std::string paragraph(const std::string& text, const std::string& mark) {
  std::string out;
  const std::size_t indent = width_of(mark);
  for (const std::string& line : wrapped(text, page_width - indent))
    out += (out.empty() ? mark : std::string(indent, ' ')) + line + "\n";
  return out;
}

bool wants_colour() {
  const char* refused = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  return isatty(STDOUT_FILENO) == 1 && (!refused || *refused == '\0') &&
         !(terminal && std::strcmp(terminal, "dumb") == 0);
}

std::string Table::text(bool colour) const {
  std::vector<std::vector<std::vector<std::string>>> lines;  // row, column, line
  std::vector<std::size_t> width;
  bool units = false;
  for (const Column& column : columns_) {
    width.push_back(std::max(width_of(column.title), width_of(column.unit)));
    units |= !column.unit.empty();
  }
  for (const auto& row : rows_) {
    auto& cells = lines.emplace_back();
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      cells.push_back(columns_[i].most ? wrapped(row[i], columns_[i].most) : std::vector{row[i]});
      for (const std::string& line : cells.back()) width[i] = std::max(width[i], width_of(line));
    }
  }
  const auto padded = [&](const std::string& cell, std::size_t i) {
    const std::string blanks(width[i] - width_of(cell), ' ');
    const char* paint = colour ? colour_of(cell) : nullptr;
    const std::string shown = paint ? paint + cell + "\033[0m" : cell;
    return columns_[i].right ? blanks + shown : shown + blanks;
  };
  std::string titles;
  std::string second;
  std::string rule;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const std::string gap = i ? "  " : "";
    titles += gap + padded(columns_[i].title, i);
    second += gap + padded(columns_[i].unit, i);
    rule += gap + std::string(width[i], '-');
  }
  std::string out = trimmed(titles) + (units ? trimmed(second) : "") + rule + "\n";
  for (const auto& cells : lines) {
    std::size_t height = 1;
    for (const auto& cell : cells) height = std::max(height, cell.size());
    for (std::size_t n = 0; n < height; ++n) {
      std::string line;
      for (std::size_t i = 0; i < cells.size(); ++i)
        line += (i ? "  " : "") + padded(n < cells[i].size() ? cells[i][n] : "", i);
      out += trimmed(line);
    }
  }
  return out;
}

}  // namespace tauten::command
