// The answer about the order of tightening: the order, its passes, the way back, and what elastic interaction leaves.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "tauten/base/caution.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/group/fit.hpp"
#include "tauten/group/flexibility.hpp"
#include "tauten/group/pattern.hpp"
#include "tauten/group/scatter.hpp"
#include "tauten/question/sequence_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Share of the first pass above which gaskets may tilt.
inline constexpr double gentle_first_share = 0.3;

inline std::vector<Force> forces_of(const std::vector<double>& loads) {
  std::vector<Force> forces(loads.size());
  for (std::size_t i = 0; i < loads.size(); ++i) forces[i] = Force(loads[i]);
  return forces;
}

inline Outcome<BoltOrder> try_own_order(const char* name, const std::vector<std::size_t>& numbers, std::size_t count) {
  if (numbers.size() != count)
    return Error(name, (std::string(name) + " has " + std::to_string(numbers.size()) + " bolts, but the pattern has " +
                        std::to_string(count) + "; name each bolt once")
                           .c_str());
  BoltOrder order;
  for (const std::size_t number : numbers) {
    if (number < 1 || number > count)
      return refusal(name, static_cast<double>(number), "but must be the number of a bolt, from 1 to their count");
    order.push_back(number - 1);
  }
  if (const auto valid = try_labels(order); !valid) return Error(name, valid.error().what());
  return order;
}

/// \return true if most bolts are tightened right after a neighbour, as when numbers on a flange that only count are taken
///         for the order
inline bool goes_round(const Pattern& pattern, const BoltOrder& order) {
  const BoltOrder round = circular_order(pattern);
  const std::size_t n = round.size();
  if (n < 4) return false;  // all are neighbours
  std::vector<std::size_t> place(n);
  for (std::size_t i = 0; i < n; ++i) place[round[i]] = i;
  std::size_t beside = 0;
  for (std::size_t i = 1; i < n; ++i) {
    const std::size_t apart = (place[order[i]] + n - place[order[i - 1]]) % n;
    beside += apart == 1 || apart == n - 1;
  }
  return 2 * beside > n;
}

/// \return true if fluid may be behind the joint: in a ring of bolts, in two (an oval flange), in four as far apart as those
///         of a hydraulic port (ISO 6162-1: 38.1 mm x 17.5 mm to 152.4 mm x 92.1 mm), and in all other patterns but rows
///         and columns, as feet, brackets and splice plates have them
inline bool may_be_flange(const Pattern& pattern) {
  constexpr double tolerance = 0.5e-3;  // of places that were measured
  const std::size_t n = pattern.size();
  if (n < 3) return true;
  const std::optional<RingFit> ring = fit_ring(pattern.positions(), n);
  if (ring && ring->greatest <= tolerance) return true;
  Position along = pattern[1];  // from bolt 1 to its nearest neighbour
  for (const Position p : pattern)
    if (p != pattern[0] && distance(p, pattern[0]) < distance(along, pattern[0])) along = p;
  along = {along.x - pattern[0].x, along.y - pattern[0].y};
  const double pitch = std::hypot(along.x, along.y);
  double wide = 0;  // across the rows
  std::size_t lines[2] = {};
  for (int across = 0; across < 2; ++across) {
    const auto apart = [&](Position p, Position q) {
      const double x = p.x - q.x, y = p.y - q.y;
      return std::fabs(across == 1 ? along.x * y - along.y * x : along.x * x + along.y * y) / pitch;
    };
    for (std::size_t i = 0; i < n; ++i) {
      wide = std::max(wide, apart(pattern[i], pattern[0]));  // across the rows in the end: along them it is less
      std::size_t k = 0;
      while (apart(pattern[i], pattern[k]) > tolerance) ++k;
      lines[across] += k == i;
    }
  }
  return lines[0] * lines[1] != n || (n == 4 && lines[1] == 2 && wide < 0.155 && wide > 1.6 * pitch);
}

inline Outcome<BoltOrder> try_order_of(const SequenceJob& job, const Pattern& pattern) {
  const std::size_t n = pattern.size();
  if (!job.order.empty()) return try_own_order("order", job.order, n);
  if (!job.labels.empty()) {
    if (const auto valid = try_own_order("labels", job.labels, n); !valid) return valid.error();
    return try_order_from_labels(job.labels);
  }
  if (auto e = unknown_value("method", job.method)) return *e;
  switch (job.method) {
    case OrderMethod::circular: return circular_order(pattern);
    case OrderMethod::legacy: return try_legacy_order(n);
    case OrderMethod::middle_out: return job.start ? middle_out_order(pattern, *job.start) : middle_out_order(pattern);
    case OrderMethod::crosswise: break;
  }
  return crosswise_order(pattern);
}

