// How what became of a fastener and an aid that was used are written as one word.
#pragma once

#include "shared/keys.hpp"
#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/heat_limit.hpp"
#include "tauten/loosening/undone.hpp"

namespace tauten::shared {

/// \return whether the word says unmoved in the way of the chances, which speak of not moving
inline bool means_unmoved(std::string_view word) { return word == "not_moved" || word == "not-moved"; }

/// Reads freed:85N.m, or freed:85N.m:treated for one that had the aids that are named as done.
Problem read_undone(const char* key, std::string_view text, Undone& one);

/// Reads brush; fluid:24h or fluid:24h:thin; heat:150K, heat:150K:60K for nut and bolt; cold:30K for the bolt.
Problem read_aid(const char* key, std::string_view text, AidUse& use);

/// What of the surroundings limits heat, each a word.
inline constexpr const char* surroundings_words[] = {"fire_or_burst", "rubber_or_plastic", "zinc_or_cadmium",
                                                     "adhesive"};

/// Reads one such word; what was read before stays.
Problem read_surroundings(const char* key, std::string_view text, HeatSurroundings& surroundings);

}  // namespace tauten::shared
