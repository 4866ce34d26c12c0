// Circles and rings of holes through measured places, by least squares.
#pragma once

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstddef>
#include <numeric>
#include <optional>
#include <vector>

#include "tauten/group/dense.hpp"
#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// A circle through places.
struct CircleFit {
  Position centre;
  double radius = 0;        ///< m
  std::vector<double> off;  ///< distance of each place from the circle in m, positive outside
  double greatest = 0;      ///< greatest of them, without sign
  std::size_t freedom = 0;  ///< measured figures beyond what the circle needs: 0 for three places, which always fit
  double radius_error = 0;  ///< standard uncertainty of the radius from the scatter of the places; NaN without freedom
};

/// The circle with the least sum of squared distances: linear least squares on x^2 + y^2 + D x + E y + F = 0 to start,
/// then the steps of Gauss and Newton on the distances.
/// \return the circle; none where the places are in one line, or fewer than three
/// Accuracy: the steps end at 1e-14 of the radius.
/// Source: textbook least squares, from memory.
inline std::optional<CircleFit> fit_circle(const std::vector<Position>& at) {
  const std::size_t n = at.size();
  if (n < 3) return {};
  const double count = static_cast<double>(n);
  Position mean;
  for (const Position p : at) mean = {mean.x + p.x / count, mean.y + p.y / count};
  double size = 0;
  for (const Position p : at) size = std::max(size, distance(p, mean));
  // In units of the size about the mean, so that the normal equations are well scaled.
  std::vector<Position> scaled;
  for (const Position p : at) scaled.push_back({(p.x - mean.x) / size, (p.y - mean.y) / size});
  detail::Matrix3 normal{};
  detail::Vector3 unknown{};
  for (const Position p : scaled) {
    const detail::Vector3 row{p.x, p.y, 1};
    const double square = p.x * p.x + p.y * p.y;
    detail::add_outer(normal, 1, row);
    for (std::size_t k = 0; k < 3; ++k) unknown[k] += square * row[k];
  }
  if (!detail::cholesky(normal, 3)) return {};
  detail::cholesky_solve(normal, 3, unknown);
  Position centre{unknown[0] / 2, unknown[1] / 2};
  double radius = std::sqrt(std::max(unknown[2] + centre.x * centre.x + centre.y * centre.y, 0.0));
  // Nearly in one line: a circle a thousand times as large as the joint is none that holes were drilled on.
  if (!(radius < 1000)) return {};
  for (int i = 0; i < 50; ++i) {
    normal = {};
    unknown = {};
    for (const Position p : scaled) {
      const double far = distance(p, centre);
      if (far == 0) continue;
      const detail::Vector3 row{(centre.x - p.x) / far, (centre.y - p.y) / far, -1};
      detail::add_outer(normal, 1, row);
      for (std::size_t k = 0; k < 3; ++k) unknown[k] -= (far - radius) * row[k];
    }
    if (!detail::cholesky(normal, 3)) break;
    detail::cholesky_solve(normal, 3, unknown);
    centre = {centre.x + unknown[0], centre.y + unknown[1]};
    radius += unknown[2];
    if (std::sqrt(detail::dot(unknown, unknown)) < 1e-14 * radius) break;
  }
  if (!(radius > 0 && radius < 1000)) return {};
  CircleFit fit;
  fit.centre = {mean.x + size * centre.x, mean.y + size * centre.y};
  fit.radius = radius * size;
  fit.freedom = n - 3;
  double squares = 0;
  for (const Position p : at) {
    fit.off.push_back(distance(p, fit.centre) - fit.radius);
    fit.greatest = std::max(fit.greatest, std::fabs(fit.off.back()));
    squares += fit.off.back() * fit.off.back();
  }
  fit.radius_error = fit.freedom > 0 ? std::sqrt(squares / static_cast<double>(fit.freedom) / count) : std::nan("");
  return fit;
}

/// A ring of evenly spaced places, some of which may be empty.
struct RingFit {
  Position centre;
  double radius = 0;               ///< m
  Angle first;                     ///< angle of place 0, clockwise from the top
  std::size_t places = 0;          ///< of the whole ring
  std::vector<std::size_t> place;  ///< of each hole, clockwise; no two in one
  std::vector<double> off;         ///< distance of each hole from its place in m
  double greatest = 0;             ///< greatest of them
  double squares = 0;              ///< sum of their squares in m^2
  std::size_t freedom = 0;         ///< 2 n - 4: measured figures beyond centre, radius and phase
  double radius_error = 0;         ///< standard uncertainty of the radius from the scatter; NaN without freedom

  /// \return where a place is, of a hole or empty
  Position at(std::size_t i) const noexcept {
    const double angle = first.si + 2 * pi<double>() * static_cast<double>(i) / static_cast<double>(places);
    return {centre.x + radius * std::sin(angle), centre.y + radius * std::cos(angle)};
  }
};

