#!/usr/bin/env python3
"""Writes the table headers of tauten from the CSV files beside this script.

    generate.py            write the headers
    generate.py --check    change nothing; exit 1 if a header differs from what the CSV files give

A CSV column carries its unit in its name (diameter_mm). The header holds lengths, loads and stresses as whole micrometres, newtons and
megapascals that read as SI (base/table_number.hpp), all else in SI. An empty cell is an absent figure.
Every row names its `source` ("document, place") and its `confidence`:
    print   read in two sources, or read once and reproduced by the standard's own formula
    once    read once in print
    memory  remembered or computed, not read: a hint
    judgement  no published figure was found: a wide estimate
A cell that is known better or worse than its row stands in `cell_confidence` ("proof_load=memory").
"""
import argparse
import csv
import decimal
import os
import re
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
INCLUDE = os.path.join(ROOT, "include", "tauten")

SEEN = {"print": "Seen::in_print", "once": "Seen::once", "memory": "Seen::memory", "judgement": "Seen::judgement"}
# Exponents keep a literal exact: 14 % is 14e-2, never 0.14 by way of a rounded product.
EXPONENT = {"Nm": "", "pct": "e-2"}


def fail(sentence):
    sys.exit("generate.py: " + sentence)


# ---- one cell -----------------------------------------------------------------------------------------------------

def text(value):
    return '"' + value.replace("\\", "\\\\").replace('"', '\\"') + '"'


def number(column, value):
    if value == "":
        return "absent"
    float(value)  # raises on anything that is not a number
    exponent = EXPONENT.get(column.rpartition("_")[2], "")
    return value + exponent if exponent or "." in value else value + ".0"


def cell_seen(row, cell):
    return SEEN[row["cells"].get(cell, row["confidence"])]


class Field:
    """One member of the row struct. `columns` are the CSV columns it uses, `write` gives its C++ initialiser."""

    def __init__(self, declaration, comment, columns, write, cells=()):
        self.declaration, self.comment = declaration, comment
        self.columns, self.write, self.cells = columns, write, cells


def name(member, column, comment):
    return Field(f"const char* {member}", comment, [column], lambda row: text(row[column]))


def real(member, column, comment, cell=None):
    return Field(f"double {member}", comment, [column], lambda row: number(column, row[column]), [cell or member])


WHOLE = {"mm": ("TableLength", 1000), "N": ("TableForce", 1), "MPa": ("TableStress", 1)}


def whole(member, column, comment, cell=None):
    """A whole number of a small unit."""
    unit = column.rpartition("_")[2]
    kind, times = WHOLE[unit]

    def write(row):
        if row[column] == "":
            return f"{kind}::none"
        number = decimal.Decimal(row[column]) * times
        if number != int(number):
            fail(f"column {column} holds {row[column]} {unit}, which is finer than the table keeps it")
        return str(int(number))
    return Field(f"{kind} {member}", comment, [column], write, [cell or member])


def count(member, column, comment):
    return Field(f"unsigned char {member}", comment, [column], lambda row: str(int(row[column])))


def flag(member, column, comment, true=("yes",)):
    def write(row):
        if row[column] not in true + ("no",):
            fail(f"column {column} holds '{row[column]}', expected one of {true + ('no',)}")
        return "true" if row[column] in true else "false"
    return Field(f"bool {member}", comment, [column], write)


def choice(kind, member, column, values, comment):
    """`values` maps the words of the CSV to enumerators."""
    def write(row):
        if row[column] not in values:
            fail(f"column {column} holds the unknown word '{row[column]}'")
        return f"{kind}::{values[row[column]]}"
    return Field(f"{kind} {member}", comment, [column], write)


def seen(member, cell, comment):
    """How one cell was seen; `cell` is the name used in cell_confidence, None for the row as a whole."""
    return Field(f"Seen {member}", comment, [], lambda row: cell_seen(row, cell), [cell] if cell else [])


def grade_cell(row, cell):
    value = row[cell + "_um"] if cell else ""
    return f"{{{int(value) if value else 'TableLength::none'}, {cell_seen(row, cell) if value else SEEN['memory']}}}"


def graded(member, cell, comment):
    """One figure in micrometres with how it was seen."""
    return Field(f"Graded {member}", comment, [cell + "_um"], lambda row: grade_cell(row, cell), [cell])


