// What a joint loses of its preload after the wrench is off.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Preload lost as the surfaces embed. Stiff, short joints lose most.
struct EmbeddingLoss {
  static constexpr const char* name = "embedding_loss";
  static constexpr const char* summary = "Preload lost to embedding";
  static constexpr Arg inputs[] = {
      {"embedding", "f_Z", Dim::length, non_negative, within(0, 50e-6)},
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
  };
  static constexpr Arg output = {"preload_loss", "F_Z", Dim::force, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.2.1, eq. for F_Z", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real f_Z, Real delta_S, Real delta_P) noexcept {
    return f_Z / (delta_S + delta_P);
  }
};
/// \copydoc EmbeddingLoss
inline constexpr Formula<EmbeddingLoss> embedding_loss{};

/// Preload lost by different thermal expansion; below zero it is a gain. The moduli count as constant, which holds to
/// about 100 K for steel.
struct ThermalLoss {
  static constexpr const char* name = "thermal_loss";
  static constexpr const char* summary = "Preload lost to a change of temperature";
  static constexpr Arg inputs[] = {
      {"grip_length", "l_K", Dim::length, positive},
      {"bolt_expansion", "alpha_S", Dim::expansion, non_negative, within(5e-6, 30e-6)},
      {"bolt_warming", "T_S", Dim::temperature, any_sign, within(-100, 300)},
      {"plate_expansion", "alpha_P", Dim::expansion, non_negative, within(5e-6, 30e-6)},
      {"plate_warming", "T_P", Dim::temperature, any_sign, within(-100, 300)},
      {"bolt_resilience", "delta_S", Dim::compliance, positive},
      {"plate_resilience", "delta_P", Dim::compliance, non_negative},
  };
  static constexpr Arg output = {"preload_loss", "F_Vth", Dim::force, any_sign};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.4.2.3, moduli constant", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l_K, Real alpha_S, Real T_S, Real alpha_P, Real T_P, Real delta_S,
                             Real delta_P) noexcept {
    return l_K * (alpha_S * T_S - alpha_P * T_P) / (delta_S + delta_P);
  }
};
/// \copydoc ThermalLoss
inline constexpr Formula<ThermalLoss> thermal_loss{};

}  // namespace tauten::TAUTEN_ABI
