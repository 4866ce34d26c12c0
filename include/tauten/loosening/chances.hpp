// How a stuck fastener ends when it is pulled.
#pragma once

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// How the fastener ends when the torque grows up to a limit. The five chances add up to one.
struct Chances {
  Torque limit;
  double free = 0;        ///< comes loose
  double shear = 0;       ///< the bolt shears
  double round = 0;       ///< the corners or lobes of the drive give way
  double tool = 0;        ///< socket, key or square fails
  double not_moving = 0;  ///< nothing gives up to the limit, or up to what the arm can do

  template <class V>
  static void fields(V&& visit) {
    visit("limit", &Chances::limit);
    visit("free", &Chances::free);
    visit("shear", &Chances::shear);
    visit("round", &Chances::round);
    visit("tool", &Chances::tool);
    visit("not_moving", &Chances::not_moving);
  }
};

}  // namespace tauten::TAUTEN_ABI
