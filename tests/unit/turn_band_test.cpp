// The bands of a turn, by first-order propagation, against a simulation of the same inputs.
#include <doctest/doctest.h>

#include <cmath>

#include "tauten/question/turn.hpp"
#include "tauten/question/turn_uncertainty.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"
#include "tauten/units.hpp"

namespace turn_band_test {

using namespace tauten;
using namespace tauten::literals;

TEST_CASE("turn: the band of 19 in 20 lies within 2 % of a simulation, below yield and beyond") {
  struct Case {
    const char* property_class;
    double snug;
    double degrees;
  };
  for (const auto& [name, snug, degrees] :
       {Case{"8.8", 60, 15}, {"8.8", 60, 45}, {"8.8", 60, 120}, {"10.9", 60, 60}, {"5.6", 30, 60}}) {
    CAPTURE(name);
    CAPTURE(degrees);
    TurnJob job;
    job.thread = "M16";
    job.property_class = name;
    job.condition = "oiled";
    job.length = 80.0_mm;
    job.layers = {{.thickness = 20.0_mm, .material = "grey cast iron", .outer_diameter = 70.0_mm},
                  {.thickness = 35.0_mm, .outer_diameter = 70.0_mm}};
    job.snug_torque = Torque(snug);
    job.angle = Angle(degrees * 3.14159265358979323846 / 180);
    const TurnAnswer a = turn(job);
    const UncertaintyQuestion asked = turn_question(job, a);
    // Thread and face are oiled alike: they rub much or little together.
    const JointDistribution inputs = try_joint(asked, {}, {{"thread_friction", "bearing_friction", 1}}).value();
    const MonteCarlo run = monte_carlo(asked.outputs.front(), inputs, {.trials = 2000});
    const double middle = run.quantile(0.5);
    CHECK(std::fabs(a.clamp_load.nominal.si - middle) < 0.02 * middle);
    CHECK(std::fabs(a.clamp_load.low.si - run.symmetric.low) < 0.02 * middle);
    CHECK(std::fabs(a.clamp_load.high.si - run.symmetric.high) < 0.02 * middle);
    CHECK(a.worst_case.low < a.clamp_load.low);
    // 19 in 20 by count as well.
    const double inside = run.chance_below(a.clamp_load.high.si) - run.chance_below(a.clamp_load.low.si);
    CHECK(inside > 0.93);
    CHECK(inside < 0.985);
  }
}

}  // namespace turn_band_test
