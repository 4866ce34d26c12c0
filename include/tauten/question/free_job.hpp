// A stuck fastener as somebody describes it, and what of that description is refused.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/heat_limit.hpp"
#include "tauten/loosening/neighbour.hpp"
#include "tauten/loosening/rust_state.hpp"
#include "tauten/part/hexalobular.hpp"
#include "tauten/tool/hand.hpp"

namespace tauten {

/// How the torque gets into the fastener.
enum class DriveFit : unsigned char {
  six_point,         ///< socket or ring on an external hexagon
  twelve_point,      ///< the same with an opening of two hexagons turned by 30 degrees
  open_end,          ///< open-ended wrench on an external hexagon: two corners
  internal_hexagon,  ///< key in the head
  hexalobular        ///< six-lobed bit in the head
};
template <>
struct Words<DriveFit> {
  static constexpr const char* list[] = {"six_point", "twelve_point", "open_end", "internal_hexagon", "hexalobular"};
};

/// Which way the thread turns.
enum class ThreadDirection : unsigned char { right, left };
template <>
struct Words<ThreadDirection> {
  static constexpr const char* list[] = {"right", "left"};
};

/// \return true if the tool goes into the head
constexpr bool is_internal(DriveFit drive) noexcept {
  return drive == DriveFit::internal_hexagon || drive == DriveFit::hexalobular;
}

/// One stuck fastener. What is not known stays absent, and lengths are then those of a typical hexagon bolt: zero and NaN
/// are values, and refused.
struct FreeJob {
  std::optional<Length> diameter{};  ///< asked for; `look_up` finds it by the thread
  std::optional<Length> pitch{};     ///< the same
  std::optional<Length>
      width_across_flats{};           ///< of the head or nut; of the key for an internal hexagon. Asked for, but of a
                                      ///< hexalobular drive
  std::optional<int> drive_number{};  ///< of a hexalobular drive, and asked for of it
  std::optional<Stress> tensile_strength{};  ///< asked for; `look_up` finds it by the class
  std::optional<Stress> yield_strength{};    ///< the same
  std::optional<double> torsion_ratio{};     ///< breaking shear stress over tensile strength, on pi d^3/16; absent: 0.8

  Rust rust = Rust::rusted;
  std::optional<Force> preload;              ///< what it was tightened to; unknown: a share of yield, with a wide band
  double thread_friction = 0.14;             ///< of the clean joint
  double bearing_friction = 0.14;            ///< of the clean joint
  std::optional<Length> engaged_length{};    ///< absent: 0.8 d
  std::optional<Length> bearing_diameter{};  ///< absent: from width and diameter
  std::optional<Length> nut_diameter{};      ///< what surrounds the thread; absent: the width across flats
  std::optional<Stress> nut_yield{};         ///< absent: as the bolt, 200 MPa of aluminium
  Torque prevailing_torque;
  std::string assumed_thread{};                     ///< the thread that was taken because none was given
  bool class_assumed = false;                       ///< the class was taken because none was given
  std::optional<ThreadDirection> thread_direction;  ///< none: not known, and asked for
  std::optional<double> years{};  ///< in place; with `first_year_loss` it replaces the metal loss of the state
  std::optional<Length> first_year_loss{};  ///< corrosion of the first year at this place; goes with `years`

  DriveFit drive = DriveFit::six_point;
  std::optional<Length> head_height{};  ///< that the tool engages; absent: 0.64 d, inside a head 0.5 d
  std::optional<Length>
      drive_clearance;                   ///< width of the opening less that of what goes into it; none: the typical one
  Length corner_loss;                    ///< radial wear of the corners, or of the ridges between lobes
  std::optional<bool> tapped;            ///< the thread is in the part, not in a nut; none: only inside a head
  std::optional<Length> drive_square{};  ///< smallest square drive in the chain; absent: it sets no limit
  std::optional<Length> handle_length{};  ///< absent: not turned by hand
  Force hand_force = median_pull;
  double hand_variation = 0.35;

  std::optional<Torque> limit;  ///< torque that will not be exceeded; none: the advised one
  double shear_risk = 0.05;     ///< accepted chance of shearing, and of damage to the drive
  double wanted_chance = 0.9;   ///< chance of coming free at which no stronger aid is looked for

