// Every formula of the library. Only one source file of a program includes them all, as that takes the compiler its time.
#pragma once

#include <span>
#include <string_view>

#include "tauten/base/registry.hpp"

namespace tauten::shared {

std::span<const Entry> registry() noexcept;

/// \return the room of the library to which the formula belongs
const char* room_of(const Entry& formula) noexcept;

/// \return the formula of this name, or null
const Entry* formula_named(std::string_view name) noexcept;

}  // namespace tauten::shared
