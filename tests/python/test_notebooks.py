"""Every notebook of the documentation runs from top to bottom, and is kept without its outputs."""
import base64
import functools
import io
import os
import pathlib
import re
import sys

import numpy as np
import pytest

import tauten

nbformat = pytest.importorskip("nbformat")
nbclient = pytest.importorskip("nbclient")
pytest.importorskip("ipykernel")
plt = pytest.importorskip("matplotlib.pyplot")

DOCS = pathlib.Path(__file__).resolve().parents[2] / "docs"
sys.path.insert(0, str(DOCS))
from test_plots import check_texts
from notebook import FOLDER, NOTEBOOKS, execute, for_students, kernel, outputs, page, shown, solutions, title


@pytest.fixture(scope="module", autouse=True)
def one_kernel():
    """The documentation runs each notebook in a process of its own; here one is enough."""
    global run
    with kernel() as run:
        yield


@functools.cache
def executed(path):
    return run(path)


def test_there_are_lessons():
    assert sorted(NOTEBOOKS) == sorted(FOLDER.glob("*.ipynb")), "each lesson has one place in the course"
    assert len({title(path) for path in NOTEBOOKS}) == len(NOTEBOOKS)


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_is_kept_without_outputs(path):
    notebook = nbformat.read(path, as_version=4)
    nbformat.validate(notebook)
    for cell in notebook.cells:
        if cell.cell_type == "code":
            assert not cell.outputs and cell.execution_count is None, "clear all outputs before saving"
    assert "invented" in notebook.cells[0].source, "data must be marked as invented"


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_runs(path):
    notebook = executed(path)
    complaints = [output for output in outputs(notebook) if output.get("name") == "stderr"]
    assert not complaints
    for picture in shown(notebook, "image/png"):
        pixels = plt.imread(io.BytesIO(base64.b64decode(picture)))
        assert pixels.shape[0] > 200 and pixels[..., :3].std() > 0.05, "an empty picture"


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_is_a_lesson(path):
    """A goal, some theory, a picture to print, and exercises each of which is solved by the library."""
    notebook = executed(path)
    assert "**Goal:**" in notebook.cells[0].source and "irrigation pumping station" in notebook.cells[0].source
    assert "approve a joint for service" in " ".join(notebook.cells[0].source.split())
    text = "\n".join(cell.source for cell in notebook.cells if cell.cell_type == "markdown")
    assert re.search("^## Theory", text, re.M)
    if inline := re.findall("^### Exercise", text, re.M):  # each with its solution below it
        solved = [cell for cell in notebook.cells if cell.source.startswith("# Solution")]
        assert len(inline) == len(solved) >= 3
        assert all("tauten." in cell.source and cell.outputs for cell in solved)
    else:
        asked = re.findall(r"^(\d+)\. ", re.search("## Exercises\n(.*)## Solutions", text, re.S)[1], re.M)
        assert len(asked) >= 3
        place = next(n for n, cell in enumerate(notebook.cells) if cell.source.rstrip().endswith("## Solutions"))
        solved = [cell for cell in notebook.cells[place + 1:] if cell.cell_type == "code"]
        assert any("tauten." in cell.source for cell in solved)
        told = "".join(o.text for cell in solved for o in cell.outputs if o.output_type == "stream")
        assert set(re.findall(r"^(\d+)\.", told, re.M)) == set(asked)
    assert shown(notebook, "image/png")


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_tells_where_its_figures_come_from(path):
    notebook = executed(path)
    place = next(n for n, cell in enumerate(notebook.cells) if cell.source.startswith("## Where the figures come from"))
    told = "".join(o.text for cell in notebook.cells[place:] if cell.cell_type == "code" for o in cell.outputs)
    code = "\n".join(cell.source for cell in notebook.cells[:place] if cell.cell_type == "code")
    used = [name for name in tauten.conditions if f'"{name}"' in code]
    assert used or path.stem in ("crowfoot", "rusted_flange")  # which ask for no friction
    for name in used:
        assert str(tauten.thread_condition(name).source) in told, name


