// Quantities in the sentences of tools.
#pragma once

#include <optional>
#include <string>

#include "tauten/base/dimension.hpp"
#include "tauten/base/error.hpp"
#include "tauten/base/example_text.hpp"
#include "tauten/base/interval.hpp"
#include "tauten/base/number_text.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return "82.5 N.m": the unit that a workshop reads, four digits, no trailing zeros
inline std::string shop_text(double si, Dim dimension) {
  DimensionText text = describe(dimension);
  // The pull of a hand reads badly in kN.
  if (dimension == Dim::force && si < 1000 && si > -1000) text.shop_unit = "N", text.shop_unit_in_si = 1;
  const std::string number = number_text(si / text.shop_unit_in_si);
  return *text.shop_unit == '\0' ? number : number + " " + text.shop_unit;
}

// The quantity template is deduced: its header, which lies deeper, is not needed here.
template <template <Dim, class> class AnyQuantity, Dim D, class Real>
std::string shop_text(const AnyQuantity<D, Real>& q) {
  return shop_text(q.si, D);
}

/// \return "4 %"
inline std::string percent_text(double share) { return number_text(100 * share, 3) + " %"; }

/// \return the error that a value lies outside `allowed`, or nothing. The bounds of `allowed` are SI and finite.
inline std::optional<Error> outside(const char* argument, double si, Dim dimension, Interval allowed) {
  if (allowed.contains(si)) return std::nullopt;
  const DimensionText text = describe(dimension);
  const std::string sentence = std::string(argument) + " is " + shop_text(si, dimension) + ", but must be " +
                               (allowed.excludes_low ? "above " : "at least ") + shop_text(allowed.low, dimension) +
                               " and at most " + shop_text(allowed.high, dimension) + "; give it as " + text.name +
                               ", for example " + example_of(argument, dimension);
  return Error(argument, sentence.c_str());
}

/// The same for a quantity.
template <template <Dim, class> class AnyQuantity, Dim D, class Real>
std::optional<Error> outside(const char* argument, const AnyQuantity<D, Real>& q, Interval allowed) {
  return outside(argument, q.si, D, allowed);
}

/// The same for a plain number.
inline std::optional<Error> outside(const char* argument, double number, Interval allowed) {
  return outside(argument, number, Dim::number, allowed);
}

/// \return the error that a value is absent, or nothing
template <template <Dim, class> class AnyQuantity, Dim D, class Real>
std::optional<Error> missing(const char* argument, const std::optional<AnyQuantity<D, Real>>& value) {
  if (value) return std::nullopt;
  return Error(argument, (std::string(argument) + " is missing; write it like " + example_of(argument, D)).c_str());
}

/// The same for a value that may be absent.
template <class Value>
std::optional<Error> outside(const char* argument, const std::optional<Value>& value, Interval allowed) {
  return value ? outside(argument, *value, allowed) : std::nullopt;
}

}  // namespace tauten::TAUTEN_ABI::detail
