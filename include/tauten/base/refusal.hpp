// The sentence with which wrong input is refused.
#pragma once

#include <cmath>
#include <cstdio>
#include <optional>
#include <string>

#include "tauten/base/error.hpp"
#include "tauten/base/plain_number.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// \param argument  name of the argument at fault
/// \param si        what was given
/// \param rule      allowed range and what to do: "but must be above 0; give the thickness of the layer"
/// \return the error that says so, the value with its unit
inline Error refusal(const char* argument, double si, Dim dimension, const char* rule) noexcept {
  char message[512];
  const DimensionText text = describe(dimension);
  const char* unit = text.shop_unit;
  std::snprintf(message, sizeof message, "%s is %s%s%s, %s", argument, PlainNumber(si / text.shop_unit_in_si).c_str(),
                *unit == '\0' ? "" : " ", unit, rule);
  return Error(argument, message);
}

/// The same for a quantity.
template <Dim D>
Error refusal(const char* argument, Quantity<D> value, const char* rule) noexcept {
  return refusal(argument, value.si, D, rule);
}

/// The same for a plain number.
inline Error refusal(const char* argument, double value, const char* rule) noexcept {
  return refusal(argument, Quantity<Dim::number>(value), rule);
}

/// \return the error that an enumeration holds none of its values, as it may when it comes from a number, or nothing
template <Worded E>
std::optional<Error> unknown_value(const char* argument, E value) {
  if (has_word(value)) return std::nullopt;
  std::string text = std::string(argument) + " is " + std::to_string(static_cast<int>(value)) + ", but must be ";
  int i = 0;
  for (const char* word : Words<E>::list) text += (i == 0 ? "" : ", ") + std::to_string(i) + " (" + word + ")", ++i;
  return Error(argument, (text + "; give one of these values").c_str());
}

/// \return true for a finite value above zero; NaN is refused by it
template <Dim D>
bool is_positive(Quantity<D> q) noexcept {
  return q.si > 0 && std::isfinite(q.si);
}

/// \return true for a finite value of zero or above; NaN is refused by it
template <Dim D>
bool is_not_negative(Quantity<D> q) noexcept {
  return q.si >= 0 && std::isfinite(q.si);
}

}  // namespace tauten::TAUTEN_ABI
