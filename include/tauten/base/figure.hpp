// A named figure of an answer, as data: an input or a result, with its band and its origin.
#pragma once

#include <string>
#include <utility>

#include "tauten/base/band.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

template <>
struct Words<Dim> {
  static constexpr const char* list[] = {"number", "length",     "area",      "angle",       "force",  "torque",
                                         "stress", "compliance", "stiffness", "temperature", "energy", "expansion"};
};

/// A number, a band or a word.
struct Figure {
  std::string name;             ///< "thread_friction", the word of the formulas where there is one
  Dim dimension = Dim::number;  ///< of the numbers
  Band<double> value{};         ///< SI; all three are equal for a plain figure
  std::string text{};           ///< stands instead of the numbers, which are not known then: "M10x1.25"
  std::string note{};           ///< where it comes from or when it holds, in a few words
  bool assumed = false;         ///< not given
  const char* unit = "";        ///< in which it is shown, if not in that of the workshop: "%"

  /// Lists the members, for bindings and JSON.
  template <class V>
  static void fields(V&& visit) {
    visit("name", &Figure::name);
    visit("dimension", &Figure::dimension);
    visit("value", &Figure::value);
    visit("text", &Figure::text);
    visit("note", &Figure::note);
    visit("assumed", &Figure::assumed);
  }
  template <class V>
  static void kept(V&& visit) {
    visit(&Figure::unit);
  }
};

/// \return a figure of one number
template <Dim D>
Figure figure(const char* name, Quantity<D> q, std::string note = "", bool assumed = false, const char* unit = "") {
  return {name, D, {q.si, q.si, q.si}, "", std::move(note), assumed, unit};
}
inline Figure figure(const char* name, double x, std::string note = "", bool assumed = false, const char* unit = "") {
  return {name, Dim::number, {x, x, x}, "", std::move(note), assumed, unit};
}
/// \return a figure with its band
template <Dim D>
Figure figure(const char* name, const Band<Quantity<D>>& band, std::string note = "", bool assumed = false) {
  return {name, D, {band.low.si, band.nominal.si, band.high.si}, "", std::move(note), assumed};
}
inline Figure figure(const char* name, const Band<double>& band, std::string note = "", bool assumed = false,
                     const char* unit = "") {
  return {name, Dim::number, band, "", std::move(note), assumed, unit};
}
/// \return a figure that is not a number
inline Figure figure_in_words(const char* name, std::string text, std::string note = "", bool assumed = false) {
  return {name, Dim::number, {absent, absent, absent}, std::move(text), std::move(note), assumed};
}

}  // namespace tauten::TAUTEN_ABI
