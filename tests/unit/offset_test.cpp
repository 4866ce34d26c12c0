#include "tauten/tool/offset.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "tauten/tool/chain.hpp"
#include "tauten/tool/offset_error.hpp"

#include "near.hpp"

namespace offset_test {

namespace {

using namespace tauten;

constexpr double degree = 3.14159265358979323846 / 180;

// Statics written apart from the library: forces and moments of plane vectors.
struct Vector {
  double x, y;
};
Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
double moment(Vector about, Vector at, Vector force) {
  const Vector arm = at - about;
  return arm.x * force.y - arm.y * force.x;
}

/// Torque about the fastener per torque that the wrench feels about its drive.
/// The hand pulls to the left of the wrench's direction, leaning back by `lean`; a second hand pushes the head.
double balance(double hand, Vector fastener, double lean, double support_share) {
  const Vector at_hand{-hand, 0};
  const Vector drive{0, 0};
  const Vector pull{-std::tan(lean), 1};
  const Vector support{0, -support_share};
  const double felt = moment(drive, at_hand, pull);  // the support passes through the drive
  return (moment(fastener, at_hand, pull) + moment(fastener, drive, support)) / felt;
}

TEST_CASE("offset: a chain of extensions agrees with a balance of moments by plane vectors") {
  std::mt19937 random(4);
  std::uniform_real_distribution<double> length(0.01, 0.2), angle(-180, 180), hand(0.5, 1.2), share(0, 1);
  int compared = 0;
  for (int trial = 0; trial < 500; ++trial) {
    const double L = hand(random);
    const double q = share(random);
    std::vector<ExtensionLink> links;
    Vector end{0, 0};
    for (int i = 0; i < trial % 4; ++i) {
      const double E = length(random);
      const double a = angle(random) * degree;
      links.push_back({Length(E), Angle(a)});
      end = {end.x + E * std::cos(a), end.y + E * std::sin(a)};
    }
    const double expected = balance(L, end, 0, q);
    if (expected < 0.05) continue;
    const ChainEnd one = chain_end(links);
    const double arrives = TorqueWithSupportHand::eval(50.0, L, one.length.si, one.angle.si, q);
    CHECK(arrives == near(50 * expected).epsilon(1e-12));
    CHECK(SettingWithSupportHand::eval(arrives, L, one.length.si, one.angle.si, q) == near(50));
    ++compared;
  }
  CHECK(compared > 450);
}

TEST_CASE("offset: right angle changes nothing, folded back shortens, a couple makes the extension drop out") {
  CHECK(wrench_setting.si(80.0, 0.4, 0.1, 90 * degree) == near(80));
  CHECK(wrench_setting.si(80.0, 0.4, 0.1, 180 * degree) == near(80 * 0.4 / 0.3));
  CHECK(setting_with_support_hand.si(80.0, 0.4, 0.1, 25 * degree, 1.0) == near(80));
  CHECK(std::isnan(wrench_setting.si(80.0, 0.3, 0.4, 180 * degree)));
  CHECK(std::isnan(torque_at_fastener.si(80.0, 0.3, 0.4, 180 * degree)));
}

TEST_CASE("offset: an error of hand, angle or pull agrees with the balance of moments") {
  for (double L : {0.2, 0.35, 1.0})
    for (double E : {0.02, 0.08, 0.15})
      for (double a = -150; a <= 180; a += 30) {
        const auto end = [&](double angle) {
          return Vector{E * std::cos(angle * degree), E * std::sin(angle * degree)};
        };
        const double right = balance(L, end(a), 0, 0);
        for (double off : {-12.0, -3.0, 4.0, 11.0}) {
          CHECK(1 + HandShiftError::eval(L, E, a * degree, off * 1e-3) ==
                near(balance(L + off * 1e-3, end(a), 0, 0) / right));
          CHECK(1 + ExtensionAngleError::eval(L, E, a * degree, off * degree) ==
                near(balance(L, end(a + off), 0, 0) / right));
          CHECK(1 + PullAngleError::eval(L, E, a * degree, off * degree) ==
                near(balance(L, end(a), off * degree, 0) / right));
        }
      }
}

TEST_CASE("offset: without a lever at the fastener there is no error to speak of") {
  CHECK(std::isnan(hand_shift_error.si(0.3, 0.4, 180 * degree, 0.01)));
  CHECK(std::isnan(extension_angle_error.si(0.3, 0.4, 180 * degree, 0.01)));
  CHECK(std::isnan(pull_angle_error.si(0.3, 0.4, 180 * degree, 0.01)));
  CHECK(std::isnan(hand_shift_error.si(0.3, 0.1, 0.0, -0.3)));                         // the hand above the drive
  CHECK(std::isnan(extension_angle_error.si(0.3, 0.305, 170 * degree, 10 * degree)));  // gone once it is bent further
  CHECK(hand_shift_error.si(0.3, 0.1, 0.0, -0.1) == near(0.1 * 0.1 / (0.2 * 0.4)));
}

TEST_CASE("offset: the hand shift to first order is -E dL/(L(L+E))") {
  const double L = 0.3, E = 0.1, dL = 1e-6;
  CHECK(HandShiftError::eval(L, E, 0.0, dL) == near(-E * dL / (L * (L + E))).epsilon(1e-4));
  CHECK(HandShiftError::eval(L, 0.0, 0.0, 0.05) == near(0));
}

TEST_CASE("offset: the setting falls as the extension grows, and does not depend on the unit of length") {
  double before = 1e9;
  for (double E = 0; E < 0.5; E += 0.05) {
    const double setting = WrenchSetting::eval(100.0, 0.3, E, 20 * degree);
    CHECK(setting < before);
    CHECK(setting == near(WrenchSetting::eval(100.0, 0.3 / 0.0254, E / 0.0254, 20 * degree)));
    before = setting;
  }
}

TEST_CASE("offset: bends at the joints add up to angles from the wrench") {
  const auto links = links_from_bends(
      {{Length(0.1), Angle(30 * degree)}, {Length(0.1), Angle(-30 * degree)}, {Length(0.1), Angle(-90 * degree)}});
  CHECK(links[0].angle.shop() == near(30));
  CHECK(links[1].angle.shop() == near(0));
  CHECK(links[2].angle.shop() == near(-90));
  CHECK(chain_end({}).length.si == 0);
}

TEST_CASE("offset: a link that makes no sense is named") {
  for (double bad : {-0.1, 0.0, 1e9, std::nan("")}) {
    const auto end = try_chain_end({{Length(0.1), Angle(0.0)}, {Length(bad), Angle(0.0)}});
    REQUIRE(!end);
    CHECK(std::string(end.error().argument()) == "extension_2_length");
  }
  const auto end = try_chain_end({{Length(0.1), Angle(HUGE_VAL)}});
  REQUIRE(!end);
  CHECK(std::string(end.error().argument()) == "extension_1_angle");
}

}  // namespace

}  // namespace offset_test
