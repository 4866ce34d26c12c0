"""Tightening by angle from Python and the command line: plain arithmetic, an independent plastic section, one answer."""
import csv
import io
import json
import math
import os
import shlex
import subprocess

import numpy as np
import pytest

import tauten

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
MM, KN = 1e-3, 1e3
FOOT = dict(thread="M16", property_class="8.8", condition="oiled", snug_torque="60N.m",
            layers=[("20mm", "grey cast iron", "70mm"), ("35mm", "steel", "70mm")])
SAID = ("--thread M16 --class 8.8 --condition oiled --snug-torque 60N.m --layer 20mm:grey_cast_iron:70mm "
        "--layer 35mm:steel:70mm")
SURE = dict(thread_friction=0.12, bearing_friction=0.12, bearing_diameter="20mm")


def program(*words):
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    run = subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=60)
    assert run.returncode == 0, run.stderr
    return run.stdout


def refused(call, argument, **arguments):
    with pytest.raises(tauten.Error) as caught:
        call(**arguments)
    assert caught.value.argument == argument, caught.value


# ---- one answer ---------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("words, arguments", [
    ("--angle 60deg", dict(angle="60deg")), ("", {}), ("--share 0.6 --washers 2", dict(share=0.6, washers=2)),
    ("--utilisation 90% --bar square:250mm:12.7mm --bar round:100mm:16mm",
     dict(utilisation=0.9, bars=[("square", "250mm", "12.7mm"), ("round", "100mm", "16mm")])),
    ("--angle 40deg --at-handle --bar round:300mm:14mm --structural --sloping-faces 1",
     dict(angle="40deg", angle_at_handle=True, bars=[("round", 0.3, "14mm")], structural=True, sloping_faces=1)),
    ("--clamp-load 50kN --working-load 15kN --load-introduction 0.5 --bolt-warming 60K --plate-warming 80K --neighbours 2kN "
     "--creep-share 10% --roughness 0.016mm --load-across --wrench-accuracy 3% --angle-tolerance 2deg --resilience-tolerance 8% "
     "--strength-surplus 15% --prevailing-torque 4N.m --face dry --length 90mm --plate-model frustum --name foot",
     dict(clamp_load="50kN", working_load="15kN", load_introduction=0.5, bolt_warming="60K", plate_warming=80,
          neighbours="2kN", creep_share=0.1, roughness="0.016mm", load_across=True, wrench_accuracy=0.03,
          angle_tolerance="2deg", resilience_tolerance=0.08, strength_surplus=0.15, prevailing_torque=4,
          face_condition="dry", length="90mm", plate_model="frustum", name="foot")),
    ("--kind tapped_hole --tapped-material aluminium --head \"ISO 4762\" --thread-friction 0.1..0.12..0.16 "
     "--bearing-friction 0.1 --bearing-diameter 20mm",
     dict(kind="tapped_hole", tapped_material="aluminium", head="ISO 4762", thread_friction=(0.1, 0.12, 0.16),
          bearing_friction=0.1, bearing_diameter="20mm")),
    ("--shank-diameter 13mm --kind stud", dict(shank_diameter="13mm", kind="stud")),
])
def test_turn_same_as_command_line(words, arguments):
    expected = json.loads(program("turn", *shlex.split(SAID), *shlex.split(words), "--json"))
    assert json.loads(tauten.turn(**FOOT, **arguments).to_json()) == expected


def test_curve_same_as_command_line_and_csv():
    drawn = tauten.curve(**FOOT, end_angle="90deg", points=50, slope_share=0.4)
    words = [*shlex.split(SAID), "--end-angle", "90deg", "--points", "50", "--slope-share", "40%"]
    assert json.loads(program("curve", *words, "--json")) == json.loads(drawn.to_json())
    rows = list(csv.reader(io.StringIO(program("curve", *words, "--csv"))))
    assert rows[0][:4] == ["friction", "angle [rad]", "torque [N.m]", "preload [N]"]
    assert len(rows) == 1 + 3 * 50 and [rows[1][0], rows[51][0], rows[101][0]] == ["low", "nominal", "high"]
    columns = drawn.nominal.columns()
    for place, title in enumerate(rows[0][1:], 1):
        got = np.array([float(row[place]) for row in rows[51:101]])
        assert np.array_equal(got, columns[title.split(" ")[0]]), title


def test_csv_and_json_exclude_each_other():
    program("--version")
    run = subprocess.run([PROGRAM, "curve", *shlex.split(SAID), "--csv", "--json"], capture_output=True, text=True)
    assert run.returncode == 2 and json.loads(run.stdout)["error"]["argument"] == "csv"


