"""Everything that is written in LaTeX, set by TeX itself: each formula with symbols and with values, and whole answers.

Nothing may be an error, no character may be missing, and no line may run into the margin of an ordinary article.
"""
import re
import shutil
import subprocess

import pytest

import tauten
from tauten import uncertainty
from test_answers import FREE, PUMP_FOOT, TURN, with_extension
from test_expressions import points

INCHES = tauten.Style(digits=6, units={"length": "in", "area": "in2", "force": "lbf", "torque": "lbf.ft", "stress": "ksi"})


def uncertainties():
    chain = dict(torque=uncertainty.uniform("125N.m", "135N.m"), pitch="2mm", pitch_diameter="14.7mm",
                 thread_friction=(0.08, 0.12, 0.16), bearing_friction=uncertainty.normal(0.12, 0.01), bearing_diameter="20mm",
                 stress_diameter="14.12mm", yield_strength="640MPa")
    for question, known in ((["preload_from_torque", "thread_torque", "yield_utilisation"], chain),
                            (uncertainty.clamp(**PUMP_FOOT), {})):
        yield uncertainty.budget(question, known)
        yield uncertainty.monte_carlo(question, known, trials=20_000)
        yield uncertainty.sobol(question, known, trials=4096)


def answers():
    return [answer.explain("latex", style) for style in (None, INCHES) for answer in
            (tauten.clamp(**PUMP_FOOT), tauten.clamp(thread="M10", torque=300), tauten.torque_for(thread="M10"),
             with_extension(multiplier_ratio=4), tauten.free_joint(**FREE), TURN(), *uncertainties())]


def formulas():
    for formula in tauten.formulas.values():
        title = formula.name.replace("_", r"\_")
        inputs = ", ".join(f"${arg.latex}$" for arg in formula.inputs)
        yield (f"\\section{{{title}}}\n{formula._repr_latex_()} with {inputs}\n\n" +
               formula.explain(*points(formula)[0], format="latex"))


def set_by_tex(pages, folder):
    """Sets an article and gives back what TeX says about it."""
    if not shutil.which("pdflatex"):
        pytest.skip("pdflatex is not installed; a reader of its own looks at the formulas of the answers")
    (folder / "page.tex").write_text("\\documentclass{article}\\usepackage{amsmath}\\begin{document}\n" +
                                     "\n\\clearpage\n".join(pages) + "\n\\end{document}\n", encoding="utf-8")
    run = subprocess.run(["pdflatex", "-interaction=nonstopmode", "page.tex"], cwd=folder, capture_output=True)
    log = (folder / "page.log").read_text(encoding="utf-8", errors="replace")
    errors = re.findall(r"^!.*(?:\n.*){2}", log, re.M)
    assert run.returncode == 0 and not errors, errors[:5]
    assert "Output written on page.pdf" in log and (folder / "page.pdf").stat().st_size > 1000
    return log


def mistakes(log):
    return re.findall("Missing character.*", log) + re.findall(r"Overfull \\hbox \(([\d.]+pt too wide)\)", log)


@pytest.mark.filterwarnings("ignore::tauten.ValidityWarning")
def test_formulas_and_answers_are_set_without_a_mistake(tmp_path):
    assert not mistakes(set_by_tex([*formulas(), *answers()], tmp_path))


def test_marks_of_latex_in_a_name_are_text(tmp_path):
    name = r"Pumpenfuß 50% of A_s & <b>|$x$ {y} #1 ~ ^ \ × ° µ ½"
    page = tauten.clamp(**PUMP_FOOT, name=name).explain("latex")
    assert "Pumpenfuß" in page
    assert not mistakes(set_by_tex([page], tmp_path))


def test_mistakes_are_seen(tmp_path):
    long = r"\begin{align*}a &= " + " + ".join(["b"] * 60) + r"\end{align*}"
    assert "too wide" in mistakes(set_by_tex([long], tmp_path))[0]
    with pytest.raises(AssertionError, match="Double subscript"):
        set_by_tex(["$A_s_2$"], tmp_path)


def test_formulas_of_answers_are_understood_by_a_reader_of_its_own():
    mathtext = pytest.importorskip("matplotlib.mathtext")
    parser = mathtext.MathTextParser("path")
    found = set()
    for page in answers():
        inline = re.findall(r"(?<!\\)\$([^$]+)(?<!\\)\$", page)
        rows = [row for block in re.findall(r"\\begin{align\*}\n(.*?)\\end{align\*}", page, re.S)
                for row in re.split(r"\\\\\[.*?\]\n", block)]
        assert len(rows) >= 2 * page.count("\\begin{align*}")
        found.update(inline + [row.strip().replace("&", "") for row in rows])
    for formula in found:
        parser.parse(f"${formula}$")
    assert len(found) > 150
