"""The list of notice codes against the sources, the kinds of the library, and the answers."""
import csv
import json
import os
import pathlib
import re
import subprocess

import pytest
import tauten
from tauten import _core, uncertainty

PROGRAM = os.environ.get("TAUTEN_PROGRAM")

ROOT = pathlib.Path(__file__).resolve().parents[2]
with open(ROOT / "docs/notices.csv", encoding="utf-8", newline="") as file:
    ROWS = {row["code"]: row for row in csv.DictReader(file)}
HEADERS = {path.name: path.read_text(encoding="utf-8") for path in sorted((ROOT / "include").rglob("*.hpp"))}

# A code stands in braces or a call right before its sentence; those of verdicts and of cautions stand by themselves.
BEFORE_SENTENCE = re.compile(r'[{,]\s*"([a-z]+(?:_[a-z]+)*)",\s*'
                             r'(?:std::string\(|"[^"]*[A-Z ][^"]*"|(?:start|target|text|sentence|lobes|on->title) ?[+?},])')
ALONE = re.compile(r'(?:of_verdict = |code == |corrected \? |suggests \? )"([a-z_]+)"')


def codes_in_sources():
    codes = set()
    for name, text in HEADERS.items():
        if re.search(r"\bNotice\b|notices\.push_back|Caution", text) and name != "notice_kind.hpp" and not name.endswith("page.hpp"):
            codes |= set(BEFORE_SENTENCE.findall(text)) | set(ALONE.findall(text))
    return codes


def test_every_code_of_the_sources_is_in_the_list_and_back():
    known = set(ROWS)
    assert len(known) > 100
    assert sorted(codes_in_sources() - known) == [], "new codes: give each a row in docs/notices.csv"
    everything = "".join(text for name, text in HEADERS.items() if name != "notice_kind.hpp")
    assert [code for code in ROWS if f'"{code}"' not in everything] == [], "these codes are gone"
    assert sorted(known - codes_in_sources()) == []


def test_the_list_is_in_order_and_complete():
    assert list(ROWS) == sorted(ROWS)
    asked = {question["name"] for question in _core.questions} | {"uncertainty", "cautions"}
    for code, row in ROWS.items():
        assert row["questions"] and set(row["questions"].split()) <= asked, code
        for text in (row["meaning"], row["action"]):
            assert text[0].isupper() and not text.endswith(".") and 8 <= len(text) <= 140, (code, text)


def test_every_hazard_is_in_the_list():
    kinds = HEADERS["notice_kind.hpp"]
    codes = re.findall(r'"([a-z_]+)"', kinds[kinds.index("standing_notices"):kinds.index("template <std::size_t N>")])
    assert len(codes) > 40 and not set(codes) - set(ROWS)
    assert _core.notice_kind("may_break") == _core.notice_kind("heat_near") == "hazard"
    assert _core.notice_kind("no_release") == "standing" and _core.notice_kind("held_back") == "finding"


def found_in(value):
    if isinstance(value, dict):
        if {"code", "text", "is_estimate"} <= set(value):
            yield value["code"]
        for item in value.values():
            yield from found_in(item)
    elif isinstance(value, (list, tuple)):
        for item in value:
            yield from found_in(item)


