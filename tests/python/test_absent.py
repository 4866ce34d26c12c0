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
