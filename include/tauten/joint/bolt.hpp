// A bolt as a value: its plain dimensions, and the pieces into which a joint divides it.
#pragma once

#include <string>

#include "tauten/base/shown_text.hpp"
#include "tauten/joint/material.hpp"
#include "tauten/part/head_table.hpp"

namespace tauten::TAUTEN_ABI {

/// Form of the head; it decides how much the head yields under load.
enum class HeadForm : unsigned char { hexagon, socket };

/// Plain dimensions of a bolt, screw or stud. What is left at zero is taken from the standards.
struct Bolt {
  Length diameter{};  ///< nominal diameter d
  Length pitch{};     ///< pitch P
  Length length{};    ///< nominal length under the head; of a stud, without the end in the tapped hole
  HeadForm head = HeadForm::hexagon;
  Length face_diameter{};   ///< outer diameter of the bearing face; 0: ISO 4014 or ISO 4762, else 1.4 d
  Length thread_length{};   ///< 0: by the rule of ISO 4014, see `thread_length`
  Length shank_diameter{};  ///< unthreaded shank; 0: the nominal diameter
  Material material = material::steel;

  template <class V>
  static void fields(V&& visit) {
    visit("diameter", &Bolt::diameter);
    visit("pitch", &Bolt::pitch);
    visit("length", &Bolt::length);
    visit("head", &Bolt::head);
    visit("face_diameter", &Bolt::face_diameter);
    visit("thread_length", &Bolt::thread_length);
    visit("shank_diameter", &Bolt::shank_diameter);
    visit("material", &Bolt::material);
  }
};

/// What a piece of a bolt is.
enum class SegmentKind : unsigned char { head, shank, free_thread, engaged_thread, nut, tapped_hole };

/// A cylindrical piece of a bolt, or the like of one: length and diameter by which it stretches.
struct BoltSegment {
  SegmentKind kind = SegmentKind::shank;
  Length length{};
  Length diameter{};
  Stress elastic_modulus{};

  template <class V>
  static void fields(V&& visit) {
    visit("kind", &BoltSegment::kind);
    visit("length", &BoltSegment::length);
    visit("diameter", &BoltSegment::diameter);
    visit("elastic_modulus", &BoltSegment::elastic_modulus);
  }
};

/// Extra lengths in nominal diameters that stand for what yields around the loaded thread and under the head.
/// VDI 2230 Part 1:2003, section 5.1.1, from memory.
namespace extra_length {
inline constexpr double hexagon_head = 0.5;
inline constexpr double socket_head = 0.4;
inline constexpr double engaged_thread = 0.5;
inline constexpr double nut = 0.4;
inline constexpr double tapped_hole = 0.33;
}  // namespace extra_length

/// Length of thread of a part-threaded bolt. Hexagon head: 2 d + 6 mm up to 125 mm, 2 d + 12 mm up to 200 mm, 2 d + 25 mm
/// above; ISO 4014 and ISO 888, common practice. Hexagon socket head: 2 d + 12 mm; ISO 4762, from memory.
constexpr Length thread_length(Length diameter, Length length, HeadForm head = HeadForm::hexagon) noexcept {
  if (head == HeadForm::socket) return Length(2 * diameter.si + 12e-3);
  const double extra = length.si <= 125e-3 ? 6e-3 : length.si <= 200e-3 ? 12e-3 : 25e-3;
  return Length(2 * diameter.si + extra);
}

/// Thread lengths of structural bolts for preloading, system HV: short, so that the shank fills the hole. EN 14399-4, from
/// memory.
struct StructuralThread {
  short diameter;  ///< mm
  short length;    ///< mm
};
inline constexpr StructuralThread structural_threads[] = {{12, 23}, {16, 28}, {20, 33}, {22, 34},
                                                          {24, 39}, {27, 41}, {30, 44}, {36, 52}};

/// \return the thread length of an EN 14399-4 bolt; 0 for a size that the standard does not have
constexpr Length structural_thread_length(Length diameter) noexcept {
  for (const StructuralThread& row : structural_threads)
    if (diameter.si > (row.diameter - 0.5) * 1e-3 && diameter.si < (row.diameter + 0.5) * 1e-3)
      return Length(row.length * 1e-3);
  return Length(0);
}

/// Standard bolt lengths in mm. ISO 888, common practice.
inline constexpr short standard_lengths[] = {6,   8,   10,  12,  16,  20,  25,  30,  35,  40,  45,  50,  55,  60,
                                             65,  70,  80,  90,  100, 110, 120, 130, 140, 150, 160, 180, 200, 220,
                                             240, 260, 280, 300, 320, 340, 360, 380, 400, 420, 440, 460, 480, 500};

/// \return the shortest standard length of at least `needed`; `needed` itself if it exceeds them all
constexpr Length standard_length(Length needed) noexcept {
  for (const short mm : standard_lengths)
    if (mm * 1e-3 >= needed.si * (1 - 1e-12)) return Length(mm * 1e-3);
  return needed;
}

/// \return the outer diameter of the bearing face of a head or nut: given, from the table of heads, or 1.4 d
inline Length face_diameter_of(const Bolt& bolt) noexcept {
  if (bolt.face_diameter.si != 0) return bolt.face_diameter;
  const auto kind = bolt.head == HeadForm::socket ? table::HeadKind::socket_head_cap : table::HeadKind::hexagon_bolt;
  const std::string size = "M" + detail::mm_text(bolt.diameter.si);
  for (const table::Head& row : table::heads)
    if (row.kind == kind && row.bearing_diameter > 0 && size == row.thread_size) return Length(row.bearing_diameter);
  return Length(1.4 * bolt.diameter.si);
}

/// \return the height of a regular hexagon nut: ISO 4032, else 0.8 d, common practice
inline Length nut_height_of(Length diameter) noexcept {
  const std::string size = "M" + detail::mm_text(diameter.si);
  for (const table::Head& row : table::heads)
    if (row.kind == table::HeadKind::hexagon_nut && row.height > 0 && size == row.thread_size &&
        std::string_view(row.standard).starts_with("ISO 4032"))
      return Length(row.height);
  return Length(0.8 * diameter.si);
}

}  // namespace tauten::TAUTEN_ABI
