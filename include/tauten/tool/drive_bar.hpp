// Straight bars between wrench and fastener, and the twist of a line of them.
#pragma once

#include <optional>
#include <vector>

#include "tauten/base/quantity.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/base/step.hpp"
#include "tauten/base/words.hpp"
#include "tauten/tool/bar.hpp"
#include "tauten/tool/twist.hpp"

namespace tauten::TAUTEN_ABI {

/// A straight bar or shank between wrench and fastener.
struct DriveBar {
  enum class Section : unsigned char { square, round, hexagon };
  Section section = Section::square;
  Length length{};
  Length size{};               ///< side, diameter or width across the flats
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
    if (auto e = unknown_value("bar_section", bar.section)) return e;
    if (auto e = outside("bar_length", bar.length, {0, 10, true})) return e;
    if (auto e = outside("bar_size", bar.size, {0, 1, true})) return e;
    if (auto e = outside("shear_modulus", bar.shear_modulus, {0, 1e12, true})) return e;
  }
  return std::nullopt;
}

/// \return torsional stiffness of one bar
inline double bar_stiffness(const DriveBar& bar, std::vector<Step>& steps) {
  const double length = bar.length.si, size = bar.size.si, modulus = bar.shear_modulus.si;
  switch (bar.section) {
    case DriveBar::Section::round: return step(steps, "", round_bar_stiffness, length, size, modulus);
    case DriveBar::Section::hexagon: return step(steps, "", hexagon_bar_stiffness, length, size, modulus);
    case DriveBar::Section::square: break;
  }
  return step(steps, "", square_bar_stiffness, length, size, modulus);
}

}  // namespace detail

/// \return torsional stiffness of all bars in series, per radian; none without bars
/// \param steps  the formulas that lead there are added to these
inline std::optional<Torque> torsional_stiffness(const std::vector<DriveBar>& bars, std::vector<Step>& steps) {
  std::optional<Torque> line;
  for (const DriveBar& bar : bars) {
    const double one = detail::bar_stiffness(bar, steps);
    line = Torque(line ? step(steps, "all bars so far", series_stiffness, line->si, one) : one);
  }
  return line;
}

}  // namespace tauten::TAUTEN_ABI
