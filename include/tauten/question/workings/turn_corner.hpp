// Turning a bolt with all that is not known at one end of its range, and the bands that follow.
#pragma once

#include <array>

#include "tauten/base/normal.hpp"
#include "tauten/question/workings/turn_setup.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// One combination of what is not known.
struct TurnCorner {
  TurningFriction friction;
  double resilience = 1;  ///< factor on that of the joint
  double strength = 1;    ///< factor on that of the class
  double snug = 0;        ///< torque that reaches thread and face
  double angle_off = 0;   ///< by which the angle is missed
  double elongation = 1;  ///< factor on the uniform elongation of the class
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
  steel.uniform_elongation *= corner.elongation;
  // The section that may yield stretches by its modulus, which is known; the
  // doubt is about all the rest.
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
  const double strain = setup.strain_limit * corner.elongation;
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

/// The bolt as it is sold, everything else at its median.
inline TurnCorner typical_corner(const TurnSetup& setup, const TurnJob& job, const TurnSpec& spec) {
  const double snug = EffectiveTorque::eval(spec.snug, 0.0, setup.conditions.lost, 0.0);
  return {setup.nominal(), 1, strength_sold(job).median, std::max(snug, 0.0), 0, elongation_sold(job)};
}

/// \param friction  which end of the band
/// \param rest      -1 or 1: everything else lowers the preload, or raises it
/// \param strong    the bolt is as strong as it may be
inline TurnCorner corner_of(const TurnSetup& setup, const TurnJob& job, const TurnSpec& spec,
                            double Band<double>::* friction, int rest, bool strong) {
  const double snug =
      EffectiveTorque::eval(spec.snug, rest * setup.conditions.accuracy_at(spec.snug), setup.conditions.lost, 0.0);
  return {setup.friction(friction), 1 - rest * setup.resilience_tolerance, strong ? 1 + job.strength_surplus : 1,
          std::max(snug, 0.0),      rest * job.angle_tolerance.si,         strong ? elongation_sold(job) : 1};
}

inline TurnEnd turn_by(const TurnSetup& setup, const TurnCorner& corner, const TurnSpec& spec) {
  const double tool = spec.at_handle ? setup.tool_twist : 0;
  return turn_corner(setup, corner, std::max(spec.angle + corner.angle_off, 0.0),
                     [tool](const Turning&, double angle, double torque) { return angle + tool * torque; });
}

/// The typical turn, and what 19 in 20 bolts get around it.
struct TurnBands {
  TurnEnd nominal;
  Band<double> snug_load, preload, torque, utilisation, strain, stretch;
  Band<double> worst_case;       ///< preload with everything unknown at one end of its range
  double chance_of_yield = 0;    ///< of a bolt that just meets its class
  double chance_of_slack = 0;    ///< that less than half of the proof load is left
  double chance_of_necking = 0;  ///< of bolts as they are sold
  bool weakest_necks = false;    ///< a bolt that just meets its class necks
  bool necks() const noexcept { return weakest_necks || chance_of_necking > 0.05; }
};

/// First-order propagation. Each input moves by one standard deviation to
/// either side, all others stay at their medians; the squares of what that adds
/// above and below are summed apart, as past the knee of the curve a result
/// moves less to one side than to the other. Bands are 1.96 such sums wide.
/// Friction falls from its median to nothing at the ends of its band: half a
/// triangle on each side, whose root mean square is the distance over root 6.
inline TurnBands turn_bands(const TurnSetup& setup, const TurnJob& job, const TurnSpec& spec) {
  constexpr int measures = 6;
  using Measures = std::array<double, measures>;
  const TurnCorner typical = typical_corner(setup, job, spec);
  const double root6 = std::sqrt(6.0);
  const auto limit_of = [&](const TurnCorner& corner) { return setup.strain_limit * corner.elongation; };
  const auto measured = [&](const TurnEnd& end) {
    return Measures{end.snug_load,
                    end.preload,
                    end.torque + setup.conditions.lost,
                    setup.utilisation(end.preload, end.thread_torque),
                    end.strain,
                    end.stretch};
  };
  TurnBands bands;
  bands.nominal = turn_by(setup, typical, spec);
  const Measures middle = measured(bands.nominal);
  Measures above{}, below{};
  double yield_above = 0;
  const auto take = [&](const TurnCorner& corner, bool of_strength) {
    const Measures at = measured(turn_by(setup, corner, spec));
    for (std::size_t k = 0; k < measures; ++k) {
      const double off = at[k] - middle[k];
      (off > 0 ? above : below)[k] += square(off);
    }
    if (!of_strength) yield_above += square(std::max(at[3] - middle[3], 0.0));
  };
  const auto moved = [&](auto move, double down, double up, bool of_strength = false) {
    for (const double off : {-down, up}) {
      TurnCorner corner = typical;
      move(corner, off);
      if (off != 0) take(corner, of_strength);
    }
  };
  const double accuracy = setup.conditions.accuracy_at(spec.snug) * spec.snug / std::sqrt(3.0);
  moved([](TurnCorner& c, double off) { c.snug = std::max(c.snug + off, 0.0); }, accuracy, accuracy);
  const double angle = job.angle_tolerance.si / root6;
  moved([](TurnCorner& c, double off) { c.angle_off = off; }, angle, angle);
  const double resilience = setup.resilience_tolerance / root6;
  moved([](TurnCorner& c, double off) { c.resilience += off; }, resilience, resilience);
  const double strength = typical.strength * strength_sold(job).variation;
  moved([](TurnCorner& c, double off) { c.strength += off; }, strength, strength, true);
  const Band<double>&G = setup.bolt.mu_G, &K = setup.bolt.mu_K;
  const auto side = [root6](const Band<double>& mu, double off) {
    return off * (off < 0 ? mu.nominal - mu.low : mu.high - mu.nominal) / root6;
  };
  // Thread and face under one condition rub much or little together.
  const auto thread = [&](TurnCorner& c, double off) { c.friction.thread += side(G, off); };
  const auto face = [&](TurnCorner& c, double off) { c.friction.bearing += side(K, off); };
  if (setup.one_friction) {
    moved([&](TurnCorner& c, double off) { thread(c, off), face(c, off); }, 1, 1);
  } else {
    moved(thread, 1, 1);
    moved(face, 1, 1);
  }

  const auto band = [&](std::size_t k) {
    return Band<double>{std::max(middle[k] - 1.96 * std::sqrt(below[k]), 0.0), middle[k],
                        middle[k] + 1.96 * std::sqrt(above[k])};
  };
  bands.snug_load = band(0);
  bands.preload = band(1);
  bands.torque = band(2);
  bands.utilisation = band(3);
  bands.strain = band(4);
  bands.stretch = band(5);

  // A bolt that just meets its class is the low end past yield.
  TurnCorner least = typical;
  least.strength = least.elongation = 1;
  const TurnEnd weak = turn_by(setup, least, spec);
  bands.preload.low = std::min(bands.preload.low, weak.preload);
  const auto beyond = [](double margin, double variance) {
    return variance > 0 ? normal_chance(-margin / std::sqrt(variance)) : margin < 0 ? 1.0 : 0.0;
  };
  const double weak_utilisation = setup.utilisation(weak.preload, weak.thread_torque);
  bands.chance_of_yield = beyond(1 + 1e-5 - weak_utilisation, yield_above);
  bands.chance_of_slack = beyond(middle[1] - useful_proof_share * setup.joint.proof_load.si, below[1]);
  const double limit = limit_of(typical);
  constexpr double elongation_variation = 0.15;  // judgement
  bands.chance_of_necking = !bands.nominal.reached ? 1
                            : bands.nominal.strain > 0
                                ? beyond(limit - middle[4], above[4] + square(elongation_variation * limit))
                                : 0;
  bands.weakest_necks = !weak.reached;

  bands.worst_case = {middle[1], middle[1], middle[1]};
  for (const auto friction : {&Band<double>::low, &Band<double>::high})
    for (const int rest : {-1, 1})
      for (const bool strong : {false, true}) {
        const double load = turn_by(setup, corner_of(setup, job, spec, friction, rest, strong), spec).preload;
        bands.worst_case.low = std::min(bands.worst_case.low, load);
        bands.worst_case.high = std::max(bands.worst_case.high, load);
      }
  return bands;
}

template <Dim D>
Band<Quantity<D>> band_of(const Band<double>& si) {
  return {Quantity<D>(si.low), Quantity<D>(si.nominal), Quantity<D>(si.high)};
}

}  // namespace tauten::TAUTEN_ABI::detail
