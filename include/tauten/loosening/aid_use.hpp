// Aids to release as they are used.
#pragma once

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// In the order in which they are tried.
enum class Aid : unsigned char { brush, fluid, tighten_first, impact, heat, cold, cooled, another_tool, cut };
template <>
struct Words<Aid> {
  static constexpr const char* list[] = {"brush", "fluid",  "tighten_first", "impact", "heat",
                                         "cold",  "cooled", "another_tool",  "cut"};
};

/// An aid as it is used.
struct AidUse {
  Aid aid = Aid::brush;
  double soak_hours = 0;                     ///< fluid: time it was left
  bool thin_fluid = false;                   ///< fluid: a thin solvent and oil mix, which creeps further
  Quantity<Dim::temperature> nut_rise{150};  ///< heat: of the nut above the room
  Quantity<Dim::temperature> bolt_rise{60};  ///< heat: of the bolt above the room; cold: how far it is chilled

  template <class V>
  static void fields(V&& visit) {
    visit("aid", &AidUse::aid);
    visit("soak_hours", &AidUse::soak_hours);
    visit("thin_fluid", &AidUse::thin_fluid);
    visit("nut_rise", &AidUse::nut_rise);
    visit("bolt_rise", &AidUse::bolt_rise);
  }
};

}  // namespace tauten::TAUTEN_ABI
