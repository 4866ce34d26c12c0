// Generated from src/tables/property_class.csv by src/tables/generate.py; do not edit.
// clang-format off
// Property classes of steel and austenitic stainless bolts.
#pragma once

#include <tauten/base/source.hpp>
#include <tauten/base/table_number.hpp>

namespace tauten::TAUTEN_ABI::table {

/// What the yield figure of a class is.
enum class YieldKind : unsigned char {
  lower_yield,       ///< lower yield strength, R_eL
  proof_02,          ///< stress at 0.2 % non-proportional elongation, R_p0.2
  proof_full_size    ///< stress at 0.0048 d non-proportional elongation of a full-size fastener, R_pf
};

/// Where the rows come from.
inline constexpr Source property_class_sources[] = {
  {"ISO 898-1:1999", "Table 3", Seen::once},
  {"ISO 898-1:2009/2013", "Table 3", Seen::in_print},
  {"ISO 3506-1:2020", "mechanical properties; taken as for A2", Seen::memory},
  {"ISO 3506-1:2020", "mechanical properties", Seen::once},
};

/// Property classes by diameter range. The name is also the mark on the head.
struct PropertyClassRow {
  const char* name;                      ///< "8.8", "10.9", "A2-70"; "8.8 structural" is class 8.8 with its own size break
  TableLength diameter_above;            ///< nominal diameter above, m
  TableLength diameter_to;               ///< nominal diameter up to and including, m
  TableStress tensile_strength_nominal;  ///< R_m nominal, Pa
  TableStress tensile_strength;          ///< R_m least, Pa
  TableStress yield_strength_nominal;    ///< yield figure nominal, Pa
  TableStress yield_strength;            ///< yield figure least, Pa
  YieldKind yield_kind;                  ///< what the yield figure is
  TableStress proof_stress;              ///< stress under proof load S_p, Pa
  bool proof_is_yield;                   ///< the standard gives no proof stress; R_p0.2 stands in its place (austenitic steels)
  double elongation;                     ///< elongation after fracture A of a machined test piece, least, ratio
  double elongation_full_size;           ///< elongation after fracture A_f of a full-size fastener, least, ratio
  double extension_per_diameter;         ///< total extension after fracture over nominal diameter, least (austenitic steels)
  double reduction_of_area;              ///< reduction of area Z, least, ratio
  double hardness_min;                   ///< Vickers hardness number, least
  double hardness_max;                   ///< Vickers hardness number, greatest
  double torsion_ratio;                  ///< breaking shear stress in torsion over R_m, X of ISO 898-7
  Seen torsion_ratio_seen;               ///< how the torsion ratio was seen
  double shear_ratio;                    ///< shear strength over R_m, VDI 2230-1
  Seen shear_ratio_seen;                 ///< how the shear ratio was seen
  bool withdrawn;                        ///< no longer in the standard
  const char* note;                      ///< what limits the row, "" for nothing
  unsigned char source;                  ///< index into property_class_sources
};

inline constexpr PropertyClassRow property_classes[] = {
  {"3.6", 0, 39000, 300, 330, 180, 190, YieldKind::lower_yield, 180, false, 25e-2, absent, absent, absent, 95.0, 220.0, absent, Seen::once, absent, Seen::once, true, "not in the 2009 edition and later", 0},
  {"4.6", 0, 39000, 400, 400, 240, 240, YieldKind::lower_yield, 225, false, 22e-2, absent, absent, absent, 120.0, 220.0, absent, Seen::in_print, 0.7, Seen::memory, false, "", 1},
  {"4.8", 0, 39000, 400, 420, 320, 340, YieldKind::proof_full_size, 310, false, absent, 0.24, absent, absent, 130.0, 220.0, absent, Seen::in_print, absent, Seen::in_print, false, "", 1},
  {"5.6", 0, 39000, 500, 500, 300, 300, YieldKind::lower_yield, 280, false, 20e-2, absent, absent, absent, 155.0, 220.0, absent, Seen::in_print, 0.7, Seen::memory, false, "", 1},
  {"5.8", 0, 39000, 500, 520, 400, 420, YieldKind::proof_full_size, 380, false, absent, 0.22, absent, absent, 160.0, 220.0, absent, Seen::in_print, absent, Seen::in_print, false, "", 1},
  {"6.8", 0, 39000, 600, 600, 480, 480, YieldKind::proof_full_size, 440, false, absent, 0.2, absent, absent, 190.0, 250.0, absent, Seen::in_print, absent, Seen::in_print, false, "", 1},
  {"8.8", 0, 16000, 800, 800, 640, 640, YieldKind::proof_02, 580, false, 12e-2, absent, absent, 52e-2, 250.0, 320.0, 0.84, Seen::memory, 0.65, Seen::memory, false, "", 1},
  {"8.8", 16000, 39000, 800, 830, 640, 660, YieldKind::proof_02, 600, false, 12e-2, absent, absent, 52e-2, 255.0, 335.0, 0.84, Seen::memory, 0.65, Seen::memory, false, "", 1},
  {"8.8 structural", 0, 11000, 800, 800, 640, 640, YieldKind::proof_02, 580, false, 12e-2, absent, absent, 52e-2, 250.0, 320.0, 0.84, Seen::memory, 0.65, Seen::memory, false, "structural bolts: from M12 on the strengths of the larger sizes", 1},
  {"8.8 structural", 11000, 39000, 800, 830, 640, 660, YieldKind::proof_02, 600, false, 12e-2, absent, absent, 52e-2, 255.0, 335.0, 0.84, Seen::memory, 0.65, Seen::memory, false, "structural bolts: from M12 on the strengths of the larger sizes", 1},
  {"9.8", 0, 16000, 900, 900, 720, 720, YieldKind::proof_02, 650, false, 10e-2, absent, absent, 48e-2, 290.0, 360.0, 0.815, Seen::memory, absent, Seen::in_print, false, "", 1},
  {"10.9", 0, 39000, 1000, 1040, 900, 940, YieldKind::proof_02, 830, false, 9e-2, absent, absent, 48e-2, 320.0, 380.0, 0.79, Seen::memory, 0.62, Seen::memory, false, "", 1},
  {"12.9", 0, 39000, 1200, 1220, 1080, 1100, YieldKind::proof_02, 970, false, 8e-2, absent, absent, 44e-2, 385.0, 435.0, 0.75, Seen::memory, 0.6, Seen::memory, false, "", 1},
  {"A1-50", 0, 39000, TableStress::none, 500, TableStress::none, 210, YieldKind::proof_02, 210, true, absent, absent, 0.6, absent, absent, absent, absent, Seen::memory, 0.8, Seen::memory, false, "", 2},
  {"A1-70", 0, 39000, TableStress::none, 700, TableStress::none, 450, YieldKind::proof_02, 450, true, absent, absent, 0.4, absent, absent, absent, absent, Seen::memory, 0.72, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A1-80", 0, 39000, TableStress::none, 800, TableStress::none, 600, YieldKind::proof_02, 600, true, absent, absent, 0.3, absent, absent, absent, absent, Seen::memory, 0.68, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A2-50", 0, 39000, TableStress::none, 500, TableStress::none, 210, YieldKind::proof_02, 210, true, absent, absent, 0.6, absent, absent, absent, absent, Seen::once, 0.8, Seen::memory, false, "", 3},
  {"A2-70", 0, 39000, TableStress::none, 700, TableStress::none, 450, YieldKind::proof_02, 450, true, absent, absent, 0.4, absent, absent, absent, absent, Seen::once, 0.72, Seen::memory, false, "the 1997 edition stops at 24 mm", 3},
  {"A2-80", 0, 39000, TableStress::none, 800, TableStress::none, 600, YieldKind::proof_02, 600, true, absent, absent, 0.3, absent, absent, absent, absent, Seen::once, 0.68, Seen::memory, false, "the 1997 edition stops at 24 mm", 3},
  {"A3-50", 0, 39000, TableStress::none, 500, TableStress::none, 210, YieldKind::proof_02, 210, true, absent, absent, 0.6, absent, absent, absent, absent, Seen::memory, 0.8, Seen::memory, false, "", 2},
  {"A3-70", 0, 39000, TableStress::none, 700, TableStress::none, 450, YieldKind::proof_02, 450, true, absent, absent, 0.4, absent, absent, absent, absent, Seen::memory, 0.72, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A3-80", 0, 39000, TableStress::none, 800, TableStress::none, 600, YieldKind::proof_02, 600, true, absent, absent, 0.3, absent, absent, absent, absent, Seen::memory, 0.68, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A4-50", 0, 39000, TableStress::none, 500, TableStress::none, 210, YieldKind::proof_02, 210, true, absent, absent, 0.6, absent, absent, absent, absent, Seen::memory, 0.8, Seen::memory, false, "", 2},
  {"A4-70", 0, 39000, TableStress::none, 700, TableStress::none, 450, YieldKind::proof_02, 450, true, absent, absent, 0.4, absent, absent, absent, absent, Seen::memory, 0.72, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A4-80", 0, 39000, TableStress::none, 800, TableStress::none, 600, YieldKind::proof_02, 600, true, absent, absent, 0.3, absent, absent, absent, absent, Seen::memory, 0.68, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A5-50", 0, 39000, TableStress::none, 500, TableStress::none, 210, YieldKind::proof_02, 210, true, absent, absent, 0.6, absent, absent, absent, absent, Seen::memory, 0.8, Seen::memory, false, "", 2},
  {"A5-70", 0, 39000, TableStress::none, 700, TableStress::none, 450, YieldKind::proof_02, 450, true, absent, absent, 0.4, absent, absent, absent, absent, Seen::memory, 0.72, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
  {"A5-80", 0, 39000, TableStress::none, 800, TableStress::none, 600, YieldKind::proof_02, 600, true, absent, absent, 0.3, absent, absent, absent, absent, Seen::memory, 0.68, Seen::memory, false, "the 1997 edition stops at 24 mm", 2},
};

}  // namespace tauten::TAUTEN_ABI::table

/// Property classes, spelled for the compiler: `.property_class = classes::class_8_8`.
namespace tauten::TAUTEN_ABI::classes {

inline constexpr const char* class_3_6 = "3.6";
inline constexpr const char* class_4_6 = "4.6";
inline constexpr const char* class_4_8 = "4.8";
inline constexpr const char* class_5_6 = "5.6";
inline constexpr const char* class_5_8 = "5.8";
inline constexpr const char* class_6_8 = "6.8";
inline constexpr const char* class_8_8 = "8.8";
inline constexpr const char* class_8_8_structural = "8.8 structural";
inline constexpr const char* class_9_8 = "9.8";
inline constexpr const char* class_10_9 = "10.9";
inline constexpr const char* class_12_9 = "12.9";
inline constexpr const char* A1_50 = "A1-50";
inline constexpr const char* A1_70 = "A1-70";
inline constexpr const char* A1_80 = "A1-80";
inline constexpr const char* A2_50 = "A2-50";
inline constexpr const char* A2_70 = "A2-70";
inline constexpr const char* A2_80 = "A2-80";
inline constexpr const char* A3_50 = "A3-50";
inline constexpr const char* A3_70 = "A3-70";
inline constexpr const char* A3_80 = "A3-80";
inline constexpr const char* A4_50 = "A4-50";
inline constexpr const char* A4_70 = "A4-70";
inline constexpr const char* A4_80 = "A4-80";
inline constexpr const char* A5_50 = "A5-50";
inline constexpr const char* A5_70 = "A5-70";
inline constexpr const char* A5_80 = "A5-80";

}  // namespace tauten::TAUTEN_ABI::classes
