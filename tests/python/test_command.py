"""The command line program: its contract, its figures against plain arithmetic, and every kind of nonsense."""
import csv
import json
import math
import os
import pathlib
import pty
import random
import re
import shutil
import subprocess
import xml.etree.ElementTree

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
DEMO = ROOT / "docs" / "demo" / "pumping_station.toml"
PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(not PROGRAM, reason="the command line program is not built")

MM, KN = 1e-3, 1e3
VERBS = ["identify", "clamp", "torque", "turn", "curve", "reach", "free", "formulas", "eval", "explain", "uncertainty", "conditions", "cautions",
         "completion"]


def run(*words, **options):
    options = {"stdout": subprocess.PIPE, "stderr": subprocess.PIPE, "timeout": 60, **options}
    return subprocess.run([PROGRAM, *words], **options)


def said(*words):
    """The page for people."""
    done = run(*words)
    assert done.returncode == 0, done.stderr
    assert not done.stderr
    return done.stdout.decode()


def answer(*words):
    """The answer in JSON. NaN is not JSON and is refused."""
    done = run(*words, "--json")
    assert done.returncode == 0, done.stderr
    return strictly(done.stdout)


def strictly(text):
    return json.loads(text, parse_constant=lambda word: pytest.fail(f"{word} is not JSON"))


def refused(*words, code=2):
    """One sentence on standard error, nothing else; with --json an object too. Returns sentence and argument."""
    plain = run(*words)
    assert plain.returncode == code, (words, plain)
    assert plain.stdout == b""
    sentence = plain.stderr.decode()
    assert sentence.startswith("tauten: ") and sentence.count("\n") == 1 and sentence.endswith("\n")
    assert not re.search(r"terminate|what\(\)|core dumped|CLI::|std::|nlohmann|toml::", sentence)
    in_json = run("--json", *words)
    assert in_json.returncode == code
    assert in_json.stderr == plain.stderr
    error = strictly(in_json.stdout)
    assert list(error) == ["error"] and list(error["error"]) == ["argument", "message"]
    assert "tauten: " + error["error"]["message"] + "\n" == sentence
    return sentence, error["error"]["argument"]


# Plain arithmetic, written from the standards and not from the library.


class PlainBolt:
    """One bolt after ISO 68-1 and VDI 2230, a wedge on a helix, millimetres and newtons."""

    def __init__(self, d, pitch, d_w, hole, yield_strength, factor=1.5):
        height = math.sqrt(3) / 2 * pitch
        self.d, self.pitch, self.yield_strength, self.factor = d, pitch, yield_strength, factor
        self.d2 = d - 2 * 3 / 8 * height
        self.d3 = d - 2 * 17 / 24 * height
        self.ds = (self.d2 + self.d3) / 2
        self.face = (d_w + hole) / 2

    def levers(self, mu):
        slope = math.atan(self.pitch / (math.pi * self.d2))
        flank = math.atan(math.tan(math.radians(30)) * math.cos(slope))
        thread = self.d2 / 2 * math.tan(slope + math.atan(mu / math.cos(flank)))
        return thread, mu * self.face / 2

    def nut_factor(self, mu):
        return sum(self.levers(mu)) / self.d

    def load(self, torque, mu, mu_face=None):
        return torque / (self.levers(mu)[0] + self.levers(mu if mu_face is None else mu_face)[1])

    def utilisation(self, torque, mu, mu_face=None):
        load = self.load(torque, mu, mu_face)
        tension = load / (math.pi / 4 * self.ds**2)
        # Torsion over the section modulus: pi d^3/12 fully plastic (factor 3/2), pi d^3/16 elastic (factor 2).
        modulus = math.pi * self.ds**3 / (8 * self.factor)
        return math.hypot(tension, math.sqrt(3) * load * self.levers(mu)[0] / modulus) / self.yield_strength


# d_w least: ISO 4014 product grade A; hole: ISO 273 medium; yield: ISO 898-1.
CASES = {
    "M10 8.8": (PlainBolt(10, 1.5, 14.63, 11, 640), ["--thread", "M10", "--class", "8.8"], 48),
    "M10x1.25 10.9": (PlainBolt(10, 1.25, 14.63, 11, 940), ["--thread", "M10x1.25", "--class", "10.9"], 62),
    "M16 8.8": (PlainBolt(16, 2, 22.49, 17.5, 640), ["--thread", "M16", "--class", "8.8"], 150),
    "M16 8.8 elastic": (PlainBolt(16, 2, 22.49, 17.5, 640, 2),
                        ["--thread", "M16", "--class", "8.8", "--torsion", "elastic"], 150),
}


@pytest.mark.parametrize("name", CASES)
def test_clamp_agrees_with_plain_arithmetic(name):
    bolt, words, torque = CASES[name]
    low, nominal, high = 0.08, 0.12, 0.16
    got = answer("clamp", *words, "--torque", f"{torque}N.m", "--condition", "oiled", "--wrench-accuracy", "4%")
    assert [got["thread_friction"][k] for k in ("low", "nominal", "high")] == [low, nominal, high]
    first = got["candidates"][0]
    newton_mm = torque * 1000
    expected = {
        "nut_factor": [bolt.nut_factor(low), bolt.nut_factor(nominal), bolt.nut_factor(high)],
        "worst_case": [bolt.load(0.96 * newton_mm, high), bolt.load(newton_mm, nominal), bolt.load(1.04 * newton_mm, low)],
    }
    for key, figures in expected.items():
        assert [first[key][k] for k in ("low", "nominal", "high")] == pytest.approx(figures, rel=1e-9), key
    assert first["yield_utilisation"]["nominal"] == pytest.approx(bolt.utilisation(newton_mm, nominal), rel=1e-9)
    # Worst: the strong wrench, the face that rubs least, and whichever end of the thread friction is worse.
    worst = max(bolt.utilisation(1.04 * newton_mm, mu, low) for mu in (low, high))
    best = min(bolt.utilisation(0.96 * newton_mm, mu, high) for mu in (low, high))
    assert first["yield_utilisation"]["high"] == pytest.approx(worst, rel=1e-9)
    assert first["yield_utilisation"]["low"] == pytest.approx(best, rel=1e-9)


@pytest.mark.parametrize("name", CASES)
def test_torque_is_the_inverse_of_clamp(name):
    bolt, words, _ = CASES[name]
    got = answer("torque", *words, "--clamp-load", "20kN", "--condition", "oiled")["candidates"][0]
    assert got["torque"] == pytest.approx(20 * KN * sum(bolt.levers(0.12)) / 1000, rel=1e-9)
    assert got["clamp_load"]["nominal"] == pytest.approx(20 * KN, rel=1e-9)


def test_torque_for_a_share_aims_at_the_printed_proof_load():
    got = answer("torque", "--thread", "M12", "--class", "8.8", "--share", "60%", "--condition", "oiled")["candidates"][0]
    assert got["proof_load"] == 48.9 * KN  # ISO 898-1, table of proof loads
    assert got["clamp_load"]["nominal"] == pytest.approx(0.6 * 48.9 * KN, rel=1e-9)


def test_eval_agrees_with_plain_arithmetic_and_with_the_steps_of_clamp():
    bolt = CASES["M16 8.8"][0]
    got = answer("eval", "preload_from_torque_exact", "torque=150N.m", "pitch=2mm", f"pitch_diameter={bolt.d2!r}mm",
                 "thread_friction=0.12", "bearing_friction=0.12", f"bearing_diameter={bolt.face!r}mm")
    assert got["value"] == pytest.approx(bolt.load(150e3, 0.12), rel=1e-9)
    steps = answer("clamp", *CASES["M16 8.8"][1], "--torque", "150N.m", "--condition", "oiled")["candidates"][0]["steps"]
    step = next(s for s in steps if s["formula"] == "preload_from_torque_exact")
    assert step["value"] == pytest.approx(got["value"], rel=1e-9)
    assert step["inputs"] == pytest.approx(list(got["inputs"].values()), rel=1e-9)


def test_prevailing_torque_takes_no_part():
    without = answer("clamp", "--thread", "M12", "--class", "8.8", "--torque", "50N.m", "--wrench-accuracy", "0%")["candidates"][0]
    with_it = answer("clamp", "--thread", "M12", "--class", "8.8", "--torque", "59N.m", "--prevailing-torque", "9N.m",
                     "--wrench-accuracy", "0%")["candidates"][0]
    assert with_it["clamp_load"]["nominal"] == pytest.approx(without["clamp_load"]["nominal"], rel=1e-12)


# The contract


