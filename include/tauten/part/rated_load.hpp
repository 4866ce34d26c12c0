// Proof load and least tensile load of a bolt: as printed in the standard, else stress times nominal area.
#pragma once

#include <string>
#include <string_view>

#include "tauten/part/bolt_load_table.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::TAUTEN_ABI {

/// A load that a part must bear.
struct RatedLoad {
  Force value;
  bool printed;   ///< true: the figure that the standard prints; false: nominal area times the stress of the class
  Source source;  ///< of the printed figure, else of the stress
  Seen seen;      ///< how the figure, or the stress behind it, was seen
};

namespace detail {

enum class BoltRating : unsigned char { proof, tensile };

inline Outcome<RatedLoad> bolt_rating(const Thread& t, std::string_view name, BoltRating which) {
  const Outcome<PropertyClass> found = try_property_class(name, t.diameter);
  if (!found) return found.error();
  const std::string thread_name = t.name();
  for (const table::BoltLoad& row : table::bolt_loads) {
    if (thread_name != row.designation || found->name != row.property_class) continue;
    const double load = which == BoltRating::proof ? row.proof_load : row.tensile_load;
    const Seen seen = which == BoltRating::proof ? row.proof_load_seen : row.tensile_load_seen;
    // Rows that were only remembered are products already; the product below has more digits.
    if (load > 0 && seen < Seen::memory)
      return RatedLoad{Force(load), true, table::bolt_load_sources[row.source], seen};
  }
  const Stress stress = which == BoltRating::proof ? found->proof_stress : found->tensile_strength;
  return RatedLoad{Force(load_at_stress.si(t.nominal_stress_area().si, stress.si)), false, found->source, found->seen};
}

}  // namespace detail

/// Proof load of a bolt: it must bear this without lasting extension. For austenitic steel, which has no proof stress,
/// the load at R_p0.2.
/// \param t     the thread
/// \param name  property class, "8.8", "A2-70"
/// \return the load, or an error if the class is unknown or not given for this size
inline Outcome<RatedLoad> try_proof_load(const Thread& t, std::string_view name) {
  return detail::bolt_rating(t, name, detail::BoltRating::proof);
}

/// \copydoc try_proof_load
/// \throws Error  in place of returning one
inline RatedLoad proof_load(const Thread& t, std::string_view name) { return try_proof_load(t, name).value(); }

/// Least load at which a bolt may break in tension.
/// \param t     the thread
/// \param name  property class, "8.8", "A2-70"
/// \return the load, or an error if the class is unknown or not given for this size
inline Outcome<RatedLoad> try_tensile_load(const Thread& t, std::string_view name) {
  return detail::bolt_rating(t, name, detail::BoltRating::tensile);
}

/// \copydoc try_tensile_load
/// \throws Error  in place of returning one
inline RatedLoad tensile_load(const Thread& t, std::string_view name) { return try_tensile_load(t, name).value(); }

}  // namespace tauten::TAUTEN_ABI
