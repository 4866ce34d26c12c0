// Both torques, at which it comes free and at which it shears, as functions of what scatters.
#pragma once

#include "tauten/base/caution.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/workings/learned_model.hpp"
#include "tauten/uncertainty/uncertainty_question.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Torques at which it comes free and at which the bolt shears, as `simulate` reckons them, on any scalar.
struct FreeFunction {
  ReleaseModel m;

  /// What the inputs are called; in their order.
  static std::array<Variable, 8> variables() {
    return {{{"preload", Dim::force},
             {"thread_growth"},
             {"bearing_growth"},
             {"bond_torque", Dim::torque},
             {"rust_torque", Dim::torque},
             {"prevailing_torque", Dim::torque},
             {"torsion_capacity", Dim::torque},
             {"section_loss"}}};
  }
  std::array<Lognormal, 8> spread() const {
    return {m.preload, m.thread_growth, m.bearing_growth, m.bond, m.rust, m.prevailing, m.shear, m.section_loss};
  }

  template <class Span>
  auto load(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    return smaller<Real>(x[0], m.greatest_preload);
  }
  template <class Span>
  auto on_face(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    const Real growth = x[2] < Real(m.bearing_floor) ? Real(m.bearing_floor) : x[2];
    return m.learned * BreakawayParts::face<Real>(load(x), growth * m.face);
  }
  /// \return the draws of `x` as another model draws them: as far from its medians, in their own scatter
  template <class Real>
  std::array<Real, 8> as_drawn_by(const ReleaseModel& other, const std::array<Real, 8>& x) const {
    const std::array<Lognormal, 8> from = spread(), to = FreeFunction{other}.spread();
    std::array<Real, 8> out;
    for (std::size_t i = 0; i < out.size(); ++i) {
      const double here = from[i].median > 0 ? from[i].log_deviation() : 0;
      out[i] = Real(to[i].median);
      if (here > 0 && to[i].median > 0)
        out[i] = out[i] * pow(x[i] / Real(from[i].median), to[i].log_deviation() / here);
    }
    return out;
  }
  /// \return the factor of what was learned of like fasteners, as `simulate` applies it
  /// \param curve  which of the learned curves
  /// \param torque  the torque that it is about, of a model and its draws
  template <class Real, class Torque>
  Real learned_factor(const std::array<Real, 8>& x, LearnedCurve LearnedShift::* curve, const Torque& torque) const {
    if (!m.shift) return Real(1);
    const FreeFunction base{m.shift->base};
    const std::array<Real, 8> drawn = as_drawn_by(m.shift->base, x);
    const Real earlier = base.learned_factor(drawn, curve, torque);
    const LearnedCurve& learned = (*m.shift).*curve;
    if (!(learned.factor[0] > 0)) return earlier;
    return earlier * learned.factor_at(Real(torque(base, drawn) * earlier));
  }
  template <class Span>
  auto breakaway(const Span& x) const {
    return with_learned(x, &LearnedShift::free,
                        [](const FreeFunction& f, const auto& y) { return f.drawn_breakaway(y); });
  }
  template <class Span>
  auto shear(const Span& x) const {
    return with_learned(x, &LearnedShift::shear, [](const FreeFunction& f, const auto& y) { return f.drawn_shear(y); });
  }

 private:
  template <class Span, class Torque>
  auto with_learned(const Span& x, LearnedCurve LearnedShift::* curve, const Torque& torque) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    std::array<Real, 8> all;
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = x[i];
    return Real(torque(*this, all) * learned_factor(all, curve, torque));
  }
  template <class Span>
  auto drawn_breakaway(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    const Real growth = x[1] < Real(m.thread_floor) ? Real(m.thread_floor) : x[1];
    const Real extra = x[3] + x[4] + x[5];
    const Real torque =
        m.learned * BreakawayParts::thread<Real>(load(x), growth * m.flanks, Real(m.lift), extra) + on_face(x);
    return torque < Real(0) ? Real(0) : torque;
  }
  template <class Span>
  auto drawn_shear(const Span& x) const {
    using Real = std::remove_cvref_t<decltype(x[0])>;
    const Real loss = smaller<Real>(x[7], 0.99);
    // A bolt that is stronger in torsion is stronger in tension by the same factor.
    const double per_load = m.shear.median / m.breaking_load;
    const Real tension = smaller<Real>(load(x) * per_load / (x[6] * square(1 - loss)), 1);
    return x[6] * SectionParts::corroded_torsion(loss) * SectionParts::torsion_beside_tension(tension) + on_face(x);
  }
};

}  // namespace detail

TAUTEN_FUNCTION Outcome<UncertaintyQuestion> try_free_question(const FreeJob& job) {
  if (auto error = detail::job_error(job)) return *error;
  if (job.held)
    return Error(
        "held",
        "held is not taken here: the question is of all fasteners like this one, not of those that have held a "
        "torque; leave it out, or ask free");
  const auto release = detail::try_learned_model(job);
  if (!release) return release.error();
  const detail::FreeFunction f{release->model};
  UncertaintyQuestion out;
  out.title = "stuck fastener, " + std::string(rust_state(job.rust).title);
  out.outputs = {model_of<8>({"breakaway_torque", Dim::torque}, f.variables(), [f](auto x) { return f.breakaway(x); }),
                 model_of<8>({"shear_torque", Dim::torque}, f.variables(), [f](auto x) { return f.shear(x); }),
                 model_of<8>({"torque_ratio"}, f.variables(), [f](auto x) { return f.breakaway(x) / f.shear(x); })};
  const auto names = f.variables();
  const auto spread = f.spread();
  for (std::size_t i = 0; i < names.size(); ++i) {
    const Lognormal& s = spread[i];
    if (!(s.median > 0)) {
      out.inputs.push_back({names[i].name, Distribution(0.0)});
      continue;
    }
    const Outcome<Distribution> known = Distribution::try_lognormal(s.median, s.variation);
    if (!known) return known.error();
    out.inputs.push_back({names[i].name, *known});
  }
  out.notices.push_back({"rust_estimate",
                         "What rust does to friction, bond and section is judgement: no measured figures were found.",
                         true});
  out.notices.push_back(cautions::no_release);
  return out;
}

TAUTEN_FUNCTION UncertaintyQuestion free_question(const FreeJob& job) { return try_free_question(job).value(); }

}  // namespace tauten::TAUTEN_ABI