def test_clamp_has_the_keys_that_others_rely_on():
    for words in (["--socket", "16mm"], ["--thread", "M10x1.25"]):
        got = answer("clamp", *words, "--class", "10.9", "--torque", "48N.m", "--condition", "oiled")
        assert got["candidates"]
        for candidate in got["candidates"]:
            assert {"thread", "head", "socket", "property_class", "nut_factor", "clamp_load", "yield_utilisation",
                    "verdict"} <= set(candidate)
            for band in ("nut_factor", "clamp_load", "yield_utilisation"):
                assert list(candidate[band]) == ["low", "nominal", "high"]
                assert candidate[band]["low"] <= candidate[band]["nominal"] <= candidate[band]["high"]
            assert candidate["socket"] == pytest.approx(16 * MM)
            assert candidate["property_class"] == "10.9"
            assert candidate["verdict"] in ("slack", "may be slack", "within limits", "may yield", "yields", "may break", "breaks")
            assert isinstance(candidate["steps"], list) and candidate["steps"]
        for notice in got["notices"]:
            assert list(notice) == ["code", "text", "is_estimate"]


def test_eval_has_the_keys_that_others_rely_on():
    got = answer("eval", "stress_area", "diameter=10mm", "pitch=1.5mm")
    assert list(got) == ["formula", "summary", "value", "unit", "inputs", "sources", "warnings"]
    assert got["formula"] == "stress_area" and got["unit"] == "m2"
    assert got["inputs"] == {"diameter": 10 * MM, "pitch": 1.5 * MM}
    assert round(got["value"] * 1e6, 1) == 58.0  # ISO 898-1, nominal stress area of M10
    assert got["sources"][0]["document"]
    assert got["warnings"] == []


def test_eval_outside_the_stated_range_warns():
    got = answer("eval", "bearing_torque", "preload=25kN", "bearing_friction=1.9", "bearing_diameter=13mm")
    assert len(got["warnings"]) == 1 and got["warnings"][0].startswith("bearing_friction is 1.9")
    assert "Take care" in said("eval", "bearing_torque", "preload=25kN", "bearing_friction=1.9", "bearing_diameter=13mm")


def test_inch_and_kgf_spellings():
    in_feet = answer("clamp", "--thread", "M16", "--torque", "100lbf.ft")["candidates"][0]["torque"]
    assert in_feet == pytest.approx(100 * 0.45359237 * 9.80665 * 0.3048, rel=1e-12)
    in_kgf = answer("clamp", "--thread", "M16", "--torque", "10kgf.m")["candidates"][0]["torque"]
    assert in_kgf == pytest.approx(98.0665, rel=1e-12)


def test_measured_friction_goes_before_the_condition():
    got = answer("clamp", "--thread", "M10", "--torque", "30N.m", "--condition", "dry", "--thread-friction",
                 "0.10..0.11..0.13", "--bearing-friction", "0.09")
    assert got["thread_friction"] == {"low": 0.10, "nominal": 0.11, "high": 0.13}
    assert got["bearing_friction"] == {"low": 0.09, "nominal": 0.09, "high": 0.09}


def test_key_and_socket_are_different_tools():
    key = answer("clamp", "--key", "8mm", "--torque", "40N.m")["candidates"]
    assert {c["thread"].split("x")[0] for c in key} == {"M10", "M12"}  # ISO 4762: key 8 is M10; ISO 7380-1: M12
    socket = answer("clamp", "--socket", "8mm", "--torque", "5N.m")["candidates"]
    assert "M10" not in {c["thread"].split("x")[0] for c in socket}


def test_pages_show_four_candidates_and_json_all():
    words = ["clamp", "--socket", "24mm", "--class", "8.8", "--torque", "130N.m"]
    total = len(answer(*words)["candidates"])
    assert total > 4
    page = said(*words)
    assert f"{total - 4} less common fasteners fit this tool too" in page
    assert len(re.findall(r"^ *\d+  M\d+\S* .*(?:slack|within limits|yields?|breaks?)$", page, re.M)) == 4
    everything = said(*words, "--all")
    assert len(re.findall(r"^ *\d+  M\d+\S* .*(?:slack|within limits|yields?|breaks?)$", everything, re.M)) == total


# identify


def hexagon_rows():
    with open(ROOT / "src" / "tables" / "head.csv", newline="", encoding="utf-8") as file:
        return [r for r in csv.DictReader(file) if r["drive"] == "hexagon"]


@pytest.mark.parametrize("width", range(7, 37))
def test_identify_agrees_with_the_tables_for_every_socket(width):
    expected = {r["thread_size"] for r in hexagon_rows() if abs(float(r["width_mm"]) - width) <= 0.3 + 1e-6}
    if not expected:
        sentence, argument = refused("identify", "--socket", f"{width}mm")
        assert argument == "socket" and f"{width} mm" in sentence and "nearest widths" in sentence
        return
    candidates = answer("identify", "--socket", f"{width}mm")["candidates"]
    assert {c["thread"].split("x")[0] for c in candidates} == expected
    assert all(c["head"] and c["how_common"] in ("everyday", "common", "seldom", "rare") for c in candidates)
    assert [c["rank"] for c in candidates] == list(range(1, len(candidates) + 1))


def test_identify_inch_width_key_bit_and_marks():
    assert {c["thread"] for c in answer("identify", "--socket", "5/8in")["candidates"]} >= {"M10"}
    assert answer("identify", "--key", "8mm")["candidates"][0]["thread"] == "M10"  # ISO 4762
    assert answer("identify", "--bit", "30")["candidates"][0]["thread"] == "M6"  # ISO 14579
    marks = answer("identify", "--class", "10.9")
    assert "10.9" in marks["property_class"]["marks"] and marks["unmarked_class"] == "4.6"
    assert marks["property_class"]["tensile_strength"] == 1040e6  # ISO 898-1
    marked = said("identify", "--socket", "16mm", "--class", "10.9")
    assert marked.startswith("16 mm across flats, class 10.9: most often M10") and "unmarked" not in marked
    assert "Treat an unmarked steel head as class 4.6." in said("identify", "--socket", "16mm")


# reach


def test_reach_by_statics():
    got = answer("reach", "--torque", "130N.m", "--wrench-length", "400mm", "--extension", "100mm@30deg")
    # Hand force F at L + E cos(alpha) from the fastener, the wrench feels F L.
    assert got["setting"] == pytest.approx(130 * 0.4 / (0.4 + 0.1 * math.cos(math.radians(30))), rel=1e-12)
    assert got["hand_force"] == pytest.approx(got["setting"] / 0.4, rel=1e-12)
    # Band: twice the root of the sum of squares of range/(2 sqrt 3), even distributions.
    share = 2 * math.sqrt(sum(c["range"] ** 2 for c in got["contributions"]) / 12)
    assert [got["arrives"][k] for k in ("low", "nominal", "high")] == pytest.approx(
        [130 * (1 - share), 130, 130 * (1 + share)], rel=1e-12)
    back = answer("reach", "--setting", f"{got['setting']!r}N.m", "--wrench-length", "400mm", "--extension", "100mm@30deg")
    assert back["arrives"]["nominal"] == pytest.approx(130, rel=1e-12)
    chain = answer("reach", "--torque", "130N.m", "--extension", "60mm@90deg", "--extension", "80mm")["extension"]
    assert chain["length"] == pytest.approx(0.1) and chain["angle"] == pytest.approx(math.atan2(60, 80))
    # A round bar: G pi d^4/(32 l).
    bar = answer("reach", "--torque", "130N.m", "--bar", "round:250mm:12mm")
    assert bar["twist"] == pytest.approx(130 * 0.25 * 32 / (79e9 * math.pi * 0.012 ** 4), rel=1e-9)


def test_reach_has_the_keys_that_others_rely_on():
    got = answer("reach", "--torque", "130N.m")
    assert {"setting", "arrives", "contributions", "extension", "lever_ratio", "hand_force", "torsional_stiffness", "twist",
            "reaction_torque", "notices", "steps"} <= set(got)
    assert list(got["arrives"]) == ["low", "nominal", "high"] and got["torsional_stiffness"] is None
    for cause in got["contributions"]:
        assert list(cause) == ["cause", "range", "is_estimate"]
    for notice in got["notices"]:
        assert list(notice) == ["code", "text", "is_estimate"]
    assert {"no_pipe", "no_release"} <= {notice["code"] for notice in got["notices"]}


