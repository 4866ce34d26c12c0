// Strength of a hand.
#pragma once

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// Pull of one person standing and braced; half of all people manage less (judgement).
inline constexpr Force median_pull{350.0};

}  // namespace tauten::TAUTEN_ABI
