// How what became of a fastener and an aid that was used are written as one word.
#pragma once

#include "shared/inputs.hpp"
#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/heat_limit.hpp"
#include "tauten/loosening/neighbour.hpp"

namespace tauten::shared {

/// freed:85N.m, or freed:85N.m:treated for one that had the aids that are named
template <>
struct Form<Neighbour> {
  static Problem read(const char* called, std::string_view text, Neighbour& one);
  static Problem check(const char*, const Neighbour&) { return {}; }  // the library does
};

/// Chances speak of not moving.
template <>
struct Aliases<Neighbour::How> {
  static constexpr std::pair<const char*, const char*> list[] = {{"not_moved", "unmoved"}};
};

/// brush; fluid:24h or fluid:24h:thin; heat:150K, heat:150K:60K for nut and bolt; cold:30K for the bolt
template <>
struct Form<AidUse> {
  static Problem read(const char* called, std::string_view text, AidUse& use);
  static Problem check(const char*, const AidUse&) { return {}; }  // the library does
};

/// What of the surroundings limits heat, each a word.
inline constexpr const char* surroundings_words[] = {"fire_or_burst", "rubber_or_plastic", "zinc_or_cadmium",
                                                     "adhesive"};

/// Reads one such word; what was read before stays.
Problem read_surroundings(const char* called, const Value& value, HeatSurroundings& surroundings);

}  // namespace tauten::shared