def test_reach_shows_drawing_band_causes_and_cautions(tmp_path):
    path = tmp_path / "reach.svg"
    page = said("reach", "--torque", "130N.m", "--wrench-length", "400mm", "--extension", "100mm@30deg", "--svg", str(path))
    assert page.startswith("Set the wrench to 107 N.m for 130 N.m at the fastener (123 to 137 N.m in 19 of 20 cases).\n")
    for words in ("What to do", "Pull with", "extension 100 mm at 30 deg", "operator",
                  "estimate", "Take care", "Do not put a pipe"):
        assert words in page, words
    assert xml.etree.ElementTree.parse(path).getroot().tag.endswith("svg")
    assert "above the wrench's" in said("reach", "--torque", "300N.m", "--scale-high", "200N.m")


def test_the_clamp_command_that_reach_prints_is_one():
    for words in (("--torque", "95N.m", "--wrench-length", "400mm", "--extension", "75mm@45deg"), ("--setting", "153.7N.m")):
        [sentence] = re.findall(r"tauten (clamp --torque .*%)\n", said("reach", *words))
        band = answer("reach", *words)
        [candidate] = answer(*sentence.split(), "--thread", "M16", "--class", "8.8")["candidates"]
        assert candidate["wrench_accuracy"] == pytest.approx(band["wrench_accuracy"], rel=5e-3)
        assert candidate["torque"] == pytest.approx(band["arrives"]["nominal"], rel=5e-4)


def test_a_drawing_that_does_not_arrive_is_an_error():
    if not os.path.exists("/dev/full"):
        pytest.skip("no /dev/full")
    done = run("reach", "--torque", "130N.m", "--svg", "/dev/full")
    assert done.returncode == 1 and b"could not be written" in done.stderr and not done.stdout


# free

FLANGE = ["--loosened", "freed:205N.m", "--loosened", "unmoved:210N.m", "--loosened", "sheared:380N.m"]
STUCK = ["free", "--thread", "M16", "--class", "8.8", "--socket", "24mm", "--rust", "heavy-rust"]


def test_free_has_the_keys_that_others_rely_on():
    got = answer(*STUCK, "--limit", "200N.m", *FLANGE)
    assert {"breakaway", "shear", "round", "tool", "arm", "stop_at", "stopped_by_shear", "chances", "curve", "standard_error",
            "learned", "steps", "next", "after", "notices"} <= set(got)
    for band in ("breakaway", "shear", "round", "tool"):
        assert list(got[band]) == ["low", "nominal", "high"]
        assert 0 < got[band]["low"] < got[band]["nominal"] < got[band]["high"]
    chances = got["chances"]
    assert list(chances) == ["limit", "free", "shear", "round", "tool", "not_moving"] and chances["limit"] == 200
    assert sum(list(chances.values())[1:]) == pytest.approx(1, abs=1e-9)
    assert got["arm"] is None and got["learned"]["count"] == 3
    assert got["steps"][-1]["aids"][0]["aid"] == "cut" and 0 <= got["next"] < len(got["steps"])
    codes = {notice["code"]: notice["is_estimate"] for notice in got["notices"]}
    assert codes["rust_estimate"] and not codes["no_release"] and "stored_energy" in codes
    assert answer(*STUCK)["learned"] is None


def test_free_page_has_no_breakaway_without_its_band():
    got = answer(*STUCK, "--limit", "200N.m")
    page = said(*STUCK, "--limit", "200N.m")
    low, nominal, high = (got["breakaway"][k] for k in ("low", "nominal", "high"))
    assert re.search(rf"^Breakaway torque +{low:.0f} to {high:.0f} N.m, typically {nominal:.0f} N.m, in nine of ten", page, re.M)
    # Line 1: where to stop and the chances.
    first = " ".join(page.split("\n\n")[0].split())
    assert re.fullmatch(r"M16, heavy rust: stop at 200 N\.m, your limit; (below )?[0-9.]+ % come free by then, .* % shear, .* "
                        r"% do not move\.", first)
    for line in page.splitlines():
        if re.search(rf"\b{nominal:.0f}\b", line):
            assert f"{low:.0f}" in line and f"{high:.0f}" in line, line
    for words in ("Stop at ", "Up to 200 N.m", "comes free", "shears", "corners round off", "tool fails", "does not move",
                  "Next: ", "Afterwards", "Take care", "How far to trust this", "approve a joint for service"):
        assert words in page, words
    # What comes with later steps is read there, what comes with this one at the end.
    later, care = page.index("Take care in the later steps"), page.index("\nTake care\n")
    assert later < page.index("impact-rated sockets") < care < page.index("Support the load")


def test_free_page_says_what_a_bolt_that_has_held_is_in_for():
    page = " ".join(said(*STUCK, "--limit", "300N.m").split())
    assert "If it has not moved, then from there up to 300 N.m" in page and "the more likely it is to shear rather than come free" in page
    page = " ".join(said(*STUCK, "--held", "200N.m").split())
    assert "Withstood without moving 200 N.m; outcomes below that are excluded" in page
    assert "on the way from the 200 N.m that it has held" in page and "having held 200 N.m" in page
    page = " ".join(said(*STUCK, "--held", "200N.m", "--aid", "brush", "--held-untreated").split())
    assert "Withstood without moving 200 N.m before the aids; outcomes below that are excluded" in page
    page = said("free", "--thread", "M16", "--class", "8.8", "--rust", "clean", "--preload", "0kN")
    assert "Nothing holds it; it turns without torque." in page and "If it has not moved" not in page


def test_free_of_a_six_lobed_drive():
    screw = ["free", "--thread", "M10", "--class", "10.9", "--limit", "150N.m", "--trials", "20000"]
    got = answer(*screw, "--bit", "50")
    assert [one["part"] for one in got["capacities"]] == ["bolt", "recess", "bit"]
    assert got["chances"]["round"] > 0.05 and got["chances"]["tool"] > 0.05
    assert got == answer(*screw, "--drive", "hexalobular")  # ISO 14579
    worn = answer(*screw, "--bit", "50", "--corner-loss", "0.3mm")
    assert worn["round"]["nominal"] < got["round"]["nominal"] and worn["tool"] == got["tool"]
    page = said(*screw, "--bit", "50")
    for words in ("hexalobular drive number 50", "recess strips", "\nrecess  ", "\nbit  ", "Clean the recess"):
        assert words in page, words
    assert "corners" not in page


def test_free_asks_for_what_it_was_told():
    base = answer(*STUCK, "--limit", "200N.m")
    assert answer(*STUCK, "--limit", "200N.m", "--aid", "brush", "--aid", "fluid:24h:thin")["chances"]["free"] > \
        base["chances"]["free"]
    assert answer(*STUCK, "--limit", "200N.m", "--loosened", "freed:100N.m")["breakaway"]["nominal"] < \
        base["breakaway"]["nominal"]
    assert answer(*STUCK, "--loosened", "not-moved:100N.m") == answer(*STUCK, "--loosened", "unmoved:100N.m")
    soaked = [*STUCK, "--aid", "brush", "--aid", "fluid:24h"]
    assert answer(*soaked, "--loosened", "freed:250N.m")["breakaway"]["nominal"] < \
        answer(*soaked, "--loosened", "freed:250N.m:treated")["breakaway"]["nominal"]
    held = answer(*STUCK, "--held", "150N.m")
    assert held["breakaway"]["low"] > 150 and held["stop_at"] > 150
    assert answer(*soaked, "--held", "300N.m", "--held-untreated", "--limit", "250N.m")["breakaway"]["low"] < 300
    near = answer(*STUCK, "--surroundings", "fire-or-burst")
    assert not any(use["aid"] == "heat" for step in near["steps"] for use in step["aids"])
    assert any(use["aid"] == "heat" for step in base["steps"] for use in step["aids"])
    assert answer(*STUCK, "--seed", "2")["breakaway"] != answer(*STUCK)["breakaway"]
    # ISO 4014 gives the M16 24 mm, ISO 898-1 the class its strengths.
    plain = answer("free", "--diameter", "16mm", "--pitch", "2mm", "--socket", "24mm", "--tensile-strength", "800MPa",
                   "--yield-strength", "640MPa")
    named = answer("free", "--thread", "M16", "--class", "8.8")
    assert plain["breakaway"] == named["breakaway"] and plain["chances"].keys() == named["chances"].keys()


