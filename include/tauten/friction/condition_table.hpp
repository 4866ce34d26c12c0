// Generated from src/tables/condition.csv by src/tables/generate.py; do not edit.
// clang-format off
// What is on the threads, and the friction band that comes with it.
#pragma once

#include <tauten/base/source.hpp>

namespace tauten::TAUTEN_ABI::table {

/// Where the rows come from.
inline constexpr Source condition_sources[] = {
  {"VDI 2230 Part 1:2003", "Table A5, class C as reprinted: bare steel as delivered", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, class B as reprinted: bare or blackened with oil or grease", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, class B as reprinted (0.08 to 0.16); K 0.15 to 0.22 of a handbook is 0.11 to 0.17", Seen::memory},
  {"VDI 2230 Part 1:2003", "Table A5, classes C and D as reprinted: galvanic zinc without lubricant", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, class B as reprinted: galvanic zinc with oil or grease", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, classes A and B as reprinted: wax or solid lubricant in a top coat", Seen::once},
  {"ISO 10683", "total friction as typically ordered: 0.09 to 0.14", Seen::memory},
  {"VDI 2230 Part 1:2003", "Table A5, class D as reprinted: hot-dip galvanised without lubricant", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, class B as reprinted: hot-dip galvanised with wax or solid lubricant", Seen::once},
  {"Shigley Mechanical Engineering Design 9th ed.", "Table 8-15: K 0.16; band from K 0.106 to 0.25 (from memory)", Seen::memory},
  {"VDI 2230 Part 1:2003", "Table A5, class A as reprinted: solid lubricant as paste", Seen::once},
  {"Shigley Mechanical Engineering Design 9th ed.", "Table 8-15: K 0.12; band from K 0.08 to 0.23 (from memory)", Seen::memory},
  {"NASA TM-106943", "Tables VII to IX: torque over preload and diameter 0.09 to 0.16", Seen::once},
  {"common practice", "no source: between oiled and dry", Seen::judgement},
  {"common practice", "no source: dry steel upward", Seen::judgement},
  {"common practice", "no source: between oiled and rusty", Seen::judgement},
  {"VDI 2230 Part 1:2003", "Table A5, class E as reprinted (0.30 and more); up to 0.50 as it begins to gall, from memory", Seen::judgement},
  {"VDI 2230 Part 1:2003", "Table A5, class D as reprinted: austenitic with oil", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, classes B and C as reprinted: austenitic with paste or wax", Seen::once},
  {"VDI 2230 Part 1:2003", "Table A5, class C as reprinted: adhesive; bare steel as delivered under the head", Seen::once},
  {"common practice", "no source: oiled steel to dry zinc", Seen::judgement},
};

/// Friction bands by state of thread and bearing face.
struct ThreadConditionRow {
  const char* key;        ///< short name: "oiled"
  const char* title;      ///< what it is
  const char* group;      ///< bare, coated, paste, stainless, locked or field
  double thread_low;      ///< lowest coefficient of friction in the thread
  double thread_nominal;  ///< typical coefficient of friction in the thread
  double thread_high;     ///< highest coefficient of friction in the thread
  double face_low;        ///< lowest coefficient of friction under head or nut
  double face_nominal;    ///< typical coefficient of friction under head or nut
  double face_high;       ///< highest coefficient of friction under head or nut
  bool lubricated;        ///< true if a fluid, paste or wax is on the surface
  const char* note;       ///< what else to know; may be ""
  const char* words;      ///< trade words that are taken for it, semicolons between them
  unsigned char source;   ///< index into condition_sources
};

inline constexpr ThreadConditionRow thread_conditions[] = {
  {"dry", "dry plain steel, no lubricant added", "bare", 0.14, 0.17, 0.24, 0.14, 0.17, 0.24, false, "as delivered; a thread wiped free of all oil may be higher", "plain;plain steel;bare;as received;as delivered;clean;clean and dry;untreated;uncoated;degreased;no oil;unoiled;no lubricant;without lubricant;unlubricated;not lubricated;unlubed", 0},
  {"oiled", "plain or blackened steel with engine or machine oil on thread and face", "bare", 0.08, 0.12, 0.16, 0.08, 0.12, 0.16, true, "", "oil;oily;greased;grease;lubed;lube;lubricated;lightly oiled;light oil;engine oil;motor oil;machine oil;black and oiled;blackened and oiled", 1},
  {"phosphate-oil", "phosphate coating with oil", "coated", 0.08, 0.13, 0.17, 0.08, 0.13, 0.17, true, "", "phosphated;phosphate;phosphated and oiled;phosphate and oil", 2},
  {"zinc", "electroplated zinc without lubricant", "coated", 0.14, 0.20, 0.35, 0.14, 0.20, 0.35, false, "friction rises with each reuse", "zinc plated;zinc plate;electroplated zinc;electro zinc;electro galvanised;electro galvanized;electrogalvanised;electrogalvanized;bright zinc;yellow zinc;bzp;zinc passivated;galvanic zinc", 3},
  {"zinc-oiled", "electroplated zinc with oil", "coated", 0.08, 0.12, 0.16, 0.08, 0.12, 0.16, true, "", "zinc and oil;zinc plated and oiled;oiled zinc;zinc oil", 4},
  {"waxed", "zinc or zinc flake with wax or a lubricating top coat", "coated", 0.04, 0.09, 0.16, 0.04, 0.09, 0.16, true, "", "wax;zinc and wax;zinc plated and waxed;waxed zinc", 5},
  {"zinc-flake", "zinc flake with a lubricant in the coating", "coated", 0.09, 0.12, 0.14, 0.09, 0.12, 0.14, true, "", "zinc lamella;zinc flakes", 6},
  {"galvanised", "hot-dip galvanised without lubricant", "coated", 0.20, 0.26, 0.35, 0.20, 0.26, 0.35, false, "", "galvanized;galv;hdg;hot dip galvanised;hot dip galvanized;hot dipped;hot dip;hot dip zinc;hot dipped galvanised;hot dipped galvanized", 7},
  {"galvanised-waxed", "hot-dip galvanised with wax or solid lubricant", "coated", 0.08, 0.12, 0.16, 0.08, 0.12, 0.16, true, "", "galvanized waxed;galvanised and waxed;galvanized and waxed;hdg waxed;hdg and waxed", 8},
  {"cadmium", "cadmium plated", "coated", 0.07, 0.12, 0.19, 0.07, 0.12, 0.19, false, "never heat or grind: the fumes are poisonous", "cad;cadmium plated;cad plated", 9},
  {"moly-paste", "molybdenum disulphide paste", "paste", 0.04, 0.08, 0.10, 0.04, 0.08, 0.10, true, "paste on thread and face", "moly;mos2;molybdenum;molybdenum disulphide;molybdenum disulfide", 10},
  {"anti-seize", "metal-filled anti-seize paste", "paste", 0.05, 0.08, 0.18, 0.05, 0.08, 0.18, true, "", "antiseize;copper grease;copper paste;nickel paste;nickel anti seize;aluminium paste;aluminum paste;ceramic paste", 11},
  {"dry-film", "bonded dry-film lubricant", "coated", 0.06, 0.08, 0.12, 0.06, 0.08, 0.12, true, "", "bonded film;dry film lubricant;bonded coating", 12},
  {"penetrating-fluid", "penetrating fluid left behind after loosening", "field", 0.09, 0.14, 0.20, 0.09, 0.14, 0.20, true, "a thin film of unknown amount", "penetrating oil;penetrant;release oil;rust remover;rust solvent", 13},
  {"rusty", "rusty and only brushed; dry", "field", 0.15, 0.22, 0.35, 0.15, 0.22, 0.35, false, "", "rust;rusted;corroded;corrosion;brushed;wire brushed;rusty and brushed", 14},
  {"rusty-oiled", "rusty and brushed; then oiled", "field", 0.10, 0.15, 0.24, 0.10, 0.15, 0.24, true, "", "rusted and oiled;rusty and oiled;rust and oil;brushed and oiled", 15},
  {"stainless", "austenitic stainless steel dry", "stainless", 0.24, 0.32, 0.50, 0.24, 0.32, 0.50, false, "dry stainless threads gall and may seize while tightening", "stainless steel;stainless dry;dry stainless;inox", 16},
  {"stainless-oiled", "austenitic stainless steel with oil", "stainless", 0.20, 0.25, 0.35, 0.20, 0.25, 0.35, true, "may still gall", "stainless and oil;oiled stainless;stainless oil;stainless greased", 17},
  {"stainless-paste", "austenitic stainless steel with paste or wax", "stainless", 0.08, 0.14, 0.24, 0.08, 0.14, 0.24, true, "", "stainless and paste;stainless anti seize;stainless waxed", 18},
  {"adhesive", "steel with a liquid thread-locking adhesive in the thread", "locked", 0.14, 0.18, 0.24, 0.14, 0.18, 0.24, false, "adhesive in the thread only; it is wet while tightening, and used up on loosening", "threadlock;threadlocker;thread lock;thread locker;thread locking;thread locking adhesive;glued;glue", 19},
  {"unknown", "not known", "field", 0.08, 0.14, 0.35, 0.08, 0.14, 0.35, false, "friction unknown: the band runs from oiled steel to dry zinc; wax and paste are lower and galvanised or stainless threads higher", "?;don't know;not known;do not know;unsure;not sure;no idea", 20},
};

}  // namespace tauten::TAUTEN_ABI::table

/// Names of the states, spelled for the compiler: `.condition = conditions::oiled`.
namespace tauten::TAUTEN_ABI::conditions {

inline constexpr const char* dry = "dry";
inline constexpr const char* oiled = "oiled";
inline constexpr const char* phosphate_oil = "phosphate-oil";
inline constexpr const char* zinc = "zinc";
inline constexpr const char* zinc_oiled = "zinc-oiled";
inline constexpr const char* waxed = "waxed";
inline constexpr const char* zinc_flake = "zinc-flake";
inline constexpr const char* galvanised = "galvanised";
inline constexpr const char* galvanised_waxed = "galvanised-waxed";
inline constexpr const char* cadmium = "cadmium";
inline constexpr const char* moly_paste = "moly-paste";
inline constexpr const char* anti_seize = "anti-seize";
inline constexpr const char* dry_film = "dry-film";
inline constexpr const char* penetrating_fluid = "penetrating-fluid";
inline constexpr const char* rusty = "rusty";
inline constexpr const char* rusty_oiled = "rusty-oiled";
inline constexpr const char* stainless = "stainless";
inline constexpr const char* stainless_oiled = "stainless-oiled";
inline constexpr const char* stainless_paste = "stainless-paste";
inline constexpr const char* adhesive = "adhesive";
inline constexpr const char* unknown = "unknown";

}  // namespace tauten::TAUTEN_ABI::conditions
