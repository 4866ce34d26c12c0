// Quantities as text with units: 48N.m, 35lbf.ft, 12mm, 5/8in, 90deg. SI, inch and kgf spellings.
#pragma once

#include <charconv>
#include <cmath>
#include <string>
#include <string_view>
#include <utility>

#include "tauten/base/dimension.hpp"
#include "tauten/base/example_text.hpp"
#include "tauten/base/number_chars.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/visible_text.hpp"

namespace tauten::TAUTEN_ABI {

/// A spelling of a unit.
struct UnitSpelling {
  const char* text;
  Dim dimension;
  double si;  ///< 1 of this unit in SI
};

namespace detail {
inline constexpr auto inch_in_m = static_cast<double>(unit_factor::inch);
inline constexpr auto pound = static_cast<double>(unit_factor::pound_force);
inline constexpr auto kilopond = static_cast<double>(unit_factor::kilogram_force);
inline constexpr auto degree = static_cast<double>(unit_factor::degree);
}  // namespace detail

/// Every spelling that is understood. Of several spellings the first is the one that help texts show.
inline constexpr UnitSpelling unit_spellings[] = {
    {"mm", Dim::length, 1e-3},
    {"m", Dim::length, 1},
    {"cm", Dim::length, 1e-2},
    {"um", Dim::length, 1e-6},
    {"in", Dim::length, detail::inch_in_m},
    {"inch", Dim::length, detail::inch_in_m},
    {"\"", Dim::length, detail::inch_in_m},
    {"ft", Dim::length, 12 * detail::inch_in_m},
    {"mm2", Dim::area, 1e-6},
    {"cm2", Dim::area, 1e-4},
    {"m2", Dim::area, 1},
    {"in2", Dim::area, detail::inch_in_m* detail::inch_in_m},
    {"deg", Dim::angle, detail::degree},
    {"rad", Dim::angle, 1},
    {"turn", Dim::angle, 360 * detail::degree},
    {"kN", Dim::force, 1e3},
    {"N", Dim::force, 1},
    {"MN", Dim::force, 1e6},
    {"lbf", Dim::force, detail::pound},
    {"kip", Dim::force, 1e3 * detail::pound},
    {"kgf", Dim::force, detail::kilopond},
    {"N.m", Dim::torque, 1},
    {"Nm", Dim::torque, 1},
    {"kN.m", Dim::torque, 1e3},
    {"kNm", Dim::torque, 1e3},
    {"N.cm", Dim::torque, 1e-2},
    {"N.mm", Dim::torque, 1e-3},
    {"lbf.ft", Dim::torque, detail::pound * 12 * detail::inch_in_m},
    {"ft.lbf", Dim::torque, detail::pound * 12 * detail::inch_in_m},
    {"lb.ft", Dim::torque, detail::pound * 12 * detail::inch_in_m},
    {"ft.lb", Dim::torque, detail::pound * 12 * detail::inch_in_m},
    {"lbf.in", Dim::torque, detail::pound* detail::inch_in_m},
    {"in.lbf", Dim::torque, detail::pound* detail::inch_in_m},
    {"lb.in", Dim::torque, detail::pound* detail::inch_in_m},
    {"in.lb", Dim::torque, detail::pound* detail::inch_in_m},
    {"kip.in", Dim::torque, 1e3 * detail::pound* detail::inch_in_m},
    {"kgf.m", Dim::torque, detail::kilopond},
    {"kgf.cm", Dim::torque, detail::kilopond * 1e-2},
    {"MPa", Dim::stress, 1e6},
    {"Pa", Dim::stress, 1},
    {"kPa", Dim::stress, 1e3},
    {"GPa", Dim::stress, 1e9},
    {"N/mm2", Dim::stress, 1e6},
    {"bar", Dim::stress, 1e5},
    {"psi", Dim::stress, detail::pound / (detail::inch_in_m * detail::inch_in_m)},
    {"ksi", Dim::stress, 1e3 * detail::pound / (detail::inch_in_m * detail::inch_in_m)},
    {"Mpsi", Dim::stress, 1e6 * detail::pound / (detail::inch_in_m * detail::inch_in_m)},
    {"um/kN", Dim::compliance, 1e-9},
    {"mm/kN", Dim::compliance, 1e-6},
    {"mm/N", Dim::compliance, 1e-3},
    {"m/N", Dim::compliance, 1},
    {"kN/mm", Dim::stiffness, 1e6},
    {"MN/m", Dim::stiffness, 1e6},
    {"N/mm", Dim::stiffness, 1e3},
    {"N/m", Dim::stiffness, 1},
    {"lbf/in", Dim::stiffness, detail::pound / detail::inch_in_m},
    {"Mlbf/in", Dim::stiffness, 1e6 * detail::pound / detail::inch_in_m},
    {"K", Dim::temperature, 1},
    {"J", Dim::energy, 1},
    {"um/m/K", Dim::expansion, 1e-6},
    {"1/K", Dim::expansion, 1},
    {"%", Dim::number, 1e-2},
};

namespace detail {

/// Torques as people write them: `nm` and `NM` become `Nm`, `kgm` `kgf.m`, and `lbft`, `ft.lbs`, `FT.LB`, `inlbf` `lb.ft`,
/// `ft.lb`, `ft.lb`, `in.lbf`.
inline std::string torque_unit(const std::string& unit) {
  if (unit == "nm" || unit == "NM") return "Nm";
  if (unit == "kgm" || unit == "kg.m") return "kgf.m";
  if (unit == "kgcm" || unit == "kg.cm") return "kgf.cm";
  std::string letters;
  for (const char c : unit)
    if (c != '.') letters += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  if (letters.find("lb") == std::string::npos) return unit;
  for (const char* pounds : {"lbf", "lbs", "lb"})
    for (const char* length : {"ft", "in"}) {
      const std::string one = pounds == std::string_view("lbs") ? "lb" : pounds;
      if (letters == std::string(pounds) + length) return one + "." + length;
      if (letters == std::string(length) + pounds) return std::string(length) + "." + one;
    }
  return unit;
}

/// One way of writing each unit: `N·m`, `N*m`, `N-m`, `N m` become `N.m`; `mm²` becomes `mm2`; `µm` becomes `um`.
inline std::string plain_unit(std::string_view text) {
  std::string unit(text);
  const auto replace = [&](std::string_view from, std::string_view to) {
    for (std::size_t at = 0; (at = unit.find(from, at)) != std::string::npos; at += to.size())
      unit.erase(at, from.size()).insert(at, to);
  };
  replace("\u00a0", " ");  // spaces that do not break, as printed between number and unit
  replace("\u202f", " ");
  const auto first = unit.find_first_not_of(' ');
  unit = first == std::string::npos ? "" : unit.substr(first, unit.find_last_not_of(' ') - first + 1);
  replace(" ", ".");
  replace("\u00b7", ".");
  replace("\u22c5", ".");
  replace("*", ".");
  replace("-", ".");
  replace("\u00b2", "2");
  replace("\u00b5", "u");
  replace("\u03bc", "u");
  replace("\u00b0", "deg");
  for (const auto& [from, to] : {std::pair("..", "."), std::pair("./", "/"), std::pair("/.", "/")})
    while (unit.find(from) != std::string::npos) replace(from, to);
  return torque_unit(unit);
}

/// Reads a decimal number (point or comma) or an inch fraction (5/8, 1-1/8) at the start of `text`.
/// \return how many characters were read; 0 if there is no number or it is not finite
inline std::size_t read_number(std::string_view text, double& value) {
  std::string digits(text.substr(0, text.find_first_not_of("+-0123456789.,eE")));
  // An `e` belongs to the number only if digits follow it.
  if (const auto e = digits.find_first_of("eE");
      e != std::string::npos && (e + 1 >= digits.size() || digits.find_first_of("0123456789", e) == std::string::npos))
    digits.resize(e);
  if (const auto comma = digits.find(','); comma != std::string::npos && digits.find('.') == std::string::npos) {
    // 1,250 is a thousand to some and one and a quarter to others: not read at all, unless it starts with a zero.
    const std::size_t after = digits.find_first_not_of("0123456789", comma + 1);
    const bool three = (after == std::string::npos ? digits.size() : after) - comma == 4;
    if (three && digits.find_first_of("123456789") < comma) return 0;
    digits[comma] = '.';
  }
  const char* first = digits.data() + (digits.starts_with('+') && !digits.starts_with("+-") ? 1 : 0);
  const auto [end, problem] = read_chars(first, digits.data() + digits.size(), value);
  if (problem != std::errc()) return 0;
  auto read = static_cast<std::size_t>(end - digits.data());

  const auto whole = [&](std::size_t& at, double& number) {
    const std::size_t start = at;
    for (number = 0; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at)
      number = number * 10 + (text[at] - '0');
    return at > start;
  };
  std::size_t at = read;
  double numerator = 0;
  double denominator = 0;
  if (at < text.size() && text[at] == '/' && whole(++at, denominator) && denominator > 0) {
    value /= denominator;
    return at;
  }
  at = read;
  if (at < text.size() && text[at] == '-' && whole(++at, numerator) && at < text.size() && text[at] == '/' &&
      whole(++at, denominator) && denominator > 0) {
    value += text.front() == '-' ? -numerator / denominator : numerator / denominator;
    return at;
  }
  return read;
}

}  // namespace detail

/// Reads a quantity.
/// \param argument  name of the argument, for the error message
/// \param text      number and unit, "48N.m"
/// \param wanted    the dimension that the argument has
/// \return the value in SI, or an error that says how to write it
inline Outcome<double> try_read_quantity(const char* argument, std::string_view text, Dim wanted) {
  const DimensionText ask = describe(wanted);
  const auto refuse = [&](const std::string& why) {
    return Error(argument, (std::string(argument) + " " + detail::shown(text, 60) + " " + why + "; write " + ask.name +
                            " like " + example_of(argument, wanted))
                               .c_str());
  };
  double value = 0;
  const std::size_t read = detail::read_number(text, value);
  if (read == 0 && text.find(',') != std::string_view::npos)
    return refuse("has a comma that may mean thousands or decimals; use a point");
  if (read == 0) return refuse("does not start with a finite number");
  const std::string unit = detail::plain_unit(text.substr(read));
  if (unit.empty()) {
    if (wanted == Dim::number) return value;
    return refuse("has no unit");
  }
  for (const UnitSpelling& known : unit_spellings)
    if (unit == known.text) {
      if (known.dimension == wanted) {
        if (const double si = value * known.si; std::isfinite(si)) return si;
        return refuse("is too large");
      }
      return refuse(std::string("is ") + describe(known.dimension).name + ", not " + ask.name);
    }
  return refuse("has the unknown unit " + detail::shown(unit, 20));
}

}  // namespace tauten::TAUTEN_ABI
