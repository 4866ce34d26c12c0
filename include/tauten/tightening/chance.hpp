// How often tightening by torque stretches or breaks a bolt, and what load it leaves in 19 of 20 cases.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>

#include "tauten/base/band.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/stress.hpp"

namespace tauten::TAUTEN_ABI {

/// A friction, or a friction times the radius at which it acts, between low and high: its median is nominal, and its
/// density falls linearly from there to zero at low and at high, as two half triangles that hold half of the cases
/// each. With the mode at nominal in place of the median a skew band would have most of its cases on one side. The
/// shape is a judgement; what lies far out in the tails depends on it.
struct FrictionSpread {
  Band<double> band;

  /// \param x  from -1 at low over 0 at nominal to 1 at high; the density along it is 1 - |x|
  constexpr double at(double x) const noexcept {
    return band.nominal + x * (x < 0 ? band.nominal - band.low : band.high - band.nominal);
  }
  /// \return chance of a value below x
  constexpr double below(double x) const noexcept {
    if (x <= band.low) return 0;
    if (x >= band.high) return 1;
    if (x < band.nominal) return square((x - band.low) / (band.nominal - band.low)) / 2;
    return 1 - square((band.high - x) / (band.high - band.nominal)) / 2;
  }
  /// \return integral of `below` from low to x
  constexpr double below_integral(double x) const noexcept {
    if (x <= band.low) return 0;
    const double left = band.nominal - band.low;
    if (x < band.nominal) return square((x - band.low) / left) * (x - band.low) / 6;
    const double right = band.high - band.nominal;
    const double rest = x < band.high ? square((band.high - x) / right) * (band.high - x) / 6 : 0;
    return left / 6 + (x - band.nominal) - right / 6 + rest;
  }
};

/// What tightening by torque depends on, plain SI.
struct TighteningOdds {
  double P;
  double d_2;
  double d_s;             ///< diameter of the weakest section
  double prevailing;      ///< torque of a locking element: twists the bolt, does not stretch it
  double lost;            ///< torque that does not stretch the bolt: `prevailing` and that of a rubbing shank
  FrictionSpread thread;  ///< mu_G
  FrictionSpread face;    ///< mu_K times D_Km/2 of the face that slides
  bool one_draw = true;   ///< thread and face bear one condition, so that both rub much or little together
};

/// A wrench at a setting: what it gives is spread evenly within its accuracy.
struct WrenchSpread {
  double setting;   ///< N.m
  double accuracy;  ///< relative, 0.04 for +-4 %

  constexpr double low() const noexcept { return setting * (1 - accuracy); }
  constexpr double high() const noexcept { return setting * (1 + accuracy); }
};

/// Chances of one fastener under friction and a wrench that vary. Nothing is allocated and nothing throws. The chances
/// lie within 0.002 of a simulation. Those rarer than 1 in 100 depend on the shape of the bands: print no number for
/// them.
class TighteningChance {
 public:
  /// Steps along one half of the thread friction; what is interpolated is nearly straight.
  static constexpr int steps = 12;
  static constexpr int nodes = 2 * steps + 1;
  static_assert(steps % 2 == 0, "Simpson's rule goes over each half");
  using Loads = std::array<double, nodes>;

  explicit TighteningChance(const TighteningOdds& odds) noexcept : odds_(odds) {
    for (int i = 0; i < nodes; ++i) {
      const double x = static_cast<double>(i - steps) / steps;
      thread_lever_[place(i)] = ThreadIncline::lever(odds.P, odds.d_2, odds.thread.at(x));
      face_lever_[place(i)] = odds.face.at(x);
    }
  }

  /// Load at which tension and torsion together reach a strength, for each thread friction: the solution F of
  ///   (F/A_s)^2 + 3((F a_G + M_P)/W_p)^2 = R^2
  /// \param factor  torsion factor, `TorsionOverTension::plastic` or `elastic`
  /// \return 0 where the prevailing torque alone twists the bolt past the strength
  Loads loads_at(double strength, double factor) const noexcept {
    const double tension = LoadAtStress::eval(circle_area(odds_.d_s), strength);
    const double twist = TorsionOverTension::of(factor, 1.0, odds_.d_s);
    Loads out{};
    for (int i = 0; i < nodes; ++i) {
      const double by_load = twist * thread_lever_[place(i)];
      const double by_nut = twist * odds_.prevailing;
      const double room = square(tension) - 3 * square(by_nut);
      const double half = 3 * by_load * by_nut;
      if (room > 0) out[place(i)] = room / (half + std::sqrt(square(half) + (1 + 3 * square(by_load)) * room));
    }
    return out;
  }

