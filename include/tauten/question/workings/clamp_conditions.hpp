// What holds for every fastener that a job may mean: friction bands, wrench, and torque that is lost on the way.
#pragma once

#include <cstdio>
#include <optional>

#include "tauten/base/interval.hpp"
#include "tauten/base/plain_number.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/question/clamp_answer.hpp"
#include "tauten/tool/accuracy.hpp"
#include "tauten/tool/hand.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return false for `absent`
inline bool is_given(double x) { return x == x; }

/// What holds for every candidate of a job.
struct Conditions {
  ThreadCondition thread;
  ThreadCondition face;
  Band<double> mu_G;
  Band<double> mu_K;
  bool thread_measured = false;             ///< mu_G does not come from `thread`
  bool face_measured = false;               ///< mu_K does not come from `face`
  std::optional<double> stated_accuracy{};  ///< of the wrench; absent: that of its standard
  double lost = 0;                          ///< torque that reaches neither thread nor bearing face

  /// Nobody knows what is on thread or face, and its friction was not measured.
  bool friction_unknown() const {
    return (thread.key == "unknown" && !thread_measured) || (face.key == "unknown" && !face_measured);
  }

  /// Dry stainless threads, whose friction was not measured: they gall.
  bool is_dry_stainless() const { return thread.key == "stainless" && !thread_measured; }

  /// Relative accuracy of the wrench at a setting. ISO 6789-1:2017, permissible deviation of types I A to C and II A to
  /// C: from memory.
  double accuracy_at(double setting) const { return stated_accuracy.value_or(setting <= 10 ? 0.06 : 0.04); }
};

/// Settings of a wrench that have an answer.
inline constexpr Interval clamp_torque_range{0, greatest_tightening_torque.si, true};

/// \return the error that a value lies outside its range, or nothing
inline std::optional<Error> range_error(const char* argument, double si, Dim dimension, Interval range) {
  if (range.contains(si)) return std::nullopt;
  const DimensionText unit = describe(dimension);
  const std::string named = *unit.shop_unit == '\0' ? "" : std::string(" ") + unit.shop_unit;
  char text[300];
  const auto shop = [&](double x) { return PlainNumber(x / unit.shop_unit_in_si); };
  std::snprintf(text, sizeof text, "%s is %s%s, but must be %s %s and at most %s%s; write it like %s", argument,
                shop(si).c_str(), named.c_str(), range.excludes_low ? "above" : "at least", shop(range.low).c_str(),
                shop(range.high).c_str(), named.c_str(), example_of(argument, dimension));
  return Error(argument, text);
}

/// The same for a quantity that may be absent.
template <Dim D>
std::optional<Error> range_error(const char* argument, const std::optional<Quantity<D>>& value, Interval range) {
  return value ? range_error(argument, value->si, D, range) : std::nullopt;
}

/// The same for a plain number that may be absent.
inline std::optional<Error> range_error(const char* argument, const std::optional<double>& value, Interval range) {
  return value ? range_error(argument, *value, Dim::number, range) : std::nullopt;
}

/// \return the first error among plain values out of range, or nothing. The width of a tool is left to the tables.
inline std::optional<Error> clamp_range_error(const ClampJob& job) {
  constexpr Interval lost = within(0, 1e5);
  if (auto e = unknown_value("torsion", job.torsion)) return e;
  if (auto e = range_error("torque", job.torque, clamp_torque_range)) return e;
  if (auto e = range_error("clamp_load", job.clamp_load, {0, 1e7, true})) return e;
  if (auto e = range_error("share", job.share, {0, 1, true})) return e;
  if (auto e = range_error("wrench_accuracy", job.wrench_accuracy, within(0, maximum_wrench_accuracy))) return e;
  if (auto e = range_error("prevailing_torque", job.prevailing_torque.si, Dim::torque, lost)) return e;
  if (auto e = range_error("shank_torque", job.shank_torque.si, Dim::torque, lost)) return e;
  for (const Face& face : job.more_faces)
    if (auto e = range_error("bearing_diameter", face.bearing_diameter.si, Dim::length, {0, 0.5, true})) return e;
  return range_error("bearing_diameter", job.bearing_diameter, {0, 0.5, true});
}

/// \return the error that a band does not rise, or nothing
inline std::optional<Error> order_error(const char* argument, const Band<double>& band) {
  constexpr Interval range{0, 2, true};
  if (range.contains(band.low) && range.contains(band.high) && band.low <= band.nominal && band.nominal <= band.high)
    return std::nullopt;
  char text[300];
  std::snprintf(text, sizeof text,
                "%s is %s, %s, %s, but must rise from low over nominal to high, above 0 and at most 2, such as 0.08, "
                "0.12, 0.16",
                argument, PlainNumber(band.low, 4).c_str(), PlainNumber(band.nominal, 4).c_str(),
                PlainNumber(band.high, 4).c_str());
  return Error(argument, text);
}

/// \return what is on thread or face. Stainless bolts rub more than steel under the same word: a stainless class has its
///         own conditions.
inline Outcome<ThreadCondition> condition_on(const ClampJob& job, const std::string& name) {
  const Outcome<ThreadCondition> found = try_thread_condition(name);
  // No name of a stainless class begins with a digit, so that the classes of steel need not be read.
  const std::string& mark = job.property_class;
  if (!found || mark.empty() || (mark[0] >= '0' && mark[0] <= '9')) return found;
  if (const auto strength = try_property_class(mark); !strength || !strength->stainless) return found;
  constexpr std::pair<std::string_view, const char*> own[] = {
      {"dry", "stainless"}, {"oiled", "stainless-oiled"}, {"moly-paste", "stainless-paste"}};
  for (const auto& [steel, stainless] : own)
    if (found->key == steel) return try_thread_condition(stainless);
  return found;
}

inline Outcome<Conditions> conditions_of(const ClampJob& job) {
  const Outcome<ThreadCondition> on_thread = condition_on(job, job.condition);
  if (!on_thread) return on_thread.error();
  const Outcome<ThreadCondition> on_face =
      job.face_condition.empty() ? on_thread : condition_on(job, job.face_condition);
  if (!on_face) return on_face.error();
  Conditions c{*on_thread,
               *on_face,
               job.thread_friction.value_or(on_thread->thread_friction),
               job.bearing_friction.value_or(on_face->bearing_friction),
               job.thread_friction.has_value(),
               job.bearing_friction.has_value(),
               job.wrench_accuracy};
  if (const auto error = order_error("thread_friction", c.mu_G)) return *error;
  if (const auto error = order_error("bearing_friction", c.mu_K)) return *error;
  c.lost = job.prevailing_torque.si + job.shank_torque.si;
  return c;
}

}  // namespace tauten::TAUTEN_ABI::detail
