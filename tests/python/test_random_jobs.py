"""Random jobs of every question over all its inputs: Python, tables, the command line, lists in TOML, C and WebAssembly give the
same answer, or refuse the same argument."""
import json
import math
import os
import random
import re
import subprocess
import warnings

import pytest
import tauten
from tauten import _core
from languages import C, LIBRARY, NODE, PACKAGE, Refused, in_javascript, pairs_of

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(not (PROGRAM and LIBRARY and PACKAGE and NODE), reason="not everything is built")
QUESTIONS = {question["name"]: question for question in _core.questions}
JOBS = 200 if os.environ.get("TAUTEN_WHOLE") else 40  # of each question

THREADS = ["M8", "M10", "M12", "M16", "M16x1.5", "M20", "M24"]
# What is looked up by name, or only makes sense with some values; of all else the example is varied.
CHOICES = {
    "thread": THREADS, "head": ["ISO 4014", "ISO 4017", "ISO 4762", "ISO 4032"], "name": ["pump foot", "valve bonnet", "Flansch 3 ö"],
    "socket": ["13mm", "16mm", "18mm", "24mm", "30mm"], "key": ["6mm", "8mm", "10mm", "14mm"], "bit": ["30", "40", "50"],
    "trials": ["1000", "2000"], "snug-torque": ["10N.m", "20N.m", "15lbf.ft"], "length": ["80mm", "100mm"], "points": ["2", "10", "40"], "tapped-material": ["steel", "grey_cast_iron", "aluminium"],
    "layer": ["20mm", "35mm:grey_cast_iron", "12mm:steel:60mm", "8mm:110GPa:60mm"], "friction-together": ["yes", "no"],
    "class": ["4.6", "8.8", "10.9", "12.9", "A2-70"], "loosened": ["freed:85N.m", "sheared:60N.m", "rounded:70N.m"],
    "aid": ["fluid:24h", "heat:120K", "impact", "brush", "fluid:2h"], "washers": ["1", "2"],
}
PATTERNS = ["circle:8:160mm", "circle:4:120mm", "grid:2x4:100mm:70mm", "rectangle:200mm:150mm", "0mm:0mm;120mm:0mm;120mm:80mm;0mm:85mm"]
CHOICES |= {
    "pattern": PATTERNS, "on": PATTERNS, ("pattern", "name"): ["EN 1092-1 PN16 DN100", "EN 1092-1 PN10 DN100"],
    "chords": ["80mm;81mm;79mm", "80mm;80mm;80mm;81mm"], "order": ["1;3;2;4", "1,5,3,7;2,6,4,8"], "labels": ["1;3;2;4"],
    "most": ["100%", "110%"], "shares": ["30%;60%;100%", "50%;100%"], "bolt-area": ["84.3mm2", "157mm2"],
    "weights": ["1;1;2;2", "1"], "outline": ["-105mm:-145mm;105mm:-145mm;105mm:145mm;-105mm:145mm"],
}
# What a job needs to be answered at all; one of each now and then is left out.
NEEDED = {
    "identify": [("socket", "key", "bit")], "thread": [("thread",)], "clamp": [("thread", "socket"), ("torque",)],
    "torque": [("thread", "socket")], "turn": [("thread",), ("grip", "layer"), ("snug-torque",)],
    "curve": [("thread",), ("grip", "layer"), ("snug-torque",), ("points",)], "reach": [("torque", "setting")],
    "free": [("thread",), ("class",), ("trials",)], "pattern": [("pattern", "name", "chords")],
    "group": [("pattern",), ("load",), ("force", "moment", "torque"), ("preload",), ("bolt-area",)],
    "sequence": [("pattern",), ("trials",), ("person",), ("interaction", "gasket")],
    "prying": [("tributary", "effective-length"), ("bolt-to-web",), ("bolt-to-edge",), ("plate-strength",), ("bolt-strength",),
               ("thickness", "pull")],
}
# What is refused without another.
PAIRS = (("hand-variation", "handle-length"), ("hand-force", "handle-length"), ("years", "first-year-loss"), ("first-year-loss", "years"))
# What goes with one form of a question alone.
GOES_WITH = {"prying": {"tributary": {"diameter", "hole", "resistance-factor"}, "effective-length": {"washer", "elongation-length", "bolt-area"}}}
NONSENSE = ["", "-5N.m", "0mm", "7", "wax", "1e400mm", "nan", "12 apples", "3..2..1", "[1, 2]", "M999"]


