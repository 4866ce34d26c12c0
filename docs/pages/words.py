"""Nomenclature and bibliography, from the registry and the tables."""
import csv
import pathlib
from collections import defaultdict

import tauten

from pages import escaped, table, write

ROOT = pathlib.Path(__file__).resolve().parents[2]


def terms():
    """Every word: symbol in LaTeX, dimension, SI unit, and the formulas that have it as input or result."""
    found = {}
    for name, formula in tauten.formulas.items():
        for arg in (*formula.inputs, formula.output):
            symbols, _, _, used = found.setdefault(arg.name, (set(), arg.dimension, arg.unit, []))
            symbols.add(arg.latex)
            used.append(name)
    return dict(sorted(found.items()))


def nomenclature(folder):
    """Writes the page of words."""
    rows = [(f"`{name}`", ", ".join(f"${symbol}$" for symbol in sorted(symbols)),
             dimension.removeprefix("a ").removeprefix("an "), unit.replace("N.m", "N·m"),
             ", ".join(f"[{used.replace('_', ' ')}](../reference/formulas/{used}.md)" for used in list(dict.fromkeys(where))[:3])
             + (f" and {len(set(where)) - 3} more" if len(set(where)) > 3 else ""))
            for name, (symbols, dimension, unit, where) in terms().items()]
    write(folder / "nomenclature.md", "# Nomenclature",
          "One word, one dimension, everywhere: in C++, Python, on the command line and in these pages. Symbols are those of the "
          "sources, so one letter may stand for two things in two of them.",
          table(("word", "symbol", "dimension", "SI unit", "used in"), rows))


def _table_sources():
    """Documents behind the tables: name of the table, document, how seen."""
    for path in sorted((ROOT / "src" / "tables").glob("*.csv")):
        with open(path, encoding="utf-8") as file:
            for row in csv.DictReader(file):
                yield path.stem, row["source"], row["confidence"]


def bibliography(checks, folder):
    """Writes the page of sources."""
    documents = defaultdict(lambda: (set(), set()))
    for name, formula in tauten.formulas.items():
        for source in formula.sources:
            places, used = documents[source.document]
            places.add(source.place)
            used.add(name)
    of_formulas = [(escaped(document or "Common practice, no source"), len(used),
                    ", ".join(f"[{name.replace('_', ' ')}](../reference/formulas/{name}.md)" for name in sorted(used)[:4])
                    + (" and more" if len(used) > 4 else "")) for document, (_, used) in sorted(documents.items())]
    tables = defaultdict(lambda: defaultdict(int))
    for name, document, confidence in _table_sources():
        tables[name][document, confidence] += 1
    of_tables = [(escaped(name.replace("_", " ")), escaped(document), confidence, count) for name, found in tables.items()
                 for (document, confidence), count in sorted(found.items())]
    figures = defaultdict(int)
    for check in checks.all:
        figures[";".join(check.source.split(";")[:2]), check.kind] += 1
    write(folder / "bibliography.md", "# Bibliography",
          "Where formulas, tables and check figures come from. *From memory* means: not checked against the standard, so treat it as a "
          "hint. A standard is cited by number and year; buy it from its publisher.",
          "## Formulas", table(("document", "formulas", "which"), of_formulas),
          "## Tables", table(("table", "document", "how seen", "rows"), of_tables),
          "## Figures that are compared", table(("document", "kind", "figures"), [
              (escaped(document), kind, count) for (document, kind), count in sorted(figures.items())]))
