// Where to stop, and why, in a sentence.
#pragma once

#include "tauten/base/shop_text.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/capacity_list.hpp"
#include "tauten/question/workings/free_checks.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// \param risk  the accepted chance, as it is to be printed
/// \return what happens above the torque to stop at
inline std::string stop_reason(const FreeJob& job, StopLimit limit, const std::string& risk) {
  const bool lobes = job.drive == DriveFit::hexalobular;
  const std::string already = job.held ? ", counting the pull that it has held" : "";
  switch (limit) {
    case StopLimit::shear: return "the chance of shearing exceeds " + risk + already;
    case StopLimit::corners: return "the chance that the " + end_of_drive(job.drive) + " exceeds " + risk + already;
    case StopLimit::tool:
      return lobes ? "the bit may break: no standard tests it, this is the low end of its estimated strength"
             : job.drive == DriveFit::internal_hexagon ? "the key is not tested and may break"
             : job.drive == DriveFit::open_end         ? "the wrench is not tested and may break"
                                                       : "the socket is not tested and may burst";
    case StopLimit::square: return "the square drive is not tested and may break";
    case StopLimit::sister: return "a fastener of this flange has already sheared or rounded off";
    case StopLimit::balance: return "more torque breaks something more often than it frees the fastener";
    case StopLimit::gain: return "more torque hardly frees any more";
    case StopLimit::spins: break;
  }
  return "the tool spins";
}

/// Where to stop, and why.
/// \param stop_at  the torque as it is to be printed
/// \param risk     the chance of shearing that is put up with, as it is to be printed
/// \param limit    the limit that was given, as it is to be printed; empty: none
/// \param lead     what stands before the torque
inline std::string stop_sentence(const FreeJob& job, const Free& answer, const std::string& stop_at,
                                 const std::string& risk, const std::string& limit,
                                 const std::string& lead = "Stop at ") {
  if (!limit.empty()) {
    const std::string without = stop_sentence(job, answer, stop_at, risk, "");
    return answer.chances.limit < answer.stop_at ? "Your limit: " + limit + ". Without it: " + without
                                                 : without + " Your limit, " + limit + ", does not lie below it.";
  }
  if (answer.round.high.si <= 0 && answer.breakaway.high.si > 0)
    return "Do not pull: the tool spins on what is left of the drive. Take one that grips, and ask again.";
  if (answer.stop_at.si <= 0)
    return answer.stop_limit == StopLimit::gain
               ? "Nothing holds it; it turns without torque."
               : "Do not turn it as it is: at any torque " + stop_reason(job, answer.stop_limit, risk) + ".";
  const std::string why = stop_reason(job, answer.stop_limit, risk);
  if (job.held && !job.held_untreated && !(answer.stop_at > *job.held))
    return "Do not pull it further as it is: it has held " + shop_text(*job.held) + ", and above " + stop_at + " " +
           why + ".";
  // Most come free before; the few that do not are told of.
  const bool high = answer.stop_at > answer.shear.nominal;
  return lead + stop_at + ": above it " + why + "." +
         (high ? " Half of such bolts withstand no more than " + shop_text(answer.shear.nominal) +
                     ": one that has not come free by then may well shear."
               : "");
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
