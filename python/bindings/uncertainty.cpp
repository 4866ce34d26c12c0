// Uncertainty of formulas, chains and whole answers: budgets, Monte Carlo, Sobol indices.
#include <algorithm>

#include <pybind11/numpy.h>

#include "answers.hpp"
#include "bindings.hpp"
#include "listener.hpp"
#include "shared/pages.hpp"
#include "tauten/uncertainty/uncertainty_derivation.hpp"

namespace py = pybind11;

namespace tauten {

template <>
struct Words<Coverage> {
  static constexpr const char* list[] = {"symmetric", "shortest"};
};

}  // namespace tauten

namespace tauten::python {

namespace {

/// A budget with how it came about.
struct BudgetInfo : Budget {
  Derivation how;

  template <class V>
  static void kept(V&& visit) {
    visit(&BudgetInfo::how);
  }
};

/// What the trials have shown, with the unit of the result and how it came about.
struct MonteCarloInfo : MonteCarlo {
  std::string unit;
  Derivation how;

  template <class V>
  static void fields(V&& visit) {
    MonteCarlo::fields([&](const char* name, auto member) { visit(name, member); });
    visit("unit", &MonteCarloInfo::unit);
  }
  template <class V>
  static void kept(V&& visit) {
    visit(&MonteCarloInfo::values);
    visit(&MonteCarloInfo::how);
  }
};

/// Sobol indices with how they came about.
struct SobolInfo : Sobol {
  Derivation how;

