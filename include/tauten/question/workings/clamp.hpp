// The answers to the main question: what clamp load does this torque leave, and its inverse.
#pragma once

#include "tauten/base/mode.hpp"
#include "tauten/question/workings/clamp_candidate.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION Outcome<Clamp> try_clamp(const ClampJob& job) {
  if (!job.torque) return Error("torque", "torque is missing; write it like 48N.m");
  const double torque = job.torque->si;
  return detail::answer(job, "clamp_load",
                        [&](const detail::Fastener&, const detail::Conditions& c) -> Outcome<double> {
                          if (detail::something_is_left(torque, c)) return torque;
                          return detail::nothing_left("torque", "torque", torque, c);
                        });
}

TAUTEN_FUNCTION Clamp clamp(const ClampJob& job) { return try_clamp(job).value(); }

TAUTEN_FUNCTION Outcome<Clamp> try_torque_for(const ClampJob& job) {
  return detail::answer(
      job, "torque", [&](const detail::Fastener& fastener, const detail::Conditions& c) -> Outcome<double> {
        if (job.clamp_load) {
          const double setting = detail::plain_setting(fastener.bolt(), job.clamp_load->si, c.lost);
          if (detail::something_is_left(setting, c)) return setting;
          return detail::nothing_left("clamp_load", "the torque for it", setting, c);
        }
        const double suggested = fastener.fixed().suggested_torque.si, target = fastener.fixed().target_torque.si;
        if (detail::is_given(suggested)) return suggested;
        if (job.share && !detail::something_is_left(target, c))
          return detail::nothing_left("share", "the torque for it", target, c);
        if (fastener.fixed().suggested_limit == "thread")
          return Error(
              job.engagement ? "engagement" : "nut_class",
              "the thread that holds the bolt bears so little that no torque can be suggested; engage more thread, "
              "or fit a thread insert or a stronger nut");
        const std::string lost = job.prevailing_torque.si > 0 ? "prevailing_torque" : "shank_torque";
        return Error(lost.c_str(),
                     (lost + " leaves no room between a slack bolt and one that yields, so that no torque can be " +
                      "suggested; take another locking element or a stronger bolt")
                         .c_str());
      });
}

TAUTEN_FUNCTION Clamp torque_for(const ClampJob& job) { return try_torque_for(job).value(); }

}  // namespace tauten::TAUTEN_ABI