def varied(rng, question, entry):
    """A text for an input: one of its words, or its example with other numbers."""
    if rng.random() < 0.01:
        return rng.choice(NONSENSE)
    words = CHOICES.get((question, entry["option"])) or CHOICES.get(entry["option"]) or entry["words"]
    if words:
        return rng.choice(words)
    scale = rng.choice([0.5, 0.8, 0.9, 1, 1.1, 1.25, 1.5])

    def scaled(found):
        return f"{float(found[0]) * scale:.4g}" if "." in found[0] or entry["kind"] != "whole" else str(max(1, int(int(found[0]) * scale)))

    return re.sub(r"(?<![a-z\d])(?<!\d\.)\d+(?:\.\d+)?", scaled, entry["example"].strip('"'))


def random_job(rng, question, place):
    """What it needs, one or two inputs in their turn, and a few more; some exclude each other, and are refused."""
    entries = {entry["option"]: entry for entry in QUESTIONS[question]["inputs"]}
    turns = [list(entries)[(2 * place + i) % len(entries)] for i in range(2)] if len(entries) > 12 else [list(entries)[place % len(entries)]]
    wanted = set(turns)
    for group in NEEDED[question]:
        if not wanted & set(group) and rng.random() < 0.98:
            wanted.add(rng.choice(group))
    others = [option for option in entries if option not in wanted
              and (rng.random() < 0.1 or not any(option in group for group in NEEDED[question]))]
    wanted |= set(rng.sample(others, min(len(others), len(entries) // 4, rng.choice([0, 0, 1, 1, 2, 3, 5]))))
    for one, other in PAIRS:
        if one in wanted and other in entries and rng.random() < 0.9:
            wanted.add(other)
    for form, its in GOES_WITH.get(question, {}).items():
        if form in wanted and rng.random() < 0.9:
            wanted -= set().union(*(one | {name} for name, one in GOES_WITH[question].items() if name != form))
            wanted |= {"diameter", "hole"} if form == "tributary" else {"elongation-length", "bolt-area"} if wanted & its else set()
    job = {}
    for option in entries:  # in an order that does not depend on the seed of hashes
        if option in wanted:
            entry = entries[option]
            several = entry["repeats"] and rng.random() < 0.5
            job[option] = ("yes" if entry["flag"] else
                           [varied(rng, question, entry) for _ in range(rng.randrange(1, 4))] if several else varied(rng, question, entry))
    return job


def jobs_of(question):
    rng = random.Random(f"{question} 12")
    return [random_job(rng, question, place) for place in range(JOBS)]


@pytest.fixture(scope="module")
def asked():
    """For each question its jobs with what JavaScript answers: one process asks for all."""
    jobs = {question: jobs_of(question) for question in QUESTIONS}
    there = iter(in_javascript([("ask", question, as_in_python(question, job)) for question in jobs for job in jobs[question]]))
    return {question: [(job, next(there)) for job in jobs[question]] for question in jobs}


def differences(one, other, path=""):
    """Where two answers differ by more than the last bits of their numbers."""
    if isinstance(one, dict) and isinstance(other, dict) and one.keys() == other.keys():
        for name in one:
            yield from differences(one[name], other[name], f"{path}/{name}")
    elif isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        for place, pair in enumerate(zip(one, other)):
            yield from differences(*pair, f"{path}/{place}")
    elif isinstance(one, (int, float)) and isinstance(other, (int, float)) and isinstance(one, bool) == isinstance(other, bool):
        if not math.isclose(one, other, rel_tol=1e-12, abs_tol=1e-15):
            yield path, one, other
    elif one != other:
        yield path, one, other


def same(one, other):
    if isinstance(one, Refused) or isinstance(other, Refused):
        return one == other
    return not list(differences(one, other))


def argument_of(question, option):
    """\\return what Python calls an option"""
    return next((entry["name"] for entry in QUESTIONS[question]["inputs"] if entry["option"] == option), option)


def as_in_python(question, job):
    """A job with the names of the library, which every language takes beside the options."""
    return {argument_of(question, option): text for option, text in job.items()}


def arguments_of(question, job):
    flags = {entry["option"] for entry in QUESTIONS[question]["inputs"] if entry["flag"]}
    truths = {entry["option"] for entry in QUESTIONS[question]["inputs"] if entry["kind"] == "truth"}
    wholes = {entry["option"] for entry in QUESTIONS[question]["inputs"] if entry["kind"] == "whole"}

    def value(option, text):
        if option in flags or (option in truths and text in ("yes", "no")):
            return text == "yes"
        return int(text) if option in wholes and isinstance(text, str) and text.isdecimal() else text

    return {argument_of(question, option): value(option, text) for option, text in job.items()}


def in_python(question, job):
    try:
        return json.loads(getattr(tauten, QUESTIONS[question]["function"])(**arguments_of(question, job)).to_json())
    except tauten.Error as error:
        return Refused(error.argument, str(error))
    except TypeError as error:
        return Refused("type", str(error))


def on_command_line(question, job):
    flags = {entry["option"] for entry in QUESTIONS[question]["inputs"] if entry["flag"]}
    words = [word for option, text in pairs_of(job) for word in ([f"--{option}"] if option in flags else [f"--{option}={text}"])]
    done = subprocess.run([PROGRAM, question, *words, "--json"], capture_output=True, text=True)
    answer = json.loads(done.stdout)
    return Refused(answer["error"]["argument"], answer["error"]["message"]) if "error" in answer else answer


def in_lists(question, jobs, folder):
    """All jobs as one list in TOML."""
    def line(option, texts):
        return f"{option} = {json.dumps(texts, ensure_ascii=False)}\n"

    path = folder / f"{question}.toml"
    spelled = [as_in_python(question, job) if place % 2 else job for place, job in enumerate(jobs)]
    path.write_text("".join("[[joint]]\n" + "".join(line(*item) for item in job.items()) for job in spelled), encoding="utf-8")
    done = subprocess.run([PROGRAM, question, "--file", path, "--json"], capture_output=True, text=True)
    return [Refused(joint["error"]["argument"], joint["error"]["message"].partition(": ")[2]) if "error" in joint else joint
            for joint in json.loads(done.stdout)["joints"]]


def in_table(question, job):
    """The only row of a table."""
    cells = {name: [";".join(value) if isinstance(value, list) else value] for name, value in arguments_of(question, job).items()
             if name not in ("trials", "seed") and (name != "name" or question == "pattern")}
    once = {name: value for name, value in arguments_of(question, job).items() if name in ("trials", "seed")}
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            table = getattr(tauten, QUESTIONS[question]["function"])(cells, **once)
    except (tauten.Error, TypeError) as error:
        return Refused("", str(error))
    row = {name: column[0] for name, column in table.items()}
    return Refused("", row["error"]) if row["error"] else row


def flattened(answer, path=""):
    for name, value in answer.items():
        if isinstance(value, dict):
            yield from flattened(value, f"{path}{name}_")
        elif isinstance(value, (int, float, str, type(None))):
            yield path + name, value


@pytest.mark.parametrize("question", QUESTIONS)
def test_every_language_gives_the_same_answer(question, asked, tmp_path):
    assert question in NEEDED, "say above what a job of it needs"
    c, differing = C(), []
    refused = 0
    lists = in_lists(question, [job for job, _ in asked[question]], tmp_path)
    for (job, javascript), listed in zip(asked[question], lists, strict=True):
        here = c("ask", question, job)
        refused += isinstance(here, Refused)
        if not same(here, javascript):
            differing.append(("JavaScript", job, here, javascript))
        program = on_command_line(question, job)
        if not (isinstance(here, Refused) and isinstance(program, Refused) and here.argument == program.argument
                or same(here, program)):
            differing.append(("command line", job, here, program))
        python = in_python(question, job)
        if isinstance(here, Refused) or isinstance(python, Refused):
            if not (isinstance(here, Refused) and isinstance(python, Refused)
                    and (python.argument.partition("[")[0] in ("type", argument_of(question, here.argument), here.argument)
                         or str(python) == str(here))):  # of a layer Python has the member
                differing.append(("Python", job, here, python))
        elif not same(here, python):
            differing.append(("Python", job, here, python))
        if question == "clamp" and "torque" not in job:
            pass  # in a list a clamp load may stand instead
        elif question == "pattern" and {"pattern", "name"} <= job.keys():
            pass  # in a list the name is that of the joint
        elif isinstance(here, Refused) or isinstance(listed, Refused):
            if not (isinstance(here, Refused) and isinstance(listed, Refused) and here.argument == listed.argument):
                differing.append(("list", job, here, listed))
        elif not same({**here, "name": 0}, {**listed, "name": 0}):
            differing.append(("list", job, here, listed))
        by_mark = question == "identify" and not {"socket", "key", "bit"} & set(job)  # a row has fasteners; a mark alone has none
        if not by_mark and not any("" in [texts, *texts] or ";" in "".join(texts) for texts in job.values()):
            row = in_table(question, job)
            if isinstance(row, Refused) or isinstance(here, Refused):
                if isinstance(row, Refused) != isinstance(here, Refused):
                    differing.append(("table", job, here, row))
            else:
                first = {**here, **here["candidates"][0]} if here.get("candidates") and question != "pattern" else here
                known = dict(flattened(first))
                compared = [name for name in row if name in known and name != "name" and (known[name] is None or type(known[name]) in (int, float, str, bool))]
                assert len(compared) > 2, (question, row.keys())
                for name in compared:
                    there = None if row[name] != row[name] else row[name]
                    if there in ("", "yes", "no"):
                        there = {"": known[name] and there, "yes": True, "no": False}[there]
                    if list(differences(known[name], there.item() if hasattr(there, "item") else there)):
                        differing.append(("table", job, name, known[name], there))
    shown = [(which, job, [str(one)[:200] for one in list(differences(*pair))[:3]] if not any(isinstance(one, Refused) for one in pair) else pair)
             for which, job, *pair in differing if len(pair) == 2] + [entry for entry in differing if len(entry) > 4]
    assert not differing, f"{len(differing)} differences\n" + "\n".join(map(repr, shown[:6]))
    assert 0.3 * JOBS < JOBS - refused, "too few jobs are answered for this to say much"


def test_all_inputs_take_part():
    for question in QUESTIONS:
        said = {option for job in jobs_of(question) for option in job}
        assert said == {entry["option"] for entry in QUESTIONS[question]["inputs"]}, question


def bands_in(value, path=""):
    """Low, nominal and high wherever they stand, with their place."""
    if isinstance(value, dict):
        if {"low", "nominal", "high"} <= set(value) and None not in (value["low"], value["nominal"], value["high"]):
            yield path, value["low"], value["nominal"], value["high"]
        for name, item in value.items():
            yield from bands_in(item, f"{path}/{name}")
    elif isinstance(value, list):
        for place, item in enumerate(value):
            yield from bands_in(item, f"{path}/{place}")


@pytest.mark.parametrize("question", QUESTIONS)
def test_bands_rise(question, asked):
    """The ends are extremes: nothing between them lies beyond."""
    bands = [(job, *band) for job, answer in asked[question] if not isinstance(answer, Refused) for band in bands_in(answer)]
    assert bands or question in ("identify", "thread", "pattern", "group", "prying"), question
    assert not [band for band in bands if not band[2] <= band[3] <= band[4]]


def test_bands_of_faces_in_turn_and_of_a_trace_of_yield_rise():
    """What random jobs met in the past: another face slides at each end of friction, and a bolt that flows by a rounding error."""
    worn = dict(socket="30mm", property_class="4.6", condition="waxed")
    for faces in (["28.6mm:oiled"], ["39mm:oiled"], ["20.8mm:oiled", "39mm:dry"]):
        answers = [tauten.clamp(torque="43.2N.m", more_faces=faces, **worn), tauten.torque_for(more_faces=faces, share=0.5, **worn)]
        for answer in answers:
            assert not [band for band in bands_in(json.loads(answer.to_json())) if not band[1] <= band[2] <= band[3]]
    turned = tauten.turn(thread="M20", head="ISO 4762", shank_diameter="10.4mm", layers=["35mm:grey_cast_iron"], snug_torque="15lbf.ft",
                         resilience_tolerance="12.5%", load_across=True, sloping_faces=1)
    assert not [band for band in bands_in(json.loads(turned.to_json())) if not band[1] <= band[2] <= band[3]]
