// How far a piece of a bolt stretches and twists.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Resilience of a cylindrical piece under tension: its stretch per unit of force. The resilience of a bolt is the sum
/// over its pieces; what head, engaged thread and nut add is given as extra lengths (see `bolt.hpp`).
struct SegmentResilience {
  static constexpr const char* name = "segment_resilience";
  static constexpr const char* summary = "Stretch per force of a cylindrical piece";
  static constexpr Arg inputs[] = {
      {"length", "l", Dim::length, non_negative},
      {"area", "A", Dim::area, positive},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
  };
  static constexpr Arg output = {"segment_resilience", "delta", Dim::compliance, non_negative};
  static constexpr Source sources[] = {{"VDI 2230 Part 1:2003", "section 5.1.1, resilience of the bolt", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real l, Real A, Real E) noexcept {
    return l / (E * A);
  }
};
/// \copydoc SegmentResilience
inline constexpr Formula<SegmentResilience> segment_resilience{};

/// Stiffness of a bolt as two pieces in series: unthreaded shank and thread within the grip. Head, engaged thread and
/// nut are taken as rigid, so it lies above the sum over all pieces; short bolts differ most.
struct TwoAreaStiffness {
  static constexpr const char* name = "two_area_stiffness";
  static constexpr const char* summary = "Stiffness of shank and free thread in series";
  static constexpr Arg inputs[] = {
      {"shank_area", "A_d", Dim::area, positive},
      {"stress_area", "A_s", Dim::area, positive},
      {"shank_length", "l_d", Dim::length, non_negative},
      {"thread_length", "l_t", Dim::length, non_negative},
      {"elastic_modulus", "E", Dim::stress, positive, within(10e9, 250e9)},
  };
  static constexpr Arg output = {"bolt_stiffness", "k_b", Dim::stiffness, positive};
  static constexpr Source sources[] = {
      {"Shigley's Mechanical Engineering Design, 9th ed.", "eq. (8-17) and Table 8-12", Seen::in_print}};

  template <class Real>
  static constexpr Real eval(Real A_d, Real A_s, Real l_d, Real l_t, Real E) noexcept {
    return 1 / (SegmentResilience::eval(l_d, A_d, E) + SegmentResilience::eval(l_t, A_s, E));
  }
};
/// \copydoc TwoAreaStiffness
inline constexpr Formula<TwoAreaStiffness> two_area_stiffness{};

/// Twist of a round piece under a torque, elastic. It goes back when the torque does.
struct ShankTwist {
  static constexpr const char* name = "shank_twist";
  static constexpr const char* summary = "Elastic twist of a round piece";
  static constexpr Arg inputs[] = {
      {"thread_torque", "M_G", Dim::torque, any_sign},
      {"length", "l", Dim::length, non_negative},
      {"diameter", "d", Dim::length, positive},
      {"shear_modulus", "G", Dim::stress, positive, within(4e9, 100e9)},
  };
  static constexpr Arg output = {"twist", "phi_t", Dim::angle, any_sign};
  static constexpr Source sources[] = {{"Textbook strength of materials", "torsion of a round bar", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_G, Real l, Real d, Real G) noexcept {
    return 8 * M_G * l / (G * circle_area(d) * square(d));
  }
};
/// \copydoc ShankTwist
inline constexpr Formula<ShankTwist> shank_twist{};

}  // namespace tauten::TAUTEN_ABI
