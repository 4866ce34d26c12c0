"""The Python reference: questions, pictures and answers, from docstrings and stubs."""
import ast
import doctest
import inspect
import pathlib

import tauten
from tauten import _core, exercises, plots, uncertainty

from pages import escaped, human, table, toctree, write

ROOT = pathlib.Path(__file__).resolve().parents[2]

# What the pages are called. The name of the function comes second, so that who does not know it finds the page.
_TITLES = {
    "clamp": "Clamp load of a torque", "curve": "From snug past yield", "free_joint": "A stuck fastener", "group": "What each bolt carries",
    "identify": "Which fastener it is", "pattern": "Pattern of holes", "property_class": "Property classes", "quantity": "Quantities as text",
    "reach": "Wrench setting with extensions", "sequence": "Order of tightening", "thread": "All about a thread",
    "thread_condition": "Conditions of threads", "to_frame": "Answers as tables of pandas", "torque_for": "Torque for a clamp load", "turn": "Turn from snug",
}


def _title(name):
    return f"{_TITLES[name]}: {escaped(name)}" if name in _TITLES else human(name)


def questions():
    """Names of the functions that answer whole questions."""
    return [name for name in tauten.__all__ if inspect.isfunction(getattr(tauten, name))]


def _first_line(home, name):
    return escaped(inspect.getdoc(getattr(home, name)).splitlines()[0])


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


def _picture(name, folder):
    """Runs the example of a function that draws, and keeps its picture."""
    import matplotlib
    matplotlib.use("Agg")
    import matplotlib.pyplot as plt
    scope = {"tauten": tauten}
    for example in doctest.DocTestParser().get_examples(getattr(plots, name).__doc__):
        exec(compile(example.source, name, "exec"), scope)
    folder.mkdir(parents=True, exist_ok=True)
    with plt.rc_context({"svg.fonttype": "none", "svg.hashsalt": "tauten"}):
        plt.gcf().savefig(folder / f"{name}.svg", metadata={"Date": None})
    plt.close("all")
    return f"![{_first_line(plots, name)}](pictures/{name}.svg)"


# The function that asks a question, and what the command line and tables call the question.
_VERBS = {"clamp": "clamp", "torque_for": "torque", "turn": "turn", "reach": "reach", "free_joint": "free"}


def other_names():
    """(argument, option, verbs) of each argument that the command line calls otherwise, from its tables of keys."""
    found = {}
    for function, verb in _VERBS.items():
        for name in inspect.signature(getattr(tauten, function)).parameters:
            key = _core.key_of_column(verb, name)
            if key and key != name.replace("_", "-"):
                found.setdefault((name, key), []).append(verb)
    return [(name, f"--{key}", verbs) for (name, key), verbs in found.items()]


def pages(folder):
    """Writes the pages of the package."""
    asked = questions()
    for name in asked:
        write(folder / f"{name}.md", f"# {_title(name)}", _rst(f".. autofunction:: tauten.{name}"))
    drawn = plots.__all__
    write(folder / "plots.md", "# Pictures", _rst(".. automodule:: tauten.plots"),
          *(f"## {escaped(name)}\n\n{_picture(name, folder / 'pictures')}\n\n"
            + _rst(f".. autofunction:: tauten.plots.{name}") for name in drawn))
    write(folder / "uncertainty.md", "# Uncertainty", _rst(".. automodule:: tauten.uncertainty"),
          *(f"## {escaped(name)}\n\n" + _rst(f".. autofunction:: tauten.uncertainty.{name}")
            for name in uncertainty.__all__ if inspect.isfunction(getattr(uncertainty, name))))
    write(folder / "exercises.md", "# Exercises with solutions", _rst(".. automodule:: tauten.exercises"),
          *(f"## {escaped(name)}\n\n" + _rst(f".. auto{'class' if inspect.isclass(getattr(exercises, name)) else 'function'}:: tauten.exercises.{name}",
                                            *(["   :members:"] if inspect.isclass(getattr(exercises, name)) else []))
            for name in exercises.__all__))
    members = _members(ROOT / "python" / "tauten" / "_core.pyi")
    classes = [name for name in tauten.__all__ if inspect.isclass(getattr(tauten, name)) and members.get(name)]
    parts = []
    for name in classes:
        parts += [f"## {escaped(name)}", table(("member", "type"), [(f"`{member}`", f"`{kind}`") for member, kind in members[name]])]
    write(folder / "answers.md", "# Answers",
          "Answers are read-only records of plain numbers in SI. Each has `as_dict()` and `to_json()`, and shows itself as a table "
          "in a notebook. A `Band` is low, typical and high, and can be unpacked; `band.to(\"kN\")` has them in another unit, and "
          "`f\"{band:.1f}\"` writes them with one decimal. `answer.plot()` draws an answer, and `answer.to_frame()` makes it a DataFrame.",
          *parts)
    write(folder / "index.md", "# Python reference",
          "Plain numbers are SI: m, N, N·m, Pa, rad. Text carries its unit, `\"48N.m\"`. A Pint quantity in gives a Pint "
          "quantity out. Every formula is a function of the package and works on arrays: see [the formulas](../formulas/index.md).",
          table(("function", "question"), [(f"[{escaped(name)}]({name}.md)", _first_line(tauten, name)) for name in asked]),
          "[Pictures](plots.md) draws answers; [answers](answers.md) lists what they hold; [uncertainty](uncertainty.md) shows how "
          "certain a figure is; [exercises](exercises.md) come with worked solutions. `tauten.threads`, `property_classes`, `heads`, "
          "`materials` and `conditions` list the names that the questions take, and `tauten.formulas.search(\"nut factor\")` finds a "
          "formula.",
          toctree([*asked, "plots", "answers", "uncertainty", "exercises"], "hidden"),
          "## What the command line calls otherwise",
          "An argument `clamp_load` is the option `--clamp-load`, and so on, but for these. Tables take both names.",
          table(("argument", "option", "of"), [(f"`{name}`", f"`{option}`", ", ".join(f"`{verb}`" for verb in verbs))
                                                for name, option, verbs in other_names()]),
          "An option that is given again for each is a list: `--extension 100mm@30deg --extension 50mm` is "
          "`extensions=[(\"100mm\", \"30deg\"), (\"50mm\", \"0deg\")]`.",
          "## Formulas as values",
          _rst(".. autoclass:: tauten.Formula", "   :members: expression, gradient, check, explain", "",
               ".. autoclass:: tauten.Formulas", "", ".. autoclass:: tauten.Check", "   :members:", "   :undoc-members:"),
          "## Errors and warnings",
          _rst(".. autoexception:: tauten.Error", "", ".. autoexception:: tauten.DomainWarning", "",
               ".. autoexception:: tauten.ValidityWarning"))
