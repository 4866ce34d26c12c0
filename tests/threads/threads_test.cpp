// Several threads ask the public questions at once. Each answer is the one that a thread alone gets, and a build with the
// thread sanitizer (preset `threads`) finds no data race.
#include <doctest/doctest.h>

#include <array>
#include <barrier>
#include <functional>
#include <string>
#include <thread>
#include <vector>

#include "shared/registry.hpp"
#include "tauten/base/column_threads.hpp"
#include "tauten/explain/derivation.hpp"
#include "tauten/explain/json_text.hpp"
#include "tauten/loosening/simulate.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/question/curve.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/identify.hpp"
#include "tauten/question/reach.hpp"
#include "tauten/question/turn.hpp"
#include "tauten/question/workings/learned_model.hpp"
#include "tauten/question/workings/reach_drawing.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/torque.hpp"
#include "tauten/uncertainty/budget.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"
#include "tauten/uncertainty/sobol.hpp"

using namespace tauten;

namespace {

std::string identified() {
  std::string out;
  for (const double width : {13e-3, 17e-3, 19e-3, 24e-3, 0.75 * 25.4e-3})
    for (const Candidate& c : identify(Length(width))) out += c.thread.name() + " " + c.standard + " " + c.look + "\n";
  for (const char* name : {"M8", "M10x1.25", "M16", "M24x2"}) {
    out += thread(name).name();
    for (const Head& head : heads_of(thread(name))) out += head.standard;
  }
  const auto unknown = try_parse_thread("M10x9");
  return out + (unknown ? "" : unknown.error().what());
}

ClampJob pump_foot() {
  ClampJob job;
  job.socket = Length(24e-3);
  job.property_class = "8.8";
  job.torque = Torque(130.0);
  job.condition = "oiled";
  return job;
}
std::string clamped() {
  const Clamp answer = clamp(pump_foot());
  return json_text(tree_of(answer)) + derivation_text(derivation_of(answer), shared::registry(), Layout::text);
}
std::string torque_asked() {
  ClampJob job = pump_foot();
  job.torque.reset();
  job.share = 0.7;
  return json_text(tree_of(torque_for(job)));
}

std::string reached() {
  ReachJob job;
  job.torque = Torque(130.0);
  job.wrench.length = Length(0.4);
  job.extensions = {{Length(0.08), Angle(0.5)}, {Length(0.05), Angle(-0.2)}};
  job.multiplier = TorqueMultiplier{4, 0.9, 0.05, Length(0.3)};
  job.bars = {{DriveBar::Section::square, Length(0.25), Length(12.7e-3), Stress(79e9)}};
  const Reach answer = reach(job);
  return json_text(tree_of(answer)) + reach_drawing_svg(job, answer) + reach_drawing_text(job, answer);
}

FreeJob flange_bolt() {
  FreeJob job;
  job.diameter = Length(16e-3);
  job.pitch = Length(2e-3);
  job.width_across_flats = Length(24e-3);
  job.tensile_strength = Stress(800e6);
  job.yield_strength = Stress(640e6);
  job.handle_length = Length(0.6);
  job.trials = 1000;
  job.jobs = 2;
  job.loosened = {{Neighbour::How::freed, Torque(205)}, {Neighbour::How::unmoved, Torque(210)}};
  return job;
}
std::string freed() {
  const FreeJob job = flange_bolt();
  return json_text(tree_of(free_joint(job))) +
         derivation_text(derivation_of(job, free_joint(job)), shared::registry(), Layout::markdown);
}
std::string simulated() {
  const Simulation s = simulate(release_model(flange_bolt()), 20'000, 7, 3);
  std::string out;
  for (double limit = 50; limit < 600; limit += 50) out += json_text(tree_of(s.at(Torque(limit))));
  return out;
}
std::string propagated() {
  const Model area = model_of<2>({"area"}, {{{"width"}, {"height"}}}, [](auto x) { return x[0] * x[1]; });
  MonteCarloOptions options;
  options.trials = 20'000;
  options.jobs = 3;
  std::uint64_t watched = 0;
  options.progress = [&](const Progress& p) { return (watched = p.done) < 1'000'000; };
  const MonteCarlo m = monte_carlo(
      area,
      joint_distribution(area, {{"width", Distribution::normal(2, 0.1)}, {"height", Distribution::uniform(1, 2)}}),
      options);
  return exact_text(m.mean) + " " + exact_text(m.standard_uncertainty);
}

std::string sensitivities() {
  const UncertaintyQuestion question = clamp_question(pump_foot());
  const Model& load = question.outputs.front();
  const JointDistribution inputs = joint_distribution(load, question.inputs);
  SobolOptions options;
  options.trials = 4096;
  options.jobs = 3;
  return json_text(tree_of(budget(load, inputs))) + json_text(tree_of(sobol(load, inputs, options)));
}

std::string turned() {
  TurnJob job;
  job.thread = "M16";
  job.property_class = "8.8";
  job.grip = Length(55e-3);
  job.snug_torque = Torque(60.0);
  job.angle = Angle(1.0);
  job.condition = "oiled";
  const TurnAnswer answer = turn(job);
  CurveJob points;
  points.joint = job;
  return json_text(tree_of(answer)) + derivation_text(derivation_of(answer), shared::registry(), Layout::text) +
         json_text(tree_of(curve(points)));
}

std::string columns() {
  std::vector<double> torque(40'000), out(torque.size());
  for (std::size_t i = 0; i < torque.size(); ++i) torque[i] = 1e-2 * static_cast<double>(i);
  std::string text;
  evaluate_on(3, preload_from_torque_exact, std::span<double>(out), torque, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3);
  for (std::size_t i = 0; i < out.size(); i += 4'001) text += exact_text(out[i]);
  double rest[] = {2e-3, 14.7e-3, 0.12, 0.12, 20e-3};
  char* from[7] = {reinterpret_cast<char*>(torque.data())};
  for (std::size_t i = 0; i < 5; ++i) from[i + 1] = reinterpret_cast<char*>(&rest[i]);
  from[6] = reinterpret_cast<char*>(out.data());
  const std::ptrdiff_t steps[] = {sizeof(double), 0, 0, 0, 0, 0, sizeof(double)};
  shared::formula_named("preload_from_torque")->rows_double(from, steps, torque.size());
  for (std::size_t i = 0; i < out.size(); i += 4'001) text += exact_text(out[i]);
  return text;
}

std::string every_formula() {
  std::string out;
  for (const Entry& entry : shared::registry()) {
    std::array<double, detail::most_inputs> x{}, slopes{};
    for (std::size_t i = 0; i < entry.inputs.size(); ++i) x[i] = 0.01 + 0.02 * static_cast<double>(i);
    out += expression_text(entry, Notation::latex) + exact_text(entry.value(x.data())) +
           exact_text(entry.gradient(x.data(), slopes.data()));
  }
#if defined(__cpp_exceptions)
  try {
    (void)preload_from_torque(Torque(-1.0), Length(2e-3), Length(14.7e-3), 0.12, 0.12, Length(20e-3));
  } catch (const Error& error) {
    out += error.what();
  }
#endif
  return out;
}

const std::vector<std::function<std::string()>> questions = {identified,    clamped,   torque_asked, reached,
                                                             freed,         simulated, propagated,   turned,
                                                             sensitivities, columns,   every_formula};

}  // namespace

TEST_CASE("eight threads ask all questions at once and each gets the answers that one thread gets") {
  constexpr std::size_t threads = 8;
  std::vector<std::vector<std::string>> answers(threads, std::vector<std::string>(questions.size()));
  std::barrier start(static_cast<std::ptrdiff_t>(threads));
  // First of all the threads: nothing that is made at the first call has been made before.
  std::vector<std::thread> pool;
  for (std::size_t t = 0; t < threads; ++t)
    pool.emplace_back([&, t] {
      for (std::size_t i = 0; i < questions.size(); ++i) {
        // Half of the threads ask the same at the same time, the others something else each.
        const std::size_t question = (i + (t % 2 == 0 ? 0 : t)) % questions.size();
        start.arrive_and_wait();
        answers[t][question] = questions[question]();
      }
    });
  for (std::thread& thread : pool) thread.join();
  for (std::size_t question = 0; question < questions.size(); ++question) {
    const std::string alone = questions[question]();
    CAPTURE(question);
    CHECK(alone.size() > 20);
    for (std::size_t t = 0; t < threads; ++t) CHECK(answers[t][question] == alone);
  }
}