def graded_array(member, cells, comment):
    """One figure per grade; None is a grade that does not exist."""
    known = [cell for cell in cells if cell]
    return Field(f"Graded {member}[{len(cells)}]", comment, [cell + "_um" for cell in known],
                 lambda row: "{" + ", ".join(grade_cell(row, cell) for cell in cells) + "}", known)


# ---- the tables ---------------------------------------------------------------------------------------------------

class Table:
    def __init__(self, csv_name, struct, array, comment, fields, not_shipped=(), constants=()):
        self.csv_name, self.struct, self.array, self.comment, self.fields = csv_name, struct, array, comment, fields
        self.constants = constants  # namespace of constants for the first field, and the comment on it
        self.not_shipped = not_shipped  # columns that only checks read


GRADED = """/// One figure with how it was seen.
struct Graded {
  TableLength value;  ///< absent where the standard has no such grade
  Seen seen;          ///< a figure from memory must not be given as a limit
};
"""

YIELD_KIND = """/// What the yield figure of a class is.
enum class YieldKind : unsigned char {
  lower_yield,       ///< lower yield strength, R_eL
  proof_02,          ///< stress at 0.2 % non-proportional elongation, R_p0.2
  proof_full_size    ///< stress at 0.0048 d non-proportional elongation of a full-size fastener, R_pf
};
"""

HEAD_ENUMS = """/// The shape that a tool fits on, or into.
enum class HeadKind : unsigned char {
  hexagon_bolt,
  hexagon_nut,
  flange_bolt,
  flange_nut,
  socket_head_cap,
  socket_button_head,
  socket_countersunk_head,
  socket_set_screw,
  hexalobular_socket,
  heavy_structural_bolt
};

/// The profile of the tool.
enum class Drive : unsigned char {
  hexagon,      ///< socket or spanner outside
  hexagon_key,  ///< hexagon key inside
  hexalobular   ///< six-lobed bit inside, by drive number
};
"""

HEAD_KINDS = ("hexagon_bolt", "hexagon_nut", "flange_bolt", "flange_nut", "socket_head_cap",
              "socket_button_head", "socket_countersunk_head", "socket_set_screw", "hexalobular_socket",
              "heavy_structural_bolt")

