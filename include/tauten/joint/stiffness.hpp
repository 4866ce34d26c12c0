// Stiffness of the clamped parts at one stroke, and of layers in series.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Stiffness of clamped parts of one material by an exponential fit to finite elements, for a bearing face of 1.5 d
/// and wide parts. Against finite elements -7 to +9 % up to a grip of 2 d, and 7 to 24 % too stiff beyond.
struct ExponentialStiffness {
  static constexpr const char* name = "exponential_stiffness";
  static constexpr const char* summary = "Stiffness of clamped parts by the exponential fit";
  static constexpr Arg inputs[] = {
      {"diameter", "d", Dim::length, positive},
      {"grip_length", "l_K", Dim::length, positive},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
      {"fit_factor", "A_f", Dim::number, positive, within(0.7, 0.9)},
      {"fit_exponent", "B_f", Dim::number, positive, within(0.6, 0.7)},
  };
  static constexpr Arg output = {"plate_stiffness", "k_m", Dim::stiffness, positive};
  static constexpr Source sources[] = {{"Shigley's Mechanical Engineering Design, 9th ed.",
                                        "eq. (8-23) and Table 8-8, after Wileman, Choudhury and Green 1991",
                                        Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real d, Real l_K, Real E, Real A_f, Real B_f) noexcept {
    return E * d * A_f * exp(B_f * d / l_K);
  }
};
/// \copydoc ExponentialStiffness
inline constexpr Formula<ExponentialStiffness> exponential_stiffness{};

/// Constants of the exponential fit.
struct ExponentialFit {
  const char* material;
  double poisson_ratio;
  double fit_factor;
  double fit_exponent;
};

/// Shigley's Mechanical Engineering Design, 9th ed., Table 8-8, seen in print. The last row serves any material.
inline constexpr ExponentialFit exponential_fits[] = {
    {"steel", 0.291, 0.78715, 0.62873},  {"aluminium", 0.334, 0.79670, 0.63816},
    {"copper", 0.326, 0.79568, 0.63553}, {"grey cast iron", 0.211, 0.77871, 0.61616},
    {"general", 0.3, 0.78952, 0.62914},
};

/// Stiffness of up to four layers in series. For a layer that is not there give 1e30 N/m.
struct LayerStiffness {
  static constexpr const char* name = "layer_stiffness";
  static constexpr const char* summary = "Stiffness of layers in series";
  static constexpr Arg inputs[] = {
      {"first_layer", "k_1", Dim::stiffness, positive},
      {"second_layer", "k_2", Dim::stiffness, positive},
      {"third_layer", "k_3", Dim::stiffness, positive},
      {"fourth_layer", "k_4", Dim::stiffness, positive},
  };
  static constexpr Arg output = {"plate_stiffness", "k_m", Dim::stiffness, positive};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-18)", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real k_1, Real k_2, Real k_3, Real k_4) noexcept {
    return 1 / (1 / k_1 + 1 / k_2 + 1 / k_3 + 1 / k_4);
  }
};
/// \copydoc LayerStiffness
inline constexpr Formula<LayerStiffness> layer_stiffness{};

}  // namespace tauten::TAUTEN_ABI
