"""One page per formula, from the registry."""
import multiprocessing
import warnings
from collections import defaultdict

import numpy as np
import tauten
from tauten import _text, plots

from pages import escaped, human, table, toctree, verification, write
from pages.cpp import ROOMS

_SEEN = {"in_print": "seen in print", "once": "seen once in print", "memory": "from memory",
         "judgement": "judgement, no published figure"}
_SHOWN = 12


def _span(arg, value):
    """Range over which an input is drawn: the typical one, or from a quarter to four times the example."""
    low, high = (arg.validity.low, arg.validity.high) if arg.validity else (value / 4, value * 4)
    if not (np.isfinite(low) and np.isfinite(high)) or abs(high) > 1e200:
        low, high = value / 4, value * 4
    return max(low, arg.domain.low), min(high, arg.domain.high)


def example(formula):
    """Values in SI at which the formula has a value: those of the docstrings."""
    values = np.array([arg.read(arg.example) for arg in formula.inputs])
    if not np.isfinite(formula.ufunc(*values)):
        raise ValueError(f"{formula.name}: the values of src/shared/examples.hpp do not fit together")
    return values


# What the thread fixes together: none of it changes alone.
THREAD = {"diameter", "pitch", "pitch_diameter", "minimum_pitch_diameter", "minor_diameter", "root_diameter",
          "stress_diameter", "stress_area", "shank_area"}
_LEAST_PITCHES = 4  # no thread of ISO 261 has a diameter of fewer pitches


def _rank(arg):
    """What is drawn first: friction, then all that may vary alone, then faces, and the thread only if nothing else is left."""
    if arg.name in THREAD:
        return 3
    if arg.name == "bearing_diameter":
        return 2
    return 0 if arg.name.endswith("friction") or arg.name == "nut_factor" else 1


def curves(formula):
    """What is drawn: name and SI values of the input along the axis, and (label, SI values of the result) of each curve."""
    values = example(formula)
    names = [arg.name for arg in formula.inputs]
    spans = [_span(arg, value) for arg, value in zip(formula.inputs, values)]

    def along(place, points, at=values):
        inputs = list(at)
        inputs[place] = points
        result = formula.ufunc(*inputs)
        if "pitch" in names and names[place] in THREAD:
            across = next((inputs[names.index(name)] for name in names if name in THREAD - {"pitch"}), np.inf)
            result = np.where(across < _LEAST_PITCHES * inputs[names.index("pitch")], np.nan, result)
        return result

    def moved(place):
        result = along(place, np.linspace(*spans[place], 41))
        result = result[np.isfinite(result)]
        return np.ptp(result) if len(result) > 1 else 0.0

    movement = [moved(place) for place in range(len(values))]
    order = sorted((place for place in range(len(values)) if movement[place] > 0.01 * max(movement)),
                   key=lambda place: (_rank(formula.inputs[place]), -movement[place]))
    points = np.linspace(*spans[order[0]], 161)
    lines = [("", along(order[0], points))]
    # Beside an input that may vary alone, none is drawn that may not.
    if len(order) > 1 and (_rank(formula.inputs[order[1]]) < 3 or _rank(formula.inputs[order[0]]) == 3):
        arg = formula.inputs[order[1]]
        lines = []
        for value in dict.fromkeys((spans[order[1]][0] + 0.15 * (values[order[1]] - spans[order[1]][0]), values[order[1]],
                                    min(2 * values[order[1]], spans[order[1]][1]))):
            at = values.copy()
            at[order[1]] = value
            lines.append((f"{arg.name.replace('_', ' ')} {arg.text(value)}".replace("N.m", "N·m"),
                          along(order[0], points, at)))
    # A value that leaves hardly anything to draw is left out.
    return order[0], points, [line for line in lines if np.isfinite(line[1]).sum() > 20]


def draw(task):
    """Draws the result of a formula over the range of its inputs."""
    name, path = task
    import matplotlib
    matplotlib.use("Agg")
    import matplotlib.pyplot as plt
    formula = tauten.formulas[name]
    place, points, lines = curves(formula)
    arg = formula.inputs[place]
    axes = plots._axes(None, 7, 3.6)
    (x_factor, x_unit), (y_factor, y_unit) = plots._shop(arg.unit), plots._shop(formula.output.unit)
    for (label, values), colour, line in zip(lines, (plots.BLUE, plots.VERMILION, plots.GREEN), ("-", "--", "-.")):
        axes.plot(x_factor * points, y_factor * values, color=colour, linestyle=line, linewidth=2, label=label)
    axes.set_xlabel(f"{arg.name.replace('_', ' ')} in {x_unit}" if x_unit else f"{arg.name.replace('_', ' ')} (no unit)")
    out = formula.output.name.replace("_", " ")
    axes.set_ylabel(f"{out} in {y_unit}" if y_unit else f"{out} (no unit)")
    if lines[0][0]:
        plots._legend(axes)
    with plt.rc_context({"svg.fonttype": "none", "svg.hashsalt": "tauten"}):
        axes.figure.savefig(path, metadata={"Date": None})
    plt.close(axes.figure)
    drawn = sum(int(np.isfinite(values).sum()) for _, values in lines)
    told = f"{human(out)} against {arg.name.replace('_', ' ')}"
    if lines[0][0]:
        told += ", for " + ", ".join(label for label, _ in lines)
    return name, (drawn, told)