  /// Chance that the wrench drives the load above a limit that may differ with thread friction.
  double above(const WrenchSpread& wrench, const Loads& limit) const noexcept {
    return odds_.one_draw ? above_together(wrench, limit) : above_apart(wrench, limit);
  }

  /// Chance that a bolt of this strength reaches it: with the yield strength that it stretches for good, with the
  /// tensile strength that it breaks.
  double reaching(const WrenchSpread& wrench, double strength, double factor) const noexcept {
    return above(wrench, loads_at(strength, factor));
  }

  /// The same for bolts as they are sold: their strength lies 12 % above that of the class in the middle and varies by
  /// 6 % (lognormal). Judgement, no source.
  double reaching_as_sold(const WrenchSpread& wrench, double strength, double factor) const noexcept {
    double sum = 0;
    double weights = 0;
    for (double z = -3; z <= 3; z += 0.75) {
      const double weight = std::exp(-z * z / 2);
      sum += weight * reaching(wrench, 1.12 * std::exp(0.06 * z) * strength, factor);
      weights += weight;
    }
    return sum / weights;
  }

  /// Chance that the load ends below `load`, among the bolts that hold.
  /// \param breaking  `loads_at` the tensile strength
  /// \return 0 if none holds
  double below(const WrenchSpread& wrench, double load, const Loads& breaking) const noexcept {
    const double hold = 1 - above(wrench, breaking);
    return hold > least_share ? below(wrench, load, breaking, hold) : 0;
  }

  /// Load that 1 in 40, the half and 39 in 40 of the bolts that hold stay below: 19 in 20 cases lie between the ends.
  /// \return `absent` if none holds
  Band<double> load_band(const WrenchSpread& wrench, const Loads& breaking) const noexcept {
    const double hold = 1 - above(wrench, breaking);
    if (!(hold > least_share)) return {absent, absent, absent};
    const std::array<double, 2> ends = load_ends(wrench);
    const auto load = [&](double share) {
      return crossing(ends[0], ends[1], share, [&](double f) { return below(wrench, f, breaking, hold); });
    };
    return {load(0.025), load(0.5), load(0.975)};
  }

  /// Greatest wrench setting at which no more than `chance` of the bolts reach a strength.
  /// \param most  greatest setting to look at
  double setting_for(double chance, double accuracy, double strength, double factor, double most) const noexcept {
    const Loads limit = loads_at(strength, factor);
    const auto at = [&](double setting) { return above({setting, accuracy}, limit); };
    if (at(most) <= chance) return most;
    // A chance of zero leaves no slope to go by, so halve.
    double low = 0;
    double high = most;
    for (int i = 0; i < 60 && high - low > 1e-9 * most; ++i) {
      const double middle = (low + high) / 2;
      (at(middle) > chance ? high : low) = middle;
    }
    return low;
  }

 private:
  /// Of fewer bolts that hold than this nothing is said: rounding would speak.
  static constexpr double least_share = 1e-9;

  static constexpr std::size_t place(int i) noexcept { return static_cast<std::size_t>(i); }

  double below(const WrenchSpread& wrench, double load, const Loads& breaking, double hold) const noexcept {
    Loads limit{};
    for (int i = 0; i < nodes; ++i) limit[place(i)] = std::min(load, breaking[place(i)]);
    return (1 - above(wrench, limit)) / hold;
  }

  /// Least and greatest load that friction and wrench allow.
  std::array<double, 2> load_ends(const WrenchSpread& wrench) const noexcept {
    const auto [slick, rough] = std::minmax_element(thread_lever_.begin(), thread_lever_.end());
    const auto lever_low = *slick + odds_.face.band.low;
    const auto lever_high = *rough + odds_.face.band.high;
    return {std::max(0.0, wrench.low() - odds_.lost) / lever_high,
            std::max(0.0, wrench.high() - odds_.lost) / lever_low};
  }

