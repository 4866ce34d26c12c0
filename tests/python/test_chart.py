"""Charts to print: the figures of questions asked one by one, on one page of A4, and as a table."""
import csv
import io
import json
import os
import pathlib
import re
import subprocess
import xml.etree.ElementTree as xml

import pytest

import tauten

ROOT = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(not PROGRAM, reason="needs the command line program")
SVG = "{http://www.w3.org/2000/svg}"
TORQUES = ("torque", "--condition", "oiled", "--thread", "M8", "--thread", "M16", "--thread", "M16x1.5", "--class", "8.8", "--class", "10.9")
CHARTS = (TORQUES, ("reach", "--torque", "130N.m", "--wrench-length", "400mm"),
          ("load", "--thread", "M16", "--class", "8.8"),
          ("turn", "--thread", "M16", "--class", "8.8", "--condition", "oiled", "--grip", "55mm", "--snug-torque", "60N.m"))


def chart(*words, code=0):
    done = subprocess.run([PROGRAM, "chart", *words], capture_output=True, text=True)
    assert done.returncode == code, done.stderr
    return done.stdout if code == 0 else done.stderr


def rows(*words):
    return list(csv.DictReader(io.StringIO(chart(*words, "--format", "csv"))))


def test_torques_are_those_of_the_question():
    found = rows(*TORQUES)
    assert [(row["thread"], row["property_class"]) for row in found] == [(t, c) for t in ("M8", "M16", "M16x1.5") for c in ("8.8", "10.9")]
    for row in found:
        bolt = tauten.torque_for(thread=row["thread"], property_class=row["property_class"], condition="oiled").candidates[0]
        assert float(row["torque [N.m]"]) == bolt.torque and float(row["chance_of_yield"]) == bolt.chance_of_yield
        assert float(row["clamp_load_low [N]"]) == bolt.clamp_load.low and row["verdict"] == bolt.verdict == "within limits"


def test_manual_torques_are_the_published_ones():
    published = {}
    for row in csv.DictReader((ROOT / "tests/published/older_edition_torques.csv").read_text(encoding="utf-8").splitlines()):
        if row["id"].endswith("-M"):
            thread = tauten.thread(re.search("thread=([^;]+)", row["given"])[1]).designation
            published[thread, re.search(r"class ([\d.]+)", row["source"])[1]] = float(row["published"])
    table = {(row["designation"], row["class"]): float(row["torque_Nm"]) for row in
             csv.DictReader((ROOT / "src/tables/manual_torque.csv").read_text(encoding="utf-8").splitlines())}
    assert table == published
    for row in rows(*TORQUES):
        assert float(row["manual_torque [N.m]"] or 0) == published.get((row["thread"], row["property_class"]), 0)
    assert " 210" in chart(*TORQUES)  # M16 8.8, as the manual prints it


def test_a_chart_names_the_friction_that_its_figures_have():
    stainless = " ".join(chart("torque", "--condition", "dry", "--class", "A4-80", "--thread", "M16", "--thread", "M20").split())
    band = tauten.torque_for(thread="M16", property_class="A4-80", condition="dry").thread_friction
    assert f"Friction {band.low:g} to {band.high:g}, typically {band.nominal:g}: austenitic stainless steel dry (" in stainless
    assert stainless.count("Apply anti-seize paste") == 1 and stainless.count("Stainless threads gall") == 1
    measured = " ".join(chart("torque", "--thread-friction", "0.10..0.12..0.14", "--class", "8.8", "--thread", "M16").split())
    assert "Friction 0.1 to 0.14, typically 0.12: measured." in measured


def test_settings_follow_the_lever():
    """US Army TM 9-254: T L/(L + E cos a), for every cell."""
    import math
    found = rows(*CHARTS[1])
    assert len(found) == 13 * 6
    for row in found:
        lever = 0.4 + float(row["extension [m]"]) * math.cos(float(row["angle [rad]"]))
        assert float(row["setting [N.m]"]) == pytest.approx(130 * 0.4 / lever, rel=1e-9)
    assert "130 N.m at the fastener" in chart(*CHARTS[1])