@pytest.mark.skipif("TAUTEN_WHOLE" not in os.environ, reason="runs each lesson once more; TAUTEN_WHOLE=1 asks for it")
@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_no_text_of_a_picture_lies_on_another(path, monkeypatch):
    """The cells once more, here, where the pictures can be asked and not only looked at."""
    monkeypatch.setattr(plt, "show", lambda: None)
    plt.close("all")
    names, seen = {}, 0
    for cell in nbformat.read(path, as_version=4).cells:
        if cell.cell_type == "code":
            exec(compile(re.sub("^%.*$", "", cell.source, flags=re.M), path.stem, "exec"), names)
            for number in plt.get_fignums():
                check_texts(plt.figure(number).axes[0])
                seen += 1
            plt.close("all")
    assert seen == len(shown(executed(path), "image/png"))


def test_becomes_a_page(tmp_path):
    path = FOLDER / "nut_factor.ipynb"
    text, pictures = page(path, executed(path), tmp_path)
    assert [name for name, _ in pictures] == ["nut_factor-1.png", "nut_factor-2.png"] and all(told in text for _, told in pictures)
    assert text.startswith("# What is a nut factor?") and text.count("```{image}") == text.count(":alt: 'Picture ") == len(list(tmp_path.glob("*.png"))) == 2
    assert (tmp_path / path.name).read_bytes() == path.read_bytes() and f"<{path.name}>" in text
    assert "```python" in text and "$$K = " in text and "oiled on the" not in text


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_pictures_have_descriptions(path, tmp_path):
    """Each its own, of what it shows, for those who cannot see it."""
    described = [text.partition(": ")[2] for _, text in page(path, executed(path), tmp_path)[1]]
    assert len(set(described)) == len(described) and all(len(text) > 80 and "?." not in text for text in described)
    assert all(re.search("picture|It shows", text) for text in described)


def test_a_handout_names_symbols_once(tmp_path):
    """Below each formula stand those that neither the text nor a formula above has named."""
    handout = pytest.importorskip("handout")
    path = FOLDER / "fine_against_coarse.ipynb"
    notebook = executed(path)
    text = handout.page(path, notebook, page(path, notebook, tmp_path)[1], "Take care.")
    text = re.sub("<.*?>", "", re.sub("<math.*?</math>", "$", text, flags=re.S))
    assert "$: stress area; $: diameter; $: pitch." in text
    assert "$: pitch diameter; $: thread friction; $: bearing friction; $: bearing diameter." in text


def printed(name):
    return "".join(output.text for output in outputs(executed(FOLDER / f"{name}.ipynb")) if output.output_type == "stream")


def test_crowfoot_agrees_with_the_lever_by_hand():
    text = printed("crowfoot")
    assert f"set {130 * 400 / (400 + 100 * 0.5**0.5):.1f} N·m" in text
    assert "1. 130.0 N·m" in text and f"2. {130 * 400 / (400 - 100 * 0.5**0.5):.1f} N·m" in text
    assert f"4. {130 * (400 + 50) / (400 + 100 * 0.5**0.5):.1f} N·m" in text


def test_steps_are_under_what_they_are_for():
    """Typical first, then the end with the least load, then that with the most: a figure alone reads as a contradiction."""
    told = printed("oil_on_dry_threads").partition("dry\n")[2].partition("oiled\n")[0]
    heads = re.findall(r"^   (\S.*)$", told, re.M)
    assert len(heads) == 3 and "nominal" in heads[0] and "minimum load" in heads[1] and "maximum load" in heads[2]
    typical, low, high = (float(re.search(r"Preload that a torque leaves.*: ([\d.]+) kN", part)[1])
                          for part in re.split(r"^   \S.*$", told, flags=re.M)[1:])
    assert low < typical < high


def test_oil_on_dry_threads_shows_the_danger():
    verdicts = dict(re.findall(r"^([\w-]+) +K .* verdict: (.*)$", printed("oil_on_dry_threads"), re.M))
    assert verdicts["dry"] == "within limits" and verdicts["oiled"] in ("may yield", "may break")