  template <class V>
  static void kept(V&& visit) {
    visit(&SobolInfo::how);
  }
};

using Outcomes = Outcome<Distribution>;

/// \param values  SI, in the order of the constructors of `Distribution`
Outcomes made(const std::string& shape, const std::vector<double>& x) {
  const auto has = [&](const char* name, std::size_t count) { return shape == name && x.size() == count; };
  if (has("normal", 2)) return Distribution::try_normal(x[0], x[1]);
  if (has("lognormal", 2)) return Distribution::try_lognormal(x[0], x[1]);
  if (has("uniform", 2)) return Distribution::try_uniform(x[0], x[1]);
  if (has("triangular", 3)) return Distribution::try_triangular(x[0], x[1], x[2]);
  if (has("from_band", 3)) return Distribution::try_from_band(x[0], x[1], x[2]);
  if (has("two_piece", 4)) return Distribution::try_two_piece(x[0], x[1], x[2], x[3]);
  if (shape == "from_samples") return Distribution::try_from_samples(x);
  return Error("shape", "the distribution is not known");
}

/// What the values of a distribution are called, in the order in which they are given.
const char* value_name(const std::string& shape, std::size_t place) {
  struct Names {
    const char* shape;
    const char* values[4];
  };
  static constexpr Names names[] = {{"normal", {"mean", "standard_deviation"}},
                                    {"lognormal", {"median", "variation"}},
                                    {"uniform", {"low", "high"}},
                                    {"triangular", {"low", "mode", "high"}},
                                    {"from_band", {"low", "nominal", "high"}},
                                    {"two_piece", {"low", "nominal", "high", "coverage"}}};
  for (const Names& known : names)
    if (shape == known.shape && place < 4 && known.values[place] != nullptr) return known.values[place];
  return "samples";
}

/// \return true if a value of a distribution is a plain number, whatever the others are
bool is_plain(const std::string& shape, std::size_t place) {
  return (shape == "lognormal" && place == 1) || (shape == "two_piece" && place == 3);
}

/// \return the dimension of the first value that has a unit; a plain number if none has
Dim dimension_among(const std::string& shape, const py::tuple& values) {
  for (std::size_t place = 0; place < values.size(); ++place) {
    const py::handle value = values[place];
    if (is_plain(shape, place) || (!py::isinstance<py::str>(value) && !py::hasattr(value, "_REGISTRY"))) continue;
    for (int i = 0; i < dimension_count; ++i) try {
        read_number(value_name(shape, place), value, static_cast<Dim>(i));
        return static_cast<Dim>(i);
      } catch (const Error&) {
      }
    read_number(value_name(shape, place), value, Dim::number);  // no unit that is known: the sentence says so
  }
  return Dim::number;
}

/// The values in SI, all of one dimension, which a distribution of this shape can be made of.
std::vector<double> distribution_numbers(const std::string& shape, const py::tuple& values) {
  const Dim dimension = dimension_among(shape, values);
  std::vector<double> x;
  for (std::size_t place = 0; place < values.size(); ++place)
    x.push_back(read_number(value_name(shape, place), values[place], is_plain(shape, place) ? Dim::number : dimension));
  made(shape, x).value();
  return x;
}

double read_chance(const py::object& value) {
  const double chance = read_number("chance", value, Dim::number);
  if (!within(0, 1).contains(chance))
    throw Error("chance", ("chance is " + number_text(chance) + ", but must be at least 0 and at most 1").c_str());
  return chance;
}

/// \param dimension  of the input, for values with units
Distribution read_distribution(const std::string& name, py::handle value, Dim dimension) {
  if (!py::hasattr(value, "_shape")) {
    const bool three = py::isinstance<py::tuple>(value) || py::isinstance<py::list>(value);
    if (!three && !py::isinstance<AnyBand>(value)) return {read_number(name, value, dimension)};
    std::vector<double> x;
    for (const py::handle item : py::tuple(value.cast<py::object>())) x.push_back(read_number(name, item, dimension));
    if (x.size() != 3) throw Error(name.c_str(), (name + " takes low, typical and high, or one number").c_str());
    return made("from_band", x).value();
  }
  const std::string shape = value.attr("_shape").cast<std::string>();
  std::vector<double> x;
  for (const py::handle item : value.attr("_values"))
    x.push_back(read_number(name, item, is_plain(shape, x.size()) ? Dim::number : dimension));
  const Outcomes found = made(shape, x);
  if (!found) throw Error(name.c_str(), (name + ": " + found.error().what()).c_str());
  return *found;
}

JointDistribution joint_of(const UncertaintyQuestion& question, const py::dict& inputs,
                           const py::iterable& correlations, bool apart = false) {
  const std::vector<Variable>& known = question.outputs.front().inputs;
  std::vector<tauten::InputDistribution> given;
  for (const auto& [key, value] : inputs) {
    const std::string name = py::str(key);
    const auto variable = std::find_if(known.begin(), known.end(), [&](const Variable& v) { return v.name == name; });
    // An unknown name is refused below, with the sentence of the library.
    const Dim dimension = variable == known.end() ? Dim::number : variable->dimension;
    given.push_back({name, variable == known.end() ? Distribution() : read_distribution(name, value, dimension)});
  }
  std::vector<Correlation> pairs;
  for (const py::handle item : correlations) {
    const py::tuple three(item.cast<py::object>());
    if (three.size() != 3) throw Error("correlations", "a correlation takes two inputs and a coefficient");
    pairs.push_back({py::str(three[0]), py::str(three[1]), read_number("correlations", three[2], Dim::number)});
  }
  return (apart ? try_joint_apart(question, given, pairs) : try_joint(question, given, pairs)).value();
}

py::object budget_of(const UncertaintyQuestion& question, const py::dict& inputs, const py::iterable& correlations,
                     const std::string& output, const py::object& coverage_factor) {
  const Model model = try_output(question, output).value();
  const double k = read_number("coverage_factor", coverage_factor, Dim::number);
  const JointDistribution joint = joint_of(question, inputs, correlations);
  const Budget found = try_budget(model, joint, k).value();
  return py::cast(BudgetInfo{found, derivation_of(question, model, joint, found)});
}

py::object monte_carlo_of(const UncertaintyQuestion& question, const py::dict& inputs, const py::iterable& correlations,
                          const std::string& output, const py::dict& options, const py::object& progress) {
  const Model model = try_output(question, output).value();
  const JointDistribution joint = joint_of(question, inputs, correlations);
  const tauten::python::Arguments given{options};
  MonteCarloOptions how;
  given("coverage", how.coverage);
  given("interval", how.interval);
  given("digits", how.digits);
  if (given("trials", how.trials) && how.trials == 0)
    throw Error("trials", "trials is 0; leave it out to run until the digits are certain");
  given("most_trials", how.most_trials);
  given("seed", how.seed);
  given("jobs", how.jobs);
  Listener listener(progress);
  how.progress = listener.progress();
  Outcome<MonteCarlo> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_monte_carlo(model, joint, how);
  }();
  listener.look();
  if (!found) throw found.error();
  Derivation came = derivation_of(question, model, joint, *found);
  return py::cast(MonteCarloInfo{std::move(found).value(), describe(model.output.dimension).si_unit, std::move(came)});
}

py::object sobol_of(const UncertaintyQuestion& question, const py::dict& inputs, const std::string& output,
                    const py::dict& options, const py::object& progress) {
  const Model model = try_output(question, output).value();
  const JointDistribution joint = joint_of(question, inputs, py::tuple(), true);
  const tauten::python::Arguments given{options};
  SobolOptions how;
  given("trials", how.trials);
  given("batches", how.batches);
  given("seed", how.seed);
  given("jobs", how.jobs);
  Listener listener(progress);
  how.progress = listener.progress();
  const Outcome<Sobol> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_sobol(model, joint, how);
  }();
  listener.look();
  if (!found) throw found.error();
  return py::cast(SobolInfo{*found, derivation_of(question, model, joint, *found)});
}

