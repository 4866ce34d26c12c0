"""The documentation has a page for everything, and each page has what it must have. The pages themselves are built and
looked at by `./dev docs` and tests/site.py."""
import csv
import pathlib
import re
import shutil
import textwrap
import sys

import numpy as np
import pytest

import tauten

ROOT = pathlib.Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "docs"))
import pages
from pages import checks, cpp, formulas, python_reference, words


def rows_of_print():
    for path in sorted((ROOT / "tests" / "published").glob("*.csv")):
        if path.stem not in ("left_out", "no_figure"):
            with open(path, encoding="utf-8") as file:
                yield from csv.DictReader(file)


@pytest.mark.parametrize("name", tauten.formulas)
def test_every_formula_has_what_its_page_needs(name):
    formula = tauten.formulas[name]
    assert formula.sources and all(source.document or source.seen == "judgement" for source in formula.sources)
    for arg in (*formula.inputs, formula.output):
        assert bool(arg.unit) == (arg.dimension != "plain number"), arg.name
        assert arg.domain.low < arg.domain.high and arg.domain_text
    assert np.isfinite(formula.ufunc(*formulas.example(formula)))
    place, points, lines = formulas.curves(formula)
    assert lines
    for _, values in lines:
        assert np.isfinite(values).sum() > 20 and np.ptp(values[np.isfinite(values)]) > 0
    # Nothing is drawn that no thread can be: a diameter does not change without its pitch diameter.
    names = {arg.name for arg in formula.inputs}
    assert formula.inputs[place].name not in formulas.THREAD or names <= formulas.THREAD
    if not names <= formulas.THREAD:
        assert not any(label.startswith(tuple(name.replace("_", " ") + " " for name in formulas.THREAD)) for label, _ in lines)
    # What is drawn is what the library gives at that place.
    assert points[0] < points[-1] and 0 <= place < len(formula.inputs)


def test_every_formula_has_a_published_figure_or_a_reason():
    with open(ROOT / "tests" / "published" / "no_figure.csv", encoding="utf-8") as file:
        reasons = {row["formula"]: row for row in csv.DictReader(file)}
    printed = {row["formula"] for row in rows_of_print()}
    used = {word for row in rows_of_print() for word in re.findall(r"\w+", row["given"])}
    held = [name for name in tauten.formulas if name in printed]
    print(f"{len(tauten.formulas)} formulas, {len(held)} with a figure of their own, {len(reasons)} with a reason why not")
    assert set(reasons) <= set(tauten.formulas) and not set(reasons) & printed
    # What is left gives inputs of printed cases; the runner of the figures counts these.
    assert len(set(tauten.formulas) - printed - set(reasons)) <= 10
    for name, row in reasons.items():
        held_by = (ROOT / "tests" / row["held_by"]).read_text(encoding="utf-8")
        struct = "".join(part.capitalize() for part in name.split("_"))
        assert re.search(rf"\b({name}|{struct})\b", held_by), f"{row['held_by']} does not test {name}"
        assert len(row["reason"]) > 15
    assert used


def test_every_printed_figure_has_a_kind():
    kinds = set()
    for row in rows_of_print():
        check = checks.Comparison("", row["id"], row["formula"], "", row["given"], row["published"], row["unit"], "1", "0", "1",
                                  row["why"], row["source"], row["confidence"])
        kinds.add(check.kind)
        assert check.seen
    assert kinds == {"standard", "handbook", "paper", "lecture notes", "common practice"}
    with pytest.raises(ValueError, match="name the kind"):
        check._replace(source="An unknown book").kind


def test_nomenclature_is_the_vocabulary():
    listed = dict(re.findall(r'WORD\((\w+), "[^"]+", (\w+)\)',
                             (ROOT / "include" / "tauten" / "base" / "vocabulary.hpp").read_text(encoding="utf-8")))
    shown = words.terms()
    inputs = {arg.name for formula in tauten.formulas.values() for arg in formula.inputs}
    assert inputs <= set(shown) and inputs <= set(listed)
    for name in inputs:
        (symbols, dimension, unit, used) = shown[name]
        assert symbols and used and bool(unit) == (listed[name] != "number"), name


