// The pages of a study of uncertainty: how certain a figure is, and which input makes it uncertain.
#pragma once

#include "tauten/base/plain_words.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/uncertainty/budget.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"
#include "tauten/uncertainty/sobol.hpp"
#include "tauten/uncertainty/trial_chance.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

/// One result of a question with all that was found out about it.
struct UncertaintyResult {
  Budget budget;
  MonteCarlo run;
  std::optional<Sobol> sobol{};
};

/// \param unit  in SI, as a budget names it
/// \return the dimension; plain number for a unit that is not known
inline Dim dimension_of_unit(std::string_view unit) {
  for (int i = 0; i < dimension_count; ++i)
    if (unit == describe(static_cast<Dim>(i)).si_unit) return static_cast<Dim>(i);
  return Dim::number;
}

namespace detail {

/// Digits of a mean; those of an uncertainty are the digits of a page.
inline constexpr int mean_digits = 4;

/// A value in the one unit of its column.
inline std::string even_text(double si, Dim dimension, const PageUnits& units, int digits = page_digits) {
  const std::string unit = units.unit(dimension);
  return number_text(si / units.one(dimension), digits) + (unit.empty() ? "" : " " + unit);
}

inline PageTable budget_table(const Budget& budget, const PageUnits& units) {
  const Dim out = dimension_of_unit(budget.unit);
  PageTable table{"What makes " + budget.output + " uncertain",
                  {{"Input"},
                   {"Mean", "", true},
                   {"Uncertainty", "", true},
                   {"Sensitivity", "", true},
                   {"Contribution", "", true},
                   {"Share", "%", true}},
                  {},
                  {}};
  for (const Contribution& c : budget.contributions) {
    if (c.standard_uncertainty == 0) continue;
    const Dim in = dimension_of_unit(c.unit);
    const double one = units.one(in);
    const std::string unit = units.unit(in);
    table.rows.push_back({c.name, even_text(c.estimate, in, units, mean_digits),
                          even_text(c.standard_uncertainty, in, units),
                          even_text(c.sensitivity * one, out, units) + " for 1" + (unit.empty() ? "" : " " + unit),
                          even_text(c.contribution, out, units), number_text(std::round(100 * c.share) + 0.0, 3)});
  }
  return table;
}

inline std::string budget_text(const Budget& budget, const PageUnits& units) {
  const Dim d = dimension_of_unit(budget.unit);
  return even_text(budget.value, d, units, mean_digits) + ", standard uncertainty " +
         even_text(budget.standard_uncertainty, d, units);
}

inline std::string run_headline(const MonteCarlo& run, Dim d, const PageUnits& units) {
  const auto text = [&](double si) { return even_text(si, d, units, mean_digits); };
  return run.output + ": " + text(run.mean) + " with standard uncertainty " +
         even_text(run.standard_uncertainty, d, units) + "; " + PageUnits::percent(run.coverage, mean_digits) +
         " of the trials lie between " + text(run.symmetric.low) + " and " + text(run.symmetric.high) +
         (run.stopped ? ", as far as it was run." : ".");
}

/// \param budget  nullptr if there is none to compare with
inline PageTable run_table(const MonteCarlo& run, const Budget* budget, Dim d, const PageUnits& units) {
  const auto text = [&](double si, int digits = mean_digits) { return even_text(si, d, units, digits); };
  const std::string covered = PageUnits::percent(run.coverage, mean_digits);
  PageTable table{run.output,
                  {{""}, {""}},
                  {{"Mean", text(run.mean)},
                   {"Standard uncertainty", text(run.standard_uncertainty, page_digits)},
                   {covered + ", symmetric interval", text(run.symmetric.low) + " to " + text(run.symmetric.high)},
                   {covered + ", shortest interval", text(run.shortest.low) + " to " + text(run.shortest.high)}},
                  {}};
  if (budget) table.rows.push_back({"First-order estimate", budget_text(*budget, units)});
  table.rows.push_back({"Trials", std::to_string(run.trials)});
  if (run.outside > 0) table.rows.push_back({"Without a value, left out", std::to_string(run.outside)});
  table.rows.push_back({"Numerical tolerance", text(run.tolerance, 2)});
  if (d == Dim::number)
    table.legend.push_back("The ratio exceeds 1 in " + trial_chance_text(run.chance_above(1), run.values.size()) +
                           " of trials.");
  if (run.stopped)
    table.legend.push_back("The run was stopped; these are the figures so far.");
  else if (!run.converged)
    table.legend.push_back("Not certain to the digits requested; use more trials.");
  return table;
}

inline PageTable sobol_table(const Sobol& sobol) {
  // A run that was stopped early knows of no error yet.
  const auto index = [](double x) -> std::string {
    return std::isfinite(x) ? PlainNumber::fixed(x, 3).c_str() : "unknown";
  };
  PageTable table{"Sobol indices of " + sobol.output + ": share of the variance by the input alone, and with others",
                  {{"Input"}, {"First", "", true}, {"Error", "", true}, {"Total", "", true}, {"Error", "", true}},
                  {},
                  {}};
  for (const SobolIndex& i : sobol.inputs)
    if (i.total != 0 || i.first != 0)
      table.rows.push_back({i.name, index(i.first), index(i.first_error), index(i.total), index(i.total_error)});
  if (sobol.stopped) table.legend.push_back("The run was stopped; these are the figures so far.");
  return table;
}

}  // namespace detail

/// \return a budget laid out for people
inline Page page_of(const Budget& budget, const PageUnits& units = {}) {
  Page page;
  page.headline = budget.output + ": " + detail::budget_text(budget, units) + ".";
  page.tables = {detail::budget_table(budget, units)};
  page.standing_cautions = false;
  return page;
}

/// \param dimension  of the result
inline Page page_of(const MonteCarlo& run, Dim dimension, const PageUnits& units = {}) {
  Page page;
  page.headline = detail::run_headline(run, dimension, units);
  page.tables = {detail::run_table(run, nullptr, dimension, units)};
  page.standing_cautions = false;
  return page;
}

inline Page page_of(const Sobol& sobol, const PageUnits& = {}) {
  Page page;
  const SobolIndex* most = nullptr;
  for (const SobolIndex& i : sobol.inputs)
    if (!most || i.first > most->first) most = &i;
  page.headline = sobol.output + ": ";
  page.headline += most
                       ? most->name + " brings most of the variance, " + PageUnits::percent(most->first) + " by itself."
                       : std::string("no input is uncertain.");
  page.tables = {detail::sobol_table(sobol)};
  page.standing_cautions = false;
  return page;
}

/// \param results  of the question's outputs, at least one
inline Page page_of(const UncertaintyQuestion& question, const std::vector<UncertaintyResult>& results,
                    const PageUnits& units = {}) {
  Page page;
  const UncertaintyResult& first = results.front();
  page.headline = question.title + ", " + detail::run_headline(first.run, dimension_of_unit(first.budget.unit), units);
  for (const UncertaintyResult& result : results) {
    page.tables.push_back(detail::run_table(result.run, &result.budget, dimension_of_unit(result.budget.unit), units));
    page.tables.push_back(detail::budget_table(result.budget, units));
    if (!result.sobol) continue;
    page.tables.push_back(detail::sobol_table(*result.sobol));
    for (const Correlation& pair : question.correlations)
      page.tables.back().legend.push_back("The indices take " + plain_words(pair.first) + " and " +
                                          plain_words(pair.second) + " as independent.");
  }
  page.standing_cautions = !question.notices.empty();
  page.add(question.notices, units);
  page.limit_cautions();
  return page;
}

}  // namespace tauten::TAUTEN_ABI
