// The words for the values of an enumeration, for bindings, JSON and input.
#pragma once

#include <type_traits>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// The words in the order of the values. Specialise it beside the enumeration: `static constexpr const char* list[]`.
template <class E>
struct Words;

/// An enumeration that has words.
template <class E>
concept Worded = std::is_enum_v<E> && requires { Words<E>::list; };

/// \return false for what is none of the values, as it may come from a number
template <Worded E>
constexpr bool has_word(E value) noexcept {
  constexpr unsigned long long count = sizeof Words<E>::list / sizeof *Words<E>::list;
  return static_cast<unsigned long long>(value) < count;
}

/// \return the word for a value; "?" for what is none
template <Worded E>
constexpr const char* word_of(E value) noexcept {
  return has_word(value) ? Words<E>::list[static_cast<int>(value)] : "?";
}

}  // namespace tauten::TAUTEN_ABI
