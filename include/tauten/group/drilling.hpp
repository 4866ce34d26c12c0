// Standard drillings that a measured pattern may be, and the measurement that would tell them apart.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstring>
#include <iterator>
#include <optional>
#include <set>
#include <string_view>
#include <tuple>
#include <vector>

#include "tauten/base/words.hpp"
#include "tauten/group/drilling_table.hpp"
#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// Measurements of a drilling; absent: not measured.
struct MeasuredDrilling {
  std::size_t count = 0;           ///< holes
  std::optional<Length> circle{};  ///< bolt circle, where they are on one
  std::optional<Length> across{};  ///< sides of a rectangle, either way round
  std::optional<Length> along{};
  std::optional<Length> hole{};     ///< diameter of the holes
  std::optional<Length> outside{};  ///< outside diameter of the flange
  std::optional<Length> height{};   ///< shaft height over the feet
  Length circle_within{1e-3};       ///< how far circle, sides and height may be from the standard's figure
  Length hole_within{0.8e-3};       ///< the same for holes, which wear and are painted
  Length outside_within{2e-3};      ///< the same for the outside diameter
};

/// One standard drilling that fits. It names no rating: flanges of several ratings have the same holes.
struct DrillingCandidate {
  const char* standard;  ///< "EN 1092-1"
  const char* rating;    ///< of the row, "PN16"; never proven by the holes
  const char* size;      ///< "DN100"
  Length circle;         ///< NaN where the holes are in a rectangle
  Length across, along;  ///< NaN where the holes are on a circle
  Length hole;           ///< NaN where the source does not give it
  Length outside;        ///< NaN where the source does not give it
  Length height;         ///< shaft height; NaN for flanges
  Source source;
};

namespace detail {

/// \return true unless both figures are known and differ by more than allowed
inline bool figures_may_be(double one, double other, double within) noexcept {
  return std::isnan(one) || std::isnan(other) || std::fabs(one - other) <= within;
}
inline bool may_be(const std::optional<Length>& measured, double figure, double within) noexcept {
  return figures_may_be(measured ? measured->si : absent, figure, within);
}

inline std::optional<Error> measured_drilling_error(const MeasuredDrilling& m) {
  if (m.count < 2) return refusal("count", static_cast<double>(m.count), "but must be 2 or more; count the holes");
  const std::tuple<const char*, std::optional<Length>, const char*> measured[] = {
      {"circle", m.circle, "but must be above 0; measure the bolt circle"},
      {"across", m.across, "but must be above 0; measure the distance of the holes"},
      {"along", m.along, "but must be above 0; measure the distance of the holes"},
      {"hole", m.hole, "but must be above 0; measure a hole"},
      {"outside", m.outside, "but must be above 0; measure the outside diameter"},
      {"height", m.height, "but must be above 0; measure the shaft height"}};
  for (const auto& [name, length, rule] : measured)
    if (length && !is_positive(*length)) return refusal(name, *length, rule);
  for (const auto& [name, within] : {std::pair{"circle_within", m.circle_within},
                                     {"hole_within", m.hole_within},
                                     {"outside_within", m.outside_within}})
    if (!is_positive(within)) return refusal(name, within, "but must be above 0; give what the measurement allows");
  return {};
}

}  // namespace detail

/// All rows of the tables that the measurements allow. A figure that was not measured, or that the source does not
/// give, excludes nothing.
/// \return the candidates, in the order of the tables; an error for fewer than two holes or a measurement that is not
///         above 0
/// Source: per row; most were seen second hand. Sizes of ASME B16.5 are DN equivalents.
inline Outcome<std::vector<DrillingCandidate>> try_drilling_candidates(const MeasuredDrilling& measured) {
  if (auto error = detail::measured_drilling_error(measured)) return *error;
  std::vector<DrillingCandidate> found;
  const Length none(std::nan(""));
  if (measured.circle)
    for (const table::CircleDrilling& row : table::circle_drillings)
      if (row.count == measured.count && detail::may_be(measured.circle, row.circle, measured.circle_within.si) &&
          detail::may_be(measured.hole, row.hole, measured.hole_within.si) &&
          detail::may_be(measured.outside, row.outside, measured.outside_within.si))
        found.push_back({row.standard, row.rating, row.size, Length(row.circle), none, none, Length(row.hole),
                         Length(row.outside), none, table::drilling_sources[row.source]});
  if (measured.across && measured.along && measured.count == 4)
    for (const table::RectangleDrilling& row : table::rectangle_drillings) {
      const auto sides = [&](std::optional<Length> a, std::optional<Length> b) {
        return detail::may_be(a, row.across, measured.circle_within.si) &&
               detail::may_be(b, row.along, measured.circle_within.si);
      };
      if ((sides(measured.across, measured.along) || sides(measured.along, measured.across)) &&
          detail::may_be(measured.hole, row.hole, measured.hole_within.si) &&
          detail::may_be(measured.height, row.height, measured.circle_within.si))
        found.push_back({row.standard, "", row.size, none, Length(row.across), Length(row.along), Length(row.hole),
                         none, Length(row.height), table::drilling_sources[row.source]});
    }
  return found;
}