UncertaintyQuestion formula_question(const py::iterable& chain) {
  std::vector<Link> links;
  for (const py::handle item : chain) {
    const py::tuple link(item.cast<py::object>());
    links.push_back({py::str(link[0]), py::str(link[1])});
  }
  return try_formula_question(entries(), links).value();
}

std::string text_of(const BudgetInfo& b) {
  const Dim d = dimension_of_unit(b.unit);
  return "Budget(" + b.output + " = " + quantity_text(b.value, d) + ", standard uncertainty " +
         quantity_text(b.standard_uncertainty, d, 3) + ")";
}

std::string text_of(const MonteCarloInfo& m) {
  const Dim d = dimension_of_unit(m.unit);
  return "MonteCarlo(" + m.output + " = " + quantity_text(m.mean, d) + ", standard uncertainty " +
         quantity_text(m.standard_uncertainty, d, 3) + ", " + number_text(100 * m.coverage) + " % from " +
         quantity_text(m.symmetric.low, d) + " to " + quantity_text(m.symmetric.high, d) +
         (m.outside > 0
              ? ", " + std::to_string(m.outside) + " of " + std::to_string(m.trials) + " trials without a value"
              : "") +
         (m.stopped     ? ", stopped"
          : m.converged ? ""
                        : ", not converged") +
         ")";
}

std::string text_of(const SobolInfo& s) {
  std::string text = "Sobol(" + s.output;
  for (const SobolIndex& i : s.inputs)
    text += (i.name == s.inputs.front().name ? ": " : ", ") + i.name + " " + number_text(100 * i.first, 3) + " to " +
            number_text(100 * i.total, 3) + " %";
  return text + (s.stopped ? ", stopped)" : ")");
}

}  // namespace