def test_pages_say_what_is_needed():
    page = program("turn", *shlex.split(SAID), "--angle", "60deg", "--bar", "square:250mm:12.7mm", "--structural")
    answer = tauten.turn(angle="60deg", bars=[("square", "250mm", "12.7mm")], **FOOT)
    low, nominal, high = (load / KN for load in answer.clamp_load)
    # Line 1: setting and angle, clamp load with its band, verdict.
    assert " ".join(page.split("\n\n")[0].split()) == (
        f"M16 8.8, snug at 60 N.m, turned by 60 deg ({math.degrees(answer.handle_angle):.3g} deg at the handle): clamp load "
        f"{nominal:.3g} kN ({low:.3g} to {high:.3g} kN in 19 of 20 cases). Yields as intended; use the bolt once only.")
    for words in (f"{math.degrees(answer.handle_angle):.3g} deg, as the bars twist by {math.degrees(answer.tool_twist):.3g} deg",
                  "Use the bolt once only", "turn of the nut", "combined method", "approve a joint for service",
                  "Snug is where all gaps are closed", "The torque at the end of the turn should be"):
        assert words in page, words
    plot = program("curve", *shlex.split(SAID))
    for words in ("angle from snug in deg", "preload in kN", "F first yield", "Y yield point", "E elongation used up"):
        assert words in plot, words
    picture = plot[plot.index("preload in kN"):plot.index("\nMark")]
    assert {"F", "Y", "E"} <= set("".join(line.split("|", 1)[-1].split("+", 1)[-1] for line in picture.splitlines()[1:19]))


def test_no_load_is_named_of_a_bolt_that_may_break():
    page = program("turn", *shlex.split(SAID), "--angle", "450deg")
    first = page.splitlines()[0]
    assert first == "M16 8.8, snug at 60 N.m, turned by 450 deg: no clamp load is given. Necks; do not turn so far."
    assert "Do not turn so far: the bolt may neck and break." in " ".join(page.split())
    for title in ("clamp load", "of the proof load", "left after all losses"):
        row = next(line for line in page.splitlines() if line.startswith(title + " "))
        assert row.split()[-3:] == ["-", "-", "-"], row
    broken = json.loads(program("turn", *shlex.split(SAID), "--angle", "450deg", "--json"))
    assert broken["clamp_load"] == {"low": None, "nominal": None, "high": None} and broken["methods"] == []
    answer = tauten.turn(angle="450deg", **FOOT)
    assert math.isnan(answer.clamp_load.nominal) and answer.may_neck and "necks" in repr(answer)
    assert len(answer._repr_html_()) > 100 and json.loads(answer.to_json()) == broken
    # Nor is one of a structural turn that the bolt may not bear, though it bears the turn that is asked for.
    words = shlex.split("--thread M12 --class 10.9 --head 'ISO 4017' --grip 8mm --condition oiled --snug-torque 20N.m")
    page = program("turn", *words, "--structural")
    row = next(line for line in page.splitlines() if line.startswith("turn of the nut "))
    assert row.split()[-4:] == ["120", "-", "-", "-"] and "may neck and break" in page and "Necks" not in page
    there = json.loads(program("turn", *words, "--structural", "--json"))
    assert there["structural"]["turn_of_nut_load"] == {"low": None, "nominal": None, "high": None}
    by_angle = json.loads(program("turn", *words, "--angle", "120deg", "--angle-tolerance", "30deg", "--json"))
    assert by_angle["verdict"] in ("may neck", "necks")


def test_what_is_said_of_a_bolt_that_may_break_does_not_contradict_it():
    said = dict(thread="M16", property_class="10.9", grip="30mm", snug_torque="50N.m", condition="oiled",
                working_load="200kN", neighbours="200kN")
    codes = {"watch_the_torque", "separates", "working_load", "may_open"}
    assert codes <= {notice.code for notice in tauten.turn(angle="90deg", **said).notices}
    broken = {notice.code for notice in tauten.turn(angle="450deg", **said).notices}
    assert "may_neck" in broken and not codes & broken


def test_the_far_end_of_a_stud_and_a_bolt_without_shank():
    refused(tauten.turn, "washers", thread="M16", grip="40mm", kind="stud", washers=2)
    refused(tauten.turn, "washers", thread="M16", grip="40mm", kind="tapped_hole", washers=2)
    assert len(tauten.turn(thread="M16", grip="40mm", kind="stud", washers=1).joint.layers) == 2
    refused(tauten.turn, "shank_diameter", thread="M16", grip="40mm", head="ISO 4017", shank_diameter="12mm")


