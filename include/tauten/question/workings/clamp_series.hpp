// The main question about one joint at one torque after another, for tables.
#pragma once

#include <algorithm>
#include <vector>

#include "tauten/question/clamp.hpp"
#include "tauten/question/workings/clamp_candidate.hpp"

namespace tauten::TAUTEN_ABI {

/// The clamp load that each of many torques leaves: what no torque changes is looked up and worked out once. Its answers are
/// those of `clamp`, without explanation and texts of notices.
class ClampSeries {
 public:
  /// \param job  with the first torque
  /// \return the series, or what is wrong with the joint or with that torque
  static Outcome<ClampSeries> try_make(const ClampJob& job) {
    const Outcome<Clamp> first = try_clamp(job);
    if (!first) return first.error();
    ClampSeries series;
    series.names_parts_ = detail::names_parts(job);
    series.conditions_ = *detail::conditions_of(job);
    series.common_ = *first;
    series.common_.candidates.clear();
    series.is_ranked_ = job.thread.empty();
    const auto fasteners = detail::fasteners_of(job, series.conditions_);
    for (const detail::Fastener& fastener : *fasteners) series.members_.push_back({fastener, fastener.fixed(), absent});
    return series;
  }

  struct Point {
    const ClampCandidate* answer = nullptr;  ///< null for a torque that `clamp` refuses, or where it has more to report
    std::size_t fastener = 0;                ///< which of them it is
  };

  /// \return the most likely fastener at a torque; the answer holds until the next call
  Point at(Torque torque, const detail::WantedFigures& wanted = {}) {
    if (names_parts_ || !detail::clamp_torque_range.contains(torque.si) ||
        !detail::something_is_left(torque.si, conditions_))
      return {};
    auto member = std::find_if(members_.begin(), members_.end(),
                               [&](const Member& one) { return !is_ranked_ || one.fastener.is_likely_at(torque.si); });
    if (member == members_.end()) member = members_.begin();
    const double accuracy = conditions_.accuracy_at(torque.si);
    if (member->prepared_for != accuracy) member->fastener.prepare(member->prepared_for = accuracy);
    member->fastener.put(torque.si, member->answer, wanted);
    return {&member->answer, static_cast<std::size_t>(member - members_.begin())};
  }
  /// \return the codes of the notices that the torque brings, beside those in the answer; null for those that there are not
  static auto torque_codes(const ClampCandidate& answer) { return detail::torque_codes(answer, true); }
  /// What holds for every fastener; it lists none.
  const Clamp& common() const { return common_; }
  /// \return what no torque changes of a fastener
  const ClampCandidate& fastener(std::size_t place) const { return members_[place].fastener.fixed(); }
  std::size_t fasteners() const { return members_.size(); }

 private:
  struct Member {
    detail::Fastener fastener;
    ClampCandidate answer;
    double prepared_for;  ///< accuracy of the wrench
  };

  ClampSeries() = default;

  bool names_parts_ = false;  ///< what they bear is compared with each load
  bool is_ranked_ = false;    ///< by torque
  detail::Conditions conditions_{};
  Clamp common_;
  std::vector<Member> members_;
};

}  // namespace tauten::TAUTEN_ABI
