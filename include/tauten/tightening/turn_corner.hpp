// Turning a bolt with all that is not known at one end of its range, and the bands that follow.
#pragma once

#include "tauten/tightening/turn_setup.hpp"

namespace tauten::detail {

/// One combination of what is not known.
struct TurnCorner {
  TurningFriction friction;
  double resilience = 1;  ///< factor on that of the joint
  double strength = 1;    ///< factor on that of the class
  double snug = 0;        ///< torque that reaches thread and face
  double angle_off = 0;   ///< by which the angle is missed
};

/// How a turn ends; angles and twist from snug, torque that reaches thread and face.
struct TurnEnd {
  double snug_load = 0;
  double angle = 0;
  double bolt_twist = 0;
  double preload = 0;
  double torque = 0;
  double thread_torque = 0;
  double strain = 0;
  double stretch = 0;
  bool reached = true;  ///< false: uniform elongation was used up before
};

inline Turning turning_of(const TurnSetup& setup, const TurnCorner& corner) {
  TurnedBolt bolt = setup.turned;
  BoltSteel steel = setup.steel;
  steel.yield_strength = Stress(steel.yield_strength.si * corner.strength);
  steel.tensile_strength = Stress(steel.tensile_strength.si * corner.strength);
  // The section that may yield stretches by its modulus, which is known; the doubt is about all the rest.
  const double section =
      SegmentResilience::eval(bolt.section_length.si, circle_area(bolt.section_diameter.si), steel.elastic_modulus.si);
  const double whole = bolt.bolt_resilience.si + bolt.plate_resilience.si;
  const double wanted = std::max(whole * corner.resilience, section * (1 + 1e-6));
  bolt.bolt_resilience = Compliance(bolt.bolt_resilience.si + wanted - whole);
  return {bolt, steel, corner.friction};
}

/// Turns on until `measure` has reached `target`.
/// \return false if the uniform elongation is used up before; the bolt then stands where it was
template <class Measure>
bool turn_until(Turning& turning, double step, double strain, double target, Measure measure) {
  while (measure(turning) < target) {
    Turning ahead = turning;
    if (!ahead.turn_to(turning.angle() + step)) return false;
    if (measure(ahead) < target) {
      if (ahead.section().surface_strain() > strain) return false;
      turning = std::move(ahead);
      continue;
    }
    double low = 0;
    double high = step;
    for (int i = 0; i < 44; ++i) {
      const double middle = (low + high) / 2;
      Turning probe = turning;
      if (!probe.turn_to(turning.angle() + middle)) return false;
      (measure(probe) < target ? low : high) = middle;
    }
    ahead = turning;
    if (!ahead.turn_to(turning.angle() + high) || ahead.section().surface_strain() > strain) return false;
    turning = std::move(ahead);
    return true;
  }
  return true;
}

/// \param target   of the turn
/// \param measure  of the turning, the angle and the torque at snug: what is to reach the target
template <class Measure>
TurnEnd turn_corner(const TurnSetup& setup, const TurnCorner& corner, double target, Measure measure) {
  Turning turning = turning_of(setup, corner);
  const double strain = setup.steel.uniform_elongation;
  const double onset = first_yield_preload(setup.turned, corner.friction, turning.section().yield_start());
  const double step = turning.elastic_angle(onset) / 40;
  TurnEnd end;
  const double snug = corner.snug / turning.wrench_lever();
  end.reached = snug < 0.99 * onset
                    ? turning.turn_to(turning.elastic_angle(snug))
                    : turn_until(turning, step, strain, snug, [](const Turning& t) { return t.preload(); });
  end.snug_load = turning.preload();
  const double start = turning.angle();
  const double twist = turning.twist();
  const double torque = turning.torque();
  if (end.reached)
    end.reached = turn_until(turning, step, strain, target,
                             [&](const Turning& t) { return measure(t, t.angle() - start, t.torque() - torque); });
  end.angle = turning.angle() - start;
  end.bolt_twist = turning.twist() - twist;
  end.preload = turning.preload();
  end.torque = turning.torque();
  end.thread_torque = turning.thread_torque();
  end.strain = turning.section().surface_strain();
  end.stretch = turning.lasting_stretch();
  return end;
}

/// A specification: snug torque at the wrench and angle from there.
struct TurnSpec {
  double snug = 0;
  double angle = 0;
  bool at_handle = false;
};

/// \param friction  which end of the band
/// \param rest      -1, 0 or 1: everything else lowers the preload, is as usual, raises it
/// \param strong    the bolt is as strong as it may be
inline TurnCorner corner_of(const TurnSetup& setup, const TurnJob& job, const TurnSpec& spec,
                            double Band<double>::* friction, int rest, bool strong) {
  const double snug =
      EffectiveTorque::eval(spec.snug, rest * setup.conditions.accuracy_at(spec.snug), setup.conditions.lost, 0.0);
  return {setup.friction(friction), 1 - rest * setup.resilience_tolerance, strong ? 1 + job.strength_surplus : 1,
          std::max(snug, 0.0), rest * job.angle_tolerance.si};
}

inline TurnEnd turn_by(const TurnSetup& setup, const TurnCorner& corner, const TurnSpec& spec) {
  const double tool = spec.at_handle ? setup.tool_twist : 0;
  return turn_corner(setup, corner, std::max(spec.angle + corner.angle_off, 0.0),
                     [tool](const Turning&, double angle, double torque) { return angle + tool * torque; });
}

/// The typical turn and the bands around it.
struct TurnBands {
  TurnEnd nominal;
  Band<double> snug_load, preload, torque, utilisation, strain, stretch;
  bool necks = false;
};

inline TurnBands turn_bands(const TurnSetup& setup, const TurnJob& job, const TurnSpec& spec) {
  TurnBands bands;
  const auto widen = [](Band<double>& band, double x, bool first) {
    band.low = first ? x : std::min(band.low, x);
    band.high = first ? x : std::max(band.high, x);
  };
  const auto take = [&](const TurnEnd& end, bool first) {
    widen(bands.snug_load, end.snug_load, first);
    widen(bands.preload, end.preload, first);
    widen(bands.torque, end.torque + setup.conditions.lost, first);
    widen(bands.utilisation, setup.utilisation(end.preload, end.thread_torque), first);
    widen(bands.strain, end.strain, first);
    widen(bands.stretch, end.stretch, first);
    bands.necks |= !end.reached;
  };
  bands.nominal = turn_by(setup, corner_of(setup, job, spec, &Band<double>::nominal, 0, false), spec);
  take(bands.nominal, true);
  const TurnEnd& nominal = bands.nominal;
  bands.snug_load.nominal = nominal.snug_load;
  bands.preload.nominal = nominal.preload;
  bands.torque.nominal = nominal.torque + setup.conditions.lost;
  bands.utilisation.nominal = setup.utilisation(nominal.preload, nominal.thread_torque);
  bands.strain.nominal = nominal.strain;
  bands.stretch.nominal = nominal.stretch;
  for (const auto friction : {&Band<double>::low, &Band<double>::high})
    for (const int rest : {-1, 1})
      for (const bool strong : {false, true})
        take(turn_by(setup, corner_of(setup, job, spec, friction, rest, strong), spec), false);
  return bands;
}

template <Dim D>
Band<Quantity<D>> band_of(const Band<double>& si) {
  return {Quantity<D>(si.low), Quantity<D>(si.nominal), Quantity<D>(si.high)};
}

}  // namespace tauten::detail
