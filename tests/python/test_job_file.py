"""Lists of joints in TOML, for every question: what comes out, and what is refused before it can do harm."""
import json
import os
import subprocess

import pytest
import tauten
from tauten import _core

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(PROGRAM is None, reason="needs the command line program")


def run(*words, code=0):
    done = subprocess.run([PROGRAM, *map(str, words)], capture_output=True, text=True, timeout=60)
    assert done.returncode == code, done
    return done


def write(folder, text):
    path = folder / "station.toml"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return path


# For each question two joints: what is typed on the command line, and as a list has it.
JOINTS = {
    "identify": [(["--socket", "24mm"], 'socket = "24mm"'), (["--bit", "30"], "bit = 30")],
    "thread": [(["--thread", "M16x1.5"], 'thread = "M16x1.5"'), (["--thread", "M8", "--class", "8.8"], 'thread = "M8"\nclass = 8.8')],
    "clamp": [(["--thread", "M16", "--torque", "96lbf.ft", "--more-face", "30mm:oiled"],
               'thread = "M16"\ntorque = "96lbf.ft"\nmore-face = [{bearing_diameter = "30mm", condition = "oiled"}]'),
              (["--thread", "M10", "--torque", "40N.m", "--thread-friction", "0.1..0.12..0.15", "--friction-together", "no"],
               'thread = "M10"\ntorque = "40N.m"\nthread-friction = [0.1, 0.12, 0.15]\nfriction-together = false')],
    "torque": [(["--thread", "M16"], 'thread = "M16"'), (["--socket", "24mm", "--share", "0.6"], 'socket = "24mm"\nshare = 0.6')],
    "turn": [(["--thread", "M16", "--layer", "20mm:grey_cast_iron:70mm", "--layer", "35mm", "--snug-torque", "60N.m", "--angle", "60deg"],
              'thread = "M16"\nsnug-torque = "60N.m"\nangle = "60deg"\n'
              'layer = [{thickness = "20mm", material = "grey_cast_iron", outer_diameter = "70mm"}, "35mm"]'),
             (["--thread", "M20", "--grip", "60mm", "--structural"], 'thread = "M20"\ngrip = "60mm"\nstructural = true')],
    "curve": [(["--thread", "M16", "--grip", "2in", "--snug-torque", "60N.m", "--points", "20"],
               'thread = "M16"\ngrip = "2in"\nsnug-torque = "60N.m"\npoints = 20')] * 2,
    "reach": [(["--torque", "40lbf.ft", "--extension", "100mm@30deg", "--extension", "3in"],
               'torque = "40lbf.ft"\nextension = ["100mm@30deg", "3in"]'),
              (["--setting", "90N.m", "--hinged-handle"], 'setting = "90N.m"\nhinged-handle = true')],
    "free": [(["--thread", "M16", "--class", "8.8", "--trials", "4000"], 'thread = "M16"\nclass = "8.8"\ntrials = 4000'),
             (["--thread", "M12", "--class", "8.8", "--trials", "4000", "--loosened", "freed:90N.m", "--tapped", "no", "--reused"],
              'thread = "M12"\nclass = "8.8"\ntrials = 4000\nloosened = "freed:90N.m"\ntapped = false\nreused = true')],
    "pattern": [(["--pattern", "circle:8:180mm"], 'pattern = "circle:8:180mm"'),
                (["--pattern", "0mm:0mm;120mm:0mm;120mm:80mm;0mm:85mm"],
                 'pattern = [["0mm", "0mm"], ["120mm", "0mm"], ["120mm", "80mm"], "0mm:85mm"]')],
    "group": [(["--pattern", "rectangle:200mm:150mm", "--load", "0kN:-16kN", "--at", "425mm:0mm", "--weights", "1;1;2;2"],
               'pattern = "rectangle:200mm:150mm"\nload = ["0kN", "-16kN"]\nat = "425mm:0mm"\nweights = [1, 1, 2, 2]'),
              (["--pattern", "grid:2x4:100mm:70mm", "--force", "12kN", "--preload", "40kN"],
               'pattern = "grid:2x4:100mm:70mm"\nforce = "12kN"\npreload = "40kN"')],
    "prying": [(["--tributary", "70mm", "--bolt-to-web", "49mm", "--bolt-to-edge", "41mm", "--thickness", "25mm", "--plate-strength",
                 "450MPa", "--bolt-strength", "163kN", "--diameter", "20mm", "--hole", "22mm"],
                'tributary = "70mm"\nbolt-to-web = "49mm"\nbolt-to-edge = "41mm"\nthickness = "25mm"\nplate-strength = "450MPa"\n'
                'bolt-strength = "163kN"\ndiameter = "20mm"\nhole = "22mm"'),
               (["--effective-length", "200mm", "--bolt-to-web", "49mm", "--bolt-to-edge", "41mm", "--thickness", "20mm",
                 "--plate-strength", "250MPa", "--bolt-strength", "163kN", "--bolts", "4"],
                'effective-length = "200mm"\nbolt-to-web = "49mm"\nbolt-to-edge = "41mm"\nthickness = "20mm"\n'
                'plate-strength = "250MPa"\nbolt-strength = "163kN"\nbolts = 4')],
    "sequence": [(["--pattern", "circle:8:160mm", "--torque", "120N.m", "--shares", "30%;100%", "--pressurised", "--person", "0mm:-500mm"],
                  'pattern = "circle:8:160mm"\ntorque = "120N.m"\nshares = [0.3, 1]\npressurised = true\nperson = ["0mm", "-500mm"]'),
                 (["--pattern", "8", "--interaction", "0.2", "--trials", "1000", "--wrench-scatter", "2%"],
                  'pattern = 8\ninteraction = 0.2\ntrials = 1000\nwrench-scatter = "2%"')],
}
OWN_NAME = ("pattern",)  # of which name is a drilling


