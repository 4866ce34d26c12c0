// In which order the bolts of a joint are tightened and undone, and in which passes.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

#include "tauten/group/pattern.hpp"

namespace tauten::TAUTEN_ABI {

/// Indices of bolts from 0, in the order in which they are worked on.
using BoltOrder = std::vector<std::size_t>;

namespace detail {

/// Sorts by a key of each bolt; bolts with the same key stay as they are.
inline void sort_by(BoltOrder& order, const std::vector<double>& key) {
  std::vector<std::size_t> rank(key.size());
  for (std::size_t i = 0; i < order.size(); ++i) rank[order[i]] = i;
  std::sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return key[a] < key[b] || (key[a] == key[b] && rank[a] < rank[b]); });
}

inline BoltOrder crosswise(std::size_t count) {
  if (count == 1) return {0};
  BoltOrder order;
  if (count % 2 == 1) {
    // A star: the step next to half a turn has no factor in common with an odd count, so it meets every bolt.
    for (std::size_t i = 0; i < count; ++i) order.push_back(i * (count / 2) % count);
    return order;
  }
  // Each bolt is followed by the one opposite; the pairs themselves go crosswise.
  for (const std::size_t first : crosswise(count / 2)) {
    order.push_back(first);
    order.push_back(first + count / 2);
  }
  return order;
}

}  // namespace detail

/// Crosswise order of bolts on a circle, numbered clockwise: opposite pairs, each pair as far from the others as it can
/// be; a star where the count is odd. 8 bolts: 1 5 3 7 2 6 4 8, counted from 1.
/// \param count  number of bolts, 2 or more
/// Source: common practice; for 4, 8 and 16 bolts the order of the legacy labels.
inline Outcome<BoltOrder> try_crosswise_order(std::size_t count) {
  if (auto error = detail::count_error("count", count, 2)) return *error;
  return detail::crosswise(count);
}

/// One round about the centroid, clockwise from bolt 1, whatever the numbers of the bolts.
inline BoltOrder circular_order(const Pattern& pattern) {
  const Position centre = pattern.centroid();
  const auto clockwise = [&](Position p) { return std::atan2(p.x - centre.x, p.y - centre.y); };
  std::vector<double> angle;
  for (const Position p : pattern) {
    double from_first = clockwise(p) - clockwise(pattern[0]);
    if (from_first < -1e-9) from_first += 2 * pi<double>();
    angle.push_back(from_first);
  }
  BoltOrder round(pattern.size());
  for (std::size_t i = 0; i < round.size(); ++i) round[i] = i;
  detail::sort_by(round, angle);
  return round;
}

/// Crosswise order of any pattern: round its centroid clockwise from bolt 1, then as on a circle.
inline BoltOrder crosswise_order(const Pattern& pattern) {
  const BoltOrder round = circular_order(pattern);
  BoltOrder order;
  for (const std::size_t place : detail::crosswise(pattern.size())) order.push_back(round[place]);
  return order;
}

/// One round, clockwise on a circle: for the settling round. Alone, it can tilt a joint.
inline Outcome<BoltOrder> try_circular_order(std::size_t count) {
  if (auto error = detail::count_error("count", count, 2)) return *error;
  BoltOrder order(count);
  for (std::size_t i = 0; i < count; ++i) order[i] = i;
  return order;
}

/// From the stiffest place outward, near bolts first: splice plates and many rows, cylinder heads and housings. Of bolts
/// equally far the next is the one farthest from the last, so that sides alternate.
/// \param from  the stiffest place, in m
/// Source: RCSC Specification, commentary, on the order from the most rigid part to the free edges.
inline BoltOrder middle_out_order(const Pattern& pattern, Position from) {
  BoltOrder left(pattern.size());
  for (std::size_t i = 0; i < left.size(); ++i) left[i] = i;
  const auto far = [&](std::size_t i) { return distance(pattern[i], from); };
  std::vector<double> key(left.size());
  for (std::size_t i = 0; i < key.size(); ++i) key[i] = far(i);
  detail::sort_by(left, key);
  BoltOrder order;
  for (std::size_t begin = 0; begin < left.size();) {
    std::size_t end = begin + 1;
    while (end < left.size() && far(left[end]) < far(left[begin]) + least_bolt_distance) ++end;
    std::sort(left.begin() + static_cast<std::ptrdiff_t>(begin), left.begin() + static_cast<std::ptrdiff_t>(end));
    for (; begin < end; ++begin) {
      std::size_t next = begin;
      for (std::size_t i = begin; i < end && !order.empty(); ++i)
        if (distance(pattern[left[i]], pattern[order.back()]) >
            distance(pattern[left[next]], pattern[order.back()]) + least_bolt_distance)
          next = i;
      std::swap(left[begin], left[next]);
      order.push_back(left[begin]);
    }
  }
  return order;
}

