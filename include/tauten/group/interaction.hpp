// Elastic interaction: tightening one bolt changes the loads of the others.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "tauten/group/dense.hpp"
#include "tauten/group/ring.hpp"
#include "tauten/group/sequence.hpp"

namespace tauten::TAUTEN_ABI {

/// Flexibilities of a joint, A = bolt flexibility on the diagonal plus compression of the joint at i by a load at k.
/// Symmetric (virtual work) and positive definite; any unit, as only ratios count. `try_interaction` makes it.
class Interaction {
 public:
  std::size_t size() const noexcept { return size_; }
  double operator()(std::size_t i, std::size_t k) const noexcept { return a_[i * size_ + k]; }

 private:
  Interaction(std::size_t size, std::vector<double> a) : size_(size), a_(std::move(a)) {}
  friend Outcome<Interaction> try_interaction(std::size_t count, std::vector<double> flexibilities);

  std::size_t size_;
  std::vector<double> a_;
};

/// \param count          number of bolts
/// \param flexibilities  count x count, row by row
/// \return the interaction; or an error if they are not count x count, not finite, not symmetric to 1e-9, or not
///         positive definite
inline Outcome<Interaction> try_interaction(std::size_t count, std::vector<double> flexibilities) {
  if (count < 2 || count > 1000)
    return refusal("count", static_cast<double>(count), "but must be 2 to 1000; give the number of bolts");
  if (flexibilities.size() != count * count)
    return Error("flexibilities", "flexibilities are not count x count; give one for every pair of bolts");
  for (std::size_t i = 0; i < count; ++i)
    for (std::size_t k = 0; k <= i; ++k) {
      const double a = flexibilities[i * count + k];
      const double b = flexibilities[k * count + i];
      if (!std::isfinite(a) || !(std::fabs(a - b) <= 1e-9 * std::fabs(flexibilities[i * count + i])))
        return detail::bolt_error("interaction", i,
                                  "has one that is not finite or not symmetric; what i does to k, k must do to i");
    }
  std::vector<double> factor = flexibilities;
  if (!detail::cholesky(factor, count))
    return Error("interaction",
                 "interaction is not positive definite, as that of an elastic joint is; check that neighbours are "
                 "smaller than the diagonal");
  return Interaction(count, std::move(flexibilities));
}

namespace detail {

/// Loads of the tight bolts: A F = a where F > 0; F = 0 where the nut is clear, A F >= a. The matrix being positive
/// definite, exchanging one bolt at a time, lowest number first, ends (Murty).
/// \param in    bolts with a nut on
/// \param held  one bolt whose load is given instead of its nut, or size()
inline std::vector<double> loads_of(const Interaction& A, const std::vector<double>& nut, const std::vector<bool>& in,
                                    std::size_t held, double load) {
  const std::size_t n = A.size();
  std::vector<bool> tight = in;
  std::vector<double> loads;
  for (std::size_t round = 0; round < 100000; ++round) {
    std::vector<std::size_t> set;
    for (std::size_t i = 0; i < n; ++i)
      if (tight[i] && i != held) set.push_back(i);
    std::vector<double> matrix(set.size() * set.size());
    std::vector<double> x(set.size());
    for (std::size_t r = 0; r < set.size(); ++r) {
      x[r] = nut[set[r]] - (held < n ? A(set[r], held) * load : 0);
      for (std::size_t c = 0; c < set.size(); ++c) matrix[r * set.size() + c] = A(set[r], set[c]);
    }
    cholesky(matrix, set.size());
    cholesky_solve(matrix, set.size(), x);
    loads.assign(n, 0);
    for (std::size_t r = 0; r < set.size(); ++r) loads[set[r]] = x[r];
    if (held < n) loads[held] = load;
    std::size_t wrong = n;
    for (std::size_t i = 0; i < n && wrong == n; ++i) {
      if (!in[i] || i == held) continue;
      double gap = -nut[i];
      double size = std::fabs(nut[i]);
      for (std::size_t k = 0; k < n; ++k) {
        gap += A(i, k) * loads[k];
        size += std::fabs(A(i, k) * loads[k]);
      }
      if (tight[i] ? loads[i] < 0 : gap < -1e-12 * size) wrong = i;
    }
    if (wrong == n) break;
    tight[wrong] = !tight[wrong];
  }
  return loads;
}

}  // namespace detail

/// Loads of all bolts while one after another is tightened. All other nuts stay where they are; a bolt that others
/// relieve to zero stays at zero and comes back when its nut is reached again.
/// As long as all tight bolts carry something, a step adds a fixed answer of the others to it. That answer depends on
/// which bolts are tight. It comes from the triangular factor of A in the order in which the bolts were first tightened,
/// one row more for each, zeros in front left out: a ring whose bolts meet a few neighbours costs little.
class TighteningRun {
 public:
  explicit TighteningRun(const Interaction& joint)
      : joint_(joint), loads_(joint.size()), nut_(joint.size()), in_(joint.size()), rank_(joint.size()) {}

