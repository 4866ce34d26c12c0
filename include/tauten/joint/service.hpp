// What a joint in service bears, as answers hold it: loads, pressures, and the thread that holds the bolt.
#pragma once

#include <string>
#include <vector>

#include "tauten/base/band.hpp"

namespace tauten::TAUTEN_ABI {

/// A point of the diagram.
struct LoadPoint {
  Length extension{};
  Force load{};

  template <class V>
  static void fields(V&& visit) {
    visit("extension", &LoadPoint::extension);
    visit("load", &LoadPoint::load);
  }
};

/// The lines of the diagram. Extension counts from the bolt's own start; the clamped parts stand to the right of it.
struct LoadDiagram {
  std::vector<LoadPoint> bolt;   ///< from zero through the preload to the load in service
  std::vector<LoadPoint> parts;  ///< from the clamp load in service through the preload to zero
  Force working_load{};          ///< what acts from outside
  Force bolt_load{};             ///< on the bolt, in service
  Force clamp_load{};            ///< between the parts, in service; 0 once they have parted
  Force separation_load{};       ///< working load at which the parts just part
  double joint_constant = 0;     ///< share of the working load that reaches the bolt
  bool separated = false;        ///< the bolt carries the whole working load

  template <class V>
  static void fields(V&& visit) {
    visit("bolt", &LoadDiagram::bolt);
    visit("parts", &LoadDiagram::parts);
    visit("working_load", &LoadDiagram::working_load);
    visit("bolt_load", &LoadDiagram::bolt_load);
    visit("clamp_load", &LoadDiagram::clamp_load);
    visit("separation_load", &LoadDiagram::separation_load);
    visit("joint_constant", &LoadDiagram::joint_constant);
    visit("separated", &LoadDiagram::separated);
  }
};

/// Pressure on one layer.
struct FacePressure {
  const char* below = "";      ///< what presses: "head", "nut", "washer"
  std::string material;        ///< of the layer that is pressed
  Stress pressure{};           ///< at the typical highest load of the bolt
  Stress highest{};            ///< at the high end of it
  Stress limiting_pressure{};  ///< p_G of the material

  template <class V>
  static void fields(V&& visit) {
    visit("below", &FacePressure::below);
    visit("material", &FacePressure::material);
    visit("pressure", &FacePressure::pressure);
    visit("highest", &FacePressure::highest);
    visit("limiting_pressure", &FacePressure::limiting_pressure);
  }
};

/// A bolt beside the thread that holds it.
struct ThreadEngagement {
  std::string holder;         ///< "nut of class 8", "aluminium"
  Length engaged_length{};    ///< height of the nut, or how far the bolt reaches into the part
  Length needed_length{};     ///< from which on a strong bolt of the class breaks and no thread strips; 0 for a nut
  Band<Force> strip_load;     ///< low: 0.8 of a pitch at the ends carries nothing; nominal and high: all of it carries
  std::string strips;         ///< "bolt" or "part": whose thread strips first; "nut" for a nut by its proof load
  bool breaks_first = false;  ///< the bolt breaks before its thread strips

  template <class V>
  static void fields(V&& visit) {
    visit("holder", &ThreadEngagement::holder);
    visit("engaged_length", &ThreadEngagement::engaged_length);
    visit("needed_length", &ThreadEngagement::needed_length);
    visit("strip_load", &ThreadEngagement::strip_load);
    visit("strips", &ThreadEngagement::strips);
    visit("breaks_first", &ThreadEngagement::breaks_first);
  }
};

/// Loads in service. The bolt is looked at with the preload as tightened, for losses may be small; the clamp load with all
/// losses taken off. Each end of a band belongs to that end of the preload.
struct InService {
  Force working_load{};
  Band<Force> bolt_load;    ///< highest: before embedding and creep, with the gain by temperature and the working load
  Band<Force> clamp_load;   ///< after all losses and under the working load; 0 once the parts have separated
  Force separation_load{};  ///< working load that separates the parts, typical preload after all losses
  Force proof_load{};       ///< of the bolt at its temperature in service
  Force tensile_load{};     ///< the same, minimum load at which the bolt breaks
  double strength_share = 1;  ///< of the strength at room temperature

  template <class V>
  static void fields(V&& visit) {
    visit("working_load", &InService::working_load);
    visit("bolt_load", &InService::bolt_load);
    visit("clamp_load", &InService::clamp_load);
    visit("separation_load", &InService::separation_load);
    visit("proof_load", &InService::proof_load);
    visit("tensile_load", &InService::tensile_load);
    visit("strength_share", &InService::strength_share);
  }
};

}  // namespace tauten::TAUTEN_ABI
