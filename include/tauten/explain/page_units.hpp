// In which units a page shows its figures: those that were typed, else those of a workshop.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

#include "tauten/base/band.hpp"
#include "tauten/explain/style.hpp"

namespace tauten::TAUTEN_ABI {

/// Significant digits of the figures of a page: no torque is set, and no clamp load known, more closely.
inline constexpr int page_digits = 3;
/// Digits up to which what was typed is repeated as it was.
inline constexpr int typed_digits = 7;

/// Units and digits of a page.
class PageUnits {
 public:
  /// Shows quantities of a dimension in the unit of the first text that has one: "130lbf.ft" for torques.
  /// \param typed  a quantity as it was typed; other texts change nothing
  void take_unit_of(std::string_view typed) {
    double number = 0;
    const std::size_t at = detail::read_number(typed, number);
    if (at == 0) return;
    const UnitSpelling* unit = detail::find_unit(typed.substr(at));
    if (unit == nullptr || unit->dimension == Dim::number) return;
    const char* dimension = word_of(unit->dimension);
    for (const Style::Choice& choice : style_.choices)
      if (choice.quantity == dimension) return;
    style_.choices.push_back({dimension, unit->text, 0});
  }

  /// What was asked for expressly goes before what was typed.
  /// \param text  "torque=lbf.ft"
  /// \return what is wrong with it, or nothing
  std::optional<Error> set(std::string_view text) { return set_unit(style_, text); }

  /// \return "59 kN"
  std::string text(double si, Dim dimension, int digits = page_digits) const {
    const Shown one = shown_as(si, dimension, digits);
    return one.text();
  }
  template <Dim D>
  std::string text(Quantity<D> q, int digits = page_digits) const {
    return text(q.si, D, digits);
  }

  /// \return what was given: as it was typed, or rounded if it was converted to another unit
  template <Dim D>
  std::string typed(Quantity<D> q) const {
    std::string whole = text(q, typed_digits);
    return whole == text(q, typed_digits - 2) ? whole : text(q);
  }

  /// \return "48 to 77 kN"
  std::string range(double low, double high, Dim dimension, int digits = page_digits) const {
    // Both ends in the unit of the upper one.
    const Shown top = shown_as(high, dimension, digits);
    Style same = style_;
    if (!top.unit.empty()) same.choices.push_back({word_of(dimension), top.unit, 0});
    same.digits = digits;
    return shown(same, low, "", dimension).number + " to " + top.text();
  }
  template <Dim D>
  std::string range(Quantity<D> low, Quantity<D> high, int digits = page_digits) const {
    return range(low.si, high.si, D, digits);
  }
  template <Dim D>
  std::string range(const Band<Quantity<D>>& band, int digits = page_digits) const {
    return range(band.low, band.high, digits);
  }

  /// \return the unit that a column of this dimension has
  std::string unit(Dim dimension) const { return unit_shown(style_, "", dimension).first; }
  /// \return what one of that unit is in SI
  double one(Dim dimension) const { return unit_shown(style_, "", dimension).second; }
  /// \return the number in that unit
  template <Dim D>
  double in_unit(Quantity<D> q) const {
    return q.si / one(D);
  }
  /// \return the number in a column, three figures; "-" if there is none
  template <Dim D>
  std::string cell(Quantity<D> q) const {
    return cell_text(in_unit(q));
  }

  /// \return "173 N.m", a setting that is never rounded up
  template <Dim D>
  std::string settable(Quantity<D> q) const {
    return settable_cell(q) + " " + unit(D);
  }
  template <Dim D>
  std::string settable_cell(Quantity<D> q) const {
    return q.si > 0 ? settable_text(in_unit(q)) : q.si == 0 ? "0" : "-";
  }
  /// \return "59 kN", for a band is no more certain than that
  template <Dim D>
  std::string rough(Quantity<D> q) const {
    return rough_text(in_unit(q)) + " " + unit(D);
  }
  /// \return "48 to 77 kN"
  template <Dim D>
  std::string rough_range(const Band<Quantity<D>>& band) const {
    return rough_text(in_unit(band.low)) + " to " + rough(band.high);
  }

  /// \param text  a sentence of an answer, which has the units of a workshop: "above 173 N.m", "48 to 77 kN"
  /// \return the same with the units of this page
  std::string restated(std::string_view text) const {
    if (style_.choices.empty()) return std::string(text);
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
      const bool starts = at == 0 || text[at - 1] == ' ' || text[at - 1] == '(';
      const std::size_t read = starts ? restated_figure(text.substr(at), out) : 0;
      if (read == 0) out += text[at];
      at += std::max(read, std::size_t{1});
    }
    return out;
  }

  /// \return "4 %"
  static std::string percent(double share, int digits = page_digits) { return number_text(100 * share, digits) + " %"; }

 private:
  /// Adds the figure that a text begins with in the unit that was chosen for its dimension.
  /// \return its length; 0 if it begins with none, or none is chosen
  std::size_t restated_figure(std::string_view text, std::string& out) const {
    double low = 0, high = 0;
    std::size_t end = detail::read_number(text, low);
    if (end == 0) return 0;
    constexpr std::string_view to = " to ";
    const bool is_range = text.substr(end).starts_with(to);
    const std::size_t second = is_range ? detail::read_number(text.substr(end + to.size()), high) : 0;
    if (second > 0) end += to.size() + second;
    if (end == text.size() || text[end] != ' ') return 0;
    std::string_view word = text.substr(end + 1, text.find_first_of(" ,;:()", end + 1) - end - 1);
    if (word.ends_with('.')) word.remove_suffix(1);
    const UnitSpelling* unit = detail::find_unit(word);
    // "1 in 100" has no inch in it: sentences have the units of a workshop.
    if (unit == nullptr || (word != describe(unit->dimension).shop_unit && word != "N")) return 0;
    const auto is_chosen = [&](const Style::Choice& choice) { return choice.quantity == word_of(unit->dimension); };
    const bool any = std::any_of(style_.choices.begin(), style_.choices.end(), is_chosen);
    if (!any || word == this->unit(unit->dimension)) return 0;
    low *= unit->si;
    out += second > 0 ? range(low, high * unit->si, unit->dimension) : this->text(low, unit->dimension);
    return end + 1 + word.size();
  }

  Shown shown_as(double si, Dim dimension, int digits) const {
    Style style = style_;
    style.digits = digits;
    // A pull of the hand reads badly in kN.
    const bool small_force = dimension == Dim::force && std::fabs(si) < 1000;
    return shown(style, si, "", dimension, small_force ? "N" : "");
  }

  Style style_;
};

}  // namespace tauten::TAUTEN_ABI
