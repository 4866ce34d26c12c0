// The clamp load that one fastener gets from one wrench setting: worst cases of friction and wrench, and what its chances
// depend on.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

#include "tauten/part/rated_load.hpp"
#include "tauten/question/clamp_answer.hpp"
#include "tauten/tightening/chance.hpp"
#include "tauten/tightening/effective_torque.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/stress.hpp"

namespace tauten::TAUTEN_ABI {

/// A share of yield that tightening may use at the worst corner of the band: the typical 90 % of VDI 2230.
inline constexpr double usable_yield_share = 0.9;
/// Below this share of the proof load a clamp load counts as slack: half. Common practice, no source.
inline constexpr double useful_proof_share = 0.5;
/// The share of the proof load that is aimed at; three quarters suit joints that are taken apart again (Shigley,
/// eq. (8-31)).
inline constexpr double default_proof_share = 0.75;

namespace detail {

/// Load at which the thread that holds a bolt strips; infinite where the bolt breaks first, or nobody said what holds it.
/// A head that breaks off below that counts in the same way.
struct ThreadHolds {
  double low = std::numeric_limits<double>::infinity();
  double nominal = std::numeric_limits<double>::infinity();
  bool is_head = false;  ///< it is the head that gives way, not a thread
};

/// A fastener with all that its clamp load depends on, plain SI.
struct ClampBolt {
  Thread thread;
  PropertyClass strength;
  double proof_load;
  Band<double> mu_G;
  Band<double> mu_K;
  Band<double> D_Km;  ///< of the face that slides, at low, nominal and high friction
  Torsion torsion;
  double prevailing;      ///< torque of a locking element, which the shank carries beside the thread torque
  double d_s;             ///< of the weakest section: the stress diameter, or that of a reduced shank
  bool one_draw = false;  ///< thread and faces bear one condition, so that they rub much or little together
  ThreadHolds strip{};

  double d_2() const { return thread.pitch_diameter().si; }
  double P() const { return thread.pitch.si; }

  double preload(double torque, double mu_g, double mu_k, double bearing) const {
    return preload_from_torque_exact.si(torque, P(), d_2(), mu_g, mu_k, bearing);
  }
  /// Stress while the wrench turns, at a preload, over a strength.
  double utilisation(double load, double mu_g, double limit, Torsion how) const {
    const double twist = ShankTorsion::eval(thread_torque_exact.si(load, P(), d_2(), mu_g), prevailing);
    return how == Torsion::plastic ? yield_utilisation.si(load, twist, d_s, limit)
                                   : yield_utilisation_elastic.si(load, twist, d_s, limit);
  }
};

/// \return where a function that falls and then rises, or does one of both, is least between two ends
template <class F>
double least_between(double low, double high, const F& f) {
  const double step = 1e-4 * (high - low);
  if (!(f(low + step) < f(low))) return low;
  if (!(f(high - step) < f(high))) return high;
  while (high - low > step) {
    const double third = (high - low) / 3;
    if (f(low + third) < f(high - third))
      high -= third;
    else
      low += third;
  }
  return (low + high) / 2;
}

/// Stress over a strength while the wrench turns, at its greatest within the bands of friction. Bearing friction only takes
/// away; thread friction takes tension and adds torsion. Over thread friction the stress is the length of a vector that
/// grows evenly, over what grows evenly: it has no maximum between the ends, and at most one minimum.
inline double worst_utilisation(const ClampBolt& bolt, double torque, double limit, Torsion how) {
  const auto at = [&](double mu_g) {
    return bolt.utilisation(bolt.preload(torque, mu_g, bolt.mu_K.low, bolt.D_Km.low), mu_g, limit, how);
  };
  return std::max(at(bolt.mu_G.low), at(bolt.mu_G.high));
}

/// The same at its least, nominal and greatest within the bands of friction and torque.
inline Band<double> utilisation_band(const ClampBolt& bolt, const Band<double>& torque, double limit, Torsion how) {
  const auto at = [&](double effective, double mu_g, double mu_k, double bearing) {
    return bolt.utilisation(bolt.preload(effective, mu_g, mu_k, bearing), mu_g, limit, how);
  };
  const auto best = [&](double mu_g) { return at(torque.low, mu_g, bolt.mu_K.high, bolt.D_Km.high); };
  const double nominal = at(torque.nominal, bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal);
  return {std::min(best(least_between(bolt.mu_G.low, bolt.mu_G.high, best)), nominal), nominal,
          worst_utilisation(bolt, torque.high, limit, how)};
}

/// Torque that reaches thread and bearing face: the setting with the wrench's band, less what is lost before.
inline Band<double> effective_band(double setting, double accuracy, double lost) {
  const auto at = [&](double deviation) { return EffectiveTorque::eval(setting, deviation, lost, 0.0); };
  return {at(-accuracy), at(0), at(accuracy)};
}

/// Band of the preload of a bolt that bears it.
inline Band<Force> load_band(const ClampBolt& bolt, const Band<double>& torque) {
  const auto at = [&](double effective, double mu_g, double mu_k, double bearing) {
    return Force(bolt.preload(effective, mu_g, mu_k, bearing));
  };
  return {at(torque.low, bolt.mu_G.high, bolt.mu_K.high, bolt.D_Km.high),
          at(torque.nominal, bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal),
          at(torque.high, bolt.mu_G.low, bolt.mu_K.low, bolt.D_Km.low)};
}

/// Stress over the tensile strength, with the section fully plastic whatever the choice for yield: from 1 on at the worst
/// corner the bolt may twist off.
inline Band<double> tensile_band(const ClampBolt& bolt, const Band<double>& torque) {
  return utilisation_band(bolt, torque, bolt.strength.tensile_strength.si, Torsion::plastic);
}

/// What the chances of this bolt depend on.
/// \param lost  torque that does not stretch the bolt
inline TighteningOdds odds_of(const ClampBolt& bolt, double lost) {
  const auto face = [&](double Band<double>::* at) { return BearingTorque::eval(1.0, bolt.mu_K.*at, bolt.D_Km.*at); };
  return {bolt.P(),
          bolt.d_2(),
          bolt.d_s,
          bolt.prevailing,
          lost,
          {bolt.mu_G},
          {{face(&Band<double>::low), face(&Band<double>::nominal), face(&Band<double>::high)}},
          bolt.one_draw};
}

/// The wrench setting for a clamp load at nominal friction.
inline double plain_setting(const ClampBolt& bolt, double load, double lost) {
  return tightening_torque_exact.si(load, bolt.P(), bolt.d_2(), bolt.mu_G.nominal, bolt.mu_K.nominal,
                                    bolt.D_Km.nominal) +
         lost;
}

/// The greatest wrench setting, at most `most`, whose worst case just yields.
/// \param accuracy  of the wrench
inline double setting_at_worst_yield(const ClampBolt& bolt, double most, double accuracy, double lost) {
  const auto worst = [&](double setting) {
    return worst_utilisation(bolt, effective_band(setting, accuracy, lost).high, bolt.strength.yield_strength.si,
                             bolt.torsion);
  };
  if (!(worst(most) > 1)) return most;
  // The worst case grows with the setting; a prevailing torque twists the bolt from the start, so halve the interval.
  double low = lost / (1 + accuracy);
  double high = most;
  for (int i = 0; i < 100 && high > low * (1 + 1e-15); ++i) {
    const double middle = (low + high) / 2;
    (worst(middle) > 1 ? high : low) = middle;
  }
  return low;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