  const std::vector<double>& loads() const noexcept { return loads_; }
  /// \return true if some tightened bolt carries nothing now
  bool slack() const noexcept { return slack_; }

  /// Tightens a bolt until it carries a load. A wrench never loosens: above it already, the bolt stays as it is.
  /// \param bolt  index below the number of bolts
  /// \param load  finite, 0 or more
  void tighten(std::size_t bolt, double load) {
    if (!(loads_[bolt] < load)) return;
    if (!slack_) {
      const std::vector<double>& others = response(bolt);
      const double rise = load - loads_[bolt];
      bool relieved = false;
      for (std::size_t i = 0; i < loads_.size(); ++i) relieved = relieved || loads_[i] + rise * others[i] < 0;
      if (!relieved) {
        for (std::size_t i = 0; i < loads_.size(); ++i) loads_[i] += rise * others[i];
        loads_[bolt] = load;
        return;
      }
      for (std::size_t i = 0; i < loads_.size(); ++i) nut_[i] = in_[i] ? stretch(i) : 0;
    }
    if (!in_[bolt]) add(bolt);
    loads_ = detail::loads_of(joint_, nut_, in_, bolt, load);
    nut_[bolt] = stretch(bolt);
    slack_ = false;
    for (std::size_t i = 0; i < loads_.size(); ++i) slack_ = slack_ || (in_[i] && !(loads_[i] > 0));
  }

  /// \return how all bolts change per load that this one gains, itself by 1; the bolt counts as tight from now on
  const std::vector<double>& response(std::size_t bolt) {
    const bool fresh = !in_[bolt];
    if (fresh) add(bolt);
    std::vector<double>& answer = answers_[bolt];
    if (!answer.empty()) return answer;
    const std::size_t n = order_.size();
    std::vector<double> x(n);
    const std::size_t at = rank_[bolt];
    if (fresh) {
      // -L^-T times its own row: the factor of the others is the part of L above it.
      for (std::size_t k = 0; k < factor_[at].size() - 1; ++k) x[first_[at] + k] = -factor_[at][k];
    } else {
      x[at] = 1 / factor_[at].back();
      for (std::size_t i = at + 1; i < n; ++i) {
        const std::size_t from = std::max(first_[i], at);
        x[i] = -detail::dot(factor_[i].data() + (from - first_[i]), x.data() + from, i - std::min(from, i)) /
               factor_[i].back();
      }
    }
    for (std::size_t i = fresh ? at : n; i-- > 0;) {
      x[i] /= factor_[i].back();
      for (std::size_t k = first_[i]; k < i; ++k) x[k] -= factor_[i][k - first_[i]] * x[i];
    }
    const double own = fresh ? 1 : x[at];
    answer.assign(joint_.size(), 0);
    for (std::size_t i = 0; i < n; ++i) answer[order_[i]] = x[i] / own;
    answer[bolt] = 1;
    return answer;
  }

 private:
  double stretch(std::size_t bolt) const noexcept {
    double sum = 0;
    for (std::size_t k = 0; k < loads_.size(); ++k) sum += joint_(bolt, k) * loads_[k];
    return sum;
  }
  void add(std::size_t bolt) {
    answers_.assign(joint_.size(), {});  // they held for fewer tight bolts
    std::size_t first = 0;
    while (first < order_.size() && joint_(bolt, order_[first]) == 0) ++first;
    std::vector<double> row;
    double pivot = joint_(bolt, bolt);
    for (std::size_t i = first; i < order_.size(); ++i) {
      const std::size_t from = std::max(first, first_[i]);
      const double sum =
          i > from ? detail::dot(row.data() + (from - first), factor_[i].data() + (from - first_[i]), i - from) : 0;
      row.push_back((joint_(bolt, order_[i]) - sum) / factor_[i].back());
      pivot -= row.back() * row.back();
    }
    row.push_back(std::sqrt(pivot));
    rank_[bolt] = order_.size();
    in_[bolt] = true;
    order_.push_back(bolt);
    first_.push_back(first);
    factor_.push_back(std::move(row));
  }

