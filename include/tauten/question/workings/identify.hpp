// Candidates from the tables of heads, in the order in which they are met.
#pragma once

#include <algorithm>
#include <cmath>
#include "tauten/base/mode.hpp"
#include "tauten/part/inch_head.hpp"
#include "tauten/question/identify_answer.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Bolts and nuts of one family share a line.
constexpr int head_family(HeadKind kind) noexcept {
  if (kind == HeadKind::hexagon_nut) return static_cast<int>(HeadKind::hexagon_bolt);
  if (kind == HeadKind::flange_nut) return static_cast<int>(HeadKind::flange_bolt);
  return static_cast<int>(kind);
}

/// Structural bolts are made with coarse thread only (EN 14399), and so are these screws (ISO 7380-1, ISO 10642, ISO 4026
/// to 4029); all from memory.
constexpr bool is_coarse_only(HeadKind kind) noexcept {
  return kind == HeadKind::heavy_structural_bolt || kind == HeadKind::socket_button_head ||
         kind == HeadKind::socket_countersunk_head || kind == HeadKind::socket_set_screw;
}

/// The inch width in sixteenths next to a metric one, if an inch tool could be taken for a metric one.
inline std::string inch_neighbour(double width, double tolerance) {
  const double sixteenths = std::round(width / (0.0254 / 16));
  if (sixteenths < 4 || std::fabs(sixteenths * 0.0254 / 16 - width) > tolerance) return "";
  int numerator = static_cast<int>(sixteenths);
  int denominator = 16;
  for (; numerator % 2 == 0 && denominator > 1; denominator /= 2) numerator /= 2;
  std::string text = numerator >= denominator ? std::to_string(numerator / denominator) : "";
  if (denominator > 1)
    text += (text.empty() ? "" : "-") + std::to_string(numerator % denominator) + "/" + std::to_string(denominator);
  return text + " in (" + mm_text(sixteenths * 0.0254 / 16) + " mm)";
}

inline std::string look_of(const Candidate& candidate, double tolerance) {
  const Head& head = candidate.heads.front();
  std::string text = head.look + ", met " + (head.region == "worldwide" ? "" : "in ") + head.region +
                     "; outside of the thread just under " + mm_text(candidate.thread.diameter.si) +
                     " mm; pitch gauge " + mm_text(candidate.thread.pitch.si) + " mm, or ten turns move it " +
                     mm_text(10 * candidate.thread.pitch.si) + " mm";
  if (candidate.fit == Fit::tight) text += "; the head would be worn or at its lower limit";
  if (candidate.fit == Fit::loose) text += "; the tool is too wide and may round the corners";
  if (head.drive == Drive::hexagon)
    if (const std::string inch = inch_neighbour(candidate.width.si, tolerance); !inch.empty())
      text += "; " + inch +
              " is nearly the same width: radial lines on the head instead of a class mark mean an inch thread";
  return text;
}

/// Adds the row with each pitch, on an existing line where one agrees.
inline void add_candidates(std::vector<Candidate>& list, const table::Head& row, Fit fit, bool only_selected) {
  const Outcome<Thread> size = try_parse_thread(row.thread_size);
  if (!size) return;
  for (const Thread& t : threads_of(size->diameter)) {
    if (!t.coarse && (is_coarse_only(row.kind) || (only_selected && !t.selected))) continue;
    const int commonness = std::min(4, row.commonness + (t.coarse ? 0 : t.selected ? 1 : 3));
    const auto same = [&](const Candidate& other) {
      const Head& head = other.heads.front();
      return other.thread.diameter == t.diameter && other.thread.pitch == t.pitch && other.fit == fit &&
             head_family(other.kind) == head_family(row.kind) && head.width.si == row.width &&
             head.drive_number == row.drive_number && head.commonness == row.commonness && head.region == row.region;
    };
    if (const auto line = std::find_if(list.begin(), list.end(), same); line != list.end()) {
      line->heads.push_back(from_row(row));
      line->standard += std::string(", ") + row.standard;
    } else {
      list.push_back({t, {from_row(row)}, row.standard, row.kind, Length(row.width), commonness, 0, fit, ""});
    }
  }
}

