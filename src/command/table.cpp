#include "command/table.hpp"

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <iterator>
#include <string_view>
#include <utility>

namespace tauten::command {

namespace {

const char* colour_of(const std::string& cell) {
  static constexpr std::string_view good[] = {"within limits", "fit"};
  static constexpr std::string_view doubtful[] = {"may be slack", "slack", "may yield", "near yield", "past yield"};
  static constexpr std::string_view bad[] = {"yields", "may break", "breaks", "would neck", "error"};
  const auto one_of = [&](const auto& verdicts) {
    return std::find(std::begin(verdicts), std::end(verdicts), cell) != std::end(verdicts);
  };
  return one_of(good) ? "\033[32m" : one_of(doubtful) ? "\033[33m" : one_of(bad) ? "\033[31m" : nullptr;
}

std::string trimmed(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line + "\n";
}

}  // namespace

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
