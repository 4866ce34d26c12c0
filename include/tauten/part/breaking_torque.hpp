// The least torque at which a bolt shears off when it is only twisted.
#pragma once

#include <string>
#include <string_view>

#include "tauten/part/breaking_torque_table.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/thread/tolerance.hpp"

namespace tauten::TAUTEN_ABI {

/// How a breaking torque was found.
enum class BreakingBasis : unsigned char {
  printed,  ///< the figure of ISO 898-7 or ISO 3506-1
  formula,  ///< the formula of ISO 898-7 on the minimum root diameter of a 6g thread, below M1.6 6h; its ratio is an estimate for
            ///< austenitic steel
  fully_plastic  ///< shear strength over the whole root section: where ISO 898-7 gives no torsion ratio
};

/// The least torque at which a bolt breaks in torsion alone. Tension in the bolt lowers it.
struct MinimumBreakingTorque {
  Torque value;
  BreakingBasis basis;
  Source source;
  Seen seen;  ///< how the weakest figure behind it was seen
};

namespace detail {

/// Of the classes without a shear ratio of their own, the cold-worked 4.8, 5.8 and 6.8 take that of their hot-forged
/// neighbours, 0.7; 9.8 and the rest have a torsion ratio.
inline constexpr double low_class_shear_ratio = 0.7;

/// Torsion ratio of austenitic steel where ISO 3506-1 prints no torque: the least that its printed torques imply, which
/// fall from 1.23 at M1.6 to 0.90 at M16.
inline constexpr double stainless_torsion_ratio = 0.9;

}  // namespace detail

/// Minimum breaking torque: printed where a standard prints it, else by formula.
/// \param t     the thread
/// \param name  property class, "8.8", "A2-70"
/// \return the torque and how it was found, or an error if the class is unknown or not given for this size
inline Outcome<MinimumBreakingTorque> try_minimum_breaking_torque(const Thread& t, std::string_view name) {
  const Outcome<PropertyClass> found = try_property_class(name, t.diameter);
  if (!found) return found.error();
  const std::string thread_name = t.name();
  // Stainless rows hold for all of A1 to A5 and carry only the strength: "70".
  const std::string key =
      found->stainless ? found->name.substr(found->name.find('-') + 1) : found->name.substr(0, found->name.find(' '));
  for (const table::BreakingTorque& row : table::breaking_torques)
    if (thread_name == row.designation && key == row.property_class) {
      const Source source = table::breaking_torque_sources[row.source];
      return MinimumBreakingTorque{Torque(row.torque), BreakingBasis::printed, source, source.seen};
    }

  // Threads below M1.6 are made without allowance.
  const Outcome<BoltLimits> limits = detail::bolt_limits_even_remembered(t, t.diameter.si < 1.5e-3 ? "6h" : "6g");
  if (!limits) return limits.error();
  const double root = limits->root_diameter.min.si;
  const double strength = found->tensile_strength.si;
  if (found->stainless)
    return MinimumBreakingTorque{Torque(breaking_torque.si(detail::stainless_torsion_ratio, strength, root)),
                                 BreakingBasis::formula, table::breaking_torque_sources[1], Seen::judgement};
  if (found->torsion_ratio > 0)
    return MinimumBreakingTorque{Torque(breaking_torque.si(found->torsion_ratio, strength, root)),
                                 BreakingBasis::formula, BreakingTorque::sources[0],
                                 detail::weaker(limits->seen, found->torsion_ratio_seen)};

  const bool known = found->shear_ratio > 0;
  const double shear_ratio = known ? found->shear_ratio : detail::low_class_shear_ratio;
  return MinimumBreakingTorque{Torque(torsion_plastic_torque.si(shear_ratio * strength, root)),
                               BreakingBasis::fully_plastic,
                               Source{"VDI 2230 Part 1:2003", "ratios of shear to tensile strength", Seen::memory},
                               detail::weaker(limits->seen, known ? found->shear_ratio_seen : Seen::judgement)};
}

/// \copydoc try_minimum_breaking_torque
/// \throws Error  in place of returning one
inline MinimumBreakingTorque minimum_breaking_torque(const Thread& t, std::string_view name) {
  return try_minimum_breaking_torque(t, name).value();
}

}  // namespace tauten::TAUTEN_ABI
