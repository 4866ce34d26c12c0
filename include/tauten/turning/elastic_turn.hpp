// Torque plus angle on an elastic joint: how far to turn from snug for a preload, and what a turn leaves.
#pragma once

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/turning/turning.hpp"

namespace tauten::TAUTEN_ABI {

/// A turn of the wrench from snug, and where it went.
struct Turn {
  Angle angle{};         ///< at the handle, from snug
  Angle clamping{};      ///< the part that stretches the joint
  Angle bolt_twist{};    ///< the part that twists the bolt; it springs back
  Angle tool_twist{};    ///< the part that twists the tool; it springs back
  Force snug_preload{};  ///< before the turn
  Force preload{};       ///< after the turn
  Torque torque{};       ///< at the end of the turn

  template <class V>
  static void fields(V&& visit) {
    visit("angle", &Turn::angle);
    visit("clamping", &Turn::clamping);
    visit("bolt_twist", &Turn::bolt_twist);
    visit("tool_twist", &Turn::tool_twist);
    visit("snug_preload", &Turn::snug_preload);
    visit("preload", &Turn::preload);
    visit("torque", &Turn::torque);
  }
};

namespace detail {

inline Turn turn_between(const TurnedBolt& bolt, const TurningFriction& friction, double tool_twist, double snug,
                         double end) noexcept {
  const double gain = end - snug;
  const double in_thread = ThreadIncline::lever(bolt.pitch.si, bolt.pitch_diameter.si, friction.thread);
  const double lever = in_thread + BearingTorque::eval(1.0, friction.bearing, friction.bearing_diameter.si);
  Turn turn;
  turn.clamping = Angle(AngleFromPreload::eval(gain, bolt.bolt_resilience.si, bolt.plate_resilience.si, bolt.pitch.si));
  turn.bolt_twist = Angle(gain * in_thread * bolt.twist_per_torque);
  turn.tool_twist = Angle(gain * lever * tool_twist);
  turn.angle = Angle(turn.clamping.si + turn.bolt_twist.si + turn.tool_twist.si);
  turn.snug_preload = Force(snug);
  turn.preload = Force(end);
  turn.torque = Torque(end * lever);
  return turn;
}

inline Outcome<double> snug_preload(const TurnedBolt& bolt, const TurningFriction& friction, Torque snug_torque,
                                    double tool_twist) {
  if (!is_positive(bolt.pitch)) return refusal("pitch", bolt.pitch, "but must be above 0 mm");
  if (!is_positive(bolt.bolt_resilience))
    return refusal("bolt_resilience", bolt.bolt_resilience, "but must be above 0 um/kN");
  if (!is_not_negative(bolt.plate_resilience))
    return refusal("plate_resilience", bolt.plate_resilience, "but must be at least 0 um/kN");
  if (!is_not_negative(snug_torque)) return refusal("snug_torque", snug_torque, "but must be at least 0 N.m");
  if (!(tool_twist >= 0)) return refusal("tool_twist", tool_twist, "but must be at least 0 rad per N.m");
  const double preload = preload_from_torque_exact.si(snug_torque.si, bolt.pitch.si, bolt.pitch_diameter.si,
                                                      friction.thread, friction.bearing, friction.bearing_diameter.si);
  if (!std::isfinite(preload))
    return refusal("thread_friction", friction.thread, "but no coefficient of friction may be below 0");
  return preload;
}

}  // namespace detail

/// How far to turn from snug for a preload.
/// \param bolt        of the joint
/// \param friction    it decides only what the snug torque leaves and how far bolt and tool twist
/// \param snug_torque at which all gaps are closed
/// \param preload     wanted, below yield
/// \param tool_twist  of everything between handle and fastener, rad per N.m
inline Outcome<Turn> try_turn_for_preload(const TurnedBolt& bolt, const TurningFriction& friction, Torque snug_torque,
                                          Force preload, double tool_twist = 0) {
  const Outcome<double> snug = detail::snug_preload(bolt, friction, snug_torque, tool_twist);
  if (!snug) return snug.error();
  if (!is_positive(preload)) return refusal("preload", preload, "but must be above 0 kN");
  if (*snug >= preload.si)
    return refusal("snug_torque", snug_torque,
                   "but already leaves more than the preload wanted; give a lower snug torque");
  return detail::turn_between(bolt, friction, tool_twist, *snug, preload.si);
}

/// What a turn from snug leaves, below yield; the inverse of `try_turn_for_preload`.
inline Outcome<Turn> try_preload_after_turn(const TurnedBolt& bolt, const TurningFriction& friction, Torque snug_torque,
                                            Angle angle, double tool_twist = 0) {
  const Outcome<double> snug = detail::snug_preload(bolt, friction, snug_torque, tool_twist);
  if (!snug) return snug.error();
  if (!is_not_negative(angle)) return refusal("angle_of_turn", angle, "but must be at least 0 deg");
  // The turn grows in proportion to the preload gained.
  const double per_newton = detail::turn_between(bolt, friction, tool_twist, *snug, *snug + 1).angle.si;
  return detail::turn_between(bolt, friction, tool_twist, *snug, *snug + angle.si / per_newton);
}

/// \copydoc try_turn_for_preload
/// \throws Error  naming the argument, its value and the allowed range
inline Turn turn_for_preload(const TurnedBolt& bolt, const TurningFriction& friction, Torque snug_torque, Force preload,
                             double tool_twist = 0) {
  return try_turn_for_preload(bolt, friction, snug_torque, preload, tool_twist).value();
}
/// \copydoc try_preload_after_turn
/// \throws Error  naming the argument, its value and the allowed range
inline Turn preload_after_turn(const TurnedBolt& bolt, const TurningFriction& friction, Torque snug_torque, Angle angle,
                               double tool_twist = 0) {
  return try_preload_after_turn(bolt, friction, snug_torque, angle, tool_twist).value();
}

/// What a turn leaves for low, nominal and high friction. High friction leaves the least preload, so the band of
/// preloads runs the other way: `low` comes from the high friction.
inline Outcome<Band<Turn>> try_preloads_after_turn(const TurnedBolt& bolt, const Band<TurningFriction>& friction,
                                                   Torque snug_torque, Angle angle, double tool_twist = 0) {
  const Outcome<Turn> low = try_preload_after_turn(bolt, friction.high, snug_torque, angle, tool_twist);
  if (!low) return low.error();
  const Outcome<Turn> nominal = try_preload_after_turn(bolt, friction.nominal, snug_torque, angle, tool_twist);
  if (!nominal) return nominal.error();
  const Outcome<Turn> high = try_preload_after_turn(bolt, friction.low, snug_torque, angle, tool_twist);
  if (!high) return high.error();
  return Band<Turn>{*low, *nominal, *high};
}

/// \copydoc try_preloads_after_turn
/// \throws Error  naming the argument, its value and the allowed range
inline Band<Turn> preloads_after_turn(const TurnedBolt& bolt, const Band<TurningFriction>& friction, Torque snug_torque,
                                      Angle angle, double tool_twist = 0) {
  return try_preloads_after_turn(bolt, friction, snug_torque, angle, tool_twist).value();
}

}  // namespace tauten::TAUTEN_ABI
