// Pressure under head, nut and washers against what the material below bears.
#pragma once

#include <algorithm>
#include <vector>

#include "tauten/joint/joint.hpp"
#include "tauten/joint/service.hpp"
#include "tauten/part/strip.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// A washer widens the face by 1.6 of its thickness. VDI 2230 Part 1:2003, from memory.
inline constexpr double washer_spread = 1.6;

/// The face on the layer `first`, and below it that of a washer on the layer `second`.
inline void add_pressures(std::vector<FacePressure>& list, const char* part, double face, const Layer& first,
                          const Layer* second, double load, double highest) {
  const auto add = [&](const char* below, double outer, const Layer& layer, double hole) {
    const double edge = std::min(outer, layer.outer_diameter.si);
    const double at = bearing_pressure.si(1.0, edge, hole);
    if (at > 0)
      list.push_back(
          {below, layer.material.name, Stress(at * load), Stress(at * highest), layer.material.limiting_pressure});
  };
  add(part, face, first, first.hole_diameter.si);
  if (!second || std::string_view(first.material.name) != material::washer_steel.name) return;
  const double spread = std::min(face + washer_spread * first.thickness.si, first.outer_diameter.si);
  add("washer", spread, *second, std::max(first.hole_diameter.si, second->hole_diameter.si));
}

}  // namespace detail

/// \param joint    from one of the builders
/// \param load     highest on the bolt, typical
/// \param highest  the same at its high end
/// \return the pressures from the turned face down
inline std::vector<FacePressure> face_pressures(const Joint& joint, Force load, Force highest) {
  std::vector<FacePressure> list;
  const std::vector<Layer>& layers = joint.layers;
  const bool more = layers.size() > 1;
  const bool nut_turned = joint.kind == JointKind::stud;
  detail::add_pressures(list, nut_turned ? "nut" : "head", joint.face_diameter.si, layers.front(),
                        more ? &layers[1] : nullptr, load.si, highest.si);
  if (joint.far_face_diameter.si > 0)
    detail::add_pressures(list, "nut", joint.far_face_diameter.si, layers.back(),
                          more ? &layers[layers.size() - 2] : nullptr, load.si, highest.si);
  return list;
}

}  // namespace tauten::TAUTEN_ABI