  const Interaction& joint_;
  std::vector<double> loads_;
  std::vector<double> nut_;  // where nuts are, A F; kept while some bolt is slack
  std::vector<bool> in_;
  std::vector<std::size_t> rank_;
  bool slack_ = false;
  std::vector<std::size_t> order_;            // tight bolts in the order in which they became so
  std::vector<std::size_t> first_;            // column of the first element of a row
  std::vector<std::vector<double>> factor_;   // rows of L from there to the diagonal
  std::vector<std::vector<double>> answers_;  // of each bolt, with the tight bolts as they are; empty: not known
};

/// A bolt that is tightened until it carries a load.
struct LoadStep {
  std::size_t bolt = 0;
  double load = 0;  ///< N; the wrench never loosens: above it already, the bolt stays as it is
};

namespace detail {

inline std::optional<Error> load_step_error(std::size_t bolts, const std::vector<LoadStep>& steps) {
  for (const LoadStep step : steps) {
    if (step.bolt >= bolts) return bolt_error("steps", step.bolt, "is not in the joint; give one that is");
    if (!(step.load >= 0 && std::isfinite(step.load)))
      return refusal("load", Force(step.load), "but must be 0 or more; a wrench does not loosen");
  }
  return {};
}

}  // namespace detail

/// Loads of all bolts after every step; see `TighteningRun`.
/// \return one list of loads per step; or an error for a bolt that is not there or a load that is negative or not finite
/// Source: compatibility of an elastic joint; scatter, gasket creep and nonlinear gaskets are outside.
inline Outcome<std::vector<std::vector<double>>> try_tighten(const Interaction& joint,
                                                             const std::vector<LoadStep>& steps) {
  if (auto error = detail::load_step_error(joint.size(), steps)) return *error;
  TighteningRun run(joint);
  std::vector<std::vector<double>> history;
  for (const LoadStep step : steps) {
    run.tighten(step.bolt, step.load);
    history.push_back(run.loads());
  }
  return history;
}

/// Loads to which each bolt is tightened, once and in the given order, so that all end at the target.
/// \param limit  load that a bolt may reach, such as its yield load
/// \return the loads in the order of the bolts; or an error where one is above the limit or not above zero
inline Outcome<std::vector<double>> try_compensated_loads(const Interaction& joint, const BoltOrder& order,
                                                          Force target, Force limit) {
  if (!is_positive(target)) return refusal("target", target, "but must be above 0; give the load at the end");
  if (!is_positive(limit)) return refusal("limit", limit, "but must be above 0; give the yield load of a bolt");
  if (const auto valid = try_labels(order); !valid || order.size() != joint.size())
    return Error("order", "order must name each bolt of the joint once");
  std::vector<double> nut(joint.size());
  for (std::size_t i = 0; i < joint.size(); ++i)
    for (std::size_t k = 0; k < joint.size(); ++k) nut[i] += joint(i, k) * target.si;
  std::vector<bool> in(joint.size());
  std::vector<double> first(joint.size());
  for (const std::size_t bolt : order) {
    in[bolt] = true;
    first[bolt] = detail::loads_of(joint, nut, in, joint.size(), 0)[bolt];
    if (!(first[bolt] > 0)) return detail::bolt_error("order", bolt, "would need no load at its turn; use more passes");
    if (first[bolt] > limit.si)
      return detail::bolt_error("limit", bolt, "would be tightened beyond the limit in one pass; use more passes");
  }
  return first;
}

/// Full passes at the target, each in its own order, until no bolt is below it by more than a share.
/// \param orders    of the passes; the last one is repeated
/// \param shortfall share of the target, above 0 and below 1
/// \return their number; or an error for orders that do not name each bolt once, a shortfall out of range, or where 1000
///         passes are not enough
inline Outcome<std::size_t> try_passes_needed(const Interaction& joint, const std::vector<BoltOrder>& orders,
                                              double shortfall) {
  if (!(shortfall > 0 && shortfall < 1))
    return refusal("shortfall", shortfall, "but must be above 0 and below 1; 0.05 is 5 %");
  if (orders.empty()) return Error("orders", "orders is empty; give the order of at least one pass");
  for (const BoltOrder& order : orders)
    if (const auto valid = try_labels(order); !valid || order.size() != joint.size())
      return Error("orders", "each of the orders must name each bolt of the joint once");
  TighteningRun run(joint);
  for (std::size_t pass = 0; pass < 1000; ++pass) {
    for (const std::size_t bolt : orders[std::min(pass, orders.size() - 1)]) run.tighten(bolt, 1);
    if (*std::min_element(run.loads().begin(), run.loads().end()) >= 1 - shortfall) return pass + 1;
  }
  return Error("shortfall", "1000 passes are not enough; accept a larger shortfall");
}

/// Quick rule for full passes until all bolts are within a share of the target, ceil(ln(t/2)/ln c).
/// \param c  load a neighbour loses per load gained, 0 to 1; \param t  share, 0 to 1. NaN outside.
inline double passes_by_rule(double c, double t) noexcept {
  return c > 0 && c < 1 && t > 0 && t < 1 ? std::ceil(PassesForEvenness::eval(c, t)) : std::nan("");
}

}  // namespace tauten::TAUTEN_ABI
