// Where the bolts of a joint are: a pattern as a value.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <optional>
#include <utility>
#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/group/ring.hpp"
#include "tauten/group/terms.hpp"

namespace tauten::TAUTEN_ABI {

/// \return distance between two places in m
inline double distance(Position a, Position b) noexcept { return std::hypot(a.x - b.x, a.y - b.y); }

/// \return bolts as people number them, from 1
inline std::vector<int> numbered(const std::vector<std::size_t>& bolts) {
  std::vector<int> from_one;
  for (const std::size_t bolt : bolts) from_one.push_back(static_cast<int>(bolt) + 1);
  return from_one;
}

/// More positions than this are refused, so that a slip in a count does not fill the memory.
inline constexpr std::size_t most_bolts = 10000;

/// Bolts closer than this are one bolt: 1 um.
inline constexpr double least_bolt_distance = 1e-6;

/// Positions of at least two bolts, finite and none in the place of another; `try_pattern` and its kin make it.
class Pattern {
 public:
  std::size_t size() const noexcept { return at_.size(); }
  Position operator[](std::size_t i) const noexcept { return at_[i]; }
  const std::vector<Position>& positions() const noexcept { return at_; }
  auto begin() const noexcept { return at_.begin(); }
  auto end() const noexcept { return at_.end(); }

  /// \return mean of all positions: the centre of equal bolts
  Position centroid() const noexcept {
    Position sum;
    for (const Position p : at_) sum = {sum.x + p.x, sum.y + p.y};
    const double n = static_cast<double>(at_.size());
    return {sum.x / n, sum.y / n};
  }

 private:
  explicit Pattern(std::vector<Position> at) : at_(std::move(at)) {}
  friend Outcome<Pattern> try_pattern(std::vector<Position> at);

  std::vector<Position> at_;
};

namespace detail {

/// \return the error if a count lies outside `least` to `most_bolts`
inline std::optional<Error> count_error(const char* argument, std::size_t count, std::size_t least) {
  if (count >= least && count <= most_bolts) return {};
  char message[200];
  std::snprintf(message, sizeof message, "%s is %zu, but must be %zu to %zu; give that many bolts", argument, count,
                least, most_bolts);
  return Error(argument, message);
}

/// \return the error for a bolt at fault, counted from 1
inline Error bolt_error(const char* argument, std::size_t bolt, const char* rule) {
  char message[300];
  std::snprintf(message, sizeof message, "%s: bolt %zu %s", argument, bolt + 1, rule);
  return Error(argument, message);
}

/// \return the numbers of two bolts in one place, or none
inline std::optional<std::pair<std::size_t, std::size_t>> coinciding_bolts(const std::vector<Position>& at) {
  std::vector<std::size_t> by_x(at.size());
  for (std::size_t i = 0; i < at.size(); ++i) by_x[i] = i;
  std::sort(by_x.begin(), by_x.end(), [&](std::size_t a, std::size_t b) {
    return at[a].x < at[b].x || (at[a].x == at[b].x && at[a].y < at[b].y);
  });
  for (std::size_t i = 0; i < by_x.size(); ++i)
    for (std::size_t k = i + 1; k < by_x.size() && at[by_x[k]].x - at[by_x[i]].x < least_bolt_distance; ++k)
      if (distance(at[by_x[i]], at[by_x[k]]) < least_bolt_distance) return std::minmax(by_x[i], by_x[k]);
  return {};
}

}  // namespace detail

/// \param at  positions in m, in the order in which the bolts are numbered
/// \return the pattern; or an error for fewer than two positions, more than `most_bolts`, a coordinate that is not
///         finite or beyond 1 km, or two bolts closer than 1 um
inline Outcome<Pattern> try_pattern(std::vector<Position> at) {
  if (auto error = detail::count_error("positions", at.size(), 2)) return *error;
  for (std::size_t i = 0; i < at.size(); ++i)
    if (!(std::fabs(at[i].x) <= 1000 && std::fabs(at[i].y) <= 1000))
      return detail::bolt_error("positions", i,
                                "has a coordinate that is not a number or beyond 1 km; give x and y in m");
  if (const auto pair = detail::coinciding_bolts(at)) {
    char message[200];
    std::snprintf(message, sizeof message,
                  "positions: bolts %zu and %zu are in one place, but each bolt needs its own; correct one of them",
                  pair->first + 1, pair->second + 1);
    return Error("positions", message);
  }
  return Pattern(std::move(at));
}

/// Bolts evenly on a circle about the origin, numbered clockwise.
/// \param count     number of bolts, 2 or more
/// \param diameter  bolt circle
/// \param first     angle of bolt 1, clockwise from the top; 180 deg/count puts the top between two bolts
/// \return the pattern, or an error for a count below 2 or a diameter that is not positive
inline Outcome<Pattern> try_circle_pattern(std::size_t count, Length diameter, Angle first = {}) {
  if (auto error = detail::count_error("count", count, 2)) return *error;
  if (!is_positive(diameter)) return refusal("diameter", diameter, "but must be above 0; give the bolt circle");
  if (!std::isfinite(first.si)) return refusal("first", first, "but must be finite; give the angle of bolt 1");
  std::vector<Position> at;
  for (std::size_t i = 0; i < count; ++i) {
    const double angle = first.si + 2 * pi<double>() * static_cast<double>(i) / static_cast<double>(count);
    at.push_back({diameter.si / 2 * std::sin(angle), diameter.si / 2 * std::cos(angle)});
  }
  return try_pattern(std::move(at));
}

/// Bolts in rows and columns about the origin, numbered row by row from the upper left.
/// \param columns, rows         numbers of bolts across and down; one of them may be 1
/// \param column_pitch, row_pitch  distances between them; not read where there is one column or one row
/// \return the pattern, or an error for fewer than two bolts or a pitch that is not positive
inline Outcome<Pattern> try_grid_pattern(std::size_t columns, std::size_t rows, Length column_pitch, Length row_pitch) {
  if (auto error = detail::count_error("columns", columns, 1)) return *error;
  if (auto error = detail::count_error("rows", rows, 1)) return *error;
  if (columns > 1 && !is_positive(column_pitch))
    return refusal("column_pitch", column_pitch, "but must be above 0; give the distance between columns");
  if (rows > 1 && !is_positive(row_pitch))
    return refusal("row_pitch", row_pitch, "but must be above 0; give the distance between rows");
  if (auto error = detail::count_error("columns x rows", columns * rows, 2)) return *error;
  const auto from_middle = [](std::size_t i, std::size_t count, double pitch) {
    return count == 1 ? 0 : (static_cast<double>(i) - static_cast<double>(count - 1) / 2) * pitch;
  };
  std::vector<Position> at;
  for (std::size_t row = 0; row < rows; ++row)
    for (std::size_t column = 0; column < columns; ++column)
      at.push_back({from_middle(column, columns, column_pitch.si), -from_middle(row, rows, row_pitch.si)});
  return try_pattern(std::move(at));
}

/// Bolts in one line across, numbered from the left.
inline Outcome<Pattern> try_line_pattern(std::size_t count, Length pitch) {
  return try_grid_pattern(count, 1, pitch, {});
}

/// Bolts along the edges of a rectangle about the origin, as on a cover, numbered clockwise from the upper left corner.
/// \param width, height   distances between the outermost bolts
/// \param columns, rows   bolts along the upper edge and along a side, corners counted in both; 2 and 2: corners only
/// \return the pattern, or an error for a side that is not positive or fewer than two bolts on it
inline Outcome<Pattern> try_rectangle_pattern(Length width, Length height, std::size_t columns = 2,
                                              std::size_t rows = 2) {
  if (!is_positive(width)) return refusal("width", width, "but must be above 0; give the distance across");
  if (!is_positive(height)) return refusal("height", height, "but must be above 0; give the distance down");
  if (auto error = detail::count_error("columns", columns, 2)) return *error;
  if (auto error = detail::count_error("rows", rows, 2)) return *error;
  const double w = width.si / 2;
  const double h = height.si / 2;
  std::vector<Position> at;
  const auto side = [&](Position from, Position to, std::size_t bolts) {
    for (std::size_t i = 0; i + 1 < bolts; ++i) {
      const double t = static_cast<double>(i) / static_cast<double>(bolts - 1);
      at.push_back({from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)});
    }
  };
  side({-w, h}, {w, h}, columns);
  side({w, h}, {w, -h}, rows);
  side({w, -h}, {-w, -h}, columns);
  side({-w, -h}, {-w, h}, rows);
  return try_pattern(std::move(at));
}

