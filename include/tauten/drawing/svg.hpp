// A tool drawn as SVG, for pages and reports.
#pragma once

#include "tauten/base/plain_number.hpp"
#include "tauten/drawing/label_layout.hpp"
#include "tauten/drawing/plan.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Writes SVG elements, numbers to a tenth of a unit.
class SvgPage {
 public:
  static constexpr double font_size = 15;

  static std::string number(double x) { return PlainNumber::fixed(x, 1).c_str(); }
  void line(PlanPoint from, PlanPoint to, const char* style) {
    body_ += "<line x1=\"" + number(from.x) + "\" y1=\"" + number(from.y) + "\" x2=\"" + number(to.x) + "\" y2=\"" +
             number(to.y) + "\" " + style + "/>\n";
  }
  void circle(PlanPoint middle, double radius, const char* style) {
    body_ += "<circle cx=\"" + number(middle.x) + "\" cy=\"" + number(middle.y) + "\" r=\"" + number(radius) + "\" " +
             style + "/>\n";
  }
  void hexagon(PlanPoint middle, double radius, const char* style) {
    body_ += "<polygon points=\"";
    for (int i = 0; i < 6; ++i)
      body_ += number(middle.x + radius * std::cos(i * pi_constant.value / 3)) + "," +
               number(middle.y + radius * std::sin(i * pi_constant.value / 3)) + " ";
    body_ += std::string("\" ") + style + "/>\n";
  }
  /// Angle between the wrench's direction and a link that starts at `middle`; both on paper, y downward.
  void arc(PlanPoint middle, double radius, double angle, const char* style) {
    const PlanPoint to{middle.x + radius * std::cos(angle), middle.y - radius * std::sin(angle)};
    body_ += "<path d=\"M " + number(middle.x + radius) + " " + number(middle.y) + " A " + number(radius) + " " +
             number(radius) + " 0 0 " + (angle > 0 ? "0 " : "1 ") + number(to.x) + " " + number(to.y) + "\" " + style +
             "/>\n";
  }
  void words(PlanPoint middle, const std::string& text) {
    body_ += "<text x=\"" + number(middle.x) + "\" y=\"" + number(middle.y + font_size * 0.35) + "\">" + escaped(text) +
             "</text>\n";
  }
  void triangle(PlanPoint a, PlanPoint b, PlanPoint c, const char* style) {
    body_ += "<polygon points=\"";
    for (const PlanPoint p : {a, b, c}) body_ += number(p.x) + "," + number(p.y) + " ";
    body_ += std::string("\" ") + style + "/>\n";
  }
  /// Words of another size or colour than the page's.
  void words(PlanPoint middle, const std::string& text, double size, const char* style) {
    body_ += "<text x=\"" + number(middle.x) + "\" y=\"" + number(middle.y + size * 0.35) + "\" font-size=\"" +
             number(size) + "\" " + style + ">" + escaped(text) + "</text>\n";
  }
  std::string finish(double width, double height, const char* title = "Wrench, extension and fastener") const {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + number(width) + " " + number(height) +
           "\" width=\"" + number(width) + "\" height=\"" + number(height) +
           "\" role=\"img\" font-family=\"sans-serif\" font-size=\"" + number(font_size) +
           "\" text-anchor=\"middle\" fill=\"#222222\">\n<title>" + title +
           "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n" + body_ + "</svg>\n";
  }

 private:
  static std::string escaped(const std::string& text) {
    std::string safe;
    for (const char c : text) safe += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '>' ? "&gt;" : std::string(1, c);
    return safe;
  }
  std::string body_;
};

}  // namespace detail

