// What a difference of temperature does to a seized thread.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Play in diameter that opens when the nut is hotter than the bolt.
struct ThermalOpening {
  static constexpr const char* name = "thermal_opening";
  static constexpr const char* summary = "Play that opens when the nut is hotter than the bolt";
  static constexpr Arg inputs[] = {
      {"expansion", "alpha_T", Dim::expansion, non_negative, within(5e-6, 30e-6)},
      {"diameter", "d", Dim::length, positive},
      {"temperature_difference", "dT", Dim::temperature, any_sign, within(-200, 400)},
  };
  static constexpr Arg output = {"opening", "u", Dim::length, any_sign};
  static constexpr Source sources[] = {{"Textbook strength of materials", "thermal expansion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real alpha_T, Real d, Real dT) noexcept {
    return alpha_T * d * dT;
  }
};
/// \copydoc ThermalOpening
inline constexpr Formula<ThermalOpening> thermal_opening{};

/// Difference of temperature that opens a wanted play; the inverse of `thermal_opening`.
struct OpeningTemperature {
  static constexpr const char* name = "opening_temperature";
  static constexpr const char* summary = "Difference of temperature that opens a play";
  static constexpr Arg inputs[] = {
      {"opening", "u", Dim::length, non_negative},
      {"expansion", "alpha_T", Dim::expansion, positive, within(5e-6, 30e-6)},
      {"diameter", "d", Dim::length, positive},
  };
  static constexpr Arg output = {"temperature_difference", "dT", Dim::temperature, non_negative};
  static constexpr Source sources[] = {{"Textbook strength of materials", "thermal expansion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real u, Real alpha_T, Real d) noexcept {
    return u / (alpha_T * d);
  }
};
/// \copydoc OpeningTemperature
inline constexpr Formula<OpeningTemperature> opening_temperature{};

/// Preload that a bolt loses when it alone is heated and the parts are rigid. An upper bound for a bolt of this area all
/// along: parts that spring give less. Where the shank is thicker than the thread, give its area for the bound; with the
/// stress area of the thread the loss comes out too small by up to their ratio.
struct ThermalLoadLoss {
  static constexpr const char* name = "thermal_load_loss";
  static constexpr const char* summary = "Preload lost when the bolt alone is heated (rigid parts)";
  static constexpr Arg inputs[] = {
      {"expansion", "alpha_T", Dim::expansion, non_negative, within(5e-6, 30e-6)},
      {"elastic_modulus", "E", Dim::stress, positive, within(60e9, 220e9)},
      {"stress_area", "A_s", Dim::area, positive},
      {"temperature_difference", "dT", Dim::temperature, any_sign, within(-200, 400)},
  };
  static constexpr Arg output = {"load_loss", "dF", Dim::force, any_sign};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "restrained thermal expansion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real alpha_T, Real E, Real A_s, Real dT) noexcept {
    return alpha_T * E * A_s * dT;
  }
};
/// \copydoc ThermalLoadLoss
inline constexpr Formula<ThermalLoadLoss> thermal_load_loss{};

/// Difference of temperature at which a bolt that alone is heated has lost its stress: 167 to 169 K for 400 MPa.
struct UnloadingTemperature {
  static constexpr const char* name = "unloading_temperature";
  static constexpr const char* summary = "Difference of temperature that takes a bolt's stress away";
  static constexpr Arg inputs[] = {
      {"stress", "S", Dim::stress, non_negative},
      {"expansion", "alpha_T", Dim::expansion, positive, within(5e-6, 30e-6)},
      {"elastic_modulus", "E", Dim::stress, positive, within(60e9, 220e9)},
  };
  static constexpr Arg output = {"temperature_difference", "dT", Dim::temperature, non_negative};
  static constexpr Source sources[] = {
      {"Textbook strength of materials", "restrained thermal expansion", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real S, Real alpha_T, Real E) noexcept {
    return S / (alpha_T * E);
  }
};
/// \copydoc UnloadingTemperature
inline constexpr Formula<UnloadingTemperature> unloading_temperature{};

}  // namespace tauten::TAUTEN_ABI
