// From the description of a stuck fastener to the numbers that are drawn: what holds, and what each part takes.
#pragma once

#include "tauten/friction/bearing.hpp"
#include "tauten/friction/lever.hpp"
#include "tauten/loosening/bond.hpp"
#include "tauten/loosening/hexagon_drive.hpp"
#include "tauten/loosening/recess.hpp"
#include "tauten/loosening/release_model.hpp"
#include "tauten/loosening/rust.hpp"
#include "tauten/part/strength.hpp"
#include "tauten/question/free_job.hpp"
#include "tauten/question/workings/free_checks.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/thread/tolerance.hpp"
#include "tauten/tool/drive_sizes.hpp"
#include "tauten/tool/drive_strength.hpp"

namespace tauten::TAUTEN_ABI {

/// Estimates behind the capacities. All are judgement unless a source stands there.
struct CapacityEstimates {
  double preload_share = 0.55;      ///< of yield, where the preload is not known
  double preload_left = 0.9;        ///< of a known one, after years
  double unknown_variation = 0.35;  ///< of the preload
  double known_variation = 0.2;
  double above_minimum = 1.12;  ///< strength of real bolts over the least strength of their class
  double strength_variation = 0.06;
  double tool_above_test = 1.3;  ///< breaking torque of tools over the test torque of their standard
  double tool_variation = 0.12;
  double key_variation = 0.2;  ///< nine of ten from the test torque to two fifths above the remembered strength
  /// Of six-lobed bits: 54 to 60 HRC give 1.0 to 1.9 GPa, which is the band of nine of ten that the scatter makes.
  double bit_shear_strength = 1400e6;
  double bit_variation = 0.2;
  double bearing_share = 0.15;  ///< of the flank that the tool reaches at a corner: it carries the push
  /// The same in a hexagon socket, whose corners cannot spread: with it, new sockets bear their key's test torque (as
  /// ISO 4762 of class 12.9 must to be tightened), and soft ones of class 8.8 strip before their key twists.
  double key_bearing_share = 0.35;
  /// The same of a lobe, whose arcs bear nearly all along: half to all of the flank lie within the scatter.
  double lobe_bearing_share = 0.75;
  double drive_variation = 0.3;
  double flank_factor = 1.25;        ///< bond on both flanks
  double nut_pressure_share = 0.75;  ///< of nut yield/sqrt 3: what rust can press before the nut gives
};
inline constexpr CapacityEstimates capacity_estimates;

namespace detail {

/// How the tool holds the corners, or the bit the lobes: the inputs of `rounding_torque`, in its order.
struct Grip {
  double strength, corners, length, height, lever;
  bool spins() const noexcept { return !(lever > 0) || !(length > 0); }
};

inline Grip grip_of(const FreeJob& job) noexcept {
  const CapacityEstimates& guess = capacity_estimates;
  const double D = clearance_of(job), w = job.corner_loss.si;
  const double strength = job.tensile_strength->si * guess.above_minimum;
  const double height =
      job.head_height ? job.head_height->si : (is_internal(job.drive) ? 0.5 : 0.64) * job.diameter->si;
  if (const auto lobes = lobes_of(job)) {
    const double A = lobes->outer_diameter.si, B = lobes->inner_diameter.si;
    const double length = guess.lobe_bearing_share * LobeFlank::eval(A, B, D, w);
    return {strength, 6, length, height, LobeLever::eval(A, B, D, w)};
  }
  const double s = job.width_across_flats->si;
  const double lever = FlankLever::eval(s, D, w);
  const double flank = job.drive == DriveFit::twelve_point ? TwelvePointFlank::eval(s, D, w) : lever;
  const double corners = job.drive == DriveFit::open_end ? 2 : 6;
  const double share = job.drive == DriveFit::internal_hexagon ? guess.key_bearing_share : guess.bearing_share;
  const double length = share * 2 * flank;
  return {strength, corners, length, height, lever};
}

/// Torque that corners or recess take; zero if the tool spins.
inline Lognormal drive_capacity(const FreeJob& job) noexcept {
  const Grip g = grip_of(job);
  if (g.spins()) return {0, 0};
  return {RoundingTorque::eval(g.strength, g.corners, g.length, g.height, g.lever), capacity_estimates.drive_variation};
}

inline Lognormal tool_capacity(const FreeJob& job) noexcept {
  const CapacityEstimates& guess = capacity_estimates;
  if (const auto lobes = lobes_of(job))
    return {
        HexalobularPlasticTorque::eval(guess.bit_shear_strength, lobes->outer_diameter.si, lobes->inner_diameter.si),
        guess.bit_variation};
  const double s = job.width_across_flats->si;
  if (job.drive == DriveFit::internal_hexagon)
    return {HexagonKeyStrength::eval(hexagon_key_breaking_stress(s), s), guess.key_variation};
  const double test = job.drive == DriveFit::open_end ? OpenEndTestTorque::eval(s) : RingTestTorque::eval(s);
  return {guess.tool_above_test * test, guess.tool_variation};
}

/// \return what the tool must bear by its standard; of a six-lobed bit, which has no test, the low end of its estimate
inline Torque tool_test_torque(const FreeJob& job) noexcept {
  if (job.drive == DriveFit::hexalobular) return Torque(tool_capacity(job).quantile(0.05));
  const double s = job.width_across_flats->si;
  if (job.drive == DriveFit::open_end) return Torque(OpenEndTestTorque::eval(s));
  if (job.drive != DriveFit::internal_hexagon) return Torque(RingTestTorque::eval(s));
  const HexagonKey* key = find_hexagon_key(*job.width_across_flats);
  // The least ratio of the printed figures to s^3, 198 MPa, where no key of this width is in the table.
  return key != nullptr ? key->test_torque
                        : Torque(HexagonKeyTestTorque::eval(HexagonKeyTestTorque::inputs[0].validity.low, s));
}

/// \return what bars, ratchets and adaptors with this square must bear by their standard, or nothing if it is unknown
inline std::optional<Torque> square_test_torque(const FreeJob& job) noexcept {
  const SquareDrive* drive = job.drive_square ? find_square_drive(*job.drive_square) : nullptr;
  return drive != nullptr ? std::optional<Torque>(drive->driver_test_torque) : std::nullopt;
}

inline Lognormal square_capacity(const FreeJob& job) noexcept {
  const auto test = square_test_torque(job);
  return test ? Lognormal{capacity_estimates.tool_above_test * test->si, capacity_estimates.tool_variation}
              : never_reached;
}

/// Length over which bolt and nut hold each other.
inline double engaged_length_of(const FreeJob& job) noexcept {
  return job.engaged_length ? job.engaged_length->si : 0.8 * job.diameter->si;
}

/// Width of what is turned: hexagon or cylinder head.
inline double across_head(const FreeJob& job) noexcept {
  return is_internal(job.drive) ? 1.5 * job.diameter->si : job.width_across_flats->si;
}

/// Diameter at which the turned head or nut rubs.
inline double bearing_diameter_of(const FreeJob& job) noexcept {
  const double d = job.diameter->si;
  return job.bearing_diameter ? job.bearing_diameter->si : (hexagon_face_share * across_head(job) + 1.1 * d) / 2;
}

/// \return minimum pitch diameter of a thread as bolts are made: 6g, below M1.6 without allowance, 6h. Of a thread that is
///         not in the tables by the formulas of ISO 965-1 on the diameter itself, within 1 % of d_2
inline double minimum_pitch_diameter(const FreeJob& job) {
  const double d = job.diameter->si, P = job.pitch->si;
  for (const Thread& t : threads_of(*job.diameter))
    if (same_length(t.pitch.si, P))
      if (const auto limits = bolt_limits_even_remembered(t, d < 1.5e-3 ? "6h" : "6g"))
        return limits->pitch_diameter.min.si;
  const double tolerance = 90e-6 * std::pow(P * 1e3, 0.4) * std::pow(d * 1e3, 0.1);
  return PitchDiameter::eval(d, P) - (15e-6 + 11e-3 * P) - tolerance;
}

/// The model of a job with a given state of rust and no aids.
inline ReleaseModel bare_model(const FreeJob& job) {
  const CapacityEstimates& guess = capacity_estimates;
  const RustState& state = rust_state(job.rust);
  const double d = job.diameter->si, P = job.pitch->si;
  const double d_2 = PitchDiameter::eval(d, P), area = StressArea::eval(d, P);
  const double d_3 = MinimumRootDiameter::eval(minimum_pitch_diameter(job), P);
  const double engaged = engaged_length_of(job);
  ReleaseModel m;
  m.diameter = d;
  m.nut_diameter = job.nut_diameter ? job.nut_diameter->si : across_head(job);
  m.stress_area = area;
  m.preload = job.preload ? Lognormal{guess.preload_left * job.preload->si, guess.known_variation}
                          : Lognormal{guess.preload_share * LoadAtStress::eval(area, job.yield_strength->si),
                                      guess.unknown_variation};
  if (!state.loaded) m.preload.median = 0;
  m.greatest_preload = LoadAtStress::eval(area, job.yield_strength->si) * guess.above_minimum;
  m.thread_growth = state.thread_growth;
  m.bearing_growth = state.bearing_growth;
  m.flanks = job.thread_friction * LeverParts::flanks(d_2);
  m.face = job.bearing_friction * LeverParts::face(bearing_diameter_of(job));
  m.lift = LeverParts::lift(P);
  m.bond = Lognormal{BondTorque::eval(state.bond_strength.median, guess.flank_factor, d_2, engaged),
                     state.bond_strength.variation};
  const bool aluminium = job.rust == Rust::seized_in_aluminium;
  if (aluminium) m.nut_expansion = 23e-6;  // handbook value
  const double nut_yield = job.nut_yield ? job.nut_yield->si : aluminium ? 200e6 : job.yield_strength->si;
  m.rust_pressure = state.pressure_share.median * guess.nut_pressure_share * nut_yield / std::sqrt(3.0);
  m.rust = Lognormal{RustTorque::eval(m.rust_pressure, job.thread_friction * state.thread_growth.median,
                                      guess.flank_factor, d_2, engaged),
                     state.pressure_share.variation};
  m.prevailing = {job.prevailing_torque.si, 0.2};
  m.shear = {guess.above_minimum * BreakingTorque::eval(torsion_ratio_of(job), job.tensile_strength->si, d_3),
             guess.strength_variation};
  m.breaking_load = guess.above_minimum * LoadAtStress::eval(area, job.tensile_strength->si);
  const double loss = job.years ? MetalLoss::eval(job.first_year_loss->si, *job.years) : state.metal_loss.median;
  m.section_loss = {2 * loss / d_3, state.metal_loss.variation};
  m.drive = drive_capacity(job);
  m.socket = tool_capacity(job);
  m.square = square_capacity(job);
  if (job.handle_length) m.arm = {job.hand_force.si * job.handle_length->si, job.hand_variation};
  return m;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
