// An answer as one row of a table: its members laid out flat, as numbers and texts.
#pragma once

#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/caution.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::shared {

/// A column of an answer.
struct AnswerColumn {
  enum class Kind : unsigned char { number, truth, text };
  std::string name;  ///< "clamp_load_low"
  Kind kind;
  Dim dimension = Dim::number;  ///< of a number, which stands in SI
};

/// What stands in one of its cells. A number that is not known is NaN, a text that is not known is empty.
struct Cell {
  double number = absent;
  std::string_view text = {};  ///< lives as long as the answer that it came from
};

namespace detail {

template <class T>
inline constexpr bool is_quantity = false;
template <Dim D>
inline constexpr bool is_quantity<Quantity<D>> = true;
template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;
template <class T>
inline constexpr bool is_list = false;
template <class T>
inline constexpr bool is_list<std::vector<T>> = true;

template <class T>
concept OneText = std::is_convertible_v<const T&, std::string_view>;
template <class T>
concept Members = requires { T::fields([](const char*, auto) {}); };

template <class T, class Owner>
T member_type(T Owner::*);

}  // namespace detail

/// Adds a column for every member of `T` that is one number or one text. Lists have no place in a row.
/// \param name  what the member is called; "" for the answer itself
template <class T>
void add_figures(const std::string& name, std::vector<AnswerColumn>& figures) {
  using enum AnswerColumn::Kind;
  if constexpr (detail::is_quantity<T>) {
    figures.push_back({name, number, QuantityTraits<T>::dimension});
  } else if constexpr (std::is_same_v<T, bool>) {
    figures.push_back({name, truth});
  } else if constexpr (Worded<T> || detail::OneText<T>) {
    figures.push_back({name, text});
  } else if constexpr (std::is_arithmetic_v<T>) {
    figures.push_back({name, number});
  } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
    figures.push_back({name, text});  // yes, no, or nothing where it is not known
  } else if constexpr (detail::is_optional<T>) {
    add_figures<typename T::value_type>(name, figures);
  } else if constexpr (detail::Members<T>) {
    T::fields([&](const char* member, auto pointer) {
      add_figures<decltype(detail::member_type(pointer))>(name.empty() ? member : name + "_" + member, figures);
    });
  }
}

/// Puts the members of an answer into cells, in the order of `add_figures`.
/// \param value  nullptr for what is not known
/// \param next   the next cell
template <class T>
void put_cells(const T* value, Cell*& next) {
  if constexpr (detail::is_quantity<T>) {
    *next++ = {value ? value->si : absent};
  } else if constexpr (Worded<T>) {
    *next++ = {absent, value ? word_of(*value) : ""};
  } else if constexpr (detail::OneText<T>) {
    *next++ = {absent, value ? std::string_view(*value) : ""};
  } else if constexpr (std::is_arithmetic_v<T>) {
    *next++ = {value ? static_cast<double>(*value) : absent};
  } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
    *next++ = {absent, !value || !*value ? "" : **value ? "yes" : "no"};
  } else if constexpr (detail::is_optional<T>) {
    put_cells<typename T::value_type>(value && *value ? &**value : nullptr, next);
  } else if constexpr (detail::Members<T>) {
    T::fields([&](const char*, auto pointer) { put_cells(value ? &(value->*pointer) : nullptr, next); });
  }
}

/// Adds the codes of all notices of an answer to a text, each once, with semicolons between them. The standing cautions
/// hold for all rows and tell nothing of one.
template <class T>
void add_codes(const T& value, std::string& codes) {
  if constexpr (std::is_same_v<T, Notice>) {
    const std::string_view code = value.code;
    if (cautions::is_one(code)) return;
    for (std::size_t at = 0; (at = codes.find(code, at)) != std::string::npos; at += code.size())
      if ((at == 0 || codes[at - 1] == ';') && (at + code.size() == codes.size() || codes[at + code.size()] == ';'))
        return;
    if (!codes.empty()) codes += ';';
    codes += code;
  } else if constexpr (std::is_same_v<T, std::vector<Notice>>) {
    for (const Notice& notice : value) add_codes(notice, codes);
  } else if constexpr (detail::is_optional<T>) {
    if (value) add_codes(*value, codes);
  } else if constexpr (detail::Members<T>) {
    T::fields([&](const char*, auto pointer) { add_codes(value.*pointer, codes); });
  }
}

}  // namespace tauten::shared
