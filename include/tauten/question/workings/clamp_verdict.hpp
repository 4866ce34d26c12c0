// From the chances of a tightening to its verdict, and the torque that is suggested.
#pragma once

#include <algorithm>
#include <cmath>
#include <string_view>

#include "tauten/base/chance_text.hpp"
#include "tauten/question/workings/clamp_load.hpp"

namespace tauten::TAUTEN_ABI {

/// Chance of yielding up to which a torque is within limits, and to which a suggested torque is held back. It holds for
/// a bolt that just meets its class. Judgement, no source.
inline constexpr double accepted_chance_of_yield = 0.01;
/// Chance of breaking, or of a slack joint, up to which a torque is within limits. Judgement, no source.
inline constexpr double accepted_chance = 0.05;

namespace detail {

/// Chances of one bolt at any wrench setting. What does not change with the setting is worked out once.
class BoltChance {
 public:
  /// \param lost  torque that does not stretch the bolt
  BoltChance(const ClampBolt& bolt, double lost)
      : chance_(odds_of(bolt, lost)),
        strength_{bolt.strength.yield_strength.si, bolt.strength.tensile_strength.si},
        torsion_factor_(bolt.torsion == Torsion::plastic ? plastic : TorsionOverTension::elastic<double>()),
        yields_(chance_.loads_at(strength_.yield, torsion_factor_)),
        breaks_(chance_.loads_at(strength_.tensile, plastic)),
        lost_(lost) {}

  double of_yield(const WrenchSpread& wrench) const { return chance_.above(wrench, yields_); }
  double of_breaking(const WrenchSpread& wrench) const { return chance_.above(wrench, breaks_); }
  double of_yield_as_sold(const WrenchSpread& wrench) const {
    return chance_.reaching_as_sold(wrench, strength_.yield, torsion_factor_);
  }
  double of_breaking_as_sold(const WrenchSpread& wrench) const {
    return chance_.reaching_as_sold(wrench, strength_.tensile, plastic);
  }
  /// Chance of yielding of a bolt of another strength.
  double of_yield(const WrenchSpread& wrench, double yield_strength) const {
    return chance_.reaching(wrench, yield_strength, torsion_factor_);
  }
  double of_load_below(const WrenchSpread& wrench, double load) const { return chance_.below(wrench, load, breaks_); }
  /// Clamp load in 19 of 20 cases among bolts that hold.
  /// \param all_hold  no bolt breaks in the worst case
  Band<double> load(const WrenchSpread& wrench, bool all_hold) const {
    // Then the load goes with the torque, so that one band serves all settings of a wrench.
    if (!all_hold || lost_ > 0) return chance_.load_band(wrench, breaks_);
    const Band<double> one = wrench.accuracy == known_accuracy_ ? known_band_ : band_per_torque(wrench.accuracy);
    return {one.low * wrench.setting, one.nominal * wrench.setting, one.high * wrench.setting};
  }
  /// Works out now what `load` needs for every setting of a wrench; for tables.
  void prepare(double accuracy) {
    known_accuracy_ = accuracy;
    known_band_ = band_per_torque(accuracy);
  }
  /// The greatest setting, at most `most`, at which no more than the accepted share of the bolts yields.
  double accepted_setting(double accuracy, double most) const {
    return chance_.setting_for(accepted_chance_of_yield, accuracy, strength_.yield, torsion_factor_, most);
  }
  /// Load at which a bolt of the class breaks at the minimum friction in the thread: no bolt that holds bears more.
  double most_borne() const { return breaks_.front(); }

 private:
  static constexpr double plastic = TorsionOverTension::plastic<double>();
  struct Strength {
    double yield;
    double tensile;
  };

  Band<double> band_per_torque(double accuracy) const {
    TighteningChance::Loads no_limit;
    no_limit.fill(1e9);  // N, far above what 1 N.m gives
    return chance_.load_band({1, accuracy}, no_limit);
  }

