// Which fastener is this? Candidates for the socket, key or bit that fits.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/question/identify_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// Finds the fasteners that a socket, spanner or hexagon key fits.
/// \param width_across_flats  width of the tool, or of the head as measured; above 0 and at most 200 mm
/// \param options             what else is known
/// \return candidates, the most likely first; or an error for a width out of range, or one that fits nothing, which
///         names the nearest widths
Outcome<std::vector<Candidate>> try_identify(Length width_across_flats, const IdentifyOptions& options = {});

/// \copydoc try_identify
/// \throws Error  in place of returning one
std::vector<Candidate> identify(Length width_across_flats, const IdentifyOptions& options = {});

/// Finds the fasteners that a six-lobed bit fits (ISO 10664).
/// \param number  drive number: 30 for the bit of an M6 screw
/// \return candidates, the most likely first, or an error that lists the numbers
Outcome<std::vector<Candidate>> try_identify_drive_number(int number);

/// \copydoc try_identify_drive_number
/// \throws Error  in place of returning one
std::vector<Candidate> identify_drive_number(int number);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/identify.hpp"
#endif
