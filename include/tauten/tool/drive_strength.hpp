// Strength of squares, hexagons and wrenches: plastic torsion of the section and the test torques of the standards.
#pragma once

#include "tauten/base/formula.hpp"
#include "tauten/part/strength.hpp"

namespace tauten::TAUTEN_ABI {

/// Torque at which the middle of each face of a square bar reaches a shear strength; elastic below.
struct SquareYieldTorque {
  static constexpr const char* name = "square_yield_torque";
  static constexpr const char* summary = "Torque at first yield of a square bar";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"side", "a", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Timoshenko and Goodier, Theory of Elasticity", "torsion of rectangular bars, table, b/a = 1", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real a) noexcept {
    return Real(0.208) * tau_u * cube(a);
  }
};
/// \copydoc SquareYieldTorque
inline constexpr Formula<SquareYieldTorque> square_yield_torque{};

/// Torque at which a whole square section has reached a shear strength, a third of tau a^3 (sand-hill analogy).
struct SquarePlasticTorque {
  static constexpr const char* name = "square_plastic_torque";
  static constexpr const char* summary = "Torque of the fully plastic square bar";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"side", "a", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"Textbook plasticity", "sand-hill analogy, square", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real a) noexcept {
    return tau_u * cube(a) / 3;
  }
};
/// \copydoc SquarePlasticTorque
inline constexpr Formula<SquarePlasticTorque> square_plastic_torque{};

/// Torque at which a whole hexagonal section has reached a shear strength, tau s^3/(2 sqrt 3) with s across the flats
/// (sand-hill analogy). The torsional strength of hardened keys, about 353 MPa s^3, asks for a shear strength of
/// 1220 MPa.
struct HexagonPlasticTorque {
  static constexpr const char* name = "hexagon_plastic_torque";
  static constexpr const char* summary = "Torque of the fully plastic hexagonal key";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"width_across_flats", "s", Dim::length, positive},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"Textbook plasticity", "sand-hill analogy, hexagon", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real s) noexcept {
    return tan30<Real>() * tau_u * cube(s) / 2;
  }
};
/// \copydoc HexagonPlasticTorque
inline constexpr Formula<HexagonPlasticTorque> hexagon_plastic_torque{};

/// Torque at which a whole six-lobed section has reached a shear strength: that of a round bar of diameter
/// B + (A - B)/5. The round core B alone would be a fifth weaker. By the sand-hill analogy on the arcs of ISO 10664 the
/// torque lies within 4 % of it, whatever the radius of the lobes between 0.06 A and 0.10 A. What shear strength a bit has
/// no standard says; 54 to 60 HRC give about 1000 to 1900 MPa (estimate).
struct HexalobularPlasticTorque {
  static constexpr const char* name = "hexalobular_plastic_torque";
  static constexpr const char* summary = "Torque of the fully plastic six-lobed bit (estimate)";
  static constexpr Arg inputs[] = {
      {"shear_strength", "tau_u", Dim::stress, positive},
      {"outer_diameter", "d_a", Dim::length, positive, within(1.2e-3, 22.4e-3)},
      {"inner_diameter", "d_i", Dim::length, positive, within(0.85e-3, 16e-3)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {
      {"Textbook plasticity", "sand-hill analogy, by numbers on arcs between the circles A and B", Seen::judgement}};

  template <class Real>
  static constexpr Real eval(Real tau_u, Real d_a, Real d_i) noexcept {
    return TorsionPlasticTorque::eval(tau_u, d_i + (d_a - d_i) / 5);
  }
  /// The lobes stand out from the core.
  template <class Real>
  static constexpr Real requirement(Real, Real d_a, Real d_i) noexcept {
    return d_a - d_i;
  }
};
/// \copydoc HexalobularPlasticTorque
inline constexpr Formula<HexalobularPlasticTorque> hexalobular_plastic_torque{};

/// Test torque of ring wrenches and hand-operated sockets, 0.2658 s^2.34 with s in mm: a fit to the printed figures,
/// within 0.1 % of them.
struct RingTestTorque {
  static constexpr const char* name = "ring_test_torque";
  static constexpr const char* summary = "Test torque of ring wrenches and sockets";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive, within(5e-3, 41e-3)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"ISO 1711-1", "test torques, strongest series, as reprinted", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real s) noexcept {
    return Real(0.2658) * pow(s / millimetre<Real>(), 2.34);
  }
};
/// \copydoc RingTestTorque
inline constexpr Formula<RingTestTorque> ring_test_torque{};

/// Test torque of open-ended wrenches, 0.0392 s^2.80 with s in mm: a fit to the printed figures up to 36 mm, within
/// 0.5 % but for 17 mm (2.1 %). Thin wrenches are tested at half of it, the next stronger series at 1.25 of it. Which
/// letter the standard gives to which series was not seen.
struct OpenEndTestTorque {
  static constexpr const char* name = "open_end_test_torque";
  static constexpr const char* summary = "Test torque of open-ended wrenches";
  static constexpr Arg inputs[] = {
      {"width_across_flats", "s", Dim::length, positive, within(4e-3, 36e-3)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"ISO 1711-1", "test torques, open-end series, as reprinted", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real s) noexcept {
    return Real(0.0392) * pow(s / millimetre<Real>(), 2.80);
  }
};
/// \copydoc OpenEndTestTorque
inline constexpr Formula<OpenEndTestTorque> open_end_test_torque{};

/// Test torque of a hexagon key as k s^3. The printed figures give k of 233 to 250 MPa up to 8 mm, 212 to 226 MPa from
/// 9 to 16 mm and 198 to 199 MPa above, as the required hardness falls. `hexagon_keys` holds the figures themselves.
struct HexagonKeyTestTorque {
  static constexpr const char* name = "hexagon_key_test_torque";
  static constexpr const char* summary = "Test torque of a hexagon key";
  static constexpr Arg inputs[] = {
      {"test_stress", "k", Dim::stress, positive, within(198e6, 250e6)},
      {"width_across_flats", "s", Dim::length, positive, within(0.7e-3, 27e-3)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"JIS B 4648:2008", "Table 1 (matches ISO 2936)", Seen::once}};

