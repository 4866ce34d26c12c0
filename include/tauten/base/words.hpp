// The words for the values of an enumeration, for bindings, JSON and input.
#pragma once

#include <type_traits>

namespace tauten {

/// The words in the order of the values. Specialise it beside the enumeration: `static constexpr const char* list[]`.
template <class E>
struct Words;

/// An enumeration that has words.
template <class E>
concept Worded = std::is_enum_v<E> && requires { Words<E>::list; };

/// \return the word for a value
template <Worded E>
constexpr const char* word_of(E value) noexcept {
  return Words<E>::list[static_cast<int>(value)];
}

}  // namespace tauten
