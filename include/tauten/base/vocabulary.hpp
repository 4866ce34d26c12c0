// The words of the library: every argument name with its symbol and dimension.
//
// A formula may use a new word without touching this list. Listing it here makes the compiler name the argument when a
// wrong dimension is passed, and puts the word into the nomenclature page. A test compares list and formulas.
#pragma once

#include "tauten/base/dimension.hpp"

// Words: name, symbol, dimension.
#define TAUTEN_VOCABULARY(WORD)                  \
  WORD(angle_of_turn, "theta", angle)            \
  WORD(bearing_diameter, "D_Km", length)         \
  WORD(bearing_friction, "mu_K", number)         \
  WORD(bearing_torque, "M_K", torque)            \
  WORD(diameter, "d", length)                    \
  WORD(flank_angle, "alpha", angle)              \
  WORD(inner_diameter, "d_i", length)            \
  WORD(loosening_torque, "M_L", torque)          \
  WORD(minimum_pitch_diameter, "d_2min", length) \
  WORD(new_nut_factor, "K_new", number)          \
  WORD(nut_factor, "K", number)                  \
  WORD(outer_diameter, "d_a", length)            \
  WORD(pitch, "P", length)                       \
  WORD(pitch_diameter, "d_2", length)            \
  WORD(preload, "F_M", force)                    \
  WORD(prevailing_torque, "M_P", torque)         \
  WORD(relaxation, "r", number)                  \
  WORD(root_diameter, "d_3", length)             \
  WORD(scatter, "s", number)                     \
  WORD(share, "x", number)                       \
  WORD(shear_strength, "tau_u", stress)          \
  WORD(stress, "S", stress)                      \
  WORD(stress_area, "A_s", area)                 \
  WORD(stress_diameter, "d_s", length)           \
  WORD(tensile_strength, "R_m", stress)          \
  WORD(thread_friction, "mu_G", number)          \
  WORD(thread_torque, "M_G", torque)             \
  WORD(torque, "M_A", torque)                    \
  WORD(torsion_ratio, "X", number)               \
  WORD(utilisation, "nu", number)                \
  WORD(yield_strength, "R_p0.2", stress)

// How a dimension is asked for in a compiler message.
#define TAUTEN_ASK_number "a plain number, for example 0.14"
#define TAUTEN_ASK_length "a length, for example 1.5_mm"
#define TAUTEN_ASK_area "an area, for example 58.0_mm2"
#define TAUTEN_ASK_angle "an angle, for example 90.0_deg"
#define TAUTEN_ASK_force "a force, for example 25.0_kN"
#define TAUTEN_ASK_torque "a torque, for example 48.0_N_m"
#define TAUTEN_ASK_stress "a stress, for example 640.0_MPa"
#define TAUTEN_ASK_compliance "a compliance, in metres per newton"
#define TAUTEN_ASK_stiffness "a stiffness, in newtons per metre"
#define TAUTEN_ASK_temperature "a temperature difference, in kelvin"
#define TAUTEN_ASK_energy "an energy, in joules"
#define TAUTEN_ASK_expansion "a thermal expansion coefficient, per kelvin"

namespace tauten {

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

}  // namespace tauten
