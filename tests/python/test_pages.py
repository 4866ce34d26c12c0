"""The pages of answers: the same figures in the same order, whoever reads them."""
import html
import os
import re
import subprocess

import pytest

import tauten

PROGRAM = os.environ.get("TAUTEN_PROGRAM")

REACH = dict(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "30deg")], bars=[("square", "250mm", "12.7mm")],
             multiplier_ratio=4, reaction_arm="300mm")
REACH_WORDS = ["reach", "--torque", "130N.m", "--wrench-length", "400mm", "--extension", "100mm@30deg", "--bar",
               "square:250mm:12.7mm", "--multiplier-ratio", "4", "--reaction-arm", "300mm"]
ANSWERS = {"reach": (lambda: tauten.reach(**REACH), REACH_WORDS),
           "identify": (lambda: tauten.identify(socket="24mm", property_class="8.8"),
                        ["identify", "--socket", "24mm", "--class", "8.8", "--all"])}


def numbers(text):
    """All numbers of a page in their order, but for those of a drawing."""
    return re.findall(r"(?<![\w.])\d+(?:\.\d+)?", text)


def without_drawing(page):
    page = re.sub(r"<svg.*?</svg>", "", page, flags=re.S)
    page = re.sub(r"```text\n.*?```\n", "", page, flags=re.S)
    # In text the drawing stands between the figures and the first table.
    return re.sub(r"\n\n[ /H=\-|\\\d].*?\n  F  fastener[^\n]*\n", "\n", page, flags=re.S)


@pytest.fixture(params=ANSWERS)
def asked(request):
    ask, words = ANSWERS[request.param]
    return ask(), words


def test_all_forms_have_the_same_figures_in_the_same_order(asked):
    answer, _ = asked
    text = numbers(" ".join(without_drawing(answer.page()).split()))
    assert len(text) > 15
    plain = html.unescape(re.sub(r"<[^>]+>", " ", re.sub(r'style="[^"]*"', "", without_drawing(answer.page("html")))))
    assert numbers(plain) == text
    assert numbers(without_drawing(answer.page("markdown"))) == text


def test_the_answer_is_line_one_and_the_parts_have_their_order(asked):
    answer, words = asked
    lines = answer.page().splitlines()
    assert " ".join(lines[:2]).startswith(answer.headline)
    assert max(map(len, lines)) <= 100
    parts = ("What to do", "What stands out", "Take care", "How far to trust this")
    places = [answer.page().index(f"\n{part}\n") for part in parts if f"\n{part}\n" in answer.page()]
    assert places == sorted(places) and lines.index("What to do") < 5 and "(Estimate.)" not in answer.page()
    if isinstance(answer, tauten.Identification):
        return  # nothing is turned yet
    care = answer.page().partition("\nTake care\n")[2].partition("\n\n")[0]
    assert 1 <= len(re.findall(r"^- ", care, re.M)) <= 8  # seven and the standing ones
    assert "approve a joint for service" in " ".join(care.split())

def test_print_notebook_and_command_line_show_the_page(asked):
    answer, words = asked
    assert str(answer) == answer.page() and answer._repr_html_() == answer.page("html")
    assert answer._repr_markdown_() == answer.page("markdown")
    for form in ("text", "markdown", "html"):
        done = subprocess.run([PROGRAM, *words, "--format", form], capture_output=True, text=True, timeout=60, check=True)
        assert done.stdout.rstrip("\n") == answer.page(form).rstrip("\n")
    short = subprocess.run([PROGRAM, *words, "--short"], capture_output=True, text=True, timeout=60, check=True)
    assert short.stdout == answer.headline + "\n"
    assert ("approve a joint for service" in short.stderr) == (words[0] != "identify")


def test_units_are_those_that_were_typed_or_asked_for():
    said = subprocess.run([PROGRAM, "reach", "--torque", "96lbf.ft", "--extension", "4in"], capture_output=True, text=True,
                          check=True).stdout
    assert "for 96 lbf.ft at the fastener" in said and "11.8 in from the drive" in " ".join(said.split())
    asked = subprocess.run([PROGRAM, "reach", "--torque", "96lbf.ft", "--unit", "torque=N.m"], capture_output=True, text=True,
                           check=True).stdout
    # 96 lbf.ft x 1.3558179 N.m = 130.2 N.m by hand, no more digits than of other figures
    assert "for 130 N.m at the fastener" in asked
    assert tauten.reach(**REACH).page(units={"torque": "lbf.ft"}).count("lbf.ft") >= 4
    for units in ({"torque": "mm"}, {"torque": "stone"}):
        with pytest.raises(tauten.Error):
            tauten.reach(**REACH).page(units=units)
    with pytest.raises(tauten.Error, match="text, markdown"):
        tauten.reach(**REACH).page("pdf")


def test_html_escapes():
    page = tauten.reach(torque="130N.m").page("html")
    assert "<script" not in page and page.count("<table") == page.count("</table>")