/// Draws a tool as SVG, to scale. Wrench and extension differ in width as well as in colour; the colours (blue and
/// vermilion) stay apart in all common kinds of colour blindness. Labels never cover each other; one that finds no
/// room stands in a list below, and so do the words of several extensions.
/// \param plan  the tool
/// \return a complete SVG document
inline std::string draw_svg(const ToolPlan& plan) {
  constexpr double width = 760;
  constexpr double side = 120;
  constexpr double margin = 70;
  const std::vector<PlanPoint> points = plan.points();
  const PlanScale scale = fit_plan(points, width - 2 * side, 360);
  const double height = scale.height + 2 * margin;
  // A plan that is narrow for its height stands in the middle.
  const double left = (width - scale.width) / 2;
  std::vector<PlanPoint> on;
  for (const PlanPoint& p : points) on.push_back({scale.paper(p).x + left, scale.paper(p).y + margin});

  detail::SvgPage page;
  LabelLayout layout(width, height);
  constexpr double arc_radius = 30;
  for (std::size_t i = 0; i < plan.links.size(); ++i) {
    const PlanPoint from = on[i + 1];
    const double angle = std::remainder(plan.links[i].angle.si, 2 * pi_constant.value);
    // An arc that is longer than its link, or next to nothing, says less than the words.
    if (plan.links[i].length.si * scale.per_metre < 1.3 * arc_radius || std::fabs(angle) < 0.05) continue;
    const PlanPoint ahead{from.x + 1.6 * arc_radius, from.y};
    page.line(from, ahead, "stroke=\"#777777\" stroke-width=\"1.2\" stroke-dasharray=\"5 4\"");
    page.arc(from, arc_radius, angle, "fill=\"none\" stroke=\"#777777\" stroke-width=\"1.2\"");
    layout.keep_clear(from, ahead, 4);
    for (double part = 0; part <= 1; part += 1.0 / 16)
      layout.keep_clear({from.x + arc_radius * std::cos(angle * part), from.y - arc_radius * std::sin(angle * part)},
                        6);
  }
  page.line(on[0], on[1], "stroke=\"#0072b2\" stroke-width=\"12\" stroke-linecap=\"round\"");
  for (std::size_t i = 1; i < on.size(); ++i) {
    if (i > 1) page.line(on[i - 1], on[i], "stroke=\"#d55e00\" stroke-width=\"6\" stroke-linecap=\"round\"");
    layout.keep_clear(on[i - 1], on[i], i == 1 ? 14 : 18);
  }
  for (std::size_t i = 1; i + 1 < on.size(); ++i)
    page.circle(on[i], 5, "fill=\"#ffffff\" stroke=\"#222222\" stroke-width=\"2\"");
  page.hexagon(on.back(), 11, "fill=\"#222222\" stroke=\"#ffffff\" stroke-width=\"1.5\"");
  page.circle(on[0], 9, "fill=\"#ffffff\" stroke=\"#0072b2\" stroke-width=\"3\"");

  std::vector<std::string> below;
  const auto label = [&](PlanPoint anchor, const std::string& text) {
    const double font = detail::SvgPage::font_size;
    const auto box = layout.place(anchor, 0.6 * font * static_cast<double>(text.size()), 1.3 * font);
    if (!box) {
      below.push_back(text);
      return;
    }
    // A label that had to step aside is tied to its place by a thin line.
    if (LabelLayout::needs_leader(anchor, *box))
      page.line(anchor, box->nearest(anchor), "stroke=\"#777777\" stroke-width=\"1\"");
    page.words(box->middle, text);
  };
  label(on.back(), plan.fastener_words);
  label(on[0], plan.hand_words);
  label({(on[0].x + on[1].x) / 2, on[1].y}, plan.wrench_words);
  for (std::size_t i = 0; i < plan.links.size(); ++i) {
    const PlanPoint middle{(on[i + 1].x + on[i + 2].x) / 2, (on[i + 1].y + on[i + 2].y) / 2};
    if (plan.links.size() == 1) {
      label(middle, plan.link_words[i]);
    } else {
      // Several links stand close together: a number at the link, the words in a list.
      label(middle, std::to_string(i + 1));
      below.push_back(std::to_string(i + 1) + ": " + plan.link_words[i]);
    }
  }
  if (!plan.links.empty()) label(on[1], plan.drive_words);
  double end = height;
  for (const std::string& text : below) page.words({width / 2, (end += 22) - 16}, text);
  return page.finish(width, end);
}

}  // namespace tauten::TAUTEN_ABI
