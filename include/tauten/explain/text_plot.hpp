// A diagram made of characters, for a terminal.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::TAUTEN_ABI {

/// Both axes begin at zero. What is drawn later lies on top.
class TextPlot {
 public:
  /// \param x_end, y_end  ends of the axes
  TextPlot(double x_end, double y_end) : x_end_(x_end), y_end_(y_end), rows_(rows, std::string(columns, ' ')) {}

  /// Fills a column from `low` to `high`.
  void band(double x, double low, double high) {
    const int top = cell_of(high, y_end_, rows);
    for (int row = cell_of(low, y_end_, rows); row <= top; ++row) mark(x, y_end_ * row / (rows - 1), '.');
  }
  /// A straight piece of a line.
  void line(double x, double y, double next_x, double next_y) {
    const int pieces = 1 + std::max(std::abs(cell_of(next_x, x_end_, columns) - cell_of(x, x_end_, columns)),
                                    std::abs(cell_of(next_y, y_end_, rows) - cell_of(y, y_end_, rows)));
    for (int i = 0; i <= pieces; ++i) mark(x + (next_x - x) * i / pieces, y + (next_y - y) * i / pieces, '*');
  }
  void mark(double x, double y, char letter) {
    rows_[at(rows - 1 - cell_of(y, y_end_, rows))][at(cell_of(x, x_end_, columns))] = letter;
  }

  /// \param x_title, y_title  what the axes show, with the unit
  std::string text(const std::string& x_title, const std::string& y_title) const {
    const double y_step = even_step(y_end_), x_step = even_step(x_end_);
    std::vector<std::string> labels(rows);
    for (int i = 0; i * y_step <= y_end_ * (1 + 1e-9); ++i)
      labels[at(rows - 1 - cell_of(i * y_step, y_end_, rows))] = number_text(i * y_step);
    std::size_t width = 0;
    for (const std::string& label : labels) width = std::max(width, label.size());
    std::string out = y_title + "\n";
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      const std::string& label = labels[row];
      out += detail::without_trailing_blanks(std::string(width - label.size(), ' ') + label +
                                             (label.empty() ? " |" : " +") + rows_[row]);
    }
    std::string rule(columns, '-'), below(columns + 8, ' ');
    for (int i = 0; i * x_step <= x_end_ * (1 + 1e-9); ++i) {
      const std::size_t column = at(cell_of(i * x_step, x_end_, columns));
      const std::string label = number_text(i * x_step);
      rule[column] = '+';
      below.replace(column, label.size(), label);
    }
    const std::string margin(width + 2, ' ');
    return out + margin + rule + "\n" + detail::without_trailing_blanks(margin + below) + margin + x_title + "\n";
  }

 private:
  static constexpr int columns = 76;
  static constexpr int rows = 18;

  static std::size_t at(int cell) { return static_cast<std::size_t>(cell); }
  static int cell_of(double x, double end, int cells) {
    return static_cast<int>(std::lround(std::clamp(x / end, 0.0, 1.0) * (cells - 1)));
  }
  /// \return 1, 2 or 5 times a power of ten, so that at most six of it reach `end`
  static double even_step(double end) {
    constexpr int most = 6;
    const double decade = power_of_ten(std::floor(std::log10(end / most)));
    for (const double factor : {1.0, 2.0, 5.0})
      if (factor * decade * most >= end) return factor * decade;
    return 10 * decade;
  }

  double x_end_;
  double y_end_;
  std::vector<std::string> rows_;  ///< from the top
};

}  // namespace tauten::TAUTEN_ABI
