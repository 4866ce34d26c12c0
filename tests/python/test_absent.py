"""What is given to a question is never taken for "not given": NaN and a zero without meaning are refused, by the name of the
argument. In the cell of a table, and only there, NaN means that nothing is given."""
import math
import pathlib
import re
import warnings

import numpy as np
import pytest
from test_columns import FIGURE, LEAST, QUESTIONS, reason, said_alike

import tauten
from tauten import _core

ROOT = pathlib.Path(__file__).parents[2]
ASKED = {question["name"]: question for question in _core.questions}


def quantities(verbs=ASKED):
    return [(verb, entry["name"]) for verb in verbs for entry in ASKED[verb]["inputs"] if entry["kind"] == "quantity"]


def positive(verbs=ASKED):
    return [(verb, entry["name"]) for verb in verbs for entry in ASKED[verb]["inputs"] if entry["positive"]]


def ask(verb, name, value):
    least = dict(LEAST["turn"] if verb == "curve" else LEAST.get(verb, {}))
    return getattr(tauten, ASKED[verb]["function"])(**{**least, name: value})


def test_there_are_such_inputs_in_every_question():
    assert set(ASKED) - {verb for verb, _ in quantities()} <= {"thread"}  # which is asked for by names alone
    assert len(quantities()) > 80 and len(positive()) > 40


@pytest.mark.parametrize("verb, name", quantities())
def test_what_is_not_a_finite_number_is_refused_by_name(verb, name):
    for value, shown in ((math.nan, "nan"), (math.inf, "inf"), (-math.inf, "-inf"), (np.float32("nan"), "nan")):
        with pytest.raises(tauten.Error) as problem:
            ask(verb, name, value)
        assert problem.value.argument == name
        assert str(problem.value).startswith(f"{name} is {shown}, but must be a finite number; write it like ")


@pytest.mark.parametrize("verb, name", positive())
def test_a_zero_without_meaning_is_refused_by_name(verb, name):
    for value in (0, 0.0, -0.0):
        with pytest.raises(tauten.Error) as problem:
            ask(verb, name, value)
        assert problem.value.argument == name
        assert re.match(rf"{name} is -?0\b.*, but must be above 0; write it like ", str(problem.value))


@pytest.mark.parametrize("verb, name", positive(QUESTIONS))
def test_in_a_cell_zero_is_refused_as_it_is_alone(verb, name):
    alone, row, _, _ = said_alike(verb, name, 0.0)
    assert alone and reason(alone, name) == reason(row, name)


@pytest.mark.parametrize("verb, name", quantities(QUESTIONS))
def test_in_a_cell_nan_and_empty_mean_that_nothing_is_given(verb, name):
    """So such a row answers as one of a table that has no such column."""
    fixed = {key: value for key, value in LEAST[verb].items() if key != name}
    column = next(iter(fixed), None)
    cells = [math.nan, None, ""]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", tauten.DomainWarning)
        try:
            without = QUESTIONS[verb]({column: [fixed.pop(column)]}, **fixed) if column else None
        except tauten.Error as missing:  # the question needs this column
            assert missing.argument == name
            without = None
        table = QUESTIONS[verb]({name: cells, **({column: [LEAST[verb][column]] * 3} if column else {})}, **fixed)
    for row in range(len(cells)):
        if without is None:
            assert "missing" in table["error"][row], table["error"][row]
            continue
        for figure in (FIGURE[verb], "error"):
            one, none = table[figure][row], without[figure][0]
            assert one == none or (one != one and none != none), figure


def test_the_test_of_the_library_tries_every_member_that_may_be_absent():
    """Its list is typed by hand; the headers say what must be on it."""
    tried = (ROOT / "tests/unit/absent_test.cpp").read_text()
    members = set()
    for header in (ROOT / "include/tauten/question").rglob("*.hpp"):
        text = header.read_text()
        assert not re.search(r"double \w+ = absent;", text) or not header.name.endswith("_job.hpp")
        for job, body in re.findall(r"^struct (\w+) \{\n(.*?)^\};", text, re.S | re.M):
            if re.fullmatch(r"\w*Job|TurnLayer|AfterTurn|TorqueWrench|TorqueMultiplier|FreeNames", job):
                members |= set(re.findall(r"std::optional<(?:Length|Torque|Force|Stress|Angle|double|int|Band<double>)>\s+"
                                          r"(\w+)(?:\{\})?;", body))
    assert len(members) > 40
    left_out = {name for name in members if not re.search(rf"[.>]{name} = ", tried)}
    assert left_out == {"bit"}, left_out  # a number of a table, which has no unit to be NaN in


