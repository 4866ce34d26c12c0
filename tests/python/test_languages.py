"""Whole questions in every language: the same words give the same answer."""
import os
import subprocess

import pytest
import tauten
from languages import C, NODE, PACKAGE, LIBRARY, Refused, in_javascript, pairs_of

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(not (PROGRAM and LIBRARY and PACKAGE and NODE), reason="not everything is built")
QUESTIONS = {question["name"]: question for question in tauten._core.questions}

JOBS = {
    "clamp": {"name": "pump foot", "thread": "M16", "class": "8.8", "torque": "96lbf.ft", "more-face": ["30mm:oiled", "34mm:dry"]},
    "torque": {"socket": "24mm", "clamp-load": "45kN", "thread-friction": "0.1..0.13..0.17"},
    "turn": {"thread": "M16", "class": "10.9", "layer": ["20mm:grey cast iron", "35mm:steel:70mm"], "snug-torque": "60N.m",
             "angle": "90deg"},
    "reach": {"torque": "40lbf.ft", "wrench-length": "12in", "extension": ["100mm@30deg", "3in"]},
    "free": {"thread": "M16", "class": "8.8", "rust": "heavy_rust", "trials": "5000", "seed": "7"},
    "pattern": {"pattern": "circle:8:180mm"},
    "group": {"pattern": "rectangle:200mm:150mm", "load": "0kN:-16kN", "at": "425mm:0mm"},
    "sequence": {"pattern": "circle:8:160mm", "torque": "120N.m"},
    "prying": {"tributary": "70mm", "bolt-to-web": "49mm", "bolt-to-edge": "41mm", "thickness": "25mm", "plate-strength": "450MPa",
               "bolt-strength": "163kN", "diameter": "20mm", "hole": "22mm", "pull": "111.6kN"},
}


def words_of(job):
    return [word for key, text in pairs_of(job) for word in (f"--{key}", text)]


def arguments_of(question, job):
    """The job in the names of Python."""
    names = {entry["option"]: entry for entry in QUESTIONS[question]["inputs"]}
    return {names[key]["name"]: value for key, value in job.items()}


def asked_in_python(question, job):
    try:
        return getattr(tauten, QUESTIONS[question]["function"])(**arguments_of(question, job))
    except tauten.Error as error:
        return Refused(error.argument, str(error))


def test_an_answer_is_explained_alike():
    c = C()
    layouts = ("text", "markdown", "latex", "html")
    calls = [("explain", question, job, layout) for question, job in JOBS.items() for layout in layouts]
    for (_, question, job, layout), there in zip(calls, in_javascript(calls), strict=True):
        text = asked_in_python(question, job).explain(layout)
        assert "\n" in text and there == text, (question, layout)
        assert c("explain_answer", question, job, layout) == text, (question, layout)
        done = subprocess.run([PROGRAM, "explain", question, *words_of(job), "--format", layout], capture_output=True, text=True)
        assert done.stdout == text, (question, layout, done.stderr)


def test_what_is_not_explained_is_refused_alike():
    c = C()
    explained = set(JOBS)
    for question in set(QUESTIONS) - explained:
        has_derivation = hasattr(getattr(tauten, QUESTIONS[question]["result"]), "explain")
        assert not has_derivation, f"{question} can be explained: give it a job above"
        [there], here = in_javascript([("explain", question, {}, "text")]), c("explain_answer", question, {}, "text")
        assert here == there and here.argument == "question" and "explain clamp, torque" in str(here)
    for job, layout, argument in ((JOBS["clamp"], "braille", "format"), ({"thread": "M16"}, "text", "torque"),
                                  ({"thread": "M16", "torque": "9mm"}, "text", "torque")):
        [there], here = in_javascript([("explain", "clamp", job, layout)]), c("explain_answer", "clamp", job, layout)
        assert here == there and here.argument == argument
