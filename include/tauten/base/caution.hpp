// The standing cautions: the same code and the same words in every answer that they apply to.
#pragma once

#include <string_view>

#include "tauten/base/notice.hpp"

namespace tauten {

/// A caution of the trade, as data.
struct Caution {
  const char* code;
  const char* text;

  operator Notice() const { return {code, text}; }
};

namespace cautions {

inline constexpr Caution stored_energy{
    "stored_energy",
    "Support the load and unload the joint before loosening: it may hold energy in springs or pressure."};
inline constexpr Caution line_of_slip{
    "line_of_slip", "Keep everyone out of the path of a wrench, bar or extension that may slip. Pull, do not push."};
inline constexpr Caution eye_protection{"eye_protection", "Wear eye protection."};
inline constexpr Caution no_pipe{"no_pipe", "Do not put a pipe on the handle of a torque wrench."};
inline constexpr Caution impact_sockets{"impact_sockets", "Use only impact-rated sockets on impact tools."};
inline constexpr Caution heat_near{"heat_near",
                                   "No heat near fuel, gas, oil, brake fluid, gas springs, airbags, sealed cavities or "
                                   "rubber. Have an extinguisher at hand."};
inline constexpr Caution heat_after_fluid{
    "heat_after_fluid",
    "Heat after penetrating fluid: the fluid burns and its fumes harm. Let it dry off, wipe the rest away, take the "
    "can out of reach, air the place, and watch for fire while you work and afterwards. Heed the fluid's data sheet."};
inline constexpr Caution fluid_after_heat{
    "fluid_after_heat",
    "Fluid on a hot joint can flash into vapour or fire: let the joint cool to hand-warm before applying it."};
inline constexpr Caution cold_burns{
    "cold_burns",
    "Freezing sprays and dry ice burn skin and eyes and displace the air in a small room (suffocation); some sprays "
    "catch fire. Wear gloves and goggles, ventilate, and keep flames away."};
inline constexpr Caution replace_used_up{
    "replace_used_up",
    "Replace fasteners that were tightened past yield, torque-to-yield types, used-up locking elements, and any "
    "fastener that is necked or cracked or has been red-hot."};
inline constexpr Caution no_release{
    "no_release",
    "These are estimates and do not approve a joint for service; the manufacturer's manual, local codes and licensed "
    "professionals take precedence."};

inline constexpr const Caution* all[] = {&stored_energy,  &line_of_slip,    &eye_protection,   &no_pipe,
                                         &impact_sockets, &heat_near,       &heat_after_fluid, &fluid_after_heat,
                                         &cold_burns,     &replace_used_up, &no_release};

/// \return true if the code is one of these: a list of several answers prints it once
constexpr bool is_one(std::string_view code) noexcept {
  for (const Caution* caution : all)
    if (code == caution->code) return true;
  return false;
}

}  // namespace cautions

}  // namespace tauten
