"""What a question takes as an argument it takes as a column as well, and the two mean the same."""
import inspect
import json
import os
import random
import subprocess
import warnings

import numpy as np
import pytest

import tauten
from tauten import _core

QUESTIONS = {"clamp": tauten.clamp, "torque": tauten.torque_for, "turn": tauten.turn, "reach": tauten.reach,
             "free": tauten.free_joint}
# What a question needs beside the argument that is tried.
LEAST = {"clamp": dict(thread="M16", torque=130.0), "torque": dict(thread="M16"), "turn": dict(thread="M16", grip=0.055),
         "reach": dict(torque=130.0), "free": dict(thread="M16", property_class="8.8", limit=200.0, trials=2000)}
# A table may call its rows as it likes: the name of a joint changes nothing in an answer.
NO_PART_OF_THE_QUESTION = {"name"}
SAID_ONCE = {"jobs", "columns"}
PROGRAM = os.environ.get("TAUTEN_PROGRAM")


def silent(function, *args, **options):
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        return function(*args, **options)


def arguments():
    for verb, function in QUESTIONS.items():
        for name in inspect.signature(function).parameters:
            if name != "table":
                yield verb, name


@pytest.mark.parametrize("verb, name", arguments())
def test_every_argument_is_a_column_or_is_refused_as_one(verb, name):
    if name in NO_PART_OF_THE_QUESTION:
        column = {key: [value] for key, value in LEAST[verb].items()}
        plain, named = (silent(QUESTIONS[verb], table) for table in (column, {**column, name: ["pump foot"]}))
        assert all(np.array_equal(plain[figure], named[figure], equal_nan=plain[figure].dtype.kind == "f")
                   for figure in plain)
    elif name in SAID_ONCE:
        with pytest.raises(tauten.Error, match=f"column '?\"?{name}'?\"? cannot differ from row to row") as problem:
            QUESTIONS[verb]({**{key: [value] for key, value in LEAST[verb].items()}, name: [1]})
        assert problem.value.argument == name
    else:
        assert _core.key_of_column(verb, name) is not None


def same(figure, one):
    return figure == one or (figure != figure and one != one)


@pytest.mark.parametrize("name, values", [
    ("surroundings", ["fire_or_burst", "adhesive"]), ("surroundings", ["rubber_or_plastic", "zinc_or_cadmium"]),
    ("quenched", [True, False]), ("width_across_flats", [0.024, 0.027]),
    ("width_across_flats", ["24mm", "27mm"]),
])
def test_a_column_of_free_joint_says_what_the_argument_says(name, values):
    fixed = dict(thread="M16", property_class="8.8", rust="heavy_rust", limit=230, trials=20_000)
    check_free(name, values, fixed)


def test_the_torsion_ratio_is_a_column():
    check_free("torsion_ratio", [0.5, 0.8],
               dict(thread="M16", tensile_strength=800e6, yield_strength=640e6, rust="heavy_rust", trials=20_000))


def member(answer, figure):
    """\\return what a column of the table is called for: chances_free is chances.free"""
    if hasattr(answer, figure):
        return getattr(answer, figure)
    places = [place for place, letter in enumerate(figure) if letter == "_" and hasattr(answer, figure[:place])]
    return member(getattr(answer, figure[:places[-1]]), figure[places[-1] + 1:]) if places else None


def check_free(name, values, fixed):
    table = silent(tauten.free_joint, {name: values}, **fixed)
    for row, value in enumerate(values):
        one = tauten.free_joint(**fixed, **{name: value})
        codes = {notice.code for notice in [*one.notices, *one.after.notices]}
        assert set(table["warnings"][row].split(";")) <= codes  # the standing cautions are not repeated in a table
        compared = 0
        for figure, column in table.items():
            known = member(one, figure)
            if isinstance(known, int | float):
                assert same(column[row], known), figure
                compared += 1
        assert compared > 20  # the guard against names that fit no member
    assert any(not same(column[0], column[1]) for column in table.values())


def test_no_heat_is_planned_beside_fuel_in_the_row_that_says_so_and_only_there():
    fixed = dict(thread="M16", property_class="8.8", rust="heavy_rust", trials=20_000)
    spoken = ["", "fire_or_burst", None, "fire-or-burst", "adhesive", "adhesive;fire_or_burst"]
    table = silent(tauten.free_joint, {"surroundings": spoken}, **fixed)
    for row, words in enumerate(spoken):
        near_fuel = "fire" in (words or "")
        one = tauten.free_joint(**fixed, surroundings=words.split(";") if words else None)
        heats = any(use.aid == "heat" for step in one.steps for use in step.aids)
        assert heats != near_fuel
        assert ("heat_forbidden" in table["warnings"][row].split(";")) == near_fuel


def test_heat_that_was_used_beside_fuel_is_refused_in_that_row():
    fixed = dict(thread="M16", property_class="8.8", limit="200N.m", aids="heat:150K", trials=2000)
    with pytest.warns(tauten.DomainWarning, match="1 of 2 rows"):
        table = tauten.free_joint({"surroundings": ["fire_or_burst", ""]}, **fixed)
    with pytest.raises(tauten.Error) as one:
        tauten.free_joint(**fixed, surroundings="fire_or_burst")
    assert table["error"].tolist() == [str(one.value), ""]


