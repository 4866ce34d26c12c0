// The clamp load that one fastener gets from one wrench setting: corners of friction and wrench, and the right torque.
#pragma once

#include <algorithm>
#include <cmath>

#include "tauten/friction/nut_factor.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/rated_load.hpp"
#include "tauten/tightening/clamp_answer.hpp"
#include "tauten/tightening/effective_torque.hpp"
#include "tauten/tightening/stress.hpp"
#include "tauten/tightening/torque.hpp"

namespace tauten {

/// A share of yield that tightening may use at the worst corner of the band: the typical 90 % of VDI 2230.
inline constexpr double usable_yield_share = 0.9;
/// Below this share of the proof load a clamp load counts as slack: half. Common practice, no source.
inline constexpr double useful_proof_share = 0.5;
/// The share of the proof load that is aimed at; three quarters suit joints that are taken apart again (Shigley,
/// eq. (8-31)).
inline constexpr double default_proof_share = 0.75;

namespace detail {

/// A fastener with all that its clamp load depends on, plain SI.
struct ClampBolt {
  Thread thread;
  PropertyClass strength;
  double proof_load;
  Band<double> mu_G;
  Band<double> mu_K;
  Band<double> D_Km;  ///< of the face that slides, at low, nominal and high friction
  Torsion torsion;
  double prevailing;  ///< torque of a locking element, which the shank carries beside the thread torque
  double d_s;         ///< of the weakest section: the stress diameter, or that of a reduced shank

  double d_2() const { return thread.pitch_diameter().si; }
  double P() const { return thread.pitch.si; }

  double preload(double torque, double mu_g, double mu_k, double bearing) const {
    return preload_from_torque.si(torque, P(), d_2(), mu_g, mu_k, bearing);
  }
  /// Stress while the wrench turns, at a preload, over a strength.
  double utilisation(double load, double mu_g, double limit, Torsion how) const {
    const double twist = ShankTorsion::eval(thread_torque.si(load, P(), d_2(), mu_g), prevailing);
    return how == Torsion::plastic ? yield_utilisation.si(load, twist, d_s, limit)
                                   : yield_utilisation_elastic.si(load, twist, d_s, limit);
  }
};

/// Stress over a strength at the best, nominal and worst corner of friction and torque. Bearing friction only takes
/// away; thread friction works both ways, it takes tension and adds torsion, so that both its ends are looked at. The
/// stress has no maximum between them, so `high` is exact. It may have a minimum there, where the faces rub much: `low`
/// is then an end of the band and lies up to 4 % above the very least with the bands of the table.
inline Band<double> utilisation_band(const ClampBolt& bolt, const Band<double>& torque, double limit, Torsion how) {
  const auto at = [&](double effective, double mu_g, double mu_k, double bearing) {
    return bolt.utilisation(bolt.preload(effective, mu_g, mu_k, bearing), mu_g, limit, how);
  };
  const auto best = [&](double mu_g) { return at(torque.low, mu_g, bolt.mu_K.high, bolt.D_Km.high); };
  const auto worst = [&](double mu_g) { return at(torque.high, mu_g, bolt.mu_K.low, bolt.D_Km.low); };
  return {std::min(best(bolt.mu_G.low), best(bolt.mu_G.high)),
          at(torque.nominal, bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal),
          std::max(worst(bolt.mu_G.low), worst(bolt.mu_G.high))};
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

/// Band of the preload that is left; `absent` if the bolt may twist off, which leaves none.
/// \param of_tensile  from `tensile_band`, at the same torque
inline Band<Force> load_left(const ClampBolt& bolt, const Band<double>& torque, const Band<double>& of_tensile) {
  const Force none(absent);
  return of_tensile.high >= 1 ? Band<Force>{none, none, none} : load_band(bolt, torque);
}

/// The wrench setting for a clamp load at the typical friction.
inline double plain_setting(const ClampBolt& bolt, double load, double lost) {
  return tightening_torque.si(load, bolt.P(), bolt.d_2(), bolt.mu_G.nominal, bolt.mu_K.nominal, bolt.D_Km.nominal) +
         lost;
}

/// The wrench setting for a nominal clamp load, held back so that the worst corner stays within 90 % of yield.
inline double held_back_setting(const ClampBolt& bolt, double load, double accuracy, double lost) {
  const auto worst = [&](double setting) {
    return utilisation_band(bolt, effective_band(setting, accuracy, lost), bolt.strength.yield_strength.si,
                            bolt.torsion)
        .high;
  };
  const double wanted = plain_setting(bolt, load, lost);
  if (!(worst(wanted) > usable_yield_share)) return wanted;
  // The worst corner grows with the setting; a prevailing torque twists the bolt from the start, so halve the interval.
  double low = lost / (1 + accuracy);
  double high = wanted;
  for (int i = 0; i < 100 && high > low * (1 + 1e-15); ++i) {
    const double middle = (low + high) / 2;
    (worst(middle) > usable_yield_share ? high : low) = middle;
  }
  return low;
}

/// The same with the accuracy that the wrench has at the setting; `absent` if the torque that is lost leaves no room for
/// a right one.
/// \param accuracy_at  relative accuracy at a setting; it may be worse at small ones
template <class AccuracyAt>
double right_setting(const ClampBolt& bolt, double load, AccuracyAt accuracy_at, double lost) {
  double setting = held_back_setting(bolt, load, accuracy_at(1e5), lost);
  if (accuracy_at(setting) != accuracy_at(1e5)) setting = held_back_setting(bolt, load, accuracy_at(setting), lost);
  return effective_band(setting, accuracy_at(setting), lost).low > 0 ? setting : absent;
}

/// \param c  its loads and shares, written down
inline std::string verdict_of(const ClampCandidate& c) {
  if (c.limited_by_strength) return "would shear";
  if (c.yield_utilisation.high > 1) return "yields";
  // The right torque sits on this bound, give or take the last bit.
  if (c.yield_utilisation.high > usable_yield_share * (1 + 1e-9)) return "near yield";
  return c.proof_share.nominal < useful_proof_share ? "slack" : "fit";
}

inline std::string meaning_of(const std::string& verdict) {
  if (verdict == "would shear")
    return "In the worst case of friction and wrench error the bolt shears before the torque is reached.";
  if (verdict == "yields")
    return "In the worst case of friction and wrench error the bolt stretches for good; do not use it again.";
  if (verdict == "near yield")
    return "In the worst case of friction and wrench error less than a tenth of the yield strength is left.";
  if (verdict == "slack")
    return "The typical clamp load is below half of the proof load; the joint may slip or shake loose.";
  return "The typical clamp load is at least half of the proof load, and the worst case stays below nine tenths of "
         "yield.";
}

}  // namespace detail

}  // namespace tauten