LAYERS = ["20mm:grey_cast_iron:70mm", "35mm"]
JOBS = {
    "clamp": [dict(socket="24mm", torque="130N.m"), dict(thread="M16", torque="400N.m", property_class="8.8"),
              dict(thread="M12", property_class="A4-70", torque="50N.m", specified_condition="oiled", condition="dry"),
              dict(key="8mm", torque="90N.m", property_class="12.9"), dict(thread="M10", torque="2N.m", condition="oiled")],
    "torque": [dict(thread="M16"), dict(thread="M16", property_class="8.8", condition="oiled"),
               dict(thread="M20", property_class="10.9", share=0.9, condition="waxed")],
    "turn": [dict(thread="M16", layers=LAYERS, snug_torque="30N.m", angle="90deg"), dict(thread="M16", property_class="8.8", layers=LAYERS, snug_torque="30N.m", angle="400deg"),
             dict(thread="M16", grip="55mm", kind="tapped_hole", working_load="60kN", bolt_warming=200, tapped_material="aluminium",
                  engagement="8mm"),
             dict(thread="M16", property_class="8.8", layers=["10mm:steel:20mm"], angle="10deg", snug_torque="60N.m", plate_model="frustum", washers="2",
                  bars=["square:900mm:12.7mm"], working_load="90kN", structural=True)],
    "curve": [dict(thread="M16", grip="55mm", snug_torque="30N.m", points=20), dict(thread="M16", layers=LAYERS, snug_torque="30N.m")],
    "reach": [dict(torque="130N.m", extensions=["100mm@30deg"], bars=["round:250mm:8mm"], multiplier_ratio=4, universal_joint="30deg",
                   tilt="5deg"), dict(torque="900N.m", wrench_length="0.3m", drive_square="12.7mm"), dict(torque="1N.m", hinged_handle=True),
              dict(torque="130N.m", extensions=["300mm@150deg"], support_share=0.2, hand_offset="50mm")],
    "free": [dict(thread="M16", property_class="8.8"), dict(socket="24mm", rust="galled_stainless", property_class="A4-70"),
             dict(thread="M12", property_class="8.8", rust="seized_in_aluminium", corner_loss="1mm", loosened=["freed:20N.m"]),
             dict(thread="M12", property_class="8.8", rust="heavy_rust", surroundings=["rubber_or_plastic", "zinc_or_cadmium"], reused=True,
                  limit="500N.m", thread_direction="left", drive="twelve_point"),
             dict(bit=50, thread="M10", property_class="10.9", surroundings=["fire_or_burst", "adhesive"])],
    "thread": [dict(thread="M16"), dict(thread="M16-5H"), dict(thread="M8", property_class="10.9")],
    "identify": [dict(socket="24mm")],
}


@pytest.mark.parametrize("question", JOBS)
def test_an_answer_gives_only_what_the_list_has_for_its_question(question):
    [function] = [each["function"] for each in _core.questions if each["name"] == question]
    for job in JOBS[question]:
        extra = {"trials": 4000} if question == "free" else {}
        for code in set(found_in(getattr(tauten, function)(**job, **extra).as_dict())):
            assert code in ROWS and question in ROWS[code]["questions"].split(), (question, code, job)


# ---- each code once there and once not -------------------------------------------------------------------------------

CLAMP = dict(thread="M16", head="ISO 4014", property_class="8.8", torque="130N.m", condition="oiled")
TURN = dict(thread="M16", head="ISO 4014", property_class="8.8", layers=["25mm:steel:60mm", "30mm:steel:60mm"],
            snug_torque="50N.m", angle="30deg", condition="oiled")
FREE = dict(thread="M16", property_class="8.8", trials=2000)
REACH = dict(torque="130N.m")
GROUP = dict(positions="circle:8:160mm", load="0kN:-8kN", preload="44kN", bolt_area="157mm2", force="12kN")
PRYING = dict(tributary="70mm", bolt_to_web="49mm", bolt_to_edge="41mm", thickness="25mm", plate_strength="450MPa", bolt_strength="163kN",
              diameter="20mm", hole="22mm", pull="111.6kN")
TEE = dict(tributary=None, diameter=None, hole=None, effective_length="200mm", plate_strength="250MPa")
SEQUENCE = dict(pattern="circle:8:160mm", trials=200)
GASKET = ("ring_width:50mm;ring_thickness:20mm;gasket_width:20mm;gasket_thickness:2mm;gasket_modulus:300MPa;"
          "bolt_length:55mm;bolt_area:157mm2;ring_modulus:205GPa;bolt_modulus:205GPa")
BASE = {"clamp": CLAMP, "turn": TURN, "free": FREE, "reach": REACH, "group": GROUP, "sequence": SEQUENCE, "prying": PRYING,
        "thread": dict(thread="M16"), "pattern": dict(positions="circle:8:160mm"), "curve": {**TURN, "angle": None}, "torque": {**CLAMP, "torque": None}}
