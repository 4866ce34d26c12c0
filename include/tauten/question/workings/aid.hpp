// Aids to release, and what each does to the inputs of the simulation.
#pragma once

#include <algorithm>

#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/heat.hpp"
#include "tauten/loosening/release_model.hpp"
#include "tauten/loosening/rust.hpp"
#include "tauten/part/hot_strength.hpp"
#include "tauten/question/workings/capacity.hpp"

namespace tauten::TAUTEN_ABI {

/// What an aid does: factors on the inputs, each with its scatter. All of it is judgement: no measurements were found.
struct AidEffect {
  Aid aid;
  const char* key;
  const char* what;
  Lognormal friction;  ///< of thread and face
  Lognormal bond;
  Lognormal rust;   ///< on the pressure of rust
  Lognormal drive;  ///< on what the corners take
  double minutes;
  int damage;  ///< 0 none, 1 marks, 2 the fastener may suffer, 3 neighbours may suffer, 4 it is destroyed
  const char* why;
};

inline constexpr Lognormal unchanged{1, 0};
inline constexpr AidEffect aid_effects[] = {
    {Aid::brush,
     "brush",
     "wire-brush the thread, pick the drive clean",
     {0.97, 0.05},
     {0.9, 0.1},
     unchanged,
     unchanged,
     5,
     0,
     "the exposed thread no longer jams the nut, the tool seats fully and fluid can get in"},
    {Aid::fluid,
     "fluid",
     "penetrating fluid, left to soak",
     {0.6, 0.5},
     {0.6, 0.5},
     unchanged,
     unchanged,
     0,
     0,
     "lowers friction and bond where it reaches; packed rust lets it in over hours, and it does not take the pressure "
     "of rust away"},
    {Aid::tighten_first,
     "tighten_first",
     "tighten a little first, then rock",
     {0.95, 0.05},
     {0.6, 0.4},
     unchanged,
     unchanged,
     3,
     1,
     "breaks the bond with the torque the bolt was once tightened with"},
    {Aid::impact,
     "impact",
     "short impacts with an impact-rated six-point socket",
     {0.75, 0.3},
     {0.6, 0.4},
     {0.8, 0.3},
     {0.9, 0.1},
     3,
     2,
     "short pulses shake the flanks; a springy extension spoils them, and corners suffer"},
    {Aid::heat,
     "heat",
     "heat the nut, turn while hot",
     {0.9, 0.2},
     {0.5, 0.4},
     unchanged,
     unchanged,
     20,
     3,
     "the nut opens, crushes the rust and cracks the bond; a warm bolt loses load"},
    {Aid::cold,
     "cold",
     "chill the bolt",
     unchanged,
     {0.8, 0.3},
     unchanged,
     unchanged,
     10,
     0,
     "the bolt shrinks in the nut and the bond cracks; it also pulls harder while it is cold"},
    {Aid::cooled, "cooled", "let it reach room temperature", unchanged, unchanged, unchanged, unchanged, 30, 0,
     "what heat or cold did is over"},
    {Aid::another_tool, "another_tool", "take a tool that holds better or reaches further", unchanged, unchanged,
     unchanged, unchanged, 10, 1, "a six-point socket, a larger square drive, and a longer bar or a multiplier"},
    {Aid::cut, "cut", "split the nut, cut or drill the bolt", unchanged, unchanged, unchanged, unchanged, 30, 4,
     "nothing else is left, or the rest would cost more"},
};

/// \return what is known of an aid
constexpr const AidEffect& aid_effect(Aid aid) noexcept { return aid_effects[static_cast<int>(aid)]; }

/// Median factor of penetrating fluid on friction and bond: towards 0.6, a thin mix towards 0.4, over about 8 hours.
inline double fluid_factor(double soak_hours, bool thin) noexcept {
  return 1 - (thin ? 0.6 : 0.4) * -std::expm1(-soak_hours / 8);
}

namespace detail {

inline constexpr double steel_expansion = 11.5e-6;  // 1/K, handbook value
inline constexpr double steel_modulus = 206e9;      // Pa, handbook value
/// Of the preload that a bolt between rigid parts would lose: they spring, and the far end of the bolt stays cooler
/// (judgement). What a chilled bolt gains is taken in full, to be on the safe side of its tension.
inline constexpr double load_lost_to_heat = 0.5;
inline constexpr double oiled_friction = 0.10;  // no fluid gets below the clean oiled state (from memory)

/// \return difference of temperature at which steel in steel would open as far
inline double opening_difference(const ReleaseModel& m, double nut_rise, double bolt_rise) noexcept {
  return std::max(0.0, nut_rise * m.nut_expansion / steel_expansion - bolt_rise);
}

/// Share of the rust pressure that a temperature difference leaves. Rust is softer than steel and has keyed into it, so
/// that three tenths stay even where the play has opened in full (judgement).
inline double rust_left(const ReleaseModel& m, double nut_rise, double bolt_rise) noexcept {
  const double difference = opening_difference(m, nut_rise, bolt_rise);
  if (!(m.rust_pressure > 0) || !(difference > 0)) return 1;
  const double opened = ThermalOpening::eval(steel_expansion, m.diameter, difference) / 2;
  const double radial = RustPressure::eval(opened, steel_modulus, m.diameter, m.nut_diameter);
  const double relief = FlankPressure::eval(radial, capacity_estimates.flank_factor) / m.rust_pressure;
  return 1 - 0.7 * std::min(1.0, relief);
}

/// Difference of temperature between nut and bolt for which the factors of heat are given, and of a chilled bolt for
/// those of cold.
inline constexpr double usual_heat = 90, usual_chill = 30;

/// \param effect  of a typical difference of temperature
/// \param share   of it that there is
/// \return the effect of that share: none of it without a difference
inline Lognormal scaled(const Lognormal& effect, double share) noexcept {
  return {std::pow(effect.median, share), effect.variation * std::min(share, 1.0)};
}

/// The model while nut and bolt are warmer or colder than the room.
/// \param room  the model at room temperature
inline ReleaseModel at_temperature(const ReleaseModel& room, double nut_rise, double bolt_rise, bool heated) {
  ReleaseModel m = room;
  m.as_learned = false;
  const AidEffect& effect = aid_effect(heated ? Aid::heat : Aid::cold);
  const double difference = opening_difference(m, nut_rise, bolt_rise);
  const double share = std::min(1.5, difference / (heated ? usual_heat : usual_chill));
  m.thread_growth = m.thread_growth * scaled(effect.friction, share);
  m.bearing_growth = m.bearing_growth * scaled(effect.friction, share);
  m.bond = m.bond * scaled(effect.bond, share);
  m.rust = m.rust * rust_left(m, nut_rise, bolt_rise);
  const double most = ThermalLoadLoss::eval(steel_expansion, steel_modulus, m.stress_area, bolt_rise);
  const double lost = (bolt_rise > 0 ? load_lost_to_heat : 1.0) * most;
  if (m.preload.median > 0) m.preload.median = std::max(0.0, m.preload.median - lost);
  const double strength = hot_strength(Quantity<Dim::temperature>(bolt_rise));
  m.shear = m.shear * strength;
  m.breaking_load *= strength;
  m.greatest_preload *= strength;
  m.nut_rise = nut_rise;
  m.bolt_rise = bolt_rise;
  m.room = std::make_shared<const ReleaseModel>(room);
  return m;
}

}  // namespace detail

/// An aid acts on the joint as it is then. Heat and cold last until it is let cool, or until fluid goes on, which must
/// wait for that; what a heat has cracked for good is not known and is taken as nothing. Heat sets the temperature of
/// nut and bolt, cold lowers that of the bolt.
/// \param thread_friction, bearing_friction  of the clean joint
/// \return the model after the aid
inline ReleaseModel with_aid(ReleaseModel m, const AidUse& use, double thread_friction, double bearing_friction) {
  m.as_learned = false;
  if (use.aid == Aid::heat || use.aid == Aid::cold) {
    const bool hot = use.aid == Aid::heat;
    const ReleaseModel room = m.room ? *m.room : m;
    // The bolt is heated through the nut.
    return hot ? detail::at_temperature(room, use.nut_rise.si, std::min(use.bolt_rise.si, use.nut_rise.si), true)
               : detail::at_temperature(room, m.nut_rise, m.bolt_rise - use.bolt_rise.si, m.nut_rise > 0);
  }
  if (m.room && (use.aid == Aid::cooled || use.aid == Aid::fluid)) m = ReleaseModel(*m.room);
  if (m.room) {
    const bool heated = m.nut_rise > 0;
    return detail::at_temperature(with_aid(*m.room, use, thread_friction, bearing_friction), m.nut_rise, m.bolt_rise,
                                  heated);
  }
  const AidEffect& effect = aid_effect(use.aid);
  Lognormal friction = effect.friction, bond = effect.bond;
  if (use.aid == Aid::fluid) {
    const double factor = fluid_factor(use.soak_hours, use.thin_fluid);
    friction.median = bond.median = factor;
    // A fluid that has reached nothing yet scatters nothing.
    friction.variation = bond.variation = effect.friction.variation * (1 - factor) / 0.4;
    friction.variation = bond.variation = std::min(friction.variation, effect.friction.variation);
    m.thread_floor = std::min(1.0, detail::oiled_friction / thread_friction);
    m.bearing_floor = std::min(1.0, detail::oiled_friction / bearing_friction);
  }
  m.thread_growth = m.thread_growth * friction;
  m.bearing_growth = m.bearing_growth * friction;
  m.bond = m.bond * bond;
  m.rust = m.rust * effect.rust;
  m.drive = m.drive.median < never_reached.median ? m.drive * effect.drive : m.drive;
  return m;
}

}  // namespace tauten::TAUTEN_ABI
