// The tightening curve: torque, preload, stress and plastic strain over the angle, from snug to past yield.
#pragma once

#include <algorithm>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/words.hpp"
#include "tauten/tightening/stress.hpp"
#include "tauten/turning/curve_points.hpp"
#include "tauten/turning/turning.hpp"

namespace tauten::TAUTEN_ABI {

/// How a curve is to be drawn.
struct CurveOptions {
  Torque snug_torque{};  ///< where the angle begins
  Angle end_angle{};     ///< 0: to the end of uniform elongation
  int points = 400;
  int rings = 15;
  double slope_share = 0.5;  ///< yield point: slope of torque over angle down to this share of its greatest value
};

namespace detail {

inline CurvePoint curve_point(const Turning& turning, double snug_angle) noexcept {
  const RoundSection& section = turning.section();
  return {Angle(turning.angle() - snug_angle),
          Torque(turning.torque()),
          Force(turning.preload()),
          Torque(turning.thread_torque()),
          Stress(turning.preload() / section.area()),
          Stress(section.surface_stress()),
          section.surface_strain(),
          section.elastic_core(),
          Length(turning.lasting_stretch())};
}

/// Between two points, linear.
inline CurvePoint between(const CurvePoint& a, const CurvePoint& b, double share) noexcept {
  const auto mix = [share](auto x, auto y) { return decltype(x)(x.si + share * (y.si - x.si)); };
  return {mix(a.angle, b.angle),
          mix(a.torque, b.torque),
          mix(a.preload, b.preload),
          mix(a.thread_torque, b.thread_torque),
          mix(a.tension, b.tension),
          mix(a.equivalent, b.equivalent),
          a.plastic_strain + share * (b.plastic_strain - a.plastic_strain),
          a.elastic_core + share * (b.elastic_core - a.elastic_core),
          mix(a.lasting_stretch, b.lasting_stretch)};
}

/// Preload at which the surface begins to flow: nothing has yielded before, so it is exact.
inline double first_yield_preload(const TurnedBolt& bolt, const TurningFriction& friction, double start) noexcept {
  const double lever = ThreadIncline::lever(bolt.pitch.si, bolt.pitch_diameter.si, friction.thread);
  return TorsionOverTension::load(TorsionOverTension::elastic<double>(), lever, bolt.section_diameter.si, 1.0, start);
}

/// The slope of torque over angle falls to a share of its greatest value.
inline bool find_yield_point(const std::vector<CurvePoint>& points, double share, CurvePoint& found) {
  double greatest = 0;
  double last = 0;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double run = points[i].angle.si - points[i - 1].angle.si;
    const double slope = (points[i].torque.si - points[i - 1].torque.si) / run;
    if (i > 1 && slope < share * greatest) {
      // A slope belongs to the middle of its interval.
      const double back = (share * greatest - slope) / (last - slope);
      const double place = 0.5 - back;
      found = place >= 0 ? between(points[i - 1], points[i], place) : between(points[i - 2], points[i - 1], 1 + place);
      return true;
    }
    greatest = std::max(greatest, slope);
    last = slope;
  }
  return false;
}

/// Angle from zero at which the surface has used up `strain`, found with few steps.
inline double angle_at_strain(Turning turning, double strain, double first_step) {
  double angle = 0;
  double used = 0;
  for (double step = first_step; used < strain; step *= 1.05) {
    const double before = turning.section().surface_strain();
    if (!turning.turn_to(angle + step)) break;
    used = turning.section().surface_strain();
    if (used >= strain) return angle + step * (strain - before) / (used - before);
    angle += step;
  }
  return angle;
}

inline Outcome<FlowCurve> check_turning(const TurnedBolt& bolt, const BoltSteel& steel,
                                        const TurningFriction& friction) {
  if (!is_positive(bolt.pitch)) return refusal("pitch", bolt.pitch, "but must be above 0 mm");
  if (!is_positive(bolt.pitch_diameter))
    return refusal("pitch_diameter", bolt.pitch_diameter, "but must be above 0 mm");
  if (!is_positive(bolt.section_diameter))
    return refusal("section_diameter", bolt.section_diameter, "but must be above 0 mm");
  if (!is_positive(bolt.section_length))
    return refusal("section_length", bolt.section_length, "but must be above 0 mm; give the length of free thread");
  if (!is_positive(bolt.bolt_resilience))
    return refusal("bolt_resilience", bolt.bolt_resilience, "but must be above 0 um/kN");
  if (!is_not_negative(bolt.plate_resilience))
    return refusal("plate_resilience", bolt.plate_resilience, "but must be at least 0 um/kN");
  if (!(friction.thread >= 0 && friction.thread <= 1))
    return refusal("thread_friction", friction.thread, "but must lie between 0 and 1");
  if (!(friction.bearing >= 0 && friction.bearing <= 1))
    return refusal("bearing_friction", friction.bearing, "but must lie between 0 and 1");
  if (!is_not_negative(friction.bearing_diameter))
    return refusal("bearing_diameter", friction.bearing_diameter, "but must be at least 0 mm");
  return try_flow_curve(steel);
}

}  // namespace detail

