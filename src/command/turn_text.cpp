#include "command/turn_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "command/notices_text.hpp"
#include "command/text_plot.hpp"
#include "tauten/base/quantity_text.hpp"

namespace tauten::command {

namespace {

template <Dim D>
std::string text_of(Quantity<D> q, int digits = 4) {
  return quantity_text(q.si, D, digits);
}

std::string joint_text(const std::string& name, const TurnJoint& joint) {
  return paragraph(fmt::format("{}{}, {}, class {}{}, {} long{}, {} clamped, {}.", name.empty() ? "" : name + ": ",
                               joint.thread, joint.head, joint.property_class, joint.class_assumed ? " (assumed)" : "",
                               text_of(joint.length), joint.length_assumed ? " (assumed)" : "", text_of(joint.grip),
                               plain_words(word_of(joint.kind)))) +
         paragraph(fmt::format(
             "Resilience: bolt {}, layers {} by {}. {} % of a working load reaches the bolt. Joint rate: {} ({} from "
             "10 to 100 % of the torque).",
             text_of(joint.bolt_resilience, 3), text_of(joint.plate_resilience, 3),
             plain_words(word_of(joint.plate_model)), number_text(100 * joint.joint_constant, 2),
             joint.rate == "between" ? "medium" : joint.rate, text_of(joint.rate_angle, 2)));
}

/// A figure of a table; a dash where it is absent.
std::string cell_of(double x) { return std::isfinite(x) ? number_text(x, 3) : "-"; }

std::string figures_text(const TurnAnswer& a) {
  Table table({{"Figure", ""}, {"Unit", ""}, {"Low", "", true}, {"Typical", "", true}, {"High", "", true}});
  const auto row = [&](const char* title, const char* unit, const auto& band, auto scaled) {
    table.row({title, unit, cell_of(scaled(band.low)), cell_of(scaled(band.nominal)), cell_of(scaled(band.high))});
  };
  const auto shop = [](const auto& q) { return q.shop(); };
  const auto percent = [](double x) { return 100 * x; };
  row("load at snug", "kN", a.snug_load, shop);
  row("clamp load", "kN", a.clamp_load, shop);
  row("of the proof load", "%", a.proof_share, percent);
  row("of yield, while turning", "%", a.yield_utilisation, percent);
  row("torque at the end", "N.m", a.torque, shop);
  row("lasting stretch", "mm", a.lasting_stretch, shop);
  row("left after all losses", "kN", a.residual.clamp_load, shop);
  row("by that torque alone", "kN", a.by_torque, shop);
  const bool breaks = !std::isfinite(a.by_torque.nominal.si) && !a.may_neck;
  return table.text() + (breaks ? paragraph("By that torque alone some bolts would break.") : "");
}

std::string structural_text(const StructuralTurn& s) {
  Table table({{"Structural bolting", ""},
               {"First torque", "N.m", true},
               {"Turn", "deg", true},
               {"Low", "kN", true},
               {"Typical", "kN", true},
               {"High", "kN", true}});
  const auto row = [&](const char* title, const std::string& torque, const NutRotation& turn, const Band<Force>& load) {
    table.row({title, torque, number_text(turn.angle.shop(), 3), cell_of(load.low.shop()), cell_of(load.nominal.shop()),
               cell_of(load.high.shop())});
  };
  if (s.turn_of_nut) row("turn of the nut", "snug", *s.turn_of_nut, *s.turn_of_nut_load);
  if (s.combined) row("combined method", number_text(s.combined_first_torque.si, 3), *s.combined, *s.combined_load);
  const bool none = !s.turn_of_nut && !s.combined;
  return "\n" + (none ? paragraph("The tables of structural bolting do not reach so far.") : table.text()) +
         paragraph("The preload to be reached is " + text_of(s.least_preload) + ", 0.7 of the tensile load.");
}

std::string engagement_text(const ThreadEngagement& e) {
  const std::string held = e.breaks_first
                               ? "the bolt breaks before the thread strips"
                               : "the thread strips at " + text_of(e.strip_load.low, 3) +
                                     (e.strip_load.low < e.strip_load.high ? " to " + text_of(e.strip_load.high, 3)
                                                                           : std::string(" or above"));
  if (e.strips == "nut")
    return paragraph(fmt::format("N{}, {} high: {}.", e.holder.substr(1), text_of(e.engaged_length, 3), held));
  return paragraph(fmt::format("Thread in {}, {} engaged, {} needed: {}.", e.holder, text_of(e.engaged_length, 3),
                               text_of(e.needed_length, 3), held));
}

std::string reuse_text(const TurnAnswer& a) {
  if (a.may_neck) return "Replace the bolt.";
  if (a.past_yield) return "Use the bolt once only: replace it when it is loosened.";
  if (a.tightenings == 0) return "The bolt cannot take this tightening even once.";
  return a.tightenings >= 20
             ? "The typical bolt stays below the strain that limits reuse."
             : fmt::format("The strain allows the typical bolt to be tightened {} times at most.", a.tightenings);
}

}  // namespace

std::string page_of(const TurnAnswer& a) {
  std::string out = joint_text(a.name, a.joint);
  out += paragraph(fmt::format(
      "Turn by {} from snug at {}. {}", text_of(a.angle, 3), text_of(a.snug_torque, 3),
      a.may_neck ? "No clamp load is given: the bolt may break."
                 : fmt::format("Clamp load {} to {}, typically {}.", number_text(a.clamp_load.low.shop(), 3),
                               text_of(a.clamp_load.high, 3), text_of(a.clamp_load.nominal, 3))));
  if (a.tool_twist.si > 0)
    out += paragraph(fmt::format("At the handle that is {}, as the bars twist by {}.", text_of(a.handle_angle, 3),
                                 text_of(a.tool_twist, 3)));
  out += paragraph(fmt::format("Verdict: {}. {}", a.verdict, a.meaning)) + "\n" + figures_text(a);
  out += paragraph(fmt::format("{} of the angle stretches the joint, {} twists the bolt. {}", text_of(a.clamping, 3),
                               text_of(a.bolt_twist, 2), reuse_text(a)));
  if (a.engagement) out += engagement_text(*a.engagement);
  if (a.diagram.working_load.si != 0)
    out += paragraph(
        fmt::format("At a working load of {} the bolt carries up to {} (proof load {}, tensile load {}). {}; "
                    "the joint separates at {}.",
                    text_of(a.service.working_load, 3), text_of(a.service.bolt_load.nominal, 3),
                    text_of(a.service.proof_load, 3), text_of(a.service.tensile_load, 3),
                    a.service.clamp_load.nominal.si > 0
                        ? "After all losses " + text_of(a.service.clamp_load.nominal, 3) + " of clamp load remains"
                        : std::string("After all losses no clamp load remains"),
                    text_of(a.service.separation_load, 3)));
  if (a.structural) out += structural_text(*a.structural);
  return out + "\nTake care\n" + list_of(a.notices);
}

namespace {

struct Line {
  const char* friction;
  const Curve& curve;
};

std::vector<Line> lines_of(const CurveAnswer& a) {
  return {{"low", a.low_friction}, {"nominal", a.nominal}, {"high", a.high_friction}};
}

std::string plot_text(const CurveAnswer& a) {
  const Curve& nominal = a.nominal;
  double end = 0;
  double top = 0;
  for (const Line& line : lines_of(a))
    for (const CurvePoint& point : line.curve.points) {
      end = std::max(end, point.angle.shop());
      top = std::max(top, point.preload.shop());
    }
  TextPlot plot(end, 1.05 * top);
  // The curves of low and high friction end at angles of their own: between them only where both are there.
  const auto at = [](const Curve& curve, double angle) {
    const auto next = std::lower_bound(curve.points.begin(), curve.points.end(), angle,
                                       [](const CurvePoint& point, double x) { return point.angle.shop() < x; });
    return next == curve.points.end() ? curve.points.back().preload.shop() : next->preload.shop();
  };
  const double both = std::min(a.low_friction.points.back().angle.shop(), a.high_friction.points.back().angle.shop());
  for (double angle = 0; angle <= both; angle += end / 200) {
    const double one = at(a.low_friction, angle);
    const double other = at(a.high_friction, angle);
    plot.band(angle, std::min(one, other), std::max(one, other));
  }
  for (std::size_t i = 1; i < nominal.points.size(); ++i)
    plot.line(nominal.points[i - 1].angle.shop(), nominal.points[i - 1].preload.shop(), nominal.points[i].angle.shop(),
              nominal.points[i].preload.shop());
  const auto mark = [&](const CurvePoint& point, char letter) {
    plot.mark(point.angle.shop(), point.preload.shop(), letter);
  };
  if (nominal.has_first_yield) mark(nominal.first_yield, 'F');
  if (nominal.has_yield_point) mark(nominal.yield_point, 'Y');
  mark(nominal.points.back(), 'E');
  return plot.text("angle from snug in deg", "preload in kN; * typical friction, . between low and high friction");
}

std::string marks_text(const CurveAnswer& a) {
  Table table({{"Mark", ""},
               {"Friction", ""},
               {"Angle", "deg", true},
               {"Torque", "N.m", true},
               {"Preload", "kN", true},
               {"Plastic strain", "%", true},
               {"Stretch", "mm", true}});
  const auto row = [&](const std::string& title, const Line& line, const CurvePoint& point) {
    table.row({title, line.friction, number_text(point.angle.shop(), 3), number_text(point.torque.si, 3),
               number_text(point.preload.shop(), 3), number_text(100 * point.plastic_strain, 2),
               number_text(point.lasting_stretch.shop(), 2)});
  };
  for (const Line& line : lines_of(a))
    if (line.curve.has_first_yield) row("F first yield", line, line.curve.first_yield);
  for (const Line& line : lines_of(a))
    if (line.curve.has_yield_point) row("Y yield point", line, line.curve.yield_point);
  for (const Line& line : lines_of(a))
    row(line.curve.end == CurveEnd::at_angle ? "E end of the angle" : "E elongation used up", line,
        line.curve.points.back());
  return table.text();
}

}  // namespace

std::string page_of(const CurveAnswer& a) {
  std::string out = joint_text(a.name, a.joint) + "\n" + plot_text(a) + "\n" + marks_text(a);
  out += paragraph(
      "First yield: the surface of the thread begins to flow. Yield point: the slope of the torque has dropped to the "
      "share asked for. Stretch: by which the bolt would stay longer.");
  return out + "\nTake care\n" + list_of(a.notices);
}

std::string csv_of(const CurveAnswer& a) {
  std::string out = "friction";
  const auto unit_of = []<Dim D>(Quantity<D> CurvePoint::*) { return std::string(describe(D).si_unit); };
  CurvePoint::fields([&](const char* name, auto member) {
    if constexpr (requires { unit_of(member); })
      out += fmt::format(",{} [{}]", name, unit_of(member));
    else
      out += fmt::format(",{}", name);
  });
  out += "\n";
  for (const Line& line : lines_of(a))
    for (const CurvePoint& point : line.curve.points) {
      out += line.friction;
      CurvePoint::fields([&](const char*, auto member) {
        if constexpr (requires { (point.*member).si; })
          out += "," + exact_text((point.*member).si);
        else
          out += "," + exact_text(point.*member);
      });
      out += "\n";
    }
  return out;
}

}  // namespace tauten::command