@pytest.mark.parametrize("question", JOINTS)
def test_a_list_is_answered_like_each_joint_by_itself(question, tmp_path):
    alone, texts = zip(*JOINTS[question], strict=True)
    keys = {entry["option"] for asked in _core.questions if asked["name"] == question for entry in asked["inputs"]}
    for words in alone:
        assert {word[2:] for word in words if word.startswith("--")} <= keys, question
    names = ["joint 1", "joint 2"] if question in OWN_NAME else ["foot 1", "foot 2"]
    path = write(tmp_path, "".join(("[[joint]]\n" if question in OWN_NAME else f'[[joint]]\nname = "{name}"\n') + f"{text}\n"
                                   for name, text in zip(names, texts)))
    joints = json.loads(run(question, "--file", path, "--json").stdout)["joints"]
    assert [joint["name"] for joint in joints] == names
    for words, joint in zip(alone, joints, strict=True):
        answer = json.loads(run(question, *words, "--json").stdout)
        assert {**joint, "name": None} == {**answer, "name": None}
    page = run(question, "--file", path).stdout
    if question in ("clamp", "torque"):
        assert page.startswith("2 joints: ") and all(name in page for name in names)
        return
    for name, words in zip(names, alone):  # lines break elsewhere after a name
        assert " ".join(f"{name}: {run(question, *words).stdout}".split()) in " ".join(page.split())
    short = run(question, "--file", path, "--short")
    assert [line.partition(":")[0] for line in short.stdout.splitlines()] == names
    assert "<table" in run(question, "--file", path, "--format", "html").stdout


@pytest.mark.parametrize("question", [asked["name"] for asked in _core.questions])
def test_every_question_takes_a_list(question, tmp_path):
    """A wrong joint has its error with number and name, and spoils no other one."""
    assert question in JOINTS, "give it two joints above"
    good = JOINTS[question][0][1]
    path = write(tmp_path, f'[[joint]]\n{good}\n[[joint]]\nname = "coupling"\nwaight = 5\n[[joint]]\n{good}\n')
    done = run(question, "--file", path, "--json", code=3)
    assert done.stderr.startswith("tauten: ") and "joint 2 'coupling': key 'waight' is unknown" in done.stderr
    first, wrong, third = json.loads(done.stdout)["joints"]
    assert wrong["error"]["argument"] == "'waight'" and third["name"] == "joint 3"
    assert {**first, "name": 0} == {**third, "name": 0}
    said = run(question, "--file", path, code=3)
    assert said.stderr == done.stderr and ("joint 3" in said.stdout)


def test_the_names_of_the_library_are_keys_too(tmp_path):
    path = write(tmp_path, '[[joint]]\nname = "valve bonnet"\npositions = "circle:8:160mm"\n'
                           '[[joint]]\nname = "valve bonnet"\npattern = "circle:8:160mm"\n')
    first, second = json.loads(run("pattern", "--file", path, "--json").stdout)["joints"]
    assert first == second and first["name"] == "valve bonnet" and first["count"] == 8
    twice = write(tmp_path, '[[joint]]\nthread = "M16"\ntorque = "9N.m"\nclass = "8.8"\nproperty_class = "8.8"\n')
    assert "class is given twice" in run("clamp", "--file", twice, code=3).stderr


def test_values_of_the_wrong_kind(tmp_path):
    for line, sentence in [('angle = true', "angle is true or false, but must be a text"),
                           ("layer = 20", "'20' has no unit"),
                           ("layer = [[]]", "layer"),
                           ('layer = {lenght = "20mm"}', "has no member 'lenght'; the members are thickness"),
                           ('layer = {thickness = {a = 1}}', "layer.thickness"),
                           ('layer = [{thickness = "20mm", material = "cheese"}]', "cheese"),
                           ("structural = 1979-05-27", "is a date or time")]:
        path = write(tmp_path, f'[[joint]]\nthread = "M16"\nsnug-torque = "60N.m"\n{line}\n')
        done = run("turn", "--file", path, code=3)
        assert sentence in done.stderr and not done.stdout, done
    path = write(tmp_path, '[[joint]]\nthread = "M16"\ngrip = "60mm"\nstructural = false\n')
    assert json.loads(run("turn", "--file", path, "--json").stdout)["joints"][0]["angle"] > 0


