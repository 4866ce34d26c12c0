// Values for examples of formulas: one M10 bolt of a pump foot in an irrigation pumping station. All are invented.
//
// They fit together, so that a call with all of them has a value. Command line, docstrings and pages take them from here.
#pragma once

#include <string_view>

#include "tauten/base/formula.hpp"

namespace tauten::shared {

struct Example {
  std::string_view name;
  const char* text;
};

inline constexpr Example examples[] = {
    // thread and part
    {"diameter", "10mm"},
    {"pitch", "1.5mm"},
    {"pitch_diameter", "9.026mm"},
    {"minimum_pitch_diameter", "8.862mm"},
    {"root_diameter", "8.16mm"},
    {"stress_diameter", "8.593mm"},
    {"core_diameter", "4mm"},
    {"flank_angle", "60deg"},
    {"stress_area", "58mm2"},
    {"area", "58mm2"},
    {"shank_area", "78.5mm2"},
    {"tensile_strength", "800MPa"},
    {"yield_strength", "640MPa"},
    {"proof_stress", "580MPa"},
    {"shear_strength", "480MPa"},
    {"stress", "580MPa"},
    {"elastic_modulus", "205GPa"},
    {"shear_modulus", "80GPa"},
    {"torsion_ratio", "0.84"},
    {"breaking_load", "46kN"},
    {"breaking_torque", "66N.m"},
    // friction and tightening
    {"torque", "48N.m"},
    {"preload", "28kN"},
    {"nut_factor", "0.16"},
    {"new_nut_factor", "0.14"},
    {"thread_torque", "24N.m"},
    {"bearing_torque", "21N.m"},
    {"prevailing_torque", "3N.m"},
    {"loosening_torque", "36N.m"},
    {"bearing_diameter", "12.8mm"},
    {"outer_diameter", "14.6mm"},
    {"inner_diameter", "11mm"},
    {"torque_lever", "1.8mm"},
    {"utilisation", "0.9"},
    {"share", "0.75"},
    {"scatter", "0.25"},
    {"relaxation", "0.1"},
    {"angle_of_turn", "60deg"},
    // joint
    {"grip_length", "40mm"},
    {"thickness", "20mm"},
    {"length", "40mm"},
    {"shank_length", "20mm"},
    {"thread_length", "20mm"},
    {"hole_diameter", "11mm"},
    {"face_diameter", "14.6mm"},
    {"plate_diameter", "30mm"},
    {"half_angle", "30deg"},
    {"bolt_resilience", "3.6um/kN"},
    {"plate_resilience", "0.8um/kN"},
    {"bolt_stiffness", "280kN/mm"},
    {"plate_stiffness", "1200kN/mm"},
    {"joint_constant", "0.19"},
    {"load_introduction", "0.5"},
    {"working_load", "6kN"},
    {"embedding", "0.008mm"},
    {"bolt_warming", "40K"},
    {"plate_warming", "60K"},
    {"temperature_difference", "60K"},
    {"expansion", "11.5um/m/K"},
    {"bolt_expansion", "11.5um/m/K"},
    {"plate_expansion", "11.5um/m/K"},
    {"fit_factor", "0.787"},
    {"fit_exponent", "0.629"},
    // tools
    {"wrench_length", "400mm"},
    {"extension_length", "100mm"},
    {"extension_angle", "30deg"},
    {"angle_shift", "5deg"},
    {"pull_angle", "5deg"},
    {"hand_shift", "20mm"},
    {"setting", "40N.m"},
    {"wrench_deviation", "0.04"},
    {"shank_torque", "1N.m"},
    {"support_share", "0.3"},
    {"side", "12.7mm"},
    {"bend_angle", "15deg"},
    {"rotation", "30deg"},
    {"variation", "0.03"},
    {"gear_ratio", "4"},
    {"efficiency", "0.9"},
    {"output_torque", "160N.m"},
    {"reaction_torque", "120N.m"},
    {"arm_length", "300mm"},
    {"snug_torque", "15N.m"},
    {"handle_angle", "90deg"},
    {"torsional_stiffness", "900N.m"},
    {"first_stiffness", "900N.m"},
    {"second_stiffness", "1500N.m"},
    {"width_across_flats", "16mm"},
    {"test_stress", "220MPa"},
    {"breaking_stress", "353MPa"},
    {"energy", "30J"},
    // loosening
    {"thread_growth", "1.6"},
    {"bearing_growth", "1.4"},
    {"bond_strength", "8MPa"},
    {"bond_torque", "12N.m"},
    {"rust_torque", "8N.m"},
    {"rust_pressure", "60MPa"},
    {"flank_factor", "1.25"},
    {"engaged_length", "8mm"},
    {"metal_loss", "0.1mm"},
    {"first_year_loss", "0.04mm"},
    {"years", "8"},
    {"volume_ratio", "2.5"},
    {"oxide_volume", "21"},
    {"iron_volume", "7.1"},
    {"iron_atoms", "1"},
    {"interference", "0.02mm"},
    {"rust_growth", "0.03mm"},
    {"flank_play", "0.02mm"},
    {"radial_pressure", "40MPa"},
    {"opening", "0.01mm"},
    {"stretch", "0.09mm"},
    {"remaining_stretch", "0.07mm"},
    {"drive_clearance", "0.1mm"},
    {"corner_loss", "0.3mm"},
    {"flank_lever", "4mm"},
    {"contact_length", "2mm"},
    {"contact_pressure", "900MPa"},
    {"corners", "6"},
    {"engaged_height", "6mm"},
    {"break_median", "75N.m"},
    {"break_variation", "0.1"},
    {"free_median", "60N.m"},
    {"free_variation", "0.3"},
};

/// \return how to write a value of an input; that of its dimension, if the input has none of its own
inline const char* example_of(const Arg& arg) noexcept {
  for (const Example& example : examples)
    if (example.name == arg.name) return example.text;
  return describe(arg.dimension).how_to_write;
}

}  // namespace tauten::shared
