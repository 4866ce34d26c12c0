// ISO metric threads by their designation: M10, M10x1.25, M10x1.25-6g.
#pragma once

#include <charconv>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "tauten/base/math.hpp"
#include "tauten/base/number_chars.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/thread/size_table.hpp"

namespace tauten::TAUTEN_ABI {

/// A single-start ISO metric thread. Get one from `thread("M10x1.25")` or `threads_of`; its dimensions are the basic
/// ones of the profile.
struct Thread {
  Length diameter;              ///< nominal diameter d
  Length pitch;                 ///< pitch P
  bool coarse = false;          ///< has the coarse pitch of its diameter
  bool selected = false;        ///< is in the selection of ISO 262 for bolts, screws and nuts
  std::string tolerance_class;  ///< "6g", "6H" or "" where none was given

  /// \return "M10", the thread without pitch, as tables of heads and holes name it
  std::string size() const { return "M" + detail::mm_text(diameter.si); }
  /// \return "M10" for the coarse pitch, "M10x1.25" for a fine one, without the tolerance class
  std::string name() const { return coarse ? size() : size() + "x" + detail::mm_text(pitch.si); }
  /// \return the name with its tolerance class, if it has one: "M10x1.25-6g"
  std::string designation() const { return tolerance_class.empty() ? name() : name() + "-" + tolerance_class; }

  /// \return basic pitch diameter d_2
  Length pitch_diameter() const { return Length(tauten::pitch_diameter.si(diameter.si, pitch.si)); }
  /// \return basic minor diameter D_1 of the nut thread
  Length minor_diameter() const { return Length(tauten::minor_diameter.si(diameter.si, pitch.si)); }
  /// \return root diameter d_3 of the bolt thread
  Length root_diameter() const { return Length(tauten::root_diameter.si(diameter.si, pitch.si)); }
  /// \return diameter d_s of the stress area
  Length stress_diameter() const { return Length(tauten::stress_diameter.si(diameter.si, pitch.si)); }
  /// \return stress area A_s, not rounded
  Area stress_area() const { return Area(tauten::stress_area.si(diameter.si, pitch.si)); }
  /// \return lead angle phi at the pitch diameter
  Angle lead_angle() const { return Angle(tauten::lead_angle.si(pitch.si, pitch_diameter().si)); }

