#include "tauten/group/sequence.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <set>

namespace group_sequence_test {

namespace {

using namespace tauten;

BoltOrder from_one(BoltOrder order) {
  for (std::size_t& bolt : order) ++bolt;
  return order;
}

TEST_CASE("group sequence: crosswise orders of common practice") {
  // ASME PCC-1 style as in common use, from memory; 4, 8 and 16 agree with a scanned sheet.
  CHECK(from_one(try_crosswise_order(4).value()) == BoltOrder{1, 3, 2, 4});
  CHECK(from_one(try_crosswise_order(6).value()) == BoltOrder{1, 4, 2, 5, 3, 6});
  CHECK(from_one(try_crosswise_order(8).value()) == BoltOrder{1, 5, 3, 7, 2, 6, 4, 8});
  CHECK(from_one(try_crosswise_order(5).value()) == BoltOrder{1, 3, 5, 2, 4});
  CHECK(from_one(try_crosswise_order(16).value()) == BoltOrder{1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16});
  CHECK(from_one(try_crosswise_order(24).value()) ==
        BoltOrder{1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6, 18, 12, 24});
}

TEST_CASE("group sequence: every count meets every bolt once, opposite ones in turn") {
  for (std::size_t n = 2; n <= 200; ++n) {
    const BoltOrder order = try_crosswise_order(n).value();
    CHECK(std::set<std::size_t>(order.begin(), order.end()).size() == n);
    for (std::size_t i = 0; n % 2 == 0 && i < n; i += 2) CHECK((order[i] + n / 2) % n == order[i + 1]);
    if (n % 4 == 0) CHECK((order[0] + n / 4) % n == order[2]);  // the second pair at right angles
  }
  CHECK_FALSE(try_crosswise_order(1));
  CHECK_FALSE(try_crosswise_order(1000000));
}

TEST_CASE("group sequence: legacy labels go clockwise and mean opposite pairs") {
  // Lists from memory; 8, 12, 16 and 24 agree with a scanned sheet. Read as labels all pairs are opposite.
  const std::vector<std::vector<std::size_t>> lists{
      {1, 3, 2, 4},
      {1, 5, 3, 7, 2, 6, 4, 8},
      {1, 9, 5, 3, 11, 7, 2, 10, 6, 4, 12, 8},
      {1, 17, 9, 5, 13, 3, 19, 11, 7, 15, 2, 18, 10, 6, 14, 4, 20, 12, 8, 16},
      {1, 9, 17, 5, 13, 21, 3, 11, 19, 7, 15, 23, 2, 10, 18, 6, 14, 22, 4, 12, 20, 8, 16, 24}};
  for (const auto& labels : lists) {
    const std::size_t n = labels.size();
    const BoltOrder order = try_order_from_labels(labels).value();
    for (std::size_t i = 0; i < n; i += 2) CHECK((order[i] + n / 2) % n == order[i + 1]);
    CHECK(try_labels(order).value() == labels);
  }
  CHECK(from_one(try_order_from_labels(lists[2]).value()) == BoltOrder{1, 7, 4, 10, 3, 9, 6, 12, 2, 8, 5, 11});
  CHECK_FALSE(try_order_from_labels({1, 2, 2}));
  CHECK_FALSE(try_order_from_labels({0, 1, 2}));
  CHECK_FALSE(try_order_from_labels({1, 2, 4}));
  CHECK_FALSE(try_labels({0, 0}));
}

TEST_CASE("group sequence: patterns that are not circles") {
  const Pattern feet = try_rectangle_pattern(Length(0.2), Length(0.1)).value();
  CHECK(crosswise_order(feet) == BoltOrder{0, 2, 1, 3});
  // Positions in any order: opposite corners all the same.
  const Pattern rows = try_grid_pattern(2, 2, Length(0.2), Length(0.1)).value();
  CHECK(crosswise_order(rows) == BoltOrder{0, 3, 1, 2});
  const Pattern line = try_line_pattern(5, Length(0.1)).value();
  CHECK(middle_out_order(line) == BoltOrder{2, 1, 3, 0, 4});
  CHECK(middle_out_order(line, line[0]) == BoltOrder{0, 1, 2, 3, 4});
  const Pattern splice = try_grid_pattern(4, 6, Length(0.07), Length(0.07)).value();
  const BoltOrder order = middle_out_order(splice);
  CHECK(std::set<std::size_t>(order.begin(), order.end()).size() == 24);
  for (std::size_t i = 1; i < order.size(); ++i)
    CHECK(distance(splice[order[i]], {}) > distance(splice[order[i - 1]], {}) - 1e-5);
  CHECK(distance(splice[order[0]], splice[order[1]]) > 0.098);  // across the middle: 70 mm by root 2
}

TEST_CASE("group sequence: passes rise to the full torque") {
  const BoltOrder cross = try_crosswise_order(4).value();
  const auto plan = try_tightening_plan(cross, {0.3, 0.6, 1, 1}, {try_circular_order(4).value()}).value();
  REQUIRE(plan.size() == 20);
  CHECK(plan[5].pass == 1);
  CHECK(plan[5].bolt == 2);
  CHECK(plan[5].share == 0.6);
  CHECK(plan[19].bolt == 3);
  CHECK(plan[19].pass == 4);
  CHECK_FALSE(try_tightening_plan(cross, {}));
  CHECK_FALSE(try_tightening_plan(cross, {-0.3, 1}));
  CHECK_FALSE(try_tightening_plan(cross, {0.3, 1.01}));
  CHECK_FALSE(try_tightening_plan(cross, {0.3, 0.9}));
  CHECK_FALSE(try_tightening_plan(cross, {0.6, 0.3, 1}));
  CHECK_FALSE(try_tightening_plan(cross, {std::numeric_limits<double>::quiet_NaN(), 1}));
  CHECK_FALSE(try_tightening_plan({0, 1, 1}, {1}));
  CHECK_FALSE(try_tightening_plan(cross, {1}, {{0, 1}}));
}

TEST_CASE("group sequence: undoing leaves two opposite bolts for last and lets pressure open away") {
  const Pattern flange = try_circle_pattern(8, Length(0.16)).value();
  const UndoingPlan plan = undoing_plan(flange);
  CHECK(plan.ease == try_crosswise_order(8).value());
  CHECK(plan.remove.size() == 8);
  CHECK(plan.remove[7] == 0);  // at the top
  CHECK(plan.remove[6] == 4);  // opposite
  const Position person{0.5, 0.02};
  const UndoingPlan pressure = undoing_plan(flange, true, person);
  for (std::size_t i = 1; i < 8; ++i)
    CHECK(distance(flange[pressure.ease[i]], person) <= distance(flange[pressure.ease[i - 1]], person));
  CHECK(std::set<std::size_t>(pressure.remove.begin(), pressure.remove.end()).size() == 8);
}

TEST_CASE("group sequence: legacy labels are labels, and read so every pair is opposite") {
  // Positions in working order of the collection's notes, worked out there from the labels.
  const std::vector<std::size_t> twelve{1, 7, 4, 10, 3, 9, 6, 12, 2, 8, 5, 11};
  const std::vector<std::size_t> twenty{1, 11, 6, 16, 4, 14, 9, 19, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17};
  const std::vector<std::size_t> twenty_four{1, 13, 7,  19, 4, 16, 10, 22, 2, 14, 8,  20,
                                             5, 17, 11, 23, 3, 15, 9,  21, 6, 18, 12, 24};
  for (const auto& places : {twelve, twenty, twenty_four}) {
    const BoltOrder order = try_legacy_order(places.size()).value();
    for (std::size_t i = 0; i < order.size(); ++i) CHECK(order[i] + 1 == places[i]);
  }
  for (std::size_t count = 4; count <= 32; count += 4) {
    const BoltOrder order = try_legacy_order(count).value();
    for (std::size_t i = 0; i < count; i += 2) CHECK((order[i] + count / 2) % count == order[i + 1]);
    CHECK(try_labels(order).value() == try_legacy_labels(count).value());
    // 4, 8 and 16 are the same as places and as labels, and are the crosswise order.
    std::vector<std::size_t> as_places;
    for (const std::size_t label : try_legacy_labels(count).value()) as_places.push_back(label - 1);
    const bool alike = count == 4 || count == 8 || count == 16;
    CHECK((as_places == order) == alike);
    if (alike) CHECK(order == try_crosswise_order(count).value());
  }
  for (const std::size_t count : {0U, 6U, 10U, 36U}) CHECK_FALSE(try_legacy_order(count));
}

TEST_CASE("group sequence: several bolts at once, more than the torque, and undoing from the outside inward") {
  for (std::size_t count = 2; count <= 36; ++count)
    for (std::size_t tools = 1; tools <= count; ++tools) {
      const auto sets = try_sets_at_once(count, tools);
      CHECK(static_cast<bool>(sets) == (count % tools == 0));
      if (!sets) continue;
      std::set<std::size_t> all;
      for (const BoltOrder& set : *sets) {
        CHECK(set.size() == tools);
        for (std::size_t i = 1; i < tools; ++i) CHECK(set[i] - set[i - 1] == count / tools);
        all.insert(set.begin(), set.end());
      }
      CHECK(all.size() == count);
    }
  CHECK(try_sets_at_once(8, 2).value() == std::vector<BoltOrder>{{0, 4}, {2, 6}, {1, 5}, {3, 7}});
  CHECK_FALSE(try_sets_at_once(8, 0));
  const BoltOrder cross = try_crosswise_order(4).value();
  CHECK(try_tightening_plan(cross, {0.3, 1, 1.1}, {cross}, 1.1).value().back().share == 1.1);
  CHECK_FALSE(try_tightening_plan(cross, {0.3, 1.2}, {}, 1.1));
  CHECK_FALSE(try_tightening_plan(cross, {1}, {}, 2));
  const Pattern head = try_grid_pattern(5, 2, Length(0.1), Length(0.12)).value();
  BoltOrder inward = middle_out_order(head);
  std::reverse(inward.begin(), inward.end());
  const UndoingPlan plan = try_undoing_plan(head, inward).value();
  CHECK(plan.ease == inward);
  CHECK(distance(head[plan.ease.front()], {}) > distance(head[plan.ease.back()], {}));
  CHECK_FALSE(try_undoing_plan(head, cross));
  CHECK_FALSE(try_undoing_plan(head, BoltOrder(10, 0)));
}

}  // namespace

}  // namespace group_sequence_test