def test_reach_and_free_agree_with_python():
    tauten = pytest.importorskip("tauten")
    way = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "30deg"), ("50mm", "0deg")],
                       bars=[("square", "250mm", "12.7mm")], multiplier_ratio=4, universal_joint="10deg", scale_high="50N.m")
    assert answer("reach", "--torque", "130N.m", "--wrench-length", "400mm", "--extension", "100mm@30deg", "--extension",
                  "50mm", "--bar", "square:250mm:12.7mm", "--multiplier-ratio", "4", "--universal-joint", "10deg",
                  "--scale-high", "50N.m") == json.loads(way.to_json())
    stuck = tauten.free_joint(
        thread="M16", property_class="8.8", socket="24mm", rust="heavy_rust", limit="200N.m", trials=20000,
        loosened=[("freed", "205N.m"), ("unmoved", "210N.m"), ("sheared", "380N.m")],
        aids=["brush", {"aid": "fluid", "soak_hours": 24, "thin_fluid": True}], surroundings="rubber_or_plastic", handle_length="0.6m")
    assert answer(*STUCK, "--limit", "200N.m", "--trials", "20000", *FLANGE, "--aid", "brush", "--aid", "fluid:24h:thin",
                  "--surroundings", "rubber_or_plastic", "--handle-length", "600mm") == json.loads(stuck.to_json())
    key = tauten.free_joint(thread="M12", property_class="10.9", key="10mm", preload="30kN", drive_square="12.7mm", trials=20000,
                            years=8, first_year_loss="0.05mm", aids=[{"aid": "heat", "nut_rise": 100, "bolt_rise": 40}])
    assert answer("free", "--thread", "M12", "--class", "10.9", "--key", "10mm", "--preload", "30kN", "--drive-square", "12.7mm",
                  "--trials", "20000", "--years", "8", "--first-year-loss", "0.05mm", "--aid",
                  "heat:100K") == json.loads(key.to_json())


# formulas and explanations


def test_formulas_lists_filters_and_shows():
    everything = {f["name"] for f in answer("formulas")["formulas"]}
    assert {"nut_factor", "preload_from_torque", "bar_twist", "shear_before_free_index"} <= everything
    some = {f["name"] for f in answer("formulas", "friction")["formulas"]}
    assert "thread_friction_from_test" in some and some < everything
    one = answer("formulas", "nut_factor")
    assert [i["name"] for i in one["inputs"]] == ["diameter", "pitch", "pitch_diameter", "thread_friction",
                                                  "bearing_friction", "bearing_diameter"]
    page = said("formulas", "nut_factor")
    assert "mu_G" in page and "ISO 16047" in page and "tauten eval nut_factor" in page


def test_the_shown_example_has_an_answer():
    """What a page offers as the way to write it has values that go together, with a unit that is understood."""
    for formula in answer("formulas")["formulas"]:
        words = said("formulas", formula["name"]).split("How to write it: tauten ")[1].split()
        done = run(*words)
        assert done.returncode == 0, done.stderr


def test_the_shown_example_is_a_thread_that_there_is():
    words = said("formulas", "nut_factor")
    assert "diameter=10mm pitch=1.5mm pitch_diameter=9.026mm" in " ".join(words.split())


def test_explain_shows_formula_values_and_result():
    words = ["explain", "stress_area", "diameter=10mm", "pitch=1.5mm"]
    text = said(*words)
    assert "A_s = " in text and "10 mm" in text and "57.99 mm2" in text and "ISO 898-1" in text
    assert "$$" in said(*words, "--format", "markdown")
    assert "\\begin{align*}" in said(*words, "--format", "latex")
    got = answer(*words)
    assert got["steps"][0]["value"] == got["value"]


def test_explain_clamp_shows_the_steps_of_the_first_candidate():
    words = ["--socket", "24mm", "--class", "8.8", "--torque", "130N.m", "--condition", "oiled"]
    steps = answer("explain", "clamp", *words)["steps"]
    assert [s["formula"] for s in steps] == [s["formula"] for s in answer("clamp", *words)["candidates"][0]["steps"]]
    page = said("explain", "clamp", *words)
    assert "F_M = M_A/" in page and page.startswith("M16")
    assert "\\frac" in said("explain", "clamp", *words, "--format", "latex")
    assert "<math" in said("explain", "clamp", *words, "--format", "html")
    got = answer("explain", "clamp", *words)
    assert got["verdict"].startswith("may be slack") and got["thread"] == "M16" and got["given"][0]["name"] == "socket"
    assert {f["name"] for f in got["found"]} >= {"clamp_load", "nut_factor", "worst_case", "chance_of_yield", "suggested_torque"}


def test_explain_goes_from_the_question_to_the_verdict():
    for words in (["clamp", "--thread", "M16", "--torque", "130N.m"], ["torque", "--thread", "M16", "--share", "60%"],
                  ["reach", "--torque", "130N.m", "--extension", "100mm@30deg"],
                  ["turn", "--thread", "M16", "--grip", "40mm", "--clamp-load", "30kN"],
                  ["free", "--thread", "M16", "--class", "8.8", "--trials", "5000"]):
        page = said("explain", *words)
        places = [page.index(f"\n{part}") for part in ("Given", "Steps", "1. ", "Result", "Verdict: ", "Take care")]
        assert places == sorted(places)
        assert answer("explain", *words)["steps"][0]["validity"] is not None


def test_explain_in_other_units_and_digits():
    page = said("explain", "clamp", "--thread", "M16", "--torque", "96lbf.ft", "--unit", "torque=lbf.ft", "--unit",
                "preload=lbf", "--digits", "5", "--digits", "preload=3")
    assert "96 lbf.ft" in page and " lbf\n" in page and "N.m" not in page.split("Take care")[0]


# Nonsense gives a sentence and never a number

