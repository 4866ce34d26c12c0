// Where the elastic interaction of a joint comes from: its geometry, as an order of magnitude, or measured loads.
#pragma once

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

#include "tauten/group/interaction.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::optional<Error> flange_on_gasket_error(const FlangeOnGasket& f) {
  if (f.count < 3 || f.count > 1000)
    return refusal("count", static_cast<double>(f.count), "but must be 3 to 1000; give the number of bolts");
  for (const auto& [name, q] : {std::pair{"circle", f.circle},
                                {"ring_width", f.ring_width},
                                {"ring_thickness", f.ring_thickness},
                                {"gasket_width", f.gasket_width},
                                {"gasket_thickness", f.gasket_thickness},
                                {"bolt_length", f.bolt_length}})
    if (!is_positive(q)) return refusal(name, q, "but must be above 0; measure it");
  for (const auto& [name, q] : {std::pair{"ring_modulus", f.ring_modulus},
                                {"gasket_modulus", f.gasket_modulus},
                                {"bolt_modulus", f.bolt_modulus}})
    if (!is_positive(q)) return refusal(name, q, "but must be above 0; steel has 210 GPa");
  if (!is_positive(f.bolt_area)) return refusal("bolt_area", f.bolt_area, "but must be above 0; give that of one bolt");
  return {};
}

/// The matrix of a ring of equal bolts from the compression at each distance in bolts.
template <class Compression>
Outcome<Interaction> ring_interaction(std::size_t n, double bolt, const Compression& at) {
  std::vector<double> by_distance;
  for (std::size_t k = 0; k <= n / 2; ++k) by_distance.push_back(at(k));
  std::vector<double> a(n * n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t k = 0; k < n; ++k) {
      const std::size_t apart = i > k ? i - k : k - i;
      a[i * n + k] = by_distance[std::min(apart, n - apart)] + (i == k ? bolt : 0);
    }
  return try_interaction(n, std::move(a));
}

}  // namespace detail

/// Interaction of a ring that bends on a gasket, as an order of magnitude: the ring is a beam on an elastic bed, closed
/// on itself; h(x) = beta/(2 k) e^(-beta x)(cos beta x + sin beta x), summed over the ways round, with
/// beta = (k/(4 E I))^(1/4) and k = 2 E_g w/t_g to the middle plane of the gasket. Hub, twist of the ring and the gasket's
/// own nonlinearity are left out: the coefficients are good to a factor of 2 at best. Measured ones go before them.
/// \return the interaction; or an error for a measure that is not above 0
/// Source: compatibility of a beam on an elastic bed (Hetenyi), from memory; the model is checked against a ring of finite
/// elements, the real flange against nothing.
inline Outcome<Interaction> try_interaction_on_gasket(const FlangeOnGasket& f) {
  if (auto error = detail::flange_on_gasket_error(f)) return *error;
  const double bed = 2 * f.gasket_modulus.si * f.gasket_width.si / f.gasket_thickness.si;
  const double inertia = f.ring_width.si * std::pow(f.ring_thickness.si, 3) / 12;
  const double beta = std::pow(bed / (4 * f.ring_modulus.si * inertia), 0.25);
  const double round = pi<double>() * f.circle.si;
  const auto once = [&](double x) { return std::exp(-beta * x) * (std::cos(beta * x) + std::sin(beta * x)); };
  const auto compression = [&](std::size_t apart) {
    const double x = round * static_cast<double>(apart) / static_cast<double>(f.count);
    double sum = once(x);
    // Where the ring is stiff, its waves go round many times; 1e-17 of the first ends them.
    for (double more = round; beta * (more - x) < 40; more += round) sum += once(more + x) + once(more - x);
    return beta / (2 * bed) * sum;
  };
  // Nearly rigid rings would need endless turns; they have their own model.
  if (!(beta * round > 1e-3))
    return Error("ring_thickness", "the ring is too stiff to bend on this gasket; take it as rigid");
  return detail::ring_interaction(f.count, f.bolt_length.si / (f.bolt_modulus.si * f.bolt_area.si), compression);
}

/// Interaction of a flange that does not bend on a ring of gasket: h = (1 + 2 q cos angle)/K, q = (bolt circle over
/// gasket circle)^2, K stiffness of the whole gasket. Bolts opposite gain when q is above 1/2. An order of magnitude, as
/// above.
/// \param gasket_circle  mean diameter of the gasket; \param gasket  K; \param bolt  resilience of one bolt
inline Outcome<Interaction> try_interaction_rigid(std::size_t count, Length circle, Length gasket_circle,
                                                  Quantity<Dim::stiffness> gasket, Quantity<Dim::compliance> bolt) {
  if (count < 2 || count > 1000)
    return refusal("count", static_cast<double>(count), "but must be 2 to 1000; give the number of bolts");
  if (!is_positive(circle)) return refusal("circle", circle, "but must be above 0; give the bolt circle");
  if (!is_positive(gasket_circle)) return refusal("gasket_circle", gasket_circle, "but must be above 0");
  if (!is_positive(gasket)) return refusal("gasket", gasket, "but must be above 0; give the whole gasket's stiffness");
  if (!is_positive(bolt)) return refusal("bolt", bolt, "but must be above 0; give the resilience of one bolt");
  const double q = circle.si * circle.si / (gasket_circle.si * gasket_circle.si);
  return detail::ring_interaction(count, bolt.si, [&](std::size_t apart) {
    const double angle = 2 * pi<double>() * static_cast<double>(apart) / static_cast<double>(count);
    return (1 + 2 * q * std::cos(angle)) / gasket.si;
  });
}

