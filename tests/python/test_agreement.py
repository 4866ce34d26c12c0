"""C++, C, Python and the command line give the very same numbers, and WebAssembly (tests/wasm) by the same cases."""
import concurrent.futures
import json
import os
import struct
import subprocess

import numpy as np
import pytest
import tauten

VALUES = os.environ.get("TAUTEN_VALUES")
PROGRAM = os.environ.get("TAUTEN_PROGRAM")
pytestmark = pytest.mark.skipif(not VALUES, reason="the C interface is not built")


@pytest.fixture(scope="module")
def cases():
    """{formula: (value by row, inputs by row)}; the program has held C++ against C already."""
    found = {}
    for line in subprocess.run([VALUES, "80"], capture_output=True, text=True, check=True).stdout.splitlines():
        name, *words = line.split()
        value, _, *rest = struct.unpack(f">{len(words)}d", bytes.fromhex("".join(words)))
        values, inputs = found.setdefault(name, ([], []))
        values.append(value)
        inputs.append(rest[len(rest) // 2:])
    return found


def test_ten_thousand_cases_over_every_formula(cases):
    assert set(cases) == set(tauten.formulas)
    assert sum(len(values) for values, _ in cases.values()) >= 10_000


@pytest.mark.filterwarnings("ignore::tauten.ValidityWarning")
def test_python_on_numbers_and_on_arrays(cases):
    for name, (values, inputs) in cases.items():
        formula = tauten.formulas[name]
        assert np.array_equal(formula(*np.array(inputs).T), values), name
        assert [formula(*row) for row in inputs] == values, name


# A unit whose factor is 1, so that what is written is what is meant.
def spelled(number, argument):
    return f"{argument.name}={number!r} {argument.unit}"


@pytest.mark.skipif(not PROGRAM, reason="the command line program is not built")
def test_command_line(cases):
    def answered(case):
        name, row = case
        words = [spelled(x, argument) for x, argument in zip(row, tauten.formulas[name].inputs)]
        run = subprocess.run([PROGRAM, "eval", name, *words, "--json"], capture_output=True, text=True, check=True)
        return json.loads(run.stdout)["value"]

    # A process for each row takes a minute; CI asks for all of them.
    step = 1 if os.environ.get("TAUTEN_WHOLE") else 10
    rows = [(name, row, value) for name, (values, inputs) in cases.items()
            for row, value in list(zip(inputs, values))[::step]]
    assert {row[0] for row in rows} == set(cases)
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        found = list(pool.map(answered, [row[:2] for row in rows]))
    differing = [(row, value) for row, value in zip(rows, found) if row[2] != value]
    assert not differing, differing[:3]