CLAMP = ["clamp", "--thread", "M10", "--class", "8.8"]
REACH = ["reach", "--torque", "130N.m"]
FREE = ["free", "--thread", "M16", "--class", "8.8"]
TURN = ["turn", "--thread", "M16", "--class", "8.8", "--layer", "20mm"]
CURVE = ["curve", "--thread", "M16", "--class", "8.8", "--layer", "20mm"]
LONG = "x" * 5000
NONSENSE = {
    "no verb": ([], "no verb is given", "verb"),
    "unknown verb": (["clmp"], "did you mean clamp?", "verb"),
    "unknown option": (["clamp", "--torqe", "5N.m"], "did you mean --torque?", "option"),
    "option of another verb": (["clamp", "--angle", "45deg"], "no option '--angle'; see tauten clamp --help", "option"),
    "argument of Python": (["clamp", "--specified-condition", "dry"], "did you mean --specified? See tauten clamp --help", "option"),
    "angle behind a comma": (["reach", "--torque", "9N.m", "--extension", "75mm,45deg"], "like 75mm@45deg", "extension"),
    "several in one": (["free", "--thread", "M16", "--loosened", "freed:85N.m,unmoved:90N.m"], "say loosened again for each", "loosened"),
    "risk in percent": (["free", "--thread", "M16", "--class", "8.8", "--shear-risk", "5"], "for example 0.05 or 5%",
                        "shear-risk"),
    "stray word": (["clamp", "M10", "--torque", "5N.m"], "'M10'", "option"),
    "no torque": (CLAMP, "torque is missing", "torque"),
    "no fastener": (["clamp", "--torque", "48N.m"], "give a thread", "thread"),
    "bare number": ([*CLAMP, "--torque", "48"], "has no unit; write a torque like 48N.m", "torque"),
    "negative torque": ([*CLAMP, "--torque", "-5N.m"], "torque is -5 N.m, but must be above 0", "torque"),
    "negative torque with sign": ([*CLAMP, "--torque=-5N.m"], "torque is -5 N.m, but must be above 0", "torque"),
    "zero torque": ([*CLAMP, "--torque", "0N.m"], "must be above 0", "torque"),
    "huge torque": ([*CLAMP, "--torque", "1e9N.m"], "at most 100000 N.m", "torque"),
    "no value": ([*CLAMP, "--torque"], "--torque has no value", "torque"),
    "empty value": ([*CLAMP, "--torque", ""], "torque is empty", "torque"),
    "NaN": ([*CLAMP, "--torque", "nanN.m"], "does not start with a finite number", "torque"),
    "infinity": ([*CLAMP, "--torque", "infN.m"], "does not start with a finite number", "torque"),
    "1e400": ([*CLAMP, "--torque", "1e400N.m"], "finite number", "torque"),
    "energy for torque": ([*CLAMP, "--torque", "48J"], "is an energy, not a torque", "torque"),
    "length for torque": ([*CLAMP, "--torque", "48mm"], "is a length, not a torque", "torque"),
    "unknown unit": ([*CLAMP, "--torque", "48parsec"], "unknown unit 'parsec'", "torque"),
    "option twice": ([*CLAMP, "--torque", "48N.m", "--torque", "5N.m"], "given 2 times", "torque"),
    "zero socket": (["clamp", "--socket", "0mm", "--torque", "5N.m"], "socket is 0 mm, but must be above 0", "socket"),
    "negative socket": (["clamp", "--socket", "-16mm", "--torque", "5N.m"], "must be above 0", "socket"),
    "giant socket": (["clamp", "--socket", "3m", "--torque", "5N.m"], "at most 200 mm", "socket"),
    "no such socket": (["clamp", "--socket", "20mm", "--torque", "5N.m"], "nearest widths are 19 mm and 21 mm", "socket"),
    "no such key": (["clamp", "--key", "9mm", "--torque", "5N.m"], "nearest widths", "key"),
    "socket and key": (["clamp", "--socket", "16mm", "--key", "8mm", "--torque", "5N.m"], "leave one of them out", "key"),
    "no such pitch": (["clamp", "--thread", "M10x9", "--torque", "5N.m"], "M10 comes with pitches 1.5, 1.25", "thread"),
    "no such size": (["clamp", "--thread", "M11.5", "--torque", "5N.m"], "nearest are", "thread"),
    "no thread at all": (["clamp", "--thread", "banana", "--torque", "5N.m"], "write an ISO metric thread like M10", "thread"),
    "socket and thread disagree": (["clamp", "--socket", "16mm", "--thread", "M20", "--torque", "5N.m"], "leave one", "thread"),
    "unknown head": ([*CLAMP, "--torque", "5N.m", "--head", "ISO 1"], "known are", "head"),
    "unknown class": (["clamp", "--thread", "M10", "--class", "99.9", "--torque", "5N.m"], "the classes are 3.6, 4.6", "class"),
    "class not made": (["clamp", "--thread", "M64", "--class", "8.8", "--torque", "5N.m", "--bearing-diameter", "80mm"],
                       "39 mm", "class"),
    "unknown condition": ([*CLAMP, "--torque", "5N.m", "--condition", "honey"], "give one of dry, oiled", "condition"),
    "unknown face": ([*CLAMP, "--torque", "5N.m", "--face", "honey"], "face 'honey'", "face"),
    "unknown specified": ([*CLAMP, "--torque", "5N.m", "--specified", "honey"], "specified 'honey'", "specified"),
    "wrench too bad": ([*CLAMP, "--torque", "5N.m", "--wrench-accuracy", "60%"], "wrench-accuracy is 0.6, but must be at least 0", "wrench-accuracy"),
    "wrench negative": ([*CLAMP, "--torque", "5N.m", "--wrench-accuracy", "-4%"], "wrench-accuracy is -0.04", "wrench-accuracy"),
    "share too large": ([*CLAMP, "--torque", "5N.m", "--share", "150%"], "share is 1.5, but must be", "share"),
    "prevailing takes all": ([*CLAMP, "--torque", "5N.m", "--prevailing-torque", "9N.m"], "nothing is left", "torque"),
    "prevailing negative": ([*CLAMP, "--torque", "5N.m", "--prevailing-torque", "-9N.m"], "prevailing-torque is -9 N.m", "prevailing-torque"),
    "band falls": ([*CLAMP, "--torque", "5N.m", "--thread-friction", "0.2..0.1..0.3"], "must rise", "thread-friction"),
    "band of two": ([*CLAMP, "--torque", "5N.m", "--thread-friction", "0.1..0.2"], "0.08..0.12..0.16", "thread-friction"),
    "band of four": ([*CLAMP, "--torque", "5N.m", "--bearing-friction", "0.1..0.2..0.3..0.4"], "neither", "bearing-friction"),
    "band open": ([*CLAMP, "--torque", "5N.m", "--bearing-friction", "0.1..0.2.."], "neither", "bearing-friction"),
    "no friction": ([*CLAMP, "--torque", "5N.m", "--bearing-friction", "0"], "above 0", "bearing-friction"),
    "no bearing face": ([*CLAMP, "--torque", "5N.m", "--bearing-diameter", "0mm"], "above 0", "bearing-diameter"),
    "unknown torsion": ([*CLAMP, "--torque", "5N.m", "--torsion", "rubber"], "write plastic or elastic", "torsion"),
    "zero load": (["torque", "--thread", "M10", "--clamp-load", "0kN"], "clamp-load is 0 kN", "clamp-load"),
    "load and share": (["torque", "--thread", "M10", "--clamp-load", "9kN", "--share", "50%"], "leave one", "share"),
    "very long": ([*CLAMP, "--torque", LONG], "does not start", "torque"),
    "long condition": ([*CLAMP, "--torque", "5N.m", "--condition", LONG], "give one of dry", "condition"),
    "file with options": (["clamp", "--file", "x.toml", "--torque", "5N.m"], "stands alone", "torque"),
    "identify nothing": (["identify"], "write a socket like 16mm", "socket"),
    "identify two tools": (["identify", "--socket", "16mm", "--key", "8mm"], "exclude each other", "socket"),
    "identify bare": (["identify", "--socket", "16"], "has no unit", "socket"),
    "identify empty": (["identify", "--socket", ""], "socket is empty", "socket"),
    "identify worn": (["identify", "--socket", "16mm", "--worn", "-1mm"], "at least 0", "worn"),
    "identify bit": (["identify", "--bit", "30mm"], "number of a six-lobed drive", "bit"),
    "identify no such bit": (["identify", "--bit", "31"], "the numbers are", "bit"),
    "identify class": (["identify", "--class", "7.7"], "the classes are", "class"),
    "no such formula": (["eval", "stres_area"], "did you mean stress_area?", "formula"),
    "no formula": (["eval"], "name the formula", "formula"),
    "missing inputs": (["eval", "stress_area", "diameter=10mm"], "also needs pitch=", "pitch"),
    "unknown input": (["eval", "stress_area", "diametr=10mm"], "did you mean diameter?", "diametr"),
    "input twice": (["eval", "stress_area", "diameter=10mm", "diameter=9mm", "pitch=1mm"], "twice", "diameter"),
    "no equals": (["eval", "stress_area", "10mm"], "write name=value", ""),
    "input without unit": (["eval", "stress_area", "diameter=10", "pitch=1mm"], "has no unit", "diameter"),
    "outside domain": (["eval", "stress_area", "diameter=-10mm", "pitch=1mm"], "must be above 0", "diameter"),
    "no such filter": (["formulas", "banana"], "tauten formulas lists them all", "text"),
    "explain nothing": (["explain"], "name what to explain", "formula"),
    "explain no torque": (["explain", "clamp", "--thread", "M10"], "torque is missing", "torque"),
    "explain format": (["explain", "stress_area", "diameter=10mm", "pitch=1mm", "--format", "wax"], "text, markdown", "format"),
    "explain digits": (["explain", "stress_area", "diameter=10mm", "pitch=1mm", "--digits", "x"], "1 to 17", "digits"),
    "explain unit": (["explain", "stress_area", "diameter=10mm", "pitch=1mm", "--unit", "pitch=lbf"], "pitch is a length", "unit"),
    "explain nobody": (["explain", "stress_area", "diameter=10mm", "pitch=1mm", "--unit", "mass=lbf"], "'mass'", "unit"),
    "explain reach of nothing": (["explain", "reach"], "torque or setting is missing", "torque"),
    "explain free of nothing": (["explain", "free"], "thread", "thread"),
    "reach nothing": (["reach"], "torque or setting is missing", "torque"),
    "reach both": (["reach", "--torque", "9N.m", "--setting", "9N.m"], "exclude each other", "setting"),
    "reach bare": (["reach", "--torque", "130"], "has no unit", "torque"),
    "reach negative": (["reach", "--torque", "-1N.m"], "above 0", "torque"),
    "reach twice": (["reach", "--torque", "1N.m", "--torque", "2N.m"], "given 2 times", "torque"),
    "reach empty": (["reach", "--torque", ""], "torque is empty", "torque"),
    "reach empty beside": (["reach", "--torque=", "--setting=9N.m"], "torque is empty", "torque"),
    "reach extension": ([*REACH, "--extension", "100mm@1deg@2deg"], "like 75mm@45deg", "extension"),
    "reach extension angle": ([*REACH, "--extension", "100mm@30mm"], "is a length, not an angle", "extension"),
    "reach zero extension": ([*REACH, "--extension", "9mm", "--extension", "0mm"], "extension_2_length is 0 mm", "extension"),
    "reach folded back": ([*REACH, "--extension", "300mm@180deg"], "fold back", "extension"),
    "reach pipe": ([*REACH, "--pipe-on-handle"], "a pipe on the handle", "pipe-on-handle"),
    "reach hinge": ([*REACH, "--hinged-handle", "--extension", "9mm"], "refused", "hinged-handle"),
    "reach tilt": ([*REACH, "--tilt", "20deg"], "tilt is 20 deg", "tilt"),
    "reach bar": ([*REACH, "--bar", "250mm"], "like square:250mm:12.7mm", "bar"),
    "reach oval bar": ([*REACH, "--bar", "oval:250mm:12mm"], "write square, round or hexagon", "bar"),
    "reach bar of no length": ([*REACH, "--bar", "round:0mm:12mm"], "bar_length is 0 mm", "bar"),
    "reach class": ([*REACH, "--wrench-class", "Z"], "A to G", "wrench-class"),
    "reach type": ([*REACH, "--wrench-type", "click"], "write indicating or setting", "wrench-type"),
    "reach arm alone": ([*REACH, "--reaction-arm", "9mm"], "reaction-arm goes with multiplier-ratio", "multiplier-ratio"),
    "reach gain": ([*REACH, "--multiplier-ratio", "4", "--multiplier-efficiency", "2"], "at most 1", "multiplier-efficiency"),
    "reach no drive": ([*REACH, "--drive-square", "0mm"], "must be above 0", "drive-square"),
    "reach svg": ([*REACH, "--svg", "/"], "cannot be written", "svg"),
    "reach stray": ([*REACH, "--extension", "9mm", "9mm"], "'9mm'", "option"),
    "free nothing": (["free"], "give a thread like M16, or diameter and pitch; identify finds", "thread"),
    "free no class": (["free", "--thread", "M16"], "give a property class", "class"),
    "free class": (["free", "--thread", "M16", "--class", "9.9.9"], "the classes are", "class"),
    "free thread": (["free", "--thread", "M16.5", "--class", "8.8"], "nearest are", "thread"),
    "free thread and diameter": ([*FREE, "--diameter", "16mm"], "leave one of them out", "diameter"),
    "free class and strength": ([*FREE, "--yield-strength", "640MPa"], "yield-strength is given beside", "yield-strength"),
    "free two tools": ([*FREE, "--socket", "24mm", "--key", "14mm"], "leave one of them out", "key"),
    "free small socket": ([*FREE, "--socket", "10mm"], "socket is 10 mm", "socket"),
    "free large key": ([*FREE, "--key", "40mm"], "key is 40 mm", "key"),
    "free key and drive": ([*FREE, "--key", "14mm", "--drive", "open_end"], "internal_hexagon", "drive"),
    "free bit": ([*FREE, "--bit", "30mm"], "number of a six-lobed drive", "bit"),
    "free no such bit": ([*FREE, "--bit", "31"], "the numbers are", "bit"),
    "free small bit": ([*FREE, "--bit", "10"], "must lie between 4.8 mm and 19.2 mm", "bit"),
    "free bit and socket": ([*FREE, "--bit", "60", "--socket", "24mm"], "leave one of them out", "bit"),
    "free bit and drive": ([*FREE, "--bit", "60", "--drive", "open_end"], "hexalobular", "drive"),
    "free socket for lobes": ([*FREE, "--socket", "24mm", "--drive", "hexalobular"], "goes by its number", "drive"),
    "free lobes without a head": (["free", "--thread", "M24", "--class", "8.8", "--drive", "hexalobular"], "ISO 14579", "bit"),
    "free rust": ([*FREE, "--rust", "awful"], "write clean, aged_dry", "rust"),
    "free limit": ([*FREE, "--limit", "0N.m"], "above 0", "limit"),
    "free undone": ([*FREE, "--loosened", "freed"], "like freed:85N.m", "loosened"),
    "free undone how": ([*FREE, "--loosened", "lost:85N.m"], "freed, sheared, rounded or unmoved", "loosened"),
    "free undone bare": ([*FREE, "--loosened", "freed:85"], "'freed:85' has no unit; write it like freed:85N.m", "loosened"),
    "free undone bare treated": ([*FREE, "--loosened", "freed:85:treated"], "write it like freed:85N.m:treated", "loosened"),
    "free undone zero": ([*FREE, "--loosened", "freed:85N.m", "--loosened", "freed:0N.m"], "must be above 0", "loosened"),
    "free done": ([*FREE, "--aid", "hammer"], "write brush, fluid", "aid"),
    "free cut": ([*FREE, "--aid", "cut"], "needs no torque", "aid"),
    "free soak": ([*FREE, "--aid", "fluid:24"], "write it like 24h", "aid"),
    "free brush": ([*FREE, "--aid", "brush:2h"], "says too much", "aid"),
    "free heat near fuel": ([*FREE, "--aid", "heat", "--surroundings", "fire_or_burst"], "No heat", "aid"),
    "free near": ([*FREE, "--surroundings", "cat"], "write fire_or_burst", "surroundings"),
    "free years": ([*FREE, "--years", "5"], "years goes with first-year-loss", "first-year-loss"),
    "free hand": ([*FREE, "--hand-force", "350N"], "goes with handle-length", "handle-length"),
    "free trials": ([*FREE, "--trials", "1"], "at least 1000", "trials"),
    "free seed": ([*FREE, "--seed", "1.5"], "not a whole number", "seed"),
    "free huge seed": ([*FREE, "--seed", "9" * 30], "not a whole number", "seed"),
    "turn nothing": (["turn"], "give a thread like M16", "thread"),
    "turn no layers": (["turn", "--thread", "M16"], "at least one", "layer"),
    "turn zero grip": (["turn", "--thread", "M16", "--grip", "0mm"], "above 0", "grip"),
    "turn grip and layer": ([*TURN, "--grip", "20mm"], "leave one of them out", "grip"),
    "turn no snug": (["turn", "--thread", "M16", "--grip", "50mm", "--angle", "30deg"], "counts from", "snug-torque"),
    "turn snug above": ([*TURN, "--snug-torque", "60N.m", "--clamp-load", "10kN"], "lower snug torque", "snug-torque"),
    "turn snug at yield": ([*TURN, "--snug-torque", "300N.m", "--angle", "30deg"], "to yield", "snug-torque"),
    "turn snug lost": ([*TURN, "--snug-torque", "5N.m", "--prevailing-torque", "6N.m"], "nothing is left", "snug-torque"),
    "turn too much": ([*TURN, "--clamp-load", "400kN"], "necks at", "clamp-load"),
    "turn two wishes": ([*TURN, "--clamp-load", "40kN", "--share", "50%"], "exclude each other", "share"),
    "turn thin layer": ([*TURN, "--layer", "-2mm"], "must be above 0", "layer"),
    "turn soft layer": ([*TURN, "--layer", "20mm:0GPa"], "must be above 0", "layer"),
    "turn narrow layer": ([*TURN, "--layer", "20mm:steel:12mm"], "exceed the hole", "layer"),
    "turn wood": ([*TURN, "--layer", "20mm:wood"], "grey cast iron", "layer"),
    "turn long layer": ([*TURN, "--layer", "1mm:steel:2mm:3mm:4mm"], "says too much", "layer"),
    "turn short bolt": ([*TURN, "--length", "30mm"], "longer bolt", "length"),
    "turn no engagement": ([*TURN, "--kind", "tapped_hole", "--length", "25mm"], "0.5 d", "length"),
    "turn kind": ([*TURN, "--kind", "rivet"], "write through_bolt", "kind"),
    "turn washers": ([*TURN, "--washers", "3"], "at most 2", "washers"),
    "turn washers bare": ([*TURN, "--washers", "1.5"], "not a whole number", "washers"),
    "turn model": ([*TURN, "--kind", "tapped_hole", "--plate-model", "exponential"], "no tapped holes", "plate-model"),
    "turn bar": ([*TURN, "--bar", "square:0mm:12mm"], "must be above", "bar"),
    "turn bar form": ([*TURN, "--bar", "square"], "like square:250mm:12.7mm", "bar"),
    "turn bare angle": ([*TURN, "--angle", "90"], "has no unit", "angle"),
    "turn roughness": ([*TURN, "--roughness", "1mm"], "measure the loss", "roughness"),
    "curve angle": ([*CURVE, "--angle", "90deg"], "has no option", "option"),
    "curve points": ([*CURVE, "--points", "1"], "at least 2", "points"),
    "curve many points": ([*CURVE, "--points", "999999999"], "at most", "points"),
    "curve head": ([*CURVE, "--head", "ISO 1"], "known are", "head"),
    "unknown shell": (["completion", "ksh"], "bash, zsh or fish", "shell"),
    "no shell": (["completion"], "bash, zsh or fish", "shell"),
}


