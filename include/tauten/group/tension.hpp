// How bolts share a pull and moments that lift a part off its support. There are several models in use, and they differ
// by a factor near two for the most loaded bolt: an answer names its model.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "tauten/group/bolt_share.hpp"
#include "tauten/group/dense.hpp"
#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// A load across the plane of the joint, at the centroid of the pattern.
struct LiftingLoad {
  Force force;   ///< pulls the part off; negative presses it on
  Torque up;     ///< moment that pulls on the bolts at the top (+y)
  Torque right;  ///< moment that pulls on the bolts on the right (+x)
};

/// External load of every bolt. A preloaded bolt feels only its load factor times it, until the joint opens.
struct Tension {
  std::vector<double> bolts;  ///< N, in the order of the pattern; negative: the bolt's place is pressed together
  std::size_t worst = 0;      ///< index of the bolt that is pulled most
  Force most;                 ///< its load
};

namespace detail {

inline std::optional<Error> lifting_load_error(const LiftingLoad& load) {
  if (!std::isfinite(load.force.si))
    return refusal("force", load.force, "but must be finite; give the pull, 0 if none");
  if (!std::isfinite(load.up.si)) return refusal("up", load.up, "but must be finite; give the moment, 0 if none");
  if (!std::isfinite(load.right.si))
    return refusal("right", load.right, "but must be finite; give the moment, 0 if none");
  return {};
}

inline Tension tension_of(std::vector<double> bolts) {
  Tension answer{std::move(bolts), 0, Force(0)};
  answer.worst =
      static_cast<std::size_t>(std::max_element(answer.bolts.begin(), answer.bolts.end()) - answer.bolts.begin());
  answer.most = Force(answer.bolts[answer.worst]);
  return answer;
}

/// Sums of squares across and along whose ratio is below this belong to bolts in one line.
inline constexpr double line_share = 1e-12;

/// Principal axes of equal bolts through their centroid. In them a pattern in one line shows as one sum that vanishes.
struct PrincipalAxes {
  Position centre;
  double c = 1, s = 0;           ///< direction of the first axis
  double along = 0, across = 0;  ///< sums of squares of the distances along the axes, m^2

  explicit PrincipalAxes(const Pattern& pattern) : centre(pattern.centroid()) {
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (const Position p : pattern) {
      xx += (p.x - centre.x) * (p.x - centre.x);
      yy += (p.y - centre.y) * (p.y - centre.y);
      xy += (p.x - centre.x) * (p.y - centre.y);
    }
    const double turn = std::atan2(2 * xy, xx - yy) / 2;
    c = std::cos(turn);
    s = std::sin(turn);
    along = xx * c * c + 2 * xy * c * s + yy * s * s;
    across = xx * s * s - 2 * xy * c * s + yy * c * c;
  }
  double along_of(double x, double y) const noexcept { return x * c + y * s; }
  double across_of(double x, double y) const noexcept { return y * c - x * s; }
};

inline Error in_line_error() {
  return Error("pattern",
               "all bolts are in one line, which cannot carry a moment across it; give another pattern, or the model "
               "with contact if the part lies on a support");
}

}  // namespace detail

/// Bolts about their centroid: load proportional to the distance from the axis through it, plus an equal part of the
/// force. For a part without contact, and for a preloaded joint as long as its whole face stays closed. Two moments,
/// any pattern of equal bolts.
/// \return the loads, some of them negative; or an error for a load that is not finite, or where all bolts are in one
///         line and a moment acts across it
/// Source: textbook bending of an unsymmetrical section, from memory.
inline Outcome<Tension> try_tension_about_centroid(const Pattern& pattern, const LiftingLoad& load) {
  if (auto error = detail::lifting_load_error(load)) return *error;
  const detail::PrincipalAxes axes(pattern);
  const double along_moment = axes.along_of(load.right.si, load.up.si);
  const double across_moment = axes.across_of(load.right.si, load.up.si);
  const bool in_line = axes.across < detail::line_share * axes.along;
  if (in_line && std::fabs(across_moment) > 1e-9 * std::hypot(along_moment, across_moment))
    return detail::in_line_error();
  const double n = static_cast<double>(pattern.size());
  std::vector<double> bolts;
  for (const Position p : pattern) {
    const double x = p.x - axes.centre.x;
    const double y = p.y - axes.centre.y;
    bolts.push_back(GroupBoltLoad::eval(load.force.si, n, along_moment, axes.along_of(x, y), axes.along) +
                    (in_line ? 0 : GroupBoltLoad::eval(0.0, n, across_moment, axes.across_of(x, y), axes.across)));
  }
  return detail::tension_of(std::move(bolts));
}

/// \copydoc try_tension_about_centroid
/// \throws Error  instead of returning it
inline Tension tension_about_centroid(const Pattern& pattern, const LiftingLoad& load) {
  return try_tension_about_centroid(pattern, load).value();
}

