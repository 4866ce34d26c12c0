"""The job sheet: figures are those of the questions, in three forms, with nothing filled in and every caution beside its step."""
import html
import json
import os
import pathlib
import re
import subprocess

import pytest

import tauten

ROOT = pathlib.Path(__file__).resolve().parents[2]
DEMO = ROOT / "docs/demo/pump_overhaul.toml"
JOINT = """
title = "Valve bonnet"
[[wrench]]
name = "small"
reach = { wrench-length = "400mm", scale-low = "20N.m", scale-high = "100N.m" }
[[joint]]
name = "bonnet"
pattern = "circle:6:120mm"
wrench = "small"
{more}
[joint.torque]
thread = "M12"
class = "8.8"
condition = "oiled"
[joint.reach]
extension = ["100mm"]
"""


def run(*words):
    return subprocess.run([os.environ["TAUTEN_PROGRAM"], "sheet", *map(str, words)], capture_output=True, text=True)


def sheet(path, *words):
    done = run("--file", path, "--time", "2026-05-04 07:30", *words)
    assert done.returncode == 0, done.stderr
    return done.stdout


@pytest.fixture
def bonnet(tmp_path):
    def write(more="", property_class="8.8"):
        path = tmp_path / "bonnet.toml"
        path.write_text(JOINT.replace("{more}", more).replace('"8.8"', f'"{property_class}"'))
        return path
    return write


def passes(path):
    sections = {section["title"]: section["blocks"] for section in json.loads(sheet(path, "--json"))["sections"]}
    return [block["table"] for block in sections["Clean, lubricate and assemble"] if block.get("table") and "Order" in block["table"][0]]


def newtons(text):
    return tauten.quantity(text)


def test_settings_are_those_of_torque_sequence_and_lever(bonnet):
    """The lever by itself: with a straight extension the wrench is set to T L/(L + E)."""
    (table,) = passes(bonnet())
    full = newtons(table[-1]["At the fastener"])
    suggested = tauten.torque_for(thread="M12", property_class="8.8", condition="oiled").candidates[0].torque
    assert 0 <= suggested - full < 0.01 * suggested  # shown to three digits, and never rounded up
    for row, share in zip(table, (0.3, 0.6, 1, 1)):
        at_nut = newtons(row["At the fastener"])
        assert at_nut == pytest.approx(share * full, rel=0.01) and at_nut <= share * full * (1 + 1e-9)
        assert newtons(row["Set the wrench to"]) == pytest.approx(at_nut * 400 / 500, rel=0.01)
    assert [row["Order"] for row in table[:3]] == [" ".join(map(str, tauten.sequence(6).order))] * 3


def test_the_figure_of_the_maker_comes_first_and_ours_is_suggested(bonnet):
    text = sheet(bonnet('maker-torque = "60N.m"\nmaker-source = "manual, sheet 3"'))
    flat = " ".join(text.split())
    assert "Full torque 60 N.m, manual, sheet 3." in flat
    assert flat.index("Full torque 60 N.m") < flat.index("Suggested by this sheet for comparison:")
    assert "suggested by this sheet" in " ".join(sheet(bonnet()).split())


def test_a_wrench_that_does_not_hold_every_setting_is_named(bonnet):
    flat = " ".join(sheet(bonnet()).split())
    assert re.search(r"\d+(\.\d+)? N\.m is below its lowest mark, 20 N\.m.*Fetch another wrench", flat)
    assert "above its scale" in " ".join(sheet(bonnet('maker-torque = "130N.m"', "12.9")).split())


def test_three_forms_say_the_same_and_nothing_is_filled_in():
    text, markdown, page = (sheet(DEMO, "--format", form) for form in ("text", "markdown", "html"))
    answer = json.loads(sheet(DEMO, "--json"))
    steps = [step for section in answer["sections"] for block in section["blocks"] for step in block["steps"]]
    assert len(steps) > 60 and sum(bool(step["caution"]) for step in steps) > 20
    plain = {"text": " ".join(text.replace("! ", " ").split()), "markdown": re.sub(r"\\(?=[^\w\s])", "", markdown),
             "html": html.unescape(re.sub(r"<[^>]+>", "", page))}
    for form, words in plain.items():
        place = 0
        for step in steps:  # in the same order, each caution behind its own step
            for part in filter(None, (step["text"], step["caution"])):
                found = words.find(" ".join(part.split()), place)
                assert found >= 0, (form, part)
                place = found
    assert "[x]" not in (text + markdown).lower() and "checked" not in page.split("</style>")[1].lower().replace(
        "were not checked", "").replace("not checked", "").replace("checked by", "")
    assert text.count("[ ] ") == markdown.count("- [ ] ") == page.count('class="box"') == len(steps)
    assert page.count("<svg") == 6 and "@page { size: A4" in page and "break-before: page" in page


