// Draws from a distribution.
#pragma once

#include "tauten/base/wide_rows.hpp"
#include "tauten/uncertainty/distribution.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION void Distribution::draw(const std::uint32_t* words, double* x, std::size_t count) const noexcept {
  const auto even = [](std::uint32_t word) { return (static_cast<double>(word) + 0.5) * 0x1p-32; };
  const auto each = [&](auto&& value_of) {
    for (std::size_t i = 0; i < count; ++i) x[i] = value_of(words[i]);
  };
  detail::in_wide_rows([&] {
    switch (shape_) {
      case Shape::fixed: return each([&](std::uint32_t) { return a_; });
      case Shape::normal: return each([&](std::uint32_t w) { return a_ + b_ * detail::normal_of(w); });
      case Shape::uniform: return each([&](std::uint32_t w) { return a_ + (b_ - a_) * even(w); });
      case Shape::triangular: return each([&](std::uint32_t w) { return triangle_at(even(w)); });
      case Shape::samples: return each([&](std::uint32_t w) { return sample_at(even(w)); });
      case Shape::lognormal:
      case Shape::two_piece: return each([&](std::uint32_t w) { return at_normal(detail::normal_of(w)); });
    }
  });
}

}  // namespace tauten::TAUTEN_ABI