/// The same from the centroid.
inline BoltOrder middle_out_order(const Pattern& pattern) { return middle_out_order(pattern, pattern.centroid()); }

/// Labels as written on flanges: going clockwise, the bolt at each place carries the number of its turn. They are not
/// places: "1 9 5" does not mean that the bolt at place 9 is the second.
/// \param labels  each number from 1 to their count once
/// \return the order of places that they mean; or an error if a number is missing, repeated or out of range
inline Outcome<BoltOrder> try_order_from_labels(const std::vector<std::size_t>& labels) {
  if (auto error = detail::count_error("labels", labels.size(), 2)) return *error;
  BoltOrder order(labels.size(), labels.size());
  for (std::size_t place = 0; place < labels.size(); ++place) {
    if (labels[place] < 1 || labels[place] > labels.size() || order[labels[place] - 1] != labels.size())
      return detail::bolt_error("labels", place,
                                "carries a number that is out of range or given twice; number all "
                                "bolts once from 1");
    order[labels[place] - 1] = place;
  }
  return order;
}

/// \return the labels that an order gives to the bolts, going clockwise
inline Outcome<std::vector<std::size_t>> try_labels(const BoltOrder& order) {
  std::vector<std::size_t> from_one;
  for (const std::size_t bolt : order) from_one.push_back(bolt + 1);
  const auto inverse = try_order_from_labels(from_one);
  if (!inverse) return Error("order", "order names a bolt twice or one that is not there; name each bolt once");
  std::vector<std::size_t> labels;
  for (const std::size_t turn : *inverse) labels.push_back(turn + 1);
  return labels;
}

/// Legacy labels, going clockwise: the bolt at each place carries the number of its turn. Read as places they would not
/// be opposite in pairs for 12, 20, 24, 28 and 32 bolts.
/// \param count  4, 8, 12, 16, 20, 24, 28 or 32
/// \return the labels; or an error for another number, for which the crosswise order serves
/// Source: common practice; 8, 12, 16 and 24 agree with a scanned work sheet, the others are from memory.
inline Outcome<std::vector<std::size_t>> try_legacy_labels(std::size_t count) {
  switch (count) {
    case 4: return std::vector<std::size_t>{1, 3, 2, 4};
    case 8: return std::vector<std::size_t>{1, 5, 3, 7, 2, 6, 4, 8};
    case 12: return std::vector<std::size_t>{1, 9, 5, 3, 11, 7, 2, 10, 6, 4, 12, 8};
    case 16: return std::vector<std::size_t>{1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16};
    case 20: return std::vector<std::size_t>{1, 17, 9, 5, 13, 3, 19, 11, 7, 15, 2, 18, 10, 6, 14, 4, 20, 12, 8, 16};
    case 24:
      return std::vector<std::size_t>{1, 9,  17, 5, 13, 21, 3, 11, 19, 7, 15, 23,
                                      2, 10, 18, 6, 14, 22, 4, 12, 20, 8, 16, 24};
    case 28:
      return std::vector<std::size_t>{1, 25, 17, 9,  5, 13, 21, 3, 27, 19, 11, 7, 15, 23,
                                      2, 26, 18, 10, 6, 14, 22, 4, 28, 20, 12, 8, 16, 24};
    case 32:
      return std::vector<std::size_t>{1, 9,  17, 25, 5, 13, 21, 29, 3, 11, 19, 27, 7, 15, 23, 31,
                                      2, 10, 18, 26, 6, 14, 22, 30, 4, 12, 20, 28, 8, 16, 24, 32};
    default:
      return refusal("count", static_cast<double>(count),
                     "but legacy labels are for 4, 8, 12, 16, 20, 24, 28 and 32 bolts; use the crosswise order");
  }
}

/// The order that legacy labels mean.
inline Outcome<BoltOrder> try_legacy_order(std::size_t count) {
  const auto labels = try_legacy_labels(count);
  if (!labels) return labels.error();
  return try_order_from_labels(*labels);
}

/// Bolts of a ring that several tools tighten at once: evenly spread, the sets crosswise.
/// \param count    bolts on the ring
/// \param at_once  tools, a divisor of the count; 2 opposite ones, 4 at right angles
/// \return sets of bolts in working order; or an error for a number that does not divide the count
inline Outcome<std::vector<BoltOrder>> try_sets_at_once(std::size_t count, std::size_t at_once) {
  if (auto error = detail::count_error("count", count, 2)) return *error;
  if (at_once < 1 || at_once > count || count % at_once != 0)
    return refusal("at_once", static_cast<double>(at_once),
                   "but must divide the number of bolts, so that the sets are alike; take 2 or 4");
  std::vector<BoltOrder> sets;
  for (const std::size_t first : detail::crosswise(count / at_once)) {
    BoltOrder& set = sets.emplace_back();
    for (std::size_t i = 0; i < at_once; ++i) set.push_back(first + i * (count / at_once));
  }
  return sets;
}

