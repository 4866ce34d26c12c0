// Which pattern the holes of a joint are, how many ways round a part goes on, and which standard drillings it may be.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/pattern_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Names the pattern of measured holes.
/// \return the facts, or an error for fewer than two holes, two in one place, chords that close no ring, or a tolerance
///         that is not below half of the least distance of two holes
Outcome<PatternFacts> try_pattern_facts(const PatternJob& job);

/// \copydoc try_pattern_facts
/// \throws Error  in place of returning one
PatternFacts pattern_facts(const PatternJob& job);

/// All ways in which a part goes on other holes so that each bolt comes within the tolerance of its place.
/// \param flipped  the part is turned over first
Outcome<std::vector<PatternWay>> try_pattern_ways(const std::vector<Position>& part, const std::vector<Position>& on,
                                                  Length tolerance, bool flipped);

/// All ways in which the holes of the one with fewer of them come within the tolerance of some of the other's. None
/// where both have as many. A warning, never a permission: it is another joint.
/// \return ways of the part; a partner 0 is none
Outcome<std::vector<PatternWay>> try_partial_pattern_ways(const std::vector<Position>& part,
                                                          const std::vector<Position>& on, Length tolerance,
                                                          bool flipped);

/// The derivation of it.
Derivation derivation_of(const PatternJob& job, const PatternFacts& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/pattern.hpp"
#include "tauten/question/workings/pattern_derivation.hpp"
#endif
