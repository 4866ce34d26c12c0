"""The sum at the end of a run of all tests: what is skipped is told, and where everything is installed it fails the run."""
import pathlib
import subprocess
import sys

import pytest

SUMMARY = pathlib.Path(__file__).resolve().parents[1] / "summary.py"
OUTPUT = """<testsuite>
<testcase name="unit" status="run"><system-out>[doctest] test cases:  4 | 4 passed | 0 failed | 0 skipped</system-out></testcase>
<testcase name="python" status="run"><system-out>....s
SKIPPED [1] test_bar.py:7: could not import 'bar'
{} in 1.20s</system-out></testcase>
<testcase name="links" status="run"><system-out></system-out></testcase>
</testsuite>"""


@pytest.mark.parametrize("said, whole, last, code", [
    ("5 passed", [], "10 passed, 0 failed", 0), ("5 passed", ["--whole"], "10 passed, 0 failed", 0),
    ("4 passed, 1 skipped", [], "9 passed, 0 failed", 0), ("4 passed, 1 skipped", ["--whole"], "9 passed, 1 failed", 1),
    ("1 failed, 3 passed, 1 skipped", [], "8 passed, 1 failed", 1)])
def test_skipped_cases_are_counted(tmp_path, said, whole, last, code):
    (tmp_path / "tests.xml").write_text(OUTPUT.format(said))
    run = subprocess.run([sys.executable, SUMMARY, tmp_path / "tests.xml", *whole], capture_output=True, text=True)
    assert run.returncode == code and run.stdout.splitlines()[-1] == last
    assert ("1 skipped" in run.stdout) == ("skipped" in said)
    assert "SKIPPED [1] test_bar.py:7: could not import 'bar'" in run.stdout
