// Finds places for words in a drawing so that none covers another or a line.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "tauten/drawing/plan.hpp"

namespace tauten::TAUTEN_ABI {

/// A box that words fill, by its middle.
struct LabelBox {
  PlanPoint middle;
  double width;
  double height;

  /// \return the point of the box next to `p`
  PlanPoint nearest(PlanPoint p) const {
    return {std::clamp(p.x, middle.x - width / 2, middle.x + width / 2),
            std::clamp(p.y, middle.y - height / 2, middle.y + height / 2)};
  }
  bool overlaps(const LabelBox& other) const {
    return std::fabs(middle.x - other.middle.x) < (width + other.width) / 2 &&
           std::fabs(middle.y - other.middle.y) < (height + other.height) / 2;
  }
};

/// Places labels one after the other, each as near to what it names as the ones before let it.
class LabelLayout {
 public:
  LabelLayout(double width, double height) : width_(width), height_(height) {}

  /// Keeps labels off a place of the drawing.
  void keep_clear(PlanPoint middle, double size) { taken_.push_back({middle, size, size}); }
  /// Keeps labels off a line of the drawing.
  void keep_clear(PlanPoint from, PlanPoint to, double thickness) {
    for (const PlanPoint& p : along(from, to)) keep_clear(p, thickness + step);
  }

  /// \return true if a label stands so far from its anchor that a line must tie it there
  static bool needs_leader(PlanPoint anchor, const LabelBox& box) {
    const PlanPoint edge = box.nearest(anchor);
    return std::hypot(edge.x - anchor.x, edge.y - anchor.y) > 24;
  }

  /// \param anchor  what the label names
  /// \param width   of the words
  /// \param height  of the words
  /// \return where the label stands, or nothing if there is no room
  std::optional<LabelBox> place(PlanPoint anchor, double width, double height) {
    for (double gap = 6; gap < 200; gap += 8)
      for (const PlanPoint& way : ways) {
        const LabelBox box{
            {anchor.x + way.x * (width / 2 + gap), anchor.y + way.y * (height / 2 + gap)}, width, height};
        if (!fits(box) || !leader_is_clear(anchor, box)) continue;
        taken_.push_back(box);
        labels_.push_back(box);
        if (needs_leader(anchor, box)) keep_clear(anchor, box.nearest(anchor), 2);
        return box;
      }
    return std::nullopt;
  }

 private:
  static constexpr double step = 4;
  // Below and above first: words are wide, and a label beside its place is read as the next one's.
  static constexpr PlanPoint ways[] = {{0, 1},   {0, -1},   {0.5, 1},  {0.5, -1},  {-0.5, 1}, {-0.5, -1},
                                       {0.9, 1}, {0.9, -1}, {-0.9, 1}, {-0.9, -1}, {1, 0},    {-1, 0},
                                       {1, 0.6}, {1, -0.6}, {-1, 0.6}, {-1, -0.6}};

  static std::vector<PlanPoint> along(PlanPoint from, PlanPoint to) {
    std::vector<PlanPoint> points;
    const double steps = std::ceil(std::hypot(to.x - from.x, to.y - from.y) / step) + 1;
    for (double i = 0; i <= steps; ++i)
      points.push_back({from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps});
    return points;
  }

  bool fits(const LabelBox& box) const {
    return box.middle.x - box.width / 2 >= 0 && box.middle.x + box.width / 2 <= width_ &&
           box.middle.y - box.height / 2 >= 0 && box.middle.y + box.height / 2 <= height_ &&
           std::none_of(taken_.begin(), taken_.end(), [&](const LabelBox& other) { return box.overlaps(other); });
  }

  /// The line from a label to its anchor must not strike through another label.
  bool leader_is_clear(PlanPoint anchor, const LabelBox& box) const {
    if (!needs_leader(anchor, box)) return true;
    for (const PlanPoint& p : along(anchor, box.nearest(anchor)))
      for (const LabelBox& label : labels_)
        if (label.overlaps({p, step, step})) return false;
    return true;
  }

  double width_;
  double height_;
  std::vector<LabelBox> taken_;
  std::vector<LabelBox> labels_;
};

}  // namespace tauten::TAUTEN_ABI