# ---- against plain arithmetic and another program of the section --------------------------------------------------

def helix_lever(pitch, pitch_diameter, friction):
    """Torque in the thread per newton: a wedge on a helix, flank angle in the section normal to the thread."""
    slope = math.atan(pitch / (math.pi * pitch_diameter))
    flank = math.atan(math.tan(math.pi / 6) * math.cos(slope))
    return pitch_diameter / 2 * math.tan(slope + math.atan(friction / math.cos(flank)))


def test_turn_by_hand():
    answer = tauten.turn(angle="15deg", length="80mm", **FOOT, **SURE)
    pitch_diameter, root = 16 * MM - 0.649519 * 2 * MM, 16 * MM - 1.226869 * 2 * MM
    thread = helix_lever(2 * MM, pitch_diameter, 0.12)
    lever = thread + 0.12 * 10 * MM
    bolt = (0.9 * 16 + 42) * MM / (205e9 * math.pi / 4 * (16 * MM) ** 2) + 21 * MM / (205e9 * math.pi / 4 * root ** 2)
    assert answer.joint.bolt_resilience == pytest.approx(bolt, rel=1e-5)
    twist = (42 * MM / (16 * MM) ** 4 + 17 * MM / root ** 4) * 32 / math.pi / (205e9 / 2.6)
    per_newton = 2 * math.pi * (bolt + answer.joint.plate_resilience) / (2 * MM) + thread * twist
    load = 60 / lever + math.radians(15) / per_newton
    assert answer.clamp_load.nominal == pytest.approx(load, rel=1e-5)
    assert answer.torque.nominal == pytest.approx(load * lever, rel=1e-5)


def flow(strain, yields=640e6, tensile=800e6, uniform=0.06, early=0.4):
    """Flow stress, as the page on the curve states it, in a form of its own: a ratio of polynomials in strain/uniform."""
    q = np.minimum(strain / uniform, 1)
    drop = (tensile - yields) * (1 + early)
    at = 0.002 / uniform
    bend = (drop / (tensile - yields) * (1 - at) ** 2 - 1) / at
    return tensile - drop * (1 - q) ** 2 / (1 + bend * q)


def explicit_curve(resilience, twist, thread, angles):
    """Preload over angle by the rates of Prandtl and Reuss, stepped forward: no return to the yield surface, no iteration.

    Each ring has its tension and shear; where it flows, the plastic rate follows from the consistency condition. The ratio
    of twist to stretch follows from torque and force keeping the ratio of the thread.
    """
    modulus, shear = 205e9, 205e9 / 2.6
    diameter = 16 * MM - (0.649519 + 1.226869) / 2 * 2 * MM
    length = 17 * MM  # 13 mm of free thread, and half of the 8 mm that stand for the engaged one
    edges = np.linspace(0, diameter / 2, 201)
    radius = np.sqrt((edges[1:] ** 2 + edges[:-1] ** 2) / 2)
    area = math.pi * (edges[1:] ** 2 - edges[:-1] ** 2)
    rest = resilience - length / (modulus * area.sum())
    rest_twist = twist - length / (shear * math.pi / 32 * diameter ** 4)
    tension, around, used = np.zeros((3, radius.size))
    strain = turned = 0.0
    found = [(0, 0)]
    step = 2e-6
    while found[-1][0] < angles[-1]:
        size = np.maximum(np.sqrt(tension ** 2 + 3 * around ** 2), 1)
        flows = size >= flow(used)
        n, m = tension / size, 3 * around / size
        hardening = (flow(used + 1e-7) - flow(used)) / 1e-7
        share = np.where(flows, 1 / (hardening + modulus * n ** 2 + shear * m ** 2), 0)
        # Stress rates for a rate of strain and of twist.
        by_e = np.array([modulus - (modulus * n) ** 2 * share, -modulus * n * shear * m * share])
        by_k = np.array([-modulus * n * shear * m * share, shear - (shear * m) ** 2 * share]) * radius
        force_e, force_k = (area * by_e[0]).sum(), (area * by_k[0]).sum()
        torque_e, torque_k = (area * radius * by_e[1]).sum(), (area * radius * by_k[1]).sum()
        rate = (thread * force_e - torque_e) / (torque_k - thread * force_k)
        used = used + step * share * (modulus * n + shear * m * radius * rate)
        tension = tension + step * (by_e[0] + by_k[0] * rate)
        around = around + step * (by_e[1] + by_k[1] * rate)
        strain, turned = strain + step, turned + step * rate
        force, torque = (area * tension).sum(), (area * radius * around).sum()
        found.append(((rest * force + length * strain) * 2 * math.pi / (2 * MM) + rest_twist * torque + length * turned,
                      force))
    angle, force = np.array(found).T
    return np.interp(angles, angle, force)