@pytest.mark.parametrize("name", NONSENSE)
def test_nonsense_is_refused_in_one_sentence(name):
    words, part, argument = NONSENSE[name]
    sentence, got = refused(*words)
    assert part in sentence, sentence
    assert got == argument


def test_bytes_that_are_no_text_are_refused():
    for option in ("--torque", "--thread", "--class", "--condition", "--head"):
        base = {"--thread": b"M10", "--torque": b"5N.m", option: b"\xff\xfe\x80\xc3(" + b"\xf0\x9f"}
        done = subprocess.run([PROGRAM.encode(), b"clamp", b"--json",
                               *[part for key, value in base.items() for part in (key.encode(), value)]],
                              capture_output=True, timeout=60)
        assert done.returncode == 2, (option, done)
        assert "message" in strictly(done.stdout.decode("utf-8"))["error"]  # the answer itself is UTF-8


def test_random_words_never_break_the_program():
    rng = random.Random(7)
    pieces = ["clamp", "torque", "turn", "curve", "reach", "free", "--loosened", "--extension", "--layer", "--csv", "eval",
              "identify", "--torque", "--thread", "--socket", "-5N.m", "M10", "M10x9", "16mm",
              "--json", "--", "-", "--=", "{}", "[1,2]", "%s%n", "1e308kN", "--share", "5", "nut_factor", "torque=1N.m",
              "\u00d7", "", " ", "--file", "--help-me", "-x", "=", "pitch=\u221e"]
    for _ in range(150):
        words = [rng.choice(pieces) for _ in range(rng.randrange(1, 7))]
        done = run(*words)
        assert done.returncode in (0, 2), (words, done)
        assert done.returncode == 0 or done.stderr.startswith(b"tauten: "), words
        assert b"nan" not in done.stdout.lower() or done.returncode == 0, words


