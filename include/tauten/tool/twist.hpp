// Elasticity of a drive line: bars in series, readings of the angle, stored energy and impact.
#pragma once

#include "tauten/base/formula.hpp"

namespace tauten::TAUTEN_ABI {

/// Torsional stiffness of two bars in series. The result is below the weaker of the two.
struct SeriesStiffness {
  static constexpr const char* name = "series_stiffness";
  static constexpr const char* summary = "Torsional stiffness of two bars in series";
  static constexpr Arg inputs[] = {
      {"first_stiffness", "c_1", Dim::torque, positive},
      {"second_stiffness", "c_2", Dim::torque, positive},
  };
  static constexpr Arg output = {"torsional_stiffness", "c_T", Dim::torque, positive};
  static constexpr Source sources[] = {{"Textbook mechanics", "springs in series", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real c_1, Real c_2) noexcept {
    return c_1 * c_2 / (c_1 + c_2);
  }
};
/// \copydoc SeriesStiffness
inline constexpr Formula<SeriesStiffness> series_stiffness{};

/// Angle that the fastener has turned since snug, from the angle read at the handle: the tool has wound up by the
/// change of torque over its stiffness. What people get wrong: the change counts from the snug torque, not from zero.
struct FastenerAngle {
  static constexpr const char* name = "fastener_angle";
  static constexpr const char* summary = "Angle at the fastener from the angle read at the handle";
  static constexpr Arg inputs[] = {
      {"handle_angle", "theta_h", Dim::angle, non_negative, within(0, 13)},
      {"snug_torque", "M_0", Dim::torque, non_negative},
      {"torque", "M_A", Dim::torque, non_negative},
      {"torsional_stiffness", "c_T", Dim::torque, positive},
  };
  static constexpr Arg output = {"angle_of_turn", "theta", Dim::angle, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "twist of an elastic drive line", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real theta_h, Real M_0, Real M_A, Real c_T) noexcept {
    return theta_h - (M_A - M_0) / c_T;
  }
};
/// \copydoc FastenerAngle
inline constexpr Formula<FastenerAngle> fastener_angle{};

/// Angle to read at the handle for an angle at the fastener; the inverse of `fastener_angle`.
struct HandleAngle {
  static constexpr const char* name = "handle_angle";
  static constexpr const char* summary = "Angle to read at the handle for an angle at the fastener";
  static constexpr Arg inputs[] = {
      {"angle_of_turn", "theta", Dim::angle, non_negative, within(0, 13)},
      {"snug_torque", "M_0", Dim::torque, non_negative},
      {"torque", "M_A", Dim::torque, non_negative},
      {"torsional_stiffness", "c_T", Dim::torque, positive},
  };
  static constexpr Arg output = {"handle_angle", "theta_h", Dim::angle, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "twist of an elastic drive line", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real theta, Real M_0, Real M_A, Real c_T) noexcept {
    return theta - FastenerAngle::eval(Real(0), M_0, M_A, c_T);
  }
};
/// \copydoc HandleAngle
inline constexpr Formula<HandleAngle> handle_angle{};

/// Energy stored in a twisted bar, T^2/(2 c). It is set free at once when the fastener breaks away or the socket
/// slips.
struct TwistEnergy {
  static constexpr const char* name = "twist_energy";
  static constexpr const char* summary = "Energy stored in a twisted bar";
  static constexpr Arg inputs[] = {
      {"torque", "M_A", Dim::torque, non_negative},
      {"torsional_stiffness", "c_T", Dim::torque, positive},
  };
  static constexpr Arg output = {"energy", "U", Dim::energy, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "energy of an elastic spring", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real M_A, Real c_T) noexcept {
    return square(M_A) / (2 * c_T);
  }
};
/// \copydoc TwistEnergy
inline constexpr Formula<TwistEnergy> twist_energy{};

/// Peak torque of a blow of given energy on an elastic drive line whose far end stands still, sqrt(2 U c). With the
/// energy J omega^2/2 of a hammer this is omega sqrt(J c). It shows why a long thin bar takes the edge off an impact
/// tool: a quarter of the stiffness leaves half of the peak. An upper bound; losses in the anvil are not counted.
struct BlowTorque {
  static constexpr const char* name = "blow_torque";
  static constexpr const char* summary = "Peak torque of a blow on an elastic drive line";
  static constexpr Arg inputs[] = {
      {"energy", "U", Dim::energy, non_negative},
      {"torsional_stiffness", "c_T", Dim::torque, positive},
  };
  static constexpr Arg output = {"torque", "M_A", Dim::torque, non_negative};
  static constexpr Source sources[] = {{"Textbook mechanics", "impact on an elastic spring", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real U, Real c_T) noexcept {
    return sqrt(2 * U * c_T);
  }
};
/// \copydoc BlowTorque
inline constexpr Formula<BlowTorque> blow_torque{};

}  // namespace tauten::TAUTEN_ABI
