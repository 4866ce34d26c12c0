// How bolts share a load in the plane of the joint that does not pass through their centre.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

#include "tauten/group/bolt_share.hpp"
#include "tauten/group/dense.hpp"
#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// A load in the plane of the joint: a force along its line, and a torque on top.
struct ShearLoad {
  Force x;        ///< to the right
  Force y;        ///< up
  Position at;    ///< a place on the line of the force
  Torque torque;  ///< counter-clockwise, in addition to that of the force
};

/// What one bolt carries, in N.
struct ShearForce {
  double x = 0;
  double y = 0;

  double size() const noexcept { return std::hypot(x, y); }
};

/// Load shares of the elastic vector method.
struct ElasticShear {
  std::vector<ShearForce> bolts;  ///< in the order of the pattern; together they balance the load
  Position centre;                ///< about which the part turns when only a torque acts: the weighted centroid
  Torque torque;                  ///< about `centre`
  std::size_t worst = 0;          ///< index of the bolt that carries most
  Force most;                     ///< what it carries
};

namespace detail {

inline std::optional<Error> shear_load_error(const ShearLoad& load) {
  if (!std::isfinite(load.x.si)) return refusal("x", load.x, "but must be finite; give the force to the right");
  if (!std::isfinite(load.y.si)) return refusal("y", load.y, "but must be finite; give the force up");
  if (!std::isfinite(load.torque.si))
    return refusal("torque", load.torque, "but must be finite; give the torque, 0 for none");
  if (!(std::fabs(load.at.x) <= 1000 && std::fabs(load.at.y) <= 1000))
    return Error("at", "at is not a number or beyond 1 km; give a place on the line of the force in m");
  return {};
}

/// \return torque of the load about a place, counter-clockwise
inline double torque_about(const ShearLoad& load, Position centre) noexcept {
  return load.torque.si + (load.at.x - centre.x) * load.y.si - (load.at.y - centre.y) * load.x.si;
}

}  // namespace detail

/// Elastic vector method: each bolt takes an equal part of the force, and of the torque a part that grows with the
/// distance from the centre and acts at right angles to it. Rigid parts, bolts of equal stiffness, no slip into the
/// clearance, not beyond yield. On the safe side of `try_ultimate_shear`.
/// \param weights  share of each bolt, if they differ: areas for bearing, clamp loads for friction; none: all equal
/// \return the loads; or an error for a load that is not finite, or weights that are not positive or of another number
/// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-12.
inline Outcome<ElasticShear> try_elastic_shear(const Pattern& pattern, const ShearLoad& load,
                                               const std::vector<double>& weights = {}) {
  if (auto error = detail::shear_load_error(load)) return *error;
  if (!weights.empty() && weights.size() != pattern.size())
    return refusal("weights", static_cast<double>(weights.size()), "but must be one for each bolt; give all or none");
  for (std::size_t i = 0; i < weights.size(); ++i)
    if (!(weights[i] > 0 && std::isfinite(weights[i])))
      return detail::bolt_error("weights", i, "has a weight that is not above 0; leave out bolts that carry nothing");
  const auto weight = [&](std::size_t i) { return weights.empty() ? 1.0 : weights[i]; };

  ElasticShear answer;
  double sum = 0;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    sum += weight(i);
    answer.centre.x += weight(i) * pattern[i].x;
    answer.centre.y += weight(i) * pattern[i].y;
  }
  answer.centre = {answer.centre.x / sum, answer.centre.y / sum};
  double polar = 0;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const double r = distance(pattern[i], answer.centre);
    polar += weight(i) * r * r;
  }
  const double torque = detail::torque_about(load, answer.centre);
  answer.torque = Torque(torque);
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const double dx = pattern[i].x - answer.centre.x;
    const double dy = pattern[i].y - answer.centre.y;
    answer.bolts.push_back({GroupBoltLoad::eval(load.x.si, sum / weight(i), -torque, dy, polar / weight(i)),
                            GroupBoltLoad::eval(load.y.si, sum / weight(i), torque, dx, polar / weight(i))});
    if (answer.bolts[i].size() > answer.bolts[answer.worst].size()) answer.worst = i;
  }
  answer.most = Force(answer.bolts[answer.worst].size());
  return answer;
}