def _unit(arg):
    if arg.dimension != "plain number" and not arg.unit:
        raise ValueError(f"{arg.name} has no unit")
    return "" if not arg.unit else arg.unit.replace("N.m", "N·m")


def _dimension(arg):
    return arg.dimension.removeprefix("a ").removeprefix("an ")


def _page(formula, checks, reference, folder, told):
    if not formula.sources:
        raise ValueError(f"{formula.name} names no source")
    values = example(formula)
    rows = [(f"`{arg.name}`", f"${arg.latex}$", _dimension(arg), _unit(arg), escaped(arg.domain_text),
             escaped(arg.validity_text) if arg.validity else "not stated", escaped(arg.text(value)))
            for arg, value in zip(formula.inputs, values)]
    output = formula.output
    command = " ".join(f"{arg.name}={arg.text(value).replace(' ', '')}" for arg, value in zip(formula.inputs, values))
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        result = output.text(formula(*values))
    held = checks.of[formula.name]
    if held:
        few = held if len(held) <= _SHOWN else [held[n * len(held) // _SHOWN] for n in range(_SHOWN)]
        more = f" Here are {_SHOWN} of them; [all stand in their tables](../verification/index.md)." if len(held) > _SHOWN else ""
        one = "One published figure holds" if len(held) == 1 else f"{len(held)} published figures hold"
        proof = [f"{one} this formula.{more}",
                 table(verification._COLUMNS, [verification.row(check) for check in few])]
    else:
        reason, test = checks.no_figure[formula.name]
        proof = [f"No published figure: {escaped(reason)}. A second, independent formulation in "
                 f"`tests/{test}` holds the arithmetic, not the model."]
    header = reference.header_of(formula.name)
    page = header.removeprefix("tauten/").removesuffix(".hpp").replace("/", "-")
    write(folder / f"{formula.name}.md", f"(formula-{formula.name.replace('_', '-')})=\n# {human(formula.name)}",
          f"`{formula.name}`: {escaped(_text._sentence(formula.summary))}.",
          f"$$\n{_text.latex(formula)}\n$$", reference.comment_of(formula.name),
          "## Inputs and result",
          table(("name", "symbol", "dimension", "SI unit", "domain", "range of validity", "example"), rows),
          f"Result: `{output.name}`, ${output.latex}$, {_dimension(output)}"
          + (f" in {_unit(output)}" if output.unit else "") + f". With the values of the example: {escaped(result)}.",
          "Outside its domain a formula has no value: numbers raise an error, rows of arrays become NaN. Outside the range of validity "
          "the value comes with a warning. [More on errors](../../background/errors.md).",
          "## Over its range", f"![{escaped(told)}](plots/{formula.name}.svg)",
          "## How to call it",
          "```{eval-rst}\n.. py:function:: tauten." + f"{formula.name}({', '.join(arg.name for arg in formula.inputs)})\n\n"
          "   Plain numbers are SI; text carries its unit; arrays broadcast.\n```",
          f"```sh\ntauten eval {formula.name} {command}\n```",
          f"In C++: `tauten::{formula.name}`, a {reference.code('Formula')}, of [`<{header}>`](cpp-header-{page}); its kernel is "
          f"`tauten::{formula.name}.si`. In Python the same name is a [`Formula`](../python/index.md#formulas-as-values), which "
          "also gives `expression`, `gradient`, `check` and `explain`. The inputs are words of the "
          "[nomenclature](../../background/nomenclature.md).",
          "## Sources", "\n".join(f"- {escaped(source.document)}, {escaped(source.place)} ({_SEEN[source.seen]})"
                                  for source in formula.sources),
          "## Published checks", *proof)


def pages(checks, reference, folder):
    """Writes all pages with their plots; returns the line of counts."""
    (folder / "plots").mkdir(parents=True, exist_ok=True)
    names = list(tauten.formulas)
    with multiprocessing.get_context("fork").Pool() as pool:
        drawn = dict(pool.map(draw, [(name, folder / "plots" / f"{name}.svg") for name in names], chunksize=8))
    if empty := [name for name, (points, _) in drawn.items() if points < 20]:
        raise ValueError(f"nothing to draw for {', '.join(empty)}")
    rooms = defaultdict(list)
    for name, formula in tauten.formulas.items():
        _page(formula, checks, reference, folder, drawn[name][1])
        rooms[reference.header_of(name).split("/")[1]].append(formula)
    overview = []
    for room, title in ROOMS.items():
        if found := rooms[room]:
            write(folder / f"of-{room}.md", f"# Formulas: {title[:1].lower()}{title[1:]}",
                  table(("formula", "what it gives", "result", "figures in print"), [
                      (f"[{human(f.name)}]({f.name}.md)", escaped(f.summary), f"${f.output.latex}$", len(checks.of[f.name]) or "none")
                      for f in found]), toctree([f.name for f in found], "hidden"))
            overview.append((room, f"[{title}](of-{room}.md)", ", ".join(f"[{f.name.replace('_', ' ')}]({f.name}.md)" for f in found)))
    counts = (f"{len(names)} formulas: {len(names)} with a page, a source, a domain and a plot; "
              f"{sum(bool(checks.of[name]) for name in names)} with published figures, {len(checks.no_figure)} with a reason "
              "why not.")
    write(folder / "index.md", "# Formulas", counts, table(("group", "formulas"), [row[1:] for row in overview]),
          toctree([f"of-{room}" for room, *_ in overview], "hidden"))
    return counts
