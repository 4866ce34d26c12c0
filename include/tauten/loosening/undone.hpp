// What became of a fastener that was turned.
#pragma once

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten {

/// What became of one fastener. Only a freed one shows its breakaway torque; of the others it is known that it lies above
/// the torque that was reached.
struct Undone {
  enum class How : unsigned char { freed, sheared, rounded, not_moved };
  How how = How::freed;
  Torque torque;  ///< at which it happened, or the greatest that was tried

  template <class V>
  static void fields(V&& visit) {
    visit("how", &Undone::how);
    visit("torque", &Undone::torque);
  }
};
template <>
struct Words<Undone::How> {
  static constexpr const char* list[] = {"freed", "sheared", "rounded", "not_moved"};
};

}  // namespace tauten