# Job files


def write(folder, content):
    path = folder / "job.toml"
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    return str(path)


GOOD = '[[joint]]\nname = "good"\nthread = "M10"\nclass = "8.8"\ntorque = "30N.m"\n'

BAD_FILES = {
    "empty": (b"", "holds no joint"),
    "only comments": (b"# nothing\n", "holds no joint"),
    "binary": (bytes(range(256)) * 16, "is not text"),
    "garbage": (b"\xff\xfe\xfd[[joint]]\n", "is not valid TOML"),
    "broken": (b"[[joint]\nname = \n", "is not valid TOML in line 1"),
    "key twice": (b'[[joint]]\nname = "a"\nname = "b"\n', "is not valid TOML in line 3"),
    "10 MB": (b"# large\n" * 1_250_000, "is larger than 1 MB"),
    "joint is a text": (b'joint = "M10"\n', "holds no joint"),
    "joint is a table": (b'[joint]\nthread = "M10"\n', "holds no joint"),
    "unknown top": (b'titel = "x"\n' + GOOD.encode(), "unknown key 'titel'"),
    "deep": (b"a = " + b"[" * 5000 + b"]" * 5000, "is not valid TOML"),
}


@pytest.mark.parametrize("name", BAD_FILES)
def test_a_file_that_cannot_be_used_is_refused(name, tmp_path):
    content, part = BAD_FILES[name]
    sentence, argument = refused("clamp", "--file", write(tmp_path, content))
    assert part in sentence and argument == "file", sentence


def test_a_file_that_is_not_there_or_no_file_is_refused(tmp_path):
    assert "cannot be read" in refused("clamp", "--file", str(tmp_path / "missing.toml"))[0]
    assert "is a folder" in refused("clamp", "--file", str(tmp_path))[0]
    (tmp_path / "endless.toml").symlink_to("/dev/zero")
    assert "larger than 1 MB" in refused("clamp", "--file", str(tmp_path / "endless.toml"))[0]
    assert "is not text" in refused("clamp", "--file", "/dev/zero")[0]


BAD_JOINTS = {
    "unknown key": ('thred = "M10"\ntorque = "9N.m"', "did you mean thread?", "'thred'"),
    "unlike any key": ('zzzzzzzz = 1', "the keys are torque, specified, name, socket, key, thread", "'zzzzzzzz'"),
    "wrong type": ('thread = "M10"\ntorque = [1, 2]', "torque is a list, but must be a text", "torque"),
    "boolean": ('thread = true\ntorque = "9N.m"', "thread is true or false", "thread"),
    "date": ('thread = 1979-05-27\ntorque = "9N.m"', "thread is a date or time", "thread"),
    "table": ('torque = "9N.m"\nthread = {a = 1}', "thread is a table", "thread"),
    "bare number": ('thread = "M10"\ntorque = 48', "torque '48' has no unit", "torque"),
    "nan": ('thread = "M10"\ntorque = nan', "finite number", "torque"),
    "inf": ('thread = "M10"\nshare = inf', "finite number", "share"),
    "negative": ('thread = "M10"\ntorque = "-5N.m"', "torque is -5 N.m", "torque"),
    "no torque": ('thread = "M10"', "torque is missing", "torque"),
    "torque and load": ('thread = "M10"\ntorque = "9N.m"\nclamp-load = "9kN"', "leave one of them out", "clamp-load"),
    "unknown class": ('thread = "M10"\ntorque = "9N.m"\nclass = "9.9.9"', "the classes are", "class"),
}


@pytest.mark.parametrize("name", BAD_JOINTS)
def test_one_bad_joint_does_not_spoil_the_others(name, tmp_path):
    content, part, argument = BAD_JOINTS[name]
    path = write(tmp_path, f'{GOOD}[[joint]]\nname = "bad one"\n{content}\n\n{GOOD.replace("good", "also good")}')
    done = run("clamp", "--file", path)
    assert done.returncode == 3
    sentence = done.stderr.decode()
    assert sentence.startswith("tauten: ") and sentence.count("\n") == 1
    assert "job.toml" in sentence and "joint 2 'bad one'" in sentence and part in sentence, sentence
    page = done.stdout.decode()
    assert "also good" in page and "error" in page
    in_json = run("clamp", "--file", path, "--json")
    assert in_json.returncode == 3
    joints = strictly(in_json.stdout)["joints"]
    assert [j["name"] for j in joints] == ["good", "bad one", "also good"]
    assert joints[1]["error"]["argument"] == argument and part in joints[1]["error"]["message"]
    assert joints[0]["candidates"][0]["clamp_load"] == joints[2]["candidates"][0]["clamp_load"]


def test_a_file_says_the_same_as_the_options(tmp_path):
    words = {"socket": "24mm", "class": "10.9", "torque": "180N.m", "condition": "zinc", "face": "oiled", "wrench-accuracy": "3%",
             "prevailing-torque": "4N.m", "shank-torque": "1N.m", "thread-friction": "0.10..0.12..0.15", "torsion": "elastic",
             "bearing-diameter": "20mm", "share": "70%", "specified": "dry", "name": "coupling"}
    path = write(tmp_path, "[[joint]]\n" + "".join(f'{key} = "{value}"\n' for key, value in words.items()))
    from_file = answer("clamp", "--file", path)["joints"][0]
    assert from_file == answer("clamp", *[part for key, value in words.items() for part in (f"--{key}", value)])


def test_numbers_are_fine_in_a_file_where_no_unit_belongs(tmp_path):
    path = write(tmp_path, '[[joint]]\nthread = "M10"\nclass = 8.8\nclamp-load = "20kN"\nwrench-accuracy = 0.03\nthread-friction = 0.12\n')
    joint = answer("clamp", "--file", path)["joints"][0]
    assert joint["wrench_accuracy"] == 0.03 and joint["candidates"][0]["property_class"] == "8.8"
    assert joint["candidates"][0]["clamp_load"]["nominal"] == pytest.approx(20 * KN)


def test_the_demo_shows_every_verdict_and_says_that_it_is_invented():
    assert "invented" in "".join(DEMO.read_text(encoding="utf-8").splitlines(True)[:4])
    joints = answer("clamp", "--file", str(DEMO))["joints"]
    assert len(joints) >= 10
    verdicts = {j["candidates"][0]["verdict"] for j in joints}
    assert verdicts == {"slack", "may be slack", "within limits", "may yield", "yields", "may break", "breaks"}
    codes = {n["code"] for j in joints for n in j["notices"] + j["candidates"][0]["notices"]}
    assert {"unmarked_head", "galling", "friction_not_as_specified", "stretched", "may_have_yielded", "may_break"} <= codes
    page = said("clamp", "--file", str(DEMO))
    for joint in joints:
        assert joint["name"] in page
    assert page.index("cable bracket") < page.index("1 pump feet")  # one table first, then what is to be said


# The page


