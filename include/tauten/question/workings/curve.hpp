// The tightening curve of a joint as somebody describes it: torque and preload against the angle, with its zones.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/question/workings/turn_notices.hpp"
#include "tauten/turning/tightening_curve.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Zones of a curve, cut at its end.
inline std::vector<CurveZone> zones_of(const Curve& curve) {
  std::vector<CurveZone> zones;
  const Angle end = curve.points.back().angle;
  Angle start = curve.points.front().angle;
  const auto add = [&](const char* name, Angle until) {
    until = std::min(until, end);
    if (!(until > start)) return;
    zones.push_back({name, start, until});
    start = until;
  };
  add("elastic", curve.has_first_yield ? curve.first_yield.angle : end);
  add("yielding", curve.has_yield_point ? curve.yield_point.angle : end);
  add("past_yield", end);
  return zones;
}

/// A locking element takes its torque at the wrench and in the shank; the curve itself is of thread and face.
inline void add_prevailing(Curve& curve, double torque) {
  const auto add = [torque](CurvePoint& point) {
    point.torque = Torque(point.torque.si + torque);
    point.thread_torque = Torque(point.thread_torque.si + torque);
  };
  for (CurvePoint& point : curve.points) add(point);
  if (curve.has_first_yield) add(curve.first_yield);
  if (curve.has_yield_point) add(curve.yield_point);
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<CurveAnswer> try_curve(const CurveJob& job) {
  using namespace detail;
  const Outcome<TurnSetup> found = try_turn_setup(job.joint);
  if (!found) return found.error();
  const TurnSetup& setup = *found;
  const double lost = setup.conditions.lost;
  const Torque snug = job.joint.snug_torque.value_or(Torque());
  if (job.joint.snug_torque && !(snug.si > lost))
    return refuse("snug_torque", "snug_torque is " + shop_text(snug) + ", but the prevailing torque takes " +
                                     shop_text(Torque(lost)) + "; nothing is left to close the joint");
  if (auto e = outside("end_angle", job.end_angle, {0, 20 * 2 * pi_constant.value, true})) return *e;
  if (auto e = outside("points", Quantity<Dim::number>(job.points), {2, 100'000})) return *e;
  const CurveOptions options{.snug_torque = Torque(std::max(snug.si - lost, 0.0)),
                             .end_angle = job.end_angle.value_or(Angle()),
                             .points = job.points,
                             .slope_share = job.slope_share};
  Outcome<Band<Curve>> curves = try_tightening_curves(
      setup.turned, setup.steel,
      {setup.friction(&Band<double>::low), setup.nominal(), setup.friction(&Band<double>::high)}, options);
  if (!curves) return curves.error();
  CurveAnswer a{job.joint.name,
                setup.joint,
                setup.bolt.mu_G,
                setup.bolt.mu_K,
                snug,
                curves->low,
                curves->nominal,
                curves->high,
                {},
                {}};
  for (Curve CurveAnswer::* curve : {&CurveAnswer::low_friction, &CurveAnswer::nominal, &CurveAnswer::high_friction})
    add_prevailing(a.*curve, lost);
  a.zones = zones_of(a.nominal);
  a.notices = joint_notices(job.joint, setup);
  a.notices.push_back(
      {"least_strength",
       "The curve goes by the minimum strength of the class; a bolt from the box is typically stronger.", false});
  a.notices.push_back({"single_use", "A bolt turned past yield serves once, unless its maker says otherwise.", false});
  add_common_notices(job.joint, setup, a.notices, false);
  return a;
}

TAUTEN_FUNCTION CurveAnswer curve(const CurveJob& job) { return try_curve(job).value(); }

}  // namespace tauten::TAUTEN_ABI
