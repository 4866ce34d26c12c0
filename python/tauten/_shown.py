"""How answers are printed: ``print(answer)`` is a page for a terminal, made from the tables of notebooks."""
import textwrap
from html.parser import HTMLParser

_WIDTH = 100
_LONG = 60  # a last column of sentences stands below its row
_LEAST = 12  # columns that a cell with sentences keeps at least


def _table(rows):
    """Rows of texts as lines in columns; the first row is the head. Sentences wrap where the page is too narrow."""
    rows = [row for row in rows if row]
    columns = max(map(len, rows))
    rows = [row + [""] * (columns - len(row)) for row in rows]
    below = [""] * len(rows)
    if max(len(row[-1]) for row in rows) > _LONG:
        columns -= 1
        below = ["", *(row[-1] for row in rows[1:])]
        rows = [row[:-1] for row in rows]
    widths = [max(len(row[place]) for row in rows) for place in range(columns)]
    while (over := sum(widths) + 2 * (columns - 1) - _WIDTH) > 0 and max(widths) > _LEAST:
        widest = widths.index(max(widths))
        second = max([_LEAST, *(width for place, width in enumerate(widths) if place != widest)])
        widths[widest] = max(widths[widest] - over, min(second, widths[widest] - 1))
    lines = []
    for number, row in enumerate(rows):
        cells = [textwrap.wrap(cell, width) or [""] for cell, width in zip(row, widths)]
        for line in range(max(map(len, cells))):
            parts = (cell[line] if line < len(cell) else "" for cell in cells)
            lines.append("  ".join(part.ljust(width) for part, width in zip(parts, widths)).rstrip())
        if number == 0:
            lines.append("  ".join("-" * width for width in widths))
        lines += textwrap.wrap(below[number], _WIDTH, initial_indent="    ", subsequent_indent="    ")
    return [line for line in lines if line]


class _Page(HTMLParser):
    """Lines of text from tables, lists and paragraphs; a drawing is left out."""

    def __init__(self):
        super().__init__()
        self.lines, self._rows, self._text, self._drawing = [], [], "", 0

    def handle_starttag(self, tag, attributes):
        self._drawing += tag == "svg"
        if tag == "table":
            self._rows = []
        elif tag == "tr":
            self._rows.append([])
        if tag in ("td", "th", "caption", "li", "p"):
            self._text = ""

    def handle_data(self, data):
        if not self._drawing:
            self._text += data

    def handle_endtag(self, tag):
        self._drawing -= tag == "svg"
        if tag in ("td", "th"):
            self._rows[-1].append(self._text)
        elif tag == "table":
            self.lines += [*_table(self._rows), ""]
        elif tag in ("caption", "li", "p") and self._text:
            mark = "- " if tag == "li" else ""
            self.lines += textwrap.wrap(mark + self._text, _WIDTH, subsequent_indent=" " * len(mark))


def page(answer):
    """What a notebook shows of an answer, as text."""
    reader = _Page()
    reader.feed(answer._repr_html_())
    return "\n".join(reader.lines).rstrip()


# What is told of an aid beside its name: a brush heats no nut.
_OF_AID = {"fluid": ("soak_hours", "thin_fluid"), "heat": ("nut_rise", "bolt_rise"), "cold": ("bolt_rise",)}


def aid_use(use):
    """The aid, and what applies to it."""
    told = ("aid", *_OF_AID.get(use.aid, ()))
    return f"AidUse({', '.join(f'{name}={text}' for name, text in use._rows() if name in told)})"


def plan_step(step):
    """The aids of the step, and what to expect."""
    texts = dict(step._rows())
    texts["aids"] = f"[{', '.join(map(repr, step.aids))}]"
    return f"PlanStep({', '.join(f'{name}={text}' for name, text in texts.items())})"


def attach(records, whole):
    """Gives whole answers their pages."""
    for name in whole:
        records[name].__str__ = page
    records["AidUse"].__repr__ = aid_use
    records["PlanStep"].__repr__ = plan_step
