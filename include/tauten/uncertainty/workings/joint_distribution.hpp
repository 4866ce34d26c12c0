// Draws of all inputs of a model.
#pragma once

#include "tauten/base/philox.hpp"
#include "tauten/base/wide_rows.hpp"
#include "tauten/uncertainty/joint_distribution.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION void JointDistribution::draw(std::uint64_t seed, std::uint32_t stream, std::uint64_t first,
                                             std::size_t count, double* const* columns) const {
  alignas(64) std::uint32_t words[4][block];
  for (std::size_t group = 0; 4 * group < size(); ++group) {
    detail::in_wide_rows([&] {
      for (std::size_t i = 0; i < count; ++i) {
        const std::uint64_t trial = first + i;
        words[0][i] = static_cast<std::uint32_t>(trial);
        words[1][i] = static_cast<std::uint32_t>(trial >> 32);
        words[2][i] = static_cast<std::uint32_t>(group);
        words[3][i] = stream;
      }
      philox4x32({words[0], words[1], words[2], words[3]}, count, seed);
    });
    for (std::size_t j = 0; j < 4 && 4 * group + j < size(); ++j) {
      const std::size_t input = 4 * group + j;
      if (goes_with_others(input))
        for (std::size_t i = 0; i < count; ++i) columns[input][i] = detail::normal_of(words[j][i]);
      else
        of_[input].draw(words[j], columns[input], count);
    }
  }
  // From the last input up, so that each one still finds the independent numbers of those before it.
  for (std::size_t input = size(); input-- > 0;)
    if (goes_with_others(input))
      for (std::size_t i = 0; i < count; ++i) {
        double z = 0;
        for (std::size_t j = 0; j <= input; ++j)
          if (const double weight = lower_[input * size() + j]; weight != 0) z += weight * columns[j][i];
        columns[input][i] = of_[input].at_normal(z);
      }
}

}  // namespace tauten::TAUTEN_ABI
