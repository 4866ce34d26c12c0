// How many ways round a part goes on, and whether one pattern fits another.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "tauten/base/interruption.hpp"
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

namespace detail {

/// The bolt of a part that is farthest from its centroid.
inline std::size_t outermost(const std::vector<Position>& at) noexcept {
  std::size_t outer = 0;
  for (std::size_t i = 0; i < at.size(); ++i)
    if (std::hypot(at[i].x, at[i].y) > std::hypot(at[outer].x, at[outer].y) + least_bolt_distance) outer = i;
  return outer;
}

/// \return a turn in -180 to 180 deg without what is left of rounding; half a turn is one, whichever way
inline Angle plain_turn(double turn) noexcept {
  if (std::fabs(turn) < 1e-9) return Angle(0);
  return Angle(turn < 1e-9 - pi<double>() ? turn + 2 * pi<double>() : turn);
}

/// Ways in the order in which they are listed, of the part or of an answer: by turn to a billionth of a radian, so that
/// rounding decides nothing, then by partners.
template <class W, class Partners>
void sort_ways(std::vector<W>& ways, Partners W::* partners) {
  std::sort(ways.begin(), ways.end(), [&](const W& a, const W& b) {
    const double left = std::round(1e9 * a.turn.si);
    const double right = std::round(1e9 * b.turn.si);
    return left != right ? left < right : a.*partners < b.*partners;
  });
}

/// The way near a guess: partners by the guess, the best turn and shift for them, and partners anew by these.
/// \param from  bolts of the part about their centroid, so that the best shift is the mean of their partners
inline std::optional<Way> way_near(const std::vector<Position>& from, const std::vector<Position>& to,
                                   const PlaceFinder& finder, double turn, Position shift, double window,
                                   double tolerance) {
  const auto laid = [&](Position p) {
    const Position q = turned(p, turn);
    return Position{q.x + shift.x, q.y + shift.y};
  };
  Way way;
  for (int round = 0; round < 2; ++round) {
    std::vector<bool> taken(to.size());
    way.partner.clear();
    double sine = 0;
    double cosine = 0;
    Position mean;
    const double count = static_cast<double>(from.size());
    for (const Position p : from) {
      const auto partner = finder.near(laid(p), round == 0 ? window : 2 * tolerance);
      if (!partner || taken[*partner]) return {};
      taken[*partner] = true;
      way.partner.push_back(*partner);
      const Position q = to[*partner];
      sine += q.x * p.y - q.y * p.x;
      cosine += q.x * p.x + q.y * p.y;
      mean = {mean.x + q.x / count, mean.y + q.y / count};
    }
    turn = std::atan2(sine, cosine);
    shift = mean;
  }
  double most = 0;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const double off = distance(laid(from[i]), to[way.partner[i]]);
    if (off > most) {
      most = off;
      way.worst = i;
    }
  }
  if (most > tolerance) return {};
  // What is left of rounding is nothing to a person.
  way.turn = plain_turn(turn);
  if (most < 1e-9) most = 0, way.worst = 0;
  way.off = Length(most);
  return way;
}

/// Ways in which all bolts of a part come on some of more places. The outermost bolt and the one farthest from it are
/// laid on each pair of places that is as far apart.
inline void add_ways_on_some(std::vector<Way>& ways, const std::vector<Position>& from, const std::vector<Position>& to,
                             const PlaceFinder& finder, double window, double tolerance) {
  const std::size_t outer = outermost(from);
  std::size_t far = outer == 0 ? 1 : 0;
  for (std::size_t i = 0; i < from.size(); ++i)
    if (distance(from[i], from[outer]) > distance(from[far], from[outer]) + least_bolt_distance) far = i;
  const auto middle = [](Position a, Position b) { return Position{(a.x + b.x) / 2, (a.y + b.y) / 2}; };
  const auto direction = [](Position a, Position b) { return std::atan2(b.x - a.x, b.y - a.y); };
  for (std::size_t one = 0; one < to.size(); ++one) {
    attend();
    for (std::size_t other = 0; other < to.size(); ++other) {
      if (other == one || std::fabs(distance(to[one], to[other]) - distance(from[outer], from[far])) > window) continue;
      const double turn = direction(to[one], to[other]) - direction(from[outer], from[far]);
      const Position to_middle = middle(to[one], to[other]);
      const Position from_middle = turned(middle(from[outer], from[far]), turn);
      auto way = way_near(from, to, finder, turn, {to_middle.x - from_middle.x, to_middle.y - from_middle.y}, window,
                          tolerance);
      // Each way is met once: by the pair that it has.
      if (way && way->partner[outer] == one && way->partner[far] == other) ways.push_back(std::move(*way));
    }
  }
}

/// \param some  the part has fewer bolts than there are places, else as many; or there is no way
inline Outcome<std::vector<Way>> ways_on(const Pattern& part, const Pattern& on, Length tolerance, bool flipped,
                                         bool some) {
  if (!is_positive(tolerance)) return refusal("tolerance", tolerance, "but must be above 0; 0.5 mm is a caliper's");
  std::vector<Position> from = about_centroid(part);
  const std::vector<Position> to = about_centroid(on);
  if (flipped)
    for (Position& p : from) p.x = -p.x;
  const PlaceFinder finder(to);
  if (!(2 * tolerance.si < finder.least_distance()))
    return refusal("tolerance", tolerance, "but must be below half of the minimum distance of two bolts; give less");
  std::vector<Way> ways;
  // Both the centre and the outermost bolt may be off by the tolerance when the turn is first guessed.
  const double window = 4 * tolerance.si;
  if (some && from.size() < to.size()) add_ways_on_some(ways, from, to, finder, window, tolerance.si);
  if (!some && from.size() == to.size()) {
    const Position outer = from[outermost(from)];
    for (const Position meets : to) {
      if (std::fabs(std::hypot(meets.x, meets.y) - std::hypot(outer.x, outer.y)) > window) continue;
      const double turn = std::atan2(meets.x, meets.y) - std::atan2(outer.x, outer.y);
      auto way = way_near(from, to, finder, turn, {}, window, tolerance.si);
      if (way &&
          std::none_of(ways.begin(), ways.end(), [&](const Way& known) { return known.partner == way->partner; }))
        ways.push_back(std::move(*way));
    }
  }
  for (Way& way : ways) way.flipped = flipped;
  sort_ways(ways, &Way::partner);
  return ways;
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
  return detail::ways_on(part, on, tolerance, flipped, false);
}

/// All ways in which every bolt of a part comes within a tolerance of one of more places, each turned and moved to the
/// least sum of squares. That bolts go in is no proof that the parts belong together: it is another joint.
/// \param part  with fewer bolts than there are places
/// \return as `try_ways_on`; none as well if the part has as many bolts or more
inline Outcome<std::vector<Way>> try_ways_on_some(const Pattern& part, const Pattern& on, Length tolerance,
                                                  bool flipped = false) {
  return detail::ways_on(part, on, tolerance, flipped, true);
}

/// Ways in which a part goes back on its own pattern: n for an even ring, 2 for a rectangle, 1 with one odd hole.
inline Outcome<std::vector<Way>> try_ways_round(const Pattern& pattern, Length tolerance, bool flipped = false) {
  return try_ways_on(pattern, pattern, tolerance, flipped);
}

}  // namespace tauten::TAUTEN_ABI
