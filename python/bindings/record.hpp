// Shows a C++ aggregate in Python as a read-only object with `repr` and `as_dict()`.
//
// The aggregate lists its members once, and this file needs nothing else:
//   template <class V> static void fields(V&& v) { v("clamp_load", &Clamp::clamp_load); ... }
// A member is a number, bool, text, Quantity (in Python a float in SI), Band, Source, an enumeration with `Words`, another
// record, or an optional or a vector of these. How records travel to other processes stands in travel.hpp.
#pragma once

#include <pybind11/pybind11.h>

#include <concepts>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/band_text.hpp"
#include "tauten/base/dimension.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"
#include "travel.hpp"

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
template <class T>
struct IsBand : std::false_type {};
template <class T>
struct IsBand<Band<T>> : std::true_type {};

}  // namespace detail

/// A band of any dimension: in Python all of them are of one class.
struct AnyBand {
  double low;
  double nominal;
  double high;
  Dim dimension;

  template <class T>
  static AnyBand of(const Band<T>& band) {
    using Traits = QuantityTraits<T>;
    return {Traits::si(band.low), Traits::si(band.nominal), Traits::si(band.high), Traits::dimension};
  }
  const char* unit() const { return describe(dimension).si_unit; }
  /// \return "63.7 to 102.0 kN, typical 81.2 kN"; "none" where there is no figure
  std::string text() const {
    if (nominal != nominal) return "none";
    const DimensionText shop = describe(dimension);
    const double scale = shop.shop_unit_in_si;
    const auto [from, typical, to] = band_text(low / scale, nominal / scale, high / scale);
    const std::string unit = *shop.shop_unit != '\0' ? std::string(" ") + shop.shop_unit : "";
    return from + " to " + to + unit + ", typical " + typical + unit;
  }

  template <class V>
  static void fields(V&& v) {
    v("low", &AnyBand::low);
    v("nominal", &AnyBand::nominal);
    v("high", &AnyBand::high);
  }
  template <class V>
  static void kept(V&& v) {
    v(&AnyBand::dimension);
  }
};

/// A source, with the word for how it was seen that JSON has too.
struct SourceInfo {
  std::string document;
  std::string place;
  std::string seen;

  static SourceInfo of(const Source& source) {
    constexpr const char* seen[] = {"in_print", "once", "memory", "judgement"};
    return {source.document, source.place, seen[static_cast<int>(source.seen)]};
  }
  std::string text() const {
    const std::string where = document.empty() ? "common practice, no source" : document;
    const std::string how = seen == "once" ? "once in print" : seen == "memory" ? "from memory" : seen;
    return where + (place.empty() ? "" : ", " + place) + (seen == "in_print" ? "" : " (" + how + ")");
  }

  template <class V>
  static void fields(V&& v) {
    v("document", &SourceInfo::document);
    v("place", &SourceInfo::place);
    v("seen", &SourceInfo::seen);
  }
};

/// \param whole  true: nested records become dicts, vectors become lists and NaN becomes None, all the way down
/// \return a member as Python object
template <class T>
pybind11::object to_python(const T& value, bool whole = false) {
  namespace py = pybind11;
  if constexpr (detail::IsQuantity<T>::value) {
    return to_python(static_cast<double>(value.si), whole);
  } else if constexpr (std::is_floating_point_v<T>) {
    return whole && value != value ? py::object(py::none()) : py::float_(static_cast<double>(value));
  } else if constexpr (detail::IsBand<T>::value) {
    return to_python(AnyBand::of(value), whole);
  } else if constexpr (std::is_same_v<T, Source>) {
    return to_python(SourceInfo::of(value), whole);
  } else if constexpr (Worded<T>) {
    return py::str(word_of(value));
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
  } else if constexpr (std::is_base_of_v<std::string, T>) {
    return py::cast(static_cast<const std::string&>(value));
  } else {
    return py::cast(value);
  }
}

/// \return the type of a member in Python, as a stub writes it; classes of records are to be added before
template <class T>
std::string annotation_of() {
  if constexpr (detail::IsQuantity<T>::value || std::is_floating_point_v<T>) {
    return "float";
  } else if constexpr (detail::IsBand<T>::value) {
    return "Band";
  } else if constexpr (std::is_same_v<T, Source>) {
    return "Source";
  } else if constexpr (detail::IsOptional<T>::value) {
    return "Optional[" + annotation_of<typename T::value_type>() + "]";
  } else if constexpr (detail::IsVector<T>::value) {
    return "tuple[" + annotation_of<typename T::value_type>() + ", ...]";
  } else if constexpr (Record<T>) {
    return pybind11::str(pybind11::type::of<T>().attr("__name__"));
  } else if constexpr (std::is_same_v<T, bool>) {
    return "bool";
  } else if constexpr (std::is_integral_v<T>) {
    return "int";
  } else {
    static_assert(Worded<T> || std::is_convertible_v<T, std::string_view>);
    return "str";
  }
}

/// \return the SI unit of the numbers of a member; "" where it has none, or brings it along as a band does
template <class T>
const char* unit_of() {
  if constexpr (detail::IsQuantity<T>::value)
    return describe(QuantityTraits<T>::dimension).si_unit;
  else if constexpr (detail::IsOptional<T>::value || detail::IsVector<T>::value)
    return unit_of<typename T::value_type>();
  else
    return "";
}

