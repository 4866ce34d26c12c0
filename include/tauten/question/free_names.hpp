// What is read off a stuck fastener and its tool.
#pragma once

#include <optional>
#include <string>

#include "tauten/question/free_job.hpp"

namespace tauten::TAUTEN_ABI {

/// What is read off a stuck fastener and its tool. What is left out stands in the `FreeJob` as plain figures.
struct FreeNames {
  std::string thread{};          ///< designation, "M16"; else `diameter` and `pitch`
  std::string property_class{};  ///< mark on the head; else `tensile_strength` and `yield_strength`
  std::optional<Length>
      socket{};  ///< that fits; absent: `key`, `bit`, `width_across_flats` or the typical head of the thread
  std::optional<Length> key{};  ///< hexagon key that fits into the head
  std::optional<int> bit{};     ///< number of the six-lobed bit that fits into the head
  std::optional<DriveFit> drive{};
};

}  // namespace tauten::TAUTEN_ABI
