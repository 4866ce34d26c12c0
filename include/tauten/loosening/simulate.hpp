// Monte Carlo over everything that may give first, reproducible for a seed on any number of threads.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "tauten/base/philox.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/share_out.hpp"
#include "tauten/loosening/release_model.hpp"
#include "tauten/loosening/torque_terms.hpp"

namespace tauten {

/// How the fastener ends when the torque grows up to a limit. The five chances add up to one.
struct Chances {
  Torque limit;
  double free = 0;        ///< comes loose
  double shear = 0;       ///< the bolt shears
  double round = 0;       ///< the corners or lobes of the drive give way
  double tool = 0;        ///< socket, key or square fails
  double not_moving = 0;  ///< nothing gives up to the limit, or up to what the arm can do

  template <class V>
  static void fields(V&& visit) {
    visit("limit", &Chances::limit);
    visit("free", &Chances::free);
    visit("shear", &Chances::shear);
    visit("round", &Chances::round);
    visit("tool", &Chances::tool);
    visit("not_moving", &Chances::not_moving);
  }
};

namespace detail {

/// Torques at which each mode would be reached, for one block of trials. Single precision: its rounding is far below
/// what any number of trials can resolve.
struct Draws {
  static constexpr int size = 256;
  enum Mode { free, shear, rounded, tool, arm, modes };
  alignas(64) float torque[modes][size];
};

/// Fills the trials `first` to `first + Draws::size - 1`.
inline void draw(const ReleaseModel& m, std::uint64_t seed, std::uint64_t first, Draws& out) noexcept {
  constexpr int size = Draws::size;
  const Lognormal factors[12] = {m.preload, m.thread_growth, m.bearing_growth, m.bond,   m.rust,   m.prevailing,
                                 m.shear,   m.section_loss,  m.drive,          m.socket, m.square, m.arm};
  alignas(64) std::uint32_t bits[12][size];
  alignas(64) float x[12][size];
  for (std::uint32_t block = 0; block < 3; ++block)
    for (int i = 0; i < size; ++i) {
      const std::uint64_t trial = first + static_cast<std::uint64_t>(i);
      const Philox4 words =
          philox4x32({{static_cast<std::uint32_t>(trial), static_cast<std::uint32_t>(trial >> 32), block, 0}}, seed);
      for (std::uint32_t j = 0; j < 4; ++j) bits[4 * block + j][i] = words.word[j];
    }
  for (int k = 0; k < 12; ++k) {
    const auto median = static_cast<float>(factors[k].median);
    const auto deviation = static_cast<float>(factors[k].log_deviation());
    for (int i = 0; i < size; ++i) x[k][i] = median * fast_exp(deviation * normal_from_bits(bits[k][i]));
  }
  const auto flanks = static_cast<float>(m.flanks), face = static_cast<float>(m.face);
  const auto lift = static_cast<float>(m.lift), learned = static_cast<float>(m.learned);
  const auto thread_floor = static_cast<float>(m.thread_floor), bearing_floor = static_cast<float>(m.bearing_floor);
  const auto greatest = static_cast<float>(m.greatest_preload);
  const float per_load = m.shear.median > 0 ? static_cast<float>(m.shear.median / m.breaking_load) : 0.0f;
  // Short loops on purpose: a limit by a constant within a longer one keeps compilers from packing it.
  float(&load)[size] = x[0], (&loss)[size] = x[7], (&tension)[size] = x[9];
  for (int i = 0; i < size; ++i) {
    out.torque[Draws::rounded][i] = x[8][i];
    out.torque[Draws::tool][i] = smaller(x[9][i], x[10][i]);
    out.torque[Draws::arm][i] = x[11][i];
  }
  for (int i = 0; i < size; ++i) {
    load[i] = smaller(load[i], greatest);
    loss[i] = smaller(loss[i], 0.99f);
  }
  for (int i = 0; i < size; ++i) {
    const float thread_growth = x[1][i] < thread_floor ? thread_floor : x[1][i];
    const float bearing_growth = x[2][i] < bearing_floor ? bearing_floor : x[2][i];
    const float in_thread =
        learned * BreakawayParts::thread(load[i], thread_growth * flanks, lift, x[3][i] + x[4][i] + x[5][i]);
    const float on_face = learned * BreakawayParts::face(load[i], bearing_growth * face);
    const float torque = in_thread + on_face;
    out.torque[Draws::free][i] = torque < 0.0f ? 0.0f : torque;
    out.torque[Draws::shear][i] = on_face;  // the shank does not feel it
  }
  // A bolt that is stronger in torsion is stronger in tension by the same factor.
  for (int i = 0; i < size; ++i) tension[i] = smaller(load[i] * per_load / (x[6][i] * square(1.0f - loss[i])), 1.0f);
  for (int i = 0; i < size; ++i)
    out.torque[Draws::shear][i] +=
        x[6][i] * SectionParts::corroded_torsion(loss[i]) * SectionParts::torsion_beside_tension(tension[i]);
}

}  // namespace detail

/// What a simulation found: for every torque, how many trials had ended by then and in which way.
class Simulation {
 public:
  static constexpr int bins = 1024;
  static constexpr int ways = 5;  ///< free, shear, round, tool, and the arm that can do no more; the rest did not end