/// \return how much of the load that bolt `gains` gains bolt `loses` loses, when these two alone are tight
inline double neighbour_loss(const Interaction& joint, std::size_t loses, std::size_t gains) noexcept {
  return joint(loses, gains) / joint(loses, loses);
}

/// Loads read while the bolts of a joint were tightened one after another, once: what each bolt took from those before
/// it. It holds for this order and a linear joint.
class MeasuredLosses {
 public:
  const BoltOrder& order() const noexcept { return order_; }
  /// \return load lost by the bolt at turn `earlier` per load gained by the one at turn `later`; negative: a gain
  double loss(std::size_t earlier, std::size_t later) const noexcept { return loss_[later][earlier]; }

  /// Loads to which each bolt is tightened once, in the order, so that all end at the target.
  /// \param limit  load that a bolt may reach, such as its yield load
  /// \return the loads by bolt; or an error where one is above the limit or not above 0
  Outcome<std::vector<double>> try_first_loads(Force target, Force limit) const {
    if (!is_positive(target)) return refusal("target", target, "but must be above 0; give the load at the end");
    if (!is_positive(limit)) return refusal("limit", limit, "but must be above 0; give the yield load of a bolt");
    std::vector<double> first(order_.size());
    for (std::size_t turn = order_.size(); turn-- > 0;) {
      double load = target.si;
      for (std::size_t later = turn + 1; later < order_.size(); ++later)
        load += loss_[later][turn] * first[order_[later]];
      const std::size_t bolt = order_[turn];
      if (!(load > 0)) return detail::bolt_error("order", bolt, "would need no load at its turn; use more passes");
      if (load > limit.si)
        return detail::bolt_error("limit", bolt, "would be tightened beyond the limit in one pass; use more passes");
      first[bolt] = load;
    }
    return first;
  }

  /// The elastic joint behind the readings, if all bolts are alike: with it any order and any passes can be followed.
  /// \return the interaction, in units of one bolt with its place; or an error if the readings fit no elastic joint
  Outcome<Interaction> try_interaction_of_equal_bolts() const {
    const std::size_t n = order_.size();
    std::vector<double> a(n * n);
    for (std::size_t later = 0; later < n; ++later) {
      a[order_[later] * n + order_[later]] = 1;
      // The others' nuts stay: A_others loss = compression by the later one.
      for (std::size_t i = 0; i < later; ++i) {
        double sum = 0;
        for (std::size_t k = 0; k < later; ++k) sum += a[order_[i] * n + order_[k]] * loss_[later][k];
        a[order_[i] * n + order_[later]] = a[order_[later] * n + order_[i]] = sum;
      }
    }
    return try_interaction(n, std::move(a));
  }

 private:
  friend Outcome<MeasuredLosses> try_measured_losses(BoltOrder order, const std::vector<std::vector<double>>& readings);
  MeasuredLosses(BoltOrder order, std::vector<std::vector<double>> loss)
      : order_(std::move(order)), loss_(std::move(loss)) {}

  BoltOrder order_;
  std::vector<std::vector<double>> loss_;  // [later turn][earlier turn]
};

/// \param order     in which the bolts were tightened, each once
/// \param readings  loads of all bolts, in the order of the bolts, after each turn: n lists of n
/// \return the losses; or an error for readings that are not n x n and finite, or a bolt that gained no load at its turn
/// Source: elastic interaction method of Bibel and Ezell, as described in US patent 5,278,775 (abstract).
inline Outcome<MeasuredLosses> try_measured_losses(BoltOrder order, const std::vector<std::vector<double>>& readings) {
  if (const auto valid = try_labels(order); !valid) return valid.error();
  const std::size_t n = order.size();
  if (readings.size() != n)
    return refusal("readings", static_cast<double>(readings.size()), "but must be one list for each turn of the order");
  std::vector<std::vector<double>> loss;
  for (std::size_t turn = 0; turn < n; ++turn) {
    if (readings[turn].size() != n)
      return detail::bolt_error("readings", turn, "has a list of another length; read all bolts after each turn");
    for (const double load : readings[turn])
      if (!std::isfinite(load)) return detail::bolt_error("readings", turn, "has a reading that is not a number");
    const auto before = [&](std::size_t bolt) { return turn == 0 ? 0 : readings[turn - 1][bolt]; };
    const double gain = readings[turn][order[turn]] - before(order[turn]);
    if (!(gain > 0)) return detail::bolt_error("readings", turn, "gained no load at its turn; check the order");
    std::vector<double>& row = loss.emplace_back();
    for (std::size_t earlier = 0; earlier < turn; ++earlier)
      row.push_back((before(order[earlier]) - readings[turn][order[earlier]]) / gain);
  }
  return MeasuredLosses(std::move(order), std::move(loss));
}

}  // namespace tauten::TAUTEN_ABI
