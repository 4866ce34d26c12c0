// The words of the library: every argument name with its symbol and dimension.
//
// A formula may use a new word without touching this list. Listing it here makes the compiler name the argument when a
// wrong dimension is passed, and puts the word into the nomenclature page. A test compares list and formulas.
#pragma once

#include "tauten/base/dimension.hpp"

// Words: name, symbol, dimension.
#define TAUTEN_VOCABULARY(WORD)                   \
  WORD(angle_of_turn, "theta", angle)             \
  WORD(angle_shift, "delta_a", angle)             \
  WORD(area, "A", area)                           \
  WORD(arm_length, "l_R", length)                 \
  WORD(bearing_diameter, "D_Km", length)          \
  WORD(bearing_friction, "mu_K", number)          \
  WORD(bearing_growth, "f_b", number)             \
  WORD(bearing_torque, "M_K", torque)             \
  WORD(bend_angle, "beta", angle)                 \
  WORD(bending_factor, "C_3", number)             \
  WORD(bending_share, "alpha", number)            \
  WORD(bolt_count, "n_b", number)                 \
  WORD(bolt_expansion, "alpha_S", expansion)      \
  WORD(bolt_lever, "b_1", length)                 \
  WORD(bolt_resilience, "delta_S", compliance)    \
  WORD(bolt_stiffness, "k_b", stiffness)          \
  WORD(bolt_warming, "T_S", temperature)          \
  WORD(bond_strength, "tau_B", stress)            \
  WORD(bond_torque, "T_bond", torque)             \
  WORD(break_median, "m_B", torque)               \
  WORD(break_variation, "V_B", number)            \
  WORD(breaking_load, "F_m", force)               \
  WORD(breaking_torque, "M_B", torque)            \
  WORD(chord, "c", length)                        \
  WORD(contact_length, "l_c", length)             \
  WORD(contact_pressure, "p_c", stress)           \
  WORD(core_diameter, "d_c", length)              \
  WORD(corner_loss, "w", length)                  \
  WORD(corners, "n_c", number)                    \
  WORD(diameter, "d", length)                     \
  WORD(dilation_factor, "C_1", number)            \
  WORD(drive_clearance, "D", length)              \
  WORD(edge_distance, "n", length)                \
  WORD(edge_lever, "a_1", length)                 \
  WORD(efficiency, "eta", number)                 \
  WORD(elastic_modulus, "E", stress)              \
  WORD(embedding, "f_Z", length)                  \
  WORD(energy, "U", energy)                       \
  WORD(engaged_height, "h", length)               \
  WORD(engaged_length, "L_e", length)             \
  WORD(expansion, "alpha_T", expansion)           \
  WORD(extension_angle, "alpha", angle)           \
  WORD(extension_length, "E", length)             \
  WORD(external_area, "A_SG", area)               \
  WORD(external_shear_strength, "tau_BS", stress) \
  WORD(face_diameter, "d_w", length)              \
  WORD(first_layer, "k_1", stiffness)             \
  WORD(first_stiffness, "c_1", torque)            \
  WORD(first_year_loss, "r_corr", length)         \
  WORD(fit_exponent, "B_f", number)               \
  WORD(fit_factor, "A_f", number)                 \
  WORD(flank_angle, "alpha", angle)               \
  WORD(flank_factor, "k_A", number)               \
  WORD(flank_lever, "a", length)                  \
  WORD(flank_play, "j_F", length)                 \
  WORD(force_x, "F_x", force)                     \
  WORD(force_y, "F_y", force)                     \
  WORD(fourth_layer, "k_4", stiffness)            \
  WORD(free_median, "m_F", torque)                \
  WORD(free_variation, "V_F", number)             \
  WORD(gear_ratio, "i", number)                   \
  WORD(grip_length, "l_K", length)                \
  WORD(half_angle, "phi_D", angle)                \
  WORD(hand_shift, "dL", length)                  \
  WORD(handle_angle, "theta_h", angle)            \
  WORD(hole_diameter, "d_h", length)              \
  WORD(inner_diameter, "d_i", length)             \
  WORD(interference, "u", length)                 \
  WORD(internal_area, "A_SGM", area)              \
  WORD(internal_shear_strength, "tau_BM", stress) \
  WORD(iron_atoms, "z", number)                   \
  WORD(iron_volume, "V_Fe", number)               \
  WORD(joint_constant, "C", number)               \
  WORD(length, "l", length)                       \
  WORD(lever_ratio, "rho", number)                \
  WORD(load, "F", force)                          \
  WORD(load_introduction, "n", number)            \
  WORD(loosening_torque, "M_L", torque)           \
  WORD(metal_loss, "x", length)                   \
  WORD(minimum_pitch_diameter, "d_2min", length)  \
  WORD(minor_diameter, "D_1", length)             \
  WORD(moment, "M", torque)                       \
  WORD(moment_arm, "c", length)                   \
  WORD(neighbour_loss, "c_n", number)             \
  WORD(net_share, "delta", number)                \
  WORD(new_nut_factor, "K_new", number)           \
  WORD(new_preload, "F_new", force)               \
  WORD(no_prying_thickness, "t_c", length)        \
  WORD(nut_factor, "K", number)                   \
  WORD(nut_pitch_diameter, "D_2", length)         \
  WORD(opening, "u", length)                      \
  WORD(outer_diameter, "d_a", length)             \
  WORD(output_torque, "M_2", torque)              \
  WORD(oxide_volume, "V_ox", number)              \
  WORD(pitch, "P", length)                        \
  WORD(pitch_diameter, "d_2", length)             \
  WORD(plastic_moment, "M_pl", torque)            \
  WORD(plate_diameter, "D_A", length)             \
  WORD(plate_expansion, "alpha_P", expansion)     \
  WORD(plate_resilience, "delta_P", compliance)   \
  WORD(plate_stiffness, "k_m", stiffness)         \
  WORD(plate_warming, "T_P", temperature)         \
  WORD(preload, "F_M", force)                     \
  WORD(prevailing_torque, "M_P", torque)          \
  WORD(proof_stress, "S_p", stress)               \
  WORD(pull_angle, "delta", angle)                \
  WORD(radial_pressure, "p_r", stress)            \
  WORD(reaction_torque, "M_R", torque)            \
  WORD(relaxation, "r", number)                   \
  WORD(remaining_stretch, "f_r", length)          \
  WORD(root_diameter, "d_3", length)              \
  WORD(rotation, "theta", angle)                  \
  WORD(rust_growth, "s_R", length)                \
  WORD(rust_pressure, "p_R", stress)              \
  WORD(rust_torque, "T_press", torque)            \
  WORD(scatter, "s", number)                      \
  WORD(second_layer, "k_2", stiffness)            \
  WORD(second_stiffness, "c_2", torque)           \
  WORD(setting, "M_S", torque)                    \
  WORD(shank_area, "A_d", area)                   \
  WORD(shank_length, "l_d", length)               \
  WORD(shank_torque, "M_D", torque)               \
  WORD(share, "x", number)                        \
  WORD(shear, "V", force)                         \
  WORD(shear_modulus, "G", stress)                \
  WORD(shear_strength, "tau_u", stress)           \
  WORD(shortfall, "e_F", number)                  \
  WORD(side, "a", length)                         \
  WORD(snug_torque, "M_0", torque)                \
  WORD(spaces, "k", number)                       \
  WORD(square_sum, "J", area)                     \
  WORD(strength_ratio, "R_S", number)             \
  WORD(stress, "S", stress)                       \
  WORD(stress_area, "A_s", area)                  \
  WORD(stress_diameter, "d_s", length)            \
  WORD(stretch, "f", length)                      \
  WORD(strip_area, "A_SG", area)                  \
  WORD(support_share, "q", number)                \
  WORD(temperature_difference, "dT", temperature) \
  WORD(tensile_strength, "R_m", stress)           \
  WORD(tension, "T", force)                       \
  WORD(test_stress, "k", stress)                  \
  WORD(breaking_stress, "k_B", stress)            \
  WORD(thickness, "t", length)                    \
  WORD(third_layer, "k_3", stiffness)             \
  WORD(thread_friction, "mu_G", number)           \
  WORD(thread_growth, "f_t", number)              \
  WORD(thread_length, "l_t", length)              \
  WORD(thread_torque, "M_G", torque)              \
  WORD(torque, "M_A", torque)                     \
  WORD(torque_lever, "a", length)                 \
  WORD(torsion_ratio, "X", number)                \
  WORD(torsional_stiffness, "c_T", torque)        \
  WORD(utilisation, "nu", number)                 \
  WORD(variation, "v", number)                    \
  WORD(volume_ratio, "n", number)                 \
  WORD(washer_share, "e_w", length)               \
  WORD(web_distance, "m", length)                 \
  WORD(width_across_flats, "s", length)           \
  WORD(width_ratio, "s_d", number)                \
  WORD(working_load, "F_A", force)                \
  WORD(wrench_deviation, "e_W", number)           \
  WORD(wrench_length, "L", length)                \
  WORD(years, "t", number)                        \
  WORD(yield_strength, "R_p0.2", stress)

