// What bolts and clamped parts are made of, as far as stretch and warmth go.
#pragma once

#include <string_view>

#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shown_text.hpp"

namespace tauten {

using Expansion = Quantity<Dim::expansion>;

/// Elastic and thermal data of a material at room temperature.
struct Material {
  const char* name = "steel";
  Stress elastic_modulus{205e9};
  double poisson_ratio = 0.3;
  Expansion expansion{11.5e-6};

  template <class V>
  static void fields(V&& visit) {
    visit("name", &Material::name);
    visit("elastic_modulus", &Material::elastic_modulus);
    visit("poisson_ratio", &Material::poisson_ratio);
    visit("expansion", &Material::expansion);
  }
};

/// Ready-made materials. Figures: VDI 2230 Part 1:2003, Table A9, rounded, from memory.
namespace material {

inline constexpr Material steel{"steel", Stress(205e9), 0.30, Expansion(11.5e-6)};
inline constexpr Material stainless_steel{"austenitic steel", Stress(200e9), 0.30, Expansion(16.5e-6)};
inline constexpr Material grey_cast_iron{"grey cast iron", Stress(110e9), 0.24, Expansion(10.0e-6)};
inline constexpr Material ductile_iron{"ductile iron", Stress(170e9), 0.28, Expansion(11.0e-6)};
inline constexpr Material aluminium{"aluminium", Stress(70e9), 0.33, Expansion(23.5e-6)};

/// All of them, for look-up by name.
inline constexpr Material all[] = {steel, stainless_steel, grey_cast_iron, ductile_iron, aluminium};

inline constexpr Source source{"VDI 2230 Part 1:2003", "Table A9, rounded", Seen::memory};

}  // namespace material

/// \param name  "grey cast iron", also with dashes or underscores for the blanks
/// \return the material, or an error that lists the names
inline Outcome<Material> try_material(std::string_view name) {
  std::string word(name);
  for (char& c : word)
    if (c == '-' || c == '_') c = ' ';
  std::string known;
  for (const Material& of : material::all) {
    if (word == of.name) return of;
    known += (known.empty() ? "" : ", ") + std::string(of.name);
  }
  return detail::refuse("material", "material " + detail::shown(name) + " is not known; give one of " + known);
}

}  // namespace tauten
