// The torques of all modes as samples: their bands, and how learning changes the breakaway torque.
#pragma once

#include <algorithm>
#include <cstddef>

#include "tauten/base/band.hpp"
#include "tauten/loosening/learn.hpp"
#include "tauten/loosening/simulate.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// Quantiles of the five torques, from so many draws that no band needs more.
struct TorqueSample {
  static constexpr int size = 128 * Draws::size;
  std::vector<float> torque[Draws::modes];

  /// \param held    draws that would have ended up to its torque are left out; more blocks are drawn in their place, up
  ///                to a bound, so that a band stands on as many as may be
  /// \param enough  draws that will do, where fewer than `size` are asked for: in whole blocks
  TorqueSample(const ReleaseModel& model, std::uint64_t seed, const std::optional<Held>& held = std::nullopt,
               bool sorted = true, std::uint64_t enough = size) {
    Draws draws;
    enough = std::min<std::uint64_t>(enough, size);
    for (auto& list : torque) list.reserve(static_cast<std::size_t>(enough) + Draws::size);
    constexpr std::uint64_t most = 16 * size;
    for (std::uint64_t first = 0; first < most && torque[0].size() < enough; first += Draws::size) {
      attend();
      alignas(64) std::int8_t before[Draws::size];
      const Block block(first);
      borne(held, seed, block, draws, before);
      draw(model, seed, block, draws);
      for (int i = 0; i < Draws::size; ++i)
        for (int mode = 0; mode < Draws::modes && before[i] == counts; ++mode)
          torque[mode].push_back(draws.torque[mode][i]);
    }
    for (auto& list : torque)
      if (sorted) std::sort(list.begin(), list.end());
  }
  /// \return three quantiles: the median, and one in each half beside it. The list need not be sorted, which takes longer.
  Band<Torque> band(Draws::Mode mode) {
    auto& list = torque[mode];
    const auto place = [&](double share) {
      return list.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(list.size() - 1));
    };
    const auto low = place(0.05), middle = place(0.5), high = place(0.95);
    std::nth_element(list.begin(), middle, list.end());
    const Torque typical(static_cast<double>(*middle));  // before it moves with the upper half
    std::nth_element(list.begin(), low, middle);
    std::nth_element(middle, high, list.end());
    return {Torque(static_cast<double>(*low)), typical, Torque(static_cast<double>(*high))};
  }
  /// \param learned  what the torque of a mode should be
  /// \return the factors that make it so
  LearnedCurve curve(Draws::Mode mode, const Learned& learned) const {
    LearnedCurve out;
    std::size_t none = 0;  // trials that need no torque need no factor either
    while (none < torque[mode].size() && !(torque[mode][none] > 1e-6f)) ++none;
    const auto last = static_cast<double>(torque[mode].size() - 1 - none);
    if (!(last > 0)) return out;
    for (std::size_t i = 0; i < learned_points; ++i) {
      out.torque[i] = torque[mode][none + static_cast<std::size_t>(learned_chances[i] * last)];
      out.factor[i] = static_cast<float>(learned.quantiles[i]) / out.torque[i];
    }
    return out;
  }
  std::size_t count() const noexcept { return torque[0].size(); }
  /// Lognormal of the same log mean and variance as the torque of a mode, trials that need none left out.
  Lognormal lognormal(Draws::Mode mode) const {
    double n = 0, mean = 0, square_sum = 0;
    for (const float x : torque[mode])
      if (x > 1e-6f) {
        const double y = std::log(static_cast<double>(x));
        n += 1;
        const double step = y - mean;
        mean += step / n;
        square_sum += step * (y - mean);
      }
    return n < 2 ? Lognormal{} : Lognormal{std::exp(mean), std::sqrt(std::expm1(square_sum / n))};
  }
};

/// Narrows and shifts everything that holds the fastener until the breakaway torque has the learned distribution. Bolt
/// and tools stay as they are; thread and face keep their shares.
inline ReleaseModel with_learned(ReleaseModel m, const Lognormal& before, const Lognormal& learned,
                                 std::uint64_t seed) {
  const double ratio = learned.log_deviation() / std::max(1e-6, before.log_deviation());
  for (Lognormal* part : {&m.preload, &m.thread_growth, &m.bearing_growth, &m.bond, &m.rust, &m.prevailing}) {
    const double deviation = part->log_deviation() * ratio;
    part->variation = std::sqrt(std::expm1(deviation * deviation));
  }
  m.learned *= learned.median / TorqueSample(m, seed, std::nullopt, false).lognormal(Draws::free).median;
  return m;
}

/// Moves the strength of the shank until the torque at the head that shears it has the learned median, and lets it
/// scatter more where like bolts do. What rubs under the head stays; strength in tension goes with that in torsion.
inline ReleaseModel with_learned_shank(ReleaseModel m, const Lognormal& learned, std::uint64_t seed) {
  const auto sheared = [&] { return TorqueSample(m, seed, std::nullopt, false).lognormal(Draws::shear); };
  const double more = square(learned.log_deviation()) - square(sheared().log_deviation());
  if (more > 0) m.shear.variation = std::sqrt(std::expm1(square(m.shear.log_deviation()) + more));
  for (int pass = 0; pass < 6; ++pass) {
    const double before = m.shear.median;
    m.shear.median = std::max(0.1 * before, before + learned.median - sheared().median);
    m.breaking_load *= m.shear.median / before;
  }
  return m;
}

}  // namespace tauten::TAUTEN_ABI::detail
