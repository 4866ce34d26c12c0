// Plain washers of ISO 7089, ISO 7090 and ISO 7093-1.
#pragma once

#include <string>
#include <string_view>

#include "tauten/part/washer_table.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::TAUTEN_ABI {

/// A plain washer.
struct Washer {
  std::string standard;   ///< "ISO 7089"
  std::string form;       ///< "plain", "chamfered" or "large"
  std::string size;       ///< thread that it belongs to: "M10"
  Length inner_diameter;  ///< d_1, least
  Length outer_diameter;  ///< d_2, greatest
  Length thickness;       ///< h, nominal
  Source source;
  Seen seen;
};

/// Looks up a washer.
/// \param t         the thread; only its diameter counts
/// \param standard  "ISO 7089" (plain), "ISO 7090" (chamfered), "ISO 7093-1" (large)
/// \return the washer, or an error that names the standards, or the sizes that the standard has
inline Outcome<Washer> try_washer(const Thread& t, std::string_view standard = "ISO 7089") {
  const std::string key = detail::name_key(standard);
  const std::string size = t.size();
  const char* first = nullptr;
  const char* last = nullptr;
  for (const table::Washer& row : table::washers) {
    if (key != detail::name_key(row.standard)) continue;
    const Source source = table::washer_sources[row.source];
    if (size == row.thread_size)
      return Washer{
          row.standard,          row.form, row.thread_size, Length(row.inner_diameter), Length(row.outer_diameter),
          Length(row.thickness), source,   source.seen};
    if (!first) first = row.thread_size;
    last = row.thread_size;
  }
  if (!first)
    return detail::refuse("standard", "washer standard " + detail::shown(standard) +
                                          " is unknown; the standards are ISO 7089, ISO 7090 and ISO 7093-1");
  return detail::refuse(
      "thread", std::string(standard) + " has no washer for " + size + "; its sizes run from " + first + " to " + last);
}

/// \copydoc try_washer
/// \throws Error  in place of returning one
inline Washer washer(const Thread& t, std::string_view standard = "ISO 7089") {
  return try_washer(t, standard).value();
}

}  // namespace tauten::TAUTEN_ABI