HEADERS = [
    ("thread/size_table.hpp", "Sizes and pitches of ISO metric threads, M1 to M64.", "", [
        Table("size", "MetricSize", "metric_sizes",
              "ISO metric thread sizes by diameter; the coarse pitch first, then falling pitch.", [
                  name("designation", "designation", 'as written on a drawing: "M10", "M10x1.25"'),
                  whole("diameter", "diameter_mm", "nominal diameter d, m"),
                  whole("pitch", "pitch_mm", "pitch P, m"),
                  flag("coarse", "coarse", "true for the coarse pitch"),
                  count("choice", "choice", "choice of ISO 261: 1, 2 or 3; lower is preferred"),
                  flag("selected", "selected", "in the selection of ISO 262 for screws, bolts and nuts",
                       true=("yes", "second")),
              ]),
    ]),
    ("thread/tolerance_table.hpp", "Deviations and tolerances of ISO metric threads.", GRADED, [
        Table("tolerance_deviation", "FundamentalDeviation", "fundamental_deviations",
              "Fundamental deviations by pitch. H and h are zero for every pitch.",
              [
                  whole("pitch", "pitch_mm", "pitch P, m"),
                  graded("G", "G", "lower deviation EI of internal threads, position G"),
                  graded("g", "g", "upper deviation es of external threads, position g"),
                  graded("f", "f", "upper deviation es of external threads, position f"),
                  graded("e", "e", "upper deviation es of external threads, position e"),
              ]),
        Table("tolerance_crest", "CrestTolerance", "crest_tolerances",
              "Tolerances of the minor diameter of internal threads and the major diameter of external threads.", [
                  whole("pitch", "pitch_mm", "pitch P, m"),
                  graded_array("minor_internal", [f"TD1_{k}" for k in range(4, 9)],
                               "T_D1 for grades 4 to 8; index is grade - 4"),
                  graded_array("major_external", ["Td_4", None, "Td_6", None, "Td_8"],
                               "T_d for grades 4, 6 and 8; index is grade - 4"),
              ]),
        Table("tolerance_pitch", "PitchTolerance", "pitch_tolerances", "Tolerances of the pitch diameter.", [
            whole("diameter_above", "diameter_above_mm", "nominal diameter above, m"),
            whole("diameter_to", "diameter_to_mm", "nominal diameter up to and including, m"),
            whole("pitch", "pitch_mm", "pitch P, m"),
            graded_array("external", [f"Td2_{k}" for k in range(3, 10)], "T_d2 for grades 3 to 9; index is grade - 3"),
            graded_array("internal", [f"TD2_{k}" for k in range(4, 9)], "T_D2 for grades 4 to 8; index is grade - 4"),
        ]),
        Table("tolerance_limits", "ConfirmedLimits", "confirmed_limits",
              "Threads whose 6g and 6H limits of size were compared with printed ones.", [
                  name("designation", "designation", 'thread: "M8", "M10x1.25"'),
                  whole("diameter", "diameter_mm", "nominal diameter d, m"),
                  whole("pitch", "pitch_mm", "pitch P, m"),
                  seen("bolt_6g", None, "how the 6g limits were seen"),
                  seen("nut_6H", "nut", "how the 6H limits were seen"),
              ],
              not_shipped=[f"{d}_{end}_6g_mm" for d in ("d", "d2", "d3") for end in ("max", "min")]
              + [f"{d}_{end}_6H_mm" for d in ("D1", "D2") for end in ("max", "min")] + ["print_mismatch"]),
    ]),
    ("part/property_class_table.hpp", "Property classes of steel and austenitic stainless bolts.", YIELD_KIND, [
        Table("property_class", "PropertyClassRow", "property_classes",
              "Property classes by diameter range. The name is also the mark on the head.", [
                  name("name", "name", '"8.8", "10.9", "A2-70"; "8.8 structural" is class 8.8 with its own size break'),
                  whole("diameter_above", "diameter_above_mm", "nominal diameter above, m"),
                  whole("diameter_to", "diameter_to_mm", "nominal diameter up to and including, m"),
                  whole("tensile_strength_nominal", "tensile_nominal_MPa", "R_m nominal, Pa"),
                  whole("tensile_strength", "tensile_min_MPa", "R_m least, Pa"),
                  whole("yield_strength_nominal", "yield_nominal_MPa", "yield figure nominal, Pa"),
                  whole("yield_strength", "yield_min_MPa", "yield figure least, Pa"),
                  choice("YieldKind", "yield_kind", "yield_kind",
                         {"ReL": "lower_yield", "Rp02": "proof_02", "Rpf": "proof_full_size"},
                         "what the yield figure is"),
                  whole("proof_stress", "proof_stress_MPa", "stress under proof load S_p, Pa"),
                  flag("proof_is_yield", "proof_is_yield",
                       "the standard gives no proof stress; R_p0.2 stands in its place (austenitic steels)"),
                  real("elongation", "elongation_pct",
                       "elongation after fracture A of a machined test piece, least, ratio"),
                  real("elongation_full_size", "elongation_full_size",
                       "elongation after fracture A_f of a full-size fastener, least, ratio"),
                  real("extension_per_diameter", "extension_per_diameter",
                       "total extension after fracture over nominal diameter, least (austenitic steels)"),
                  real("reduction_of_area", "reduction_of_area_pct", "reduction of area Z, least, ratio"),
                  real("hardness_min", "hv_min", "Vickers hardness number, least"),
                  real("hardness_max", "hv_max", "Vickers hardness number, greatest"),
                  real("torsion_ratio", "torsion_ratio", "breaking shear stress in torsion over R_m, X of ISO 898-7"),
                  seen("torsion_ratio_seen", "torsion_ratio", "how the torsion ratio was seen"),
                  real("shear_ratio", "shear_ratio", "shear strength over R_m, VDI 2230-1"),
                  seen("shear_ratio_seen", "shear_ratio", "how the shear ratio was seen"),
                  flag("withdrawn", "withdrawn", "no longer in the standard"),
                  name("note", "note", 'what limits the row, "" for nothing'),
              ], constants=("classes", "Property classes, spelled for the compiler: `.property_class = classes::class_8_8`.")),
    ]),
    ("part/bolt_load_table.hpp", "Least tensile loads and proof loads of steel bolts.", "", [
        Table("bolt_load", "BoltLoad", "bolt_loads",
              "Loads by thread and class, as printed also where the print differs from stress times area.", [
                  name("designation", "designation", 'thread: "M8", "M8x1"'),
                  name("property_class", "property_class", '"8.8", "8.8 structural"'),
                  whole("tensile_load", "tensile_load_N", "least ultimate tensile load, N"),
                  seen("tensile_load_seen", "tensile_load", "how it was seen; memory: computed, not read"),
                  whole("proof_load", "proof_load_N", "proof load, N"),
                  seen("proof_load_seen", "proof_load", "how it was seen; memory: computed, not read"),
              ]),
    ]),
    ("part/nut_table.hpp", "Proof loads of nuts, and which nut belongs to which bolt.", "", [
        Table("nut_load", "NutLoad", "nut_loads", "Proof loads of steel nuts with coarse thread.", [
            name("designation", "designation", 'thread: "M8"'),
            name("nut_class", "nut_class", '"8", "10"; "04" and "05" are thin nuts'),
            count("style", "style", "style 1 or 2; 0 is a thin nut"),
            whole("proof_stress", "proof_stress_MPa", "stress under proof load S_p, Pa"),
            whole("proof_load", "proof_load_N", "proof load, N"),
        ]),
        Table("nut_match", "NutMatch", "nut_matches", "The lowest nut class that a bolt class may be paired with.", [
            name("bolt_class", "bolt_class", 'property class of the bolt: "8.8"'),
            name("nut_class", "nut_class", 'lowest class of the nut: "8"; a higher one will do'),
        ]),
        Table("nut_stainless", "StainlessNut", "stainless_nuts", "Austenitic stainless nuts of regular height.", [
            name("nut_class", "nut_class", '"50", "70" or "80", the part of "A2-70" after the dash'),
            count("style", "style", "style 1: height of 0.8 D or more"),
            whole("proof_stress", "proof_stress_MPa", "stress under proof load S_p, Pa"),
        ]),
    ]),
    ("part/breaking_torque_table.hpp", "Minimum breaking torques of bolts and screws.", "", [
        Table("breaking_torque", "BreakingTorque", "breaking_torques", "Minimum breaking torques as tabulated.", [
            name("designation", "designation", 'thread: "M6", "M8x1"'),
            name("property_class", "property_class",
                 '"8.8" (steel); "50", "70", "80" (austenitic stainless, any of A1 to A5)'),
            real("torque", "torque_Nm", "minimum breaking torque, N*m"),
        ]),
    ]),
    ("part/head_table.hpp", "Everything that a socket, key or bit can fit on.", HEAD_ENUMS, [
        Table("head", "Head", "heads",
              "Heads and nuts. How common a row is, is common practice, no source.", [
                  name("thread_size", "thread_size", 'thread diameter: "M10"'),
                  name("standard", "standard", 'standards of the part: "ISO 4014, ISO 4017"'),
                  name("series", "series", "series or product grade"),
                  choice("HeadKind", "kind", "kind", {k: k for k in HEAD_KINDS}, "shape"),
                  choice("Drive", "drive", "drive", {k: k for k in ("hexagon", "hexagon_key", "hexalobular")},
                         "tool profile"),
                  whole("width", "width_mm", "width across flats or key size s, m; 0 where drive_number counts"),
                  whole("width_min", "width_min_mm", "least width across flats, m"),
                  whole("corner_min", "corner_min_mm", "least width across corners e, m"),
                  whole("bearing_diameter", "bearing_diameter_mm", "least outer diameter of the bearing face d_w, m"),
                  whole("height", "height_mm", "head height k (hexagon: nominal; flange, socket head: greatest) "
                                              "or nut height m (greatest), m"),
                  count("drive_number", "drive_number", "number of the hexalobular drive, 0 for others"),
                  count("commonness", "commonness", "1 everyday, 2 common, 3 seldom, 4 rare"),
                  name("region", "region", "where it is met"),
                  name("look", "look", "how to tell it by eye"),
                  seen("seen", None, "how thread size and width or drive number were seen"),
                  seen("detail_seen", "detail", "how the other dimensions were seen"),
              ]),
    ]),
    ("part/hexalobular_table.hpp", "Sizes of six-lobed drives.", "", [
        Table("hexalobular", "HexalobularDrive", "hexalobular_drives",
              "Hexalobular internal drives by number, as the recess is drawn.", [
                  count("number", "drive_number", "drive number, also that of the bit"),
                  whole("outer_diameter", "outer_diameter_mm", "over the lobes, A, m"),
                  whole("inner_diameter", "inner_diameter_mm", "between the lobes, B, m"),
                  seen("seen", None, "how number and A were seen"),
                  seen("inner_seen", "inner_diameter", "how B was seen"),
              ]),
    ]),
    ("friction/condition_table.hpp", "What is on the threads, and the friction band that comes with it.", "", [
        Table("condition", "ThreadConditionRow", "thread_conditions",
              "Friction bands by state of thread and bearing face.", [
                  name("key", "key", 'short name: "oiled"'),
                  name("title", "title", "what it is"),
                  name("group", "group", "bare, coated, paste, stainless, locked or field"),
                  real("thread_low", "thread_low", "lowest coefficient of friction in the thread"),
                  real("thread_nominal", "thread_nominal", "typical coefficient of friction in the thread"),
                  real("thread_high", "thread_high", "highest coefficient of friction in the thread"),
                  real("face_low", "face_low", "lowest coefficient of friction under head or nut"),
                  real("face_nominal", "face_nominal", "typical coefficient of friction under head or nut"),
                  real("face_high", "face_high", "highest coefficient of friction under head or nut"),
                  flag("lubricated", "lubricated", "true if a fluid, paste or wax is on the surface"),
                  name("note", "note", 'what else to know; may be ""'),
                  name("words", "words", "trade words that are taken for it, semicolons between them"),
              ], constants=("conditions", "Names of the states, spelled for the compiler: `.condition = conditions::oiled`.")),
    ]),
    ("part/hole_table.hpp", "Clearance holes.", "", [
        Table("hole", "ClearanceHole", "clearance_holes", "Clearance holes for bolts and screws.", [
            name("thread_size", "thread_size", 'thread diameter: "M10"'),
            whole("fine", "fine_mm", "fine series, m"),
            whole("medium", "medium_mm", "medium series, m"),
            whole("coarse", "coarse_mm", "coarse series, m"),
            seen("coarse_seen", "coarse", "how the coarse series was seen"),
        ]),
    ]),
    ("part/manual_torque_table.hpp", "Torques as manuals of machines print them.", "", [
        Table("manual_torque", "ManualTorque", "manual_torques", "Torques that stand in manuals, to compare with.", [
            name("thread", "designation", 'thread: "M10", "M10x1.25"'),
            name("property_class", "class", 'class of the bolt: "8.8"'),
            real("torque", "torque_Nm", "printed torque, N.m"),
        ]),
    ]),
    ("part/washer_table.hpp", "Plain washers.", "", [
        Table("washer", "Washer", "washers", "Plain washers by standard and thread size.", [
            name("standard", "standard", '"ISO 7089"'),
            name("form", "form", '"plain", "chamfered" or "large"'),
            name("thread_size", "thread_size", 'thread diameter: "M10"'),
            whole("inner_diameter", "inner_diameter_mm", "clearance hole d1, least, m"),
            whole("outer_diameter", "outer_diameter_mm", "outer diameter d2, greatest, m"),
            whole("thickness", "thickness_mm", "thickness h, nominal, m"),
        ]),
    ]),
    ("group/drilling_table.hpp", "Bolt patterns of flanges, motors and ports.", "", [
        Table("drilling", "CircleDrilling", "circle_drillings", "Evenly spaced holes on a circle.", [
            name("standard", "standard", '"EN 1092-1"'),
            name("rating", "rating", '"PN16", "class 150", "10K"'),
            name("size", "size", '"DN100"; that of inch standards is the DN equivalent of the NPS'),
            whole("outside", "outside_mm", "outside diameter D, m"),
            whole("circle", "circle_mm", "bolt circle K, m"),
            count("count", "count", "number of holes n"),
            whole("hole", "hole_mm", "hole diameter L, m"),
        ]),
        Table("drilling_rectangle", "RectangleDrilling", "rectangle_drillings", "Four holes in a rectangle.", [
            name("standard", "standard", '"IEC 60072-1 feet"'),
            name("size", "size", '"frame 132M"'),
            whole("across", "across_mm", "distance across the shaft, or the longer one of a port, m"),
            whole("along", "along_mm", "distance along the shaft, or the shorter one of a port, m"),
            whole("hole", "hole_mm", "hole diameter, m"),
            whole("height", "height_mm", "shaft height, m"),
        ]),
    ]),
]


