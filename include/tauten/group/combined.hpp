// Bolts of a group under tension and shear together, with preload, and the models of tension beside each other.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "tauten/group/contact.hpp"
#include "tauten/group/shear.hpp"
#include "tauten/group/tension.hpp"
#include "tauten/joint/load.hpp"

namespace tauten::TAUTEN_ABI {

/// Tension alone that strains a bolt as much as tension and shear together, by the greatest principal stress:
/// (T + sqrt(T^2 + 4 V^2))/2.
/// \return NaN for a negative tension
/// Source: Khurmi and Gupta, A Textbook of Machine Design, chapter 11 (seen second hand).
inline Force equivalent_tension(Force tension, Force shear) noexcept {
  if (!(tension.si >= 0)) return Force(std::nan(""));
  return Force(PrincipalTension::eval(tension.si, shear.si));
}

/// Resistances of one bolt, factors of safety included as the code in use asks.
struct BoltResistance {
  Force tension;
  Force shear;
};

/// Utilisation by the circle, (T/T_R)^2 + (V/V_R)^2: not above 1. A pressed bolt (T < 0) counts as T = 0.
/// Source: AS 4100, clause on combined shear and tension, as in ASI Handbook 1, Hogan and Munter 2007, Example 3.14
/// (seen second hand).
inline double shear_tension_circle(Force tension, Force shear, const BoltResistance& resistance) noexcept {
  const double t = std::max(tension.si, 0.0) / resistance.tension.si;
  const double v = shear.si / resistance.shear.si;
  return t * t + v * v;
}

/// Utilisation by the line of EN 1993-1-8, V/V_R + T/(1.4 T_R), or T/T_R alone where that is more: not above 1.
/// Source: EN 1993-1-8 Table 3.4, from memory.
inline double shear_tension_line(Force tension, Force shear, const BoltResistance& resistance) noexcept {
  const double t = std::max(tension.si, 0.0) / resistance.tension.si;
  return std::max(std::fabs(shear.si) / resistance.shear.si + t / 1.4, t);
}

/// Tensile stress that a bolt may have beside a shear stress, 1.3 F_nt - F_nt f_rv/(phi F_nv), at most F_nt.
/// \param nominal_tension  F_nt; \param nominal_shear  F_nv; \param required_shear  f_rv; \param phi  0.75, or 1/2.00
/// \return 0 where the shear alone is too much
/// Source: AISC 360 section J3.7, from memory.
inline Stress tension_stress_beside_shear(Stress nominal_tension, Stress nominal_shear, Stress required_shear,
                                          double phi = 0.75) noexcept {
  const double left = 1.3 * nominal_tension.si - nominal_tension.si * required_shear.si / (phi * nominal_shear.si);
  return Stress(required_shear.si > phi * nominal_shear.si ? 0 : std::clamp(left, 0.0, nominal_tension.si));
}

/// A preloaded bolt under its share of an external load.
struct PreloadedBolt {
  Force bolt;         ///< in the bolt
  Force clamp;        ///< between the parts at this bolt; 0 once they part
  bool open = false;  ///< true once they part: from there the bolt carries the whole share
};

/// \param external   share of each bolt from a model of tension; negative: pressed
/// \param preload    of every bolt, 0 or more
/// \param share_of_bolt  load factor: share of an external load that reaches the bolt, 0 to 1
/// \return what each bolt carries: preload + load factor times share until the gap opens, the share itself beyond; an
///         error for a preload that is negative or a load factor out of range
/// The shares come from a model of one rigid joint: once some bolts have opened, the shares of the others are a guide.
inline Outcome<std::vector<PreloadedBolt>> try_preloaded(const Tension& external, Force preload, double share_of_bolt) {
  if (!is_not_negative(preload)) return refusal("preload", preload, "but must be 0 or more; give that of one bolt");
  if (!(share_of_bolt >= 0 && share_of_bolt <= 1))
    return refusal("load_factor", share_of_bolt, "but must be 0 to 1; stiff joints have 0.1 to 0.3");
  std::vector<PreloadedBolt> bolts;
  for (const double share : external.bolts) {
    const double clamp = ServiceClampLoad::eval(preload.si, share_of_bolt, share);
    if (clamp > 0 || share <= 0)
      bolts.push_back({Force(ServiceBoltLoad::eval(preload.si, share_of_bolt, share)), Force(clamp), false});
    else
      bolts.push_back({Force(share), Force(0), true});
  }
  return bolts;
}

/// Slip of a preloaded group, bolt by bolt: shear of a bolt over friction times the clamp load there. Above 1 that place
/// slips; with shear through the centroid alone the places share, and `together` counts.
struct Slip {
  std::vector<double> bolts;  ///< infinite where no clamp load is left
  double worst = 0;
  double together = 0;  ///< sum of the shear forces over that of all friction
};

/// \param friction  between the parts, above 0
/// \return the utilisations; an error for friction that is not positive, or lists of different length
/// Source: Coulomb friction; common practice, no source.
inline Outcome<Slip> try_slip(const ElasticShear& shear, const std::vector<PreloadedBolt>& bolts, double friction) {
  if (!(friction > 0 && friction <= 2))
    return refusal("friction", friction, "but must be above 0, up to 2; give that between the parts");
  if (shear.bolts.size() != bolts.size()) return Error("bolts", "bolts and shear are of different patterns");
  Slip slip;
  double x = 0;
  double y = 0;
  double all = 0;
  for (std::size_t i = 0; i < bolts.size(); ++i) {
    const double holds = friction * bolts[i].clamp.si;
    const double size = shear.bolts[i].size();
    slip.bolts.push_back(size == 0 ? 0 : size / holds);
    slip.worst = std::max(slip.worst, slip.bolts.back());
    x += shear.bolts[i].x;
    y += shear.bolts[i].y;
    all += holds;
  }
  const double force = std::hypot(x, y);
  slip.together = force == 0 ? 0 : force / all;
  return slip;
}

/// What one model says.
struct TensionByModel {
  TensionModel model = TensionModel::about_centroid;
  std::optional<Tension> tension;  ///< none where the model cannot carry the load, or lacks an input
  std::optional<Error> why_not;
};

/// One load by all models in use. They differ by a factor near two for the most loaded bolt, so that an answer shows its
/// neighbours. Tilting takes the place of the outline farthest on the pressed side as edge, plastic the direction of the
/// moment; both need a moment, and plastic no force.
/// \param face  outline for contact and tilting; none: these two have no answer
/// \return one item per model, in the order of `TensionModel`
inline std::vector<TensionByModel> tension_by_all_models(const Pattern& pattern, const LiftingLoad& load,
                                                         const std::optional<ContactFace>& face) {
  std::vector<TensionByModel> all;
  const auto add = [&](TensionModel model, const Outcome<Tension>& outcome) {
    TensionByModel& item = all.emplace_back();
    item.model = model;
    if (outcome)
      item.tension = *outcome;
    else
      item.why_not = outcome.error();
  };
  const Error no_face("outline", "outline is not given, but this model needs the face that the part lies on");
  add(TensionModel::about_centroid, try_tension_about_centroid(pattern, load));
  if (face) {
    const auto contact = try_tension_with_contact(pattern, load, *face);
    add(TensionModel::contact, contact ? Outcome<Tension>(contact->tension) : Outcome<Tension>(contact.error()));
  } else {
    add(TensionModel::contact, no_face);
  }
  const Torque moment(std::hypot(load.up.si, load.right.si));
  const Angle towards(std::atan2(load.right.si, load.up.si));
  if (!face) {
    add(TensionModel::tilting, no_face);
  } else if (face->outline.empty()) {
    add(TensionModel::tilting, Error("outline", "outline has no corner; give three or more"));
  } else {
    const auto along = [&](Position p) { return p.x * std::sin(towards.si) + p.y * std::cos(towards.si); };
    Position edge = face->outline.front();
    for (const Position p : face->outline)
      if (along(p) < along(edge)) edge = p;
    add(TensionModel::tilting, try_tension_tilting(pattern, {edge, towards}, moment, load.force));
  }
  if (load.force.si != 0)
    add(TensionModel::plastic, Error("force", "force is not 0, but the plastic model carries a moment alone"));
  else
    add(TensionModel::plastic, try_tension_plastic(pattern, towards, moment));
  return all;
}

/// The most that any bolt is pulled about the centroid when the direction of the moment, or the clocking of the flange,
/// is not known: F/n + M times the steepest share. On an even ring that is F/n + 2 M/(n R).
/// \return the loads, each at the direction worst for that bolt; an error as `try_tension_about_centroid`
inline Outcome<Tension> try_tension_worst_direction(const Pattern& pattern, Torque moment, Force force = {}) {
  if (!is_not_negative(moment)) return refusal("moment", moment, "but must be 0 or more; its direction is not read");
  // Loads are linear in the moment's two parts: the worst direction is that of the gradient.
  const auto up = try_tension_about_centroid(pattern, {Force(0), moment, Torque(0)});
  if (!up) return up.error();
  const auto right = try_tension_about_centroid(pattern, {Force(0), Torque(0), moment});
  if (!right) return right.error();
  const auto pull = try_tension_about_centroid(pattern, {force, Torque(0), Torque(0)});
  if (!pull) return pull.error();
  std::vector<double> bolts;
  for (std::size_t i = 0; i < pattern.size(); ++i)
    bolts.push_back(pull->bolts[i] + std::hypot(up->bolts[i], right->bolts[i]));
  return detail::tension_of(std::move(bolts));
}

/// \return a round face as an outline, with a corner on its pressed side
inline std::vector<Position> round_outline(Position centre, Length diameter, Angle towards) {
  constexpr int corners = 120;
  std::vector<Position> outline;
  for (int i = 0; i < corners; ++i) {
    const double angle = towards.si + pi<double>() * (1 + 2.0 * i / corners);
    outline.push_back({centre.x + diameter.si / 2 * std::sin(angle), centre.y + diameter.si / 2 * std::cos(angle)});
  }
  return outline;
}

/// All models when the direction of the moment, or the clocking of a flange, is not known: each bolt at the direction that
/// is worst for it, tried towards every bolt, between them and in steps all round. The loads do not balance a load.
/// \param face     its outline is that of the part; \param outside  diameter of a round part, instead of the outline
inline std::vector<TensionByModel> tension_at_worst_direction(const Pattern& pattern, Torque moment, Force force,
                                                              std::optional<ContactFace> face,
                                                              std::optional<Length> outside) {
  const Position centre = pattern.centroid();
  std::vector<double> towards;
  for (int i = 0; i < 72; ++i) towards.push_back(2 * pi<double>() * i / 72);
  if (pattern.size() <= 36)
    for (const Position p : pattern) {
      const double bolt = std::atan2(p.x - centre.x, p.y - centre.y);
      for (const double beside : {0.0, 1.0})  // on the axis, and as an even ring straddles it
        towards.push_back(bolt + beside * pi<double>() / static_cast<double>(pattern.size()));
    }
  std::vector<TensionByModel> worst;
  for (const double angle : towards) {
    if (outside) face->outline = round_outline(centre, *outside, Angle(angle));
    const LiftingLoad load{force, Torque(moment.si * std::cos(angle)), Torque(moment.si * std::sin(angle))};
    std::vector<TensionByModel> all = tension_by_all_models(pattern, load, face);
    if (worst.empty()) {
      worst = std::move(all);
      continue;
    }
    for (std::size_t m = 0; m < all.size(); ++m) {
      if (!worst[m].tension) continue;
      if (!all[m].tension) {
        worst[m] = std::move(all[m]);  // a model that fails in one direction has no worst
        continue;
      }
      std::vector<double> bolts = worst[m].tension->bolts;
      for (std::size_t i = 0; i < bolts.size(); ++i) bolts[i] = std::max(bolts[i], all[m].tension->bolts[i]);
      worst[m].tension = detail::tension_of(std::move(bolts));
    }
  }
  // About the centroid the worst direction is known exactly.
  if (const auto exact = try_tension_worst_direction(pattern, moment, force)) worst.front().tension = *exact;
  return worst;
}

/// The most that a bolt of a rigid round flange is pulled when it tilts on its outer edge, whatever the clocking:
/// 2 M (R + r)/(n (2 R^2 + r^2)), with a bolt on the axis of the moment.
/// \param count   evenly spaced bolts, 3 or more; \param circle  bolt circle; \param outside  diameter of the edge
/// Source: Khurmi and Gupta, A Textbook of Machine Design, chapter 11, Example 11.17 (seen second hand).
inline Outcome<Force> try_round_flange_tilting(std::size_t count, Length circle, Length outside, Torque moment) {
  if (auto error = detail::count_error("count", count, 3)) return *error;
  if (!is_positive(circle)) return refusal("circle", circle, "but must be above 0; give the bolt circle");
  if (!(outside.si >= circle.si && std::isfinite(outside.si)))
    return refusal("outside", outside, "but must not be below the bolt circle; give the diameter of the edge");
  if (!is_not_negative(moment)) return refusal("moment", moment, "but must be 0 or more");
  const double big = outside.si / 2;
  const double small = circle.si / 2;
  return Force(2 * moment.si * (big + small) / (static_cast<double>(count) * (2 * big * big + small * small)));
}

}  // namespace tauten::TAUTEN_ABI