namespace detail {

/// Centre, radius and phase for holes whose places are known. In complex numbers a ring is c + r w^k, which is linear
/// in c and r, so that one step of Gauss and Newton is exact.
inline std::optional<RingFit> fit_to_places(const std::vector<Position>& at, std::size_t places,
                                            std::vector<std::size_t> place) {
  using Complex = std::complex<double>;
  const std::size_t n = at.size();
  const auto turned = [&](std::size_t k) {
    const double angle = 2 * pi<double>() * static_cast<double>(k) / static_cast<double>(places);
    return Complex(std::sin(angle), std::cos(angle));
  };
  // y + i x turns clockwise from the top: p = c + r (cos + i sin) with r's angle the phase.
  Complex mean_p, mean_w;
  const double count = static_cast<double>(n);
  std::vector<Complex> w, p;
  for (std::size_t i = 0; i < n; ++i) {
    const Complex t = turned(place[i]);
    w.emplace_back(t.imag(), t.real());
    p.emplace_back(at[i].y, at[i].x);
    mean_w += w[i] / count;
    mean_p += p[i] / count;
  }
  Complex over;
  double under = 0;
  for (std::size_t i = 0; i < n; ++i) {
    over += (p[i] - mean_p) * std::conj(w[i] - mean_w);
    under += std::norm(w[i] - mean_w);
  }
  if (!(under > 0)) return {};
  const Complex r = over / under;
  const Complex c = mean_p - r * mean_w;
  RingFit fit;
  fit.centre = {c.imag(), c.real()};
  fit.radius = std::abs(r);
  fit.first = Angle(std::arg(r));
  fit.places = places;
  fit.place = std::move(place);
  fit.freedom = 2 * n - 4;
  for (std::size_t i = 0; i < n; ++i) {
    fit.off.push_back(std::abs(p[i] - c - r * w[i]));
    fit.greatest = std::max(fit.greatest, fit.off[i]);
    fit.squares += fit.off[i] * fit.off[i];
  }
  fit.radius_error = fit.freedom > 0 ? std::sqrt(fit.squares / static_cast<double>(fit.freedom) / count) : std::nan("");
  return fit;
}

}  // namespace detail

/// The ring of evenly spaced places nearest to the holes. Centre and angles first come from the circle through them; the
/// phase from the sum of exp(i places angle), which does not care which hole is in which place.
/// \param at      the holes, in any order
/// \param places  of the whole ring, as many as there are holes or more
/// \return the ring; none where two holes would share a place, or no circle goes through them
inline std::optional<RingFit> fit_ring(const std::vector<Position>& at, std::size_t places) {
  const std::size_t n = at.size();
  if (n < 3 || places < n) return {};
  const std::optional<CircleFit> circle = fit_circle(at);
  if (!circle) return {};
  Position centre = circle->centre;
  std::optional<RingFit> fit;
  const double count = static_cast<double>(places);
  for (int round = 0; round < 3; ++round) {
    std::vector<double> angle;
    double sine = 0;
    double cosine = 0;
    for (const Position p : at) {
      angle.push_back(std::atan2(p.x - centre.x, p.y - centre.y));
      sine += std::sin(count * angle.back());
      cosine += std::cos(count * angle.back());
    }
    const double phase = std::atan2(sine, cosine) / count;
    std::vector<std::size_t> place;
    std::vector<bool> taken(places);
    for (const double a : angle) {
      const long step = std::lround((a - phase) * count / (2 * pi<double>()));
      const auto all = static_cast<long>(places);
      const auto k = static_cast<std::size_t>((step % all + all) % all);
      if (taken[k]) return {};
      taken[k] = true;
      place.push_back(k);
    }
    if (fit && fit->place == place) return fit;
    fit = detail::fit_to_places(at, places, std::move(place));
    if (!fit) return {};
    centre = fit->centre;
  }
  return fit;
}

/// A ring of holes from the distances between neighbours, going clockwise round it: the circle in which these chords
/// close. Bolt 1 is at the top; the last chord leads back to it. Three chords give a triangle, and so a circle, always.
/// \param chords  three or more centre distances; equal ones are an even ring
/// \return the pattern; or an error for a chord that is not positive or as long as all others together
/// Accuracy: closes to 1e-12. Errors of the chords add up round the ring: measure across as well.
inline Outcome<Pattern> try_pattern_from_chords(const std::vector<Length>& chords) {
  if (auto error = detail::count_error("chords", chords.size(), 3)) return *error;
  double sum = 0;
  double longest = 0;
  for (const Length chord : chords) {
    if (!is_positive(chord)) return refusal("chords", chord, "but must be above 0; give the distances of neighbours");
    sum += chord.si;
    longest = std::max(longest, chord.si);
  }
  if (!(longest < sum - longest))
    return refusal("chords", Length(longest), "but must be below the sum of all others, or the ring does not close");
  // Where the centre lies beyond the longest chord, that one spans more than half of the circle's other side.
  const auto half_angle = [&](double chord, double radius) { return std::asin(std::min(chord / (2 * radius), 1.0)); };
  const auto rest = [&](double radius) {
    double angles = 0;
    for (const Length chord : chords) angles += half_angle(chord.si, radius);
    return angles;
  };
  double low = longest / 2;
  double high = low;
  const bool outside = rest(low) < pi<double>();  // the centre is outside of the ring of chords
  const auto closing = [&](double radius) {
    return outside ? rest(radius) - 2 * half_angle(longest, radius) : pi<double>() - rest(radius);
  };
  // closing() rises through 0: inside, chords subtend less as the circle grows; outside, the rest outgrows the longest.
  while (closing(high) < 0 && high < 1e9 * low) high *= 2;
  for (int i = 0; i < 200 && high - low > 1e-16 * high; ++i) {
    const double middle = (low + high) / 2;
    (closing(middle) < 0 ? low : high) = middle;
  }
  const double radius = (low + high) / 2;
  std::vector<Position> at;
  double angle = 0;
  bool turned = false;
  for (const Length chord : chords) {
    at.push_back({radius * std::sin(angle), radius * std::cos(angle)});
    const bool far = outside && !turned && chord.si == longest;
    turned = turned || far;
    angle += far ? 2 * pi<double>() - 2 * half_angle(chord.si, radius) : 2 * half_angle(chord.si, radius);
  }
  return try_pattern(std::move(at));
}

}  // namespace tauten::TAUTEN_ABI
