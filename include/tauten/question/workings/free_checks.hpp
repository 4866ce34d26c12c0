// What of the description of a stuck fastener is refused, and what it stands for where it leaves something out.
#pragma once

#include "tauten/base/math.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/part/hexalobular.hpp"
#include "tauten/question/free_job.hpp"

namespace tauten::TAUTEN_ABI {

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
  if (auto e = unknown_value("rust", job.rust)) return e;
  if (auto e = unknown_value("drive", job.drive)) return e;
  if (job.thread_direction)
    if (auto e = unknown_value("thread_direction", *job.thread_direction)) return e;
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
  if (auto e = outside("bearing_diameter", job.bearing_diameter, {d, 6 * d})) return e;
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
    if (auto e = unknown_value("loosened", one.how)) return e;
  for (const Neighbour& one : job.loosened)
    if (one.treated && job.aids.empty())
      return Error("loosened",
                   "loosened: one is given as treated, that is with the aids already used, but aids names none; name "
                   "them, or leave treated out");
  for (const AidUse& use : job.aids) {
    if (auto e = unknown_value("aids", use.aid)) return e;
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

}  // namespace tauten::TAUTEN_ABI
