// Inputs drawn at random from the range in which a formula is used.
#pragma once

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "shared/registry.hpp"

namespace sample {

// Where a formula states no range of validity: what a pumping station is bolted with, M2 to M64.
inline tauten::Interval trade_range(tauten::Dim dimension) {
  using tauten::Dim;
  switch (dimension) {
    case Dim::number: return {0.05, 0.95};
    case Dim::length: return {2e-3, 64e-3};
    case Dim::area: return {2e-6, 3e-3};
    case Dim::angle: return {0.02, 1.0};
    case Dim::force: return {1e2, 1e6};
    case Dim::torque: return {1e-1, 3e3};
    case Dim::stress: return {1e8, 1.2e9};
    case Dim::compliance: return {1e-10, 1e-8};
    case Dim::stiffness: return {1e7, 1e10};
    case Dim::temperature: return {1, 200};
    case Dim::energy: return {0.1, 100};
    case Dim::expansion: return {5e-6, 3e-5};
  }
  return {0, 1};
}

inline double draw(const tauten::Arg& arg, std::mt19937_64& random) {
  const bool stated = arg.validity.low > -tauten::largest && arg.validity.high < tauten::largest;
  tauten::Interval range = stated ? arg.validity : trade_range(arg.dimension);
  // The upper end first: a lower end of 0 may have no meaning.
  range.low = std::max({range.low, arg.domain.low, range.low <= 0 ? range.high * 1e-3 : range.low});
  range.high = std::min(range.high, arg.domain.high);
  return std::uniform_real_distribution<double>(range.low, range.high)(random);
}

/// Inputs at which the formula has a value; drawn again until they fit together.
inline std::vector<double> inputs(const tauten::Entry& entry, std::mt19937_64& random) {
  std::vector<double> x(entry.inputs.size());
  for (int attempt = 0; attempt < 10'000; ++attempt) {
    for (std::size_t i = 0; i < x.size(); ++i) x[i] = draw(entry.inputs[i], random);
    if (std::isfinite(entry.value(x.data()))) return x;
  }
  return {};
}

}  // namespace sample
