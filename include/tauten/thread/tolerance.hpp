// Limits of size of ISO metric threads for a tolerance class.
#pragma once

#include <string>
#include <string_view>

#include "tauten/thread/designation.hpp"
#include "tauten/thread/tolerance_table.hpp"

namespace tauten::TAUTEN_ABI {

/// Maximum and minimum size of one diameter.
struct SizeLimits {
  Length max;
  Length min;
};

/// Limits of a bolt thread. The root is rounded: at H/6 for the maximum, with radius 0.125 P for the minimum d_3.
struct BoltLimits {
  SizeLimits diameter;          ///< major diameter d
  SizeLimits pitch_diameter;    ///< d_2
  SizeLimits root_diameter;     ///< d_3
  std::string tolerance_class;  ///< "6g"
  Seen seen;                    ///< how the weakest of the figures behind them was seen
};

/// Limits of a nut thread. Its major diameter has no upper limit.
struct NutLimits {
  Length diameter_min;          ///< minimum major diameter D
  SizeLimits pitch_diameter;    ///< D_2
  SizeLimits minor_diameter;    ///< D_1
  std::string tolerance_class;  ///< "6H"
  Seen seen;                    ///< how the weakest of the figures behind them was seen
};

namespace detail {

/// The three figures of ISO 965-1 behind a set of limits: deviation, tolerance of the pitch diameter and of the crest.
struct ThreadTolerances {
  double deviation;
  double pitch;
  double crest;
  Seen seen;
};

/// \param external  true for a bolt thread
/// \return the figures, also those from memory, or an error where ISO 965-1 has none
inline Outcome<ThreadTolerances> thread_tolerances(const Thread& t, std::string_view name, bool external) {
  const auto fail = [&](const std::string& why) {
    return refuse("tolerance_class", "tolerance class " + shown(name) + " for " + t.name() + ": " + why);
  };
  const char* form =
      external ? "a bolt thread takes e, f, g or h, for example 6g" : "a nut thread takes G or H, for example 6H";
  if (!is_tolerance_class(name)) return fail(std::string("this is not a class of ISO 965-1; ") + form);
  const char position = name[1];
  if ((position >= 'e' && position <= 'h') != external) return fail(form);

  const table::FundamentalDeviation* deviations = nullptr;
  const table::CrestTolerance* crests = nullptr;
  const table::PitchTolerance* pitches = nullptr;
  for (const auto& row : table::fundamental_deviations)
    if (same_length(row.pitch, t.pitch.si)) deviations = &row;
  for (const auto& row : table::crest_tolerances)
    if (same_length(row.pitch, t.pitch.si)) crests = &row;
  for (const auto& row : table::pitch_tolerances)
    if (same_length(row.pitch, t.pitch.si) && t.diameter.si > row.diameter_above &&
        t.diameter.si <= row.diameter_to + 1e-8)
      pitches = &row;
  if (!deviations || !crests || !pitches) return fail("ISO 965-1 has no row for this diameter with this pitch");

  const table::Graded none{TableLength::none, Seen::memory};
  const auto grade = [&](const auto& cells, int first, char digit) {
    const int index = digit - '0' - first;
    return index >= 0 && index < static_cast<int>(sizeof cells / sizeof cells[0]) ? cells[index] : none;
  };
  const table::Graded zero{0, Seen::in_print};
  const table::Graded deviation = position == 'G'   ? deviations->G
                                  : position == 'g' ? deviations->g
                                  : position == 'f' ? deviations->f
                                  : position == 'e' ? deviations->e
                                                    : zero;
  const char crest_grade = name.size() == 4 ? name[2] : name[0];
  const table::Graded pitch = external ? grade(pitches->external, 3, name[0]) : grade(pitches->internal, 4, name[0]);
  const table::Graded crest =
      external ? grade(crests->major_external, 4, crest_grade) : grade(crests->minor_internal, 4, crest_grade);
  if (!(deviation.value + pitch.value + crest.value < 1))
    return fail("ISO 965-1 has no figure for this grade or position at this pitch");
  return ThreadTolerances{deviation.value, pitch.value, crest.value,
                          weaker(deviation.seen, weaker(pitch.seen, crest.seen))};
}

inline Error only_remembered(const Thread& t, std::string_view name) {
  return refuse("tolerance_class",
                "tolerance class " + shown(name) + " for " + t.name() +
                    ": a figure of ISO 965-1 behind these limits is from memory, not checked against " +
                    "print, and is not given as a limit; take the limits from the standard");
}

/// Limits of a bolt thread, also where they rest on figures from memory: for estimates that say so.
inline Outcome<BoltLimits> bolt_limits_even_remembered(const Thread& t, std::string_view name) {
  const Outcome<ThreadTolerances> figures = thread_tolerances(t, name, true);
  if (!figures) return figures.error();
  const double d = t.diameter.si + figures->deviation;
  const double d_2 = t.pitch_diameter().si + figures->deviation;
  const double d_3 = t.root_diameter().si + figures->deviation;
  const double d_2min = d_2 - figures->pitch;
  return BoltLimits{{Length(d), Length(d - figures->crest)},
                    {Length(d_2), Length(d_2min)},
                    {Length(d_3), Length(minimum_root_diameter.si(d_2min, t.pitch.si))},
                    std::string(name),
                    figures->seen};
}

/// The same of a nut thread.
inline Outcome<NutLimits> nut_limits_even_remembered(const Thread& t, std::string_view name) {
  const Outcome<ThreadTolerances> figures = thread_tolerances(t, name, false);
  if (!figures) return figures.error();
  const double D_2 = t.pitch_diameter().si + figures->deviation;
  const double D_1 = t.minor_diameter().si + figures->deviation;
  return NutLimits{Length(t.diameter.si + figures->deviation),
                   {Length(D_2 + figures->pitch), Length(D_2)},
                   {Length(D_1 + figures->crest), Length(D_1)},
                   std::string(name),
                   figures->seen};
}

}  // namespace detail

/// Limits of a bolt thread after ISO 965-1.
/// \param t                the thread
/// \param tolerance_class  "6g", "4h", "5g6g"; "" takes the class of the thread, or 6g if it has none
/// \return the limits, or an error if ISO 965-1 has no such class or its figures were not seen in print
inline Outcome<BoltLimits> try_bolt_limits(const Thread& t, std::string_view tolerance_class = "") {
  if (tolerance_class.empty()) tolerance_class = t.tolerance_class.empty() ? "6g" : std::string_view(t.tolerance_class);
  const Outcome<BoltLimits> limits = detail::bolt_limits_even_remembered(t, tolerance_class);
  if (limits && limits->seen >= Seen::memory) return detail::only_remembered(t, tolerance_class);
  return limits;
}

/// \copydoc try_bolt_limits
/// \throws Error  instead of returning one
inline BoltLimits bolt_limits(const Thread& t, std::string_view tolerance_class = "") {
  return try_bolt_limits(t, tolerance_class).value();
}

/// Limits of a nut thread after ISO 965-1.
/// \param t                the thread
/// \param tolerance_class  "6H", "5H", "7G"; "" takes the class of the thread, or 6H if it has none
/// \return the limits, or an error if ISO 965-1 has no such class or its figures were not seen in print
inline Outcome<NutLimits> try_nut_limits(const Thread& t, std::string_view tolerance_class = "") {
  if (tolerance_class.empty()) tolerance_class = t.tolerance_class.empty() ? "6H" : std::string_view(t.tolerance_class);
  const Outcome<NutLimits> limits = detail::nut_limits_even_remembered(t, tolerance_class);
  if (limits && limits->seen >= Seen::memory) return detail::only_remembered(t, tolerance_class);
  return limits;
}

/// \copydoc try_nut_limits
/// \throws Error  instead of returning one
inline NutLimits nut_limits(const Thread& t, std::string_view tolerance_class = "") {
  return try_nut_limits(t, tolerance_class).value();
}

}  // namespace tauten::TAUTEN_ABI
