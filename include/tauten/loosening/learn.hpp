// What the fasteners already undone tell about the rest of a flange.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/lognormal.hpp"
#include "tauten/base/number_text.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/loosening/learned.hpp"
#include "tauten/loosening/neighbour.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

// Student's distribution with four degrees of freedom: a bell with heavy tails, in closed form.

/// \return logarithm of the density, less that of its constant 3/8
inline double heavy_log_density(double t) noexcept { return -2.5 * std::log1p(t * t / 4); }

/// \return the density
inline double heavy_density(double t) noexcept {
  const double w = 1 + t * t / 4;
  return 0.375 / (w * w * std::sqrt(w));
}

/// \return the chance of a value above t
inline double heavy_chance_above(double t) noexcept {
  if (t > 1e3) return 3 / (t * t * t * t);  // the leading term; the rest cancels in the closed form
  const double u = t / std::sqrt(1 + t * t / 4);
  return 0.5 - 0.375 * u * (1 - u * u / 12);
}

}  // namespace detail

/// Prior of the breakaway torque on one flange: ln T is normal with mean ln m and deviation s; ln m is normal around
/// `median` with deviation `between`, ln s is normal around ln `within` with deviation `within_doubt`. With heavy tails
/// both normal distributions of ln T and of ln m are those of Student with four degrees of freedom, and the deviations
/// their scales: one fastener far from the rest moves little, and a flange far from the description is soon believed.
struct FreeTorquePrior {
  double median = 0;          ///< N.m
  double between = 0;         ///< what one flange differs from another, as deviation of ln T
  double within = 0;          ///< what fasteners of one flange differ, as deviation of ln T
  double within_doubt = 0.4;  ///< judgement
  bool heavy_tails = false;
};

/// Scale of the heavy-tailed parts over the deviation of the normal ones, so that nine of ten cases lie in the same band.
inline constexpr double heavy_scale = 0.714;

/// \param torque         whose whole scatter is known
/// \param least_between  least deviation of ln T between flanges: a description may miss the flange by more than like
///                       fasteners scatter, as where the bolts are of another class
/// \return its prior: 0.64 of the variance between flanges and 0.36 within one (judgement), with heavy tails
inline FreeTorquePrior prior_of(const Lognormal& torque, double least_between = 0) noexcept {
  const double deviation = std::max(1e-3, torque.log_deviation());
  return {torque.median, heavy_scale * std::max(least_between, 0.8 * deviation), heavy_scale * 0.6 * deviation, 0.4,
          true};
}

namespace detail {

/// Posterior on a grid of the mean and the logarithm of the deviation of ln T.
struct LearnGrid {
  static constexpr int means = 81, deviations = 41;
  double mean[means], deviation[deviations], weight[means][deviations];
  bool heavy = false;

  double log_density(double z) const noexcept { return heavy ? heavy_log_density(z) : -z * z / 2; }
  double density(double z) const noexcept {
    return heavy ? heavy_density(z) : std::exp(-z * z / 2) * 0.39894228040143267794;
  }
  double chance_above(double z) const noexcept { return heavy ? heavy_chance_above(z) : normal_chance(-z); }
  double log_chance_above(double z) const noexcept {
    return heavy ? std::log(heavy_chance_above(z)) : log_normal_chance(-z);
  }

  // Centres and half widths of the grid.
  void fill(const FreeTorquePrior& prior, const std::vector<Neighbour>& undone, double m, double dm, double l,
            double dl) {
    const double centre = std::log(prior.median), doubt = prior.within_doubt;
    heavy = prior.heavy_tails;
    double best = -HUGE_VAL;
    for (int j = 0; j < deviations; ++j) {
      const double log_deviation = l + dl * (2.0 * j / (deviations - 1) - 1);
      deviation[j] = std::exp(log_deviation);
      const double b = (log_deviation - std::log(prior.within)) / doubt;
      for (int i = 0; i < means; ++i) {
        mean[i] = m + dm * (2.0 * i / (means - 1) - 1);
        const double a = (mean[i] - centre) / prior.between;
        double sum = log_density(a) - b * b / 2;
        for (const Neighbour& one : undone) {
          const double z = (std::log(one.torque.si) - mean[i]) / deviation[j];
          sum += one.how == Neighbour::How::freed ? log_density(z) - log_deviation : log_chance_above(z);
        }
        weight[i][j] = sum;
        best = std::max(best, sum);
      }
    }
    double total = 0;
    for (auto& row : weight)
      for (double& w : row) total += w = std::exp(w - best);
    for (auto& row : weight)
      for (double& w : row) w /= total;
  }
  /// Mean and variance of a function of the grid point.
  template <class F>
  std::pair<double, double> moments(F of) const {
    double first = 0, second = 0;
    for (int i = 0; i < means; ++i)
      for (int j = 0; j < deviations; ++j) first += weight[i][j] * of(i, j);
    for (int i = 0; i < means; ++i)
      for (int j = 0; j < deviations; ++j) second += weight[i][j] * (of(i, j) - first) * (of(i, j) - first);
    return {first, second};
  }
  /// \return ln T below which the median of this flange lies with this chance
  double median_quantile(double chance) const {
    const double half = (mean[1] - mean[0]) / 2;
    double below = 0;
    for (int i = 0; i < means; ++i) {
      double here = 0;
      for (const double w : weight[i]) here += w;
      if (below + here >= chance) return mean[i] + half * (2 * (chance - below) / here - 1);
      below += here;
    }
    return mean[means - 1];
  }
  /// \return the torque below which the next fastener comes free with this chance; Newton from `start`, kept in bounds
  double quantile(double chance, double start) const {
    const double reach = (heavy ? 40 : 8) * deviation[deviations - 1];
    double low = mean[0] - reach, high = mean[means - 1] + reach;
    double x = start;
    for (int step = 0; step < 60; ++step) {
      double below = 0, slope = 0;
      for (int i = 0; i < means; ++i)
        for (int j = 0; j < deviations; ++j)
          if (weight[i][j] > 1e-12) {
            const double z = (x - mean[i]) / deviation[j];
            below += weight[i][j] * (1 - chance_above(z));
            slope += weight[i][j] * density(z) / deviation[j];
          }
      (below < chance ? low : high) = x;
      const double newton = x - (below - chance) / slope;
      const double next = newton > low && newton < high ? newton : (low + high) / 2;
      const bool done = std::fabs(next - x) < 1e-9;
      x = next;
      if (done) break;
    }
    return std::exp(x);
  }
};

}  // namespace detail