# ---- reading and writing ------------------------------------------------------------------------------------------

def read(table):
    path = os.path.join(HERE, table.csv_name + ".csv")
    with open(path, newline="", encoding="utf-8") as file:
        reader = csv.DictReader(file)
        columns = set(reader.fieldnames)
        rows = list(reader)
    used = {c for f in table.fields for c in f.columns} | set(table.not_shipped) | {"source", "confidence"}
    if columns - {"cell_confidence"} != used:
        fail(f"{table.csv_name}.csv: columns {sorted((columns - {'cell_confidence'}) ^ used)} are missing or not used")
    cells = {c for f in table.fields for c in f.cells}
    for line, row in enumerate(rows, 2):
        where = f"{table.csv_name}.csv line {line}"
        if None in row or None in row.values():
            fail(f"{where}: wrong number of cells")
        if row["confidence"] not in SEEN:
            fail(f"{where}: confidence '{row['confidence']}' is none of {', '.join(SEEN)}")
        if ", " not in row["source"]:
            fail(f"{where}: source '{row['source']}' is not 'document, place'")
        row["cells"] = dict(item.split("=") for item in (row.get("cell_confidence") or "").split())
        for cell, word in row["cells"].items():
            if cell not in cells or word not in SEEN:
                fail(f"{where}: cell_confidence '{cell}={word}' names no cell or no confidence")
    return rows


