// How far the preload scatters, by the way of tightening.
#pragma once

#include <string>
#include <string_view>

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/method/scatter.hpp"

namespace tauten::TAUTEN_ABI {

/// A way of tightening and the scatter of the preload that it leaves, as a share of the nominal preload.
struct TighteningMethod {
  const char* key;
  const char* title;
  double scatter_low;   ///< done with care
  double scatter_high;  ///< as a rule
  Source source;

  /// \return greatest over least preload, alpha_A, for the wider scatter
  constexpr double factor() const noexcept { return TighteningFactor::eval(scatter_high); }

  template <class V>
  static void fields(V&& visit) {
    visit("key", &TighteningMethod::key);
    visit("title", &TighteningMethod::title);
    visit("scatter_low", &TighteningMethod::scatter_low);
    visit("scatter_high", &TighteningMethod::scatter_high);
    visit("source", &TighteningMethod::source);
  }
};

namespace detail {
inline constexpr Source scatter_1986{"VDI 2230 Part 1:1986", "scatter by tightening method, as reprinted", Seen::once};
inline constexpr Source scatter_2003{"VDI 2230 Part 1:2003", "Table A8", Seen::memory};
}  // namespace detail

/// Two editions of one guideline stand beside each other; where other sources speak of one method, the wider figure stands.
inline constexpr TighteningMethod tightening_methods[] = {
    {"yield", "yield controlled", 0.05, 0.12, detail::scatter_1986},
    {"yield_2003", "yield controlled, edition 2003", 0.09, 0.17, detail::scatter_2003},
    {"angle", "torque plus angle into yield", 0.05, 0.12, detail::scatter_1986},
    {"angle_2003", "torque plus angle into yield, edition 2003", 0.09, 0.17, detail::scatter_2003},
    {"turn_of_nut",
     "turn of the nut below yield",
     0.15,
     0.15,
     {"Notes on preload methods", "turn of the nut", Seen::once}},
    {"hydraulic", "hydraulic tensioning; short bolts scatter most", 0.09, 0.23, detail::scatter_1986},
    {"elongation",
     "stretch of the bolt measured",
     0.01,
     0.05,
     {"Notes on preload methods", "bolt elongation", Seen::once}},
    {"load_bolt", "bolt that measures its load", 0.05, 0.05, {"NASA TM-106943", "text at eqs. (1) to (3)", Seen::once}},
    {"torque_tested", "torque, found by test on the part itself", 0.17, 0.23, detail::scatter_1986},
    {"torque", "torque, friction estimated", 0.23, 0.28, detail::scatter_1986},
    {"torque_2003", "torque, friction estimated, edition 2003", 0.23, 0.33, detail::scatter_2003},
    {"torque_lubricated",
     "torque wrench, lubricated",
     0.25,
     0.25,
     {"NASA TM-106943", "text at eqs. (1) to (3)", Seen::once}},
    {"driver", "power driver, torque controlled", 0.26, 0.43, detail::scatter_1986},
    {"hand", "hand wrench without torque control", 0.43, 0.60, detail::scatter_2003},
    {"impact",
     "impact wrench, not calibrated",
     0.43,
     0.60,
     {"VDI 2230 Part 1:2003", "Table A8, tightening factor 2.5 to 4", Seen::memory}},
};

/// \param key  of a method, "torque"
/// \return the method, or an error that lists the keys
inline Outcome<TighteningMethod> try_tightening_method(std::string_view key) {
  std::string known;
  for (const TighteningMethod& method : tightening_methods) {
    if (key == method.key) return method;
    known += (known.empty() ? "" : ", ") + std::string(method.key);
  }
  return detail::refuse("method", "method " + detail::shown(key) + " is not known; give one of " + known);
}

/// \copydoc try_tightening_method
/// \throws Error  if there is no such method
inline TighteningMethod tightening_method(std::string_view key) { return try_tightening_method(key).value(); }

/// \param preload  nominal preload
/// \param method   way of tightening
/// \return least, nominal and greatest preload, for the wider scatter of the method
inline Outcome<Band<Force>> try_preload_band(Force preload, const TighteningMethod& method) {
  if (!is_not_negative(preload)) return refusal("preload", preload, "but must be at least 0 kN");
  if (!(method.scatter_high >= 0 && method.scatter_high < 1))
    return refusal("scatter", method.scatter_high, "but must be at least 0 and below 1");
  return Band<Force>{Force(LeastPreload::eval(preload.si, method.scatter_high)), preload,
                     Force(GreatestPreload::eval(preload.si, method.scatter_high))};
}

/// \copydoc try_preload_band
/// \throws Error  naming the argument, its value and the allowed range
inline Band<Force> preload_band(Force preload, const TighteningMethod& method) {
  return try_preload_band(preload, method).value();
}

}  // namespace tauten::TAUTEN_ABI