  /// Where a distribution that rises from 0 at `low` to 1 at `high` passes a share: by the secant, with the weight of an
  /// end that stays halved (Illinois), within 1e-5.
  template <class Function>
  static double crossing(double low, double high, double share, Function f) noexcept {
    double below_low = -share;
    double below_high = 1 - share;
    double at = low;
    int stays = 0;  // which end stayed at the last step: -1 low, 1 high
    for (int i = 0; i < 60 && high - low > 1e-5 * high; ++i) {
      const double before = at;
      at = low - below_low * (high - low) / (below_high - below_low);
      const double off = f(at) - share;
      if (std::fabs(off) < 1e-7 || std::fabs(at - before) < 1e-6 * at) break;
      if (off < 0) {
        low = at, below_low = off;
        if (stays == 1) below_high /= 2;
        stays = 1;
      } else {
        high = at, below_high = off;
        if (stays == -1) below_low /= 2;
        stays = -1;
      }
    }
    return at;
  }

  /// One draw for thread and face: between two nodes the critical torque is taken as straight, so that where it leaves
  /// the band of the wrench is known, and the integrand is a polynomial that two points of Gauss integrate exactly.
  double above_together(const WrenchSpread& wrench, const Loads& limit) const noexcept {
    const double low = wrench.low();
    const double high = wrench.high();
    const auto critical = [&](int i) {
      return limit[place(i)] * (thread_lever_[place(i)] + face_lever_[place(i)]) + odds_.lost;
    };
    double sum = 0;
    double before = critical(0);
    for (int i = 0; i + 1 < nodes; ++i) {
      const double after = critical(i + 1);
      sum += segment(i, before, after, low, high);
      before = after;
    }
    return sum;
  }

  static double segment(int i, double before, double after, double low, double high) noexcept {
    if (std::min(before, after) >= high) return 0;
    const auto density = [&](double t) { return 1 - std::fabs(i - steps + t) / steps; };
    if (std::max(before, after) <= low) return density(0.5) / steps;
    const double rise = after - before;
    const auto meets = [&](double torque) { return rise == 0 ? 0 : std::clamp((torque - before) / rise, 0.0, 1.0); };
    const double first = std::min(meets(low), meets(high));
    const double second = std::max(meets(low), meets(high));
    const auto part = [&](double from, double to) {
      const double offset = (to - from) / 2 / std::sqrt(3.0);
      double points = 0;
      for (const double t : {(from + to) / 2 - offset, (from + to) / 2 + offset}) {
        const double critical = before + t * rise;
        const double exceeding = critical >= high ? 0 : critical <= low ? 1 : (high - critical) / (high - low);
        points += exceeding * density(t);
      }
      return points * (to - from) / 2;
    };
    return (part(0, first) + part(first, second) + part(second, 1)) / steps;
  }

  /// Friction of thread and face drawn apart: face and wrench in closed form, the thread by Simpson's rule.
  double above_apart(const WrenchSpread& wrench, const Loads& limit) const noexcept {
    double sum = 0;
    for (int i = 1; i + 1 < nodes; ++i) {  // the density is zero at both ends
      const double density = 1 - std::fabs(i - steps) / steps;
      const int weight = i % 2 == 1 ? 4 : 2;
      sum += weight * density * above_at(wrench, limit[place(i)], thread_lever_[place(i)]);
    }
    return sum / (3 * steps);
  }

  double above_at(const WrenchSpread& wrench, double limit, double lever) const noexcept {
    const double from = wrench.low() - odds_.lost - limit * lever;
    const double to = wrench.high() - odds_.lost - limit * lever;
    if (!(limit > 0)) return to > 0 ? 1 : 0;
    const double slip = from / limit;
    const double most = to / limit;
    if (!(most - slip > 1e-9 * odds_.face.band.high)) return odds_.face.below(most);
    return (odds_.face.below_integral(most) - odds_.face.below_integral(slip)) / (most - slip);
  }

  TighteningOdds odds_;
  Loads thread_lever_{};
  Loads face_lever_{};
};

}  // namespace tauten::TAUTEN_ABI
