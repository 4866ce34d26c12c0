// Straight bars between wrench and fastener, and how far a line of them twists.
#pragma once

#include <optional>
#include <vector>

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"
#include "tauten/tool/bar.hpp"
#include "tauten/tool/shop_text.hpp"
#include "tauten/tool/twist.hpp"

namespace tauten {

/// A straight bar or shank between wrench and fastener.
struct DriveBar {
  enum class Section : unsigned char { square, round, hexagon };
  Section section = Section::square;
  Length length;
  Length size;                 ///< side, diameter or width across the flats
  Stress shear_modulus{79e9};  ///< of steel

  template <class V>
  static void fields(V&& visit) {
    visit("section", &DriveBar::section);
    visit("length", &DriveBar::length);
    visit("size", &DriveBar::size);
    visit("shear_modulus", &DriveBar::shear_modulus);
  }
};
template <>
struct Words<DriveBar::Section> {
  static constexpr const char* list[] = {"square", "round", "hexagon"};
};

namespace detail {

/// \return the first error among the bars, or nothing
inline std::optional<Error> bars_error(const std::vector<DriveBar>& bars) {
  for (const DriveBar& bar : bars) {
    if (auto e = outside("bar_length", bar.length, {0, 10, true})) return e;
    if (auto e = outside("bar_size", bar.size, {0, 1, true})) return e;
    if (auto e = outside("shear_modulus", bar.shear_modulus, {0, 1e12, true})) return e;
  }
  return std::nullopt;
}

/// \return torsional stiffness of one bar
inline double bar_stiffness(const DriveBar& bar) {
  switch (bar.section) {
    case DriveBar::Section::round: return RoundBarStiffness::eval(bar.length.si, bar.size.si, bar.shear_modulus.si);
    case DriveBar::Section::hexagon: return HexagonBarStiffness::eval(bar.length.si, bar.size.si, bar.shear_modulus.si);
    case DriveBar::Section::square: break;
  }
  return SquareBarStiffness::eval(bar.length.si, bar.size.si, bar.shear_modulus.si);
}

}  // namespace detail

/// \return torsional stiffness of all bars in series, per radian; none without bars
inline std::optional<Torque> torsional_stiffness(const std::vector<DriveBar>& bars) {
  std::optional<Torque> line;
  for (const DriveBar& bar : bars) {
    const double one = detail::bar_stiffness(bar);
    line = Torque(line ? SeriesStiffness::eval(line->si, one) : one);
  }
  return line;
}

}  // namespace tauten
