// Charts as SVG: diagrams with axes, and a whole sheet on A4.
#include <algorithm>
#include <cmath>

#include "command/chart.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/drawing/svg.hpp"
#include "tauten/explain/markup.hpp"

namespace tauten::command {

namespace {

std::string px(double x) { return PlainNumber::fixed(x, 1).c_str(); }

std::string text_at(double x, double y, double size, const std::string& style, const std::string& text) {
  return "<text x=\"" + px(x) + "\" y=\"" + px(y) + "\" font-size=\"" + px(size) + "\" " + style + ">" +
         html_text(text) + "</text>\n";
}

/// \return 1, 2 or 5 times a power of ten, of which four to ten fit into the range
double step_of(double range) {
  const double power = std::pow(10.0, std::floor(std::log10(range)));
  for (const double times : {0.1, 0.2, 0.5, 1.0})
    if (range / (times * power) <= 10) return times * power;
  return 2 * power;
}

/// Figures of a wide bold face are about this many times as wide as the letters are high.
constexpr double letter = 0.56;

/// Puts pieces below each other.
class Paper {
 public:
  static constexpr double width = 700;

  void line(const std::string& text, double size = 11, const char* style = "", const std::string& front = "") {
    const auto letters = static_cast<std::size_t>(width / (letter * size));
    for (const std::string& part : wrapped(front + text, letters)) {
      y_ += 1.35 * size;
      body_ += text_at(0, y_, size, style, part);
    }
  }
  void gap(double height) { y_ += height; }
  void table(const PageTable& table) {
    if (!table.title.empty()) line(table.title, 12, "font-weight=\"bold\""), gap(4);
    std::vector<double> widths;
    double all = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
      std::size_t most = std::max(width_of(table.columns[i].title), width_of(table.columns[i].unit));
      for (const auto& row : table.rows) most = std::max(most, width_of(row[i]));
      widths.push_back(static_cast<double>(most) + 2);
      all += widths.back();
    }
    const double size = std::min(12.0, width / (all * letter)), row_height = 1.55 * size;
    const double scale = std::min(width / all, 14 * letter);  // no wider than reads well
    const auto cells = [&](const auto& text_of, const char* style) {
      double x = 0;
      for (std::size_t i = 0; i < widths.size(); ++i) {
        const bool right = table.columns[i].number;
        body_ += text_at(right ? x + (widths[i] - 1) * scale : x + scale * 0.5, y_ - 0.32 * row_height, size,
                         std::string(right ? "text-anchor=\"end\" " : "") + style, text_of(i));
        x += widths[i] * scale;
      }
    };
    const auto rule = [&](const char* style) {
      body_ +=
          "<line x1=\"0\" y1=\"" + px(y_) + "\" x2=\"" + px(all * scale) + "\" y2=\"" + px(y_) + "\" " + style + "/>\n";
    };
    y_ += row_height;
    cells([&](std::size_t i) { return table.columns[i].title; }, "font-weight=\"bold\"");
    y_ += row_height;
    cells([&](std::size_t i) { return table.columns[i].unit; }, "fill=\"#444444\"");
    rule("stroke=\"#222222\" stroke-width=\"1.5\"");
    std::size_t count = 0;
    for (const auto& row : table.rows) {
      y_ += row_height;
      cells([&](std::size_t i) { return row[i]; }, "");
      // Every third line is darker: eyes that come back to a row find it again.
      rule(++count % 3 == 0 ? "stroke=\"#777777\" stroke-width=\"0.8\"" : "stroke=\"#cccccc\" stroke-width=\"0.5\"");
    }
    gap(4);
    for (const std::string& sentence : table.legend) line(sentence, 10);
  }
  void drawing(const std::string& svg) {
    constexpr double height = 330;
    // A drawing stands in a frame of its own, and its size becomes that of the frame.
    body_ += "<svg x=\"0\" y=\"" + px(y_) + "\" width=\"" + px(width) + "\" height=\"" + px(height) + "\">" + svg +
             "</svg>\n";
    y_ += height;
  }
  double height() const { return y_; }
  const std::string& body() const { return body_; }

 private:
  double y_ = 0;
  std::string body_;
};

}  // namespace

