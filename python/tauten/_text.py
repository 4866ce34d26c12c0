"""How a formula is shown: docstring, signature, notebook. JSON of answers."""
import functools
import json as _json
import math
import re

from tauten import _core
from tauten._errors import Error


def _sentence(text):
    return text[:1].upper() + text[1:]


def _kind(arg):
    return f"{arg.dimension} in {arg.unit}" if arg.unit else arg.dimension


def _range(arg):
    validity = f"; range of validity {arg.validity_text}" if arg.validity else ""
    return _sentence(arg.domain_text) + validity


def example(formula):
    """A call of the formula, and its result or None if these values do not fit together."""
    written = {arg.name: f'"{arg.example}"' if arg.unit else arg.example for arg in formula.inputs}
    call = f"tauten.{formula.name}({', '.join(f'{name}={text}' for name, text in written.items())})"
    try:
        return call, formula._entry.one([arg.read(arg.example) for arg in formula.inputs])[0]
    except Error:
        return call, None


def doc(formula):
    """The docstring of a formula."""
    output = formula.output
    lines = [f"{_sentence(formula.summary)}.", "", f"    {output.symbol} = {formula.expression()}", "",
             "Parameters", "----------"]
    for arg in formula.inputs:
        lines += [f"{arg.name} : {_kind(arg)}", f"    Symbol {arg.symbol}. {_range(arg)}."]
    lines += ["out, where, dtype", "    As for any NumPy function.", "",
              "Returns", "-------", f"{output.name} : {_kind(output)}", f"    Symbol {output.symbol}.", "",
              "Notes", "-----",
              "Plain numbers are SI. Arrays broadcast; a Pint quantity in gives a Pint quantity out; text carries its unit.",
              "", "Sources", "-------", *(f"- {source}" for source in formula.sources)]
    call, value = example(formula)
    if value is not None:
        lines += ["", "Examples", "--------", f">>> {call}", repr(value)]
    return "\n".join(lines)


def signature(formula):
    """The signature of a formula."""
    import inspect
    names = [inspect.Parameter(arg.name, inspect.Parameter.POSITIONAL_OR_KEYWORD) for arg in formula.inputs]
    options = [inspect.Parameter(name, inspect.Parameter.KEYWORD_ONLY, default=default)
               for name, default in (("out", None), ("where", True), ("dtype", None))]
    return inspect.Signature(names + options)


def latex(formula):
    """The formula as an equation."""
    return f"{formula.output.latex} = {formula.expression('latex')}"


def markdown(formula):
    """The formula as a paragraph with equation, table of inputs and sources."""
    lines = [f"**{formula.name}**: {formula.summary}", "", f"$${latex(formula)}$$", "",
             "| argument | symbol | dimension | range |", "|---|---|---|---|"]
    lines += [f"| `{arg.name}` | ${arg.latex}$ | {_kind(arg)} | {_range(arg)} |" for arg in formula.inputs]
    lines += ["", "Sources: " + "; ".join(map(str, formula.sources))]
    return "\n".join(lines)


def _places(findings, inputs, range_name):
    return [f"{inputs[place].name} outside its range ({getattr(inputs[place], range_name)}) in {count}, "
            f"first {inputs[place].text(first)}" for place, count, first in findings]


def domain_warning(formula, rows, outside, impossible):
    """Sentence on rows without a value, None if there are none."""
    count = sum(found[1] for found in outside) + impossible
    if not count:
        return None
    reasons = _places(outside, formula.inputs, "domain_text")
    if impossible:
        reasons.append(f"no {formula.output.name} fits the inputs together in {impossible}")
    return f"{formula.name}: {count} of {rows} rows have no value and became NaN: {'; '.join(reasons)}"


def validity_warning(formula, rows, unusual):
    """Sentence on rows outside a range of validity, None if there are none."""
    if not unusual:
        return None
    reasons = _places(unusual, formula.inputs, "validity_text")
    return (f"{formula.name}: some of {rows} rows lie outside the range of validity: {'; '.join(reasons)}; "
            "treat their results with care")


def _plain_numbers(value):
    """The plain numbers that a caller gave, in lists and dicts too."""
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, (list, tuple)):
        for item in value:
            yield from _plain_numbers(item)
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        yield value


@functools.cache
def _si_units():
    """SI unit of each unit in which a message has a value, where these are not the same."""
    units = {arg.unit for entry in _core.entries for arg in entry.inputs if arg.unit}
    shown = {_core.shop_unit(unit): unit for unit in units}
    return {shop: unit for shop, unit in shown.items() if shop != unit}


def with_si(error, given):
    """The error; where a plain number stands behind it, with a word on its unit, as 24 may have been meant for millimetres."""
    found = re.search(r" is (-?[\d.]+(?:e[+-]?\d+)?) ([^\s,;]+)[,;]", str(error))
    si_unit = found and _si_units().get(found[2])
    if not si_unit:
        return error
    value = _core.read_quantity(found[1] + found[2])
    for number in _plain_numbers(given):
        if math.isclose(number, value, rel_tol=1e-3):  # a message has four digits
            return Error(f'{error}; a plain number is in {si_unit}, text has its unit: "{number:g}{found[2]}"', error.argument)
    return error


def _known(value):
    if isinstance(value, dict):
        return {name: _known(item) for name, item in value.items()}
    if isinstance(value, list):
        return [_known(item) for item in value]
    return None if isinstance(value, float) and not math.isfinite(value) else value


def json(value, indent):
    """JSON, with null for numbers that are not known."""
    return _json.dumps(_known(value), indent=indent, ensure_ascii=False)


__all__ = ["doc", "domain_warning", "example", "json", "latex", "markdown", "signature", "validity_warning", "with_si"]
