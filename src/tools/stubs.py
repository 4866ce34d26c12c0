#!/usr/bin/env python3
"""Writes the signatures of all questions and formulas into the stubs of the Python package: `./dev python src/tools/stubs.py`.

With --check only tells whether they are as the inputs of the questions and the registry of formulas say.
"""
import argparse
import pathlib
import sys

import tauten

STUBS = pathlib.Path(__file__).resolve().parents[2] / "python/tauten/__init__.pyi"
MARK = "# ---- Formulas: written by src/tools/stubs.py, do not edit.\n"
HEAD = """
# One number in SI, or text with its unit; or an array of numbers in SI as well.
_Number = Union[float, str]
_Numbers = Union[float, str, NDArray[Any]]

class _Formula(Protocol):
    name: str
    summary: str
    inputs: tuple[Arg, ...]
    output: Arg
    sources: tuple[Source, ...]
    ufunc: Any
    def expression(self, notation: str = ..., **inputs: Any) -> str: ...
    def gradient(self, *args: Any, **inputs: Any) -> dict[str, Any]: ...
    def check(self, *args: Any, **inputs: Any) -> Check: ...
    def explain(self, *args: Any, format: str = ..., style: Any = ..., **inputs: Any) -> str: ...
"""


ASKED = "# ---- Questions: written by src/tools/stubs.py, do not edit.\n"
ASKED_END = "# ---- End of the questions.\n"
NO_TABLE = ("identify", "curve")
TYPES = {"quantity": "Quantity", "band": "Friction", "truth": "bool", "whole": "int", "list": "Union[str, Sequence[Any]]"}
NAMED = {"thread": "Union[str, Thread]", "property_class": "Union[str, PropertyClass]",
         "condition": "Union[str, ThreadCondition]"}


def parameter(entry, needed=False):
    named = NAMED.get("condition" if entry["name"].endswith("condition") else entry["name"])
    kind = named or TYPES.get(entry["kind"], "str")
    return f"    {entry['name']}: {kind},\n" if needed else f"    {entry['name']}: Optional[{kind}] = ...,\n"


def question_stub(question):
    name, inputs, result = question["function"], question["inputs"], question["result"]
    jobs = "    jobs: Optional[int] = ...,\n"
    one = "".join(parameter(entry, (name, entry["name"]) == ("clamp", "torque")) for entry in inputs)
    if name in NO_TABLE:
        return f"def {name}(\n    *,\n{one}) -> {result}: ...\n"
    rows = "".join(map(parameter, inputs)) + "    columns: Optional[Union[str, Sequence[str]]] = ...,\n" + jobs
    return (f"@overload\ndef {name}(\n    *,\n{one}{jobs if name == 'free_joint' else ''}) -> {result}: ...\n"
            f"@overload\ndef {name}(\n    table: Table,\n    /,\n    *,\n{rows}) -> Table: ...\n")


def kind(arg):
    return f"{arg.name} {arg.symbol} [{arg.unit or '1'}]"


def stub(formula):
    """One formula: numbers give a number, arrays an array; series, lazy arrays and quantities give their like.

    A number is one of the numbers and arrays too, so that the first two overlap, which mypy is told at the top of the file; it takes the first that fits.
    """
    names = [arg.name for arg in formula.inputs]
    return f'''
class _{formula.name}(_Formula, Protocol):
    """{formula.summary}.

    {", ".join(map(kind, formula.inputs))} -> {kind(formula.output)}
    """
    @overload
    def __call__(self, {", ".join(f"{name}: _Number" for name in names)}) -> float: ...
    @overload
    def __call__(self, {", ".join(f"{name}: _Numbers" for name in names)}, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, {", ".join(f"{name}: Any" for name in names)}, **options: Any) -> Any: ...

{formula.name}: _{formula.name}
'''


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--check", action="store_true")
    check = parser.parse_args().check
    present = STUBS.read_text(encoding="utf-8")
    front, _, rest = present.partition(ASKED)
    rest = rest.partition(ASKED_END)[2].partition(MARK)[0]
    asked = "".join(map(question_stub, tauten._core.questions))
    wanted = front + ASKED + asked + ASKED_END + rest + MARK + HEAD + "".join(map(stub, tauten.formulas.values()))
    if check:
        if present != wanted:
            sys.exit("the stubs differ from the registry; write them with ./dev python src/tools/stubs.py")
    else:
        STUBS.write_text(wanted, encoding="utf-8")


if __name__ == "__main__":
    main()