def test_loads_are_those_of_the_question():
    found = rows(*CHARTS[2])
    assert len(found) == 12 * 6
    for row in found[::7]:
        bolt = tauten.clamp(thread="M16", property_class="8.8", torque=float(row["torque [N.m]"]), thread_friction=float(row["friction"]),
                            bearing_friction=float(row["friction"])).candidates[0]
        assert row["verdict"] == bolt.verdict and (float(row["clamp_load [N]"] or "nan") == bolt.clamp_load.nominal or bolt.verdict == "breaks")


def test_angles_follow_the_curve():
    import numpy as np
    curve = tauten.curve(thread="M16", property_class="8.8", condition="oiled", grip="55mm", snug_torque="60N.m")
    for row in rows(*CHARTS[3]):
        line = getattr(curve, {"low friction": "low_friction", "typical friction": "nominal", "high friction": "high_friction"}[row["friction"]])
        points = line.columns()
        expected = np.interp(float(row["angle [rad]"]), points["angle"], points["preload"], right=np.nan)
        assert float(row["preload [N]"] or "nan") == pytest.approx(expected, rel=1e-12, nan_ok=True)


@pytest.mark.parametrize("words", CHARTS, ids=lambda words: words[0])
def test_every_chart_fits_on_a_sheet_and_carries_cautions(words):
    text, html, svg = (chart(*words, "--format", form) for form in ("text", "html", "svg"))
    for page in (text, html, svg):
        flat = " ".join(re.sub("<[^>]*>", " ", page).split())
        assert "approve a joint for service" in flat and f"tauten {tauten.__version__}: tauten chart {words[0]}" in flat.replace("&#39;", "'")
    assert max(map(len, text.splitlines())) <= 100 and "size: A4" in html
    page = xml.fromstring(svg)
    assert (page.attrib["width"], page.attrib["height"]) == ("210mm", "297mm")
    wide, high = map(float, page.attrib["viewBox"].split()[2:])
    scale = float(re.search(r"scale\(([\d.]+)\)", svg)[1])
    assert 0.6 < scale <= 1
    for one in page.findall(f"{SVG}g/{SVG}text"):
        size, x, y = (float(one.attrib[key]) for key in ("font-size", "x", "y"))
        length = 0.5 * size * len(one.text or "")
        left = x - length if one.attrib.get("text-anchor") == "end" else x
        assert -4 <= left and 47 + scale * (left + length) <= wide - 20 and 47 + scale * y <= high - 40, one.text
        assert size * scale > 6, one.text  # a reader of paper needs two millimetres
    figures = json.loads(chart(*words, "--json"))["figures"]
    assert len(figures) == len(rows(*words)) > 5


def test_units_and_words_are_as_asked():
    text = chart(*TORQUES, "--unit", "torque=lbf.ft")
    assert "lbf.ft" in text and " N.m" not in text.split("How far")[0].replace("tauten chart", "").split("Take care")[0]
    assert "stainless" in chart("torque", "--condition", "stainless", "--thread", "M8", "--class", "A4-70")


@pytest.mark.parametrize("words, named", [
    (("torque", "--thread", "M99"), "M99"), (("torque", "--class", "99"), "class"), (("torque", "--condition", "jam"), "condition"),
    (("reach",), "torque"), (("reach", "--torque", "130N.m", "--angle", "5mm"), "angle"), (("load",), "thread"), (("turn",), "thread"),
    (("reach", "--torque", "130N.m", "--length", "-5mm"), "extension"),
    (("torque", "--format", "pdf"), "format"), (("torque", "--unit", "torque=mm"), "torque"),
])
def test_what_has_no_meaning_is_refused(words, named):
    assert named in chart(*words, code=2)
