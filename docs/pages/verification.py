"""The verification page: every published figure beside ours."""
from pages import escaped, human, table, toctree, write

_COLUMNS = ("case", "formula", "given", "printed", "ours", "off by", "source", "kind")


# A formula may be right and what goes into it a guess. This is said before the formulas.
_NOT_MEASURED = """
- **`free`:** the chances, what aids do and what the states of rust mean are judgement; no measured figures were found. Breaking
  torques are from memory (ISO 898-7), and the chances of shearing rest on them.
- **Friction bands:** taken from friction classes and nut factors in print or from memory, [as each condition
  says](../../background/bibliography.md); no friction test of this library's own stands behind them.
- **Limits of verdicts:** half of the proof load and nine tenths of yield are common practice, not a measured limit of a joint.
- **Formulas without a figure:** a second formulation holds the arithmetic, not the model. Whether a real joint does what the
  formula says is not shown by it.
""".strip()


def row(check):
    """One comparison as a row."""
    formula = f"[{human(check.formula)}](../formulas/{check.formula}.md)"
    why = f"; {escaped(check.why)}" if check.why else ""
    unit = f" {escaped(check.unit)}" if check.unit else ""
    return (escaped(check.id), formula, escaped(check.given.replace("=", " = ")), escaped(check.published) + unit,
            check.ours + unit, f"{check.percent:.2g} %{why}", escaped(check.source), f"{check.kind}, {check.seen}")


def _counts(counter):
    return ", ".join(f"{count} {name}" for name, count in counter.most_common())


def pages(checks, names, folder):
    """Writes one page per table and one of all tables; returns the line of counts."""
    counts = (f"{len(checks.all)} published figures compared: {_counts(checks.kinds)}; {_counts(checks.seen)}. "
              f"{sum(1 for check in checks.all if check.why)} lie outside the rounding of the print, each with its reason.")
    held = [name for name in names if checks.of[name]]
    of_formulas = (f"{len(held)} of {len(names)} formulas are held by published figures; {len(checks.no_figure)} have none, "
                   "and their reason stands below.")
    overview = []
    for name, rows in checks.tables.items():
        title = human(name)
        worst = max(rows, key=lambda check: abs(check.percent))
        overview.append((f"[{title}]({name}.md)", len(rows), sum(bool(check.why) for check in rows),
                         sum(check.confidence == "memory" for check in rows),
                         f"{abs(worst.percent):.2g} %: {escaped(worst.why or 'within the rounding of the print')}"))
        write(folder / f"{name}.md", f"# {title}: figures in print",
              f"{len(rows)} figures. A figure agrees if it is no further from print than half a unit of its last place, plus "
              "what half a unit of the source's own rounded inputs (marked ~) explains. Where it is further, the reason "
              "stands in the column *off by*.", table(_COLUMNS, [row(check) for check in rows]))
    write(folder / "index.md", "# Verification",
          "Each figure below was worked out by someone else. The library works it out again from the inputs that the source "
          "gives. This page is made from the run itself.", counts, of_formulas,
          "## Tables", table(("table", "figures", "with a reason", "from memory", "furthest off, and why"), overview),
          toctree(list(checks.tables), "hidden"), "## What is not checked by measurement", _NOT_MEASURED,
          "## Formulas that are not verified by print",
          "These formulas have no published figure. A second, independent formulation holds each of them over its range: it "
          "holds the arithmetic, not the model.",
          table(("formula", "why no figure", "held by"),
                [(f"[{human(name)}](../formulas/{name}.md)", escaped(reason), f"`tests/{held_by}`")
                 for name, (reason, held_by) in checks.no_figure.items()]),
          "## Figures that were left out", "These stand in the collected sources, and are not compared.",
          table(("document", "figures", "why"), [[escaped(cell if len(cell) < 90 else cell[:87] + "...") for cell in line]
                                            for line in checks.left_out]))
    return f"{counts}\n{of_formulas}"
