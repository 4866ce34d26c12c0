// A tool seen square to its plane: points and words, not yet drawn.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "tauten/tool/chain.hpp"

namespace tauten::TAUTEN_ABI {

/// On the plan x runs in the wrench's direction and y to the side of positive angles; on paper x runs to the right and
/// y downward.
struct PlanPoint {
  double x;
  double y;
};

/// Wrench, extensions and fastener with their labels. The drive is the origin.
struct ToolPlan {
  Length hand;  ///< from the hand to the drive
  std::vector<ExtensionLink> links;
  std::string hand_words;
  std::string wrench_words;
  std::vector<std::string> link_words;
  std::string drive_words;  ///< not written if there are no links: drive and fastener are one place then
  std::string fastener_words;

  /// \return hand, drive, end of each link; the last one is the fastener
  std::vector<PlanPoint> points() const {
    std::vector<PlanPoint> list = {{-hand.si, 0}, {0, 0}};
    for (const ExtensionLink& link : links)
      list.push_back({list.back().x + link.length.si * std::cos(link.angle.si),
                      list.back().y + link.length.si * std::sin(link.angle.si)});
    return list;
  }
};

/// How a plan is put on paper: x to the right, y downward.
struct PlanScale {
  double per_metre;
  double left;  ///< plan x at paper x = 0
  double top;   ///< plan y at paper y = 0
  double width;
  double height;

  PlanPoint paper(PlanPoint p) const { return {(p.x - left) * per_metre, (top - p.y) * per_metre}; }
};

/// \param points  of the plan
/// \param width   maximum width of the paper
/// \param height  maximum height of the paper
/// \return the maximum scale at which all points fit
inline PlanScale fit_plan(const std::vector<PlanPoint>& points, double width, double height) {
  const auto [left, right] =
      std::minmax_element(points.begin(), points.end(), [](PlanPoint a, PlanPoint b) { return a.x < b.x; });
  const auto [bottom, top] =
      std::minmax_element(points.begin(), points.end(), [](PlanPoint a, PlanPoint b) { return a.y < b.y; });
  const double wide = right->x - left->x;
  const double high = top->y - bottom->y;
  const double scale = high * width > wide * height ? height / high : width / wide;
  return {scale, left->x, top->y, wide * scale, high * scale};
}

}  // namespace tauten::TAUTEN_ABI
