// tauten uncertainty: how certain a figure is, and which input makes it uncertain.
#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "command/evaluation.hpp"
#include "command/page_options.hpp"
#include "command/refusal.hpp"
#include "command/said_options.hpp"
#include "command/watch.hpp"
#include "shared/clamp_inputs.hpp"
#include "shared/distribution_text.hpp"
#include "shared/free_inputs.hpp"
#include "shared/inputs.hpp"
#include "shared/pages.hpp"
#include "shared/turn_inputs.hpp"
#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/question/free_uncertainty.hpp"
#include "tauten/question/turn_uncertainty.hpp"
#include "tauten/uncertainty/sobol.hpp"
#include "tauten/uncertainty/trial_chance.hpp"

namespace tauten::command {

namespace {

/// What is said beside the question.
struct Run {
  std::vector<std::string> scatter;
  std::vector<std::string> correlate;
  std::string output, coverage, trials, digits, seed, jobs;
  bool shortest = false;
  bool sobol = false;
};

std::shared_ptr<Run> add_run(CLI::App& verb) {
  auto run = std::make_shared<Run>();
  const auto add = [&](const char* name, auto& into, const char* example, const char* help) {
    CLI::Option* option = verb.add_option(name, into, help);
    option->type_name(example)->expected(1)->allow_extra_args(false);
    if constexpr (std::is_same_v<std::remove_reference_t<decltype(into)>, std::vector<std::string>>)
      option->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  };
  add("--correlate", run->correlate, "a:b:0.8", "Two inputs that go together, with their coefficient");
  add("--output", run->output, "clamp_load", "Only this result");
  add("--coverage", run->coverage, "95%", "Share that the intervals hold");
  add("--digits", run->digits, "2", "Digits of the standard uncertainty that must be certain, 1 to 5");
  add("--trials", run->trials, "1000000", "As many trials and no more");
  add("--seed", run->seed, "1", "Seed; the same gives the same answer on any number of threads");
  add("--jobs", run->jobs, "1", "Threads that share the work");
  verb.add_flag("--shortest", run->shortest, "The ends of the shortest interval must be certain");
  verb.add_flag("--sobol", run->sobol, "Also the Sobol indices, for results that are not linear");
  return run;
}

/// Reads a whole number if one was said. Its range is the library's to tell.
template <class T>
void read_said(const char* name, const std::string& text, const char* example, T& into) {
  if (text.empty()) return;
  if (const auto problem = shared::read_whole(name, text, example, into)) throw *problem;
}

MonteCarloOptions options_of(const Run& run, ProgressCall progress) {
  MonteCarloOptions o;
  if (!run.coverage.empty()) o.coverage = try_read_quantity("coverage", run.coverage, Dim::number).value();
  o.interval = run.shortest ? Coverage::shortest : Coverage::symmetric;
  read_said("digits", run.digits, "2", o.digits);
  read_said("trials", run.trials, "1000000", o.trials);
  if (!run.trials.empty() && o.trials == 0)
    throw Error("trials", "trials is 0; leave it out to run until the digits are certain");
  read_said("seed", run.seed, "1", o.seed);
  read_said("jobs", run.jobs, "4", o.jobs);
  o.progress = std::move(progress);
  return o;
}

Json json_of_run(const MonteCarlo& run, Dim dimension) {
  Json json = json_of(run);
  json["unit"] = describe(dimension).si_unit;
  return json;
}

void answer(Program& program, const UncertaintyQuestion& question, const std::vector<std::string>& words,
            const Run& run, const PageOptions& options, const PageUnits& units) {
  std::vector<InputDistribution> given;
  const std::vector<Variable>& inputs = question.outputs.front().inputs;
  for (const std::string& word : words) {
    const std::size_t equals = word.find('=');
    if (equals == std::string::npos)
      throw Error(
          "", (in_quotes(word) + " is not an input; write name=value, where a value is " + shared::distribution_forms)
                  .c_str());
    const std::string name = word.substr(0, equals);
    std::vector<std::string> known;
    for (const Variable& v : inputs) known.push_back(v.name);
    const auto variable = std::find_if(inputs.begin(), inputs.end(), [&](const Variable& v) { return v.name == name; });
    if (variable == inputs.end())
      throw Error(name.c_str(), ("there is no input " + in_quotes(name) +
                                 did_you_mean(name, known, "the inputs are " + listed(known)))
                                    .c_str());
    given.push_back({name, shared::try_read_distribution(name, word.substr(equals + 1), variable->dimension).value()});
  }
  std::vector<Correlation> correlations;
  for (const std::string& text : run.correlate) correlations.push_back(shared::try_read_correlation(text).value());
  const JointDistribution joint = try_joint(question, given, correlations).value();
  std::vector<Model> models = question.outputs;
  if (!run.output.empty()) models = {try_output(question, run.output).value()};

  Watch watch(!program.json);
  Json results = Json::array();
  std::vector<UncertaintyResult> found;
  std::uint64_t stopped_after = 0;
  for (const Model& model : models) {
    UncertaintyResult& one =
        found.emplace_back(try_budget(model, joint).value(),
                           try_monte_carlo(model, joint, options_of(run, watch.call("Monte Carlo"))).value());
    Json result = {{"budget", json_of(one.budget)}, {"monte_carlo", json_of_run(one.run, model.output.dimension)}};
    if (model.output.dimension == Dim::number) result["chance_above_1"] = one.run.chance_above(1);
    if (one.run.stopped) stopped_after = one.run.trials;
    if (run.sobol && !one.run.stopped) {
      const MonteCarloOptions o = options_of(run, nullptr);
      SobolOptions how;
      how.seed = o.seed, how.jobs = o.jobs, how.progress = watch.call("Sobol");
      one.sobol = try_sobol(model, try_joint_apart(question, given, correlations).value(), how).value();
      result["sobol"] = json_of(*one.sobol);
      if (one.sobol->stopped) stopped_after = one.sobol->trials;
    }
    results.push_back(std::move(result));
    if (stopped_after > 0) break;
  }
  if (stopped_after > 0) {
    program.code = other_failure;
    program.complaints +=
        fmt::format("tauten: stopped after {} trials; the figures are those found by then\n", stopped_after);
  }
  if (program.json)
    return program.say({{"title", question.title},
                        {"others", question.others},
                        {"results", results},
                        {"notices", json_of(question.notices)}});
  print(program, options, shared::page_of(question, found, units));
}

/// Adds a whole answer as question.
template <class Job>
void add_whole(Program& program, CLI::App& parent, const char* name, const char* help,
               std::span<const shared::Input<Job>> keys,
               const std::function<Outcome<UncertaintyQuestion>(const SaidWords&)>& ask) {
  CLI::App* verb = program.verb(parent, name, help);
  const auto words = add_said_options(program, *verb, keys);
  const auto run = add_run(*verb);
  CLI::Option* option = verb->add_option("--scatter", run->scatter, "Spread of an input, instead of the typical one");
  option->type_name("strength=1")->expected(1)->allow_extra_args(false);
  option->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  const auto page = add_page_options(program, *verb);
  verb->callback([&program, words, run, ask, page] {
    answer(program, ask(*words).value(), run->scatter, *run, *page, page->page_units(words->pairs()));
  });
}

/// The keys but for those of a simulation that this verb does not run.
template <class Job>
std::span<const shared::Input<Job>> without_trials(std::span<const shared::Input<Job>> keys) {
  static std::vector<shared::Input<Job>> kept;
  if (kept.empty())
    for (const shared::Input<Job>& key : keys)
      if (std::string_view(key.option()) != "trials" && std::string_view(key.option()) != "seed") kept.push_back(key);
  return kept;
}

std::vector<Link> chain_of(const std::string& text) {
  std::vector<Link> chain;
  for (const std::string_view part : shared::split(text, ',')) {
    const auto pieces = shared::split(part, ':');
    if (pieces.size() > 2 || pieces[0].empty())
      throw Error("formula",
                  (in_quotes(text) + " is not a chain; write formulas with commas between, each with a name for "
                                     "its result if need be, like thread_torque,shank_torsion:thread_torque")
                      .c_str());
    (void)formula_named(std::string(pieces[0]));
    chain.push_back({std::string(pieces[0]), pieces.size() == 2 ? std::string(pieces[1]) : ""});
  }
  return chain;
}

}  // namespace

void add_uncertainty(Program& program, CLI::App* verb) {
  auto chain = std::make_shared<std::string>();
  auto words = std::make_shared<std::vector<std::string>>();
  const auto run = add_run(*verb);
  program.choices[verb->add_option("formulas", *chain, "A formula, or several that feed each other: a,b")
                      ->type_name("NAME")] = formula_names();
  verb->add_option("inputs", *words, "Inputs: a number, low..nominal..high, normal:mean:deviation, ...")
      ->type_name("name=value");
  verb->require_subcommand(0, 1);

  add_whole<ClampJob>(program, *verb, "clamp", "The clamp load that a torque leaves", shared::clamp_inputs(),
                      [](const SaidWords& said) -> Outcome<UncertaintyQuestion> {
                        if (!shared::has(said.said, "torque"))
                          return Error("torque", "torque is missing; write it like --torque 48N.m");
                        const auto given = shared::try_clamp_job(said.said);
                        if (!given) return given.error();
                        auto found = try_clamp_question(given->job);
                        if (!found) return given->in_words(found.error());
                        return found;
                      });
  add_whole<CurveJob>(program, *verb, "turn", "The clamp load that an angle leaves", shared::turn_inputs(),
                      [](const SaidWords& said) -> Outcome<UncertaintyQuestion> {
                        const auto given = shared::try_turn_job(said.said);
                        if (!given) return given.error();
                        const TurnJob& job = given->job.joint;
                        const Outcome<TurnAnswer> answer = try_turn(job);
                        if (!answer) return shared::in_words(*given, answer.error());
                        auto found = try_turn_question(job, *answer);
                        if (!found) return shared::in_words(*given, found.error());
                        return found;
                      });
  add_whole<shared::FreeQuestion>(program, *verb, "free", "Torques at which a stuck fastener comes free and shears",
                                  without_trials(shared::free_inputs()),
                                  [](const SaidWords& said) -> Outcome<UncertaintyQuestion> {
                                    const auto given = shared::try_read_free(said.said);
                                    if (!given) return given.error();
                                    auto found = try_free_question(given->job.job);
                                    if (!found) return shared::in_words(*given, found.error());
                                    return found;
                                  });

  const auto page = add_page_options(program, *verb);
  verb->callback([&program, verb, chain, words, run, page] {
    if (!verb->get_subcommands().empty()) return;
    if (chain->empty())
      throw Error("formula",
                  "name what is uncertain, as in tauten uncertainty preload_from_nut_factor torque=normal:48N.m:2N.m "
                  "diameter=10mm nut_factor=0.12..0.16..0.22, or tauten uncertainty clamp --thread M10 --torque 48N.m");
    const UncertaintyQuestion question = try_formula_question(all_formulas(), chain_of(*chain)).value();
    answer(program, question, *words, *run, *page, page->page_units({}));
  });
}

}  // namespace tauten::command