def identifier(word):
    """A name in C++: class_8_8, A2_70, zinc_oiled."""
    name = re.sub(r"\W", "_", word)
    return f"class_{name}" if name[0].isdigit() else name


def header(path, title, preamble, tables):
    files = ", ".join(f"src/tables/{table.csv_name}.csv" for table in tables)
    has_whole = any(f.declaration.startswith(("Table", "Graded")) for table in tables for f in table.fields)
    included = ["source", "table_number"] if has_whole else ["source"]
    out = [f"// Generated from {files} by src/tables/generate.py; do not edit.",
           "// clang-format off", f"// {title}", "#pragma once", "", *(f"#include <tauten/base/{file}.hpp>" for file in included), "",
           "namespace tauten::TAUTEN_ABI::table {", ""]
    if preamble:
        out += [preamble]
    stem = os.path.basename(path)[: -len("_table.hpp")]
    sources, bodies = {}, []
    for table in tables:
        fields = table.fields + [Field("unsigned char source", f"index into {stem}_sources", [], None)]
        width = max(len(f.declaration) for f in fields) + 1
        body = [f"/// {table.comment}", f"struct {table.struct} {{"]
        body += [f"  {(f.declaration + ';').ljust(width)}  ///< {f.comment}" for f in fields]
        body += ["};", "", f"inline constexpr {table.struct} {table.array}[] = {{"]
        for row in read(table):
            document, place = row["source"].split(", ", 1)
            index = sources.setdefault((document, place, row["confidence"]), len(sources))
            body.append("  {" + ", ".join([f.write(row) for f in table.fields] + [str(index)]) + "},")
        bodies += body + ["};", ""]
    if len(sources) > 256:
        fail(f"{path}: more than 256 sources")
    out += ["/// Where the rows come from.", f"inline constexpr Source {stem}_sources[] = {{"]
    out += [f"  {{{text(document)}, {text(place)}, {SEEN[word]}}}," for document, place, word in sources]
    out += ["};", ""] + bodies + ["}  // namespace tauten::TAUTEN_ABI::table", ""]
    for table in tables:
        if table.constants:
            namespace, comment = table.constants
            words = dict.fromkeys(row[table.fields[0].columns[0]] for row in read(table))
            out += [f"/// {comment}", f"namespace tauten::TAUTEN_ABI::{namespace} {{", ""]
            out += [f'inline constexpr const char* {identifier(word)} = "{word}";' for word in words]
            out += ["", f"}}  // namespace tauten::TAUTEN_ABI::{namespace}", ""]
    return "\n".join(out)


def main():
    parser = argparse.ArgumentParser(description="Writes the table headers of tauten from the CSV files.")
    parser.add_argument("--check", action="store_true", help="change nothing; exit 1 if a header is out of date")
    check = parser.parse_args().check
    stale = []
    for path, title, preamble, tables in HEADERS:
        content = header(path, title, preamble, tables)
        target = os.path.join(INCLUDE, *path.split("/"))
        try:
            with open(target, newline="", encoding="utf-8") as file:
                current = file.read()
        except FileNotFoundError:
            current = None
        if content == current:
            continue
        if check:
            stale.append(path)
            continue
        os.makedirs(os.path.dirname(target), exist_ok=True)
        with open(target, "w", newline="", encoding="utf-8") as file:
            file.write(content)
    for path in stale:
        print(f"include/tauten/{path} differs from its CSV; run src/tables/generate.py", file=sys.stderr)
    return 1 if stale else 0


if __name__ == "__main__":
    sys.exit(main())