# The ends of what an input may be, typed from the tables of the manual and from what the sources behind it say. SI. None: no
# end, or one that depends on the job.
POSITIVE = "above 0"
TURNED = dict(thread="M16", property_class="8.8", grip="55mm", snug_torque="50N.m", angle="30deg")
STUCK = dict(thread="M16", property_class="8.8", trials=1000)
MULTIPLIED = dict(torque="130N.m", multiplier_ratio=4, multiplier_efficiency=0.9)
HELD = dict(torque="130N.m", thread="M16", property_class="8.8")
LIMITS = [  # verb, the rest of the job, argument, least, most
    ("identify", {}, "socket", POSITIVE, 0.2), ("identify", {}, "key", POSITIVE, 0.2),
    ("clamp", {}, "torque", POSITIVE, 1e5), ("clamp", {}, "share", POSITIVE, 1), ("clamp", {}, "wrench_accuracy", 0, 0.5),
    ("clamp", {}, "prevailing_torque", 0, None), ("clamp", {}, "shank_torque", 0, None),
    ("clamp", {}, "bearing_diameter", POSITIVE, 0.5), ("clamp", dict(tapped_material="steel"), "engagement", POSITIVE, 1),
    ("torque", {}, "clamp_load", POSITIVE, None), ("torque", {}, "share", POSITIVE, 1),
    ("turn", dict(angle=None), "share", POSITIVE, 1.3), ("turn", dict(angle=None), "utilisation", POSITIVE, 1.2),
    ("turn", {}, "angle", POSITIVE, 6 * math.pi), ("turn", {}, "angle_tolerance", 0, math.pi),
    ("turn", {}, "resilience_tolerance", 0, 0.5), ("turn", {}, "strength_surplus", 0, 1), ("turn", {}, "roughness", 0, None),
    ("turn", {}, "bolt_warming", -100, 400), ("turn", {}, "plate_warming", -100, 400), ("turn", {}, "neighbours", 0, None),
    ("turn", dict(working_load="1kN"), "load_introduction", 0, 1), ("turn", {}, "washers", 0, 2),
    ("turn", dict(structural=True), "k_factor", 0.05, 0.3), ("turn", dict(structural=True), "sloping_faces", 0, 2),
    ("turn", {}, "snug_torque", POSITIVE, 1e5), ("turn", {}, "wrench_accuracy", 0, 0.5), ("turn", {}, "prevailing_torque", 0, None),
    ("curve", dict(angle=None), "points", 2, 100_000), ("curve", dict(angle=None), "end_angle", POSITIVE, 40 * math.pi),
    ("reach", {}, "torque", POSITIVE, 1e6), ("reach", {}, "wrench_length", POSITIVE, 10), ("reach", {}, "tilt", None, math.radians(5)),
    ("reach", {}, "universal_joint", 0, math.pi / 4), ("reach", {}, "drive_square", POSITIVE, 1),
    ("reach", {}, "scale_low", 0, None), ("reach", {}, "scale_high", POSITIVE, 1e6), ("reach", {}, "division", POSITIVE, None),
    ("reach", {}, "tolerance_extension", 0, 1), ("reach", {}, "tolerance_pull_angle", 0, 0.8),
    ("reach", {}, "tolerance_operator", 0, 1), ("reach", dict(multiplier_ratio=None), "multiplier_ratio", 1, 1000),
    ("reach", MULTIPLIED, "multiplier_efficiency", 0.25, 1), ("reach", MULTIPLIED, "efficiency_range", 0, 0.9),
    ("reach", MULTIPLIED, "reaction_arm", POSITIVE, 10),
    ("free", {}, "limit", POSITIVE, 1e6), ("free", {}, "preload", 0, None), ("free", {}, "drive_square", POSITIVE, 0.2),
    ("free", {}, "handle_length", POSITIVE, 5), ("free", {}, "shear_risk", 1e-4, 0.5), ("free", {}, "wanted_chance", 0.1, 0.999),
    ("free", {}, "thread_friction", 0.02, 1), ("free", {}, "bearing_friction", 0.02, 1), ("free", {}, "prevailing_torque", 0, None),
    ("free", {}, "engaged_length", POSITIVE, 0.16), ("free", {}, "head_height", POSITIVE, 0.048),
    ("free", {}, "corner_loss", 0, 0.0048), ("free", {}, "drive_clearance", 0, 0.012), ("free", {}, "nut_yield", POSITIVE, 3e9),
    ("free", {}, "trials", 1000, None), ("group", {}, "load_factor", 0, 1), ("group", {}, "friction", POSITIVE, 2),
    ("sequence", {}, "rounds", 0, 100), ("sequence", {}, "most", 1, 1.5),
]
WHOLE = {"points", "washers", "sloping_faces", "trials", "rounds"}
AROUND = {"clamp": HELD, "torque": HELD | dict(torque=None), "turn": TURNED, "curve": TURNED, "reach": dict(torque="130N.m"),
          "free": STUCK, "identify": {}, "sequence": dict(pattern="circle:8:160mm", torque="100N.m"),
          "group": dict(positions="circle:8:160mm", load="0kN:-8kN", force="8kN", preload="44kN", bolt_area="157mm2")}


@pytest.mark.parametrize("verb, rest, name, least, most", LIMITS, ids=[f"{verb} {name}" for verb, _, name, _, _ in LIMITS])
def test_the_ends_of_what_may_be_given(verb, rest, name, least, most):
    def refused(value):
        job = {key: given for key, given in {**AROUND[verb], **rest, name: value}.items() if given is not None}
        try:
            getattr(tauten, ASKED[verb]["function"])(**job)
        except tauten.Error as error:
            return error.argument == name and re.search(r"must (be|lie)|below|at most|at least", str(error)) is not None
        return False

    step = 1 if name in WHOLE else None
    for end, sign in ((least, -1), (most, 1)):
        if end is None:
            continue
        inside = end if end != POSITIVE else (1 if step else 1e-7 * (most or 1e-3))
        beyond = -1e-9 if end == POSITIVE else end + sign * (step or 1e-6 * max(1e-3, abs(end)))
        assert end == POSITIVE or not refused(inside), (name, inside)
        assert refused(beyond), (name, beyond)
        if end == POSITIVE:
            assert refused(0 if step else 0.0), name
