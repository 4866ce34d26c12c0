#include "tauten/question/reach.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "tauten/explain/page_text.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/reach_page.hpp"

#include "near.hpp"

namespace reach_test {

namespace {

using namespace tauten;

constexpr double degree = 3.14159265358979323846 / 180;

/// The foot of a pump: a nut behind a flange, reached with an offset ring.
ReachJob pump_foot() {
  ReachJob job;
  job.torque = Torque(120.0);
  job.wrench.length = Length(0.4);
  job.extensions = {{Length(0.1), Angle(0.0)}};
  return job;
}

bool has(const std::vector<Notice>& list, const std::string& code) {
  return std::any_of(list.begin(), list.end(), [&](const Notice& n) { return code == n.code && !n.text.empty(); });
}
double range_of(const Reach& reach, const std::string& cause) {
  for (const TorqueContribution& c : reach.contributions)
    if (cause == c.cause) return c.range;
  return 0;
}

TEST_CASE("reach: setting and arriving torque are inverse to each other through every part") {
  for (double angle : {0.0, 40.0, 90.0, 150.0})
    for (double share : {0.0, 0.3, 1.0})
      for (bool geared : {false, true}) {
        ReachJob job = pump_foot();
        job.extensions = {{Length(0.08), Angle(angle * degree)}, {Length(0.03), Angle(-20 * degree)}};
        job.support_share = share;
        job.hand_offset = Length(-0.02);
        if (geared) job.multiplier = TorqueMultiplier{4, 0.92, 0.05, Length(0.3)};
        const Reach there = reach(job);
        job.known = ReachJob::Known::setting;
        job.torque = there.setting;
        const Reach back = reach(job);
        CHECK(back.arrives.nominal.si == near(120));
        CHECK(back.arrives.low.si == near(there.arrives.low.si));
        CHECK(back.hand_force.si == near(there.setting.si / 0.38));
      }
}

TEST_CASE("reach: the band is the root of the sum of squares of range/(2 sqrt 3), worked out by hand") {
  ReachJob job = pump_foot();
  job.wrench.division = Torque(2.0);
  job.tolerances = {Length(0.02), Length(0.001), Angle(0.0), Angle(0.0), 0, 0.02};
  const Reach result = reach(job);
  // In line: setting 120 x 400/500 = 96; scale 8 %; reading 2/96; extension 1 mm of 500 mm both ways; operator 4 %;
  // hand: (L' + E)/L' against (L + E)/L with L' = 380 and 420 mm.
  const double hand = (480.0 / 380 - 520.0 / 420) / (500.0 / 400);
  const double ranges[] = {0.08, 2.0 / 96, 2.0 / 500, hand, 0.04};
  double sum = 0;
  for (double r : ranges) sum += r * r / 12;
  CHECK(result.contributions.size() == 5);
  CHECK(result.setting.si == near(96));
  CHECK(range_of(result, "hand_shift") == near(hand));
  CHECK(result.arrives.high.si == near(120 * (1 + 2 * std::sqrt(sum))));
  CHECK(result.arrives.low.si == near(120 * (1 - 2 * std::sqrt(sum))));
}

TEST_CASE("reach: clamp takes the band of the tool as the accuracy of the wrench") {
  const Reach tool = reach(pump_foot());
  ClampJob joint;
  joint.thread = "M16";
  joint.property_class = "8.8";
  joint.torque = tool.arrives.nominal;
  joint.wrench_accuracy = tool.wrench_accuracy;
  joint.thread_friction = joint.bearing_friction = Band<double>{0.12, 0.12, 0.12};
  const Band<Force> load = clamp(joint).candidates.front().worst_case;
  // With the friction known, the clamp load goes with the torque that arrives.
  CHECK(load.low.si / load.nominal.si == near(tool.arrives.low.si / tool.arrives.nominal.si));
  CHECK(load.high.si / load.nominal.si == near(tool.arrives.high.si / tool.arrives.nominal.si));
}

TEST_CASE("reach: without an extension neither hand nor angle matters") {
  ReachJob job = pump_foot();
  job.extensions.clear();
  const Reach result = reach(job);
  CHECK(result.setting.si == near(120));
  CHECK(result.contributions.size() == 2);
  CHECK(range_of(result, "scale") == near(0.08));
  CHECK(range_of(result, "operator") == near(0.04));
}

TEST_CASE("reach: a couple of two hands makes the extension drop out of setting and band") {
  ReachJob job = pump_foot();
  job.support_share = 1;
  const Reach result = reach(job);
  CHECK(result.setting.si == near(120));
  CHECK(range_of(result, "hand_shift") == 0);
  CHECK(range_of(result, "extension") == 0);
  // A tenth of the pull at 100 mm, against the torque of the pull at 400 mm, both ways.
  CHECK(range_of(result, "support_hand") == near(2 * 0.1 * 0.1 / 0.4));
  CHECK(has(result.notices, "support_hand"));
}

TEST_CASE("reach: longer extensions, more bend and wider tolerances never narrow the band") {
  const auto wide = [](const std::function<void(ReachJob&, double)>& change, double x) {
    ReachJob job = pump_foot();
    change(job, x);
    const Reach result = reach(job);
    return result.arrives.high.si - result.arrives.low.si;
  };
  const std::function<void(ReachJob&, double)> changes[] = {
      [](ReachJob& j, double x) { j.extensions[0].length = Length(0.05 + 0.2 * x); },
      [](ReachJob& j, double x) { j.universal_joint = Angle(0.7 * x); },
      [](ReachJob& j, double x) { j.tolerances.hand = Length(0.1 * x); },
      [](ReachJob& j, double x) { j.tolerances.operator_share = 0.2 * x; },
      [](ReachJob& j, double x) {
        if (x > 0) j.wrench.division = Torque(20 * x);
      },
      [](ReachJob& j, double x) { j.multiplier = TorqueMultiplier{3, 0.9, 0.2 * x}; },
      [](ReachJob& j, double x) { j.tilt = Angle(0.08 * x); },
  };
  for (const auto& change : changes) {
    double before = 0;
    for (double x : {0.0, 0.2, 0.5, 1.0}) {
      CHECK(wide(change, x) >= before);
      before = wide(change, x);
    }
    CHECK(wide(change, 1) > wide(change, 0));
  }
}

TEST_CASE("reach: bars in series, energy and reaction") {
  ReachJob job = pump_foot();
  job.bars = {{DriveBar::Section::square, Length(0.25), Length(12.7e-3), Stress(79e9)},
              {DriveBar::Section::round, Length(0.15), Length(16e-3), Stress(79e9)},
              {DriveBar::Section::hexagon, Length(0.05), Length(14e-3), Stress(79e9)}};
  job.multiplier = TorqueMultiplier{5, 0.9, 0.05, Length(0.5)};
  const Reach result = reach(job);
  double twist = 0;
  twist += 120 * 0.25 / (0.1406 * 79e9 * std::pow(12.7e-3, 4));
  twist += 120 * 0.15 / (79e9 * std::acos(-1.0) / 32 * std::pow(16e-3, 4));
  twist += 120 * 0.05 / (79e9 * 1.0353 / 9 * std::pow(14e-3, 4));
  CHECK(result.twist.si == near(twist));
  CHECK(result.stored_energy.si == near(120 * twist / 2));
  CHECK(result.behind_extension.si == near(120 / 4.5));
  CHECK(result.reaction_torque.si == near(120 - 120 / 4.5));
  CHECK(result.reaction_force.si == near((120 - 120 / 4.5) / 0.5));
  CHECK(has(result.notices, "reaction_arm"));
  CHECK(has(result.notices, "wound_up_bars"));
}

TEST_CASE("reach: what breaks the rule of the lever is refused, with the argument and a way out") {
  struct Refused {
    const char* argument;
    std::function<void(ReachJob&)> change;
  };
  const double nan = std::nan("");
  const Refused cases[] = {
      {"pipe_on_handle", [](ReachJob& j) { j.wrench.pipe_on_handle = true; }},
      {"hinged_handle", [](ReachJob& j) { j.wrench.hinged_handle = true; }},
      {"tilt", [](ReachJob& j) { j.tilt = Angle(6 * degree); }},
      {"tilt", [](ReachJob& j) { j.tilt = Angle(-30 * degree); }},
      {"extensions", [](ReachJob& j) { j.extensions = {{Length(0.4), Angle(180 * degree)}}; }},
      {"extensions", [](ReachJob& j) { j.extensions = {{Length(0.6), Angle(180 * degree)}}; }},
      {"extensions",
       [](ReachJob& j) { j.extensions = {{Length(0.2), Angle(180 * degree)}, {Length(0.2), Angle(-180 * degree)}}; }},
      {"universal_joint", [](ReachJob& j) { j.universal_joint = Angle(50 * degree); }},
      {"torque", [](ReachJob& j) { j.torque = Torque(0.0); }},
      {"torque", [](ReachJob& j) { j.torque = Torque(-5.0); }},
      {"torque", [nan](ReachJob& j) { j.torque = Torque(nan); }},
      {"torque", [](ReachJob& j) { j.torque = Torque(HUGE_VAL); }},
      {"setting", [](ReachJob& j) { j.known = ReachJob::Known::setting, j.torque = Torque(-1.0); }},
      {"wrench_length", [](ReachJob& j) { j.wrench.length = Length(0.0); }},
      {"wrench_length", [nan](ReachJob& j) { j.wrench.length = Length(nan); }},
      {"extension_1_length", [](ReachJob& j) { j.extensions[0].length = Length(-0.1); }},
      {"hand_offset", [](ReachJob& j) { j.hand_offset = Length(-0.4); }},
      {"support_share", [](ReachJob& j) { j.support_share = 1.5; }},
      {"wrench_class", [](ReachJob& j) { j.wrench.class_letter = 'Z'; }},
      {"wrench_class", [](ReachJob& j) { j.wrench.class_letter = '\n'; }},
      {"multiplier_ratio", [](ReachJob& j) { j.multiplier = TorqueMultiplier{0, 1, 0}; }},
      {"multiplier_ratio", [](ReachJob& j) { j.multiplier = TorqueMultiplier{0.5, 1, 0}; }},
      {"tolerance_extension_angle",
       [](ReachJob& j) {
         j.extensions = {{Length(0.97 * j.wrench.length.si), Angle(150 * degree)}};
         j.tolerances.extension_angle = Angle(40 * degree);
       }},
      {"multiplier_efficiency", [](ReachJob& j) { j.multiplier = TorqueMultiplier{4, 1.2, 0}; }},
      {"multiplier_efficiency", [](ReachJob& j) { j.multiplier = TorqueMultiplier{4, 0.24, 0}; }},
      {"efficiency_range", [](ReachJob& j) { j.multiplier = TorqueMultiplier{4, 0.3, 0.31}; }},
      {"division", [](ReachJob& j) { j.wrench.division = Torque(150.0); }},
      {"bar_size", [](ReachJob& j) { j.bars = {{DriveBar::Section::round, Length(0.1), Length(0.0), Stress(79e9)}}; }},
      // No steel: 130 N.m over pi d^3/12, a^3/3 and s^3/(2 sqrt 3) is above 2 GPa for 6 mm.
      {"bar_size", [](ReachJob& j) { j.bars = {{DriveBar::Section::round, Length(0.1), Length(6e-3), Stress(79e9)}}; }},
      {"bar_size",
       [](ReachJob& j) { j.bars = {{DriveBar::Section::square, Length(0.1), Length(5e-3), Stress(79e9)}}; }},
      {"bar_size",
       [](ReachJob& j) { j.bars = {{DriveBar::Section::hexagon, Length(0.1), Length(6e-3), Stress(79e9)}}; }},
      {"tolerance_hand", [](ReachJob& j) { j.tolerances.hand = Length(0.6 * j.wrench.length.si); }},
      {"tolerance_hand",
       [](ReachJob& j) {  // the hand stands inside the mark: half of what is left is the most
         j.hand_offset = Length(-0.5 * j.wrench.length.si);
         j.tolerances.hand = Length(0.3 * j.wrench.length.si);
       }},
      {"tolerance_operator", [nan](ReachJob& j) { j.tolerances.operator_share = nan; }},
  };
  for (const Refused& refused : cases) {
    ReachJob job = pump_foot();
    refused.change(job);
    CAPTURE(refused.argument);
    const auto result = try_reach(job);
    REQUIRE(!result);
    CHECK(std::string(result.error().argument()) == refused.argument);
    // After the semicolon stands what to do.
    CHECK(std::string(result.error().what()).find(';') != std::string::npos);
    CHECK_THROWS_AS(reach(job), Error);
  }
  ReachJob hinged = pump_foot();
  hinged.extensions.clear();
  hinged.wrench.hinged_handle = true;
  CHECK(has(reach(hinged).notices, "hinged_handle"));
}

TEST_CASE("reach: bars that steel can bear are let pass") {
  for (const auto section : {DriveBar::Section::round, DriveBar::Section::square, DriveBar::Section::hexagon}) {
    ReachJob job = pump_foot();  // 130 N.m on 10 mm: below 1 GPa in each section
    job.bars = {{section, Length(0.1), Length(10e-3), Stress(79e9)}};
    CHECK(try_reach(job));
  }
}

TEST_CASE("reach: the page recommends no wrench that `clamp` refuses") {
  ReachJob job = pump_foot();
  for (const double share : {0.02, 0.6}) {
    job.tolerances.operator_share = share;
    const Reach found = reach(job);
    const std::string page = page_text(page_of(job, found));
    CHECK((found.wrench_accuracy > maximum_wrench_accuracy) == (share > 0.5));
    CHECK((page.find("--wrench-accuracy") == std::string::npos) == (share > 0.5));
    CHECK((page.find("Do not tighten with this line of tools") != std::string::npos) == (share > 0.5));
  }
}

TEST_CASE("reach: an extension folds back until a tenth of the wrench is left as its lever") {
  ReachJob job = pump_foot();
  job.tolerances.extension_angle = Angle(0.0);
  job.extensions = {{Length(0.355), Angle(180 * degree)}};  // 45 mm of 400
  CHECK(try_reach(job));
  job.extensions[0].length = Length(0.365);  // 35 mm
  const auto refused = try_reach(job);
  REQUIRE(!refused);
  CHECK(std::string(refused.error().what()).find("is 35 mm, but it must be at least 40 mm") != std::string::npos);
}

TEST_CASE("reach: warnings come where they apply and stay away where not") {
  struct Warned {
    const char* code;
    std::function<void(ReachJob&)> change;
  };
  const Warned cases[] = {
      {"folded_back", [](ReachJob& j) { j.extensions[0].angle = Angle(150 * degree); }},
      {"hand_off_mark", [](ReachJob& j) { j.hand_offset = Length(0.03); }},
      {"tilted", [](ReachJob& j) { j.tilt = Angle(3 * degree); }},
      {"universal_joint_bend", [](ReachJob& j) { j.universal_joint = Angle(25 * degree); }},
      {"universal_joint_and_extension", [](ReachJob& j) { j.universal_joint = Angle(5 * degree); }},
      {"setting_above_scale", [](ReachJob& j) { j.wrench.scale_high = Torque(90.0); }},
      {"setting_below_scale", [](ReachJob& j) { j.wrench.scale_low = Torque(100.0); }},
      {"setting_low_on_scale", [](ReachJob& j) { j.wrench.scale_high = Torque(1000.0); }},
      {"hand_force", [](ReachJob& j) { j.torque = Torque(400.0); }},
      {"drive_overloaded", [](ReachJob& j) { j.drive_square = Length(6.3e-3); }},
      {"drive_unknown", [](ReachJob& j) { j.drive_square = Length(15e-3); }},
      {"bar_twist",
       [](ReachJob& j) { j.bars = {{DriveBar::Section::square, Length(0.4), Length(9.5e-3), Stress(79e9)}}; }},
  };
  for (const Warned& warned : cases) {
    ReachJob job = pump_foot();
    CAPTURE(warned.code);
    CHECK_FALSE(has(reach(job).notices, warned.code));
    warned.change(job);
    CHECK(has(reach(job).notices, warned.code));
  }
  for (const char* code : {"line_of_slip", "eye_protection", "no_pipe", "no_release"})
    CHECK(has(reach(pump_foot()).notices, code));
  ReachJob couple = pump_foot();
  couple.extensions[0].angle = Angle(150 * degree);
  couple.support_share = 1;
  CHECK_FALSE(has(reach(couple).notices, "folded_back"));  // two hands turn it whatever lies between
  ReachJob job = pump_foot();
  job.multiplier = TorqueMultiplier{4, 0.9, 0.05, Length(0.3)};
  job.bars = {{DriveBar::Section::square, Length(0.4), Length(9.5e-3), Stress(79e9)}};
  CHECK(has(reach(job).notices, "reaction_arm"));
  CHECK(has(reach(job).notices, "wound_up_bars"));
}

TEST_CASE("accuracy: small wrenches and bar types have the wider deviation") {
  const auto deviation = [](WrenchType type, char letter, double greatest) {
    return permissible_deviation(*try_wrench_class(type, letter), Torque(greatest));
  };
  CHECK(deviation(WrenchType::setting, 'A', 200) == 0.04);
  CHECK(deviation(WrenchType::setting, 'A', 10) == 0.06);
  CHECK(deviation(WrenchType::setting, 'A', 0) == 0.04);
  CHECK(deviation(WrenchType::indicating, 'A', 200) == 0.06);
  CHECK(deviation(WrenchType::setting, 'G', 200) == 0.06);
  CHECK_FALSE(try_wrench_class(WrenchType::indicating, 'F'));
}

}  // namespace

}  // namespace reach_test
