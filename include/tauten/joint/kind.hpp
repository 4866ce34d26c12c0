// Kinds of joints, and of models of what they clamp.
#pragma once

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// How the bolt is held at its far end.
enum class JointKind : unsigned char { through_bolt, tapped_hole, stud };
template <>
struct Words<JointKind> {
  static constexpr const char* list[] = {"through_bolt", "tapped_hole", "stud"};
};

using Compliance = Quantity<Dim::compliance>;

/// How the clamped layers are modelled. Ranges and errors are those of a comparison with finite elements over grips of
/// 0.5 to 10 diameters, bearing faces of 1.5 and 2 diameters and three pairs of materials; the page on resilience has it.
enum class PlateModel : unsigned char {
  chosen,            ///< deformation cone up to layers four faces wide and for tapped holes, frustum beyond
  deformation_cone,  ///< half angle by slenderness and width; -8 to +6 % for layers up to 3 faces wide
  frustum,           ///< 30 degrees; -6 to +11 % for layers 3 faces wide and more
  exponential        ///< -7 to +9 % for layers 5 faces wide and more, a face of 1.5 d, a grip of up to 2 d
};

template <>
struct Words<PlateModel> {
  static constexpr const char* list[] = {"chosen", "deformation_cone", "frustum", "exponential"};
};

}  // namespace tauten::TAUTEN_ABI