  template <class Real>
  static constexpr Real eval(Real k, Real s) noexcept {
    return k * cube(s);
  }
};
/// \copydoc HexagonKeyTestTorque
inline constexpr Formula<HexagonKeyTestTorque> hexagon_key_test_torque{};

/// Torque at which a hexagon key gives: k s^3. With the shear strength tau of a section that is plastic all through, k is
/// tau/(2 sqrt 3): a heap of sand on a hexagon of width s with slope 1 is s/2 high and so holds sqrt(3)/12 s^3, and
/// the plastic torque is twice tau times that.
struct HexagonKeyStrength {
  static constexpr const char* name = "hexagon_key_strength";
  static constexpr const char* summary = "Torsional strength of a hexagon key (estimate)";
  static constexpr Arg inputs[] = {
      {"breaking_stress", "k_B", Dim::stress, positive, within(200e6, 400e6)},
      {"width_across_flats", "s", Dim::length, positive, within(0.7e-3, 27e-3)},
  };
  static constexpr Arg output = {"torque", "T", Dim::torque, positive};
  static constexpr Source sources[] = {{"ISO 2936", "minimum torsional strength of hexagon keys", Seen::memory},
                                       {"Textbook plasticity", "plastic torsion of a hexagon", Seen::memory}};

  template <class Real>
  static constexpr Real eval(Real k_B, Real s) noexcept {
    return HexagonKeyTestTorque::eval(k_B, s);
  }
};
/// \copydoc HexagonKeyStrength
inline constexpr Formula<HexagonKeyStrength> hexagon_key_strength{};

/// \param width  across the flats
/// \return the torsional strength of a hexagon key of this width over s^3, as an estimate. Up to 8 mm, of 52 HRC, it is
///         the 353 MPa of the standard, from memory. Thicker keys are softer, 48 HRC up to 16 mm and 45 HRC above, and
///         their printed test torques fall from 240 MPa s^3 to 217 and 198.5; the strength is taken to fall with them,
///         to 319 and 292 MPa. Against it: as plastic torque of a section of the tensile strength that goes with
///         the hardness (1840, 1630 and 1480 MPa, from memory), with 1/sqrt 3 of it in shear, they would be 307, 272
///         and 247 MPa, a seventh below; 353 MPa throughout would lie a tenth and a fifth above.
constexpr double hexagon_key_breaking_stress(double width) noexcept {
  constexpr double stress = 353e6, tested = 240e6;
  return width < 8.5e-3 ? stress : stress * (width < 16.5e-3 ? 217e6 : 198.5e6) / tested;
}

}  // namespace tauten::TAUTEN_ABI