def test_every_figure_names_the_command_that_gives_it():
    """Asked once more as the last page says, each question gives the value that stands beside it."""
    origins = json.loads(sheet(DEMO, "--json"))["sections"][-1]["blocks"][0]["table"]
    assert len(origins) > 20
    import shlex
    for row in origins:
        if row["Figure"] not in ("Stop torque", "Pitch", "Ways round") and not row["Figure"].startswith("Wrench"):
            continue
        words = shlex.split(row["Asked with"])[1:]
        done = subprocess.run([os.environ["TAUTEN_PROGRAM"], *words, "--json"], capture_output=True, text=True)
        assert done.returncode == 0, done.stderr
        answer = json.loads(done.stdout)
        if row["Figure"] == "Ways round":
            assert answer["ways_round"] == int(row["Value"])
        elif row["Figure"] == "Pitch":
            assert answer["pitch"] == pytest.approx(newtons(row["Value"].replace(" ", "")))
        elif row["Figure"] == "Stop torque":
            assert newtons(row["Value"]) == pytest.approx(min(answer["stop_at"], 200), rel=0.01)
        else:
            assert newtons(row["Value"]) == pytest.approx(answer["setting"], rel=0.01)


def test_the_fingerprint_follows_the_file(bonnet):
    marks = [re.search(r"inputs ([0-9a-f-]{19})", sheet(bonnet(more))).group(1) for more in ("", "", '# another file')]
    assert marks[0] == marks[1] != marks[2]


@pytest.mark.parametrize("more, words", [
    ('patern = "x"', "did you mean pattern"), ('wrench = "big"', "bonnet.toml"), ('hole = "18"', "hole"),
    ('maker-torque = "60"', "torque"), ('[joint.free]\nrust = "rusty"', "rust"), ('[joint.sequence]\nmethod = "star"', "method"),
])
def test_a_wrong_file_is_one_clear_sentence(bonnet, more, words):
    path = bonnet()
    path.write_text(path.read_text().replace("[joint.torque]", more + "\n[joint.torque]"))
    done = run("--file", path)
    assert done.returncode == 2 and words in done.stderr and done.stderr.count("\n") == 1 and not done.stdout


def test_the_names_of_the_library_are_keys_too(bonnet):
    def said(path):  # the words of a command stand in the order of the keys
        return sorted(re.sub("inputs .*", "", sheet(path)).split())

    plain, path = said(bonnet()), bonnet()
    path.write_text(path.read_text().replace("class =", "property_class =").replace("extension =", "extensions ="))
    assert said(path) == plain


def test_python_prints_the_sheet_of_the_command_line(bonnet):
    import tomllib
    for form in ("text", "markdown", "html"):
        assert tauten.sheet(DEMO, form, "2026-05-04 07:30") == sheet(DEMO, "--format", form)
    as_dict = tauten.sheet(tomllib.loads(DEMO.read_text()), time="2026-05-04 07:30")
    assert re.sub("inputs .*", "", as_dict) == re.sub("inputs .*", "", sheet(DEMO))  # another thing, another fingerprint
    dated = bonnet()
    dated.write_text(dated.read_text().replace('name = "small"', 'name = "small"\ndue = 2027-03-01', 1))
    assert "calibration due 2027-03-01" in " ".join(sheet(dated).split()) and "2027-03-01" in tauten.sheet(dated)
    with pytest.raises(tauten.Error, match="did you mean pattern"):
        tauten.sheet({"joint": [{"name": "x", "patern": "circle:4:100mm"}]})
    with pytest.raises(tauten.Error, match="is not TOML"):
        bad = dated.parent / "bad.toml"
        bad.write_text("joint = [")
        tauten.sheet(bad)


