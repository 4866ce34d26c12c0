// Hexalobular internal drives: the six-lobed recess in a head, and the bit that fits, by number.
#pragma once

#include <optional>
#include <string>

#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/part/hexalobular_table.hpp"

namespace tauten::TAUTEN_ABI {

/// A six-lobed drive of ISO 10664.
struct HexalobularDrive {
  int number;             ///< of the drive, also that of the bit
  Length outer_diameter;  ///< A, over the lobes
  Length inner_diameter;  ///< B, between the lobes
  Source source;
  Seen inner_seen;  ///< how B was seen; A was seen in print
};

/// \return the six-lobed drive of this number, or nothing
constexpr std::optional<HexalobularDrive> find_hexalobular_drive(int number) noexcept {
  for (const table::HexalobularDrive& row : table::hexalobular_drives)
    if (row.number == number)
      return HexalobularDrive{row.number, Length(row.outer_diameter), Length(row.inner_diameter),
                              table::hexalobular_sources[row.source], row.inner_seen};
  return std::nullopt;
}

/// Looks up a six-lobed drive.
/// \param number  30 for that of an M6 screw of ISO 14579
/// \return its dimensions, or an error that lists the numbers
inline Outcome<HexalobularDrive> try_hexalobular_drive(int number) {
  if (const auto found = find_hexalobular_drive(number)) return *found;
  std::string known;
  for (const table::HexalobularDrive& row : table::hexalobular_drives)
    known += (known.empty() ? "" : ", ") + std::to_string(row.number);
  return detail::refuse("drive_number",
                        "drive_number " + std::to_string(number) + " is not in the tables; the numbers are " + known);
}

/// \copydoc try_hexalobular_drive
/// \throws Error  in place of returning one
inline HexalobularDrive hexalobular_drive(int number) { return try_hexalobular_drive(number).value(); }

}  // namespace tauten::TAUTEN_ABI
