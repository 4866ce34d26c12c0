// How many ways round a part goes on, and whether one pattern fits another.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// One way in which a part goes on another.
struct Way {
  Angle turn;            ///< of the part, clockwise, -180 to 180 deg; about its centre, after turning it over
  bool flipped = false;  ///< true if the part is turned over first, left to right
  std::vector<std::size_t> partner;  ///< for each bolt of the part, the place that it goes to
  std::size_t worst = 0;             ///< bolt that is farthest from its place
  Length off;                        ///< how far that is
};

namespace detail {

/// Places sorted by x, to find the one near a point without looking at all of them.
class PlaceFinder {
 public:
  explicit PlaceFinder(const std::vector<Position>& at) : at_(at), by_x_(at.size()) {
    for (std::size_t i = 0; i < by_x_.size(); ++i) by_x_[i] = i;
    std::sort(by_x_.begin(), by_x_.end(), [&](std::size_t a, std::size_t b) { return at_[a].x < at_[b].x; });
  }
  /// \return the nearest place within a distance
  std::optional<std::size_t> near(Position p, double within) const {
    std::optional<std::size_t> found;
    double least = within;
    auto it = std::lower_bound(by_x_.begin(), by_x_.end(), p.x - within,
                               [&](std::size_t i, double x) { return at_[i].x < x; });
    for (; it != by_x_.end() && at_[*it].x <= p.x + within; ++it)
      if (const double far = distance(at_[*it], p); far <= least) {
        least = far;
        found = *it;
      }
    return found;
  }
  /// \return the least distance of two places
  double least_distance() const noexcept {
    double least = distance(at_[0], at_[1]);
    for (std::size_t i = 0; i < by_x_.size(); ++i)
      for (std::size_t k = i + 1; k < by_x_.size() && at_[by_x_[k]].x - at_[by_x_[i]].x < least; ++k)
        least = std::min(least, distance(at_[by_x_[i]], at_[by_x_[k]]));
    return least;
  }

 private:
  std::vector<Position> at_;
  std::vector<std::size_t> by_x_;
};

inline std::vector<Position> about_centroid(const Pattern& pattern) {
  const Position centre = pattern.centroid();
  std::vector<Position> at;
  for (const Position p : pattern) at.push_back({p.x - centre.x, p.y - centre.y});
  return at;
}

inline Position turned(Position p, double angle) noexcept {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {c * p.x + s * p.y, c * p.y - s * p.x};
}

}  // namespace detail

/// All ways in which a part goes on a pattern so that each bolt comes within a tolerance of its place. The part is laid
/// centre on centre and turned so that its outermost bolt meets each place in turn; each way that nearly fits is then
/// turned to the least sum of squares.
/// \param part       the bolts, or holes, of the part
/// \param on         the holes that it goes on, as many
/// \param tolerance  greatest distance of a bolt from its place; half of the play of a bolt in two holes, for example
/// \param flipped    true: the part is turned over first
/// \return the ways by their turn; none if the part does not go on; an error for a tolerance that is not positive or
///         not below half of the least distance of two bolts, with which a bolt could go to either
inline Outcome<std::vector<Way>> try_ways_on(const Pattern& part, const Pattern& on, Length tolerance,
                                             bool flipped = false) {
  if (!is_positive(tolerance)) return refusal("tolerance", tolerance, "but must be above 0; 0.5 mm is a caliper's");
  std::vector<Position> from = detail::about_centroid(part);
  const std::vector<Position> to = detail::about_centroid(on);
  if (flipped)
    for (Position& p : from) p.x = -p.x;
  const detail::PlaceFinder finder(to);
  if (!(2 * tolerance.si < finder.least_distance()))
    return refusal("tolerance", tolerance, "but must be below half of the minimum distance of two bolts; give less");
  std::vector<Way> ways;
  if (from.size() != to.size()) return ways;
  std::size_t outer = 0;
  for (std::size_t i = 0; i < from.size(); ++i)
    if (std::hypot(from[i].x, from[i].y) > std::hypot(from[outer].x, from[outer].y) + least_bolt_distance) outer = i;
  const double far = std::hypot(from[outer].x, from[outer].y);
  // Both the centre and the outermost bolt may be off by the tolerance when the turn is first guessed.
  const double window = 4 * tolerance.si;
  for (const Position meets : to) {
    if (std::fabs(std::hypot(meets.x, meets.y) - far) > window) continue;
    double turn = std::atan2(meets.x, meets.y) - std::atan2(from[outer].x, from[outer].y);
    Way way;
    way.flipped = flipped;
    bool fits = true;
    // Partners by the guess, the best turn for them, and partners anew by that.
    for (int round = 0; round < 2 && fits; ++round) {
      std::vector<bool> taken(to.size());
      way.partner.clear();
      double sine = 0;
      double cosine = 0;
      for (const Position p : from) {
        const auto partner = finder.near(detail::turned(p, turn), round == 0 ? window : 2 * tolerance.si);
        fits = partner && !taken[*partner];
        if (!fits) break;
        taken[*partner] = true;
        way.partner.push_back(*partner);
        const Position q = to[*partner];
        sine += q.x * p.y - q.y * p.x;
        cosine += q.x * p.x + q.y * p.y;
      }
      if (fits) turn = std::atan2(sine, cosine);
    }
    if (!fits) continue;
    double most = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
      const double off = distance(detail::turned(from[i], turn), to[way.partner[i]]);
      if (off > most) {
        most = off;
        way.worst = i;
      }
    }
    if (most > tolerance.si) continue;
    // What is left of rounding is nothing to a person.
    way.turn = Angle(std::fabs(turn) < 1e-9 ? 0 : turn);
    way.off = Length(most < 1e-9 ? 0 : most);
    const bool known = std::any_of(ways.begin(), ways.end(), [&](const Way& w) { return w.partner == way.partner; });
    if (!known) ways.push_back(std::move(way));
  }
  std::sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.turn.si < b.turn.si; });
  return ways;
}

/// Ways in which a part goes back on its own pattern: n for an even ring, 2 for a rectangle, 1 with one odd hole.
inline Outcome<std::vector<Way>> try_ways_round(const Pattern& pattern, Length tolerance, bool flipped = false) {
  return try_ways_on(pattern, pattern, tolerance, flipped);
}

}  // namespace tauten::TAUTEN_ABI
