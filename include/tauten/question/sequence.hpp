// In which order, in which passes and to which torques a joint is tightened, and in which order it is undone.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/sequence_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Plans the tightening and undoing of a joint.
/// \return the plan, or an error for an order that does not name each bolt once, shares that fall or exceed the torque
///         without `most`, or flexibilities that are not positive definite
Outcome<TighteningSequence> try_tightening_sequence(const SequenceJob& job);

/// \copydoc try_tightening_sequence
/// \throws Error  in place of returning one
TighteningSequence tightening_sequence(const SequenceJob& job);

/// The derivation of it.
Derivation derivation_of(const SequenceJob& job, const TighteningSequence& answer);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/sequence.hpp"
#include "tauten/question/workings/sequence_derivation.hpp"
#endif
