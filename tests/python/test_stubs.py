"""The stubs: names, signatures and units are those of the registry, mypy takes a program, stubtest finds no difference."""
import inspect
import os
import pathlib
import re
import subprocess
import sys

import pytest
import tauten

HERE = pathlib.Path(__file__).resolve().parent
PACKAGE = pathlib.Path(tauten.__file__).resolve().parent
CONFIG = HERE / "typed" / "mypy.ini"
ENVIRONMENT = {**os.environ, "MYPYPATH": str(PACKAGE.parent), "PYTHONPATH": str(PACKAGE.parent)}


def run(*words, **options):
    done = subprocess.run([sys.executable, *map(str, words)], capture_output=True, text=True, **options)
    assert done.returncode == 0, done.stdout + done.stderr


def test_what_is_derived_is_what_questions_and_formulas_say():
    run(HERE.parents[1] / "src/tools/derived.py", "--check")


def test_signatures_and_docstrings_are_what_the_registry_says():
    for name, formula in tauten.formulas.items():
        inputs = [parameter.name for parameter in inspect.signature(formula).parameters.values()
                  if parameter.kind is parameter.POSITIONAL_OR_KEYWORD]
        assert inputs == [arg.name for arg in formula.inputs], name
        for arg in (*formula.inputs, formula.output):
            line = re.search(rf"^{arg.name} : (.*)$", formula.__doc__, re.M)
            assert line and (line[1].endswith(f" in {arg.unit}") if arg.unit else " in " not in line[1]), (name, arg.name)


def test_mypy_strict_takes_a_program(tmp_path):
    pytest.importorskip("mypy")
    # A package on PYTHONPATH passes for an installed one, of whose stubs mypy tells no error.
    environment = {name: value for name, value in ENVIRONMENT.items() if name != "PYTHONPATH"}
    run("-m", "mypy", "--config-file", CONFIG, "--cache-dir", tmp_path, HERE / "typed/sample.py", env=environment)


@pytest.mark.skipif("TAUTEN_WHOLE" not in os.environ, reason="takes half a minute; TAUTEN_WHOLE=1 asks for it")
def test_stubtest_finds_no_difference(tmp_path):
    pytest.importorskip("mypy")
    run("-m", "mypy.stubtest", "tauten", "--mypy-config-file", CONFIG,
        "--allowlist", CONFIG.with_name("allowed.txt"), "--ignore-unused-allowlist", cwd=tmp_path, env=ENVIRONMENT)
