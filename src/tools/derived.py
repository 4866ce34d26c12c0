#!/usr/bin/env python3
"""Writes what follows from the questions and formulas into files that people read: `./dev python src/tools/derived.py`.

The stubs of the Python package, the types of the WebAssembly package, the tables of options in the manual. With --check only
tells whether they are as the inputs of the questions and the registry of formulas say.
"""
import argparse
import pathlib
import sys

import tauten

ROOT = pathlib.Path(__file__).resolve().parents[2]
STUBS = ROOT / "python/tauten/__init__.pyi"
STUBS_OF_CORE = ROOT / "python/tauten/_core.pyi"
TYPES_OF_WASM = ROOT / "src/wasm/index.d.ts"
MANUAL = ROOT / "docs/command-line.md"
QUESTIONS = {question["name"]: question for question in tauten._core.questions}
MARK = "# ---- Formulas: written by src/tools/derived.py, do not edit.\n"
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
    room: str
    ufunc: Any
    def expression(self, notation: str = ..., **inputs: Any) -> str: ...
    def gradient(self, *args: Any, **inputs: Any) -> dict[str, Any]: ...
    def check(self, *args: Any, **inputs: Any) -> Check: ...
    def explain(self, *args: Any, format: str = ..., style: Any = ..., **inputs: Any) -> str: ...
