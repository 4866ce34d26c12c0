// The bolts of a joint with their numbers, to scale: as SVG with loads as arrows, and with characters.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "tauten/drawing/svg.hpp"
#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// What is drawn of a pattern. Lists are empty or have an item for each bolt.
struct PatternSketch {
  std::vector<Position> bolts;
  std::vector<Position> outline{};  ///< corners of the part, in order
  std::vector<Position> empty{};    ///< places without a bolt
  double circle = 0;                ///< diameter of the bolt circle in m, about `centre`; 0 for none
  Position centre{};
  std::vector<Position> arrows{};    ///< loads in the plane; the longest one is drawn longest
  std::vector<std::string> words{};  ///< beside the bolts
  int worst = 0;                     ///< number of a bolt that stands out; 0 for none
  std::string mark{};                ///< word at a pointer to bolt 1; "" for none
};

namespace detail {

/// More bolts than this have no words beside them.
inline constexpr std::size_t most_with_words = 32;

/// All that has to be on the paper. Paper is turned against y only when it is drawn.
inline std::vector<PlanPoint> extent_of(const PatternSketch& sketch) {
  std::vector<PlanPoint> points;
  for (const auto* list : {&sketch.bolts, &sketch.outline, &sketch.empty})
    for (const Position p : *list) points.push_back({p.x, p.y});
  const double radius = sketch.circle / 2;
  if (radius > 0) {
    points.push_back({sketch.centre.x - radius, sketch.centre.y - radius});
    points.push_back({sketch.centre.x + radius, sketch.centre.y + radius});
  }
  // A line of bolts has a width of its own on paper.
  const double wide = std::max(1e-6, distance(sketch.bolts.front(), sketch.bolts.back()) / 50);
  points.push_back({points.front().x + wide, points.front().y + wide});
  return points;
}

inline double least_distance(const std::vector<Position>& at) {
  double least = 1e9;
  for (std::size_t i = 0; i < at.size(); ++i)
    for (std::size_t k = i + 1; k < at.size() && at.size() <= 300; ++k) least = std::min(least, distance(at[i], at[k]));
  return least;
}

}  // namespace detail