  TighteningChance chance_;
  Strength strength_;
  double torsion_factor_;
  TighteningChance::Loads yields_;
  TighteningChance::Loads breaks_;
  double lost_;
  double known_accuracy_ = absent;
  Band<double> known_band_{};
};

/// Which figures of an answer are wanted; tables leave out what costs much.
struct WantedFigures {
  bool clamp_load = true;
  bool as_sold = true;
  bool least_class = true;
  bool meaning = true;
  bool summary = true;
};

inline Band<Force> absent_force() { return {Force(absent), Force(absent), Force(absent)}; }

/// Writes down chances, loads and shares of one setting.
inline void put_chances(ClampCandidate& out, const ClampBolt& bolt, const BoltChance& chance,
                        const WrenchSpread& wrench, double lost, WantedFigures wanted = {}) {
  const Band<double> torque = effective_band(wrench.setting, wrench.accuracy, lost);
  out.yield_utilisation = utilisation_band(bolt, torque, bolt.strength.yield_strength.si, bolt.torsion);
  const double of_tensile = bolt.strength.yield_strength.si / bolt.strength.tensile_strength.si;
  const auto& of_yield = out.yield_utilisation;
  out.tensile_utilisation =
      bolt.torsion == Torsion::plastic
          ? Band<double>{of_yield.low * of_tensile, of_yield.nominal * of_tensile, of_yield.high * of_tensile}
          : tensile_band(bolt, torque);
  const bool never_yields = out.yield_utilisation.high < 1;
  const bool never_breaks = out.tensile_utilisation.high < 1;
  out.chance_of_yield = never_yields ? 0 : chance.of_yield(wrench);
  // A section that may be elastic for yield and is plastic for breaking could turn the order of the two.
  out.chance_of_breaking = never_breaks ? 0 : chance.of_breaking(wrench);
  out.chance_of_yield = std::max(out.chance_of_yield, out.chance_of_breaking);
  if (wanted.as_sold) {
    // What is sold may lie below its class by three standard deviations: 6 % under it.
    out.chance_of_yield_as_sold = out.yield_utilisation.high < 0.9 ? 0 : chance.of_yield_as_sold(wrench);
    out.chance_of_breaking_as_sold = out.tensile_utilisation.high < 0.9 ? 0 : chance.of_breaking_as_sold(wrench);
    out.chance_of_yield_as_sold = std::max(out.chance_of_yield_as_sold, out.chance_of_breaking_as_sold);
  }
  if (out.chance_of_breaking >= 0.5) {
    out.clamp_load = out.worst_case = absent_force();
    out.chance_of_slack = absent;
    out.proof_share = {absent, absent, absent};
    return;
  }
  out.worst_case = load_band(bolt, torque);
  const double enough = useful_proof_share * bolt.proof_load;
  out.chance_of_slack = out.worst_case.low.si >= enough   ? 0
                        : out.worst_case.high.si < enough ? 1
                                                          : chance.of_load_below(wrench, enough);
  if (!wanted.clamp_load) return;
  const Band<double> load = chance.load(wrench, never_breaks);
  // As long as the bolts hold, the typical load is that at nominal friction and a true wrench.
  const double typical = out.chance_of_breaking < 0.01 ? out.worst_case.nominal.si : load.nominal;
  if (!never_breaks) out.worst_case.high = Force(std::min(out.worst_case.high.si, chance.most_borne()));
  // The ends are found by steps: without spread they would miss the middle by the last digits.
  out.clamp_load = {Force(std::min(std::max(load.low, out.worst_case.low.si), typical)), Force(typical),
                    Force(std::max(std::min(load.high, out.worst_case.high.si), typical))};
  out.worst_case.nominal = Force(typical);
  out.proof_share = {out.clamp_load.low.si / bolt.proof_load, typical / bolt.proof_load,
                     out.clamp_load.high.si / bolt.proof_load};
}

/// Clamp load of a torque in 19 of 20 cases; `absent` where the torque may break the bolt.
inline Band<Force> load_by_torque(const ClampBolt& bolt, const WrenchSpread& wrench, double lost) {
  ClampCandidate out;
  put_chances(out, bolt, BoltChance(bolt, lost), wrench, lost, {true, false});
  if (out.chance_of_breaking > accepted_chance) return absent_force();
  return out.clamp_load;
}

/// The first verdict that applies.
/// \param c        its chances and loads, written down
/// \param unknown  friction is unknown: then no torque is within limits, and the worst case decides
inline const char* verdict_of(const ClampCandidate& c, const ThreadHolds& strip, bool unknown) {
  constexpr double last_bit = 1 + 1e-6;  // a suggested torque sits on the bound
  // A bolt that breaks strips the thread before, if that bears less.
  if (c.chance_of_breaking >= 0.5)
    return std::isfinite(strip.nominal) && !strip.is_head ? word_of(Verdict::strips) : word_of(Verdict::breaks);
  if (c.clamp_load.nominal.si > strip.nominal * last_bit)
    return word_of(strip.is_head ? Verdict::breaks : Verdict::strips);
  if (c.clamp_load.high.si > strip.low * last_bit)
    return word_of(strip.is_head ? Verdict::may_break : Verdict::may_strip);
  if (c.chance_of_breaking > accepted_chance) return word_of(Verdict::may_break);
  if (c.chance_of_yield >= 0.5) return word_of(Verdict::yields);
  if (c.chance_of_yield > accepted_chance_of_yield * last_bit) return word_of(Verdict::may_yield);
  if (c.chance_of_slack >= 0.5) return word_of(Verdict::slack);
  if (c.chance_of_slack > accepted_chance) return word_of(Verdict::may_be_slack);
  if (unknown)
    return c.yield_utilisation.high > last_bit ? word_of(Verdict::may_yield) : word_of(Verdict::may_be_slack);
  return word_of(Verdict::within_limits);
}

/// "Chance of breaking: 1 in 14 for a bolt that just meets its class, below 1 in 100 for bolts as sold."
inline std::string chances_text(const char* of_what, double chance, double as_sold) {
  return std::string("Chance of ") + of_what + ": " + chance_text(chance) + " for a bolt that just meets its class, " +
         chance_text(as_sold) + " for bolts as sold.";
}

/// \return true if it is the head that breaks off, at a load that the thread bears
/// \param c  its verdict and chances, written down
inline bool head_breaks_off(const ClampCandidate& c) {
  return (c.verdict == Verdict::breaks && c.chance_of_breaking < 0.5) ||
         (c.verdict == Verdict::may_break && c.chance_of_breaking <= accepted_chance);
}

/// \param c  its verdict and chances, written down
inline std::string meaning_of(const ClampCandidate& c) {
  const std::string_view verdict = c.verdict;
  if (head_breaks_off(c))
    return verdict == Verdict::breaks
               ? "The clamp load exceeds what a head of reduced loadability bears: it breaks off."
               : "At the high end of the clamp load a head of reduced loadability may break off.";
  if (verdict == Verdict::strips) return "The thread that holds the bolt strips before this torque is reached.";
  if (verdict == Verdict::may_strip)
    return "At the high end of the clamp load the thread that holds the bolt strips, and the part may be spoiled.";
  if (verdict == Verdict::breaks && c.tensile_utilisation.low > 1)
    return "A bolt that just meets its class breaks in every case before this torque is reached.";
  if (verdict == Verdict::breaks || verdict == Verdict::may_break)
    return chances_text("breaking before this torque is reached", c.chance_of_breaking, c.chance_of_breaking_as_sold);
  if (verdict == Verdict::may_yield && c.chance_of_yield <= accepted_chance_of_yield)
    return "Friction is unknown: in the worst case the bolt stretches for good.";
  if (verdict == Verdict::yields || verdict == Verdict::may_yield)
    return chances_text("stretching for good", c.chance_of_yield, c.chance_of_yield_as_sold);
  if (verdict == Verdict::slack)
    return "The typical clamp load is below half of the proof load; the joint may slip or shake loose.";
  if (verdict == Verdict::may_be_slack && c.chance_of_slack <= accepted_chance)
    return "Friction is unknown: the clamp load may be below half of the proof load, and the joint may slip or shake "
           "loose.";
  if (verdict == Verdict::may_be_slack)
    return "Chance of a clamp load below half of the proof load: " + chance_text(c.chance_of_slack) +
           "; the joint may slip or shake loose.";
  return "The clamp load is at least half of the proof load in 19 of 20 cases, and fewer than 1 in 100 bolts that just "
         "meet their class stretch for good.";
}

/// The setting that is suggested, and why it is not another.
struct Suggestion {
  double setting = absent;
  const char* limit = "";  ///< "share", "chance of yield", "worst case", "thread", "head", "key"
  double target = absent;  ///< the setting for the wanted load at nominal friction
};

/// The setting for a load at nominal friction, held back to the accepted chance of yielding or, where friction is
/// unknown, to where the worst case just yields. `absent` if the torque that is lost leaves no room for one.
/// \param accuracy_at  relative accuracy at a setting; it may be worse at small ones
template <class AccuracyAt>
Suggestion suggestion_of(const ClampBolt& bolt, const BoltChance& chance, double load, AccuracyAt accuracy_at,
                         double lost, bool unknown) {
  const double target = plain_setting(bolt, load, lost);
  const auto held_back = [&](double accuracy) {
    return unknown ? setting_at_worst_yield(bolt, target, accuracy, lost) : chance.accepted_setting(accuracy, target);
  };
  double setting = held_back(accuracy_at(1e5));
  if (accuracy_at(setting) != accuracy_at(1e5)) setting = held_back(accuracy_at(setting));
  if (!(effective_band(setting, accuracy_at(setting), lost).low > 0)) return {absent, "", target};
  return {setting, setting < target ? (unknown ? "worst case" : "chance of yield") : "share", target};
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
