// Drawings of a reach: wrench, extensions and fastener with their lengths and angles.
#pragma once

#include "tauten/drawing/svg.hpp"
#include "tauten/drawing/text.hpp"
#include "tauten/question/reach_job.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Quantities in the units of a workshop.
struct ShopWords {
  template <class Q>
  std::string operator()(const Q& quantity) const {
    return shop_text(quantity);
  }
};

}  // namespace detail

/// \param job        what was asked
/// \param reach      what came of it
/// \param shop_text  how a quantity is written
/// \return the plan of the tool with its words
template <class Text = detail::ShopWords>
ToolPlan tool_plan(const ReachJob& job, const Reach& reach, const Text& shop_text = {}) {
  const Length hand(job.wrench.length.si + job.hand_offset.si);
  ToolPlan plan;
  plan.hand = hand;
  plan.links = job.extensions;
  plan.hand_words = "hand, pull " + shop_text(Force(std::round(reach.hand_force.si)));
  plan.wrench_words = "wrench " + shop_text(hand) + ", set to " + shop_text(reach.setting);
  plan.drive_words = "drive";
  for (const ExtensionLink& link : job.extensions)
    plan.link_words.push_back("extension " + shop_text(link.length) + " at " + shop_text(link.angle));
  plan.fastener_words = "fastener " + shop_text(reach.arrives.nominal) + " (" + shop_text(reach.arrives.low) + " to " +
                        shop_text(reach.arrives.high) + ")";
  return plan;
}

/// \return the reach drawn with ASCII characters, `columns` wide
inline std::string reach_drawing_text(const ReachJob& job, const Reach& reach, int columns = 64) {
  return draw_text(tool_plan(job, reach), columns);
}

/// \return the reach drawn as an SVG document
inline std::string reach_drawing_svg(const ReachJob& job, const Reach& reach) {
  return draw_svg(tool_plan(job, reach));
}

}  // namespace tauten::TAUTEN_ABI