"""


RECORDS_MARK = "# ---- Questions and classes of answers: written by src/tools/derived.py, do not edit.\n"
ASKED = "# ---- Questions: written by src/tools/derived.py, do not edit.\n"
ASKED_END = "# ---- End of the questions.\n"
TYPES = {"quantity": "Quantity", "band": "Friction", "truth": "bool", "whole": "int", "list": "Union[str, Sequence[Any]]"}
NAMED = {"thread": "Union[str, Thread]", "property_class": "Union[str, PropertyClass]",
         "condition": "Union[str, ThreadCondition]"}

# What may stand in the place of a table.
FIRST = {"thread": "Union[str, Thread]", "pattern": "Union[str, Sequence[Any], NDArray[Any]]",
         "group": "Union[str, Pattern, Sequence[Any], NDArray[Any]]",
         "sequence": "Union[int, str, Pattern, Sequence[Any], NDArray[Any]]"}


def parameter(entry, needed=False):
    named = NAMED.get("condition" if entry["name"].endswith("condition") else entry["name"])
    kind = named or TYPES.get(entry["kind"], "str")
    return f"    {entry['name']}: {kind},\n" if needed else f"    {entry['name']}: Optional[{kind}] = ...,\n"


def question_stub(question):
    name, inputs, result = question["function"], question["inputs"], question["result"]
    jobs = "    jobs: Optional[int] = ...,\n"
    one = "".join(parameter(entry, (name, entry["name"]) == ("clamp", "torque")) for entry in inputs)
    rows = "".join(map(parameter, inputs)) + "    columns: Optional[Union[str, Sequence[str]]] = ...,\n" + jobs
    first = FIRST.get(name)
    first = f"    __table: Optional[{first}] = ...,\n" if first else ""
    return (f"@overload\ndef {name}(\n{first}    *,\n{one}{jobs if name == 'free_joint' else ''}) -> {result}: ...\n"
            f"@overload\ndef {name}(\n    __table: Table,\n    *,\n{rows}) -> Table: ...\n")


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


RECORDS = {name: record for name, record in vars(tauten._core).items() if hasattr(record, "as_dict")}
# What is no member: what classes of answers have in common, by the name that each line defines, and what single ones have.
SHARED = {
    "page": "def page(self, format: str = ..., units: Optional[Mapping[str, str]] = ...) -> str: ...",
    "derivation": "def derivation(self) -> Derivation: ...",
    "explain": "def explain(self, format: str = ..., style: Optional[Style] = ...) -> Explanation: ...",
    "drawing": "def drawing(self, format: str = ..., columns: int = ...) -> str: ...",
    "_repr_svg_": "def _repr_svg_(self) -> str: ...",
    "plot": "def plot(self, axes: Any = ..., **options: Any) -> Any: ...",
}
OWN = {
    "Arg": ["def read(self, text: str) -> float: ...", "def text(self, si: float) -> str: ..."],
    "Band": ["def __iter__(self) -> Iterator[float]: ...", "def to(self, unit: str) -> BandInUnit: ...",
             "def __format__(self, spec: str) -> str: ..."],
    "Curve": ["def columns(self) -> dict[str, NDArray[np.float64]]: ..."],
    "Derivation": ["def step_texts(self, format: str = ..., style: Optional[Style] = ...) -> tuple[StepText, ...]: ..."],
    "MonteCarlo": ["def quantile(self, chance: float) -> float: ...", "def chance_below(self, x: Any) -> float: ...",
                   "def chance_above(self, x: Any) -> float: ..."],
    "Pattern": ["def ways_on(self, on: Any, tolerance: Any = ..., flipped: bool = ...) -> tuple[PatternWay, ...]: ..."],
    "Range": ["def __contains__(self, x: float) -> bool: ..."],
}
NO_TEXT = {"values": "NDArray[np.float64]"}  # what is no member of an answer is a text, but for these


def record_stub(name, record):
    kinds = {key: record.__annotations__.get(key, NO_TEXT.get(key, "str"))
             for key, value in vars(record).items() if isinstance(value, property)}
    members = [f"@property\n    def {key}(self) -> {kind}: ..." for key, kind in kinds.items()]
    shared = [line for key, line in SHARED.items() if hasattr(record, key) and key not in kinds]
    return f"\nclass {name}(Record):\n" + "".join(f"    {line}\n" for line in (*members, *shared, *OWN.get(name, ())))


def stubs_of_core():
    front, found, _ = STUBS_OF_CORE.read_text(encoding="utf-8").partition(RECORDS_MARK)
    assert found
    asked = "".join(f"def {question['function']}(arguments: dict[str, Any]) -> {question['result']}: ...\n"
                    for question in QUESTIONS.values())
    return front + RECORDS_MARK + "\n" + asked + "".join(map(record_stub, RECORDS, RECORDS.values()))


def stubs():
    present = STUBS.read_text(encoding="utf-8")
    lines = "".join(f"from tauten._core import {name} as {name}\n" for name in sorted({*RECORDS, "Style"}))
    present = between(present, "from tauten import uncertainty as uncertainty", "from tauten._errors", lines)
    front, _, rest = present.partition(ASKED)
    rest = rest.partition(ASKED_END)[2].partition(MARK)[0]
    asked = "".join(map(question_stub, QUESTIONS.values()))
    return front + ASKED + asked + ASKED_END + rest + MARK + HEAD + "".join(map(stub, tauten.formulas.values()))


def between(text, start, end, content):
    """The text with the content between two lines that stand in it once."""
    front, found, rest = text.partition(start + "\n")
    assert found and rest.count(end) >= 1, start
    return front + found + content + rest[rest.index(end):]


def job_name(name):
    return name.capitalize() + "Job"


def job_type(question):
    """The type of a job in TypeScript."""
    lines = [f"/** What `{question['name']}` takes: {question['summary'][:1].lower() + question['summary'][1:]}. */",
             f"export interface {job_name(question['name'])} {{"]
    for entry in question["inputs"]:
        key = entry["name"]
        kind = "string | readonly string[]" if entry["repeats"] else "string"
        lines += [f"  /** {entry['help']}. Example: {entry['example']} */", f"  readonly {key}?: {kind};"]
    return "\n".join(lines) + "\n}\n\n"


def wasm_types():
    text = TYPES_OF_WASM.read_text(encoding="utf-8")
    text = between(text, "// ---- Jobs: written by src/tools/derived.py, do not edit.", "// ---- End of the jobs.",
                   "\n" + "".join(map(job_type, QUESTIONS.values())))
    names = "".join(f"  {name}: {job_name(name)};\n" for name in QUESTIONS)
    return between(text, "export interface Jobs {", "}", names)


def option_table(name, apart_from=None):
    """The options of a question, but for those of another one."""
    known = {entry["name"] for entry in QUESTIONS[apart_from]["inputs"]} if apart_from else ()
    rows = ["| option | meaning |", "|---|---|"]
    for entry in QUESTIONS[name]["inputs"]:
        if entry["name"] in known:
            continue
        words = [f"`{word}`" for word in entry["words"] if word not in entry["help"]]
        told = f". One of {', '.join(words)}" if 1 < len(words) < 13 else ""
        again = "; again for each" if entry["repeats"] else ""
        example = "" if entry["flag"] else " " + entry["example"]
        rows.append(f"| `--{entry['option']}{example}` | {entry['help']}{again}{told} |")
    return "\n".join(rows) + "\n"


def manual():
    text = MANUAL.read_text(encoding="utf-8")
    for name in QUESTIONS:
        apart_from = {"torque": "clamp", "curve": "turn"}.get(name)
        text = between(text, f"<!-- options of {name}, written by src/tools/derived.py -->", "<!-- end -->",
                       "\n" + option_table(name, apart_from) + "\n")
    return text


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--check", action="store_true")
    check = parser.parse_args().check
    for path, wanted in ((STUBS, stubs()), (STUBS_OF_CORE, stubs_of_core()), (TYPES_OF_WASM, wasm_types()), (MANUAL, manual())):
        if path.read_text(encoding="utf-8") == wanted:
            continue
        if check:
            sys.exit(f"{path.relative_to(ROOT)} is not as questions and formulas say; write it with ./dev python src/tools/derived.py")
        path.write_text(wanted, encoding="utf-8")


if __name__ == "__main__":
    main()
