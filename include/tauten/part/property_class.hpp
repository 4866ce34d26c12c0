// Property classes of bolts: what 8.8, 10.9 and A2-70 stand for.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/part/property_class_table.hpp"

namespace tauten::TAUTEN_ABI {

using table::YieldKind;

/// Least mechanical properties of a property class at one diameter.
struct PropertyClass {
  std::string name;         ///< "10.9", "A2-70": also the mark on the head
  Stress tensile_strength;  ///< R_m, least
  Stress yield_strength;    ///< least; yield_kind says which figure
  YieldKind yield_kind;     ///< R_eL, R_p0.2 or R_pf
  Stress proof_stress;      ///< S_p
  bool proof_is_yield;      ///< the standard gives no proof stress; R_p0.2 stands in its place (austenitic steels)
  double elongation;        ///< elongation after fracture A, least, ratio; NaN where the standard gives none
  double torsion_ratio;     ///< breaking shear stress in torsion over R_m, X of ISO 898-7; NaN below class 8.8
  Seen torsion_ratio_seen;  ///< how it was seen
  double shear_ratio;       ///< shear strength over R_m; NaN where unknown
  Seen shear_ratio_seen;    ///< how it was seen
  bool stainless;           ///< austenitic stainless steel, A1 to A5
  bool withdrawn;           ///< no longer in the standard
  Length diameter_above;    ///< holds for nominal diameters above this one
  Length diameter_to;       ///< and up to this one
  std::string note;         ///< what limits the figures, "" for nothing
  Source source;            ///< document and table
  Seen seen;                ///< how the strengths were seen
};

namespace detail {

inline PropertyClass from_row(const table::PropertyClassRow& row) {
  const Source source = table::property_class_sources[row.source];
  return {row.name,
          Stress(row.tensile_strength),
          Stress(row.yield_strength),
          row.yield_kind,
          Stress(row.proof_stress),
          row.proof_is_yield,
          row.elongation,
          row.torsion_ratio,
          row.torsion_ratio_seen,
          row.shear_ratio,
          row.shear_ratio_seen,
          row.name[0] == 'A',
          row.withdrawn,
          Length(row.diameter_above),
          Length(row.diameter_to),
          row.note,
          source,
          source.seen};
}

inline Error unknown_class(std::string_view name) {
  std::string known;
  std::string last;
  for (const table::PropertyClassRow& row : table::property_classes) {
    if (last == row.name) continue;
    last = row.name;
    known += (known.empty() ? "" : ", ") + last;
  }
  return refuse("property_class", "property class " + shown(name) + " is unknown; the classes are " + known);
}

inline bool is_class_key(std::string_view key) {
  for (const table::PropertyClassRow& row : table::property_classes)
    if (name_key(row.name) == key) return true;
  return false;
}

/// \return the class as the table has it of one as people write it: 8.8., class 8.8, 10.9S; else the text in capitals
inline std::string class_key(std::string_view name) {
  std::string key = name_key(name);
  for (const std::string_view word : {"PROPERTY", "CLASS", "CL", "GRADE", "GR", "."})
    if (key.starts_with(word)) key.erase(0, word.size());
  while (key.ends_with('.')) key.pop_back();
  if (is_class_key(key)) return key;
  // The dot of a mark may be left out on the head (ISO 898-1, from memory): 88, 109.
  if (key.size() > 1 && key.find('.') == std::string::npos)
    if (const std::string dotted = key.substr(0, key.size() - 1) + "." + key.back(); is_class_key(dotted))
      return dotted;
  for (const std::string_view mark : {"S", "HV", "HR"})  // structural bolts
    if (const std::string plain = key.substr(0, key.size() - std::min(key.size(), mark.size()));
        key.ends_with(mark) && is_class_key(plain))
      return is_class_key(plain + "STRUCTURAL") ? plain + "STRUCTURAL" : plain;
  return name_key(name);
}

/// \return true for SAE J429 grades and ASTM marks, as in "grade 8" and "B7"
inline bool is_inch_grade(std::string_view name) {
  const std::string key = name_key(name);
  for (const std::string_view word : {"SAE", "ASTM", "J429", "GRADE", "GR."})
    if (key.starts_with(word)) return true;
  for (const std::string_view mark :
       {"B7", "B8", "B16", "L7", "A193", "A307", "A325", "A449", "A490", "GR2", "GR5", "GR8"})
    if (key.starts_with(mark)) return true;
  return false;
}

/// \return the refusal with what to do about an inch grade, and the choices where a stainless class lacks its strength
inline Error hinted_class(std::string_view name) {
  const std::string known = unknown_class(name).what(), key = name_key(name);
  if (is_inch_grade(name))
    return refuse("property_class",
                  known +
                      ". It is an inch grade: take torque and strength from its maker. If the thread is "
                      "metric, read the mark on the head again");
  if (is_class_key(key + "-50"))
    return refuse("property_class", known + ". " + key +
                                        " lacks its strength: read the number behind it on the head; " + key +
                                        "-70 is common, " + key + "-50 the weakest");
  return unknown_class(name);
}

}  // namespace detail

/// Looks up a property class.
/// \param name      "8.8", "10.9", "A2-70", "a4-80"; "8.8 structural" for structural bolts, whose size break differs. Also as
///                  people write it: "8.8.", "class 8.8", "10.9S"
/// \param diameter  nominal diameter of the thread; figures of class 8.8 depend on it. Without it (zero) the figures
///                  of the smallest sizes are given, which are the lower ones.
/// \return the class, or an error that lists the classes, or the sizes for which the class is given
inline Outcome<PropertyClass> try_property_class(std::string_view name, Length diameter = Length()) {
  const table::PropertyClassRow* last = nullptr;
  for (const bool as_written : {true, false}) {  // most names are those of the table
    const std::string key = as_written ? detail::name_key(name) : detail::class_key(name);
    for (const table::PropertyClassRow& row : table::property_classes) {
      if (detail::name_key(row.name) != key) continue;
      if (diameter.si == 0) return detail::from_row(row);
      if (diameter.si > row.diameter_above && diameter.si <= row.diameter_to + 1e-8) return detail::from_row(row);
      last = &row;
    }
    if (last) break;
  }
  if (!last) return detail::hinted_class(name);
  return detail::refuse("property_class", std::string("class ") + last->name + " is given for diameters up to " +
                                              detail::mm_text(last->diameter_to) + " mm, not for " +
                                              detail::mm_text(diameter.si) +
                                              " mm; take strengths of other sizes from the maker's certificate");
}

/// \copydoc try_property_class
/// \throws Error  in place of returning one
inline PropertyClass property_class(std::string_view name, Length diameter = Length()) {
  return try_property_class(name, diameter).value();
}

}  // namespace tauten::TAUTEN_ABI