void add_uncertainty(py::module_& module) {
  add_record<CoverageInterval>(module, "CoverageInterval", "The ends between which a stated share of all values lies");
  add_record<Contribution>(module, "Contribution", "One line of a budget, in SI");
  auto budget = add_record<BudgetInfo>(module, "Budget", "Result with combined standard uncertainty, in SI");
  set_repr(budget, [](const BudgetInfo& b) { return text_of(b); });
  add_page(budget, [](const BudgetInfo& b, const PageUnits& units) { return shared::page_of(b, units); });
  add_explain(budget, [](const BudgetInfo& b) { return b.how; });
  auto run = add_record<MonteCarloInfo>(module, "MonteCarlo", "What the trials have shown, in SI");
  set_repr(run, [](const MonteCarloInfo& m) { return text_of(m); });
  add_page(run, [](const MonteCarloInfo& m, const PageUnits& units) {
    return shared::page_of(m, dimension_of_unit(m.unit), units);
  });
  add_explain(run, [](const MonteCarloInfo& m) { return m.how; });
  run.def_property_readonly(
         "values",
         [](const MonteCarloInfo& m) {
           const std::vector<double> sorted = m.sorted();
           return py::array_t<double>(static_cast<py::ssize_t>(sorted.size()), sorted.data());
         },
         "Every value in SI, rising")
      .def(
          "quantile", [](const MonteCarloInfo& m, const py::object& chance) { return m.quantile(read_chance(chance)); },
          "quantile(self, /, chance)\n--\n\nThe value below which `chance` lies")
      .def(
          "chance_below",
          [](const MonteCarloInfo& m, const py::object& x) {
            return m.chance_below(read_number("x", x, dimension_of_unit(m.unit)));
          },
          "chance_below(self, /, x)\n--\n\nShare of the trials at or below a value")
      .def(
          "chance_above",
          [](const MonteCarloInfo& m, const py::object& x) {
            return m.chance_above(read_number("x", x, dimension_of_unit(m.unit)));
          },
          "chance_above(self, /, x)\n--\n\nShare of the trials above a value");
  add_record<SobolIndex>(module, "SobolIndex", "Shares of the variance that one input brings");
  auto sobol = add_record<SobolInfo>(module, "Sobol", "Sobol indices of all inputs");
  set_repr(sobol, [](const SobolInfo& s) { return text_of(s); });
  add_page(sobol, [](const SobolInfo& s, const PageUnits& units) { return shared::page_of(s, units); });
  add_explain(sobol, [](const SobolInfo& s) { return s.how; });

  py::class_<UncertaintyQuestion>(module, "UncertaintyQuestion",
                                  "A question about uncertainty: a formula, a chain or a whole answer")
      .def_property_readonly("title", [](const UncertaintyQuestion& q) { return q.title; })
      .def_property_readonly(
          "inputs",
          [](const UncertaintyQuestion& q) {
            py::dict units;
            for (const Variable& v : q.outputs.front().inputs) units[v.name.c_str()] = describe(v.dimension).si_unit;
            return units;
          },
          "Name and SI unit of each input")
      .def_property_readonly(
          "defaults",
          [](const UncertaintyQuestion& q) {
            py::dict known;
            for (const tauten::InputDistribution& g : q.inputs)
              known[g.name.c_str()] = py::make_tuple(g.distribution.mean(), g.distribution.standard_deviation());
            return known;
          },
          "Mean and standard deviation of what is taken unless it is given, in SI")
      .def_property_readonly("outputs",
                             [](const UncertaintyQuestion& q) {
                               py::list names;
                               for (const Model& m : q.outputs) names.append(m.output.name);
                               return py::tuple(names);
                             })
      .def_property_readonly("notices", [](const UncertaintyQuestion& q) { return to_python(q.notices); })
      .def_property_readonly("others", [](const UncertaintyQuestion& q) { return to_python(q.others); })
      .def("__repr__", [](const UncertaintyQuestion& q) { return "UncertaintyQuestion(" + q.title + ")"; })
      .def("budget", budget_of)
      .def("monte_carlo", monte_carlo_of)
      .def("sobol", sobol_of);
  module.def("formula_question", formula_question);
  module.def("distribution_numbers", [](const std::string& shape, const py::tuple& values) {
    return to_python(distribution_numbers(shape, values));
  });
  module.def("describe_distribution", [](const std::string& shape, const py::tuple& numbers, const py::object& chance) {
    std::vector<double> x;
    for (const py::handle number : numbers) x.push_back(number.cast<double>());
    const Distribution d = made(shape, x).value();
    if (!chance.is_none()) return py::object(py::float_(d.quantile(read_chance(chance))));
    return py::object(py::make_tuple(d.mean(), d.standard_deviation()));
  });
}

}  // namespace tauten::python
