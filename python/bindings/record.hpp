// Shows a C++ aggregate in Python as a read-only object with `repr` and `as_dict()`.
//
// The aggregate lists its members once, and this file needs nothing else:
//   template <class V> static void fields(V&& v) { v("clamp_load", &Clamp::clamp_load); ... }
// A member is a number, bool, text, Quantity (in Python a float in SI), another record, or an optional or a vector of
// these.
#pragma once

#include <pybind11/pybind11.h>

#include <concepts>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "tauten/base/quantity.hpp"
#include "tauten/explain/number_text.hpp"

namespace tauten::python {

template <class T>
concept Record = requires { T::fields([](const char*, auto) {}); };

namespace detail {

template <class T>
struct IsVector : std::false_type {};
template <class T>
struct IsVector<std::vector<T>> : std::true_type {};
template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};
template <class T>
struct IsQuantity : std::false_type {};
template <Dim D, class Real>
struct IsQuantity<Quantity<D, Real>> : std::true_type {};

}  // namespace detail

/// \param whole  true: nested records become dicts and vectors become lists, all the way down
/// \return a member as Python object
template <class T>
pybind11::object to_python(const T& value, bool whole = false) {
  namespace py = pybind11;
  if constexpr (detail::IsQuantity<T>::value) {
    return py::float_(static_cast<double>(value.si));
  } else if constexpr (detail::IsOptional<T>::value) {
    return value ? to_python(*value, whole) : py::none();
  } else if constexpr (detail::IsVector<T>::value) {
    py::list items;
    for (const auto& item : value) items.append(to_python(item, whole));
    return whole ? py::object(items) : py::object(py::tuple(items));
  } else if constexpr (Record<T>) {
    if (!whole) return py::cast(value);
    py::dict members;
    T::fields([&](const char* name, auto member) { members[name] = to_python(value.*member, true); });
    return members;
  } else {
    return py::cast(value);
  }
}

/// \return a member as a person reads it, quantities in shop units; `name` is the Python name of the class of a record
template <class T>
std::string to_text(const T& value) {
  namespace py = pybind11;
  if constexpr (requires { value.shop(); }) {
    return []<Dim D, class Real>(const Quantity<D, Real>& q) {
      return quantity_text(static_cast<double>(q.si), D);
    }(value);
  } else if constexpr (detail::IsOptional<T>::value) {
    return value ? to_text(*value) : "None";
  } else if constexpr (detail::IsVector<T>::value) {
    std::string text;
    for (const auto& item : value) text += (text.empty() ? "" : ", ") + to_text(item);
    return "[" + text + "]";
  } else if constexpr (Record<T>) {
    std::string text;
    T::fields([&](const char* name, auto member) {
      text += (text.empty() ? "" : ", ") + std::string(name) + "=" + to_text(value.*member);
    });
    return std::string(py::str(py::type::of<T>().attr("__name__"))) + "(" + text + ")";
  } else if constexpr (std::is_floating_point_v<T>) {
    return number_text(static_cast<double>(value), 6);
  } else {
    return py::repr(py::cast(value));
  }
}

/// Adds the class of `T` to a module. Classes of nested records are to be added before.
template <Record T>
pybind11::class_<T> add_record(pybind11::handle scope, const char* name, const char* doc) {
  namespace py = pybind11;
  py::class_<T> type(scope, name, doc);
  T::fields([&](const char* field, auto member) {
    using Member = std::remove_cvref_t<decltype(std::declval<const T&>().*member)>;
    std::string about;
    if constexpr (requires(const Member& m) { m.shop(); })
      about = []<Dim D, class Real>(std::type_identity<Quantity<D, Real>>) {
        return std::string(describe(D).name) + ", " + describe(D).si_unit;
      }(std::type_identity<Member>{});
    type.def_property_readonly(field, [member](const T& record) { return to_python(record.*member); }, about.c_str());
  });
  type.def("__repr__", [](const T& record) { return to_text(record); });
  type.def(
      "as_dict", [](const T& record) { return to_python(record, true); },
      "All members by name, in SI; nested ones too");
  return type;
}

}  // namespace tauten::python
