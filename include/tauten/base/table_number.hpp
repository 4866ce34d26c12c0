// Numbers in the tables of the library.
#pragma once

#include <cstdint>

#include "tauten/base/source.hpp"

namespace tauten::TAUTEN_ABI {

/// A number of a table, kept as a whole number of a small unit: half the bytes of a double, and a quarter once it is packed.
/// It reads as the double nearest to what is printed, since both numbers of the quotient or product are exact.
/// \tparam of_si  how many of the small unit are one of SI
/// \tparam si     how many of SI are one of the unit; one of the two is 1
template <std::int32_t of_si, std::int32_t si>
struct TableNumber {
  std::int32_t whole;

  constexpr TableNumber(std::int32_t number) : whole(number) {}
  /// \return in SI; `absent` where the source gives no figure
  constexpr operator double() const noexcept { return whole == none ? absent : whole / double{of_si} * si; }

  static constexpr std::int32_t none = INT32_MIN;
};

using TableLength = TableNumber<1'000'000, 1>;  ///< in micrometres
using TableForce = TableNumber<1, 1>;           ///< in newtons
using TableStress = TableNumber<1, 1'000'000>;  ///< in megapascals

}  // namespace tauten::TAUTEN_ABI