std::string diagram_svg(const ChartDiagram& diagram) {
  constexpr double width = 700, height = 330, left = 62, right = 150, top = 14, bottom = 46;
  double most_x = 0, most_y = 0;
  for (const ChartLine& line : diagram.lines)
    for (const auto& [x, y] : line.points) most_x = std::max(most_x, x), most_y = std::max(most_y, y);
  if (!(most_x > 0 && most_y > 0)) return "";
  const double step_x = step_of(most_x), step_y = step_of(most_y);
  most_y = std::ceil(most_y / step_y) * step_y;
  const auto at_x = [&](double x) { return left + x / most_x * (width - left - right); };
  const auto at_y = [&](double y) { return height - bottom - y / most_y * (height - top - bottom); };
  std::string out =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 700 330\" width=\"700\" height=\"330\" "
      "role=\"img\" font-family=\"sans-serif\" fill=\"#222222\">\n<title>" +
      html_text(diagram.up + " against " + diagram.across) + "</title>\n";
  const auto stroke = [&](double x1, double y1, double x2, double y2, const char* style) {
    out += "<line x1=\"" + px(x1) + "\" y1=\"" + px(y1) + "\" x2=\"" + px(x2) + "\" y2=\"" + px(y2) + "\" " + style +
           "/>\n";
  };
  for (int i = 0; i * step_x <= most_x * (1 + 1e-9); ++i) {
    stroke(at_x(i * step_x), top, at_x(i * step_x), height - bottom, "stroke=\"#dddddd\"");
    out += text_at(at_x(i * step_x), height - bottom + 16, 12, "text-anchor=\"middle\"", number_text(i * step_x));
  }
  for (int i = 0; i * step_y <= most_y * (1 + 1e-9); ++i) {
    stroke(left, at_y(i * step_y), width - right, at_y(i * step_y), "stroke=\"#dddddd\"");
    out += text_at(left - 6, at_y(i * step_y) + 4, 12, "text-anchor=\"end\"", number_text(i * step_y));
  }
  stroke(left, height - bottom, width - right, height - bottom, "stroke=\"#222222\"");
  stroke(left, top, left, height - bottom, "stroke=\"#222222\"");
  out += text_at((left + width - right) / 2, height - 8, 13, "text-anchor=\"middle\"", diagram.across);
  out += "<text x=\"15\" y=\"" + px((top + height - bottom) / 2) +
         "\" font-size=\"13\" text-anchor=\"middle\" transform=\"rotate(-90 15 " + px((top + height - bottom) / 2) +
         ")\">" + html_text(diagram.up) + "</text>\n";
  // Blue, vermilion, green, purple, orange, black stay apart in all common kinds of colour blindness; dashes differ too.
  constexpr const char* looks[][2] = {{"#0072b2", ""},        {"#d55e00", "9 4"}, {"#009e73", "2 3"},
                                      {"#cc79a7", "9 3 2 3"}, {"#e69f00", "5 3"}, {"#222222", "14 4"},
                                      {"#56b4e9", "12 3 2 3"}};
  struct End {
    double y;
    std::size_t line;
  };
  std::vector<End> ends;
  for (std::size_t i = 0; i < diagram.lines.size(); ++i) {
    const ChartLine& line = diagram.lines[i];
    if (line.points.empty()) continue;
    const auto& look = looks[i % std::size(looks)];
    out += std::string("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"") + look[0] + "\" stroke-dasharray=\"" +
           (look[1][0] ? look[1] : "none") + "\" points=\"";
    for (const auto& [x, y] : line.points) out += px(at_x(x)) + "," + px(at_y(y)) + " ";
    out += "\"/>\n";
    ends.push_back({at_y(line.points.back().second), i});
  }
  // Names stand at the ends of their lines, moved apart where these come close, and tied to them.
  std::sort(ends.begin(), ends.end(), [](const End& a, const End& b) { return a.y < b.y; });
  double free = top;
  for (const End& end : ends) {
    const ChartLine& line = diagram.lines[end.line];
    const double y = std::max(end.y, free);
    free = y + 15;
    const char* colour = looks[end.line % std::size(looks)][0];
    stroke(at_x(line.points.back().first), end.y, width - right + 10, y,
           (std::string("stroke=\"") + colour + "\" stroke-width=\"0.8\"").c_str());
    out += text_at(width - right + 13, y + 4, 12, "", line.name);
  }
  return out + "</svg>";
}

std::string sheet_svg(const Sheet& sheet) {
  constexpr double page_wide = 794, page_high = 1123, margin = 47;  // A4 at 96 to the inch
  Paper paper;
  paper.line(sheet.title, 20, "font-weight=\"bold\"");
  if (!sheet.subtitle.empty()) paper.line(sheet.subtitle, 12);
  paper.line(sheet.stamp, 9, "fill=\"#444444\"");
  if (!sheet.note.empty()) paper.line(sheet.note, 11, "font-weight=\"bold\"");
  for (const SheetSection& section : sheet.sections)
    for (const SheetBlock& block : section.blocks) {
      paper.gap(9);
      if (!block.title.empty()) paper.line(block.title, 13, "font-weight=\"bold\"");
      if (!block.drawing.svg.empty()) paper.drawing(block.drawing.svg);
      if (block.table) paper.table(*block.table);
      for (const std::string& line : block.lines) paper.line(line, 10, "", block.table ? "" : "- ");
    }
  const double scale =
      std::min((page_wide - 2 * margin) / Paper::width, (page_high - 2 * margin) / std::max(paper.height(), 1.0));
  return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"210mm\" height=\"297mm\" viewBox=\"0 0 794 1123\" "
         "role=\"img\" "
         "font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\" fill=\"#111111\">\n<title>" +
         html_text(sheet.title) +
         "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n<g transform=\"translate(" + px(margin) +
         " " + px(margin) + ") scale(" + PlainNumber::fixed(scale, 4).c_str() + ")\">\n" + paper.body() +
         "</g></svg>\n";
}

}  // namespace tauten::command