def test_another_name_for_what_is_on_the_threads_is_no_other_lubricant(bonnet):
    job = bonnet()
    job.write_text(job.read_text().replace('condition = "oiled"', 'condition = "engine oil"'))
    (others,) = re.findall(r"threads that are otherwise: ([^.]*)\.", " ".join(sheet(job).split()))
    assert "dry" in others and "oiled" not in others


def test_the_sheet_alone_says_how_to_undo_and_put_back():
    """For each joint: which socket, which way, what is held, the setting, and what to do when a bolt does not move."""
    sections = {section["title"]: section["blocks"] for section in json.loads(sheet(DEMO, "--json"))["sections"]}
    for name, turns in (("Undo", "loosen counter-clockwise"), ("Clean, lubricate and assemble", "tighten clockwise")):
        steps = [step["text"] for block in sections[name] for step in block["steps"]]
        assert len([step for step in steps if "Socket 24 mm" in step and turns in step and re.search("[Hh]old the", step)]) == 3
    stuck = [block for block in sections["Undo"] if block["title"].startswith("When one does not move")]
    assert len(stuck) == 3 and all("Stop at" in block["steps"][0]["text"] for block in stuck)
    assert not any("_" in step["text"].replace("____", "") for blocks in sections.values() for block in blocks for step in block["steps"])
    again = [step["text"] for block in sections["Check"] for step in block["steps"] if step["text"].startswith("Retighten")]
    assert len(again) == 3 and all("Set the wrench to" in step for step in again)


def test_a_torque_that_breaks_the_bolt_makes_no_sheet(tmp_path):
    job = tmp_path / "job.toml"
    job.write_text(JOINT.replace("{more}", 'maker-torque = "400N.m"'))  # M12 8.8 bears a proof load of 48.9 kN: 80 N.m
    done = run("--file", job)
    assert done.returncode == 2 and done.stdout == ""
    assert "joint 'bonnet': M12 8.8, oiled, 400 N.m: no clamp load. Breaks" in done.stderr and "No sheet is made" in done.stderr


@pytest.mark.parametrize("torque, words", [("70N.m", "The maker's figure takes precedence"), ("100N.m", "Ask the maker before using theirs")])
def test_a_maker_s_torque_that_may_stretch_the_bolt_is_questioned(tmp_path, torque, words):
    job = tmp_path / "job.toml"
    job.write_text(JOINT.replace("{more}", f'maker-torque = "{torque}"'))
    assert words in sheet(job)
    assert (tauten.clamp(thread="M12", property_class="8.8", condition="oiled", torque=torque).candidates[0].chance_of_yield > 0.01) == ("Ask" in words)


def blocks_of(path, title):
    return next(section["blocks"] for section in json.loads(sheet(path, "--json"))["sections"] if section["title"] == title)


def test_pressure_is_named_beside_the_first_bolt_wherever_it_may_be(bonnet):
    """A ring of bolts may be a flange, and so may what has a gasket; feet that stand on a frame are none."""
    for pattern, more, named in (("circle:6:120mm", "", True), ("rectangle:216mm:140mm", 'gasket = "fibre"', True),
                                 ("rectangle:216mm:140mm", "", False)):
        path = bonnet(more + '\n[joint.free]\nrust = "rusted"')
        path.write_text(path.read_text().replace("circle:6:120mm", pattern))
        steps = [step for block in blocks_of(path, "Undo") for step in block["steps"]]
        first = next(i for i, step in enumerate(steps) if step["text"].startswith("Socket"))
        before = " ".join(step["caution"] for step in steps[:first])
        assert ("isolate, drain, vent and prove zero" in before) == named
        assert ("isolate, drain, vent and prove zero" in " ".join(step["caution"] for step in steps)) == named
        assert "springs or pressure" in before  # in every joint


def test_what_is_taken_off_and_cleaned_stands_in_its_place(bonnet):
    path = bonnet('take-off = ["Lift the bonnet off."]\nunload = ["Take the handwheel off."]\ngasket = "fibre"')
    steps = [step["text"] for block in blocks_of(path, "Undo") for step in block["steps"]]
    place = [next(i for i, step in enumerate(steps) if words in step)
             for words in ("Take the handwheel off.", "Take the bolts out", "Lift the bonnet off.", "Keep the parts of this joint together")]
    assert place == sorted(place)
    steps = [step["text"] for block in blocks_of(path, "Clean, lubricate and assemble") for step in block["steps"]]
    assert any("old gasket off both sealing faces" in step for step in steps)
    assert not any("sealing faces" in step["text"] for block in blocks_of(bonnet(), "Clean, lubricate and assemble") for step in block["steps"])


