// How hot a stuck fastener may be made, and where no heat may go at all.
#pragma once

#include <optional>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

/// What is at and near the fastener.
struct HeatSurroundings {
  bool zinc_or_cadmium = false;    ///< coated with either
  bool adhesive = false;           ///< thread locked with an adhesive
  bool fire_or_burst = false;      ///< fuel, gas, oil, fluid lines, sealed cavities or springs under gas nearby
  bool rubber_or_plastic = false;  ///< within reach of the heat
  bool reused = false;             ///< the bolt is to be used again
  std::optional<bool>
      quenched{};          ///< and tempered, class 8.8 and above; absent: by the class, and if it is not known it is
  bool aluminium = false;  ///< the part around the thread is of aluminium
};

/// Room temperature from which rises are counted, degrees Celsius.
inline constexpr double room_celsius = 20;

/// The hard rules for heat on one job.
struct HeatLimit {
  bool allowed = true;                       ///< if not, `reasons` holds that one reason only
  Quantity<Dim::temperature> greatest_rise;  ///< above room temperature
  std::vector<Notice> reasons;
};

/// \return whether heat may be used, how far, and why not further
inline HeatLimit heat_limit(const HeatSurroundings& near) {
  // Where there is no heat at all, limits on how much would only hide that.
  if (near.fire_or_burst)
    return {false,
            Quantity<Dim::temperature>(0.0),
            {{"heat_forbidden",
              "No heat: fuel, gas, oil, fluid lines, a sealed cavity or a gas spring is near. It can burn or burst."}}};
  HeatLimit limit;
  double celsius = 600;
  const auto rule = [&](bool holds, double most, const char* code, const char* text, bool estimate) {
    if (!holds) return;
    celsius = most < celsius ? most : celsius;
    limit.reasons.push_back({code, text, estimate});
  };
  rule(near.quenched.value_or(true), 425, "heat_tempering",
       "Bolts of class 8.8 to 12.9 are tempered at 425 \u00b0C or above (ISO 898-1); more heat softens them for good.",
       false);
  rule(near.reused, 300, "heat_reuse",
       "Keep a bolt that will be used again below 300 \u00b0C. Replace any that has been red-hot.", true);
  rule(
      near.zinc_or_cadmium, 200, "heat_coating",
      "Above about 200 \u00b0C molten zinc or cadmium can crack the steel, and the fumes are poisonous: stay below it.",
      true);
  rule(near.aluminium, 150, "heat_aluminium",
       "Hardened aluminium alloys lose strength above about 150 \u00b0C: keep the part below it.", true);
  rule(near.rubber_or_plastic, 100, "heat_rubber",
       "Rubber or plastic within reach of the heat: keep it below 100 \u00b0C or take it away first.", true);
  limit.greatest_rise = Quantity<Dim::temperature>(celsius - room_celsius);
  if (near.adhesive && celsius >= 230)
    limit.reasons.push_back({"heat_adhesive", "The adhesive softens near 230 \u00b0C; turn while it is hot.", true});
  else if (near.adhesive)
    limit.reasons.push_back(
        {"heat_adhesive_not_reached", "The adhesive softens only near 230 \u00b0C, which is not allowed here.", true});
  return limit;
}

}  // namespace tauten::TAUTEN_ABI