  Simulation(std::uint64_t trials, double greatest) : trials_(trials), greatest_(greatest) {}

  /// \return number of trials that count; the standard error of a chance p is sqrt(p (1 - p)/trials)
  std::uint64_t trials() const noexcept { return trials_ - left_out_; }
  /// \return number of all trials
  std::uint64_t drawn() const noexcept { return trials_; }
  /// Takes out of the count some trials that are known not to be the case.
  void leave_out(std::uint64_t some) noexcept { left_out_ += some; }
  /// \return the torque beyond which nothing was looked at, because everything has ended there
  Torque greatest() const noexcept { return Torque(greatest_); }
  /// \return the chances with the torque limited to `limit`
  Chances at(Torque limit) const noexcept {
    Chances c{limit, ended(0, limit.si), ended(1, limit.si), ended(2, limit.si), ended(3, limit.si), 0};
    c.not_moving = std::max(0.0, 1 - c.free - c.shear - c.round - c.tool);
    return c;
  }
  /// \return the share of trials that reach `torque` and have not ended there
  double unmoved_at(Torque torque) const noexcept { return std::max(0.0, at(torque).not_moving - ended(4, torque.si)); }
  /// \return the chances with the torque limited to `limit`, of those alone that have not ended at `held`
  Chances after(Torque held, Torque limit) const noexcept {
    const Chances before = at(held), all = at(limit);
    const double left = unmoved_at(held);
    if (!(left > 0)) return {limit};
    Chances c{limit,
              (all.free - before.free) / left,
              (all.shear - before.shear) / left,
              (all.round - before.round) / left,
              (all.tool - before.tool) / left,
              0};
    c.not_moving = std::max(0.0, 1 - c.free - c.shear - c.round - c.tool);
    return c;
  }
  /// \return the greatest limit that keeps the chance of shearing at or below `risk`; `greatest()` if every limit does
  Torque limit_for_shear(double risk) const noexcept { return limit_for(1, risk); }
  /// \return the limit at which all but a hundredth of what any torque frees has come free: beyond it, more torque gains
  /// next to nothing
  Torque limit_for_gain() const noexcept { return limit_for(0, 0.99 * ended(0, greatest_)); }

  void add(const Simulation& other) noexcept {
    left_out_ += other.left_out_;
    for (int way = 0; way < ways; ++way)
      for (int bin = 0; bin <= bins; ++bin) count(way, bin) += other.count_[std::size_t(way)][std::size_t(bin)];
  }
  std::uint32_t& count(int way, int bin) noexcept { return count_[std::size_t(way)][std::size_t(bin)]; }

 private:
  double share(int way, int bin) const noexcept {
    return static_cast<double>(count_[std::size_t(way)][std::size_t(bin)]) / static_cast<double>(trials());
  }
  // Bin 0 holds the trials that need no torque at all; bin k ends at k/bins of the range.
  double ended(int way, double torque) const noexcept {
    const double place = std::clamp(torque / greatest_, 0.0, 1.0) * bins;
    double sum = share(way, 0);
    for (int bin = 1; bin <= bins && bin - 1 < place; ++bin) sum += share(way, bin) * std::min(1.0, place - (bin - 1));
    return sum;
  }
  // Greatest torque at which no more than `most` of all trials have ended this way.
  Torque limit_for(int way, double most) const noexcept {
    double sum = share(way, 0);
    if (sum > most) return Torque(0.0);
    for (int bin = 1; bin <= bins; ++bin) {
      const double here = share(way, bin);
      if (sum + here > most) return Torque(greatest_ * (bin - 1 + (most - sum) / here) / bins);
      sum += here;
    }
    return Torque(greatest_);
  }