# code: question, what is given beside or in place of the plain job for it to be there, and the same for it not to be there.
# None: it is there whatever the job.
PRESENT = {
    "aid_estimate": ("free", {}, None),
    "assumed_length": ("reach", dict(extensions=["100mm@30deg"]), dict(extensions=["100mm@30deg"], wrench_length="400mm")),
    "bar_twist": ("turn", dict(bars=["round:900mm:12mm"]), dict(bars=["round:300mm:30mm"])),
    "bearing_estimated": ("clamp", dict(thread="M10", head=None, socket="17mm"), {}),
    "before_embedding": ("clamp", {}, None),
    "bolt_axis": ("turn", dict(angle="300deg"), {}),
    "breaking_torque_estimated": ("thread", {}, None),
    "class_from_memory": ("clamp", dict(property_class="A4-70"), {}),
    "clean_recess": ("free", dict(bit=50), {}),
    "cold_bolt": ("turn", dict(bolt_warming="-80K"), dict(bolt_warming="-60K")),
    "cold_burns": ("free", dict(surroundings=["fire_or_burst"]), {}),
    "condition_note": ("clamp", dict(condition="zinc"), {}),
    "corrected_torque": ("clamp", dict(specified_condition="dry"), dict(specified_condition="oiled")),
    "cutting": ("free", {}, None),
    "deviation_from_memory": ("reach", {}, None),
    "drive_estimate": ("free", {}, None),
    "drive_overloaded": ("reach", dict(torque="600N.m", drive_square="12.5mm"), dict(torque="400N.m", drive_square="12.5mm")),
    "drive_unknown": ("reach", dict(drive_square="14mm"), dict(drive_square="12.7mm")),
    "elastic_shear": ("group", {}, None),
    "embedding_from_memory": ("turn", {}, None),
    "engagement_short": ("turn", dict(nut_height="6mm"), dict(nut_height="16mm")),
    "equal_bolts_assumed": ("sequence", dict(pattern="circle:2:120mm", readings=[["1kN", "0kN"], ["0.9kN", "1kN"]]), {}),
    "equivalent_tension": ("group", {}, None),
    "errors_of_chords": ("pattern", dict(positions=None, chords="80mm;80mm;80mm;81mm"), {}),
    "eye_protection": ("clamp", {}, None),
    "face_outside_fit": ("turn", dict(plate_model="exponential", head="EN 1665"), dict(plate_model="exponential")),
    "first_loads_unchecked": ("sequence", dict(interaction="-0.1", load="50kN"), dict(interaction="-0.1", load="50kN",
        limit="80kN")),
    "first_pass_high": ("sequence", dict(shares="50%;100%"), dict(shares="30%;60%;100%")),
    "fit_proves_nothing": ("pattern", dict(positions="0mm:0mm;120mm:0mm;60mm:100mm"), {}),
    "fluid_after_heat": ("free", dict(aids=["heat:120K", "fluid:24h"]), dict(aids=["fluid:24h"])),
    "fluid_left": ("free", dict(aids=["fluid:24h"]), dict(rust="clean", aids=["cold:30K"])),
    "folded_back": ("reach", dict(extensions=["300mm@150deg"]), dict(extensions=["300mm@60deg"])),
    "friction_estimated": ("clamp", dict(condition="rusty"), {}),
    "friction_not_as_specified": ("clamp", dict(specified_condition="dry"), dict(specified_condition="zinc-oiled")),
    "galled": ("free", dict(rust="galled_stainless", property_class="A4-70"), {}),
    "galling": ("clamp", dict(property_class="A2-70"), dict(property_class="A2-70", condition="stainless-paste")),
    "grip_outside_comparison": ("turn", dict(layers=["7mm"]), {}),
    "grip_outside_fit": ("turn", dict(plate_model="exponential"), dict(plate_model="exponential",
        layers=["15mm:steel:60mm", "15mm:steel:60mm"])),
    "hand_force": ("reach", dict(torque="800N.m"), dict(torque="60N.m")),
    "hand_off_mark": ("reach", dict(extensions=["100mm@30deg"], hand_offset="50mm"), dict(extensions=["100mm@30deg"])),
    "head_assumed": ("clamp", dict(head=None), {}),
    "heat_adhesive": ("free", dict(surroundings=["adhesive"]), {}),
    "heat_adhesive_not_reached": ("free", dict(surroundings=["adhesive", "zinc_or_cadmium"]), dict(surroundings=["adhesive"])),
    "heat_after_fluid": ("free", {}, dict(aids=["brush"], surroundings=["fire_or_burst"])),
    "heat_aluminium": ("free", dict(rust="seized_in_aluminium"), {}),
    "heat_coating": ("free", dict(surroundings=["zinc_or_cadmium"]), {}),
    "heat_forbidden": ("free", dict(surroundings=["fire_or_burst"]), {}),
    "heat_near": ("free", {}, dict(surroundings=["fire_or_burst"])),
    "heat_reuse": ("free", dict(reused=True), {}),
    "heat_rubber": ("free", dict(surroundings=["rubber_or_plastic"]), {}),
    "heat_tempering": ("free", {}, dict(property_class="4.6")),
    "held_back": ("torque", dict(property_class="4.6", condition="unknown"), {}),
    "hinged_handle": ("reach", dict(hinged_handle=True), {}),
    "hot_bolt": ("turn", dict(bolt_warming="200K"), dict(bolt_warming="100K")),
    "hot_fumes": ("free", {}, dict(surroundings=["fire_or_burst"])),
    "impact_sockets": ("free", {}, None),
    "inch_tool": ("clamp", dict(thread=None, head=None, socket="3/4in"), dict(thread=None, head=None, socket="24mm")),
    "inspect_rusted": ("free", dict(rust="heavy_rust"), dict(rust="clean")),
    "interaction_estimated": ("sequence", dict(gasket=GASKET), dict(interaction="-0.1")),
    "joint_opens": ("group", dict(force="600kN"), {}),
    "joint_slips": ("group", dict(preload="4kN", friction=0.1), dict(friction=0.3)),
    "least_strength": ("curve", {}, None),
    "left_hand": ("free", dict(thread_direction="left"), dict(thread_direction="right")),
    "length_assumed": ("turn", {}, dict(length="70mm")),
    "limit_above_stop": ("free", dict(limit="900N.m"), dict(limit="20N.m")),
    "limits_left_out": ("thread", dict(thread="M24"), dict(thread="M10")),
    "line_of_slip": ("clamp", {}, None),
    "loads_at_failure": ("group", dict(model="instantaneous_centre"), dict(model="elastic")),
    "lubricant_places": ("free", {}, None),
    "low_head": ("free", dict(thread="M10", key="6mm"), dict(thread="M10", key="8mm")),
    "may_be_slack": ("clamp", {}, dict(torque="210N.m")),
    "may_break": ("clamp", dict(torque="400N.m"), {}),
    "may_have_yielded": ("clamp", dict(torque="220N.m"), {}),
    "may_neck": ("turn", dict(angle="500deg"), {}),
    "may_open": ("turn", dict(thread="M24", head=None, property_class=None, condition=None, layers=["8mm:110GPa:60mm"],
        snug_torque="15lbf.ft", angle=None), {}),
    "may_separate": ("turn", dict(working_load="90kN"), dict(working_load="60kN")),
    "may_strip": ("clamp", dict(torque="200N.m", nut_class="5"), dict(nut_class="10")),
    "measure_corners": ("free", {}, dict(corner_loss="0.3mm")),
    "models_differ": ("group", dict(at="300mm:0mm"), None),
    "narrow_layers": ("turn", dict(plate_model="frustum", layers=["25mm:steel:30mm", "30mm:steel:30mm"]),
        dict(plate_model="frustum", layers=["25mm:steel:90mm", "30mm:steel:90mm"])),
    "no_pipe": ("clamp", {}, None),
    "no_release": ("clamp", {}, None),
    "no_suggested_torque": ("clamp", dict(property_class="4.6", torque="130N.m", prevailing_torque="120N.m"), {}),
    "other_screws": ("clamp", dict(thread=None, head=None, key="6mm"), dict(thread=None, head=None, key="14mm")),
    "outcomes_at_odds": ("free", dict(loosened=["freed:20N.m", "sheared:20N.m", "freed:300N.m"]), {}),
    "preload_assumed": ("free", {}, dict(preload="50kN")),
    "no_pressure_assumed": ("sequence", dict(pattern="rectangle:216mm:140mm"), {}),
    "only_some_holes_meet": ("pattern", dict(on="circle:4:160mm"), dict(on="circle:4:170mm")),
    "order_goes_round": ("sequence", dict(order="1;2;3;4;5;6;7;8"), dict(order="1;5;3;7;2;6;4;8")),
    "paste_first": ("clamp", dict(property_class="A2-70", condition="dry"), dict(property_class="A2-70", condition="oiled")),
    "plate_pries": ("prying", dict(thickness="8mm"), {}),
    "pressure": ("clamp", dict(seat_material="steel", torque="190N.m"), dict(seat_material="grey_cast_iron")),
    "pressure_trapped": ("sequence", dict(pressurised=True, person="0mm:-500mm"), dict(person="0mm:-500mm")),
    "pressurised_flange": ("free", {}, None),
    "rating_unknown": ("pattern", {}, dict(positions="circle:5:155mm")),
    "reaction_arm": ("reach", dict(multiplier_ratio=4), {}),
    "reduced_shank": ("turn", dict(shank_diameter="11mm"), {}),
    "reduced_loadability": ("clamp", dict(thread="M10", head="ISO 7380-1", torque="30N.m"), dict(thread="M10", head="ISO 4762", torque="30N.m")),
    "replace_damaged": ("free", dict(preload="50kN", loosened=["sheared:120N.m"]), {}),
    "replace_galled": ("free", dict(rust="galled_stainless", property_class="A4-70"), {}),
    "replace_heated": ("free", dict(aids=["heat:300K"]), dict(rust="clean")),
    "replace_locking": ("free", dict(prevailing_torque="5N.m"), {}),
    "replace_past_yield": ("free", dict(preload="101kN"), dict(preload="100kN")),
    "replace_used_up": ("clamp", {}, None),
    "prying_assumed": ("prying", TEE, {**TEE, "elongation_length": "60mm", "bolt_area": "245mm2"}),
    "rust_estimate": ("free", {}, None),
    "seized_in_aluminium": ("free", dict(rust="seized_in_aluminium"), {}),
    "separates": ("turn", dict(working_load="150kN"), {}),
    "setting_above_scale": ("reach", dict(scale_high="120N.m"), dict(scale_high="140N.m")),
    "setting_below_scale": ("reach", dict(scale_low="140N.m", scale_high="300N.m"), dict(scale_low="40N.m", scale_high="300N.m")),
    "setting_low_on_scale": ("reach", dict(scale_high="700N.m"), dict(scale_high="600N.m")),
    "several_standards": ("pattern", {}, dict(positions="circle:8:180mm")),
    "single_use": ("turn", dict(angle="300deg"), {}),
    "six_point": ("free", dict(drive="twelve_point"), {}),
    "small_angle": ("turn", dict(angle="10deg"), {}),
    "snug_assumed": ("turn", dict(snug_torque=None, angle=None), {}),
    "snug_is_found": ("turn", {}, None),
    "square_from_memory": ("free", dict(drive_square="12.7mm"), {}),
    "square_unknown": ("free", dict(drive_square="14mm"), dict(drive_square="12.7mm")),
    "stored_energy": ("free", {}, None),
    "strength_alone": ("prying", {}, None),
    "stretched": ("clamp", dict(torque="235N.m"), {}),
    "structural_class": ("turn", dict(structural=True, property_class="5.6"), dict(structural=True)),
    "structural_may_neck": ("turn", dict(structural=True, property_class="10.9", layers=["8mm:steel:60mm"]),
        dict(structural=True)),
    "structural_rules": ("turn", dict(structural=True), {}),
    "support_hand": ("reach", dict(extensions=["100mm@30deg"], support_share=0.3), dict(extensions=["100mm@30deg"])),
    "suspended_load": ("free", {}, None),
    "taken_as": ("clamp", dict(condition="oil"), {}),
    "tapped_from_memory": ("turn", dict(kind="tapped_hole"), {}),
    "tee_formulas_second_hand": ("prying", TEE, {}),
    "thread_assumed": ("free", dict(thread=None, socket="24mm"), {}),
    "thread_direction": ("free", {}, dict(thread_direction="right")),
    "tilted": ("reach", dict(tilt="5deg"), {}),
    "tolerances_judged": ("turn", {}, None),
    "tool_beyond_table": ("free", dict(thread="M39"), {}),
    "tool_bursts": ("free", {}, None),
    "tool_spins": ("free", dict(corner_loss="1.9mm"), dict(corner_loss="0.3mm")),
    "torque_suggests_class": ("clamp", dict(property_class=None, torque="200N.m"), {}),
    "universal_joint_and_extension": ("reach", dict(universal_joint="20deg", extensions=["100mm@30deg"]),
        dict(universal_joint="20deg")),
    "universal_joint_bend": ("reach", dict(universal_joint="20deg"), dict(universal_joint="10deg")),
    "unmarked_head": ("clamp", dict(property_class=None), {}),
    "unusual_angle": ("turn", dict(angle="460deg"), dict(angle="440deg")),
    "unusual_torque": ("clamp", dict(torque="5N.m"), {}),
    "watch_the_torque": ("turn", {}, None),
    "weak_nut": ("clamp", dict(nut_class="5"), dict(nut_class="8")),
    "which_aluminium": ("clamp", dict(tapped_material="aluminium", engagement="30mm"),
        dict(tapped_material="wrought_aluminium", engagement="30mm")),
    "wide_layers": ("turn", dict(plate_model="deformation_cone", layers=["25mm:steel:120mm", "30mm:steel:120mm"]),
        dict(plate_model="deformation_cone")),
    "width_assumed": ("turn", dict(layers=["25mm", "30mm"]), {}),
    "working_load": ("turn", dict(working_load="20kN"), {}),
    "worst_clocking": ("group", dict(load=None, preload=None, bolt_area=None, force=None, moment=["2kN.m", "0kN.m"], worst_clocking=True),
                       dict(load=None, preload=None, bolt_area=None, force=None, moment=["2kN.m", "0kN.m"])),
    "wound_up_bars": ("reach", dict(bars=["square:600mm:12.7mm"]), {}),
    "frustum_tapped": ("turn", dict(plate_model="frustum", kind="tapped_hole"), dict(plate_model="frustum")),
}
# Asked elsewhere: in `uncertainty` below, among the cautions, and of the history of a fastener in tests/unit/heat_test.cpp.
ELSEWHERE = {"bearing_spread_estimated", "friction_independent", "friction_together", "others_fit", "resilience_estimated",
             "strength_estimated", "clicking_wrench", "long_handle", "replace_glowed"}


