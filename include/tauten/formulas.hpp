// The registry: every formula of the library, one line each.
#pragma once

#include "tauten/base/registry.hpp"
#include "tauten/friction/bearing.hpp"
#include "tauten/friction/measured_friction.hpp"
#include "tauten/friction/nut_factor.hpp"
#include "tauten/group/bolt_share.hpp"
#include "tauten/group/plate_bending.hpp"
#include "tauten/group/ring.hpp"
#include "tauten/joint/cone.hpp"
#include "tauten/joint/cone_angle.hpp"
#include "tauten/joint/load.hpp"
#include "tauten/joint/margin.hpp"
#include "tauten/joint/segment.hpp"
#include "tauten/joint/stiffness.hpp"
#include "tauten/loosening/bond.hpp"
#include "tauten/loosening/breakaway.hpp"
#include "tauten/loosening/heat.hpp"
#include "tauten/loosening/hexagon_drive.hpp"
#include "tauten/loosening/recess.hpp"
#include "tauten/loosening/rust.hpp"
#include "tauten/loosening/shear_before_free.hpp"
#include "tauten/loosening/torsion_capacity.hpp"
#include "tauten/method/scatter.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/part/strip.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/tightening/angle.hpp"
#include "tauten/tightening/effective_torque.hpp"
#include "tauten/tightening/loosening_torque.hpp"
#include "tauten/tightening/loss.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/stress.hpp"
#include "tauten/tightening/torque.hpp"
#include "tauten/tool/bar.hpp"
#include "tauten/tool/drive_strength.hpp"
#include "tauten/tool/multiplier.hpp"
#include "tauten/tool/offset.hpp"
#include "tauten/tool/offset_error.hpp"
#include "tauten/tool/twist.hpp"
#include "tauten/tool/universal_joint.hpp"

