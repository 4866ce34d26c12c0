// What questions about groups of bolts are asked with and answered in.
#pragma once

#include <cstddef>

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// A place in the plane of the joint in m, seen from the side that is tightened: x to the right, y up.
struct Position {
  double x = 0;
  double y = 0;

  friend constexpr bool operator==(const Position&, const Position&) noexcept = default;
};

/// What a pattern is.
enum class PatternKind : unsigned char {
  circle,         ///< evenly spaced on a circle; a square is one of four
  odd_hole,       ///< a circle, or rows and columns, with one hole out of its place
  missing_holes,  ///< a circle with empty places
  rectangle,      ///< four corners of a rectangle that is no square
  grid,           ///< rows and columns, 2 x 3 or more
  line,           ///< all in one line
  uneven_circle,  ///< on a circle, unevenly spaced; three holes always are
  irregular       ///< none of these
};

template <>
struct Words<PatternKind> {
  static constexpr const char* list[] = {"circle", "odd hole", "missing holes", "rectangle",
                                         "grid",   "line",     "uneven circle", "irregular"};
};

/// What to measure, or read, next.
enum class NextMeasurement : unsigned char {
  nothing,  ///< one candidate at most
  hole,     ///< diameter of the holes
  outside,  ///< outside diameter
  height,   ///< shaft height
  circle,   ///< bolt circle or sides, closer
  marking   ///< nothing that can be measured on the holes: read the mark on the rim, or ask for the drawing
};

template <>
struct Words<NextMeasurement> {
  static constexpr const char* list[] = {"nothing", "hole", "outside", "height", "circle", "marking"};
};

/// Which model of tension.
enum class TensionModel : unsigned char { about_centroid, contact, tilting, plastic };

template <>
struct Words<TensionModel> {
  static constexpr const char* list[] = {"centroid", "contact", "tilting", "plastic"};
};

/// A flange ring that bends between its bolts on a gasket that lies all round.
struct FlangeOnGasket {
  std::size_t count = 0;    ///< bolts, evenly spaced
  Length circle{};          ///< bolt circle
  Length ring_width{};      ///< radial width of the flange ring
  Length ring_thickness{};  ///< thickness of the flange
  Stress ring_modulus{210e9};
  Length gasket_width{};  ///< radial
  Length gasket_thickness{};
  Stress gasket_modulus{};  ///< on loading: rubber about 50 MPa, fibre 300 to 3000 MPa (common practice, no source)
  Length bolt_length{};     ///< that stretches: the grip and about half of head and nut
  Area bolt_area{};
  Stress bolt_modulus{210e9};
};

}  // namespace tauten::TAUTEN_ABI
