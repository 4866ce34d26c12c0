// Answers as JSON: one visitor over the `fields` of the answer types.
#pragma once

#include <cmath>
#include <nlohmann/json.hpp>
#include <string>
#include <type_traits>

#include "tauten/base/error.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::command {

using Json = nlohmann::ordered_json;

/// \return where a figure comes from, and how it was seen: in_print, once, memory or judgement
inline Json json_of(const Source& source) {
  constexpr const char* seen[] = {"in_print", "once", "memory", "judgement"};
  return {{"document", source.document}, {"place", source.place}, {"seen", seen[static_cast<int>(source.seen)]}};
}

inline Json json_of(const Error& error) { return {{"argument", error.argument()}, {"message", error.what()}}; }

/// \return `x` with numbers in SI; null for what is not known, and for NaN and infinity, which JSON does not have
template <class T>
Json json_of(const T& x) {
  const auto ignore = [](const char*, const auto&) {};
  if constexpr (std::is_floating_point_v<T>) {
    return std::isfinite(x) ? Json(x) : Json(nullptr);
  } else if constexpr (std::is_arithmetic_v<T> || std::is_convertible_v<T, std::string>) {
    return x;
  } else if constexpr (Worded<T>) {
    return word_of(x);
  } else if constexpr (requires { x.has_value(); }) {
    return x.has_value() ? json_of(*x) : Json(nullptr);
  } else if constexpr (AnyQuantity<T>) {
    return json_of(x.si);
  } else if constexpr (requires { T::fields(ignore); }) {
    Json object = Json::object();
    T::fields([&](const char* name, auto member) { object[name] = json_of(x.*member); });
    return object;
  } else {
    Json list = Json::array();
    for (const auto& item : x) list.push_back(json_of(item));
    return list;
  }
}

/// \return printed JSON; bytes that are not text are replaced
inline std::string text_of(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace); }

}  // namespace tauten::command