namespace tauten::TAUTEN_ABI {

enum class Word : unsigned char {
  unlisted,
#define TAUTEN_WORD(name, symbol, dimension) name,
  TAUTEN_VOCABULARY(TAUTEN_WORD)
#undef TAUTEN_WORD
};

/// One line of the nomenclature.
struct Term {
  const char* name;
  const char* symbol;
  Dim dimension;
};

inline constexpr Term vocabulary[] = {
#define TAUTEN_WORD(name, symbol, dimension) {#name, symbol, Dim::dimension},
    TAUTEN_VOCABULARY(TAUTEN_WORD)
#undef TAUTEN_WORD
};

constexpr bool same_text(const char* a, const char* b) noexcept {
  while (*a != '\0' && *a == *b) ++a, ++b;
  return *a == *b;
}

/// \return the listed word of this name, or `Word::unlisted`
constexpr Word word_of(const char* name) noexcept {
  int i = 0;
  for (const Term& term : vocabulary) {
    ++i;
    if (same_text(term.name, name)) return static_cast<Word>(i);
  }
  return Word::unlisted;
}

/// Fails to compile, in one plain sentence that names the argument, unless `fits`.
template <Word W, bool fits>
struct RequireDimension {
  static_assert(fits, "tauten: an argument has the wrong dimension; the formula's header lists its inputs in order");
};
#define TAUTEN_WORD(name, symbol, dimension)                                                 \
  template <bool fits>                                                                       \
  struct RequireDimension<Word::name, fits> {                                                \
    static_assert(fits, "tauten: the argument '" #name "' must be " TAUTEN_ASK_##dimension); \
  };
TAUTEN_VOCABULARY(TAUTEN_WORD)
#undef TAUTEN_WORD

}  // namespace tauten::TAUTEN_ABI
