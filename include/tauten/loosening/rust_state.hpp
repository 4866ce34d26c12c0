// Named states of rust, each with the bands it brings.
#pragma once

#include <string_view>

#include "tauten/base/lognormal.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// How far a joint has rusted, from best to worst; the last three lie beside the row.
enum class Rust : unsigned char {
  clean,
  aged_dry,
  light_rust,
  rusted,
  heavy_rust,
  loose_but_rusted_in,
  galled_stainless,
  seized_in_aluminium
};

/// What a state of rust does. Nine of ten cases lie in the band of each quantity.
///
/// The variations are the same in every state on purpose: a worse state then has the greater torque case by case, so
/// more rust never makes release likelier at the same torque. The wider scatter of heavy rust comes from bond and
/// pressure, which add to friction and scatter most.
struct RustState {
  Rust rust;
  const char* key;
  const char* title;
  Lognormal thread_growth;   ///< factor on the clean thread friction
  Lognormal bearing_growth;  ///< factor on the clean bearing friction
  Lognormal bond_strength;   ///< Pa, on the flank area
  Lognormal pressure_share;  ///< rust pressure on the flanks over what the nut can hold
  Lognormal metal_loss;      ///< depth lost at the root of the exposed thread, m
  bool loaded;               ///< false: no preload is left
  Source source;
};

inline constexpr double growth_variation = 0.3;
inline constexpr double bond_variation = 0.6;
inline constexpr double metal_loss_variation = 0.5;

inline constexpr Source rust_source{"", "judgement; measured breakaway ratios of corroded fasteners were not found",
                                    Seen::judgement};
inline constexpr RustState rust_states[] = {
    {Rust::clean,
     "clean",
     "clean, tightened not long ago",
     {1.0, growth_variation},
     {1.0, growth_variation},
     {0, bond_variation},
     {0, bond_variation},
     {0, metal_loss_variation},
     true,
     rust_source},
    {Rust::aged_dry,
     "aged_dry",
     "dry, years in place, no rust to see",
     {1.4, growth_variation},
     {1.3, growth_variation},
     {0, bond_variation},
     {0, bond_variation},
     {0, metal_loss_variation},
     true,
     rust_source},
    {Rust::light_rust,
     "light_rust",
     "a film of rust, edges sharp",
     {1.75, growth_variation},
     {1.6, growth_variation},
     {0.5e6, bond_variation},
     {0, bond_variation},
     {10e-6, metal_loss_variation},
     true,
     rust_source},
    {Rust::rusted,
     "rusted",
     "rust all over, thread still to be seen",
     {2.3, growth_variation},
     {2.0, growth_variation},
     {2e6, bond_variation},
     {0.02, bond_variation},
     {60e-6, metal_loss_variation},
     true,
     rust_source},
    {Rust::heavy_rust,
     "heavy_rust",
     "scale, thread filled or eaten away",
     {2.8, growth_variation},
     {2.4, growth_variation},
     {6e6, bond_variation},
     {0.08, bond_variation},
     {200e-6, metal_loss_variation},
     true,
     rust_source},
    {Rust::loose_but_rusted_in,
     "loose_but_rusted_in",
     "no clamp load left, yet stuck in the thread",
     {2.8, growth_variation},
     {2.4, growth_variation},
     {6e6, bond_variation},
     {0.08, bond_variation},
     {200e-6, metal_loss_variation},
     false,
     rust_source},
    {Rust::galled_stainless,
     "galled_stainless",
     "stainless steel that has galled: it jams and tightens as it turns",
     {3.5, growth_variation},
     {1.6, growth_variation},
     {10e6, bond_variation},
     {0, bond_variation},
     {0, metal_loss_variation},
     true,
     rust_source},
    {Rust::seized_in_aluminium,
     "seized_in_aluminium",
     "steel seized in aluminium, white powder around the thread",
     {2.6, growth_variation},
     {1.6, growth_variation},
     {4e6, bond_variation},
     {0.06, bond_variation},
     {30e-6, metal_loss_variation},
     true,
     rust_source},
};

template <>
struct Words<Rust> {
  static constexpr const char* list[] = {rust_states[0].key, rust_states[1].key, rust_states[2].key,
                                         rust_states[3].key, rust_states[4].key, rust_states[5].key,
                                         rust_states[6].key, rust_states[7].key};
};

/// \return the state
constexpr const RustState& rust_state(Rust rust) noexcept { return rust_states[static_cast<int>(rust)]; }

/// \param key  "heavy_rust"
/// \return the state of this name, or nullptr
constexpr const RustState* find_rust_state(std::string_view key) noexcept {
  for (const RustState& state : rust_states)
    if (key == state.key) return &state;
  return nullptr;
}

}  // namespace tauten::TAUTEN_ABI
