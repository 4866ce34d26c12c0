// Monte Carlo over everything that may give first, reproducible for a seed on any number of threads.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <optional>
#include <vector>

#include "tauten/base/interruption.hpp"
#include "tauten/base/philox.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/share_out.hpp"
#include "tauten/loosening/chances.hpp"
#include "tauten/loosening/release_model.hpp"
#include "tauten/loosening/torque_terms.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Torques at which each mode would be reached, for one block of trials. Single precision: its rounding is far below
/// what any number of trials can resolve.
struct Draws {
  static constexpr int size = 256;
  enum Mode { free, shear, rounded, tool, arm, modes };
  alignas(64) float torque[modes][size];
};

/// Which trials a block is made of.
struct Block {
  alignas(64) std::uint64_t trial[Draws::size];

  explicit Block(std::uint64_t first) noexcept {
    for (std::uint64_t i = 0; i < Draws::size; ++i) trial[i] = first + i;
  }
  /// Those of a list from a place on; the last one fills up an incomplete block.
  Block(const std::vector<std::uint64_t>& list, std::uint64_t first) noexcept {
    for (std::uint64_t i = 0; i < Draws::size; ++i) trial[i] = list[std::min<std::size_t>(first + i, list.size() - 1)];
  }
};

/// Fills the torques of a block, what was learned left out.
inline void draw_model(const ReleaseModel& m, std::uint64_t seed, const Block& of, Draws& out) noexcept {
  constexpr int size = Draws::size;
  const Lognormal factors[12] = {m.preload, m.thread_growth, m.bearing_growth, m.bond,   m.rust,   m.prevailing,
                                 m.shear,   m.section_loss,  m.drive,          m.socket, m.square, m.arm};
  alignas(64) std::uint32_t bits[12][size];
  alignas(64) float x[12][size];
  for (std::uint32_t block = 0; block < 3; ++block)
    for (int i = 0; i < size; ++i) {
      const std::uint64_t trial = of.trial[i];
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

inline void draw(const ReleaseModel& m, std::uint64_t seed, const Block& of, Draws& out) noexcept;

/// Multiplies the torques by what was learned of like fasteners, the earlier first.
/// \param same  they were drawn from the model that was learned of
inline void apply(const LearnedShift& shift, bool same, std::uint64_t seed, const Block& of, Draws& out) noexcept {
  if (shift.base.shift) apply(*shift.base.shift, same && shift.base.as_learned, seed, of, out);
  Draws drawn;
  if (!same) draw(shift.base, seed, of, drawn);
  const Draws& before = same ? out : drawn;
  const auto scale = [&](const LearnedCurve& curve, Draws::Mode mode) {
    for (int i = 0; i < Draws::size && curve.factor[0] > 0; ++i)
      out.torque[mode][i] *= curve.factor_at(before.torque[mode][i]);
  };
  scale(shift.free, Draws::free);
  scale(shift.shear, Draws::shear);
  scale(shift.round, Draws::rounded);
}

/// Fills the torques of a block.
inline void draw(const ReleaseModel& m, std::uint64_t seed, const Block& of, Draws& out) noexcept {
  draw_model(m, seed, of, out);
  if (m.shift) apply(*m.shift, m.as_learned, seed, of, out);
}

}  // namespace detail

/// What a simulation found: for every torque, how many trials had ended by then and in which way.
class Simulation {
 public:
  static constexpr int bins = 1024;
  static constexpr int ways = 5;  ///< free, shear, round, tool, and the arm that can do no more; the rest did not end

  Simulation(std::uint64_t trials, double greatest) : trials_(trials), greatest_(greatest) {}

  /// \return number of trials that count; the standard error of a chance p is sqrt(p (1 - p)/trials)
  std::uint64_t trials() const noexcept {
    std::uint64_t left = trials_;
    for (const std::uint64_t some : left_out_) left -= some;
    return left;
  }
  /// \return number of all trials
  std::uint64_t drawn() const noexcept { return trials_; }
  /// Takes out of the count some trials that are known not to be the case: they would have ended this way before.
  void leave_out(int way, std::uint64_t some) noexcept { left_out_[std::size_t(way)] += some; }
  /// \return the share of all trials that ended this way before those that count were left: what was already risked
  double spent(int way) const noexcept {
    return static_cast<double>(left_out_[std::size_t(way)]) / static_cast<double>(trials_);
  }
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
  /// \return the greatest limit that keeps the chance of shearing at or below `risk`, what was already risked included;
  ///         `greatest()` if every limit does
  Torque limit_for_shear(double risk) const noexcept { return limit_for(1, std::max(0.0, risk - spent(1))); }
  /// \return the same for corners that round off, or a recess that strips
  Torque limit_for_corners(double risk) const noexcept { return limit_for(2, std::max(0.0, risk - spent(2))); }
  /// \return the limit beyond which more torque breaks bolt, drive or tool more often than it frees: where those freed,
  ///         less those broken, are most
  Torque limit_for_balance() const noexcept {
    const auto gained = [&](int bin) { return share(0, bin) - share(1, bin) - share(2, bin) - share(3, bin); };
    double sum = gained(0), most = std::max(0.0, sum);
    int place = 0;
    for (int bin = 1; bin <= bins; ++bin)
      if ((sum += gained(bin)) > most) most = sum, place = bin;
    return Torque(greatest_ * place / bins);
  }
  /// \return the limit at which all but a hundredth of what any torque frees has come free: beyond it, more torque gains
  /// next to nothing
  Torque limit_for_gain() const noexcept { return limit_for(0, 0.99 * ended(0, greatest_)); }

  void add(const Simulation& other) noexcept {
    for (int way = 0; way < ways; ++way) {
      left_out_[std::size_t(way)] += other.left_out_[std::size_t(way)];
      for (int bin = 0; bin <= bins; ++bin) count(way, bin) += other.count_[std::size_t(way)][std::size_t(bin)];
    }
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

  std::uint64_t trials_;
  double greatest_;
  std::array<std::uint64_t, ways> left_out_{};
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

inline constexpr std::int8_t counts = -1;

/// Fills in how the trials of a block ended before: `counts` for those that bore what is known to have been borne.
inline void borne(const std::optional<Held>& held, std::uint64_t seed, const Block& of, Draws& room,
                  std::int8_t (&before)[Draws::size]) noexcept {
  std::fill_n(before, Draws::size, counts);
  if (!held) return;
  draw(held->model, seed, of, room);
  const Ends ends(room);
  const auto torque = static_cast<float>(held->torque.si);
  for (int i = 0; i < Draws::size; ++i)
    if (!(ends.torque[i] > torque)) before[i] = static_cast<std::int8_t>(ends.way[i]);
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

/// Fasteners that are still stuck after some pulls, and how the others of them all ended.
struct Stuck {
  std::vector<std::uint64_t> trial;  ///< those that are stuck
  std::vector<float> torque;         ///< at which each of them ends in the last simulation
  std::vector<std::int8_t> way;      ///< and how
  std::array<std::uint64_t, Simulation::ways> ended{};
  std::uint64_t all = 0;

  /// Leaves those that go on being stuck after a pull to a torque.
  void pull(Torque limit) {
    std::size_t left = 0;
    for (std::size_t i = 0; i < trial.size(); ++i) {
      // An arm that gives out ends a pull, not the fastener.
      if ((way[i] == detail::Draws::arm && torque[i] >= 0) || static_cast<double>(torque[i]) > limit.si)
        trial[left++] = trial[i];
      else
        ++ended[static_cast<std::size_t>(way[i])];
    }
    trial.resize(left);
  }
};

/// Runs `trials` fasteners. The same seed gives the same counts on any number of threads.
/// \param greatest  upper end of the torques looked at, N.m; 0 to choose by `end_of_range`
/// \param held      trials that would have ended up to its torque do not count. A trial is one fastener under either
///                  model: the draws are the same, so that a bolt that sits tight before an aid does so after it
/// \param stuck     if given: filled with the trials that count; if it has some already, only those are run
inline Simulation simulate(const ReleaseModel& model, std::uint64_t trials, std::uint64_t seed = 1, int threads = 1,
                           double greatest = 0, const std::optional<Held>& held = std::nullopt,
                           Stuck* stuck = nullptr) {
  using detail::Draws;
  const double end = greatest > 0 ? greatest : end_of_range(model);
  const auto per_torque = static_cast<float>(Simulation::bins / end);
  const bool some = stuck != nullptr && stuck->all > 0;
  const std::uint64_t run = some ? stuck->trial.size() : trials;
  const std::uint64_t blocks = (run + Draws::size - 1) / Draws::size;
  if (stuck != nullptr) {
    stuck->torque.assign(run, 0.0f);
    stuck->way.assign(run, 0);
  }
  const auto work = [&](std::uint64_t from, std::uint64_t to, Simulation& result) {
    Draws draws;
    for (std::uint64_t block = from; block < to; ++block) {
      detail::attend();
      const std::uint64_t first = block * Draws::size;
      const auto count = static_cast<int>(std::min<std::uint64_t>(Draws::size, run - first));
      const detail::Block of = some ? detail::Block(stuck->trial, first) : detail::Block(first);
      alignas(64) std::int8_t before[Draws::size];
      detail::borne(held, seed, of, draws, before);
      for (int i = 0; held && i < count; ++i)
        if (before[i] != detail::counts) result.leave_out(before[i], 1);
      detail::draw(model, seed, of, draws);
      const detail::Ends ends(draws);
      alignas(64) std::int32_t place[Draws::size];
      for (int i = 0; i < Draws::size; ++i)
        place[i] = static_cast<std::int32_t>(smaller(ends.torque[i] * per_torque, float{Simulation::bins}));
      for (int i = 0; i < Draws::size; ++i) place[i] += ends.torque[i] > 0.0f ? 1 : 0;
      for (int i = 0; i < count; ++i)
        if (before[i] == detail::counts && place[i] <= Simulation::bins) ++result.count(ends.way[i], place[i]);
      if (stuck == nullptr) continue;
      for (int i = 0; i < count; ++i) {
        const std::size_t at = first + static_cast<std::size_t>(i);
        stuck->torque[at] = before[i] == detail::counts ? ends.torque[i] : -1.0f;  // below any limit: it has ended
        stuck->way[at] = static_cast<std::int8_t>(before[i] == detail::counts ? ends.way[i] : before[i]);
      }
    }
  };
  Simulation total(some ? stuck->all : trials, end);
  // Several for each thread, so that all end at about the same time.
  const auto shares = static_cast<std::uint64_t>(threads > 1 ? 4 * std::min(threads, 256) : 1);
  std::vector<Simulation> parts(shares, Simulation(trials, end));
  detail::share_out(shares, threads,
                    [&](std::uint64_t i) { work(blocks * i / shares, blocks * (i + 1) / shares, parts[i]); });
  for (const Simulation& part : parts) total.add(part);
  if (some) {
    for (int way = 0; way < Simulation::ways; ++way) total.leave_out(way, stuck->ended[static_cast<std::size_t>(way)]);
  } else if (stuck != nullptr) {
    stuck->all = trials;
    stuck->trial.resize(trials);
    std::iota(stuck->trial.begin(), stuck->trial.end(), std::uint64_t{0});
  }
  return total;
}

}  // namespace tauten::TAUTEN_ABI
