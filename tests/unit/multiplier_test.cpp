#include "tauten/tool/multiplier.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "near.hpp"

namespace multiplier_test {

namespace {

using namespace tauten;

TEST_CASE("multiplier: power in is power out and loss; the two torques are inverse to each other") {
  for (double ratio : {3.0, 5.0, 25.0})
    for (double efficiency : {0.81, 0.9, 1.0}) {
      const double in = 60;
      const double out = multiplier_output.si(in, ratio, efficiency);
      // The output turns 1/ratio of the input's angle.
      CHECK(out * (1 / ratio) == near(in * efficiency));
      CHECK(multiplier_input.si(out, ratio, efficiency) == near(in));
      // Moments on the housing: input and reaction together balance the fastener.
      CHECK(in + multiplier_reaction.si(in, out) - out == near(0));
    }
  CHECK(std::isnan(multiplier_output.si(60.0, 4.0, 0.0)));
  CHECK(std::isnan(multiplier_output.si(60.0, 4.0, 1.1)));
}

TEST_CASE("multiplier: force at the arm and hold on the other side") {
  CHECK(reaction_force.si(240.0, 0.3) * 0.3 == near(240));
  CHECK(counter_hold_torque.si(100.0, 55.0) + 55 == near(100));
  // More friction under the nut than torque on it: the inputs do not belong together.
  CHECK(std::isnan(counter_hold_torque.si(40.0, 55.0)));
}

}  // namespace

}  // namespace multiplier_test
