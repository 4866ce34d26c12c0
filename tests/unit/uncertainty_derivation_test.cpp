// How uncertainties came about: the data against the model, and the sums that a reader would do by hand.
#include <doctest/doctest.h>
#include "tauten/base/caution.hpp"

#include <cmath>
#include <string>

#include "shared/registry.hpp"
#include "tauten/explain/derivation.hpp"
#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/uncertainty/uncertainty_derivation.hpp"

#include "near.hpp"

namespace uncertainty_derivation_test {

using namespace tauten;

namespace {

const std::vector<InputDistribution> wrench = {{"torque", Distribution::uniform(46, 50)},
                                               {"pitch", 1.5e-3},
                                               {"pitch_diameter", 9.026e-3},
                                               {"thread_friction", Distribution::from_band(0.08, 0.12, 0.16)},
                                               {"bearing_friction", Distribution::normal(0.12, 0.01)},
                                               {"bearing_diameter", Distribution::lognormal(12.8e-3, 0.02)}};

UncertaintyQuestion chain() {
  return try_formula_question(shared::registry(), {{"preload_from_torque"}, {"thread_torque"}}).value();
}

const Figure& figure_named(const std::vector<Figure>& figures, const std::string& name) {
  for (const Figure& f : figures)
    if (f.name == name) return f;
  FAIL("there is no figure " << name);
  return figures.front();
}

}  // namespace

TEST_CASE("a budget tells its inputs, its formulas at the means, and what each input brings") {
  const UncertaintyQuestion question = chain();
  const Model& model = question.outputs.front();
  const JointDistribution inputs = try_joint(question, wrench).value();
  const Budget b = budget(model, inputs, 3);
  const Derivation d = derivation_of(question, model, inputs, b);
  CHECK(d.title == "Uncertainty to first order: preload from torque, thread torque");
  CHECK(figure_named(d.given, "torque").note == "even from 46 N.m to 50 N.m, standard uncertainty 1.15 N.m");
  CHECK(figure_named(d.given, "thread_friction").note == "triangular from 0.08 to 0.16, standard uncertainty 0.0163");
  CHECK(figure_named(d.given, "bearing_friction").note == "normal, standard uncertainty 0.01");
  CHECK(figure_named(d.given, "bearing_diameter").note == "lognormal, standard uncertainty 0.256 mm");
  CHECK(figure_named(d.given, "pitch").note == "known");
  REQUIRE(d.steps.size() == 2);
  CHECK(d.steps[0].formula == "preload_from_torque");
  CHECK(d.steps[0].inputs[0] == 48);
  // ISO 16047, linear form.
  const double face = 12.8e-3 * std::exp(std::log1p(0.02 * 0.02) / 2);
  const double thread = 1.5e-3 / (2 * M_PI) + 0.12 * 9.026e-3 / std::sqrt(3.0);
  CHECK(d.steps[0].value == near(48 / (thread + 0.12 * face / 2)).epsilon(1e-12));
  CHECK(d.steps[1].inputs[0] == d.steps[0].value);
  CHECK(d.steps[1].value == b.value);
  CHECK(figure_named(d.found, "thread_torque").value.nominal == b.value);
  double squares = 0;
  for (const char* name : {"from_torque", "from_thread_friction", "from_bearing_friction", "from_bearing_diameter"})
    squares += square(figure_named(d.found, name).value.nominal);
  const Figure& u = figure_named(d.found, "standard_uncertainty");
  CHECK(std::sqrt(squares) == near(u.value.nominal).epsilon(1e-12));
  CHECK(u.note.starts_with("root of the sum of squares;"));
  CHECK(figure_named(d.found, "expanded_uncertainty").value.nominal == near(3 * std::sqrt(squares)).epsilon(1e-12));
  // The share of the torque that goes through the thread, for each N.m.
  char slope[40];
  std::snprintf(slope, sizeof slope, "; %.4g N.m for 1 N.m", thread / (thread + 0.12 * face / 2));
  CHECK(figure_named(d.found, "from_torque").note.find(slope) != std::string::npos);
  CHECK(d.found.size() == 4 + 3);  // what is known brings nothing and is left out
}

TEST_CASE("what goes together is told, and that the squares alone do not add up") {
  const UncertaintyQuestion question = chain();
  const Model& model = question.outputs.front();
  const JointDistribution inputs = try_joint(question, wrench, {{"thread_friction", "bearing_friction", 0.8}}).value();
  const Derivation d = derivation_of(question, model, inputs, budget(model, inputs));
  CHECK(figure_named(d.given, "correlation").value.nominal == 0.8);
  CHECK(figure_named(d.given, "correlation").note == "thread friction with bearing friction");
  CHECK(figure_named(d.found, "standard_uncertainty").note.find("goes together") != std::string::npos);
}

TEST_CASE("a run tells from what it drew, and its figures") {
  UncertaintyQuestion question = chain();
  question.notices.push_back(cautions::no_release);
  const Model& model = question.outputs.front();
  const JointDistribution inputs = try_joint(question, wrench).value();
  const MonteCarlo run = monte_carlo(model, inputs);
  const Derivation d = derivation_of(question, model, inputs, run);
  CHECK(figure_named(d.given, "trials").value.nominal == static_cast<double>(run.trials));
  CHECK(figure_named(d.found, "thread_torque").value.nominal == run.mean);
  CHECK(figure_named(d.found, "symmetric_interval").value.low == run.symmetric.low);
  CHECK(figure_named(d.found, "shortest_interval").value.high == run.shortest.high);
  CHECK(figure_named(d.found, "tolerance").value.nominal == run.tolerance);
  CHECK(d.verdict.find("certain to the tolerance") != std::string::npos);
  CHECK(d.notices.size() == 1);
  const MonteCarlo few = monte_carlo(model, inputs, {.digits = 4, .trials = 5000});
  CHECK(derivation_of(question, model, inputs, few).verdict.starts_with("Not certain"));

  const Sobol s = sobol(model, inputs);
  const Derivation shares = derivation_of(question, model, inputs, s);
  CHECK(figure_named(shares.found, "from_torque").value.nominal == s.inputs[0].first);
  CHECK(figure_named(shares.found, "with_torque").value.nominal == s.inputs[0].total);
  CHECK(shares.found.size() == 2 * 4);
}

TEST_CASE("a whole answer brings its notices, and every layout can be written") {
  ClampJob job;
  job.thread = "M16";
  job.property_class = "8.8";
  job.torque = Torque(130);
  const UncertaintyQuestion question = clamp_question(job);
  const Model& model = question.outputs.front();
  const JointDistribution inputs = try_joint(question, {}).value();
  const Derivation d = derivation_of(question, model, inputs, budget(model, inputs));
  CHECK(d.steps.empty());  // `clamp` itself tells them
  CHECK(d.notices.size() == question.notices.size());
  for (const char* layout : {"text", "markdown", "latex", "html"}) {
    const std::string page = derivation_text(d, shared::registry(), try_layout(layout).value());
    CAPTURE(page);
    CHECK(page.find("expanded uncertainty") != std::string::npos);
    CHECK(page.find("nan") == std::string::npos);
  }
}

}  // namespace uncertainty_derivation_test