/// \copydoc try_elastic_shear
/// \throws Error  instead of returning it
inline ElasticShear elastic_shear(const Pattern& pattern, const ShearLoad& load,
                                  const std::vector<double>& weights = {}) {
  return try_elastic_shear(pattern, load, weights).value();
}

/// How the force of a bolt grows with how far it is dragged along, up to the deformation at which the first one fails:
/// R/R_ult = (1 - exp(-rate d))^exponent, d being a share of that deformation.
/// The default is the test curve behind the structural tables, (1 - exp(-10 D))^0.55 with D in inches up to 0.34 in
/// (8.64 mm): one size and one grade of bolt (3/4 in, A325) in bearing, in use for all of them. It is not divided by
/// its greatest value of 0.9815, as the tables are not.
/// Source: AISC Steel Construction Manual as applied in the Companion Design Examples v16.0.
struct LoadDeformation {
  double rate = 3.4;
  double exponent = 0.55;

  /// \return share of R_ult at a share of the greatest deformation
  double operator()(double d) const noexcept { return of_rise(rise(d)); }
  /// \return 1 - exp(-rate d)
  double rise(double d) const noexcept { return -std::expm1(-rate * d); }
  /// \return the same share from `rise`
  double of_rise(double u) const noexcept { return std::pow(u, exponent); }
};

/// Strength of a group at which its most deformed bolt fails.
struct UltimateShear {
  /// Force that the group bears over the strength R_ult of one bolt; NaN where a torque alone acts.
  double coefficient = std::numeric_limits<double>::quiet_NaN();
  /// Torque that the group bears over R_ult, where a torque alone acts; else NaN.
  Length torque_coefficient{std::numeric_limits<double>::quiet_NaN()};
  /// About which the part turns; none where it moves without turning, as under a load through the centroid.
  std::optional<Position> centre;
  std::vector<ShearForce> bolts;  ///< shares of R_ult; they balance the load that the group bears
  std::size_t worst = 0;          ///< index of the bolt that is deformed most
  int iterations = 0;
};

namespace detail {

/// The state of a rigid part on its bolts: a displacement (x, y, turn), with which each bolt deforms.
/// Turning is measured at the group's own length, so that all three are of one size.
class ShearState {
 public:
  ShearState(const Pattern& pattern, const LoadDeformation& law) : law_(law), centroid_(pattern.centroid()) {
    double sum = 0;
    for (const Position p : pattern) sum += square(p.x - centroid_.x) + square(p.y - centroid_.y);
    length_ = std::sqrt(sum / static_cast<double>(pattern.size()));
    for (const Position p : pattern) arm_.push_back({(p.x - centroid_.x) / length_, (p.y - centroid_.y) / length_});
  }

  Position centroid() const noexcept { return centroid_; }
  double length() const noexcept { return length_; }
  std::size_t worst() const noexcept { return worst_; }

