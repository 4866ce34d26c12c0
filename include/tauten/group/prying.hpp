// Prying: a plate that bends at its bolts presses with its edge, and the bolts carry that on top.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/words.hpp"
#include "tauten/group/plate_bending.hpp"

namespace tauten::TAUTEN_ABI {

/// A plate or leg pulled off by bolts in a line, after AISC.
struct PryingPlate {
  Length bolt_to_web;              ///< b, from the axis of the bolts to the face of the web, or to mid-leg
  Length bolt_to_edge;             ///< a, to the free edge
  Length diameter;                 ///< d of the bolt
  Length hole;                     ///< d', along the plate
  Length tributary;                ///< p, length of plate for one bolt
  Stress strength;                 ///< F_u since the 13th Manual; older editions take F_y
  double resistance_factor = 0.9;  ///< phi: 0.9, 1/1.67 for allowable loads, 1 for nominal strength
};

/// How the plate and one bolt carry a pull.
struct Prying {
  Length bolt_lever;           ///< b' = b - d/2
  Length edge_lever;           ///< a' = min(a, 1.25 b) + d/2
  double lever_ratio = 0;      ///< rho = b'/a'
  double net_share = 0;        ///< delta = 1 - d'/p
  Length no_prying_thickness;  ///< t_c: as thick, the plate does not pry at the full strength of the bolt
  double bending_share = 0;    ///< alpha', of the moment at the bolts to that at the web; below 0: bolts decide,
                               ///< above 1: the plate decides
  double strength_share = 1;   ///< Q, of the bolt's strength that the joint has
  Force strength;              ///< Q B
  Torque plastic_moment;       ///< of the plate for one bolt, with the resistance factor
};

namespace detail {

inline std::optional<Error> prying_plate_error(const PryingPlate& plate) {
  for (const auto& [name, q] : {std::pair{"bolt_to_web", plate.bolt_to_web},
                                {"bolt_to_edge", plate.bolt_to_edge},
                                {"diameter", plate.diameter},
                                {"tributary", plate.tributary}})
    if (!is_positive(q)) return refusal(name, q, "but must be above 0; measure it");
  if (!(plate.bolt_to_web.si > plate.diameter.si / 2))
    return refusal("bolt_to_web", plate.bolt_to_web, "but must be above half of the bolt's diameter");
  if (!(plate.hole.si >= 0 && plate.hole.si < plate.tributary.si))
    return refusal("hole", plate.hole, "but must be 0 or more and below the tributary length");
  if (!is_positive(plate.strength)) return refusal("strength", plate.strength, "but must be above 0");
  if (!(plate.resistance_factor > 0 && plate.resistance_factor <= 1))
    return refusal("resistance_factor", plate.resistance_factor, "but must be above 0, up to 1; 0.9 is typical");
  return {};
}

/// The parts that depend on the geometry alone.
inline Prying prying_levers(const PryingPlate& plate) noexcept {
  Prying p;
  const double half = plate.diameter.si / 2;
  p.bolt_lever = Length(plate.bolt_to_web.si - half);
  p.edge_lever = Length(std::min(plate.bolt_to_edge.si, 1.25 * plate.bolt_to_web.si) + half);
  p.lever_ratio = p.bolt_lever.si / p.edge_lever.si;
  p.net_share = 1 - plate.hole.si / plate.tributary.si;
  return p;
}

/// Thickness at which the plate alone bears a pull with its moment at the web: sqrt(4 T b'/(phi p F_u)).
inline double bending_thickness(const PryingPlate& plate, double pull, double bolt_lever) noexcept {
  return NoPryingThickness::eval(pull, bolt_lever, plate.tributary.si, plate.resistance_factor * plate.strength.si);
}

}  // namespace detail

/// Strength of plate and bolt together at a thickness.
/// \param bolt       B, strength of one bolt in tension
/// \param thickness  of the plate
/// \return the figures; an error for a measure that is not above 0
/// Source: AISC Manual, prying action, as applied in Companion Design Examples v16.0 (Ex. II.D-1, II.A-28B) and Design
/// Guide 29, Example 5.1.
inline Outcome<Prying> try_prying(const PryingPlate& plate, Force bolt, Length thickness) {
  if (auto error = detail::prying_plate_error(plate)) return *error;
  if (!is_positive(bolt)) return refusal("bolt", bolt, "but must be above 0; give the strength of one bolt");
  if (!is_positive(thickness)) return refusal("thickness", thickness, "but must be above 0; give that of the plate");
  Prying p = detail::prying_levers(plate);
  p.no_prying_thickness = Length(detail::bending_thickness(plate, bolt.si, p.bolt_lever.si));
  p.bending_share = PryingBendingShare::eval(p.no_prying_thickness.si, thickness.si, p.net_share, p.lever_ratio);
  p.plastic_moment =
      Torque(PlatePlasticMoment::eval(plate.tributary.si, thickness.si, plate.resistance_factor * plate.strength.si));
  if (p.bending_share >= 0)
    p.strength_share =
        PryingStrengthShare::eval(p.no_prying_thickness.si, thickness.si, p.net_share, std::min(p.bending_share, 1.0));
  p.strength = Force(p.strength_share * bolt.si);
  return p;
}

/// Least thickness for a pull, the bolt's strength used up by pull and prying together; and without any prying.
struct PryingThickness {
  Length least;
  Length without_prying;  ///< from here on the edge does not press
};

/// \param bolt  B, strength of one bolt; \param pull  T on one bolt, above 0 and not above B
/// Source: as `try_prying`.
inline Outcome<PryingThickness> try_prying_thickness(const PryingPlate& plate, Force bolt, Force pull) {
  if (auto error = detail::prying_plate_error(plate)) return *error;
  if (!is_positive(bolt)) return refusal("bolt", bolt, "but must be above 0; give the strength of one bolt");
  if (!(pull.si > 0 && pull.si <= bolt.si))
    return refusal("pull", pull, "but must be above 0 and not above the strength of the bolt; use a stronger bolt");
  const Prying p = detail::prying_levers(plate);
  const double beta = (bolt.si / pull.si - 1) / p.lever_ratio;
  const double alpha = beta >= 1 ? 1 : std::min(1.0, beta / ((1 - beta) * p.net_share));
  const double without = detail::bending_thickness(plate, pull.si, p.bolt_lever.si);
  return PryingThickness{Length(without / std::sqrt(1 + p.net_share * alpha)), Length(without)};
}

/// Force with which the edge presses, per bolt, at a pull that plate and bolt can carry: what the bolt carries on top.
/// The plate bends at the web up to its plastic moment first; the rest of the balance goes to the bolt line.
/// \return the prying force, 0 for a plate thick enough; an error as `try_prying`, or for a pull beyond the strength
/// Source: balance of the plate, M_web = T b' - q a' (Thornton 1985, as quoted with AISC Design Guide 29).
inline Outcome<Force> try_prying_force(const PryingPlate& plate, Force bolt, Length thickness, Force pull) {
  const auto p = try_prying(plate, bolt, thickness);
  if (!p) return p.error();
  if (!(pull.si >= 0 && pull.si <= p->strength.si * (1 + 1e-9)))
    return refusal("pull", pull, "but must be 0 or more and not above the strength with prying; use a thicker plate");
  return Force(std::max(0.0, EdgeForce::eval(pull.si, p->bolt_lever.si, p->plastic_moment.si, p->edge_lever.si)));
}

/// How a T-stub fails.
enum class TeeMode : unsigned char {
  flange,            ///< 1: hinges at web and bolts, the plate is thin
  flange_and_bolts,  ///< 2: hinges at the web, and the bolts
  bolts              ///< 3: the bolts, the plate is thick
};

template <>
struct Words<TeeMode> {
  static constexpr const char* list[] = {"flange", "flange and bolts", "bolts"};
};

/// A T-stub after EN 1993-1-8: the equivalent of column flange, end plate or angle.
struct TeeStub {
  Length bolt_to_web;              ///< m, from the bolt axis to 0.8 of the fillet's radius from the web
  Length bolt_to_edge;             ///< e; n = min(e, 1.25 m) is used
  Length effective_length;         ///< sum of l_eff of both modes
  Length thickness;                ///< t_f
  Stress yield_strength;           ///< f_y over gamma_M0
  Force bolts;                     ///< sum of the resistances of all bolts in tension
  std::optional<Length> washer{};  ///< d_w, for the form of mode 1 with e_w = d_w/4; absent: the plain form
  std::optional<Length>
      elongation_length{};  ///< L_b of the bolts, with `stress_area`, to see whether edges press at all
  Area stress_area{};       ///< A_s of one bolt
  double rows = 1;          ///< n_b, rows with two bolts each
};

/// Resistance of a T-stub.
struct TeeStrength {
  Torque plastic_moment;          ///< M_pl = l_eff t^2 f_y/4
  Force flange;                   ///< mode 1; without prying it stands for modes 1 and 2
  std::optional<Force> combined;  ///< mode 2; none without prying
  Force bolts;                    ///< mode 3
  Force strength;                 ///< least of them
  TeeMode mode = TeeMode::flange;
  bool prying = true;  ///< false where the bolts stretch so far that the edges do not press
};

/// \return the resistances; an error for a measure that is not above 0
/// Source: EN 1993-1-8 Table 6.2 (formulas seen second hand; form without prying from memory).
inline Outcome<TeeStrength> try_tee_strength(const TeeStub& tee) {
  for (const auto& [name, q] : {std::pair{"bolt_to_web", tee.bolt_to_web},
                                {"bolt_to_edge", tee.bolt_to_edge},
                                {"effective_length", tee.effective_length},
                                {"thickness", tee.thickness}})
    if (!is_positive(q)) return refusal(name, q, "but must be above 0; measure it");
  if (!is_positive(tee.yield_strength)) return refusal("yield_strength", tee.yield_strength, "but must be above 0");
  if (!is_positive(tee.bolts)) return refusal("bolts", tee.bolts, "but must be above 0; give that of all bolts");
  if (tee.washer && !is_positive(*tee.washer))
    return refusal("washer", *tee.washer, "but must be above 0; leave it out for the plain form");
  if (tee.elongation_length) {
    if (!is_positive(*tee.elongation_length))
      return refusal("elongation_length", *tee.elongation_length, "but must be above 0, or not given");
    if (!is_positive(tee.stress_area)) return refusal("stress_area", tee.stress_area, "but must be above 0");
    if (!(tee.rows >= 1)) return refusal("rows", tee.rows, "but must be 1 or more");
  }
  TeeStrength s;
  const double m = tee.bolt_to_web.si;
  const double n = std::min(tee.bolt_to_edge.si, 1.25 * m);
  const double washer = tee.washer.value_or(Length()).si / 4;
  const double moment = PlatePlasticMoment::eval(tee.effective_length.si, tee.thickness.si, tee.yield_strength.si);
  if (!(2 * m * n > washer * (m + n)))
    return refusal("washer", *tee.washer, "but must be small beside the distances of the bolt; check the measures");
  s.plastic_moment = Torque(moment);
  s.bolts = tee.bolts;
  if (tee.elongation_length) {
    const double limit = 8.8 * m * m * m * tee.stress_area.si * tee.rows /
                         (tee.effective_length.si * tee.thickness.si * tee.thickness.si * tee.thickness.si);
    s.prying = !(tee.elongation_length->si > limit);
  }
  s.flange = Force(s.prying ? TeeFlangeStrength::eval(moment, m, n, washer) : 2 * moment / m);
  s.strength = s.flange;
  if (s.prying) {
    s.combined = Force(TeeCombinedStrength::eval(moment, m, n, tee.bolts.si));
    if (s.combined->si < s.strength.si) {
      s.strength = *s.combined;
      s.mode = TeeMode::flange_and_bolts;
    }
  }
  if (s.bolts.si < s.strength.si) {
    s.strength = s.bolts;
    s.mode = TeeMode::bolts;
  }
  return s;
}

}  // namespace tauten::TAUTEN_ABI
