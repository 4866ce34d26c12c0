// A round section under tension and torsion that turns plastic from the outside in.
#pragma once

#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/tightening/bolt_steel.hpp"

namespace tauten {

/// Force and torque of a section, and how they answer to strain (e) and twist per length (k).
struct SectionLoad {
  double force = 0;
  double torque = 0;
  double force_by_e = 0;
  double force_by_k = 0;
  double torque_by_e = 0;
  double torque_by_k = 0;
};

/// Rings of equal width, each with a tension and a shear stress; strain is even over the section, shear grows with the
/// radius. Von Mises yield condition, isotropic hardening, backward Euler return. A ring stands at the radius that
/// makes the elastic torsion exact; a last fibre without area sits on the surface. Halving the ring width divides the
/// error by four.
class RoundSection {
 public:
  /// \param radius  of the section, m
  /// \param steel   checked by `try_flow_curve`
  /// \param rings   number of rings, at least 1
  RoundSection(double radius, const BoltSteel& steel, int rings)
      : flow_(steel), e_(steel.elastic_modulus.si), g_(e_ / (2 * (1 + steel.poisson_ratio))) {
    for (int i = 0; i < rings; ++i) {
      const double inner = radius * i / rings;
      const double outer = radius * (i + 1) / rings;
      const double area = pi<double>() * (outer * outer - inner * inner);
      fibres_.push_back({sqrt((outer * outer + inner * inner) / 2), area, {}, {}});
    }
    fibres_.push_back({radius, 0, {}, {}});
    for (Fibre& f : fibres_) f.kept.yield = f.now.yield = flow_.start();
  }

  /// Loads at a strain and a twist, from the state last kept.
  SectionLoad respond(double strain, double twist) noexcept {
    SectionLoad sum;
    for (Fibre& f : fibres_) respond(f, strain, twist, sum);
    return sum;
  }
  /// Makes the state of the last response the one to go on from.
  void keep() noexcept {
    for (Fibre& f : fibres_) f.kept = f.now;
  }

  double area() const noexcept {
    return sum([](const Fibre& f) { return f.area; });
  }
  double surface_strain() const noexcept { return fibres_.back().kept.plastic; }
  double surface_stress() const noexcept { return equivalent(fibres_.back().kept); }
  /// \return area-weighted mean of the equivalent plastic strain
  double mean_strain() const noexcept {
    return sum([](const Fibre& f) { return f.area * f.kept.plastic; }) / area();
  }
  /// \return share of the radius that has stayed elastic
  double elastic_core() const noexcept {
    double core = 0;
    for (const Fibre& f : fibres_)
      if (f.kept.plastic == 0) core = f.radius;
    return core / fibres_.back().radius;
  }
  /// \return elastic energy per length
  double stored_energy() const noexcept {
    return sum(
        [this](const Fibre& f) { return f.area * (square(f.kept.tension) / e_ + square(f.kept.shear) / g_) / 2; });
  }
  /// \return plastic work per length
  double plastic_work() const noexcept {
    return sum([](const Fibre& f) { return f.area * f.kept.work; });
  }
  double yield_start() const noexcept { return flow_.start(); }

 private:
  struct State {
    double tension = 0;
    double shear = 0;
    double plastic_strain = 0;  ///< along the axis
    double plastic_shear = 0;
    double plastic = 0;  ///< equivalent plastic strain
    double yield = 0;    ///< flow stress at it
    double work = 0;     ///< plastic work per volume
    double step = 0;     ///< last increment of equivalent plastic strain: first guess for the next
  };
  struct Fibre {
    double radius;
    double area;
    State kept;
    State now;
  };

  static double equivalent(const State& s) noexcept { return sqrt(square(s.tension) + 3 * square(s.shear)); }

  template <class Term>
  double sum(Term term) const noexcept {
    double total = 0;
    for (const Fibre& f : fibres_) total += term(f);
    return total;
  }

  void respond(Fibre& f, double strain, double twist, SectionLoad& sum) noexcept {
    constexpr double root3 = 1.7320508075688772;
    const State& old = f.kept;
    // Trial stresses, the shear scaled so that both lie on a circle at yield.
    const double s = e_ * (strain - old.plastic_strain);
    const double t = root3 * g_ * (twist * f.radius - old.plastic_shear);
    const double trial = s * s + t * t;
    if (trial <= old.yield * old.yield) {
      f.now = old;
      f.now.tension = s;
      f.now.shear = t / root3;
      f.now.step = 0;
      sum.force += f.area * s;
      sum.torque += f.area * f.radius * f.now.shear;
      sum.force_by_e += f.area * e_;
      sum.torque_by_k += f.area * f.radius * f.radius * g_;
      return;
    }
    // Increment of plastic strain at which the returned stress (u, v) meets the flow stress.
    double step = old.step;
    if (step == 0) step = (sqrt(trial) - old.yield) * trial / (e_ * s * s + 3 * g_ * t * t);
    double u = 0, v = 0, m = 0, a = 0, b = 0, by_u = 0, by_v = 0, fall = 0;
    FlowCurve::Value flow{};
    for (int i = 0; i < 30; ++i) {
      flow = flow_.at(old.plastic + step);
      const double per = 1 / flow.stress;
      const double ratio = step * per;
      a = 1 / (1 + e_ * ratio);
      b = 1 / (1 + 3 * g_ * ratio);
      u = s * a;
      v = t * b;
      m = sqrt(u * u + v * v);
      const double growth = (1 - ratio * flow.slope) * per;
      by_u = u * a * e_ * growth;
      by_v = v * b * 3 * g_ * growth;
      fall = (u * by_u + v * by_v) / m + flow.slope;
      const double miss = m - flow.stress;
      if (miss < 1e-10 * flow.stress && miss > -1e-10 * flow.stress) break;
      const double next = step + miss / fall;
      step = next > 0 ? next : step / 2;
    }
    State& now = f.now;
    const double ratio = step / flow.stress;
    now.tension = u;
    now.shear = v / root3;
    now.plastic_strain = old.plastic_strain + ratio * u;
    now.plastic_shear = old.plastic_shear + root3 * ratio * v;
    now.plastic = old.plastic + step;
    now.yield = flow.stress;
    now.work = old.work + step * (old.yield + flow.stress) / 2;
    now.step = step;
    const double lever = f.area * f.radius;
    const double q = 1 / (m * fall);
    const double cross = f.radius * g_ * root3;
    sum.force += f.area * u;
    sum.torque += lever * now.shear;
    sum.force_by_e += f.area * e_ * (a - by_u * u * a * q);
    sum.force_by_k -= f.area * cross * by_u * v * b * q;
    sum.torque_by_e -= lever * e_ / root3 * by_v * u * a * q;
    sum.torque_by_k += lever * f.radius * g_ * (b - by_v * v * b * q);
  }

  FlowCurve flow_;
  double e_;
  double g_;
  std::vector<Fibre> fibres_;
};

}  // namespace tauten
