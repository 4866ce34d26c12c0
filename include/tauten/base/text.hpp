// A text of a job.
#pragma once

#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Fails to compile, in one plain sentence, unless `fits`.
template <bool fits>
struct MustBeText {
  static_assert(fits, "tauten: this must be a text, in quotes");
  static constexpr bool sentence = true;
};

}  // namespace detail

/// A standard string that a number or `nullptr` does not compile for.
struct Text : std::string {
  Text() = default;
  Text(const char* text) : std::string(text) {}             // NOLINT(google-explicit-constructor)
  Text(std::string text) : std::string(std::move(text)) {}  // NOLINT(google-explicit-constructor)
  explicit Text(std::string_view text) : std::string(text) {}
  template <class Given>
    requires(std::is_arithmetic_v<Given> || std::is_null_pointer_v<Given>)
  Text(Given) noexcept(detail::MustBeText<detail::never<Given>>::sentence) {}  // NOLINT(google-explicit-constructor)
};

}  // namespace tauten::TAUTEN_ABI