/// Orders by fit, then by how common; equals stay in the order of the tables, with the coarse pitch first.
inline void rank_candidates(std::vector<Candidate>& list, double tolerance) {
  for (std::size_t i = 0; i < list.size(); ++i) list[i].rank = static_cast<int>(i);
  std::sort(list.begin(), list.end(), [](const Candidate& a, const Candidate& b) {
    const bool a_exact = a.fit == Fit::exact;
    const bool b_exact = b.fit == Fit::exact;
    if (a_exact != b_exact) return a_exact;
    return a.commonness != b.commonness ? a.commonness < b.commonness : a.rank < b.rank;
  });
  int rank = 0;
  for (Candidate& candidate : list) {
    candidate.rank = ++rank;
    candidate.look = look_of(candidate, tolerance);
  }
}

}  // namespace detail

TAUTEN_FUNCTION Outcome<std::vector<Candidate>> try_identify(Length width_across_flats,
                                                             const IdentifyOptions& options) {
  const double width = width_across_flats.si;
  const double worn = options.worn.si;
  if (!(width > 0 && width <= 200e-3))
    return detail::refuse("width_across_flats", "width_across_flats is " + detail::mm_text(width) +
                                                    " mm, but must be above 0 and at most 200 mm; write it like 16mm");
  if (!(worn >= 0 && worn <= 2e-3))
    return detail::refuse(
        "worn", "worn is " + detail::mm_text(worn) + " mm, but must be at least 0 and at most 2 mm; 0.3 mm is typical");
  if (options.drive == Drive::hexalobular)
    return detail::refuse("drive", "a six-lobed drive goes by its number, not by a width; use identify_drive_number");
  std::vector<Candidate> found;
  double below = 0;
  double above = 1;
  for (const table::Head& row : table::heads) {
    if (row.drive != options.drive || (options.kind && *options.kind != row.kind)) continue;
    const double gap = width - row.width;
    constexpr double play = 0.1e-3 + 1e-9;
    if (std::fabs(gap) <= std::max(worn + 1e-9, play))
      detail::add_candidates(found, row,
                             std::fabs(gap) <= play ? Fit::exact
                             : gap < 0              ? Fit::tight
                                                    : Fit::loose,
                             options.only_selected_pitches);
    if (gap > 0) below = std::max<double>(below, row.width);
    if (gap < 0) above = std::min<double>(above, row.width);
  }
  detail::rank_candidates(found, std::max(worn, 0.1e-3));
  if (!found.empty()) return found;
  if (below == 0 && above == 1)
    return detail::refuse("kind", "no head of this shape takes this kind of tool; leave the shape or the tool open");
  const std::string inch = inch_bolt(width_across_flats, options.drive == Drive::hexagon_key);
  return detail::refuse(
      "width_across_flats",
      (inch.empty()
           ? std::string()
           : "this is an inch size, probably of an inch bolt" + (inch.starts_with("of") ? "" : " (" + inch + ")") +
                 ": take its torque and strength from its maker; ") +
          "no head in the tables takes " + detail::mm_text(width) + " mm; the nearest widths are " +
          (below > 0 ? detail::mm_text(below) + " mm" : "") + (below > 0 && above < 1 ? " and " : "") +
          (above < 1 ? detail::mm_text(above) + " mm" : "") + "; measure across the flats, not across the corners");
}

TAUTEN_FUNCTION std::vector<Candidate> identify(Length width_across_flats, const IdentifyOptions& options) {
  return try_identify(width_across_flats, options).value();
}

TAUTEN_FUNCTION Outcome<std::vector<Candidate>> try_identify_drive_number(int number) {
  std::vector<Candidate> found;
  std::string known;
  for (const table::Head& row : table::heads) {
    if (row.drive != Drive::hexalobular) continue;
    if (row.drive_number == number) detail::add_candidates(found, row, Fit::exact, false);
    known += (known.empty() ? "" : ", ") + std::to_string(row.drive_number);
  }
  detail::rank_candidates(found, 0);
  if (!found.empty()) return found;
  return detail::refuse(
      "number", "no screw in the tables has the drive number " + std::to_string(number) + "; the numbers are " + known);
}

TAUTEN_FUNCTION std::vector<Candidate> identify_drive_number(int number) {
  return try_identify_drive_number(number).value();
}

}  // namespace tauten::TAUTEN_ABI
