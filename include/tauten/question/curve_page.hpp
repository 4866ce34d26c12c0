// The page of a tightening curve: where the bolt yields and where its elongation is used up, with a diagram.
#pragma once

#include <algorithm>

#include "tauten/explain/text_plot.hpp"
#include "tauten/question/turn_page.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

struct CurveLine {
  const char* friction;
  const Curve& curve;
};

inline std::vector<CurveLine> lines_of(const CurveAnswer& a) {
  return {{"low", a.low_friction}, {"nominal", a.nominal}, {"high", a.high_friction}};
}

inline std::string curve_plot(const CurveAnswer& a, const PageUnits& units) {
  const Curve& nominal = a.nominal;
  double end = 0, top = 0;
  for (const CurveLine& line : lines_of(a))
    for (const CurvePoint& point : line.curve.points) {
      end = std::max(end, units.in_unit(point.angle));
      top = std::max(top, units.in_unit(point.preload));
    }
  TextPlot plot(end, 1.05 * top);
  // The curves of low and high friction end at angles of their own: between them only where both are there.
  const auto at = [&](const Curve& curve, double angle) {
    const auto next =
        std::lower_bound(curve.points.begin(), curve.points.end(), angle,
                         [&](const CurvePoint& point, double x) { return units.in_unit(point.angle) < x; });
    return units.in_unit(next == curve.points.end() ? curve.points.back().preload : next->preload);
  };
  const double both =
      std::min(units.in_unit(a.low_friction.points.back().angle), units.in_unit(a.high_friction.points.back().angle));
  for (double angle = 0; angle <= both; angle += end / 200) {
    const double one = at(a.low_friction, angle), other = at(a.high_friction, angle);
    plot.band(angle, std::min(one, other), std::max(one, other));
  }
  const auto x = [&](const CurvePoint& point) { return units.in_unit(point.angle); };
  const auto y = [&](const CurvePoint& point) { return units.in_unit(point.preload); };
  for (std::size_t i = 1; i < nominal.points.size(); ++i)
    plot.line(x(nominal.points[i - 1]), y(nominal.points[i - 1]), x(nominal.points[i]), y(nominal.points[i]));
  const auto mark = [&](const CurvePoint& point, char letter) { plot.mark(x(point), y(point), letter); };
  if (nominal.has_first_yield) mark(nominal.first_yield, 'F');
  if (nominal.has_yield_point) mark(nominal.yield_point, 'Y');
  mark(nominal.points.back(), 'E');
  return plot.text("angle from snug in " + units.unit(Dim::angle),
                   "preload in " + units.unit(Dim::force) + "; * typical friction, . between low and high friction");
}

inline const char* end_text(const Curve& curve) {
  return curve.end == CurveEnd::at_angle ? "E end of the angle" : "E elongation used up";
}

/// \param lines  curves by their friction; "" for a curve by itself
inline PageTable mark_table(const std::vector<CurveLine>& lines, const PageUnits& units) {
  PageTable table{
      "",
      {{"Mark"},
       {"Friction"},
       {"Angle", units.unit(Dim::angle), true},
       {"Torque", units.unit(Dim::torque), true},
       {"Preload", units.unit(Dim::force), true},
       {"Plastic strain", "%", true},
       {"Stretch", units.unit(Dim::length), true}},
      {},
      {"First yield: the surface of the thread begins to flow. Yield point: the slope of the torque has "
       "dropped to the share asked for. Neither is the yield strength of which `clamp` states the percent: that one "
       "is set at 0.2 % of plastic strain. Stretch: by which the bolt would stay longer."}};
  const auto row = [&](const char* title, const CurveLine& line, const CurvePoint& point) {
    table.rows.push_back({title, line.friction, units.cell(point.angle), units.cell(point.torque),
                          units.cell(point.preload), number_text(100 * point.plastic_strain, 2),
                          number_text(units.in_unit(point.lasting_stretch), 2)});
  };
  for (const CurveLine& line : lines)
    if (line.curve.has_first_yield) row("F first yield", line, line.curve.first_yield);
  for (const CurveLine& line : lines)
    if (line.curve.has_yield_point) row("Y yield point", line, line.curve.yield_point);
  for (const CurveLine& line : lines) row(end_text(line.curve), line, line.curve.points.back());
  return table;
}

inline std::string point_text(const CurvePoint& point, const PageUnits& units) {
  return units.text(point.angle) + ", " + units.text(point.torque) + ", " + units.text(point.preload);
}

/// "yield point at 28.7 deg, 212 N.m, 83.2 kN; elongation used up at 201 deg, 289 N.m, 113 kN."
inline std::string curve_headline(const Curve& curve, const PageUnits& units) {
  const std::string end =
      (curve.end == CurveEnd::at_angle ? "end of the angle at " : "the bolt necks and may break from ") +
      point_text(curve.points.back(), units) + (curve.end == CurveEnd::at_angle ? "." : " on.");
  return (curve.has_yield_point   ? "yield point at " + point_text(curve.yield_point, units)
          : curve.has_first_yield ? "first yield at " + point_text(curve.first_yield, units)
                                  : std::string("no yield")) +
         "; " + end;
}

}  // namespace detail

/// \return the curves laid out for people
inline Page page_of(const CurveAnswer& a, const PageUnits& units = {}) {
  Page page;
  page.name = a.name;
  page.headline = detail::turned_text(a.joint, a.snug_torque, units) +
                  ", typical friction: " + detail::curve_headline(a.nominal, units);
  detail::add_joint_figures(page, a.joint, units);
  page.drawing.text = detail::curve_plot(a, units);
  page.tables.push_back(detail::mark_table(detail::lines_of(a), units));
  static constexpr std::string_view to_do[] = {"snug_is_found"};
  std::vector<Notice> others;
  for (const Notice& notice : a.notices)
    if (detail::lists(to_do, notice.code))
      page.actions.push_back(units.restated(notice.text));
    else
      others.push_back(notice);
  page.add(others, units);
  page.limit_cautions();
  return page;
}

/// \return one curve laid out for people
inline Page page_of(const Curve& curve, const PageUnits& units = {}) {
  Page page;
  page.headline = detail::curve_headline(curve, units);
  page.headline[0] = static_cast<char>(page.headline[0] - 'a' + 'A');
  page.tables.push_back(detail::mark_table({{"", curve}}, units));
  return page;
}

}  // namespace tauten::TAUTEN_ABI