def test_the_budget_is_that_of_trials_drawn_by_hand():
    """ISO 16047, linear form: torque over lever, with NumPy's own random numbers; figures of the lesson's theory."""
    text = printed("scatter_budget")
    chance, count = np.random.default_rng(5), 400_000
    thread, face = chance.triangular(0.08, 0.12, 0.16, (2, count))
    lever = 2e-3 / (2 * np.pi) + thread * 14.701e-3 / np.sqrt(3) + face * chance.triangular(19e-3, 20e-3, 21e-3, count) / 2
    loads = 140 * chance.uniform(0.96, 1.04, count) / lever / 1e3
    first, trials = ([float(number) for number in re.findall(r"[\d.]+", line.replace("95 %", ""))]
                     for line in re.findall(r"^(?:first order|trials) +(.*)$", text, re.M))
    assert trials == pytest.approx([loads.mean(), *np.quantile(loads, (0.025, 0.975))], abs=0.15)
    assert first[0] == pytest.approx(trials[0], rel=0.02) and (first[2] - first[1]) / 4 == pytest.approx(loads.std(), rel=0.05)
    indices = dict(re.findall(r"^(\w+) +budget.*first +([\d.]+)%", text, re.M))
    held = np.corrcoef(face, loads)[0, 1] ** 2  # nearly linear, so the first index is the square of the correlation
    assert float(indices["bearing_friction"]) == pytest.approx(100 * held, abs=2)
    assert 97 < float(re.search(r"^together +first +([\d.]+)%", text, re.M)[1]) <= 100


def test_an_angle_scatters_less_than_a_torque():
    by_torque, by_angle = re.findall(r"high over low ([\d.]+)", printed("angle_against_torque"))
    assert float(by_angle) < 0.85 * float(by_torque)


def test_friction_test_gives_back_what_went_in():
    # First bolt of the rig by ISO 16047: mu_th = (T_th/F - P/(2 pi)) / (d2/sqrt(3)), in mm.
    expected = (37.1 / 36.9 - 1.75 / 6.283185307) / (10.863 / 3**0.5)
    assert float(re.search(r"^ +1 +([\d.]+)", printed("friction_test"), re.M)[1]) == pytest.approx(expected, abs=6e-4)


def test_pump_foot_says_what_it_promises():
    notebook = executed(FOLDER / "pump_foot.ipynb")
    printed = "".join(output.text for output in outputs(notebook) if output.output_type == "stream")
    assert "M16" in printed
    # The lesson itself says how many bolts may stretch; the program says the same.
    lesson = " ".join(" ".join(cell.source.split()) for cell in notebook.cells if cell.cell_type == "markdown")
    share = re.search(r"may stretch a bolt of this foot for good: about (1 in \d+) that just meet their class", lesson)[1]
    assert f"verdict: may yield. Chance of stretching for good: {share} for a bolt that just meets its class" in printed
    assert len(shown(notebook, "image/png")) == 1
    assert len(shown(notebook, "text/html")) == 2
    assert any("\\mu_{G}" in text for text in shown(notebook, "text/markdown"))


def test_rusted_flange_says_what_it_promises():
    notebook = executed(FOLDER / "rusted_flange.ipynb")
    printed = "".join(output.text for output in outputs(notebook) if output.output_type == "stream")
    assert len(shown(notebook, "image/png")) == 3
    width = re.search(r"high over low: ([\d.]+) before, ([\d.]+) after four", printed)
    assert float(width[2]) < float(width[1])  # what was learned narrows the band
    free = [float(number) for number in re.findall(r"up to \d+ N·m: ([\d.]+) of 8 come free", printed)]
    assert len(free) == 4 and free == sorted(free) and 0 < free[0] < free[-1] <= 8
    assert re.search(r"^> ", printed, re.M) and "stop at" in printed
    assert "(Estimate.)" in printed and "approve a joint for service" in printed


def test_snug_to_yield_says_what_it_promises():
    notebook = executed(FOLDER / "snug_to_yield.ipynb")
    printed = "".join(output.text for output in outputs(notebook) if output.output_type == "stream")
    assert len(shown(notebook, "image/png")) == 3
    assert any("\\delta_{S}" in said or "\\delta_S" in said for said in shown(notebook, "text/markdown"))
    # By torque the paste adds more than a third of the load, by angle less than half as much.
    torque, angle = (float(re.search(rf"by {way}: .*, ([+-]\d+) %", printed)[1]) for way in ("torque", "angle"))
    assert torque > 30 and 0 < angle < torque / 2
    assert re.search("by that torque alone: +some bolts would break", printed)
    shares = re.findall(r"friction ([\d.]+)%, elastic ([\d.]+)%, plastic ([\d.]+)%", printed)
    assert len(shares) == 3 and float(shares[0][2]) == 0 < float(shares[2][2])
    assert "single use" in printed and "may serve again" in printed and "past yield" in printed
    assert "(Estimate.)" in printed and "approve a joint for service" in printed