@pytest.mark.parametrize("name", ["fire_or_burst", "rubber_or_plastic", "zinc_or_cadmium", "adhesive"])
def test_a_column_that_is_called_like_a_word_of_the_surroundings_is_refused(name):
    fixed = dict(thread="M16", property_class="8.8", limit="200N.m", trials=2000)
    for spelling in (name, name.replace("_", "-")):
        with pytest.raises(tauten.Error, match="has the name of a word of surroundings; write it into a column surroundings"):
            tauten.free_joint({spelling: [True, False]}, **fixed)
    with pytest.raises(TypeError, match=name):
        tauten.free_joint(**fixed, **{name: True})


@pytest.mark.parametrize("function, table", [
    (tauten.free_joint, {"thread": ["M16"], "wrench_accuracy": [0.1], "held": [1.0], "held-untreated": [False], "held_untreated": [True]}),
    (tauten.clamp, {"thread": ["M16"], "torque": [130], "more_faces": ["26mm:oiled"], "more-face": ["26mm:dry"]}),
])
def test_one_key_under_two_names_is_refused(function, table):
    with pytest.raises(tauten.Error, match="twice, or under two names"):
        function(table)


def test_a_class_and_a_torsion_ratio_exclude_each_other():
    with pytest.warns(tauten.DomainWarning):
        table = tauten.free_joint({"torsion_ratio": [0.7]}, thread="M16", property_class="8.8")
    assert "class and torsion-ratio exclude each other" in table["error"][0]
    with pytest.raises(tauten.Error, match="exclude each other"):
        tauten.free_joint(thread="M16", property_class="8.8", torsion_ratio=0.7)


def test_more_faces_are_a_column():
    fixed = dict(property_class="8.8", condition="oiled")
    texts = ["30mm:dry", "20mm:moly-paste;40mm:dry", "", None]
    lists = [[("30mm", "dry")], [("20mm", "moly-paste"), ("40mm", "dry")], None, None]
    for function, asked in ((tauten.clamp, dict(torque=130)), (tauten.torque_for, dict(clamp_load="40kN"))):
        table = silent(function, {"thread": ["M16"] * 4, "more_faces": texts}, **asked, **fixed,
                       columns=["clamp_load_nominal", "clamp_load_high", "torque"])
        for row, faces in enumerate(lists):
            bolt = function(thread="M16", more_faces=faces, **asked, **fixed).candidates[0]
            found = [table[name][row] for name in ("clamp_load_nominal", "clamp_load_high", "torque")]
            assert found == [bolt.clamp_load.nominal, bolt.clamp_load.high, bolt.torque]
        assert table["clamp_load_nominal" if function is tauten.clamp else "torque"][1] != table[
            "clamp_load_nominal" if function is tauten.clamp else "torque"][2]
    for_all = silent(tauten.clamp, {"thread": ["M16"]}, torque=130, more_faces=texts[1], **fixed)["clamp_load_nominal"][0]
    assert for_all == tauten.clamp(thread="M16", torque=130, more_faces=lists[1], **fixed).candidates[0].clamp_load.nominal
    with pytest.raises(TypeError, match="more_faces takes one text.*several stand in one text with semicolons"):
        tauten.clamp({"thread": ["M16"]}, torque=130, more_faces=lists[1], **fixed)
    with pytest.warns(tauten.DomainWarning):
        wrong = tauten.clamp({"more_faces": ["26mm", "0mm:dry", "26mm:wet paint", [("26mm", "dry")]]}, thread="M16",
                             torque=130)
    for sentence, words in zip(wrong["error"], ["write its effective diameter and condition like 26mm:oiled",
                                                "more-face is 0 mm, but must be above 0", "more-face",
                                                "several stand in one text with semicolons"]):
        assert words in sentence


# Zero is refused or means the same, said once or in a row.

def numbers():
    """Every argument that is a key; those that take no number are left when they say so."""
    for verb, name in arguments():
        if name in SAID_ONCE | NO_PART_OF_THE_QUESTION or name in ("trials", "seed"):
            continue
        unit = _core.unit_of_column(verb, name)
        if unit is None:
            continue
        yield verb, name


