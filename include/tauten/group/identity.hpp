// Which pattern the measured holes are: what they lie on, which hole is out of place, how many ways round the part goes.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <optional>
#include <vector>

#include "tauten/group/fit.hpp"
#include "tauten/group/ways.hpp"

namespace tauten::TAUTEN_ABI {

/// What measured holes are, and what the measurement can tell.
struct PatternIdentity {
  PatternKind kind = PatternKind::irregular;
  Position centre;                       ///< of the circle; else the centroid
  Length circle_diameter{std::nan("")};  ///< bolt circle; NaN where there is none
  Length circle_error{std::nan("")};     ///< standard uncertainty of it, from the scatter; NaN if nothing tells
  Angle first{std::nan("")};             ///< of the first place of an even ring, clockwise from the top
  Length width{std::nan("")};            ///< longer side of a rectangle, grid or line; NaN where there is none
  Length height{std::nan("")};           ///< shorter side
  std::size_t columns = 0;               ///< along the longer side of a grid or line; 0 where there is none
  std::size_t rows = 0;                  ///< along the shorter side
  Length off;                            ///< farthest that a hole (but for an odd one) is from its place
  std::size_t freedom = 0;               ///< measured figures beyond what fixes the pattern; 0 proves nothing
  std::optional<std::size_t> odd;        ///< index of a hole that is out of place
  Length odd_by;                         ///< how far it is
  std::vector<Position> missing;         ///< places without a hole
  std::size_t ways_round = 1;            ///< in how many ways the part goes back on its own holes
  std::size_t ways_flipped = 0;          ///< in how many more if it is turned over
};

namespace detail {

inline void take_ring(PatternIdentity& found, const RingFit& ring) {
  found.centre = ring.centre;
  found.circle_diameter = Length(2 * ring.radius);
  found.circle_error = Length(2 * ring.radius_error);
  found.off = Length(ring.greatest);
  found.freedom = ring.freedom;
  found.first = ring.first;
  // The first place with a hole going clockwise from the top.
  const double step = 2 * pi<double>() / static_cast<double>(ring.places);
  found.first = Angle(ring.first.si - step * std::floor(ring.first.si / step + 1e-9));
}

/// Rows and columns, in the direction from some hole to its nearest neighbour.
inline bool take_grid(PatternIdentity& found, const std::vector<Position>& at, double tolerance) {
  std::size_t near = 1;
  for (std::size_t i = 2; i < at.size(); ++i)
    if (distance(at[i], at[0]) < distance(at[near], at[0])) near = i;
  // The line through all holes of a row tells its direction better than two holes do.
  double turn = std::atan2(at[near].y - at[0].y, at[near].x - at[0].x);
  std::vector<double> u, v;
  const auto bands = [&](const std::vector<double>& along) {
    std::vector<double> sorted = along;
    std::sort(sorted.begin(), sorted.end());
    std::vector<double> middle;
    std::vector<std::size_t> held;
    for (const double x : sorted) {
      if (!middle.empty() && x - middle.back() <= 2 * tolerance) {
        ++held.back();
        middle.back() += (x - middle.back()) / static_cast<double>(held.back());
      } else {
        middle.push_back(x);
        held.push_back(1);
      }
    }
    const bool even = std::all_of(held.begin(), held.end(), [&](std::size_t n) { return n == held.front(); });
    return even ? middle : std::vector<double>{};
  };
  for (int round = 0; round < 3; ++round) {
    u.clear();
    v.clear();
    for (const Position p : at) {
      u.push_back(std::cos(turn) * p.x + std::sin(turn) * p.y);
      v.push_back(std::cos(turn) * p.y - std::sin(turn) * p.x);
    }
    const std::vector<double> rows = bands(v);
    if (rows.empty()) break;
    double uv = 0;
    double uu = 0;
    for (const double row : rows) {
      double mean_u = 0;
      double mean_v = 0;
      double count = 0;
      const auto in = [&](std::size_t i) { return std::fabs(v[i] - row) <= 3 * tolerance; };
      for (std::size_t i = 0; i < at.size(); ++i)
        if (in(i)) mean_u += u[i], mean_v += v[i], count += 1;
      for (std::size_t i = 0; i < at.size(); ++i)
        if (in(i)) {
          uv += (u[i] - mean_u / count) * (v[i] - mean_v / count);
          uu += (u[i] - mean_u / count) * (u[i] - mean_u / count);
        }
    }
    if (uu > 0) turn += std::atan2(uv, uu);
  }
  const std::vector<double> columns = bands(u);
  const std::vector<double> rows = bands(v);
  if (columns.empty() || rows.empty() || columns.size() * rows.size() != at.size()) return false;
  double off = 0;
  for (std::size_t i = 0; i < at.size(); ++i) {
    const auto gap = [&](const std::vector<double>& lines, double x) {
      double least = std::fabs(lines[0] - x);
      for (const double line : lines) least = std::min(least, std::fabs(line - x));
      return least;
    };
    off = std::max(off, std::hypot(gap(columns, u[i]), gap(rows, v[i])));
  }
  if (off > tolerance) return false;
  found.off = Length(off);
  found.width = Length(columns.back() - columns.front());
  found.height = Length(rows.back() - rows.front());
  found.columns = columns.size();
  found.rows = rows.size();
  if (found.height.si > found.width.si) {
    std::swap(found.width, found.height);
    std::swap(found.columns, found.rows);
  }
  found.freedom = 2 * at.size() - (columns.size() + rows.size() + 1);
  found.kind = found.rows == 1 ? PatternKind::line : at.size() == 4 ? PatternKind::rectangle : PatternKind::grid;
  return true;
}

/// The one hole without which the others lie evenly, while it is out of its place.
inline bool take_odd_hole(PatternIdentity& found, const std::vector<Position>& at, double tolerance) {
  const std::size_t n = at.size();
  if (n < 4) return false;
  std::optional<RingFit> best;
  const auto circle = fit_circle(at);
  if (!circle) return false;
  // A bad hole pulls the circle towards itself and so shows a large distance, but seldom the largest one.
  std::vector<std::size_t> suspects(n);
  std::iota(suspects.begin(), suspects.end(), std::size_t{0});
  if (n > 64) {
    std::sort(suspects.begin(), suspects.end(),
              [&](std::size_t a, std::size_t b) { return std::fabs(circle->off[a]) > std::fabs(circle->off[b]); });
    suspects.resize(64);
  }
  for (const std::size_t i : suspects) {
    std::vector<Position> others = at;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    const std::optional<RingFit> ring = fit_ring(others, n);
    if (!ring || ring->greatest > tolerance || (best && ring->squares >= best->squares)) continue;
    best = ring;
    found.odd = i;
  }
  if (!best) return false;
  std::vector<bool> taken(n);
  for (const std::size_t k : best->place) taken[k] = true;
  const auto empty = static_cast<std::size_t>(std::find(taken.begin(), taken.end(), false) - taken.begin());
  take_ring(found, *best);
  found.kind = PatternKind::odd_hole;
  found.odd_by = Length(distance(at[*found.odd], best->at(empty)));
  found.missing.clear();
  return true;
}

/// A ring with a few more places than holes: at most one to three holes, so that any few holes are no ring.
inline bool take_missing_holes(PatternIdentity& found, const std::vector<Position>& at, double tolerance) {
  const std::size_t n = at.size();
  for (std::size_t places = n + 1; places <= n + std::max<std::size_t>(1, n / 3); ++places) {
    const std::optional<RingFit> ring = fit_ring(at, places);
    if (!ring || ring->greatest > tolerance) continue;
    take_ring(found, *ring);
    found.kind = PatternKind::missing_holes;
    std::vector<bool> taken(places);
    for (const std::size_t k : ring->place) taken[k] = true;
    for (std::size_t k = 0; k < places; ++k)
      if (!taken[k]) found.missing.push_back(ring->at(k));
    return true;
  }
  return false;
}

}  // namespace detail

/// Names the pattern of measured holes. Tried in this order, the first that all holes fit within the tolerance: an even
/// circle; rectangle, grid or line; a circle with one hole out of place (the hole without which the others fit with the
/// least sum of squares; four holes or more); a circle with empty places, at most a third of the holes; an uneven
/// circle.
/// \param tolerance  how far a hole may be from its place by error of measurement; 0.5 mm is that of a caliper (common
///                   practice, no source)
/// \return the identity; or an error for a tolerance that is not positive or not below half of the least distance of two
///         holes
/// Three holes always fit a circle, and two holes nothing else than a line: `freedom` is 0 then and proves nothing.
inline Outcome<PatternIdentity> try_identify_pattern(const Pattern& pattern, Length tolerance = Length(0.5e-3)) {
  PatternIdentity found;
  const auto ways = try_ways_round(pattern, tolerance);
  if (!ways) return ways.error();
  const auto over = try_ways_round(pattern, tolerance, true);
  found.ways_round = ways->size();
  found.ways_flipped = over->size();
  found.centre = pattern.centroid();
  const std::vector<Position>& at = pattern.positions();
  const std::optional<RingFit> ring = fit_ring(at, at.size());
  if (ring && ring->greatest <= tolerance.si) {
    detail::take_ring(found, *ring);
    found.kind = PatternKind::circle;
  } else if (!detail::take_grid(found, at, tolerance.si) && !detail::take_odd_hole(found, at, tolerance.si) &&
             !detail::take_missing_holes(found, at, tolerance.si)) {
    const std::optional<CircleFit> circle = fit_circle(at);
    if (circle && circle->greatest <= tolerance.si) {
      found.kind = PatternKind::uneven_circle;
      found.centre = circle->centre;
      found.circle_diameter = Length(2 * circle->radius);
      found.circle_error = Length(2 * circle->radius_error);
      found.off = Length(circle->greatest);
      found.freedom = circle->freedom;
    }
  }
  return found;
}

/// \copydoc try_identify_pattern
/// \throws Error  instead of returning it
inline PatternIdentity identify_pattern(const Pattern& pattern, Length tolerance = Length(0.5e-3)) {
  return try_identify_pattern(pattern, tolerance).value();
}

}  // namespace tauten::TAUTEN_ABI
