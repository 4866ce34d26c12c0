"""The list of notice codes against the sources, the kinds of the library, and the answers."""
import csv
import pathlib
import re

import pytest
import tauten
from tauten import _core

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
