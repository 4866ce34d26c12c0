// A figure that rests on friction: never one bare number, always a band.
#pragma once

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// Low, nominal and high value of the same figure. `T` is a quantity or a plain number.
template <class T>
struct Band {
  T low{};
  T nominal{};
  T high{};

  /// Lists the members, for bindings and JSON.
  template <class V>
  static void fields(V&& visit) {
    visit("low", &Band::low);
    visit("nominal", &Band::nominal);
    visit("high", &Band::high);
  }
};

}  // namespace tauten::TAUTEN_ABI
