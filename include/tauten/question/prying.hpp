// What prying leaves of the strength of bolts that pull off a plate, after AISC or as a T-stub of EN 1993-1-8.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/prying_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Strength of plate and bolts together, what gives way, and what thickness a pull needs.
/// \return the figures, or an error for a measure that is not above 0 or is missing, and for a pull beyond the bolts
Outcome<PlatePrying> try_plate_prying(const PryingJob& job);

/// \copydoc try_plate_prying
/// \throws Error  in place of returning one
PlatePrying plate_prying(const PryingJob& job);

/// The derivation of it.
Derivation derivation_of(const PryingJob& job, const PlatePrying& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/prying.hpp"
#endif