/// Updates the prior with the outcomes (censored likelihood, posterior by quadrature on a grid that is narrowed twice).
/// \return what to expect of the next like fastener, or what is wrong with the input
inline Outcome<Learned> try_learn(const FreeTorquePrior& prior, const std::vector<Neighbour>& undone) {
  if (!(prior.median > 0 && prior.median < 1e6) || !(prior.between > 0 && prior.between < 5) ||
      !(prior.within > 0 && prior.within < 5) || !(prior.within_doubt > 0 && prior.within_doubt < 3))
    return Error("prior",
                 "prior: the median must be above 0 and at most 1000000 N.m, and the deviations above 0 and "
                 "below 5; nothing can be learned about a torque that is zero");
  if (undone.size() > 10000) return Error("loosened", "loosened has more than 10000 outcomes; give the latest 10000");
  double low = std::log(prior.median) - 5 * prior.between, high = low + 10 * prior.between;
  for (const Neighbour& one : undone) {
    if (!(one.torque.si > 0 && one.torque.si <= 1e6)) {
      const std::string text = "loosened: a torque is " + number_text(one.torque.si, 6) +
                               " N.m, but must be above 0 and at most 1000000 N.m; give the torque at which it came "
                               "free or stopped, for example 48N.m";
      return Error("loosened", text.c_str());
    }
    low = std::min(low, std::log(one.torque.si));
    high = std::max(high, std::log(one.torque.si) + 2 * prior.within);
  }
  std::vector<detail::LearnGrid> on_heap(1);
  detail::LearnGrid& grid = on_heap[0];
  double m = (low + high) / 2, dm = (high - low) / 2, l = std::log(prior.within), dl = 5 * prior.within_doubt;
  const auto mean_at = [&](int i, int) { return grid.mean[i]; };
  const auto log_deviation_at = [&](int, int j) { return std::log(grid.deviation[j]); };
  for (int pass = 0; pass < 3; ++pass) {
    grid.fill(prior, undone, m, dm, l, dl);
    const auto [mean, variance] = grid.moments(mean_at);
    const auto [log_mean, log_variance] = grid.moments(log_deviation_at);
    dm = std::max(6 * std::sqrt(variance), 2 * dm / detail::LearnGrid::means);
    dl = std::max(6 * std::sqrt(log_variance), 2 * dl / detail::LearnGrid::deviations);
    m = mean;
    l = log_mean;
  }
  const auto [mean, variance] = grid.moments(mean_at);
  // The variance of Student's distribution with four degrees of freedom is twice its squared scale.
  const double spread = prior.heavy_tails ? 2 : 1;
  const double within = spread * grid.moments([&](int, int j) { return grid.deviation[j] * grid.deviation[j]; }).first;
  constexpr double z = 1.64485362695147271486;
  const double whole = std::sqrt(variance + within), own = z * std::sqrt(variance);
  // Quantiles, for tails that are cut off hardly matter to them; a normal distribution has them from its moments.
  const auto median = [&](double chance, double by_moments) {
    return Torque(std::exp(prior.heavy_tails ? grid.median_quantile(chance) : by_moments));
  };
  Learned out{{},
              {median(0.05, mean - own), median(0.5, mean), median(0.95, mean + own)},
              {std::exp(mean), std::sqrt(std::expm1(variance + within))},
              static_cast<int>(undone.size())};
  for (std::size_t i = 0; i < learned_points; ++i)
    out.quantiles[i] = grid.quantile(learned_chances[i], mean + whole * normal_quantile(learned_chances[i]));
  out.torque = {Torque(out.quantiles[1]), Torque(out.quantiles[4]), Torque(out.quantiles[7])};
  return out;
}

/// \copydoc try_learn
/// \throws Error  on such input
inline Learned learn(const FreeTorquePrior& prior, const std::vector<Neighbour>& undone) {
  return try_learn(prior, undone).value();
}

}  // namespace tauten::TAUTEN_ABI