inline Outcome<Interaction> try_matrix(const std::vector<std::vector<double>>& rows, std::size_t n) {
  std::vector<double> a(n * n);
  if (rows.size() == 1 && rows[0].size() == 1) {
    // A ring in which only neighbours meet.
    const double c = rows[0][0];
    for (std::size_t i = 0; i < n; ++i) {
      a[i * n + i] = 1;
      if (n > 1) a[i * n + (i + 1) % n] = a[(i + 1) % n * n + i] = c;
    }
    return try_interaction(n, std::move(a));
  }
  if (rows.size() != n)
    return Error("interaction", "interaction is not one row for each bolt; give count x count numbers");
  a.clear();
  for (const std::vector<double>& row : rows) {
    if (row.size() != n) return Error("interaction", "interaction is not one number for each pair of bolts");
    a.insert(a.end(), row.begin(), row.end());
  }
  return try_interaction(n, std::move(a));
}

/// \return the interaction that was given, in one of three ways
inline Outcome<Interaction> try_interaction_of(const SequenceJob& job, const Pattern& pattern, const BoltOrder& order,
                                               TighteningSequence& sequence) {
  if (job.gasket) {
    sequence.notices.push_back({"interaction_estimated",
                                "Interaction from geometry is an order of magnitude: hub, twist of the ring and the "
                                "gasket's own behaviour are "
                                "left out. Measured loads (readings) take precedence.",
                                true});
    const auto circle = fit_ring(pattern.positions(), pattern.size());
    if (!circle) return Error("gasket", "gasket needs bolts that are evenly on a circle; give interaction instead");
    FlangeOnGasket flange = *job.gasket;
    flange.count = pattern.size();
    flange.circle = Length(2 * circle->radius);
    return try_interaction_on_gasket(flange);
  }
  if (job.readings.empty()) return try_matrix(job.interaction, pattern.size());
  sequence.notices.push_back(
      {"equal_bolts_assumed", "Interaction from readings assumes equal bolts and a linear joint.", true});
  std::vector<std::vector<double>> readings;
  for (const std::vector<Force>& turn : job.readings) {
    readings.emplace_back();
    for (const Force load : turn) readings.back().push_back(load.si);
  }
  const auto losses = try_measured_losses(order, readings);
  if (!losses) return losses.error();
  return losses->try_interaction_of_equal_bolts();
}

inline std::optional<Error> load_error(const SequenceJob& job) {
  if (job.load && !is_positive(*job.load))
    return refusal("load", *job.load, "but must be above 0; give the load at the full torque");
  if (job.limit && !is_positive(*job.limit))
    return refusal("limit", *job.limit, "but must be above 0; give the yield load of a bolt");
  for (const auto& [name, scatter] :
       {std::pair{"friction_scatter", job.friction_scatter}, std::pair{"act_scatter", job.act_scatter},
        std::pair{"wrench_scatter", job.wrench_scatter}})
    if (scatter && !(*scatter >= 0 && *scatter <= 1)) return refusal(name, *scatter, "but must be 0 to 1; 0.1 is 10 %");
  return {};
}

/// Adds the loads after each step, the passes that an even joint needs, and what scatter does.
inline std::optional<Error> add_loads(const SequenceJob& job, const Interaction& joint, const BoltOrder& order,
                                      const BoltOrder& settling, const std::vector<TighteningStep>& plan,
                                      TighteningSequence& sequence) {
  const std::size_t n = order.size();
  if (auto error = load_error(job)) return error;
  const Force target = job.load ? *job.load : Force(1);
  std::vector<LoadStep> steps;
  for (const TighteningStep& step : plan) steps.push_back({step.bolt, step.share * target.si});
  const auto history = try_tighten(joint, steps);
  if (!history) return history.error();
  for (const std::vector<double>& loads : *history) sequence.history.push_back(forces_of(loads));
  for (std::size_t pass = 0; pass < sequence.passes.size(); ++pass)
    sequence.passes[pass].loads = sequence.history[(pass + 1) * n - 1];
  sequence.neighbour_loss = neighbour_loss(joint, 0, 1);
  if (job.shortfall) {
    const auto needed = try_passes_needed(joint, {order, settling}, *job.shortfall);
    if (!needed) return needed.error();
    sequence.passes_needed = static_cast<int>(*needed);
    const double rule = passes_by_rule(sequence.neighbour_loss, *job.shortfall);
    if (rule == rule) sequence.passes_by_rule = static_cast<int>(std::max(rule, 1.0));
  }
  if (job.limit || job.load) {
    const Force limit = job.limit ? *job.limit : Force(std::numeric_limits<double>::max());
    const auto first = try_compensated_loads(joint, order, target, limit);
    if (first)
      sequence.first_loads = forces_of(*first);
    else
      sequence.why_no_first_loads = first.error().what();
    if (first && !job.limit)
      sequence.notices.push_back(
          {"first_loads_unchecked",
           "The loads for a one-pass plan were not checked against yield; give limit, the yield load of a bolt."});
  }
  if (!job.friction_scatter && !job.act_scatter && !job.wrench_scatter) return {};
  const LoadScatter scatter{job.friction_scatter.value_or(0), job.act_scatter.value_or(0),
                            job.wrench_scatter.value_or(0)};
  const auto found = try_scattered_loads(joint, steps, scatter, job.trials, job.seed);
  if (!found) return found.error();
  sequence.scattered = found->bolts;
  sequence.lowest = found->lowest;
  sequence.highest = found->highest;
  sequence.relieved = found->relieved;
  return {};
}