def said_alike(verb, name, value):
    """\\return both answers, or both errors, of one argument with a number: alone and as a column"""
    fixed = {key: said for key, said in LEAST[verb].items() if key != name}
    for partner, value_of in (("years", "first_year_loss"), ("first_year_loss", "years")):
        if verb == "free" and name == partner:
            fixed[value_of] = 5e-5 if value_of == "first_year_loss" else 10.0
    if verb == "free" and name in ("diameter", "pitch"):
        fixed.update(diameter=0.016, pitch=0.002, width_across_flats=0.024), fixed.pop("thread"), fixed.pop(name)
    if verb == "free" and name in ("tensile_strength", "yield_strength", "torsion_ratio"):
        fixed.update(tensile_strength=800e6, yield_strength=640e6), fixed.pop("property_class"), fixed.pop(name, None)
    if verb == "free" and name in ("hand_force", "hand_variation"):
        fixed["handle_length"] = 0.4
    if verb == "reach" and name in ("multiplier_efficiency", "efficiency_range", "reaction_arm"):
        fixed["multiplier_ratio"] = 4.0
    if verb == "reach" and name == "setting":
        fixed.pop("torque")
    if name in ("socket", "key") and verb in ("clamp", "torque"):
        fixed.pop("thread")
    if verb == "turn" and name in ("length", "grip"):
        fixed["grip"] = 0.055
        fixed.pop(name, None)
    if verb == "turn" and name == "utilisation":
        fixed["snug_torque"] = 40.0
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", tauten.DomainWarning)
        table = QUESTIONS[verb]({name: [value]}, **fixed)
    try:
        alone = QUESTIONS[verb](**fixed, **{name: value})
    except tauten.Error as error:
        return str(error), table["error"][0], None, table
    return "", table["error"][0], alone, table


PLAIN = {"clamp": lambda a: a.candidates[0].clamp_load.nominal, "torque": lambda a: a.candidates[0].torque,
         "turn": lambda a: a.angle, "reach": lambda a: a.setting, "free": lambda a: a.stop_at}
FIGURE = {"clamp": "clamp_load_nominal", "torque": "torque", "turn": "angle", "reach": "setting", "free": "stop_at"}
# The words in which the command line names an argument.
SPELLINGS = {"property_class": "class"}


def reason(sentence, name):
    """A sentence without the spelling of the argument: only what is wrong with it."""
    text = sentence.split("; a plain number is in ")[0].replace("-", "_")  # Python tells of plain numbers what a table cannot
    for spelling in (name, SPELLINGS.get(name, name)):
        if text.startswith(spelling + " "):
            return text[len(spelling) + 1:]
    return text


@pytest.mark.parametrize("verb, name", numbers())
def test_zero_and_other_numbers_mean_the_same_alone_and_in_a_row(verb, name):
    draw = random.Random(f"{verb} {name}")
    tried = [0.0, -1.0, *(draw.uniform(0, 2) * 10.0 ** draw.choice([-3, -2, -1, 0, 1, 2]) for _ in range(6))]
    for value in tried:
        value = round(value) if name in ("bit", "washers", "sloping_faces") else value
        try:
            alone_error, row_error, alone, table = said_alike(verb, name, value)
        except TypeError:  # no number goes there: as for a word, in a row and alone
            return
        assert bool(alone_error) == bool(row_error), (value, alone_error, row_error)
        if not alone_error:
            assert same(table[FIGURE[verb]][0], PLAIN[verb](alone)), value
        elif value == 0:
            assert reason(alone_error, name) == reason(row_error, name)


@pytest.mark.parametrize("verb, name", [
    *(("free", name) for name in ("engaged_length", "bearing_diameter", "nut_diameter", "nut_yield", "head_height",
                                  "drive_square", "handle_length")),
    *(("reach", name) for name in ("scale_high", "division", "reaction_arm", "drive_square"))])
def test_a_zero_that_cannot_be_is_not_taken_for_not_known(verb, name):
    alone_error, row_error, _, _ = said_alike(verb, name, 0.0)
    assert "is 0" in alone_error and "but must be above 0; write it like" in alone_error
    assert reason(alone_error, name) == reason(row_error, name)


@pytest.mark.skipif(PROGRAM is None, reason="needs the command line program")
def test_the_command_line_says_them_too(tmp_path):
    def run(*words):
        return subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=60)
    free = "free --json --thread M16 --class 8.8 --rust heavy_rust --trials 20000".split()
    plain, near = (json.loads(run(*free, *more).stdout) for more in ([], ["--surroundings", "fire_or_burst"]))
    assert near != plain
    fixed = dict(thread="M16", property_class="8.8", rust="heavy_rust", trials=20000)
    assert json.loads(tauten.free_joint(**fixed, surroundings="fire_or_burst").to_json()) == near
    table = tmp_path / "flange.csv"
    table.write_text("thread,class,rust,surroundings\nM16,8.8,heavy_rust,adhesive;fire_or_burst\nM16,8.8,heavy_rust,\n")
    rows = run("free", "--trials", "20000", "--file", str(table)).stdout.splitlines()
    assert ["heat_forbidden" in row for row in rows[1:]] == [True, False]
    faces = tmp_path / "feet.toml"
    faces.write_text('[[joint]]\nthread = "M16"\nclass = "8.8"\ntorque = "130N.m"\nmore-face = ["26mm:oiled", "30mm:dry"]\n')
    bolt = tauten.clamp(thread="M16", property_class="8.8", torque=130,
                        more_faces=[("26mm", "oiled"), ("30mm", "dry")]).candidates[0]
    listed = json.loads(run("clamp", "--json", "--file", str(faces)).stdout)
    assert str(bolt.clamp_load.nominal) in json.dumps(listed)