/// A pattern with one bolt elsewhere: a ring with a wrong hole.
/// \param bolt  index from 0
/// \param to    its true place
inline Outcome<Pattern> try_moved(const Pattern& pattern, std::size_t bolt, Position to) {
  if (bolt >= pattern.size()) return detail::bolt_error("bolt", bolt, "is not in the pattern; give one that is");
  std::vector<Position> at = pattern.positions();
  at[bolt] = to;
  return try_pattern(std::move(at));
}

/// A pattern without one of its bolts; the ones behind it move up.
/// \param bolt  index from 0
inline Outcome<Pattern> try_without(const Pattern& pattern, std::size_t bolt) {
  if (bolt >= pattern.size()) return detail::bolt_error("bolt", bolt, "is not in the pattern; give one that is");
  std::vector<Position> at = pattern.positions();
  at.erase(at.begin() + static_cast<std::ptrdiff_t>(bolt));
  return try_pattern(std::move(at));
}

/// The bolt circle of evenly spaced holes from one measured chord, K = c/sin(180 deg k/n). Measure over as many holes
/// as possible: an error of the chord of neighbours is multiplied, 2.6 times with 8 holes and 7.7 times with 24.
/// \param count  number of holes, 2 or more
/// \param over   spaces from hole to hole between the two, 1 (neighbours) to count/2
/// \param chord  distance between the two hole centres
/// \return the diameter of the bolt circle
inline Outcome<Length> try_circle_from_chord(std::size_t count, std::size_t over, Length chord) {
  if (auto error = detail::count_error("count", count, 2)) return *error;
  if (over < 1 || over > count / 2)
    return refusal("over", static_cast<double>(over), "but must be 1 to half of the count; count the spaces between");
  if (!is_positive(chord)) return refusal("chord", chord, "but must be above 0; give the distance of the hole centres");
  return Length(CircleFromChord::eval(chord.si, static_cast<double>(over), static_cast<double>(count)));
}

/// Distance of two hole centres from two measurements with a caliper: their mean, free of the size of equal holes.
/// \param inside   between the near edges
/// \param outside  between the far edges
/// \return the centre distance, or an error unless 0 < inside < outside
inline Outcome<Length> try_centre_distance(Length inside, Length outside) {
  if (!is_positive(inside)) return refusal("inside", inside, "but must be above 0; measure between the near edges");
  if (!(outside.si > inside.si && std::isfinite(outside.si)))
    return refusal("outside", outside, "but must be above inside; measure between the far edges");
  return Length((inside.si + outside.si) / 2);
}

}  // namespace tauten::TAUTEN_ABI