/// What goes with elastic interaction, and was given without it.
inline std::optional<Error> needs_interaction(const SequenceJob& job) {
  for (const auto& [name, given] :
       {std::pair{"load", job.load.has_value()}, std::pair{"shortfall", job.shortfall.has_value()},
        std::pair{"limit", job.limit.has_value()}, std::pair{"friction_scatter", job.friction_scatter.has_value()},
        std::pair{"act_scatter", job.act_scatter.has_value()},
        std::pair{"wrench_scatter", job.wrench_scatter.has_value()}})
    if (given)
      return Error(
          name,
          (std::string(name) + " goes with the elastic interaction; give interaction, gasket or readings").c_str());
  return {};
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<TighteningSequence> try_tightening_sequence(const SequenceJob& job) {
  const auto pattern = try_pattern(job.pattern);
  if (!pattern) return Error("pattern", pattern.error().what());
  const std::size_t n = pattern->size();
  const auto order = detail::try_order_of(job, *pattern);
  if (!order) return order.error();
  TighteningSequence sequence;
  sequence.order = numbered(*order);
  const auto labels = try_labels(*order);
  if (!labels) return labels.error();
  for (const std::size_t label : *labels) sequence.labels.push_back(static_cast<int>(label));
  if (job.at_once) {
    const auto sets = try_sets_at_once(n, *job.at_once);
    if (!sets) return sets.error();
    for (const BoltOrder& set : *sets) sequence.sets.push_back(numbered(set));
  }
  if (job.rounds > 100) return refusal("rounds", static_cast<double>(job.rounds), "but must be 0 to 100");
  // The settling round goes round the centre, whatever the numbers of the bolts.
  const bool own = !job.order.empty() || !job.labels.empty();
  const bool outward = job.method == OrderMethod::middle_out;
  const BoltOrder settling = outward ? *order : circular_order(*pattern);
  const auto plan = try_tightening_plan(*order, job.shares, std::vector<BoltOrder>(job.rounds, settling), job.most);
  if (!plan) return plan.error();
  if (job.torque && !is_positive(*job.torque))
    return refusal("torque", *job.torque, "but must be above 0; give the full torque");
  for (const TighteningStep& step : *plan) {
    if (step.pass == sequence.passes.size())
      sequence.passes.push_back({step.share, Torque(job.torque ? step.share * job.torque->si : absent), {}, {}});
    sequence.passes.back().order.push_back(static_cast<int>(step.bolt) + 1);
  }
  if (job.shares.front() > detail::gentle_first_share && job.shares.size() > 1)
    sequence.notices.push_back(
        {"first_pass_high", "The first pass is above 30 % of the torque; gasket makers ask for 30 % at most."});
  if (job.pressurised && !job.person)
    return Error("person", "person is missing; with pressurised give the place of the person, x and y");
  BoltOrder undone = *order;
  if (outward && !own) std::reverse(undone.begin(), undone.end());
  const auto undoing = try_undoing_plan(*pattern, undone, job.pressurised, job.person.value_or(Position{}));
  if (!undoing) return undoing.error();
  sequence.ease = numbered(undoing->ease);
  sequence.remove = numbered(undoing->remove);
  sequence.notices.push_back(cautions::stored_energy);
  if (own && detail::goes_round(*pattern, *order))
    sequence.notices.push_back({"order_goes_round",
                                "In this order neighbours follow each other: the part tilts, and a gasket is crushed "
                                "on one side. Numbers on a "
                                "flange may only count its bolts; then leave them out and tighten crosswise."});
  if (job.pressurised)
    sequence.notices.push_back(
        {"pressure_trapped",
         "Pressure may be trapped. Prove that it is zero; ease the bolts on the far side first, keep "
         "out of the line of the gap, and wait until nothing flows before any nut comes off."});
  else if (detail::may_be_flange(*pattern))
    sequence.notices.push_back(cautions::pressurised_flange);
  else
    sequence.notices.push_back({"no_pressure_assumed",
                                "Taken as feet or a splice without pressure behind. For a cover, "
                                "bonnet or hydraulic flange give pressurised.",
                                true});
  if (!job.gasket && job.readings.empty() && job.interaction.empty()) {
    if (auto error = detail::needs_interaction(job)) return *error;
    return sequence;
  }
  const auto joint = detail::try_interaction_of(job, *pattern, *order, sequence);
  if (!joint) return joint.error();
  if (auto error = detail::add_loads(job, *joint, *order, settling, *plan, sequence)) return *error;
  return sequence;
}

TAUTEN_FUNCTION TighteningSequence tightening_sequence(const SequenceJob& job) {
  return try_tightening_sequence(job).value();
}

}  // namespace tauten::TAUTEN_ABI
