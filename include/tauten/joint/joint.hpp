// A bolted joint as a value: a bolt in pieces and the layers that it clamps. `build.hpp` makes one.
#pragma once

#include <vector>

#include "tauten/joint/bolt.hpp"
#include "tauten/joint/kind.hpp"

namespace tauten::TAUTEN_ABI {

/// A clamped layer, washers included.
struct Layer {
  Length thickness{};
  Length outer_diameter{};  ///< of the part around this bolt; the distance to the next edge counts
  Material material = material::steel;
  Length hole_diameter{};  ///< 0: medium clearance hole of ISO 273, else 1.1 d

  template <class V>
  static void fields(V&& visit) {
    visit("thickness", &Layer::thickness);
    visit("outer_diameter", &Layer::outer_diameter);
    visit("material", &Layer::material);
    visit("hole_diameter", &Layer::hole_diameter);
  }
};

/// A bolt in pieces from head to nut, and the layers it clamps from the turned face down.
struct Joint {
  JointKind kind = JointKind::through_bolt;
  Length diameter{};
  Length pitch{};
  Length face_diameter{};      ///< bearing face on top of the first layer
  Length far_face_diameter{};  ///< bearing face below the last layer; 0 in a tapped hole
  std::vector<BoltSegment> segments;
  std::vector<Layer> layers;
  Material bolt_material = material::steel;

  /// Length between the bearing faces.
  Length grip() const noexcept {
    double sum = 0;
    for (const Layer& layer : layers) sum += layer.thickness.si;
    return Length(sum);
  }

  template <class V>
  static void fields(V&& visit) {
    visit("kind", &Joint::kind);
    visit("diameter", &Joint::diameter);
    visit("pitch", &Joint::pitch);
    visit("face_diameter", &Joint::face_diameter);
    visit("far_face_diameter", &Joint::far_face_diameter);
    visit("segments", &Joint::segments);
    visit("layers", &Joint::layers);
    visit("bolt_material", &Joint::bolt_material);
  }
};

}  // namespace tauten::TAUTEN_ABI
