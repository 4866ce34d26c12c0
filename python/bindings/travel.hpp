// Records as bytes: what they are compared and hashed by, and how they travel to other processes.
//
// The bytes hold every member in the order of `fields`, then those that a record keeps without showing them:
//   template <class V> static void kept(V&& v) { v(&Figure::unit); ... }
// They are read by the version that wrote them alone.
#pragma once

#include <pybind11/pybind11.h>

#include <array>
#include <cmath>
#include <cstring>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"

namespace tauten::python {

/// \return the same characters for as long as the program runs, for members that point to literals
const char* lasting(std::string_view text);

/// \throws pybind11::value_error  for bytes that no record left
[[noreturn]] void refuse_bytes();

namespace detail {

template <class T, class V>
void visit_kept(V&& visit) {
  if constexpr (requires { T::kept(visit); }) T::kept(visit);
}

template <class Number>
void write_number(std::string& out, Number number) {
  char bytes[sizeof number];
  std::memcpy(bytes, &number, sizeof number);
  out.append(bytes, sizeof number);
}

template <class Number>
Number read_number_from(std::string_view& in) {
  Number number;
  if (in.size() < sizeof number) refuse_bytes();
  std::memcpy(&number, in.data(), sizeof number);
  in.remove_prefix(sizeof number);
  return number;
}

inline std::string_view read_characters(std::string_view& in) {
  const auto size = read_number_from<std::size_t>(in);
  if (size > in.size()) refuse_bytes();
  const std::string_view text = in.substr(0, size);
  in.remove_prefix(size);
  return text;
}

}  // namespace detail

template <class T>
void write_bytes(std::string& out, const T& value) {
  if constexpr (std::is_floating_point_v<T>) {  // one NaN and one zero, so that what is equal has equal bytes
    const auto number = static_cast<double>(value);
    detail::write_number(out, number != number ? std::numeric_limits<double>::quiet_NaN() : number + 0.0);
  } else if constexpr (std::is_arithmetic_v<T> || std::is_enum_v<T>) {
    detail::write_number(out, value);
  } else if constexpr (std::is_convertible_v<const T&, std::string_view>) {
    const std::string_view text = value;
    detail::write_number(out, text.size());
    out += text;
  } else if constexpr (requires { value.si; }) {
    write_bytes(out, value.si);
  } else if constexpr (requires { value.has_value(); }) {
    detail::write_number(out, value.has_value());
    if (value) write_bytes(out, *value);
  } else if constexpr (requires { value.begin(); }) {
    detail::write_number(out, value.size());
    for (const auto& item : value) write_bytes(out, item);
  } else if constexpr (std::is_same_v<T, Source>) {
    write_bytes(out, value.document), write_bytes(out, value.place), write_bytes(out, value.seen);
  } else if constexpr (
      requires {
        value.nominal;
        value.low;
        value.high;
      } && !requires { value.dimension; }) {
    write_bytes(out, value.low), write_bytes(out, value.nominal), write_bytes(out, value.high);
  } else {
    T::fields([&](const char*, auto member) { write_bytes(out, value.*member); });
    detail::visit_kept<T>([&](auto member) { write_bytes(out, value.*member); });
  }
}

template <class T>
void read_bytes(std::string_view& in, T& value) {
  if constexpr (std::is_floating_point_v<T>) {
    value = static_cast<T>(detail::read_number_from<double>(in));
  } else if constexpr (std::is_same_v<T, bool>) {
    value = detail::read_number_from<char>(in) != 0;
  } else if constexpr (std::is_arithmetic_v<T> || std::is_enum_v<T>) {
    value = detail::read_number_from<T>(in);
  } else if constexpr (std::is_base_of_v<std::string, T>) {
    value = T(detail::read_characters(in));
  } else if constexpr (std::is_same_v<T, const char*>) {
    value = lasting(detail::read_characters(in));
  } else if constexpr (requires { value.si; }) {
    read_bytes(in, value.si);
  } else if constexpr (requires { value.has_value(); }) {
    value.reset();
    if (detail::read_number_from<char>(in) != 0) read_bytes(in, value.emplace());
  } else if constexpr (requires { value.begin(); }) {
    const auto size = detail::read_number_from<std::size_t>(in);
    if (size > in.size()) refuse_bytes();  // each item takes a byte at least
    if constexpr (requires { value.resize(size); })
      value.resize(size);
    else if (size != value.size())
      refuse_bytes();
    if constexpr (std::is_same_v<T, std::vector<bool>>)  // its items are no objects
      for (auto item : value) item = detail::read_number_from<char>(in) != 0;
    else
      for (auto& item : value) read_bytes(in, item);
  } else if constexpr (std::is_same_v<T, Source>) {
    read_bytes(in, value.document), read_bytes(in, value.place), read_bytes(in, value.seen);
  } else if constexpr (
      requires {
        value.nominal;
        value.low;
        value.high;
      } && !requires { value.dimension; }) {
    read_bytes(in, value.low), read_bytes(in, value.nominal), read_bytes(in, value.high);
  } else {
    T::fields([&](const char*, auto member) { read_bytes(in, value.*member); });
    detail::visit_kept<T>([&](auto member) { read_bytes(in, value.*member); });
  }
}

/// How a class of records travels.
struct Travel {
  std::function<std::string(pybind11::handle record)> bytes;
  /// \param asked  the arguments of the call, for an answer that holds its job; else None
  std::function<pybind11::object(std::string_view bytes, const pybind11::object& asked)> restored;
};

/// Gives a class of records `==`, `hash`, copies and pickles of every protocol, and lets nobody make an empty one.
void add_travel(pybind11::handle type, Travel travel);

/// Lets an answer remember what was asked, for its pickle.
/// \return the answer
pybind11::object with_question(pybind11::object answer, const pybind11::dict& asked);

/// Adds the function of `_core` that makes records again from a pickle.
void add_restoring(pybind11::module_& module);

}  // namespace tauten::python
