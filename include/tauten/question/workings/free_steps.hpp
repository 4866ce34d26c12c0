// How the torques of a stuck fastener come about, with everything at its median.
#pragma once

#include <algorithm>

#include "tauten/base/step.hpp"
#include "tauten/loosening/breakaway.hpp"
#include "tauten/loosening/torsion_capacity.hpp"
#include "tauten/question/workings/learned_model.hpp"

namespace tauten::TAUTEN_ABI {

/// The simulation draws from distributions; these steps put the medians into the same formulas. What was learned from
/// fasteners already undone is not in them.
/// \param job  a description that `try_free_joint` takes
/// \return the steps to the torque that starts it, after the aids already used, and to the torques at which bolt, corners
///         or recess, and tool give
inline std::vector<Step> free_steps(const FreeJob& job) {
  const RustState& state = rust_state(job.rust);
  const ReleaseModel bare = detail::bare_model(job);
  const ReleaseModel m = release_model(job);
  const double engaged = detail::engaged_length_of(job);
  const double flank_factor = capacity_estimates.flank_factor;
  std::vector<Step> steps;
  if (!job.preload && state.loaded) {
    const double area = step(steps, "", stress_area, job.diameter->si, job.pitch->si);
    step(steps, "preload that is taken as left: a share of yield", target_preload, capacity_estimates.preload_share,
         area, job.yield_strength->si);
  }
  const double d_2 = step(steps, "", pitch_diameter, job.diameter->si, job.pitch->si);
  if (bare.bond.median > 0)
    step(steps, "before any aid", bond_torque, state.bond_strength.median, flank_factor, d_2, engaged);
  if (bare.rust.median > 0)
    step(steps, "before any aid", rust_torque, bare.rust_pressure, job.thread_friction * state.thread_growth.median,
         flank_factor, d_2, engaged);
  const double preload = std::min(m.preload.median, m.greatest_preload);
  step(steps,
       job.aids.empty() ? "the middle of a wide band, which is found below"
                        : "after the aids already used: the middle of a wide band, which is found below",
       breakaway_torque, preload, job.pitch->si, d_2, job.thread_friction, job.bearing_friction,
       detail::bearing_diameter_of(job), std::max(m.thread_growth.median, m.thread_floor),
       std::max(m.bearing_growth.median, m.bearing_floor), m.bond.median, m.rust.median, m.prevailing.median);
  const double d_3 = step(steps, "of the thread as it is made, 6g", minimum_root_diameter,
                          detail::minimum_pitch_diameter(job), job.pitch->si);
  if (job.years) step(steps, "", metal_loss, job.first_year_loss->si, *job.years);
  // What heat has left of the strength is the same share in torsion and in tension.
  const double strength =
      capacity_estimates.above_minimum * (m.shear.median / bare.shear.median) * job.tensile_strength->si;
  const bool hot = m.shear.median < bare.shear.median;
  const double shank =
      step(steps,
           hot ? "shank strength while hot, 12 % above the minimum of its class before"
               : "shank strength, 12 % above the minimum of its class",
           corroded_breaking_torque, detail::torsion_ratio_of(job), strength, d_3, m.section_loss.median * d_3 / 2);
  const double left = square(1 - m.section_loss.median);
  const double load = step(steps, "its strength in tension, of the section that rust has left", load_at_stress,
                           left * m.stress_area, strength);
  step(steps, "at the wrench: shank strength beside its tension, plus friction under the head", shearing_torque_at_head,
       shank, std::min(preload, load), load, job.bearing_friction, std::max(m.bearing_growth.median, m.bearing_floor),
       detail::bearing_diameter_of(job));
  const auto lobes = detail::lobes_of(job);
  if (const detail::Grip g = detail::grip_of(job); !g.spins()) {
    if (lobes) {
      const double A = lobes->outer_diameter.si, B = lobes->inner_diameter.si;
      step(steps, "three quarters of it are taken to bear", lobe_flank, A, B, detail::clearance_of(job),
           job.corner_loss.si);
      step(steps, "", lobe_lever, A, B, detail::clearance_of(job), job.corner_loss.si);
    }
    step(steps, lobes ? "recess strength" : "corner strength", rounding_torque, g.strength, g.corners, g.length,
         g.height, g.lever);
  }
  const char* test = "torque that the tool must bear by its standard; most bear more";
  if (lobes)
    step(steps, "bit strength, from its hardness", hexalobular_plastic_torque, capacity_estimates.bit_shear_strength,
         lobes->outer_diameter.si, lobes->inner_diameter.si);
  else if (job.drive == DriveFit::internal_hexagon)
    step(steps, "key strength", hexagon_key_strength, hexagon_key_breaking_stress(job.width_across_flats->si),
         job.width_across_flats->si);
  else if (job.drive == DriveFit::open_end)
    step(steps, test, open_end_test_torque, job.width_across_flats->si);
  else
    step(steps, test, ring_test_torque, job.width_across_flats->si);
  return steps;
}

}  // namespace tauten::TAUTEN_ABI
