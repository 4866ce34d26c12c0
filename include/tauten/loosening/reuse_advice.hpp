// What the way out means for the next tightening.
#pragma once

#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/notice.hpp"

namespace tauten::TAUTEN_ABI {

/// Advice for the next tightening.
struct AfterRelease {
  Band<double> nut_factor;     ///< to expect now
  Band<double> preload_ratio;  ///< preload over the intended one if the torque of the sheet is used all the same
  bool replace = false;        ///< the fastener must be replaced
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("nut_factor", &AfterRelease::nut_factor);
    visit("preload_ratio", &AfterRelease::preload_ratio);
    visit("replace", &AfterRelease::replace);
    visit("notices", &AfterRelease::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
