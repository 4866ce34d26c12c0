// Heads and nuts by thread and standard, and the diameter at which their bearing face rubs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tauten/friction/bearing.hpp"
#include "tauten/part/head_table.hpp"
#include "tauten/part/hole.hpp"

namespace tauten::TAUTEN_ABI {

using table::Drive;
using table::HeadKind;

/// A head or nut. Dimensions that the table does not give are NaN.
struct Head {
  std::string size;               ///< thread diameter: "M10"
  std::string standard;           ///< "ISO 4014, ISO 4017"
  std::string series;             ///< series or product grade
  HeadKind kind;                  ///< shape
  Drive drive;                    ///< tool profile
  Length width;                   ///< width across flats or key size, nominal; 0 for six-lobed drives
  Length width_min;               ///< least width across flats
  Length corner_min;              ///< least width across corners
  Length bearing_outer_diameter;  ///< d_w, least
  Length height;                  ///< head or nut height
  int drive_number;               ///< number of a six-lobed drive, 0 for others
  int commonness;                 ///< 1 everyday, 2 common, 3 seldom, 4 rare; common practice, no source
  std::string region;             ///< where it is met
  std::string look;               ///< how to tell it by eye
  Source source;
  Seen seen;         ///< how size and width were seen
  Seen detail_seen;  ///< how the other dimensions were seen
};

/// Effective diameter of a bearing face.
struct BearingDiameter {
  Length value;           ///< D_Km, the mean of outer diameter and hole
  Length outer_diameter;  ///< d_w, or what stood in for it
  Length inner_diameter;  ///< the clearance hole
  bool estimated;         ///< no standard gave d_w; it was taken from the width across flats or the size
  Seen seen;              ///< how the weakest figure behind it was seen
};

/// \return true if a screw of this shape presses parts together with a flat face under its head, or is a nut that does
constexpr bool clamps_by_flat_face(HeadKind kind) noexcept {
  return kind != HeadKind::socket_countersunk_head && kind != HeadKind::socket_set_screw;
}

/// \return a word for the shape: "hexagon bolt"
constexpr const char* kind_text(HeadKind kind) noexcept {
  switch (kind) {
    case HeadKind::hexagon_bolt: return "hexagon bolt";
    case HeadKind::hexagon_nut: return "hexagon nut";
    case HeadKind::flange_bolt: return "hexagon flange bolt";
    case HeadKind::flange_nut: return "hexagon flange nut";
    case HeadKind::socket_head_cap: return "socket head cap screw";
    case HeadKind::socket_button_head: return "socket button head screw";
    case HeadKind::socket_countersunk_head: return "socket countersunk head screw";
    case HeadKind::socket_set_screw: return "socket set screw";
    case HeadKind::hexalobular_socket: return "hexalobular socket head screw";
    case HeadKind::heavy_structural_bolt: return "structural bolt with large width across flats";
  }
  return "";
}

namespace detail {

inline Head from_row(const table::Head& row) {
  return {row.thread_size,
          row.standard,
          row.series,
          row.kind,
          row.drive,
          Length(row.width),
          Length(row.width_min),
          Length(row.corner_min),
          Length(row.bearing_diameter),
          Length(row.height),
          row.drive_number,
          row.commonness,
          row.region,
          row.look,
          table::head_sources[row.source],
          row.seen,
          row.detail_seen};
}

/// \return true if `list` ("ISO 4014, ISO 4017") names the standard whose key is `key`
inline bool names_standard(std::string_view list, std::string_view key) {
  while (true) {
    const std::size_t comma = list.find(',');
    if (name_key(list.substr(0, comma)) == key) return true;
    if (comma == std::string_view::npos) return false;
    list.remove_prefix(comma + 1);
  }
}

/// Older standards whose heads have the dimensions of newer ones, but for the sizes that the table lists as their own.
inline constexpr const char* newer_standards[][2] = {
    {"DIN931", "ISO4014"},    {"DIN933", "ISO4017"},   {"DIN934", "ISO4032"}, {"DIN912", "ISO4762"},
    {"ISO7380", "ISO7380-1"}, {"DIN7991", "ISO10642"}, {"DIN913", "ISO4026"}, {"DIN914", "ISO4027"},
    {"DIN915", "ISO4028"},    {"DIN916", "ISO4029"}};

}  // namespace detail

/// \param t  the thread; only its diameter counts
/// \return all heads and nuts in the tables with that thread diameter; empty if there are none
inline std::vector<Head> heads_of(const Thread& t) {
  std::vector<Head> found;
  const std::string size = t.size();
  for (const table::Head& row : table::heads)
    if (size == row.thread_size) found.push_back(detail::from_row(row));
  return found;
}

/// Looks up one head or nut.
/// \param t         the thread; only its diameter counts
/// \param standard  one standard: "ISO 4014", "DIN 931", "ISO 4762", "ISO 4032", "EN 14399-4"
/// \return the head, the most common one if the standard has several, or an error that names the standards of the size.
///         DIN 931, 933, 934 and 912 give the ISO head where it has the same width.
inline Outcome<Head> try_head(const Thread& t, std::string_view standard = "ISO 4014") {
  const std::string key = detail::name_key(standard);
  const std::vector<Head> heads = heads_of(t);
  const Head* best = nullptr;
  std::string known;
  for (const Head& head : heads) {
    if (known.find(head.standard) == std::string::npos) known += (known.empty() ? "" : ", ") + head.standard;
    if (detail::names_standard(head.standard, key) && (!best || head.commonness < best->commonness)) best = &head;
  }
  if (best) return *best;
  for (const auto& [older, newer] : detail::newer_standards)
    if (key == older && !heads.empty()) return try_head(t, newer);
  return detail::refuse("standard", heads.empty() ? "no standard in the tables has a head or nut for " + t.size()
                                                  : "standard " + detail::shown(standard) + " has no head for " +
                                                        t.size() + " in the tables; known are " + known);
}

/// \copydoc try_head
/// \throws Error  in place of returning one
inline Head head(const Thread& t, std::string_view standard = "ISO 4014") { return try_head(t, standard).value(); }

/// Effective bearing diameter D_Km of a head or nut on a clearance hole of ISO 273. Where no standard gives d_w it is
/// estimated: `hexagon_face_share` of the width across flats of a hexagon, 0.95 of the head diameter 1.5 d of a cylinder
/// head (common practice, no source); a six-lobed cylinder head takes d_w of the hexagon socket head of its size.
/// \param part    the head or nut
/// \param series  series of the hole
/// \return the diameter, or an error if ISO 273 has no hole for the size
inline Outcome<BearingDiameter> try_bearing_diameter(const Head& part, HoleSeries series = HoleSeries::medium) {
  const Outcome<Thread> size = try_parse_thread(part.size);
  if (!size) return size.error();
  const Outcome<ClearanceHole> hole = try_clearance_hole(*size, series);
  if (!hole) return hole.error();
  double outer = part.bearing_outer_diameter.si;
  Seen seen = detail::weaker(part.detail_seen, hole->seen);
  const bool estimated = !(outer > 0);
  if (estimated) {
    seen = Seen::judgement;
    outer = part.drive == Drive::hexagon ? hexagon_face_share * part.width.si : 0.95 * 1.5 * size->diameter.si;
    if (part.drive == Drive::hexalobular)
      if (const Outcome<Head> sibling = try_head(*size, "ISO 4762"); sibling && sibling->bearing_outer_diameter.si > 0)
        outer = sibling->bearing_outer_diameter.si;
  }
  return BearingDiameter{Length(mean_bearing_diameter.si(outer, hole->diameter.si)), Length(outer), hole->diameter,
                         estimated, seen};
}

/// \copydoc try_bearing_diameter
/// \throws Error  in place of returning one
inline BearingDiameter bearing_diameter(const Head& part, HoleSeries series = HoleSeries::medium) {
  return try_bearing_diameter(part, series).value();
}

}  // namespace tauten::TAUTEN_ABI
