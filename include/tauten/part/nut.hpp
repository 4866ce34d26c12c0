// Nuts: their proof load, which class belongs to a bolt, and whether a nut gives way before its bolt.
#pragma once

#include <cstdlib>
#include <string>
#include <string_view>

#include "tauten/part/nut_table.hpp"
#include "tauten/part/rated_load.hpp"

namespace tauten::TAUTEN_ABI {

/// A bolt and a nut side by side.
struct NutPairing {
  std::string matching_class;   ///< lowest nut class that the standard pairs with the bolt
  RatedLoad nut_proof_load;     ///< what the nut bears
  RatedLoad bolt_proof_load;    ///< what the bolt bears
  RatedLoad bolt_tensile_load;  ///< least load at which the bolt breaks
  bool matched;                 ///< the standard allows the pair: with it the bolt breaks before the threads strip
  bool weaker;                  ///< the nut limits the joint: not matched, or its proof load lies below the bolt's
};

namespace detail {

/// ISO 898-2:1992 gives one proof stress per class for sizes above and up to these diameters.
inline constexpr double nut_size_steps[] = {0, 4e-3, 7e-3, 10e-3, 16e-3, 39e-3};

inline bool same_nut_step(double a, double b) {
  for (const double step : nut_size_steps)
    if ((a > step + 1e-8) != (b > step + 1e-8)) return false;
  return true;
}

/// "A2-70" and "70" name the same strength of stainless nuts.
inline std::string nut_key(std::string_view name) {
  std::string key = name_key(name);
  return key.starts_with('A') && key.find('-') != std::string::npos ? key.substr(key.find('-') + 1) : key;
}

inline const table::StainlessNut* stainless_nut(std::string_view name) {
  for (const table::StainlessNut& row : table::stainless_nuts)
    if (nut_key(name) == row.nut_class) return &row;
  return nullptr;
}

/// Regular nuts (style 1, then 2) come before thin ones (style 0).
inline bool before(int a, int b) { return (a + 2) % 3 < (b + 2) % 3; }

}  // namespace detail

/// Proof load of a nut. Printed for steel nuts with coarse thread; else nominal area times the proof stress of the
/// class. Fine threads are rated with the stress of coarse ones, which lies a little below their own (ISO 898-6, from
/// memory), and are marked as judgement.
/// \param t          the thread
/// \param nut_class  "8", "10"; "04" and "05" are thin nuts; "A2-70" or "70" is austenitic stainless steel
/// \param style      1 or 2 (the higher nut), 0 for thin; -1 takes the first that the standard has of 1, 2, 0
/// \return the load, or an error that names the classes
inline Outcome<RatedLoad> try_nut_proof_load(const Thread& t, std::string_view nut_class, int style = -1) {
  const double area = t.nominal_stress_area().si;
  if (const table::StainlessNut* nut = detail::stainless_nut(nut_class)) {
    const Source source = table::nut_sources[nut->source];
    return RatedLoad{Force(load_at_stress.si(area, double{nut->proof_stress})), false, source, source.seen};
  }
  const std::string key = detail::name_key(nut_class);
  const std::string name = t.name();
  const table::NutLoad* same_size = nullptr;
  const table::NutLoad* same_step = nullptr;
  for (const table::NutLoad& row : table::nut_loads) {
    if (key != row.nut_class || (style >= 0 && style != row.style)) continue;
    if (name == row.designation && (!same_size || detail::before(row.style, same_size->style))) same_size = &row;
    if (detail::same_nut_step(t.diameter.si, thread(row.designation).diameter.si) &&
        (!same_step || detail::before(row.style, same_step->style)))
      same_step = &row;
  }
  // A missing cell of style 1 goes before a printed cell of another style.
  if (same_size && !(same_step && detail::before(same_step->style, same_size->style))) {
    const Source source = table::nut_sources[same_size->source];
    return RatedLoad{Force(same_size->proof_load), source.seen < Seen::memory, source, source.seen};
  }
  if (same_step) {
    const Source source = table::nut_sources[same_step->source];
    return RatedLoad{Force(load_at_stress.si(area, double{same_step->proof_stress})), false, source,
                     t.coarse ? source.seen : Seen::judgement};
  }
  return detail::refuse("nut_class", "no proof stress is known for a nut of class " + detail::shown(nut_class) +
                                         " with thread " + name +
                                         "; the classes are 4, 5, 6, 8, 9, 10, 12, thin nuts 04 and 05, and stainless "
                                         "50, 70, 80, for threads up to M39");
}

/// \copydoc try_nut_proof_load
/// \throws Error  in place of returning one
inline RatedLoad nut_proof_load(const Thread& t, std::string_view nut_class, int style = -1) {
  return try_nut_proof_load(t, nut_class, style).value();
}

/// The lowest nut class that belongs to a bolt class; a higher one will do as well.
/// \param bolt_class  "8.8", "A2-70"
/// \return "8", "A2-70", or an error that lists the bolt classes
inline Outcome<std::string> try_matching_nut(std::string_view bolt_class) {
  const Outcome<PropertyClass> bolt = try_property_class(bolt_class);
  if (!bolt) return bolt.error();
  if (bolt->stainless) return bolt->name;
  const std::string plain = bolt->name.substr(0, bolt->name.find(' '));
  for (const table::NutMatch& row : table::nut_matches)
    if (plain == row.bolt_class) return std::string(row.nut_class);
  return detail::refuse("bolt_class", "ISO 898-2 pairs no nut with bolt class " + detail::shown(bolt_class) +
                                          ", which is withdrawn; take a nut of class 5 or higher");
}

/// \copydoc try_matching_nut
/// \throws Error  in place of returning one
inline std::string matching_nut(std::string_view bolt_class) { return try_matching_nut(bolt_class).value(); }

/// Is the nut weaker than the bolt? Within one family the classes decide, as the standard says; a steel bolt with a
/// stainless nut, or the other way round, matches if the nut's proof load reaches the load at which the bolt breaks.
/// \param t           the thread
/// \param bolt_class  "8.8", "A2-70"
/// \param nut_class   "8", "04", "A2-70"
/// \return the pair side by side, or the error of the part that is unknown
inline Outcome<NutPairing> try_nut_pairing(const Thread& t, std::string_view bolt_class, std::string_view nut_class) {
  const Outcome<std::string> matching = try_matching_nut(bolt_class);
  if (!matching) return matching.error();
  const Outcome<RatedLoad> nut = try_nut_proof_load(t, nut_class);
  if (!nut) return nut.error();
  const Outcome<RatedLoad> proof = try_proof_load(t, bolt_class);
  if (!proof) return proof.error();
  const Outcome<RatedLoad> tensile = try_tensile_load(t, bolt_class);
  if (!tensile) return tensile.error();

  const table::StainlessNut* needed = detail::stainless_nut(*matching);
  const table::StainlessNut* given = detail::stainless_nut(nut_class);
  const auto number = [](const std::string& key) { return std::atoi(key.c_str()); };
  bool matched = false;
  if ((needed != nullptr) != (given != nullptr))
    matched = nut->value.si >= tensile->value.si;
  else
    matched = !nut_class.starts_with('0') && number(detail::nut_key(nut_class)) >= number(detail::nut_key(*matching));
  return NutPairing{*matching, *nut, *proof, *tensile, matched, !matched || nut->value.si < proof->value.si};
}

/// \copydoc try_nut_pairing
/// \throws Error  in place of returning one
inline NutPairing nut_pairing(const Thread& t, std::string_view bolt_class, std::string_view nut_class) {
  return try_nut_pairing(t, bolt_class, nut_class).value();
}

}  // namespace tauten::TAUTEN_ABI
