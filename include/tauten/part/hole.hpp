// Clearance holes of ISO 273.
#pragma once

#include <string>

#include "tauten/part/hole_table.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::TAUTEN_ABI {

/// The three series of ISO 273. Medium is the typical one.
enum class HoleSeries : unsigned char { fine, medium, coarse };

/// A clearance hole.
struct ClearanceHole {
  Length diameter;
  HoleSeries series;
  Source source;
  Seen seen;
};

/// Diameter of the clearance hole for a thread.
/// \param t       the thread; only its diameter counts
/// \param series  fine, medium or coarse
/// \return the hole, or an error that names the nearest size that ISO 273 has
inline Outcome<ClearanceHole> try_clearance_hole(const Thread& t, HoleSeries series = HoleSeries::medium) {
  const std::string size = t.size();
  for (const table::ClearanceHole& row : table::clearance_holes) {
    const Source source = table::hole_sources[row.source];
    const Seen seen = series == HoleSeries::coarse ? detail::weaker(source.seen, row.coarse_seen) : source.seen;
    if (size == row.thread_size)
      return ClearanceHole{Length(series == HoleSeries::fine     ? row.fine
                                  : series == HoleSeries::medium ? row.medium
                                                                 : row.coarse),
                           series, source, seen};
  }
  std::string nearest;
  double gap = 1;
  for (const table::ClearanceHole& row : table::clearance_holes)
    if (const double apart = std::fabs(thread(row.thread_size).diameter.si - t.diameter.si); apart < gap) {
      gap = apart;
      nearest = row.thread_size;
    }
  return detail::refuse("thread", "ISO 273 has no clearance hole for " + size + "; the nearest size is " + nearest +
                                      "; give the diameter of the hole as measured");
}

/// \copydoc try_clearance_hole
/// \throws Error  in place of returning one
inline ClearanceHole clearance_hole(const Thread& t, HoleSeries series = HoleSeries::medium) {
  return try_clearance_hole(t, series).value();
}

}  // namespace tauten::TAUTEN_ABI