  /// \return stress area rounded to three significant digits of mm2, halves upwards: the figure that ISO 898-1 prints
  ///         and from which it computes loads (clause 9.1.6, from memory)
  Area nominal_stress_area() const {
    const double area = stress_area().shop();
    const double decade = power_of_ten(std::floor(std::log10(area)) - 2);
    return Area(std::floor(area / decade + 0.5) * decade * 1e-6);
  }
};

/// \param diameter  nominal diameter
/// \return all threads of that diameter in ISO 261: the coarse pitch, then the fine pitches that ISO 262 selects, then
///         the others; each by falling pitch. Empty if ISO 261 has no such diameter from M1 to M64.
inline std::vector<Thread> threads_of(Length diameter) {
  std::vector<Thread> found;
  const auto add = [&](bool coarse, bool selected) {
    for (const table::MetricSize& row : table::metric_sizes)
      if (detail::same_length(row.diameter, diameter.si) && row.coarse == coarse &&
          (coarse || row.selected == selected))
        found.push_back({Length(row.diameter), Length(row.pitch), row.coarse, row.selected, ""});
  };
  add(true, true);
  add(false, true);
  add(false, false);
  return found;
}

namespace detail {

inline constexpr const char* how_to_write_a_thread = "write an ISO metric thread like M10, M10x1.25 or M10x1.25-6g";

/// Reads digits with an optional point from the front of `text` and takes them off; NaN if there are none.
inline double take_millimetres(std::string_view& text) {
  const std::string_view digits = text.substr(0, text.find_first_not_of("0123456789."));
  double value = 0;
  const auto [end, problem] = detail::read_chars(digits.data(), digits.data() + digits.size(), value);
  if (problem != std::errc() || end != digits.data() + digits.size()) return nan;
  text.remove_prefix(digits.size());
  return value * 1e-3;
}

/// The same behind one of the marks; 0 if there is none, NaN if no length above zero follows.
inline double take_after(std::string_view marks, std::string_view& text) {
  if (text.empty() || marks.find(text[0]) == std::string_view::npos) return 0;
  text.remove_prefix(1);
  const double value = take_millimetres(text);
  return value > 0 ? value : nan;
}

/// The pitch of M10-1.25; 0 if what follows the dash is not a pitch of the diameter but a tolerance class, as in M10-6g.
inline double take_pitch_after_dash(std::string_view& text, const std::vector<Thread>& sizes) {
  std::string_view rest = text;
  const double pitch = take_after("-", rest);
  for (const Thread& size : sizes)
    if (same_length(size.pitch.si, pitch) &&
        (rest.empty() || std::string_view("xX*").find(rest[0]) != std::string_view::npos)) {
      text = rest;
      return pitch;
    }
  return 0;
}

/// 6g, 6H, 5g6g: grade and position of the pitch diameter, then of the crest if that differs.
inline bool is_tolerance_class(std::string_view text) {
  const auto part = [](std::string_view p) {
    return p.size() == 2 && p[0] >= '3' && p[0] <= '9' &&
           std::string_view("efghGH").find(p[1]) != std::string_view::npos;
  };
  return part(text) || (text.size() == 4 && part(text.substr(0, 2)) && part(text.substr(2)) && text[1] == text[3]);
}

inline Error no_such_diameter(std::string_view text, double diameter) {
  const table::MetricSize* below = nullptr;
  const table::MetricSize* above = nullptr;
  for (const table::MetricSize& row : table::metric_sizes) {
    if (row.diameter < diameter && (!below || row.diameter > below->diameter)) below = &row;
    if (row.diameter > diameter && !above) above = &row;
  }
  std::string nearest = below ? below->designation : "";
  if (above) nearest += (below ? " and " : "") + std::string(above->designation);
  return refuse("thread", shown(text) + " is not an ISO 261 size from M1 to M64; the nearest " +
                              (below && above ? "are " : "is ") + nearest);
}

inline Error no_such_pitch(std::string_view text, double pitch, const std::vector<Thread>& sizes) {
  std::string pitches;
  const Thread* nearest = &sizes.front();
  for (const Thread& size : sizes) {
    pitches += (pitches.empty() ? "" : ", ") + mm_text(size.pitch.si);
    if (std::fabs(size.pitch.si - pitch) < std::fabs(nearest->pitch.si - pitch)) nearest = &size;
  }
  std::string sentence = shown(text) + " is not an ISO 261 size; " + sizes.front().size() + " comes with " +
                         (sizes.size() > 1 ? "pitches " : "pitch ") + pitches + " mm; did you mean " + nearest->name() +
                         "?";
  if (pitch >= 10e-3) sentence += " If " + mm_text(pitch) + " mm is the length of the bolt, leave it out";
  return refuse("thread", sentence);
}

}  // namespace detail

/// Reads a thread designation of ISO 261, M1 to M64: M10, m10, M10x1.25, M10X1,25, "M10 x 1.5", M10x1.25-6g, and as people
/// write it M10*1.25, M10-1.25 and, with a length that is left out, M10x1.25x60. A pitch that is the coarse one may be given
/// or left out.
/// \param text  the designation
/// \return the thread, or an error that names the text and the nearest real sizes
inline Outcome<Thread> try_parse_thread(std::string_view text) {
  const auto not_understood = [&] {
    return detail::refuse("thread",
                          "thread " + detail::shown(text) + " is not understood; " + detail::how_to_write_a_thread);
  };
  const std::string plain = detail::tidy(text);
  std::string_view rest = plain;
  if (rest.empty() || (rest[0] != 'M' && rest[0] != 'm')) return not_understood();
  rest.remove_prefix(1);
  const double diameter = detail::take_millimetres(rest);
  if (!(diameter > 0)) return not_understood();
  double pitch = detail::take_after("xX*", rest);
  if (pitch == 0) pitch = detail::take_pitch_after_dash(rest, threads_of(Length(diameter)));
  if (!(pitch >= 0)) return not_understood();
  if (const double length = pitch > 0 ? detail::take_after("xX*", rest) : 0; length != 0 && !(length >= 4 * pitch))
    return not_understood();
  std::string tolerance_class;
  if (!rest.empty()) {
    if (rest[0] != '-') return not_understood();
    tolerance_class = rest.substr(1);
    if (!detail::is_tolerance_class(tolerance_class))
      return detail::refuse("thread", "thread " + detail::shown(text) +
                                          " does not end in a tolerance class; write one " +
                                          "like -6g for a bolt or -6H for a nut, or leave it out");
  }
  const std::vector<Thread> sizes = threads_of(Length(diameter));
  if (sizes.empty()) return detail::no_such_diameter(text, diameter);
  for (Thread size : sizes)
    if (pitch > 0 ? detail::same_length(size.pitch.si, pitch) : size.coarse) {
      size.tolerance_class = tolerance_class;
      return size;
    }
  return detail::no_such_pitch(text, pitch, sizes);
}

/// \return "M10x1.25" if the text is another way of writing that thread or has a length as well, "" if it is its designation
inline std::string thread_taken(std::string_view text, const Thread& thread) {
  const std::string typed = detail::name_key(text);
  const std::string with_pitch = thread.size() + "x" + detail::mm_text(thread.pitch.si);
  for (const std::string& name : {thread.name(), with_pitch})
    for (const std::string& tail : {std::string(), "-" + thread.tolerance_class})
      if (typed == detail::name_key(name + tail)) return "";
  return thread.designation();
}

/// \copydoc try_parse_thread
/// \throws Error  instead of returning one
inline Thread thread(std::string_view text) { return try_parse_thread(text).value(); }

}  // namespace tauten::TAUTEN_ABI
