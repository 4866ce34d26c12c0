// A tool drawn with characters, for terminals and logs.
#pragma once

#include <algorithm>

#include "tauten/drawing/plan.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// A page of characters.
class CharacterPage {
 public:
  CharacterPage(std::size_t columns, std::size_t rows) : lines_(rows, std::string(columns, ' ')) {}

  /// \return the character nearest to a place
  char& at(PlanPoint p) {
    const auto row = static_cast<std::size_t>(std::lround(std::clamp(p.y, 0.0, double(lines_.size() - 1))));
    const auto column = static_cast<std::size_t>(std::lround(std::clamp(p.x, 0.0, double(lines_[row].size() - 1))));
    return lines_[row][column];
  }
  void line(PlanPoint from, PlanPoint to, char stroke) {
    const double steps = std::ceil(std::max({std::fabs(to.x - from.x), std::fabs(to.y - from.y), 1.0}));
    for (double i = 0; i <= steps; ++i)
      at({from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps}) = stroke;
  }
  std::string text() const {
    std::string all;
    for (const std::string& line : lines_) all += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
    return all;
  }

 private:
  std::vector<std::string> lines_;
};

/// \return the character that comes closest to the direction of a stroke on cells twice as high as wide
inline char stroke_of(PlanPoint from, PlanPoint to) {
  const double across = std::fabs(to.x - from.x);
  const double down = std::fabs(to.y - from.y) * 2;
  if (down < 0.4 * across) return '-';
  if (across < 0.4 * down) return '|';
  return (to.x > from.x) == (to.y > from.y) ? '\\' : '/';
}

}  // namespace detail

/// Draws a tool with characters: H hand, D drive, 1, 2, ... extensions, F fastener; what they are stands below.
/// \param plan     the tool
/// \param columns  width of the drawing, at least 20
/// \return lines of plain ASCII, drawn to scale
inline std::string draw_text(const ToolPlan& plan, int columns = 64) {
  constexpr double most_rows = 20;
  // Two columns stay free on the right, so that a mark may step aside.
  const double width = std::clamp(columns, 20, 400) - 3;
  const std::vector<PlanPoint> points = plan.points();
  const PlanScale scale = fit_plan(points, width, 2 * most_rows);
  const auto cell = [&](PlanPoint p) {
    const PlanPoint on = scale.paper(p);
    return PlanPoint{on.x, on.y / 2};
  };
  detail::CharacterPage page(static_cast<std::size_t>(scale.width + 4),
                             static_cast<std::size_t>(scale.height / 2 + 1.5));
  for (std::size_t i = 1; i < points.size(); ++i) {
    const PlanPoint from = cell(points[i - 1]);
    const PlanPoint to = cell(points[i]);
    page.line(from, to, i == 1 ? '=' : detail::stroke_of(from, to));
  }
  // A mark that finds its place taken by another may step aside; without leave to do so it is left out.
  const auto mark = [&](PlanPoint p, char letter, int most_steps) {
    for (int aside = 0; aside <= most_steps; ++aside, ++p.x)
      if (char& place = page.at(p); (place < '0' || place > '9') && (place < 'A' || place > 'Z')) {
        place = letter;
        return;
      }
  };
  mark(cell(points[0]), 'H', 0);
  if (!plan.links.empty()) mark(cell(points[1]), 'D', 0);
  mark(cell(points.back()), 'F', 2);
  for (std::size_t i = 2; i + 1 < points.size(); ++i) mark(cell(points[i]), 'o', 0);
  std::string legend = "  H  " + plan.hand_words + "\n  =  " + plan.wrench_words + "\n";
  if (!plan.links.empty()) legend += "  D  " + plan.drive_words + "\n";
  for (std::size_t i = 0; i < plan.links.size(); ++i) {
    const PlanPoint from = points[i + 1];
    const PlanPoint to = points[i + 2];
    // Further links have no single character left; the list below still names them.
    if (i < 9) mark(cell({(from.x + to.x) / 2, (from.y + to.y) / 2}), static_cast<char>('1' + i), 0);
    legend += "  " + std::to_string(i + 1) + "  " + plan.link_words[i] + "\n";
  }
  return page.text() + legend + "  F  " + plan.fastener_words + "\n";
}

}  // namespace tauten::TAUTEN_ABI