  std::vector<AidUse> aids;     ///< aids already used
  std::optional<Torque> held;   ///< this very fastener was pulled to it and has not moved
  bool held_untreated = false;  ///< that was before the aids already used; else after them
  HeatSurroundings surroundings;
  std::vector<Neighbour>
      loosened;  ///< like fasteners of the same flange; without the aids already used, unless they say so
  int trials = 200'000;
  std::uint64_t seed = 1;
  int jobs = 1;
};

namespace detail {

/// \return what is wrong with the size of the drive, or nothing
inline std::optional<Error> drive_error(const FreeJob& job) {
  const double d = job.diameter->si;
  if (job.drive != DriveFit::hexalobular) {
    if (auto e = missing("width_across_flats", job.width_across_flats)) return e;
    return outside("width_across_flats", job.width_across_flats,
                   job.drive == DriveFit::internal_hexagon ? Interval{0.3 * d, 1.2 * d} : Interval{1.05 * d, 4 * d});
  }
  if (!job.drive_number) return refuse("drive_number", "drive_number is missing; write it like 30");
  const auto drive = try_hexalobular_drive(*job.drive_number);
  if (!drive) return drive.error();
  const Interval plausible{0.3 * d, 1.2 * d};
  if (!outside("outer_diameter", drive->outer_diameter, plausible)) return std::nullopt;
  return refuse("drive_number", "drive_number " + std::to_string(*job.drive_number) + " is " +
                                    shop_text(drive->outer_diameter) + " wide, but in a screw of " +
                                    shop_text(*job.diameter) + " must lie between " + shop_text(Length(0.3 * d)) +
                                    " and " + shop_text(Length(1.2 * d)) + "; read the number on the bit again");
}

/// \return breaking shear stress over tensile strength, where none is given that of most bolts
inline double torsion_ratio_of(const FreeJob& job) noexcept { return job.torsion_ratio.value_or(0.8); }

/// \return the drive of a job if it is six-lobed, or nothing
inline std::optional<HexalobularDrive> lobes_of(const FreeJob& job) noexcept {
  return job.drive == DriveFit::hexalobular ? find_hexalobular_drive(*job.drive_number) : std::nullopt;
}

/// \return play of the drive in m: as it is said, else 0.2 mm of a socket on a hexagon, and 0.1 mm of a key or bit, whose
///         recess is made to a closer fit [common practice, no source]
inline double clearance_of(const FreeJob& job) noexcept {
  return job.drive_clearance ? job.drive_clearance->si : is_internal(job.drive) ? 0.1e-3 : 0.2e-3;
}

/// \return the rules for heat on a job, those for the part included
inline HeatLimit heat_limit_of(const FreeJob& job) {
  HeatSurroundings near = job.surroundings;
  near.aluminium = near.aluminium || job.rust == Rust::seized_in_aluminium;
  return heat_limit(near);
}

/// \return what is wrong with a job, or nothing
inline std::optional<Error> job_error(const FreeJob& job) {
  if (auto e = missing("diameter", job.diameter)) return e;
  if (auto e = missing("pitch", job.pitch)) return e;
  if (auto e = missing("tensile_strength", job.tensile_strength)) return e;
  if (auto e = missing("yield_strength", job.yield_strength)) return e;
  using Plain = Quantity<Dim::number>;
  const double d = job.diameter->si;
  if (auto e = outside("diameter", job.diameter, {1e-3, 0.5})) return e;
  if (auto e = outside("pitch", job.pitch, {0.1e-3, d / 3})) return e;
  if (auto e = drive_error(job)) return e;
  const auto lobes = lobes_of(job);
  const double width = lobes ? lobes->outer_diameter.si : job.width_across_flats->si;
  if (auto e = outside("tensile_strength", job.tensile_strength, {50e6, 3e9})) return e;
  if (auto e = outside("yield_strength", job.yield_strength, {20e6, job.tensile_strength->si})) return e;
  if (auto e = outside("torsion_ratio", job.torsion_ratio, {0.3, 1.3})) return e;
  if (auto e = outside("preload", job.preload, {0, job.tensile_strength->si * circle_area(d)})) return e;
  if (auto e = outside("thread_friction", Plain(job.thread_friction), {0.02, 1})) return e;
  if (auto e = outside("bearing_friction", Plain(job.bearing_friction), {0.02, 1})) return e;
  if (auto e = outside("engaged_length", job.engaged_length, {0, 10 * d, true})) return e;
  if (auto e = outside("bearing_diameter", job.bearing_diameter, {0, 6 * d, true})) return e;
  if (auto e = outside("nut_diameter", job.nut_diameter, {1.05 * d, 20 * d})) return e;
  if (auto e = outside("nut_yield", job.nut_yield, {0, 3e9, true})) return e;
  if (auto e = outside("prevailing_torque", job.prevailing_torque, {0, 1e5})) return e;
  if (auto e = outside("years", job.years, {0, 200, true})) return e;
  if (auto e = outside("first_year_loss", job.first_year_loss, {0, 1e-3})) return e;
  if (job.years.has_value() != job.first_year_loss.has_value())
    return job.years
               ? Error("first_year_loss", "years goes with first_year_loss; write it like 0.05mm, or leave years out")
               : Error("years", "first_year_loss goes with years; write it like 20, or leave first_year_loss out");
  if (auto e = outside("head_height", job.head_height, {0, 3 * d, true})) return e;
  if (auto e = outside("drive_clearance", job.drive_clearance, {0, 0.5 * width})) return e;
  if (auto e = outside("corner_loss", job.corner_loss, {0, 0.2 * width})) return e;
  if (auto e = outside("drive_square", job.drive_square, {0, 0.2, true})) return e;
  if (auto e = outside("handle_length", job.handle_length, {0, 5, true})) return e;
  if (auto e = outside("hand_force", job.hand_force, {1, 2000})) return e;
  if (auto e = outside("hand_variation", Plain(job.hand_variation), {0, 1})) return e;
  if (auto e = outside("limit", job.limit, {0, 1e6, true})) return e;
  if (job.held) {
    if (auto e = outside("held", *job.held, {0, 1e6, true})) return e;
    if (job.limit && !job.held_untreated && !(*job.held < *job.limit))
      return Error("limit", ("limit is " + shop_text(*job.limit) + ", but must be above the " + shop_text(*job.held) +
                             " that it has held; give a higher limit, or leave it out")
                                .c_str());
  }
  if (job.held_untreated && !(job.held && !job.aids.empty()))
    return Error("held_untreated",
                 "held_untreated says that the fastener was pulled before the aids already used, but held or aids is "
                 "not given; give both, or leave it out");
  if (auto e = outside("shear_risk", Plain(job.shear_risk), {1e-4, 0.5})) return e;
  if (auto e = outside("wanted_chance", Plain(job.wanted_chance), {0.1, 0.999})) return e;
  if (auto e = outside("trials", Plain(job.trials), {1000, 100e6})) return e;
  if (auto e = outside("jobs", Plain(job.jobs), {1, 256})) return e;
  for (const Neighbour& one : job.loosened)
    if (one.treated && job.aids.empty())
      return Error("loosened",
                   "loosened: one is said to be treated, that is with the aids already used, but aids names none; name "
                   "them, or leave treated out");
  for (const AidUse& use : job.aids) {
    if (auto e = outside("soak_hours", Plain(use.soak_hours), {0, 2000})) return e;
    if (auto e = outside("nut_rise", use.nut_rise, {0, 600})) return e;
    if (auto e = outside("bolt_rise", use.bolt_rise, {0, use.aid == Aid::cold ? 200.0 : 600.0})) return e;
    if (use.aid == Aid::cut)
      return Error("aids", "a fastener that was cut needs no torque; leave cut out of the aids already used");
    if (use.aid == Aid::another_tool)
      return Error("aids", "another_tool is advice; describe the tool that is used now by socket, drive and square");
    if (use.aid == Aid::heat) {
      const HeatLimit limit = heat_limit_of(job);
      if (!limit.allowed) return Error("aids", limit.reasons.back().text.c_str());
      if (auto e = outside("nut_rise", use.nut_rise, {0, limit.greatest_rise.si})) return e;
    }
  }
  return std::nullopt;
}

}  // namespace detail

}  // namespace tauten