  std::uint64_t trials_, left_out_ = 0;
  double greatest_;
  std::array<std::array<std::uint32_t, bins + 1>, ways> count_{};
};

/// What one fastener is known to have borne: it held `torque` when it was as `model` says.
struct Held {
  ReleaseModel model;
  Torque torque;
};

namespace detail {

/// The least torque of each trial, which is the one that ends it, and its way. Ties go to the milder end.
struct Ends {
  alignas(64) float torque[Draws::size];
  alignas(64) std::int32_t way[Draws::size];

  explicit Ends(const Draws& draws) noexcept : way{} {
    const auto& free = draws.torque[Draws::free];
    for (int i = 0; i < Draws::size; ++i) torque[i] = free[i];
    for (std::int32_t mode = 1; mode < Draws::modes; ++mode) {
      const auto& other = draws.torque[mode];
      for (int i = 0; i < Draws::size; ++i) {
        way[i] = other[i] < torque[i] ? mode : way[i];
        torque[i] = smaller(other[i], torque[i]);
      }
    }
  }
};

/// Fills in which of the trials from `first` on count: those that bore what is known to have been borne.
inline void borne(const std::optional<Held>& held, std::uint64_t seed, std::uint64_t first, Draws& room,
                  bool (&counts)[Draws::size]) noexcept {
  std::fill_n(counts, Draws::size, true);
  if (!held) return;
  draw(held->model, seed, first, room);
  const Ends ends(room);
  const auto torque = static_cast<float>(held->torque.si);
  for (int i = 0; i < Draws::size; ++i) counts[i] = ends.torque[i] > torque;
}

}  // namespace detail

/// \return a torque at which all but one in ten thousand trials have ended
inline double end_of_range(const ReleaseModel& m) noexcept {
  double end = never_reached.median;
  for (const Lognormal& capacity : {m.drive, m.socket, m.square, m.arm}) end = std::min(end, capacity.quantile(0.9999));
  const double friction = (m.thread_growth.quantile(0.9999) * m.flanks + m.bearing_growth.quantile(0.9999) * m.face) *
                          std::min(m.preload.quantile(0.9999), m.greatest_preload);
  const double held =
      m.learned * (friction + m.bond.quantile(0.9999) + m.rust.quantile(0.9999) + m.prevailing.quantile(0.9999));
  return std::max(1e-3, std::min(end, held > 0 ? held : end));
}

/// Runs `trials` fasteners. The same seed gives the same counts on any number of threads.
/// \param greatest  upper end of the torques looked at, N.m; 0 to choose by `end_of_range`
/// \param held      trials that would have ended up to its torque do not count. A trial is one fastener under either
///                  model: the draws are the same, so that a bolt that sits tight before an aid does so after it
inline Simulation simulate(const ReleaseModel& model, std::uint64_t trials, std::uint64_t seed = 1, int threads = 1,
                           double greatest = 0, const std::optional<Held>& held = std::nullopt) {
  using detail::Draws;
  const double end = greatest > 0 ? greatest : end_of_range(model);
  const auto per_torque = static_cast<float>(Simulation::bins / end);
  const std::uint64_t blocks = (trials + Draws::size - 1) / Draws::size;
  const auto work = [&](std::uint64_t from, std::uint64_t to, Simulation& result) {
    Draws draws;
    for (std::uint64_t block = from; block < to; ++block) {
      const auto count = static_cast<int>(std::min<std::uint64_t>(Draws::size, trials - block * Draws::size));
      const std::uint64_t first = block * Draws::size;
      alignas(64) bool counts[Draws::size];
      detail::borne(held, seed, first, draws, counts);
      result.leave_out(static_cast<std::uint64_t>(std::count(counts, counts + count, false)));
      detail::draw(model, seed, first, draws);
      const detail::Ends ends(draws);
      alignas(64) std::int32_t place[Draws::size];
      for (int i = 0; i < Draws::size; ++i)
        place[i] = static_cast<std::int32_t>(smaller(ends.torque[i] * per_torque, float{Simulation::bins}));
      for (int i = 0; i < Draws::size; ++i) place[i] += ends.torque[i] > 0.0f ? 1 : 0;
      for (int i = 0; i < count; ++i)
        if (counts[i] && place[i] <= Simulation::bins) ++result.count(ends.way[i], place[i]);
    }
  };
  Simulation total(trials, end);
  const auto shares = static_cast<std::uint64_t>(std::clamp(threads, 1, 256));
  std::vector<Simulation> parts(shares, Simulation(trials, end));
  detail::share_out(shares, threads,
                    [&](std::uint64_t i) { work(blocks * i / shares, blocks * (i + 1) / shares, parts[i]); });
  for (const Simulation& part : parts) total.add(part);
  return total;
}

}  // namespace tauten
