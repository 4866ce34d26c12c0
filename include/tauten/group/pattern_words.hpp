// Patterns as words, for the cell of a table or one option: circle:8:160mm.
#pragma once

#include <charconv>
#include <string>
#include <string_view>
#include <vector>

#include "tauten/base/unit_text.hpp"
#include "tauten/group/drilling.hpp"
#include "tauten/group/fit.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::vector<std::string_view> parts_of(std::string_view text, char separator) {
  std::vector<std::string_view> parts;
  for (;;) {
    const std::size_t at = text.find(separator);
    parts.push_back(text.substr(0, at));
    if (at == std::string_view::npos) return parts;
    text.remove_prefix(at + 1);
  }
}

inline Outcome<std::size_t> try_read_count(std::string_view text) {
  std::size_t count = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), count);
  if (problem != std::errc{} || end != text.data() + text.size())
    return Error("pattern", (shown(text) + " is not a number of bolts; write it like circle:8:160mm").c_str());
  return count;
}

inline Outcome<Length> try_read_length(std::string_view text) {
  const Outcome<double> si = try_read_quantity("pattern", text, Dim::length);
  if (!si) return si.error();
  return Length(*si);
}

}  // namespace detail

/// Reads a pattern from words:
/// - `circle:8:160mm`, with the angle of bolt 1 from the top if wanted: `circle:8:160mm:22.5deg`
/// - `rectangle:200mm:150mm`, or with bolts along the edges: `rectangle:200mm:150mm:4x3`
/// - `grid:2x4:140mm:70mm`: columns x rows, pitch across, pitch down
/// - `line:4:75mm`
/// - `chords:80mm,81mm,79mm`: distances of neighbours round a circle
/// - `places:0mm,0mm;80mm,0mm;80mm,120mm`: x and y of each bolt
/// - a standard by name: `EN 1092-1 PN16 DN100`
/// \return the pattern; or one error that says how to write it
inline Outcome<Pattern> try_pattern_from_words(std::string_view words) {
  const std::vector<std::string_view> parts = detail::parts_of(words, ':');
  const auto shape = parts.front();
  const auto wrong = [&](const char* like) {
    return Error("pattern", (detail::shown(words) + " has too few or too many parts; write it like " + like).c_str());
  };
  if (shape == "circle") {
    if (parts.size() != 3 && parts.size() != 4) return wrong("circle:8:160mm");
    const auto count = detail::try_read_count(parts[1]);
    if (!count) return count.error();
    const auto diameter = detail::try_read_length(parts[2]);
    if (!diameter) return diameter.error();
    Angle first;
    if (parts.size() == 4) {
      const Outcome<double> angle = try_read_quantity("pattern", parts[3], Dim::angle);
      if (!angle) return angle.error();
      first = Angle(*angle);
    }
    return try_circle_pattern(*count, *diameter, first);
  }
  if (shape == "line") {
    if (parts.size() != 3) return wrong("line:4:75mm");
    const auto count = detail::try_read_count(parts[1]);
    if (!count) return count.error();
    const auto pitch = detail::try_read_length(parts[2]);
    if (!pitch) return pitch.error();
    return try_line_pattern(*count, *pitch);
  }
  if (shape == "rectangle" || shape == "grid") {
    const bool grid = shape == "grid";
    if (parts.size() != 4 && (grid || parts.size() != 3))
      return wrong(grid ? "grid:2x4:140mm:70mm" : "rectangle:200mm:150mm");
    std::size_t counts[] = {2, 2};
    if (parts.size() == 4) {
      const auto both = detail::parts_of(parts[grid ? 1 : 3], 'x');
      if (both.size() != 2) return wrong(grid ? "grid:2x4:140mm:70mm" : "rectangle:200mm:150mm:4x3");
      for (std::size_t i = 0; i < 2; ++i) {
        const auto count = detail::try_read_count(both[i]);
        if (!count) return count.error();
        counts[i] = *count;
      }
    }
    const auto across = detail::try_read_length(parts[grid ? 2 : 1]);
    if (!across) return across.error();
    const auto down = detail::try_read_length(parts[grid ? 3 : 2]);
    if (!down) return down.error();
    return grid ? try_grid_pattern(counts[0], counts[1], *across, *down)
                : try_rectangle_pattern(*across, *down, counts[0], counts[1]);
  }
  if (shape == "chords") {
    if (parts.size() != 2) return wrong("chords:80mm,81mm,79mm");
    std::vector<Length> chords;
    for (const std::string_view part : detail::parts_of(parts[1], ',')) {
      const auto chord = detail::try_read_length(part);
      if (!chord) return chord.error();
      chords.push_back(*chord);
    }
    return try_pattern_from_chords(chords);
  }
  if (shape == "places") {
    if (parts.size() != 2) return wrong("places:0mm,0mm;80mm,0mm");
    std::vector<Position> at;
    for (const std::string_view part : detail::parts_of(parts[1], ';')) {
      const auto both = detail::parts_of(part, ',');
      if (both.size() != 2) return wrong("places:0mm,0mm;80mm,0mm");
      const auto x = detail::try_read_length(both[0]);
      if (!x) return x.error();
      const auto y = detail::try_read_length(both[1]);
      if (!y) return y.error();
      at.push_back({x->si, y->si});
    }
    return try_pattern(std::move(at));
  }
  if (parts.size() > 1)
    return Error("pattern", (detail::shown(shape) + " is not a pattern; write circle, rectangle, grid, line, "
                                                    "chords or places, like circle:8:160mm")
                                .c_str());
  return try_pattern_by_name(words);
}

}  // namespace tauten::TAUTEN_ABI
