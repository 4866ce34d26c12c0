// Bolt loads that a joint may end with when friction and wrench scatter.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/interruption.hpp"
#include "tauten/base/normal.hpp"
#include "tauten/base/philox.hpp"
#include "tauten/group/interaction.hpp"

namespace tauten::TAUTEN_ABI {

/// Relative standard deviations of the load that a torque gives.
struct LoadScatter {
  double bolt = 0;   ///< of friction that stays with a bolt through all passes
  double act = 0;    ///< of each act anew: stick-slip, reading
  double joint = 0;  ///< common to all acts: the error of the wrench itself
};

/// Loads at the end of all steps. Low and high are 2.5 and 97.5 % of the trials, nominal is their median.
struct ScatteredLoads {
  std::vector<Band<Force>> bolts;  ///< of each bolt
  Band<Force> lowest;              ///< of the lowest bolt of a joint
  Band<Force> highest;             ///< of the highest bolt of a joint
  double relieved = 0;             ///< share of joints in which some bolt was relieved to zero on the way
};

namespace detail {

/// \return quantiles by nearest rank; the numbers are reordered
inline Band<Force> quantiles(std::vector<double>& numbers) {
  const auto at = [&](double share) {
    attend();
    const auto place = numbers.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(numbers.size() - 1));
    std::nth_element(numbers.begin(), place, numbers.end());
    return Force(*place);
  };
  return {at(0.025), at(0.5), at(0.975)};
}

/// How many joints are followed at once, so that processors add up several.
inline constexpr std::size_t joints_at_once = 64;

}  // namespace detail

/// Follows many joints through the same steps, each act of tightening off by lognormal factors of mean 1. As long as all
/// bolts carry something, the answer of the others to one act does not depend on the loads, and is worked out once for
/// all; a joint in which a bolt is relieved to zero is followed on its own.
/// \param steps   as wished, before scatter
/// \param trials  number of joints, 100 to 1e7
/// \param seed    the same gives the same answer
/// \return the loads; or an error for a step that is not one, a deviation outside 0 to 1, or trials out of range
/// Accuracy: quantiles of 10,000 trials are good to about 1 % of the spread near the middle and 3 % at the ends.
inline Outcome<ScatteredLoads> try_scattered_loads(const Interaction& joint, const std::vector<LoadStep>& steps,
                                                   const LoadScatter& scatter, std::size_t trials = 10000,
                                                   std::uint64_t seed = 1) {
  const std::size_t n = joint.size();
  if (steps.empty()) return Error("steps", "steps is empty; give the plan of tightening");
  if (auto error = detail::load_step_error(n, steps)) return *error;
  for (const auto& [name, v] : {std::pair{"bolt", scatter.bolt}, {"act", scatter.act}, {"joint", scatter.joint}})
    if (!(v >= 0 && v <= 1)) return refusal(name, v, "but must be 0 to 1; 0.1 is 10 %");
  if (trials < 100 || trials > 10'000'000 || trials * n > 1'000'000'000)
    return refusal("trials", static_cast<double>(trials), "but must be 100 to 1e7, and fewer for many bolts");

  std::vector<std::vector<double>> responses;
  {
    TighteningRun run(joint);
    for (const LoadStep step : steps)
      responses.push_back(step.load > 0 ? run.response(step.bolt) : std::vector<double>(n));
  }
  // A lognormal factor of mean 1: exp(s z - s^2/2).
  const auto sigma = [](double v) { return std::sqrt(std::log1p(v * v)); };
  const double by_bolt = sigma(scatter.bolt);
  const double by_act = sigma(scatter.act);
  const double by_joint = sigma(scatter.joint);
  const auto middle = static_cast<float>(-(by_bolt * by_bolt + by_act * by_act + by_joint * by_joint) / 2);

  constexpr std::size_t width = detail::joints_at_once;
  using Lane = std::array<double, width>;
  std::vector<std::vector<double>> ends(n, std::vector<double>(trials));
  std::vector<Lane> loads(n);
  std::vector<Lane> wished(steps.size());
  std::size_t relieved = 0;
  const auto words_each = static_cast<std::uint32_t>((1 + n + steps.size() + 3) / 4);
  std::vector<float> normal(4 * words_each);
  for (std::size_t block = 0; block < trials; block += width) {
    detail::attend();
    const std::size_t count = std::min(width, trials - block);
    for (std::size_t t = 0; t < width; ++t) {
      const std::uint64_t trial = block + t;
      for (std::uint32_t w = 0; w < words_each; ++w) {
        const Philox4 four =
            philox4x32({{static_cast<std::uint32_t>(trial), static_cast<std::uint32_t>(trial >> 32), w, 7}}, seed);
        for (std::size_t k = 0; k < 4; ++k) normal[4 * w + k] = detail::normal_from_bits(four.word[k]);
      }
      for (std::size_t s = 0; s < steps.size(); ++s) {
        const float z = static_cast<float>(by_joint) * normal[0] +
                        static_cast<float>(by_bolt) * normal[1 + steps[s].bolt] +
                        static_cast<float>(by_act) * normal[1 + n + s];
        wished[s][t] = steps[s].load * static_cast<double>(detail::fast_exp(z + middle));
      }
    }
    for (Lane& lane : loads) lane.fill(0);
    Lane least;
    least.fill(0);
    for (std::size_t s = 0; s < steps.size(); ++s) {
      Lane rise;
      const Lane& now = loads[steps[s].bolt];
      for (std::size_t t = 0; t < width; ++t) rise[t] = std::max(wished[s][t] - now[t], 0.0);
      const std::vector<double>& others = responses[s];
      for (std::size_t i = 0; i < n; ++i) {
        const double share = others[i];
        if (share == 0) continue;
        Lane& lane = loads[i];
        for (std::size_t t = 0; t < width; ++t) {
          lane[t] += share * rise[t];
          least[t] = std::min(least[t], lane[t]);
        }
      }
    }
    for (std::size_t t = 0; t < count; ++t) {
      if (least[t] < 0) {
        ++relieved;
        TighteningRun run(joint);
        for (std::size_t s = 0; s < steps.size(); ++s) run.tighten(steps[s].bolt, wished[s][t]);
        for (std::size_t i = 0; i < n; ++i) ends[i][block + t] = run.loads()[i];
      } else {
        for (std::size_t i = 0; i < n; ++i) ends[i][block + t] = loads[i][t];
      }
    }
  }
  ScatteredLoads answer;
  answer.relieved = static_cast<double>(relieved) / static_cast<double>(trials);
  std::vector<double> low = ends[0];
  std::vector<double> high = ends[0];
  for (const std::vector<double>& end : ends)
    for (std::size_t t = 0; t < trials; ++t) {
      low[t] = std::min(low[t], end[t]);
      high[t] = std::max(high[t], end[t]);
    }
  for (std::vector<double>& end : ends) answer.bolts.push_back(detail::quantiles(end));
  answer.lowest = detail::quantiles(low);
  answer.highest = detail::quantiles(high);
  return answer;
}

}  // namespace tauten::TAUTEN_ABI
