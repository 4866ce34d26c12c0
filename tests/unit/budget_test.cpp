// First-order propagation against hand calculation and the worked example of the mass calibration.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "shared/registry.hpp"
#include "tauten/formulas.hpp"
#include "tauten/uncertainty/budget.hpp"
#include "tauten/uncertainty/formula_model.hpp"

#include "near.hpp"

namespace budget_test {

using namespace tauten;

namespace {

Model linear() {
  return model_of<3>({"y"}, {{{"a"}, {"b"}, {"c"}}}, [](auto x) { return 2 * x[0] - 3 * x[1] + x[2]; });
}
const std::vector<InputDistribution> spreads{
    {"a", Distribution::normal(1, 0.3)}, {"b", Distribution::uniform(-0.2, 0.2)}, {"c", 5.0}};

}  // namespace

TEST_CASE("independent inputs add by their squares") {
  const Budget b = budget(linear(), joint_distribution(linear(), spreads));
  const double part_a = 2 * 0.3, part_b = 3 * 0.2 / std::sqrt(3.0);
  CHECK(b.value == near(7));
  CHECK(b.standard_uncertainty == near(std::hypot(part_a, part_b)).epsilon(1e-14));
  CHECK(b.expanded_uncertainty == near(2 * b.standard_uncertainty));
  CHECK(b.contributions[0].sensitivity == near(2));
  CHECK(b.contributions[1].contribution == near(-part_b));
  CHECK(b.contributions[0].share == near(part_a * part_a / (part_a * part_a + part_b * part_b)));
  CHECK(b.contributions[2].share == 0);
}

TEST_CASE("correlated inputs add with their signs") {
  const double part_a = 2 * 0.3, part_b = -3 * 0.2 / std::sqrt(3.0);
  for (const double r : {-1.0, -0.4, 0.4, 1.0}) {
    const Budget b = budget(linear(), joint_distribution(linear(), spreads, {{"a", "b", r}}), 1.96);
    // One is normal, the other uniform: the mean of z times the chance below z is 1/(2 sqrt pi), so that their own
    // coefficient is that of the copula times sqrt(3/pi).
    const double ordinary = r * std::sqrt(3 / 3.14159265358979323846);
    const double variance = part_a * part_a + part_b * part_b + 2 * ordinary * part_a * part_b;
    CHECK(b.standard_uncertainty == near(std::sqrt(variance)).epsilon(1e-6));
    CHECK(b.expanded_uncertainty == near(1.96 * std::sqrt(variance)).epsilon(1e-6));
    double shares = 0;
    for (const Contribution& line : b.contributions) shares += line.share;
    CHECK(shares == near(1));
  }
}

TEST_CASE("the budget takes the correlation of the inputs, not that of the normal numbers behind them") {
  const Model sum = model_of<2>({"y"}, {{{"a"}, {"b"}}}, [](auto x) { return x[0] + x[1]; });
  const double pi_value = 3.14159265358979323846;
  for (const double r : {-0.8, -0.3, 0.5, 0.9}) {
    // Two uniform inputs: 6/pi asin(r/2). Their normal numbers are cut at 6 deviations, which costs nothing here.
    const Distribution flat = Distribution::uniform(0, 1);
    const double ordinary = 6 / pi_value * std::asin(r / 2);
    const JointDistribution flats = joint_distribution(sum, {{"a", flat}, {"b", flat}}, {{"a", "b", r}});
    CHECK(flats.input_correlation(0, 1) == near(ordinary).epsilon(1e-4));
    CHECK(budget(sum, flats).standard_uncertainty == near(std::sqrt((2 + 2 * ordinary) / 12)).epsilon(1e-4));
    // Two lognormal inputs: (exp(r s^2) - 1)/(exp(s^2) - 1).
    const double v = 0.6, s2 = std::log1p(v * v);
    const Distribution skew = Distribution::lognormal(2, v);
    const JointDistribution skews = joint_distribution(sum, {{"a", skew}, {"b", skew}}, {{"a", "b", r}});
    CHECK(skews.input_correlation(0, 1) == near((std::exp(r * s2) - 1) / (std::exp(s2) - 1)).epsilon(1e-3));
    const Distribution bell = Distribution::normal(0, 1);
    CHECK(joint_distribution(sum, {{"a", bell}, {"b", bell}}, {{"a", "b", r}}).input_correlation(0, 1) == r);
  }
  const JointDistribution together = joint_distribution(
      sum, {{"a", Distribution::uniform(0, 1)}, {"b", Distribution::uniform(2, 4)}}, {{"a", "b", 1}});
  CHECK(together.input_correlation(0, 1) == near(1));
}

TEST_CASE("inputs that cancel leave nothing") {
  const Model difference = model_of<2>({"y"}, {{{"a"}, {"b"}}}, [](auto x) { return x[0] - x[1]; });
  const Distribution d = Distribution::normal(0.1, 0.1);
  const Budget b = budget(difference, joint_distribution(difference, {{"a", d}, {"b", d}}, {{"a", "b", 1}}));
  CHECK(b.standard_uncertainty < 1e-8);
}

TEST_CASE("mass calibration to first order: JCGM 101:2008, 9.3, printed 0.0539 mg (from memory)") {
  // The names are those of the example: conventional masses in mg, densities in kg/m3.
  const Model mass = model_of<5>({"dm"}, {{{"m_R"}, {"dm_R"}, {"rho_a"}, {"rho_W"}, {"rho_R"}}}, [](auto x) {
    return (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100000;
  });
  const Budget b = budget(mass, joint_distribution(mass, {{"m_R", Distribution::normal(100000, 0.05)},
                                                          {"dm_R", Distribution::normal(1.234, 0.02)},
                                                          {"rho_a", Distribution::uniform(1.1, 1.3)},
                                                          {"rho_W", Distribution::uniform(7000, 9000)},
                                                          {"rho_R", Distribution::uniform(7950, 8050)}}));
  CHECK(std::round(b.standard_uncertainty * 1e4) / 1e4 == near(0.0539).epsilon(1e-12));
  CHECK(b.value == near(1.234).epsilon(1e-9));
}

TEST_CASE("relative uncertainties of a product add by their squares, with a formula of the registry") {
  // T = K F d: (u(T)/T)^2 = (u(K)/K)^2 + (u(F)/F)^2 + (u(d)/d)^2.
  const Model model = formula_model(shared::registry(), "torque_from_nut_factor");
  const Budget b = budget(model, joint_distribution(model, {{"nut_factor", Distribution::normal(0.18, 0.018)},
                                                            {"preload", Distribution::normal(25e3, 1e3)},
                                                            {"diameter", Distribution::normal(10e-3, 0.05e-3)}}));
  CHECK(b.standard_uncertainty / b.value == near(std::sqrt(0.1 * 0.1 + 0.04 * 0.04 + 0.005 * 0.005)));
  CHECK(b.output == "torque");
}

TEST_CASE("the coverage factor of a normal distribution") {
  CHECK(coverage_factor(0.95) == near(1.959964).epsilon(1e-6));
  CHECK(coverage_factor(0.9545) == near(2.0000).epsilon(1e-4));
}

TEST_CASE("a budget that cannot be is refused") {
  const Model model = formula_model(shared::registry(), "bearing_torque");
  const auto joint = [&](double mu) {
    return joint_distribution(
        model, {{"preload", 1e3}, {"bearing_friction", Distribution::normal(mu, 0.01)}, {"bearing_diameter", 12e-3}});
  };
  CHECK(try_budget(model, joint(0.1)));
  CHECK(std::string(try_budget(model, joint(-0.1)).error().argument()) == "inputs");
  CHECK(std::string(try_budget(model, joint(0.1), 0).error().argument()) == "coverage_factor");
  CHECK(std::string(try_budget(linear(), JointDistribution{}).error().argument()) == "inputs");
}

}  // namespace budget_test
