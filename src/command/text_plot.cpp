#include "command/text_plot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "tauten/base/quantity_text.hpp"

namespace tauten::command {

namespace {

constexpr int columns = 76;
constexpr int rows = 18;

/// \return 1, 2 or 5 times a power of ten, so that at most `most` of it reach `end`
double even_step(double end, int most) {
  const double decade = std::pow(10.0, std::floor(std::log10(end / most)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * decade * most >= end) return factor * decade;
  return 10 * decade;
}

int cell_of(double x, double end, int cells) {
  return static_cast<int>(std::lround(std::clamp(x / end, 0.0, 1.0) * (cells - 1)));
}

}  // namespace

TextPlot::TextPlot(double x_end, double y_end)
    : x_end_(x_end), y_end_(y_end), rows_(static_cast<std::size_t>(rows), std::string(columns, ' ')) {}

void TextPlot::put(double x, double y, char c) {
  const auto row = static_cast<std::size_t>(rows - 1 - cell_of(y, y_end_, rows));
  rows_[row][static_cast<std::size_t>(cell_of(x, x_end_, columns))] = c;
}

void TextPlot::band(double x, double low, double high) {
  const int top = cell_of(high, y_end_, rows);
  for (int row = cell_of(low, y_end_, rows); row <= top; ++row) put(x, y_end_ * row / (rows - 1), '.');
}

void TextPlot::line(double x, double y, double next_x, double next_y) {
  const int pieces = 1 + std::max(std::abs(cell_of(next_x, x_end_, columns) - cell_of(x, x_end_, columns)),
                                  std::abs(cell_of(next_y, y_end_, rows) - cell_of(y, y_end_, rows)));
  for (int i = 0; i <= pieces; ++i) put(x + (next_x - x) * i / pieces, y + (next_y - y) * i / pieces, '*');
}

void TextPlot::mark(double x, double y, char letter) { put(x, y, letter); }

std::string TextPlot::text(const std::string& x_title, const std::string& y_title) const {
  const double y_step = even_step(y_end_, 6);
  const double x_step = even_step(x_end_, 6);
  std::vector<std::string> labels(static_cast<std::size_t>(rows));
  for (int i = 0; i * y_step <= y_end_ * (1 + 1e-9); ++i)
    labels[static_cast<std::size_t>(rows - 1 - cell_of(i * y_step, y_end_, rows))] = number_text(i * y_step);
  std::size_t width = 0;
  for (const std::string& label : labels) width = std::max(width, label.size());
  std::string out = y_title + "\n";
  for (std::size_t row = 0; row < rows_.size(); ++row) {
    std::string line = fmt::format("{:>{}} {}{}", labels[row], width, labels[row].empty() ? '|' : '+', rows_[row]);
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + "\n";
  }
  std::string rule(columns, '-');
  std::string below(static_cast<std::size_t>(columns) + 8, ' ');
  for (int i = 0; i * x_step <= x_end_ * (1 + 1e-9); ++i) {
    const auto at = static_cast<std::size_t>(cell_of(i * x_step, x_end_, columns));
    const std::string label = number_text(i * x_step);
    rule[at] = '+';
    below.replace(at, label.size(), label);
  }
  below.erase(below.find_last_not_of(' ') + 1);
  const std::string margin(width + 2, ' ');
  return out + margin + rule + "\n" + margin + below + "\n" + margin + x_title + "\n";
}

}  // namespace tauten::command