namespace tauten::TAUTEN_ABI {

inline constexpr Entry formulas[] = {
    entry_of(triangle_height),
    entry_of(pitch_diameter),
    entry_of(minor_diameter),
    entry_of(root_diameter),
    entry_of(minimum_root_diameter),
    entry_of(stress_diameter),
    entry_of(stress_area),
    entry_of(stress_area_unified),
    entry_of(lead_angle),
    entry_of(load_at_stress),
    entry_of(target_preload),
    entry_of(torsion_yield_torque),
    entry_of(torsion_plastic_torque),
    entry_of(breaking_torque),
    entry_of(external_strip_area),
    entry_of(internal_strip_area),
    entry_of(strip_strength_ratio),
    entry_of(nut_dilation_factor),
    entry_of(bolt_thread_bending_factor),
    entry_of(nut_thread_bending_factor),
    entry_of(strip_load),
    entry_of(needed_engagement),
    entry_of(bearing_pressure),
    entry_of(mean_bearing_diameter),
    entry_of(uniform_pressure_bearing_diameter),
    entry_of(thread_lever),
    entry_of(torque_lever),
    entry_of(nut_factor),
    entry_of(nut_factor_from_test),
    entry_of(total_friction),
    entry_of(thread_friction_from_test),
    entry_of(bearing_friction_from_test),
    entry_of(tightening_torque),
    entry_of(tightening_torque_exact),
    entry_of(preload_from_torque),
    entry_of(preload_from_torque_exact),
    entry_of(nut_factor_exact),
    entry_of(thread_torque),
    entry_of(thread_torque_exact),
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
    entry_of(effective_torque),
    entry_of(shank_torsion),
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
    entry_of(angle_from_preload),
    entry_of(preload_from_angle),
    entry_of(joint_rate_angle),
    entry_of(embedding_loss),
    entry_of(thermal_loss),
    entry_of(segment_resilience),
    entry_of(two_area_stiffness),
    entry_of(shank_twist),
    entry_of(cone_resilience),
    entry_of(sleeve_resilience),
    entry_of(frustum_stiffness),
    entry_of(cone_angle_through),
    entry_of(cone_angle_tapped),
    entry_of(exponential_stiffness),
    entry_of(layer_stiffness),
    entry_of(joint_constant),
    entry_of(load_factor),
    entry_of(service_bolt_load),
    entry_of(service_clamp_load),
    entry_of(separation_load),
    entry_of(service_stress),
    entry_of(yield_factor),
    entry_of(overload_factor),
    entry_of(separation_factor),
    // group
    entry_of(circle_from_chord),
    entry_of(passes_for_evenness),
    entry_of(group_bolt_load),
    entry_of(resultant_force),
    entry_of(principal_tension),
    entry_of(plate_plastic_moment),
    entry_of(no_prying_thickness),
    entry_of(prying_bending_share),
    entry_of(prying_strength_share),
    entry_of(edge_force),
    entry_of(tee_flange_strength),
    entry_of(tee_combined_strength),
    // tool
    entry_of(wrench_setting),
    entry_of(torque_at_fastener),
    entry_of(torque_with_support_hand),
    entry_of(setting_with_support_hand),
    entry_of(hand_shift_error),
    entry_of(extension_angle_error),
    entry_of(pull_angle_error),
    entry_of(square_bar_stiffness),
    entry_of(round_bar_stiffness),
    entry_of(hexagon_bar_stiffness),
    entry_of(bar_twist),
    entry_of(round_bar_twist),
    entry_of(series_stiffness),
    entry_of(fastener_angle),
    entry_of(handle_angle),
    entry_of(twist_energy),
    entry_of(blow_torque),
    entry_of(universal_joint_ratio),
    entry_of(universal_joint_least_ratio),
    entry_of(universal_joint_greatest_ratio),
    entry_of(universal_joint_bend),
    entry_of(multiplier_output),
    entry_of(multiplier_input),
    entry_of(multiplier_reaction),
    entry_of(reaction_force),
    entry_of(counter_hold_torque),
    entry_of(square_yield_torque),
    entry_of(square_plastic_torque),
    entry_of(hexagon_plastic_torque),
    entry_of(hexalobular_plastic_torque),
    entry_of(ring_test_torque),
    entry_of(open_end_test_torque),
    entry_of(hexagon_key_test_torque),
    entry_of(hexagon_key_strength),
    entry_of(breakaway_torque),
    entry_of(restart_torque),
    entry_of(bond_torque),
    entry_of(rust_torque),
    entry_of(rust_volume_ratio),
    entry_of(metal_loss),
    entry_of(rust_growth),
    entry_of(rust_interference),
    entry_of(rust_pressure),
    entry_of(flank_pressure),
    entry_of(corroded_breaking_torque),
    entry_of(partly_plastic_torque),
    entry_of(breaking_torque_under_tension),
    entry_of(shearing_torque_at_head),
    entry_of(flank_lever),
    entry_of(corner_play),
    entry_of(slipping_corner_loss),
    entry_of(twelve_point_slipping_corner_loss),
    entry_of(twelve_point_flank),
    entry_of(rounding_torque),
    entry_of(lobe_flank),
    entry_of(lobe_lever),
    entry_of(thermal_opening),
    entry_of(opening_temperature),
    entry_of(thermal_load_loss),
    entry_of(unloading_temperature),
    entry_of(shear_before_free_index),
};

/// A room of the library, and the first of its formulas in the list.
struct FormulaRoom {
  const char* name;
  const char* first;
};

inline constexpr FormulaRoom formula_rooms[] = {
    {"thread", TriangleHeight::name},        {"part", LoadAtStress::name},
    {"friction", MeanBearingDiameter::name}, {"tightening", TighteningTorque::name},
    {"joint", SegmentResilience::name},      {"group", CircleFromChord::name},
    {"tool", WrenchSetting::name},           {"loosening", BreakawayTorque::name}};

/// \param name  snake_case name of a formula
/// \return its entry, or nullptr if there is none of this name
constexpr const Entry* find_formula(const char* name) noexcept {
  for (const Entry& entry : formulas)
    if (same_text(entry.name, name)) return &entry;
  return nullptr;
}

}  // namespace tauten::TAUTEN_ABI
