// What bolts and clamped parts are made of, as far as stretch and warmth go.
#pragma once

#include <string_view>

#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shown_text.hpp"

namespace tauten::TAUTEN_ABI {

using Expansion = Quantity<Dim::expansion>;

/// Data of a material at room temperature: stiffness, expansion, and what its thread and its face bear.
struct Material {
  const char* name = "steel";
  Stress elastic_modulus{205e9};
  double poisson_ratio = 0.3;
  Expansion expansion{11.5e-6};
  Stress tensile_strength{340e6};   ///< R_m, least
  double shear_ratio = 0.6;         ///< shear strength over R_m
  Stress limiting_pressure{490e6};  ///< p_G, under a head or nut

  template <class V>
  static void fields(V&& visit) {
    visit("name", &Material::name);
    visit("elastic_modulus", &Material::elastic_modulus);
    visit("poisson_ratio", &Material::poisson_ratio);
    visit("expansion", &Material::expansion);
    visit("tensile_strength", &Material::tensile_strength);
    visit("shear_ratio", &Material::shear_ratio);
    visit("limiting_pressure", &Material::limiting_pressure);
  }
};

/// Ready-made materials. Stiffness and expansion: VDI 2230 Part 1:2003, Table A9, rounded, from memory. Tensile strength
/// and limiting pressure: the same table as reprinted; "steel" is S235JRG1, "aluminium" AW-6082 (F31), "cast aluminium"
/// GK-AlSi9Cu3, iron GJL-250 and GJS-400-15. Shear ratios from memory. The weakest common grade of a family stands for it.
namespace material {

inline constexpr Material steel{"steel", Stress(205e9), 0.30, Expansion(11.5e-6)};
inline constexpr Material stainless_steel{"austenitic steel", Stress(200e9), 0.30,         Expansion(16.5e-6),
                                          Stress(510e6),      0.80,          Stress(460e6)};
inline constexpr Material grey_cast_iron{"grey cast iron", Stress(110e9), 0.24,         Expansion(10.0e-6),
                                         Stress(250e6),    1.40,          Stress(900e6)};
inline constexpr Material ductile_iron{"ductile iron", Stress(170e9), 0.28,         Expansion(12.5e-6),
                                       Stress(400e6),  0.90,          Stress(700e6)};
inline constexpr Material aluminium{"aluminium",   Stress(70e9), 0.33,         Expansion(23.5e-6),
                                    Stress(290e6), 0.70,         Stress(260e6)};
/// The same, where it is known that it is no casting.
inline constexpr Material wrought_aluminium{
    "wrought aluminium",        aluminium.elastic_modulus, aluminium.poisson_ratio,    aluminium.expansion,
    aluminium.tensile_strength, aluminium.shear_ratio,     aluminium.limiting_pressure};
inline constexpr Material cast_aluminium{"cast aluminium", Stress(75e9), 0.33,         Expansion(21.0e-6),
                                         Stress(180e6),    0.70,         Stress(220e6)};
inline constexpr Material structural_steel{"steel S355",  Stress(205e9), 0.30,         Expansion(11.5e-6),
                                           Stress(510e6), 0.60,          Stress(760e6)};
inline constexpr Material tempered_steel{
    "quenched and tempered steel", Stress(205e9), 0.30, Expansion(11.5e-6), Stress(1000e6), 0.60, Stress(870e6)};
/// Plain washers of 200 HV: R_m by ISO 18265; the pressure of a steel as strong (judgement).
inline constexpr Material washer_steel{"washer steel", Stress(205e9), 0.30,         Expansion(11.5e-6),
                                       Stress(640e6),  0.60,          Stress(710e6)};

/// All of them, for look-up by name.
inline constexpr Material all[] = {steel,          stainless_steel,   grey_cast_iron, ductile_iron,
                                   aluminium,      wrought_aluminium, cast_aluminium, structural_steel,
                                   tempered_steel, washer_steel};

inline constexpr Source source{"VDI 2230 Part 1:2003", "Table A9, rounded", Seen::memory};

}  // namespace material

/// \param name  "grey cast iron", also with dashes or underscores for the blanks
/// \return the material, or an error that lists the names
inline Outcome<Material> try_material(std::string_view name) {
  std::string word(name);
  for (char& c : word)
    if (c == '-' || c == '_') c = ' ';
  if (word.ends_with("aluminum")) word.insert(word.size() - 2, "i");
  std::string known;
  for (const Material& of : material::all) {
    if (word == of.name) return of;
    known += (known.empty() ? "" : ", ") + std::string(of.name);
  }
  return detail::refuse("material", "material " + detail::shown(name) + " is not known; give one of " + known);
}

}  // namespace tauten::TAUTEN_ABI