def test_curve_against_another_integration():
    drawn = tauten.curve(**{**FOOT, "snug_torque": None}, **SURE, length="80mm", end_angle="100deg", points=400)
    columns = drawn.nominal.columns()
    pitch_diameter, root = 16 * MM - 0.649519 * 2 * MM, 16 * MM - 1.226869 * 2 * MM
    thread = helix_lever(2 * MM, pitch_diameter, 0.12)
    twist = (42 * MM / (16 * MM) ** 4 + 17 * MM / root ** 4) * 32 / math.pi / (205e9 / 2.6)
    degrees = [10, 20, 30, 40, 60, 80]
    other = explicit_curve(drawn.joint.bolt_resilience + drawn.joint.plate_resilience, twist, thread,
                           np.radians(degrees))
    mine = np.interp(np.radians(degrees), columns["angle"], columns["preload"])
    assert mine == pytest.approx(other, rel=1e-3)


def test_energy_of_the_curve_balances():
    for friction in (0.08, 0.14, 0.25):
        energy = tauten.curve(**FOOT, thread_friction=friction, bearing_friction=friction).nominal.energy
        assert energy.torque == pytest.approx(energy.friction + energy.elastic + energy.plastic, rel=1e-3)


# ---- what may be given, and what is refused -----------------------------------------------------------------------

def test_kinds_of_layers():
    said = tauten.turn(**FOOT)
    for layers in ([{"thickness": "20mm", "material": "grey cast iron", "outer_diameter": "70mm"}, (0.035, "steel", 0.07)],
                   [(0.02, "grey_cast_iron", 0.07), {"thickness": 35 * MM, "outer_diameter": 70 * MM}],
                   [{"thickness": 0.02, "elastic_modulus": "110GPa", "outer_diameter": 0.07}, ("35mm", "steel", "70mm")]):
        assert tauten.turn(**{**FOOT, "layers": layers}).clamp_load.as_dict() == said.clamp_load.as_dict()
    assert tauten.turn(**{**FOOT, "layers": ["55mm"]}).clamp_load.as_dict() == \
        tauten.turn(**{**FOOT, "layers": None}, grip="55mm").clamp_load.as_dict()
    assert tauten.turn(**{**FOOT, "thread": tauten.thread("M16"), "property_class": tauten.property_class("8.8")}).angle == \
        said.angle


def test_turn_explains():
    text = tauten.turn(share=0.6, bars=[("square", "250mm", "12.7mm")], **FOOT).explain()
    for words in ("theta = 2*pi*F_M*(delta_S + delta_P)/P", "what the snug torque leaves", "with the twist of the bars",
                  "Preload lost to embedding"):
        assert words in text, words
    assert "\\begin{align*}" in tauten.turn(**FOOT).explain("latex")


@pytest.mark.parametrize("changed, argument", [
    (dict(thread=None), "thread"), (dict(layers=None), "layers"), (dict(layers=[("0mm",)]), "thickness"),
    (dict(layers=[("20mm", "wood")]), "material"), (dict(grip="20mm"), "grip"), (dict(length=0), "length"),
    (dict(length="20mm"), "length"), (dict(snug_torque=0), "snug_torque"), (dict(snug_torque=None, angle="30deg"), "snug_torque"),
    (dict(angle="-30deg"), "angle"), (dict(clamp_load="500kN"), "clamp_load"), (dict(clamp_load="10kN"), "snug_torque"),
    (dict(angle="30deg", share=0.5), "share"), (dict(kind="rivet"), "kind"), (dict(washers=5), "washers"),
    (dict(head="ISO 1"), "head"), (dict(face_condition="butter"), "face_condition"), (dict(condition="butter"), "condition"),
    (dict(layers=[{"thickness": "20mm", "elastic_modulus": "-3GPa"}]), "elastic_modulus"),
    (dict(bars=[("square", 0, 0.01)]), "bar_length"), (dict(strength_surplus=-1), "strength_surplus"),
])
def test_turn_refuses(changed, argument):
    refused(tauten.turn, argument, **{**FOOT, **changed})


def test_curve_refuses():
    refused(tauten.curve, "points", **FOOT, points=1)
    refused(tauten.curve, "snug_torque", **{**FOOT, "snug_torque": "400N.m"})
    refused(tauten.curve, "end_angle", **FOOT, end_angle=0)
    with pytest.raises(TypeError):
        tauten.curve(**FOOT, angle="30deg")
