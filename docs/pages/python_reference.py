"""The Python reference: questions, pictures and answers, from docstrings and stubs."""
import ast
import inspect
import pathlib

import tauten
from tauten import plots

from pages import escaped, table, write

ROOT = pathlib.Path(__file__).resolve().parents[2]

_UP = "[Python reference](index.md)"


def questions():
    """Names of the functions that answer whole questions."""
    return [name for name in tauten.__all__ if inspect.isfunction(getattr(tauten, name))]


def _first_line(name):
    return escaped(inspect.getdoc(getattr(tauten, name)).splitlines()[0])


def _members(stubs):
    """Class name -> [(member, type)] of the stub files."""
    found = {}
    for node in ast.parse(stubs.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.ClassDef):
            found[node.name] = [(item.name, ast.unparse(item.returns)) for item in node.body
                                if isinstance(item, ast.FunctionDef) and any(
                                    isinstance(d, ast.Name) and d.id == "property" for d in item.decorator_list)]
    return found


def _rst(*lines):
    return "```{eval-rst}\n.. currentmodule:: tauten\n\n" + "\n".join(lines) + "\n```"


def pages(folder):
    """Writes the pages of the package."""
    asked = questions()
    for name in asked:
        write(folder / f"{name}.md", f"# {escaped(name)}", _rst(f".. autofunction:: tauten.{name}"), up=_UP)
    drawn = plots.__all__
    write(folder / "plots.md", "# Pictures", escaped(inspect.getdoc(plots)),
          *(f"## {escaped(name)}\n\n" + _rst(f".. autofunction:: tauten.plots.{name}") for name in drawn), up=_UP)
    members = _members(ROOT / "python" / "tauten" / "_core.pyi")
    classes = [name for name in tauten.__all__ if inspect.isclass(getattr(tauten, name)) and members.get(name)]
    parts = []
    for name in classes:
        parts += [f"## {escaped(name)}", table(("member", "type"), [(f"`{member}`", f"`{kind}`") for member, kind in members[name]])]
    write(folder / "answers.md", "# Answers",
          "Answers are read-only records of plain numbers in SI. Each has `as_dict()` and `to_json()`, and shows itself as a table "
          "in a notebook. A `Band` is low, usual and high, and can be unpacked.", *parts, up=_UP)
    write(folder / "index.md", "# Python reference",
          "Plain numbers are SI: m, N, N·m, Pa, rad. Text carries its unit, `\"48N.m\"`. A Pint quantity in gives a Pint "
          "quantity out. Every formula is a function of the package and works on arrays: see [the formulas](../formulas/index.md).",
          table(("function", "question"), [(f"[{escaped(name)}]({name}.md)", _first_line(name)) for name in asked]),
          "[Pictures](plots.md) draws answers; [answers](answers.md) lists what they hold.",
          "## Formulas as values",
          _rst(".. autoclass:: tauten.Formula", "   :members: expression, gradient, check, explain", "",
               ".. autoclass:: tauten.Formulas", "", ".. autoclass:: tauten.Check", "   :members:", "   :undoc-members:"),
          "## Errors and warnings",
          _rst(".. autoexception:: tauten.Error", "", ".. autoexception:: tauten.DomainWarning", "",
               ".. autoexception:: tauten.ValidityWarning"))
