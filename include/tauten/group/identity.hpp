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

/// Rows and columns through places.
struct RowsFit {
  double turn = 0;                    ///< of the rows, counter-clockwise
  std::vector<double> columns, rows;  ///< their places in the turned directions, rising
  double greatest = 0;                ///< farthest that a hole is from where its row and column meet
};

/// Rows and columns, in the direction from some hole to its nearest neighbour.
/// \param places  of the whole pattern: as many as there are holes, or one more for an empty one
inline std::optional<RowsFit> fit_rows(const std::vector<Position>& at, std::size_t places, double tolerance) {
  std::size_t near = 1;
  for (std::size_t i = 2; i < at.size(); ++i)
    if (distance(at[i], at[0]) < distance(at[near], at[0])) near = i;
  // The line through all holes of a row tells its direction better than two holes do.
  RowsFit fit;
  fit.turn = std::atan2(at[near].y - at[0].y, at[near].x - at[0].x);
  std::vector<double> u, v;
  const auto bands = [&](const std::vector<double>& along) {
    std::vector<double> sorted = along;
    std::sort(sorted.begin(), sorted.end());
    std::vector<double> middle;
    double held = 0;
    for (const double x : sorted) {
      if (!middle.empty() && x - middle.back() <= 2 * tolerance) {
        middle.back() += (x - middle.back()) / ++held;
      } else {
        middle.push_back(x);
        held = 1;
      }
    }
    return middle;
  };
  for (int round = 0; round < 4; ++round) {
    u.clear();
    v.clear();
    for (const Position p : at) {
      u.push_back(std::cos(fit.turn) * p.x + std::sin(fit.turn) * p.y);
      v.push_back(std::cos(fit.turn) * p.y - std::sin(fit.turn) * p.x);
    }
    fit.rows = bands(v);
    if (round == 3) break;
    double uv = 0;
    double uu = 0;
    for (const double row : fit.rows) {
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
    if (uu > 0) fit.turn += std::atan2(uv, uu);
  }
  fit.columns = bands(u);
  if (fit.columns.size() * fit.rows.size() != places) return {};
  // No two holes where the same row and column meet.
  std::vector<bool> taken(places);
  for (std::size_t i = 0; i < at.size(); ++i) {
    const auto nearest = [](const std::vector<double>& lines, double x) {
      std::size_t least = 0;
      for (std::size_t k = 1; k < lines.size(); ++k)
        if (std::fabs(lines[k] - x) < std::fabs(lines[least] - x)) least = k;
      return least;
    };
    const std::size_t column = nearest(fit.columns, u[i]);
    const std::size_t row = nearest(fit.rows, v[i]);
    fit.greatest = std::max(fit.greatest, std::hypot(fit.columns[column] - u[i], fit.rows[row] - v[i]));
    if (taken[row * fit.columns.size() + column]) return {};
    taken[row * fit.columns.size() + column] = true;
  }
  if (fit.greatest > tolerance) return {};
  return fit;
}

inline void take_rows(PatternIdentity& found, const RowsFit& fit, std::size_t holes) {
  found.off = Length(fit.greatest);
  found.width = Length(fit.columns.back() - fit.columns.front());
  found.height = Length(fit.rows.back() - fit.rows.front());
  found.columns = fit.columns.size();
  found.rows = fit.rows.size();
  if (found.height.si > found.width.si) {
    std::swap(found.width, found.height);
    std::swap(found.columns, found.rows);
  }
  found.freedom = 2 * holes - (found.columns + found.rows + 1);
}

inline bool take_grid(PatternIdentity& found, const std::vector<Position>& at, double tolerance) {
  const std::optional<RowsFit> fit = fit_rows(at, at.size(), tolerance);
  if (!fit) return false;
  take_rows(found, *fit, at.size());
  found.kind = found.rows == 1 ? PatternKind::line : at.size() == 4 ? PatternKind::rectangle : PatternKind::grid;
  return true;
}

/// The one hole without which the others stand in rows and columns with one empty place, near which it is: within a
/// tenth of the distance of the rows. Lines are left out: any hole is beside them.
inline bool take_odd_in_rows(PatternIdentity& found, const std::vector<Position>& at, double tolerance) {
  const std::size_t n = at.size();
  if (n < 4 || n > 64) return false;
  std::optional<RowsFit> best;
  for (std::size_t i = 0; i < n; ++i) {
    std::vector<Position> others = at;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    const std::optional<RowsFit> fit = fit_rows(others, n, tolerance);
    if (!fit || fit->rows.size() < 2 || fit->columns.size() < 2) continue;
    const double u = std::cos(fit->turn) * at[i].x + std::sin(fit->turn) * at[i].y;
    const double v = std::cos(fit->turn) * at[i].y - std::sin(fit->turn) * at[i].x;
    double pitch = 1e9;
    double off = 1e9;
    for (const auto* lines : {&fit->columns, &fit->rows})
      for (std::size_t k = 1; k < lines->size(); ++k) pitch = std::min(pitch, (*lines)[k] - (*lines)[k - 1]);
    for (const double column : fit->columns)
      for (const double row : fit->rows) off = std::min(off, std::hypot(u - column, v - row));
    if (off > pitch / 10) continue;
    if (best) {  // four holes, two of which would explain it: no one can tell which
      found.odd.reset();
      return false;
    }
    best = fit;
    found.odd = i;
    found.odd_by = Length(off);
  }
  if (!best) return false;
  take_rows(found, *best, n - 1);
  found.kind = PatternKind::odd_hole;
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
/// least sum of squares; four holes or more); a circle with empty places, at most a third of the holes; a rectangle or
/// grid with one hole out of place; an uneven circle.
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
             !detail::take_missing_holes(found, at, tolerance.si) &&
             !detail::take_odd_in_rows(found, at, tolerance.si)) {
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
