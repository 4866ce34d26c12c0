// Strength of a hand.
#pragma once

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// Pull of one person standing and braced; half of all people manage less (judgement).
inline constexpr Force median_pull{350.0};

/// No bolt of the tables is tightened by more; a torque above it is a slip of the pen.
inline constexpr Torque greatest_tightening_torque{1e5};

}  // namespace tauten::TAUTEN_ABI
