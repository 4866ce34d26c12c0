// The standing cautions: the same code and the same words in every answer that they apply to.
#pragma once

#include <array>
#include <cstddef>
#include <iterator>
#include <string_view>

#include "tauten/base/notice.hpp"

namespace tauten::TAUTEN_ABI {

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
inline constexpr Caution long_handle{"long_handle",
                                     "A pipe or a longer handle overloads ratchets, breaker bars and hinge handles as "
                                     "well, and they fail without warning: "
                                     "use a tool that is rated for the torque."};
inline constexpr Caution impact_sockets{
    "impact_sockets", "Use only impact-rated sockets, bits, extension bars and joints on impact tools; others burst."};
inline constexpr Caution pressurised_flange{
    "pressurised_flange",
    "A flange may hold pressure: isolate, drain, vent and prove zero first. Crack open the far side first, so that "
    "what is left "
    "blows away from you. Never tighten a leaking joint under pressure without an approved procedure."};
inline constexpr Caution suspended_load{
    "suspended_load", "A suspended load may drop when its bolts are turned: keep everyone out from under it."};
inline constexpr Caution bolt_axis{
    "bolt_axis", "A bolt under tension may break and fly along its axis: keep everyone out of line with it."};
inline constexpr Caution tool_bursts{
    "tool_bursts", "Sockets, bits and bars may burst under load: use sound tools within their rating."};
inline constexpr Caution lubricant_places{"lubricant_places",
                                          "Oil, paste and penetrating fluid ignite in oxygen service and spoil brake "
                                          "linings and electrical parts: keep them off."};
inline constexpr Caution hot_fumes{"hot_fumes",
                                   "Hot parts burn, and heated adhesive, zinc and cadmium give off poisonous fumes: "
                                   "ventilate, and use neither heat nor a dry "
                                   "brush on cadmium."};
inline constexpr Caution cutting{"cutting",
                                 "Cutting, grinding and drilling throw sparks, chips, dust and noise: protect eyes, "
                                 "ears and lungs, and keep a fire watch."};
inline constexpr Caution clicking_wrench{"clicking_wrench",
                                         "A clicking wrench may be damaged by loosening: use it only if its maker "
                                         "allows that, else a breaker bar, and watch its pull."};
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

inline constexpr const Caution* all[] = {
    &stored_energy,   &pressurised_flange, &suspended_load,   &bolt_axis,       &line_of_slip,   &eye_protection,
    &no_pipe,         &long_handle,        &tool_bursts,      &clicking_wrench, &impact_sockets, &lubricant_places,
    &heat_near,       &heat_after_fluid,   &fluid_after_heat, &hot_fumes,       &cold_burns,     &cutting,
    &replace_used_up, &no_release};

/// Their codes, without the texts, which a program that prints none does not carry then.
inline constexpr auto codes = [] {
  std::array<const char*, std::size(all)> list{};
  for (std::size_t i = 0; i < list.size(); ++i) list[i] = all[i]->code;
  return list;
}();

/// \return true if the code is one of these: a list of several answers prints it once
constexpr bool is_one(std::string_view code) noexcept {
  for (const char* one : codes)
    if (code == one) return true;
  return false;
}

}  // namespace cautions

}  // namespace tauten::TAUTEN_ABI
