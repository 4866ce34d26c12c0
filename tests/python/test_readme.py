"""The README shows nothing but files that are compiled and run here."""
import csv
import os
import pathlib
import re
import subprocess
import sys

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
EXAMPLES = ROOT / "docs" / "examples"


def test_code_blocks_are_the_example_files():
    blocks = re.findall(r"<!-- (\S+) -->\n```\w+\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.S)
    assert {name for name, _ in blocks} == {f"docs/examples/clamp.{kind}" for kind in ("cpp", "py", "sh")}
    for name, code in blocks:
        assert code == (ROOT / name).read_text(encoding="utf-8"), name


def test_first_words_state_the_job():
    lines = (ROOT / "README.md").read_text(encoding="utf-8").splitlines()
    assert lines[0] == "# tauten" and lines[2].startswith("Someone dismantles a joint")


def test_number_of_printed_figures_is_what_the_readme_says():
    text = " ".join((ROOT / "README.md").read_text(encoding="utf-8").split())
    assert "about 1,500 of them read in print, 600 in reprints and 300 from memory" in text
    seen = {"seen": 0, "reprint": 0, "memory": 0}
    for path in (ROOT / "tests" / "published").glob("*.csv"):
        with open(path, newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file))
        if path.stem == "left_out":
            assert rows and all(row["document"] and row["figures"] and row["reason"] for row in rows)
        elif path.stem != "no_figure":
            for row in rows:
                seen[row["confidence"]] += 1
                assert row["confidence"] == "memory" or "memory" not in row["source"].replace("result from memory", ""), row
                assert row["confidence"] != "seen" or "reprint" not in row["source"], row
    assert {how: round(count, -2) for how, count in seen.items()} == {"seen": 1500, "reprint": 600, "memory": 300}


def test_python_example_runs():
    run = subprocess.run([sys.executable, EXAMPLES / "clamp.py"], capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    assert run.stdout.startswith("M16: 48 to 77 kN, within limits")


@pytest.mark.parametrize("line", (EXAMPLES / "clamp.sh").read_text(encoding="utf-8").splitlines())
def test_command_line_example_runs(line):
    program = os.environ.get("TAUTEN_PROGRAM")
    if not program:
        pytest.skip("the command line program is not built")
    run = subprocess.run([program, *line.split()[1:]], capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    assert run.stdout.strip() and not run.stderr
