// The registry: every formula of the library, one line each.
#pragma once

#include "tauten/base/registry.hpp"
#include "tauten/friction/bearing.hpp"
#include "tauten/friction/nut_factor.hpp"
#include "tauten/friction/test.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/tightening/loosening_torque.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"
#include "tauten/tightening/scatter.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/stress.hpp"
#include "tauten/tightening/torque.hpp"

namespace tauten {

inline constexpr Entry formulas[] = {
    // thread
    entry_of(triangle_height),
    entry_of(pitch_diameter),
    entry_of(minor_diameter),
    entry_of(root_diameter),
    entry_of(minimum_root_diameter),
    entry_of(stress_diameter),
    entry_of(stress_area),
    entry_of(stress_area_unified),
    entry_of(lead_angle),
    // part
    entry_of(load_at_stress),
    entry_of(target_preload),
    entry_of(torsion_yield_torque),
    entry_of(torsion_plastic_torque),
    entry_of(breaking_torque),
    // friction
    entry_of(mean_bearing_diameter),
    entry_of(uniform_pressure_bearing_diameter),
    entry_of(thread_lever),
    entry_of(torque_lever),
    entry_of(nut_factor),
    entry_of(nut_factor_from_test),
    entry_of(total_friction),
    entry_of(thread_friction_from_test),
    entry_of(bearing_friction_from_test),
    // tightening
    entry_of(tightening_torque),
    entry_of(tightening_torque_exact),
    entry_of(preload_from_torque),
    entry_of(preload_from_torque_exact),
    entry_of(thread_torque),
    entry_of(bearing_torque),
    entry_of(loosening_torque),
    entry_of(loosening_torque_exact),
    entry_of(screw_torque),
    entry_of(screw_loosening_torque),
    entry_of(screw_efficiency),
    entry_of(pitch_share),
    entry_of(loosening_ratio),
    entry_of(preload_from_torque_pair),
    entry_of(torque_from_nut_factor),
    entry_of(preload_from_nut_factor),
    entry_of(preload_after_friction_change),
    entry_of(setting_with_prevailing),
    entry_of(assembly_preload),
    entry_of(assembly_preload_exact),
    entry_of(assembly_preload_elastic),
    entry_of(assembly_stress),
    entry_of(assembly_stress_elastic),
    entry_of(yield_utilisation),
    entry_of(yield_utilisation_elastic),
    entry_of(greatest_preload),
    entry_of(least_preload),
    entry_of(tightening_factor),
    entry_of(preload_after_relaxation),
};

/// \param name  snake_case name of a formula
/// \return its entry, or nullptr if there is none of this name
constexpr const Entry* find_formula(const char* name) noexcept {
  for (const Entry& entry : formulas)
    if (same_text(entry.name, name)) return &entry;
  return nullptr;
}

}  // namespace tauten
