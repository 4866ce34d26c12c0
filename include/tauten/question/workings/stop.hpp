// Where to stop: the least of what bolt, corners, tools and like fasteners allow.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "tauten/loosening/simulate.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/capacity.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// \return the minimum torque at which a like fastener sheared or rounded off, or nothing if none did
inline std::optional<Torque> least_broken(const FreeJob& job) {
  std::optional<Torque> least;
  for (const Neighbour& one : job.loosened)
    if (one.how == Neighbour::How::sheared || one.how == Neighbour::How::rounded)
      if (!least || one.torque < *least) least = one.torque;
  return least;
}

/// The same pulls with an arm that never gives out: whoever has reached a torque had the arm for it.
/// \param held   what it is known to have borne
/// \param stuck  fasteners to be filled in, or those of a plan
/// \return that simulation, or nothing without an arm
inline std::optional<Simulation> tireless(const FreeJob& job, const ReleaseModel& m, const std::optional<Held>& held,
                                          std::uint64_t trials, Stuck& stuck) {
  if (!(m.arm.median < never_reached.median)) return std::nullopt;
  ReleaseModel strong = m;
  strong.arm = never_reached;
  std::optional<Held> borne = held;
  if (borne) borne->model.arm = never_reached;
  return simulate(strong, trials, job.seed, job.jobs, 0, borne, &stuck);
}

/// All limits of the torque.
/// \param m     the joint as it is pulled
/// \param pull  simulation with an arm that never gives out
/// \param s     simulation with the arm that there is
/// \param risk  accepted chance of shearing, and of damage to the drive
inline std::vector<StopBound> stop_bounds(const FreeJob& job, const ReleaseModel& m, const Simulation& pull,
                                          const Simulation& s, double risk) {
  if (!(m.drive.median > 0)) return {{StopLimit::spins, Torque(0.0)}};
  std::vector<StopBound> list = {{StopLimit::shear, pull.limit_for_shear(risk)},
                                 {StopLimit::corners, pull.limit_for_corners(risk)},
                                 {StopLimit::tool, tool_test_torque(job)}};
  if (const auto square = square_test_torque(job)) list.push_back({StopLimit::square, *square});
  if (const auto least = least_broken(job)) list.push_back({StopLimit::sister, *least});
  list.push_back({StopLimit::balance, pull.limit_for_balance()});
  list.push_back({StopLimit::gain, s.limit_for_gain()});
  return list;
}

/// \return the least of some limits; of equal ones the first, but that nothing is left to gain before all
inline StopBound least_of(const std::vector<StopBound>& bounds) {
  return *std::min_element(bounds.begin(), bounds.end(), [](const StopBound& a, const StopBound& b) {
    return a.torque < b.torque || (a.torque == b.torque && a.limit == StopLimit::gain && b.limit != StopLimit::gain);
  });
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