def test_what_is_said_beside_a_list_is_refused(tmp_path):
    path = write(tmp_path, '[[joint]]\nsetting = "90N.m"\n')
    for words, sentence in [(["--torque", "9N.m"], "write torque into the joints"), (["--svg", tmp_path / "x.svg"], "svg"),
                            (["--output", "x.csv"], "--output is for a table"), (["--shop"], "--shop is for a table"),
                            (["--columns", "setting"], "--columns is for a table"), (["--jobs", "2"], "--jobs is for a table"),
                            (["--from-row", "3"], "--from-row is for a table"), (["--rename", "a=torque"], "--rename is for a table")]:
        done = run("reach", "--file", path, *words, code=2)
        assert sentence in done.stderr and not done.stdout, done
    assert not (tmp_path / "x.svg").exists()


GOOD = '[[joint]]\nthread = "M10"\ntorque = "30N.m"\n'
HARMFUL = {
    "a key of 50,000 parts": ("." .join("a" * 50_000) + " = 1\n", "line 1: a name has too many parts"),
    "a header of 50,000 parts": ("[" + ".".join("a" * 50_000) + "]\n", "line 1: a name has too many parts"),
    "an inline table of many parts": (GOOD + "x = {" + ".".join("a" * 40_000) + " = 1}\n", "line 4: a name has too many parts"),
    "lists in lists": (GOOD + "x = " + "[" * 40_000 + "\n", "line 4: it is nested too deep"),
    "tables in tables": (GOOD + "x = " + "{a = " * 20_000 + "\n", "line 4: it is nested too deep"),
    "three brackets": (GOOD + "[[[joint]\n", "line 4: a header has two brackets"),
    "three brackets with blanks": ("\n\n [ [ [joint]]]\n", "line 3: a header has two brackets"),
    "a bare key of other letters": (GOOD + "größe = 1\n", "line 4: a name with other letters than a to z"),
    "a header of other letters": ("[größe]\n", "line 1: a name with other letters than a to z"),
    "lists in lists after a text": ('x = """a"""", ' + "[" * 40_000, "is not valid TOML in line 1"),
    "a text without its end": ('x = "a\ny = ' + "[" * 40_000, "is not valid TOML in line"),
    "a long text without its end": ('x = """a\ny = ' + "[" * 40_000, "is not valid TOML in line"),
}


@pytest.mark.parametrize("name", HARMFUL)
def test_what_the_parser_does_not_survive_is_refused_before(name, tmp_path):
    content, sentence = HARMFUL[name]
    done = run("clamp", "--file", write(tmp_path, content), code=2)
    assert done.stderr.startswith("tauten: ") and sentence in done.stderr and not done.stdout, done.stderr


def test_texts_and_comments_may_hold_anything(tmp_path):
    path = write(tmp_path, "\ufeff# [[[ größe " + "." * 500 + '\n[[joint]] # {{{\nname = "Flansch größe [[[[ # ' + "." * 500 + '"\n'
                 "thread = 'M10' # \"\n" + 'torque = """30N.m"""\nthread-friction = [0.08,0.12,\n 0.16]\n"class" = "8.8"\n')
    joint, = json.loads(run("clamp", "--file", path, "--json").stdout)["joints"]
    assert joint["name"].startswith("Flansch größe [[[[ # ....")
    assert joint["candidates"][0]["property_class"] == "8.8"


def test_random_files_never_break_the_program(tmp_path):
    import random
    rng = random.Random(12)
    pieces = ["[", "[[", "[[[", "]", "]]", "{", "}", "joint", "thread", "=", '"M10"', "'M10'", '"', "'", '"""', "'''", "\n", ".", ",", "#",
              "\\", "é", "1979-05-27", "true", "0x1F", "1e999", "nan", "\t", " ", "[[joint]]\n", 'torque = "30N.m"\n', "\r\n", "\x7f"]
    for _ in range(150):
        text = "".join(rng.choice(pieces) for _ in range(rng.randrange(1, 60)))
        done = subprocess.run([PROGRAM, "clamp", "--file", write(tmp_path, text)], capture_output=True, timeout=60)
        assert done.returncode in (0, 2, 3), (text, done)


def test_the_answers_of_a_list_are_those_of_python(tmp_path):
    path = write(tmp_path, '[[joint]]\nthread = "M16"\nclass = "8.8"\ngrip = "55mm"\nangle = "60deg"\nsnug-torque = "60N.m"\n')
    joint, = json.loads(run("turn", "--file", path, "--json").stdout)["joints"]
    there = tauten.turn(thread="M16", property_class="8.8", grip="55mm", angle="60deg", snug_torque="60N.m")
    assert joint["clamp_load"]["low"] == there.clamp_load.low and joint["name"] == "joint 1"
