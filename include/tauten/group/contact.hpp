// Bolts that hold a part on a support which can press and cannot pull.
#pragma once

#include <algorithm>
#include <utility>

#include "tauten/group/tension.hpp"

namespace tauten::TAUTEN_ABI {

/// A rigid part on an elastic support of any outline, with bolts that only pull.
struct ContactFace {
  std::vector<Position> outline;  ///< corners of the part in m, in order round it; concave is allowed
  Area bolt_area;                 ///< stress area of one bolt
  double modular_ratio = 1;  ///< modulus of the bolts over that of the support: 1 steel on steel, 8 to 15 on concrete
};

/// External load of every bolt, with a support that bears by contact.
struct ContactTension {
  Tension tension;
  double edge_pressure = 0;  ///< greatest pressure on the support in Pa
  Force contact;             ///< force with which part and support press on each other
  bool lifted = false;       ///< true if the part touches the support nowhere
};

namespace detail {

/// Integrals over a polygon of 1, x, y, x^2, xy and y^2, by Green's theorem; positive for a polygon counter-clockwise.
struct PolygonSums {
  double one = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0;

  void add_edge(Position a, Position b) noexcept {
    const double w = a.x * b.y - b.x * a.y;
    one += w / 2;
    x += w * (a.x + b.x) / 6;
    y += w * (a.y + b.y) / 6;
    xx += w * (a.x * a.x + a.x * b.x + b.x * b.x) / 12;
    yy += w * (a.y * a.y + a.y * b.y + b.y * b.y) / 12;
    xy += w * (a.x * b.y + 2 * a.x * a.y + 2 * b.x * b.y + b.x * a.y) / 24;
  }
};

/// A plane over the part, w = q0 + q1 x + q2 y: how far a place is lifted, times the modulus of the support.
inline double lift(const Vector3& q, Position p) noexcept { return q[0] + q[1] * p.x + q[2] * p.y; }

/// \return the sums over the part of the polygon that is pressed, w < 0
inline PolygonSums pressed(const std::vector<Position>& outline, const Vector3& q) noexcept {
  PolygonSums sums;
  std::optional<Position> first;
  Position last;
  const auto corner = [&](Position p) {
    if (first)
      sums.add_edge(last, p);
    else
      first = p;
    last = p;
  };
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Position a = outline[i];
    const Position b = outline[(i + 1) % outline.size()];
    const double wa = lift(q, a);
    const double wb = lift(q, b);
    if (wa < 0) corner(a);
    if ((wa < 0) != (wb < 0)) {
      const double t = wa / (wa - wb);
      corner({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
    }
  }
  if (first) sums.add_edge(last, *first);
  return sums;
}

/// The part on its bolts and its support. The plane sought has the least energy, which is convex: Newton's steps,
/// shortened until the energy falls, lead to it.
class ContactState {
 public:
  ContactState(std::vector<Position> outline, std::vector<Position> bolts, double stiffness)
      : outline_(std::move(outline)), bolts_(std::move(bolts)), stiffness_(stiffness) {}

  /// \return energy of bolts and support, half of work of their forces; `forces` and `tangent` belong to it
  double resist(const Vector3& q, Vector3& forces, Matrix3& tangent) const noexcept {
    const PolygonSums s = pressed(outline_, q);
    tangent = {s.one, s.x, s.y, s.x, s.xx, s.xy, s.y, s.xy, s.yy};
    for (const Position p : bolts_)
      if (lift(q, p) > 0) add_outer(tangent, stiffness_, {1, p.x, p.y});
    for (std::size_t i = 0; i < 3; ++i)
      forces[i] = tangent[3 * i] * q[0] + tangent[3 * i + 1] * q[1] + tangent[3 * i + 2] * q[2];
    return dot(forces, q) / 2;
  }
  /// \return stiffness as long as nothing opens and all bolts act
  Matrix3 closed() const noexcept {
    PolygonSums s;
    for (std::size_t i = 0; i < outline_.size(); ++i) s.add_edge(outline_[i], outline_[(i + 1) % outline_.size()]);
    Matrix3 all = {s.one, s.x, s.y, s.x, s.xx, s.xy, s.y, s.xy, s.yy};
    for (const Position p : bolts_) add_outer(all, stiffness_, {1, p.x, p.y});
    return all;
  }

  /// \return true if the forces balance the load to 1e-9
  bool settle(const Vector3& load, Vector3& q) const noexcept {
    const Matrix3 all = closed();
    Matrix3 factor = all;
    if (!cholesky(factor, 3)) return false;
    q = load;
    cholesky_solve(factor, 3, q);
    const double size = std::sqrt(dot(load, load));
    Vector3 forces{};
    Matrix3 tangent{};
    double energy = resist(q, forces, tangent) - dot(load, q);
    for (int i = 0; i < 200; ++i) {
      Vector3 step{load[0] - forces[0], load[1] - forces[1], load[2] - forces[2]};
      const Vector3 rest = step;
      if (std::sqrt(dot(rest, rest)) <= 1e-10 * size) return true;
      factor = tangent;
      // Where too little bears, a trace of the closed stiffness keeps the step finite.
      if (!cholesky(factor, 3)) {
        for (std::size_t k = 0; k < 9; ++k) factor[k] = tangent[k] + 1e-6 * all[k];
        if (!cholesky(factor, 3)) return false;
      }
      cholesky_solve(factor, 3, step);
      const double falls = dot(rest, step);
      double share = 1;
      Vector3 next{};
      for (; share > 1e-12; share /= 2) {
        for (std::size_t k = 0; k < 3; ++k) next[k] = q[k] + share * step[k];
        const double reached = resist(next, forces, tangent) - dot(load, next);
        if (reached <= energy - 1e-4 * share * falls) {
          energy = reached;
          break;
        }
        // At the end rounding of the energy hides what the balance still shows.
        const Vector3 left{load[0] - forces[0], load[1] - forces[1], load[2] - forces[2]};
        if (dot(rest, rest) < 1e-4 * size * size && dot(left, left) < 0.25 * dot(rest, rest)) {
          energy = reached;
          break;
        }
      }
      if (share <= 1e-12) return std::sqrt(dot(rest, rest)) <= 1e-9 * size;
      q = next;
    }
    return false;
  }

 private:
  std::vector<Position> outline_;
  std::vector<Position> bolts_;
  double stiffness_;
};

inline std::optional<Error> contact_face_error(const ContactFace& face, double area) {
  for (std::size_t i = 0; i < face.outline.size(); ++i)
    if (!(std::fabs(face.outline[i].x) <= 1000 && std::fabs(face.outline[i].y) <= 1000))
      return bolt_error("outline", i, "is a corner that is not a number or beyond 1 km; give x and y in m");
  if (face.outline.size() < 3 || !(area > 1e-12))
    return Error("outline", "outline encloses no area, but the part must lie on something; give three corners or more");
  if (std::isnan(face.bolt_area.si))
    return Error("bolt_area", "the stress area of one bolt is not given, but this model needs it");
  if (!is_positive(face.bolt_area))
    return refusal("bolt_area", face.bolt_area, "but must be above 0; give that of one bolt");
  if (!(face.modular_ratio > 0 && face.modular_ratio <= 1000))
    return refusal("modular_ratio", face.modular_ratio, "but must be above 0, up to 1000; 1 is steel on steel");
  return {};
}

}  // namespace detail

/// Contact with a neutral axis: the rigid part turns so that bolts beyond the axis pull and the face on this side of it
/// presses, both in proportion to the distance. Any outline, two moments and a force. Bolts without preload; a preloaded
/// joint behaves so once it has opened.
/// \param load  at the centroid of the bolts
/// \return bolt loads (0 where the face presses) and the pressure; or an error for input without meaning, or a load
///         that would lift the part off bolts which cannot hold it (all in one line)
/// Accuracy: forces and moments balance to 1e-9. Source: textbook cracked section, from memory; for a rectangle it is
/// b y^2/2 = sum of m A (d - y).
inline Outcome<ContactTension> try_tension_with_contact(const Pattern& pattern, const LiftingLoad& load,
                                                        const ContactFace& face) {
  if (auto error = detail::lifting_load_error(load)) return *error;
  detail::PolygonSums sums;
  const Position centre = pattern.centroid();
  std::vector<Position> outline;
  for (const Position p : face.outline) outline.push_back({p.x - centre.x, p.y - centre.y});
  for (std::size_t i = 0; i < outline.size(); ++i) sums.add_edge(outline[i], outline[(i + 1) % outline.size()]);
  if (auto error = detail::contact_face_error(face, std::fabs(sums.one))) return *error;
  if (sums.one < 0) std::reverse(outline.begin(), outline.end());

  // All lengths over the root of the area, so that force and moments are of one size.
  const double length = std::sqrt(std::fabs(sums.one));
  std::vector<Position> bolts;
  for (Position& p : outline) p = {p.x / length, p.y / length};
  for (const Position p : pattern) bolts.push_back({(p.x - centre.x) / length, (p.y - centre.y) / length});
  const double stiffness = face.modular_ratio * face.bolt_area.si / (length * length);
  const detail::ContactState state(outline, bolts, stiffness);
  const detail::Vector3 forces{load.force.si, load.right.si / length, load.up.si / length};
  detail::Vector3 q{};
  ContactTension answer;
  if (detail::dot(forces, forces) > 0 && !state.settle(forces, q))
    return Error("load",
                 "the bolts and the support cannot hold this load: the part lifts off bolts in one line, or "
                 "turns over; give more bolts or a smaller moment");
  std::vector<double> pulls;
  double pulled = 0;
  for (const Position p : bolts) {
    pulls.push_back(stiffness * std::max(detail::lift(q, p), 0.0));
    pulled += pulls.back();
  }
  answer.tension = detail::tension_of(std::move(pulls));
  answer.contact = Force(std::max(pulled - load.force.si, 0.0));
  double deepest = 0;
  for (const Position p : outline) deepest = std::min(deepest, detail::lift(q, p));
  answer.edge_pressure = -deepest / (length * length);
  answer.lifted = deepest == 0;
  return answer;
}

/// \copydoc try_tension_with_contact
/// \throws Error  instead of returning it
inline ContactTension tension_with_contact(const Pattern& pattern, const LiftingLoad& load, const ContactFace& face) {
  return try_tension_with_contact(pattern, load, face).value();
}

}  // namespace tauten::TAUTEN_ABI
