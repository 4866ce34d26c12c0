// Chains of formulas against the same formulas called by hand and against differences.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "shared/registry.hpp"
#include "tauten/uncertainty/formula_model.hpp"

#include "near.hpp"

namespace formula_model_test {

using namespace tauten;

namespace {

const std::vector<Link> utilisation_chain{{"preload_from_torque"}, {"thread_torque"}, {"yield_utilisation"}};

std::vector<std::string> names_of(const Model& model) {
  std::vector<std::string> names;
  for (const Variable& v : model.inputs) names.push_back(v.name);
  return names;
}

// M10 of class 10.9 at 48 N.m.
const double m10[] = {48, 1.5e-3, 9.026e-3, 0.12, 0.14, 12.8e-3, 8.593e-3, 940e6};

}  // namespace

TEST_CASE("every formula of the registry is a model") {
  for (const Entry& entry : shared::registry()) {
    CAPTURE(entry.name);
    const auto model = try_formula_model(shared::registry(), entry.name);
    REQUIRE(model);
    CHECK(model->inputs.size() == entry.inputs.size());
    CHECK(model->output.name == entry.output.name);
    CHECK(model->output.dimension == entry.output.dimension);
  }
}

TEST_CASE("a chain joins results and inputs by name") {
  const Model model = chain_model(shared::registry(), utilisation_chain);
  CHECK(names_of(model) == std::vector<std::string>{"torque", "pitch", "pitch_diameter", "thread_friction",
                                                    "bearing_friction", "bearing_diameter", "stress_diameter",
                                                    "yield_strength"});
  const double load = 48 / (1.5e-3 / (2 * M_PI) + 0.12 * 9.026e-3 / (2 * std::cos(M_PI / 6)) + 0.14 * 12.8e-3 / 2);
  const double twist = load * (1.5e-3 / (2 * M_PI) + 0.12 * 9.026e-3 / (2 * std::cos(M_PI / 6)));
  const double tension = load / (M_PI / 4 * std::pow(8.593e-3, 2));
  const double shear = twist / (M_PI / 12 * std::pow(8.593e-3, 3));
  CHECK(model.value(m10) == near(std::hypot(tension, std::sqrt(3.0) * shear) / 940e6).epsilon(1e-12));
}

TEST_CASE("the derivatives of a chain are those of the whole") {
  const Model model = chain_model(shared::registry(), utilisation_chain);
  double slopes[8] = {}, scale[8] = {};
  const double value = model.gradient(m10, scale, slopes);
  CHECK(value == near(model.value(m10)).epsilon(1e-14));
  for (std::size_t i = 0; i < 8; ++i) {
    CAPTURE(i);
    double up[8], down[8];
    std::copy(m10, m10 + 8, up);
    std::copy(m10, m10 + 8, down);
    up[i] *= 1 + 1e-5;
    down[i] *= 1 - 1e-5;
    CHECK(slopes[i] == near((model.value(up) - model.value(down)) / (2e-5 * m10[i])).epsilon(1e-7));
  }
}

TEST_CASE("many rows are many single values, also where a value is missing") {
  const Model model = chain_model(shared::registry(), utilisation_chain);
  constexpr std::size_t rows = 700;
  std::vector<std::vector<double>> columns(8, std::vector<double>(rows));
  std::vector<const double*> at;
  for (std::size_t i = 0; i < 8; ++i) {
    for (std::size_t row = 0; row < rows; ++row)
      columns[i][row] = m10[i] * (1 + 1e-4 * static_cast<double>(row * (i + 1) % 100));
    at.push_back(columns[i].data());
  }
  columns[3][123] = -0.1;
  std::vector<double> y(rows);
  model.rows(at.data(), y.data(), rows);
  for (std::size_t row = 0; row < rows; ++row) {
    double x[8];
    for (std::size_t i = 0; i < 8; ++i) x[i] = columns[i][row];
    if (row == 123)
      CHECK(std::isnan(y[row]));
    else
      CHECK(y[row] == near(model.value(x)).epsilon(1e-14));
  }
}

TEST_CASE("from the thread alone: results feed several later formulas") {
  const Model model = chain_model(
      shared::registry(),
      {{"pitch_diameter"}, {"stress_diameter"}, {"preload_from_torque"}, {"thread_torque"}, {"yield_utilisation"}});
  CHECK(names_of(model) == std::vector<std::string>{"diameter", "pitch", "torque", "thread_friction",
                                                    "bearing_friction", "bearing_diameter", "yield_strength"});
  const double x[] = {10e-3, 1.5e-3, 48, 0.12, 0.14, 12.8e-3, 940e6};
  // d_2 and d_s of m10 above are the printed ones, rounded to 1 um.
  CHECK(model.value(x) == near(chain_model(shared::registry(), utilisation_chain).value(m10)).epsilon(1e-3));
  double slopes[7] = {}, scale[7] = {};
  model.gradient(x, scale, slopes);
  double up[7], down[7];
  std::copy(x, x + 7, up);
  std::copy(x, x + 7, down);
  up[1] *= 1 + 1e-5;
  down[1] *= 1 - 1e-5;
  CHECK(slopes[1] == near((model.value(up) - model.value(down)) / (2e-5 * x[1])).epsilon(1e-7));
}

TEST_CASE("a result can be given the name of an input") {
  const Model model = chain_model(shared::registry(), {{"load_at_stress", "preload"}, {"bearing_torque"}});
  const double x[] = {58e-6, 500e6, 0.12, 12.8e-3};
  CHECK(model.value(x) == near(58e-6 * 500e6 * 0.12 * 12.8e-3 / 2).epsilon(1e-14));
}

TEST_CASE("a chain that does not hang together is refused") {
  const auto refused = [](const std::vector<Link>& chain, const char* argument) {
    const auto model = try_chain_model(shared::registry(), chain);
    REQUIRE_FALSE(model);
    CAPTURE(model.error().what());
    CHECK(std::string(model.error().argument()) == argument);
  };
  refused({}, "chain");
  refused({{"no_such_formula"}}, "formula");
  refused({{"load_at_stress"}, {"bearing_torque"}}, "chain");
  refused({{"preload_from_torque"}, {"stress_area"}}, "chain");
  refused(std::vector<Link>(17, {"stress_area"}), "chain");
  CHECK_THROWS_AS(formula_model(shared::registry(), "no_such_formula"), Error);
}

}  // namespace formula_model_test