def test_an_order_that_goes_round_is_named_where_it_is_tightened(bonnet):
    path = bonnet()
    path.write_text(path.read_text() + '[joint.sequence]\norder = "1;2;3;4;5;6"\n')
    (step,) = [step for block in blocks_of(path, "Clean, lubricate and assemble") for step in block["steps"] if "pass by pass" in step["text"]]
    assert "neighbours follow each other" in step["caution"]


def test_each_printed_page_has_number_and_fingerprint_and_no_title_ends_the_style(bonnet):
    path = bonnet()
    path.write_text(path.read_text().replace("Valve bonnet", 'Bonnet } </style><script>1</script> \\\\ \\" <!--'))
    page = sheet(path, "--format", "html")
    style = page.split("<style>")[1].split("</style>")[0]
    (foot,) = re.findall(r'@bottom-left \{ content: "([^"]*)"', style)
    decoded = re.sub(r"\\([0-9a-f]{6}) ", lambda code: chr(int(code.group(1), 16)), foot)
    title = 'Bonnet } </style><script>1</script> \\ " <!--'
    assert decoded.startswith(title + " - Printed 2026-05-04 07:30, tauten") and re.search(r"inputs [0-9a-f-]{19}$", decoded)
    assert "counter(page)" in style and "counter(pages)" in style and "<script" not in page


def test_the_record_has_each_bolt_with_its_turn(bonnet):
    table = blocks_of(bonnet(), "Record")[0]["table"]
    order = tauten.sequence("circle:6:120mm").order
    assert [int(row["Position"]) for row in table] == list(range(1, 7))
    assert [order[int(row["Turn"]) - 1] for row in table] == list(range(1, 7))
    assert all(value == "" for row in table for name, value in row.items() if name not in ("Position", "Turn"))


def test_an_angle_counts_from_where_the_passes_end(bonnet):
    turned = '[joint.turn]\nlayer = ["40mm"]\nangle = "40deg"\n'
    path = bonnet('maker-torque = "40N.m"')
    path.write_text(path.read_text() + turned)
    checks = [step["text"] for block in blocks_of(path, "Check") for step in block["steps"]]
    assert checks[0].startswith("Every bolt was turned by its angle") and not any("Set the wrench" in step for step in checks)
    asked = [row["Asked with"] for row in blocks_of(path, "Where the figures come from")[0]["table"]]
    assert any("tauten turn" in one and '--snug-torque "40 N.m"' in one for one in asked)
    path.write_text(path.read_text() + 'snug-torque = "30N.m"\n')
    done = run("--file", path)
    assert done.returncode == 2 and "counts from 30 N.m, but the passes end at 40 N.m" in done.stderr


def test_a_joint_of_many_bolts_with_several_tools(bonnet):
    path = bonnet()
    path.write_text(path.read_text().replace("circle:6:120mm", "circle:24:600mm").replace('wrench = "small"\n', "")
                    + '[joint.sequence]\nat-once = 4\n')
    sets = tauten.sequence("circle:24:600mm", at_once=4).sets
    (table,) = passes(path)
    assert table[0]["Order"] == "; ".join(" ".join(map(str, one)) for one in sets) and ";" not in table[-1]["Order"]
    for row in blocks_of(path, "Record")[0]["table"]:
        assert int(row["Position"]) in sets[int(row["Turn"]) - 1]
    fetched = [step["text"] for block in blocks_of(path, "What, where, and before you start") for step in block["steps"]]
    low, high = (next(row for row in table[::way])["Set the wrench to"] for way in (1, -1))
    assert f"Torque wrench whose range holds {low} to {high} (joint 1)." in fetched
    page = sheet(path, "--format", "html")
    assert 'class="fill long"' in page and "turn 24" not in page
    assert 'class="fill long"' not in sheet(bonnet(), "--format", "html")