  /// \return how a bolt is displaced
  ShearForce displaced(std::size_t i, const Vector3& q) const noexcept {
    return {q[0] - q[2] * arm_[i].y, q[1] + q[2] * arm_[i].x};
  }
  /// \return its force; that of a bolt at the centre of turning is 0, with a slope that is finite
  ShearForce force(std::size_t i, const Vector3& q) const noexcept {
    const ShearForce d = displaced(i, q);
    const double secant = secant_at(d.size());
    return {secant * d.x, secant * d.y};
  }
  /// Scales a displacement so that the most deformed bolt is at its limit.
  void to_limit(Vector3& q) noexcept {
    double most = 0;
    for (std::size_t i = 0; i < arm_.size(); ++i) {
      const ShearForce d = displaced(i, q);
      const double squares = d.x * d.x + d.y * d.y;
      if (squares > most) {
        most = squares;
        worst_ = i;
      }
    }
    for (double& part : q) part /= std::sqrt(most);
  }
  /// \return sum of forces and torque; `secant` and `tangent` get the stiffnesses that belong to them
  Vector3 resist(const Vector3& q, Matrix3& secant, Matrix3& tangent) const noexcept {
    secant = {};
    tangent = {};
    Vector3 sum{};
    for (std::size_t i = 0; i < arm_.size(); ++i) {
      const Vector3 across{1, 0, -arm_[i].y};
      const Vector3 up{0, 1, arm_[i].x};
      const ShearForce d = displaced(i, q);
      const double size = std::max(std::sqrt(d.x * d.x + d.y * d.y), tiny);
      const double rise = law_.rise(size);
      const double s = law_.of_rise(rise) / size;
      for (std::size_t k = 0; k < 3; ++k) sum[k] += s * (d.x * across[k] + d.y * up[k]);
      add_outer(secant, s, across);
      add_outer(secant, s, up);
      // R' = R x exponent x rate x (1 - rise)/rise; along the displacement it stands in place of the secant.
      const double slope = size > tiny ? s * size * law_.exponent * law_.rate * (1 - rise) / rise : s;
      const double nx = d.x / size;
      const double ny = d.y / size;
      add_outer(tangent, s, across);
      add_outer(tangent, s, up);
      add_outer(tangent, slope - s, {nx, ny, arm_[i].x * ny - arm_[i].y * nx});
    }
    return sum;
  }

 private:
  static constexpr double tiny = 1e-12;
  static constexpr double square(double x) noexcept { return x * x; }
  double secant_at(double d) const noexcept { return law_(std::max(d, tiny)) / std::max(d, tiny); }

  LoadDeformation law_;
  Position centroid_;
  double length_ = 1;
  std::vector<Position> arm_;
  std::size_t worst_ = 0;
};

/// \return part of `g` that does not balance a multiple of the load, over `g`
inline double imbalance(const Vector3& g, const Vector3& load) noexcept {
  const double share = dot(g, load) / dot(load, load);
  Vector3 rest = g;
  for (std::size_t k = 0; k < 3; ++k) rest[k] -= share * load[k];
  return share > 0 ? std::sqrt(dot(rest, rest) / dot(g, g)) : 1;
}

/// Secant steps, each the elastic solution for the present stiffness of every bolt: slow and sure. Newton's steps with
/// the tangent: fast, and taken only while they come closer.
/// \return the number of steps; -1 if they do not settle
inline int settle(ShearState& state, const Vector3& load, Vector3& q) noexcept {
  Matrix3 secant{};
  Matrix3 tangent{};
  for (std::size_t k = 0; k < 3; ++k) secant[4 * k] = 1;  // the first step is the elastic one: equal stiffness
  q = load;
  state.to_limit(q);
  Vector3 g = state.resist(q, secant, tangent);
  double off = imbalance(g, load);
  for (int i = 1; i <= 200; ++i) {
    if (off < 1e-13) return i;
    Vector3 next = load;
    Vector3 rest = g;
    bool closer = false;
    if (cholesky(tangent, 3)) {
      // q + dq = C K^-1 p + (q - K^-1 g), with C such that the worst bolt stays at its limit.
      cholesky_solve(tangent, 3, next);
      cholesky_solve(tangent, 3, rest);
      const ShearForce n = state.displaced(state.worst(), q);
      const ShearForce by_load = state.displaced(state.worst(), next);
      const ShearForce by_rest = state.displaced(state.worst(), rest);
      const double along = n.x * by_load.x + n.y * by_load.y;
      const double factor = along > 0 ? (n.x * by_rest.x + n.y * by_rest.y) / along : 0;
      for (std::size_t k = 0; k < 3; ++k) next[k] = q[k] + factor * next[k] - rest[k];
      ShearState tried = state;
      tried.to_limit(next);
      Matrix3 s{};
      const Vector3 forces = tried.resist(next, s, tangent);
      const double remains = imbalance(forces, load);
      closer = remains < 0.5 * off;
      if (closer) {
        state = tried;
        q = next;
        g = forces;
        secant = s;
        off = remains;
      }
    }
    if (closer) continue;
    next = load;
    if (!cholesky(secant, 3)) return -1;
    cholesky_solve(secant, 3, next);
    state.to_limit(next);
    q = next;
    g = state.resist(q, secant, tangent);
    off = imbalance(g, load);
  }
  return off < 1e-9 ? 200 : -1;
}

}  // namespace detail

