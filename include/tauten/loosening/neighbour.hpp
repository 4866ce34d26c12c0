// What became of a fastener that was turned.
#pragma once

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// What became of one fastener. Only a freed one shows its breakaway torque; of the others it is known that it lies above
/// the torque that was reached.
struct Neighbour {
  enum class How : unsigned char { freed, sheared, rounded, unmoved };
  How how = How::freed;
  Torque torque{};       ///< at which it happened, or the greatest that was tried
  bool treated = false;  ///< it had the aids that are named as done; else it was turned without them

  template <class V>
  static void fields(V&& visit) {
    visit("how", &Neighbour::how);
    visit("torque", &Neighbour::torque);
    visit("treated", &Neighbour::treated);
  }
};
template <>
struct Words<Neighbour::How> {
  static constexpr const char* list[] = {"freed", "sheared", "rounded", "unmoved"};
};

}  // namespace tauten::TAUTEN_ABI