/// The curve for one pair of coefficients of friction.
/// \param bolt, steel, friction  what is turned
/// \param options  where it begins and ends, how fine
/// \return the curve, or an error that names the argument at fault
inline Outcome<Curve> try_tightening_curve(const TurnedBolt& bolt, const BoltSteel& steel,
                                           const TurningFriction& friction, const CurveOptions& options = {}) {
  const Outcome<FlowCurve> flow = detail::check_turning(bolt, steel, friction);
  if (!flow) return flow.error();
  if (options.points < 2 || options.points > 1'000'000)
    return refusal("points", options.points, "but must lie between 2 and 1000000");
  if (options.rings < 2 || options.rings > 1000)
    return refusal("rings", options.rings, "but must lie between 2 and 1000");
  if (!(options.slope_share > 0 && options.slope_share < 1))
    return refusal("slope_share", options.slope_share, "but must lie between 0 and 1");
  if (!is_not_negative(options.snug_torque))
    return refusal("snug_torque", options.snug_torque, "but must be at least 0 N.m");
  if (!is_not_negative(options.end_angle)) return refusal("end_angle", options.end_angle, "but must be at least 0 deg");

  Turning turning(bolt, steel, friction, options.rings);
  if (!turning.is_sound())
    return refusal(
        "bolt_resilience", bolt.bolt_resilience,
        "but the plastic section alone stretches or twists more; give resilience and twist of the whole bolt");
  const double onset = detail::first_yield_preload(bolt, friction, flow->start());
  const double snug_preload = options.snug_torque.si / turning.wrench_lever();
  if (snug_preload >= onset)
    return refusal("snug_torque", options.snug_torque,
                   "but already brings the bolt to yield; give a lower snug torque");

  const double snug = turning.elastic_angle(snug_preload);
  const double limit = detail::angle_at_strain(turning, steel.uniform_elongation, turning.elastic_angle(onset) / 8);
  Curve curve;
  const bool to_limit = options.end_angle.si == 0 || snug + options.end_angle.si >= limit;
  curve.end = to_limit ? CurveEnd::uniform_elongation : CurveEnd::at_angle;
  const double end = to_limit ? limit : snug + options.end_angle.si;
  curve.points.reserve(static_cast<std::size_t>(options.points));
  for (int i = 0; i < options.points; ++i) {
    if (!turning.turn_to(snug + (end - snug) * i / (options.points - 1)))
      return Error("points", "no equilibrium was found on the way; give more points");
    curve.points.push_back(detail::curve_point(turning, snug));
  }
  curve.energy = turning.energy();

  curve.has_yield_point = detail::find_yield_point(curve.points, options.slope_share, curve.yield_point);
  curve.has_first_yield = curve.points.back().plastic_strain > 0;
  if (curve.has_first_yield) {
    const double share = onset / curve.points.back().preload.si;
    CurvePoint& mark = curve.first_yield;
    mark = detail::between({}, curve.points.back(), share);
    mark.angle = Angle(turning.elastic_angle(onset) - snug);
    mark.equivalent = Stress(flow->start());
    mark.plastic_strain = 0;
    mark.elastic_core = 1;
    mark.lasting_stretch = Length(0);
  }
  return curve;
}

/// \copydoc try_tightening_curve
/// \throws Error  naming the argument, its value and the allowed range
inline Curve tightening_curve(const TurnedBolt& bolt, const BoltSteel& steel, const TurningFriction& friction,
                              const CurveOptions& options = {}) {
  return try_tightening_curve(bolt, steel, friction, options).value();
}

/// Low, nominal and high friction: the curve is never one line.
inline Outcome<Band<Curve>> try_tightening_curves(const TurnedBolt& bolt, const BoltSteel& steel,
                                                  const Band<TurningFriction>& friction,
                                                  const CurveOptions& options = {}) {
  Band<Curve> band;
  const auto draw = [&](Curve Band<Curve>::* curve, const TurningFriction& f) -> Outcome<bool> {
    const Outcome<Curve> drawn = try_tightening_curve(bolt, steel, f, options);
    if (!drawn) return drawn.error();
    band.*curve = *drawn;
    return true;
  };
  for (const auto& [curve, f] : {std::pair{&Band<Curve>::low, friction.low},
                                 {&Band<Curve>::nominal, friction.nominal},
                                 {&Band<Curve>::high, friction.high}})
    if (const Outcome<bool> done = draw(curve, f); !done) return done.error();
  return band;
}

/// \copydoc try_tightening_curves
/// \throws Error  naming the argument, its value and the allowed range
inline Band<Curve> tightening_curves(const TurnedBolt& bolt, const BoltSteel& steel,
                                     const Band<TurningFriction>& friction, const CurveOptions& options = {}) {
  return try_tightening_curves(bolt, steel, friction, options).value();
}

}  // namespace tauten::TAUTEN_ABI
