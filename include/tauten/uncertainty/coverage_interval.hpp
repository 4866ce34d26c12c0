// What a stated share of all values lies between.
#pragma once

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// The ends between which a stated share of all values lies.
struct CoverageInterval {
  double low = 0;
  double high = 0;

  template <class V>
  static void fields(V&& visit) {
    visit("low", &CoverageInterval::low);
    visit("high", &CoverageInterval::high);
  }
};

}  // namespace tauten::TAUTEN_ABI