/// \return a member as a person reads it, quantities in shop units; `name` is the Python name of the class of a record
template <class T>
std::string to_text(const T& value) {
  namespace py = pybind11;
  if constexpr (requires { value.shop(); }) {
    return []<Dim D, class Real>(const Quantity<D, Real>& q) {
      return q.si == q.si ? quantity_text(static_cast<double>(q.si), D) : "none";
    }(value);
  } else if constexpr (detail::IsBand<T>::value) {
    return to_text(AnyBand::of(value));
  } else if constexpr (std::is_same_v<T, Source>) {
    return to_text(SourceInfo::of(value));
  } else if constexpr (std::is_same_v<T, AnyBand>) {
    return "Band(" + value.text() + ")";
  } else if constexpr (Worded<T>) {
    return word_of(value);
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
  } else if constexpr (std::is_base_of_v<std::string, T>) {
    return py::repr(py::cast(static_cast<const std::string&>(value)));
  } else {
    return py::repr(py::cast(value));
  }
}

/// \return name and text of each member, quantities in shop units
template <Record T>
std::vector<std::vector<std::string>> rows_of(const T& record) {
  std::vector<std::vector<std::string>> rows;
  T::fields([&](const char* field, auto member) {
    using Member = std::remove_cvref_t<decltype(record.*member)>;
    if constexpr (std::is_convertible_v<Member, std::string>)
      rows.push_back({field, std::string(record.*member)});
    else
      rows.push_back({field, to_text(record.*member)});
  });
  return rows;
}

/// What the classes of records differ in, so that what they have in common is compiled once.
struct RecordClass {
  std::string (*text)(pybind11::handle record);
  pybind11::object (*as_dict)(pybind11::handle record);
  std::vector<std::vector<std::string>> (*rows)(pybind11::handle record);
};

/// Gives a class `repr`, `as_dict`, `to_json` and a table for notebooks.
void add_showing(pybind11::handle type, const RecordClass& record_class);

/// Gives a class a read-only member.
/// \param member  record, place of the member among those of its class -> the member in Python
/// \param about   its docstring
void add_member(pybind11::handle type, const char* name,
                pybind11::object (*member)(pybind11::handle record, std::size_t place), std::size_t place,
                const std::string& about);

/// Gives a class the members of a record that it holds, but for those that it has itself.
/// \tparam PartOf  whole -> the record
template <Record Part, class Whole, class PartOf>
void add_members(pybind11::class_<Whole>& type, PartOf) {
  namespace py = pybind11;
  const py::dict annotations = type.attr("__annotations__"), units = type.attr("_units");
  const auto member_of = [](py::handle record, std::size_t place) {
    const Part& part = PartOf{}(record.cast<const Whole&>());
    py::object found;
    Part::fields([&, at = std::size_t{0}](const char*, auto member) mutable {
      if (at++ == place) found = to_python(part.*member);
    });
    return found;
  };
  Part::fields([&, at = std::size_t{0}](const char* field, auto member) mutable {
    const std::size_t place = at++;
    if (annotations.contains(field)) return;
    using Member = std::remove_cvref_t<decltype(std::declval<const Part&>().*member)>;
    std::string about;
    if constexpr (requires(const Member& m) { m.shop(); })
      about = []<Dim D, class Real>(std::type_identity<Quantity<D, Real>>) {
        return std::string(describe(D).name) + ", " + describe(D).si_unit;
      }(std::type_identity<Member>{});
    add_member(type, field, member_of, place, about);
    annotations[field] = annotation_of<Member>();
    if (const char* unit = unit_of<Member>(); *unit != '\0') units[field] = unit;
  });
}

/// Adds the class of `T` to a module. Classes of nested records must be added before.
/// \param job_of  of an answer that holds its job: arguments of the call -> job; the answers come from `with_question`
/// \tparam is_asked  its records come from `with_question`, which notes what was asked
template <Record T, class JobOf = std::nullptr_t, bool is_asked = !std::is_same_v<JobOf, std::nullptr_t>>
pybind11::class_<T> add_record(pybind11::handle scope, const char* name, const char* doc, JobOf job_of = nullptr) {
  namespace py = pybind11;
  constexpr bool has_job = requires(T record) { record.job; };
  static_assert(has_job != std::is_same_v<JobOf, std::nullptr_t>, "give job_of for an answer that holds its job");
  py::class_<T> type = [&] {
    if constexpr (is_asked)
      return py::class_<T>(scope, name, doc, py::dynamic_attr());
    else
      return py::class_<T>(scope, name, doc);
  }();
  add_travel(type, {[](py::handle record) {
                      std::string bytes;
                      write_bytes(bytes, record.cast<const T&>());
                      return bytes;
                    },
                    [job_of](std::string_view bytes, const py::object& asked) {
                      T record{};
                      read_bytes(bytes, record);
                      if (!bytes.empty()) refuse_bytes();
                      if constexpr (has_job) record.job = job_of(asked.cast<py::dict>());
                      return py::cast(std::move(record));
                    }});
  type.attr("__annotations__") = py::dict();  // of which stubs are made
  type.attr("_units") = py::dict();
  add_members<T>(type, [](const T& record) -> const T& { return record; });
  add_showing(type, {[](py::handle record) { return to_text(record.cast<const T&>()); },
                     [](py::handle record) { return to_python(record.cast<const T&>(), true); },
                     [](py::handle record) { return rows_of(record.cast<const T&>()); }});
  return type;
}

/// Gives a class a method, also another one than it has.
template <class T, class F>
void set_method(pybind11::class_<T>& type, const char* name, F method) {
  type.attr(name) = pybind11::cpp_function(method, pybind11::is_method(type));
}

/// Gives a class another `repr` than the list of its members.
template <class T, class F>
void set_repr(pybind11::class_<T>& type, F text) {
  set_method(type, "__repr__", text);
}

}  // namespace tauten::python