/// Strength in eccentric shear by the instantaneous centre of rotation: the part turns about the one place for which
/// the forces of the bolts, each at right angles to its radius, balance the load. Only the line and direction of the
/// load count, or its sense of turning where it is a torque alone.
/// Rigid parts, bearing bolts that can deform; not for slip-critical joints and not for fatigue.
/// A load through the centroid moves the part without turning it: all bolts are deformed alike, and the coefficient is
/// 0.9815 per bolt, the greatest value of the law. There is no step as the arm goes to zero; tables that list the plain
/// number of bolts at zero arm have a step of 1.9 % there.
/// \return the strength; or an error for a load that is not finite or zero, or a law that is not positive
/// Accuracy: the forces balance to 1e-9 of the load or better.
/// Source: AISC Steel Construction Manual, instantaneous centre method, as applied in the Companion Design Examples
/// v16.0.
inline Outcome<UltimateShear> try_ultimate_shear(const Pattern& pattern, const ShearLoad& load,
                                                 const LoadDeformation& law = {}) {
  if (auto error = detail::shear_load_error(load)) return *error;
  if (!(law.rate > 0 && law.rate <= 50))
    return refusal("rate", law.rate, "but must be above 0, up to 50; give the rate of the load-deformation law");
  if (!(law.exponent > 0 && law.exponent <= 1))
    return refusal("exponent", law.exponent, "but must be above 0, up to 1; give that of the load-deformation law");

  detail::ShearState state(pattern, law);
  const double force = std::hypot(load.x.si, load.y.si);
  const double torque = detail::torque_about(load, state.centroid());
  const double unit = force > 0 ? force : std::fabs(torque) / state.length();
  if (!(unit > 0 && std::isfinite(unit)))
    return Error("load", "the load is zero or too large; give a force or a torque in the plane of the joint");
  const detail::Vector3 direction{load.x.si / unit, load.y.si / unit, torque / state.length() / unit};
  if (!std::isfinite(direction[2]))
    return Error("load", "the torque is beyond all measure of the force; give the force as 0 if a torque alone acts");

  detail::Vector3 q{};
  UltimateShear answer;
  answer.iterations = detail::settle(state, direction, q);
  if (answer.iterations < 0)
    return Error("load", "no centre of rotation was found for this load and pattern; use the elastic vector method");
  double coefficient = 0;
  {
    detail::Matrix3 secant{};
    detail::Matrix3 tangent{};
    coefficient = detail::dot(state.resist(q, secant, tangent), direction) / detail::dot(direction, direction);
  }
  if (force > 0)
    answer.coefficient = coefficient;
  else
    answer.torque_coefficient = Length(coefficient * state.length());
  answer.worst = state.worst();
  for (std::size_t i = 0; i < pattern.size(); ++i) answer.bolts.push_back(state.force(i, q));
  // Where the displacement is zero; a radius of more than 1e9 lengths is no turning.
  if (std::fabs(q[2]) > 1e-9)
    answer.centre =
        Position{state.centroid().x - q[1] / q[2] * state.length(), state.centroid().y + q[0] / q[2] * state.length()};
  return answer;
}

/// \copydoc try_ultimate_shear
/// \throws Error  instead of returning it
inline UltimateShear ultimate_shear(const Pattern& pattern, const ShearLoad& load, const LoadDeformation& law = {}) {
  return try_ultimate_shear(pattern, load, law).value();
}

}  // namespace tauten::TAUTEN_ABI