/// The line on which a part tilts.
struct TiltingEdge {
  Position on;    ///< a place on it
  Angle towards;  ///< direction from the edge across the part, clockwise from the top: 0 for an edge at the bottom
};

/// Tilting on an edge: a rigid part turns on the edge of a rigid support, and the load of each bolt is proportional to
/// its distance L from the edge, T = F/n + M L/(sum of L^2). Unsafe where the support is soft: contact then lies further
/// in, and bolts carry more.
/// \param edge    with all bolts on its side `towards` or on it
/// \param moment  that tilts the part on the edge, 0 or more
/// \param force   pull through the centroid of the bolts, shared equally; 0 or more
/// \return the loads; or an error for a negative or non-finite load, or a bolt beyond the edge
/// Source: Khurmi and Gupta, A Textbook of Machine Design, chapter 11 (seen second hand).
inline Outcome<Tension> try_tension_tilting(const Pattern& pattern, const TiltingEdge& edge, Torque moment,
                                            Force force = {}) {
  if (!is_not_negative(moment))
    return refusal("moment", moment, "but must be 0 or more; turn the edge round if it tilts the other way");
  if (!is_not_negative(force)) return refusal("force", force, "but must be 0 or more; use the model with contact");
  if (!(std::fabs(edge.on.x) <= 1000 && std::fabs(edge.on.y) <= 1000 && std::isfinite(edge.towards.si)))
    return Error("edge", "edge is not a number or beyond 1 km; give a place on the edge in m and a direction");
  const double nx = std::sin(edge.towards.si);
  const double ny = std::cos(edge.towards.si);
  std::vector<double> bolts;
  double sum = 0;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const double arm = (pattern[i].x - edge.on.x) * nx + (pattern[i].y - edge.on.y) * ny;
    if (arm < -least_bolt_distance)
      return detail::bolt_error("edge", i, "is beyond the edge, where tilting presses; give an edge outside all bolts");
    bolts.push_back(std::max(arm, 0.0));
    sum += arm * arm;
  }
  if (!(sum > 1e-12) && moment.si > 0)
    return Error("edge",
                 "all bolts are on the edge, where they cannot hold a moment; give the edge that the part "
                 "tilts on");
  for (double& bolt : bolts)
    bolt = GroupBoltLoad::eval(force.si, static_cast<double>(pattern.size()), moment.si, bolt, moment.si > 0 ? sum : 1);
  return detail::tension_of(std::move(bolts));
}

/// \copydoc try_tension_tilting
/// \throws Error  instead of returning it
inline Tension tension_tilting(const Pattern& pattern, const TiltingEdge& edge, Torque moment, Force force = {}) {
  return try_tension_tilting(pattern, edge, moment, force).value();
}

/// Plastic: all bolts above the middle pull alike, and those below are pressed alike, N = M/(sum of |distance|); bolts
/// in the middle itself carry nothing. For ductile bolts and plates at their ultimate strength; half of the bolts must
/// be on either side.
/// \param towards  direction of the side that is pulled, clockwise from the top
/// \param moment   0 or more
/// \return the loads, those below negative: there contact carries; or an error for a moment that is negative or not
///         finite, or a pattern without as many bolts above as below
/// Source: ASI Handbook 1, Hogan and Munter 2007 (AS 4100), Example 3.14 (seen second hand).
inline Outcome<Tension> try_tension_plastic(const Pattern& pattern, Angle towards, Torque moment) {
  if (!is_not_negative(moment)) return refusal("moment", moment, "but must be 0 or more; turn the direction round");
  if (!std::isfinite(towards.si))
    return refusal("towards", towards, "but must be finite; give the side that is pulled");
  std::vector<double> height;
  for (const Position p : pattern) height.push_back(p.x * std::sin(towards.si) + p.y * std::cos(towards.si));
  std::vector<double> sorted = height;
  std::sort(sorted.begin(), sorted.end());
  const std::size_t n = sorted.size();
  const double middle = (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  std::vector<double> bolts;
  double sum = 0;
  double balance = 0;
  for (const double h : height) {
    const double side = std::fabs(h - middle) < least_bolt_distance ? 0 : h > middle ? 1 : -1;
    bolts.push_back(side);
    balance += side;
    sum += side * (h - middle);
  }
  if (balance != 0)
    return Error("pattern",
                 "there are not as many bolts on the pulled as on the pressed side, so that equal forces do "
                 "not balance; use the model with contact");
  if (sum == 0 && moment.si > 0) return detail::in_line_error();
  for (double& bolt : bolts) bolt = moment.si > 0 ? bolt * moment.si / sum : 0;
  return detail::tension_of(std::move(bolts));
}

/// \copydoc try_tension_plastic
/// \throws Error  instead of returning it
inline Tension tension_plastic(const Pattern& pattern, Angle towards, Torque moment) {
  return try_tension_plastic(pattern, towards, moment).value();
}

}  // namespace tauten::TAUTEN_ABI