/// Draws a pattern as SVG, to scale and seen from the side that is tightened. The bolt that stands out differs in colour
/// and in width; the colours (blue and vermilion) stay apart in all common kinds of colour blindness.
/// \return a complete SVG document
inline std::string sketch_svg(const PatternSketch& sketch) {
  constexpr double side = 92;
  const PlanScale scale = fit_plan(detail::extent_of(sketch), 376, 300);
  // Words and arrows need room all round, a pointer less.
  const double above = sketch.words.empty() && sketch.arrows.empty() ? 54 : side;
  const double width = scale.width + 2 * side;
  const double height = scale.height + 2 * above;
  const double left = (width - scale.width) / 2;
  const auto on = [&](Position p) {
    const PlanPoint paper = scale.paper({p.x, p.y});
    return PlanPoint{paper.x + left, paper.y + above};
  };
  detail::SvgPage page;
  for (std::size_t i = 0; i < sketch.outline.size(); ++i)
    page.line(on(sketch.outline[i]), on(sketch.outline[(i + 1) % sketch.outline.size()]),
              "stroke=\"#777777\" stroke-width=\"1.5\"");
  Position middle = sketch.centre;
  if (sketch.circle > 0) {
    page.circle(on(middle), sketch.circle / 2 * scale.per_metre,
                "fill=\"none\" stroke=\"#777777\" stroke-width=\"1.2\" stroke-dasharray=\"10 4 2 4\"");
  } else {
    middle = {};
    for (const Position p : sketch.bolts)
      middle = {middle.x + p.x / static_cast<double>(sketch.bolts.size()),
                middle.y + p.y / static_cast<double>(sketch.bolts.size())};
  }
  const PlanPoint centre = on(middle);
  page.line({centre.x - 7, centre.y}, {centre.x + 7, centre.y}, "stroke=\"#777777\" stroke-width=\"1\"");
  page.line({centre.x, centre.y - 7}, {centre.x, centre.y + 7}, "stroke=\"#777777\" stroke-width=\"1\"");
  const double radius = std::clamp(0.4 * detail::least_distance(sketch.bolts) * scale.per_metre, 3.0, 15.0);
  for (const Position p : sketch.empty)
    page.circle(on(p), radius, "fill=\"none\" stroke=\"#777777\" stroke-width=\"1.5\" stroke-dasharray=\"3 3\"");
  double longest = 0;
  for (const Position arrow : sketch.arrows) longest = std::max(longest, std::hypot(arrow.x, arrow.y));
  const double font = std::min(15.0, 1.05 * radius);
  for (std::size_t i = 0; i < sketch.bolts.size(); ++i) {
    const PlanPoint at = on(sketch.bolts[i]);
    const bool worst = static_cast<int>(i) + 1 == sketch.worst;
    const double out = std::hypot(at.x - centre.x, at.y - centre.y);
    PlanPoint away = out > 1 ? PlanPoint{(at.x - centre.x) / out, (at.y - centre.y) / out} : PlanPoint{0, -1};
    if (longest > 0 && i < sketch.arrows.size()) {
      const double size = std::hypot(sketch.arrows[i].x, sketch.arrows[i].y);
      const double length = 64 * size / longest;
      if (length > 4) {
        const PlanPoint along{sketch.arrows[i].x / size, -sketch.arrows[i].y / size};
        const PlanPoint from{at.x + along.x * radius, at.y + along.y * radius};
        const PlanPoint tip{from.x + along.x * length, from.y + along.y * length};
        const PlanPoint neck{tip.x - along.x * 9, tip.y - along.y * 9};
        page.line(from, neck,
                  worst ? "stroke=\"#d55e00\" stroke-width=\"4\"" : "stroke=\"#0072b2\" stroke-width=\"2.5\"");
        page.triangle(tip, {neck.x - along.y * 6, neck.y + along.x * 6}, {neck.x + along.y * 6, neck.y - along.x * 6},
                      worst ? "fill=\"#d55e00\"" : "fill=\"#0072b2\"");
        // Words stand on the other side of an arrow that points outward.
        if (along.x * away.x + along.y * away.y > 0.3) away = {-away.x, -away.y};
      }
    }
    page.circle(at, radius,
                worst ? "fill=\"#d55e00\" stroke=\"#222222\" stroke-width=\"3\""
                      : "fill=\"#ffffff\" stroke=\"#0072b2\" stroke-width=\"2\"");
    if (font >= 6) page.words(at, std::to_string(i + 1), font, worst ? "fill=\"#ffffff\" font-weight=\"bold\"" : "");
    if (i < sketch.words.size() && sketch.bolts.size() <= detail::most_with_words) {
      const double half = 0.29 * 13 * static_cast<double>(sketch.words[i].size());
      page.words({at.x + away.x * (radius + 6 + half), at.y + away.y * (radius + 13)}, sketch.words[i], 13, "");
    }
    if (i == 0 && !sketch.mark.empty()) {
      if (!sketch.words.empty()) away = {-away.x, -away.y};  // where no word stands
      const PlanPoint tip{at.x + away.x * (radius + 3), at.y + away.y * (radius + 3)};
      const PlanPoint base{tip.x + away.x * 16, tip.y + away.y * 16};
      page.triangle(tip, {base.x - away.y * 9, base.y + away.x * 9}, {base.x + away.y * 9, base.y - away.x * 9},
                    "fill=\"#222222\"");
      const double half = 0.29 * 15 * static_cast<double>(sketch.mark.size());
      page.words({base.x + away.x * (8 + half), base.y + away.y * 13}, sketch.mark);
    }
  }
  return page.finish(width, height, "Bolts with their numbers, seen from the side that is tightened");
}

/// Draws the numbers of the bolts where they stand, with characters that are twice as high as wide.
/// \param columns  width
inline std::string sketch_text(const PatternSketch& sketch, int columns = 60) {
  const PlanScale scale = fit_plan(detail::extent_of(sketch), columns - 6.0, 26);
  const auto wide = static_cast<std::size_t>(columns);
  std::vector<std::string> rows(static_cast<std::size_t>(scale.height / 2) + 1, std::string(wide, ' '));
  const auto put = [&](Position p, const std::string& text) {
    const PlanPoint at = scale.paper({p.x, p.y});
    const auto row = std::min(static_cast<std::size_t>(std::lround(at.y / 2)), rows.size() - 1);
    const auto middle = static_cast<long>(std::lround(at.x + (columns - scale.width) / 2));
    const auto first = static_cast<std::size_t>(std::max(0L, middle - static_cast<long>(text.size() / 2)));
    if (first + text.size() > wide) return;
    if (rows[row].find_first_not_of(' ', first) < first + text.size()) return;  // no number over another one
    rows[row].replace(first, text.size(), text);
  };
  for (std::size_t i = 0; i < sketch.bolts.size(); ++i) {
    std::string text = std::to_string(i + 1);
    if (static_cast<int>(i) + 1 == sketch.worst) text = "*" + text + "*";
    put(sketch.bolts[i], text);
  }
  for (const Position p : sketch.empty) put(p, "o");
  if (sketch.circle > 0) put(sketch.centre, "+");
  std::string drawing;
  for (std::string& row : rows) drawing += row.erase(row.find_last_not_of(' ') + 1) + "\n";
  return drawing + "Seen from the side that is tightened.\n";
}

}  // namespace tauten::TAUTEN_ABI