@pytest.mark.parametrize("words", [
    ["clamp", "--socket", "24mm", "--class", "8.8", "--torque", "130N.m", "--all"],
    ["clamp", "--thread", "M16", "--class", "8.8 structural", "--torque", "130N.m"],
    ["clamp", "--file", str(DEMO)],
    ["torque", "--socket", "13mm", "--all"],
    ["identify", "--socket", "18mm", "--all"],
    ["formulas"],
    ["formulas", "tightening_torque"],
    *[[verb, "--help"] for verb in VERBS],
    ["reach", "--torque", "130N.m", "--extension", "100mm@30deg", "--bar", "round:250mm:12mm", "--multiplier-ratio", "4"],
    ["free", "--thread", "M16", "--class", "8.8", "--rust", "heavy_rust", "--loosened", "freed:150N.m", "--handle-length",
     "600mm"],
    ["turn", "--thread", "M16", "--layer", "20mm:grey_cast_iron", "--layer", "35mm", "--working-load", "15kN", "--structural",
     "--bar", "square:250mm:12.7mm"],
    ["curve", "--thread", "M20", "--class", "10.9", "--grip", "90mm", "--snug-torque", "80N.m"],
    ["--help"],
])
def test_pages_fit_a_hundred_columns(words):
    for line in said(*words).splitlines():
        assert len(line) <= 100, line


def test_help_tells_the_exit_codes():
    for words in (["--help"], ["clamp", "--help"]):
        assert "Exit codes: 0 all well; 2 invalid input" in said(*words)


def test_help_lists_the_words_that_an_option_takes():
    for verb in ("clamp", "torque"):
        text = " ".join(said(verb, "--help").split())
        assert "specified, condition, face: dry, oiled, " in text and "class: 3.6, 4.6, " in text
        assert "torsion: plastic, elastic." in text
    assert "loosened: freed, sheared, rounded, unmoved." in said("free", "--help")


# What was wrong once


def test_a_bolt_that_breaks_shows_no_clamp_load():
    words = ["clamp", "--thread", "M10", "--class", "8.8", "--torque", "150N.m", "--condition", "oiled"]
    got = answer(*words)["candidates"][0]
    assert got["verdict"] == "breaks" and got["chance_of_breaking"] > 0.99
    for band in ("clamp_load", "worst_case", "proof_share"):
        assert got[band] == {"low": None, "nominal": None, "high": None}
    assert got["yield_utilisation"]["high"] > 1 and got["suggested_torque"] > 30
    page = said(*words)
    row, = [line for line in page.splitlines() if line.endswith("breaks") and line.startswith("1 ")]
    assert len(re.findall(r" - ", row)) == 4 and "no clamp load" in page
    mark = '"-": the bolt breaks'
    assert mark in said("clamp", "--file", str(DEMO)) and mark not in said(*words[:-4], "--torque", "30N.m")


def test_no_page_ever_shows_nan():
    for prevailing in (0, 3, 9, 12, 25, 60):
        for rest in (["clamp", "--torque", "27N.m"], ["torque"], ["torque", "--clamp-load", "0.2kN"], ["torque", "--share", "60%"]):
            done = run(*rest, "--thread", "M10", "--class", "4.6", "--prevailing-torque", f"{prevailing}N.m")
            assert done.returncode in (0, 2) and b"nan" not in done.stdout, (prevailing, rest)
            assert (done.returncode == 2) == done.stderr.startswith(b"tauten: "), (prevailing, rest)


def test_a_refusal_shows_how_its_own_argument_is_written():
    base = ["clamp", "--thread", "M10", "--torque", "5N.m"]
    for option, example in (("share", "0.75 or 75%"), ("wrench-accuracy", "0.04 or 4%")):
        for value in ("much", "300%"):
            assert f"like {example}" in refused(*base, f"--{option}", value)[0]
    assert "0.12" in refused(*base, "--thread-friction", "much")[0]
    assert "like 48N.m" in refused("clamp", "--thread", "M10", "--torque", "5")[0]


def test_long_lists_of_standards_stay_on_their_line():
    words = ["clamp", "--socket", "19mm", "--class", "8.8", "--torque", "60N.m"]
    longest = max((c["head"] for c in answer(*words)["candidates"]), key=len)
    assert longest.count(",") >= 3
    page = said(*words, "--all")
    assert longest not in page and f"{longest.split(',')[0]} and {longest.count(',')} more" in page
    # One line to a fastener.
    rows = [line for line in page.split("\nLow to high")[0].splitlines() if re.match(r" *\d+  M", line)]
    assert len(rows) == len(answer(*words)["candidates"])
    assert "and 2 more" not in said("identify", "--socket", "24mm")  # three standards fit


def on_a_terminal(environment):
    master, slave = pty.openpty()
    done = run("clamp", "--thread", "M10", "--torque", "30N.m", stdout=slave, env={**os.environ, **environment})
    os.close(slave)
    text = os.read(master, 100_000)
    os.close(master)
    assert done.returncode == 0
    return text


def test_colour_on_a_terminal_only_and_only_if_wanted():
    assert b"\033[" not in run("clamp", "--thread", "M10", "--torque", "30N.m").stdout
    assert b"\033[" in on_a_terminal({"TERM": "xterm", "NO_COLOR": ""})
    assert b"\033[" not in on_a_terminal({"TERM": "xterm", "NO_COLOR": "1"})
    assert b"\033[" not in on_a_terminal({"TERM": "dumb", "NO_COLOR": ""})


def test_output_that_does_not_arrive_is_an_error():
    words = ["formulas", "--json"]
    if os.path.exists("/dev/full"):
        with open("/dev/full", "wb") as full:
            done = run(*words, stdout=full)
        assert done.returncode == 1 and b"could not be written" in done.stderr
    reader, writer = os.pipe()
    os.close(reader)
    done = run(*words, stdout=writer)
    os.close(writer)
    assert done.returncode == 1 and not done.stderr  # who has gone has what was wanted, and hears no more
    closed = subprocess.run(["sh", "-c", '"$0" --version >&-', PROGRAM], capture_output=True, timeout=60)
    assert closed.returncode == 1 and b"could not be written" in closed.stderr


# Completion


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish"])
def test_completion_scripts_are_understood_by_their_shell(shell, tmp_path):
    script = tmp_path / "script"
    script.write_text(said("completion", shell), encoding="utf-8")
    if not shutil.which(shell):
        assert shell != "bash"
        pytest.skip(f"{shell} is not installed")
    done = subprocess.run([shell, "-n", str(script)], capture_output=True, text=True, timeout=60)
    assert done.returncode == 0 and not done.stderr, done.stderr


def completed(*words):
    """What bash offers for the last word."""
    script = said("completion", "bash") + f"""
COMP_WORDS=({' '.join(f"'{w}'" for w in words)})
COMP_CWORD={len(words) - 1}
_tauten
printf '%s\\n' "${{COMPREPLY[@]}}"
"""
    done = subprocess.run(["bash", "-c", script], capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr
    return done.stdout.split()


def test_the_manual_lists_every_verb():
    listed = re.findall(r"^  (\w+) {2,}\w", said("--help").partition("Subcommands:")[2], re.M)
    manual = (pathlib.Path(__file__).resolve().parents[2] / "docs/command-line.md").read_text(encoding="utf-8")
    assert len(listed) > 20 and re.findall(r"^\| `(\w+)` \|", manual.partition("\n## ")[0], re.M) == listed


def test_completion_offers_what_the_program_has(tmp_path):
    assert set(VERBS) <= set(completed("tauten", ""))
    assert completed("tauten", "cl") == ["clamp"]
    for verb in VERBS:
        options = set(re.findall(r"^ +(?:-h,)?(--[a-z-]+)", said(verb, "--help"), re.M))
        assert options and options <= set(completed("tauten", verb, "--")), verb
    assert completed("tauten", "clamp", "--condition", "oi") == ["oiled"]
    assert completed("tauten", "explain", "clamp", "--torsion", "e") == ["elastic"]
    assert completed("tauten", "free", "--rust", "heavy") == ["heavy_rust"]
    assert completed("tauten", "turn", "--kind", "tap") == ["tapped_hole"]
    assert completed("tauten", "curve", "--plate-model", "fr") == ["frustum"]
    assert completed("tauten", "turn", "--condition", "oi") == ["oiled"]
    for verb in ("clamp", "turn", "curve"):
        assert completed("tauten", verb, "--class", "12") == ["12.9"], verb
    assert completed("tauten", "eval", "stress_area") == ["stress_area", "stress_area_unified"]
    (tmp_path / "job.toml").touch()
    assert completed("tauten", "clamp", "--file", f"{tmp_path}/j") == [f"{tmp_path}/job.toml"]
    assert completed("tauten", "reach", "--svg", f"{tmp_path}/j") == [f"{tmp_path}/job.toml"]
