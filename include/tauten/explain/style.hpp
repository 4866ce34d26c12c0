// How quantities are shown: units and significant digits, for all or for one by its name.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "tauten/base/figure.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/base/unit_text.hpp"

namespace tauten::TAUTEN_ABI {

/// Units and digits of what is printed. The default shows the units of a workshop with four digits.
struct Style {
  /// What holds for one quantity or for one dimension.
  struct Choice {
    std::string quantity;  ///< "preload", or a dimension: "length"
    std::string unit{};    ///< "lbf"; "" leaves the unit as it is
    int significant = 0;   ///< digits; 0 leaves them as they are
    friend bool operator==(const Choice&, const Choice&) = default;
  };

  int digits = 4;                 ///< significant digits, 1 to 17
  std::vector<Choice> choices{};  ///< a name goes before a dimension, the later before the earlier
};

/// A number with its unit as they are shown.
struct Shown {
  std::string number;
  std::string unit;  ///< "" for a plain number

  std::string text() const { return unit.empty() ? number : number + " " + unit; }
  /// The sign for degrees follows its number without a space (ISO 80000-1).
  bool spaced() const { return !unit.empty() && unit != "deg"; }
};

namespace detail {

inline const UnitSpelling* find_unit(std::string_view text) {
  const std::string unit = plain_unit(text);
  for (const UnitSpelling& known : unit_spellings)
    if (unit == known.text) return &known;
  return nullptr;
}

/// \return the last choice for the name, else for the dimension, that `says` something; or nullptr
template <class Says>
const Style::Choice* choice_of(const Style& style, std::string_view name, Dim dimension, const Says& says) {
  for (const std::string_view key : {name, std::string_view(word_of(dimension))})
    for (auto choice = style.choices.rbegin(); choice != style.choices.rend(); ++choice)
      if (choice->quantity == key && says(*choice)) return &*choice;
  return nullptr;
}

inline bool is_dimension(std::string_view word, Dim& dimension) {
  for (int i = 0; i < dimension_count; ++i)
    if (word == Words<Dim>::list[i]) return dimension = static_cast<Dim>(i), true;
  return false;
}

inline bool is_name(std::string_view word) {
  for (const char c : word)
    if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_')) return false;
  return !word.empty() && word.size() <= 60;
}

inline Error style_refusal(const char* argument, std::string_view text, const char* why) {
  return {argument, (std::string(argument) + " " + shown(text, 60) + " " + why).c_str()};
}

}  // namespace detail

/// Takes digits for all quantities, or for one.
/// \param text  "5", or for one quantity or dimension "preload=3"
/// \return what is wrong with it, or nothing
inline std::optional<Error> set_digits(Style& style, std::string_view text) {
  const auto equals = text.find('=');
  const std::string_view number = equals == std::string_view::npos ? text : text.substr(equals + 1);
  int digits = 0;
  const auto [end, problem] = std::from_chars(number.data(), number.data() + number.size(), digits);
  const bool whole = problem == std::errc() && end == number.data() + number.size();
  if (!whole || digits < 1 || digits > 17)
    return detail::style_refusal("digits", text, "is not a whole number from 1 to 17; write 5, or preload=3");
  if (equals == std::string_view::npos) return style.digits = digits, std::nullopt;
  const std::string_view name = text.substr(0, equals);
  if (!detail::is_name(name)) return detail::style_refusal("digits", text, "names no quantity; write preload=3");
  style.choices.push_back({std::string(name), "", digits});
  return std::nullopt;
}

/// Takes a unit for one quantity or for all of a dimension.
/// \param text  "preload=lbf", "length=in"
/// \return what is wrong with it, or nothing
inline std::optional<Error> set_unit(Style& style, std::string_view text) {
  const auto equals = text.find('=');
  if (equals == std::string_view::npos || !detail::is_name(text.substr(0, equals)))
    return detail::style_refusal("unit", text, "names no quantity with a unit; write length=in or preload=lbf");
  const std::string_view name = text.substr(0, equals);
  const UnitSpelling* unit = detail::find_unit(text.substr(equals + 1));
  if (unit == nullptr)
    return detail::style_refusal("unit", text, "has an unknown unit; write length=in or preload=lbf");
  if (Dim wanted{}; detail::is_dimension(name, wanted) && wanted != unit->dimension)
    return Error("unit", (std::string("unit ") + unit->text + " is for " + describe(unit->dimension).name +
                          ", not for " + describe(wanted).name)
                             .c_str());
  style.choices.push_back({std::string(name), unit->text, 0});
  return std::nullopt;
}

/// \param name       of the quantity
/// \param dimension  of the quantity
/// \param unit       in which it is shown unless the style says otherwise; "" for that of the workshop
/// \return the unit in which it is shown, and what one of it is in SI
inline std::pair<std::string, double> unit_shown(const Style& style, std::string_view name, Dim dimension,
                                                 const char* unit = "") {
  const DimensionText workshop = describe(dimension);
  std::pair<std::string, double> out{workshop.shop_unit, workshop.shop_unit_in_si};
  const auto take = [&](std::string_view text) {
    if (const UnitSpelling* known = detail::find_unit(text); known != nullptr && known->dimension == dimension)
      out = {known->text, known->si};
  };
  if (*unit != '\0') take(unit);
  if (const auto* choice = detail::choice_of(style, name, dimension, [](const auto& c) { return !c.unit.empty(); }))
    take(choice->unit);
  return out;
}

/// \param si  value in SI; the others as for `unit_shown`
inline Shown shown(const Style& style, double si, std::string_view name, Dim dimension, const char* unit = "") {
  const auto [named, one] = unit_shown(style, name, dimension, unit);
  const auto* digits = detail::choice_of(style, name, dimension, [](const auto& c) { return c.significant > 0; });
  // Shares in percent are never known that well.
  const int digits_shown = named == "%" && style.digits == Style().digits ? 3 : style.digits;
  return {number_text(si / one, digits != nullptr ? digits->significant : digits_shown), named};
}

}  // namespace tauten::TAUTEN_ABI