def test_every_question_has_a_page():
    asked = python_reference.questions()
    assert {"identify", "clamp", "torque_for", "reach", "free_joint"} <= set(asked)
    for name in asked:
        told = getattr(tauten, name).__doc__
        assert re.search("Parameters\n|Returns\n", told) or len(told.splitlines()) < 12


def test_other_names_of_arguments_are_told():
    told = {name: (option, verbs) for name, option, verbs in python_reference.other_names()}
    assert told["face_condition"] == ("--face", ["clamp", "torque", "turn"])
    assert told["extensions"] == ("--extension", ["reach"])
    assert told["property_class"][0] == "--class" and told["specified_condition"][0] == "--specified"
    assert not {"clamp_load", "wrench_accuracy"} & set(told)  # the same but for the hyphen


def test_sentences_wrap_and_columns_scroll():
    caution = "- Keep everyone out of the path of a wrench, bar or extension that may slip. Pull, do not push. Wear eye protection."
    printed = ("$ tauten clamp\n\nEnd            Chance\n-------------  ------\ncomes free         88\n"
               + "\n  ".join(textwrap.wrap(caution, 100)))
    shown = pages.output(printed, unbroken=True)
    assert shown.count('class="aligned"') == 1 and shown.count('class="wraps"') == 2 and shown.count("<pre>") == 1
    assert len(caution) > 100 and f">{caution}<" in shown
    # What a notebook prints keeps its lines, whatever their length.
    rows = "\n".join(f"{'x' * 95} {n:5}" for n in range(3))
    assert rows in pages.output(rows)


def test_marks_of_markdown_are_taken_for_text():
    assert pages.escaped("a|b_c*[d]<e>$f$") == r"a\|b\_c\*\[d\]\<e\>\$f\$"
    assert pages.table(("x", "y"), [(1, 2)]).splitlines() == ["| x | y |", "|---|---|", "| 1 | 2 |"]


@pytest.mark.skipif(not shutil.which("doxygen"), reason="the C++ reference is read by doxygen")
def test_names_in_the_cpp_reference_are_links(tmp_path):
    """Each link has its one target; types in members and signatures, formulas and functions in comments are links."""
    reference = cpp.Reference(tmp_path / "read")
    reference.pages(tauten.formulas, tmp_path / "cpp")
    written = {path.stem: path.read_text(encoding="utf-8") for path in (tmp_path / "cpp").glob("*.md")}
    targets = [target for page in written.values() for target in re.findall(r"^\(([\w-]+)\)=$", page, re.M)]
    assert len(targets) == len(set(targets)) > 300
    links = {link for page in written.values() for link in re.findall(r"\]\(([\w-]+)\)", page)}
    of_formulas = {f"formula-{name.replace('_', '-')}" for name in tauten.formulas}
    assert links <= set(targets) | of_formulas and len(links) > 300
    assert of_formulas <= links
    answer = written["question-clamp_answer"]
    assert "| `notices` | `std::vector<`[`Notice`](cpp-type-notice)`>` |" in answer
    assert "[`torque_for`](cpp-function-torque-for)" in answer
    for page in written.values():  # no type of a signature without its link
        for code, after in re.findall(r"^```cpp\n([^`#]*)\n```\n\n(.*)", page, re.M):
            if "MonteCarloOptions" in code:
                assert "[`MonteCarloOptions`](cpp-type-montecarlooptions)" in after
    assert "Outcome<Clamp> try_clamp(const ClampJob" in written["question-workings-clamp"]
    assert reference.code("Error") == "[`Error`](cpp-type-error)" and reference.code("no_such_thing") == "`no_such_thing`"
    assert reference.code("stress_area") == "[`stress_area`](formula-stress-area)"