def test_a_print_that_arrives_in_pieces_is_one(tmp_path):
    """A kernel flushes what is printed after a while, so a slow one sends the end of a line by itself."""
    notebook = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(
        "import sys\nprint('pump feet', end='', flush=True)\nimport time\ntime.sleep(0.5)\nprint(flush=True)")])
    path = tmp_path / "pieces.ipynb"
    nbformat.write(notebook, path)
    assert [output.text for output in outputs(execute(path))] == ["pump feet\n"]


def test_students_get_the_lessons_without_solutions():
    for path in NOTEBOOKS:
        whole, theirs = nbformat.read(path, as_version=4), for_students(path)
        nbformat.validate(theirs)
        solved = [whole.cells[place].source for place in solutions(whole) if whole.cells[place].cell_type == "code"]
        kept = "\n".join(cell.source for cell in theirs.cells)
        assert solved and not any(source in kept for source in solved)
        assert kept.count("# Your solution") == len(solved)
        untouched = [cell.source for place, cell in enumerate(whole.cells) if place not in solutions(whole)]
        assert [cell.source for cell in theirs.cells if cell.source != "# Your solution"] == untouched


def test_solutions_are_folded_on_a_page(tmp_path):
    text, _ = page(FOLDER / "snug_to_yield.ipynb", executed(FOLDER / "snug_to_yield.ipynb"), tmp_path)
    assert text.count("<details>") == text.count("</details>") == 1
    inside = text.partition("<details>")[2].partition("</details>")[0]
    assert "# Softer parts take more" in inside and "## Where the figures come from" not in inside


def test_joint_diagram_agrees_with_two_springs_by_hand():
    text = printed("joint_diagram")
    bolt, parts = map(float, re.search(r"bolt ([\d.]+) µm/kN, parts ([\d.]+) µm/kN", text).groups())
    share = parts / (bolt + parts)
    lines = {int(pull): tuple(map(float, both)) for pull, *both in
             re.findall(r"^ *(\d+) kN from outside: bolt +([\d.]+) kN, parts +([\d.]+) kN", text, re.M)}
    preload = lines[0][0]
    for pull in (15, 30, 45):
        assert lines[pull] == pytest.approx((preload + share * pull, preload - (1 - share) * pull), abs=0.25)
    assert lines[75] == (75, 0)
    assert float(re.search(r"it opens at ([\d.]+)", text)[1]) == pytest.approx(preload / (1 - share), rel=0.01)


def test_what_settles_follows_the_springs():
    text = printed("what_settles")
    losses = [float(loss) for loss in re.findall(r"mm: ([\d.]+) kN lost", text)]
    assert losses == sorted(losses, reverse=True) and len(losses) == 6
    assert "1. 4um: 0.91 kN" in text and "1. 8um: 1.82 kN" in text  # 4 and 8 over 3.6 + 0.8
    assert "2. 30 kN" in text  # a quarter of 40 is gone


def test_self_locking_by_the_slope():
    text = printed("self_locking")
    for name, pitch, diameter in (("M16", 2, 14.701), ("M6", 1, 5.350)):  # ISO 724
        assert f"{name} " in text and f"above a friction of {pitch / (np.pi * diameter) * np.cos(np.pi / 6):.3f}" in text
    assert f"1. {8 / (np.pi * 20) * np.cos(np.pi / 6):.3f}" in text


def test_pressure_and_engagement_by_hand():
    text = printed("pressure_and_engagement")
    assert f"1. {40e3 / (np.pi / 4 * (16.6**2 - 13.5**2)):.0f} MPa" in text
    assert "the bolt breaks first" in text and "bears 260 MPa" in text