/// One act of tightening.
struct TighteningStep {
  std::size_t pass = 0;  ///< from 0
  std::size_t bolt = 0;  ///< index from 0
  double share = 1;      ///< of the full torque
};

/// Passes in shares of the torque, and rounds at the full torque in which the joint settles.
/// \param order    of every pass
/// \param shares   of the passes, rising to 1; equal ones are repeats. 0.3, 0.6, 1 is common practice
/// \param rounds   one after another at the full torque, each in its own order; typically one circular
/// \param most     maximum share, 1; above it, up to 1.5, only where the maker's specification asks for more and then the last
///                 share may be above 1
/// \return the steps; or an error for an order that does not name each bolt once, or a share that is not above 0, falls,
///         is above `most`, or a last one below 1
inline Outcome<std::vector<TighteningStep>> try_tightening_plan(const BoltOrder& order,
                                                                const std::vector<double>& shares,
                                                                const std::vector<BoltOrder>& rounds = {},
                                                                double most = 1) {
  if (!(most >= 1 && most <= 1.5))
    return refusal("most", most, "but must be 1 to 1.5; 1 unless the maker's sheet asks for more");
  if (shares.empty()) return Error("shares", "shares is empty; give at least one pass, such as 1");
  double before = 0;
  for (const double share : shares) {
    if (!(share > 0 && share <= most))
      return refusal("shares", share,
                     "but must be above 0, up to 1; the last pass is the full torque, and more only if most says so");
    if (share < before) return refusal("shares", share, "but must not be below the pass before; sort the passes");
    before = share;
  }
  if (before < 1) return refusal("shares", before, "but must end at 1; add a pass at the full torque");
  std::vector<TighteningStep> steps;
  std::size_t pass = 0;
  const auto add = [&](const BoltOrder& bolts, double share) {
    for (const std::size_t bolt : bolts) steps.push_back({pass, bolt, share});
    ++pass;
  };
  if (const auto valid = try_labels(order); !valid) return valid.error();
  for (const BoltOrder& round : rounds) {
    if (const auto valid = try_labels(round); !valid) return valid.error();
    if (round.size() != order.size()) return Error("rounds", "rounds name another number of bolts than the order");
  }
  for (const double share : shares) add(order, share);
  for (const BoltOrder& round : rounds) add(round, before);
  return steps;
}

/// Order of undoing: all bolts are first eased by a quarter turn in `ease`; then the part is supported; then the bolts
/// are taken out in `remove`, whose last two are opposite each other and hold the part to the end.
struct UndoingPlan {
  BoltOrder ease;
  BoltOrder remove;
};

/// \param pattern      the joint
/// \param order        in which it was tightened, or from the outside inward for heads and housings
/// \param pressurised  true where pressure may be trapped: bolts away from the person are eased first, so that the joint
///                     opens away from them
/// \param person       where the person stands, in m; read only with `pressurised`
/// \return the plan; or an error for an order that does not name each bolt once
/// Source: common practice, no source.
inline Outcome<UndoingPlan> try_undoing_plan(const Pattern& pattern, const BoltOrder& order, bool pressurised = false,
                                             Position person = {}) {
  if (const auto valid = try_labels(order); !valid) return valid.error();
  if (order.size() != pattern.size()) return Error("order", "order names another number of bolts than the pattern has");
  if (pressurised && !(std::isfinite(person.x) && std::isfinite(person.y)))
    return Error("person", "person is not a place; give x and y in m");
  UndoingPlan plan;
  plan.ease = order;
  if (pressurised) {
    std::vector<double> nearness;
    for (const Position p : pattern) nearness.push_back(-distance(p, person));
    detail::sort_by(plan.ease, nearness);
  }
  // The upper one of the two that stay lets a hanging part hang instead of tip.
  std::size_t top = 0;
  for (std::size_t i = 1; i < pattern.size(); ++i)
    if (pattern[i].y > pattern[top].y + least_bolt_distance) top = i;
  std::size_t opposite = top == 0 ? 1 : 0;
  for (std::size_t i = 0; i < pattern.size(); ++i)
    if (distance(pattern[i], pattern[top]) > distance(pattern[opposite], pattern[top]) + least_bolt_distance)
      opposite = i;
  for (const std::size_t bolt : plan.ease)
    if (bolt != top && bolt != opposite) plan.remove.push_back(bolt);
  plan.remove.push_back(opposite);
  plan.remove.push_back(top);
  return plan;
}

/// The same for a joint that was tightened crosswise.
inline UndoingPlan undoing_plan(const Pattern& pattern, bool pressurised = false, Position person = {}) {
  return try_undoing_plan(pattern, crosswise_order(pattern), pressurised, person).value();
}

}  // namespace tauten::TAUTEN_ABI
