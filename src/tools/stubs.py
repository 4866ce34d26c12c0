#!/usr/bin/env python3
"""Writes the signatures of all formulas into the stubs of the Python package: `./dev python src/tools/stubs.py`.

With --check only tells whether they are as the registry says.
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
    wanted = present.partition(MARK)[0] + MARK + HEAD + "".join(map(stub, tauten.formulas.values()))
    if check:
        if present != wanted:
            sys.exit("the stubs differ from the registry; write them with ./dev python src/tools/stubs.py")
    else:
        STUBS.write_text(wanted, encoding="utf-8")


if __name__ == "__main__":
    main()
