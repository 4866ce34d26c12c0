// A diagram made of characters, for a terminal.
#pragma once

#include <string>
#include <vector>

namespace tauten::command {

/// Both axes begin at zero. What is drawn later lies on top.
class TextPlot {
 public:
  /// \param x_end, y_end  ends of the axes
  TextPlot(double x_end, double y_end);
  /// Fills a column from `low` to `high`.
  void band(double x, double low, double high);
  /// A straight piece of a line.
  void line(double x, double y, double next_x, double next_y);
  void mark(double x, double y, char letter);
  /// \param x_title, y_title  what the axes show, with the unit
  std::string text(const std::string& x_title, const std::string& y_title) const;

 private:
  void put(double x, double y, char c);

  double x_end_;
  double y_end_;
  std::vector<std::string> rows_;  ///< from the top
};

}  // namespace tauten::command
