// How often a bolt may be tightened past yield and loosened again.
#pragma once

#include "tauten/turning/tightening_curve.hpp"

namespace tauten::TAUTEN_ABI {

/// How each tightening ends: at a slope drop, or by an angle from snug.
struct PastYield {
  Torque snug_torque{};      ///< of torque plus angle
  Angle angle{};             ///< from snug; 0: yield controlled, by the slope drop
  double slope_share = 0.5;  ///< of yield control
  double strain_share =
      0.5;           ///< plastic strain at the surface that may be used up, in shares of the uniform elongation;
                     ///< an estimate
  int at_most = 50;  ///< stop counting here
};

/// One tightening of a series.
struct Use {
  Force preload{};
  double plastic_strain = 0;  ///< at the surface, summed up so far
  Length lasting_stretch{};   ///< summed up so far

  template <class V>
  static void fields(V&& visit) {
    visit("preload", &Use::preload);
    visit("plastic_strain", &Use::plastic_strain);
    visit("lasting_stretch", &Use::lasting_stretch);
  }
};

/// What a series of tightenings does to a bolt.
struct Reuse {
  std::vector<Use> uses;    ///< as many as are allowed
  bool single_use = false;  ///< torque-to-yield: after one tightening the bolt is to be replaced
  bool unlimited = false;   ///< the bolt stays elastic, or the count ran out

  template <class V>
  static void fields(V&& visit) {
    visit("uses", &Reuse::uses);
    visit("single_use", &Reuse::single_use);
    visit("unlimited", &Reuse::unlimited);
  }
};

namespace detail {

/// Turns until the slope of torque over angle has dropped.
inline bool turn_to_slope_drop(Turning& turning, double step, double share) {
  double greatest = 0;
  for (int i = 0; i < 20'000; ++i) {
    const double before = turning.torque();
    if (!turning.turn_to(turning.angle() + step)) return false;
    const double slope = turning.torque() - before;
    if (slope < share * greatest) return true;
    greatest = std::max(greatest, slope);
  }
  return false;
}

}  // namespace detail

/// Tightens, loosens and tightens again, with the same friction, until the plastic strain allowed is used up.
/// Friction of reused bolts drifts, and the nut and the threads are not looked at: a count is an upper bound. A bolt
/// that is necked, or was tightened past yield where its maker forbids reuse, is to be replaced whatever the count.
/// \return the tightenings allowed, or an error that names the argument at fault
inline Outcome<Reuse> try_reuse(const TurnedBolt& bolt, const BoltSteel& steel, const TurningFriction& friction,
                                const PastYield& how) {
  const Outcome<FlowCurve> flow = detail::check_turning(bolt, steel, friction);
  if (!flow) return flow.error();
  if (!is_not_negative(how.angle)) return refusal("angle_of_turn", how.angle, "but must be at least 0 deg");
  if (!is_not_negative(how.snug_torque)) return refusal("snug_torque", how.snug_torque, "but must be at least 0 N.m");
  if (!(how.strain_share > 0 && how.strain_share <= 1))
    return refusal("strain_share", how.strain_share, "but must lie above 0 and at most at 1");
  if (how.at_most < 1 || how.at_most > 10'000)
    return refusal("at_most", how.at_most, "but must lie between 1 and 10000");
  Turning turning(bolt, steel, friction);
  if (!turning.is_sound())
    return refusal("bolt_resilience", bolt.bolt_resilience, "but the plastic section alone stretches more");
  const double onset = detail::first_yield_preload(bolt, friction, flow->start());
  const double snug = turning.elastic_angle(how.snug_torque.si / turning.wrench_lever());
  const double step = turning.elastic_angle(onset) / 100;
  const double allowed = how.strain_share * steel.uniform_elongation;

  Reuse reuse;
  for (int i = 0; i < how.at_most; ++i) {
    if (how.angle.si > 0) {
      const double end = snug + how.angle.si;
      for (double at = step; at < end && turning.section().surface_strain() <= steel.uniform_elongation; at += step)
        if (!turning.turn_to(at)) return Error("angle_of_turn", "no equilibrium was found on the way");
      if (turning.section().surface_strain() <= allowed && !turning.turn_to(end))
        return Error("angle_of_turn", "no equilibrium was found on the way");
    } else if (!detail::turn_to_slope_drop(turning, step, how.slope_share)) {
      return Error("slope_share", "the slope does not drop so far; give a greater share");
    }
    const double used = turning.section().surface_strain();
    if (used > allowed) break;
    reuse.uses.push_back({Force(turning.preload()), used, Length(turning.lasting_stretch())});
    if (!turning.loosen()) return Error("preload", "no equilibrium was found on loosening");
  }
  reuse.unlimited = static_cast<int>(reuse.uses.size()) == how.at_most;
  reuse.single_use = reuse.uses.size() < 2 && !reuse.unlimited;
  return reuse;
}

/// \copydoc try_reuse
/// \throws Error  naming the argument, its value and the allowed range
inline Reuse reuse(const TurnedBolt& bolt, const BoltSteel& steel, const TurningFriction& friction,
                   const PastYield& how) {
  return try_reuse(bolt, steel, friction, how).value();
}

}  // namespace tauten::TAUTEN_ABI
