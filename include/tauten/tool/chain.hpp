// Several offset extensions in a row, all in the plane of the wrench.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shop_text.hpp"

namespace tauten::TAUTEN_ABI {

/// One offset extension. The angle is measured from the wrench's own direction (hand to drive), not from the link
/// before; `links_from_bends` takes bends at each joint instead.
struct ExtensionLink {
  Length length{};
  Angle angle{};

  template <class V>
  static void fields(V&& visit) {
    visit("length", &ExtensionLink::length);
    visit("angle", &ExtensionLink::angle);
  }
};

/// Where a chain of extensions ends, seen from the wrench's drive. A chain acts as one extension from the drive to the
/// fastener; `length` and `angle` describe it.
struct ChainEnd {
  Length along;   ///< in the wrench's direction; negative if folded back
  Length across;  ///< square to it, positive to the side of positive angles
  Length length;
  Angle angle;

  template <class V>
  static void fields(V&& visit) {
    visit("along", &ChainEnd::along);
    visit("across", &ChainEnd::across);
    visit("length", &ChainEnd::length);
    visit("angle", &ChainEnd::angle);
  }
};

/// \param links  the extensions from the drive outward
/// \return where the chain ends, or an error that names the link
inline Outcome<ChainEnd> try_chain_end(const std::vector<ExtensionLink>& links) {
  constexpr double turn = 2 * pi_constant.value;
  double along = 0;
  double across = 0;
  int number = 0;
  for (const ExtensionLink& link : links) {
    const std::string which = "extension_" + std::to_string(++number);
    if (auto error = detail::outside((which + "_length").c_str(), link.length, {0, 5, true})) return *error;
    if (auto error = detail::outside((which + "_angle").c_str(), link.angle, {-turn, turn})) return *error;
    along += link.length.si * std::cos(link.angle.si);
    across += link.length.si * std::sin(link.angle.si);
  }
  return ChainEnd{Length(along), Length(across), Length(std::hypot(along, across)),
                  Angle(links.empty() ? 0 : std::atan2(across, along))};
}

/// \copydoc try_chain_end
/// \throws Error  instead of returning it
inline ChainEnd chain_end(const std::vector<ExtensionLink>& links) { return try_chain_end(links).value(); }

/// \param bends  extensions whose angle is the bend against the part before (the wrench for the first)
/// \return the same extensions with angles measured from the wrench's direction
inline std::vector<ExtensionLink> links_from_bends(std::vector<ExtensionLink> bends) {
  double heading = 0;
  for (ExtensionLink& link : bends) {
    heading = std::remainder(heading + link.angle.si, 2 * pi_constant.value);
    link.angle = Angle(heading);
  }
  return bends;
}

}  // namespace tauten::TAUTEN_ABI
