// What else is known of a fastener when it is to be identified, and what it may be.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/part/head.hpp"

namespace tauten::TAUTEN_ABI {

/// How a tool and a head agree.
enum class Fit : unsigned char {
  exact,  ///< the tool has the nominal width of the head, within 0.1 mm
  tight,  ///< the tool is a little smaller: it goes on only if the head is worn, rusted away or at its lower limit
  loose   ///< the tool is a little larger: it goes on, but may round the corners
};

/// What else is known when a fastener is to be identified.
struct IdentifyOptions {
  Length worn = Length(0.3e-3);        ///< widths that differ by no more than this still count, 0 to 2 mm
  Drive drive = Drive::hexagon;        ///< socket outside, or hexagon key inside
  std::optional<HeadKind> kind{};      ///< only this shape
  bool only_selected_pitches = false;  ///< leave out fine pitches that ISO 262 does not select for bolts and nuts
};

/// A fastener that it may be. Standards are named by their coarse-thread parts; hexagon parts with fine thread have the
/// same heads under their own numbers (ISO 8765, ISO 8676, ISO 8673; from memory).
struct Candidate {
  Thread thread;            ///< size and pitch
  std::vector<Head> heads;  ///< heads and nuts that agree in everything a tool can tell; a bolt comes before a nut
  std::string standard;     ///< the standards of all of them: "ISO 4014, ISO 4017, ISO 4032"
  HeadKind kind;            ///< shape of the first one
  Length width;             ///< nominal width across flats or key size; 0 for six-lobed drives
  int commonness;           ///< 1 everyday to 4 rare: that of the head, lowered for fine pitches
  int rank;                 ///< place in the list, 1 is the most likely
  Fit fit;                  ///< how the tool agrees
  std::string look;         ///< what to look at to tell it from the others
};

}  // namespace tauten::TAUTEN_ABI