/// The measurement, of those not made yet, after which the fewest candidates are likely to be left: the one that splits
/// them into groups with the least sum of squares. Where none splits them, the mark on the rim does.
inline NextMeasurement next_measurement(const std::vector<DrillingCandidate>& candidates,
                                        const MeasuredDrilling& measured) {
  if (candidates.size() < 2) return NextMeasurement::nothing;
  struct Choice {
    NextMeasurement what;
    std::optional<Length> measured;
    Length DrillingCandidate::* figure;
    double within;
  };
  NextMeasurement best = NextMeasurement::marking;
  double least = static_cast<double>(candidates.size() * candidates.size());
  for (const Choice& choice :
       {Choice{NextMeasurement::hole, measured.hole, &DrillingCandidate::hole, measured.hole_within.si},
        {NextMeasurement::outside, measured.outside, &DrillingCandidate::outside, measured.outside_within.si},
        {NextMeasurement::height, measured.height, &DrillingCandidate::height, measured.circle_within.si},
        // The circle was measured already; to a tenth it would tell more.
        {NextMeasurement::circle, std::nullopt, &DrillingCandidate::circle, 0.1e-3}}) {
    if (choice.measured) continue;
    double left = 0;  // sum over candidates of how many would remain if it were this one
    for (const DrillingCandidate& is : candidates)
      for (const DrillingCandidate& other : candidates)
        left += detail::figures_may_be((is.*choice.figure).si, (other.*choice.figure).si, choice.within) ? 1 : 0;
    if (left < least) {
      least = left;
      best = choice.what;
    }
  }
  return best;
}

/// \return true if bolts of the smaller size go through two drillings laid on each other: as many holes, holes within
///         1.5 mm of each other, and |K1 - K2|/2 <= (L1 - d)/2 + (L2 - d)/2. It is no proof that the flanges match.
/// \param bolt  diameter of the bolts
inline bool take_each_others_bolts(const table::CircleDrilling& a, const table::CircleDrilling& b,
                                   Length bolt) noexcept {
  return a.count == b.count && std::fabs(a.hole - b.hole) <= 1.5e-3 + 1e-9 && bolt.si <= a.hole && bolt.si <= b.hole &&
         std::fabs(a.circle - b.circle) / 2 <= (a.hole - bolt.si) / 2 + (b.hole - bolt.si) / 2 + 1e-9;
}

/// \return true if candidates come from more than one standard: bolts may go in though the flanges do not match
inline bool mixes_standards(const std::vector<DrillingCandidate>& candidates) noexcept {
  for (const DrillingCandidate& c : candidates)
    if (std::strcmp(c.standard, candidates.front().standard) != 0) return true;
  return false;
}

/// A drilling by its name, as in "EN 1092-1 PN16 DN100" or "IEC 60072-1 feet frame 132M": words of standard, rating and
/// size; those of the standard may be cut short ("EN PN16 DN100").
/// \return the pattern, its first hole half a pitch off the top as EN 1092-1 has it; rectangles across by along. An
///         error if no row, or rows of different holes, have all the words.
inline Outcome<Pattern> try_pattern_by_name(std::string_view name) {
  const auto has = [](std::string_view text, std::string_view word) {
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
      const bool starts = at == 0 || text[at - 1] == ' ';
      const bool ends = at + word.size() == text.size() || text[at + word.size()] == ' ';
      if (starts && ends) return true;
    }
    return false;
  };
  const auto matches = [&](std::initializer_list<const char*> cells) {
    std::string_view left = name;
    bool any = false;
    while (!left.empty()) {
      const std::size_t space = left.find(' ');
      const std::string_view word = left.substr(0, space);
      left = space == std::string_view::npos ? std::string_view() : left.substr(space + 1);
      if (word.empty()) continue;
      any = true;
      bool found = false;
      for (const char* cell : cells) found = found || has(cell, word);
      if (!found) return false;
    }
    return any;
  };
  const table::CircleDrilling* circle = nullptr;
  const table::RectangleDrilling* rectangle = nullptr;
  bool several = false;
  for (const table::CircleDrilling& row : table::circle_drillings)
    if (matches({row.standard, row.rating, row.size})) {
      several = several || (circle && (circle->count != row.count || circle->circle != row.circle));
      circle = &row;
    }
  for (const table::RectangleDrilling& row : table::rectangle_drillings)
    if (matches({row.standard, row.size})) {
      several = several || circle || (rectangle && (rectangle->across != row.across || rectangle->along != row.along));
      rectangle = &row;
    }
  if (several)
    return Error("name",
                 "several standard drillings have this name, or sources disagree on it; add rating and size, or "
                 "give the holes as circle:8:160mm");
  if (circle) return try_circle_pattern(circle->count, Length(circle->circle), Angle(pi<double>() / circle->count));
  if (rectangle) return try_rectangle_pattern(Length(rectangle->across), Length(rectangle->along));
  return Error("name", "no standard drilling has this name; write it like EN 1092-1 PN16 DN100, or circle:8:160mm");
}

}  // namespace tauten::TAUTEN_ABI