def codes_of(question, change):
    job = {name: value for name, value in {**BASE[question], **change}.items() if value is not None}
    [function] = [each["function"] for each in _core.questions if each["name"] == question]
    return set(found_in(getattr(tauten, function)(**job).as_dict()))


def test_each_code_is_there_where_its_cause_is_and_nowhere_else():
    assert set(ROWS) <= set(PRESENT) | ELSEWHERE
    plain = {question: codes_of(question, {}) for question in BASE}
    wrong = []
    for code, (question, cause, other) in PRESENT.items():
        if code not in (codes_of(question, cause) if cause else plain[question]):
            wrong.append((code, "is not there", cause))
        if other is not None and code in (codes_of(question, other) if other else plain[question]):
            wrong.append((code, "is there", other))
    assert not wrong, wrong
    always = {code for code, (_, _, other) in PRESENT.items() if other is None}
    assert len(always) < 36, "a code that is always there is proved by its text alone"


def test_codes_of_uncertainty():
    def codes(ask, **said):
        return {notice.code for notice in ask(**said).notices}

    bolt = dict(thread="M16", property_class="8.8", torque="130N.m")
    plain, stated = codes(uncertainty.clamp, **bolt), codes(uncertainty.clamp, **bolt, friction_together=False)
    apart = codes(uncertainty.clamp, **bolt, face_condition="waxed")
    assert {"strength_estimated", "bearing_spread_estimated"} <= plain & stated
    assert "friction_independent" in apart - stated and not {"friction_independent", "friction_together"} & stated
    assert "friction_together" in plain - apart
    by_tool = codes(uncertainty.clamp, socket="24mm", property_class="8.8", torque="130N.m")
    assert "others_fit" in by_tool - plain
    turned = codes(uncertainty.turn, thread="M16", property_class="8.8", layers=LAYERS, snug_torque="30N.m", angle="30deg")
    assert {"strength_estimated", "resilience_estimated"} <= turned and "resilience_estimated" not in plain
    assert "bearing_spread_estimated" not in turned and "friction_together" in turned
    bare = codes(uncertainty.turn, thread="M16", property_class="8.8", layers=LAYERS, snug_torque="30N.m", angle="30deg",
                 face_condition="waxed")
    assert "friction_independent" in bare - turned


@pytest.mark.skipif(not PROGRAM, reason="the command line program is not built")
def test_cautions_that_no_answer_gives():
    page = subprocess.run([PROGRAM, "cautions", "--json"], capture_output=True, text=True, check=True)
    assert {"clicking_wrench", "long_handle"} <= {caution["code"] for caution in json.loads(page.stdout)["cautions"]}
