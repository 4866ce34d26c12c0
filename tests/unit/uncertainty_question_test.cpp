// Whole answers as questions of uncertainty: they are what the answers say, in the middle and at the ends.
#include <doctest/doctest.h>
#include "tauten/question/clamp.hpp"
#include "tauten/question/free.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

#include "shared/registry.hpp"
#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/question/curve.hpp"
#include "tauten/question/free_uncertainty.hpp"
#include "tauten/question/turn.hpp"
#include "tauten/question/turn_uncertainty.hpp"
#include "tauten/uncertainty/sobol.hpp"

#include "near.hpp"

namespace uncertainty_question_test {

using namespace tauten;

namespace {

FreeJob stuck() {
  FreeJob job;
  job.diameter = Length(16e-3), job.pitch = Length(2e-3), job.width_across_flats = Length(24e-3);
  job.tensile_strength = Stress(800e6), job.yield_strength = Stress(640e6);
  job.rust = Rust::rusted;
  job.bearing_diameter = Length(20.2e-3);
  return job;
}

TurnJob flange(double angle) {
  TurnJob job{.thread = "M16", .property_class = "8.8", .grip = Length(40e-3), .snug_torque = Torque(40)};
  job.angle = Angle(angle);
  job.condition = "oiled";
  return job;
}

MonteCarlo trials(const UncertaintyQuestion& q, const char* output, std::uint64_t count,
                  const std::vector<InputDistribution>& said = {}) {
  return monte_carlo(try_output(q, output).value(), try_joint(q, said).value(), {.trials = count});
}

}  // namespace

TEST_CASE("a formula or a chain as question; what is not known is asked for") {
  const UncertaintyQuestion q =
      try_formula_question(shared::registry(), {{"preload_from_torque"}, {"thread_torque"}}).value();
  CHECK(q.outputs.size() == 1);
  CHECK(q.title == "preload_from_torque, thread_torque");
  const auto joint = try_joint(q, {{"torque", Distribution::normal(48, 2)}});
  REQUIRE_FALSE(joint);
  CHECK(std::string(joint.error().argument()) == "pitch");
  CHECK_FALSE(try_formula_question(shared::registry(), {{"no_such"}}));
  const auto output = try_output(q, "speed");
  REQUIRE_FALSE(output);
  CHECK(std::string(output.error().what()).find("thread_torque") != std::string::npos);
}

TEST_CASE("what is said goes before what the question brings along") {
  const UncertaintyQuestion q = free_question(stuck());
  const JointDistribution nominal = try_joint(q, {}).value();
  const JointDistribution said = try_joint(q, {{"preload", Distribution(50e3)}}).value();
  for (std::size_t i = 0; i < nominal.size(); ++i) {
    const bool preload = q.outputs.front().inputs[i].name == "preload";
    CHECK(said[i].mean() == near(preload ? 50e3 : nominal[i].mean()));
    CHECK((said[i].standard_deviation() == 0) == (preload || nominal[i].standard_deviation() == 0));
  }
  CHECK_FALSE(try_joint(q, {{"speed", Distribution(1.0)}}));
}

TEST_CASE(
    "a stuck fastener: the trials agree with the bands and chances of its answer, which another simulation gave") {
  for (const bool learned : {false, true})
    for (const Rust rust : {Rust::clean, Rust::rusted, Rust::heavy_rust}) {
      FreeJob job = stuck();
      job.rust = rust;
      job.aids = {{.aid = Aid::fluid, .soak_hours = 24}};
      if (learned) job.loosened = {{Neighbour::How::freed, Torque(150)}, {Neighbour::How::freed, Torque(180)}};
      CAPTURE(static_cast<int>(rust));
      CAPTURE(learned);
      const Free answer = free_joint(job);
      const UncertaintyQuestion q = free_question(job);
      for (const auto& [name, band] :
           {std::pair("breakaway_torque", answer.breakaway), {"shear_torque", answer.shear}}) {
        const MonteCarlo run = trials(q, name, 200'000);
        // The bands come from 32 768 draws in single precision.
        CHECK(run.quantile(0.5) == near(band.nominal.si).epsilon(0.02));
        CHECK(run.quantile(0.05) == near(band.low.si).epsilon(0.03));
        CHECK(run.quantile(0.95) == near(band.high.si).epsilon(0.03));
      }
    }
}

TEST_CASE("a stuck fastener: the budget's slopes are the differences of the model") {
  const UncertaintyQuestion q = free_question(stuck());
  for (const Model& model : q.outputs) {
    const JointDistribution joint = try_joint(q, {}).value();
    const Budget b = budget(model, joint);
    std::vector<double> x;
    for (std::size_t i = 0; i < joint.size(); ++i) x.push_back(joint[i].mean());
    CHECK(model.value(x) == near(b.value));
    for (std::size_t i = 0; i < x.size(); ++i) {
      const double step = x[i] > 0 ? 1e-5 * x[i] : 1e-4;
      std::vector<double> up = x, down = x;
      up[i] += step, down[i] -= step;
      const double slope = (model.value(up) - model.value(down)) / (2 * step);
      CHECK(std::fabs(b.contributions[i].sensitivity - slope) <= 1e-5 * std::fabs(slope) + 1e-9 * b.value);
    }
  }
  // Median by hand, bond and rust apart: the factors of the trade's lever formula (ISO 16047, linear form).
  const Model breakaway = try_output(q, "breakaway_torque").value();
  const double in_thread = 2.0 * 0.14 * 14.701e-3 / std::sqrt(3.0), lift = 2e-3 / (2 * std::acos(-1.0));
  const double face = 20.2e-3;
  const std::vector<double> x = {50e3, 2, 1.5, 7, 3, 1, 500, 0};
  CHECK(breakaway.value(x) == near(50e3 * (in_thread - lift + 1.5 * 0.14 * face / 2) + 11).epsilon(1e-4));
}

TEST_CASE("a clamp question is the clamp uncertainty") {
  ClampJob job;
  job.thread = "M16", job.property_class = "8.8", job.torque = Torque(130), job.condition = "oiled";
  const ClampUncertainty whole = clamp_uncertainty(job).front();
  const UncertaintyQuestion q = question_of(clamp_models(job).front());
  const MonteCarlo run = monte_carlo(q.outputs.front(), try_joint(q, {}).value());
  CHECK(run.sorted() == whole.clamp_load.sorted());
  const auto spread = [&](Outcome<JointDistribution> joint) {
    return monte_carlo(q.outputs.front(), std::move(joint).value()).standard_uncertainty;
  };
  // Oil is on thread and face: they go together, unless one of them is given, or what goes together is.
  const double apart = spread(try_joint(q, {}, {{"bearing_friction", "thread_friction", 0}}));
  CHECK(run.standard_uncertainty > 1.2 * apart);
  CHECK(spread(try_joint(q, {{"thread_friction", q.inputs[1].distribution}})) == near(apart).epsilon(0.02));
  CHECK(spread(try_joint_apart(q, {})) == near(apart).epsilon(0.02));
}

TEST_CASE("a clamp question names the fasteners that it leaves out") {
  ClampJob job;
  job.socket = Length(24e-3), job.property_class = "8.8", job.torque = Torque(130);
  const Clamp answer = clamp(job);
  const UncertaintyQuestion q = clamp_question(job);
  REQUIRE(answer.candidates.size() > 3);
  CHECK(q.title == answer.candidates.front().thread + ", " + answer.candidates.front().head + ", class 8.8");
  CHECK(q.others.size() == answer.candidates.size() - 1);
  CHECK(std::string(q.notices.front().code) == "others_fit");
  job.thread = "M16", job.head = "ISO 4014";
  CHECK(clamp_question(job).others.empty());
  job.torque = Torque(-1);
  CHECK_FALSE(bool(try_clamp_question(job)));
}

TEST_CASE("a tightening by angle: its middle and its ends are those of the answer") {
  for (const double angle : {0.4, 1.2}) {
    const TurnJob job = flange(angle);
    const TurnAnswer answer = turn(job);
    const UncertaintyQuestion q = turn_question(job, answer);
    // Everything at its median, a bolt as it is sold.
    const double sold = 1 + 0.6 * job.strength_surplus;
    const std::vector<double> nominal = {answer.snug_torque.si,
                                         answer.angle.si,
                                         answer.thread_friction.nominal,
                                         answer.bearing_friction.nominal,
                                         1,
                                         sold};
    CHECK(try_output(q, "clamp_load").value().value(nominal) == near(answer.clamp_load.nominal.si).epsilon(1e-9));
    CHECK(try_output(q, "torque").value().value(nominal) == near(answer.torque.nominal.si).epsilon(1e-9));
    // Of the very bolt there, of the minimum of the class in the answer.
    CHECK(sold * try_output(q, "yield_utilisation").value().value(nominal) ==
          near(answer.yield_utilisation.nominal).epsilon(1e-9));
    // No trial is beyond the worst case, which takes every bolt between the minimum strength and a fifth more.
    const MonteCarlo run = trials(q, "clamp_load", 2'000, {{"strength", Distribution::uniform(1, 1.2)}});
    CHECK(run.sorted().front() >= answer.worst_case.low.si * (1 - 1e-6));
    CHECK(run.sorted().back() <= answer.worst_case.high.si * (1 + 1e-6));
    CHECK(run.outside == 0);
  }
}

TEST_CASE("a tightening by angle: trials in which the bolt breaks have no value") {
  // Where the curve of the typical bolt ends, its uniform elongation is used up.
  const double most = curve({.joint = flange(1)}).nominal.points.back().angle.si;
  TurnJob job = flange(0.9 * most);
  job.strength_surplus = 0;  // the curve is that of a bolt that just meets its class
  const TurnAnswer answer = turn(job);
  REQUIRE(answer.may_neck);
  const UncertaintyQuestion q = turn_question(job, answer);
  const auto says = [](const UncertaintyQuestion& question) {
    return std::any_of(question.notices.begin(), question.notices.end(),
                       [](const Notice& each) { return std::string(each.code) == "may_neck"; });
  };
  CHECK(says(q));
  CHECK_FALSE(says(turn_question(flange(0.4), turn(flange(0.4)))));
  // All as usual but the angle: from 0.9 to 1.05 of that end, a third of the trials lies beyond it. The standard error of
  // 3000 of them is 0.9 %; the curve takes steps and its end is within one of them.
  const std::vector<InputDistribution> all = {{"snug_torque", Distribution(answer.snug_torque.si)},
                                              {"thread_friction", Distribution(answer.thread_friction.nominal)},
                                              {"bearing_friction", Distribution(answer.bearing_friction.nominal)},
                                              {"resilience", Distribution(1.0)},
                                              {"strength", Distribution(1.0)},
                                              {"angle_of_turn", Distribution::uniform(0.9 * most, 1.05 * most)}};
  for (const char* output : {"clamp_load", "torque", "yield_utilisation"}) {
    const MonteCarlo run = trials(q, output, 3'000, all);
    CHECK(std::fabs(static_cast<double>(run.outside) / 3'000 - 1.0 / 3) < 0.03);
    CHECK(run.values.size() == run.trials - run.outside);
  }
  // Beyond it the very bolt that is expected breaks: there is nothing to be certain of.
  TurnJob too_far = flange(1.5 * most);
  too_far.strength_surplus = 0;
  const auto broken = try_turn_question(too_far, turn(too_far));
  REQUIRE_FALSE(broken);
  CHECK(std::string(broken.error().argument()) == "angle");
  TurnJob at_handle = too_far;
  at_handle.angle_at_handle = true;
  CHECK_FALSE(try_turn_question(at_handle, turn(at_handle)));
}

TEST_CASE("angle beats torque: past yield the clamp load scatters less by angle than by torque") {
  const UncertaintyQuestion by_angle = turn_question(flange(1.2), turn(flange(1.2)));
  const MonteCarlo turned = trials(by_angle, "clamp_load", 2'000);
  ClampJob job;
  job.thread = "M16", job.property_class = "8.8", job.torque = Torque(150), job.condition = "oiled";
  const ClampUncertainty by_torque = clamp_uncertainty(job, {}, {.trials = 20'000}).front();
  CHECK(turned.standard_uncertainty / turned.mean <
        0.7 * by_torque.clamp_load.standard_uncertainty / by_torque.clamp_load.mean);
}

TEST_CASE("a question that cannot be answered gives the error of its answer") {
  FreeJob job = stuck();
  job.diameter = Length(-1);
  CHECK_FALSE(try_free_question(job));
  TurnJob turn_job = flange(1);
  turn_job.thread = "M16x9";
  const auto refused = try_turn_question(turn_job, turn(flange(1)));
  REQUIRE_FALSE(refused);
  CHECK(std::string(refused.error().argument()) == "thread");
}

}  // namespace uncertainty_question_test
